//! The names that the trade gives to stitches, and what each takes from the left needle and leaves on the right one.
//!
//! Source: Craft Yarn Council, the list of abbreviations that goes with its Standards & Guidelines; the names are from
//! memory. What is counted follows from how a stitch is made, and is counted here by hand.

use crate::marks::{Marked, all, value};
use loopwright::tables::{Certainty, Taken};
use loopwright::written::{Outcome, Start, read, work};

/// How sure each value is that is checked here.
pub const MARKS: &[Marked] = &[
    all(Taken::Abbreviations, Certainty::FromMemory),
    value("other names, British ones among them", Certainty::Practice),
    value("what each takes and leaves", Certainty::Computed),
];

/// Each is worked ten times: the name, the stitches there have to be, and those that are left.
const TEN_TIMES: [(&str, u32, u64); 24] = [
    ("k1", 10, 10),
    ("p1", 10, 10),
    ("sl1", 10, 10),
    ("k1 tbl", 10, 10),
    ("k2tog", 20, 10),
    ("p2tog", 20, 10),
    ("ssk", 20, 10),
    ("skp", 20, 10),
    ("ssp", 20, 10),
    ("k3tog", 30, 10),
    ("p3tog", 30, 10),
    ("sssk", 30, 10),
    ("sk2p", 30, 10),
    ("s2kp", 30, 10),
    ("cdd", 30, 10),
    ("kfb", 10, 20),
    ("pfb", 10, 20),
    ("k1, m1", 10, 20),
    ("k1, m1l", 10, 20),
    ("k1, m1r", 10, 20),
    ("k1, yo", 10, 20),
    ("yo, k2tog", 20, 20),
    ("sl1, k1, psso", 20, 10),
    ("2/2 RC", 40, 40),
];

#[test]
fn each_takes_and_leaves_what_it_is_made_of() {
    for (name, before, after) in TEN_TIMES {
        let (pattern, faults) = read(&format!("({name}) 10 times"), 1, &[]);
        assert_eq!(faults, [], "{name}");
        let worked = work(&pattern, &Start::with(before), 0);
        assert_eq!(worked.len(), 1, "{name}");
        assert_eq!(
            (&worked[0].outcome, worked[0].after),
            (&Outcome::ComesOut, after),
            "{name}"
        );
    }
}

/// A word of two meanings is pointed at, and not chosen for her.
#[test]
fn a_word_of_two_meanings_is_no_stitch() {
    for word in ["yf", "inc", "dec"] {
        let (_, faults) = read(word, 1, &[]);
        assert_eq!(faults.len(), 1, "{word}");
    }
}

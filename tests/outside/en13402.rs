//! The European standard for the sizes of clothes: where the tape goes, and the steps of its sizes.
//!
//! Source: EN 13402-1:2001 (body dimensions) and EN 13402-3 (intervals; 2004, quoted as 2005). The standards were not
//! read. What is as others quote them, and what is from memory, is in the README beside this file.

use crate::marks::{Marked, all, value};
use loopwright::tables::body::{EN_MEN, EN_WOMEN, TAPE, Tape};
use loopwright::tables::{Certainty, Taken};
use loopwright::units::Length;

/// How sure each value is that is checked here.
pub const MARKS: &[Marked] = &[
    all(Taken::Tape, Certainty::Quoted),
    value("that somebody else holds the tape", Certainty::Practice),
    value("edges of bust sizes, 74 to 131 cm", Certainty::Quoted),
    all(Taken::EnWomen, Certainty::FromMemory),
    all(Taken::EnMen, Certainty::FromMemory),
    value("names of bust sizes", Certainty::FromMemory),
    value("that the letters of women lie on those edges", Certainty::Computed),
];

fn cm(cm: i64) -> Length {
    Length::from_mm(cm * 10)
}

/// As others quote it, in two summaries of part 1: upright, breathing normally, tape level, under the armpits, across
/// the bust prominence (a chest: over the shoulder blades), moderate tension, preferably over a bra that does not
/// deform. The last step is common practice, no source.
#[test]
fn where_the_tape_goes() {
    let order = [
        Tape::Upright,
        Tape::UnderArms,
        Tape::FullestPart,
        Tape::ShoulderBlades,
        Tape::Level,
        Tape::Moderate,
        Tape::OverBra,
    ];
    assert_eq!(TAPE[..7].iter().map(|step| step.tape).collect::<Vec<_>>(), order);
    let sure = TAPE.map(|step| step.certainty());
    assert!(sure[..7].iter().all(|certainty| *certainty == Certainty::Quoted));
    assert_eq!((TAPE[7].tape, sure[7]), (Tape::ByAnother, Certainty::Practice));
}

/// As others quote it, in the manual of the R package Anthropometry (`bustSizesStandard`), which cites part 3 (2005):
/// the edges of twelve bust sizes, from 74 to 102 in fours and from 107 to 131 in sixes.
const BUST_EDGES_CM: [i64; 13] = [74, 78, 82, 86, 90, 94, 98, 102, 107, 113, 119, 125, 131];

/// From memory: the sizes are named 76, 80 .. 104 and then 110, 116 .. 128. Computed: these are the middles of those
/// edges. DIFFERENCE: the size from 102 to 107 is named 104, half a centimetre below its middle.
#[test]
fn the_names_are_the_middles_of_the_edges() {
    let names = [76, 80, 84, 88, 92, 96, 100, 104, 110, 116, 122, 128];
    for (pair, name) in BUST_EDGES_CM.windows(2).zip(names) {
        let twice = pair[0] + pair[1];
        assert!(twice == 2 * name || (name, twice) == (104, 209), "{name}: {pair:?}");
    }
}

/// From memory: the letter codes. Computed: those of women from XS to XXL begin and end at those edges, two bust
/// sizes to a letter.
#[test]
fn the_letters_of_women_take_two_bust_sizes_each() {
    let edges: Vec<Length> = BUST_EDGES_CM.iter().step_by(2).map(|edge| cm(*edge)).collect();
    let letters = &EN_WOMEN[1..7];
    assert_eq!((letters[0].label, letters[5].label), ("XS", "XXL"));
    let begin: Vec<Length> = letters.iter().map(|code| code.from).collect();
    assert_eq!(begin, edges[..6]);
    assert_eq!(letters[5].below, edges[6]);
}

/// From memory: men's letters take 8 cm up to 118 and 11 to 12 above; no gap between letters.
#[test]
fn the_letters_of_men() {
    let edges = [70, 78, 86, 94, 102, 110, 118, 129, 141].map(cm);
    for (code, pair) in EN_MEN.iter().zip(edges.windows(2)) {
        assert_eq!((code.from, code.below), (pair[0], pair[1]), "{}", code.label);
        assert_eq!(code.source.certainty(), Certainty::FromMemory);
    }
}

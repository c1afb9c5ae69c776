//! The chests of 5,738 Scottish soldiers: whom a list of sizes covers.
//!
//! Source: A. Quetelet, *Lettres sur la théorie des probabilités* (1846), from the *Edinburgh Medical and Surgical
//! Journal* (1817), as the data set `HistData/ChestSizes` gives them: inches, and how many men. The
//! data set was read, and neither book nor journal, which are named from memory.
//! Men only, long ago: it shows what lists do with a real spread of bodies, not what bodies are today.

use crate::marks::{Marked, value};
use loopwright::sizing::{Answer, Listed, Note, Question, Size, answer};
use loopwright::tables::Certainty;
use loopwright::tables::body::{EN_MEN, MEN};
use loopwright::units::{Length, LengthUnit};

/// How sure each value is that is checked here.
pub const MARKS: &[Marked] = &[
    value("16 counts, 5,738 men", Certainty::Quoted),
    value("book and journal", Certainty::FromMemory),
    value("the mean, and whom a list covers", Certainty::Computed),
];

/// As others quote it, in the data set: chest in inches, men.
const CHESTS: [(i64, u32); 16] = [
    (33, 3),
    (34, 18),
    (35, 81),
    (36, 185),
    (37, 420),
    (38, 749),
    (39, 1073),
    (40, 1079),
    (41, 934),
    (42, 658),
    (43, 370),
    (44, 92),
    (45, 50),
    (46, 21),
    (47, 4),
    (48, 1),
];

fn trade() -> Vec<Size> {
    MEN.iter().map(|row| Size::from_row(row, LengthUnit::Inch)).collect()
}

fn standard() -> Vec<Size> {
    EN_MEN.iter().map(Size::from_code).collect()
}

/// How many men are in a size, between two, below and above all.
fn cover(sizes: &[Size]) -> [u32; 4] {
    let mut men = [0; 4];
    for (chest, count) in CHESTS {
        let off = |size: &Size| size.girth.off(Length::from_inches(chest));
        let any = |holds: fn(&Length) -> bool| sizes.iter().map(off).any(|off| holds(&off));
        let (smaller, larger) = (any(|off| *off < Length::ZERO), any(|off| *off > Length::ZERO));
        let at = match (smaller, larger) {
            _ if any(|off| *off == Length::ZERO) => 0,
            (true, true) => 1,
            (false, _) => 2,
            (true, false) => 3,
        };
        men[at] += count;
    }
    men
}

fn dressed(chest: i64, sizes: Vec<Size>) -> Answer {
    let question = Question {
        listed: Some(Listed::Body),
        ..Question::about(Length::from_inches(chest), sizes)
    };
    answer(&question).expect("a size for every chest")
}

/// As others quote it: 5,738 men. Computed from the counts: the mean is 39.832 in.
#[test]
fn the_counts_are_those_of_the_data_set() {
    let men: u32 = CHESTS.iter().map(|(_, men)| men).sum();
    let inches: i64 = CHESTS.iter().map(|(chest, men)| chest * i64::from(*men)).sum();
    assert_eq!(men, 5_738);
    assert!((inches as f64 / f64::from(men) - 39.832).abs() < 5e-4);
}

/// Computed: the trade body's sizes for men say "34-36, 38-40, 42-44 ..". Taken at their word they leave out 1,404 men
/// of 5,738, one in four, who measure 37, 41 or 45 in, and three of 33 in.
#[test]
fn a_list_with_gaps_covers_three_men_in_four() {
    assert_eq!(cover(&trade()), [4_331, 1_404, 3, 0]);
}

/// Computed: the standard's sizes leave out nobody.
#[test]
fn a_list_without_gaps_covers_all() {
    assert_eq!(cover(&standard()), [5_738, 0, 0, 0]);
}

/// Every man is given a size within an inch of what it says, and whoever is not in it is told.
#[test]
fn every_man_is_given_a_size_and_told_when_it_is_not_his() {
    for (chest, _) in CHESTS {
        for sizes in [trade(), standard()] {
            let found = dressed(chest, sizes);
            let best = found.ranked[0];
            assert!(best.away() <= Length::INCH, "{chest}");
            let says_so = |note: &Note| note.is_beyond() || matches!(note, Note::BetweenSizes { .. });
            assert_eq!(found.notes.iter().any(says_so), !best.suits, "{chest}");
        }
    }
}

//! The body sizes and the five fits of the yarn makers' trade body, as far as others quote them.
//!
//! Source: Craft Yarn Council, "Standard Body Measurements/Sizing". The document itself was not read; through whom it
//! is quoted, and what is from memory, is in the README beside this file, and marked at each value.

use crate::marks::{Marked, all, rows, value};
use loopwright::sizing::{Listed, Note, Question, Size, answer};
use loopwright::tables::body::{BABIES, CHILDREN, MEN, WOMEN};
use loopwright::tables::fit::{BANDS, Band, Fit, Sign};
use loopwright::tables::{Certainty, Taken};
use loopwright::units::{Length, LengthUnit};

/// How sure each value is that is checked here.
pub const MARKS: &[Marked] = &[
    rows(
        Taken::Women,
        "XS to, S to, M to, L to, 1X to, 2X to, 3X to, 4X to, 5X to",
        Certainty::Quoted,
    ),
    rows(
        Taken::Women,
        "XS from, S from, M from, L from, 1X from, 2X from, 3X from, 4X from, 5X from",
        Certainty::FromMemory,
    ),
    all(Taken::Men, Certainty::FromMemory),
    all(Taken::Children, Certainty::FromMemory),
    all(Taken::Babies, Certainty::FromMemory),
    all(Taken::SizesInCm, Certainty::FromMemory),
    all(Taken::FitsInInches, Certainty::Quoted),
    all(Taken::FitsBySign, Certainty::Quoted),
    value("S to 2X in a list that does not say whose it is", Certainty::Practice),
    value("gaps between the sizes", Certainty::Computed),
];

fn inches(inches: i64) -> Length {
    Length::from_inches(inches)
}

/// Common practice, no source: a designer's "standard sizes" (2012), which do not say whose they are, have S 32-34, M
/// 36-38, L 40-42, 1X 44-46, 2X 48-50. They agree with ours.
#[test]
fn women_from_small_to_2x() {
    let standard = [
        ("S", 32, 34),
        ("M", 36, 38),
        ("L", 40, 42),
        ("1X", 44, 46),
        ("2X", 48, 50),
    ];
    for (row, (label, from, to)) in WOMEN[1..].iter().zip(standard) {
        assert_eq!((row.label, row.inches), (label, (inches(from), inches(to))));
    }
}

/// As others quote it: a pattern that says it follows the council takes the larger number of each size, from 30 to 62
/// in by fours.
#[test]
fn the_larger_number_of_every_womans_size() {
    let larger: Vec<_> = WOMEN.iter().map(|row| row.inches.1).collect();
    assert!(WOMEN.iter().all(|row| row.inches_source.1 == Taken::Women.quoted()));
    assert_eq!(larger, [30, 34, 38, 42, 46, 50, 54, 58, 62].map(inches));
}

/// From memory: everything else. Marked so, and in order; the two columns agree within the rounding of the print.
#[test]
fn what_is_from_memory_is_marked_so() {
    let remembered = Certainty::FromMemory;
    for row in WOMEN.iter().chain(&MEN).chain(&CHILDREN).chain(&BABIES) {
        assert_eq!(row.inches_source.0.certainty(), remembered, "{}", row.label);
        assert_eq!(row.cm_source.certainty(), remembered, "{}", row.label);
    }
    for table in [&WOMEN[..], &MEN, &CHILDREN, &BABIES] {
        assert!(table.is_sorted_by_key(|row| row.inches.0) && table.is_sorted_by_key(|row| row.cm.0));
    }
}

/// Computed: a bust of 31 in is in no size. Ours offers both neighbours and says which the cloth decided for.
#[test]
fn the_gaps_between_the_sizes_are_answered() {
    for gap in [31, 35, 39, 43, 47, 51, 55, 59] {
        let sizes = WOMEN.iter().map(|row| Size::from_row(row, LengthUnit::Inch)).collect();
        let found = answer(&Question {
            listed: Some(Listed::Body),
            ..Question::about(inches(gap), sizes)
        })
        .unwrap();
        let (pick, other) = (found.pick, found.runner_up().unwrap());
        assert_eq!(pick + 1, other);
        let between = Note::BetweenSizes {
            smaller: pick,
            larger: other,
            gap: inches(2),
        };
        assert!(found.notes.contains(&between), "{gap}");
        assert!(found.ranked[1].tied && !found.ranked[2].tied);
    }
}

/// As others quote it, twice second-hand: a weblog (August 2011) quotes a yarn maker's page. Very close 0, close 1-2,
/// standard 2-4, loose 4-6, oversized 6 and up.
#[test]
fn the_five_fits_in_inches() {
    let printed = BANDS.map(|band| (band.inches_from, band.inches_to));
    let quoted = [
        (None, Some(0)),
        (Some(1), Some(2)),
        (Some(2), Some(4)),
        (Some(4), Some(6)),
        (Some(6), None),
    ];
    assert_eq!(printed, quoted);
}

/// As others quote it, in a summary of the document of August 2021: negative, zero, some, more, generous positive.
#[test]
fn the_five_fits_by_sign() {
    let signs = BANDS.map(|band| band.sign);
    assert_eq!(
        signs,
        [Sign::Negative, Sign::Zero, Sign::Some, Sign::More, Sign::Generous]
    );
    assert_eq!(Fit::of(Length::from_nm(-1)), Fit::VeryClose);
    assert_eq!(Fit::of(Length::ZERO), Fit::Close);
}

/// What the older edition calls an ease, by its whole inches with both ends included: two words on an edge, none in a
/// gap.
fn printed(ease: Length) -> Vec<Fit> {
    let edge = |edge: Option<i8>| edge.map(|edge| inches(i64::from(edge)));
    let has = |band: &&Band| {
        edge(band.inches_from).is_none_or(|from| ease >= from) && edge(band.inches_to).is_none_or(|to| ease <= to)
    };
    BANDS.iter().filter(has).map(|band| band.fit).collect()
}

/// DIFFERENCE: between the printed ranges and on their edges ours has one word. Everywhere else it has the printed one.
#[test]
fn where_the_print_has_one_word_ours_is_it() {
    let mut differ = Vec::new();
    for eighths in -64..=96 {
        let ease = Length::from_sixty_fourths(eighths * 8);
        match printed(ease)[..] {
            [only] if only == Fit::of(ease) => {}
            ref words => differ.push((eighths, words.len())),
        }
    }
    // Exactly 0, where the newer edition was followed.
    let zero = [(0, 1)];
    // The gap from 0 to 1 in.
    let gap = (1..8).map(|eighths| (eighths, 0));
    // The edges at 2, 4 and 6 in.
    let edges = [(16, 2), (32, 2), (48, 2)];
    assert_eq!(differ, zero.into_iter().chain(gap).chain(edges).collect::<Vec<_>>());
}

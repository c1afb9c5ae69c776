//! The body sizes and the five fits of the yarn makers' trade body, as far as others quote them.
//!
//! Source: Craft Yarn Council, "Standard Body Measurements/Sizing". The document itself was not read; what was seen of it
//! and through whom, and what is from memory, is in the README beside this file, and marked at each value.

use loopwright::sizing::{Listed, Note, Question, Size, answer};
use loopwright::tables::Certainty;
use loopwright::tables::body::{BABIES, CHILDREN, MEN, WOMEN};
use loopwright::tables::fit::{BANDS, Band, Fit, Sign};
use loopwright::units::{Length, LengthUnit};

fn inches(inches: i64) -> Length {
    Length::from_inches(inches)
}

/// Seen, as a designer quotes the standard sizes (2012): S 32-34, M 36-38, L 40-42, 1X 44-46, 2X 48-50.
#[test]
fn women_from_small_to_2x() {
    let seen = [
        ("S", 32, 34),
        ("M", 36, 38),
        ("L", 40, 42),
        ("1X", 44, 46),
        ("2X", 48, 50),
    ];
    let rows: Vec<_> = WOMEN.iter().filter(|row| row.certainty == Certainty::Seen).collect();
    assert_eq!(rows.len(), seen.len());
    for (row, (label, from, to)) in rows.iter().zip(seen) {
        assert_eq!((row.label, row.inches), (label, (inches(from), inches(to))));
    }
}

/// Seen, as a pattern says that follows the council: it takes the larger number of each size, from 30 to 62 in by fours.
#[test]
fn the_larger_number_of_every_womans_size() {
    let larger: Vec<_> = WOMEN.iter().map(|row| row.inches.1).collect();
    assert_eq!(larger, [30, 34, 38, 42, 46, 50, 54, 58, 62].map(inches));
}

/// From memory: everything else. Marked so, and in order; the two columns agree within the rounding of the print.
#[test]
fn what_is_from_memory_is_marked_so() {
    for row in MEN.iter().chain(&CHILDREN).chain(&BABIES) {
        assert_eq!(row.certainty, Certainty::FromMemory, "{}", row.label);
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

/// Seen, as a yarn maker's page was quoted (2011): very close 0, close 1-2, standard 2-4, loose 4-6, oversized 6 and up.
#[test]
fn the_five_fits_in_inches() {
    let printed = BANDS.map(|band| (band.inches_from, band.inches_to));
    let seen = [
        (None, Some(0)),
        (Some(1), Some(2)),
        (Some(2), Some(4)),
        (Some(4), Some(6)),
        (Some(6), None),
    ];
    assert_eq!(printed, seen);
}

/// Seen, in a summary of the document of August 2021: negative, zero, some, more, generous positive.
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

/// What the older edition calls an ease, by its whole inches with both ends included: two words on an edge, none in a gap.
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

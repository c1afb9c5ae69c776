//! Sections of several yarns: each yarn is what it would be alone, and its balls are rounded up apart.

use super::*;
use crate::problem::FieldPath;
use crate::yarn::{Line, Part, PerYarn};

/// Stripes of two yarns, and a third section of the first one again.
fn striped(yarns: &[u32]) -> Question {
    let section = |rows| bare(Fabric::Stockinette, rectangle(40, rows));
    let Question { ask, .. } = only(vec![section(400), section(140), section(60)], swatch(21, 28));
    Question {
        ask,
        yarns: yarns.to_vec(),
        ..Question::about(Vec::new(), swatch(21, 28))
    }
}

/// The obvious answer counts all yarn together, and a ball too few is bought.
#[test]
fn balls_of_each_yarn_are_rounded_up_apart() {
    let together = answer(&striped(&[])).unwrap();
    let apart = answer(&striped(&[1, 2, 1])).unwrap();
    assert!(together.yarns.is_empty());
    let [first, second]: [PerYarn; 2] = apart.yarns.clone().try_into().unwrap();
    assert_eq!((first.yarn, second.yarn), (1, 2));
    assert_eq!(apart.balls, first.balls + second.balls);
    assert!(apart.balls > together.balls, "{} and {}", apart.balls, together.balls);
    let alone = |rows: &[u32]| {
        let sections = rows.iter().map(|rows| bare(Fabric::Stockinette, rectangle(40, *rows)));
        let Question { ask, .. } = only(sections.collect(), swatch(21, 28));
        answer(&Question { ask, ..striped(&[]) }).unwrap()
    };
    for (yarn, alone) in [(first, alone(&[400, 60])), (second, alone(&[140]))] {
        assert_eq!(
            (yarn.balls, yarn.length, yarn.need),
            (alone.balls, alone.length, alone.need)
        );
    }
}

/// The lines keep the places of their sections, and add up as they do for one yarn.
#[test]
fn the_lines_of_several_yarns_add_up() {
    let apart = answer(&striped(&[3, 1, 3])).unwrap();
    let sections: Vec<Part> = apart.lines.iter().map(|line| line.part).take(3).collect();
    assert_eq!(sections, [0, 1, 2].map(|section| Part::Knitting { section }));
    let sum = |of: fn(&Line) -> Length| {
        let lengths = apart.lines.iter().map(of);
        lengths.fold(Length::ZERO, Length::saturating_add)
    };
    assert_eq!(sum(|line| line.length.most), apart.need);
    assert_eq!(sum(|line| line.length.expected), apart.length.expected);
    assert_eq!(apart.stitches, answer(&striped(&[])).unwrap().stitches);
    assert_eq!(apart.leftover, apart.bought.saturating_sub(apart.length.expected));
    let parts: Vec<Part> = apart.lines.iter().map(|line| line.part).collect();
    assert!(parts.windows(2).all(|pair| pair[0] < pair[1]), "{parts:?}");
}

/// One yarn by another number is one yarn; a number out of bounds is named with its section.
#[test]
fn a_yarn_is_numbered_within_bounds() {
    let one = answer(&striped(&[2, 2, 2])).unwrap();
    assert_eq!(one, answer(&striped(&[])).unwrap());
    let wrong = answer(&striped(&[1, 0, 21])).unwrap_err();
    let fields: Vec<FieldPath> = wrong.iter().map(|problem| problem.field).collect();
    assert_eq!(fields, [1, 2].map(|section| SectionName::Yarn.at(section)));
}

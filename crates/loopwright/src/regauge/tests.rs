//! Each obvious sum beside the right one, every shaping worked row by row, and what holds for every question.

mod properties;
mod shaping;

use super::*;
use crate::problem::Kind;
use crate::sizing::PerMille;
use proptest::prelude::*;

const ROUND: Knitting = Knitting::Round { extra: false };

fn ten(count: u32) -> Gauge {
    Gauge::of(count, Gauge::TEN_CM)
}

/// From 20 stitches and 28 rows in 10 cm to 22 and 30.
fn counts(counts: &[u32]) -> Question {
    Question {
        pattern_rows: Some(ten(28)),
        own_rows: Some(ten(30)),
        ..Question::about(ten(20), ten(22), counts.to_vec())
    }
}

fn converted(question: &Question) -> Vec<u32> {
    answer(question)
        .unwrap()
        .stitches
        .iter()
        .map(|found| found.count)
        .collect()
}

/// Works the instruction block by block: the stitches after each row.
fn work(shaped: &Shaped) -> Vec<u32> {
    let schedule = shaped.schedule.as_ref().unwrap();
    let mut stitches = shaped.from;
    let mut after = Vec::new();
    for block in &schedule.blocks {
        for _ in 0..block.times {
            after.extend(vec![stitches; block.plain as usize]);
            stitches = if schedule.gain {
                stitches + block.change
            } else {
                stitches - block.change
            };
            after.push(stitches);
        }
    }
    after.extend(vec![stitches; schedule.left as usize]);
    after
}

/// The rows that are shaped.
fn shaping_rows(shaped: &Shaped) -> Vec<u32> {
    let rows = shaped.schedule.as_ref().unwrap().rows();
    rows.map(|shaped| shaped.row).collect()
}

fn shaped(question: &Question) -> Shaped {
    answer(question).unwrap().shaping.unwrap()
}

/// 9 times 2 every 6th row: 60 to 42 in 56 rows.
fn sleeve() -> Question {
    let shaping = Shaping {
        from: 60,
        to: 42,
        rows: 56,
        each: 2,
        right_side_only: false,
    };
    Question {
        knitting: Knitting::Flat { edge: 0, seam: 0 },
        shaping: Some(shaping),
        ..counts(&[])
    }
}

#[test]
fn a_count_keeps_its_measure() {
    let answer = answer(&counts(&[180, 90])).unwrap();
    let [whole, half] = answer.stitches[..] else { panic!() };
    assert_eq!((whole.count, half.count), (198, 99));
    let cm = |whole| Length::of(whole, LengthUnit::Cm);
    assert_eq!((whole.was, whole.becomes, half.was), (cm(90), cm(90), cm(45)));
    assert_eq!(whole.unchanged, Length::from_nm(818_181_818));
    assert_eq!(
        (answer.range.least, answer.range.most),
        (Length::from_nm(880_000_000), Length::from_nm(920_930_233))
    );
    assert_eq!(
        (answer.moves.stitches, answer.moves.rows),
        (PerMille(100), Some(PerMille(71)))
    );
}

#[test]
fn a_multiple_in_the_round_has_no_plus_and_a_flat_one_has() {
    let multiple = Multiple { of: 8, plus: 3 };
    let round = Question {
        multiple,
        ..counts(&[184])
    };
    let flat = Question {
        knitting: Knitting::Flat { edge: 0, seam: 0 },
        counts: vec![187],
        ..round.clone()
    };
    // 184 x 1.1 is 202.4; carrying the plus into the round gives 203, which no repeat of 8 closes.
    assert_eq!(converted(&round), [200]);
    assert_eq!(converted(&flat), [203]);
    // A count that is none is said to be none.
    let wrong = answer(&Question {
        counts: vec![187],
        ..round
    })
    .unwrap();
    assert!(!wrong.stitches[0].kept && answer(&flat).unwrap().stitches[0].kept);
}

#[test]
fn edges_and_seams_stay_as_they_are() {
    let flat = Question {
        knitting: Knitting::Flat { edge: 1, seam: 1 },
        ..counts(&[104])
    };
    // 100 stitches and 4 beside them; the obvious sum makes 114.4 of all 104.
    assert_eq!(converted(&flat), [114]);
    let wide = Question {
        knitting: Knitting::Flat { edge: 20, seam: 1 },
        ..counts(&[142])
    };
    assert_eq!(converted(&wide), [152]);
}

#[test]
fn the_extra_stitch_of_a_join_is_not_converted() {
    let question = Question {
        knitting: Knitting::Round { extra: true },
        multiple: Multiple { of: 12, plus: 0 },
        ..counts(&[121])
    };
    let found = answer(&question).unwrap().stitches[0];
    // 120 become 132, and 133 are cast on. The obvious sum takes all 121 to 133.1 and so to 132, one too few.
    assert_eq!(found.count, 133);
    assert_eq!(found.was, Length::of(60, LengthUnit::Cm));
}

#[test]
fn odd_stays_odd_for_a_stitch_at_the_centre() {
    let question = Question {
        parity: true,
        ..counts(&[101, 100, 92])
    };
    // 111.1 and 110 and 101.2.
    assert_eq!(converted(&question), [111, 110, 102]);
    let without = Question {
        parity: false,
        ..question.clone()
    };
    assert_eq!(converted(&without), [111, 110, 101]);
    // With a multiple of 3, every sixth will do: 101 is no multiple of 3, 99 is, and 99 x 1.1 is 108.9.
    let thirds = Question {
        multiple: Multiple { of: 3, plus: 0 },
        counts: vec![99],
        ..question
    };
    let found = answer(&thirds).unwrap().stitches[0];
    assert_eq!(found.count, 111);
}

#[test]
fn ten_centimetres_are_not_four_inches_between_gauges() {
    let inches = Gauge::of(20, Gauge::FOUR_INCHES);
    let same = Question::about(inches, ten(20), vec![200]);
    let found = answer(&same).unwrap();
    // 200 at 20 in 4 in are 101.6 cm, for which it takes 203; the obvious sum sees 20 twice and changes nothing.
    assert_eq!(found.stitches[0].count, 203);
    assert_eq!(found.moves.stitches, PerMille(16));
    let same = answer(&Question::about(
        ten(20),
        Gauge::of(10, Length::of(5, LengthUnit::Cm)),
        vec![200],
    ))
    .unwrap();
    assert_eq!(same.stitches[0].count, 200);
    assert_eq!(same.moves.stitches, PerMille(0));
}

#[test]
fn following_a_size_moves_what_is_counted_in_rows_and_the_yarn() {
    let length = Length::of(22, LengthUnit::Cm);
    let question = Question {
        own_rows: Gauge::new(26_320, Gauge::TEN_CM),
        own: ten(22),
        wanted: Some(Length::of(91, LengthUnit::Cm)),
        length: Some(length),
        ..counts(&[180, 196, 212])
    };
    let found = answer(&question).unwrap();
    let follow = found.follow.unwrap();
    assert_eq!(
        (follow.size, found.stitches[1].unchanged),
        (1, Length::from_nm(890_909_091))
    );
    // The obvious pick is the size whose measure is listed nearest to 91 cm: 180 stitches, which come out at 81.8 cm.
    assert_eq!(found.stitches[0].was, Length::of(90, LengthUnit::Cm));
    // An armhole of 22 cm by the pattern's 62 rows is 23.6 cm, since there are 6 % fewer; 58 rows are the 22 cm.
    let armhole = found.rows[0];
    assert_eq!((armhole.pattern, armhole.count, armhole.was), (62, 58, length));
    assert_eq!(armhole.unchanged, Length::from_nm(235_562_310));
    assert_eq!(found.moves.rows, Some(PerMille(-60)));
    // Ten per cent more stitches to the area are 4.9 % more yarn.
    let tenth = Question {
        own: ten(22),
        own_rows: Some(ten(28)),
        ..question
    };
    assert_eq!(answer(&tenth).unwrap().moves.yarn_same_measure, PerMille(49));
}

/// 108 stitches of which 4 are edges and seams measure 104 / 2.2 = 47.3 cm. The obvious sum has them in the measure,
/// follows the size below, and is 1.8 cm short.
#[test]
fn edges_and_seams_are_not_in_the_measure_of_a_size() {
    let wanted = Length::from_mm(472);
    let question = Question {
        knitting: Knitting::Flat { edge: 1, seam: 1 },
        wanted: Some(wanted),
        ..counts(&[104, 108, 112])
    };
    let found = answer(&question).unwrap();
    let follow = found.follow.unwrap();
    assert_eq!(follow.size, 1);
    assert_eq!(found.stitches[1].unchanged, wanted.saturating_add(follow.off));
    assert_eq!(found.stitches[0].unchanged, Length::from_nm(454_545_455));
    // A join has one more, which is in no measure either.
    let join = Question {
        knitting: Knitting::Round { extra: true },
        wanted: Some(Length::of(100, LengthUnit::Cm)),
        ..counts(&[221, 223])
    };
    assert_eq!(
        answer(&join).unwrap().follow.map(|follow| follow.off),
        Some(Length::ZERO)
    );
}

#[test]
fn of_two_sizes_equally_near_the_smaller_and_the_other_is_named() {
    let question = Question {
        wanted: Some(Length::of(95, LengthUnit::Cm)),
        ..counts(&[220, 198])
    };
    let follow = answer(&question).unwrap().follow.unwrap();
    assert_eq!((follow.size, follow.tied), (1, Some(0)));
    assert_eq!(follow.off, Length::of(-5, LengthUnit::Cm));
}

#[test]
fn rows_end_on_the_same_side_and_in_the_same_row_of_the_chart() {
    let flat = Question {
        knitting: Knitting::SEWN,
        rows: vec![40, 41, 46],
        ..counts(&[])
    };
    let rows = |question: &Question| {
        answer(question)
            .unwrap()
            .rows
            .iter()
            .map(|found| found.count)
            .collect::<Vec<_>>()
    };
    // 42.9, 43.9 and 49.3; the obvious rounding ends 40 rows on the other side.
    assert_eq!(rows(&flat), [42, 43, 50]);
    assert_eq!(
        rows(&Question {
            knitting: ROUND,
            ..flat.clone()
        }),
        [43, 44, 49]
    );
    // A chart of 6 rows: 40 end in its 4th, and so do 46, 52; 46 back and forth, where 43 would be the wrong row.
    let chart = Question { row_repeat: 6, ..flat };
    assert_eq!(rows(&chart), [40, 41, 52]);
}

#[test]
fn too_many_names_the_most_that_can_be_converted() {
    let question = Question::about(ten(10), ten(20), vec![60_000]);
    let Kind::TooMany { most } = answer(&question).unwrap_err()[0].kind else {
        panic!()
    };
    assert_eq!(most, 50_000);
    assert_eq!(
        converted(&Question {
            counts: vec![most],
            ..question
        }),
        [100_000]
    );
}

#[test]
fn a_missing_row_gauge_does_not_hide_the_stitches() {
    let question = |pattern_rows: Option<Gauge>, own_rows: Option<Gauge>| Question {
        rows: vec![40],
        shaping: sleeve().shaping,
        pattern_rows,
        own_rows,
        ..counts(&[180])
    };
    let both = answer(&question(Some(ten(28)), Some(ten(30)))).unwrap();
    assert_eq!((both.rows_wait, both.rows.len()), (None, 1));
    for (theirs, ours, wait) in [
        (None, None, RowsWait::Both),
        (Some(ten(28)), None, RowsWait::Own),
        (None, Some(ten(30)), RowsWait::Pattern),
    ] {
        let found = answer(&question(theirs, ours)).unwrap();
        assert_eq!((found.rows_wait, &found.stitches), (Some(wait), &both.stitches));
        assert!(found.rows.is_empty() && found.shaping.is_none());
    }
    assert_eq!(answer(&counts(&[180])).unwrap().rows_wait, None);
}

#[test]
fn what_rows_keep_is_told_where_there_are_rows() {
    let round = Question {
        rows: vec![40],
        pattern_rows: Some(ten(28)),
        own_rows: Some(ten(30)),
        row_repeat: 6,
        multiple: Multiple { of: 8, plus: 3 },
        ..counts(&[180])
    };
    let notes = |question: &Question| answer(question).unwrap().notes;
    assert_eq!(
        notes(&round),
        [Note::PlusDropped { plus: 3 }, Note::SameRow { repeat: 6 }]
    );
    let flat = Question {
        row_repeat: NO_REPEAT,
        knitting: Knitting::Flat { edge: 0, seam: 1 },
        ..sleeve()
    };
    let shaped = [Note::Outside, Note::SameSide, Note::SharedOut, Note::RowOneIsRightSide];
    assert_eq!(notes(&flat), shaped);
    // Rows that wait for their gauge keep nothing yet.
    let waiting = Question {
        own_rows: None,
        multiple: Multiple::ANY,
        ..round
    };
    assert_eq!(notes(&waiting), []);
}

#[test]
fn every_field_out_of_bounds_is_named() {
    let fields = |question: &Question| {
        answer(question)
            .unwrap_err()
            .iter()
            .filter_map(|wrong| wrong.field.name())
            .collect::<Vec<Name>>()
    };
    assert_eq!(fields(&counts(&[])), [Name::Counts]);
    let missing = Question {
        rows: vec![1],
        pattern_rows: None,
        own_rows: None,
        ..counts(&[])
    };
    assert_eq!(fields(&missing), [Name::PatternRows, Name::OwnRows]);
    let bad = Gauge::new(1, Length::from_nm(1)).unwrap();
    let all = Question {
        pattern: bad,
        rows: vec![0],
        length: Some(Length::ZERO),
        wanted: Some(Length::MAX),
        multiple: Multiple { of: 0, plus: 2_000 },
        knitting: Knitting::Flat {
            edge: u32::MAX,
            seam: 101,
        },
        row_repeat: 0,
        ..counts(&[0])
    };
    let names = [
        Name::Pattern,
        Name::Pattern,
        Name::Multiple,
        Name::Plus,
        Name::RowRepeat,
        Name::Edge,
        Name::Seam,
        Name::Counts,
        Name::Rows,
        Name::Length,
        Name::Wanted,
    ];
    assert_eq!(fields(&all), names);
    let shaping = Shaping {
        from: 0,
        to: 0,
        rows: 0,
        each: 0,
        right_side_only: true,
    };
    assert_eq!(
        fields(&Question {
            shaping: Some(shaping),
            ..counts(&[])
        }),
        [Name::From, Name::To, Name::ShapingRows, Name::Each]
    );
}

//! Each obvious sum beside the right one, every shaping worked row by row, and what holds for every question.

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
fn shaping_is_shared_out_anew_and_not_multiplied() {
    let made = shaped(&sleeve());
    // 66 to 46 in 60 rows: ten times, not nine, in rows 5, 11, .. 53, 59.
    assert_eq!((made.from, made.to, made.rows, made.times), (66, 46, 60, 10));
    let after = work(&made);
    assert_eq!(after.last(), Some(&46));
    assert_eq!(shaping_rows(&made), [5, 11, 17, 23, 29, 35, 41, 47, 53, 59]);
    // The obvious conversion keeps nine times and multiplies the rate: every 6.4th row, so 6, ends at 48 stitches,
    // which at 22 in 10 cm is 21.8 cm for the 21 cm of the pattern.
    let obvious = made.from - 9 * 2;
    assert_eq!(obvious, 48);
    assert_ne!(obvious, made.to);
    // An odd number of rows or of stitches away has nothing to stand on.
    let left = made.schedule.unwrap().left;
    assert_eq!((made.from % 2, made.rows % 2, left), (0, 0, 1));
}

#[test]
fn right_side_shaping_stays_on_the_right_side() {
    let mut question = sleeve();
    question.shaping = question.shaping.map(|shaping| Shaping {
        right_side_only: true,
        ..shaping
    });
    let made = shaped(&question);
    // All odd. Every 6th row counted from the first is all even, and so on the wrong side.
    assert_eq!(shaping_rows(&made), [5, 11, 17, 23, 29, 35, 41, 47, 53, 59]);
    assert_eq!(work(&made).last(), Some(&46));
}

#[test]
fn increase_lines_keep_their_multiple() {
    let shaping = Shaping {
        from: 96,
        to: 192,
        rows: 40,
        each: 8,
        right_side_only: false,
    };
    let question = Question {
        shaping: Some(shaping),
        multiple: Multiple { of: 8, plus: 0 },
        ..counts(&[])
    };
    let made = shaped(&question);
    // 105.6 and 211.2: 104 and 208, thirteen times 8. The obvious ends are 106 and 211, which 8 lines do not reach.
    assert_eq!((made.from, made.to, made.times), (104, 208, 13));
    assert_eq!(work(&made).last(), Some(&208));
}

#[test]
fn ends_of_shaping_are_multiples_where_the_pattern_has_them() {
    // 96 to 64 by twos, both multiples of 8: 105.6 and 70.4.
    let shaping = Shaping {
        from: 96,
        to: 64,
        rows: 60,
        each: 2,
        right_side_only: false,
    };
    let question = Question {
        shaping: Some(shaping),
        multiple: Multiple { of: 8, plus: 0 },
        ..counts(&[])
    };
    let made = shaped(&question);
    assert_eq!((made.from, made.to, made.times), (104, 72, 16));
    // 95 to 64: the start is none and only stays odd, 104.5 to 105 and by ones to 72.
    let odd = Shaping {
        from: 95,
        each: 1,
        ..shaping
    };
    let made = shaped(&Question {
        shaping: Some(odd),
        parity: true,
        ..question
    });
    assert_eq!((made.from, made.to), (105, 72));
    assert_eq!(work(&made).last(), Some(&72));
}

#[test]
fn shaping_that_has_no_room_says_how_many_rows_it_needs() {
    let shaping = Shaping {
        from: 100,
        to: 40,
        rows: 31,
        each: 2,
        right_side_only: false,
    };
    let question = Question {
        shaping: Some(shaping),
        ..counts(&[])
    };
    let tight = Question {
        own_rows: Some(ten(28)),
        ..question.clone()
    };
    let made = shaped(&tight);
    assert_eq!((made.times, made.rows, made.needs, made.schedule), (33, 31, 34, None));
    let odd = Question {
        shaping: Some(Shaping { to: 41, ..shaping }),
        ..question
    };
    let kind = Kind::NoExact {
        below: Some(40),
        above: Some(42),
    };
    assert_eq!(answer(&odd).unwrap_err(), [Problem::new(Name::To, kind)]);
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
fn a_shaped_piece_measures_what_its_counts_measure() {
    let shaped = shaped(&sleeve());
    let mm = |nm: i64| Length::from_nm(nm);
    assert_eq!((shaped.was.from, shaped.was.to), (60, 42));
    assert_eq!((shaped.becomes.from, shaped.becomes.rows), (shaped.from, shaped.rows));
    // 60 at 20 are 30 cm, and 66 at 22 are as well.
    assert_eq!(
        (shaped.was.lower, shaped.becomes.lower),
        (mm(300_000_000), mm(300_000_000))
    );
    assert_eq!(
        (shaped.was.upper, shaped.was.height),
        (mm(210_000_000), mm(200_000_000))
    );
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

fn any_knitting() -> impl Strategy<Value = Knitting> {
    prop_oneof![
        any::<bool>().prop_map(|extra| Knitting::Round { extra }),
        (0_u32..4, 0_u32..3).prop_map(|(edge, seam)| Knitting::Flat { edge, seam }),
    ]
}

fn any_gauge() -> impl Strategy<Value = Gauge> {
    let span = prop_oneof![Just(Gauge::TEN_CM), Just(Gauge::FOUR_INCHES)];
    (8_000_u32..40_000, span).prop_map(|(thousandths, span)| Gauge::new(thousandths, span).unwrap())
}

fn any_question() -> impl Strategy<Value = Question> {
    let gauges = [any_gauge(), any_gauge(), any_gauge(), any_gauge()];
    let lists = (
        prop::collection::vec(20_u32..500, 1..5),
        prop::collection::vec(1_u32..300, 0..4),
    );
    (
        gauges,
        lists,
        1_u32..13,
        0_u32..5,
        any_knitting(),
        any::<bool>(),
        1_u32..9,
    )
        .prop_map(
            |([pattern, own, theirs, ours], (counts, rows), of, plus, knitting, parity, row_repeat)| Question {
                pattern_rows: Some(theirs),
                own_rows: Some(ours),
                rows,
                multiple: Multiple { of, plus },
                knitting,
                parity,
                row_repeat,
                ..Question::about(pattern, own, counts)
            },
        )
}

proptest! {
    #[test]
    fn nothing_that_will_do_is_nearer(question in any_question()) {
        let answer = answer(&question).unwrap();
        let outside = question.outside();
        let plus = if question.is_flat() { question.multiple.plus } else { 0 };
        let of = question.multiple.of;
        let first = answer.stitches[0].becomes;
        prop_assert!(answer.range.least < first && first < answer.range.most);
        for found in &answer.stitches {
            let inside = found.pattern - outside;
            let ideal = question.own.count_over(question.pattern.width_of(f64::from(inside)).unwrap());
            let even_steps = of % 2 == 0;
            let will_do = |count: u32| {
                count >= of + plus
                    && (count - plus).is_multiple_of(of)
                    && (!question.parity || even_steps || count % 2 == inside % 2)
            };
            prop_assert!(will_do(found.count - outside));
            let miss = |count: u32| (f64::from(count) - ideal).abs();
            let least = (1..5_000).filter(|count| will_do(*count)).map(miss).fold(f64::INFINITY, f64::min);
            prop_assert!((miss(found.count - outside) - least).abs() < 1e-4);
            prop_assert_eq!(found.kept, will_do(inside));
        }
        for found in &answer.rows {
            prop_assert_eq!(found.count % question.row_repeat, found.pattern % question.row_repeat);
            prop_assert!(!question.is_flat() || found.count % 2 == found.pattern % 2 || question.row_repeat % 2 == 0);
        }
    }

    #[test]
    fn the_same_gauge_changes_nothing(question in any_question()) {
        let same = Question { own: question.pattern, own_rows: question.pattern_rows, parity: true, ..question };
        let answer = answer(&same).unwrap();
        for found in answer.rows {
            prop_assert_eq!(found.count, found.pattern);
        }
        for found in answer.stitches {
            prop_assert!(found.count == found.pattern || !found.kept);
        }
        prop_assert_eq!(answer.moves.yarn_same_measure, PerMille(0));
    }

    #[test]
    fn shaping_worked_row_by_row_ends_as_promised(
        question in any_question(),
        to in 20_u32..300,
        times in 0_u32..40,
        rows in 1_u32..200,
        each in 1_u32..9,
        flags: [bool; 2],
    ) {
        let [up, right_side_only] = flags;
        let other = to + times * each;
        let (from, to) = if up { (to, other) } else { (other, to) };
        let shaping = Shaping { from, to, rows, each, right_side_only };
        let question = Question { shaping: Some(shaping), ..question };
        let made = shaped(&question);
        prop_assert_eq!(made.times * each, made.from.abs_diff(made.to));
        prop_assert_eq!(made.schedule.is_none(), made.needs > 0);
        prop_assert!(made.needs == 0 || made.needs > made.rows);
        if made.schedule.is_none() {
            return Ok(());
        }
        let after = work(&made);
        prop_assert_eq!(after.len(), made.rows as usize);
        prop_assert_eq!(after.last(), Some(&made.to));
        let start = [made.from];
        let before = start.iter().chain(&after);
        let at: Vec<usize> = before.zip(&after).enumerate().filter(|(_, (a, b))| a != b).map(|(row, _)| row + 1).collect();
        prop_assert_eq!(at.len(), made.times as usize);
        // Plain at the end, on the right side where that is asked, and no two distances differ by more than one step.
        prop_assert!(at.last().is_none_or(|last| *last < made.rows as usize));
        let right_side = right_side_only && question.is_flat();
        let step = if right_side { 2 } else { 1 };
        prop_assert!(!right_side || at.iter().all(|row| row % 2 == 1));
        let gaps: Vec<usize> = at.windows(2).map(|pair| pair[1] - pair[0]).collect();
        let (least, most) = (gaps.iter().min(), gaps.iter().max());
        prop_assert!(most.zip(least).is_none_or(|(most, least)| most - least <= step));
    }

    #[test]
    fn lengths_twice_as_long_change_no_count(question in any_question(), wanted in 100_i64..2_000) {
        let twice = |gauge: Gauge| {
            let thousandths = (gauge.count() * 1_000.0).round() as u32;
            Gauge::new(thousandths, gauge.span().saturating_mul(2)).unwrap()
        };
        let once = Question { wanted: Some(Length::from_mm(wanted)), length: Some(Length::from_mm(wanted)), ..question };
        let double = Question {
            pattern: twice(once.pattern),
            own: twice(once.own),
            pattern_rows: once.pattern_rows.map(twice),
            own_rows: once.own_rows.map(twice),
            wanted: Some(Length::from_mm(2 * wanted)),
            length: Some(Length::from_mm(2 * wanted)),
            ..once.clone()
        };
        let (once, double) = (answer(&once).unwrap(), answer(&double).unwrap());
        let all = |answer: &Answer| {
            let found = answer.stitches.iter().chain(&answer.rows);
            found.map(|found| (found.pattern, found.count, found.ideal)).collect::<Vec<_>>()
        };
        prop_assert_eq!(all(&once), all(&double));
        let follow = |answer: &Answer| answer.follow.map(|follow| (follow.size, follow.tied));
        prop_assert_eq!(follow(&once), follow(&double));
    }

    #[test]
    fn nothing_panics(
        lengths: [i64; 6],
        thousandths: [u32; 4],
        numbers: [u32; 9],
        lists in (prop::collection::vec(any::<u32>(), 0..4), prop::collection::vec(any::<u32>(), 0..4)),
        flags: [bool; 4],
    ) {
        let span = |at: usize| Length::from_nm(lengths[at].saturating_abs().max(1));
        let gauge = |at: usize| Gauge::new(thousandths[at].max(1), span(at)).unwrap();
        let small = |at: usize| Gauge::new(1_000 + thousandths[at] % 399_000, if flags[0] { Gauge::SPANS.least } else { Gauge::SPANS.most }).unwrap();
        let [a, b, c, d, e, f, g, h, i] = numbers;
        let shaping = Shaping { from: a, to: b, rows: c, each: d, right_side_only: flags[1] };
        let knitting = if flags[2] { Knitting::Round { extra: flags[0] } } else { Knitting::Flat { edge: e, seam: f } };
        let wild = Question {
            count_gaps: Vec::new(),
            row_gaps: Vec::new(),
            pattern: gauge(0),
            own: gauge(1),
            pattern_rows: flags[3].then(|| gauge(2)),
            own_rows: Some(gauge(3)),
            counts: lists.0,
            rows: lists.1,
            length: Some(Length::from_nm(lengths[4])),
            wanted: Some(Length::from_nm(lengths[5])),
            shaping: Some(shaping),
            multiple: Multiple { of: g, plus: h },
            knitting,
            parity: flags[1],
            row_repeat: i,
        };
        let _ = answer(&wild);
        // The same within bounds, or nearly.
        let tame = Question {
            pattern: small(0),
            own: small(1),
            pattern_rows: Some(small(2)),
            own_rows: Some(small(3)),
            counts: wild.counts.iter().map(|count| count % 100_001).collect(),
            rows: wild.rows.iter().map(|count| count % 100_001).collect(),
            length: Some(Length::from_nm(lengths[4].rem_euclid(20_000_000_000))),
            wanted: Some(Length::from_nm(lengths[5].rem_euclid(20_000_000_000))),
            shaping: Some(Shaping { from: a % 100_001, to: a % 100_001, rows: c % 100_001, each: d % 1_000 + 1, ..shaping }),
            multiple: Multiple { of: g % 1_000 + 1, plus: h % 1_001 },
            knitting: if flags[2] { knitting } else { Knitting::Flat { edge: e % 101, seam: f % 101 } },
            row_repeat: i % 1_000 + 1,
            ..wild
        };
        let _ = answer(&tame);
        let each = d % 9 + 1;
        let ends = Shaping { from: a % 90_000 + 1_000, to: a % 90_000 + 1_000 + each * (b % 900), rows: c % 3_000 + 1, each, ..shaping };
        let _ = answer(&Question { shaping: Some(ends), counts: vec![], rows: vec![], wanted: None, length: None, ..tame });
    }
}

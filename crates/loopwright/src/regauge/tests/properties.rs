//! What holds for every pattern and every gauge.

use super::*;

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

//! What holds for every tail.

use super::*;

fn any_question() -> impl Strategy<Value = Question> {
    let yarn = prop_oneof![
        Just(None),
        (2_u32..40).prop_map(per_inch),
        (0_usize..8).prop_map(|index| Some(Thickness::Class(CLASSES[index].weight))),
    ];
    let mm = |least: i64, most: i64| (least * 1_000_000..most * 1_000_000).prop_map(Length::from_nm);
    let needle = (mm(1, 20), proptest::option::of(mm(1, 20)));
    let piece = (1_u32..60, mm(10, 2_000)).prop_map(|(stitches, used)| Piece { stitches, used });
    (
        (1_u32..1_000, 0_usize..8, yarn),
        proptest::option::of(needle),
        mm(50, 3_000),
        proptest::option::of(piece),
        (mm(0, 500), mm(0, 20_000), 0.0..=1.0_f64),
    )
        .prop_map(
            |((stitches, method, yarn), needle, width, measured, (end, tail, share))| Question {
                method: Method::ALL[method],
                yarn,
                needle: needle.map(|(first, _)| first),
                second: needle.and_then(|(_, second)| second),
                width: Some(width),
                measured,
                end,
                left: Some(Left {
                    tail,
                    to_go: (f64::from(stitches) * share) as u32,
                }),
                ..Question::about(stitches)
            },
        )
}

proptest! {
    #[test]
    fn the_tail_is_the_winner_with_reserve_and_the_end_once(question in any_question()) {
        let answer = answer(&question).unwrap();
        prop_assert!(answer.range.least <= answer.tail && answer.tail <= answer.range.most);
        let Some(wins) = answer.wins else {
            prop_assert_eq!(answer.tail, question.end);
            return Ok(());
        };
        let wins = &answer.estimates[wins];
        let trusted = question.measured.is_some_and(|m| m.stitches >= MEASURED_FROM);
        if trusted {
            prop_assert!(is_measured(&wins.way));
        } else {
            prop_assert!(answer.estimates.iter().all(|e| e.needs.most <= wins.needs.most));
        }
        let expected = i128::from(wins.needs.most.to_nm()) * i128::from(100 + answer.reserve) / 100;
        let expected = expected + i128::from(question.end.to_nm());
        // `needs` was rounded up once, and so was the tail: twice a nanometre at the most.
        prop_assert!((i128::from(answer.tail.to_nm()) - expected).abs() <= 2);
        prop_assert!(answer.estimates.iter().all(|e| e.needs.least <= e.needs.most));
    }

    #[test]
    fn the_tail_that_was_left_is_enough_for_all_and_exactly_so(question in any_question()) {
        let tail = answer(&question).unwrap().tail;
        let left = Left { tail, to_go: question.stitches };
        let again = answer(&Question { left: Some(left), ..question }).unwrap().left.unwrap();
        prop_assert_eq!((again.verdict, again.over), (Verdict::Enough, Length::ZERO));
    }

    #[test]
    fn arms_lengths_never_fall_short_and_by_less_than_a_tenth(question in any_question()) {
        let answer = answer(&question).unwrap();
        let (tail, arm) = (i128::from(answer.tail.to_nm()), i128::from(ARM.to_nm()));
        let Fraction { over, under } = answer.arms;
        // In tenths of an arm: the sum without a division.
        prop_assert_eq!(10 % under, 0);
        let tenths = i128::from(over * (10 / under));
        prop_assert!(tenths * arm >= tail * 10 && (tenths - 1) * arm < tail * 10);
    }

    #[test]
    fn the_verdict_is_what_is_over(question in any_question()) {
        let left = answer(&question).unwrap().left.unwrap();
        prop_assert_eq!(left.verdict == Verdict::Enough, left.over >= Length::ZERO);
        prop_assert_eq!(left.verdict == Verdict::Short, left.over_bare < Length::ZERO);
    }

    #[test]
    fn what_is_left_gives_as_many_stitches_as_it_says_and_no_more(question in any_question()) {
        let tail = question.left.unwrap().tail;
        let with = |to_go: u32| {
            // Only then may so many be to go; what they take hangs on the stitches by the edge alone.
            let left = Some(Left { tail, to_go: to_go.min(question.stitches) });
            answer(&Question { left, ..question }).unwrap().left.unwrap()
        };
        let Some(gives) = with(0).gives else {
            let is_thumb = matches!(question.method.strand(), Strand::Thumb { .. });
            prop_assert!(!is_thumb);
            return Ok(());
        };
        prop_assert!(gives.with_reserve <= gives.bare);
        for to_go in [gives.with_reserve, gives.bare, gives.with_reserve + 1, gives.bare + 1] {
            if to_go > question.stitches {
                continue;
            }
            let verdict = with(to_go).verdict;
            let is_short_of_its_end = tail < question.end;
            prop_assert_eq!(verdict == Verdict::Enough, !is_short_of_its_end && to_go <= gives.with_reserve);
            prop_assert_eq!(verdict == Verdict::Short, is_short_of_its_end || to_go > gives.bare);
        }
    }

    #[test]
    fn more_stitches_never_need_less(question in any_question(), more in 1_u32..500) {
        // By the edge alone more stitches lie in the same edge, so it is longer too.
        let width = question.width.map(|width| {
            let nm = i128::from(width.to_nm()) * i128::from(question.stitches + more) / i128::from(question.stitches);
            Length::from_nm(nm as i64)
        });
        let longer = Question { stitches: question.stitches + more, width, ..question };
        let tail = |question: &Question| answer(question).unwrap().tail;
        // The longer edge was rounded down, to four nanometres and 130 % and a reserve of as much again.
        let slack = Length::from_nm(12);
        prop_assert!(tail(&longer).saturating_add(slack) >= tail(&question));
    }

    #[test]
    fn nothing_panics(
        stitches: u32,
        method in 0_usize..8,
        wraps: u32,
        nm: [i64; 6],
        counts: [u32; 2],
    ) {
        let [a, b, c, d, e, f] = nm.map(Length::from_nm);
        let question = Question {
            method: Method::ALL[method],
            yarn: per_inch(wraps),
            needle: Some(a),
            second: Some(b),
            width: Some(c),
            gauge: Some(Gauge::of(counts[1], b)),
            measured: measured(counts[0], d),
            end: e,
            left: Some(Left { tail: f, to_go: counts[1] }),
            ..Question::about(stitches)
        };
        let _ = answer(&question);
        let _ = answer(&Question { yarn: None, needle: None, width: None, gauge: None, measured: None, ..question });
        let most = Question {
            stitches: STITCHES.most,
            yarn: Some(Thickness::Class(Weight::Jumbo)),
            needle: Some(NEEDLE.most),
            second: Some(NEEDLE.most),
            width: Some(EDGE.most),
            gauge: Some(Gauge::of(1, Gauge::TEN_CM)),
            measured: measured(1, USED.most),
            end: END.most,
            left: Some(Left { tail: LEFT.most, to_go: STITCHES.most }),
            ..question
        };
        let answer = answer(&most).unwrap();
        prop_assert!(answer.tail < Length::MAX);
    }
}

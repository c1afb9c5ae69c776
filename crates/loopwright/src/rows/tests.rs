//! Rows found by trying them all, garter worked on a simulated needle, and each obvious sum beside the right one.

use super::*;
use crate::shaping::Side;
use proptest::prelude::*;

fn ten(count: u32) -> Gauge {
    Gauge::of(count, Gauge::TEN_CM)
}

fn cm(cm: i64) -> Length {
    Length::from_mm(10 * cm)
}

/// 28 rows in 10 cm when washed.
fn about(ask: Ask) -> Question {
    Question::about(ask, ten(28))
}

fn with_tape(unwashed: Option<Gauge>, rows: u32, mm: i64) -> Answer {
    let tape = Some(Tape {
        rows,
        length: Length::from_mm(mm),
    });
    answer(&Question {
        unwashed,
        tape,
        ..about(Ask::Length(cm(50)))
    })
    .unwrap()
}

#[test]
fn length_to_rows_and_back() {
    let there = answer(&about(Ask::Length(cm(40)))).unwrap();
    assert_eq!((there.pick.rows, there.pick.length), (112, cm(40)));
    assert_eq!(there.off, Length::ZERO);
    let back = answer(&about(Ask::Rows(112))).unwrap();
    assert_eq!(back.pick.length, cm(40));
    // Half a row in 28: 39.3 to 40.7 cm.
    assert_eq!(there.range.least, Length::from_nm(392_982_456));
    assert_eq!(there.range.most, Length::from_nm(407_272_727));
    assert_eq!((there.below.unwrap().rows, there.above.unwrap().rows), (111, 113));
}

#[test]
fn rows_counted_over_four_inches_are_not_rows_over_ten_centimetres() {
    let inches = Question::about(Ask::Length(cm(100)), Gauge::of(28, Gauge::FOUR_INCHES));
    // The obvious sum says 280, which are 101.6 cm.
    assert_eq!(answer(&inches).unwrap().pick.rows, 276);
}

#[test]
fn the_tape_in_mid_knit_meets_unwashed_knitting() {
    // 30 rows in 10 cm on the needle, 28 when washed; 60 rows are done, and the tape says 20 cm.
    let right = with_tape(Some(ten(30)), 60, 200);
    let course = right.course.unwrap();
    assert_eq!(
        (course.standing, course.should_be, course.off),
        (Standing::OnCourse, cm(20), Length::ZERO)
    );
    // The obvious sum holds the tape to the washed gauge, 21.4 cm, and calls it behind.
    let wrong = with_tape(None, 60, 200);
    assert_eq!(wrong.course.unwrap().standing, Standing::Behind);
    // It stops too late, too: 140 rows are 50 cm when washed, and the tape says 46.7 then. At 50 by the tape it is 53.6.
    assert_eq!((right.pick.rows, course.to_go), (140, 80));
    assert_eq!(course.stop_at, Length::from_nm(466_666_667));
    assert_eq!(course.after_washing, Length::from_nm(214_285_714));
    let stopped_by_tape = with_tape(Some(ten(30)), 150, 500).course.unwrap();
    assert_eq!(stopped_by_tape.after_washing, Length::from_nm(535_714_286));
}

#[test]
fn taller_rows_are_ahead_and_need_fewer() {
    let ahead = with_tape(Some(ten(30)), 60, 210).course.unwrap();
    assert_eq!((ahead.standing, ahead.off), (Standing::Ahead, Length::from_mm(10)));
    // 21 cm are 22.5 when washed; 60 rows of 22.5 cm make 133 rows of 50, where the swatch said 140.
    assert_eq!((ahead.rows, ahead.to_go), (133, 73));
    // 133 rows as these are 46.55 cm by the tape, and 49.9 when washed.
    assert_eq!(ahead.stop_at, Length::from_nm(465_500_000));
    let behind = with_tape(Some(ten(30)), 60, 190).course.unwrap();
    assert_eq!((behind.standing, behind.rows), (Standing::Behind, 147));
    // Half a row in 30 either way is no more than a misreading: 19.67 to 20.34 cm.
    for (mm, standing) in [
        (196, Standing::Behind),
        (197, Standing::OnCourse),
        (203, Standing::OnCourse),
        (204, Standing::Ahead),
    ] {
        assert_eq!(with_tape(Some(ten(30)), 60, mm).course.unwrap().standing, standing);
    }
    let past = with_tape(Some(ten(30)), 150, 500);
    let past = past.course.unwrap();
    assert_eq!((past.to_go, past.past), (0, 10));
}

/// What is seen on the right side after each row: a ridge is made by a row that shows purl bumps.
fn ridges(rows: u32, is_knit: impl Fn(u32) -> bool, round: bool) -> u32 {
    let mut bumps = 0;
    for row in 1..=rows {
        let right_side = round || row % 2 == 1;
        bumps += u32::from(is_knit(row) != right_side);
    }
    bumps
}

#[test]
fn a_ridge_of_garter_is_two_rows_and_in_the_round_a_knit_and_a_purl_round() {
    let question = Question {
        garter: true,
        ..Question::about(Ask::Ridges(21), ten(42))
    };
    let flat = answer(&question).unwrap();
    assert_eq!((flat.pick.rows, flat.ridges, flat.pick.length), (42, 21, cm(10)));
    assert_eq!(ridges(flat.pick.rows, |_| true, false), 21);
    let round = answer(&Question {
        round: true,
        ..question
    })
    .unwrap();
    assert_eq!(ridges(round.pick.rows, |row| row % 2 == 1, true), 21);
    // The obvious way knits every round, and has no ridge at all.
    assert_eq!(ridges(round.pick.rows, |_| true, true), 0);
}

/// Only what holds of this answer.
#[test]
fn notes_are_of_the_answer() {
    let notes = |question: &Question| answer(question).unwrap().notes;
    let last = |side| Note::LastRow { side };
    let (right, wrong) = (Side::Right, Side::Wrong);
    assert_eq!(notes(&about(Ask::Length(cm(40)))), [last(wrong)]);
    assert_eq!(notes(&about(Ask::Rows(45))), [last(right)]);
    assert_eq!(notes(&about(Ask::Length(cm(50)))), [last(wrong), Note::Drops]);
    let garter = Question {
        garter: true,
        round: true,
        ..about(Ask::Rows(45))
    };
    assert_eq!(notes(&garter), [Note::GarterInTheRound, Note::HalfRidge]);
    let chart = Question {
        repeat: 12,
        ..about(Ask::Rows(112))
    };
    assert_eq!(notes(&chart), [last(wrong), Note::InsideRepeat]);
    // A repeat of 4 after 3 rows never ends on a ridge, wherever it ends.
    let never = Question {
        garter: true,
        repeat: 4,
        set_up: 3,
        ..about(Ask::Length(cm(10)))
    };
    assert_eq!(notes(&never), [last(right), Note::NeverWholeRidges]);
    let least = Question {
        repeat: 40,
        ..about(Ask::Length(cm(1)))
    };
    assert_eq!(notes(&least), [last(wrong), Note::NoFewer]);
}

#[test]
fn garter_ends_on_whole_ridges() {
    let question = Question {
        garter: true,
        round: true,
        ..Question::about(Ask::Length(Length::from_mm(105)), ten(42))
    };
    // 44.1 rows; of 44.6 the obvious sum makes 45, half a ridge.
    assert_eq!(answer(&question).unwrap().pick.rows, 44);
    let longer = Question {
        ask: Ask::Length(Length::from_mm(107)),
        ..question
    };
    assert_eq!(answer(&longer).unwrap().pick.rows, 44);
    let odd = answer(&Question {
        ask: Ask::Rows(45),
        ..question
    })
    .unwrap();
    assert!(!odd.ends);
    assert_eq!((odd.below.unwrap().rows, odd.above.unwrap().rows), (44, 46));
    // A repeat of 5 after 2 rows ends on a ridge every second time: 2, 12, 22, 32, 42.
    let chart = answer(&Question {
        repeat: 5,
        set_up: 2,
        ..question
    })
    .unwrap();
    assert_eq!((chart.pick.rows, chart.below.unwrap().rows), (42, 32));
    // A repeat of 6 after 3 rows never does.
    let never = answer(&Question {
        repeat: 6,
        set_up: 3,
        ..question
    })
    .unwrap();
    assert!(never.pick.ends_right_side());
}

#[test]
fn a_chart_is_set_up_and_ends_where_it_should() {
    let question = Question {
        repeat: 12,
        set_up: 2,
        end_after: 7,
        ..about(Ask::Length(cm(40)))
    };
    let chart = answer(&question).unwrap();
    // 2 + 9 x 12 = 110 and row 7 of the next is 117; 105 and 117 are the ends beside 112. The obvious sum, 40 cm over
    // the length of a repeat, says 9 1/3 repeats and forgets both the set-up rows and the end.
    assert_eq!((chart.pick.rows, chart.repeats, chart.row), (117, 9, 7));
    assert_eq!(chart.below.unwrap().rows, 105);
    let whole = answer(&Question {
        end_after: 12,
        ..question
    })
    .unwrap();
    assert_eq!((whole.pick.rows, whole.repeats, whole.row), (110, 9, 0));
    let repeats = answer(&Question {
        ask: Ask::Repeats(9),
        ..question
    })
    .unwrap();
    assert_eq!(
        (repeats.pick.rows, repeats.pick.length),
        (117, Length::from_nm(417_857_143))
    );
    let elsewhere = answer(&Question {
        ask: Ask::Rows(112),
        ..question
    })
    .unwrap();
    assert!(chart.ends && whole.ends && !elsewhere.ends);
    assert_eq!((elsewhere.repeats, elsewhere.row), (9, 2));
    assert_eq!(
        (elsewhere.below.unwrap().rows, elsewhere.above.unwrap().rows),
        (105, 117)
    );
}

#[test]
fn two_equally_near_and_one_that_is_too_long() {
    let tie = answer(&Question {
        repeat: 8,
        ..about(Ask::Length(cm(10)))
    })
    .unwrap();
    assert_eq!(tie.pick.rows, 24);
    assert_eq!((tie.as_near, tie.above.unwrap().rows), (true, 32));
    let fewest = answer(&Question {
        repeat: 40,
        set_up: 2,
        end_after: 3,
        ..about(Ask::Length(Length::from_mm(10)))
    })
    .unwrap();
    assert_eq!((fewest.pick.rows, fewest.below, fewest.as_near), (5, None, false));
}

#[test]
fn edges_that_are_measured_along_are_as_high_as_a_row() {
    let both = answer(&Question {
        edges: 2,
        ..about(Ask::Length(cm(10)))
    })
    .unwrap();
    assert_eq!((both.pick.rows, both.pick.length), (26, cm(10)));
}

#[test]
fn every_field_out_of_bounds_is_named() {
    let bad = Gauge::new(1, Length::from_nm(1)).unwrap();
    let question = Question {
        ask: Ask::Length(Length::ZERO),
        gauge: bad,
        unwashed: Some(bad),
        garter: true,
        round: true,
        repeat: 0,
        set_up: 1_001,
        end_after: 1,
        edges: 3,
        tape: Some(Tape {
            rows: 0,
            length: Length::ZERO,
        }),
    };
    let problems = answer(&question).unwrap_err();
    let names: Vec<Name> = problems.iter().filter_map(|problem| problem.field.name()).collect();
    let all = [
        Name::Length,
        Name::Gauge,
        Name::Gauge,
        Name::Unwashed,
        Name::Unwashed,
        Name::Repeat,
        Name::SetUp,
        Name::EndAfter,
        Name::Edges,
        Name::TapeRows,
        Name::TapeLength,
    ];
    assert_eq!(names, all);
    for (ask, name, most) in [
        (Ask::Rows(20_001), Name::Rows, 20_000),
        (Ask::Ridges(u32::MAX), Name::Ridges, 10_000),
        (Ask::Repeats(u32::MAX), Name::Repeats, 20_000),
    ] {
        let kind = Kind::TooMany { most };
        assert_eq!(answer(&about(ask)).unwrap_err(), [Problem::new(name, kind)]);
    }
    // So many rows that the length is too long: the longest that can be is named, and can be had.
    let tight = Gauge::of(400, Gauge::SPANS.least);
    let long = answer(&Question::about(Ask::Length(WIDTH.most), tight)).unwrap_err();
    let Kind::TooLarge {
        most: Amount::Length(most),
    } = long[0].kind
    else {
        panic!("{long:?}");
    };
    assert_eq!(
        answer(&Question::about(Ask::Length(most), tight)).unwrap().pick.rows,
        ROWS.most
    );
}

fn gauge() -> impl Strategy<Value = Gauge> {
    let spans = [Gauge::TEN_CM, Gauge::FOUR_INCHES, Length::from_mm(50)];
    (4_000_u32..60_000, prop::sample::select(spans.to_vec())).prop_map(|(count, span)| Gauge::new(count, span).unwrap())
}

fn question() -> impl Strategy<Value = Question> {
    let ask = prop_oneof![
        (5_000_000_i64..1_500_000_000).prop_map(|nm| Ask::Length(Length::from_nm(nm))),
        (1_u32..900).prop_map(Ask::Rows),
        (1_u32..400).prop_map(Ask::Ridges),
        (1_u32..60).prop_map(Ask::Repeats),
    ];
    let tape = prop::option::of((1_u32..500, 5_000_000_i64..1_000_000_000));
    let chart = (1_u32..40, 0_u32..20, 0_u32..40, 0_u32..=2);
    (ask, gauge(), prop::option::of(gauge()), any::<[bool; 2]>(), chart, tape).prop_map(
        |(ask, gauge, unwashed, [garter, round], (repeat, set_up, end_after, edges), tape)| Question {
            ask,
            gauge,
            unwashed,
            garter,
            round,
            repeat,
            set_up,
            end_after: end_after % (repeat + 1),
            edges,
            tape: tape.map(|(rows, nm)| Tape {
                rows,
                length: Length::from_nm(nm),
            }),
        },
    )
}

/// Works the rows one by one, and says whether the last ends the chart as asked.
fn ends_as_asked(question: &Question, rows: u32) -> bool {
    let (mut set_up, mut in_repeat) = (0, 0);
    for _ in 0..rows {
        if set_up < question.set_up {
            set_up += 1;
        } else if in_repeat == question.repeat {
            in_repeat = 1;
        } else {
            in_repeat += 1;
        }
    }
    let end = if question.end_after == 0 {
        question.repeat
    } else {
        question.end_after
    };
    // Nothing of the repeat yet is as good as a whole one.
    let there = in_repeat == end || (in_repeat == 0 && end == question.repeat);
    rows > 0 && set_up == question.set_up && there
}

proptest! {
    #[test]
    fn no_number_that_ends_as_asked_is_nearer(question in question()) {
        let found = answer(&question).unwrap();
        let fits = |rows: &u32| ends_as_asked(&question, *rows) && !(question.garter && rows % 2 == 1);
        let possible: Vec<u32> = (1..=2_500).filter(fits).collect();
        // Garter that never ends on a ridge is told so instead.
        prop_assume!(!possible.is_empty());
        let below = possible.iter().copied().rfind(|rows| *rows < found.pick.rows);
        let above = possible.iter().copied().find(|rows| *rows > found.pick.rows);
        prop_assert_eq!(found.below.map(|count| count.rows), below);
        prop_assert_eq!(found.above.map(|count| count.rows), above);
        prop_assert_eq!(found.ends, fits(&found.pick.rows));
        prop_assert_eq!(found.off, found.pick.length.saturating_sub(match question.ask {
            Ask::Length(length) => length,
            _ => found.pick.length,
        }));
        if let Ask::Length(length) = question.ask {
            prop_assert!(fits(&found.pick.rows));
            let ideal = question.gauge.count_over(length) - f64::from(question.edges);
            let miss = |rows: u32| (f64::from(rows) - ideal).abs();
            let nearest = possible.iter().copied().map(miss).fold(f64::INFINITY, f64::min);
            prop_assert!((miss(found.pick.rows) - nearest).abs() < 1e-6);
            let tied = above.is_some_and(|above| (miss(above) - miss(found.pick.rows)).abs() < 1e-9);
            prop_assert_eq!(found.as_near, tied);
        }
    }

    #[test]
    fn counts_add_up(question in question()) {
        let found = answer(&question).unwrap();
        for count in [Some(found.pick), found.below, found.above].into_iter().flatten() {
            let length = question.gauge.width_of(f64::from(count.rows + question.edges)).unwrap();
            prop_assert!(length.saturating_sub(count.length).to_nm().abs() <= 1);
        }
        if found.pick.rows >= question.set_up {
            prop_assert_eq!(question.set_up + found.repeats * question.repeat + found.row, found.pick.rows);
        }
        prop_assert!(found.row < question.repeat);
        prop_assert!(found.range.least < found.pick.length && found.pick.length < found.range.most);
        if let (Some(course), Some(tape)) = (found.course, question.tape) {
            prop_assert_eq!(course.to_go + tape.rows, course.rows + course.past);
            prop_assert!(course.standing != Standing::OnCourse || course.rows == found.pick.rows);
            let longer = course.off > Length::ZERO;
            prop_assert!(course.standing != Standing::Ahead || longer);
            prop_assert!(course.standing != Standing::Behind || !longer);
        }
    }

    #[test]
    fn knitting_as_the_swatch_did_changes_nothing(question in question(), rows in 1_u32..500) {
        // A tape that says just what it should, to the nanometre: on course, and no other number of rows.
        let unwashed = question.unwashed.unwrap_or(question.gauge);
        let length = unwashed.width_of(f64::from(rows)).unwrap();
        prop_assume!(WIDTH.allow(length));
        let found = answer(&Question { tape: Some(Tape { rows, length }), ..question }).unwrap();
        let course = found.course.unwrap();
        prop_assert_eq!((course.standing, course.rows), (Standing::OnCourse, found.pick.rows));
    }

    #[test]
    fn twice_the_scale_changes_no_count(question in question()) {
        let double = |gauge: Gauge| Gauge::new((gauge.count() * 1_000.0).round() as u32, gauge.span().saturating_mul(2)).unwrap();
        let large = Question {
            ask: match question.ask {
                Ask::Length(length) => Ask::Length(length.saturating_mul(2)),
                other => other,
            },
            gauge: double(question.gauge),
            unwashed: question.unwashed.map(double),
            tape: question.tape.map(|tape| Tape { length: tape.length.saturating_mul(2), ..tape }),
            ..question
        };
        let (small, large) = (answer(&question).unwrap(), answer(&large).unwrap());
        let rows = |count: Option<Count>| count.map(|count| count.rows);
        for (small, large) in [(Some(small.pick), Some(large.pick)), (small.below, large.below), (small.above, large.above)] {
            prop_assert_eq!(rows(small), rows(large));
        }
        let off = small.pick.length.saturating_mul(2).saturating_sub(large.pick.length);
        prop_assert!(off.to_nm().abs() <= 1);
        prop_assert_eq!(small.course.map(|course| course.to_go), large.course.map(|course| course.to_go));
    }

    #[test]
    fn nothing_panics(counts: [u32; 8], spans: [i64; 4], flags: [bool; 2], kind in 0_usize..4) {
        let [first, second, asked, repeat, set_up, end_after, edges, tape_rows] = counts;
        let any = |count: u32, span: i64| Gauge::new(count.max(1), Length::from_nm(span.saturating_abs().max(1))).unwrap();
        let ask = [Ask::Length(Length::from_nm(spans[2])), Ask::Rows(asked), Ask::Ridges(asked), Ask::Repeats(asked)];
        let [garter, round] = flags;
        let wild = Question {
            ask: ask[kind],
            gauge: any(first, spans[0]),
            unwashed: Some(any(second, spans[1])),
            garter,
            round,
            repeat,
            set_up,
            end_after,
            edges,
            tape: Some(Tape { rows: tape_rows, length: Length::from_nm(spans[3]) }),
        };
        let _ = answer(&wild);
        // The corners of what is accepted.
        let corners = [Gauge::of(400, Gauge::SPANS.least), Gauge::of(1, Gauge::SPANS.most), Gauge::of(28, Gauge::TEN_CM)];
        for gauge in corners {
            for unwashed in corners {
                for (rows, length) in [(ROWS.most, WIDTH.least), (1, WIDTH.most)] {
                    for ask in [Ask::Length(WIDTH.most), Ask::Length(WIDTH.least), Ask::Rows(ROWS.most), Ask::Ridges(10_000), Ask::Repeats(18)] {
                        let corner = Question {
                            ask,
                            gauge,
                            unwashed: Some(unwashed),
                            repeat: if repeat % 2 == 0 { 1_000 } else { 999 },
                            set_up: 1_000,
                            end_after: end_after % 999,
                            edges: 2,
                            tape: Some(Tape { rows, length }),
                            ..wild
                        };
                        let _ = answer(&corner);
                    }
                }
            }
        }
    }
}

//! Every schedule is knitted row by row on a simulated needle; each obvious sum stands beside the right one.

use super::*;
use crate::problem::Kind;
use crate::row::{self, Stitch};
use proptest::prelude::*;

fn block(plain: u32, change: u32, times: u32) -> Block {
    Block { plain, change, times }
}

fn flat(next: Side) -> Knitting {
    Knitting::Flat { next }
}

/// Works the instruction as it reads, knowing nothing of rows or gaps: plain rows, then one shaping row, so many times,
/// then the plain rows that are left. Gives the rows worked, the count, and the rows that were shaped.
fn worked(schedule: &Schedule, stitches: u32) -> (u32, u32, Vec<u32>) {
    let (mut row, mut count, mut shaped) = (0, stitches, Vec::new());
    for block in &schedule.blocks {
        for _ in 0..block.times {
            row += block.plain + 1;
            count = if schedule.gain {
                count + block.change
            } else {
                count - block.change
            };
            shaped.push(row);
        }
    }
    (row + schedule.left, count, shaped)
}

fn rows_of(schedule: &Schedule) -> Vec<u32> {
    schedule.rows().map(|shaped| shaped.row).collect()
}

/// "Every 6th row" from a right-side row 1 is 6, 12, 18: all wrong side.
#[test]
fn right_side_only_schedules_keep_to_the_right_side() {
    for next in [Side::Right, Side::Wrong] {
        for rows in 11..80 {
            let question = Question {
                knitting: flat(next),
                ..Question::about(Ask::Lose(10), rows)
            };
            let schedule = answer(&question).unwrap().schedule;
            for shaped in schedule.rows() {
                assert_eq!(shaped.side, Side::Right);
                assert_eq!(shaped.row % 2 == 1, next == Side::Right, "row {}", shaped.row);
            }
            let rows = rows_of(&schedule);
            let gaps: Vec<_> = rows.windows(2).map(|pair| pair[1] - pair[0]).collect();
            let (least, most) = (gaps.iter().min().unwrap(), gaps.iter().max().unwrap());
            assert!(gaps.iter().all(|gap| gap % 2 == 0) && most - least <= 2, "{gaps:?}");
        }
    }
    let obvious = [6, 12, 18].map(|row| flat(Side::Right).side(row));
    assert_eq!(obvious, [Side::Wrong; 3]);
    // An odd rate alternates between right-side rows and wrong-side ones.
    let any = Question {
        right_side: false,
        ..Question::about(Ask::Lose(10), 30)
    };
    let any = answer(&any).unwrap();
    assert_eq!(rows_of(&any.schedule), [1, 8, 15, 22, 29]);
    let wrong = any.schedule.rows().filter(|shaped| shaped.side == Side::Wrong);
    assert_eq!(wrong.count(), 2);
}

#[test]
fn the_row_that_does_not_fit_is_said_to_be_left_at_the_end() {
    let even = answer(&Question::about(Ask::Lose(10), 18)).unwrap();
    assert_eq!((even.used, even.schedule.left), (17, 1));
    let odd = answer(&Question::about(Ask::Lose(10), 19)).unwrap();
    assert_eq!((odd.used, odd.schedule.left), (17, 2));
    // At the beginning too: two plain rows from a wrong-side row end on a wrong-side row.
    let first = Question {
        first: Some(0),
        knitting: flat(Side::Wrong),
        ..Question::about(Ask::Lose(10), 19)
    };
    let first = answer(&first).unwrap();
    assert_eq!(rows_of(&first.schedule).first(), Some(&2));
    assert_eq!(first.schedule.blocks[0].plain, 1);
}

/// 9 decreases "every 8th row" take 72 rows counted one way, 72 with 7 plain at the end the other, and 65 the third.
#[test]
fn every_eighth_row_nine_times_has_one_meaning() {
    let order = Order::OneRate;
    let at_once = Question {
        order,
        ..Question::about(Ask::Lose(18), 68)
    };
    let at_once = answer(&at_once).unwrap();
    assert_eq!(at_once.schedule.blocks, [block(0, 2, 1), block(7, 2, 8)]);
    assert_eq!((at_once.used, at_once.schedule.left), (65, 3));
    let behind = Question {
        order,
        first: Some(7),
        right_side: false,
        ..Question::about(Ask::Lose(18), 73)
    };
    let behind = answer(&behind).unwrap();
    assert_eq!(behind.schedule.blocks, [block(7, 2, 9)]);
    assert_eq!((behind.used, behind.schedule.left), (72, 1));
    // The beginning a gap like the others is the same thing.
    let gap = Question {
        first: None,
        right_side: false,
        ..Question::about(Ask::Lose(18), 73)
    };
    assert_eq!(answer(&gap).unwrap().schedule, behind.schedule);
    // The obvious sum, 68 / 9 = 7 rows each, is odd, and works no matter what is meant by "every".
    assert_eq!(68 / 9, 7);
    for answer in [at_once, behind] {
        let (rows, stitches, _) = worked(&answer.schedule, 100);
        assert_eq!((rows, stitches), (answer.used + answer.schedule.left, 82));
    }
}

/// An armhole and a neck at the same time: the needle carries the sum. Read one after the other, as the text stands,
/// they take 60 rows instead of 40.
#[test]
fn two_shapings_at_once_are_the_sum_of_two_tracks() {
    let armhole = Question {
        each: 1,
        stitches: Some(40),
        ..Question::about(Ask::Lose(8), 20)
    };
    let neck = Question {
        each: 1,
        first: Some(10),
        ..Question::about(Ask::Lose(12), 40)
    };
    let (armhole, neck) = (answer(&armhole).unwrap().schedule, answer(&neck).unwrap().schedule);
    let mut count = 40;
    let mut meet = 0;
    for row in 1..=40 {
        let here: Vec<_> = armhole
            .rows()
            .chain(neck.rows())
            .filter(|shaped| shaped.row == row)
            .collect();
        meet += u32::from(here.len() == 2);
        count -= here.iter().map(|shaped| shaped.change).sum::<u32>();
        assert_eq!(40 - armhole.changed_by(row) - neck.changed_by(row), count, "row {row}");
    }
    assert_eq!(count, 20);
    assert!(meet > 0, "some rows shape both");
    assert_eq!(armhole.changed_by(0), 0);
    assert_eq!(neck.changed_by(u32::MAX), 12);
}

#[test]
fn one_track_never_takes_more_than_there_is() {
    let problems = answer(&Question {
        stitches: Some(12),
        ..Question::about(Ask::Lose(12), 60)
    })
    .unwrap_err();
    assert_eq!(problems, [Problem::new(Name::Amount, Kind::TooMany { most: 10 })]);
    let problems = answer(&Question {
        stitches: Some(2),
        ..Question::about(Ask::Lose(2), 60)
    })
    .unwrap_err();
    assert_eq!(
        problems,
        [Problem {
            field: Name::Stitches.into(),
            kind: Kind::TooFew { least: 3 }
        }]
    );
}

/// 13 stitches two at a time: the obvious sum rounds to 6 rows and ends a stitch off.
#[test]
fn a_total_that_is_no_multiple_has_both_neighbours_or_a_rest() {
    let question = Question {
        stitches: Some(61),
        ..Question::about(Ask::Lose(13), 60)
    };
    let kind = |below, above| Kind::NoExact { below, above };
    let problem = |ask| answer(&Question { ask, ..question }).unwrap_err()[0];
    assert_eq!(problem(Ask::Lose(13)).kind, kind(Some(12), Some(14)));
    assert_eq!(problem(Ask::Reach(48)).kind, kind(Some(47), Some(49)));
    assert_eq!(problem(Ask::Reach(74)).kind, kind(Some(73), Some(75)));
    assert_eq!(problem(Ask::Gain(1)).kind, Kind::TooFew { least: 2 });
    assert_eq!(problem(Ask::Reach(61)).kind, Kind::Already);
    assert_eq!(problem(Ask::Reach(0)).kind, kind(None, Some(1)));
    // One single decrease added to the rest.
    let rest = answer(&Question { rest: true, ..question }).unwrap();
    assert_eq!((rest.shaping_rows, rest.after), (7, Some(48)));
    assert_eq!(rest.schedule.rows().last().map(|shaped| shaped.change), Some(1));
    assert_eq!(rest.in_last, 1);
    assert_eq!(worked(&rest.schedule, 61).1, 48);
}

#[test]
fn a_target_needs_the_count_now() {
    let problems = answer(&Question::about(Ask::Reach(40), 60)).unwrap_err();
    assert_eq!(
        problems,
        [Problem {
            field: Name::Stitches.into(),
            kind: Kind::Missing
        }]
    );
}

/// k2tog at both edges leans right at both: the obvious pair is no pair.
#[test]
fn a_pair_mirrors_on_either_side() {
    for slope in [Slope::Along, Slope::Across] {
        for (ask, increase) in [
            (Ask::Lose(8), Increase::M1),
            (Ask::Gain(8), Increase::M1),
            (Ask::Gain(8), Increase::Yo),
            (Ask::Gain(8), Increase::Kfb),
        ] {
            let question = Question {
                slope,
                increase,
                edge: 3,
                stitches: Some(40),
                ..Question::about(ask, 60)
            };
            let pair = answer(&question).unwrap().pair.unwrap();
            let kfb = u32::from(increase == Increase::Kfb && ask == Ask::Gain(8));
            for side in [Side::Right, Side::Wrong] {
                let on = pair.on(side);
                assert_eq!(on.first.mirror(), on.last);
                assert_eq!(
                    (on.before, on.after),
                    (3, 3 + kfb),
                    "the bar of a kfb comes behind its stitch"
                );
                // Seen from the right side, a wrong-side row begins at the left edge: the same lean at the same edge.
                let at_right_edge = if side == Side::Right { on.first } else { on.last };
                assert_eq!(at_right_edge.lean(), pair.first.lean());
            }
        }
    }
    let pair = answer(&Question::about(Ask::Lose(8), 60)).unwrap().pair.unwrap();
    assert_eq!((pair.first, pair.last), (Stitch::Ssk, Stitch::K2tog));
    assert_ne!(pair.first.lean(), Stitch::K2tog.lean());
    let gains = answer(&Question::about(Ask::Gain(8), 60)).unwrap().pair.unwrap();
    assert_eq!((gains.first, gains.last), (Stitch::M1R, Stitch::M1L));
}

/// The obvious pair changes places on a wrong-side row and stays as it is: k2tog and ssk among purl stitches.
#[test]
fn a_pair_on_a_wrong_side_row_is_purled() {
    let on_wrong_side = |ask, increase| {
        let question = Question {
            increase,
            ..Question::about(ask, 60)
        };
        let on = answer(&question).unwrap().pair.unwrap().on(Side::Wrong);
        (on.first, on.last)
    };
    let m1 = Increase::M1;
    assert_eq!(on_wrong_side(Ask::Lose(8), m1), (Stitch::P2tog, Stitch::Ssp));
    assert_eq!(on_wrong_side(Ask::Gain(8), m1), (Stitch::M1Lp, Stitch::M1Rp));
    let kfb = on_wrong_side(Ask::Gain(8), Increase::Kfb);
    assert_eq!(kfb, (Stitch::Pfb, Stitch::Pfb));
}

#[test]
fn a_pair_that_has_no_room_is_not_offered() {
    let question = Question {
        stitches: Some(12),
        edge: 3,
        ..Question::about(Ask::Lose(4), 60)
    };
    // The last of two rows has 10 stitches: 3 + 2 + 2 + 3.
    let roomy = answer(&question).unwrap();
    assert_eq!((roomy.pair.is_some(), roomy.cramped), (true, None));
    let narrow = answer(&Question { edge: 5, ..question }).unwrap();
    assert_eq!(narrow.pair, None);
    // Nothing made in a gap stands outside the edge stitch.
    let bare = Question {
        edge: 0,
        ..Question::about(Ask::Gain(4), 60)
    };
    assert_eq!(answer(&bare).unwrap().pair.map(|pair| pair.before), Some(1));
}

/// The obvious check looks at the last row alone, and withholds the pair from all that have room for it.
#[test]
fn a_pair_is_told_as_long_as_it_has_room() {
    let question = Question {
        stitches: Some(80),
        edge: 3,
        ..Question::about(Ask::Reach(6), 80)
    };
    let exact = answer(&question).unwrap();
    assert!(exact.pair.is_some());
    // 80 - 2 x 36 = 8 are too few for 3 + 2 + 2 + 3: the 37th row, and the 36th before it had 10.
    assert_eq!(exact.cramped, exact.schedule.rows().nth(36).map(|shaped| shaped.row));
    // A single stitch more takes no pair.
    let single = Question {
        rest: true,
        ..Question::about(Ask::Lose(71), 80)
    };
    let single = answer(&Question {
        stitches: Some(80),
        edge: 3,
        ..single
    })
    .unwrap();
    assert_eq!((single.in_last, single.cramped), (1, None));
}

#[test]
fn the_rate_that_comes_first_is_a_choice() {
    let ask = |order| {
        let question = Question {
            order,
            right_side: false,
            ..Question::about(Ask::Lose(12), 15)
        };
        rows_of(&answer(&question).unwrap().schedule)
    };
    // 13 rows between 5 gaps: 2, 2, 3, 3, 3.
    assert_eq!(ask(Order::CloseFirst), [1, 3, 5, 8, 11, 14]);
    assert_eq!(ask(Order::WideFirst), [1, 4, 7, 10, 12, 14]);
    assert_eq!(ask(Order::Mixed), [1, 3, 6, 8, 11, 14]);
    assert_eq!(ask(Order::OneRate), [1, 3, 5, 7, 9, 11]);
}

#[test]
fn the_steepest_and_what_is_steeper() {
    let steepest = answer(&Question::about(Ask::Lose(12), 12)).unwrap();
    assert_eq!(rows_of(&steepest.schedule), [1, 3, 5, 7, 9, 11]);
    assert_eq!((steepest.most, steepest.fewest_rows), (12, 12));
    // One stitch has to stay on the needle.
    let stitches = Some(10);
    let few = answer(&Question {
        stitches,
        ..Question::about(Ask::Lose(2), 60)
    });
    assert_eq!(few.unwrap().most, 8);
    let problem = |field, kind| Problem::new(field, kind);
    assert_eq!(
        answer(&Question::about(Ask::Lose(16), 12)).unwrap_err(),
        [
            problem(Name::Rows, Kind::TooFew { least: 16 }),
            problem(Name::Each, Kind::TooFew { least: 4 }),
            problem(Name::Amount, Kind::TooMany { most: 12 }),
        ]
    );
    // No row at all: only more rows help.
    let none = answer(&Question {
        last: 5,
        ..Question::about(Ask::Lose(2), 5)
    })
    .unwrap_err();
    assert_eq!(none, [problem(Name::Rows, Kind::TooFew { least: 6 })]);
    let one = answer(&Question::about(Ask::Lose(2), 60)).unwrap();
    assert_eq!((one.shaping_rows, one.shared.gaps), (1, 0));
}

/// A whole shaping row over so many stitches.
fn written(pair: Pair, side: Side, stitches: u32) -> String {
    let on = pair.on(side);
    let plain = if side == Side::Right { "K" } else { "P" };
    let middle = stitches - on.before - on.first.uses() - on.at_end();
    let mut terms = Vec::new();
    for (count, change) in [
        (on.before, on.first.abbreviation()),
        (middle, on.last.abbreviation()),
        (on.after, ""),
    ] {
        if count > 0 {
            terms.push(format!("{plain}{count}"));
        }
        terms.push(change.to_owned());
    }
    terms.retain(|term| !term.is_empty());
    terms.join(", ")
}

fn questions() -> impl Strategy<Value = Question> {
    let ask = (1_u32..60).prop_flat_map(|n| prop_oneof![Just(Ask::Lose(n)), Just(Ask::Gain(n)), Just(Ask::Reach(n))]);
    let knitting = prop_oneof![Just(Knitting::Round), Just(flat(Side::Right)), Just(flat(Side::Wrong))];
    let order = prop_oneof![
        Just(Order::CloseFirst),
        Just(Order::WideFirst),
        Just(Order::Mixed),
        Just(Order::OneRate)
    ];
    let increase = prop_oneof![Just(Increase::M1), Just(Increase::Yo), Just(Increase::Kfb)];
    let slope = prop_oneof![Just(Slope::Along), Just(Slope::Across)];
    let counts = (
        1_u32..200,
        proptest::option::of(1_u32..80),
        1_u32..5,
        proptest::option::of(0_u32..6),
        0_u32..6,
    );
    let ways = (any::<bool>(), any::<bool>(), knitting, order, 0_u32..4, slope, increase);
    (ask, counts, ways).prop_map(|(ask, (rows, stitches, each, first, last), ways)| Question {
        ask,
        rows,
        stitches,
        each,
        rest: ways.0,
        right_side: ways.1,
        knitting: ways.2,
        first,
        last,
        order: ways.3,
        edge: ways.4,
        slope: ways.5,
        increase: ways.6,
    })
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(2_000))]
    #[test]
    fn a_schedule_ends_at_the_count_within_the_rows(question in questions()) {
        let Ok(answer) = answer(&question) else { return Ok(()) };
        let start = question.stitches.unwrap_or(1_000);
        let (rows, count, shaped) = worked(&answer.schedule, start);
        prop_assert_eq!(rows, question.rows);
        prop_assert_eq!(count.abs_diff(start), answer.change);
        if let Ask::Reach(target) = question.ask { prop_assert_eq!(count, target); }
        prop_assert_eq!(answer.after, question.stitches.map(|_| count));
        prop_assert_eq!(&shaped, &rows_of(&answer.schedule));
        prop_assert_eq!(shaped.len() as u32, answer.shaping_rows);
        prop_assert_eq!(shaped.last().copied(), Some(answer.used));
        prop_assert!(answer.schedule.left >= question.last);
        prop_assert!(question.rows >= answer.fewest_rows && answer.change <= answer.most);
        let shared = answer.shared;
        prop_assert_eq!(shared.rows, shared.gaps * shared.every + shared.longer * shared.by);
        for shaped in answer.schedule.rows() {
            prop_assert_eq!(shaped.side, question.knitting.side(shaped.row));
            prop_assert!(shaped.side == Side::Right || !question.right_side);
            prop_assert_eq!(answer.schedule.changed_by(shaped.row), shaped.changed);
            prop_assert_eq!(answer.schedule.changed_by(shaped.row - 1), shaped.changed - shaped.change);
        }
    }

    /// Each pair is written out, read back and worked, on every shaping row of its side.
    #[test]
    fn every_pair_can_be_knitted(question in questions()) {
        let Ok(Answer { pair: Some(pair), schedule, cramped, .. }) = answer(&question) else { return Ok(()) };
        let mut count = question.stitches.unwrap_or(500);
        for shaped in schedule.rows() {
            let next = if schedule.gain { count + shaped.change } else { count - shaped.change };
            if shaped.change == 2 && cramped.is_none_or(|row| shaped.row < row) {
                let text = written(pair, shaped.side, count);
                let done = row::work(&row::read(&text).unwrap(), count).unwrap();
                prop_assert_eq!((done.on_needle, done.left_over), (u64::from(next), 0));
                prop_assert!(!done.crowded_gap && !done.ended_in_gap);
            }
            count = next;
        }
    }

    /// What is offered as nearest can be had, or has only another problem left.
    #[test]
    fn the_nearest_is_right(question in questions()) {
        let Err(problems) = answer(&question) else { return Ok(()) };
        for problem in problems {
            for value in problem.kind.nearest() {
                let mut better = question;
                match (problem.field.name(), &mut better.ask) {
                    (Some(Name::Rows), _) => better.rows = value,
                    (Some(Name::Each), _) => better.each = value,
                    (Some(Name::Stitches), _) => better.stitches = Some(value),
                    (Some(Name::Amount), Ask::Lose(amount) | Ask::Gain(amount) | Ask::Reach(amount)) => *amount = value,
                    (other, _) => return Err(TestCaseError::fail(format!("{other:?} offers a number"))),
                }
                let again = answer(&better).err().unwrap_or_default();
                prop_assert!(!again.contains(&problem), "{:?}", problem);
            }
        }
    }

    #[test]
    fn no_question_panics(
        numbers: [u32; 6],
        stitches: Option<u32>,
        first: Option<u32>,
        question in questions(),
        which in 0..64_u8,
    ) {
        let [n, rows, each, last, edge, _] = numbers;
        let asks = [Ask::Lose(n), Ask::Gain(n), Ask::Reach(n)];
        for ask in asks {
            let mut asked = question;
            if which & 1 > 0 { asked.ask = ask; }
            if which & 2 > 0 { asked.rows = rows; }
            if which & 4 > 0 { asked.each = each; }
            if which & 8 > 0 { asked.last = last; }
            if which & 16 > 0 { asked.edge = edge; }
            if which & 32 > 0 { (asked.stitches, asked.first) = (stitches, first); }
            let _ = answer(&asked);
        }
    }

    #[test]
    fn the_largest_questions_do_not_panic(rows in 9_000_u32..=10_000, n in 1_u32..=100_000, each in 1_u32..=1_000) {
        for order in [Order::Mixed, Order::CloseFirst] {
            let question = Question { each, order, rest: true, stitches: Some(100_000 - n.min(99_999)), ..Question::about(Ask::Gain(n), rows) };
            if let Ok(answer) = answer(&question) {
                prop_assert_eq!(worked(&answer.schedule, 0), (rows, n, rows_of(&answer.schedule)));
            }
        }
    }

    #[test]
    fn a_schedule_that_somebody_made_up_does_not_crash(plain: u32, change: u32, times in 0_u32..4, stitches: u32) {
        let blocks = vec![block(plain, change, times); 3];
        let schedule = Schedule { knitting: Knitting::Round, stitches: Some(stitches), gain: plain % 2 == 0, blocks, left: 0 };
        prop_assert_eq!(schedule.rows().count() as u32, 3 * times);
    }
}

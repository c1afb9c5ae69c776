//! Raglans round by round, body and sleeves each counted to its own target.

use super::*;
use crate::row;
use crate::shaping::{Rates, Shaped};
use crate::spacing::Fraction;
use proptest::prelude::*;

fn usual() -> Question {
    Question {
        underarm: 8,
        ..Question::about([56, 16], [200, 68], 64)
    }
}

/// A round as it is written: the stitches of the four lines stand at either end of front and back, and a stitch is made
/// on the side of them that is named.
fn written(parts: [u32; 2], adds: Option<Adds>) -> String {
    let [front_and_back, sleeve] = parts;
    let (on_body, on_sleeves) = match adds {
        None => (false, false),
        Some(Adds::ToBoth) => (true, true),
        Some(Adds::ToBody) => (true, false),
        Some(Adds::ToSleeves) => (false, true),
    };
    let body = |stitches: u32| match on_body {
        true => format!("K1, M1, K{}, M1, K1", stitches - 2),
        false => format!("K{stitches}"),
    };
    let sleeve = match on_sleeves {
        true => format!("M1, K{sleeve}, M1"),
        false => format!("K{sleeve}"),
    };
    let front = front_and_back / 2;
    [body(front), sleeve.clone(), body(front_and_back - front), sleeve].join(", ")
}

/// Works every round on the simulated needle and gives front and back and one sleeve at the end, as a knitter counts them
/// who knows from each track only in which rounds it grows.
fn worked(question: &Question, raglan: &Answer) -> [u32; 2] {
    let grows = |track: &Track, round| track.schedule.rows().any(|shaped| shaped.row == round);
    let mut parts = [question.body, question.sleeve];
    for round in 1..=question.rounds {
        let adds = match (grows(&raglan.body, round), grows(&raglan.sleeves, round)) {
            (false, false) => None,
            (true, true) => Some(Adds::ToBoth),
            (true, false) => Some(Adds::ToBody),
            (false, true) => Some(Adds::ToSleeves),
        };
        let text = written(parts, adds);
        let stitches = parts[0] + 2 * parts[1];
        let done = row::work(&row::read(&text).unwrap(), stitches).unwrap();
        match adds {
            None => {}
            Some(Adds::ToBoth) => parts = [parts[0] + 4, parts[1] + 2],
            Some(Adds::ToBody) => parts[0] += 4,
            Some(Adds::ToSleeves) => parts[1] += 2,
        }
        assert_eq!(
            (done.on_needle, done.left_over),
            (u64::from(parts[0] + 2 * parts[1]), 0),
            "{text}"
        );
        assert!(!done.crowded_gap, "{text}");
    }
    parts
}

/// The obvious sum is one target: 8 every other round for 64 rounds adds 128 to the body and 64 to each sleeve, which
/// then have 88 round instead of 68.
#[test]
fn body_and_sleeves_end_on_two_targets() {
    for rhythm in [Pace::Easiest, Pace::MostEven] {
        let question = Question { rhythm, ..usual() };
        let raglan = answer(&question).unwrap();
        let [body, sleeve] = worked(&question, &raglan);
        assert_eq!((body, raglan.front_and_back), (200 - 2 * 8, 184));
        assert_eq!((sleeve, raglan.aside), (68 - 8, 60));
        assert_eq!((raglan.full, raglan.body_only, raglan.sleeves_only), (22, 10, 0));
    }
    let obvious = 16 + 2 * 32 + 8;
    assert_eq!(obvious, 88);
}

/// Without the cast-on the body would be 16 stitches short of its target, or take four rounds more.
#[test]
fn what_is_cast_on_at_the_underarm_is_not_increased() {
    let without = answer(&Question { underarm: 0, ..usual() }).unwrap();
    let with = answer(&usual()).unwrap();
    assert_eq!((without.full + without.body_only) - (with.full + with.body_only), 4);
    assert_eq!(with.needle + 2 * 8 - 2 * with.aside, 200);
}

/// 10 rounds are of the body only. The obvious order has the 22 full ones first, and a sleeve that is straight from there.
#[test]
fn rounds_of_one_part_only_are_spread_among_the_full_ones() {
    for rhythm in [Pace::Easiest, Pace::MostEven] {
        let raglan = answer(&Question { rhythm, ..usual() }).unwrap();
        let mut full = 0;
        for (count, round) in (1..).zip(raglan.rounds()) {
            full += u32::from(round.adds == Adds::ToBoth);
            // Never a whole round from the share of so many: 22 in 32.
            assert!((full * 32).abs_diff(22 * count) < 32, "{full} in {count}");
        }
        assert_eq!(full, 22);
    }
}

/// No plain rounds are asked for at the beginning, so that both begin at once: a round of the body only never comes where
/// the sleeve has its first.
#[test]
fn body_and_sleeves_begin_in_the_same_round() {
    for rhythm in [Pace::Easiest, Pace::MostEven] {
        for first in 0..3 {
            for sleeve_to in (26..=86).step_by(2) {
                let question = Question {
                    first,
                    rhythm,
                    sleeve_to,
                    ..usual()
                };
                let Ok(raglan) = answer(&question) else { continue };
                let rounds = raglan.rounds();
                assert_eq!(
                    (rounds[0].round, rounds[0].adds),
                    (first + 1, Adds::ToBoth),
                    "{question:?}"
                );
            }
        }
    }
}

/// "Every 2nd round 11 times, then every 4th round 10 times" would have each sleeve 7 stitches ahead halfway.
#[test]
fn a_track_strays_less_than_what_one_of_its_rounds_adds() {
    let raglan = answer(&usual()).unwrap();
    assert_eq!(raglan.sleeves.drift.stitches(2).to_f64().ceil(), 1.0);
    assert_eq!(raglan.body.drift.stitches(4).to_f64(), 0.0);
}

#[test]
fn eight_every_other_round_where_both_take_as_many() {
    let raglan = answer(&Question::about([40, 10], [120, 50], 40)).unwrap();
    assert_eq!((raglan.full, raglan.body_only, raglan.sleeves_only), (20, 0, 0));
    assert_eq!(raglan.every_other, 40);
    let rows: Vec<Shaped> = raglan.schedule.rows().collect();
    let numbers: Vec<u32> = rows.iter().map(|shaped| shaped.row).collect();
    assert_eq!(numbers, (1..=39).step_by(2).collect::<Vec<_>>());
    assert!(rows.iter().all(|shaped| shaped.change == 8));
}

/// Most even, the last gap is of three: rounds 1, 3 to 37, and 40.
#[test]
fn every_other_round_is_kept_where_few_are_left() {
    let raglan = |rounds, rhythm| {
        let question = Question {
            underarm: 8,
            rhythm,
            ..Question::about([80, 16], [176, 64], rounds)
        };
        let schedule = answer(&question).unwrap().schedule;
        let rows: Vec<u32> = schedule.rows().map(|shaped| shaped.row).collect();
        (rows, schedule.left)
    };
    let mut other: Vec<u32> = (1..=39).step_by(2).collect();
    assert_eq!(raglan(41, Pace::Easiest), (other.clone(), 2));
    assert_eq!(raglan(42, Pace::Easiest), (other.clone(), 3));
    // As many as from one raglan round to the next are too many.
    assert_ne!(raglan(43, Pace::Easiest).0, other);
    other[19] = 40;
    assert_eq!(raglan(41, Pace::MostEven), (other, 1));
}

/// Which rounds are full is shared out over the raglan rounds: in these the sleeve's gaps differ by at most one.
#[test]
fn the_rounds_of_the_fewer_lie_evenly_among_the_others() {
    for sleeve_to in (40..=76).step_by(2) {
        let question = Question {
            underarm: 8,
            rhythm: Pace::MostEven,
            ..Question::about([80, 16], [200, sleeve_to], 60)
        };
        let (mut gaps, mut before) = (Vec::new(), None);
        for (place, round) in answer(&question).unwrap().rounds().iter().enumerate() {
            if round.adds == Adds::ToBoth {
                gaps.extend(before.map(|before| place - before));
                before = Some(place);
            }
        }
        let [least, most] = [gaps.iter().min(), gaps.iter().max()];
        assert!(most.unwrap() - least.unwrap() <= 1, "{sleeve_to}: {gaps:?}");
    }
}

#[test]
fn targets_that_lines_do_not_reach_have_neighbours() {
    let problems = answer(&Question {
        body_to: 202,
        sleeve_to: 67,
        ..usual()
    })
    .unwrap_err();
    let problem = |field: Name, below, above| Problem {
        field: field.into(),
        kind: Kind::NoExact { below, above },
    };
    assert_eq!(
        problems,
        [
            problem(Name::BodyTo, Some(200), Some(204)),
            problem(Name::SleeveTo, Some(66), Some(68))
        ]
    );
    let problems = answer(&Question { body_to: 60, ..usual() }).unwrap_err();
    assert_eq!(problems, [problem(Name::BodyTo, None, Some(72))]);
}

#[test]
fn too_few_rounds_say_how_many() {
    let problems = answer(&Question { rounds: 30, ..usual() }).unwrap_err();
    let problem = |field, kind| Problem::new(field, kind);
    assert_eq!(
        problems,
        [
            problem(Name::Rounds, Kind::TooFew { least: 33 }),
            problem(Name::BodyTo, Kind::TooMany { most: 72 + 4 * 29 })
        ]
    );
}

/// 40 plain rounds at either end leave 24 of 64: the targets are as they should be.
#[test]
fn plain_rounds_that_leave_no_room_are_what_is_wrong() {
    let problem = |field, most| Problem::new(field, Kind::TooMany { most });
    let last = answer(&Question { last: 40, ..usual() }).unwrap_err();
    assert_eq!(last, [problem(Name::Last, 32)]);
    let first = answer(&Question { first: 40, ..usual() }).unwrap_err();
    assert_eq!(first, [problem(Name::First, 31)]);
}

/// In the most even order a sleeve keeps to the rounds of the body, never farther from its own place than half the way
/// to the next of them and the round by which that may be off.
#[test]
fn the_most_even_order_keeps_near_the_line_of_each() {
    for rounds in 64..=90 {
        let question = Question {
            rhythm: Pace::MostEven,
            rounds,
            ..usual()
        };
        let raglan = answer(&question).unwrap();
        let half = raglan.body.drift.gap.to_f64() / 2.0;
        assert!(
            raglan.sleeves.drift.rounds().to_f64() <= half + 1.0,
            "{rounds}: {:?}",
            raglan.sleeves.drift
        );
        assert_eq!(worked(&question, &raglan), [184, 60]);
    }
}

/// From neck to underarm a sweater's tracks are always said at two rates; by turns only where that strays less than one
/// of their rounds adds.
#[test]
fn every_usual_raglan_keeps_near_and_nearly_every_one_is_held_in_the_head() {
    let (mut told, mut listed) = (0, 0);
    for rounds in 50..=80 {
        for body_to in (120..=240).step_by(12) {
            for sleeve_to in (44..=76).step_by(4) {
                let question = Question {
                    underarm: 8,
                    ..Question::about([56, 16], [body_to, sleeve_to], rounds)
                };
                let Ok(raglan) = answer(&question) else { continue };
                for track in [&raglan.body, &raglan.sleeves] {
                    let is_near = track.drift.stitches(1) < Fraction::new(1, 1);
                    assert!(is_near || track.schedule.shaping_rows() < 2, "{question:?} {track:?}");
                    match Rates::of(&track.schedule) {
                        // As even as can be, where no two rates keep so near.
                        Rates::Listed => listed += 1,
                        Rates::Nothing | Rates::Once | Rates::One(_) | Rates::Two(_) | Rates::ByTurns { .. } => {
                            told += 1;
                        }
                    }
                }
            }
        }
    }
    assert!(
        told > 5_000 && listed * 50 < told,
        "{told} are told and {listed} listed"
    );
}

proptest! {
    #[test]
    fn every_round_counted_ends_at_both_targets(
        body in 6_u32..100,
        sleeve in 1_u32..40,
        body_rounds in 0_u32..50,
        sleeve_rounds in 0_u32..50,
        underarm in 0_u32..12,
        rounds in 1_u32..100,
        first in 0_u32..4,
        last in 0_u32..4,
        even: bool,
    ) {
        let rhythm = if even { Pace::MostEven } else { Pace::Easiest };
        let to = [body + 2 * underarm + 4 * body_rounds, sleeve + underarm + 2 * sleeve_rounds];
        let question = Question { underarm, first, last, rhythm, ..Question::about([body, sleeve], to, rounds) };
        let Ok(raglan) = answer(&question) else {
            prop_assert!(body_rounds.max(sleeve_rounds) + first + last > rounds);
            return Ok(());
        };
        let [on, arm] = worked(&question, &raglan);
        prop_assert_eq!((on, arm), (raglan.front_and_back, raglan.aside));
        prop_assert_eq!([on + 2 * underarm, arm + underarm], to);
        prop_assert_eq!(on + 2 * arm, raglan.needle);
        let shaped = raglan.rounds();
        prop_assert!(shaped.iter().all(|round| round.round > first && round.round + last <= rounds));
        let counts: Vec<u32> = raglan.schedule.rows().filter_map(|shaped| shaped.stitches).collect();
        prop_assert_eq!(counts, shaped.iter().map(RaglanRound::needle).collect::<Vec<u32>>());
        prop_assert_eq!((raglan.full + raglan.body_only, raglan.full + raglan.sleeves_only), (body_rounds, sleeve_rounds));
        if even {
            prop_assert_eq!(raglan.full, body_rounds.min(sleeve_rounds), "as many full rounds as there can be");
        } else {
            for track in [&raglan.body, &raglan.sleeves] {
                prop_assert!(track.schedule.shaping_rows() < 2 || track.drift.rounds() < track.drift.gap);
            }
        }
    }

    #[test]
    fn no_raglan_panics(numbers: [u32; 8], small in (1_u32..200, 1_u32..200, 1_u32..200, 1_u32..200), which in 0..32_u8) {
        let [body, sleeve, body_to, sleeve_to, underarm, rounds, first, last] = numbers;
        let mut asked = Question::about([small.0, small.1], [small.2, small.3], 50);
        if which & 1 > 0 { (asked.body, asked.sleeve) = (body, sleeve); }
        if which & 2 > 0 { (asked.body_to, asked.sleeve_to) = (body_to, sleeve_to); }
        if which & 4 > 0 { asked.underarm = underarm; }
        if which & 8 > 0 { asked.rounds = rounds; }
        if which & 16 > 0 { (asked.first, asked.last) = (first, last); }
        let _ = answer(&asked);
    }
}

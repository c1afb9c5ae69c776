//! Every small case against all patterns there are, and every reading knitted again from what is said.

use super::fit::{Grid, easiest, longest_turn};
use super::*;
use proptest::prelude::*;

/// Shaping rounds as they are said: a first one, then so many rounds on, so many times, over and over.
fn knitted(start: u32, turn: [(u32, u32); 2], times: u32) -> Vec<u32> {
    let mut rounds = vec![start];
    while (rounds.len() as u32) < times {
        for (every, many) in turn {
            for _ in 0..many {
                rounds.push(rounds[rounds.len() - 1] + every);
            }
        }
    }
    rounds.truncate(times as usize);
    rounds
}

/// The shaping rounds of a reading.
fn said(schedule: &Schedule) -> Option<Vec<u32>> {
    let first = schedule.rows().next().map_or(0, |shaped| shaped.row);
    let pair = |rate: Rate| (rate.every, rate.times);
    Some(match Rates::of(schedule) {
        Rates::Nothing => Vec::new(),
        Rates::Once => vec![first],
        Rates::One(rate) => knitted(first, [pair(rate), (0, 0)], rate.times + 1),
        Rates::Two([one, other]) => knitted(first, [pair(one), pair(other)], one.times + other.times + 1),
        Rates::ByTurns { turn, times } => knitted(first, turn.map(pair), times + 1),
        Rates::Listed => return None,
    })
}

/// How far the rounds stray from the line, and how long one of its gaps is, both times `2 * times * (times - 1)`; told
/// by the line's ends alone.
fn strays(rounds: Rounds, shaped: &[u32]) -> (i64, i64) {
    let (times, room) = (shaped.len() as i64, i64::from(rounds.all - rounds.last));
    let whole = 2 * times * (times - 1);
    // The place of the first, and the gap.
    let (place, gap) = match rounds.first {
        Some(plain) => {
            let place = i64::from(plain) + 1;
            (place * whole, (room - place) * 2 * times)
        }
        None => (whole + room * (times - 1), room * 2 * (times - 1)),
    };
    let each = (0..)
        .zip(shaped)
        .map(|(count, round)| i64::from(*round) * whole - place - count * gap);
    (each.map(i64::abs).max().unwrap_or(0), gap)
}

/// The least that any schedule of a kind strays.
fn least(rounds: Rounds, times: u32, turns: &[[(u32, u32); 2]]) -> i64 {
    let end = rounds.all - rounds.last;
    let starts = rounds.first.map_or(1..=end, |plain| plain + 1..=plain + 1);
    let mut least = i64::MAX;
    for turn in turns {
        let from_one = knitted(1, *turn, times);
        for start in starts.clone() {
            if from_one[times as usize - 1] + start - 1 > end {
                break;
            }
            let shaped: Vec<u32> = from_one.iter().map(|round| round + start - 1).collect();
            least = least.min(strays(rounds, &shaped).0);
        }
    }
    least
}

/// All turns of so many gaps, whatever their rates.
fn turns(of: u32, longest: u32) -> Vec<[(u32, u32); 2]> {
    let mut turns = Vec::new();
    for one in 1..=longest {
        for other in (1..=longest).filter(|other| *other != one) {
            turns.extend((1..of).map(|times| [(one, times), (other, of - times)]));
        }
    }
    turns
}

fn small() -> impl Iterator<Item = (Rounds, u32)> {
    let firsts = [None, Some(0), Some(1), Some(4)];
    let all = (3_u32..=19).flat_map(move |all| {
        let with_first = move |first| [0, 1, 3].map(|last| Rounds { all, first, last });
        firsts.into_iter().flat_map(with_first)
    });
    all.flat_map(|rounds| (2..=rounds.room()).map(move |times| (rounds, times)))
}

/// The kind is the easiest that is near; of its kind no schedule strays less, whatever its rates and wherever it begins;
/// and where there is none, none of any kind is near.
#[test]
fn no_schedule_of_its_kind_strays_less() {
    let [mut one, mut two, mut by_turns, mut far] = [0; 4];
    for (rounds, times) in small() {
        let one_rate: Vec<_> = (1..=rounds.all).map(|every| [(every, times - 1), (0, 0)]).collect();
        let mut kinds = vec![least(rounds, times, &one_rate)];
        for of in std::iter::once(times - 1).chain(2..=longest_turn(times - 1)) {
            kinds.push(least(rounds, times, &turns(of, rounds.all)));
        }
        let (_, gap) = strays(rounds, &[1; 2].repeat(times as usize)[..times as usize]);
        let near = kinds.iter().position(|kind| *kind < gap);
        let fitted = easiest(rounds, Rhythm::Centred, times, Grid::any(rounds));
        assert_eq!(fitted.is_some(), near.is_some(), "{rounds:?} {times} {kinds:?} {gap}");
        if let (Some(fitted), Some(near)) = (fitted, near) {
            let shaped: Vec<u32> = fitted.rounds().collect();
            assert!(shaped.windows(2).all(|pair| pair[0] < pair[1]) && shaped[0] > rounds.first.unwrap_or(0));
            assert!(shaped.len() as u32 == times && shaped[shaped.len() - 1] <= rounds.all - rounds.last);
            assert_eq!(
                strays(rounds, &shaped).0,
                kinds[near],
                "{rounds:?} {times} {shaped:?} {kinds:?}"
            );
        }
        match near {
            Some(0) => one += 1,
            Some(1) => two += 1,
            Some(_) => by_turns += 1,
            None => far += 1,
        }
    }
    assert!(one > 500 && two > 300 && by_turns > 20, "{one} {two} {by_turns} {far}");
}

/// What is said of a schedule makes it again; what no two rates keep near is the most even one.
#[test]
fn what_is_said_is_what_is_scheduled() {
    for (rounds, times) in small() {
        let changes = vec![8; times as usize];
        let growth = Growth {
            from: 96,
            changes: &changes,
        };
        let even = Track::at(Pace::MostEven, rounds, Rhythm::Centred, growth);
        let easiest = Track::at(Pace::Easiest, rounds, Rhythm::Centred, growth);
        for track in [&even, &easiest] {
            let rows: Vec<u32> = track.schedule.rows().map(|shaped| shaped.row).collect();
            match said(&track.schedule) {
                Some(said) => assert_eq!(said, rows),
                None => assert_eq!(track, &even, "{rounds:?} {times}: {rows:?} has to be listed"),
            }
        }
    }
}

fn growing() -> impl Strategy<Value = (Rounds, u32)> {
    let rounds = (1_u32..400, proptest::option::of(0_u32..20), 0_u32..20);
    let rounds = rounds.prop_map(|(all, first, last)| Rounds { all, first, last });
    let with_times = |rounds: Rounds| (Just(rounds), 0..=rounds.room());
    rounds
        .prop_filter("room", |rounds| rounds.room() > 0)
        .prop_flat_map(with_times)
}

proptest! {
    /// Knitted round by round, the count is never farther from the line than is said, and once as far.
    #[test]
    fn the_drift_is_the_one_of_the_rounds_knitted((rounds, times) in growing(), each in 1_u32..20, even: bool) {
        prop_assume!(times > 1);
        let changes = vec![each; times as usize];
        let growth = Growth { from: 96, changes: &changes };
        let pace = if even { Pace::MostEven } else { Pace::Easiest };
        let track = Track::at(pace, rounds, Rhythm::Centred, growth);
        let room = f64::from(rounds.all - rounds.last);
        let (place, gap) = match rounds.first {
            Some(plain) => (f64::from(plain) + 1.0, (room - f64::from(plain) - 1.0) / f64::from(times - 1)),
            None => (1.0 + room / f64::from(times) / 2.0, room / f64::from(times)),
        };
        // Stitches on the line at the end of a round, straight from the first shaping round on.
        let on_line = |round: u32| 96.0 + f64::from(each) * (1.0 + (f64::from(round) - place) / gap);
        let (mut count, mut most_off) = (96_u32, 0.0_f64);
        let mut blocks = track.schedule.blocks.iter().flat_map(|block| std::iter::repeat_n(block, block.times as usize));
        let (mut next, mut round) = (blocks.next(), 0);
        while let Some(block) = next {
            round += block.plain + 1;
            count += block.change;
            most_off = most_off.max((f64::from(count) - on_line(round)).abs());
            next = blocks.next();
        }
        prop_assert_eq!((count, round + track.schedule.left), (96 + each * times, rounds.all));
        prop_assert!(track.schedule.left >= rounds.last);
        let said = track.drift.stitches(each).to_f64();
        prop_assert!((said - most_off).abs() < 1e-6, "{} {}", said, most_off);
        let in_rounds = track.drift.rounds().to_f64();
        prop_assert!((in_rounds - most_off / f64::from(each) * gap).abs() < 1e-6);
        prop_assert!(!even || in_rounds < 1.0);
        prop_assert!(said < f64::from(each) * (1.0 + 1e-9), "strays by {} of {}", said, each);
    }

    /// What shapes among the rounds of another track shapes in no other, and is as near as it has to be.
    #[test]
    fn a_track_among_another_keeps_to_its_rounds((rounds, times) in growing(), few in 1_u32..200) {
        let rounds = Rounds { first: Some(rounds.first.unwrap_or(0)), ..rounds };
        prop_assume!(times > 0 && times <= rounds.room() && few <= times);
        let [many, few] = [times, few].map(|times| vec![4; times as usize]);
        let many = Track::at(Pace::Easiest, rounds, Rhythm::Straight, Growth { from: 96, changes: &many });
        let Some(few) = many.among(rounds, Rhythm::Straight, Growth { from: 20, changes: &few }) else { return Ok(()) };
        let rows: Vec<u32> = many.schedule.rows().map(|shaped| shaped.row).collect();
        prop_assert!(few.schedule.rows().all(|shaped| rows.contains(&shaped.row)));
        prop_assert!(few.drift.rounds() < few.drift.gap || few.schedule.blocks.len() < 2);
    }
}

/// 32 rounds of 64 are every 2nd; 22 of them are by turns every 2nd and every 4th, never 7 stitches ahead as eleven and
/// ten of them one after the other would be.
#[test]
fn the_rates_that_a_raglan_takes() {
    let rounds = Rounds {
        all: 64,
        first: Some(0),
        last: 1,
    };
    let [body, sleeve] = [vec![4; 32], vec![2; 22]];
    let growth = |from, changes| Growth { from, changes };
    let body = Track::at(Pace::Easiest, rounds, Rhythm::Straight, growth(56, &body));
    assert_eq!(Rates::of(&body.schedule), Rates::One(Rate { every: 2, times: 31 }));
    let sleeve = body.among(rounds, Rhythm::Straight, growth(16, &sleeve)).unwrap();
    let turn = [Rate { every: 2, times: 1 }, Rate { every: 4, times: 1 }];
    assert_eq!(Rates::of(&sleeve.schedule), Rates::ByTurns { turn, times: 21 });
    assert!(sleeve.drift.rounds() < Fraction::new(1, 1));
}

/// Raglan and flare of 40 to 92 rounds, shaped in 12 to 35 of them: what is offered first strays less than one shaping
/// round adds, and is held in the head; with turns of four at most, 63 of the 648 tracks of a raglan strayed farther.
#[test]
fn what_is_offered_first_strays_less_than_one_round_adds() {
    let raglan = |all| Rounds {
        all,
        first: Some(0),
        last: 1,
    };
    let flare = |all| Rounds {
        all,
        first: None,
        last: 1,
    };
    for (rounds_of, rhythm) in [
        (raglan as fn(u32) -> Rounds, Rhythm::Straight),
        (flare, Rhythm::Centred),
    ] {
        let (mut tracks, mut listed) = (0, 0);
        for (all, times) in (40..=92)
            .step_by(2)
            .flat_map(|all| (12..=35).map(move |times| (all, times)))
        {
            let (rounds, changes) = (rounds_of(all), vec![4; times]);
            let growth = Growth {
                from: 56,
                changes: &changes,
            };
            let track = Track::at(Pace::Easiest, rounds, rhythm, growth);
            assert!(
                track.drift.rounds() < track.drift.gap,
                "{all} {times}: {:?}",
                track.drift
            );
            if Rates::of(&track.schedule) == Rates::Listed {
                listed += 1;
                assert_eq!(
                    track,
                    Track::at(Pace::MostEven, rounds, rhythm, growth),
                    "{all} {times}"
                );
            }
            let counts = track.schedule.rows().map(|shaped| shaped.stitches);
            assert_eq!(counts.last().flatten(), Some(56 + 4 * times as u32));
            tracks += 1;
        }
        assert_eq!(tracks, 648);
        assert!(listed <= 6, "{listed} of them have to be listed");
    }
}

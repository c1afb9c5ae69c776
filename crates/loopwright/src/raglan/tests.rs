//! Raglans round by round, body and sleeves each counted to its own target.

use super::*;
use crate::shaping::Shaped;
use proptest::prelude::*;

fn usual() -> Question {
    Question {
        underarm: 8,
        ..Question::about([56, 16], [200, 68], 64)
    }
}

/// What a round adds to front and back together, and to one sleeve.
fn added(raglan: &Answer, change: u32) -> [u32; 2] {
    match (change, raglan.body_only) {
        (FULL, _) => [4, 2],
        (PART, 0) => [0, 2],
        (PART, _) => [4, 0],
        (other, _) => panic!("a round of {other}"),
    }
}

/// The obvious sum is one target: 8 every other round for 64 rounds adds 128 to the body and 64 to each sleeve, which
/// then have 88 round instead of 68.
#[test]
fn body_and_sleeves_end_on_two_targets() {
    let raglan = answer(&usual()).unwrap();
    let (mut body, mut sleeve) = (56, 16);
    for shaped in raglan.schedule.rows() {
        let [more, each] = added(&raglan, shaped.change);
        (body, sleeve) = (body + more, sleeve + each);
    }
    assert_eq!((body, raglan.front_and_back), (200 - 2 * 8, 184));
    assert_eq!((sleeve, raglan.aside), (68 - 8, 60));
    let obvious = 16 + 2 * 32 + 8;
    assert_eq!(obvious, 88);
    assert_eq!((raglan.full, raglan.body_only, raglan.sleeves_only), (22, 10, 0));
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
    let raglan = answer(&usual()).unwrap();
    let mut full = 0;
    for (round, shaped) in (1..).zip(raglan.schedule.rows()) {
        full += u32::from(shaped.change == FULL);
        // Never a whole round from the share of so many: 22 in 32.
        assert!((full * 32).abs_diff(22 * round) < 32, "{full} in {round}");
    }
    assert_eq!(full, 22);
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

/// Spread over all 40 rounds the last gap is of three: rounds 1, 3 to 37, and 40.
#[test]
fn every_other_round_is_kept_where_few_are_left() {
    let raglan = |rounds| {
        let question = Question {
            underarm: 8,
            ..Question::about([80, 16], [176, 64], rounds)
        };
        let schedule = answer(&question).unwrap().schedule;
        let rows: Vec<u32> = schedule.rows().map(|shaped| shaped.row).collect();
        (rows, schedule.left)
    };
    let other: Vec<u32> = (1..=39).step_by(2).collect();
    assert_eq!(raglan(41), (other.clone(), 2));
    assert_eq!(raglan(44), (other, 5));
    // Five more than are kept are too many.
    assert_eq!(raglan(45).1, 1);
}

/// Which rounds are full is shared out over the raglan rounds: in these the sleeve's gaps differ by at most one.
#[test]
fn the_rounds_of_the_fewer_lie_evenly_among_the_others() {
    for sleeve_to in (40..=76).step_by(2) {
        let question = Question {
            underarm: 8,
            ..Question::about([80, 16], [200, sleeve_to], 60)
        };
        let (mut gaps, mut before) = (Vec::new(), None);
        for (place, shaped) in answer(&question).unwrap().schedule.rows().enumerate() {
            if shaped.change == FULL {
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

proptest! {
    #[test]
    fn every_round_counted_ends_at_both_targets(
        body in 1_u32..100,
        sleeve in 1_u32..40,
        body_rounds in 0_u32..50,
        sleeve_rounds in 0_u32..50,
        underarm in 0_u32..12,
        rounds in 1_u32..100,
        first in 0_u32..4,
        last in 0_u32..4,
    ) {
        let to = [body + 2 * underarm + 4 * body_rounds, sleeve + underarm + 2 * sleeve_rounds];
        let question = Question { underarm, first, last, ..Question::about([body, sleeve], to, rounds) };
        let Ok(raglan) = answer(&question) else {
            prop_assert!(body_rounds.max(sleeve_rounds) + first + last > rounds);
            return Ok(());
        };
        let (mut on, mut arm, mut both, mut round) = (body, sleeve, 0, 0);
        for block in &raglan.schedule.blocks {
            for _ in 0..block.times {
                round += block.plain + 1;
                let [more, each] = added(&raglan, block.change);
                (on, arm) = (on + more, arm + each);
                both += u32::from(more > 0 && each > 0);
                prop_assert!(round > first && round + last <= rounds);
            }
        }
        prop_assert_eq!(round + raglan.schedule.left, rounds);
        prop_assert_eq!((on, arm, both), (raglan.front_and_back, raglan.aside, raglan.full));
        prop_assert_eq!(both, body_rounds.min(sleeve_rounds), "as many full rounds as there can be");
        prop_assert_eq!([on + 2 * underarm, arm + underarm], to);
        prop_assert_eq!(on + 2 * arm, raglan.needle);
        prop_assert_eq!(raglan.schedule.rows().last().and_then(|last| last.stitches).unwrap_or(body + 2 * sleeve), raglan.needle);
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

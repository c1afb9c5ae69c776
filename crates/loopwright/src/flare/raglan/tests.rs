//! Raglans round by round, body and sleeves each counted to its own target.

use super::*;
use proptest::prelude::*;

fn usual() -> Question {
    Question {
        underarm: 8,
        ..Question::about([56, 16], [200, 68], 64)
    }
}

/// The obvious sum is one target: 8 every other round for 64 rounds adds 128 to the body and 64 to each sleeve, which
/// then have 88 round instead of 68.
#[test]
fn body_and_sleeves_end_on_two_targets() {
    let raglan = answer(&usual()).unwrap();
    let last = |schedule: &Schedule| schedule.rows().last().and_then(|shaped| shaped.stitches);
    assert_eq!(last(&raglan.body), Some(200 - 2 * 8));
    assert_eq!((last(&raglan.sleeve), raglan.aside), (Some(68 - 8), 60));
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

#[test]
fn eight_every_other_round_where_both_take_as_many() {
    let raglan = answer(&Question::about([40, 10], [120, 50], 40)).unwrap();
    assert_eq!((raglan.full, raglan.body_only, raglan.sleeves_only), (20, 0, 0));
    assert_eq!(raglan.every_other, 40);
    let rows: Vec<_> = raglan.body.rows().map(|shaped| shaped.row).collect();
    assert_eq!(rows, (1..=39).step_by(2).collect::<Vec<_>>());
    assert_eq!(raglan.sleeve.rows().map(|shaped| shaped.row).collect::<Vec<_>>(), rows);
}

#[test]
fn targets_that_lines_do_not_reach_have_neighbours() {
    let problems = answer(&Question {
        body_to: 202,
        sleeve_to: 67,
        ..usual()
    })
    .unwrap_err();
    let problem = |field, below, above| Problem {
        field,
        kind: Kind::NoExact { below, above },
    };
    assert_eq!(
        problems,
        [
            problem("body_to", Some(200), Some(204)),
            problem("sleeve_to", Some(66), Some(68))
        ]
    );
    let problems = answer(&Question { body_to: 60, ..usual() }).unwrap_err();
    assert_eq!(problems, [problem("body_to", None, Some(72))]);
}

#[test]
fn too_few_rounds_say_how_many() {
    let problems = answer(&Question { rounds: 30, ..usual() }).unwrap_err();
    let problem = |field, kind| Problem { field, kind };
    assert_eq!(
        problems,
        [
            problem("rounds", Kind::TooFew { least: 33 }),
            problem("body_to", Kind::TooMany { most: 72 + 4 * 29 })
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
        let (mut needle, mut both) = (body + 2 * sleeve, 0);
        for row in 1..=rounds {
            let at = |schedule: &Schedule| schedule.rows().find(|shaped| shaped.row == row).map_or(0, |s| s.change);
            let (more, each) = (at(&raglan.body), at(&raglan.sleeve));
            both += u32::from(more > 0 && each > 0);
            needle += more + 2 * each;
            prop_assert!(more + each == 0 || (row > first && row + last <= rounds));
        }
        prop_assert_eq!((needle, both), (raglan.needle, raglan.full));
        prop_assert_eq!(both, body_rounds.min(sleeve_rounds), "as many full rounds as there can be");
        prop_assert_eq!(needle - 2 * raglan.aside + 2 * underarm, to[0]);
        prop_assert_eq!(raglan.aside + underarm, to[1]);
        for schedule in [&raglan.body, &raglan.sleeve] {
            let worked: u32 = schedule.blocks.iter().map(|block| (block.plain + 1) * block.times).sum();
            prop_assert_eq!(worked + schedule.left, rounds);
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

//! Yokes round by round: counts on a straight line, repeats kept, and no round that cannot be worked.

use super::*;
use proptest::prelude::*;

/// The raglan's sum, 8 every other round, is 240 in 60 rounds: a yoke has four rounds of 56 instead.
#[test]
fn a_yoke_has_few_rounds_and_many_changes() {
    let yoke = answer(&Question {
        multiple: 8,
        ..Question::about(320, 96, 60, 4)
    })
    .unwrap();
    assert_eq!(yoke.rounds.len(), 4);
    assert!(yoke.rounds.iter().all(|round| round.change > 8 && round.after % 8 == 0));
    assert_eq!((yoke.gain, yoke.left), (false, 1));
    // Neck down is the same yoke.
    let down = answer(&Question {
        multiple: 8,
        ..Question::about(96, 320, 60, 4)
    })
    .unwrap();
    let counts: Vec<_> = down.rounds.iter().map(|round| round.after).collect();
    assert_eq!((counts, down.gain), (vec![152, 208, 264, 320], true));
}

#[test]
fn counts_between_keep_to_the_repeat() {
    // 200 to 90 in three: 163.3, 126.7 and 90 become multiples of 10.
    let yoke = answer(&Question {
        multiple: 10,
        ..Question::about(200, 90, 50, 3)
    })
    .unwrap();
    let counts: Vec<_> = yoke.rounds.iter().map(|round| (round.change, round.after)).collect();
    assert_eq!(counts, [(40, 160), (30, 130), (40, 90)]);
    let problems = answer(&Question {
        multiple: 8,
        ..Question::about(200, 90, 50, 3)
    })
    .unwrap_err();
    let kind = Kind::NoExact {
        below: Some(88),
        above: Some(96),
    };
    assert_eq!(problems, [Problem { field: "to", kind }]);
}

/// 300 stitches cannot become 100 in one round: k2tog all round leaves 150.
#[test]
fn no_round_loses_more_than_half() {
    let problems = answer(&Question::about(300, 100, 50, 1)).unwrap_err();
    let kind = Kind::NoExact {
        below: None,
        above: Some(2),
    };
    assert_eq!(
        problems,
        [Problem {
            field: "shaping_rounds",
            kind
        }]
    );
    assert!(answer(&Question::about(300, 100, 50, 2)).is_ok());
}

#[test]
fn too_few_rounds_say_how_many() {
    let problems = answer(&Question::about(96, 200, 4, 5)).unwrap_err();
    let problem = |field, kind| Problem { field, kind };
    let rounds = problem("rounds", Kind::TooFew { least: 6 });
    assert_eq!(problems, [rounds, problem("shaping_rounds", Kind::TooMany { most: 3 })]);
}

proptest! {
    #[test]
    fn a_yoke_ends_at_its_count_within_its_rounds(
        from in 1_u32..500,
        repeats in 1_u32..60,
        multiple in 1_u32..12,
        rounds in 1_u32..80,
        shaping_rounds in 1_u32..10,
        first in proptest::option::of(0_u32..5),
    ) {
        let to = repeats * multiple;
        let question = Question { multiple, first, ..Question::about(from, to, rounds, shaping_rounds) };
        let Ok(yoke) = answer(&question) else { return Ok(()) };
        prop_assert_eq!(yoke.rounds.len() as u32, shaping_rounds);
        let (mut row, mut count) = (0, from);
        for (step, round) in yoke.rounds.iter().enumerate() {
            row += round.plain + 1;
            prop_assert_eq!((round.round, round.before), (row, count));
            count = if yoke.gain { count + round.change } else { count - round.change };
            prop_assert_eq!(round.after, count);
            prop_assert!(count.is_multiple_of(multiple));
            let line = f64::from(from) + (f64::from(to) - f64::from(from)) * (step as f64 + 1.0) / f64::from(shaping_rounds);
            prop_assert!((f64::from(count) - line).abs() <= f64::from(multiple) / 2.0 + 1e-9);
        }
        prop_assert_eq!((count, row + yoke.left), (to, rounds));
    }

    #[test]
    fn no_yoke_panics(numbers: [u32; 6], first: Option<u32>, small in (1_u32..200, 1_u32..200, 1_u32..200), which in 0..16_u8) {
        let [from, to, rounds, shaping_rounds, multiple, last] = numbers;
        let mut asked = Question::about(small.0, small.1, small.2, 4);
        if which & 1 > 0 { (asked.from, asked.to) = (from, to); }
        if which & 2 > 0 { asked.rounds = rounds; }
        if which & 4 > 0 { (asked.shaping_rounds, asked.multiple) = (shaping_rounds, multiple); }
        if which & 8 > 0 { (asked.first, asked.last) = (first, last); }
        let _ = answer(&asked);
    }
}

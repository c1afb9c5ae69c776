//! Yokes round by round: counts on a straight line, repeats kept, and no round that cannot be worked.

use super::*;
use crate::shaping::Shaped;
use proptest::prelude::*;

fn ask(from: u32, to: u32, rounds: u32, shaping_rounds: u32) -> Question {
    Question {
        shaping_rounds,
        ..Question::about(from, to, rounds)
    }
}

fn shaped(question: &Question) -> Vec<Shaped> {
    answer(question).unwrap().schedule.rows().collect()
}

/// What each round changes, and the count after it.
fn counts(question: &Question) -> Vec<(u32, u32)> {
    let count = |shaped: Shaped| (shaped.change, shaped.stitches.unwrap());
    shaped(question).into_iter().map(count).collect()
}

/// The raglan's sum, 8 every other round, is 240 in 60 rounds: a yoke has four rounds of 56 instead.
#[test]
fn a_yoke_has_few_rounds_and_many_changes() {
    let up = Question {
        multiple: 8,
        ..ask(320, 96, 60, 4)
    };
    let counted = counts(&up);
    assert_eq!(counted.len(), 4);
    assert!(counted.iter().all(|(change, after)| *change > 8 && after % 8 == 0));
    let schedule = answer(&up).unwrap().schedule;
    assert_eq!((schedule.gain, schedule.left), (false, 1));
    // Neck down is the same yoke.
    let down = Question {
        from: 96,
        to: 320,
        ..up
    };
    let after: Vec<_> = counts(&down).into_iter().map(|(_, after)| after).collect();
    assert_eq!(after, [152, 208, 264, 320]);
    assert!(answer(&down).unwrap().schedule.gain);
}

#[test]
fn counts_between_keep_to_the_repeat() {
    // 200 to 90 in three: 163.3, 126.7 and 90 become multiples of 10.
    let ten = Question {
        multiple: 10,
        ..ask(200, 90, 50, 3)
    };
    assert_eq!(counts(&ten), [(40, 160), (30, 130), (40, 90)]);
    let problems = answer(&Question { multiple: 8, ..ten }).unwrap_err();
    let kind = Kind::NoExact {
        below: Some(88),
        above: Some(96),
    };
    assert_eq!(problems, [Problem::new(Name::To, kind)]);
}

/// 300 stitches cannot become 100 in one round: k2tog all round leaves 150.
#[test]
fn no_round_loses_more_than_half() {
    let problems = answer(&ask(300, 100, 50, 1)).unwrap_err();
    let kind = Kind::NoExact {
        below: None,
        above: Some(2),
    };
    assert_eq!(problems, [Problem::new(Name::ShapingRounds, kind)]);
    assert!(answer(&ask(300, 100, 50, 2)).is_ok());
}

/// 100 stitches have 100 gaps: the obvious sum gains 150 in one round, and in some gaps two.
#[test]
fn no_round_gains_more_than_one_to_a_gap() {
    let problems = answer(&ask(100, 250, 50, 1)).unwrap_err();
    let kind = Kind::NoExact {
        below: None,
        above: Some(2),
    };
    assert_eq!(problems, [Problem::new(Name::ShapingRounds, kind)]);
    assert_eq!(counts(&ask(100, 200, 50, 1)), [(100, 200)]);
    assert_eq!(counts(&ask(100, 250, 50, 2)), [(75, 175), (75, 250)]);
}

#[test]
fn too_few_rounds_say_how_many() {
    let problems = answer(&ask(96, 200, 4, 5)).unwrap_err();
    let problem = |field, kind| Problem::new(field, kind);
    let rounds = problem(Name::Rounds, Kind::TooFew { least: 6 });
    assert_eq!(
        problems,
        [rounds, problem(Name::ShapingRounds, Kind::TooMany { most: 3 })]
    );
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
        let question = Question { multiple, first, ..ask(from, to, rounds, shaping_rounds) };
        let Ok(Answer { schedule }) = answer(&question) else { return Ok(()) };
        prop_assert_eq!(schedule.rows().count() as u32, shaping_rounds);
        // Worked as a knitter does: plain rounds, then a shaping round, so many times.
        let (mut round, mut count, mut step) = (0, from, 0);
        for block in &schedule.blocks {
            for _ in 0..block.times {
                step += 1;
                round += block.plain + 1;
                let most = if schedule.gain { count } else { count / 2 };
                prop_assert!(block.change <= most);
                count = if schedule.gain { count + block.change } else { count - block.change };
                prop_assert!(count.is_multiple_of(multiple));
                let line = f64::from(from) + (f64::from(to) - f64::from(from)) * f64::from(step) / f64::from(shaping_rounds);
                prop_assert!((f64::from(count) - line).abs() <= f64::from(multiple) / 2.0 + 1e-9);
            }
        }
        prop_assert_eq!((count, round + schedule.left), (to, rounds));
    }

    #[test]
    fn no_yoke_panics(numbers: [u32; 6], first: Option<u32>, small in (1_u32..200, 1_u32..200, 1_u32..200), which in 0..16_u8) {
        let [from, to, rounds, shaping_rounds, multiple, last] = numbers;
        let mut asked = ask(small.0, small.1, small.2, 4);
        if which & 1 > 0 { (asked.from, asked.to) = (from, to); }
        if which & 2 > 0 { asked.rounds = rounds; }
        if which & 4 > 0 { (asked.shaping_rounds, asked.multiple) = (shaping_rounds, multiple); }
        if which & 8 > 0 { (asked.first, asked.last) = (first, last); }
        let _ = answer(&asked);
    }
}

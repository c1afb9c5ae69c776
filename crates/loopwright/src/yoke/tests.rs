//! Yokes round by round: counts on a straight line or along the circle, repeats kept, each round worked on the simulated
//! needle, and the division at the underarm, which leaves no stitch out.

use super::*;
use crate::row;
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
    assert_eq!(schedule.blocks[0].plain, 20);
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

/// With one plain round at the end the last increases would lie in the armpit: the last third is plain.
#[test]
fn the_third_next_to_the_underarm_is_plain() {
    let rows = |question: &Question| shaped(question).iter().map(|round| round.row).collect::<Vec<_>>();
    let down = Question::about(96, 320, 60);
    let up = Question::about(320, 96, 60);
    assert_eq!(rows(&down), [10, 20, 30, 40]);
    assert_eq!(rows(&up), [21, 33, 46, 59]);
    assert_eq!((answer(&down).unwrap().plain, answer(&up).unwrap().plain), (20, 20));
    // What is said holds, and where there is no room for a third there are fewer.
    let said = Question { last: Some(1), ..down };
    assert_eq!(rows(&said), [14, 29, 44, 59]);
    assert_eq!(rows(&Question::about(96, 320, 5)), [1, 2, 3, 4]);
    assert_eq!(rows(&Question::about(320, 96, 5)), [1, 2, 3, 4]);
}

/// Equal steps of 56 are 58 per cent of the neck, and 21 per cent of what is there in the end. The circle takes more of it
/// where twenty plain rounds follow.
#[test]
fn growth_may_follow_the_circle() {
    let steps = |growth| {
        let question = Question {
            growth,
            ..Question::about(96, 320, 60)
        };
        let rounds = answer(&question).unwrap().rounds;
        let step = |round: &Round| (round.change, round.percent);
        rounds.iter().map(step).collect::<Vec<_>>()
    };
    assert_eq!(steps(Growth::Equal), [(56, 58), (56, 37), (56, 27), (56, 21)]);
    // Middles at 5, 15, 25, 35 and 50: two ninths of the way, four ninths, six ninths, all of it.
    assert_eq!(steps(Growth::Circle), [(50, 52), (50, 34), (49, 25), (75, 31)]);
}

#[test]
fn the_division_says_where_the_odd_stitch_is() {
    let division = |question: &Question| answer(question).unwrap().division.unwrap();
    let odd = division(&Question::about(96, 321, 60));
    assert_eq!((odd.front, odd.back, odd.sleeve), (96, 97, 64));
    assert!(odd.has_odd_stitch());
    assert_eq!((odd.body_round, odd.sleeve_round), (96 + 97 + 16, 64 + 8));
    let said = Question {
        sleeve: Some(70),
        underarm: 0,
        ..Question::about(320, 96, 60)
    };
    let said = division(&said);
    assert_eq!(
        (said.front, said.back, said.body_round, said.sleeve_round),
        (90, 90, 180, 70)
    );
    assert!(!said.has_odd_stitch());
}

#[test]
fn sleeves_leave_a_stitch_for_front_and_back() {
    let question = Question {
        sleeve: Some(160),
        ..Question::about(96, 320, 60)
    };
    let problem = Problem::new(Name::Sleeve, Kind::TooMany { most: 159 });
    assert_eq!(answer(&question).unwrap_err(), [problem]);
    assert_eq!(answer(&ask(1, 3, 9, 2)).unwrap().division, None);
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
        last in proptest::option::of(0_u32..5),
    ) {
        let to = repeats * multiple;
        let question = Question { multiple, first, last, ..ask(from, to, rounds, shaping_rounds) };
        let Ok(Answer { schedule, .. }) = answer(&question) else { return Ok(()) };
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

    /// Every round is written, read back and worked, one after the other, from the first count to the last; and what is
    /// divided then is what body and sleeves have.
    #[test]
    fn a_yoke_is_knitted_round_by_round_and_divided(
        from in 1_u32..400,
        to in 1_u32..400,
        rounds in 6_u32..90,
        shaping_rounds in 1_u32..7,
        circle: bool,
        sleeve in proptest::option::of(1_u32..60),
        underarm in 0_u32..20,
    ) {
        let growth = if circle { Growth::Circle } else { Growth::Equal };
        let question = Question { growth, sleeve, underarm, ..ask(from, to, rounds, shaping_rounds) };
        let Ok(answer) = answer(&question) else { return Ok(()) };
        prop_assert_eq!(answer.rounds.len() as u32, shaping_rounds);
        let mut on_needle = from;
        for (round, shaped) in answer.rounds.iter().zip(answer.schedule.rows()) {
            prop_assert_eq!((round.round, round.change, Some(round.after)), (shaped.row, shaped.change, shaped.stitches));
            prop_assert_eq!(round.before, on_needle);
            let read = row::read(&round.row.to_string()).expect("the reader reads what the writer wrote");
            prop_assert!(read.depth() <= 1, "{}", read);
            let worked = row::work(&read, on_needle).expect("enough stitches");
            prop_assert_eq!((worked.on_needle, worked.left_over), (u64::from(round.after), 0));
            prop_assert!(round.percent.abs_diff(100 * round.change / round.before) <= 1);
            on_needle = round.after;
        }
        prop_assert_eq!(on_needle, to);
        if let Some(division) = answer.division {
            let Division { front, back, sleeve, underarm, body_round, sleeve_round } = division;
            prop_assert!(front > 0 && sleeve > 0 && back - front <= 1);
            prop_assert_eq!(front + back + 2 * sleeve, from.max(to));
            prop_assert_eq!(body_round + 2 * sleeve_round, from.max(to) + 4 * underarm);
            prop_assert_eq!(body_round, front + back + 2 * underarm);
        }
    }

    #[test]
    fn no_yoke_panics(numbers: [u32; 6], first: Option<u32>, small in (1_u32..200, 1_u32..200, 1_u32..200), which in 0..16_u8) {
        let [from, to, rounds, shaping_rounds, multiple, last] = numbers;
        let mut asked = ask(small.0, small.1, small.2, 4);
        if which & 1 > 0 { (asked.from, asked.to) = (from, to); }
        if which & 2 > 0 { asked.rounds = rounds; }
        if which & 4 > 0 { (asked.shaping_rounds, asked.multiple) = (shaping_rounds, multiple); }
        if which & 8 > 0 { (asked.first, asked.last, asked.sleeve, asked.underarm) = (first, Some(last), first, last); }
        if which & 1 > 0 { asked.growth = Growth::Circle; }
        let _ = answer(&asked);
    }
}

//! The words of the yoke.

use super::Title;
use super::intl::{fill_pattern, fill_pattern_with, stitches};
use super::rounds;
use loopwright::problem::{Kind, Problem};
use loopwright::shaping::{Schedule, Shaped};
use loopwright::yoke::{Name, Question};

pub const TITLE: Title = Title {
    name: "Yoke",
    asks: "In which few rounds to shape, and by how many stitches.",
};
pub const WAITING: &str = "The shaping rounds appear here.";
pub const ANSWER: &str = "For the yoke";

/// What a field is called.
pub const fn label(name: Name) -> &'static str {
    match name {
        Name::From => "Stitches at the beginning",
        Name::To => "Stitches at the end",
        Name::Rounds => "Rounds for the yoke",
        Name::ShapingRounds => "Rounds to shape in",
        Name::Multiple => "Each count a multiple of",
        Name::First => "Plain rounds before the first of them",
        Name::Last => "Plain rounds at the end, at least",
    }
}

/// Shaping rounds that differ are named each with its count, up to so many.
const FEW: usize = 8;

/// What to knit: how many each round changes.
pub fn headline(schedule: &Schedule) -> String {
    let verb = if schedule.gain { "Increase" } else { "Decrease" };
    let changes = || schedule.blocks.iter().map(|block| block.change);
    let (least, most) = (changes().min().unwrap_or(0), changes().max().unwrap_or(0));
    if least == most {
        return fill_pattern_with("@ # evenly@", &[least], &[verb, &rounds::which(schedule)]);
    }
    if schedule.blocks.len() > FEW {
        return fill_pattern_with("@ # to # evenly, as listed", &[least, most], &[verb]);
    }
    let each = schedule
        .rows()
        .map(|shaped| fill_pattern("# in round #", &[shaped.change, shaped.row]));
    let each: Vec<String> = each.collect();
    fill_pattern_with("@ evenly: @", &[], &[verb, &each.join(", ")])
}

/// What it comes to.
pub fn outcome(question: &Question) -> (String, String) {
    let before = fill_pattern("# {round|rounds} in all. At the end there are", &[question.rounds]);
    (before, stitches(question.to))
}

/// Each shaping round.
pub fn listed(schedule: &Schedule) -> Vec<String> {
    let pattern = if schedule.gain {
        "Round #: increase # evenly, # {stitch|stitches} after it."
    } else {
        "Round #: decrease # evenly, # {stitch|stitches} after it."
    };
    let one_round = |shaped: Shaped| fill_pattern(pattern, &[shaped.row, shaped.change, shaped.stitches.unwrap_or(0)]);
    schedule.rows().map(one_round).collect()
}

/// What the drawing shows.
pub fn drawing(schedule: &Schedule) -> String {
    [KEY, " ", &headline(schedule)].concat()
}

pub const KEY: &str = "The stitches round by round, the neck above.";

pub const EVENLY: &str = "Where in a round they stand, Even spacing says: give it the count before that round.";

/// The sum.
pub fn steps(question: &Question, schedule: &Schedule) -> Vec<String> {
    let Question {
        from,
        to,
        rounds,
        shaping_rounds,
        multiple,
        ..
    } = *question;
    let numbers = [from, to, shaping_rounds, multiple, rounds, schedule.left];
    let steps = "From # to # in # {step|steps}, as near to equal as multiples of # allow; over # rounds, # left plain at the end.";
    vec![fill_pattern(steps, &numbers)]
}

/// What to type instead, and why where steps are too large or too small.
pub fn problem(problem: &Problem) -> String {
    let is_shaping_rounds = problem.field.name() == Some(Name::ShapingRounds);
    let (pattern, count) = match problem.kind {
        Kind::NoExact {
            below: None,
            above: Some(least),
        } if is_shaping_rounds => (
            "No round can more than double, or lose more than half. Type # or more.",
            least,
        ),
        Kind::NoExact {
            below: Some(most),
            above: None,
        } if is_shaping_rounds => ("Each changes the count by the multiple or more. Type # at most.", most),
        _ => return super::problem::sentence(&problem.kind),
    };
    fill_pattern(pattern, &[count])
}

pub const SOURCE: &str = "The steps are arithmetic and make a cone. Four shaping rounds, a plain round at the end, a yoke that is plain near the body (type those rounds as plain ones): common practice, no source.";

#[cfg(test)]
mod tests {
    use super::*;
    use loopwright::yoke::answer;

    #[test]
    fn each_round_is_told_with_its_change_and_the_count_after_it() {
        let question = Question::about(97, 300, 50);
        let schedule = answer(&question).unwrap().schedule;
        assert_eq!(
            headline(&schedule),
            "Increase evenly: 51 in round 12, 51 in round 24, 50 in round 36, 51 in round 49"
        );
        assert_eq!(
            listed(&schedule)[0],
            "Round 12: increase 51 evenly, 148 stitches after it."
        );
        assert_eq!(
            steps(&question, &schedule),
            [
                "From 97 to 300 in 4 steps, as near to equal as multiples of 1 allow; over 50 rounds, 1 left plain at the end."
            ]
        );
    }

    #[test]
    fn steps_that_cannot_be_worked_say_why() {
        let told = |question: &Question| problem(&answer(question).unwrap_err()[0]);
        let one = Question {
            shaping_rounds: 1,
            ..Question::about(60, 300, 60)
        };
        assert_eq!(
            told(&one),
            "No round can more than double, or lose more than half. Type 4 or more."
        );
        let eight = Question {
            multiple: 8,
            ..Question::about(96, 104, 60)
        };
        assert_eq!(
            told(&eight),
            "Each changes the count by the multiple or more. Type 1 at most."
        );
    }
}

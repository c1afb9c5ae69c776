//! The words of the yoke.

use super::Title;
use super::intl::{say, stitches};
use super::rounds;
use loopwright::problem::{Kind, Problem};
use loopwright::shaping::Schedule;
use loopwright::yoke::Question;

/// What it is called.
pub const TITLE: Title = Title {
    name: "Yoke",
    asks: "In which few rounds to shape, and by how many stitches.",
};
/// The label of the count at the beginning.
pub const LABEL_FROM: &str = "Stitches at the beginning";
/// The label of the count at the end.
pub const LABEL_TO: &str = "Stitches at the end";
/// The label of the rounds.
pub const LABEL_ROUNDS: &str = "Rounds for the yoke";
/// The label of the shaping rounds.
pub const LABEL_SHAPING: &str = "Rounds to shape in";
/// The label of the repeat.
pub const LABEL_MULTIPLE: &str = "Each count a multiple of";
/// The label of the plain rounds at the beginning.
pub const LABEL_FIRST: &str = "Plain rounds before the first of them";
/// The label of the plain rounds at the end.
pub const LABEL_LAST: &str = "Plain rounds at the end, at least";
/// Where the answer will be.
pub const WAITING: &str = "The shaping rounds appear here.";
/// Above the answer.
pub const ANSWER: &str = "For the yoke";

/// Shaping rounds that differ are named each with its count, up to so many.
const FEW: usize = 8;

/// What to knit: how many each round changes.
pub fn headline(schedule: &Schedule) -> String {
    let (mut least, mut most) = (u32::MAX, 0);
    for block in &schedule.blocks {
        (least, most) = (least.min(block.change), most.max(block.change));
    }
    let mut said = String::from(if schedule.gain { "Increase " } else { "Decrease " });
    if least == most {
        return said + &say("# evenly", &[least]) + &rounds::which(schedule);
    }
    if schedule.blocks.len() > FEW {
        return said + &say("# to # evenly, as listed", &[least, most]);
    }
    said += "evenly: ";
    for (place, shaped) in schedule.rows().enumerate() {
        let pattern = if place > 0 { ", # in round #" } else { "# in round #" };
        said += &say(pattern, &[shaped.change, shaped.row]);
    }
    said
}

/// What it comes to.
pub fn outcome(question: &Question) -> (String, String) {
    let before = say("# {round|rounds} in all. At the end there are", &[question.rounds]);
    (before, stitches(question.to))
}

/// Each shaping round.
pub fn listed(schedule: &Schedule) -> Vec<String> {
    let mut said = Vec::new();
    for shaped in schedule.rows() {
        let pattern = if schedule.gain {
            "Round #: increase # evenly, # {stitch|stitches} after it."
        } else {
            "Round #: decrease # evenly, # {stitch|stitches} after it."
        };
        said.push(say(pattern, &[shaped.row, shaped.change, shaped.stitches.unwrap_or(0)]));
    }
    said
}

/// What the drawing shows.
pub fn drawing(schedule: &Schedule) -> String {
    [KEY, " ", &headline(schedule)].concat()
}

/// Below the drawing.
pub const KEY: &str = "The stitches round by round, the neck above.";

/// Where the changes of a round stand.
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
    vec![say(steps, &numbers)]
}

/// What to type instead, and why where steps are too large or too small.
pub fn problem(problem: &Problem) -> String {
    let (pattern, count) = match problem.kind {
        Kind::NoExact {
            below: None,
            above: Some(least),
        } if problem.field.key() == "shaping_rounds" => (
            "No round can more than double, or lose more than half. Type # or more.",
            least,
        ),
        Kind::NoExact {
            below: Some(most),
            above: None,
        } if problem.field.key() == "shaping_rounds" => {
            ("Each changes the count by the multiple or more. Type # at most.", most)
        }
        _ => return super::problem::sentence(&problem.kind),
    };
    say(pattern, &[count])
}

/// Where the rules come from.
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

//! The words of the yoke.

use super::intl::{fill_pattern, fill_pattern_with, number, stitches};
use super::{Title, Worded};
use loopwright::problem::{Kind, Problem};
use loopwright::yoke::{Answer, Division, Growth, Name, Question, Round};

pub const TITLE: Title = Title {
    name: "Yoke",
    asks: "Shape a round yoke in a few rounds, and divide it for body and sleeves.",
};
pub const WAITING: &str = "The shaping rounds appear here.";
pub const ANSWER: &str = "For the yoke";
pub const ROUNDS: &str = "Round by round";

/// What a field is called.
pub const fn label(name: Name) -> &'static str {
    match name {
        Name::From => "Stitches at the beginning",
        Name::To => "Stitches at the end",
        Name::Rounds => "Rounds for the yoke",
        Name::ShapingRounds => "Rounds to shape in",
        Name::Growth => "Share the growth",
        Name::Multiple => "Each count a multiple of",
        Name::First => "Plain rounds before the first of them",
        Name::Last => "Plain rounds at the end, at least",
        Name::Sleeve => "Stitches for each sleeve",
        Name::Underarm => "Stitches cast on at each underarm",
    }
}

impl Worded for Growth {
    fn words(self) -> &'static str {
        match self {
            Self::Equal => "in equal steps",
            Self::Circle => "as a circle grows",
        }
    }
}

/// More letters than this are more than three lines of the answer's type on a telephone.
const THREE_LINES: usize = 90;

/// What to knit: how many each round changes, and what is plain next to the underarm. Where the rounds are too many to be
/// named in it, the list below has them.
pub fn headline(answer: &Answer) -> String {
    let named = told(answer, &shaping(answer));
    if named.len() <= THREE_LINES {
        return named;
    }
    told(answer, &listed_shaping(answer))
}

fn told(answer: &Answer, shaping: &str) -> String {
    let plain = answer.plain;
    match (answer.schedule.gain, plain) {
        (true, 0) => fill_pattern_with("Increase @.", &[], &[shaping]),
        (true, _) => fill_pattern_with("Increase @, then work # {round|rounds} plain.", &[plain], &[shaping]),
        (false, 0) => fill_pattern_with("Decrease @.", &[], &[shaping]),
        (false, _) => fill_pattern_with("Work # {round|rounds} plain. Decrease @.", &[plain], &[shaping]),
    }
}

/// `56 evenly in rounds 10, 20, 30 and 40`; `48, 48, 40 and 48 evenly in rounds 10, 20, 30 and 40`.
fn shaping(answer: &Answer) -> String {
    let changes: Vec<u32> = answer.rounds.iter().map(|round| round.change).collect();
    let rounds: Vec<u32> = answer.rounds.iter().map(|round| round.round).collect();
    let alike = changes.windows(2).all(|two| two[0] == two[1]);
    let changes = if alike {
        joined(&changes[..changes.len().min(1)])
    } else {
        joined(&changes)
    };
    let pattern = match rounds.len() {
        1 => "@ evenly in round @",
        _ => "@ evenly in rounds @",
    };
    fill_pattern_with(pattern, &[], &[&changes, &joined(&rounds)])
}

/// `56 evenly in each of 12 rounds, as listed`; `50 to 51 evenly in each of 12 rounds, as listed`.
fn listed_shaping(answer: &Answer) -> String {
    let changes = || answer.rounds.iter().map(|round| round.change);
    let [least, most] = [changes().min(), changes().max()].map(|change| change.unwrap_or(0));
    let many = u32::try_from(answer.rounds.len()).unwrap_or(u32::MAX);
    if least == most {
        return fill_pattern("# evenly in each of # rounds, as listed", &[most, many]);
    }
    fill_pattern("# to # evenly in each of # rounds, as listed", &[least, most, many])
}

/// `10, 20 and 30`.
fn joined(numbers: &[u32]) -> String {
    let words: Vec<String> = numbers.iter().copied().map(number).collect();
    match words.split_last() {
        Some((last, before)) if !before.is_empty() => format!("{} and {last}", before.join(", ")),
        _ => words.concat(),
    }
}

/// What it comes to.
pub fn outcome(question: &Question) -> (String, String) {
    let before = fill_pattern("# {round|rounds} in all. At the end there are", &[question.rounds]);
    (before, stitches(question.to))
}

/// At the underarm: what is front, back and sleeve, and what is round the body and the sleeves below it.
pub fn division(question: &Question, answer: &Answer) -> String {
    let Some(division) = answer.division else {
        return "So few stitches cannot be divided for body and sleeves.".into();
    };
    let Division {
        front,
        back,
        sleeve,
        underarm,
        body_round,
        sleeve_round,
    } = division;
    let mut sentence = if question.is_neck_down() {
        let pattern = "Then divide: # for the front, # for the back, # put aside for each sleeve. Cast on # at each underarm: # round the body, # round each sleeve.";
        fill_pattern(pattern, &[front, back, sleeve, underarm, body_round, sleeve_round])
    } else {
        let pattern = "Begin with # round the body and # round each sleeve. At each underarm leave # of the body and # of the sleeve aside, and join the rest: # for the front, # for the back, # for each sleeve.";
        let numbers = [body_round, sleeve_round, underarm, underarm, front, back, sleeve];
        fill_pattern(pattern, &numbers)
    };
    if division.has_odd_stitch() {
        sentence += " The odd stitch is at the back.";
    }
    sentence
}

/// Each shaping round.
pub fn listed(question: &Question, round: &Round) -> String {
    let pattern = if question.is_neck_down() {
        "Round #: increase # evenly, # % more. # {stitch|stitches} after it."
    } else {
        "Round #: decrease # evenly, # % fewer. # {stitch|stitches} after it."
    };
    fill_pattern(pattern, &[round.round, round.change, round.percent, round.after])
}

/// The words in the drawing.
pub struct Caption {
    /// What it shows, for those who cannot see it.
    pub text: String,
    /// Front, back and one sleeve.
    pub parts: Option<[String; 3]>,
    /// The stitches of the neck.
    pub neck: String,
}

/// What the drawing shows.
pub fn drawing(question: &Question, answer: &Answer) -> Caption {
    let parts = answer.division.map(
        |Division {
             front, back, sleeve, ..
         }| {
            [
                fill_pattern("front #", &[front]),
                fill_pattern("back #", &[back]),
                number(sleeve),
            ]
        },
    );
    Caption {
        text: [KEY, " ", &headline(answer), " ", &division(question, answer)].concat(),
        parts,
        neck: number(question.from.min(question.to)),
    }
}

/// Beside a ring of the drawing: the round, and the stitches from there outwards.
pub fn ring(round: u32, stitches: u32) -> String {
    fill_pattern("round #: #", &[round, stitches])
}

/// Beside the outermost ring, where no shaping round lies.
pub fn edge(rounds: u32) -> String {
    fill_pattern("# {round|rounds}", &[rounds])
}

pub const KEY: &str = "The yoke from above, to scale: the neck inside, a ring for each shaping round with the stitches outside it, and the lines where it is divided.";

/// The sum.
pub fn steps(question: &Question, answer: &Answer) -> Vec<String> {
    let mut steps = vec![growth(question), depth(question, answer)];
    if let Some(division) = answer.division {
        let Division {
            front,
            back,
            sleeve,
            underarm,
            body_round,
            sleeve_round,
        } = division;
        steps.extend([
            fill_pattern(
                "At the underarm: # + # + 2 × # = #.",
                &[front, back, sleeve, question.widest()],
            ),
            fill_pattern(
                "Round the body: # + # + 2 × # = #.",
                &[front, back, underarm, body_round],
            ),
            fill_pattern("Round each sleeve: # + # = #.", &[sleeve, underarm, sleeve_round]),
        ]);
    }
    steps
}

fn growth(question: &Question) -> String {
    let Question {
        from,
        to,
        shaping_rounds,
        multiple,
        growth,
        ..
    } = *question;
    let way = match growth {
        Growth::Equal => "in # equal {step|steps}",
        Growth::Circle => {
            "in # {step|steps}, each to the count that a flat circle has in the middle of the rounds that follow"
        }
    };
    let kept = match multiple {
        1 => ", to the nearest stitch",
        _ => ", to the nearest multiple of #",
    };
    fill_pattern(
        &["From # to # ", way, kept, "."].concat(),
        &[from, to, shaping_rounds, multiple],
    )
}

fn depth(question: &Question, answer: &Answer) -> String {
    fill_pattern(
        "Of # {round|rounds} the # next to the underarm {stays|stay} plain.",
        &[question.rounds, answer.plain],
    )
}

/// What to type instead, and why where steps are too large or too small.
pub fn problem(question: Option<&Question>, problem: &Problem) -> String {
    let name = problem.field.name();
    let (pattern, numbers) = match (name, problem.kind, question) {
        (
            Some(Name::ShapingRounds),
            Kind::NoExact {
                below: None,
                above: Some(least),
            },
            _,
        ) => (
            "No round can more than double, or lose more than half. Type # or more.",
            vec![least],
        ),
        (
            Some(Name::ShapingRounds),
            Kind::NoExact {
                below: Some(most),
                above: None,
            },
            _,
        ) => (
            "Each round has to change the count by a whole multiple at least. Type # or fewer.",
            vec![most],
        ),
        (Some(Name::Sleeve), Kind::TooMany { most }, Some(question)) => (
            "Two such sleeves leave nothing of # for front and back. Type # or fewer.",
            vec![question.widest(), most],
        ),
        _ => return super::problem::sentence(&problem.kind),
    };
    fill_pattern(pattern, &numbers)
}

pub const SOURCE: &str = "The counts and the division are arithmetic. Four shaping rounds, a third of the rounds plain next to the underarm, a fifth of the stitches for a sleeve, the odd stitch at the back: common practice, no source.";

#[cfg(test)]
mod tests;

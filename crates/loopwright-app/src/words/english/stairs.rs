//! The words of steps at a shoulder or a neck, and of a back neck that is raised.

mod followed;
pub mod raise;

pub use followed::followed;

use super::intl::{fill_pattern, fill_pattern_with, number, stitches};
use super::{Title, Worded};
use loopwright::stairs::{Answer, Asked, Edge, Name, Place, Question, Side, Stair, Way, Work};

pub const TITLE: Title = Title {
    name: "Shoulder and neck steps",
    asks: "Bind off a shoulder or a neck step by step, or raise the back neck in short rows.",
};
pub const I_HAVE_TO: &str = "I have to";
pub const AT: &str = "stitches at";
pub const IN: &str = "in";
pub const WAITING: &str = "The steps appear here.";

/// Below the drawing.
pub const fn key(place: Place) -> &'static str {
    match place {
        Place::Shoulder => "The right side faces you. Stitches are drawn square.",
        Place::Neck => "The right side faces you, with both halves of the neck. Stitches are drawn square.",
    }
}

/// What a field is called.
pub const fn label(name: Name) -> &'static str {
    match name {
        Name::Way => "What is to be done",
        Name::Stitches => "Stitches at one edge",
        Name::Place => "Shoulder or neck",
        Name::Steps | Name::Rows => "How many steps or rows",
        Name::By => "Steps or rows",
        Name::Edge => "Right side towards you, at",
        Name::Next => "The next row is",
        Name::Height => "How much higher, washed",
        Name::RowGauge => "Rows in the washed swatch",
        Name::Turns => "Turns at each side, if you would rather say",
        Name::Width => "Or how wide the back is, washed",
        Name::Gauge => "Then its stitches in the washed swatch",
        Name::Method => "Turn with",
        Name::Begins => "The round begins",
    }
}

/// What the field of the stitches is called.
pub const fn stitches_label(work: Work) -> &'static str {
    match work {
        Work::Edge(_) => label(Name::Stitches),
        Work::Raise => "Stitches across the back",
    }
}

impl Worded for Work {
    fn words(self) -> &'static str {
        match self {
            Self::Edge(Way::BindOff) => "bind off",
            Self::Edge(Way::ShortRows) => "leave in short rows",
            Self::Raise => "raise the back neck in the round",
        }
    }
}

impl Worded for Place {
    fn words(self) -> &'static str {
        match self {
            Self::Shoulder => "the shoulder",
            Self::Neck => "the neck",
        }
    }
}

impl Worded for Asked {
    fn words(self) -> &'static str {
        match self {
            Self::Steps => "steps",
            Self::Rows => "rows",
        }
    }
}

impl Worded for Edge {
    fn words(self) -> &'static str {
        match self {
            Self::Right => "the right edge of the piece",
            Self::Left => "the left edge of the piece",
            Self::Both => "both edges",
        }
    }
}

/// What the next row is.
impl Worded for Side {
    fn words(self) -> &'static str {
        match self {
            Self::Right => "a right-side row",
            Self::Wrong => "a wrong-side row",
        }
    }
}

/// More steps than this are too many for one line.
const MOST_SAID: usize = 16;

/// The instruction.
pub fn headline(question: &Question, answer: &Answer) -> String {
    let instruction = if answer.stairs.len() > MOST_SAID {
        "Work row by row, as listed below.".into()
    } else {
        match question.way {
            Way::BindOff => bound_off(question, answer),
            Way::ShortRows => turned(question, answer),
        }
    };
    if answer.left > 0 {
        return instruction + &fill_pattern(" Then # {row|rows} plain.", &[answer.left]);
    }
    instruction
}

/// "Bind off 7, 7, 6, each at the start of a right-side row."
fn bound_off(question: &Question, answer: &Answer) -> String {
    let sizes: Vec<String> = answer.stairs.iter().map(|stair| number(stair.stitches)).collect();
    let words = [&sizes.join(", "), each(&sizes), row_of(question, answer)];
    fill_pattern_with("Bind off @@ at the start of a @.", &[], &words)
}

/// "Turn with 7, 14 stitches left, each at the end of a right-side row. Then work 1 such row to the end."
fn turned(question: &Question, answer: &Answer) -> String {
    if answer.turns == 0 {
        return "One step has no turn: work to the end.".into();
    }
    let turns = answer.stairs.iter().filter(|stair| !stair.last);
    let left: Vec<String> = turns.map(|stair| number(stair.gone)).collect();
    let to_the_end = match question.edge {
        Edge::Right | Edge::Left => 1,
        Edge::Both => 2,
    };
    let words = [&left.join(", "), each(&left), row_of(question, answer)];
    let pattern = "Turn with @ stitches left@ at the end of a @. Then work # such {row|rows} to the end.";
    fill_pattern_with(pattern, &[to_the_end], &words)
}

/// Behind several numbers, what is done with each of them.
fn each(numbers: &[String]) -> &'static str {
    if numbers.len() > 1 { ", each" } else { "" }
}

/// What kind of row the steps are worked in.
fn row_of(question: &Question, answer: &Answer) -> &'static str {
    match (question.edge, answer.stairs.first().map(|stair| stair.side)) {
        (Edge::Both, _) => "row",
        (Edge::Right | Edge::Left, Some(Side::Wrong)) => "wrong-side row",
        (Edge::Right | Edge::Left, Some(Side::Right) | None) => "right-side row",
    }
}

/// What it comes to.
pub fn outcome(question: &Question, answer: &Answer) -> (String, String) {
    let pattern = match question.way {
        Way::BindOff => "# {step|steps}, the last in row #. In all you bind off",
        Way::ShortRows => "# {step|steps}, the last in row #; # {turn|turns} at an edge. Then bind off in one",
    };
    let numbers = [answer.steps, answer.used, answer.turns];
    let edges = match question.edge {
        Edge::Right | Edge::Left => "",
        Edge::Both => " at each edge",
    };
    (fill_pattern(pattern, &numbers), stitches(question.stitches) + edges)
}

/// The steps one by one.
pub fn listed(question: &Question, answer: &Answer) -> Vec<String> {
    answer.stairs.iter().map(|stair| one_step(question, stair)).collect()
}

fn one_step(question: &Question, stair: &Stair) -> String {
    let side = match stair.side {
        Side::Right => "RS",
        Side::Wrong => "WS",
    };
    let Stair {
        row, stitches, gone, ..
    } = *stair;
    match (question.way, stair.last) {
        (Way::BindOff, _) => {
            let numbers = [row, stitches, gone, question.stitches];
            fill_pattern_with("Row # (@): bind off #; # of # gone", &numbers, &[side])
        }
        (Way::ShortRows, false) => fill_pattern_with("Row # (@): turn with # left", &[row, gone], &[side]),
        (Way::ShortRows, true) => fill_pattern_with("Row # (@): work to the end", &[row], &[side]),
    }
}

/// What else she should know.
pub fn notes(question: &Question, answer: &Answer) -> Vec<String> {
    let begins = answer.stairs.first().map_or(1, |stair| stair.row);
    let other = match (question.place, question.edge, begins) {
        (Place::Neck, _, _) => "Each half of a neck is worked alone; the other one moves at its other edge.",
        (Place::Shoulder, Edge::Both, _) => "The two edges move in turn, so they begin one row apart.",
        (Place::Shoulder, Edge::Right | Edge::Left, 1) => {
            "The other edge moves in the rows between: it begins one row later, in row 2."
        }
        (Place::Shoulder, Edge::Right | Edge::Left, _) => {
            "The other edge moves in the rows between: it begins one row earlier, in row 1."
        }
    };
    let mut notes = vec![other.into()];
    if answer.turns > 0 {
        notes.push("Wrap the next stitch or turn as your pattern does; close the gaps in the last row.".into());
    }
    notes
}

/// The sum.
pub fn steps(question: &Question, answer: &Answer) -> Vec<String> {
    let pattern = match answer.over {
        0 => "# ÷ # = # in each step.",
        _ => "# ÷ # = #, and # over: # {step takes|steps take} #, @.",
    };
    let larger = match (question.place, answer.over) {
        (_, 1) => "the first",
        (Place::Shoulder, _) => "from the first on evenly: a straight slope",
        (Place::Neck, _) => "the first ones: a round neck",
    };
    let Answer {
        steps, smaller, over, ..
    } = *answer;
    let numbers = [question.stitches, steps, smaller, over, over, smaller + 1];
    vec![fill_pattern_with(pattern, &numbers, &[larger])]
}

/// What the drawing shows.
pub fn drawing(question: &Question, answer: &Answer) -> String {
    fill_pattern_with("The piece with its stairs. @", &[], &[&headline(question, answer)])
}

pub const SOURCE: &str = "Stitches are bound off at the start of a row, so an edge moves in every second one. Which steps are larger: common practice, no source.";

#[cfg(test)]
mod tests;

//! The words of steps at a shoulder or a neck.

use super::Title;
use super::intl::{number, say, say_with, stitches};
use loopwright::stairs::{Answer, Edge, Place, Question, Side, Way};

/// What it is called.
pub const TITLE: Title = Title {
    name: "Steps",
    asks: "Bind off a shoulder or a neck step by step, or in short rows.",
};
/// Before the choice of way.
pub const I_HAVE_TO: &str = "I have to";
/// Between the stitches and the place.
pub const AT: &str = "stitches at";
/// Before the number of steps or rows.
pub const IN: &str = "in";
/// The label of the choice of way.
pub const LABEL_WAY: &str = "Bind off or short rows";
/// The label of the stitches.
pub const LABEL_STITCHES: &str = "Stitches at one edge";
/// The label of the choice of place.
pub const LABEL_PLACE: &str = "Shoulder or neck";
/// The label of the number.
pub const LABEL_STEPS: &str = "How many steps or rows";
/// The label of the choice of steps or rows.
pub const LABEL_BY: &str = "Steps or rows";
/// The label of the choice of edge.
pub const LABEL_EDGE: &str = "Right side towards you, at";
/// The label of the choice of the next row.
pub const LABEL_NEXT: &str = "The next row is";
/// Where the answer will be.
pub const WAITING: &str = "The steps appear here.";
/// Below the drawing.
pub const KEY: &str = "The right side faces you. Stitches are drawn square.";

/// How stitches go, by the key it is stored under.
pub const WAYS: [(&str, &str); 2] = [("bind", "bind off"), ("short", "leave in short rows")];
/// Where.
pub const PLACES: [(&str, &str); 2] = [("shoulder", "the shoulder"), ("neck", "the neck")];
/// In what.
pub const BYS: [(&str, &str); 2] = [("steps", "steps"), ("rows", "rows")];
/// At which edge.
pub const EDGES: [(&str, &str); 3] = [
    ("right", "the right edge of the piece"),
    ("left", "the left edge of the piece"),
    ("both", "both edges"),
];
/// The side of the next row.
pub const NEXTS: [(&str, &str); 2] = [("right", "a right-side row"), ("wrong", "a wrong-side row")];

/// More steps than this are too many for one line.
pub const MOST_SAID: usize = 16;

/// The instruction.
pub fn headline(question: &Question, answer: &Answer) -> String {
    let first = answer.stairs.first().map(|stair| stair.side);
    let kind = match (question.edge, first) {
        (Edge::Both, _) => "row",
        (_, Some(Side::Wrong)) => "wrong-side row",
        _ => "right-side row",
    };
    let bound_off = question.way == Way::BindOff;
    let pattern = match bound_off {
        _ if answer.stairs.len() > MOST_SAID => "Work row by row, as listed below.",
        true => "Bind off @@ at the start of a @.",
        false if answer.turns == 0 => "One step has no turn: work to the end.",
        false => "Turn with @ stitches left@ at the end of a @. Then work # such {row|rows} to the end.",
    };
    let (mut sizes, mut each) = (String::new(), "");
    for stair in &answer.stairs {
        if bound_off || !stair.last {
            if !sizes.is_empty() {
                sizes += ", ";
                each = ", each";
            }
            sizes += &number(if bound_off { stair.stitches } else { stair.gone });
        }
    }
    let edges = if question.edge == Edge::Both { 2 } else { 1 };
    let mut said = say_with(pattern, &[edges], &[&sizes, each, kind]);
    if answer.left > 0 {
        said += &say(" Then # {row|rows} plain.", &[answer.left]);
    }
    said
}

/// What it comes to.
pub fn outcome(question: &Question, answer: &Answer) -> (String, String) {
    let pattern = match question.way {
        Way::BindOff => "# {step|steps}, the last in row #. In all you bind off",
        Way::ShortRows => "# {step|steps}, the last in row #; # {turn|turns} at an edge. Then bind off in one",
    };
    let numbers = [answer.steps, answer.used, answer.turns];
    let both = if question.edge == Edge::Both {
        " at each edge"
    } else {
        ""
    };
    (say(pattern, &numbers), stitches(question.stitches) + both)
}

/// The steps one by one.
pub fn listed(question: &Question, answer: &Answer) -> Vec<String> {
    let mut said = Vec::new();
    for stair in &answer.stairs {
        let pattern = match (question.way, stair.last) {
            (Way::BindOff, _) => "Row # (@): bind off #; # of # gone",
            (Way::ShortRows, false) => "Row # (@): turn with # left",
            (Way::ShortRows, true) => "Row # (@): work to the end",
        };
        let side = if stair.side == Side::Right { "RS" } else { "WS" };
        let goes = if question.way == Way::BindOff {
            stair.stitches
        } else {
            stair.gone
        };
        let numbers = [stair.row, goes, stair.gone, question.stitches];
        said.push(say_with(pattern, &numbers, &[side]));
    }
    said
}

/// What else she should know.
pub fn notes(question: &Question, answer: &Answer) -> Vec<String> {
    let other = match (question.edge, answer.stairs.first().map_or(1, |stair| stair.row)) {
        _ if question.place == Place::Neck => {
            "Each half of a neck is worked alone; the other one moves at its other edge."
        }
        (Edge::Both, _) => "The two edges move in turn, so they begin one row apart.",
        (_, 1) => "The other edge moves in the rows between: it begins one row later, in row 2.",
        _ => "The other edge moves in the rows between: it begins one row earlier, in row 1.",
    };
    let mut said = vec![other.into()];
    if answer.turns > 0 {
        said.push("Wrap the next stitch or turn as your pattern does; close the gaps in the last row.".into());
    }
    said
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
    vec![say_with(pattern, &numbers, &[larger])]
}

/// What the drawing shows.
pub fn drawing(question: &Question, answer: &Answer) -> String {
    say_with("The piece with its stairs. @", &[], &[&headline(question, answer)])
}

/// Where the rule comes from.
pub const SOURCE: &str = "Stitches are bound off at the start of a row, so an edge moves in every second one. Which steps are larger: common practice, no source.";

#[cfg(test)]
mod tests;

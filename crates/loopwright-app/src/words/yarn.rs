//! The words of yarn needed.

mod fields;
mod sum;
#[cfg(test)]
mod tests;

pub use fields::*;
pub use sum::{note, source, steps};

use super::Title;
use super::intl::{say, say_made, say_with};
use loopwright::problem::{Kind, Problem};
use loopwright::units::{Length, Mass};
use loopwright::yarn::{Answer, Ask, Close, Line, Part, Question};

/// What it is called.
pub const TITLE: Title = Title {
    name: "Yarn needed",
    asks: "How many balls to buy, from your stitches and your swatch.",
};
/// Above the lines.
pub const LINES: &str = "Where the yarn goes";
/// Beside a line that is practice; [`FOOTNOTE`] says what it means.
pub const MARK: &str = " *";
/// Before what the mark means.
pub const FOOTNOTE: &str = "* ";

/// A value as it stands in a sentence.
#[derive(Clone, Copy)]
pub enum Value {
    /// A word.
    Word(&'static str),
    /// A number: `5.88`, `962.5`.
    Number(f64),
    /// Yarn: `307 m`.
    Yarn(Length),
    /// Yarn in a sum that has to add up: `375.6 m`.
    Exact(Length),
    /// What a ball or balls hold: `125 m`, or [`ABOUT`] so much where that is not all of it.
    Held(Length),
    /// The yarn in a stitch: `1.917 cm`.
    Fine(Length),
    /// What a scale says.
    Mass(Mass),
}
use Value::{Exact, Fine, Held, Number, Word, Yarn};

/// Before a figure that is rounded where others are not.
pub const ABOUT: &str = "about ";

/// Prints a value, a length or a weight in the knitter's unit.
pub type Print<'a> = &'a dyn Fn(Value) -> String;

/// A sentence with these numbers and values in it.
#[inline(never)]
fn tell(print: Print, pattern: &str, numbers: &[u32], values: &[Value]) -> String {
    let mut words = Vec::new();
    for value in values {
        words.push(print(*value));
    }
    say_made(pattern, numbers, words)
}

/// The heading of a section, by its number.
pub fn section(place: u32) -> String {
    say("Section #", &[place])
}

/// Where the answer will be: what is still missing, by the first field that is empty.
pub fn waiting(field: &str) -> &'static str {
    match field {
        "balls" => "Type how many balls the pattern asks for.",
        "length" => "Type how much yarn the pattern asks for.",
        "pattern_length" => "Type how much yarn is on the pattern's ball.",
        "pattern_mass" => "Type what the pattern's ball weighs.",
        "ball_length" => "Type how much yarn is on the ball you buy.",
        "ball_mass" => "Type what the ball you buy weighs.",
        "swatch_stitches" | "swatch_rows" | "w_stitches" | "w_rows" => "Type the stitches and rows of your swatch.",
        "swatch_mass" => "Type what your swatch weighs.",
        "pinned" => "Type how much larger your swatch is pinned out.",
        "reserve" | "seams" | "other" => "Type a figure in the folded part of the question; 0 for none.",
        _ if field.ends_with("width") || field.ends_with("length") => "Type the width and the length of the piece.",
        _ if field.ends_with("times") => "Type how often you knit it.",
        _ => "Type the stitches and rows that you knit.",
    }
}

/// In its place, where the swatch cannot tell.
pub fn refused(fabric: &str) -> String {
    let keyed = FABRICS.iter().find(|(key, _)| *key == fabric);
    let (_, fabric) = keyed.unwrap_or(&FABRICS[0]);
    say_with(
        "From a gauge in @ the yarn cannot be told: see the question.",
        &[],
        &[fabric],
    )
}

/// Above the number of balls.
pub fn title(question: &Question) -> &'static str {
    match question.ask {
        Ask::Piece(_) => "For the whole piece",
        Ask::Balls { .. } | Ask::Length(_) => "In place of the pattern's yarn",
    }
}

/// What to do.
pub fn buy(answer: &Answer) -> String {
    say("Buy # {ball|balls}", &[answer.balls])
}

/// Below it: what is used.
pub fn used(question: &Question, answer: &Answer, print: Print) -> (String, String) {
    let range = answer.length;
    let pattern = match question.ask {
        Ask::Piece(_) => "It takes @ to @, most likely",
        Ask::Balls { .. } => "The pattern means anything from @ to",
        Ask::Length(_) => "The pattern asks for",
    };
    let before = tell(print, pattern, &[], &[Yarn(range.least), Yarn(range.most)]);
    (before, print(Yarn(range.expected)))
}

/// What is bought, and what is left of it.
pub fn bought(question: &Question, answer: &Answer, print: Print) -> String {
    let values = [
        Held(question.ball.length),
        Held(answer.bought),
        Yarn(answer.leftover),
        Value::Mass(answer.mass),
    ];
    let pattern = "# {ball|balls} of @ {holds|hold} @, which leaves @. What is used weighs @.";
    tell(print, pattern, &[answer.balls], &values)
}

/// How many balls are likely enough, and what there is to say of the last one; nothing, mostly.
pub fn close(answer: &Answer, print: Print) -> String {
    let (mut patterns, mut length) = (["", ""], Length::ZERO);
    // Of "only just enough" the first is the number as well: then as many are likely enough.
    let mut numbers = [answer.likely, answer.balls, 0];
    if answer.likely < answer.balls {
        patterns[0] = "# {is|are} likely enough; # {makes|make} it sure. ";
    }
    patterns[1] = match answer.close {
        None => "",
        Some(Close::JustUnder { spare }) => {
            length = spare;
            "# {ball is|balls are} only just enough: @ to spare. Buy one more to be safe, or swatch."
        }
        Some(Close::JustOver { over }) => {
            length = over;
            "The last ball is for @ only. A slightly shorter piece can do without it."
        }
        Some(Close::ReserveOnly { balls: 1 }) => "The last ball is reserve only.",
        Some(Close::ReserveOnly { balls }) => {
            numbers[2] = balls;
            "The last # balls are reserve only."
        }
    };
    tell(print, &patterns.concat(), &numbers, &[Yarn(length)])
}

/// The bands of the drawing, each by its class and what it is up to where the yarn runs.
pub const BANDS: [(&str, &str); 5] = [
    ("sure", "at least @"),
    ("likely", "likely up to @"),
    ("perhaps", "perhaps up to @"),
    ("reserve", "with the reserve @"),
    ("ball", "on the balls @"),
];

/// One band.
pub fn band(pattern: &str, end: Length, print: Print) -> String {
    tell(print, pattern, &[], &[Yarn(end)])
}

/// What the drawing shows, for those who cannot see it, before its bands.
pub fn drawing(answer: &Answer, each: bool) -> String {
    let pattern = if each {
        "# {ball|balls}, filled in turn"
    } else {
        "One ball that stands for all #, filled from below"
    };
    say(pattern, &[answer.balls])
}

/// One line of the list.
pub fn line(line: &Line, print: Print) -> String {
    let (mut expected, most) = (line.length.expected, line.length.most);
    let part = match line.part {
        Part::Knitting => "Knitting",
        Part::CastOn => "Cast-on and its end",
        Part::BindOff => "Bind-off and its end",
        Part::Seams => "Seams",
        Part::Swatch => "Swatch",
        Part::Other => "Other yarn",
        Part::Pattern => "The pattern's yarn",
        Part::Joins => "Ends at each new ball",
        // It is bought and not expected to be used.
        Part::Reserve => {
            expected = most;
            "Reserve"
        }
    };
    let pattern = if expected == most { "@: @" } else { "@: @, at most @" };
    tell(print, pattern, &[], &[Word(part), Yarn(expected), Yarn(most)])
}

/// What to type instead.
pub fn problem(problem: &Problem) -> String {
    match (problem.field.key(), &problem.kind) {
        (_, Kind::NeedsSwatch) => "From such a gauge the yarn in these stitches cannot be told. Type the gauge of a stockinette swatch on the same needle, or weigh a swatch.".into(),
        ("measured", _) => "A measured piece needs the gauge of a swatch in its own fabric. Measure one, or count stitches and rows.".into(),
        ("sections", Kind::TooMany { most }) => say("That is more than # stitches. Type fewer.", &[*most]),
        ("sections", _) => "No ball holds such yarn. Type the stitches and the swatch again.".into(),
        (_, kind) => super::problem::sentence(kind),
    }
}

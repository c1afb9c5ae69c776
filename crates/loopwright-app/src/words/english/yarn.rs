//! The words of yarn needed.

mod fields;
mod printer;
mod sum;
#[cfg(test)]
mod tests;

pub use fields::*;
pub use printer::{Printer, Value};
pub use sum::{note, source, steps};

use super::intl::{fill_pattern, fill_pattern_with};
use super::{Title, Worded, page};
use Value::{Held, Yarn};
use loopwright::fabric::Fabric;
use loopwright::problem::{FieldPath, Kind, Problem};
use loopwright::tables::Certainty;
use loopwright::units::Length;
use loopwright::yarn::{Answer, Ask, Band, Close, Line, Name, Part, PerYarn, Question, SECTIONS, Section, SectionName};

pub const TITLE: Title = Title {
    name: "Yarn needed",
    asks: "How many balls to buy, from your stitches and your swatch.",
};
pub const LINES: &str = "Where the yarn goes";

/// The heading of a section, by its number.
pub fn section(place: u32) -> String {
    fill_pattern("Section #", &[place])
}

/// A section by its place, counted from nought: the name she gave it, or its number.
pub(super) fn section_name(place: usize, section: &Section) -> String {
    if section.name.is_empty() {
        return self::section(u32::try_from(place + 1).unwrap_or(u32::MAX));
    }
    section.name.clone()
}

const TYPE_STITCHES: &str = "Type the stitches and rows that you knit.";

/// Where the answer will be: what is still missing, by the first field that is empty.
pub fn waiting(field: Option<FieldPath>) -> &'static str {
    let alone = field.and_then(FieldPath::name).map(waiting_for);
    let in_section = || field.and_then(FieldPath::name).map(waiting_for_section);
    alone.or_else(in_section).unwrap_or(TYPE_STITCHES)
}

const fn waiting_for(name: Name) -> &'static str {
    match name {
        Name::Balls => "Type how many balls the pattern asks for.",
        Name::Length => "Type how much yarn the pattern asks for.",
        Name::PatternLength => "Type how much yarn is on the pattern's ball.",
        Name::PatternMass => "Type what the pattern's ball weighs.",
        Name::BallLength => "Type how much yarn is on the ball you buy.",
        Name::BallMass => "Type what the ball you buy weighs.",
        Name::SwatchStitches
        | Name::SwatchRows
        | Name::OwnStitches
        | Name::OwnRows
        | Name::WeighedStitches
        | Name::WeighedRows => "Type the stitches and rows of your swatch.",
        Name::SwatchMass => "Type what your swatch weighs.",
        Name::Pinned => "Type how much larger your swatch is pinned out.",
        Name::Reserve | Name::Seams | Name::Other => "Type a figure in the folded part of the question; 0 for none.",
        Name::From
        | Name::Sections
        | Name::Measured
        | Name::By
        | Name::SwatchFabric
        | Name::Swatch
        | Name::Rest
        | Name::CountSwatch
        | Name::CountJoins => TYPE_STITCHES,
    }
}

const fn waiting_for_section(name: SectionName) -> &'static str {
    match name {
        SectionName::Width | SectionName::Length => "Type the width and the length of the piece.",
        SectionName::Times => "Type how often you knit it.",
        SectionName::Stitches | SectionName::To | SectionName::Rows => TYPE_STITCHES,
        SectionName::On
        | SectionName::Shape
        | SectionName::Fabric
        | SectionName::CastOn
        | SectionName::BindOff
        | SectionName::Name
        | SectionName::Yarn => TYPE_STITCHES,
    }
}

/// In its place, where the swatch cannot tell.
pub fn refused(fabric: Fabric) -> String {
    fill_pattern_with(
        "From a gauge in @ the yarn cannot be told: see the question.",
        &[],
        &[fabric.words()],
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
    let all = fill_pattern("Buy # {ball|balls}", &[answer.balls]);
    let each = answer.yarns.iter();
    let each: Vec<String> = each
        .map(|one| fill_pattern("# of yarn #", &[one.balls, one.yarn]))
        .collect();
    match each.is_empty() {
        true => all,
        false => format!("{all}: {}", each.join(", ")),
    }
}

/// Each yarn by itself, where there are several.
pub fn apart(answer: &Answer, print: &Printer) -> Vec<String> {
    let one = |one: &PerYarn| {
        let pattern = "Yarn #: it takes @ to @, most likely @. # {ball|balls}, which {leaves|leave} @.";
        let lengths = [one.length.least, one.length.most, one.length.expected, one.leftover].map(Yarn);
        print.sentence(pattern, &[one.yarn, one.balls], &lengths)
    };
    answer.yarns.iter().map(one).collect()
}

/// How much yarn it takes, where the ball is not known yet.
pub fn takes(answer: &Answer, print: &Printer) -> String {
    print.sentence("You need about @ of yarn", &[], &[Yarn(answer.length.expected)])
}

pub const STILL_THE_BALL: &str = "Type how much yarn is on the ball you buy, and you read here how many to buy. The reserve, and the ends at each new ball, come on top.";

/// Below it: what is used.
pub fn used(question: &Question, answer: &Answer, print: &Printer) -> (String, String) {
    let range = answer.length;
    let pattern = match question.ask {
        Ask::Piece(_) => "It takes @ to @, most likely",
        Ask::Balls { .. } => "The pattern means anything from @ to",
        Ask::Length(_) => "The pattern asks for",
    };
    let before = print.sentence(pattern, &[], &[Yarn(range.least), Yarn(range.most)]);
    (before, print.print(Yarn(range.expected)))
}

/// What is bought, and what is left of it.
pub fn bought(question: &Question, answer: &Answer, print: &Printer) -> String {
    let values = [Held(question.ball.length), Held(answer.bought), Yarn(answer.leftover)];
    let pattern = "# {ball|balls} of @ {holds|hold} @, which leaves @.";
    let holds = print.sentence(pattern, &[answer.balls], &values);
    match answer.mass {
        Some(mass) => holds + &print.sentence(" What is used weighs @.", &[], &[Value::Mass(mass)]),
        None => holds,
    }
}

/// How many balls are likely enough, and what there is to say of the last one; nothing, mostly.
pub fn close(answer: &Answer, print: &Printer) -> String {
    let likely = if answer.likely < answer.balls {
        let pattern = "# {is|are} likely enough; # {makes|make} it sure. ";
        fill_pattern(pattern, &[answer.likely, answer.balls])
    } else {
        String::new()
    };
    let last = match answer.close {
        None => String::new(),
        Some(Close::JustUnder { spare }) => print.sentence(
            "# {ball is|balls are} only just enough: @ to spare. Buy one more to be safe, or swatch.",
            &[answer.balls],
            &[Yarn(spare)],
        ),
        Some(Close::JustOver { over }) => print.sentence(
            "The last ball is for @ only. A slightly shorter piece can do without it.",
            &[],
            &[Yarn(over)],
        ),
        Some(Close::ReserveOnly { balls: 1 }) => "The last ball is reserve only.".into(),
        Some(Close::ReserveOnly { balls }) => fill_pattern("The last # balls are reserve only.", &[balls]),
    };
    likely + &last
}

/// What a band of the drawing means, and what it is up to where the yarn runs.
pub fn band(band: Band, end: Length, print: &Printer) -> String {
    let pattern = match band {
        Band::Sure => "at least @",
        Band::Likely => "likely up to @",
        Band::Perhaps => "perhaps up to @",
        Band::Reserve => "with the reserve @",
        Band::Left => "on the balls @",
    };
    print.sentence(pattern, &[], &[Yarn(end)])
}

/// What the drawing shows, for those who cannot see it; `each` when every ball is drawn.
pub fn drawing(answer: &Answer, each: bool, print: &Printer) -> String {
    let pattern = if each {
        "# {ball|balls}, filled in turn"
    } else {
        "One ball that stands for all #, filled from below"
    };
    let bands = answer.bands();
    let bands = bands.iter().map(|(name, end)| band(*name, *end, print));
    let written: Vec<String> = [fill_pattern(pattern, &[answer.balls])]
        .into_iter()
        .chain(bands)
        .collect();
    written.join(", ")
}

/// One line of the list; a star stands behind what is practice.
pub fn line(line: &Line, question: &Question, print: &Printer) -> String {
    let (expected, most) = (line.length.expected, line.length.most);
    let name = part(line.part, question);
    // The reserve is bought and not expected to be used.
    let is_exact = expected == most || line.part == Part::Reserve;
    let length = if is_exact {
        print.print(Yarn(most))
    } else {
        print.sentence("@, at most @", &[], &[Yarn(expected), Yarn(most)])
    };
    let star = match line.certainty {
        Certainty::Practice => "\u{a0}*",
        Certainty::Read | Certainty::Quoted | Certainty::FromMemory | Certainty::Computed => "",
    };
    fill_pattern_with("@: @@", &[], &[&name, &length, star])
}

/// What a line is for.
fn part(part: Part, question: &Question) -> String {
    let name = match part {
        Part::Knitting { section } => return knitting(section as usize, question),
        Part::CastOn => "Casting on, with its end",
        Part::BindOff => "Binding off, with its end",
        Part::Seams => "Seams",
        Part::Swatch => "Swatch",
        Part::Other => "Other yarn",
        Part::Pattern => "The pattern's yarn",
        Part::Joins => "Ends at each new ball",
        Part::Reserve => "Reserve",
    };
    name.into()
}

/// The knitting of a section; one alone that has no name is the knitting.
fn knitting(place: usize, question: &Question) -> String {
    let sections: &[Section] = match &question.ask {
        Ask::Piece(piece) => &piece.sections,
        Ask::Balls { .. } | Ask::Length(_) => &[],
    };
    match sections {
        [alone] if alone.name.is_empty() => "Knitting".into(),
        all => all
            .get(place)
            .map_or_else(String::new, |section| section_name(place, section)),
    }
}

/// What the star means.
pub fn footnote() -> String {
    format!("* {}", page::PRACTICE)
}

/// What to type instead.
pub fn problem(problem: &Problem) -> String {
    match (problem.kind, problem.field.name()) {
        (Kind::NeedsSwatch, _) => "From such a gauge the yarn in these stitches cannot be told. Type the gauge of a stockinette swatch on the same needle, or weigh a swatch.".into(),
        (_, Some(Name::Measured)) => "A measured piece needs the gauge of a swatch in its own fabric. Measure one, or count stitches and rows.".into(),
        (Kind::TooMany { most }, Some(Name::Sections)) if most == SECTIONS.most => fill_pattern("That is more than # sections. Take some out.", &[most]),
        (Kind::TooMany { most }, Some(Name::Sections)) => fill_pattern("That is more than # stitches. Type fewer.", &[most]),
        (_, Some(Name::Sections)) => "No ball holds such yarn. Type the stitches and the swatch again.".into(),
        (kind, _) => super::problem::sentence(&kind),
    }
}

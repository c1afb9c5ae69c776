//! The words of shaping over rows. The instruction itself is told by [`super::schedule`].

use super::intl::{fill_pattern, fill_pattern_with, number, stitches};
use super::schedule::{FROM_NEXT_ROUND, FROM_NEXT_ROW, rows, shaping_row, shaping_rows, written};
use super::{Title, Worded};
use loopwright::problem::{Kind, Problem};
use loopwright::row::Stitch;
use loopwright::shaping::{
    Answer, Ask, Asked, Knitting, KnittingKind, LastRow, Name, Order, Pair, Question, ShapedSides, Side, Slope,
};

pub const TITLE: Title = Title {
    name: "Shaping",
    asks: "Lose or gain stitches over many rows: which rows.",
};
pub const I_HAVE_TO: &str = "I have to";
pub const IN_THE_NEXT: &str = "stitches in the next";
pub const WAITING: &str = "The rows you shape in appear here.";

/// What a field is called.
pub const fn label(name: Name) -> &'static str {
    match name {
        Name::Ask => "What to do",
        Name::Amount => "How many stitches",
        Name::Rows => "How many rows",
        Name::Knitting => "In the round or flat",
        Name::Stitches => "Stitches on the needle now",
        Name::Each => "Stitches in each shaping row, all edges together",
        Name::First => "Plain rows first; empty for a gap like the others",
        Name::Last => "Plain rows at the end, at least",
        Name::Edge => "Plain stitches outside each change",
        Name::Rest => "The last shaping row",
        Name::Order => "Where gaps differ",
        Name::Sides => "Shape, when flat, on",
        Name::Slope => "The changes lean",
        Name::Increase => "Increase with",
    }
}

impl Worded for Asked {
    fn words(self) -> &'static str {
        match self {
            Self::Lose => "lose",
            Self::Gain => "gain",
            Self::Reach => "end with",
        }
    }
}

impl Worded for KnittingKind {
    fn words(self) -> &'static str {
        match self {
            Self::FlatFromRight => "flat, right side next",
            Self::FlatFromWrong => "flat, wrong side next",
            Self::Round => "in the round",
        }
    }
}

impl Worded for LastRow {
    fn words(self) -> &'static str {
        match self {
            Self::LikeTheOthers => "is like the others",
            Self::MayChangeFewer => "may change fewer",
        }
    }
}

impl Worded for ShapedSides {
    fn words(self) -> &'static str {
        match self {
            Self::RightOnly => "right-side rows only",
            Self::Any => "any row",
        }
    }
}

impl Worded for Order {
    fn words(self) -> &'static str {
        match self {
            Self::CloseFirst => "steep, then gentle",
            Self::WideFirst => "gentle, then steep",
            Self::OneRate => "one rate, the rest plain",
            Self::Mixed => "mixed, the straightest",
        }
    }
}

impl Worded for Slope {
    fn words(self) -> &'static str {
        match self {
            Self::Along => "along the edge: smooth",
            Self::Across => "across it: to be seen",
        }
    }
}

/// After the number of rows, or rounds.
pub const fn rows_wanted(knitting: KnittingKind) -> &'static str {
    match knitting {
        KnittingKind::FlatFromRight | KnittingKind::FlatFromWrong => "rows,",
        KnittingKind::Round => "rounds,",
    }
}

/// Above the instruction: the next row is row 1.
pub const fn from_next(knitting: Knitting) -> &'static str {
    match knitting {
        Knitting::Flat { .. } => FROM_NEXT_ROW,
        Knitting::Round => FROM_NEXT_ROUND,
    }
}

fn in_rows(count: u32, question: &Question) -> String {
    rows(count, question.knitting == Knitting::Round)
}

fn noun(question: &Question) -> &'static str {
    match question.knitting {
        Knitting::Flat { .. } => "row",
        Knitting::Round => "round",
    }
}

/// What it comes to: the rows used, and the count.
pub fn outcome(question: &Question, answer: &Answer) -> (String, String) {
    let used = in_rows(answer.used, question);
    let pattern = match (question.stitches, answer.schedule.gain) {
        (Some(_), _) => "@ used of #. # {stitch becomes|stitches become}",
        (None, true) => "@ used of #. You gain",
        (None, false) => "@ used of #. You lose",
    };
    let after = answer.after.map_or_else(|| stitches(answer.change), number);
    let numbers = [question.rows, question.stitches.unwrap_or(0)];
    (fill_pattern_with(pattern, &numbers, &[&used]), after)
}

/// What to work at the two edges, for the sides that have shaping rows, and where that ends.
pub fn pair(question: &Question, answer: &Answer) -> Vec<String> {
    let Some(pair) = answer.pair else {
        return Vec::new();
    };
    let mut sentences = Vec::new();
    if answer.wrong_side < answer.shaping_rows {
        let from = match question.knitting {
            Knitting::Flat { .. } => "From the right side: ",
            Knitting::Round => "",
        };
        sentences.push(worked(from, "K", "knit", pair));
    }
    if answer.wrong_side > 0 {
        sentences.push(worked("From the wrong side: ", "P", "purl", pair.on(Side::Wrong)));
    }
    let noun = noun(question);
    if let Some(row) = answer.cramped {
        sentences.push(fill_pattern_with(
            "From @ # on there is no room for this.",
            &[row],
            &[noun],
        ));
    }
    if answer.in_last == 1 {
        let pattern = "In @ # change one stitch only, at one edge.";
        sentences.push(fill_pattern_with(pattern, &[answer.used], &[noun]));
    }
    sentences
}

/// A row with its two changes: "K1, ssk, knit to the last 3 stitches, k2tog, K1."
fn worked(from: &str, plain: &str, work: &str, pair: Pair) -> String {
    let mut sentence = from.to_owned();
    if pair.before > 0 {
        sentence += &fill_pattern_with("@#, ", &[pair.before], &[plain]);
    }
    let words = [pair.first.abbreviation(), work, pair.last.abbreviation()];
    sentence += &fill_pattern_with("@, @ to the last # {stitch|stitches}, @", &[pair.at_end()], &words);
    if pair.after > 0 {
        sentence += &fill_pattern_with(", @#", &[pair.after], &[plain]);
    }
    sentence + "."
}

/// The least and the most that the same rows could take.
pub fn limits(question: &Question, answer: &Answer) -> String {
    let pattern = "In these @ at least # (@) and at most # can @. # {stitch needs|stitches need} @.";
    let words = [
        &*in_rows(question.rows, question),
        &shaping_rows(1, &answer.schedule),
        if answer.schedule.gain { "come" } else { "go" },
        &in_rows(answer.fewest_rows, question),
    ];
    let least = if question.rest { 1 } else { question.each };
    fill_pattern_with(pattern, &[least, answer.most, answer.change], &words)
}

/// What else she should know.
pub fn notes(question: &Question, answer: &Answer) -> Vec<String> {
    let left = answer.schedule.left;
    let two_apart = answer.shared.by > 1 && answer.shared.gaps > 0 && question.order != Order::OneRate;
    let mut sentences = Vec::new();
    if two_apart && left > question.last {
        let pattern = "Right-side rows are two rows apart, so # plain rows stay at the end.";
        sentences.push(fill_pattern(pattern, &[left]));
    }
    if question.each == 2 && answer.pair.is_none() && answer.change > 1 {
        let pattern = "There are too few stitches for a change at each edge, # outside it.";
        sentences.push(fill_pattern(pattern, &[question.edge]));
    }
    if question.each == 1 || answer.change == 1 {
        sentences.push("Change at one edge, always the same.".into());
    }
    if question.each > 2 && answer.change > 1 {
        sentences.push("Spread the changes as your pattern says.".into());
    }
    if answer.pair.is_some_and(|pair| pair.first == Stitch::Kfb) {
        sentences.push("The bar of a kfb comes behind it, so one more is plain at the end.".into());
    }
    sentences
}

/// The sum.
pub fn steps(question: &Question, answer: &Answer) -> Vec<String> {
    let mut steps = vec![shaping_rows_sum(question, answer)];
    if answer.shared.gaps > 0 {
        steps.push(gaps_sum(question, answer));
    }
    steps
}

/// How many shaping rows.
fn shaping_rows_sum(question: &Question, answer: &Answer) -> String {
    let all = shaping_rows(answer.shaping_rows, &answer.schedule);
    if answer.in_last < question.each {
        let numbers = [answer.change, question.each, answer.in_last];
        return fill_pattern_with("# ÷ #, with # in the last: @.", &numbers, &[&all]);
    }
    fill_pattern_with("# ÷ # = @.", &[answer.change, question.each], &[&all])
}

/// How the rows are shared out.
fn gaps_sum(question: &Question, answer: &Answer) -> String {
    let shared = answer.shared;
    let words = [&*in_rows(shared.rows, question), shaping_row(&answer.schedule)];
    let mut numbers = vec![shared.gaps, shared.short_gaps(), shared.every];
    let pattern = if shared.longer == 0 {
        "@ are shared between # {gap|gaps}: # of #, @ at the end of each."
    } else {
        numbers.extend([shared.longer, shared.every_longer()]);
        "@ are shared between # {gap|gaps}: # of # and # of #, @ at the end of each."
    };
    fill_pattern_with(pattern, &numbers, &words)
}

/// What the drawing shows.
pub fn drawing(question: &Question, answer: &Answer) -> String {
    let words = [&*in_rows(question.rows, question), &written(&answer.schedule)];
    fill_pattern_with("The piece with its edges, @ from below. @", &[], &words)
}

pub const KEY: &str = "▼ fewer, △ more. The edges to scale, their stitches square.";

pub const SOURCE: &str = "Arithmetic. The first change at once, the last row plain, right-side rows, and which way a pair leans: common practice, no source.";

/// What to type instead. What is too steep can be mended in each of several fields.
pub fn problem(question: &Question, problem: &Problem) -> String {
    let (pattern, number) = match (problem.field.name(), problem.kind, question.ask, question.stitches) {
        (Some(Name::Rows), Kind::TooFew { least }, ..) if least > 1 => ("That many stitches need @ or more.", least),
        (Some(Name::Each), Kind::TooFew { least }, ..) if least > 1 => ("Or change # or more each time.", least),
        (Some(Name::Amount), Kind::TooMany { .. }, Ask::Lose(lost), Some(now)) if lost >= now => {
            ("There are only # on the needle.", now)
        }
        (Some(Name::Amount), Kind::TooMany { most }, Ask::Gain(_), _) => {
            ("# is the most that comes this way. For more, cast on in steps.", most)
        }
        (Some(Name::Amount), Kind::TooMany { most }, ..) => (
            "# is the most that goes this way. For more, bind off in steps (the tool Steps).",
            most,
        ),
        _ => return super::problem::sentence(&problem.kind),
    };
    fill_pattern_with(pattern, &[number], &[&in_rows(number, question)])
}

#[cfg(test)]
mod tests;

//! The words of shaping over rows. The instruction itself is told by [`super::schedule`].

mod followed;

pub use followed::followed;

use super::intl::{fill_pattern, fill_pattern_with, number, stitches};
use super::schedule::{
    FROM_NEXT_ROUND, FROM_NEXT_ROW, every_short, is_short, phrase, rows, shaping_row, shaping_rows, written,
};
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
        Name::First => "Plain rows first; leave it empty for a gap like the others",
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

/// What to do, as the trade says it: "Decrease now, then every 8th row 8 times more." Where that takes more than two
/// rates, it is told in the one convention, or sends to the rows.
pub fn headline(question: &Question, answer: &Answer) -> String {
    let Some(phrase) = phrase(&answer.schedule) else {
        return written(&answer.schedule);
    };
    let pattern = match (answer.schedule.gain, answer.shaping_rows) {
        (false, 1) => "Decrease # @",
        (true, 1) => "Increase # @",
        (false, _) => "Decrease @",
        (true, _) => "Increase @",
    };
    let mut sentence = fill_pattern_with(pattern, &[answer.in_last], &[&phrase]);
    if answer.shaping_rows > 1 && answer.in_last < question.each {
        sentence += &fill_pattern("; only # in the last", &[answer.in_last]);
    }
    sentence + "."
}

/// Whether the headline tells all shaping rows; otherwise it sends to the list.
pub fn tells_rows(answer: &Answer) -> bool {
    phrase(&answer.schedule).is_some() || is_short(&answer.schedule)
}

/// The same in full, in the one convention, where the headline says it as the trade does.
pub fn in_full(answer: &Answer) -> Option<String> {
    let says_more = phrase(&answer.schedule).is_some() && answer.shaping_rows > 1;
    says_more.then(|| fill_pattern_with("In full: @", &[], &[&written(&answer.schedule)]))
}

/// What it comes to: the row of the last change, and the count.
pub fn outcome(question: &Question, answer: &Answer) -> (String, String) {
    let pattern = match (question.stitches, answer.schedule.gain) {
        (Some(_), _) => "@ is in @ # of #. # {stitch becomes|stitches become}",
        (None, true) => "@ is in @ # of #. You gain",
        (None, false) => "@ is in @ # of #. You lose",
    };
    let change = match answer.shaping_rows {
        1 => "The change",
        _ => "The last change",
    };
    let after = answer.after.map_or_else(|| stitches(answer.change), number);
    let numbers = [answer.used, question.rows, question.stitches.unwrap_or(0)];
    (fill_pattern_with(pattern, &numbers, &[change, noun(question)]), after)
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
            "From @ # on there are too few stitches for this.",
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
    let pattern = match pair.at_end() {
        1 => "@, @ to the last stitch, @",
        _ => "@, @ to the last # {stitch|stitches}, @",
    };
    sentence += &fill_pattern_with(pattern, &[pair.at_end()], &words);
    if pair.after > 0 {
        sentence += &fill_pattern_with(", @#", &[pair.after], &[plain]);
    }
    sentence + "."
}

/// The most that the same rows could take, and the fewest that this change needs; told where more than half of the rows
/// are needed.
pub fn limits(question: &Question, answer: &Answer) -> Option<String> {
    if answer.fewest_rows <= question.rows / 2 {
        return None;
    }
    let pattern = match answer.schedule.gain {
        true => "At most # {stitch|stitches} could come in these @; # {needs|need} at least @.",
        false => "At most # {stitch|stitches} could go in these @; # {needs|need} at least @.",
    };
    let words = [
        &*in_rows(question.rows, question),
        &in_rows(answer.fewest_rows, question),
    ];
    Some(fill_pattern_with(pattern, &[answer.most, answer.change], &words))
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
        let pattern = "There are too few stitches for a change at each edge with # outside it.";
        sentences.push(fill_pattern(pattern, &[question.edge]));
    }
    if question.each == 1 || answer.change == 1 {
        sentences.push("Work every change at the same edge.".into());
    }
    if question.each > 2 && answer.change > 1 {
        sentences.push("Spread the changes as your pattern says.".into());
    }
    if answer.pair.is_some_and(|pair| pair.first == Stitch::Kfb) {
        sentences.push("A kfb leaves its bar on its left, so one more stitch is plain at the end.".into());
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
    let rows = shared_rows(question, answer);
    let words = [&*rows, shaping_row(&answer.schedule)];
    let mut numbers = vec![shared.gaps, shared.short_gaps(), shared.every];
    let pattern = if shared.longer == 0 {
        "@ are shared between # {gap|gaps}: # of #, @ at the end of each."
    } else {
        numbers.extend([shared.longer, shared.every_longer()]);
        "@ are shared between # {gap|gaps}: # of # and # of #, @ at the end of each."
    };
    fill_pattern_with(pattern, &numbers, &words)
}

/// The rows that are shared out: all of them less those up to the first change, where that stands by itself, and less
/// what stays at the end. "66 − 1 − 1 = 64 rows".
fn shared_rows(question: &Question, answer: &Answer) -> String {
    let shared = answer.shared.rows;
    let first = answer.schedule.rows().next().filter(|_| question.first.is_some());
    let before = first.map_or(0, |shaped| shaped.row);
    let after = question.rows.saturating_sub(before + shared);
    let words = in_rows(shared, question);
    match (before, after) {
        (0, 0) => words,
        (0, less) | (less, 0) => fill_pattern_with("# − # = @", &[question.rows, less], &[&words]),
        _ => fill_pattern_with("# − # − # = @", &[question.rows, before, after], &[&words]),
    }
}

/// What is written into the drawing.
pub struct Labels {
    /// For those who cannot see it.
    pub words: String,
    /// Below it, the stitches at the beginning; above it, those at the end.
    pub counts: Option<[String; 2]>,
    /// Beside it, how often the rows are shaped: each rate with the rows from which and to which it goes.
    pub rates: Vec<(String, [u32; 2])>,
}

/// The words in the drawing.
pub fn labels(question: &Question, answer: &Answer) -> Labels {
    let words = [&*in_rows(question.rows, question), &headline(question, answer)];
    let counts = |(now, after)| [number(now), number(after)];
    let rate = |(rows, ends)| (every_short(rows, question.knitting), ends);
    Labels {
        words: fill_pattern_with("The piece with its edges, @ from below. @", &[], &words),
        counts: question.stitches.zip(answer.after).map(counts),
        rates: answer.schedule.rate_rows().into_iter().map(rate).collect(),
    }
}

/// Below the drawing: its marks, of which only one kind is there.
pub fn key(question: &Question, answer: &Answer) -> String {
    let pattern = match answer.schedule.gain {
        true => "△ more, with the number of its @. The edges are to scale, each stitch as wide as a @ is high.",
        false => "▼ fewer, with the number of its @. The edges are to scale, each stitch as wide as a @ is high.",
    };
    fill_pattern_with(pattern, &[], &[noun(question); 2])
}

pub const SOURCE: &str = "Arithmetic. The first change at once, the last row plain, right-side rows, and which way a pair leans: common practice, no source.";

/// What to type instead. What is too steep can be mended in each of several fields.
pub fn problem(question: &Question, problem: &Problem) -> String {
    let (pattern, number) = match (problem.field.name(), problem.kind, question.ask, question.stitches) {
        (Some(Name::Rows), Kind::TooFew { least }, ..) if least > 1 => ("So many stitches need @ or more.", least),
        (Some(Name::Each), Kind::TooFew { least }, ..) if least > 1 => {
            ("Or change # or more in each shaping row.", least)
        }
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

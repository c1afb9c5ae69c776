//! The words of shaping over rows. The instruction itself is told by [`super::schedule`].

use super::Title;
use super::intl::{number, say, say_with, stitches};
use super::schedule::{rows, shaping_row, shaping_rows, written};
/// Ways to increase.
pub const INCREASES: [(&str, &str); 3] = [
    ("m1", "M1, from the bar"),
    ("yo", "yo, a yarn over"),
    ("kfb", "kfb, front and back"),
];

use loopwright::problem::{Kind, Problem};
use loopwright::row::Stitch;
use loopwright::shaping::{Answer, Ask, Knitting, Order, Pair, Question, Side};

/// What it is called.
pub const TITLE: Title = Title {
    name: "Shaping",
    asks: "Lose or gain stitches over many rows: which rows.",
};
/// Before the choice of what to do.
pub const I_HAVE_TO: &str = "I have to";
/// Between the stitches and the rows.
pub const IN_THE_NEXT: &str = "stitches in the next";
/// After the rows, or rounds.
pub const ROWS: [&str; 2] = ["rows,", "rounds,"];
/// The label of the choice of what to do.
pub const LABEL_ASK: &str = "What to do";
/// The label of the number.
pub const LABEL_AMOUNT: &str = "How many stitches";
/// The label of the rows.
pub const LABEL_ROWS: &str = "How many rows";
/// The label of the choice of round or flat.
pub const LABEL_KNITTING: &str = "In the round or flat";
/// The label of the stitches.
pub const LABEL_STITCHES: &str = "Stitches on the needle now";
/// The label of the stitches that one shaping row changes.
pub const LABEL_EACH: &str = "Stitches in each shaping row, all edges together";
/// The label of the choice about the last.
pub const LABEL_REST: &str = "The last shaping row";
/// The label of the choice of sides.
pub const LABEL_SIDES: &str = "Shape, when flat, on";
/// The label of the plain rows before the first shaping row.
pub const LABEL_FIRST: &str = "Plain rows first; empty for a gap like the others";
/// The label of the plain rows at the end.
pub const LABEL_LAST: &str = "Plain rows at the end, at least";
/// The label of the choice of order.
pub const LABEL_ORDER: &str = "Where gaps differ";
/// The label of the edge stitches.
pub const LABEL_EDGE: &str = "Plain stitches outside each change";
/// The label of the choice of lean.
pub const LABEL_SLOPE: &str = "The changes lean";
/// The label of the choice of increase.
pub const LABEL_INCREASE: &str = "Increase with";
/// Where the answer will be.
pub const WAITING: &str = "The rows you shape in appear here.";
/// Above the instruction: the next row is row 1.
pub const OVER: [&str; 2] = ["From the next row on", "From the next round on"];

/// What to do, by the key it is stored under.
pub const ASKS: [(&str, &str); 3] = [("lose", "lose"), ("gain", "gain"), ("reach", "end with")];
/// Flat or in the round, and which row is next.
pub const KNITTINGS: [(&str, &str); 3] = [
    ("right", "flat, right side next"),
    ("wrong", "flat, wrong side next"),
    ("round", "in the round"),
];
/// What the last shaping row may do.
pub const RESTS: [(&str, &str); 2] = [("like", "is like the others"), ("fewer", "may change fewer")];
/// On which rows.
pub const SIDES: [(&str, &str); 2] = [("right", "right-side rows only"), ("any", "any row")];
/// How gaps of two lengths follow each other.
pub const ORDERS: [(&str, &str); 4] = [
    ("close", "steep, then gentle"),
    ("wide", "gentle, then steep"),
    ("one", "one rate, the rest plain"),
    ("mixed", "mixed, the straightest"),
];
/// Which way a pair leans.
pub const SLOPES: [(&str, &str); 2] = [("along", "along the edge: smooth"), ("across", "across it: to be seen")];

fn in_rows(count: u32, question: &Question) -> String {
    rows(count, question.knitting == Knitting::Round)
}

fn noun(question: &Question) -> &'static str {
    if question.knitting == Knitting::Round {
        "round"
    } else {
        "row"
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
    (say_with(pattern, &numbers, &[&used]), after)
}

/// What to work at the two edges, for the sides that have shaping rows, and where that ends.
pub fn pair(question: &Question, answer: &Answer) -> Vec<String> {
    let mut said = Vec::new();
    let round = question.knitting == Knitting::Round;
    let noun = noun(question);
    if let Some(pair) = answer.pair {
        if answer.wrong_side < answer.shaping_rows {
            let from = if round { "" } else { "From the right side: " };
            said.push(worked(from, "K", "knit", pair));
        }
        if answer.wrong_side > 0 {
            said.push(worked("From the wrong side: ", "P", "purl", pair.on(Side::Wrong)));
        }
        let ends = [
            ("From @ # on there is no room for this.", answer.cramped),
            (
                "In @ # change one stitch only, at one edge.",
                (answer.in_last == 1).then_some(answer.used),
            ),
        ];
        for (pattern, row) in ends {
            if let Some(row) = row {
                said.push(say_with(pattern, &[row], &[noun]));
            }
        }
    }
    said
}

/// A row with its two changes: "K1, ssk, knit to the last 3 stitches, k2tog, K1."
#[inline(never)]
fn worked(from: &str, plain: &str, work: &str, pair: Pair) -> String {
    let mut said = from.to_owned();
    if pair.before > 0 {
        said += &say_with("@#, ", &[pair.before], &[plain]);
    }
    let words = [pair.first.abbreviation(), work, pair.last.abbreviation()];
    said += &say_with("@, @ to the last # {stitch|stitches}, @", &[pair.at_end()], &words);
    if pair.after > 0 {
        said += &say_with(", @#", &[pair.after], &[plain]);
    }
    said + "."
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
    say_with(pattern, &[least, answer.most, answer.change], &words)
}

/// What else she should know.
pub fn notes(question: &Question, answer: &Answer) -> Vec<String> {
    let schedule = &answer.schedule;
    let two_apart = answer.shared.by > 1 && answer.shared.gaps > 0 && question.order != Order::OneRate;
    let all = [
        (
            two_apart && schedule.left > question.last,
            "Right-side rows are two rows apart, so # plain rows stay at the end.",
            schedule.left,
        ),
        (
            question.each == 2 && answer.pair.is_none() && answer.change > 1,
            "There are too few stitches for a change at each edge, # outside it.",
            question.edge,
        ),
        (
            question.each == 1 || answer.change == 1,
            "Change at one edge, always the same.",
            0,
        ),
        (
            question.each > 2 && answer.change > 1,
            "Spread the changes as your pattern says.",
            0,
        ),
        (
            answer.pair.is_some_and(|pair| pair.first == Stitch::Kfb),
            "The bar of a kfb comes behind it, so one more is plain at the end.",
            0,
        ),
    ];
    let mut said = Vec::new();
    for (holds, pattern, count) in all {
        if holds {
            said.push(say(pattern, &[count]));
        }
    }
    said
}

/// The sum.
pub fn steps(question: &Question, answer: &Answer) -> Vec<String> {
    let shared = answer.shared;
    let times = shaping_rows(answer.shaping_rows, &answer.schedule);
    let pattern = match answer.in_last < question.each {
        true => "# ÷ #, with # in the last: @.",
        false => "# ÷ # = @.",
    };
    let numbers = [answer.change, question.each, answer.in_last];
    let mut said = vec![say_with(pattern, &numbers, &[&times])];
    if shared.gaps > 0 {
        let pattern = match shared.longer {
            0 => "@ are shared between # {gap|gaps}: # of #, @ at the end of each.",
            _ => "@ are shared between # {gap|gaps}: # of # and # of #, @ at the end of each.",
        };
        let longer = shared.every + shared.by;
        let numbers = [
            shared.gaps,
            shared.gaps - shared.longer,
            shared.every,
            shared.longer,
            longer,
        ];
        let words = [&*in_rows(shared.rows, question), shaping_row(&answer.schedule)];
        said.push(say_with(pattern, &numbers, &words));
    }
    said
}

/// What the drawing shows.
pub fn drawing(question: &Question, answer: &Answer) -> String {
    let words = [&*in_rows(question.rows, question), &written(&answer.schedule)];
    say_with("The piece with its edges, @ from below. @", &[], &words)
}

/// Below the drawing.
pub const KEY: &str = "▼ fewer, △ more. The edges to scale, their stitches square.";

/// Where the rule comes from.
pub const SOURCE: &str = "Arithmetic. The first change at once, the last row plain, right-side rows, and which way a pair leans: common practice, no source.";

/// What to type instead. What is too steep can be mended in each of several fields.
pub fn problem(question: &Question, problem: &Problem) -> String {
    let (pattern, number) = match (problem.field.key(), problem.kind, question.ask, question.stitches) {
        ("rows", Kind::TooFew { least }, ..) if least > 1 => ("That many stitches need @ or more.", least),
        ("each", Kind::TooFew { least }, ..) if least > 1 => ("Or change # or more each time.", least),
        ("amount", Kind::TooMany { .. }, Ask::Lose(lost), Some(now)) if lost >= now => {
            ("There are only # on the needle.", now)
        }
        ("amount", Kind::TooMany { most }, Ask::Gain(_), _) => {
            ("# is the most that comes this way. For more, cast on in steps.", most)
        }
        ("amount", Kind::TooMany { most }, ..) => (
            "# is the most that goes this way. For more, bind off in steps (the tool Steps).",
            most,
        ),
        _ => return super::problem::sentence(&problem.kind),
    };
    say_with(pattern, &[number], &[&in_rows(number, question)])
}

#[cfg(test)]
mod tests;

//! The words of size and ease.

use super::Title;
use super::intl::say;
use super::problem::sentence;
use loopwright::problem::{Kind, Problem};
use loopwright::sizing::{Cloth, Unread, WhyUnread};
use loopwright::tables::body::Tape;
use loopwright::units::parse::Unreadable;
use loopwright::units::{Amount, Length};

mod teller;
mod told;

pub use teller::{Teller, moves};
pub use told::told;

/// What it is called and asks.
pub const TITLE: Title = Title {
    name: "Size and ease",
    asks: "Which size do I knit, and how will it sit?",
};

/// Above the answer, where she is outside all sizes.
pub const BEYOND: &str = "Outside all sizes";
/// While there is nothing to answer.
pub const WAITING: &str = "Type your bust and the pattern’s sizes, and the size to knit stands here.";
/// While it is not known what the list measures.
pub const WHICH: &str =
    "Now say what the pattern’s numbers measure. “To fit bust” is the body; “finished” or “actual” is the garment.";
/// Label.
pub const LABEL_BUST: &str = "My bust, at its fullest";
/// Label and example.
pub const LABEL_SIZES: (&str, &str) = (
    "The pattern’s sizes, as they stand there",
    "such as S (M, L): 91 (97, 103)",
);
/// Label.
pub const LABEL_LISTED: &str = "These numbers measure";
/// Label.
pub const LABEL_FIT: &str = "and I want it";
/// Label.
pub const LABEL_EASE: &str = "Wider than me by (less than nothing is allowed)";
/// Label.
pub const LABEL_ROOM: &str = "Room past bust and arms";
/// Label.
pub const LABEL_PERCENT: &str = "Per cent (less than nothing is allowed)";
/// Label.
pub const LABEL_GARMENT: &str = "I knit";
/// Label.
pub const LABEL_CLOTH: &str = "Between two sizes";
/// Label.
pub const LABEL_HIGH_BUST: &str = "Round above the bust, under the arms";
/// Label.
pub const LABEL_ROUND: &str = "Round bust and both arms";
/// Label.
pub const LABEL_UPPER_ARM: &str = "Round one upper arm";
/// Label.
pub const LABEL_NECK: &str = "Neck opening, stretched";
/// Label.
pub const LABEL_HEAD: &str = "Round my head";
/// Label.
pub const LABEL_PATTERN_STITCHES: &str = "The pattern’s gauge: stitches";
/// Label.
pub const LABEL_PATTERN_ROWS: &str = "The pattern’s gauge: rows";
/// Label.
pub const LABEL_OWN_STITCHES: &str = "My gauge, washed: stitches";
/// Label.
pub const LABEL_OWN_ROWS: &str = "My gauge, washed: rows";
/// Label and example.
pub const LABEL_STITCHES: (&str, &str) = (
    "Stitches round the bust, size by size, without seams",
    "such as 204 (216, 234)",
);
/// Above the sizes.
pub const ALL_SIZES: &str = "All sizes, best first";
/// Above what the gauge moves.
pub const MOVES: &str = "What your gauge moves";
/// Above where the tape goes.
pub const HOW: &str = "How to measure";
/// Where the tape goes, according to whom.
pub const HOW_SOURCE: &str =
    "After EN 13402-1:2001, as two summaries give it; that somebody else holds the tape is common practice.";

/// What the list measures, by the key it is stored under; the first is no answer.
pub const LISTEDS: [(&str, &str); 3] = [
    ("", "choose one"),
    ("body", "the body (“to fit”)"),
    ("garment", "the garment (“finished”)"),
];
/// How it should sit.
pub const FITS: [(&str, &str); 7] = [
    ("standard", "standard: some ease"),
    ("very-close", "very close: smaller than me"),
    ("close", "close: a little more than me"),
    ("loose", "loose: more ease"),
    ("oversized", "oversized: much ease"),
    ("ease", "wider by a measure"),
    ("more", "wider by per cent"),
];
/// How a wrap should sit.
pub const ROOMS: [(&str, &str); 2] = [("free", "so that nothing binds"), ("ease", "with more room than that")];
/// What is knitted.
pub const GARMENTS: [(&str, &str); 2] = [
    ("sweater", "a sweater, cardigan or vest"),
    ("wrap", "a wrap, poncho or cape"),
];
/// Which way between two sizes.
pub const CLOTHS: [(&str, &str); 2] = [
    ("stretches", "the smaller: it stretches"),
    ("drapes", "the larger: it is to drape"),
];

/// One thing to mind with the tape.
pub fn tape(tape: Tape) -> &'static str {
    match tape {
        Tape::Upright => "Stand upright and breathe as usual.",
        Tape::UnderArms => "Lay the tape under the arms.",
        Tape::FullestPart => "Lay it across the fullest part of the bust.",
        Tape::ShoulderBlades => "Round a chest, lay it over the shoulder blades.",
        Tape::Level => "Keep it level all the way round: look in a mirror.",
        Tape::Moderate => "Pull it snug, not tight.",
        Tape::OverBra => "Measure over the bra you will wear, one that does not press.",
        Tape::ByAnother => "Let somebody else hold it.",
    }
}

/// What to type instead; empty while there is nothing to say, since nothing was typed.
pub fn problem(problem: &Problem, print: &dyn Fn(Length) -> String) -> String {
    let (limit, or) = match problem.kind {
        Kind::Missing if problem.field.key().ends_with("_stitches") => {
            return "Rows alone move no girth. Type the stitches too.".into();
        }
        Kind::Missing | Kind::Unreadable(Unreadable::Empty) => return String::new(),
        Kind::TooSmall { least } | Kind::Unreadable(Unreadable::TooSmall { least }) => (least, " or more."),
        Kind::TooLarge { most } | Kind::Unreadable(Unreadable::TooLarge { most }) => (most, " or less."),
        _ => return sentence(&problem.kind),
    };
    match limit {
        // In the unit of her tape.
        Amount::Length(length) => ["Type ", &print(length), or].concat(),
        _ => sentence(&problem.kind),
    }
}

/// What to do about a list that cannot be read.
pub fn unread(unread: &Unread, print: &dyn Fn(Length) -> String) -> String {
    let count = |number: usize| u32::try_from(number).unwrap_or(u32::MAX);
    match unread.why {
        WhyUnread::Number(Unreadable::Empty) => {
            "Type each size with its number, a range with both ends: S 81-86, M 91-97.".into()
        }
        WhyUnread::Number(Unreadable::TwoNumbers | Unreadable::UnknownUnit | Unreadable::NotANumber) => {
            ["“", &unread.piece, "”: part the sizes with commas, as in S 86, M 91, L 97."].concat()
        }
        WhyUnread::Number(why) => {
            let kind = Kind::Unreadable(why);
            let what = problem(&Problem::new("sizes", kind), print);
            ["“", &unread.piece, "”: ", &what].concat()
        }
        WhyUnread::TwoLists => "Two lists: type the one you want to use.".into(),
        WhyUnread::FarApart => {
            "The largest is more than three times the smallest. If some are names, put them first: 8 (10, 12): 81 (86, 91)."
                .into()
        }
        WhyUnread::TwoUnits => "Here are centimetres and inches. Keep one of them.".into(),
        WhyUnread::NotAsMany { numbers, sizes } => say(
            "# {number|numbers} for # {size|sizes}: type one for each, in the same order.",
            &[count(numbers), count(sizes)],
        ),
    }
}

/// Where the rule comes from.
pub const SOURCE: &str = "Ease is the garment less the body. The five fits are those of the Craft Yarn Council, their edges laid at 0, 5, 10 and 15 cm (about 2, 4 and 6 in). Which measure to aim for within a fit, and which way to go between two sizes: common practice, no source.";

/// Why it is the smaller or the larger of two.
pub fn cloth(cloth: Cloth) -> &'static str {
    match cloth {
        Cloth::Stretches => "Between two: this one stretches to fit",
        Cloth::Drapes => "Between two: this one drapes",
    }
}

#[cfg(test)]
mod tests;

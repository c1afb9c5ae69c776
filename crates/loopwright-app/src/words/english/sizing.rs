//! The words of size and ease.

use super::problem::{list, sentence};
use super::units::Lengths;
use super::{Title, Worded};
use loopwright::problem::{Kind, Problem};
use loopwright::sizing::{Cloth, GarmentKind, Measured, Name, Room, Standard, Unread, Wanted, WhyUnread};
use loopwright::tables::body::Tape;
use loopwright::units::Amount;
use loopwright::units::parse::Unreadable;

mod note;
mod sentences;

pub use sentences::{Headline, Sentences, drawing, moves};

pub const TITLE: Title = Title {
    name: "Size and ease",
    asks: "Which size do I knit, and how will it sit?",
};

pub const WAITING: &str = "Type your bust and the pattern’s sizes, and the size to knit stands here.";
pub const WHICH: &str =
    "Now say what the pattern’s numbers measure. “To fit bust” is the body; “finished” or “actual” is the garment.";
pub const EXAMPLE_SIZES: &str = "such as S (M, L): 91 (97, 103)";
pub const EXAMPLE_STITCHES: &str = "such as 204 (216, 234)";
pub const ROOM: &str = "Room past bust and arms";

/// What a field is called.
pub const fn label(name: Name) -> &'static str {
    match name {
        Name::Bust => "My bust, at its fullest",
        Name::Sizes => "The pattern’s sizes, as they stand there",
        Name::Listed => "These numbers measure",
        Name::Fit => "and I want it",
        Name::Ease => "Wider than me by (less than nothing is allowed)",
        Name::Percent => "Per cent (less than nothing is allowed)",
        Name::Garment => "I knit",
        Name::Cloth => "Between two sizes",
        Name::HighBust => "Round above the bust, under the arms",
        Name::Round => "Round bust and both arms",
        Name::UpperArm => "Round one upper arm",
        Name::Neck => "Neck opening, stretched",
        Name::Head => "Round my head",
        Name::PatternStitches => "The pattern’s gauge: stitches",
        Name::PatternRows => "The pattern’s gauge: rows",
        Name::OwnStitches => "My gauge, washed: stitches",
        Name::OwnRows => "My gauge, washed: rows",
        Name::Stitches => "Stitches round the bust, size by size, without seams",
    }
}

pub const ALL_SIZES: &str = "All sizes, best first";
pub const MOVES: &str = "What your gauge moves";
pub const HOW: &str = "How to measure";
pub const HOW_SOURCE: &str = "After EN 13402-1:2001, as two summaries quote it; the standard itself was not read. The mirror, and that somebody else holds the tape: common practice, no source.";

pub const STANDARDS: &str = "No list at hand? Take a standard one";
pub const TAKING: &str = "These are lists of bodies, not of garments. A tap fills the list above and says so. The list of your own pattern is better.";
pub const KEEPING_OWN: &str = "A list of your own stands above, and it stays. Empty it first if you want one of these.";
pub const STANDARDS_SOURCE: &str = "Craft Yarn Council, Standard Body Measurements/Sizing; EN 13402-3, letter codes by bust and chest. Neither was read for these lists.";

/// A list to take.
pub const fn standard(standard: Standard) -> &'static str {
    match standard {
        Standard::TradeWomen => "Women, Craft Yarn Council",
        Standard::TradeMen => "Men, Craft Yarn Council",
        Standard::TradeChildren => "Children by years, Craft Yarn Council",
        Standard::TradeBabies => "Babies by months, Craft Yarn Council",
        Standard::EnWomen => "Women, EN 13402-3",
        Standard::EnMen => "Men, EN 13402-3",
    }
}

impl Worded for Measured {
    fn words(self) -> &'static str {
        match self {
            Self::NotSaid => "choose one",
            Self::Body => "the body (“to fit”)",
            Self::Garment => "the garment (“finished”)",
        }
    }
}

impl Worded for Wanted {
    fn words(self) -> &'static str {
        match self {
            Self::Standard => "standard: some ease",
            Self::VeryClose => "very close: smaller than me",
            Self::Close => "close: a little more than me",
            Self::Loose => "loose: more ease",
            Self::Oversized => "oversized: much ease",
            Self::Ease => "wider by a measure",
            Self::Percent => "wider by per cent",
        }
    }
}

impl Worded for Room {
    fn words(self) -> &'static str {
        match self {
            Self::Free => "so that nothing binds",
            Self::Ease => "with more room than that",
        }
    }
}

impl Worded for GarmentKind {
    fn words(self) -> &'static str {
        match self {
            Self::Sweater => "a sweater, cardigan or vest",
            Self::Wrap => "a wrap, poncho or cape",
        }
    }
}

impl Worded for Cloth {
    fn words(self) -> &'static str {
        match self {
            Self::Stretches => "the smaller: it stretches",
            Self::Drapes => "the larger: it is to drape",
        }
    }
}

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

/// What to type instead, for a problem with a field in which `text` stands.
pub fn problem(problem: &Problem, text: &str, lengths: Lengths) -> String {
    match (problem.kind, problem.field.name()) {
        (Kind::Missing, Some(Name::PatternStitches | Name::OwnStitches)) => {
            "Rows alone move no girth. Type the stitches too.".into()
        }
        (Kind::UnreadableList(unread), _) => unreadable_list(unread, text, lengths),
        (kind, _) => on_her_tape(&kind, lengths),
    }
}

/// A limit of a length is said in the unit of her tape.
fn on_her_tape(kind: &Kind, lengths: Lengths) -> String {
    match *kind {
        Kind::TooSmall {
            least: Amount::Length(least),
        }
        | Kind::Unreadable(Unreadable::TooSmall {
            least: Amount::Length(least),
        }) => format!("Type {} or more.", lengths.write(least)),
        Kind::TooLarge {
            most: Amount::Length(most),
        }
        | Kind::Unreadable(Unreadable::TooLarge {
            most: Amount::Length(most),
        }) => format!("Type {} or less.", lengths.write(most)),
        ref other => sentence(other),
    }
}

/// What to do about a list that cannot be read, with the piece of it that is wrong.
fn unreadable_list(unread: Unread, text: &str, lengths: Lengths) -> String {
    let piece = unread.piece(text);
    match unread.why {
        WhyUnread::Number(Unreadable::Empty) => {
            "Type each size with its number, a range with both ends: S 81-86, M 91-97.".into()
        }
        WhyUnread::Number(Unreadable::TwoNumbers | Unreadable::UnknownUnit | Unreadable::NotANumber) => {
            format!("“{piece}”: part the sizes with commas, as in S 86, M 91, L 97.")
        }
        WhyUnread::Number(why @ (Unreadable::TooSmall { .. } | Unreadable::TooLarge { .. })) => {
            format!("“{piece}”: {}", on_her_tape(&Kind::Unreadable(why), lengths))
        }
        WhyUnread::Number(_)
        | WhyUnread::Misplaced
        | WhyUnread::Unused
        | WhyUnread::TwoLists
        | WhyUnread::FarApart
        | WhyUnread::TwoUnits
        | WhyUnread::NotAsMany { .. } => list(unread, text),
    }
}

pub const SOURCE: &str = "Ease is the garment less the body. The five fits are those of the Craft Yarn Council, as others quote them; the source itself was not read, and the inches are twice second-hand. Their edges are laid at 0, 5, 10 and 15 cm (about 2, 4 and 6 in). Which measure to aim for within a fit, and which way to go between two sizes: common practice, no source.";

#[cfg(test)]
mod tests;

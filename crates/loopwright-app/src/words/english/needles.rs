//! The words of needle sizes. Millimetres are printed as the needle has them, never rounded.

use super::intl::{either, fill_pattern_with};
use super::tell::{Value, fill_pattern_with_values};
use super::units::quantity;
use super::{Title, Worded};
use core::cmp::Ordering;
use loopwright::needles::{Answer, GivenIn, Name, Named, Needle};
use loopwright::problem::{Kind, Problem};
use loopwright::tables::Certainty;
use loopwright::tables::needle::{Number, System};
use loopwright::units::parse::Unreadable;
use loopwright::units::print::Step;
use loopwright::units::{Length, LengthUnit};

pub const TITLE: Title = Title {
    name: "Needles",
    asks: "Which needle a size is, and what it is called elsewhere.",
};
pub const WAITING: &str = "The needle’s millimetres and other names appear here.";
pub const ANSWER: &str = "In millimetres";

/// What a field is called.
pub const fn label(name: Name) -> &'static str {
    match name {
        Name::Size => "My needle is",
        Name::System => "What the size is in",
    }
}

impl Worded for GivenIn {
    fn words(self) -> &'static str {
        match self {
            Self::Us => "US",
            Self::Uk => "Old UK, Canadian",
            Self::Japanese => "Japanese",
            Self::Millimetres => "mm",
            Self::Hole => "mm, the hole it passes",
        }
    }
}

/// A system, as it stands before its number.
pub const fn system(system: System) -> &'static str {
    match system {
        System::Metric => "Sold in mm",
        System::Us => "US",
        System::Uk => "Old UK, Canadian",
        System::Japanese => "Japanese",
    }
}

/// How thick a needle is, all of it.
fn across(length: Length) -> String {
    quantity(length, LengthUnit::Mm, Step::Thousandth)
}

/// A number as it stands on the needle.
pub(super) fn number(number: Number) -> String {
    let quarters = number.in_quarters();
    if quarters < 0 {
        return "0".repeat(usize::from(quarters.unsigned_abs()) + 1);
    }
    let whole = quarters / 4;
    match quarters % 4 {
        1 => format!("{whole} 1/4"),
        2 => format!("{whole} 1/2"),
        3 => format!("{whole} 3/4"),
        _ => whole.to_string(),
    }
}

/// The needle, or each that it may be.
pub fn headline(answer: &Answer) -> String {
    let needles: Vec<String> = answer.needles.iter().map(called).collect();
    needles.join(" or ")
}

/// The hole that all of them pass.
pub fn outcome(answer: &Answer) -> (String, String) {
    let hole = answer.needles.last().and_then(|needle| needle.hole);
    (
        "The right hole of a needle gauge is".into(),
        hole.map_or("none of the table".into(), across),
    )
}

/// Above the names of a needle.
pub fn called(needle: &Needle) -> String {
    across(needle.across)
}

/// The number of a system that is equal, or the nearest and how far off that is.
pub fn named(named: &Named) -> String {
    let (pattern, name) = match named.off.cmp(&Length::ZERO) {
        Ordering::Greater => (" (@, @ thicker) ", "nearest"),
        Ordering::Less => (" (@, @ thinner) ", "nearest"),
        Ordering::Equal => (" ", "this size"),
    };
    let values = [Value::Length(named.across), Value::Off(named.off)];
    named.number.map_or(name.into(), number) + &fill_pattern_with_values(pattern, &values, &across)
}

/// Beside a number: how sure it is.
pub const fn certainty(certainty: Certainty) -> &'static str {
    match certainty {
        Certainty::Seen => "read in its source",
        Certainty::FromMemory => "from memory",
        Certainty::Practice | Certainty::Computed => super::page::PRACTICE,
    }
}

pub const NEAREST: &str =
    "No standard fixes the numbers: the millimetres on the needle count, and of a nearest one the swatch decides.";

pub const STEP: &str = "Looked up by millimetres. The right hole is the smallest that the shaft passes wholly.";

pub const SOURCE: &str = "US 000, 1, 3, 5, 7, 9 and 11: Craft Yarn Council, Standard Yarn Weight System. All else: from memory. The rule of the hole: common practice, no source.";

/// What to type instead.
pub fn problem(problem: &Problem) -> String {
    match problem.kind {
        Kind::Unreadable(Unreadable::NotANumber | Unreadable::UnknownUnit | Unreadable::WrongKind { .. }) => {
            "Type the size as it stands on the needle, as in 7, 10 1/2 or 000.".into()
        }
        Kind::NoExact { .. } => fill_pattern_with(
            "No needle has that number. Type the nearest, @.",
            &[],
            &[&either(&problem.kind.nearest())],
        ),
        _ => super::problem::sentence(&problem.kind),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use loopwright::needles::{Question, Size, answer};

    fn all(text: &str, system: System) -> (String, Vec<String>) {
        let question = Question {
            size: Size::read(text, system).unwrap(),
        };
        let answer = answer(&question).unwrap();
        let names = answer.needles.iter().flat_map(|needle| &needle.named);
        let names = names.map(|name| [super::system(name.system), " ", named(name).trim_end()].concat());
        (headline(&answer), names.collect())
    }

    #[test]
    fn a_needle_is_named_in_every_system() {
        let (written, names) = all("10.5", System::Us);
        assert_eq!(written, "6.5\u{a0}mm");
        let japanese = "Japanese 15 (6.6\u{a0}mm, 0.1\u{a0}mm thicker)";
        assert_eq!(
            names,
            ["Sold in mm this size", "US 10 1/2", "Old UK, Canadian 3", japanese]
        );
        assert_eq!(all("17", System::Us).0, "12\u{a0}mm or 12.75\u{a0}mm");
        assert_eq!(all("1.5", System::Metric).1[1], "US 000");
        // The obvious print with one decimal makes another needle of it.
        assert_eq!(all("1", System::Us).0, "2.25\u{a0}mm");
    }

    #[test]
    fn numbers_are_written_as_on_the_needle() {
        for quarters in -3..200 {
            let size = Number::quarters(quarters);
            assert_eq!(number(size), size.to_string());
        }
    }
}

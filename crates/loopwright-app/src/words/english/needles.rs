//! The words of needle sizes. Millimetres are printed as the needle has them, never rounded.

use super::intl::{either, fill_pattern_with};
use super::units::quantity;
use super::{Title, Worded};
use core::cmp::Ordering;
use loopwright::needles::{Answer, GivenIn, Name, Named, Needle};
use loopwright::problem::{Kind, Problem};
use loopwright::tables::needle::{Number, System};
use loopwright::units::parse::Unreadable;
use loopwright::units::print::Step;
use loopwright::units::{Amount, Length, LengthUnit};

pub const TITLE: Title = Title {
    name: "Needles",
    asks: "Which needle a size is, and what it is called elsewhere.",
};
pub const WAITING: &str = "The needle’s millimetres and other names appear here.";
pub const ANSWER: &str = "In millimetres";
pub const SURE: &str = "How sure: US 000, 1, 3 and 5 were read in the Craft Yarn Council’s guide to yarn weights, which has a misprint for light yarn. US 7, 9 and 11 are as others quote its table; the table itself was not read. From memory: all other numbers.";

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
        System::Metric => "By mm",
        System::Us => "US",
        System::Uk => "Old UK, Canadian",
        System::Japanese => "Japanese",
    }
}

/// How thick a needle is, all of it.
pub fn across(length: Length) -> String {
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

/// A needle by its US number and its millimetres: `US 6 (4 mm)`; by these alone where it has no number.
pub fn called_us(thick: Length, us: Option<Number>) -> String {
    let thick = across(thick);
    match us {
        Some(us) => format!("US\u{a0}{} ({thick})", number(us)),
        None => thick,
    }
}

/// The needle, or each that it may be.
pub fn headline(answer: &Answer) -> String {
    let needles: Vec<String> = answer.needles.iter().map(called).collect();
    needles.join(" or ")
}

/// Which hole of a needle gauge proves it.
pub fn outcome(answer: &Answer) -> (String, String) {
    let all_pass = "They all pass the same hole of a needle gauge,";
    match answer.needles.as_slice() {
        [] => (all_pass.into(), String::new()),
        [only] => proof(only),
        [first, .., last] if first.hole == last.hole => (all_pass.into(), last.hole.map_or(String::new(), across)),
        [first, ..] => (
            "A needle gauge tells which: the thinner one passes".into(),
            first.hole.map_or(String::new(), across),
        ),
    }
}

/// The hole that a needle passes, and the next smaller one, which stops it.
fn proof(needle: &Needle) -> (String, String) {
    match (needle.hole, needle.stops) {
        (Some(hole), Some(stops)) => {
            let sizes = [&*across(hole), &across(stops)];
            let after = fill_pattern_with("@ hole of a needle gauge, not the @ one", &[], &sizes);
            ("It goes through the".into(), after)
        }
        (Some(hole), None) => {
            let after = fill_pattern_with("@ hole of a needle gauge", &[], &[&across(hole)]);
            ("It goes through the".into(), after)
        }
        (None, Some(stops)) => ("It is thicker than the widest hole of the table,".into(), across(stops)),
        (None, None) => ("The table has no hole for it, which is".into(), called(needle)),
    }
}

/// Above the names of a needle.
pub fn called(needle: &Needle) -> String {
    across(needle.across)
}

/// The number of a system that is equal, or the nearest and how far off that is.
pub fn named(named: &Named) -> String {
    let thick = across(named.across);
    let off = across(named.off.max(Length::ZERO.saturating_sub(named.off)));
    match (named.number, named.off.cmp(&Length::ZERO)) {
        (Some(found), Ordering::Equal) => number(found),
        (Some(found), Ordering::Greater) => format!("nearest is {} ({thick}, {off} thicker)", number(found)),
        (Some(found), Ordering::Less) => format!("nearest is {} ({thick}, {off} thinner)", number(found)),
        (None, Ordering::Equal) => format!("sold as {thick}"),
        (None, Ordering::Greater) => format!("nearest is {thick}, {off} thicker"),
        (None, Ordering::Less) => format!("nearest is {thick}, {off} thinner"),
    }
}

pub const NEAREST: &str = "No standard fixes the numbers. Go by the millimetres printed on the needle. Where only the nearest size is given, swatch.";

pub const STEP: &str = "Looked up by millimetres. The right hole is the smallest that the shaft passes wholly.";

pub const SOURCE: &str = "The rule of the hole: common practice, no source.";

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
        _ => too_thick(&problem.kind).unwrap_or_else(|| super::problem::sentence(&problem.kind)),
    }
}

/// What to type instead of a needle that is too thin or too thick: in millimetres, as needles are.
pub fn too_thick(kind: &Kind) -> Option<String> {
    let (pattern, amount) = match *kind {
        Kind::TooSmall { least } | Kind::Unreadable(Unreadable::TooSmall { least }) => ("Type @ or more.", least),
        Kind::TooLarge { most } | Kind::Unreadable(Unreadable::TooLarge { most }) => ("Type @ or less.", most),
        _ => return None,
    };
    match amount {
        Amount::Length(limit) => Some(fill_pattern_with(pattern, &[], &[&across(limit)])),
        Amount::Mass(_) | Amount::Count(_) => None,
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
        let japanese = "Japanese nearest is 15 (6.6\u{a0}mm, 0.1\u{a0}mm thicker)";
        let metric = "By mm sold as 6.5\u{a0}mm";
        assert_eq!(names, [metric, "US 10 1/2", "Old UK, Canadian 3", japanese]);
        assert_eq!(all("17", System::Us).0, "12\u{a0}mm or 12.75\u{a0}mm");
        assert_eq!(all("1.5", System::Metric).1[1], "US 000");
        // The obvious print with one decimal makes another needle of it.
        assert_eq!(all("1", System::Us).0, "2.25\u{a0}mm");
    }

    fn plain(text: &str, system: System) -> String {
        let question = Question {
            size: Size::read(text, system).unwrap(),
        };
        let (before, after) = outcome(&answer(&question).unwrap());
        format!("{before} {after}").replace('\u{a0}', " ")
    }

    #[test]
    fn a_hole_is_said_with_the_one_that_stops_the_needle() {
        let said = |text| plain(text, System::Us);
        assert_eq!(
            said("7"),
            "It goes through the 4.5 mm hole of a needle gauge, not the 4 mm one"
        );
        assert_eq!(
            said("3.6 mm"),
            "It goes through the 3.75 mm hole of a needle gauge, not the 3.5 mm one"
        );
        assert_eq!(said("000"), "It goes through the 1.5 mm hole of a needle gauge");
        assert_eq!(said("50 mm"), "It is thicker than the widest hole of the table, 25 mm");
        // The obvious right hole, 12.75 mm, lets both pass.
        assert_eq!(said("17"), "A needle gauge tells which: the thinner one passes 12 mm");
    }

    #[test]
    fn one_line_says_how_sure_the_table_is() {
        use loopwright::tables::needle::{JAPANESE_SOURCE, NEEDLES};
        use loopwright::tables::{Certainty, Source};
        let listed = |certainty: Certainty| {
            let rows = NEEDLES.iter().filter(|row| row.us_source.certainty() == certainty);
            let mut numbers: Vec<String> = rows.filter_map(|row| row.us).map(number).collect();
            let last = numbers.pop().unwrap();
            format!("US {} and {last}", numbers.join(", "))
        };
        let read = format!("{} were read in", listed(Certainty::Read));
        let quoted = format!("{} are as others quote", listed(Certainty::Quoted));
        assert!(SURE.contains(&read) && SURE.contains(&quoted), "{read}; {quoted}");
        let is_remembered = |source: Source| source.certainty() == Certainty::FromMemory;
        assert!(NEEDLES.iter().all(|row| is_remembered(row.uk_source)) && is_remembered(JAPANESE_SOURCE));
    }

    #[test]
    fn a_needle_that_is_too_thick_is_answered_in_millimetres() {
        let size = Size::Metric(Length::of(1, LengthUnit::M));
        let problems = answer(&Question { size }).unwrap_err();
        assert_eq!(problem(&problems[0]).replace('\u{a0}', " "), "Type 50 mm or less.");
    }

    #[test]
    fn numbers_are_written_as_on_the_needle() {
        for quarters in -3..200 {
            let size = Number::quarters(quarters);
            assert_eq!(number(size), size.to_string());
        }
    }
}

//! What to type, for every problem that any tool can have. A tool says it better where it knows more.

use super::doubt;
use super::intl::{either, fill_pattern, fill_pattern_with, number};
use super::page::quoted;
use super::units::quantity;
use loopwright::problem::Kind;
use loopwright::units::parse::Unreadable;
use loopwright::units::print::Step;
use loopwright::units::printed::{Unread, WhyUnread, what_was_read};
use loopwright::units::{Amount, CountUnit, Dimension, Length, LengthUnit, MassUnit, Unit};

/// So many characters of a piece are named at most.
const LONGEST_NAMED: usize = 32;

/// One sentence that says what to type.
pub fn sentence(kind: &Kind) -> String {
    match kind {
        Kind::Unreadable(why) => unreadable(why),
        Kind::UnreadableList(unread) => whole_list(unread.why),
        Kind::TooFew { least } => fill_pattern("Type # or more.", &[*least]),
        Kind::TooMany { most } => fill_pattern("Type # or fewer.", &[*most]),
        Kind::NoExact { .. } if kind.nearest().is_empty() => {
            fill_pattern("There is no number near this that works.", &[])
        }
        Kind::NoExact { .. } => fill_pattern_with("Type @.", &[], &[&either(&kind.nearest())]),
        Kind::TooSmall { least } => fill_pattern_with("Type @ or more.", &[], &[&amount(least)]),
        Kind::TooLarge { most } => fill_pattern_with("Type @ or less.", &[], &[&amount(most)]),
        Kind::Differs { other } => fill_pattern("You typed # for this elsewhere. Make the two the same.", &[*other]),
        Kind::Missing => fill_pattern("Answer this first.", &[]),
        Kind::NotOffered => fill_pattern("Choose one of what is offered here.", &[]),
        Kind::NeedsSwatch => fill_pattern("Take a stockinette gauge, or weigh a swatch.", &[]),
        Kind::Already => fill_pattern("That is what you have. Type another number.", &[]),
        Kind::AlreadyMultiple { .. } => match kind.nearest().as_slice() {
            [] => fill_pattern("That is what you have.", &[]),
            next => fill_pattern_with("That is what you have. The next ones are @.", &[], &[&either(next)]),
        },
    }
}

/// What stands in a field of choices and is none of them, with those there are.
pub fn not_offered(stored: &str, offered: &[&str]) -> String {
    let stored = quoted(stored);
    match offered {
        [others @ .., last] if !others.is_empty() => {
            format!(
                "{stored} cannot be chosen here. Choose one of these: {} or {last}.",
                others.join(", ")
            )
        }
        offered => format!("{stored} cannot be chosen here. Choose this: {}.", offered.join(", ")),
    }
}

/// A unit beside a number that this field does not know, with those it shows.
pub fn no_unit(written: &str, shown: &[&str]) -> String {
    format!(
        "{} is no unit that is known here. Type the number anew, in {}.",
        quoted(written),
        shown.join(" or ")
    )
}

/// What a count was taken over, where that is nothing that counts are taken over here; with two that are.
pub fn no_span(written: &str, metric: &str, inches: &str) -> String {
    format!(
        "Counts are not taken over {} here. Choose what it was counted over, such as {metric} or {inches}.",
        quoted(written)
    )
}

/// A unit beside a number that is a count.
pub fn no_count(written: &str) -> String {
    format!("{} does not go with a count. Type the number alone.", quoted(written))
}

/// What to do about a list that cannot be read, of which the text is known: how it is read, and what would be left out.
pub fn list(unread: Unread, text: &str) -> String {
    let piece = &*shortened(unread.piece(text));
    match unread.why {
        WhyUnread::Misplaced => match read_as(unread, text) {
            Some(read) => format!("This is read as {read}. The “{piece}” has no place in such a list: take it out."),
            None => format!("The “{piece}” has no place in such a list: take it out."),
        },
        WhyUnread::Unused => match read_as(unread, text) {
            Some(read) => {
                format!("This is read as {read}, and “{piece}” would be left out. Put it among them, or take it out.")
            }
            None => format!("“{piece}” would be left out. Write the numbers one after the other: 81 (86, 91)."),
        },
        WhyUnread::Number(Unreadable::Empty) => unreadable(&Unreadable::Empty),
        WhyUnread::Number(Unreadable::Unfinished) => format!("“{piece}”: one more number has to follow, as in 86-91."),
        WhyUnread::Number(why) => format!("“{piece}”: {}", unreadable(&why)),
        WhyUnread::TwoLists | WhyUnread::FarApart | WhyUnread::TwoUnits | WhyUnread::NotAsMany { .. } => {
            whole_list(unread.why)
        }
    }
}

/// A piece as it is named in a sentence: of a long one its beginning.
fn shortened(piece: &str) -> String {
    match piece.char_indices().nth(LONGEST_NAMED) {
        Some((end, _)) => format!("{}…", piece.get(..end).unwrap_or_default()),
        None => piece.to_owned(),
    }
}

/// The numbers that were read, as they are said: `86, 91 and 97`.
fn read_as(unread: Unread, text: &str) -> Option<String> {
    let read = what_was_read(text, unread);
    let (last, others) = read.split_last()?;
    Some(match others {
        [] => (*last).to_owned(),
        _ => format!("{} and {last}", others.join(", ")),
    })
}

/// What to do about a list that cannot be read, of which the text is not known.
fn whole_list(why: WhyUnread) -> String {
    let count = |number: usize| u32::try_from(number).unwrap_or(u32::MAX);
    match why {
        WhyUnread::Number(why) => unreadable(&why),
        WhyUnread::Misplaced | WhyUnread::Unused => "Not every number here has a place in one list.".into(),
        WhyUnread::TwoLists => "Two lists: type the one you want to use.".into(),
        WhyUnread::FarApart => {
            "The largest is more than three times the smallest. If some are names, put them first: 8 (10, 12): 81 (86, 91)."
                .into()
        }
        WhyUnread::TwoUnits => "Here are centimetres and inches. Keep one of them.".into(),
        WhyUnread::NotAsMany { numbers, sizes } => fill_pattern(
            "# {number|numbers} for # {size|sizes}: type one for each, in the same order.",
            &[count(numbers), count(sizes)],
        ),
    }
}

fn unreadable(why: &Unreadable) -> String {
    match why {
        Unreadable::Empty => fill_pattern("Type a number here.", &[]),
        Unreadable::Unfinished => fill_pattern("Finish the number, as in 7 1/2.", &[]),
        Unreadable::NotANumber => fill_pattern("Type a number in figures, as in 132.", &[]),
        Unreadable::TwoNumbers => fill_pattern("Type one number only.", &[]),
        Unreadable::UnknownUnit => fill_pattern("Type the number alone, without what stands behind it.", &[]),
        Unreadable::WrongKind {
            written: Unit::Count(CountUnit::Row | CountUnit::Round),
            wanted: Dimension::Count,
        } => doubt::THOSE_ARE_ROWS.into(),
        Unreadable::WrongKind {
            written: Unit::Count(CountUnit::Stitch),
            wanted: Dimension::Count,
        } => doubt::THOSE_ARE_STITCHES.into(),
        Unreadable::WrongKind { wanted, .. } => match wanted {
            Dimension::Length => fill_pattern("Type a length, as in 10 cm or 4 in.", &[]),
            Dimension::Mass => fill_pattern("Type a weight, as in 50 g or 1.75 oz.", &[]),
            Dimension::Count => fill_pattern("Type a count, without a unit of length or weight.", &[]),
        },
        Unreadable::Ambiguous(readings) => doubt::asked(*readings),
        Unreadable::NotWhole { below, above } if below == above => {
            fill_pattern("Type a whole number, as in #.", &[*below])
        }
        Unreadable::NotWhole { below, above } => fill_pattern("Type a whole number: # or #.", &[*below, *above]),
        Unreadable::TooSmall { least } => fill_pattern_with("Type @ or more.", &[], &[&amount(least)]),
        Unreadable::TooLarge { most } => fill_pattern_with("Type @ or less.", &[], &[&amount(most)]),
        Unreadable::ZeroDenominator => fill_pattern("Type a fraction with a number below the line, as in 1/2.", &[]),
    }
}

/// A quantity as it stands in a sentence.
pub fn amount(amount: &Amount) -> String {
    match *amount {
        Amount::Length(length) => both(length),
        Amount::Mass(mass) => quantity(mass, MassUnit::Gram, Step::Tenth),
        Amount::Count(count) => number(count),
    }
}

/// A length in metric units and in inches: a limit is said without knowing what the field is typed in.
fn both(length: Length) -> String {
    let unit = match length {
        _ if length < Length::of(1, LengthUnit::Cm) => LengthUnit::Mm,
        _ if length < Length::of(1, LengthUnit::M) => LengthUnit::Cm,
        _ => LengthUnit::M,
    };
    let metric = quantity(length, unit, Step::Thousandth);
    let inches = quantity(length, LengthUnit::Inch, Step::Tenth);
    match unit {
        LengthUnit::Mm => metric,
        _ => format!("{metric} ({inches})"),
    }
}

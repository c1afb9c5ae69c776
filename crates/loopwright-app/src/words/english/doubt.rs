//! What is said and offered beside a field whose text was taken, and which ways there are where it may be meant in several.

use super::intl::{decimal, fill_pattern_with};
use super::units::{quantity, span_of};
use loopwright::gauge::Direction;
use loopwright::tables::needle::{Numbered, System};
use loopwright::units::meant::{Cause, Meant, Readings};
use loopwright::units::print::Step;
use loopwright::units::{Gauge, Length, LengthUnit};

/// Rows where stitches are wanted.
pub const THOSE_ARE_ROWS: &str = "Those are rows. Type the stitches here.";
/// Stitches where rows are wanted.
pub const THOSE_ARE_STITCHES: &str = "Those are stitches. Type the rows here.";
/// Empties a field that was filled from the one beside it.
pub const CLEAR: &str = "Clear it";

/// The question that a text in doubt is answered with.
pub fn asked(readings: Readings) -> String {
    let ways: Vec<String> = readings.ways().map(way).collect();
    let ways = one_of(&ways);
    let pattern = match readings.cause {
        Cause::Comma => "The comma may part thousands or decimals. Do you mean @?",
        Cause::Point => "The point may part thousands or decimals. Do you mean @?",
        Cause::Space => "That may be two numbers or one. Do you mean @?",
        Cause::NeedleSystem => "Do you mean @?",
        Cause::TwoNeedles => "Two needles are sold under that number. Is yours @?",
        Cause::NoSuchNeedle => "No needle has that number. Do you mean @?",
    };
    fill_pattern_with(pattern, &[], &[&ways])
}

/// A way in which a text may be meant.
pub fn way(meant: Meant) -> String {
    match meant {
        // Without marks between the thousands: those are what is in doubt.
        Meant::Count(count) => count.to_string(),
        Meant::Length { value, unit } => quantity(value, unit, Step::Thousandth),
        Meant::Mass { value, unit } => quantity(value, unit, Step::Thousandth),
        Meant::Needle { across, .. } => format!("{} ({})", meant.text().replace(' ', "\u{a0}"), millimetres(across)),
    }
}

/// `88`; `88 or 112`; `88, 112 or 88112`.
fn one_of(ways: &[String]) -> String {
    match ways {
        [] => String::new(),
        [only] => only.clone(),
        [others @ .., last] => [&others.join(", "), " or ", last].concat(),
    }
}

/// What else may be meant: the label of a tap.
pub fn perhaps(text: &str) -> String {
    fill_pattern_with("@?", &[], &[text])
}

/// A count over another span.
pub fn over(text: &str, span: Length) -> String {
    fill_pattern_with("@ over @", &[], &[text, &span_of(span)])
}

/// How thick a needle is that was typed by its number.
pub fn needle(system: System, numbered: &Numbered) -> String {
    let Numbered { number, across, .. } = *numbered;
    way(Meant::Needle { system, number, across })
}

fn millimetres(across: Length) -> String {
    quantity(across, LengthUnit::Mm, Step::Thousandth)
}

/// A range was typed.
pub fn middle(middle: Gauge, (low, high): (Gauge, Gauge)) -> String {
    let [middle, low, high] = [middle, low, high].map(|gauge| decimal(gauge.count()));
    fill_pattern_with("Read as @, the middle of @ to @.", &[], &[&middle, &low, &high])
}

/// The text names another span than the one that is chosen beside it.
pub fn as_typed_over(span: Length) -> String {
    fill_pattern_with("Read over @, as you typed it.", &[], &[&span_of(span)])
}

/// The text names what is not asked here.
pub fn not_needed(gauge: Gauge, direction: Direction) -> String {
    let pattern = match direction {
        Direction::Stitches => "The @ stitches are not needed here.",
        Direction::Rows => "The @ rows are not needed here.",
    };
    fill_pattern_with(pattern, &[], &[&decimal(gauge.count())])
}

/// What stands in a field was filled in from the text of the one beside it.
pub fn filled_from(text: &str) -> String {
    fill_pattern_with("Filled in from “@”.", &[], &[text])
}

/// Takes what the text of the field beside it names.
pub fn take_from(count: &str, text: &str) -> String {
    fill_pattern_with("Use @, from “@”", &[], &[count, text])
}

#[cfg(test)]
mod tests {
    use super::*;
    use loopwright::bounds::Bounds;
    use loopwright::tables::needle::read_across;
    use loopwright::units::parse::{Unreadable, Wanted, read};
    use loopwright::units::{Measure, count};

    fn sentence<T>(read: Result<T, Unreadable>) -> String {
        match read {
            Err(Unreadable::Ambiguous(readings)) => asked(readings).replace('\u{a0}', " "),
            Err(_) | Ok(_) => String::new(),
        }
    }

    #[test]
    fn each_doubt_is_a_question_with_its_ways() {
        fn any<T: Measure>(text: &str, unit: T::Unit) -> String {
            sentence(read::<T>(text, &Wanted::any(unit)))
        }
        assert_eq!(
            any::<Length>("1,150", LengthUnit::Yard),
            "The comma may part thousands or decimals. Do you mean 1150 yd or 1.15 yd?"
        );
        assert_eq!(
            any::<Length>("1.500", LengthUnit::M),
            "The point may part thousands or decimals. Do you mean 1500 m or 1.5 m?"
        );
        assert_eq!(
            sentence(count::read("88 112", Bounds::new(1, 100_000))),
            "That may be two numbers or one. Do you mean 88, 112 or 88112?"
        );
        let needle = |text| sentence(read_across(text, loopwright::tail::NEEDLE));
        assert_eq!(needle("10½"), "Do you mean 10.5 mm or US 10 1/2 (6.5 mm)?");
        assert_eq!(
            needle("US 17"),
            "Two needles are sold under that number. Is yours 12 mm or 12.75 mm?"
        );
        assert_eq!(
            needle("US 12"),
            "No needle has that number. Do you mean US 11 (8 mm) or US 13 (9 mm)?"
        );
    }

    #[test]
    fn a_range_and_what_is_beside_it_are_said() {
        let [low, middle, high] = [21_000, 21_500, 22_000].map(|count| Gauge::new(count, Gauge::TEN_CM).unwrap());
        assert_eq!(
            super::middle(middle, (low, high)),
            "Read as 21.5, the middle of 21 to 22."
        );
        assert_eq!(
            not_needed(Gauge::of(30, Gauge::TEN_CM), Direction::Rows),
            "The 30 rows are not needed here."
        );
        assert_eq!(
            perhaps(&over("5.5", Length::INCH)).replace('\u{a0}', " "),
            "5.5 over 1 in?"
        );
    }
}

//! The words beside a length, a weight and a gauge.

use super::intl::{DECIMAL_MARK, hundredths, number};
use super::needles;
use loopwright::spacing::Fraction;
use loopwright::tables::needle::sold;
use loopwright::units::print::{self, Quarters, Rest, Rounded, Step};
use loopwright::units::{Gauge, Length, LengthUnit, MassUnit, Measure, Unit};

pub const UNIT: &str = "Unit";
pub const SPAN: &str = "Counted over";
/// In what a needle is typed where US needles are chosen; behind "in".
pub const MILLIMETRES_OR_US: &str = "millimetres or as US 6";

/// How lengths are written in a sentence.
#[derive(Clone, Copy, Debug)]
pub struct Lengths {
    /// In which unit.
    pub unit: LengthUnit,
    /// How finely.
    pub step: print::Step,
}

impl Lengths {
    /// A length with its unit, both on one line.
    pub fn write(self, length: Length) -> String {
        quantity(length, self.unit, self.step)
    }

    /// The number alone, where the unit stands behind another.
    pub fn write_number(self, length: Length) -> String {
        rounded(print::rounded(length, self.unit, self.step))
    }

    /// Whether a length is so small that it is written as nought.
    pub fn is_nought(self, length: Length) -> bool {
        print::is_nought(length, self.unit, self.step)
    }

    /// The same, written as finely as a sum needs.
    pub const fn fine(self) -> Self {
        let step = Step::Hundredth;
        Self { step, ..self }
    }
}

/// A unit of length in full.
pub fn length(unit: LengthUnit) -> &'static str {
    match unit {
        LengthUnit::Mm => "millimetres",
        LengthUnit::Cm => "centimetres",
        LengthUnit::M => "metres",
        LengthUnit::Inch => "inches",
        LengthUnit::Yard => "yards",
    }
}

/// A unit of weight in full.
pub fn mass(unit: MassUnit) -> &'static str {
    match unit {
        MassUnit::Gram => "grams",
        MassUnit::Kilogram => "kilograms",
        MassUnit::Ounce => "ounces",
        MassUnit::Pound => "pounds",
    }
}

/// A span that stitches or rows are counted over, by its key.
pub fn span(key: &str) -> String {
    format!("over {key}")
}

/// The unit of the numbers of a list.
pub fn list_unit(unit: LengthUnit) -> String {
    format!("in {}", length(unit))
}

/// A label that names the unit, so that it is heard as well as seen.
pub fn labelled(label: &str, unit: &str) -> String {
    format!("{label}, in {unit}")
}

/// A gauge with its span: `21 over 10 cm`, `about 20¾ over 10 cm`.
pub fn gauge(gauge: Gauge) -> String {
    format!("{}\u{a0}over\u{a0}{}", count_of(gauge), span_of(gauge.span()))
}

/// A gauge in a sum that has to add up: `20.83 over 10 cm`.
pub fn gauge_in_sum(gauge: Gauge) -> String {
    format!("{}\u{a0}over\u{a0}{}", hundredths(gauge.count()), span_of(gauge.span()))
}

/// The count of a gauge over its own span, to the quarter.
pub fn count_of(gauge: Gauge) -> String {
    counted(print::quarters(u64::from(gauge.thousandths()), 1_000))
}

/// A count that is seldom whole, to the quarter.
pub fn part_of(fraction: Fraction) -> String {
    counted(print::quarters(fraction.over, fraction.under))
}

/// `20½`; with `about` before it where it was rounded.
fn counted(Quarters { number, is_exact }: Quarters) -> String {
    match (is_exact, number.whole, number.rest) {
        (true, ..) => in_quarters(number),
        // Half a quarter is the least that is written as one.
        (false, 0, Rest::Nothing) => "less than\u{a0}¼".into(),
        (false, ..) => format!("about {}", in_quarters(number)),
    }
}

/// A number whose quarters are one sign: `20¾`.
fn in_quarters(counted: Rounded) -> String {
    let sign = match counted.rest {
        Rest::Nothing => "",
        Rest::Fraction { top: 1, bottom: 4 } => "¼",
        Rest::Fraction { top: 1, bottom: 2 } => "½",
        Rest::Fraction { top: 3, bottom: 4 } => "¾",
        Rest::Decimals { .. } | Rest::Fraction { .. } => return rounded(counted),
    };
    match (counted.whole, sign) {
        (0, "¼" | "½" | "¾") => sign.into(),
        (whole, sign) => number(u32::try_from(whole).unwrap_or(u32::MAX)) + sign,
    }
}

/// A length in the unit of a gauge, where nothing else says which unit she uses.
pub fn length_beside(gauge: Gauge, length: Length) -> String {
    let (unit, step) = if gauge.over_inches() {
        (LengthUnit::Inch, Step::Eighths)
    } else {
        (LengthUnit::Cm, Step::Tenth)
    };
    quantity(length, unit, step)
}

/// A quantity with its unit, which stay on one line: `7 1/2 in`.
pub fn quantity<T: Measure>(value: T, unit: T::Unit, step: Step) -> String {
    with_symbol(print::rounded(value, unit, step), unit.into())
}

/// The same, rounded up: for what must not fall short.
pub fn quantity_or_more<T: Measure>(value: T, unit: T::Unit, step: Step) -> String {
    with_symbol(print::rounded_up(value, unit, step), unit.into())
}

/// A needle by its millimetres and, where it has one, its US size: that first for whom it comes first, `US 6 (4 mm)`.
pub fn needle(across: Length, us_first: bool) -> String {
    let millimetres = quantity(across, LengthUnit::Mm, Step::Thousandth);
    match sold(across).and_then(|needle| needle.us) {
        Some(size) if us_first => format!("US\u{a0}{} ({millimetres})", needles::number(size)),
        Some(size) => format!("{millimetres} (US\u{a0}{})", needles::number(size)),
        None => millimetres,
    }
}

/// A number that was rounded, as this language writes it.
pub fn rounded(number: Rounded) -> String {
    number.to_string().replace('.', DECIMAL_MARK).replace(' ', "\u{a0}")
}

fn with_symbol(number: Rounded, unit: Unit) -> String {
    format!("{}\u{a0}{}", rounded(number), symbol(unit))
}

/// The short sign of a unit.
pub const fn symbol(unit: Unit) -> &'static str {
    match unit {
        Unit::Length(unit) => unit.symbol(),
        Unit::Mass(unit) => unit.symbol(),
        Unit::Count(_) => "",
    }
}

/// Over what a gauge was counted, in the unit it was counted in.
pub fn span_of(span: Length) -> String {
    length_beside(Gauge::of(1, span), span)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_needle_is_named_by_its_us_size_first_where_that_is_chosen() {
        let plain = |nm, us_first| needle(Length::from_nm(nm), us_first).replace('\u{a0}', " ");
        assert_eq!(plain(4_000_000, true), "US 6 (4 mm)");
        assert_eq!(plain(4_000_000, false), "4 mm (US 6)");
        assert_eq!(plain(6_500_000, true), "US 10 1/2 (6.5 mm)");
        // A needle without a US size has its millimetres.
        assert_eq!(plain(7_500_000, true), "7.5 mm");
    }

    fn ten(thousandths: u32) -> String {
        gauge(Gauge::new(thousandths, Gauge::TEN_CM).unwrap()).replace('\u{a0}', " ")
    }

    /// 100 × 19 ÷ 20¾ would be 91.6.
    #[test]
    fn a_gauge_in_a_sum_has_the_decimals_that_make_it_add_up() {
        let in_sum = |thousandths| gauge_in_sum(Gauge::new(thousandths, Gauge::TEN_CM).unwrap());
        let plain = |thousandths| in_sum(thousandths).replace('\u{a0}', " ");
        assert_eq!(plain(20_833), "20.83 over 10 cm");
        assert_eq!(plain(20_500), "20.5 over 10 cm");
        assert_eq!(plain(21_000), "21 over 10 cm");
    }

    #[test]
    fn a_gauge_is_said_to_the_quarter_and_about_where_that_is_rounded() {
        assert_eq!(ten(21_000), "21 over 10 cm");
        assert_eq!(ten(20_500), "20½ over 10 cm");
        assert_eq!(ten(250), "¼ over 10 cm");
        // Nobody says 20.833 stitches.
        assert_eq!(ten(20_833), "about 20¾ over 10 cm");
        assert_eq!(ten(20_900), "about 21 over 10 cm");
        assert_eq!(ten(100), "less than ¼ over 10 cm");
        assert_eq!(part_of(Fraction::new(300, 7)).replace('\u{a0}', " "), "about 42¾");
        assert_eq!(part_of(Fraction::new(0, 7)), "0");
    }
}

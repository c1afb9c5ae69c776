//! Over what a gauge was counted. The span belongs to the count, since 10 cm and 4 in are 1.6 % apart: it is stored as the
//! count's unit, and another span says that the count was taken over that, and converts nothing. A span that is not among
//! the choices is typed behind the count: `31 in 18 cm`.

use super::strange::written_unit;
use crate::store::Typed;
use loopwright::units::parse::{Unreadable, Wanted, read};
use loopwright::units::print::{self, Step};
use loopwright::units::{Gauge, Length, LengthUnit};

/// A span to choose: the key that is stored as the count's unit, and how long it is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Span {
    /// The key, which is also how it is read.
    pub key: &'static str,
    /// How long it is.
    pub length: Length,
}

impl Span {
    const fn new(key: &'static str, length: Length) -> Self {
        Self { key, length }
    }

    /// The span before anything is chosen.
    pub const USUAL: Self = Self::new("10 cm", Gauge::TEN_CM);
}

/// What every field reads between a count and its span, whatever the language of the page.
const OVER: &str = " over ";

/// The spans people count over.
pub const SPANS: [Span; 9] = [
    Span::USUAL,
    Span::new("4 in", Gauge::FOUR_INCHES),
    Span::new("15 cm", Length::of(15, LengthUnit::Cm)),
    Span::new("6 in", Length::from_inches(6)),
    Span::new("20 cm", Length::from_mm(200)),
    Span::new("8 in", Length::from_inches(8)),
    Span::new("5 cm", Length::of(5, LengthUnit::Cm)),
    Span::new("2 in", Length::from_inches(2)),
    Span::new("1 in", Length::INCH),
];

/// The span that stands beside a count; the usual one where none does, or none that is known.
pub fn span_of(typed: Option<&Typed>) -> Span {
    span_read(typed).unwrap_or(Span::USUAL)
}

/// The span that stands beside a count, however it is written: `4 in`, `4 inches`, `10cm`.
///
/// # Errors
/// Why it is none of those that counts are taken over.
pub fn span_read(typed: Option<&Typed>) -> Result<Span, Unreadable> {
    let Some(written) = typed.and_then(written_unit) else {
        return Ok(Span::USUAL);
    };
    if let Some(chosen) = SPANS.into_iter().find(|span| span.key == written) {
        return Ok(chosen);
    }
    let read = read(written, &Wanted::<Length>::any(LengthUnit::Cm))?;
    // A number alone may be one of either unit.
    let named = read.unit.and(Some(read.value));
    let chosen = SPANS.into_iter().find(|span| Some(span.length) == named);
    chosen.ok_or(Unreadable::UnknownUnit)
}

/// A gauge as it would be typed: with its span as the unit if that is one of the choices, else behind the count; none if
/// no field would take it.
pub fn gauge_as_typed(gauge: Gauge) -> Option<Typed> {
    let span = gauge.span();
    let count = plain_count(gauge.thousandths());
    let typed = match SPANS.iter().find(|known| known.length == span) {
        Some(known) => Typed::with_unit(count, known.key),
        None => Typed::plain(format!("{count}{OVER}{}", plain_span(gauge))),
    };
    let is_read_back = Gauge::read(&typed.text, span).is_ok_and(|read| read == gauge);
    is_read_back.then_some(typed)
}

/// The largest number below the line of a mean: halves of eight spots.
const LARGEST_PART: u32 = 16;

/// A number of thousandths as every field reads it, whatever the language of the page: as the fraction that a mean is,
/// `20 5/6`, and with decimals where it is none that is told easily.
fn plain_count(thousandths: u32) -> String {
    let (whole, rest) = (thousandths / 1_000, thousandths % 1_000);
    let nearest = |over: u32, under: u32| (2 * over + under) / (2 * under);
    for bottom in 1..=LARGEST_PART {
        let top = nearest(rest * bottom, 1_000);
        match (whole, top, bottom) {
            _ if nearest(1_000 * top, bottom) != rest => {}
            (whole, 0, _) => return whole.to_string(),
            (0, top, bottom) => return format!("{top}/{bottom}"),
            (whole, top, bottom) => return format!("{whole} {top}/{bottom}"),
        }
    }
    plain_decimal(thousandths)
}

/// The same with decimals.
fn plain_decimal(thousandths: u32) -> String {
    let decimals = format!("{}.{:03}", thousandths / 1_000, thousandths % 1_000);
    decimals.trim_end_matches('0').trim_end_matches('.').to_owned()
}

fn plain_span(gauge: Gauge) -> String {
    if gauge.over_inches() {
        print::with_unit(gauge.span(), LengthUnit::Inch, Step::Eighths)
    } else {
        print::with_unit(gauge.span(), LengthUnit::Cm, Step::Tenth)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_span_is_the_one_that_is_named() {
        for span in SPANS {
            assert_eq!(span_of(Some(&Typed::with_unit("21", span.key))), span);
        }
        assert_eq!(span_of(None), Span::USUAL);
        let read = |unit: &str| span_read(Some(&Typed::with_unit("21", unit))).map(|span| span.key);
        for (written, key) in [
            ("4 inches", "4 in"),
            ("4\"", "4 in"),
            ("10cm", "10 cm"),
            ("100 mm", "10 cm"),
            ("", "10 cm"),
        ] {
            assert_eq!(read(written), Ok(key), "{written}");
        }
        // A number alone, a unit alone and a length that nobody counts over are none.
        for strange in ["4", "in", "18 cm", "10 g", "ten"] {
            assert!(read(strange).is_err(), "{strange}");
        }
    }

    #[test]
    fn a_gauge_is_written_as_it_is_read() {
        let halves = Gauge::new(21_500, Gauge::FOUR_INCHES).map(gauge_as_typed);
        assert_eq!(halves, Some(Some(Typed::with_unit("21 1/2", "4 in"))));
        // The mean of three spots, exactly, in place of 20.833.
        let mean = Gauge::new(20_833, Gauge::TEN_CM).map(gauge_as_typed);
        assert_eq!(mean, Some(Some(Typed::with_unit("20 5/6", "10 cm"))));
        let odd = Gauge::of(31, Length::from_mm(180));
        assert_eq!(gauge_as_typed(odd), Some(Typed::plain("31 over 18 cm")));
    }

    #[test]
    fn every_thousandth_is_kept_as_it_is() {
        for thousandths in (1_000..2_000).chain(20_000..21_000).chain(399_000..=400_000) {
            let gauge = Gauge::new(thousandths, Gauge::TEN_CM).unwrap();
            let typed = gauge_as_typed(gauge).unwrap();
            assert_eq!(Gauge::read(&typed.text, Gauge::TEN_CM), Ok(gauge), "{thousandths}");
        }
    }
}

//! Gauge: how many stitches, or rows, lie in a measured span. "21 stitches in 10 cm."
//!
//! A gauge is a count and the span it was counted over, and the two stay together: 10 cm and 4 in are 1.6 % apart, so
//! 21 stitches in 4 in is another gauge than 21 stitches in 10 cm. One [`Gauge`] is one direction; a fabric has two. The
//! count is held in thousandths, so that 21 1/2 and 5.25 are exact. Common practice, no source.
//!
//! ```
//! use loopwright::units::{Gauge, Length, LengthUnit};
//!
//! let metric = Gauge::of(21, Gauge::TEN_CM);
//! let inches = Gauge::of(21, Gauge::FOUR_INCHES);
//! let metre = Length::of(1, LengthUnit::M);
//! assert_eq!(metric.count_over(metre), 210.0);
//! assert!((inches.count_over(metre) - 206.69).abs() < 0.01);
//! assert_eq!(metric.width_of(210.0), Some(metre));
//! ```

use super::parse::Unreadable;
use super::printed::Unread;
use super::{Length, LengthUnit, gauge_text};
use crate::bounds::Bounds;
use crate::gauge::Direction;

/// Thousandths in one.
const PARTS: u32 = 1_000;

/// A count over a span, in one direction.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Gauge {
    thousandths: u32,
    span: Length,
}

impl Gauge {
    /// The span of most labels outside the United States.
    pub const TEN_CM: Length = Length::of(10, LengthUnit::Cm);
    /// The span of most labels in the United States.
    pub const FOUR_INCHES: Length = Length::from_inches(4);
    /// How many stitches or rows a page accepts over a span.
    pub const COUNTS: Bounds<u32> = Bounds::new(1, 400);

    /// Over what a gauge may have been counted: 5 mm to 1 m.
    pub const SPANS: Bounds<Length> = Bounds::new(Length::from_mm(5), Length::of(1, LengthUnit::M));

    /// So many thousandths over a span; none when either is not above zero.
    pub fn new(thousandths: u32, span: Length) -> Option<Self> {
        (thousandths > 0 && span > Length::ZERO).then_some(Self { thousandths, span })
    }

    /// A whole count over a span. A count of zero is taken as one thousandth and a span not above zero as 10 cm, so
    /// that it can be used for constants and never divides by zero.
    pub const fn of(count: u32, span: Length) -> Self {
        let thousandths = if count == 0 { 1 } else { count.saturating_mul(PARTS) };
        let span = if span.to_nm() > 0 { span } else { Self::TEN_CM };
        Self { thousandths, span }
    }

    /// The count over its own span.
    pub fn count(self) -> f64 {
        f64::from(self.thousandths) / f64::from(PARTS)
    }

    /// The count over its own span, in thousandths, which is how finely it is held.
    pub const fn thousandths(self) -> u32 {
        self.thousandths
    }

    /// The span the count was taken over.
    pub const fn span(self) -> Length {
        self.span
    }

    /// Whether it was counted over whole or half inches, and is spoken of in inches.
    pub const fn over_inches(self) -> bool {
        self.span.to_nm() % (Length::INCH.to_nm() / 2) == 0
    }

    /// The span of most labels in the measure it was counted in: 4 in, or 10 cm.
    pub const fn usual_span(self) -> Length {
        if self.over_inches() {
            Self::FOUR_INCHES
        } else {
            Self::TEN_CM
        }
    }

    /// How many lie in one centimetre.
    pub fn per_cm(self) -> f64 {
        self.count() / self.span.in_unit(LengthUnit::Cm)
    }

    /// How many lie in a length.
    pub fn count_over(self, length: Length) -> f64 {
        self.count() * (length.to_nm() as f64 / self.span.to_nm() as f64)
    }

    /// How much room so many take, rounded once to the nanometre; none when it is too long to hold.
    pub fn width_of(self, count: f64) -> Option<Length> {
        Length::from_f64(count / self.per_cm(), LengthUnit::Cm)
    }

    /// Reads a count, which may have a part (`21 1/2`), taken over `span`, or over the span that the text names:
    /// `31 in 15 cm`. All that may be written is told in [`gauge_text`](super::gauge_text).
    ///
    /// # Errors
    /// [`Unreadable`] with the limits of [`Gauge::COUNTS`] as counts, or those of [`Gauge::SPANS`].
    pub fn read(text: &str, span: Length) -> Result<Self, Unreadable> {
        gauge_text::read(text, span)?.only()
    }

    /// Reads several counts of stitches: `21, 20 1/2, 21`. Each may name its own span.
    ///
    /// # Errors
    /// The first piece that is none, and why, as [`Gauge::read`] says.
    pub fn read_list(text: &str, span: Length) -> Result<Vec<Self>, Unread> {
        gauge_text::read_several(text, span, Direction::Stitches)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::printed::WhyUnread;

    #[test]
    fn ten_centimetres_are_not_four_inches() {
        let metre = Length::of(1, LengthUnit::M);
        let (metric, inches) = (Gauge::of(21, Gauge::TEN_CM), Gauge::of(21, Gauge::FOUR_INCHES));
        assert_eq!(metric.count_over(metre).round(), 210.0);
        assert_eq!((inches.count_over(metre) * 10.0).round(), 2067.0);
    }

    #[test]
    fn a_count_may_have_a_part() {
        for text in ["21 1/2", "21½", "21.5", "21,5", "21.5 sts"] {
            let gauge = Gauge::read(text, Gauge::TEN_CM).unwrap();
            assert_eq!(gauge.count(), 21.5, "{text}");
        }
        assert!(matches!(
            Gauge::read("0", Gauge::TEN_CM),
            Err(Unreadable::TooSmall { .. })
        ));
        assert!(matches!(
            Gauge::read("401", Gauge::TEN_CM),
            Err(Unreadable::TooLarge { .. })
        ));
        assert!(matches!(
            Gauge::read("21 cm", Gauge::TEN_CM),
            Err(Unreadable::WrongKind { .. })
        ));
        assert_eq!(Gauge::read("", Gauge::TEN_CM), Err(Unreadable::Empty));
    }

    #[test]
    fn a_gauge_may_name_its_own_span() {
        let fifteen = Length::of(15, LengthUnit::Cm);
        assert_eq!(Gauge::read("31 in 15 cm", Gauge::TEN_CM), Ok(Gauge::of(31, fifteen)));
        assert_eq!(
            Gauge::read("31 sts per 6 in", Gauge::TEN_CM),
            Ok(Gauge::of(31, Length::from_inches(6)))
        );
        assert_eq!(Gauge::read("31 over 15", Gauge::TEN_CM), Err(Unreadable::UnknownUnit));
        assert!(Gauge::read("31 in 2 m", Gauge::TEN_CM).is_err());
        // Inches are no stitches.
        assert!(Gauge::read("21 in", Gauge::TEN_CM).is_err());
    }

    #[test]
    fn several_counts_stand_in_one_text() {
        let all = |halves: &[u32]| {
            let gauge = |half: &u32| Gauge::new(half * 500, Gauge::TEN_CM).unwrap();
            Ok(halves.iter().map(gauge).collect::<Vec<_>>())
        };
        let list = |text| Gauge::read_list(text, Gauge::TEN_CM);
        for text in [
            "21, 20 1/2, 21",
            "21, 20½ and 21",
            "21; 20,5; 21",
            "21,20.5,21",
            "21 20.5 21",
            "21\n20-1/2\n21",
        ] {
            assert_eq!(list(text), all(&[42, 41, 42]), "{text}");
        }
        assert_eq!(list("20,5"), all(&[41]));
        // As a fraction it would be 1.05 stitches.
        let refused = |text: &'static str| list(text).map_err(|unread| (unread.piece(text), unread.why));
        let wrong = |piece, why| Err((piece, WhyUnread::Number(why)));
        assert_eq!(refused("21/20"), wrong("21/20", Unreadable::TwoNumbers));
        let spanned = wrong("21 / 20 in 10 cm", Unreadable::TwoNumbers);
        assert_eq!(refused("21, 21 / 20 in 10 cm"), spanned);
        assert_eq!(list("21,20"), all(&[42, 40]));
        assert_eq!(refused(" "), wrong(" ", Unreadable::Empty));
        assert_eq!(refused("21, many"), wrong("many", Unreadable::NotANumber));
        assert_eq!(
            list("21, 31 in 15 cm").map(|list| list[1].span()),
            Ok(Length::of(15, LengthUnit::Cm))
        );
    }
}

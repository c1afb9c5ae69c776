//! The swatch: "How many stitches do I cast on to measure 10 cm of it properly, and how high do I knit?"
//!
//! Stitches for the span that is measured, 10 cm or 4 in or as far as the gauge goes, about half of it again on each side and never under 3, since the edge
//! stitches are drawn in and are not counted; up to whole repeats. Half the span again in height, up to whole repeats of
//! rows. All of it common practice, no source. It is knitted as the piece will be, in the round or flat, since many knit
//! and purl differently: a swatch worked flat can be a stitch or two off for a round.
//!
//! ```
//! use loopwright::swatch::{Question, answer};
//! use loopwright::units::{Gauge, Length};
//!
//! let answer = answer(&Question {
//!     rows: Some(Gauge::of(28, Gauge::TEN_CM)),
//!     ..Question::about(Gauge::of(21, Gauge::TEN_CM))
//! }).unwrap();
//! // 21 to measure, and 11 on each side; 15 cm in 42 rows.
//! assert_eq!((answer.cast_on, answer.measured, answer.beside), (43, 21, 22));
//! assert_eq!((answer.rows.unwrap().count, answer.height), (42, Length::from_mm(150)));
//! ```

use crate::check::Check;
use crate::problem::Problem;
use crate::terms::{MULTIPLE, Multiple, PLUS};
use crate::units::{Gauge, Length};

/// The fewest stitches on each side that are not measured. Common practice, no source.
pub const LEAST_BESIDE: u32 = 3;

/// What is expected of the swatch.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Question {
    /// The stitches that are hoped for, mostly the pattern's: [`Gauge::COUNTS`] over [`Gauge::SPANS`].
    pub gauge: Gauge,
    /// The rows that are hoped for, with their own span.
    pub rows: Option<Gauge>,
    /// The repeat of the pattern stitch, within [`MULTIPLE`] and [`PLUS`]; its `plus` is not counted in the round.
    pub multiple: Multiple,
    /// Rows of one repeat, within [`MULTIPLE`]; 1 when any number will do.
    pub row_repeat: u32,
    /// Whether the piece is worked in the round.
    pub round: bool,
}

impl Question {
    /// A flat swatch of a plain fabric.
    pub const fn about(gauge: Gauge) -> Self {
        Self {
            gauge,
            rows: None,
            multiple: Multiple { of: 1, plus: 0 },
            row_repeat: 1,
            round: false,
        }
    }
}

/// How to knit it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Answer {
    /// Stitches to cast on.
    pub cast_on: u32,
    /// What is measured, in the middle: the span of the gauge, but no less than 10 cm, or 4 in if it was given over whole
    /// or half inches.
    pub span: Length,
    /// Stitches in it, rounded up.
    pub measured: u32,
    /// Stitches on both sides together that are not.
    pub beside: u32,
    /// Whole repeats that are cast on.
    pub repeats: u32,
    /// Stitches beside the repeats; none in the round.
    pub plus: u32,
    /// How wide it will be at the gauge that is hoped for.
    pub width: Length,
    /// How high to knit: half the span again, up to whole repeats where a row gauge is hoped for.
    pub height: Length,
    /// Rows for that; none when no row gauge is hoped for.
    pub rows: Option<Rows>,
}

/// How many rows to work.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Rows {
    /// Rows of half the span again.
    pub least: u32,
    /// Whole repeats that reach it.
    pub repeats: u32,
    /// Rows of these.
    pub count: u32,
}

/// Plans the swatch.
///
/// # Errors
/// Every [`Problem`] has the field `gauge`, `rows`, `multiple`, `plus` or `row_repeat`.
pub fn answer(question: &Question) -> Result<Answer, Vec<Problem>> {
    let Question { rows, row_repeat, .. } = *question;
    let Multiple { of, plus } = question.multiple;
    let mut check = Check::default();
    check.gauge("gauge", question.gauge);
    check.gauge_if_any("rows", rows);
    check.count("multiple", of, MULTIPLE);
    check.count("plus", plus, PLUS);
    check.count("row_repeat", row_repeat, MULTIPLE);
    check.done()?;
    let plus = if question.round { 0 } else { plus };
    let span = question.gauge.span().max(question.gauge.usual_span());
    let measured = count_in(span, question.gauge);
    let side = measured.div_ceil(2).max(LEAST_BESIDE);
    let repeats = (measured + 2 * side).saturating_sub(plus).div_ceil(of).max(1);
    let cast_on = repeats * of + plus;
    let mut answer = Answer {
        cast_on,
        span,
        measured,
        beside: cast_on - measured,
        repeats,
        plus,
        width: length_of(cast_on, question.gauge),
        height: Length::from_nm(span.to_nm() * 3 / 2),
        rows: None,
    };
    if let Some(rows) = rows {
        let least = count_in(answer.height, rows);
        let repeats = least.div_ceil(row_repeat);
        let count = repeats * row_repeat;
        answer.height = length_of(count, rows);
        answer.rows = Some(Rows { least, repeats, count });
    }
    Ok(answer)
}

/// How many reach a length. In thousandths, so exact: a row too many is seen.
fn count_in(length: Length, gauge: Gauge) -> u32 {
    let over = (gauge.count() * 1_000.0).round() as u64 * length.to_nm().unsigned_abs();
    over.div_ceil(1_000 * gauge.span().to_nm().unsigned_abs()) as u32
}

/// How long so many are.
fn length_of(count: u32, gauge: Gauge) -> Length {
    gauge.width_of(f64::from(count)).unwrap_or(Length::ZERO)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::LengthUnit;
    use proptest::prelude::*;

    const FIVE_CM: Length = Length::of(5, LengthUnit::Cm);

    fn ten(count: u32) -> Gauge {
        Gauge::of(count, Gauge::TEN_CM)
    }

    #[test]
    fn the_swatch_is_wider_and_higher_than_what_is_measured() {
        let question = Question {
            rows: Some(ten(28)),
            multiple: Multiple { of: 8, plus: 3 },
            row_repeat: 8,
            ..Question::about(ten(21))
        };
        let flat = answer(&question).unwrap();
        // The obvious swatch is 21 by 28: its edge stitches are counted, and drawn in.
        assert_eq!((flat.cast_on, flat.measured, flat.beside), (43, 21, 22));
        assert_eq!(flat.width, Length::from_nm(204_761_905));
        // 42 rows are 15 cm; 48 are whole repeats, and their height is said, not that of 42.
        assert_eq!(flat.repeats, 5);
        let rows = flat.rows.unwrap();
        assert_eq!((rows.least, rows.repeats, rows.count), (42, 6, 48));
        assert_eq!(flat.height, Length::from_nm(171_428_571));
        // Even the thickest yarn has 3 stitches on each side.
        let thick = answer(&Question::about(ten(3))).unwrap();
        assert_eq!((thick.cast_on, thick.beside, thick.rows), (9, 6, None));
    }

    #[test]
    fn a_gauge_over_a_short_span_is_still_measured_over_a_long_one() {
        // The obvious swatch for 5 in 1 in has 5 stitches to measure, which half a stitch misread makes 10 % wrong.
        for (count, span) in [
            (5, Length::INCH),
            (10, Length::from_inches(2)),
            (20, Gauge::FOUR_INCHES),
        ] {
            let plan = answer(&Question::about(Gauge::of(count, span))).unwrap();
            assert_eq!((plan.span, plan.measured, plan.cast_on), (Gauge::FOUR_INCHES, 20, 40));
            assert_eq!(plan.height, Length::from_inches(6));
        }
        let short = answer(&Question::about(Gauge::new(10_500, FIVE_CM).unwrap())).unwrap();
        assert_eq!((short.span, short.measured), (Gauge::TEN_CM, 21));
        // Who counts over more measures more.
        let long = answer(&Question::about(Gauge::of(31, Length::from_mm(150)))).unwrap();
        assert_eq!((long.span, long.measured), (Length::from_mm(150), 31));
    }

    #[test]
    fn the_stitches_beside_the_repeats_are_dropped_in_the_round() {
        let question = Question {
            multiple: Multiple { of: 8, plus: 3 },
            round: true,
            ..Question::about(ten(21))
        };
        let round = answer(&question).unwrap();
        // Carried along they would make 43, and the pattern would not meet itself.
        assert_eq!((round.cast_on, round.repeats, round.plus), (48, 6, 0));
    }

    #[test]
    fn every_field_of_the_swatch_is_named() {
        let bad = Gauge::new(1, Length::from_nm(1)).unwrap();
        let problems = answer(&Question {
            gauge: bad,
            rows: Some(bad),
            multiple: Multiple { of: 0, plus: 1_001 },
            row_repeat: 0,
            round: false,
        });
        let mut fields: Vec<_> = problems
            .unwrap_err()
            .iter()
            .map(|problem| problem.field.key())
            .collect();
        fields.dedup();
        assert_eq!(fields.join(" "), "gauge rows multiple plus row_repeat");
    }

    /// Any gauge that is accepted, over any span or a usual one.
    fn gauge() -> impl Strategy<Value = Gauge> {
        let spans = [Gauge::TEN_CM, Gauge::FOUR_INCHES, FIVE_CM, Length::INCH];
        let span = prop_oneof![
            prop::sample::select(spans.to_vec()),
            (Gauge::SPANS.least.to_nm()..Gauge::SPANS.most.to_nm() / 2).prop_map(Length::from_nm),
        ];
        (1_000_u32..=400_000, span).prop_map(|(count, span)| Gauge::new(count, span).unwrap())
    }

    /// The same count over no less than 4 in.
    fn long(gauge: Gauge) -> Gauge {
        Gauge::new(
            (gauge.count() * 1_000.0).round() as u32,
            gauge.span().max(Gauge::FOUR_INCHES),
        )
        .unwrap()
    }

    proptest! {
        #[test]
        fn what_is_measured_has_room_and_repeats_are_whole(
            gauge in gauge(), rows in gauge(), of in 1_u32..60, plus in 0_u32..60, row_repeat in 1_u32..60, round: bool,
        ) {
            let multiple = Multiple { of, plus };
            let question = Question { gauge, rows: Some(rows), multiple, row_repeat, round };
            let plan = answer(&question).unwrap();
            prop_assert_eq!(plan.measured + plan.beside, plan.cast_on);
            prop_assert_eq!(plan.repeats * of + plan.plus, plan.cast_on);
            prop_assert!(plan.beside >= (2 * LEAST_BESIDE).max(plan.measured));
            prop_assert!(plan.width > plan.span && plan.span >= gauge.span().max(Gauge::TEN_CM));
            let rows = plan.rows.unwrap();
            prop_assert_eq!(rows.repeats * row_repeat, rows.count);
            prop_assert!(rows.count >= rows.least && rows.count < rows.least + row_repeat);
            prop_assert!(plan.height.to_nm() + 1 >= plan.span.to_nm() * 3 / 2);
        }

        #[test]
        fn twice_the_scale_changes_no_count(gauge in gauge().prop_map(long), rows in gauge(), of in 1_u32..30, round: bool) {
            let double = |gauge: Gauge| {
                Gauge::new((gauge.count() * 1_000.0).round() as u32, gauge.span().saturating_mul(2)).unwrap()
            };
            let small = Question { rows: Some(rows), multiple: Multiple { of, plus: 1 }, round, ..Question::about(gauge) };
            let large = Question { gauge: double(gauge), rows: Some(double(rows)), ..small };
            let counts = |question| {
                let Answer { cast_on, measured, rows, .. } = answer(question).unwrap();
                (cast_on, measured, rows)
            };
            prop_assert_eq!(counts(&small), counts(&large));
        }

        #[test]
        fn any_question_has_an_answer_or_a_reason(
            thousandths: u32, span: i64, of: u32, plus: u32, row_repeat: u32, round: bool,
        ) {
            if let Some(gauge) = Gauge::new(thousandths, Length::from_nm(span)) {
                let multiple = Multiple { of, plus };
                let _ = answer(&Question { gauge, rows: Some(gauge), multiple, row_repeat, round });
            }
        }
    }
}

//! A quantity as it is written on the page: inches to the eighth as a fraction, centimetres to the half or the tenth.
//!
//! How finely is asked for by a [`Step`]. What is printed is for the eye only: it is rounded, so it must never be read
//! back into a sum in place of the quantity itself (an eighth of an inch is most of a stitch). Reading a printed text
//! gives the quantity within half a step, and printing that again gives the same text. A point marks decimals and a
//! hyphen what is less than nothing; other languages are the page's affair.
//!
//! ```
//! use loopwright::units::print::{Step, print, with_unit};
//! use loopwright::units::{Length, LengthUnit, Mass, MassUnit};
//!
//! let width = Length::from_mm(191);
//! assert_eq!(with_unit(width, LengthUnit::Inch, Step::Eighths), "7 1/2 in");
//! assert_eq!(print(width, LengthUnit::Cm, Step::Half), "19");
//! assert_eq!(print(width, LengthUnit::Cm, Step::Tenth), "19.1");
//! assert_eq!(with_unit(Mass::from_grams(50), MassUnit::Ounce, Step::Hundredth), "1.76 oz");
//! ```

use super::Measure;

/// How finely a quantity is shown, as a part of one unit.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum Step {
    /// Whole units: `19`.
    Whole,
    /// To 0.5, as a decimal: `19.5`.
    Half,
    /// To 0.1: `19.1`.
    Tenth,
    /// To 0.01: `1.76`.
    Hundredth,
    /// To 0.001: `0.453`.
    Thousandth,
    /// To 1/4, as a fraction: `7 3/4`.
    Quarters,
    /// To 1/8, as a fraction: `7 1/8`.
    Eighths,
}

impl Step {
    /// Every step, decimals first.
    pub const ALL: [Self; 7] = [
        Self::Whole,
        Self::Half,
        Self::Tenth,
        Self::Hundredth,
        Self::Thousandth,
        Self::Quarters,
        Self::Eighths,
    ];

    /// How many steps there are in one unit.
    pub const fn parts(self) -> u16 {
        match self {
            Self::Whole => 1,
            Self::Half => 2,
            Self::Quarters => 4,
            Self::Eighths => 8,
            Self::Tenth => 10,
            Self::Hundredth => 100,
            Self::Thousandth => 1000,
        }
    }

    /// How many decimals are written at most; none when it is written as a fraction.
    const fn decimals(self) -> Option<usize> {
        match self {
            Self::Whole => Some(0),
            Self::Half | Self::Tenth => Some(1),
            Self::Hundredth => Some(2),
            Self::Thousandth => Some(3),
            Self::Quarters | Self::Eighths => None,
        }
    }
}

/// The number alone, rounded once to the nearest step, halves away from zero. Noughts at the end are not written.
pub fn print<T: Measure>(value: T, unit: T::Unit, step: Step) -> String {
    written(value.base(), T::per_unit(unit), step, false)
}

/// The number with its unit behind it, such as `7 1/2 in`.
pub fn with_unit<T: Measure>(value: T, unit: T::Unit, step: Step) -> String {
    [&print(value, unit, step), " ", T::symbol(unit)].concat()
}

/// The number with its unit behind it, rounded up to the step: for what must not fall short, such as a tail. What is a
/// whole number of steps stays as it is.
///
/// ```
/// use loopwright::units::print::{Step, up};
/// use loopwright::units::{Length, LengthUnit};
///
/// assert_eq!(up(Length::from_mm(3_130), LengthUnit::M, Step::Tenth), "3.2 m");
/// assert_eq!(up(Length::from_mm(3_200), LengthUnit::M, Step::Tenth), "3.2 m");
/// ```
pub fn up<T: Measure>(value: T, unit: T::Unit, step: Step) -> String {
    let number = written(value.base(), T::per_unit(unit), step, true);
    [&number, " ", T::symbol(unit)].concat()
}

/// Whether a quantity printed to one step is printed the same to a finer one: whether nothing is rounded away that the
/// finer one would show.
///
/// ```
/// use loopwright::units::print::{Step, is_same_to};
/// use loopwright::units::{Length, LengthUnit};
///
/// let ball = Length::of(125, LengthUnit::M);
/// assert!(is_same_to(ball, LengthUnit::M, Step::Tenth, Step::Thousandth));
/// // 136.701 yards.
/// assert!(!is_same_to(ball, LengthUnit::Yard, Step::Tenth, Step::Thousandth));
/// ```
pub fn is_same_to<T: Measure>(value: T, unit: T::Unit, step: Step, finer: Step) -> bool {
    let (value, per_unit) = (i128::from(value.base()), i128::from(T::per_unit(unit)));
    let [parts, finer] = [step, finer].map(|step| i128::from(step.parts()));
    nearest(value * parts, per_unit) * finer == nearest(value * finer, per_unit) * parts
}

fn written(value: i64, per_unit: i64, step: Step, up: bool) -> String {
    let parts = u64::from(step.parts());
    let (mut top, mut bottom) = (i128::from(value) * i128::from(parts), i128::from(per_unit));
    if up {
        // Half a step further, less the least there is: the nearest step is now the next one up.
        (top, bottom) = (2 * top + bottom - 1, 2 * bottom);
    }
    let steps = nearest(top, bottom);
    let sign = if steps < 0 { "-" } else { "" };
    // A step is never smaller than what is counted, so that this fits.
    let steps = u64::try_from(steps.unsigned_abs()).unwrap_or(u64::MAX);
    let (whole, part) = (steps / parts, steps % parts);
    let mut text = [sign, &whole.to_string()].concat();
    match (part, step.decimals()) {
        (0, _) => {}
        (part, Some(decimals)) => {
            // The one in front keeps the noughts behind it in their places; a point is written for it.
            let ten = 10_u64.pow(decimals as u32);
            let digits = (ten + part * ten / parts).to_string();
            text += ".";
            text += digits.get(1..).unwrap_or_default().trim_end_matches('0');
        }
        (part, None) => {
            let shared = common(part, parts);
            text = match whole {
                0 => sign.into(),
                _ => text + " ",
            };
            text += &[&(part / shared).to_string(), "/", &(parts / shared).to_string()].concat();
        }
    }
    text
}

/// The whole number nearest to a fraction, halves away from zero. The bottom is above zero.
fn nearest(top: i128, bottom: i128) -> i128 {
    let away = (top.abs() * 2 + bottom) / (bottom * 2);
    if top < 0 { -away } else { away }
}

/// The greatest divisor that two numbers share.
fn common(a: u64, b: u64) -> u64 {
    if b == 0 { a } else { common(b, a % b) }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::parse::{Wanted, read};
    use crate::units::{Length, LengthUnit, Mass, MassUnit};
    use proptest::prelude::*;

    #[test]
    fn fractions_are_in_lowest_terms_and_zero_has_no_sign() {
        let print = |parts, step| print(Length::from_sixty_fourths(parts), LengthUnit::Inch, step);
        assert_eq!(print(480, Step::Eighths), "7 1/2");
        assert_eq!(print(56, Step::Eighths), "7/8");
        assert_eq!(print(-56, Step::Eighths), "-7/8");
        assert_eq!(print(-480, Step::Eighths), "-7 1/2");
        assert_eq!(print(-3, Step::Eighths), "0");
        assert_eq!(print(4, Step::Eighths), "1/8");
        assert_eq!(print(63, Step::Eighths), "1");
        assert_eq!(print(16, Step::Quarters), "1/4");
        assert_eq!(print(16, Step::Half), "0.5");
        assert_eq!(print(15, Step::Half), "0");
    }

    #[test]
    fn decimals_end_without_noughts() {
        let print = |mm, step| print(Length::from_mm(mm), LengthUnit::M, step);
        assert_eq!(print(1_050, Step::Hundredth), "1.05");
        assert_eq!(print(1_500, Step::Thousandth), "1.5");
        assert_eq!(print(-7, Step::Thousandth), "-0.007");
        assert_eq!(print(2_000, Step::Tenth), "2");
        assert_eq!(print(100_000_000, Step::Tenth), "100000");
    }

    #[test]
    fn rounding_up_leaves_whole_steps_and_never_falls_short() {
        let up = |mm, unit, step| up(Length::from_mm(mm), unit, step);
        let (m, tenth) = (LengthUnit::M, Step::Tenth);
        assert_eq!(up(4_000, m, tenth), "4 m");
        assert_eq!(up(4_001, m, tenth), "4.1 m");
        assert_eq!(up(0, m, tenth), "0 m");
        assert_eq!(up(-4_199, m, tenth), "-4.1 m");
        assert_eq!(up(-99, m, tenth), "0 m");
        assert_eq!(up(200, LengthUnit::Inch, Step::Quarters), "8 in");
        assert_eq!(up(3_134, LengthUnit::Yard, tenth), "3.5 yd");
    }

    #[test]
    fn the_ends_of_what_can_be_held_print() {
        for step in Step::ALL {
            for unit in LengthUnit::ALL {
                assert!(!print(Length::MAX, unit, step).is_empty());
                assert!(up(Length::MIN, unit, step).starts_with('-') && !up(Length::MAX, unit, step).is_empty());
                assert!(print(Length::MIN, unit, step).starts_with('-'));
            }
        }
    }

    /// Reading what is printed is within half a step, and printing that again changes nothing.
    fn round_trips<T: Measure>(value: T, unit: T::Unit, step: Step) -> Result<(), TestCaseError> {
        let (per_unit, parts) = (i128::from(T::per_unit(unit)), i128::from(step.parts()));
        for text in [print(value, unit, step), with_unit(value, unit, step)] {
            let back = read(&text, &Wanted::<T>::any(unit));
            prop_assert!(back.is_ok(), "{text}: {back:?}");
            let back = back.unwrap().value;
            prop_assert_eq!(print(back, unit, step), print(value, unit, step));
            // Off by at most half a step; and by half a nanometre or nanogram where a step is no whole number of them.
            let off = (i128::from(back.base()) - i128::from(value.base())).abs();
            let rounding = if per_unit % parts == 0 { 0 } else { parts };
            prop_assert!(off * 2 * parts <= per_unit + rounding, "{text}: off by {off}");
        }
        Ok(())
    }

    /// Small values and large, but a kilogram short of the very ends, where rounding up cannot be held.
    fn held() -> impl Strategy<Value = i64> {
        let room = MassUnit::Kilogram.base();
        prop_oneof![-3_000_000_000..3_000_000_000_i64, i64::MIN + room..i64::MAX - room]
    }

    proptest! {
        /// By whole steps, without the sum that is tested: the step below falls short, and this one does not.
        #[test]
        fn up_is_the_least_step_that_does_not_fall_short(
            steps in -2_000_000_i64..2_000_000,
            share in 0.0..1.0_f64,
            unit in prop::sample::select(&LengthUnit::ALL[..]),
            step in prop::sample::select(&Step::ALL[..]),
        ) {
            // Every step of a unit is a whole number of nanometres.
            let one = unit.base() / i64::from(step.parts());
            prop_assert_eq!(one * i64::from(step.parts()), unit.base());
            let whole = Length::from_nm(steps * one);
            prop_assert_eq!(up(whole, unit, step), with_unit(whole, unit, step));
            let within = Length::from_nm(steps * one - (share * one as f64) as i64);
            prop_assert_eq!(up(within, unit, step), with_unit(whole, unit, step));
        }

        #[test]
        fn lengths_print_and_read_back(nm in held(), unit in prop::sample::select(&LengthUnit::ALL[..]), step in prop::sample::select(&Step::ALL[..])) {
            round_trips(Length::from_nm(nm), unit, step)?;
        }

        #[test]
        fn weights_print_and_read_back(ng in held(), unit in prop::sample::select(&MassUnit::ALL[..]), step in prop::sample::select(&Step::ALL[..])) {
            round_trips(Mass::from_ng(ng), unit, step)?;
        }
    }
}

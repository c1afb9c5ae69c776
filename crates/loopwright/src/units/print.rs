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
use std::fmt;

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

/// A number rounded to a step, before any language writes it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Rounded {
    /// Whether it is less than nothing.
    pub negative: bool,
    /// The whole units.
    pub whole: u64,
    /// What is beside them.
    pub rest: Rest,
}

/// What is beside the whole units.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Rest {
    /// Nothing.
    Nothing,
    /// So many places behind the point, the last of them no nought: `Decimals { digits: 5, places: 2 }` is `.05`.
    Decimals {
        /// The digits as a number.
        digits: u64,
        /// How many places they take.
        places: usize,
    },
    /// A fraction in lowest terms.
    Fraction {
        /// Above the line.
        top: u64,
        /// Below the line.
        bottom: u64,
    },
}

/// As it is written in figures everywhere: a point for decimals, a hyphen for what is less than nothing. A language may
/// write it otherwise from the same data.
impl fmt::Display for Rounded {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let Self { negative, whole, rest } = *self;
        f.write_str(if negative { "-" } else { "" })?;
        match rest {
            Rest::Nothing => write!(f, "{whole}"),
            Rest::Decimals { digits, places } => write!(f, "{whole}.{digits:0places$}"),
            Rest::Fraction { top, bottom } if whole == 0 => write!(f, "{top}/{bottom}"),
            Rest::Fraction { top, bottom } => write!(f, "{whole} {top}/{bottom}"),
        }
    }
}

/// The number rounded once to the nearest step, halves away from zero.
pub fn rounded<T: Measure>(value: T, unit: T::Unit, step: Step) -> Rounded {
    let (top, bottom) = in_steps(value, unit, step);
    split(nearest(top, bottom), step)
}

/// The number rounded up to the step: for what must not fall short, such as a tail. What is a whole number of steps stays
/// as it is.
pub fn rounded_up<T: Measure>(value: T, unit: T::Unit, step: Step) -> Rounded {
    let (top, bottom) = in_steps(value, unit, step);
    // Half a step further, less the least there is: the nearest step is now the next one up.
    split(nearest(2 * top + bottom - 1, 2 * bottom), step)
}

/// The number alone. Noughts at the end are not written.
pub fn print<T: Measure>(value: T, unit: T::Unit, step: Step) -> String {
    rounded(value, unit, step).to_string()
}

/// The number with its unit behind it, such as `7 1/2 in`.
pub fn with_unit<T: Measure>(value: T, unit: T::Unit, step: Step) -> String {
    format!("{} {}", rounded(value, unit, step), T::symbol(unit))
}

/// Whether a quantity is so small that it is written as nought.
pub fn is_nought<T: Measure>(value: T, unit: T::Unit, step: Step) -> bool {
    let rounded = rounded(value, unit, step);
    rounded.whole == 0 && rounded.rest == Rest::Nothing
}

/// The number with its unit behind it, rounded up to the step.
///
/// ```
/// use loopwright::units::print::{Step, up};
/// use loopwright::units::{Length, LengthUnit};
///
/// assert_eq!(up(Length::from_mm(3_130), LengthUnit::M, Step::Tenth), "3.2 m");
/// assert_eq!(up(Length::from_mm(3_200), LengthUnit::M, Step::Tenth), "3.2 m");
/// ```
pub fn up<T: Measure>(value: T, unit: T::Unit, step: Step) -> String {
    format!("{} {}", rounded_up(value, unit, step), T::symbol(unit))
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
    rounded(value, unit, step) == rounded(value, unit, finer)
}

/// A count as it is spoken of, to the quarter.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Quarters {
    /// The nearest quarter.
    pub number: Rounded,
    /// Whether that is all of it, so that nothing was rounded away.
    pub is_exact: bool,
}

/// The nearest quarter to `over / under`: 62 1/2 stitches in three spots are a mean of 20 3/4, and not quite. It holds to a
/// quarter of the largest number there is.
///
/// ```
/// use loopwright::units::print::quarters;
///
/// let mean = quarters(125, 6);
/// assert_eq!((mean.number.to_string().as_str(), mean.is_exact), ("20 3/4", false));
/// assert!(quarters(41, 2).is_exact);
/// ```
pub fn quarters(over: u64, under: u64) -> Quarters {
    let (step, bottom) = (Step::Quarters, i128::from(under.max(1)));
    let top = i128::from(over) * i128::from(step.parts());
    Quarters {
        number: split(nearest(top, bottom), step),
        is_exact: top % bottom == 0,
    }
}

/// How many steps a quantity is, as a fraction.
fn in_steps<T: Measure>(value: T, unit: T::Unit, step: Step) -> (i128, i128) {
    let top = i128::from(value.base()) * i128::from(step.parts());
    (top, i128::from(T::per_unit(unit)))
}

/// So many steps, as whole units and the rest.
fn split(steps: i128, step: Step) -> Rounded {
    let parts = u64::from(step.parts());
    // A step is never smaller than what is counted, so that this fits.
    let many = u64::try_from(steps.unsigned_abs()).unwrap_or(u64::MAX);
    let (whole, part) = (many / parts, many % parts);
    let rest = match (part, step.decimals()) {
        (0, _) => Rest::Nothing,
        (part, Some(places)) => decimals(part * 10_u64.pow(places as u32) / parts, places),
        (part, None) => {
            let shared = common(part, parts);
            Rest::Fraction {
                top: part / shared,
                bottom: parts / shared,
            }
        }
    };
    Rounded {
        negative: steps < 0,
        whole,
        rest,
    }
}

/// Decimals without the noughts at their end.
const fn decimals(mut digits: u64, mut places: usize) -> Rest {
    while digits.is_multiple_of(10) && places > 1 {
        digits /= 10;
        places -= 1;
    }
    Rest::Decimals { digits, places }
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
    fn nought_is_what_is_written_so() {
        for step in Step::ALL {
            for nm in [0, 49_999, 500_000, 1_587_499, 1_587_500, 12_700_000, -499_999, -500_000] {
                let length = Length::from_nm(nm);
                for unit in [LengthUnit::Cm, LengthUnit::Inch] {
                    let is_nought = is_nought(length, unit, step);
                    assert_eq!(is_nought, print(length, unit, step) == "0", "{nm} {unit:?} {step:?}");
                }
            }
        }
    }

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

    #[test]
    fn counts_go_to_the_nearest_quarter_and_say_whether_they_were_there() {
        let said = |over, under| {
            let found = quarters(over, under);
            (found.number.to_string(), found.is_exact)
        };
        assert_eq!(said(20_833, 1_000), ("20 3/4".into(), false));
        assert_eq!(said(20_875, 1_000), ("21".into(), false));
        assert_eq!(said(20_750, 1_000), ("20 3/4".into(), true));
        assert_eq!(said(100, 1_000), ("0".into(), false));
        assert_eq!(said(7, 0), ("7".into(), true));
        let most = u64::MAX / 4;
        assert_eq!(said(most, 1), (most.to_string(), true));
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

//! Needles: "The pattern says US 7. Which needle is that, and what is it called elsewhere?"
//!
//! A needle is known by its millimetres; numbers are looked up in a [table](crate::tables::needle), and where a system
//! has no equal the nearest is said, with how far off it is. The right hole of a needle gauge is the smallest that the
//! shaft passes wholly: the nearest one may be too small. Common practice, no source; how sure each number is stands
//! beside it.
//!
//! ```
//! use loopwright::needles::{Question, Size, answer};
//! use loopwright::tables::needle::{Number, System};
//! use loopwright::units::Length;
//!
//! let needles = answer(&Question { size: Size::Japanese(Number::whole(5)) }).unwrap().needles;
//! assert_eq!(needles[0].across, Length::from_nm(3_600_000));
//! // The nearest US number is 4, a needle of 3.5 mm; but the hole of 3.5 mm stops it.
//! let us = needles[0].named.iter().find(|named| named.system == System::Us).unwrap();
//! assert_eq!((us.number, us.off), (Some(Number::whole(4)), Length::from_nm(-100_000)));
//! assert_eq!(needles[0].hole, Some(Length::from_nm(3_750_000)));
//! ```

mod choices;
mod named;
mod size;

pub use choices::{GivenIn, Name};
pub use named::{Named, Needle};
pub use size::Size;

use crate::problem::Problem;

/// A needle, as it is named.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Question {
    /// What is known of it.
    pub size: Size,
}

/// Which needle it is, and what else it is called.
#[derive(Clone, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Answer {
    /// The needle, or each that it may be, thinnest first: a number can stand for two, and a hole lets several pass.
    pub needles: Vec<Needle>,
}

/// Looks the needle up.
///
/// # Errors
/// Every [`Problem`] has the field [`Name::Size`] and the nearest value that would be right: a thickness within [`NEEDLE`](crate::tail::NEEDLE); for
/// a number that no needle has `NoExact`, with the whole numbers on either side.
pub fn answer(question: &Question) -> Result<Answer, Vec<Problem>> {
    let needles = question.size.needles().map_err(|problem| vec![problem])?;
    Ok(Answer { needles })
}

#[cfg(test)]
mod tests;

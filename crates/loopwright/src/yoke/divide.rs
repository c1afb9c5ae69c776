//! A yoke divided at the underarm: "320 stitches. How many for the front, the back and each sleeve, and how many have body
//! and sleeves then?"
//!
//! Each sleeve takes a fifth of the stitches, or as many as are said; front and back share the others. Where these are odd
//! the back has the stitch that is left, since a back is the wider half and the marker stands there. The stitches cast on
//! at an underarm belong to the body and are picked up again for the sleeve, so that both have them: body and sleeves
//! together have four times as many more than the yoke. A fifth for a sleeve, and the odd stitch at the back: common
//! practice, no source.

use super::{Name, Question};
use crate::bounds::Bounds;
use crate::problem::Problem;

/// A sleeve takes one stitch in so many.
const SLEEVE_PART: u32 = 5;

/// A yoke at the underarm.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Division {
    /// Stitches of the front.
    pub front: u32,
    /// Stitches of the back, which has one more where they do not come out even.
    pub back: u32,
    /// Stitches of each sleeve, before those of the underarm.
    pub sleeve: u32,
    /// Stitches cast on at each underarm.
    pub underarm: u32,
    /// Stitches round the body below the underarm.
    pub body_round: u32,
    /// Stitches round each sleeve below the underarm.
    pub sleeve_round: u32,
}

impl Division {
    /// Fewer stitches cannot be divided in four.
    const LEAST: u32 = 4;

    /// How many stitches a sleeve takes of so many when nothing else is said: a fifth, to the nearest stitch.
    pub const fn usual_sleeve(stitches: u32) -> u32 {
        let fifth = (stitches.saturating_add(SLEEVE_PART / 2)) / SLEEVE_PART;
        if fifth == 0 { 1 } else { fifth }
    }

    pub(super) fn of(question: &Question) -> Result<Option<Self>, Vec<Problem>> {
        let all = question.widest();
        if all < Self::LEAST {
            return Ok(None);
        }
        let sleeve = question.sleeve.unwrap_or(Self::usual_sleeve(all));
        // Front and back need a stitch each.
        if let Some(problem) = Problem::of_count(Name::Sleeve, sleeve, Bounds::new(1, (all - 2) / 2)) {
            return Err(vec![problem]);
        }
        let body = all - 2 * sleeve;
        let front = body / 2;
        Ok(Some(Self {
            front,
            back: body - front,
            sleeve,
            underarm: question.underarm,
            body_round: body + 2 * question.underarm,
            sleeve_round: sleeve + question.underarm,
        }))
    }

    /// Whether the back has the stitch that could not be shared.
    pub const fn has_odd_stitch(&self) -> bool {
        self.back > self.front
    }
}

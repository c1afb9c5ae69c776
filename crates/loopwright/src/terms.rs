//! Words of the trade that several tools share: sides, repeats, ranges, round or flat; and where a pattern's text stays.

use crate::bounds::Bounds;
use crate::units::Length;

/// The side of the fabric that faces the knitter.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum Side {
    /// The right side: RS.
    Right,
    /// The wrong side: WS.
    Wrong,
}

crate::choice!(Side starts Right { Right = "right", Wrong = "wrong" });

/// The hand that the new stitches come to: a right-handed knitter knits from the left needle to the right one.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum Hand {
    /// As instructions are written.
    Right,
    /// In the mirror: [`crate::row::Row::left_handed`].
    Left,
}

crate::choice!(Hand starts Right { Right = "right", Left = "left" });

/// In the round or flat, where nothing else has to be said about it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum Working {
    /// In the round.
    Round,
    /// Back and forth.
    Flat,
}

crate::choice!(Working starts Round { Round = "round", Flat = "flat" });

/// Where the text of a pattern stays, which is hers alone.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Keep {
    /// On the page only: it is gone when the page is closed.
    OnPage,
    /// On the device as well.
    OnDevice,
}

crate::choice!(Keep starts OnPage { OnPage = "page", OnDevice = "device" });

/// Stitches of one repeat.
pub const MULTIPLE: Bounds<u32> = Bounds::new(1, 1_000);

/// Stitches beside the repeats.
pub const PLUS: Bounds<u32> = Bounds::new(0, 1_000);

/// `multiple of 8 plus 3`. At least one whole repeat is cast on.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Multiple {
    /// Stitches of one repeat, within [`MULTIPLE`]; 1 when any count will do.
    pub of: u32,
    /// Stitches beside the repeats, within [`PLUS`], that balance the two edges of a flat piece. Kept in the question
    /// but not counted in the round, so that it is back when the knitting is flat again.
    pub plus: u32,
}

impl Multiple {
    /// Any count will do.
    pub const ANY: Self = Self { of: 1, plus: 0 };
}

/// The least and the most that a length may be, both possible.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Range {
    /// The least.
    pub least: Length,
    /// The most.
    pub most: Length,
}

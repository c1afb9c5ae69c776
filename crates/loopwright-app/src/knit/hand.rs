//! Which way round she knits. A left-handed knitter works from left to right: the stitches follow each other as they are
//! written, and what leans to the right in the other hands leans to the left in hers, so that the pairs change places.
//! Counts stay.

use crate::desk::Desk;
use crate::form::SETTINGS;
use crate::words::{Worded, knit as words};
use loopwright::choice::{Choice, Key};

/// The hand that leads.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Hand {
    /// The right one: patterns are written for it.
    Right,
    /// The left one.
    Left,
}

loopwright::choice!(Hand starts Right { Right = "right", Left = "left" });

impl Worded for Hand {
    fn words(self) -> &'static str {
        match self {
            Self::Right => words::RIGHT_HANDED,
            Self::Left => words::LEFT_HANDED,
        }
    }
}

impl Hand {
    /// The setting it is stored under.
    pub const SETTING: &'static str = "knit_hand";

    /// The hand that is chosen.
    pub fn chosen(desk: &Desk) -> Self {
        let chosen = desk.text(SETTINGS, Self::SETTING);
        chosen
            .and_then(|typed| Self::from_key(&typed.text))
            .unwrap_or(Self::START)
    }
}

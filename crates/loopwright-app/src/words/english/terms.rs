//! The words of what several tools share: what they let choose, and what they say of it.

use super::Worded;
use super::intl::fill_pattern;
use loopwright::terms::{Keep, Working};

impl Worded for Working {
    fn words(self) -> &'static str {
        match self {
            Self::Round => "in the round",
            Self::Flat => "flat, back and forth",
        }
    }
}

impl Worded for Keep {
    fn words(self) -> &'static str {
        match self {
            Self::OnPage => "only on this page",
            Self::OnDevice => "on this device",
        }
    }
}

/// Stitches beside the repeats that a round does not need.
pub fn plus_dropped(plus: u32) -> String {
    fill_pattern(
        "A round has no edges, so the # {stitch|stitches} beside the repeats {is|are} not cast on.",
        &[plus],
    )
}

//! Whether the page is light or dusk.

use crate::words::{Worded, about as words};

/// The setting it is stored under.
pub const SETTING: &str = "light";

/// How light the page is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Light {
    /// As the device is set.
    System,
    /// Light.
    Day,
    /// Dark, not black.
    Dusk,
}

loopwright::choice!(Light starts System { System = "system", Day = "day", Dusk = "dusk" });

impl Worded for Light {
    fn words(self) -> &'static str {
        match self {
            Self::System => words::LIGHT_SYSTEM,
            Self::Day => words::LIGHT_DAY,
            Self::Dusk => words::LIGHT_DUSK,
        }
    }
}

//! What the page does for her comfort, each with a switch; kept for all projects.

use crate::desk::Desk;
use crate::form::SETTINGS;
use crate::store::Typed;
use crate::words::{Worded, knit as words};

/// What the page does for her comfort.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Comfort {
    /// The screen stays awake.
    Awake,
    /// A short buzz at each tap.
    Buzz,
    /// A word about resting the hands.
    Rest,
}

loopwright::keys!(Comfort { Awake = "knit_awake", Buzz = "knit_buzz", Rest = "knit_rest" });

impl Worded for Comfort {
    fn words(self) -> &'static str {
        match self {
            Self::Awake => words::STAY_AWAKE,
            Self::Buzz => words::BUZZ,
            Self::Rest => words::REST_REMINDER,
        }
    }
}

const ON: &str = "on";
const OFF: &str = "off";

impl Comfort {
    /// Whether it is on as long as nothing was chosen.
    const fn starts_on(self) -> bool {
        match self {
            Self::Awake | Self::Rest => true,
            Self::Buzz => false,
        }
    }

    /// Whether it is switched on.
    pub fn is_on(self, desk: &Desk) -> bool {
        match desk.text(SETTINGS, self.key()).as_ref().map(|typed| &*typed.text) {
            Some(ON) => true,
            Some(OFF) => false,
            Some(_) | None => self.starts_on(),
        }
    }

    /// Switches it on or off.
    pub fn switch(self, desk: &Desk, on: bool) {
        desk.write(SETTINGS, self.key(), Some(Typed::plain(if on { ON } else { OFF })));
    }
}

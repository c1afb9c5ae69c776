//! The words of what several tools let choose.

use super::Worded;
use loopwright::terms::Working;

impl Worded for Working {
    fn words(self) -> &'static str {
        match self {
            Self::Round => "in the round",
            Self::Flat => "flat, back and forth",
        }
    }
}

//! The words of the gallery.

pub const TITLE: &str = "Gallery";
pub const INTRO: &str =
    "Every tool and part in its named states, with figures made up for the purpose. Nothing typed here is kept.";
pub const PART: &str = "A part alone";
pub const LENGTH: &str = "Width";
pub const COUNT: &str = "Stitches";
pub const ADVICE: &str = "Type a whole number: 7 or 8.";
pub const NO_LENGTH: &str = "7 apples";

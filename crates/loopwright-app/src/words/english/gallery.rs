//! The words of the gallery.

/// The title.
pub const TITLE: &str = "Gallery";
/// What it is for.
pub const INTRO: &str =
    "Every tool and part in its named states, with figures made up for the purpose. Nothing typed here is kept.";
/// The title of a part alone.
pub const PART: &str = "A part alone";
/// The label of the length field.
pub const LENGTH: &str = "Width";
/// The label of the count field.
pub const COUNT: &str = "Stitches";
/// An example of advice.
pub const ADVICE: &str = "Type a whole number: 7 or 8.";
/// What is no length.
pub const NO_LENGTH: &str = "7 apples";

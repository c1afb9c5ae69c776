//! The words of the panel that puts a tool into somebody's own page.

use super::intl::{fill_pattern, fill_pattern_with};

pub const TITLE: &str = "Put this in my page";
pub const INTRO: &str = "A tool can stand in a lesson or a blog, filled in as it is here. Choose how it looks there, then copy a few lines into your page. Your readers can reckon with it; nothing they type is kept or sent anywhere.";

pub const FIELDS: &str = "What stands in it";
pub const NOTHING_FILLED: &str =
    "Nothing is filled in yet. Fill in the tool above, and you can fix a value here or leave it out.";
pub const USE_OPEN: &str = "filled in";
pub const USE_LOCKED: &str = "fixed";
pub const USE_LEFT: &str = "left empty";
pub const USE_NONE: &str = "as it starts";
pub const STARTS: &str = "What the other fields start with";
pub const CURSOR: &str = "The cursor waits in";
pub const NO_CURSOR: &str = "no field";
pub const CURSOR_MAYBE: &str = "Some browsers let no frame take the cursor; there your reader taps the field.";
pub const LOOK: &str = "How it looks";
pub const LIGHT: &str = "It is shown";
pub const UNITS: &str = "It measures in";
pub const ACCENT: &str = "Colour of links and results";
pub const ACCENT_EXAMPLE: &str = "8a3324";
pub const LANGUAGE: &str = "Its language is";
pub const LANGUAGE_OF_COPY: &str = "that of the copy it comes from";
pub const LANGUAGE_THIS: &str = "English";
pub const BUTTONS: &str = "Its buttons are";
pub const BUTTONS_NONE: &str = "none";
pub const BUTTONS_PRINT: &str = "one that prints";
pub const BUTTONS_AFRESH: &str = "one that starts afresh";
pub const BUTTONS_BOTH: &str = "one that prints, one that starts afresh";
pub const WIDTH: &str = "Your column is";
pub const ADDRESS: &str = "Address of the copy it comes from";
pub const ONLY_BY_DAY: &str =
    "This colour is used on light paper. At dusk it could not be read, so there the page keeps its own.";
pub const ONLY_AT_DUSK: &str =
    "This colour is used at dusk. On light paper it could not be read, so there the page keeps its own.";

pub const FRAME: &str = "A frame, for any page";
pub const FRAME_TEXT: &str = "Many blogs take a frame and no script (from memory). A frame cannot grow: it is as high as the tool is in a column of this width, and in a narrower one the tool scrolls inside it.";
pub const ELEMENT: &str = "An element, where scripts are allowed";
pub const ELEMENT_TEXT: &str =
    "It is as high as what is in it and tells your page each answer. Without scripts a link stands in its place.";
pub const COPY: &str = "Copy these lines";
pub const COPIED: &str = "Copied. Put it where your page is written as HTML.";
pub const NOT_COPIED: &str =
    "This browser did not copy it. The lines are selected, so that you can copy them as you copy any text.";
pub const NO_ANSWER: &str =
    "The clipboard does not answer. The lines are selected, so that you can copy them as you copy any text.";

pub const PREVIEW: &str = "How it will look";
pub const PREVIEW_NONE: &str =
    "A copy that was opened from a disk cannot show itself in a frame. Open it from a web address to see it here.";

pub const ADDRESS_EXAMPLE: &str = "https://example.org/loopwright/";
pub const NO_LINES: &str = "The lines stand here once there is a web address.";
pub const ADDRESS_DISK: &str = "This copy was opened from a disk, where nobody else can reach it. Type the web address of a copy, such as https://example.org/loopwright/.";
pub const ADDRESS_NONE: &str =
    "That is no web address. One begins with https:// and names a folder, such as https://example.org/loopwright/.";
pub const ADDRESS_NEAR: &str = "Only this computer can open that address. Your readers need one on the internet.";
pub const ADDRESS_OPEN: &str =
    "A page that is read by https shows no frame that comes by http. Write https:// if the copy can be had that way.";

/// A width to choose.
pub fn pixels(width: u32) -> String {
    fill_pattern("# pixels wide", &[width])
}

/// A field of one member of a group that is there several times, counted from one.
pub fn of_member(label: &str, number: u32) -> String {
    fill_pattern_with("@ (#)", &[number], &[label])
}

/// The link that stands where no script runs.
pub fn fallback(title: &str) -> String {
    fill_pattern_with("@ in Loopwright", &[], &[title])
}

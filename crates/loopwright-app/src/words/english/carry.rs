//! The words for taking a project along: as a file, as a link, and as a picture of the link.

use super::intl::fill_pattern_with;

pub const TITLE: &str = "Take this project along";
pub const TEXT: &str = "A file holds the whole project, and can be read by eye. A link holds it too: whoever opens it looks at the project first, and keeps it only if she wants to. Nothing is sent anywhere until you send it.";
pub const SAVE: &str = "Save as a file";
pub const COPY: &str = "Copy a link";
pub const OPEN: &str = "Open a file";
pub const OPEN_TEXT: &str = "You see what is in it before anything is kept.";

pub const SCAN: &str = "Scan it";
pub const SCAN_TOOL: &str = "Whoever points a camera at this has the tool as it stands here, with these numbers in it.";
pub const SCAN_PROJECT: &str = "Whoever points a camera at this can look at the project, and keep it.";
pub const TOOL_PICTURE: &str = "QR code of the link to this tool with its numbers. The same link is written below.";
pub const PROJECT_PICTURE: &str = "QR code of the link to this project. The same link is written below.";
pub const ON_THIS_DISK: &str = "This page is a file on this computer, so its link opens nowhere else. Where Loopwright is opened from the web, the picture appears here.";
pub const TOOL_TOO_LONG: &str =
    "With all that is typed here the link is too long for a picture that a phone could read. Copy the link instead.";
pub const PROJECT_TOO_LONG: &str =
    "This project is too long for a picture that a phone could read. Save it as a file instead.";
pub const NO_LINK: &str = "This project is too long for a link. Save it as a file instead.";

/// The file was handed over.
pub fn saved(name: &str) -> String {
    fill_pattern_with("@ is among your downloads.", &[], &[name])
}

pub const NOT_SAVED: &str = "The browser did not make the file. Try again, or use another browser.";

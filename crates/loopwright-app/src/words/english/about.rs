//! The words of the page about storage, copies and care.

use super::intl::fill_pattern;

pub const TITLE: &str = "About Loopwright";
pub const WHAT: &str = "Loopwright is a set of knitting sums for a teacher and her students: from a written pattern, a yarn and a body to a garment that fits. It is free, and it is made of numbers you can check: each answer shows the sum, and says where the rule comes from.";
pub const STORED: &str = "What is stored";
pub const STORED_TEXT: &str = "What you type, as you typed it, in this browser on this device. Nothing is sent anywhere: after the page has loaded it makes no request at all. There is no account, no counting of visitors and no cookie.";
pub const COPY: &str = "Keep a copy";
pub const COPY_TEXT: &str =
    "A copy is one small file with everything you typed. Bring it back here or on another device.";
pub const SAVE: &str = "Save a copy";
pub const BRING: &str = "Bring back a copy";
pub const LIGHT: &str = "Light";
pub const LIGHT_LABEL: &str = "The page is";
pub const LIGHT_SYSTEM: &str = "as this device is set";
pub const LIGHT_DAY: &str = "light";
pub const LIGHT_DUSK: &str = "dusk";
pub const CARE: &str = "Take care";
/// The usual cautions: common practice, no source.
pub const CARES: [&str; 5] = [
    "Rest your hands. Put the needles down every twenty to thirty minutes, stretch, and stop if anything tingles or hurts; if it goes on hurting, ask a doctor or a physiotherapist.",
    "Needles are sharp and easily sat on. Keep them away from small children and animals, and put points on them when you stop.",
    "Wool, lanolin and dyes can irritate skin. If it itches or reddens, stop and try another fibre; with a known allergy, ask before you wear it.",
    "The label on the yarn comes first for washing and drying. Wash and dry your swatch as you will the garment.",
    "A number is not a garment. The swatch decides.",
];
pub const CARES_SOURCE: &str = "Common practice, no source. The yarn's label and a professional come first.";
pub const OFFLINE: &str = "Without a network";
pub const OFFLINE_READY: &str = "Everything is on this device: the page opens and computes without a network.";
pub const OFFLINE_NOT: &str = "The page computes here in your browser. Opened once from its web address it also opens without a network; put it on your home screen to keep it at hand.";
pub const GALLERY: &str = "See every tool in its named states (for those who build it)";

/// After a copy was brought back.
pub fn brought_back(count: usize) -> String {
    let count = u32::try_from(count).unwrap_or(u32::MAX);
    match count {
        0 => "The copy holds nothing that is not here already.".into(),
        _ => fill_pattern(
            "# {field|fields} brought back. What lay there before can be put back on each tool.",
            &[count],
        ),
    }
}

pub const COPY_NOT_MADE: &str = "The browser did not make the file. Try again, or use another browser.";
pub const COPY_UNREADABLE: &str = "That file could not be read. Choose the file again.";
pub const COPY_TOO_LONG: &str = "That file is too long to be a copy from here. Choose loopwright-backup.json.";
pub const COPY_NOT_OURS: &str = "That is not a copy from here, or it is damaged. Choose loopwright-backup.json.";
pub const COPY_NEWER: &str = "That copy was made by a later version. Take the new version of this page first.";

//! The words of the page about storage, copies and care.

use super::intl::{fill_pattern, fill_pattern_with};

pub const TITLE: &str = "About Loopwright";
pub const WHAT: &str = "Loopwright does the sums of knitting, for a teacher and her students: it takes you from a pattern, a yarn and a body to something that fits. It is free, and you can check every number: each answer shows its sum, and says where the rule comes from or that it has no source.";
pub const STORED: &str = "What is stored";
pub const STORED_TEXT: &str = "What you type is kept just as you typed it, in this browser on this device. None of it is sent anywhere: the page asks its own address for its files and for a newer version, and nothing else. You need no account, the page counts no visits, and there are no cookies.";
pub const COPY: &str = "Keep a copy";
pub const COPY_TEXT: &str =
    "A copy is one small file with everything you typed in it. You can bring it back here or on another device.";
pub const SAVE: &str = "Save a copy";
pub const BRING: &str = "Bring back a copy";
pub const MEASURES: &str = "Units";
pub const MEASURES_LABEL: &str = "I measure in";
pub const MEASURES_METRIC: &str = "centimetres";
pub const MEASURES_INCHES: &str = "inches, with US needles";
pub const MEASURES_TEXT: &str = "Inches go with counts over 4 in, yards, ounces and US needle sizes; centimetres with counts over 10 cm, metres, grams and needles in millimetres. What you typed already stays as it is, and beside each field you can still choose another unit.";
pub const LIGHT: &str = "Light or dark";
pub const LIGHT_LABEL: &str = "The page is";
pub const LIGHT_SYSTEM: &str = "as this device is set";
pub const LIGHT_DAY: &str = "light";
pub const LIGHT_DUSK: &str = "dusk";
pub const CARE: &str = "Take care";
/// The usual cautions: common practice, no source.
pub const CARES: [&str; 5] = [
    "Rest your hands. Put the needles down every twenty to thirty minutes, stretch, and stop if anything tingles or hurts; if it goes on hurting, ask a doctor or a physiotherapist.",
    "Needles are sharp and easily sat on. Keep them away from small children and animals, and put something on the points when you stop.",
    "Wool, lanolin and dyes can irritate skin. If yours itches or turns red, stop and try another fibre; if you know you are allergic, ask a doctor before you wear it.",
    "For washing and drying, go by the label on the yarn. Wash and dry your swatch the way you will treat the garment.",
    "A number is not a garment. The swatch decides.",
];
pub const CARES_SOURCE: &str = "Common practice, no source. The yarn's label and a professional come first.";
pub const OFFLINE: &str = "Without the internet";
pub const OFFLINE_READY: &str =
    "Everything is on this device now: the page opens and does its sums without the internet.";
pub const OFFLINE_NOT: &str = "The sums are done here in your browser. Once you have opened the page from its web address, it opens without the internet too. Put it on your home screen to have it at hand.";
pub const OFFLINE_IN_FILE: &str =
    "Everything is in this one file: it opens and does its sums without the internet, and asks for nothing.";
pub const STORED_IN_FILE: &str = "This page is one file, and it asks nobody for anything. What you type is kept by the browser you opened it in, on this computer, and not in the file: elsewhere the file opens empty, and the browser may clear it one day. So save a copy before you close it, and bring it back there.";
pub const WHOLE: &str = "Take the workbox along";
pub const WHOLE_TEXT: &str = "For a place without the internet the whole workbox fits into one file, with every tool, for a stick or a mail. On a computer you open it in a browser of today. What you have typed stays here; to have that there too, save a copy as well and bring it back there.";
pub const WHOLE_ON_TABLETS: &str = "A tablet or a phone often shows such a file and does no sums in it (from memory). There, open this page from its web address once, before you go, and put it on the home screen.";
pub const WHOLE_ON_TABLETS_IN_FILE: &str = "A tablet or a phone often shows such a file and does no sums in it (from memory). There, open the site that this file was saved from instead, once, before you go, and put it on the home screen.";
pub const SAVE_WHOLE: &str = "Save the whole workbox as one file";
pub const GATHERING: &str = "Gathering everything…";
pub const WHOLE_NOT_MADE: &str = "The file could not be made. Open the page from its https address once more, with the internet, and try again; or use another browser.";
pub const WHOLE_NOT_MADE_IN_FILE: &str =
    "The copy could not be made. Copy the file that you opened, where it lies: it is the whole workbox.";

/// After the page was handed over as one file.
pub fn whole_saved(name: &str) -> String {
    fill_pattern_with("@ is among your downloads.", &[], &[name])
}

pub const GALLERY: &str = "For those who build this page: every tool in all its states";

/// After a copy was brought back: so many fields hold what it says, and so many that are not in it were taken away.
pub fn brought_back(set: u32, taken_away: u32) -> String {
    match (set, taken_away) {
        (0, 0) => "Everything in that copy is here already.".into(),
        (_, 0) => fill_pattern("# {field|fields} brought back.", &[set]),
        (0, _) => fill_pattern(
            "Nothing new was in that copy. # {field that is|fields that are} not in it {was|were} taken away.",
            &[taken_away],
        ),
        _ => fill_pattern(
            "# {field|fields} brought back. # that {is|are} not in that copy {was|were} taken away.",
            &[set, taken_away],
        ),
    }
}

pub const UNDO_COPY: &str = "Put back what stood here before that copy";

/// After that was undone: so many fields are as they were, and so many stay that she has changed since.
pub fn put_back(put_back: u32, stay: u32) -> String {
    match stay {
        0 => fill_pattern("# {field is|fields are} as before that copy.", &[put_back]),
        _ => fill_pattern(
            "# {field is|fields are} as before that copy. # that you changed since {stays as it is|stay as they are}.",
            &[put_back, stay],
        ),
    }
}

/// Records that no version of this page wrote that this one knows.
pub fn strange_records(count: usize) -> String {
    let count = u32::try_from(count).unwrap_or(u32::MAX);
    fill_pattern(
        "# {record|records} in the storage of this page {is|are} nothing that this version knows. {It stays|They stay} there untouched.",
        &[count],
    )
}

pub const COPY_NOT_MADE: &str = "The browser did not make the file. Try again, or use another browser.";
pub const COPY_UNREADABLE: &str = "That file could not be read. Choose the file again.";
pub const COPY_TOO_LONG: &str = "That file is too long to be a copy from here. Choose loopwright-backup.json.";
pub const COPY_NOT_OURS: &str = "That is not a copy from here, or it is damaged. Choose loopwright-backup.json.";
pub const COPY_NEWER: &str = "That copy comes from a later version. Take the new version of this page first.";

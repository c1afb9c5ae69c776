//! The nearest lines that would come out.

use super::super::intl::{fill_pattern, fill_pattern_with, stitches};
use super::count;
use loopwright::written::{Near, Way};

/// What is other, and how many stitches there are then.
pub fn nearest(near: &Near) -> String {
    let then = stitches(count(near.after));
    match &near.way {
        Way::Repeats(edit) => fill_pattern_with(
            "With # {repeat|repeats} in place of @, and @ then:",
            &[edit.now],
            &[&edit.was.to_string(), &then],
        ),
        Way::Plain(edits) => match edits.first() {
            Some(edit) => fill_pattern_with(
                "With # plain in place of @, and @ then:",
                &[edit.now],
                &[&edit.was.to_string(), &then],
            ),
            None => then,
        },
        Way::Said(edit) => fill_pattern("With the count that there is, #:", &[edit.now]),
        Way::Before(before) => fill_pattern_with(
            "With # {stitch|stitches} before it, it comes out as it is written, and leaves @.",
            &[count(*before)],
            &[&then],
        ),
        Way::Spaced(_) => fill_pattern_with("Or evenly spaced, to @:", &[], &[&then]),
    }
}

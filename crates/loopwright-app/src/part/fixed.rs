//! A field that is locked, inside another page: what stands in it as text, with its unit, and a small lock beside it. It is
//! never left out, since the answer counts with it.

use super::plain::{element_with, path, text};
use crate::words::frame as words;
use yew::prelude::*;

/// The text of a locked field, under the id that its input would have.
pub fn fixed(id: &str, standing: String) -> Html {
    element_with(
        "output",
        &[("id", id), ("class", "fixed")],
        vec![text(standing.into()), lock()],
    )
}

/// A lock, with a name for those who do not see it.
fn lock() -> Html {
    let attributes = [
        ("class", "lock"),
        ("viewBox", "0 0 16 16"),
        ("role", "img"),
        ("aria-label", words::LOCKED),
    ];
    let drawn = vec![path("bow", "M5 7V5a3 3 0 0 1 6 0v2"), path("body", "M3 7h10v7H3Z")];
    element_with("svg", &attributes, drawn)
}

//! Small pictures of lines for the first page.

use crate::part::plain::{self, element_with};
use yew::prelude::*;

/// Lines, each with its class; of no meaning to those who cannot see them.
pub fn sign(class: &str, view: &str, lines: &[(&str, &str)]) -> Html {
    let mut content = Vec::new();
    for (class, line) in lines {
        content.push(plain::path(class, line));
    }
    let attributes = [
        ("class", class),
        ("viewBox", view),
        ("role", "img"),
        ("aria-hidden", "true"),
    ];
    element_with("svg", &attributes, content)
}

//! What a picture is framed in: its size, and its words for those who cannot see it.

use crate::part::plain::{element_with, text};
use yew::prelude::*;

/// A picture so wide and so high. One without words is a sign, which a reader that does not see passes over.
pub fn picture(class: &str, (wide, high): (u32, u32), words: &str, content: Vec<Html>) -> Html {
    let view = format!("0 0 {wide} {high}");
    let seen = match words {
        "" => ("aria-hidden", "true"),
        _ => ("aria-label", words),
    };
    let attributes = [("class", class), ("viewBox", &*view), ("role", "img"), seen];
    element_with("svg", &attributes, content)
}

/// Words with their middle at this place, to the whole unit, which is less than a pixel.
pub fn label((x, y): (f64, f64), words: String) -> Html {
    let [x, y] = [x, y].map(|value| (value.round() as i32).to_string());
    element_with("text", &[("x", &*x), ("y", &y)], vec![text(words.into())])
}

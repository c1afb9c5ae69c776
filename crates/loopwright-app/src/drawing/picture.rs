//! What a picture is framed in: its size, and its words for those who cannot see it.

use crate::part::plain::{element_with, list, text};
use yew::prelude::*;
use yew::virtual_dom::VTag;

/// A picture so wide and so high. One without words is a sign, which a reader that does not see passes over. One that
/// shows something else is another picture: no line of it was a line of the one before.
pub fn picture(class: &str, size: (u32, u32), words: &str, content: Vec<Html>) -> Html {
    let mut picture = moving_picture(class, size, words, content);
    picture.key = Some(words.into());
    picture.into()
}

/// The same, whose lines go from the place they had to the next one, which the styles draw out.
pub fn moving_picture(class: &str, (wide, high): (u32, u32), words: &str, content: Vec<Html>) -> VTag {
    let view = format!("0 0 {wide} {high}");
    let seen = match words {
        "" => ("aria-hidden", "true"),
        _ => ("aria-label", words),
    };
    let attributes = [("class", class), ("viewBox", &*view), ("role", "img"), seen];
    let mut picture = VTag::new("svg");
    for (name, value) in attributes {
        picture.add_attribute(name, value.to_owned());
    }
    if let Some(inside) = picture.children_mut() {
        *inside = list(content);
    }
    picture
}

/// Words with their middle at this place, to the whole unit, which is less than a pixel.
pub fn label((x, y): (f64, f64), words: String) -> Html {
    let [x, y] = [x, y].map(|value| (value.round() as i32).to_string());
    element_with("text", &[("x", &*x), ("y", &y)], vec![text(words.into())])
}

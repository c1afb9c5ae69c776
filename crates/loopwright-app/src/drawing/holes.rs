//! The holes of a needle gauge, and a shaft in one of them: the small picture of needle sizes.

use super::path::tenths;
use super::picture::picture;
use crate::part::plain::element_with;
use yew::prelude::*;

/// How high the middle of every hole lies.
const MIDDLE: f64 = 52.0;

/// Where each hole has its middle, and its radius.
const HOLES: [(f64, f64); 3] = [(32.0, 14.0), (96.0, 22.0), (176.0, 30.0)];

/// The shaft, in the second hole.
const SHAFT: (f64, f64) = (96.0, 19.0);

/// Three holes, and a shaft that passes the middle one.
pub fn sign() -> Html {
    let holes = HOLES.map(|hole| circle("marker", hole));
    let shaft = circle("marks fewer", SHAFT);
    picture("", (224, 104), "", holes.into_iter().chain([shaft]).collect())
}

fn circle(class: &'static str, (x, radius): (f64, f64)) -> Html {
    let attributes = [
        ("class", class),
        ("cx", &*tenths(x)),
        ("cy", &*tenths(MIDDLE)),
        ("r", &*tenths(radius)),
    ];
    element_with("circle", &attributes, Vec::new())
}

//! A tail as a line that runs out, to scale beside the length of an arm: the stitches solid, the reserve dashed and the
//! end thin, never another colour only.

use super::path::Path;
use super::picture::picture;
use crate::part::plain;
use loopwright::units::Length;
use yew::prelude::*;

const LEFT: f64 = 8.0;
const WIDE: f64 = 344.0;
/// Arms closer than this are not drawn.
const LEAST_ARM: f64 = 8.0;

/// How each part is drawn.
const CLASSES: [&str; 3] = ["yarn", "yarn perhaps", "yarn end"];

/// The line, by where its parts end; the arm, and what it shows for those who cannot see it. A sign has no words.
pub fn line(ends: [Length; 3], arm: Length, words: &str) -> Html {
    let nm = |length: Length| length.to_nm() as f64;
    let scale = WIDE / nm(ends[2].max(arm)).max(1.0);
    let mut arms = Path::default();
    let pitch = scale * nm(arm);
    let mut x = LEFT + pitch;
    while pitch >= LEAST_ARM && x <= LEFT + WIDE + 0.5 {
        arms.line(&[(x, 4.0), (x, 36.0)]);
        x += pitch;
    }
    let mut content = vec![plain::path("arms", &arms.written())];
    let mut from = LEFT;
    for (class, end) in CLASSES.iter().zip(ends) {
        let to = LEFT + scale * nm(end);
        let mut part = Path::default();
        part.line(&[(from, 20.0), (to, 20.0)]);
        content.push(plain::path(class, &part.written()));
        from = to;
    }
    picture("comb", (360, 40), words, content)
}

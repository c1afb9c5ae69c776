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

/// A tail by where its parts end, measured from its beginning.
pub struct Tail {
    /// The end of what the stitches need.
    pub stitches: Length,
    /// The end of that and the reserve.
    pub with_reserve: Length,
    /// The end of the tail, behind the end to weave in.
    pub with_end: Length,
}

/// The line, the arms beside it, and what it shows for those who cannot see it. A sign has no words.
pub fn line(tail: &Tail, arm: Length, words: &str) -> Html {
    let nm = |length: Length| length.to_nm() as f64;
    let scale = WIDE / nm(tail.with_end.max(arm)).max(1.0);
    let mut arms = Path::default();
    let pitch = scale * nm(arm);
    let mut x = LEFT + pitch;
    while pitch >= LEAST_ARM && x <= LEFT + WIDE + 0.5 {
        arms.line(&[(x, 4.0), (x, 36.0)]);
        x += pitch;
    }
    let mut content = vec![plain::path("arms", &arms.written())];
    let parts = [
        ("yarn", tail.stitches),
        ("yarn perhaps", tail.with_reserve),
        ("yarn end", tail.with_end),
    ];
    let mut from = LEFT;
    for (class, end) in parts {
        let to = LEFT + scale * nm(end);
        let mut part = Path::default();
        part.line(&[(from, 20.0), (to, 20.0)]);
        content.push(plain::path(class, &part.written()));
        from = to;
    }
    picture("comb", (360, 40), words, content)
}

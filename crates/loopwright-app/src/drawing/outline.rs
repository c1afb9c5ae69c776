//! Pieces as outlines, to scale: what is there is whole, what was wanted or is measured is broken, and a band along an
//! edge is how far that edge is known.

use super::path::Path;
use crate::part::plain::{self, element};
use loopwright::units::{Length, LengthUnit};
use yew::prelude::*;

/// A width and a height.
pub type Size = [Length; 2];

/// The most room there is, and the room round it.
const WIDE: f64 = 336.0;
const HIGH: f64 = 216.0;
const ROOM: f64 = 8.0;

/// A rectangle: how it is drawn, its lower left corner, its width and its height.
type Rect = (&'static str, [f64; 4]);

fn mm(length: Length) -> f64 {
    length.in_unit(LengthUnit::Mm)
}

/// The piece that it would be and the one that was wanted, from one corner; the least and the most that its width and its
/// height may be; and what it shows for those who cannot see it. A sign has no words.
pub fn piece(would_be: Size, wanted: Size, known: [Size; 2], words: &str) -> Html {
    let [wide, high] = would_be.map(mm);
    let [across, upwards] = known.map(|ends| ends.map(mm));
    let rects = [
        ("perhaps", [across[0], 0.0, across[1] - across[0], high]),
        ("perhaps", [0.0, upwards[0], wide, upwards[1] - upwards[0]]),
        ("you", [0.0, 0.0, wide, high]),
        ("wanted", [0.0, 0.0, mm(wanted[0]), mm(wanted[1])]),
    ];
    outlines(&rects, words)
}

/// A swatch with its middle, which is measured.
pub fn swatch(all: Size, span: Length, words: &str) -> Html {
    let ([wide, high], span) = (all.map(mm), mm(span));
    let rects = [
        ("you", [0.0, 0.0, wide, high]),
        ("wanted", [(wide - span) / 2.0, (high - span) / 2.0, span, span]),
    ];
    outlines(&rects, words)
}

#[inline(never)]
fn outlines(rects: &[Rect], words: &str) -> Html {
    let (mut wide, mut high) = (1.0_f64, 1.0_f64);
    for (_, [x, y, w, h]) in rects {
        wide = wide.max(x + w);
        high = high.max(y + h);
    }
    let scale = (WIDE / wide).min(HIGH / high);
    let (left, low) = (180.0 - scale * wide / 2.0, ROOM + scale * high);
    let mut content = Vec::new();
    for (class, [x, y, w, h]) in rects {
        let (x, y, w, h) = (left + scale * x, low - scale * y, scale * w, scale * h);
        let mut outline = Path::default();
        outline.line(&[(x, y), (x + w, y), (x + w, y - h), (x, y - h)]);
        outline.close();
        content.push(plain::path(class, &outline.written()));
    }
    let seen = if words.is_empty() {
        ("aria-hidden", "true")
    } else {
        ("aria-label", words)
    };
    let view = ["0 0 360 ", &((low + ROOM).round() as i32).to_string()].concat();
    let attributes = [("class", "girths"), ("viewBox", &*view), ("role", "img"), seen];
    element("svg", &attributes, content)
}

//! A part of the garment to scale: its shapes on one another, cast-on at the top as it is knitted, each with its stitches and
//! width where it begins and ends, and its rows and length at its side. All parts of a garment share one scale.

use super::path::Path;
use super::picture::{label, picture};
use crate::part::plain::path;
use yew::prelude::*;

/// One shape as it is drawn: widths and height in the same unit, and what is written beside each.
pub struct Drawn {
    /// How wide it begins.
    pub first: f64,
    /// How wide it ends.
    pub last: f64,
    /// How high it is.
    pub height: f64,
    /// What stands above its beginning; nothing where it goes on as the one before ended.
    pub above: String,
    /// What stands below its end.
    pub below: String,
    /// What stands at its side: its rows, and below them its length.
    pub beside: [String; 2],
}

/// The width of a picture and of what is widest in it, and where the labels of rows begin.
const WIDE: u32 = 360;
const WIDEST: f64 = 224.0;
const MIDDLE: f64 = 118.0;
const BESIDE: f64 = 296.0;
/// Room for a line of words above and below a shape.
const LINE: f64 = 26.0;
/// A shape is at least so high that its words have room beside it.
const LEAST: f64 = 28.0;

/// The shapes of a part, where the widest of the whole garment is `widest`.
pub fn schematic(shapes: &[Drawn], widest: f64, words: &str) -> Html {
    let scale = WIDEST / widest.max(1.0);
    let (mut outline, mut labels) = (Path::default(), Vec::new());
    let mut top = LINE;
    for shape in shapes {
        if !shape.above.is_empty() {
            labels.push(label((MIDDLE, top - 8.0), shape.above.clone()));
        }
        let foot = top + (shape.height * scale).max(LEAST);
        let [first, last] = [shape.first, shape.last].map(|wide| wide * scale / 2.0);
        outline.line(&[
            (MIDDLE - first, top),
            (MIDDLE + first, top),
            (MIDDLE + last, foot),
            (MIDDLE - last, foot),
        ]);
        outline.close();
        let middle = (top + foot) / 2.0;
        let [rows, length] = shape.beside.clone();
        labels.push(label((BESIDE, middle - 4.0), rows));
        labels.push(label((BESIDE, middle + 15.0), length));
        labels.push(label((MIDDLE, foot + 20.0), shape.below.clone()));
        top = foot + LINE + 4.0;
    }
    let mut content = vec![path("outline", &outline.written())];
    content.extend(labels);
    let high = top.round().max(1.0) as u32;
    picture("schematic", (WIDE, high), words, content)
}

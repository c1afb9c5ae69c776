//! Pieces as outlines, to scale: what is there is whole, what was wanted or is measured is broken, and a band along an
//! edge is how far that edge is known.

use super::path::Path;
use super::picture::picture;
use crate::part::plain;
use loopwright::terms::Range;
use loopwright::units::{Length, LengthUnit};
use yew::prelude::*;

/// How large something is.
#[derive(Clone, Copy, Debug)]
pub struct Size {
    /// Across.
    pub width: Length,
    /// Upwards.
    pub height: Length,
}

/// A piece beside the one that was wanted.
pub struct Piece {
    /// As it would be.
    pub would_be: Size,
    /// As it was wanted.
    pub wanted: Size,
    /// How far its width is known.
    pub known_width: Option<Range>,
    /// How far its height is known.
    pub known_height: Option<Range>,
}

/// The most room there is, and the room round it.
const WIDE: f64 = 336.0;
const HIGH: f64 = 216.0;
const ROOM: f64 = 8.0;

/// How wide the whole picture is.
const FRAME: u32 = 360;

/// A rectangle in millimetres, from its lower left corner, and the class it is drawn with.
struct Rectangle {
    class: &'static str,
    x: f64,
    y: f64,
    wide: f64,
    high: f64,
}

impl Rectangle {
    fn of(class: &'static str, size: Size) -> Self {
        Self {
            class,
            x: 0.0,
            y: 0.0,
            wide: mm(size.width),
            high: mm(size.height),
        }
    }
}

fn mm(length: Length) -> f64 {
    length.in_unit(LengthUnit::Mm)
}

/// The piece that it would be and the one that was wanted, from one corner, and what the picture shows for those who
/// cannot see it. A sign has no words.
pub fn piece(piece: &Piece, words: &str) -> Html {
    let is = Rectangle::of("you", piece.would_be);
    let across = piece.known_width.map(|known| Rectangle {
        class: "perhaps",
        x: mm(known.least),
        y: 0.0,
        wide: mm(known.most) - mm(known.least),
        high: is.high,
    });
    let upwards = piece.known_height.map(|known| Rectangle {
        class: "perhaps",
        x: 0.0,
        y: mm(known.least),
        wide: is.wide,
        high: mm(known.most) - mm(known.least),
    });
    let wanted = Rectangle::of("wanted", piece.wanted);
    let outlined = [is, wanted].into_iter();
    let all: Vec<Rectangle> = across.into_iter().chain(upwards).chain(outlined).collect();
    outlines(&all, words)
}

/// A swatch with its middle, which is measured.
pub fn swatch(swatch: Size, span: Length, words: &str) -> Html {
    let whole = Rectangle::of("you", swatch);
    let side = mm(span);
    let middle = Rectangle {
        class: "wanted",
        x: (whole.wide - side) / 2.0,
        y: (whole.high - side) / 2.0,
        wide: side,
        high: side,
    };
    outlines(&[whole, middle], words)
}

fn outlines(rectangles: &[Rectangle], words: &str) -> Html {
    let wide = rectangles.iter().map(|it| it.x + it.wide).fold(1.0, f64::max);
    let high = rectangles.iter().map(|it| it.y + it.high).fold(1.0, f64::max);
    let scale = (WIDE / wide).min(HIGH / high);
    let (left, low) = (f64::from(FRAME) / 2.0 - scale * wide / 2.0, ROOM + scale * high);
    let draw = |it: &Rectangle| {
        let (x, y) = (left + scale * it.x, low - scale * it.y);
        let (right, top) = (x + scale * it.wide, y - scale * it.high);
        let mut outline = Path::default();
        outline.line(&[(x, y), (right, y), (right, top), (x, top)]);
        outline.close();
        plain::path(it.class, &outline.written())
    };
    let frame = (FRAME, (low + ROOM).round() as u32);
    picture("girths", frame, words, rectangles.iter().map(draw).collect())
}

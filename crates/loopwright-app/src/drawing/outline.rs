//! Pieces as outlines, to scale: what is there is whole, what was wanted or is measured is broken, and a band along an
//! edge is how far that edge is known. The figures of the answer stand in the piece and below it.

use super::path::Path;
use super::picture::{label, picture};
use crate::part::plain::{self, element};
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

/// Room for figures below the pieces, also where they are set twice as large.
const FIGURES: f64 = 34.0;
/// By how much the foot of figures lies below the middle of what they stand in.
const FOOT: f64 = 5.0;

/// The figures of a picture; a sign has none.
#[derive(Default)]
pub struct Figures {
    /// In the middle of the piece, or of what is measured of it.
    pub inside: String,
    /// Below all of it.
    pub below: String,
    /// What the picture shows for those who cannot see it.
    pub words: String,
}

/// How wide the whole picture is.
const FRAME: u32 = 360;

/// A rectangle in millimetres, from its lower left corner, and the class it is drawn with.
#[derive(Clone, Copy)]
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

impl Piece {
    /// How far each edge is known that is not known exactly.
    fn bands(&self) -> Vec<Rectangle> {
        let is = Rectangle::of("perhaps", self.would_be);
        let across = self.known_width.map(|known| Rectangle {
            x: mm(known.least),
            wide: mm(known.most) - mm(known.least),
            ..is
        });
        let upwards = self.known_height.map(|known| Rectangle {
            y: mm(known.least),
            high: mm(known.most) - mm(known.least),
            ..is
        });
        across.into_iter().chain(upwards).collect()
    }

    /// How many of these bands are wide enough to be seen.
    pub fn bands_seen(&self) -> usize {
        let all = self.outlines();
        let scale = Scale::of(&all);
        let is_seen = |band: &Rectangle| scale.0 * band.wide.min(band.high) >= SEEN;
        self.bands().iter().filter(|band| is_seen(band)).count()
    }

    fn outlines(&self) -> Vec<Rectangle> {
        let outlined = [
            Rectangle::of("you", self.would_be),
            Rectangle::of("wanted", self.wanted),
        ];
        self.bands().into_iter().chain(outlined).collect()
    }
}

/// The piece that it would be and the one that was wanted, from one corner.
pub fn piece(piece: &Piece, figures: Figures) -> Html {
    let middle = (mm(piece.would_be.width) / 2.0, mm(piece.would_be.height) / 2.0);
    outlines(&piece.outlines(), middle, figures)
}

/// A swatch with its middle, which is measured.
pub fn swatch(swatch: Size, span: Length, figures: Figures) -> Html {
    let whole = Rectangle::of("you", swatch);
    let side = mm(span);
    let middle = Rectangle {
        class: "wanted",
        x: (whole.wide - side) / 2.0,
        y: (whole.high - side) / 2.0,
        wide: side,
        high: side,
    };
    let at = (whole.wide / 2.0, whole.high / 2.0);
    outlines(&[whole, middle], at, figures)
}

/// What is narrower than this is not seen beside a line.
const SEEN: f64 = 2.0;

/// So many units of the picture to a millimetre.
#[derive(Clone, Copy)]
struct Scale(f64);

impl Scale {
    /// As large as there is room for.
    fn of(rectangles: &[Rectangle]) -> Self {
        let wide = rectangles.iter().map(|it| it.x + it.wide).fold(1.0, f64::max);
        let high = rectangles.iter().map(|it| it.y + it.high).fold(1.0, f64::max);
        Self((WIDE / wide).min(HIGH / high))
    }
}

fn outlines(rectangles: &[Rectangle], middle: (f64, f64), figures: Figures) -> Html {
    let Scale(scale) = Scale::of(rectangles);
    let wide = rectangles.iter().map(|it| it.x + it.wide).fold(0.0, f64::max);
    let high = rectangles.iter().map(|it| it.y + it.high).fold(0.0, f64::max);
    // With figures the picture has one size for all pieces, so that nothing below it moves as they grow.
    let above = if figures.below.is_empty() {
        0.0
    } else {
        (HIGH - scale * high) / 2.0
    };
    let (left, low) = (f64::from(FRAME) / 2.0 - scale * wide / 2.0, ROOM + above + scale * high);
    let draw = |it: &Rectangle| {
        let (x, y) = (left + scale * it.x, low - scale * it.y);
        let (right, top) = (x + scale * it.wide, y - scale * it.high);
        let mut outline = Path::default();
        outline.line(&[(x, y), (right, y), (right, top), (x, top)]);
        outline.close();
        plain::path(it.class, &outline.written())
    };
    let mut drawn: Vec<Html> = rectangles.iter().map(draw).collect();
    let mut bottom = low + ROOM;
    if !figures.below.is_empty() {
        bottom += above + FIGURES;
        let inside = (left + scale * middle.0, low - scale * middle.1 + FOOT);
        let below = (f64::from(FRAME) / 2.0, bottom - ROOM);
        let figures = vec![label(inside, figures.inside), label(below, figures.below)];
        drawn.push(element("g", "caption", figures));
    }
    picture("girths", (FRAME, bottom.round() as u32), &figures.words, drawn)
}

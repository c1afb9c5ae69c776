//! The stitches on the needle: a round as a ring of ticks, worked clockwise from the marker as the knitter sees it from
//! above; a row as a comb, worked from right to left. Each change is a mark of its own shape: a solid wedge that points
//! into the fabric for a decrease, an open angle that opens out of it for an increase. Never by colour alone.

use super::path::{Path, Point};
use super::picture::moving_picture;
use crate::part::plain::{self, element, element_with, text};
use std::f64::consts::TAU;
use yew::prelude::*;

/// Bytes of a count that is set large.
const LONGEST_COUNT: usize = 14;
/// More stitches than this are drawn as a line instead of ticks.
const MOST_TICKS: u32 = 200;
/// More changes than this are drawn as strokes instead of wedges.
const MOST_WEDGES: usize = 60;
/// More changes than this are drawn as a band.
const MOST_STROKES: usize = 2_000;

/// Stitches and the changes among them.
#[derive(Clone, Debug, PartialEq)]
pub struct Needle {
    /// Stitches on the needle.
    pub stitches: u32,
    /// Stitches worked before each change.
    pub places: Vec<u32>,
    /// Stitches each change uses.
    pub uses: u32,
    /// Stitches each change gives.
    pub gives: u32,
    /// What it says; a sign has none.
    pub caption: Option<Caption>,
}

/// The words in a drawing.
#[derive(Clone, Debug, PartialEq)]
pub struct Caption {
    /// What the drawing shows, for those who cannot see it.
    pub text: String,
    /// In the middle of the ring.
    pub count: String,
    /// Below it.
    pub changes: String,
}

impl Needle {
    /// Where a change stands, as a part of the whole.
    fn part(&self, place: u32) -> f64 {
        (f64::from(place) + f64::from(self.uses) / 2.0) / f64::from(self.stitches.max(1))
    }

    /// A tick at the middle of each stitch, from one height to another; none when there are too many to draw.
    fn ticks(&self, from: f64, to: f64, at: &dyn Fn(f64, f64) -> Point) -> Html {
        let all = self.stitches;
        let mut path = Path::default();
        for stitch in 0..if all > MOST_TICKS { 0 } else { all } {
            let part = (f64::from(stitch) + 0.5) / f64::from(all);
            path.line(&[at(part, from), at(part, to)]);
        }
        plain::path("ticks", &path.written())
    }

    fn is_decrease(&self) -> bool {
        self.uses > self.gives
    }

    fn class(&self) -> &'static str {
        if self.is_decrease() {
            "marks fewer"
        } else {
            "marks more"
        }
    }

    /// Half the width of a wedge, so that neighbours do not touch.
    fn half_width(&self, length: f64) -> f64 {
        (length / self.places.len().max(1) as f64 * 0.36).clamp(2.2, 8.0)
    }

    /// The marks along a line that `at` bends into shape: part of the whole and height above the line to a point.
    fn marks(&self, length: f64, at: &dyn Fn(f64, f64) -> Point) -> Html {
        let class = self.class();
        if self.places.len() > MOST_STROKES {
            return Html::default();
        }
        let mut path = Path::default();
        if self.places.len() > MOST_WEDGES {
            for place in &self.places {
                let part = self.part(*place);
                path.line(&[at(part, 7.0), at(part, 19.0)]);
            }
            return plain::path(&[class, " thin"].concat(), &path.written());
        }
        let half = self.half_width(length);
        let aside = half / length;
        let (wide, point) = (9.0 + 2.0 * half, 6.0);
        for place in &self.places {
            let part = self.part(*place);
            path.line(&[at(part - aside, wide), at(part, point), at(part + aside, wide)]);
            if self.is_decrease() {
                path.close();
            }
        }
        plain::path(class, &path.written())
    }
}

/// A round.
pub fn ring(needle: &Needle) -> Html {
    const MIDDLE: f64 = 160.0;
    const RADIUS: f64 = 112.0;
    let at = |part: f64, above: f64| {
        let angle = TAU * part;
        let radius = RADIUS + above;
        (MIDDLE + radius * sine(angle), MIDDLE - radius * sine(angle + TAU / 4.0))
    };
    let line = [
        ("class", &*line_class(needle)),
        ("cx", "160"),
        ("cy", "160"),
        ("r", "112"),
    ];
    let bead = [("class", "bead"), ("cx", "160"), ("cy", "16"), ("r", "6")];
    let content = vec![
        element_with("circle", &line, Vec::new()),
        needle.ticks(-4.0, 4.0, &at),
        plain::path("marker", "M160 18V66"),
        element_with("circle", &bead, Vec::new()),
        needle.marks(TAU * RADIUS, &at),
        caption(needle, "160", ["158", "188"]),
    ];
    framed(needle, "ring", (320, 320), content)
}

/// The browser's own sine: the one that Rust would bring along is four kilobytes.
#[cfg(target_arch = "wasm32")]
pub fn sine(angle: f64) -> f64 {
    js_sys::Math::sin(angle)
}

/// Without a browser it is Rust's.
#[cfg(not(target_arch = "wasm32"))]
pub fn sine(angle: f64) -> f64 {
    angle.sin()
}

/// A row.
pub fn comb(needle: &Needle) -> Html {
    const RIGHT: f64 = 344.0;
    const WIDE: f64 = 328.0;
    const LINE: f64 = 76.0;
    let at = |part: f64, above: f64| (RIGHT - WIDE * part, LINE - above);
    let content = vec![
        plain::path(&line_class(needle), "M16 76H344"),
        needle.ticks(-10.0, 4.0, &at),
        plain::path("marker", "M344 60V92M338 104L328 110L338 116M328 110H352"),
        needle.marks(WIDE, &at),
        caption(needle, "180", ["30", "124"]),
    ];
    framed(needle, "comb", (360, 136), content)
}

/// The drawing around its lines.
fn framed(needle: &Needle, class: &str, size: (u32, u32), content: Vec<Html>) -> Html {
    let words = needle.caption.as_ref().map_or("", |caption| &caption.text);
    moving_picture(class, size, words, content).into()
}

/// The words in the drawing, at these heights.
fn caption(needle: &Needle, x: &'static str, [above, below]: [&'static str; 2]) -> Html {
    let Some(Caption { count, changes, .. }) = &needle.caption else {
        return Html::default();
    };
    // Counts of six figures would run over the ring.
    let class = if count.len() > LONGEST_COUNT {
        "count long"
    } else {
        "count"
    };
    let large = [("class", class), ("x", x), ("y", above)];
    let small = [("x", x), ("y", below)];
    let lines = vec![
        element_with("text", &large, vec![text(count.clone().into())]),
        element_with("text", &small, vec![text(changes.clone().into())]),
    ];
    element("g", "caption", lines)
}

/// The line the stitches hang on: a band of changes where there are too many to draw.
fn line_class(needle: &Needle) -> String {
    if needle.places.len() > MOST_STROKES {
        return ["line-of-stitches ", needle.class()].concat();
    }
    "line-of-stitches".into()
}

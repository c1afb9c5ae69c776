//! Balls of yarn, filled in turn from the first: what is surely used is solid, what is likely and what may be used ever
//! paler, the reserve ruled, and what is left empty. Never by colour alone: the bands differ in lightness and in how they
//! are drawn, and stand in order.

use super::path::Path;
use super::picture::picture;
use crate::part::plain;
use loopwright::units::Length;
use loopwright::yarn::Band;
use yew::prelude::*;

/// More balls than this are drawn as one that stands for all.
const MOST_BALLS: u32 = 120;
/// The width of the drawing.
const WIDE: f64 = 360.0;
/// Corners on each side of a band.
const CORNERS: u32 = 12;
/// The class of an empty ball, and of what is left on one.
const BALL: &str = "ball";
/// How far apart the lines of the reserve are, in balls.
const RULE: f64 = 0.07;

/// How a band is filled.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Filling {
    /// All over, as dark as its class says.
    Solid,
    /// With lines across.
    Ruled,
}

/// Balls and how far they are used.
pub struct Balls<'a> {
    /// How many.
    pub count: u32,
    /// Yarn on all of them.
    pub all: Length,
    /// The bands, each with where it ends, counted from the start of the yarn.
    pub bands: Vec<(Band, Length)>,
    /// What the drawing shows, for those who cannot see it; a sign has none.
    pub caption: Option<&'a str>,
}

/// The class that a band is drawn with, and its words beside the drawing.
pub const fn class(band: Band) -> &'static str {
    match band {
        Band::Sure => "sure",
        Band::Likely => "likely",
        Band::Perhaps => "perhaps",
        Band::Reserve => "reserve",
        Band::Left => BALL,
    }
}

/// Never told by colour alone: the reserve is ruled.
const fn filling(band: Band) -> Filling {
    match band {
        Band::Sure | Band::Likely | Band::Perhaps | Band::Left => Filling::Solid,
        Band::Reserve => Filling::Ruled,
    }
}

/// Whether each ball is drawn.
pub fn each(count: u32) -> bool {
    count <= MOST_BALLS
}

/// One ball, as a circle.
#[derive(Clone, Copy)]
struct Circle {
    x: f64,
    y: f64,
    radius: f64,
}

impl Circle {
    /// The chord at a height, in parts of the whole from below: its two ends.
    fn chord(self, height: f64) -> [(f64, f64); 2] {
        let up = 2.0 * height - 1.0;
        let half = self.radius * (1.0 - up * up).max(0.0).sqrt();
        let y = self.y - self.radius * up;
        [(self.x - half, y), (self.x + half, y)]
    }

    /// What lies between two heights, as a shape.
    fn band(self, path: &mut Path, from: f64, to: f64) {
        let mut points = Vec::new();
        // Up on the left and down on the right.
        for step in 0..=2 * CORNERS + 1 {
            let (corner, side) = if step <= CORNERS {
                (step, 0)
            } else {
                (2 * CORNERS + 1 - step, 1)
            };
            // Closer together at the ends, where a circle bends most against its height.
            let part = f64::from(corner) / f64::from(CORNERS);
            let eased = part * part * (3.0 - 2.0 * part);
            points.push(self.chord(from + (to - from) * eased)[side]);
        }
        path.line(&points);
        path.close();
    }

    /// The same as lines.
    fn rules(self, path: &mut Path, from: f64, to: f64) {
        let mut height = from;
        while height < to {
            path.line(&self.chord(height));
            height += RULE;
        }
    }
}

/// How the balls stand, in lines from above.
struct Shelf {
    /// Balls that are drawn.
    drawn: u32,
    columns: u32,
    /// Room for each.
    cell: f64,
}

impl Shelf {
    /// What lies between two places of the yarn, in balls from its start.
    fn path(&self, class: &'static str, filling: Filling, from: f64, to: f64) -> Html {
        // The first line of balls stands in the middle when it is the only one.
        let start = (WIDE - self.cell * f64::from(self.drawn.min(self.columns))) / 2.0;
        let mut path = Path::default();
        for ball in 0..self.drawn {
            let circle = Circle {
                x: start + self.cell * (f64::from(ball % self.columns) + 0.5),
                y: self.cell * (f64::from(ball / self.columns) + 0.5),
                radius: self.cell * 0.44,
            };
            let [from, to] = [from, to].map(|place| (place - f64::from(ball)).clamp(0.0, 1.0));
            if to <= from {
                continue;
            }
            match filling {
                Filling::Solid => circle.band(&mut path, from, to),
                Filling::Ruled => circle.rules(&mut path, from, to),
            }
        }
        plain::path(class, &path.written())
    }
}

/// The balls.
pub fn balls(balls: &Balls) -> Html {
    let drawn = if each(balls.count) { balls.count.max(1) } else { 1 };
    let columns = match drawn {
        0..=6 => drawn.max(4),
        7..=24 => 8,
        _ => 15,
    };
    let cell = WIDE / f64::from(columns);
    let shelf = Shelf { drawn, columns, cell };
    // Where the yarn runs to, in balls.
    let all = balls.all.to_nm().max(1) as f64 / f64::from(drawn);
    let mut content = vec![shelf.path(BALL, Filling::Solid, 0.0, f64::from(drawn))];
    let mut from = 0.0;
    for (band, end) in &balls.bands {
        let to = end.to_nm() as f64 / all;
        content.push(shelf.path(class(*band), filling(*band), from, to));
        from = to;
    }
    let high = (cell * f64::from(drawn.div_ceil(columns))).ceil() as u32;
    picture("yarns", (360, high), balls.caption.unwrap_or(""), content)
}

//! The pattern's piece and one's own laid over each other, to scale: the pattern's dotted, one's own solid, a thin line
//! where one's own would end with the pattern's count, and along the edges a stroke every ten stitches or rows. A width or
//! a height that nobody has asked about is drawn alike for both.

use super::path::{Path, Point};
use super::picture::{label, picture};
use crate::part::plain::{self, element, text_element};
use crate::words::regauge::{Drawn, Mark, caption};
use loopwright::units::{Length, LengthUnit};
use yew::prelude::*;

/// A piece as it measures, as far as that is known.
#[derive(Clone, Copy, Debug, Default)]
pub struct Measures {
    /// Its lower edge.
    pub lower: Option<Length>,
    /// Its upper edge.
    pub upper: Option<Length>,
    /// From the one to the other.
    pub height: Option<Length>,
}

/// What is counted along the edges.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Along {
    /// Stitches, along the lower and the upper edge.
    Stitches,
    /// Rows, along both sides.
    Rows,
    /// Neither: a shaped piece.
    Neither,
}

/// Two pieces, the one over the other.
#[derive(Clone, Copy, Debug)]
pub struct Overlay {
    /// Dotted.
    pub dotted: Measures,
    /// What is dotted: the pattern's piece, or one that is wanted.
    pub dotted_is: Mark,
    /// Solid: one's own.
    pub solid: Measures,
    /// What the pattern's count would measure.
    pub kept: Option<Length>,
    /// Ten of what is counted, as the pattern has them and as they are worked.
    pub tens: Option<[Length; 2]>,
    /// What that is.
    pub along: Along,
}

const FRAME: f64 = 360.0;
/// The most room for the pieces.
const WIDE: f64 = 320.0;
const HIGH: f64 = 200.0;
/// A width and a height that nobody has asked about.
const SOME_WIDTH: f64 = 150.0;
const SOME_HEIGHT: f64 = 76.0;
/// Room for figures above and below, also where they are set twice as large.
const FIGURES: f64 = 44.0;
/// By how much the pattern's count may reach further than the pieces and still be drawn.
const MOST_KEPT: f64 = 2.0;
/// How long a stroke is, and how far strokes have to be from each other.
const STROKE: f64 = 8.0;
const STROKES_APART: f64 = 4.0;
/// Lines nearer to each other than this look like one.
const SEEN: f64 = 2.0;

/// A piece in units of the picture.
#[derive(Clone, Copy)]
struct Shape {
    lower: f64,
    upper: f64,
    high: f64,
}

/// Both pieces in the picture.
struct Laid {
    overlay: Overlay,
    scale: f64,
    dotted: Shape,
    solid: Shape,
}

impl Laid {
    fn of(overlay: Overlay) -> Self {
        let Overlay { dotted, solid, .. } = overlay;
        let widths = [dotted.lower, dotted.upper, solid.lower, solid.upper];
        let (wide, high) = (largest(&widths), largest(&[dotted.height, solid.height]));
        // What would reach out of all proportion is left out, so that the pieces can be seen.
        let counted = match overlay.along {
            Along::Stitches => wide,
            Along::Rows | Along::Neither => high,
        };
        let kept = overlay.kept.filter(|kept| mm(*kept) <= MOST_KEPT * counted);
        let (wide, high) = match overlay.along {
            Along::Stitches => (wide.max(largest(&[kept])), high),
            Along::Rows | Along::Neither => (wide, high.max(largest(&[kept]))),
        };
        let scale = (WIDE / wide.max(0.001)).min(HIGH / high.max(0.001));
        let shape = |measures: Measures| Shape {
            lower: measures.lower.map_or(SOME_WIDTH, |length| scale * mm(length)),
            upper: measures.upper.map_or(SOME_WIDTH, |length| scale * mm(length)),
            high: measures.height.map_or(SOME_HEIGHT, |length| scale * mm(length)),
        };
        Self {
            overlay: Overlay { kept, ..overlay },
            scale,
            dotted: shape(dotted),
            solid: shape(solid),
        }
    }

    /// Where both begin on the left.
    fn left(&self) -> f64 {
        let kept = match self.overlay.along {
            Along::Stitches => self.kept_reach(),
            Along::Rows | Along::Neither => 0.0,
        };
        let (dotted, solid) = (self.dotted, self.solid);
        let widest = [dotted.lower, dotted.upper, solid.lower, solid.upper, kept];
        (FRAME - widest.into_iter().fold(0.0, f64::max)) / 2.0
    }

    fn foot(&self) -> f64 {
        let kept = match self.overlay.along {
            Along::Rows => self.kept_reach(),
            Along::Stitches | Along::Neither => 0.0,
        };
        FIGURES + self.dotted.high.max(self.solid.high).max(kept)
    }

    /// How far the pattern's count would reach, in the picture.
    fn kept_reach(&self) -> f64 {
        self.scale * largest(&[self.overlay.kept])
    }

    /// The corners of a piece: straight ones begin at one edge, shaped ones have one middle.
    fn corners(&self, shape: Shape) -> [Point; 4] {
        let (foot, top) = (self.foot(), self.foot() - shape.high);
        let ends = |wide: f64| match self.overlay.along {
            Along::Stitches | Along::Rows => (self.left(), self.left() + wide),
            Along::Neither => ((FRAME - wide) / 2.0, (FRAME + wide) / 2.0),
        };
        let (lower, upper) = (ends(shape.lower), ends(shape.upper));
        [(lower.0, foot), (lower.1, foot), (upper.1, top), (upper.0, top)]
    }

    fn outline(&self, class: &str, shape: Shape) -> Html {
        let mut outline = Path::default();
        outline.line(&self.corners(shape));
        outline.close();
        plain::path(class, &outline.written())
    }

    /// How far the strokes along both edges are apart, where they can be told apart.
    fn apart(&self) -> Option<[f64; 2]> {
        let apart = self.overlay.tens.map(|tens| tens.map(|ten| self.scale * mm(ten)));
        apart.filter(|apart| apart.iter().all(|apart| *apart >= STROKES_APART))
    }

    /// The strokes along the edge of the pattern's piece and along that of one's own.
    fn strokes(&self) -> Html {
        let mut path = Path::default();
        let (left, foot) = (self.left(), self.foot());
        if let Some([theirs, ours]) = self.apart() {
            match self.overlay.along {
                Along::Stitches => {
                    let top = foot - self.dotted.high;
                    for x in places(theirs, self.dotted.lower) {
                        path.line(&[(left + x, top), (left + x, top + STROKE)]);
                    }
                    for x in places(ours, self.solid.lower) {
                        path.line(&[(left + x, foot - STROKE), (left + x, foot)]);
                    }
                }
                Along::Rows => {
                    let right = left + self.solid.lower;
                    for y in places(theirs, self.dotted.high) {
                        path.line(&[(left, foot - y), (left + STROKE, foot - y)]);
                    }
                    for y in places(ours, self.solid.high) {
                        path.line(&[(right - STROKE, foot - y), (right, foot - y)]);
                    }
                }
                Along::Neither => {}
            }
        }
        plain::path("", &path.written())
    }

    /// How far the pattern's count would reach, where that is seen beside one's own edge.
    fn kept(&self) -> Option<f64> {
        let edge = match self.overlay.along {
            Along::Stitches => self.solid.lower,
            Along::Rows => self.solid.high,
            Along::Neither => return None,
        };
        self.overlay.kept?;
        let kept = self.kept_reach();
        ((kept - edge).abs() >= SEEN).then_some(kept)
    }

    fn kept_line(&self) -> Html {
        let mut path = Path::default();
        if let Some(kept) = self.kept() {
            let (left, foot) = (self.left(), self.foot());
            match self.overlay.along {
                Along::Stitches => path.line(&[(left + kept, foot), (left + kept, foot - self.solid.high)]),
                Along::Rows => path.line(&[(left, foot - kept), (left + self.solid.lower, foot - kept)]),
                Along::Neither => {}
            }
        }
        plain::path("fine", &path.written())
    }

    fn marks(&self) -> Vec<Mark> {
        let tens = match self.overlay.along {
            Along::Stitches => Some(Mark::TenStitches),
            Along::Rows => Some(Mark::TenRows),
            Along::Neither => None,
        };
        let marks = [
            Some(self.overlay.dotted_is),
            Some(Mark::Own),
            tens.filter(|_| self.apart().is_some()),
            self.kept().map(|_| Mark::Kept),
        ];
        marks.into_iter().flatten().collect()
    }

    fn labels(&self, drawn: &Drawn) -> Html {
        let middle = FRAME / 2.0;
        let mut labels = vec![
            label((middle, FIGURES - 12.0), drawn.above.clone()),
            label((middle, self.foot() + FIGURES - 12.0), drawn.below.clone()),
        ];
        if self.kept().is_some() {
            let y = self.foot() - self.solid.high / 2.0 + 5.0;
            labels.push(label((middle, y), drawn.kept.clone()));
        }
        element("g", "caption", labels)
    }
}

/// Strokes one every so far, up to an end.
fn places(apart: f64, end: f64) -> impl Iterator<Item = f64> {
    let many = (end / apart + 0.001).floor() as u32;
    (1..=many).map(move |stroke| apart * f64::from(stroke))
}

/// The largest of lengths, in millimetres; nothing where none is known.
fn largest(lengths: &[Option<Length>]) -> f64 {
    lengths.iter().flatten().map(|length| mm(*length)).fold(0.0, f64::max)
}

fn mm(length: Length) -> f64 {
    length.in_unit(LengthUnit::Mm)
}

/// The two pieces with their figures, and what the marks are.
pub fn pieces(overlay: Overlay, drawn: &Drawn) -> Html {
    let laid = Laid::of(overlay);
    let caption = caption(&laid.marks());
    let content = vec![
        laid.kept_line(),
        laid.outline("you", laid.solid),
        laid.outline("wanted", laid.dotted),
        laid.strokes(),
        laid.labels(drawn),
    ];
    let shown = [&*drawn.above, "; ", &drawn.below, ". ", &caption].concat();
    let frame = (FRAME as u32, (laid.foot() + FIGURES) as u32);
    let figure = vec![
        picture("girths", frame, &shown, content),
        text_element("figcaption", "quiet", caption),
    ];
    element("figure", "scale", figure)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn wide(mm: i64) -> Measures {
        let width = Some(Length::from_mm(mm));
        Measures {
            lower: width,
            upper: width,
            height: None,
        }
    }

    fn overlay(own: i64, kept: i64, tens: [i64; 2]) -> Laid {
        Laid::of(Overlay {
            dotted: wide(900),
            dotted_is: Mark::Pattern,
            solid: wide(own),
            kept: Some(Length::from_mm(kept)),
            tens: Some(tens.map(Length::from_mm)),
            along: Along::Stitches,
        })
    }

    #[test]
    fn a_caption_explains_only_what_is_drawn() {
        let all = overlay(900, 818, [50, 45]);
        assert_eq!(all.marks(), [Mark::Pattern, Mark::Own, Mark::TenStitches, Mark::Kept]);
        // The same gauge: the pattern's count would reach as far.
        assert_eq!(
            overlay(900, 900, [50, 50]).marks(),
            [Mark::Pattern, Mark::Own, Mark::TenStitches]
        );
        // So fine a gauge that its strokes would be a band.
        assert_eq!(overlay(900, 899, [5, 5]).marks(), [Mark::Pattern, Mark::Own]);
    }

    #[test]
    fn a_count_that_would_reach_further_is_within_the_picture() {
        let wider = overlay(900, 990, [50, 55]);
        assert!(wider.marks().contains(&Mark::Kept));
        assert!(wider.left() >= 0.0 && wider.left() + wider.kept().unwrap() <= FRAME);
        // Ten metres beside 90 cm would leave nothing to see of these.
        assert!(!overlay(900, 10_000, [50, 500]).marks().contains(&Mark::Kept));
    }

    #[test]
    fn strokes_are_as_many_as_there_are_tens() {
        assert_eq!(places(10.0, 180.0).count(), 18);
        assert_eq!(places(10.0, 179.0).count(), 17);
    }
}

//! The steps of an edge, with the right side towards the reader: each as wide as its stitches and two rows high, with
//! its stitches written on it where there is room.

use super::path::{Path, Point};
use super::picture::{label, picture};
use crate::part::plain::{self, element};
use crate::words::intl::number;
use loopwright::stairs::{Answer, Edge, Stair};
use yew::prelude::*;

const LEFT: f64 = 20.0;
const RIGHT: f64 = 340.0;
/// The piece behind the last step.
const BEHIND: f64 = 48.0;
/// The middle of a neck, and half of its dip.
const MIDDLE: f64 = (LEFT + RIGHT) / 2.0;
const DIP: f64 = 22.0;
/// How high the stairs may be, what stands above them and what they stand on.
const HIGH: f64 = 220.0;
const TOP: f64 = 30.0;
const BELOW: f64 = 28.0;
/// How large a square for a stitch of a row may be.
const LARGEST: f64 = 14.0;
/// Room for the figures of one step.
const ROOM: f64 = 22.0;

/// The stairs as they lie in the picture.
struct Stairs<'a> {
    answer: &'a Answer,
    /// How large the square for a stitch of a row is.
    square: f64,
    /// How wide the piece is with its stairs, in the middle of the picture.
    wide: f64,
    /// Where the first step lies.
    floor: f64,
    first_row: u32,
}

impl<'a> Stairs<'a> {
    fn of(answer: &'a Answer, edge: Edge) -> Self {
        let all = f64::from(answer.stairs.last().map_or(1, |stair| stair.gone));
        // Where both edges move, the one that begins later ends a row higher.
        let (edges, later) = match edge {
            Edge::Right | Edge::Left => (1.0, 0),
            Edge::Both => (2.0, 1),
        };
        let square = ((RIGHT - LEFT - BEHIND) / edges / all)
            .min(HIGH / f64::from(2 * answer.steps))
            .min(LARGEST);
        let high = square * f64::from(2 * answer.steps + later).max(1.0);
        Self {
            answer,
            square,
            wide: BEHIND + edges * square * all,
            floor: TOP + high,
            first_row: answer.stairs.first().map_or(0, |stair| stair.row),
        }
    }

    /// The place at an edge that lies so many stitches inwards.
    fn inwards(&self, edge: Edge, stitches: u32) -> f64 {
        let (middle, inwards) = ((LEFT + RIGHT) / 2.0, self.square * f64::from(stitches));
        match edge {
            Edge::Right | Edge::Both => middle + self.wide / 2.0 - inwards,
            Edge::Left => middle - self.wide / 2.0 + inwards,
        }
    }

    fn height_of(&self, stair: &Stair) -> f64 {
        self.floor - self.square * f64::from(stair.row - self.first_row)
    }

    /// The two ends of a step, the outer one first.
    fn ends(&self, stair: &Stair) -> [f64; 2] {
        [stair.gone - stair.stitches, stair.gone].map(|gone| self.inwards(stair.edge, gone))
    }

    /// One edge from its foot to the piece behind the last step; straight where no step is.
    fn edge(&self, edge: Edge) -> Vec<Point> {
        let mut points = vec![(self.inwards(edge, 0), self.floor + BELOW)];
        for stair in self.answer.stairs.iter().filter(|stair| stair.edge == edge) {
            let y = self.height_of(stair);
            points.extend(self.ends(stair).map(|x| (x, y)));
        }
        let gone = self.answer.stairs.iter().rev().find(|stair| stair.edge == edge);
        points.push((self.inwards(edge, gone.map_or(0, |stair| stair.gone)), TOP));
        points
    }

    /// The stitches of each step that has room for them.
    fn labels(&self) -> Vec<Html> {
        let mut labels = Vec::new();
        for edge in [Edge::Right, Edge::Left] {
            for stair in self.answer.stairs.iter().filter(|stair| stair.edge == edge) {
                let [outer, inner] = self.ends(stair);
                if (outer - inner).abs() >= ROOM {
                    let place = ((outer + inner) / 2.0, self.height_of(stair) - 6.0);
                    labels.push(label(place, number(stair.stitches)));
                }
            }
        }
        labels
    }
}

/// The stairs at one edge or at both.
pub fn stairs(answer: &Answer, edge: Edge, words: &str) -> Html {
    let stairs = Stairs::of(answer, edge);
    // Up on the right, and down on the left.
    let mut outline = stairs.edge(Edge::Right);
    outline.extend(stairs.edge(Edge::Left).into_iter().rev());
    let mut piece = Path::default();
    piece.line(&outline);
    piece.close();
    let content = vec![
        plain::path("piece", &piece.written()),
        element("g", "caption", stairs.labels()),
    ];
    picture("edges", (360, (stairs.floor + BELOW + 8.0) as u32), words, content)
}

/// Both halves of a neck with the dip between them. The two are worked one after the other, and alike.
pub fn neck(answer: &Answer, words: &str) -> Html {
    let all = answer.stairs.last().map_or(1, |stair| stair.gone);
    let square = ((RIGHT - MIDDLE - DIP - BEHIND) / f64::from(all))
        .min(HIGH / f64::from(2 * answer.steps))
        .min(LARGEST);
    let floor = TOP + square * f64::from(2 * answer.steps);
    let outer = MIDDLE + DIP + square * f64::from(all) + BEHIND;
    // The half on the right, from the dip up along its steps and down its outer side.
    let (mut half, mut labels): (Vec<Point>, Vec<Html>) = (vec![(MIDDLE + DIP, floor)], Vec::new());
    for (step, stair) in (1_u32..).zip(&answer.stairs) {
        let x = |gone: u32| MIDDLE + DIP + square * f64::from(gone);
        let y = floor - 2.0 * square * f64::from(step - 1);
        let ends = [x(stair.gone - stair.stitches), x(stair.gone)];
        half.extend(ends.map(|x| (x, y)));
        if ends[1] - ends[0] >= ROOM {
            let middle = (ends[0] + ends[1]) / 2.0;
            labels.extend([middle, 2.0 * MIDDLE - middle].map(|x| label((x, y - 6.0), number(stair.stitches))));
        }
    }
    half.extend([(outer - BEHIND, TOP), (outer, TOP), (outer, floor + BELOW)]);
    let mirrored = half.iter().rev().map(|(x, y)| (2.0 * MIDDLE - x, *y));
    let mut piece = Path::default();
    piece.line(&mirrored.chain(half.iter().copied()).collect::<Vec<Point>>());
    piece.close();
    let content = vec![plain::path("piece", &piece.written()), element("g", "caption", labels)];
    picture("edges", (360, (floor + BELOW + 8.0) as u32), words, content)
}

/// The small picture: three steps at either edge.
pub fn sign() -> Html {
    let stairs = "M20 180V140H68V108H116V76H164V44H212V76H252V108H300V140H340V180Z";
    picture("edges", (360, 200), "", vec![plain::path("piece", stairs)])
}

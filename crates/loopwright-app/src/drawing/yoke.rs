//! A yoke from above, to scale: the neck as the inner ring, the underarm as the outer one, a ring for each shaping round
//! as far out as it lies, and four lines where the yoke is divided, from the last shaping round to the underarm. Beside it
//! the depth alone as a ruler, drawn larger, with the number of each shaping round and the stitches from there outwards.
//!
//! Neck and underarm are as far from the middle as their stitches are many, so that the rounds lie between them as they do
//! in a flat circle.

use super::needle::sine;
use super::path::{Path, Point, tenths};
use super::picture::{label, picture};
use crate::part::plain::{self, element_with};
use crate::words::yoke::{Caption, edge, ring};
use loopwright::yoke::{Answer, Division, Question};
use std::f64::consts::{PI, TAU};
use yew::prelude::*;

const MIDDLE: Point = (126.0, 120.0);
/// How far out the underarm lies.
const OUT: f64 = 106.0;
/// Where the ruler stands, from the neck to the underarm, and the middle of the words beside it.
const RULER: f64 = 254.0;
const TOP: f64 = 16.0;
const BOTTOM: f64 = 224.0;
const BESIDE: f64 = 340.0;
/// Half the height of a word, and the least between one line and the next.
const HALF: f64 = 5.0;
const LINE: f64 = 17.0;

/// The yoke in units of the drawing.
struct Rings {
    neck: f64,
    /// How far out each shaping round lies, and the stitches from there outwards, from the neck on.
    shaped: Vec<(u32, f64, u32)>,
}

impl Rings {
    fn of(question: &Question, answer: &Answer) -> Self {
        let (fewest, most) = (question.from.min(question.to), question.widest());
        let neck = OUT * f64::from(fewest) / f64::from(most.max(1));
        let deep = |round: u32| {
            let part = f64::from(round) / f64::from(question.rounds.max(1));
            neck + (OUT - neck) * if question.is_neck_down() { part } else { 1.0 - part }
        };
        let mut shaped: Vec<_> = answer
            .rounds
            .iter()
            .map(|round| (round.round, deep(round.round), round.before.max(round.after)))
            .collect();
        if !question.is_neck_down() {
            shaped.reverse();
        }
        Self { neck, shaped }
    }

    /// How far down the ruler something lies that is so far out.
    fn down(&self, radius: f64) -> f64 {
        TOP + (BOTTOM - TOP) * (radius - self.neck) / (OUT - self.neck).max(1.0)
    }

    /// Where the plain rounds next to the underarm begin.
    fn last(&self) -> f64 {
        self.shaped.last().map_or(self.neck, |(_, radius, _)| *radius)
    }
}

/// The drawing.
pub fn yoke(question: &Question, answer: &Answer, caption: Caption) -> Html {
    let rings = Rings::of(question, answer);
    let mut content = vec![circle("marks more", OUT), circle("marks more", rings.neck)];
    content.extend(rings.shaped.iter().map(|(_, radius, _)| circle("groups", *radius)));
    if let Some(division) = &answer.division {
        content.push(plain::path("groups open", &lines(question, division, rings.last())));
    }
    content.push(plain::path("groups", &ruler(&rings)));
    let words = named(question, &rings, &caption);
    content.push(element_with("g", &[("class", "caption")], words));
    picture("comb", (420, 240), &caption.text, content)
}

fn circle(class: &str, radius: f64) -> Html {
    let (x, y) = MIDDLE;
    let radius = tenths(radius);
    let attributes = [
        ("class", class),
        ("cx", &*tenths(x)),
        ("cy", &tenths(y)),
        ("r", &radius),
    ];
    element_with("circle", &attributes, Vec::new())
}

/// So far out at this angle from the top, clockwise.
fn at(angle: f64, radius: f64) -> Point {
    let (x, y) = MIDDLE;
    (x + radius * sine(angle), y - radius * sine(angle + TAU / 4.0))
}

/// The four lines between back, sleeves and front: the back above, its middle at the top.
fn lines(question: &Question, division: &Division, from: f64) -> String {
    let part = |stitches: u32| TAU * f64::from(stitches) / f64::from(question.widest().max(1));
    let (back, front) = (part(division.back) / 2.0, part(division.front) / 2.0);
    let mut path = Path::default();
    for angle in [back, -back, PI - front, PI + front] {
        path.line(&[at(angle, from), at(angle, OUT)]);
    }
    path.written()
}

/// The depth, with a tick at the neck, at each shaping round and at the underarm.
fn ruler(rings: &Rings) -> String {
    let mut path = Path::default();
    path.line(&[(RULER, TOP), (RULER, BOTTOM)]);
    let shaped = rings.shaped.iter().map(|(_, radius, _)| rings.down(*radius));
    for y in [TOP, BOTTOM].into_iter().chain(shaped) {
        path.line(&[(RULER - 5.0, y), (RULER + 5.0, y)]);
    }
    path.written()
}

/// The words: the parts in the outer ring, the neck in the middle, and beside the ruler the rounds that have room.
fn named(question: &Question, rings: &Rings, caption: &Caption) -> Vec<Html> {
    let (x, y) = MIDDLE;
    let mut words = Vec::new();
    if rings.neck > LINE {
        words.push(label((x, y + HALF), caption.neck.clone()));
    }
    let band = (rings.last() + OUT) / 2.0;
    if let Some([front, back, sleeve]) = &caption.parts {
        let places = [
            (x, y + band + HALF),
            (x, y - band + HALF),
            (x - band, y + HALF),
            (x + band, y + HALF),
        ];
        let names = [front, back, sleeve, sleeve].into_iter().cloned();
        words.extend(places.into_iter().zip(names).map(|(place, name)| label(place, name)));
    }
    // From the underarm inwards, so that of two that lie close the outer one is named.
    let mut last = BOTTOM;
    words.push(label((BESIDE, BOTTOM + HALF), edge(question.rounds)));
    for (round, radius, stitches) in rings.shaped.iter().rev() {
        let next = rings.down(*radius);
        if last - next >= LINE {
            words.push(label((BESIDE, next + HALF), ring(*round, *stitches)));
            last = next;
        }
    }
    words
}

#[cfg(test)]
mod tests {
    use super::*;
    use loopwright::yoke::answer;

    /// A circle is as far out as its stitches are many, so rounds and depth have one scale.
    #[test]
    fn rings_lie_as_far_out_as_their_rounds() {
        for (question, first) in [(Question::about(96, 320, 60), 10), (Question::about(320, 96, 60), 59)] {
            let answer = answer(&question).unwrap();
            let rings = Rings::of(&question, &answer);
            assert!((rings.neck / OUT - 0.3).abs() < 1e-9);
            assert_eq!(rings.shaped[0].0, first);
            assert!(rings.shaped.is_sorted_by(|(_, one, _), (_, next, _)| one < next));
            // The last third is plain in either direction.
            let plain = (OUT - rings.last()) / (OUT - rings.neck);
            assert!((plain - 1.0 / 3.0).abs() < 0.02, "{plain}");
        }
    }
}

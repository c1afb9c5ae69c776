//! A yoke from above, to scale: the neck as the inner ring, the underarm as the outer one, a ring for each shaping round
//! as far out as it lies, and four lines where the yoke is divided, from the last shaping round to the underarm. Around it
//! the stitches of each part; beside it the depth alone as a ruler, drawn larger, with the number of each shaping round and the stitches from there outwards.
//!
//! Neck and underarm are as far from the middle as their stitches are many, so that the rounds lie between them as they do
//! in a flat circle.

use super::needle::sine;
use super::path::{Path, Point, tenths};
use super::picture::{label, picture};
use crate::part::plain::{self, element, element_with};
use crate::words::yoke::{Caption, edge, ring};
use loopwright::yoke::{Answer, Division, Question};
use std::f64::consts::{PI, TAU};
use yew::prelude::*;

/// How far out the underarm lies, and how far down the middle: above it and below there is room for one line of words.
const OUT: f64 = 106.0;
const DOWN: f64 = 132.0;
const HIGH: u32 = 264;
/// Where the ruler begins at the neck, and where it ends at the underarm.
const TOP: f64 = 28.0;
const BOTTOM: f64 = 236.0;
/// The width of a letter, a little more than the widest digit has, and what stays free beside words.
const LETTER: f64 = 9.0;
const FREE: f64 = 8.0;
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

/// Where things stand from left to right: words of any length have their room.
#[derive(Clone, Copy, Debug, PartialEq)]
struct Across {
    /// Half of the room for the words of a sleeve, which stand at either side of the rings.
    half_side: f64,
    middle: f64,
    ruler: f64,
    /// Where the words beside the ruler begin.
    beside: f64,
    wide: f64,
}

impl Across {
    fn of(question: &Question, rings: &Rings, caption: &Caption) -> Self {
        let long = |words: &str| LETTER * words.chars().count() as f64;
        let sleeve = caption.parts.as_ref().map_or(0.0, |[.., sleeve]| long(sleeve));
        let half_side = FREE + sleeve / 2.0;
        let middle = 2.0 * half_side + OUT;
        let ruler = 2.0 * middle + FREE;
        let beside = ruler + 2.0 * FREE;
        let words = rings
            .shaped
            .iter()
            .map(|(round, _, stitches)| long(&ring(*round, *stitches)));
        let longest = words.fold(long(&edge(question.rounds)), f64::max);
        Self {
            half_side,
            middle,
            ruler,
            beside,
            wide: beside + longest + FREE,
        }
    }
}

/// The drawing.
pub fn yoke(question: &Question, answer: &Answer, caption: Caption) -> Html {
    let rings = Rings::of(question, answer);
    let across = Across::of(question, &rings, &caption);
    let circle = |class, radius| circle(across.middle, class, radius);
    let mut content = vec![circle("marks more", OUT), circle("marks more", rings.neck)];
    content.extend(rings.shaped.iter().map(|(_, radius, _)| circle("groups", *radius)));
    if let Some(division) = &answer.division {
        content.push(plain::path(
            "groups open",
            &lines(across.middle, question, division, rings.last()),
        ));
    }
    content.push(plain::path("groups", &ruler(across.ruler, &rings)));
    content.push(element("g", "caption", named(across, &rings, &caption)));
    content.push(element("g", "caption beside", beside_ruler(across, question, &rings)));
    picture("comb", (across.wide as u32, HIGH), &caption.text, content)
}

fn circle(middle: f64, class: &str, radius: f64) -> Html {
    let radius = tenths(radius);
    let attributes = [
        ("class", class),
        ("cx", &*tenths(middle)),
        ("cy", &tenths(DOWN)),
        ("r", &radius),
    ];
    element_with("circle", &attributes, Vec::new())
}

/// So far out at this angle from the top, clockwise.
fn at(middle: f64, angle: f64, radius: f64) -> Point {
    (middle + radius * sine(angle), DOWN - radius * sine(angle + TAU / 4.0))
}

/// The four lines between back, sleeves and front: the back above, its middle at the top.
fn lines(middle: f64, question: &Question, division: &Division, from: f64) -> String {
    let part = |stitches: u32| TAU * f64::from(stitches) / f64::from(question.widest().max(1));
    let (back, front) = (part(division.back) / 2.0, part(division.front) / 2.0);
    let mut path = Path::default();
    for angle in [back, -back, PI - front, PI + front] {
        path.line(&[at(middle, angle, from), at(middle, angle, OUT)]);
    }
    path.written()
}

/// The depth, with a tick at the neck, at each shaping round and at the underarm.
fn ruler(x: f64, rings: &Rings) -> String {
    let mut path = Path::default();
    path.line(&[(x, TOP), (x, BOTTOM)]);
    let shaped = rings.shaped.iter().map(|(_, radius, _)| rings.down(*radius));
    for y in [TOP, BOTTOM].into_iter().chain(shaped) {
        path.line(&[(x - 5.0, y), (x + 5.0, y)]);
    }
    path.written()
}

/// The words of the rings: the parts around them, and the neck in the middle.
fn named(across: Across, rings: &Rings, caption: &Caption) -> Vec<Html> {
    let (x, y) = (across.middle, DOWN);
    let mut words = Vec::new();
    if rings.neck > LINE {
        words.push(label((x, y + HALF), caption.neck.clone()));
    }
    if let Some([front, back, sleeve]) = &caption.parts {
        let places = [
            (x, y + OUT + LINE),
            (x, y - OUT - FREE),
            (x - OUT - across.half_side, y + HALF),
            (x + OUT + across.half_side, y + HALF),
        ];
        let names = [front, back, sleeve, sleeve].into_iter().cloned();
        words.extend(places.into_iter().zip(names).map(|(place, name)| label(place, name)));
    }
    words
}

/// The words beside the ruler: all rounds, and those that have room, from the underarm inwards, so that of two that lie
/// close the outer one is named.
fn beside_ruler(across: Across, question: &Question, rings: &Rings) -> Vec<Html> {
    let x = across.beside;
    let mut last = BOTTOM;
    let mut words = vec![label((x, BOTTOM + HALF), edge(question.rounds))];
    for (round, radius, stitches) in rings.shaped.iter().rev() {
        let next = rings.down(*radius);
        if last - next >= LINE {
            words.push(label((x, next + HALF), ring(*round, *stitches)));
            last = next;
        }
    }
    words
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::words::yoke::drawing;
    use loopwright::yoke::answer;

    /// Neither the words around the rings nor those beside the ruler run out of the picture, however large the counts are.
    #[test]
    fn words_have_their_room() {
        for (from, to, rounds) in [(96, 320, 60), (20_000, 100_000, 10_000), (100_000, 20_000, 10_000)] {
            let question = Question::about(from, to, rounds);
            let answer = answer(&question).unwrap();
            let rings = Rings::of(&question, &answer);
            let caption = drawing(&question, &answer);
            let across = Across::of(&question, &rings, &caption);
            let [.., sleeve] = caption.parts.unwrap();
            let half_word = LETTER * sleeve.chars().count() as f64 / 2.0;
            let left = across.middle - OUT - across.half_side;
            let right = across.middle + OUT + across.half_side;
            assert!(left - half_word >= FREE && left + half_word < across.middle - OUT);
            assert!(right + half_word < across.ruler - 5.0);
            let words = ring(rounds - 1, question.widest());
            assert!(across.beside + LETTER * words.chars().count() as f64 <= across.wide);
            // On a telephone letters keep two thirds of their size at least at usual counts.
            assert!(across.wide < if to == 320 { 450.0 } else { 600.0 }, "{across:?}");
        }
    }

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

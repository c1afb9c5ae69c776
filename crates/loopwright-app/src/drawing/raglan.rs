//! A raglan from above: front, back and two sleeves that open from the neck along four lines, each as wide as its stitches
//! are many and as deep as its rounds, a stitch as wide as a round is high. A line across each part for each of its raglan
//! rounds; thick, what is cast on at the underarm, half of it at either end of a part.

use super::path::{Path, Point};
use super::picture::{label, picture};
use crate::part::plain::{self, element};
use crate::words::raglan::{Labels, has_lines};
use loopwright::raglan::{Answer, Question};
use loopwright::shaping::Schedule;
use yew::prelude::*;

const MIDDLE: f64 = 180.0;
/// How far from the middle the outer edges may lie: the sleeves leave room for a count beside them.
const REACH: f64 = 134.0;
/// Above the parts there is room for a count, and below them.
const TOP: f64 = 24.0;
const ROOM: f64 = 30.0;
/// A part that is narrower has no name in it.
const NAMED: f64 = 52.0;

/// One of the four parts, seen from the neck outwards.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Side {
    Back,
    Front,
    Left,
    Right,
}

impl Side {
    const ALL: [Self; 4] = [Self::Back, Self::Front, Self::Left, Self::Right];

    /// The place so far out from the middle and so far along the edge of the neck.
    const fn at(self, middle: Point, out: f64, along: f64) -> Point {
        let (x, y) = middle;
        match self {
            Self::Back => (x + along, y - out),
            Self::Front => (x - along, y + out),
            Self::Left => (x - out, y - along),
            Self::Right => (x + out, y + along),
        }
    }
}

/// The raglan as it lies in the picture.
struct Piece {
    /// How large a stitch or a round is.
    unit: f64,
    middle: Point,
    rounds: u32,
    /// Half the stitches of one edge at the neck: of front or back, and of a sleeve.
    half_body: f64,
    half_sleeve: f64,
    /// Half the stitches cast on at one underarm.
    half_underarm: f64,
}

impl Piece {
    fn of(question: &Question) -> Self {
        let half = |stitches: u32| f64::from(stitches) / 2.0;
        // Front and back share the body.
        let (half_body, half_sleeve) = (half(question.body) / 2.0, half(question.sleeve));
        let rounds = f64::from(question.rounds);
        let half_underarm = half(question.underarm);
        let ends = [half(question.body_to) / 2.0, half(question.sleeve_to)];
        let widest = ends
            .into_iter()
            .chain([half_body + rounds, half_sleeve + rounds])
            .fold(1.0, f64::max);
        let unit = REACH / widest;
        let high = (half_sleeve + rounds).max(ends[1]) * unit;
        Self {
            unit,
            middle: (MIDDLE, TOP + high),
            rounds: question.rounds,
            half_body,
            half_sleeve,
            half_underarm,
        }
    }

    /// Half the stitches of a part's edge at the neck, and how far that edge lies from the middle.
    const fn neck(&self, side: Side) -> (f64, f64) {
        match side {
            Side::Back | Side::Front => (self.half_body, self.half_sleeve),
            Side::Left | Side::Right => (self.half_sleeve, self.half_body),
        }
    }

    /// A place of a part: so many rounds from the neck, and so many stitches from the middle of its edge.
    fn at(&self, side: Side, round: f64, stitches: f64) -> Point {
        let (_, out) = self.neck(side);
        side.at(self.middle, (out + round) * self.unit, stitches * self.unit)
    }
}

/// One part with its own rounds.
struct Panel<'a> {
    piece: &'a Piece,
    side: Side,
    schedule: &'a Schedule,
    /// What half an edge of it grows by when so many stitches are added to its track.
    part_of_growth: f64,
}

impl<'a> Panel<'a> {
    fn of(piece: &'a Piece, answer: &'a Answer, side: Side) -> Self {
        // The body's track is that of two parts, each with two edges.
        let (schedule, part_of_growth) = match side {
            Side::Back | Side::Front => (&answer.body.schedule, 0.25),
            Side::Left | Side::Right => (&answer.sleeves.schedule, 0.5),
        };
        Self {
            piece,
            side,
            schedule,
            part_of_growth,
        }
    }

    /// After each of its rounds, so many rounds from the neck, half the stitches of its edge; first that of the neck.
    fn halves(&self) -> Vec<(f64, f64)> {
        let (half, _) = self.piece.neck(self.side);
        let after = |row, changed| (f64::from(row), half + self.part_of_growth * f64::from(changed));
        let mut halves = vec![(0.0, half)];
        halves.extend(self.schedule.rows().map(|shaped| after(shaped.row, shaped.changed)));
        let end = halves[halves.len() - 1].1;
        halves.push((f64::from(self.piece.rounds), end));
        halves
    }

    /// The place so many rounds out, at the one end of the edge or at the other.
    fn ends(&self, (round, half): (f64, f64)) -> [Point; 2] {
        [-half, half].map(|stitches| self.piece.at(self.side, round, stitches))
    }

    fn outline(&self, halves: &[(f64, f64)]) -> Path {
        let there = halves.iter().map(|place| self.ends(*place)[0]);
        let back = halves.iter().rev().map(|place| self.ends(*place)[1]);
        let mut outline = Path::default();
        outline.line(&there.chain(back).collect::<Vec<_>>());
        outline.close();
        outline
    }

    fn lines_across(&self, halves: &[(f64, f64)], lines: &mut Path) {
        for place in &halves[1..halves.len() - 1] {
            lines.line(&self.ends(*place));
        }
    }

    /// What is cast on, at both ends of the outer edge.
    fn underarm(&self, halves: &[(f64, f64)], cast_on: &mut Path) {
        let (round, half) = halves[halves.len() - 1];
        for end in [-1.0, 1.0] {
            let along = |stitches: f64| self.piece.at(self.side, round, end * stitches);
            cast_on.line(&[along(half), along(half + self.piece.half_underarm)]);
        }
    }
}

/// The words of a part, in its middle, where it has room for them.
fn name(panel: &Panel, halves: &[(f64, f64)], words: &str) -> Option<Html> {
    let piece = panel.piece;
    let (deep, wide) = (
        f64::from(piece.rounds) * piece.unit,
        halves[halves.len() - 1].1 * 2.0 * piece.unit,
    );
    let has_room = match panel.side {
        Side::Back | Side::Front => deep > 22.0 && wide > NAMED,
        Side::Left | Side::Right => deep > NAMED && wide > 22.0,
    };
    let (x, y) = piece.at(panel.side, f64::from(piece.rounds) * 0.55, 0.0);
    has_room.then(|| label((x, y + 5.0), words.to_owned()))
}

/// The raglan of a question, and what it shows for those who cannot see it.
pub fn raglan(question: &Question, answer: &Answer, words: &Labels) -> Html {
    let piece = Piece::of(question);
    let [mut lines, mut cast_on]: [Path; 2] = Default::default();
    let (mut parts, mut labels) = (Vec::new(), Vec::new());
    for side in Side::ALL {
        let panel = Panel::of(&piece, answer, side);
        let halves = panel.halves();
        parts.push(plain::path("piece", &panel.outline(&halves).written()));
        if has_lines(answer) {
            panel.lines_across(&halves, &mut lines);
        }
        panel.underarm(&halves, &mut cast_on);
        let named = match side {
            Side::Back => words.back,
            Side::Front => words.front,
            Side::Left | Side::Right => words.sleeve,
        };
        labels.extend(name(&panel, &halves, named));
    }
    let rounds = f64::from(piece.rounds);
    let beside = |side, dx: f64, dy: f64, words: &str| {
        let (x, y) = piece.at(side, rounds, 0.0);
        label((x + dx, y + dy), words.to_owned())
    };
    let (x, y) = piece.middle;
    if piece.half_body * piece.unit > 14.0 && piece.half_sleeve * piece.unit > 8.0 {
        labels.push(label((x, y + 5.0), words.neck.clone()));
    }
    labels.extend([
        beside(Side::Back, 0.0, -8.0, &words.back_to),
        beside(Side::Front, 0.0, 20.0, &words.front_to),
        beside(Side::Left, -22.0, 5.0, &words.sleeve_to),
        beside(Side::Right, 22.0, 5.0, &words.sleeve_to),
    ]);
    let mut content = parts;
    content.push(plain::path("arms", &lines.written()));
    if question.underarm > 0 {
        content.push(plain::path("yarn", &cast_on.written()));
    }
    content.push(element("g", "caption", labels));
    let tall = 2.0 * piece.middle.1 - TOP + ROOM;
    picture("edges named", (360, tall as u32), &words.words, content)
}

/// The small picture: four parts that open from a neck.
pub fn sign() -> Html {
    let parts =
        "M140 84L108 20H252L220 84ZM140 128L108 192H252L220 128ZM140 84L76 62V150L140 128ZM220 84L284 62V150L220 128Z";
    picture("edges", (360, 212), "", vec![plain::path("piece", parts)])
}

#[cfg(test)]
mod tests {
    use super::*;
    use loopwright::raglan::answer;

    /// To scale: each outer edge with its cast-on stitches is as long as what it has below the underarm, and lies so many
    /// rounds from the neck.
    #[test]
    fn parts_are_to_scale_in_stitches_and_rounds() {
        let question = Question {
            underarm: 8,
            ..Question::about([56, 16], [200, 68], 64)
        };
        let found = answer(&question).unwrap();
        let piece = Piece::of(&question);
        for (side, below) in [
            (Side::Front, 100.0),
            (Side::Back, 100.0),
            (Side::Left, 68.0),
            (Side::Right, 68.0),
        ] {
            let panel = Panel::of(&piece, &found, side);
            let halves = panel.halves();
            let (round, half) = halves[halves.len() - 1];
            assert_eq!((round, 2.0 * (half + piece.half_underarm)), (64.0, below), "{side:?}");
            let [one, other] = panel.ends((round, half));
            let long = (one.0 - other.0).hypot(one.1 - other.1);
            assert!((long - 2.0 * half * piece.unit).abs() < 1e-9);
            assert!(one.0.min(other.0) >= 0.0 && one.0.max(other.0) <= 360.0);
        }
    }

    /// A part grows by at most a stitch a round at either end, so that neighbours never lie over each other.
    #[test]
    fn parts_open_from_the_neck_and_never_overlap() {
        for rounds in [64, 40, 33] {
            let question = Question {
                underarm: 8,
                ..Question::about([56, 16], [200, 68], rounds)
            };
            let found = answer(&question).unwrap();
            let piece = Piece::of(&question);
            let ends = [Side::Back, Side::Right].map(|side| {
                let panel = Panel::of(&piece, &found, side);
                let halves = panel.halves();
                let corner = panel.ends(halves[halves.len() - 1]);
                corner[if side == Side::Back { 1 } else { 0 }]
            });
            let [back, right] = ends;
            assert!(back.0 <= right.0 && back.1 <= right.1, "{ends:?}");
        }
    }
}

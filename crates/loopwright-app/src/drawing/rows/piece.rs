//! The piece upright and to scale beside a tape, the first row below: a line across at the end of each repeat, a thick
//! line along what is done, dotted where it should be. Only marks that are drawn are explained below it.

use super::tape::tape;
use crate::drawing::path::Path;
use crate::drawing::picture::{label, picture};
use crate::part::plain::{self, element, text_element};
use crate::words::rows::{self as words, Mark};
use crate::words::units::Lengths;
use loopwright::rows::{Answer, Ask, Question};
use loopwright::units::Length;
use yew::prelude::*;

/// Where the tape stands, the piece begins and ends, and its labels begin.
const TAPE: f64 = 84.0;
const LEFT: f64 = 108.0;
const RIGHT: f64 = 216.0;
const LABELS: f64 = 228.0;
/// How high the piece is, and the room above and below it.
const HIGH: f64 = 232.0;
const ROOM: f64 = 26.0;
/// Lines nearer to each other than this are no picture of repeats, or of rows.
const REPEATS_APART: f64 = 4.0;
const ROWS_APART: f64 = 2.0;
/// Labels nearer to each other than this lie over each other where they are set twice as large.
const LABELS_APART: f64 = 32.0;
/// Lengths nearer to each other than this look alike.
const SEEN: f64 = 1.5;

/// The piece as it is drawn.
struct Piece<'a> {
    question: &'a Question,
    answer: &'a Answer,
    /// Rows that are drawn.
    rows: u32,
    /// How long these are: washed, or in mid-knit as the tape meets them.
    length: Length,
    /// The longest of what is drawn.
    longest: Length,
}

impl<'a> Piece<'a> {
    fn of(question: &'a Question, answer: &'a Answer) -> Self {
        let (rows, length) = match &answer.course {
            Some(course) => (course.rows, course.stop_at),
            None => (answer.pick.rows, answer.pick.length),
        };
        let done = question.tape.map_or(Length::ZERO, |tape| tape.length);
        let piece = Self {
            question,
            answer,
            rows,
            length,
            longest: length.max(done),
        };
        let longest = piece.dotted().map_or(piece.longest, |dotted| dotted.max(piece.longest));
        Self { longest, ..piece }
    }

    /// Where a length from the edge on stands in the picture.
    fn height(&self, length: Length) -> f64 {
        let share = length.to_nm() as f64 / (self.longest.to_nm() as f64).max(1.0);
        ROOM + HIGH * (1.0 - share)
    }

    /// Where the top of a row stands. Edges that are measured along are as high as a row; the first is below.
    fn top_of(&self, row: u32) -> f64 {
        let edges = if self.answer.course.is_some() {
            0
        } else {
            self.question.edges
        };
        let below = row.saturating_add(edges.min(1));
        let share = f64::from(below) / f64::from((self.rows + edges).max(1));
        let (foot, top) = (self.height(Length::ZERO), self.height(self.length));
        foot - share * (foot - top)
    }

    /// How far one row is from the next.
    fn row(&self) -> f64 {
        self.top_of(0) - self.top_of(1)
    }

    /// Where it should be by now, or how long it is wanted, if that is elsewhere than what is drawn.
    fn dotted(&self) -> Option<Length> {
        match (&self.answer.course, self.question.ask) {
            (Some(course), _) => Some(course.should_be),
            (None, Ask::Length(wanted)) => Some(wanted),
            (None, Ask::Rows(_) | Ask::Ridges(_) | Ask::Repeats(_)) => None,
        }
    }

    /// The same where it is seen beside what it is compared with.
    fn dotted_apart(&self) -> Option<Length> {
        let beside = self.question.tape.map_or(self.length, |tape| tape.length);
        let apart = |dotted: &Length| (self.height(*dotted) - self.height(beside)).abs() >= SEEN;
        self.dotted().filter(apart)
    }

    fn shows_repeats(&self) -> bool {
        let repeat = self.question.repeat;
        repeat > 1 && self.answer.repeats > 0 && self.row() * f64::from(repeat) >= REPEATS_APART
    }

    fn shows_rows(&self) -> bool {
        self.row() >= ROWS_APART
    }

    /// What is drawn, in the order it is explained.
    fn marks(&self) -> Vec<Mark> {
        let dotted = match self.answer.course {
            Some(_) => Mark::ShouldBe,
            None => Mark::Wanted,
        };
        let marks = [
            self.answer.course.is_none().then_some(Mark::Washed),
            self.answer.course.is_some().then_some(Mark::OnTheNeedle),
            self.shows_rows().then_some(Mark::Rows),
            self.shows_repeats().then_some(Mark::Repeats),
            self.question.tape.map(|_| Mark::Done),
            self.dotted_apart().map(|_| dotted),
        ];
        marks.into_iter().flatten().collect()
    }

    /// The last row of the set-up and of each repeat, where these lines are drawn.
    fn ends_of_repeats(&self) -> Vec<u32> {
        let Question { set_up, repeat, .. } = *self.question;
        match self.shows_repeats() {
            true => (set_up..=self.rows).step_by(repeat.max(1) as usize).collect(),
            false => Vec::new(),
        }
    }

    fn outline(&self) -> Html {
        let (foot, top) = (self.height(Length::ZERO), self.height(self.length));
        let mut outline = Path::default();
        outline.line(&[(LEFT, foot), (RIGHT, foot), (RIGHT, top), (LEFT, top)]);
        outline.close();
        plain::path("you", &outline.written())
    }

    /// The ends of rows as strokes at the edge, those of repeats as lines across.
    fn across(&self) -> [Html; 2] {
        let [mut rows, mut repeats]: [Path; 2] = Default::default();
        for row in 1..=if self.shows_rows() { self.rows } else { 0 } {
            rows.line(&[(RIGHT - 8.0, self.top_of(row)), (RIGHT, self.top_of(row))]);
        }
        for row in self.ends_of_repeats() {
            repeats.line(&[(LEFT, self.top_of(row)), (RIGHT, self.top_of(row))]);
        }
        [("fine", rows), ("fine", repeats)].map(|(class, path)| plain::path(class, &path.written()))
    }

    /// What is done, and the dotted line.
    fn tape_marks(&self) -> Vec<Html> {
        let mut drawn = Vec::new();
        if let Some(measured) = self.question.tape {
            let mut done = Path::default();
            done.line(&[(LEFT, self.height(Length::ZERO)), (LEFT, self.height(measured.length))]);
            drawn.push(element("g", "pick", vec![plain::path("bar", &done.written())]));
        }
        if let Some(length) = self.dotted_apart() {
            let mut dotted = Path::default();
            let y = self.height(length);
            dotted.line(&[(LEFT - 14.0, y), (RIGHT + 8.0, y)]);
            drawn.push(plain::path("wanted", &dotted.written()));
        }
        drawn
    }

    /// The figures of the answer, each beside what it counts, the most telling first.
    fn figures(&self) -> Vec<(f64, String)> {
        let middle = |from: u32, to: u32| (self.top_of(from) + self.top_of(to)) / 2.0;
        let mut figures = vec![(self.height(self.length), words::all(self.question, self.rows))];
        if let (Some(measured), Some(course)) = (self.question.tape, &self.answer.course) {
            let done = self.height(measured.length);
            let (foot, top) = (self.height(Length::ZERO), self.height(self.length));
            figures.push(((foot + done) / 2.0, words::done(measured.rows)));
            figures.push(((done + top) / 2.0, words::to_go(course)));
        } else if self.shows_repeats() {
            let (set_up, rest) = (self.question.set_up, self.answer.row);
            let last = self.rows - rest;
            figures.push((middle(set_up, last), words::whole_repeats(self.question, self.answer)));
            figures.extend((rest > 0).then(|| (middle(last, self.rows), words::of_the_next(rest))));
            figures.extend((set_up > 0).then(|| (middle(0, set_up), words::for_the_set_up(set_up))));
        }
        figures
    }

    /// Those of the figures that have room.
    fn labels(&self) -> Vec<Html> {
        let mut taken: Vec<f64> = Vec::new();
        let mut labels = Vec::new();
        for (y, words) in self.figures() {
            if taken.iter().all(|other| (other - y).abs() >= LABELS_APART) {
                taken.push(y);
                labels.push(label((LABELS, y + 5.0), words));
            }
        }
        labels
    }
}

/// The piece with its caption.
pub fn piece(question: &Question, answer: &Answer, lengths: Lengths) -> Html {
    let piece = Piece::of(question, answer);
    let caption = words::caption(&piece.marks(), lengths.unit);
    let mut drawn = vec![
        tape(piece.longest, lengths.unit, TAPE, &|length| piece.height(length)),
        piece.outline(),
    ];
    drawn.extend(piece.across());
    drawn.extend(piece.tape_marks());
    drawn.extend(piece.labels());
    let shown = [&*words::drawing(question, answer, lengths), " ", &caption].concat();
    let frame = (360, (HIGH + 2.0 * ROOM) as u32);
    let figure = vec![
        picture("girths", frame, &shown, drawn),
        text_element("figcaption", "quiet", caption),
    ];
    element("figure", "scale", figure)
}

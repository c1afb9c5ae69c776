//! Where the yarn goes, line by line, and from there to whole balls.
//!
//! Loops are geometry, in `f64`: whole nanometres are exact there far beyond what may be asked for. The bottom of a
//! range is rounded down, the top up, what is expected to the nearest. From then on all is whole nanometres, so that
//! 6 x 125 m exactly is 6 balls.

use super::{
    Answer, Ask, BindOff, Close, Note, PerStitch, Piece, Question, Section, StitchSum, Swatch, note, practice,
};
use crate::fabric::Factor;
use crate::tables::Certainty;
use crate::units::{Length, Mass};

/// A length that is not known exactly.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Estimate {
    /// The bottom of the range.
    pub least: Length,
    /// As likely as not.
    pub expected: Length,
    /// The top of the range.
    pub most: Length,
}

impl Estimate {
    /// Known exactly.
    pub(super) const fn exactly(length: Length) -> Self {
        Self {
            least: length,
            expected: length,
            most: length,
        }
    }
}

/// What a line of the list is for.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub enum Part {
    /// A section, by its place counted from nought.
    Knitting {
        /// The place.
        section: u32,
    },
    /// Casting on, ends and all.
    CastOn,
    /// Binding off, ends and all.
    BindOff,
    /// Sewing up.
    Seams,
    /// The swatch.
    Swatch,
    /// Anything else that was asked for.
    Other,
    /// What the pattern asks for.
    Pattern,
    /// The ends at each change of ball.
    Joins,
    /// The reserve for mistakes: bought, and not expected to be used.
    Reserve,
}

/// Yarn for one purpose.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Line {
    /// What for.
    pub part: Part,
    /// How much.
    pub length: Estimate,
    /// Where the figure comes from.
    pub certainty: Certainty,
}

/// A sum of nanometres in the making: the least, the usual and the most.
#[derive(Default)]
struct Sum([f64; 3]);

impl Sum {
    fn of(length: Length, factor: Factor) -> Self {
        let mut sum = Self::default();
        sum.add(nm(length), factor, 0.0);
        sum
    }

    /// So much more, times a factor, and an end that has none.
    fn add(&mut self, amount: f64, factor: Factor, end: f64) {
        let factors = [factor.least, factor.usual, factor.most];
        for (sum, factor) in self.0.iter_mut().zip(factors) {
            *sum += amount * factor + end;
        }
    }

    /// The length, so many percent wider either way.
    fn length(&self, spread: f64) -> Estimate {
        let [least, expected, most] = self.0;
        let nm = |nm: f64| Length::from_nm(nm as i64);
        Estimate {
            least: nm((least * (1.0 - spread / 100.0)).floor()),
            expected: nm(expected.round()),
            most: nm((most * (1.0 + spread / 100.0)).ceil()),
        }
    }
}

fn nm(length: Length) -> f64 {
    length.to_nm() as f64
}

/// One more line, unless it is of nothing.
pub(super) fn push(lines: &mut Vec<Line>, part: Part, length: Estimate, certainty: Certainty) {
    if length.most > Length::ZERO {
        lines.push(Line {
            part,
            length,
            certainty,
        });
    }
}

/// Every line of a piece but the joins and the reserve.
pub(super) fn lines(piece: &Piece, per_stitch: &PerStitch) -> Vec<Line> {
    let (each, end) = (nm(per_stitch.length), nm(practice::END));
    let (mut cast_on, mut bind_off) = (Sum::default(), Sum::default());
    let (spread, practice, extras) = (per_stitch.spread, Certainty::Practice, &piece.extras);
    let mut lines = Vec::new();
    for (place, section) in (0..).zip(&piece.sections) {
        knitting(&mut lines, section, place, piece, per_stitch);
        let times = f64::from(section.times);
        let (first, last) = section.shape.edges();
        if section.cast_on && first > 0 {
            cast_on.add(f64::from(first) * times * each, practice::CAST_ON, end * times);
        }
        if let (Some(kind), 1..) = (section.bind_off, last) {
            bind_off.add(f64::from(last) * times * each, kind.loops(), end * times);
        }
    }
    push(&mut lines, Part::CastOn, cast_on.length(spread), practice);
    push(&mut lines, Part::BindOff, bind_off.length(spread), practice);
    let seams = Sum::of(extras.seams, practice::SEAM);
    push(&mut lines, Part::Seams, seams.length(0.0), practice);
    if extras.swatch {
        let swatch = Sum::of(per_stitch.swatch, Factor::ONE);
        // In one that was weighed there is nothing to estimate.
        let (spread, certainty) = match piece.swatch {
            Swatch::Gauge { .. } => (spread, practice),
            Swatch::Weighed { .. } => (0.0, Certainty::Computed),
        };
        push(&mut lines, Part::Swatch, swatch.length(spread), certainty);
    }
    let other = Estimate::exactly(extras.other);
    push(&mut lines, Part::Other, other, Certainty::Computed);
    lines
}

/// What one section takes, without its edges.
fn knitting(lines: &mut Vec<Line>, section: &Section, place: u32, piece: &Piece, per_stitch: &PerStitch) {
    let factor = section.fabric.against(piece.swatch.fabric());
    let certainty = if factor.certainty == Certainty::Practice {
        Certainty::Practice
    } else {
        per_stitch.certainty
    };
    let mut sum = Sum::default();
    sum.add(section.sum().to_f64() * nm(per_stitch.length), factor, 0.0);
    let part = Part::Knitting { section: place };
    push(lines, part, sum.length(per_stitch.spread), certainty);
}

/// The sections that end with live stitches from which nothing goes on, each with what a plain bind-off would take.
pub(super) fn left_open(sections: &[Section], per_stitch: &PerStitch) -> Vec<Note> {
    let goes_on = |place: usize| sections.get(place + 1).is_some_and(|next| !next.cast_on);
    let mut notes = Vec::new();
    for (place, section) in sections.iter().enumerate() {
        let (_, last) = section.shape.edges();
        if section.bind_off.is_some() || last == 0 || goes_on(place) {
            continue;
        }
        let times = f64::from(section.times);
        let loops = f64::from(last) * BindOff::Plain.loops().usual * nm(per_stitch.length);
        let bind_off = Length::from_nm(((loops + nm(practice::END)) * times).round() as i64);
        let section = u32::try_from(place).unwrap_or(u32::MAX);
        notes.push(Note::LeftOpen { section, bind_off });
    }
    notes
}

/// All lines together.
pub(super) fn total(lines: &[Line]) -> Estimate {
    let mut sum = Estimate::exactly(Length::ZERO);
    for Line { length, .. } in lines {
        sum.least = sum.least.saturating_add(length.least);
        sum.expected = sum.expected.saturating_add(length.expected);
        sum.most = sum.most.saturating_add(length.most);
    }
    sum
}

/// What was counted where the stitches are known.
pub(super) type Counted = (StitchSum, PerStitch);

/// From the lines to the balls: top of the range, reserve, joins, and then the ceiling.
pub(super) fn finish(question: &Question, mut lines: Vec<Line>, join: Length, counted: Option<Counted>) -> Answer {
    // In nanometres; within their bounds every product fits.
    let (ball, join) = (question.ball.length.to_nm(), join.to_nm());
    let range = total(&lines);
    let top = range.most.to_nm();
    let reserve = (top * i64::from(question.reserve) + 99) / 100;
    // The ends at every change of ball are shorter than any ball.
    let one = Length::from_nm(ball - join);
    let balls_for = |nm: i64| Length::from_nm(nm - join).div_ceil(one).unwrap_or(1).max(1);
    let balls = Balls {
        bought: balls_for(top + reserve),
        likely: balls_for(range.expected.to_nm()),
        used: balls_for(top),
    };
    let joins = Estimate::exactly(Length::from_nm(join * (balls.bought - 1)));
    push(&mut lines, Part::Joins, joins, Certainty::Practice);
    let length = total(&lines);
    let mut unused = Estimate::exactly(Length::ZERO);
    unused.most = Length::from_nm(reserve);
    push(&mut lines, Part::Reserve, unused, Certainty::Practice);
    let (need, bought) = (length.most.to_nm() + reserve, ball * balls.bought);
    let in_balls = nm(length.expected) / ball as f64;
    let weight = |mass: Mass| Mass::from_ng((in_balls * mass.to_ng() as f64).round() as i64);
    let (stitches, per_stitch) = counted.unzip();
    Answer {
        balls: count(balls.bought),
        likely: count(balls.likely),
        length,
        mass: question.ball.mass.map(weight),
        need: Length::from_nm(need),
        bought: Length::from_nm(bought),
        leftover: Length::from_nm(bought - length.expected.to_nm()),
        close: close(question, &balls, bought - need),
        stitches,
        per_stitch,
        yarns: Vec::new(),
        lines,
        notes: note::notes(question, balls.bought > 1),
    }
}

fn count(balls: i64) -> u32 {
    u32::try_from(balls).unwrap_or(u32::MAX)
}

/// Balls: those that are bought, those that are likely used, and those that are used at the most.
struct Balls {
    bought: i64,
    likely: i64,
    used: i64,
}

/// What there is to say of the last ball, with so many nanometres to spare.
fn close(question: &Question, balls: &Balls, spare: i64) -> Option<Close> {
    let ball = question.ball.length.to_nm();
    let over = ball - spare;
    // Where the same ball goes in and comes out there is no sum to be close.
    let is_same = matches!(&question.ask, Ask::Balls { ball, .. } if ball.length == question.ball.length);
    if balls.used < balls.bought {
        let balls = count(balls.bought - balls.used);
        Some(Close::ReserveOnly { balls })
    } else if is_same {
        None
    } else if balls.likely == balls.bought && spare * practice::CLOSE <= ball {
        let spare = Length::from_nm(spare);
        Some(Close::JustUnder { spare })
    } else if balls.bought > 1 && over * practice::CLOSE <= ball {
        let over = Length::from_nm(over);
        Some(Close::JustOver { over })
    } else {
        None
    }
}

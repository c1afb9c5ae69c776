//! Flare: "From 96 stitches at the neck to a hem of 3 m, in a depth of 30 cm. When do I increase, and how will it hang?"
//!
//! Depth times row gauge is the number of rounds; girth times gauge the stitches at the hem; the difference is increased
//! in rounds that lie as even as they can. Growth is never rounded round by round: the *sum* is rounded once and shared
//! out ([`crate::shaping`]). How it hangs follows from the flat circle. Its girth is 2 pi times its radius, so a round
//! that lies one row height `h` farther out needs `2 pi h / w` stitches more, of width `w`. That many and it lies flat;
//! none and it is a tube; fewer and it is a cone, whose side is the depth and which drops the less the wider it is; more
//! and it ruffles: then it reaches no farther out than its depth, and its girth is its stitches all the same.
//! Source: the geometry of circle and cone. That within a twentieth of the rate it still lies flat, and what a bind-off
//! takes, are common practice, no source. A yoke in few rounds is [`yoke`], a raglan [`raglan`]: other sums.
//!
//! ```
//! use loopwright::flare::{Hang, Hem, Question, answer};
//! use loopwright::units::{Gauge, Length, LengthUnit};
//!
//! let gauge = |count| Gauge::of(count, Gauge::TEN_CM);
//! let question = Question::about(96, Hem::Girth(Length::of(3, LengthUnit::M)), Length::from_mm(300), gauge(21), gauge(28));
//! let answer = answer(&question).unwrap();
//! // 84 rounds; 630 stitches are 534 more, and 536 are 67 rounds of 8.
//! assert_eq!((answer.rounds, answer.hem, answer.increase_rounds), (84, 632, 67));
//! // A flat circle grows by 4.712 stitches a round, which is 396 in all.
//! assert_eq!((answer.flat_rate, answer.flat_gain), (4_712, 396));
//! assert_eq!(answer.hang, Hang::Ruffle);
//! ```

mod fit;
mod note;
pub mod raglan;
mod shape;
pub mod yoke;

pub use note::{Note, Step};
pub use shape::Shape;

use crate::bounds::Bounds;
use crate::problem::{Kind, Problem};
use crate::shaping::{self, EACH, Schedule};
use crate::tables::Certainty;
use crate::units::{Gauge, Length, LengthUnit};
use crate::yarn::BindOff;
use fit::Fit;

/// How many stitches may be on the needle.
pub const STITCHES: Bounds<u32> = shaping::STITCHES;

/// How deep the piece may be, along the fabric: 5 mm to 5 m.
pub const DEPTH: Bounds<Length> = Bounds::new(Length::from_mm(5), Length::of(5, LengthUnit::M));

/// How far round a hem may be: 1 cm to 100 m, which a ruffle can be.
pub const GIRTH: Bounds<Length> = Bounds::new(Length::from_mm(10), Length::of(100, LengthUnit::M));

/// Over what a gauge may have been counted: 5 mm to 1 m.
pub const SPAN: Bounds<Length> = Bounds::new(Length::from_mm(5), Length::of(1, LengthUnit::M));

/// Stitches of one repeat.
pub const MULTIPLE: Bounds<u32> = Bounds::new(1, 1_000);

/// How far off the flat rate a piece still lies flat, in thousandths of it. Common practice, no source.
pub const STILL_FLAT: u32 = 50;

/// What a bind-off takes, in widths of the edge: the least and the most. Common practice, no source.
pub const BIND_OFF: [(BindOff, u32, u32); 3] = [
    (BindOff::Plain, 3, 4),
    (BindOff::Elastic, 4, 6),
    (BindOff::ICord, 6, 10),
];

/// Where it begins, where it ends, and how it grows. Worked in the round, from the neck down.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Question {
    /// Stitches at the neck, within [`STITCHES`].
    pub neck: u32,
    /// How wide it is to be at the hem.
    pub hem: Hem,
    /// How deep, measured along the fabric from neck to hem; within [`DEPTH`].
    pub depth: Length,
    /// Stitches in a span of the *washed* swatch: [`Gauge::COUNTS`] over [`SPAN`].
    pub gauge: Gauge,
    /// Rows in a span of the washed swatch *of the fabric of this section*: garter has half as many rows again as
    /// stockinette, and a third fewer stitches to increase.
    pub row_gauge: Gauge,
    /// Stitches gained in one increase round, within [`EACH`]: so many lines, or so many scattered.
    pub each: u32,
    /// Whether the increases stand in lines, one above the other; otherwise they are scattered evenly over the round, and
    /// the last increase round may have fewer.
    pub lines: bool,
    /// Stitches of one repeat that the hem is to be a multiple of, within [`MULTIPLE`]; 1 when any count will do.
    pub multiple: u32,
    /// Plain rounds before the first increase; none makes the beginning a gap like the others.
    pub first: Option<u32>,
    /// Plain rounds at least at the end; usually 1, before a bind-off.
    pub last: u32,
}

impl Question {
    /// The usual question: 8 lines, any count, one plain round before the bind-off.
    pub const fn about(neck: u32, hem: Hem, depth: Length, gauge: Gauge, row_gauge: Gauge) -> Self {
        Self {
            neck,
            hem,
            depth,
            gauge,
            row_gauge,
            each: 8,
            lines: true,
            multiple: 1,
            first: None,
            last: 1,
        }
    }
}

/// How wide the hem is to be.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum Hem {
    /// As wide as lies flat.
    Flat,
    /// So far round along its stitches, within [`GIRTH`]; the nearest count that can be had.
    Girth(Length),
    /// Exactly so many stitches, within [`STITCHES`].
    Stitches(u32),
}

/// How it grows and hangs.
#[derive(Clone, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Answer {
    /// Plain rounds, then an increase round, so many times; with every increase round and the count after it.
    pub schedule: Schedule,
    /// Stitches at the hem.
    pub hem: u32,
    /// Stitches gained.
    pub gain: u32,
    /// Rounds.
    pub rounds: u32,
    /// Increase rounds among them.
    pub increase_rounds: u32,
    /// What a flat circle gains in a round, in thousandths of a stitch.
    pub flat_rate: u32,
    /// What a flat piece gains in all these rounds: the sum, rounded once.
    pub flat_gain: u32,
    /// How many rounds apart increase rounds are in a flat circle, in thousandths of a round.
    pub flat_every: u32,
    /// How it hangs.
    pub hang: Hang,
    /// What it measures.
    pub shape: Shape,
    /// What a bind-off takes: of the stitches of the last round, not of the neck.
    pub bind_off: [BindOffYarn; 3],
    /// What else she should know.
    pub notes: Vec<Note>,
    /// The sum.
    pub steps: Vec<Step>,
}

/// How a piece hangs.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub enum Hang {
    /// It does not grow.
    Tube,
    /// It grows more slowly than a flat circle.
    Cone,
    /// It lies flat, or within [`STILL_FLAT`] of it.
    Flat,
    /// It grows faster, and waves.
    Ruffle,
}

/// What one way of binding off takes.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct BindOffYarn {
    /// The way.
    pub kind: BindOff,
    /// At least.
    pub least: Length,
    /// At most.
    pub most: Length,
    /// Practice, always.
    pub certainty: Certainty,
}

/// Works out the flare.
///
/// # Errors
/// Every [`Problem`] has the field `neck`, `hem`, `depth`, `gauge`, `row_gauge`, `each`, `multiple`, `first` or `last`,
/// and the nearest value that can be had. Growth that is too fast has several, of which putting one right is enough.
pub fn answer(question: &Question) -> Result<Answer, Vec<Problem>> {
    check(question)?;
    let fit = Fit::of(question).map_err(|problem| vec![problem])?;
    if fit.increase_rounds > fit.room {
        return Err(fit::too_fast(question, &fit));
    }
    let knitting = shaping::Knitting::Round;
    let schedule = if fit.gain == 0 {
        Schedule::plain(knitting, Some(question.neck), true, fit.rounds)
    } else {
        let shaping = shaping::Question {
            stitches: Some(question.neck),
            each: question.each,
            rest: !question.lines,
            knitting,
            first: question.first,
            last: question.last,
            order: shaping::Order::Mixed,
            ..shaping::Question::about(shaping::Ask::Gain(fit.gain), fit.rounds)
        };
        shaping::answer(&shaping)?.schedule
    };
    let shape = shape::of(question, &fit);
    // Of the flat rate, in thousandths.
    let part = f64::from(fit.gain) / (fit.flat_rate * f64::from(fit.rounds)) * 1_000.0;
    let hang = match part {
        _ if fit.gain == 0 => Hang::Tube,
        _ if part < f64::from(1_000 - STILL_FLAT) => Hang::Cone,
        _ if part <= f64::from(1_000 + STILL_FLAT) => Hang::Flat,
        _ => Hang::Ruffle,
    };
    let widths = |times: u32| shape.hem_girth.saturating_mul(i64::from(times));
    Ok(Answer {
        bind_off: BIND_OFF.map(|(kind, least, most)| BindOffYarn {
            kind,
            least: widths(least),
            most: widths(most),
            certainty: Certainty::Practice,
        }),
        hem: fit.hem,
        gain: fit.gain,
        rounds: fit.rounds,
        increase_rounds: fit.increase_rounds,
        flat_rate: (fit.flat_rate * 1_000.0).round() as u32,
        flat_gain: fit.flat_gain,
        flat_every: (f64::from(question.each) / fit.flat_rate * 1_000.0).round() as u32,
        notes: note::notes(question, &fit, hang, &shape),
        steps: note::steps(question, &fit),
        hang,
        shape,
        schedule,
    })
}

fn check(question: &Question) -> Result<(), Vec<Problem>> {
    let mut problems = Vec::new();
    let mut lengths = vec![("depth", question.depth, DEPTH)];
    if let Hem::Girth(girth) = question.hem {
        lengths.push(("hem", girth, GIRTH));
    }
    for (field, gauge) in [("gauge", question.gauge), ("row_gauge", question.row_gauge)] {
        lengths.push((field, gauge.span(), SPAN));
        let (count, Bounds { least, most }) = (gauge.count(), Gauge::COUNTS);
        if count < f64::from(least) {
            let kind = Kind::TooFew { least };
            problems.push(Problem { field, kind });
        } else if count > f64::from(most) {
            let kind = Kind::TooMany { most };
            problems.push(Problem { field, kind });
        }
    }
    for (field, length, bounds) in lengths {
        problems.extend(Problem::of_length(field, length, bounds));
    }
    let counts = [
        ("neck", question.neck, STITCHES),
        ("each", question.each, EACH),
        ("multiple", question.multiple, MULTIPLE),
        ("first", question.first.unwrap_or(0), shaping::PLAIN),
        ("last", question.last, shaping::PLAIN),
    ];
    for (field, value, bounds) in counts {
        problems.extend(Problem::of_count(field, value, bounds));
    }
    if problems.is_empty() { Ok(()) } else { Err(problems) }
}

#[cfg(test)]
mod tests;

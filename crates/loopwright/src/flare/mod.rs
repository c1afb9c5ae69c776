//! Flare: "From 96 stitches at the neck to a hem of 3 m, in a depth of 30 cm. When do I increase, and how will it hang?"
//!
//! Depth times row gauge is the number of rounds; girth times gauge the stitches at the hem; the difference is increased
//! in rounds at two rates at most, which are easy to hold in mind ([`crate::shaping::Rates`]), or as even as whole rounds
//! allow. Growth is never rounded round by round: the *sum* is rounded once and shared out. How it hangs follows from
//! the flat circle. Its girth is 2 pi times its radius, so a round that lies one row height `h` farther out needs `2 pi h / w` stitches more, of width `w`. That many and it lies flat;
//! none and it is a tube; fewer and it is a cone, whose side is the depth and which drops the less the wider it is; more
//! and it ruffles: then it reaches no farther out than its depth, and its girth is its stitches all the same.
//! Source: the geometry of circle and cone. That within a twentieth of the rate it still lies flat, and what a bind-off
//! takes, are common practice, no source. A yoke in few rounds is [`crate::yoke`], a raglan [`crate::raglan`]: other sums.
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

mod choices;
mod fit;
mod follow;
mod shape;

pub use crate::terms::MULTIPLE;
pub use choices::{HemKind, Name, Placing};
pub use follow::{Doing, MOST_WRITTEN, plan};
pub use shape::Shape;

use crate::bounds::Bounds;
use crate::check::Check;
use crate::choice::Choice;
use crate::problem::Problem;
use crate::shaping::{self, Drift, EACH, Growth, Pace, Rhythm, Schedule, Track, USUAL_LAST};
use crate::terms::{Multiple, Range};
use crate::units::{Gauge, Length, LengthUnit};
use crate::yarn::BindOff;
use fit::Fit;
use std::iter::repeat_n;

/// How many stitches may be on the needle.
pub const STITCHES: Bounds<u32> = shaping::STITCHES;

/// How deep the piece may be, along the fabric: 5 mm to 5 m.
pub const DEPTH: Bounds<Length> = Bounds::new(Length::from_mm(5), Length::of(5, LengthUnit::M));

/// How far round a hem may be: 1 cm to 100 m, which a ruffle can be.
pub const GIRTH: Bounds<Length> = Bounds::new(Length::from_mm(10), Length::of(100, LengthUnit::M));

/// How far off the flat rate a piece still lies flat, in thousandths of it. Common practice, no source.
pub const STILL_FLAT: u32 = 50;

/// Stitches gained in one increase round when nothing else is said. Common practice, no source.
pub const USUAL_EACH: u32 = 8;

/// What a bind-off takes, in widths of the edge. Common practice, no source.
pub const fn bind_off_widths(kind: BindOff) -> Bounds<i64> {
    match kind {
        BindOff::Plain => Bounds::new(3, 4),
        BindOff::Elastic => Bounds::new(4, 6),
        BindOff::ICord => Bounds::new(6, 10),
    }
}

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
    /// Stitches in a span of the *washed* swatch.
    pub gauge: Gauge,
    /// Rows in a span of the washed swatch *of the fabric of this section*: garter has half as many rows again as
    /// stockinette, and a third fewer stitches to increase.
    pub row_gauge: Gauge,
    /// Stitches gained in one increase round, within [`EACH`] and no more than the neck has: so many lines, or so many
    /// scattered.
    pub each: u32,
    /// Whether the increases stand in lines, one above the other; otherwise they are scattered evenly over the round, and
    /// the last increase round may have fewer.
    pub lines: bool,
    /// Stitches of one repeat that the hem is to be a multiple of, within [`MULTIPLE`]; 1 when any count will do.
    pub multiple: u32,
    /// Plain rounds before the first increase; with none, beginning and end share a gap, so that a single increase round
    /// stands in the middle.
    pub first: Option<u32>,
    /// Plain rounds at least at the end; usually [`USUAL_LAST`], before a bind-off.
    pub last: u32,
    /// What the increase rounds are shared out for: usually to be held in the head.
    pub rhythm: Pace,
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
            each: USUAL_EACH,
            lines: true,
            multiple: Multiple::ANY.of,
            first: None,
            last: USUAL_LAST,
            rhythm: Pace::START,
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
    /// How far they stray from the straight line.
    pub drift: Drift,
    /// Stitches at the hem.
    pub hem: u32,
    /// Stitches gained.
    pub gain: u32,
    /// Rounds.
    pub rounds: u32,
    /// Increase rounds among them.
    pub increase_rounds: u32,
    /// Increases in the last of them, where they are fewer than in the others.
    pub rest: Option<u32>,
    /// What a flat circle gains in a round, in thousandths of a stitch.
    pub flat_rate: u32,
    /// What a flat piece gains in all these rounds: the sum, rounded once.
    pub flat_gain: u32,
    /// How it hangs.
    pub hang: Hang,
    /// What it measures.
    pub shape: Shape,
    /// What a bind-off takes.
    pub bind_off: BindOffYarn,
}

/// What a bind-off takes by each way, the least and the most: of the stitches of the last round, not of the neck.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct BindOffYarn {
    /// Of the plain chain.
    pub plain: Range,
    /// Of one that stretches.
    pub elastic: Range,
    /// Of an i-cord.
    pub i_cord: Range,
}

impl BindOffYarn {
    fn of(hem_girth: Length) -> Self {
        let range = |kind| {
            let widths = bind_off_widths(kind);
            Range {
                least: hem_girth.saturating_mul(widths.least),
                most: hem_girth.saturating_mul(widths.most),
            }
        };
        Self {
            plain: range(BindOff::Plain),
            elastic: range(BindOff::Elastic),
            i_cord: range(BindOff::ICord),
        }
    }
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

/// Works out the flare.
///
/// # Errors
/// Every [`Problem`] has the field `neck`, `girth` or `stitches` (of the hem), `depth`, `gauge`, `row_gauge`, `each`,
/// `multiple`, `first` or `last`, and the nearest value that can be had. Growth that is too fast has several, of which
/// putting one right is enough.
pub fn answer(question: &Question) -> Result<Answer, Vec<Problem>> {
    check(question)?;
    let fit = Fit::of(question, question.each).map_err(|misfit| vec![misfit.problem(question)])?;
    if fit.increase_rounds > fit.room.room() {
        return Err(fit::too_fast(question, &fit));
    }
    let rest = Some(fit.gain % question.each).filter(|rest| *rest > 0);
    let full_rounds = (fit.gain / question.each) as usize;
    let changes: Vec<u32> = repeat_n(question.each, full_rounds).chain(rest).collect();
    let shape = shape::of(question, &fit);
    let growth = Growth {
        from: question.neck,
        changes: &changes,
    };
    let Track { schedule, drift } = Track::at(question.rhythm, fit.room, Rhythm::Centred, growth);
    Ok(Answer {
        schedule,
        drift,
        hem: fit.hem,
        gain: fit.gain,
        rounds: fit.room.all,
        increase_rounds: fit.increase_rounds,
        rest,
        flat_rate: whole(fit.flat_rate * 1_000.0),
        flat_gain: whole(fit.flat_rate * f64::from(fit.room.all)),
        hang: hang(&fit),
        bind_off: BindOffYarn::of(shape.hem_girth),
        shape,
    })
}

/// How it hangs, by what it gains beside a flat circle.
fn hang(fit: &Fit) -> Hang {
    // Of the flat rate, in thousandths.
    let part = f64::from(fit.gain) / (fit.flat_rate * f64::from(fit.room.all)) * 1_000.0;
    if fit.gain == 0 {
        Hang::Tube
    } else if part < f64::from(1_000 - STILL_FLAT) {
        Hang::Cone
    } else if part <= f64::from(1_000 + STILL_FLAT) {
        Hang::Flat
    } else {
        Hang::Ruffle
    }
}

/// The nearest whole number there is.
fn whole(value: f64) -> u32 {
    value.round() as u32
}

fn check(question: &Question) -> Result<(), Vec<Problem>> {
    let mut check = Check::default();
    check.count(Name::Neck, question.neck, STITCHES);
    check.length(Name::Depth, question.depth, DEPTH);
    match question.hem {
        Hem::Flat => {}
        Hem::Girth(girth) => check.length(Name::Girth, girth, GIRTH),
        Hem::Stitches(stitches) => check.count(Name::Stitches, stitches, STITCHES),
    }
    check.gauge(Name::Gauge, question.gauge);
    check.gauge(Name::RowGauge, question.row_gauge);
    // One to a gap, of which the neck has as many as stitches.
    let most = EACH.most.min(question.neck.max(EACH.least));
    check.count(Name::Each, question.each, Bounds::new(EACH.least, most));
    check.count(Name::Multiple, question.multiple, MULTIPLE);
    check.count(Name::First, question.first.unwrap_or(0), shaping::PLAIN);
    check.count(Name::Last, question.last, shaping::PLAIN);
    check.done()
}

#[cfg(test)]
mod tests;

//! The sum as steps. Data only: the page makes the sentences.

use super::own;
use super::rank::{self, Basis, Body, Found, Goal};
use super::{Listed, PerMille, Question, Ranked, Span};
use crate::units::{Gauge, Length};

/// One line of the sum.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub enum Step {
    /// Bust and twice the upper arm: the girth that binds a wrap.
    RoundBoth {
        /// The bust.
        bust: Length,
        /// One upper arm.
        upper_arm: Length,
        /// The sum.
        girth: Length,
    },
    /// Body and ease: the garment that is looked for.
    Target {
        /// The body.
        body: Length,
        /// The ease or room.
        ease: Length,
        /// The sum.
        garment: Length,
    },
    /// Stitches over a gauge: what a size measures.
    ByStitches {
        /// The size.
        size: usize,
        /// Its stitches.
        stitches: u32,
        /// The gauge.
        gauge: Gauge,
        /// The girth.
        girth: Length,
    },
    /// A listed girth by the pattern's gauge over her own: what a size measures.
    ByGauges {
        /// The size.
        size: usize,
        /// What is listed.
        listed: Length,
        /// The pattern's gauge.
        pattern: Gauge,
        /// Her own.
        own: Gauge,
        /// The girth.
        girth: Length,
    },
    /// The body against the range of a size.
    Range {
        /// The size.
        size: usize,
        /// The bodies it fits, at her own gauge.
        fits: Span,
        /// By how much that was moved from what is listed.
        moved: Length,
        /// The bust.
        bust: Length,
        /// How far outside; nothing when within.
        away: Length,
    },
    /// Garment less body: the ease of a size, or the room of a wrap.
    Ease {
        /// The size.
        size: usize,
        /// The garment.
        garment: Length,
        /// The body.
        body: Length,
        /// The difference.
        ease: Length,
        /// The same in thousandths of the body.
        share: PerMille,
    },
}

pub(super) fn steps(question: &Question, goal: &Goal, body: &Body, found: &Found) -> Vec<Step> {
    let mut steps = Vec::new();
    if let Basis::UpperArm(upper_arm) | Basis::GuessedArm(upper_arm) = body.basis {
        steps.push(Step::RoundBoth {
            bust: body.bust,
            upper_arm,
            girth: body.girth,
        });
    }
    if let Some(garment) = goal.target() {
        let ease = garment.saturating_sub(body.girth);
        steps.push(Step::Target {
            body: body.girth,
            ease,
            garment,
        });
    }
    for ranked in found.ranked.iter().take(2) {
        steps.extend(by_gauge(question, ranked));
        if let Some(fits) = ranked.fits {
            let moved = fits.from.saturating_sub(question.sizes[ranked.size].girth.from);
            let (size, bust, away) = (ranked.size, question.bust, ranked.away);
            steps.push(Step::Range {
                size,
                fits,
                moved,
                bust,
                away,
            });
        }
        if let Some(garment) = ranked.garment() {
            let ease = garment.saturating_sub(body.girth);
            let share = rank::share(ease, body.girth);
            steps.push(Step::Ease {
                size: ranked.size,
                garment,
                body: body.girth,
                ease,
                share,
            });
        }
    }
    steps
}

/// How the girth of a garment came out of a gauge, where it did.
fn by_gauge(question: &Question, ranked: &Ranked) -> Option<Step> {
    let measures = ranked.measures?;
    let size = ranked.size;
    let listed = &question.sizes[size];
    let (theirs, ours) = own::gauges(question);
    let by_stitches = |gauge: Option<Gauge>, girth| {
        Some(Step::ByStitches {
            size,
            stitches: listed.stitches?,
            gauge: gauge?,
            girth,
        })
    };
    match measures.own {
        Some(girth) if measures.from_stitches => by_stitches(ours, girth),
        Some(girth) => Some(Step::ByGauges {
            size,
            listed: listed.girth.middle(),
            pattern: theirs?,
            own: ours?,
            girth,
        }),
        None if question.listed == Some(Listed::Body) => by_stitches(theirs, measures.pattern?),
        None => None,
    }
}

//! The sum behind a size, as steps. Data only: the page makes the sentences.

use super::rank::Sought;
use super::{PerMille, Ranked, Span, own};
use crate::units::{Gauge, Length};

/// One line of the sum. A size is its place in the list of the question.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub enum Step {
    /// Bust and twice the upper arm.
    RoundBoth {
        /// The bust.
        bust: Length,
        /// One upper arm.
        upper_arm: Length,
        /// Round them all.
        round: Length,
    },
    /// The garment that is looked for.
    Target {
        /// The body.
        body: Length,
        /// What is added to it; less than nothing where the garment is to be smaller.
        ease: Length,
        /// The garment.
        garment: Length,
    },
    /// What a size measures, by its stitches.
    ByStitches {
        /// The size.
        size: usize,
        /// Its stitches.
        stitches: u32,
        /// The gauge they are knitted at.
        gauge: Gauge,
        /// What they make.
        girth: Length,
    },
    /// What a size measures, by the two gauges.
    ByGauges {
        /// The size.
        size: usize,
        /// What is listed.
        listed: Length,
        /// The pattern's gauge.
        pattern: Gauge,
        /// The knitter's own.
        own: Gauge,
        /// What that makes.
        girth: Length,
    },
    /// The body is one of those a size is for.
    Inside {
        /// The size.
        size: usize,
        /// The bodies it is for.
        bodies: Span,
        /// The body.
        body: Length,
    },
    /// The body is none of those a size is for.
    Outside {
        /// The size.
        size: usize,
        /// The bodies it is for.
        bodies: Span,
        /// The body.
        body: Length,
        /// How far outside that is.
        away: Length,
    },
    /// How a size sits.
    Sits {
        /// The size.
        size: usize,
        /// The garment.
        garment: Length,
        /// The body.
        body: Length,
        /// The garment less the body.
        ease: Length,
        /// The same as a share of the body.
        share: PerMille,
    },
}

/// The sum, for the pick and the runner-up.
pub(super) fn steps(sought: &Sought, ranked: &[Ranked]) -> Vec<Step> {
    let mut steps = Vec::new();
    let (bust, body) = (sought.bust, sought.body);
    if let Some(upper_arm) = sought.arm {
        let round = body;
        steps.push(Step::RoundBoth { bust, upper_arm, round });
    }
    if let Some(garment) = sought.target {
        let ease = garment.saturating_sub(body);
        steps.push(Step::Target { body, ease, garment });
    }
    for ranked in ranked.iter().take(2) {
        if sought.target.is_none() {
            steps.push(of_bodies(body, ranked));
        }
        if let (Some(garment), Some(ease)) = (ranked.garment, ranked.ease) {
            let Ranked { size, share, .. } = *ranked;
            steps.extend(of_garment(sought, ranked, garment));
            steps.push(Step::Sits {
                size,
                garment,
                body,
                ease,
                share,
            });
        }
    }
    steps
}

/// How the body lies in the range of a size.
fn of_bodies(body: Length, ranked: &Ranked) -> Step {
    let (size, bodies) = (ranked.size, ranked.girth);
    if ranked.suits {
        return Step::Inside { size, bodies, body };
    }
    let away = ranked.away();
    Step::Outside {
        size,
        bodies,
        body,
        away,
    }
}

/// Where the girth of a garment comes from, if not from the list alone.
fn of_garment(sought: &Sought, ranked: &Ranked, girth: Length) -> Option<Step> {
    let question = sought.question;
    let size = ranked.size;
    let listed = question.sizes.get(size)?;
    let (theirs, ours) = (own::gauge(question.pattern), own::gauge(question.own));
    // The garment of a list of bodies is known by its stitches alone.
    let stitches = listed
        .stitches
        .filter(|_| ranked.from_stitches || sought.target.is_none());
    if let Some(stitches) = stitches {
        let gauge = if ranked.from_stitches { ours } else { theirs }?;
        return Some(Step::ByStitches {
            size,
            stitches,
            gauge,
            girth,
        });
    }
    let (pattern, own) = theirs.zip(ours)?;
    let listed = listed.girth.middle();
    Some(Step::ByGauges {
        size,
        listed,
        pattern,
        own,
        girth,
    })
}

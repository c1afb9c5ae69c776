//! From depth and hem to rounds and stitches that can be had.

use super::{EACH, Hem, Question, STITCHES};
use crate::problem::{Kind, Problem};
use crate::shaping::ROWS;
use crate::units::{Amount, Length};

/// The counts of a flare.
#[derive(Clone, Copy, Debug)]
pub(super) struct Fit {
    pub rounds: u32,
    pub hem: u32,
    pub gain: u32,
    pub increase_rounds: u32,
    /// Rounds that may be increase rounds.
    pub room: u32,
    /// Stitches a flat circle gains in a round.
    pub flat_rate: f64,
    /// Stitches a flat piece gains in these rounds, rounded once.
    pub flat_gain: u32,
    counts: Counts,
}

/// The counts a hem can have: the least, and so many more each time.
#[derive(Clone, Copy, Debug)]
struct Counts {
    least: u32,
    step: u32,
}

impl Counts {
    /// The counts that increases reach from the neck, of those that are a multiple.
    fn of(question: &Question, multiple: u32) -> Option<Self> {
        let unit = if question.lines { question.each } else { 1 };
        let mut found = (0..2 * multiple)
            .map(|times| question.neck + times * unit)
            .filter(|count| count.is_multiple_of(multiple));
        let least = found.next()?;
        let step = found.next()? - least;
        Some(Self { least, step })
    }

    /// The largest that is no more than this; none when this is less than the least.
    fn below(self, most: u32) -> Option<u32> {
        Some(self.least + most.checked_sub(self.least)? / self.step * self.step)
    }

    /// The nearest to an ideal, the smaller of two that are equally near.
    fn nearest(self, ideal: f64) -> u32 {
        let steps = (ideal - f64::from(self.least)) / f64::from(self.step);
        // A float becomes the nearest number there is, so that an absurd one is only a very large one.
        let steps = (steps - 0.5).ceil().max(0.0) as u32;
        self.least.saturating_add(steps.saturating_mul(self.step))
    }
}

impl Fit {
    pub(super) fn of(question: &Question) -> Result<Self, Problem> {
        let rounds = question.row_gauge.count_over(question.depth).round();
        let measured =
            |rounds: u32| Amount::Length(question.row_gauge.width_of(f64::from(rounds)).unwrap_or(Length::MAX));
        let problem = |field, kind| Err(Problem { field, kind });
        if rounds < f64::from(ROWS.least) {
            let least = measured(ROWS.least);
            return problem("depth", Kind::TooSmall { least });
        }
        if rounds > f64::from(ROWS.most) {
            let most = measured(ROWS.most);
            return problem("depth", Kind::TooLarge { most });
        }
        let rounds = rounds as u32;
        let Some(counts) = Counts::of(question, question.multiple) else {
            // The multiple and the lines have a factor in common that the neck has not.
            let fits = |multiple: &u32| Counts::of(question, *multiple).is_some();
            let below = (1..question.multiple).rev().find(fits);
            let above = (question.multiple + 1..=super::MULTIPLE.most).find(fits);
            return problem("multiple", Kind::NoExact { below, above });
        };
        let flat_rate = std::f64::consts::TAU * (question.gauge.per_cm() / question.row_gauge.per_cm());
        let flat = flat_rate * f64::from(rounds);
        let hem = match question.hem {
            Hem::Flat => counts.nearest(f64::from(question.neck) + flat),
            Hem::Girth(girth) => {
                let ideal = question.gauge.count_over(girth);
                if ideal < f64::from(question.neck) - 0.5 {
                    let least = question.gauge.width_of(f64::from(question.neck)).unwrap_or(Length::MAX);
                    let least = Amount::Length(least);
                    return problem("hem", Kind::TooSmall { least });
                }
                counts.nearest(ideal)
            }
            Hem::Stitches(wanted) => {
                let below = counts.below(wanted.min(STITCHES.most));
                if below != Some(wanted) {
                    let above = below.map_or(counts.least, |below| below.saturating_add(counts.step));
                    let above = Some(above).filter(|above| *above <= STITCHES.most);
                    return problem("hem", Kind::NoExact { below, above });
                }
                wanted
            }
        };
        if hem > STITCHES.most {
            // Past what a needle holds.
            return match (question.hem, counts.below(STITCHES.most)) {
                (Hem::Girth(_), Some(most)) => problem(
                    "hem",
                    Kind::TooLarge {
                        most: girth(question, most),
                    },
                ),
                _ => problem(
                    "neck",
                    Kind::TooMany {
                        most: STITCHES.most / 2,
                    },
                ),
            };
        }
        let gain = hem - question.neck;
        let kept = question.first.unwrap_or(0).saturating_add(question.last);
        Ok(Self {
            rounds,
            hem,
            gain,
            increase_rounds: gain.div_ceil(question.each),
            room: rounds.saturating_sub(kept),
            flat_rate,
            flat_gain: flat.round() as u32,
            counts,
        })
    }
}

fn girth(question: &Question, stitches: u32) -> Amount {
    Amount::Length(question.gauge.width_of(f64::from(stitches)).unwrap_or(Length::MAX))
}

/// More increase rounds than there are rounds for them: a deeper piece, more increases in each, or a narrower hem.
pub(super) fn too_fast(question: &Question, fit: &Fit) -> Vec<Problem> {
    let mut problems = Vec::new();
    if fit.room == 0 {
        // No round is left between the plain ones.
        let (first, last) = (question.first.unwrap_or(0), question.last);
        let (field, other) = if first >= fit.rounds {
            ("first", last)
        } else {
            ("last", first)
        };
        let most = fit.rounds.saturating_sub(other).saturating_sub(1);
        let kind = Kind::TooMany { most };
        problems.push(Problem { field, kind });
    }
    let each_most = if fit.room > 0 { EACH.most } else { 0 };
    for each in question.each + 1..=each_most {
        let more = Question { each, ..*question };
        if Fit::of(&more).is_ok_and(|fit| fit.increase_rounds <= fit.room) {
            let kind = Kind::TooFew { least: each };
            problems.push(Problem { field: "each", kind });
            break;
        }
    }
    let most = question.neck.saturating_add(fit.room.saturating_mul(question.each));
    let most = fit.counts.below(most);
    let kind = match (question.hem, most) {
        (Hem::Stitches(_), Some(most)) => Some(Kind::TooMany { most }),
        (Hem::Girth(_), Some(most)) => Some(Kind::TooLarge {
            most: girth(question, most),
        }),
        _ => None,
    };
    problems.extend(kind.map(|kind| Problem { field: "hem", kind }));
    // A deeper flat piece grows as fast as before.
    let rounds = fit.rounds - fit.room + fit.increase_rounds;
    let deep = question
        .row_gauge
        .width_of(f64::from(rounds))
        .filter(|deep| super::DEPTH.allow(*deep));
    if let (true, Some(deep)) = (rounds <= ROWS.most && question.hem != Hem::Flat, deep) {
        let least = Amount::Length(deep);
        problems.push(Problem {
            field: "depth",
            kind: Kind::TooSmall { least },
        });
    }
    if problems.is_empty() {
        // No single change will do.
        let kind = Kind::NoExact {
            below: None,
            above: None,
        };
        problems.push(Problem { field: "hem", kind });
    }
    problems
}

//! From depth and hem to rounds and stitches that can be had.

use super::{EACH, Hem, MULTIPLE, Question, STITCHES};
use crate::check::Check;
use crate::problem::{Kind, Problem};
use crate::shaping::{ROWS, Rounds};
use crate::units::{Amount, Gauge, Length};

/// The counts of a flare.
#[derive(Clone, Copy, Debug)]
pub(super) struct Fit {
    pub room: Rounds,
    pub hem: u32,
    pub gain: u32,
    pub increase_rounds: u32,
    /// Stitches a flat circle gains in a round.
    pub flat_rate: f64,
    counts: Counts,
}

/// The counts a hem can have: the least, and so many more each time.
#[derive(Clone, Copy, Debug)]
struct Counts {
    least: u32,
    step: u32,
}

impl Counts {
    /// The counts that are a multiple, of those that increases reach from the neck: none when multiple and lines have a
    /// factor in common that the neck has not.
    fn of(question: &Question, each: u32, multiple: u32) -> Option<Self> {
        let unit = if question.lines { each } else { 1 };
        let factor = common(unit, multiple);
        if !question.neck.is_multiple_of(factor) {
            return None;
        }
        let mut least = question.neck;
        while !least.is_multiple_of(multiple) {
            least += unit;
        }
        let step = unit / factor * multiple;
        Some(Self { least, step })
    }

    /// The largest that is no more than this; none when this is less than the least.
    fn below(self, most: u32) -> Option<u32> {
        Some(most - most.checked_sub(self.least)? % self.step)
    }

    /// The nearest to an ideal, the smaller of two that are equally near.
    fn nearest(self, ideal: f64) -> u32 {
        let steps = (ideal - f64::from(self.least)) / f64::from(self.step);
        // A float becomes the nearest number there is, so that an absurd one is only a very large one.
        let steps = (steps - 0.5).ceil() as u32;
        self.least.saturating_add(steps.saturating_mul(self.step))
    }
}

/// The largest factor that two numbers have in common.
fn common(one: u32, other: u32) -> u32 {
    one.checked_rem(other).map_or(one, |over| common(other, over))
}

/// To so much lengths are advised: half a centimetre.
const HALF: i64 = 5_000_000;

/// How much room so many take, down to a half centimetre or up to it.
#[inline(never)]
fn room_of(gauge: Gauge, count: u32, up: i64) -> Amount {
    let length = gauge.width_of(f64::from(count)).unwrap_or(Length::MAX).to_nm();
    Amount::Length(Length::from_nm(length.saturating_add(up) / HALF * HALF))
}

/// What makes it no less than so many take.
const UP: i64 = HALF - 1;

impl Fit {
    /// The counts with so many increases in one round.
    pub(super) fn of(question: &Question, each: u32) -> Result<Self, Problem> {
        let Question {
            neck,
            gauge,
            row_gauge,
            multiple,
            ..
        } = *question;
        let problem = |field, kind| Err(Problem::new(field, kind));
        // Less than half a row is a round all the same.
        let rounds = row_gauge.count_over(question.depth).round().max(f64::from(ROWS.least));
        if rounds > f64::from(ROWS.most) {
            let most = room_of(row_gauge, ROWS.most, 0);
            return problem("depth", Kind::TooLarge { most });
        }
        let Some(counts) = Counts::of(question, each, multiple) else {
            let (mut below, mut above) = (None, None);
            for other in 1..=MULTIPLE.most {
                if Counts::of(question, each, other).is_none() {
                    continue;
                }
                if other < multiple {
                    below = Some(other);
                } else if above.is_none() {
                    above = Some(other);
                }
            }
            return problem("multiple", Kind::NoExact { below, above });
        };
        let flat_rate = std::f64::consts::TAU * (gauge.per_cm() / row_gauge.per_cm());
        let most = counts.below(STITCHES.most);
        let hem = counts.nearest(match question.hem {
            Hem::Flat => f64::from(neck) + flat_rate * rounds,
            Hem::Girth(girth) => gauge.count_over(girth),
            Hem::Stitches(stitches) => f64::from(stitches),
        });
        match (question.hem, most) {
            (Hem::Girth(girth), _) if gauge.count_over(girth) < f64::from(neck) - 0.5 => {
                let least = room_of(gauge, neck, UP);
                return problem("girth", Kind::TooSmall { least });
            }
            (Hem::Stitches(wanted), _) if wanted != hem => {
                let below = counts.below(wanted);
                let above = below.map_or(counts.least, |below| below + counts.step);
                let above = Some(above).filter(|above| *above <= STITCHES.most);
                let kind = match (below, above) {
                    (None, Some(least)) => Kind::TooFew { least },
                    _ => Kind::NoExact { below, above },
                };
                return problem("stitches", kind);
            }
            (Hem::Girth(_), Some(most)) if hem > most => {
                let most = room_of(gauge, most, 0);
                return problem("girth", Kind::TooLarge { most });
            }
            // Wider than a needle holds, whatever the hem: the neck leaves too little.
            (_, most) if hem > most.unwrap_or(0) => {
                let most = STITCHES.most / 2;
                return problem("neck", Kind::TooMany { most });
            }
            _ => {}
        }
        let gain = hem - neck;
        Ok(Self {
            room: Rounds {
                all: rounds as u32,
                first: question.first,
                last: question.last,
            },
            hem,
            gain,
            increase_rounds: gain.div_ceil(each),
            flat_rate,
            counts,
        })
    }
}

/// More increase rounds than there are rounds for them: a deeper piece, more increases in each, or a narrower hem.
pub(super) fn too_fast(question: &Question, fit: &Fit) -> Vec<Problem> {
    let mut check = Check::default();
    let room = fit.room.room();
    // Plain rounds at the beginning that leave none are what is wrong.
    if let (Some(1..), Some(most)) = (
        question.first,
        fit.room.all.checked_sub(question.last + fit.increase_rounds),
    ) {
        check.wrong("first", Kind::TooMany { most });
        return check.problems;
    }
    for each in question.each + 1..=EACH.most.min(question.neck) {
        if Fit::of(question, each).is_ok_and(|fit| fit.increase_rounds <= room) {
            check.wrong("each", Kind::TooFew { least: each });
            break;
        }
    }
    let most = question.neck.saturating_add(room.saturating_mul(question.each));
    match (question.hem, fit.counts.below(most)) {
        (Hem::Stitches(_), Some(most)) => check.wrong("stitches", Kind::TooMany { most }),
        (Hem::Girth(_), Some(most)) => {
            let most = room_of(question.gauge, most, 0);
            check.wrong("girth", Kind::TooLarge { most });
        }
        _ => {}
    }
    // A deeper flat piece grows as fast as before, and gains only by its plain rounds.
    if question.hem != Hem::Flat || check.problems.is_empty() {
        let least = room_of(question.row_gauge, fit.room.kept() + fit.increase_rounds, UP);
        check.wrong("depth", Kind::TooSmall { least });
    }
    check.problems
}

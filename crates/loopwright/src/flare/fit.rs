//! From depth and hem to rounds and stitches that can be had.

use super::{EACH, Hem, MULTIPLE, Name, Question, STITCHES};
use crate::check::Check;
use crate::problem::{Kind, Problem};
use crate::shaping::{ROWS, Rounds};
use crate::units::rate::Rate;
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
        #[cfg(test)]
        super::tests::TRIED.set(super::tests::TRIED.get() + 1);
        let unit = if question.lines { each } else { 1 };
        let factor = common(unit, multiple);
        if !question.neck.is_multiple_of(factor) {
            return None;
        }
        // In units of the factor: so many steps make the neck a multiple.
        let (parts, step) = (multiple / factor, unit / factor);
        let missing = (parts - question.neck / factor % parts) % parts;
        let steps = u64::from(missing) * inverse(step, parts) % u64::from(parts);
        Some(Self {
            least: question.neck + steps as u32 * unit,
            step: step * multiple,
        })
    }

    /// The largest that is no more than this; none when this is less than the least.
    fn below(self, most: u32) -> Option<u32> {
        Some(most - most.checked_sub(self.least)? % self.step)
    }

    /// The nearest counts below and above one that cannot be had.
    fn beside(self, wanted: u32) -> Kind {
        let below = self.below(wanted);
        let above = below.map_or(self.least, |below| below + self.step);
        let above = Some(above).filter(|above| *above <= STITCHES.most);
        match (below, above) {
            (None, Some(least)) => Kind::TooFew { least },
            (below, above) => Kind::NoExact { below, above },
        }
    }

    /// The nearest to an ideal, the smaller of two that are equally near.
    fn nearest(self, ideal: f64) -> u32 {
        let steps = (ideal - f64::from(self.least)) / f64::from(self.step);
        // A float becomes the nearest number there is, so that an absurd one is only a very large one.
        let steps = (steps - 0.5).ceil() as u32;
        self.least.saturating_add(steps.saturating_mul(self.step))
    }
}

/// The largest factor that two numbers have in common, by Euclid's rule.
fn common(one: u32, other: u32) -> u32 {
    one.checked_rem(other).map_or(one, |over| common(other, over))
}

/// What a number has to be multiplied by to be 1 more than a multiple of another, with which it has no factor in common;
/// by the same rule, walked back.
fn inverse(number: u32, multiple: u32) -> u64 {
    let (mut rest, mut next) = (i64::from(multiple), i64::from(number));
    let (mut found, mut next_found) = (0, 1);
    while next > 0 {
        let times = rest / next;
        (rest, next) = (next, rest - times * next);
        (found, next_found) = (next_found, found - times * next_found);
    }
    found.rem_euclid(i64::from(multiple)) as u64
}

/// Lengths are advised in half centimetres.
const HALF_CM: i64 = 5_000_000;

/// The most half centimetres that so many leave room for.
fn room_below(gauge: Gauge, count: u32) -> Amount {
    half_cm(Rate::of(gauge).width_of(count).to_nm())
}

/// The fewest half centimetres that have room for so many.
fn room_above(gauge: Gauge, count: u32) -> Amount {
    half_cm(Rate::of(gauge).width_of(count).to_nm().saturating_add(HALF_CM - 1))
}

/// Whole half centimetres of so many nanometres.
fn half_cm(nm: i64) -> Amount {
    Amount::Length(Length::from_nm(nm / HALF_CM * HALF_CM))
}

/// Why there are no such counts. What would do instead is worked out only where it is asked for.
#[derive(Clone, Copy, Debug)]
pub(super) enum Misfit {
    /// No hem is such a multiple with so many increases in one round.
    Multiple {
        each: u32,
    },
    Other(Problem),
}

impl From<Problem> for Misfit {
    fn from(problem: Problem) -> Self {
        Self::Other(problem)
    }
}

impl Misfit {
    /// What to type instead.
    pub(super) fn problem(self, question: &Question) -> Problem {
        match self {
            Self::Multiple { each } => Problem::new(Name::Multiple, nearest_multiples(question, each)),
            Self::Other(problem) => problem,
        }
    }
}

impl Fit {
    /// The counts with so many increases in one round.
    pub(super) fn of(question: &Question, each: u32) -> Result<Self, Misfit> {
        let rounds = rounds(question)?;
        let counts = Counts::of(question, each, question.multiple).ok_or(Misfit::Multiple { each })?;
        let flat_rate = std::f64::consts::TAU * (question.gauge.per_cm() / question.row_gauge.per_cm());
        let hem = counts.nearest(match question.hem {
            Hem::Flat => f64::from(question.neck) + flat_rate * f64::from(rounds),
            Hem::Girth(girth) => question.gauge.count_over(girth),
            Hem::Stitches(stitches) => f64::from(stitches),
        });
        check_hem(question, counts, hem)?;
        let gain = hem - question.neck;
        Ok(Self {
            room: Rounds {
                all: rounds,
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

/// The rounds of the depth. Less than half a row is a round all the same.
fn rounds(question: &Question) -> Result<u32, Problem> {
    let rounds = Rate::of(question.row_gauge).count_over(question.depth).nearest();
    match u32::try_from(rounds.max(i128::from(ROWS.least))) {
        Ok(rounds) if rounds <= ROWS.most => Ok(rounds),
        Ok(_) | Err(_) => {
            let most = room_below(question.row_gauge, ROWS.most);
            Err(Problem::new(Name::Depth, Kind::TooLarge { most }))
        }
    }
}

/// The multiples nearest to the one that no hem can be.
fn nearest_multiples(question: &Question, each: u32) -> Kind {
    let can_be_had = |multiple: &u32| Counts::of(question, each, *multiple).is_some();
    let wanted = question.multiple;
    Kind::NoExact {
        below: (MULTIPLE.least..wanted).rev().find(can_be_had),
        above: (wanted..=MULTIPLE.most).find(can_be_had),
    }
}

/// The hem must be one that a flare can have: exactly so many stitches where they were asked for, no fewer than at the
/// neck, and no more than a needle holds.
fn check_hem(question: &Question, counts: Counts, hem: u32) -> Result<(), Problem> {
    let Question { neck, gauge, .. } = *question;
    let most = counts.below(STITCHES.most);
    let is_too_wide = most.is_none_or(|most| hem > most);
    match question.hem {
        Hem::Girth(girth) if gauge.count_over(girth) < f64::from(neck) - 0.5 => {
            let least = room_above(gauge, neck);
            return Err(Problem::new(Name::Girth, Kind::TooSmall { least }));
        }
        Hem::Stitches(wanted) if wanted != hem => return Err(Problem::new(Name::Stitches, counts.beside(wanted))),
        Hem::Flat | Hem::Girth(_) | Hem::Stitches(_) => {}
    }
    match (question.hem, most) {
        _ if !is_too_wide => Ok(()),
        (Hem::Girth(_), Some(most)) => {
            let most = room_below(gauge, most);
            Err(Problem::new(Name::Girth, Kind::TooLarge { most }))
        }
        // Whatever the hem, the neck leaves too little.
        (Hem::Girth(_), None) | (Hem::Flat | Hem::Stitches(_), _) => {
            let most = STITCHES.most / 2;
            Err(Problem::new(Name::Neck, Kind::TooMany { most }))
        }
    }
}

/// More increase rounds than there are rounds for them: a deeper piece, more increases in each, or a narrower hem.
pub(super) fn too_fast(question: &Question, fit: &Fit) -> Vec<Problem> {
    let mut check = Check::default();
    let room = fit.room.room();
    // Plain rounds that leave none are what is wrong.
    let plain = fit.room.too_plain(fit.increase_rounds);
    for (field, most) in [(Name::First, plain.first), (Name::Last, plain.last)] {
        if let Some(most) = most {
            check.wrong(field, Kind::TooMany { most });
        }
    }
    if !check.problems.is_empty() {
        return check.problems;
    }
    for each in question.each + 1..=EACH.most.min(question.neck) {
        if Fit::of(question, each).is_ok_and(|fit| fit.increase_rounds <= room) {
            check.wrong(Name::Each, Kind::TooFew { least: each });
            break;
        }
    }
    let most = question.neck.saturating_add(room.saturating_mul(question.each));
    match (question.hem, fit.counts.below(most)) {
        (Hem::Stitches(_), Some(most)) => check.wrong(Name::Stitches, Kind::TooMany { most }),
        (Hem::Girth(_), Some(most)) => {
            let most = room_below(question.gauge, most);
            check.wrong(Name::Girth, Kind::TooLarge { most });
        }
        (Hem::Stitches(_) | Hem::Girth(_), None) | (Hem::Flat, _) => {}
    }
    // A deeper flat piece grows as fast as before, and gains only by its plain rounds.
    if question.hem != Hem::Flat || check.problems.is_empty() {
        let least = room_above(question.row_gauge, fit.room.kept() + fit.increase_rounds);
        check.wrong(Name::Depth, Kind::TooSmall { least });
    }
    check.problems
}

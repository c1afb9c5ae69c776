//! Body and sleeves as two tracks, and both of them on one needle.

use super::{BODY_EACH, FULL, Needed, PART, Question, SLEEVE_EACH};
use crate::shaping::{Growth, Pace, Rhythm, Rounds, Schedule, Shaped, Track};

/// What a raglan round adds to.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Adds {
    /// 4 stitches to the body and 2 to each sleeve.
    ToBoth,
    /// 4 stitches to the body.
    ToBody,
    /// 2 stitches to each sleeve.
    ToSleeves,
}

impl Adds {
    /// Stitches that it adds in all.
    pub const fn stitches(self) -> u32 {
        match self {
            Self::ToBoth => FULL,
            Self::ToBody | Self::ToSleeves => PART,
        }
    }
}

/// One raglan round.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct RaglanRound {
    /// Its number; the next round to be worked is round 1.
    pub round: u32,
    /// What it adds to.
    pub adds: Adds,
    /// Stitches of front and back together after it.
    pub front_and_back: u32,
    /// Stitches of one sleeve after it.
    pub sleeve: u32,
}

impl RaglanRound {
    /// Stitches on the needle after it.
    pub const fn needle(&self) -> u32 {
        self.front_and_back + 2 * self.sleeve
    }
}

/// The tracks of body and sleeves. The one with fewer rounds goes by the one with more.
pub(super) fn both(question: &Question, needed: &Needed, rounds: Rounds) -> (Track, Track) {
    let body = vec![BODY_EACH; needed.body as usize];
    let sleeve = vec![SLEEVE_EACH; needed.sleeve as usize];
    let body = Growth {
        from: question.body,
        changes: &body,
    };
    let sleeve = Growth {
        from: question.sleeve,
        changes: &sleeve,
    };
    if needed.body < needed.sleeve {
        let (sleeves, body) = many_and_few(question.rhythm, rounds, sleeve, body);
        (body, sleeves)
    } else {
        many_and_few(question.rhythm, rounds, body, sleeve)
    }
}

fn many_and_few(pace: Pace, rounds: Rounds, many: Growth, few: Growth) -> (Track, Track) {
    let at_pace = |growth| Track::at(pace, rounds, Rhythm::Straight, growth);
    let leading = at_pace(many);
    let following = match pace {
        Pace::Easiest => leading.among(rounds, Rhythm::Straight, few),
        Pace::MostEven => Some(evenly_among(&leading, rounds, few)),
    };
    let following = following.unwrap_or_else(|| at_pace(few));
    (leading, following)
}

/// In some of the rounds of the other, the first and the last among them and the others as even between these as can be.
fn evenly_among(leading: &Track, rounds: Rounds, few: Growth) -> Track {
    let rows: Vec<u32> = leading.schedule.rows().map(|shaped| shaped.row).collect();
    let last = |count: usize| count.saturating_sub(1);
    let gaps = last(few.changes.len()).max(1);
    // To the nearest, halves towards the end.
    let place = |count: usize| (2 * count * last(rows.len()) + gaps) / (2 * gaps);
    let chosen = (0..few.changes.len()).filter_map(|count| rows.get(place(count)).copied());
    Track::in_rounds(rounds, Rhythm::Straight, few, chosen)
}

/// The rounds of both in their order.
pub(super) fn merged(body: &Schedule, sleeves: &Schedule) -> Vec<RaglanRound> {
    let count = |schedule: &Schedule| schedule.stitches.unwrap_or(0);
    let (mut front_and_back, mut sleeve) = (count(body), count(sleeves));
    let (mut body, mut sleeves) = (body.rows().peekable(), sleeves.rows().peekable());
    let mut merged = Vec::new();
    while let Some(round) = earlier(body.peek(), sleeves.peek()) {
        let here = |shaped: &Shaped| shaped.row == round;
        let adds = match (body.next_if(here), sleeves.next_if(here)) {
            (Some(_), Some(_)) => Adds::ToBoth,
            (Some(_), None) => Adds::ToBody,
            (None, _) => Adds::ToSleeves,
        };
        front_and_back += match adds {
            Adds::ToBoth | Adds::ToBody => BODY_EACH,
            Adds::ToSleeves => 0,
        };
        sleeve += match adds {
            Adds::ToBoth | Adds::ToSleeves => SLEEVE_EACH,
            Adds::ToBody => 0,
        };
        merged.push(RaglanRound {
            round,
            adds,
            front_and_back,
            sleeve,
        });
    }
    merged
}

/// The earlier of two rounds, of which either may be none.
fn earlier(one: Option<&Shaped>, other: Option<&Shaped>) -> Option<u32> {
    [one, other].into_iter().flatten().map(|shaped| shaped.row).min()
}

/// All stitches round by round.
pub(super) fn all_stitches(question: &Question, rounds: Rounds, merged: &[RaglanRound]) -> Schedule {
    let changes: Vec<u32> = merged.iter().map(|round| round.adds.stitches()).collect();
    let shaped = merged.iter().map(|round| round.round);
    rounds.schedule(question.body + 2 * question.sleeve, true, &changes, shaped)
}

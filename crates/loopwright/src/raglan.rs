//! Raglan: "From a neck of 56 and twice 16 stitches to a body of 200 and sleeves of 68. Which rounds, and how many?"
//!
//! At each of four lines one stitch is gained on either side, so a raglan round adds 4 to the body, which has two edges in
//! front and two at the back, and 2 to each sleeve: 8 in all. Body and sleeves end on *two* targets. At the underarm so
//! many are cast on, which the body has twice, once at each side, and each sleeve once. What is left of each target is
//! its gain, body over 4 and sleeve over 2 its rounds. Body and sleeves are two tracks, each with its own rounds at two
//! rates at most ([`crate::shaping::Rates`]); where that is near enough the one with fewer rounds keeps to those of the
//! other, so that as many as can be are full ones. In the most even order it always does. The sum is arithmetic;
//! every other round is what most raglans do, common practice, no source. The stitches of the lines themselves count with
//! the body.
//!
//! ```
//! use loopwright::raglan::{Question, answer};
//! use loopwright::shaping::{Rate, Rates};
//!
//! let answer = answer(&Question { underarm: 8, ..Question::about([56, 16], [200, 68], 64) }).unwrap();
//! // The body needs 200 - 16 - 56 = 128: 32 rounds of 4. A sleeve needs 68 - 8 - 16 = 44: 22 rounds of 2.
//! assert_eq!((answer.full, answer.body_only, answer.sleeves_only), (22, 10, 0));
//! assert_eq!(answer.needle, 56 + 128 + 2 * (16 + 44));
//! // The body in every 2nd round, the sleeves by turns in every 2nd and every 4th.
//! let turn = [Rate { every: 2, times: 1 }, Rate { every: 4, times: 1 }];
//! assert_eq!(Rates::of(&answer.body.schedule), Rates::One(Rate { every: 2, times: 31 }));
//! assert_eq!(Rates::of(&answer.sleeves.schedule), Rates::ByTurns { turn, times: 21 });
//! ```

mod follow;
mod tracks;

pub use follow::plan;
pub use tracks::{Adds, RaglanRound};

use crate::bounds::Bounds;
use crate::check::Check;
use crate::choice::Choice;
use crate::problem::{Kind, Problem};
use crate::shaping::{PLAIN, Pace, ROWS, Rounds, Schedule, Track, USUAL_FIRST, USUAL_LAST};

pub use crate::shaping::STITCHES;

/// Stitches cast on at one underarm.
pub const UNDERARM: Bounds<u32> = Bounds::new(0, 1_000);

/// Stitches cast on at one underarm when nothing else is said.
pub const USUAL_UNDERARM: u32 = 0;

/// Stitches a full round gains: one on either side of four lines.
pub const FULL: u32 = 8;

/// Stitches gained by a round that adds to the body only, or to the sleeves only.
pub const PART: u32 = 4;

/// Stitches a raglan round adds to the body: at two edges in front and two at the back.
const BODY_EACH: u32 = 4;

/// Stitches a raglan round adds to one sleeve.
const SLEEVE_EACH: u32 = 2;

/// A field of the question.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Name {
    /// Stitches of front and back at the beginning.
    Body,
    /// Stitches of one sleeve at the beginning.
    Sleeve,
    /// Stitches round the body at the end.
    BodyTo,
    /// Stitches round one sleeve at the end.
    SleeveTo,
    /// Rounds there are.
    Rounds,
    /// Stitches cast on at one underarm.
    Underarm,
    /// Plain rounds before the first raglan round.
    First,
    /// Plain rounds at the end.
    Last,
    /// What the rounds are shared out for.
    Rhythm,
}

crate::field_names!(Name {
    Body = "body",
    Sleeve = "sleeve",
    BodyTo = "body_to",
    SleeveTo = "sleeve_to",
    Rounds = "rounds",
    Underarm = "underarm",
    First = "first",
    Last = "last",
    Rhythm = "rhythm",
});

/// A raglan in the round, from the neck down.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Question {
    /// Stitches of front and back together at the beginning, within [`STITCHES`].
    pub body: u32,
    /// Stitches of one sleeve at the beginning, within [`STITCHES`].
    pub sleeve: u32,
    /// Stitches round the body below the underarm, within [`STITCHES`].
    pub body_to: u32,
    /// Stitches round one sleeve below the underarm, within [`STITCHES`].
    pub sleeve_to: u32,
    /// Stitches cast on at one underarm, within [`UNDERARM`].
    pub underarm: u32,
    /// Rounds there are, within [`ROWS`].
    pub rounds: u32,
    /// Plain rounds before the first raglan round, within [`PLAIN`].
    pub first: u32,
    /// Plain rounds at least at the end, within [`PLAIN`]; usually [`USUAL_LAST`], before the sleeves are put aside.
    pub last: u32,
    /// What the rounds are shared out for: usually to be held in the head.
    pub rhythm: Pace,
}

impl Question {
    /// The usual question about body and sleeve, each from and to: nothing cast on at the underarm yet.
    pub const fn about(from: [u32; 2], to: [u32; 2], rounds: u32) -> Self {
        let ([body, sleeve], [body_to, sleeve_to]) = (from, to);
        Self {
            body,
            sleeve,
            body_to,
            sleeve_to,
            underarm: USUAL_UNDERARM,
            rounds,
            first: USUAL_FIRST,
            last: USUAL_LAST,
            rhythm: Pace::START,
        }
    }
}

/// The raglan rounds, and what they come to.
#[derive(Clone, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Answer {
    /// All stitches: a round of [`FULL`] adds to body and sleeves, one of [`PART`] to one of the two; to which,
    /// [`Answer::rounds`] says.
    pub schedule: Schedule,
    /// Front and back together: 4 stitches in each of its rounds.
    pub body: Track,
    /// One sleeve: 2 stitches in each of its rounds.
    pub sleeves: Track,
    /// Rounds that add to both: 4 stitches to the body and 2 to each sleeve.
    pub full: u32,
    /// Rounds that add 4 stitches to the body only.
    pub body_only: u32,
    /// Rounds that add 2 stitches to each sleeve only.
    pub sleeves_only: u32,
    /// Stitches on the needle before the sleeves are put aside, and before anything is cast on.
    pub needle: u32,
    /// Stitches of front and back together then.
    pub front_and_back: u32,
    /// Stitches of one sleeve to put aside.
    pub aside: u32,
    /// With raglan rounds no closer than every other one, as most are, so many rounds. Common practice, no source.
    pub every_other: u32,
}

/// Works out the rounds.
///
/// # Errors
/// Every [`Problem`] has the field `body`, `sleeve`, `body_to`, `sleeve_to`, `underarm`, `rounds`, `first` or `last`, and
/// the nearest value that can be had.
pub fn answer(question: &Question) -> Result<Answer, Vec<Problem>> {
    check(question)?;
    let needed = Needed::of(question)?;
    let many = needed.body.max(needed.sleeve);
    let rounds = Rounds {
        all: question.rounds,
        first: Some(question.first),
        last: question.last,
    };
    if many > rounds.room() {
        return Err(too_few_rounds(question, rounds, many));
    }
    let (body, sleeves) = tracks::both(question, &needed, rounds);
    let merged = tracks::merged(&body.schedule, &sleeves.schedule);
    let adding = |adds| merged.iter().filter(|round| round.adds == adds).count() as u32;
    let front_and_back = question.body + BODY_EACH * needed.body;
    let aside = question.sleeve + SLEEVE_EACH * needed.sleeve;
    Ok(Answer {
        schedule: tracks::all_stitches(question, rounds, &merged),
        full: adding(Adds::ToBoth),
        body_only: adding(Adds::ToBody),
        sleeves_only: adding(Adds::ToSleeves),
        body,
        sleeves,
        needle: front_and_back + 2 * aside,
        front_and_back,
        aside,
        every_other: rounds.kept() + (2 * many).saturating_sub(1),
    })
}

impl Answer {
    /// The raglan rounds one by one, with what each adds to and the counts after it.
    pub fn rounds(&self) -> Vec<RaglanRound> {
        tracks::merged(&self.body.schedule, &self.sleeves.schedule)
    }
}

fn check(question: &Question) -> Result<(), Vec<Problem>> {
    let mut check = Check::default();
    check.count(Name::Body, question.body, STITCHES);
    check.count(Name::Sleeve, question.sleeve, STITCHES);
    check.count(Name::BodyTo, question.body_to, STITCHES);
    check.count(Name::SleeveTo, question.sleeve_to, STITCHES);
    check.count(Name::Underarm, question.underarm, UNDERARM);
    check.count(Name::Rounds, question.rounds, ROWS);
    check.count(Name::First, question.first, PLAIN);
    check.count(Name::Last, question.last, PLAIN);
    check.done()
}

/// What the body has below the underarm if no round adds to it.
const fn least_body(question: &Question) -> u32 {
    question.body + 2 * question.underarm
}

/// What a sleeve has below the underarm if no round adds to it.
const fn least_sleeve(question: &Question) -> u32 {
    question.sleeve + question.underarm
}

/// How many rounds have to add to the body, and how many to the sleeves.
struct Needed {
    body: u32,
    sleeve: u32,
}

impl Needed {
    fn of(question: &Question) -> Result<Self, Vec<Problem>> {
        let mut check = Check::default();
        let (least_body, least_sleeve) = (least_body(question), least_sleeve(question));
        let needed = Self {
            body: rounds_to(&mut check, Name::BodyTo, question.body_to, least_body, BODY_EACH),
            sleeve: rounds_to(
                &mut check,
                Name::SleeveTo,
                question.sleeve_to,
                least_sleeve,
                SLEEVE_EACH,
            ),
        };
        check.done()?;
        Ok(needed)
    }
}

/// How many rounds of so many stitches it takes from the least there can be to a target, which they must meet.
fn rounds_to(check: &mut Check, field: Name, to: u32, least: u32, each: u32) -> u32 {
    let gain = to.saturating_sub(least);
    let rounds = gain / each;
    let reached = least + rounds * each;
    if reached != to {
        let (below, above) = if to < least {
            (None, least)
        } else {
            (Some(reached), reached + each)
        };
        let above = Some(above).filter(|above| *above <= STITCHES.most);
        check.wrong(field, Kind::NoExact { below, above });
    }
    rounds
}

/// More raglan rounds than there are rounds for them: fewer plain ones, where those take the room; else more rounds, or
/// smaller targets.
fn too_few_rounds(question: &Question, rounds: Rounds, many: u32) -> Vec<Problem> {
    let mut check = Check::default();
    let plain = rounds.too_plain(many);
    for (field, most) in [(Name::First, plain.first), (Name::Last, plain.last)] {
        if let Some(most) = most {
            check.wrong(field, Kind::TooMany { most });
        }
    }
    if !check.problems.is_empty() {
        return check.problems;
    }
    let (least, room) = (rounds.kept() + many, rounds.room());
    if least <= ROWS.most {
        check.count(Name::Rounds, question.rounds, Bounds::new(least, ROWS.most));
    }
    let most_body = least_body(question) + BODY_EACH * room;
    let most_sleeve = least_sleeve(question) + SLEEVE_EACH * room;
    check.count(Name::BodyTo, question.body_to, Bounds::new(0, most_body));
    check.count(Name::SleeveTo, question.sleeve_to, Bounds::new(0, most_sleeve));
    check.problems
}

#[cfg(test)]
mod tests;

//! Raglan: "From a neck of 56 and twice 16 stitches to a body of 200 and sleeves of 68. Which rounds, and how many?"
//!
//! At each of four lines one stitch is gained on either side, so a raglan round adds 4 to the body, which has two edges in
//! front and two at the back, and 2 to each sleeve: 8 in all. Body and sleeves end on *two* targets. At the underarm so
//! many are cast on, which the body has twice, once at each side, and each sleeve once. What is left of each target is
//! its gain, body over 4 and sleeve over 2 its rounds, and when these differ some rounds add 4 to one of the two only. All
//! sleeve rounds are body rounds or the other way round, so that as many as can be are full ones. The sum is arithmetic;
//! every other round is what most raglans do, common practice, no source. Where one gap for all rounds leaves no more than
//! four plain ones over, these lie at the end. The stitches of the lines themselves count with the body.
//!
//! ```
//! use loopwright::raglan::{Question, answer};
//!
//! let answer = answer(&Question { underarm: 8, ..Question::about([56, 16], [200, 68], 64) }).unwrap();
//! // The body needs 200 - 16 - 56 = 128: 32 rounds of 4. A sleeve needs 68 - 8 - 16 = 44: 22 rounds of 2.
//! assert_eq!((answer.full, answer.body_only, answer.sleeves_only), (22, 10, 0));
//! assert_eq!(answer.needle, 56 + 128 + 2 * (16 + 44));
//! ```

use crate::bounds::Bounds;
use crate::check::Check;
use crate::problem::{Kind, Problem};
use crate::shaping::{PLAIN, ROWS, Rhythm, Rounds, Schedule};

pub use crate::shaping::STITCHES;

/// Stitches cast on at one underarm.
pub const UNDERARM: Bounds<u32> = Bounds::new(0, 1_000);

/// Stitches a full round gains: one on either side of four lines.
pub const FULL: u32 = 8;

/// Stitches gained by a round that adds to the body only, or to the sleeves only.
pub const PART: u32 = 4;

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
    /// Plain rounds at least at the end, within [`PLAIN`]; usually 1, before the sleeves are put aside.
    pub last: u32,
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
            underarm: 0,
            rounds,
            first: 0,
            last: 1,
        }
    }
}

/// The raglan rounds, and what they come to.
#[derive(Clone, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Answer {
    /// All stitches: a round of [`FULL`] adds to body and sleeves, one of [`PART`] to whichever has rounds of its own.
    pub schedule: Schedule,
    /// Rounds that add to both: 4 stitches to the body and 2 to each sleeve.
    pub full: u32,
    /// Rounds that add 4 stitches to the body only. Where there are any there are none for the sleeves only.
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
    let Question {
        body,
        sleeve,
        body_to,
        sleeve_to,
        underarm,
        rounds,
        first,
        last,
    } = *question;
    let mut check = Check::default();
    check.count("body", body, STITCHES);
    check.count("sleeve", sleeve, STITCHES);
    check.count("body_to", body_to, STITCHES);
    check.count("sleeve_to", sleeve_to, STITCHES);
    check.count("underarm", underarm, UNDERARM);
    check.count("rounds", rounds, ROWS);
    check.count("first", first, PLAIN);
    check.count("last", last, PLAIN);
    check.done()?;
    let mut check = Check::default();
    let body_rounds = rounds_to(&mut check, "body_to", body_to, body + 2 * underarm, 4);
    let sleeve_rounds = rounds_to(&mut check, "sleeve_to", sleeve_to, sleeve + underarm, 2);
    check.done()?;
    let (many, few) = (body_rounds.max(sleeve_rounds), body_rounds.min(sleeve_rounds));
    let all = Rounds {
        all: rounds,
        first: Some(first),
        last,
    };
    let (kept, room) = (all.kept(), all.room());
    if many > room {
        let mut check = Check::default();
        let least = kept + many;
        if least <= ROWS.most {
            check.count("rounds", rounds, Bounds::new(least, ROWS.most));
        }
        check.count("body_to", body_to, Bounds::new(0, body + 2 * underarm + 4 * room));
        check.count("sleeve_to", sleeve_to, Bounds::new(0, sleeve + underarm + 2 * room));
        return Err(check.problems);
    }
    // Which of all the rounds are rounds of the other too: as even as they can be.
    let of_few = |count: u32| u64::from(count) * u64::from(few) / u64::from(many.max(1));
    let mut changes = Vec::new();
    for count in 0..many {
        changes.push(if of_few(count + 1) > of_few(count) { FULL } else { PART });
    }
    let front_and_back = body + 4 * body_rounds;
    let aside = sleeve + 2 * sleeve_rounds;
    Ok(Answer {
        schedule: all.share(Rhythm::Steady, body + 2 * sleeve, true, &changes),
        full: few,
        body_only: body_rounds - few,
        sleeves_only: sleeve_rounds - few,
        needle: front_and_back + 2 * aside,
        front_and_back,
        aside,
        every_other: kept + (2 * many).saturating_sub(1),
    })
}

/// How many rounds of so many stitches it takes from the least there can be to a target, which they must meet.
#[inline(never)]
fn rounds_to(check: &mut Check, field: &'static str, to: u32, least: u32, each: u32) -> u32 {
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

#[cfg(test)]
mod tests;

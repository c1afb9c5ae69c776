//! Raglan: "From a neck of 56 and twice 16 stitches to a body of 200 and sleeves of 68. Which rounds, and how many?"
//!
//! At each of four lines one stitch is gained on either side, so a raglan round adds 4 to the body, which has two edges in
//! front and two at the back, and 2 to each sleeve: 8 in all. Body and sleeves end on *two* targets. At the underarm so
//! many are cast on, which the body has twice, once at each side, and each sleeve once. What is left of each target is
//! its gain, body over 4 and sleeve over 2 its rounds, and when these differ some rounds add to one of the two only. All
//! sleeve rounds are body rounds or the other way round, so that as many as can be are full ones. The sum is arithmetic;
//! every other round is what most raglans do, common practice, no source.
//!
//! ```
//! use loopwright::flare::raglan::{Question, answer};
//!
//! let answer = answer(&Question { underarm: 8, ..Question::about([56, 16], [200, 68], 64) }).unwrap();
//! // The body needs 200 - 16 - 56 = 128: 32 rounds of 4. A sleeve needs 68 - 8 - 16 = 44: 22 rounds of 2.
//! assert_eq!((answer.full, answer.body_only, answer.sleeves_only), (22, 10, 0));
//! assert_eq!(answer.needle, 56 + 128 + 2 * (16 + 44));
//! ```

use super::STITCHES;
use crate::bounds::Bounds;
use crate::problem::{Kind, Problem};
use crate::shaping::{self, Knitting, PLAIN, ROWS, Schedule};

/// Stitches cast on at one underarm.
pub const UNDERARM: Bounds<u32> = Bounds::new(0, 1_000);

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

/// Two schedules over the same rounds.
#[derive(Clone, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Answer {
    /// Front and back together: 4 in each of its rounds.
    pub body: Schedule,
    /// One sleeve: 2 in each of its rounds.
    pub sleeve: Schedule,
    /// Rounds that add to both: 8 stitches.
    pub full: u32,
    /// Rounds that add to the body only: 4 stitches.
    pub body_only: u32,
    /// Rounds that add to the sleeves only: 4 stitches.
    pub sleeves_only: u32,
    /// Stitches on the needle before the sleeves are put aside, and before anything is cast on.
    pub needle: u32,
    /// Stitches of one sleeve to put aside.
    pub aside: u32,
    /// The fewest rounds it can be done in: a raglan round in every one.
    pub fewest_rounds: u32,
    /// With raglan rounds no closer than every other one, as most are, so many rounds. Common practice, no source.
    pub every_other: u32,
}

/// Works out both schedules.
///
/// # Errors
/// Every [`Problem`] has the field `body`, `sleeve`, `body_to`, `sleeve_to`, `underarm`, `rounds`, `first` or `last`, and
/// the nearest value that can be had.
pub fn answer(question: &Question) -> Result<Answer, Vec<Problem>> {
    let mut problems = Vec::new();
    let counts = [
        ("body", question.body, STITCHES),
        ("sleeve", question.sleeve, STITCHES),
        ("underarm", question.underarm, UNDERARM),
        ("rounds", question.rounds, ROWS),
        ("first", question.first, PLAIN),
        ("last", question.last, PLAIN),
    ];
    for (field, value, bounds) in counts {
        problems.extend(Problem::of_count(field, value, bounds));
    }
    if !problems.is_empty() {
        return Err(problems);
    }
    let targets = [
        ("body_to", question.body_to, question.body + 2 * question.underarm, 4),
        ("sleeve_to", question.sleeve_to, question.sleeve + question.underarm, 2),
    ];
    // How many rounds the body takes, and how many the sleeves.
    let mut wanted = [0, 0];
    for ((field, to, least, each), wanted) in targets.into_iter().zip(&mut wanted) {
        let gain = to.min(STITCHES.most).checked_sub(least);
        *wanted = gain.unwrap_or(0) / each;
        let below = gain.map(|_| least + *wanted * each);
        let above = below.map_or(least, |below| below + each);
        if below != Some(to) {
            let above = (above <= STITCHES.most).then_some(above);
            let kind = Kind::NoExact { below, above };
            problems.push(Problem { field, kind });
        }
    }
    if !problems.is_empty() {
        return Err(problems);
    }
    let [body_rounds, sleeve_rounds] = wanted;
    let (many, few) = (body_rounds.max(sleeve_rounds), body_rounds.min(sleeve_rounds));
    let kept = question.first + question.last;
    let fewest_rounds = (kept + many).max(1);
    if fewest_rounds > question.rounds {
        return Err(too_fast(question, fewest_rounds));
    }
    let empty = |stitches| Schedule::plain(Knitting::Round, Some(stitches), true, question.rounds);
    let mut answer = Answer {
        body: empty(question.body),
        sleeve: empty(question.sleeve),
        full: few,
        body_only: body_rounds - few,
        sleeves_only: sleeve_rounds - few,
        needle: question.body + 4 * body_rounds + 2 * (question.sleeve + 2 * sleeve_rounds),
        aside: question.sleeve + 2 * sleeve_rounds,
        fewest_rounds,
        every_other: kept + (2 * many).saturating_sub(1),
    };
    if many == 0 {
        return Ok(answer);
    }
    let all = shaping::Question {
        each: 1,
        knitting: Knitting::Round,
        first: Some(question.first),
        last: question.last,
        order: shaping::Order::Mixed,
        ..shaping::Question::about(shaping::Ask::Gain(many), question.rounds)
    };
    let all = shaping::answer(&all)?.schedule;
    // Which of the rounds of the one that has more are rounds of the other too: as even as they can be.
    let of_few = |count: u32| u64::from(count) * u64::from(few) / u64::from(many);
    let (mut at_body, mut at_sleeve) = (0, 0);
    for (count, shaped) in all.rows().enumerate() {
        let count = count as u32;
        let both = of_few(count + 1) > of_few(count);
        if both || body_rounds > sleeve_rounds {
            answer.body.push(shaped.row - at_body - 1, 4);
            at_body = shaped.row;
        }
        if both || sleeve_rounds > body_rounds {
            answer.sleeve.push(shaped.row - at_sleeve - 1, 2);
            at_sleeve = shaped.row;
        }
    }
    Ok(answer)
}

/// More raglan rounds than there is room for: more rounds, or less to gain.
fn too_fast(question: &Question, fewest_rounds: u32) -> Vec<Problem> {
    let mut problems = Vec::new();
    if fewest_rounds <= ROWS.most {
        let least = fewest_rounds;
        let kind = Kind::TooFew { least };
        problems.push(Problem { field: "rounds", kind });
    }
    let room = question.rounds.saturating_sub(question.first + question.last);
    let targets = [
        (
            "body_to",
            question.body_to,
            question.body + 2 * question.underarm + 4 * room,
        ),
        (
            "sleeve_to",
            question.sleeve_to,
            question.sleeve + question.underarm + 2 * room,
        ),
    ];
    for (field, to, most) in targets {
        if to > most {
            let kind = Kind::TooMany { most };
            problems.push(Problem { field, kind });
        }
    }
    problems
}

#[cfg(test)]
mod tests;

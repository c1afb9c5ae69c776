//! Growth in steps, as a yoke has it: so many stitches after this round, so many after that one; and how such a list is
//! read: `5: 120, 12: 160`, or `after round 5: 120`.

use super::{Name, ROUNDS, STITCHES};
use crate::check::Check;
use crate::problem::Kind;
use crate::units::count;
use crate::units::parse::Unreadable;

/// So many stitches after a round.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Step {
    /// The round in which the stitches change, counted from 1.
    pub round: u32,
    /// Stitches there are after it, within [`STITCHES`].
    pub stitches: u32,
}

/// Words that a knitter writes beside the two numbers of a step.
const BESIDE: [&str; 10] = [
    "after", "round", "rounds", "rnd", "row", "rows", "to", "sts", "stitches", "and",
];

/// Reads growth in steps: parted by commas, semicolons or lines, each a round and the stitches after it. No text makes it
/// panic, and no number is passed over.
///
/// ```
/// use loopwright::cords::{Step, print_steps, read_steps};
///
/// let steps = [(5, 120), (12, 160)].map(|(round, stitches)| Step { round, stitches });
/// assert_eq!(read_steps("5: 120, 12: 160").unwrap(), steps);
/// assert_eq!(read_steps("after round 5: 120 sts\nround 12 to 160").unwrap(), steps);
/// assert_eq!(print_steps(&steps), "5: 120, 12: 160");
/// assert!(read_steps("5: 120, 160").is_err());
/// ```
///
/// # Errors
/// [`Unreadable`] for the first step that is not a round and its stitches.
pub fn read_steps(text: &str) -> Result<Vec<Step>, Unreadable> {
    let parts = text.split([',', ';', '\n']).map(str::trim);
    let steps: Vec<Step> = parts
        .filter(|part| !part.is_empty())
        .map(read_step)
        .collect::<Result<_, _>>()?;
    if steps.is_empty() {
        return Err(Unreadable::Empty);
    }
    Ok(steps)
}

/// Writes the steps of a piece so that [`read_steps`] gives them back: `5: 120, 12: 160`.
pub fn print_steps(steps: &[Step]) -> String {
    let steps = steps
        .iter()
        .map(|Step { round, stitches }| format!("{round}: {stitches}"));
    steps.collect::<Vec<_>>().join(", ")
}

fn read_step(text: &str) -> Result<Step, Unreadable> {
    let words = text.split([' ', ':', '=']).filter(|word| !word.is_empty());
    let is_number = |word: &&str| !BESIDE.contains(&word.to_lowercase().as_str());
    let numbers: Vec<&str> = words.filter(is_number).collect();
    match numbers.as_slice() {
        [round, stitches] => Ok(Step {
            round: count::read(round, ROUNDS)?.value,
            stitches: count::read(stitches, STITCHES)?.value,
        }),
        [] | [_] => Err(Unreadable::Unfinished),
        [_, _, ..] => Err(Unreadable::TwoNumbers),
    }
}

/// Each step comes in a later round than the one before, and the piece is no shorter than they are.
pub(super) fn check(check: &mut Check, from: u32, steps: &[Step], rounds: u32) {
    check.count(Name::From, from, STITCHES);
    let mut least = ROUNDS.least;
    for step in steps {
        if step.round < least || step.round > ROUNDS.most {
            check.wrong(Name::Steps, Kind::TooFew { least });
        }
        check.count(Name::Steps, step.stitches, STITCHES);
        least = step.round.saturating_add(1);
    }
    match steps.last() {
        Some(last) => check.count(
            Name::Rounds,
            rounds,
            super::Bounds::new(last.round.min(ROUNDS.most), ROUNDS.most),
        ),
        None => check.missing(Name::Steps),
    }
}

/// Stitches after each round.
pub(super) fn rounds(from: u32, steps: &[Step], rounds: u32) -> Vec<i64> {
    let mut steps = steps.iter().peekable();
    let mut stitches = from;
    let after = |round: u32| {
        while let Some(step) = steps.next_if(|step| step.round <= round) {
            stitches = step.stitches;
        }
        i64::from(stitches)
    };
    (1..=rounds).map(after).collect()
}

//! What a knitter should know beside the row, and the sum as steps. Data only: the page makes the sentences.

use super::order::Shares;
use super::{Ask, Edge, Fabric, Face, Knitting, Question, Spread, Way};
use super::{lay::Mirror, multiples};
use crate::row::{Lean, Stitch};

/// One thing to know.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub enum Note {
    /// The run at the marker is one run in two pieces, so that no change stands there.
    SplitAtMarker {
        /// The whole run, in the way that is suggested.
        run: u32,
    },
    /// There are too few plain stitches to keep a change off the marker.
    ChangeAtMarker,
    /// Ending on the change was asked for, and not done: an increase in a gap is easily lost at the marker.
    KeptOffMarker,
    /// Garter in the round: work the change on the knit round.
    KnitRoundIsBetter,
    /// Flat: a change is easier to see and to count on a right-side row.
    RightSideIsBetter,
    /// Rib: keep the changes in the purl ribs, or lose whole repeats.
    KeepToPurlRibs,
    /// `plus` stitches were dropped, since a round has no edges.
    PlusDropped {
        /// How many were asked for.
        plus: u32,
    },
    /// The row is mirrored but for one stitch at the end.
    MirroredButForOne,
    /// The change in the middle of a mirrored row leans to one side.
    MiddleLeans {
        /// That change.
        change: Stitch,
    },
    /// The bar of a kfb sits left of its stitch, so the last plain run is one longer for the eye to be even.
    KfbBar,
    /// A yarn over leaves a hole.
    YarnOverHole,
}

/// One line of the sum.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub enum Step {
    /// Stitches less those the changes use: the plain ones.
    Plain {
        /// Stitches on the needle.
        stitches: u32,
        /// Changes.
        changes: u32,
        /// Stitches each uses.
        uses: u32,
        /// What is left.
        plain: u32,
    },
    /// The plain stitches that stand at the two edges.
    Edges {
        /// At the beginning.
        first: u32,
        /// At the end.
        last: u32,
    },
    /// Plain stitches shared between runs.
    Shared {
        /// Plain stitches shared.
        plain: u32,
        /// Runs they are shared between.
        runs: u32,
        /// A short run.
        short: u32,
        /// How many short runs.
        short_times: u32,
        /// How many runs are one longer.
        long_times: u32,
    },
    /// Plain stitches and what the changes give: the count after.
    After {
        /// Plain stitches.
        plain: u32,
        /// Changes.
        changes: u32,
        /// Stitches each gives.
        gives: u32,
        /// Stitches after.
        after: u32,
    },
}

/// What to know about these ways to work it, of which the suggested one comes first to her eyes.
pub(super) fn notes(question: &Question, spread: &Spread, suggested: &Way) -> Vec<Note> {
    let mut notes = Vec::new();
    if let Ask::Multiple { of, plus } = question.ask {
        match multiples(question, of, plus).dropped {
            0 => {}
            plus => notes.push(Note::PlusDropped { plus }),
        }
    }
    match question.knitting {
        Knitting::Round { end_on_change } => marker_notes(spread, end_on_change, suggested, &mut notes),
        Knitting::Flat { edge: Edge::Mirrored } => mirror_notes(spread, &mut notes),
        Knitting::Flat { .. } => {}
    }
    notes.extend(side_note(question));
    if spread.change == Stitch::Yo {
        notes.push(Note::YarnOverHole);
    }
    notes
}

fn marker_notes(spread: &Spread, end_on_change: bool, suggested: &Way, notes: &mut Vec<Note>) {
    if end_on_change && spread.change.is_in_gap() {
        notes.push(Note::KeptOffMarker);
    } else if end_on_change {
        return;
    }
    let mut runs = suggested.row.runs();
    match (runs.next(), runs.last()) {
        (Some(first), Some(last)) if first.stitch.is_plain() && last.stitch.is_plain() => {
            notes.push(Note::SplitAtMarker {
                run: first.count + last.count,
            });
        }
        _ => notes.push(Note::ChangeAtMarker),
    }
}

fn mirror_notes(spread: &Spread, notes: &mut Vec<Note>) {
    if Mirror::of(spread).is_out_by_one() {
        notes.push(Note::MirroredButForOne);
    }
    let odd = spread.changes % 2 == 1;
    if odd && spread.change.lean() != Lean::Upright {
        notes.push(Note::MiddleLeans { change: spread.change });
    }
    if spread.change.uses() == 1 {
        notes.push(Note::KfbBar);
    }
}

/// Which side of the fabric the changes are better worked on.
fn side_note(question: &Question) -> Option<Note> {
    let flat = matches!(question.knitting, Knitting::Flat { .. });
    match (question.fabric, question.face) {
        (Fabric::Rib, _) => Some(Note::KeepToPurlRibs),
        (Fabric::Garter, Face::Purl) if !flat => Some(Note::KnitRoundIsBetter),
        (_, Face::Purl) if flat => Some(Note::RightSideIsBetter),
        _ => None,
    }
}

pub(super) fn steps(stitches: u32, spread: &Spread, ways: &[Way]) -> Vec<Step> {
    let Spread {
        plain, changes, change, ..
    } = *spread;
    let mut steps = vec![Step::Plain {
        stitches,
        changes,
        uses: change.uses(),
        plain,
    }];
    let (first, last, runs) = edges(spread, ways);
    if let (Some(first), Some(last)) = (first, last) {
        steps.push(Step::Edges { first, last });
    }
    let shared = plain - first.unwrap_or(0) - last.unwrap_or(0);
    if runs > 0 {
        let shares = Shares::of(shared, runs);
        steps.push(Step::Shared {
            plain: shared,
            runs,
            short: shares.short.run,
            short_times: shares.short.times,
            long_times: shares.long.times,
        });
    }
    steps.push(Step::After {
        plain,
        changes,
        gives: change.gives(),
        after: plain + changes * change.gives(),
    });
    steps
}

/// The plain stitches at the edges that are not shared out, and how many runs the others are shared between.
fn edges(spread: &Spread, ways: &[Way]) -> (Option<u32>, Option<u32>, u32) {
    let halves_are_enough = |least: u32| spread.plain / spread.changes / 2 >= least;
    let kept = match spread.knitting {
        Knitting::Flat {
            edge: Edge::AtLeast(least),
        } => !halves_are_enough(least),
        Knitting::Flat { edge: Edge::Mirrored } => true,
        _ => false,
    };
    if !kept {
        return (None, None, spread.changes);
    }
    let Some(way) = ways.first() else {
        return (None, None, spread.changes);
    };
    let plain = |run: Option<crate::row::Run>| run.filter(|r| r.stitch.is_plain()).map_or(0, |r| r.count);
    let mut runs = way.row.runs();
    (Some(plain(runs.next())), Some(plain(runs.last())), spread.changes - 1)
}

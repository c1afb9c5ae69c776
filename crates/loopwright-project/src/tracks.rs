//! Steps that are knitted at the same time: "the neck, at the same time as the armhole, from its row 21".
//!
//! A step says of which other step of its part it is a *track*, and in which of that one's rows it begins
//! ([`Step::alongside`], [`Step::from_row`]). A step and all its tracks are a [`Bundle`]; a track of a track belongs to the
//! same one. What cannot be followed (a step that is gone, a circle, a row that is none) is a
//! [`TrackTrouble`] of the step that says it, and that step stands alone until it is mended.

use crate::derive::{Derived, Sheet};
use crate::project::{Project, Step, StepId};

/// The highest row in which a track may begin: more than any tool counts.
const HIGHEST_ROW: u32 = 100_000;
/// What stands before the name of a step that was taken out.
const GONE: &str = "gone ";

/// A step, and the steps that are knitted at the same time.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Bundle {
    /// The step that the others begin in; alone where there are none.
    pub first: StepId,
    /// The others in the order of the steps, each with the row of the first in which it begins.
    pub tracks: Vec<(StepId, u32)>,
}

impl Bundle {
    /// Whether a step is one of them.
    pub fn holds(&self, id: StepId) -> bool {
        self.first == id || self.tracks.iter().any(|(track, _)| *track == id)
    }

    /// All its rows; none where one of its steps does not count them.
    pub fn rows(&self, sheet: &Sheet) -> Option<u32> {
        let rows = |id| sheet.step(id).and_then(Derived::outcome)?.totals.rows;
        let first = rows(self.first)?;
        self.tracks.iter().try_fold(first, |most, (track, from)| {
            Some(most.max(from.saturating_sub(1).saturating_add(rows(*track)?)))
        })
    }
}

/// Why a step that is said to be a track is none.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum TrackTrouble {
    /// The step is not there; with the name it had, where that is known.
    Gone(Option<String>),
    /// The step stands under another part now.
    OtherPart(StepId),
    /// It goes on, by way of others, with itself.
    Circle,
    /// The row is no row's number.
    NoRow,
    /// The other step has fewer rows.
    RowBehind {
        /// The other step.
        step: StepId,
        /// Its rows.
        rows: u32,
    },
    /// The two are not knitted equally often.
    Amounts(StepId),
}

/// The track that a step is said to be, as it can be followed.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Begins {
    /// The other step.
    pub with: StepId,
    /// In which of its rows.
    pub row: u32,
}

impl Step {
    /// Makes it a track of a step, or none.
    pub fn set_alongside(&mut self, with: Option<StepId>) {
        self.alongside = with.map_or_else(String::new, |with| with.to_string());
    }

    /// The number of the step that it is said to be a track of.
    pub fn companion(&self) -> Option<StepId> {
        StepId::parse(&self.alongside)
    }

    /// In which row it begins; the first where nothing is said, none where that is no row.
    pub fn begins_in(&self) -> Option<u32> {
        match self.from_row.trim() {
            "" => Some(1),
            row => row.parse().ok().filter(|row| (1..=HIGHEST_ROW).contains(row)),
        }
    }

    /// A step that it was a track of is taken out.
    pub(crate) fn lose_companion(&mut self, id: StepId, name: &str) {
        if self.companion() == Some(id) {
            self.alongside = [GONE, name].concat();
        }
    }
}

impl Project {
    /// Whether a step may be made a track of another one: one of its part that is not, by way of others, a track of it.
    pub fn may_go_along(&self, step: &Step, other: &Step) -> bool {
        let mut at = other;
        for _ in &self.steps {
            if at.id == step.id {
                return false;
            }
            match at.companion().and_then(|with| self.step(with)) {
                Some(next) => at = next,
                None => return other.section == step.section,
            }
        }
        false
    }

    /// Of which step a step is a track; nothing where it is not said to be one.
    ///
    /// # Errors
    /// Why it is none although it is said to be.
    pub fn track(&self, step: &Step, sheet: &Sheet) -> Option<Result<Begins, TrackTrouble>> {
        (!step.alongside.is_empty()).then(|| self.followed(step, sheet))
    }

    fn followed(&self, step: &Step, sheet: &Sheet) -> Result<Begins, TrackTrouble> {
        let begins = self.begins(step)?;
        if self.is_in_circle(step) {
            return Err(TrackTrouble::Circle);
        }
        let with = begins.with;
        let rows = sheet.step(with).and_then(Derived::outcome);
        match rows.and_then(|outcome| outcome.totals.rows) {
            Some(rows) if begins.row > rows => Err(TrackTrouble::RowBehind { step: with, rows }),
            Some(_) | None => Ok(begins),
        }
    }

    /// The same without looking at what the steps come to.
    fn begins(&self, step: &Step) -> Result<Begins, TrackTrouble> {
        let gone = step.alongside.strip_prefix(GONE).map(str::to_owned);
        let with = step.companion().and_then(|with| self.step(with));
        let with = with.ok_or(TrackTrouble::Gone(gone))?;
        if with.section != step.section {
            return Err(TrackTrouble::OtherPart(with.id));
        }
        if with.times() != step.times() {
            return Err(TrackTrouble::Amounts(with.id));
        }
        let row = step.begins_in().ok_or(TrackTrouble::NoRow)?;
        Ok(Begins { with: with.id, row })
    }

    /// Whether whoever goes from a step to the one it is a track of, and on, comes back to it.
    fn is_in_circle(&self, step: &Step) -> bool {
        let mut at = step;
        for _ in &self.steps {
            let Some(next) = at.companion().and_then(|with| self.step(with)) else {
                return false;
            };
            if next.id == step.id {
                return true;
            }
            at = next;
        }
        // It runs into a circle of others, which say so themselves.
        false
    }

    /// All steps, each in one bundle, in the order of their first ones. A step that is knitted alone is a bundle of its own.
    pub fn bundles(&self, sheet: &Sheet) -> Vec<Bundle> {
        let mut bundles: Vec<Bundle> = Vec::new();
        let mut tracks = Vec::new();
        for step in &self.steps {
            match self.beginning(step, sheet) {
                Some(begins) => tracks.push((step.id, begins)),
                None => bundles.push(Bundle {
                    first: step.id,
                    tracks: Vec::new(),
                }),
            }
        }
        for (track, begins) in tracks {
            if let Some(bundle) = bundles.iter_mut().find(|bundle| bundle.first == begins.with) {
                bundle.tracks.push((track, begins.row));
            }
        }
        bundles
    }

    /// The step that a track, by way of others, begins in, and in which of its rows.
    fn beginning(&self, step: &Step, sheet: &Sheet) -> Option<Begins> {
        let mut begins = self.track(step, sheet)?.ok()?;
        for _ in &self.steps {
            match self.step(begins.with).and_then(|with| self.track(with, sheet)) {
                Some(Ok(next)) => {
                    let row = next.row.saturating_sub(1).saturating_add(begins.row);
                    begins = Begins { with: next.with, row };
                }
                // What is no track, or cannot be followed, stands alone: here it begins.
                Some(Err(_)) | None => return Some(begins),
            }
        }
        None
    }
}

#[cfg(test)]
mod tests;

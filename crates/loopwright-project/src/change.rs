//! What moved between two sheets of the same project.

use crate::derive::Sheet;
use crate::outcome::Answered;
use crate::project::{Project, StepId};
use crate::{Toolbox, derive};

/// A step that comes to something else than it did.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Change {
    /// The step.
    pub step: StepId,
    /// What it came to.
    pub was: Answered,
    /// What it comes to.
    pub is: Answered,
}

/// The steps that moved, in their order. One that was not there before has not moved.
pub fn between(before: &Sheet, after: &Sheet) -> Vec<Change> {
    let moved = after.steps.iter().filter_map(|step| {
        let was = &before.step(step.id)?.answered;
        (*was != step.answered).then(|| Change {
            step: step.id,
            was: was.clone(),
            is: step.answered.clone(),
        })
    });
    moved.collect()
}

/// What moved since she last said that she saw it: nothing where every fact is what it was.
pub fn since_seen(project: &Project, toolbox: &impl Toolbox, now: &Sheet) -> Vec<Change> {
    if project.was.is_empty() {
        return Vec::new();
    }
    between(&derive(&project.as_it_was(), toolbox), now)
}

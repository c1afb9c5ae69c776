//! What all steps of a project come to together.
//!
//! Rows that are knitted at the same time are the same rows, and are counted once ([`crate::Bundle`]). So are those of a step
//! that only says how many rows a length takes, where another step takes them from it and works them: they are counted there.

use crate::derive::{Derived, Sheet};
use crate::outcome::Totals;
use crate::project::{Project, Step, StepId};
use crate::reference::Reference;
use crate::tracks::Bundle;
use std::collections::BTreeMap;

/// What all steps of a project come to.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct All {
    /// The most stitches that are on the needle before or after a step.
    pub widest: Option<u32>,
    /// Rows and rounds of all steps that count them, each as often as it is knitted.
    pub rows: u64,
    /// Yarn of all steps that count it, in millimetres.
    pub yarn_mm: u64,
    /// Balls of all steps that count them.
    pub balls: u64,
    /// The cords that any step asks for, by their length in nanometres: as it is called, and how many steps ask for it.
    pub cords: BTreeMap<u64, (String, u32)>,
}

/// What all steps come to together. A step whose amount cannot be read counts once. `rows` is the key under which a step hands
/// on its rows.
pub fn sum(project: &Project, sheet: &Sheet, rows: &str) -> All {
    let mut all = All::default();
    for bundle in project.bundles(sheet) {
        all.rows += rows_of(project, sheet, &bundle, rows);
        all.widest = all.widest.max(widest(sheet, &bundle));
    }
    for derived in &sheet.steps {
        let (Some(step), Some(outcome)) = (project.step(derived.id), derived.outcome()) else {
            continue;
        };
        let times = u64::from(step.times().unwrap_or(1));
        let yarn = outcome.totals.yarn_mm.unwrap_or_default().saturating_mul(times);
        all.yarn_mm = all.yarn_mm.saturating_add(yarn);
        all.balls += u64::from(outcome.totals.balls.unwrap_or_default()) * times;
        for (length, called) in &outcome.cords {
            let (_, steps) = all.cords.entry(*length).or_insert_with(|| (called.clone(), 0));
            *steps += 1;
        }
    }
    all
}

/// The rows of a bundle, as often as it is knitted. A track that does not count its rows adds none.
fn rows_of(project: &Project, sheet: &Sheet, bundle: &Bundle, rows: &str) -> u64 {
    let Some(first) = project.step(bundle.first) else {
        return 0;
    };
    if bundle.tracks.is_empty() && project.is_counted_elsewhere(first, sheet, rows) {
        return 0;
    }
    let tracks = bundle.tracks.iter().map(|(track, from)| {
        let rows = totals(sheet, *track).rows?;
        Some(from.saturating_sub(1).saturating_add(rows))
    });
    let longest = tracks.fold(totals(sheet, bundle.first).rows, Option::max);
    u64::from(longest.unwrap_or_default()) * u64::from(first.times().unwrap_or(1))
}

/// Tracks count the needle that the first one counts, and are not asked.
fn widest(sheet: &Sheet, bundle: &Bundle) -> Option<u32> {
    let totals = totals(sheet, bundle.first);
    totals.before.max(totals.after)
}

fn totals(sheet: &Sheet, id: StepId) -> Totals {
    let outcome = sheet.step(id).and_then(Derived::outcome);
    outcome.map(|outcome| outcome.totals).unwrap_or_default()
}

impl Project {
    /// Whether a step only says how many rows there are, and another one takes them from it and works them.
    pub fn is_counted_elsewhere(&self, step: &Step, sheet: &Sheet, rows: &str) -> bool {
        let own = totals(sheet, step.id);
        let knows_stitches = own.before.is_some() || own.after.is_some();
        let takes = |other: &Step| {
            let is_it =
                |from: &Reference| matches!(from, Reference::Step { step: id, gift } if *id == step.id && gift == rows);
            let takes_it = other
                .from
                .iter()
                .any(|(field, from)| is_it(from) && !other.fields.contains_key(field));
            takes_it && totals(sheet, other.id).rows.is_some()
        };
        !knows_stitches && self.steps.iter().any(takes)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::outcome::Outcome;

    const ROWS: &str = "rows";

    /// A project of steps with these totals, and its sheet.
    fn project(steps: &[Totals]) -> (Project, Sheet, Vec<StepId>) {
        let mut project = Project::default();
        let ids: Vec<StepId> = steps.iter().map(|_| project.add(Step::new("tool", "step"))).collect();
        let derived = ids.iter().zip(steps).map(|(id, totals)| Derived {
            id: *id,
            given: Default::default(),
            answered: Ok(Outcome {
                totals: *totals,
                cords: BTreeMap::from([(400, "40 cm".to_owned())]),
                ..Outcome::default()
            }),
        });
        let sheet = Sheet {
            steps: derived.collect(),
        };
        (project, sheet, ids)
    }

    fn rows(rows: u32) -> Totals {
        Totals {
            rows: Some(rows),
            ..Totals::default()
        }
    }

    #[test]
    fn rows_of_tracks_are_counted_once() {
        let (mut project, sheet, ids) = project(&[rows(60), rows(30), rows(10)]);
        assert_eq!(sum(&project, &sheet, ROWS).rows, 100);
        project.steps[1].set_alongside(Some(ids[0]));
        project.steps[1].from_row = "41".into();
        assert_eq!(sum(&project, &sheet, ROWS).rows, 70 + 10);
        for step in &mut project.steps[..2] {
            step.amount = "2".into();
        }
        assert_eq!(sum(&project, &sheet, ROWS).rows, 2 * 70 + 10);
    }

    #[test]
    fn rows_that_another_step_works_are_counted_there() {
        let yoke = Totals {
            before: Some(96),
            after: Some(320),
            ..rows(66)
        };
        let (mut project, mut sheet, ids) = project(&[rows(66), yoke]);
        let gift = ROWS.to_owned();
        let from = Reference::Step { step: ids[0], gift };
        project.steps[1].from.insert("rounds".into(), from);
        assert_eq!(sum(&project, &sheet, ROWS).rows, 66);
        // What was typed over it is no longer taken.
        project.steps[1]
            .fields
            .insert("rounds".into(), crate::Typed::plain("60"));
        assert_eq!(sum(&project, &sheet, ROWS).rows, 132);
        project.steps[1].fields.clear();
        // A step that works its stitches itself is knitted, whoever is as long.
        sheet.steps[0].answered.as_mut().unwrap().totals.before = Some(50);
        assert_eq!(sum(&project, &sheet, ROWS).rows, 132);
        assert_eq!(sum(&project, &sheet, ROWS).widest, Some(320));
    }

    #[test]
    fn a_cord_is_named_once_with_the_steps_that_ask_for_it() {
        let (project, sheet, _) = project(&[rows(1), rows(2)]);
        let cords = sum(&project, &sheet, ROWS).cords;
        assert_eq!(cords, BTreeMap::from([(400, ("40 cm".to_owned(), 2))]));
    }
}

//! What is knitted at the same time: the steps of a project bundle by bundle, the rows of each put together as one plan.
//!
//! A step that counts rows and no stitches is worked on those that the step before it in its part has left, as the drawing of
//! the piece has it.

use crate::tool::Tools;
use loopwright::follow::{Plan, Together, Track, together};
use loopwright::shaping::Knitting;
use loopwright_project::{Bundle, Derived, Project, Sheet, StepId, Totals};
use std::collections::BTreeMap;

/// A bundle, and its rows as one.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Knitted {
    /// Its steps.
    pub bundle: Bundle,
    /// The one of them that stands last in the list.
    pub last: StepId,
    /// All rows; the step that is not told row by row where there is one.
    pub rows: Result<Together<String>, StepId>,
    /// Stitches on the needle behind all of it, where known.
    pub after: Option<u32>,
}

impl Knitted {
    /// Whether steps are knitted at the same time in it.
    pub const fn is_several(&self) -> bool {
        !self.bundle.tracks.is_empty()
    }

    /// Its steps, the one that the others begin in first.
    pub fn steps(&self) -> impl Iterator<Item = StepId> {
        let tracks = self.bundle.tracks.iter().map(|(track, _)| *track);
        std::iter::once(self.bundle.first).chain(tracks)
    }

    /// Stitches that are worked in it, where they are known and can be worked.
    pub fn worked(&self) -> Option<u64> {
        let together = self.rows.as_ref().ok()?;
        let plan = &together.plan;
        plan.worked(plan.rows).filter(|_| together.meeting.is_none())
    }

    /// The most stitches that are on the needle in it, where known.
    pub fn widest(&self) -> Option<u32> {
        let together = self.rows.as_ref().ok()?;
        let mut stitches = together.plan.stitches?;
        let counts = together.plan.events.iter().map(|event| {
            stitches = event.change.of(stitches);
            stitches
        });
        together.plan.stitches.max(counts.max())
    }
}

/// All steps of a project, bundle by bundle.
pub fn knitted(project: &Project, sheet: &Sheet, tools: &Tools) -> Vec<Knitted> {
    let mut on_needle: BTreeMap<&str, u32> = BTreeMap::new();
    let bundles = project.bundles(sheet).into_iter().map(|bundle| {
        let section = project.step(bundle.first).map_or("", |step| &*step.section);
        let one = knit(project, sheet, tools, bundle, on_needle.get(section).copied());
        if let Some(after) = one.after {
            on_needle.insert(section, after);
        }
        one
    });
    bundles.collect()
}

fn knit(project: &Project, sheet: &Sheet, tools: &Tools, bundle: Bundle, on_needle: Option<u32>) -> Knitted {
    let plan = |id| plan_of(project, sheet, tools, id).ok_or(id);
    let rows = plan(bundle.first).and_then(|mut first| {
        first.stitches = first.stitches.or(on_needle);
        let track = |(track, from): &(StepId, u32)| {
            Ok(Track {
                from: *from,
                plan: plan(*track)?,
            })
        };
        let tracks: Vec<_> = bundle.tracks.iter().map(track).collect::<Result<_, _>>()?;
        Ok(together(&first, &tracks))
    });
    let own = totals(sheet, bundle.first).after.filter(|_| bundle.tracks.is_empty());
    let counted = rows.as_ref().ok().filter(|together| together.meeting.is_none());
    let counted = counted.and_then(|together| together.plan.stitches_after(together.plan.rows));
    let last = project.steps.iter().rev().find(|step| bundle.holds(step.id));
    Knitted {
        last: last.map_or(bundle.first, |step| step.id),
        after: own.or(counted),
        bundle,
        rows,
    }
}

fn plan_of(project: &Project, sheet: &Sheet, tools: &Tools, id: StepId) -> Option<Plan<String>> {
    let derived = sheet.step(id)?;
    let told = tools.plan(project.step(id)?, &derived.given);
    told.or_else(|| plain(totals(sheet, id)))
}

/// Rows in which nothing happens, of a step that counts them and changes no stitches. Which side they begin on is not known.
fn plain(totals: Totals) -> Option<Plan<String>> {
    let is_plain = totals.before == totals.after;
    let rows = totals.rows.filter(|_| is_plain)?;
    Some(Plan::plain(Knitting::Round, rows, totals.before))
}

fn totals(sheet: &Sheet, id: StepId) -> Totals {
    let outcome = sheet.step(id).and_then(Derived::outcome);
    outcome.map(|outcome| outcome.totals).unwrap_or_default()
}

/// Stitches that a step leaves on the needle, for the step that is listed behind it. Of steps that are knitted at the same
/// time only the one that is listed last leaves any: those of all.
pub fn left_by(knitted: &[Knitted], id: StepId) -> Option<u32> {
    let one = knitted.iter().find(|one| one.bundle.holds(id))?;
    one.after.filter(|_| one.last == id)
}

/// Stitches that a step finds on the needle, as it counts them itself. A track finds what the others have left so far.
pub fn begun_by(knitted: &[Knitted], sheet: &Sheet, id: StepId) -> Option<u32> {
    let is_first = knitted.iter().any(|one| one.bundle.first == id);
    totals(sheet, id).before.filter(|_| is_first)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::form::Settings;
    use crate::project::demo::fronts;
    use loopwright_project::derive;

    fn knitted_of(project: &Project) -> (Sheet, Vec<Knitted>) {
        let tools = Tools::measuring(Settings::default());
        let sheet = derive(project, &tools);
        let knitted = knitted(project, &sheet, &tools);
        (sheet, knitted)
    }

    #[test]
    fn armhole_and_neck_count_one_needle() {
        let project = fronts("12");
        let (sheet, all) = knitted_of(&project);
        let [armhole, neck] = [0, 1].map(|place| project.steps[place].id);
        let both = all.iter().find(|one| one.is_several()).unwrap();
        assert_eq!(both.steps().collect::<Vec<_>>(), [armhole, neck]);
        assert_eq!(both.after, Some(50 - 12 - 12));
        assert_eq!(both.rows.as_ref().unwrap().plan.rows, 60);
        assert_eq!(both.widest(), Some(50));
        // The armhole alone would leave 38.
        assert_eq!((left_by(&all, armhole), left_by(&all, neck)), (None, Some(26)));
        assert_eq!(begun_by(&all, &sheet, neck), None);
        assert_eq!(begun_by(&all, &sheet, armhole), Some(50));
        // The step behind them counts rows alone, and is worked on what they leave.
        let last = all.last().unwrap();
        assert_eq!(last.worked(), Some(26 * 12));
    }

    #[test]
    fn tracks_that_meet_leave_nothing_to_go_on_with() {
        let (_, all) = knitted_of(&fronts("40"));
        let both = all.iter().find(|one| one.is_several()).unwrap();
        assert!(both.rows.as_ref().unwrap().meeting.is_some());
        assert_eq!((both.after, both.worked()), (None, None));
    }
}

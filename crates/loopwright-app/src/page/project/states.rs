//! The page of a project in its named states, for the gallery and the browser tests.

use crate::form::kept::Kept;
use crate::project::demo::{fronts, pullover};
use crate::store::{Entry, Typed};
use loopwright_project::Project;

/// What the gallery calls this page.
pub const PAGE: &str = "project";

/// A state by its name, and the project that is open in it.
type State = (&'static str, fn() -> Project);

/// Its states.
const STATES: &[State] = &[
    ("empty", Project::default),
    ("example", pullover),
    ("other-gauge", other_gauge),
    ("tracks", || fronts("12")),
    ("tracks-meet", || fronts("40")),
];

/// The example after her gauge has changed: what moved is not seen yet.
fn other_gauge() -> Project {
    let mut project = pullover();
    project.set_fact(Kept::GaugeStitches.key(), Some(Typed::with_unit("20", "10 cm")));
    project.pace = "25".into();
    project
}

/// The names of all states.
pub fn names() -> impl Iterator<Item = &'static str> {
    STATES.iter().map(|(name, _)| *name)
}

/// What lies on the desk in a state, if there is such a state.
pub fn entries(state: &str) -> Option<Vec<Entry>> {
    let (_, project) = STATES.iter().find(|(name, _)| *name == state)?;
    let sheets = project().to_sheets().into_iter();
    let entries = sheets.flat_map(|(sheet, fields)| {
        let entry = move |(field, typed)| Entry::new(sheet.clone(), field, Some(typed));
        fields.into_iter().map(entry)
    });
    Some(entries.collect())
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::store::{ProjectId, Sheets};

    #[test]
    fn a_state_is_the_project_that_is_open_in_it() {
        for (name, project) in STATES {
            let mut sheets = Sheets::default();
            sheets.apply_all(&entries(name).unwrap());
            assert_eq!(
                Project::from_sheets(&sheets.of_project(ProjectId::FIRST)),
                project(),
                "{name}"
            );
        }
        assert_eq!(entries("no such state"), None);
    }
}

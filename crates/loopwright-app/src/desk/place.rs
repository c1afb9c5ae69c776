//! Which sheet a view means by its name: a sheet of the project that is open; and on the page of a step, by the name of its
//! tool, the sheet of the step.

use crate::store::{PROJECTS, ProjectId, SheetId, Sheets};
use loopwright_project::{StepId, stored};

/// The field that says which project is open.
pub const OPEN: &str = "open";

/// The project that is open.
pub fn open_project(sheets: &Sheets) -> ProjectId {
    let open = sheets.text(PROJECTS, OPEN);
    open.and_then(|typed| ProjectId::parse(&typed.text))
        .unwrap_or(ProjectId::FIRST)
}

/// Where a desk stands.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Place {
    step: Option<(&'static str, StepId)>,
}

impl Place {
    /// At a step of a tool.
    pub const fn at_step(tool: &'static str, step: StepId) -> Self {
        Self {
            step: Some((tool, step)),
        }
    }

    /// The step, if it stands at one.
    pub const fn step(self) -> Option<StepId> {
        match self.step {
            Some((_, step)) => Some(step),
            None => None,
        }
    }

    /// The name under which a sheet is kept.
    pub fn stored(self, sheets: &Sheets, sheet: &str) -> String {
        SheetId::within(open_project(sheets), &self.meant(sheet)).to_string()
    }

    fn meant(self, sheet: &str) -> String {
        let Some((tool, step)) = self.step else {
            return sheet.to_owned();
        };
        match sheet.strip_prefix(tool) {
            Some(side) if side.is_empty() || side.starts_with('.') => stored::step_sheet(step) + side,
            _ => sheet.to_owned(),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::store::{Entry, Typed};

    #[test]
    fn a_name_means_a_sheet_of_the_open_project_and_of_the_step() {
        let mut sheets = Sheets::default();
        let nowhere = Place::default();
        assert_eq!(nowhere.stored(&sheets, "known"), "known");
        sheets.apply(&Entry::new(PROJECTS, OPEN, Some(Typed::plain("3"))));
        assert_eq!(nowhere.stored(&sheets, "known"), "p3/known");
        assert_eq!(nowhere.stored(&sheets, "settings"), "settings");
        let step = Place::at_step("tail", StepId(7));
        for (name, stored) in [
            ("tail", "p3/step.7"),
            ("tail.from", "p3/step.7.from"),
            ("known", "p3/known"),
            ("tailor", "p3/tailor"),
        ] {
            assert_eq!(step.stored(&sheets, name), stored);
        }
        // What no version wrote opens the first project.
        sheets.apply(&Entry::new(PROJECTS, OPEN, Some(Typed::plain("0x"))));
        assert_eq!(nowhere.stored(&sheets, "known"), "known");
    }
}

//! What can be done with the steps of the open project: move them, take them out, and see what moved.
//!
//! A change is made on the project as data, and written as the difference of its sheets.

use super::undo::undoable;
use super::yarn;
use crate::desk::Desk;
use crate::desk::undo::{become_exactly, become_project};
use crate::store::{Fields, SheetId};
use crate::tool::Tools;
use crate::words::{project as words, whole};
use loopwright_project::stored::{FACTS, WAS};
use loopwright_project::{Project, StepId, derive};

/// What of a step can be typed on the page of the project.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum About {
    /// What she calls it.
    Name,
    /// The part of the garment it stands under.
    Section,
    /// How often it is knitted.
    Amount,
    /// The step it is knitted at the same time as.
    Alongside,
    /// In which row of that one it begins.
    FromRow,
}

loopwright::keys!(About {
    Name = "name",
    Section = "section",
    Amount = "amount",
    Alongside = "alongside",
    FromRow = "from_row",
});

/// Takes a step out. What it gave to others stays in their fields, marked; it can be undone.
pub fn take_out(desk: &Desk, id: StepId) {
    change(desk, id, words::taking_out, |project| {
        let sheet = derive(project, &Tools::on(desk));
        project.take_out(id, &sheet);
    });
}

/// Moves a step one place up or down.
pub fn shift(desk: &Desk, id: StepId, up: bool) {
    change(desk, id, words::moving, |project| project.shift(id, up));
}

/// Moves a part of the garment, with its steps, before or behind the next one.
pub fn shift_part(desk: &Desk, part: &str, up: bool) {
    let called = if part.is_empty() { words::NO_SECTION } else { part };
    change_all(desk, &words::moving(called), |project| project.shift_part(part, up));
}

/// Makes the sections of a yarn step from the steps, in the first yarn step that there is, or in a new one.
pub fn fill_yarn(desk: &Desk) {
    change_all(desk, whole::FILLED_YARN, |project| {
        let sheet = derive(project, &Tools::on(desk));
        yarn::fill(project, &sheet);
    });
}

/// She has seen what moved.
pub fn seen(desk: &Desk) {
    let sheets = desk.newest();
    let was = SheetId::within(desk.project_id(), WAS).to_string();
    desk.write_stored(become_exactly(&sheets, &was, &Fields::new()));
}

/// Goes back to the facts as they were when she last looked.
pub fn back_to_what_was(desk: &Desk) {
    let facts = desk.project().as_it_was().facts;
    let sheets = desk.newest();
    let known = SheetId::within(desk.project_id(), FACTS).to_string();
    desk.write_stored(become_exactly(&sheets, &known, &facts));
}

fn change(desk: &Desk, id: StepId, what: fn(&str) -> String, change: impl FnOnce(&mut Project)) {
    let name = desk
        .project()
        .step(id)
        .map_or_else(String::new, |step| step.name.clone());
    change_all(desk, &what(&name), change);
}

fn change_all(desk: &Desk, what: &str, change: impl FnOnce(&mut Project)) {
    let mut project = desk.project();
    change(&mut project);
    let sheets = desk.newest();
    let entries = become_project(&sheets, desk.project_id(), &project);
    desk.write_stored(undoable(&sheets, desk.project_id(), what, entries));
}

//! The projects of a knitter: which there are, which is open, and what can be done with them. Pure: sheets in, entries out;
//! a view hands them to the desk.
//!
//! On the sheet `projects` lies the number of the open project, of each other one how it stands, and which was brought last. The first project is
//! there without anybody making it, so that nobody has to before a first sum.

pub mod bringing;
pub mod counts;
pub mod demo;
pub mod schematic;
pub mod steps;
pub mod together;
pub mod undo;
pub mod whole;
pub mod yarn;

use crate::desk::undo::become_exactly;
use crate::store::{Entry, Fields, PROJECTS, ProjectId, SheetId, Sheets, Typed};
use loopwright_project::knitting::is_knitting;
use loopwright_project::{Project, stored};
use std::collections::BTreeSet;

/// The field of `projects` that says which one is open.
const OPEN: &str = "open";
/// The field of the sheet `project` that is its name.
pub const NAME: &str = "name";
/// The field of `project` that says how many stitches she knits in a minute.
pub const PACE: &str = "pace";

/// Whether a field of the sheet `projects` is one that this room keeps.
pub fn keeps(field: &str) -> bool {
    [OPEN, bringing::BROUGHT].contains(&field) || ProjectId::parse(field).is_some()
}

/// How a project stands among the others.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Standing {
    /// In use.
    Here,
    /// Put away: out of sight, as it is.
    Away,
    /// Deleted, and to be had back until it is forgotten.
    Deleted,
}

loopwright::keys!(Standing {
    Here = "here",
    Away = "away",
    Deleted = "deleted",
});

/// A project as a list of them names it.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Listed {
    /// Its number.
    pub id: ProjectId,
    /// What she calls it; empty until she does.
    pub name: String,
    /// How it stands.
    pub standing: Standing,
}

/// Every project, in the order in which they were made.
pub fn list(sheets: &Sheets) -> Vec<Listed> {
    let others = sheets.fields(PROJECTS);
    let standing = |key: &str| {
        others
            .get(key)
            .and_then(|typed| loopwright::choice::Key::from_key(&typed.text))
    };
    let mut ids: Vec<ProjectId> = others.keys().filter_map(|key| ProjectId::parse(key)).collect();
    ids.push(ProjectId::FIRST);
    // What lies on sheets of a project must be reached, also where a copy from elsewhere took it from the list.
    ids.extend(lying(sheets).filter(|(_, name)| !is_knitting(name)).map(|(id, _)| id));
    ids.sort_unstable();
    ids.dedup();
    let listed = ids.into_iter().map(|id| Listed {
        id,
        name: name_of(sheets, id),
        standing: standing(&id.to_string()).unwrap_or(Standing::Here),
    });
    listed.collect()
}

/// The sheets of all projects, by the project and their names in it.
fn lying(sheets: &Sheets) -> impl Iterator<Item = (ProjectId, String)> {
    sheets.iter().filter_map(|(stored, _)| {
        let id = SheetId::parse(stored);
        Some((id.project?, id.name))
    })
}

/// What a project is called; empty until she calls it something.
pub fn name_of(sheets: &Sheets, id: ProjectId) -> String {
    let project = SheetId::within(id, stored::PROJECT).to_string();
    sheets
        .text(&project, NAME)
        .map_or_else(String::new, |typed| typed.text.clone())
}

/// Opens a project; one that was put away is in use again.
pub fn open(id: ProjectId) -> Vec<Entry> {
    vec![
        Entry::new(PROJECTS, OPEN, Some(Typed::plain(id.to_string()))),
        stand(id, Standing::Here),
    ]
}

/// A new project, opened.
pub fn start(sheets: &Sheets) -> Vec<Entry> {
    open(next_id(sheets))
}

/// Has a project stand in another way.
pub fn stand(id: ProjectId, standing: Standing) -> Entry {
    let key = loopwright::choice::Key::key(standing);
    Entry::new(PROJECTS, id.to_string(), Some(Typed::plain(key)))
}

/// Puts a project away or deletes it, and opens another one where it was the open one: a new one where none is left.
pub fn set_aside(sheets: &Sheets, id: ProjectId, open_id: ProjectId, standing: Standing) -> Vec<Entry> {
    let mut entries = vec![stand(id, standing)];
    if id == open_id {
        let all = list(sheets);
        let mut others = all
            .iter()
            .filter(|other| other.id != id && other.standing == Standing::Here);
        entries.extend(open(others.next().map_or_else(|| next_id(sheets), |other| other.id)));
    }
    entries
}

/// Makes a project out of data, and opens it.
pub fn bring_in_entries(sheets: &Sheets, project: &Project) -> (ProjectId, Vec<Entry>) {
    let id = next_id(sheets);
    (id, laid_in(id, project.to_sheets()))
}

/// A copy of a project under another name, opened. All that lies on its sheets is copied.
pub fn copy(sheets: &Sheets, id: ProjectId, name: String) -> Vec<Entry> {
    let mut copied = sheets.of_project(id);
    let project = copied.entry(stored::PROJECT.into()).or_default();
    project.insert(NAME.into(), Typed::plain(name));
    laid_in(next_id(sheets), copied)
}

/// Forgets for good what lies on the sheets of a deleted project, how far she was in its knitting among it.
pub fn forget(sheets: &Sheets, id: ProjectId) -> Vec<Entry> {
    // How far she is in her knitting as well: another project may get the same number.
    let names = sheets.names_of_project(id).into_iter();
    let forgotten = names.flat_map(|stored| become_exactly(sheets, &stored, &Fields::new()));
    let mut entries: Vec<Entry> = forgotten.collect();
    entries.push(Entry::new(PROJECTS, id.to_string(), None));
    entries
}

fn laid_in(id: ProjectId, sheets: loopwright_project::Sheets) -> Vec<Entry> {
    let on_sheet = |(name, fields): (String, Fields)| {
        let stored = SheetId::within(id, &name).to_string();
        let entry = move |(field, typed)| Entry::new(stored.clone(), field, Some(typed));
        fields.into_iter().map(entry)
    };
    let mut entries: Vec<Entry> = sheets.into_iter().flat_map(on_sheet).collect();
    entries.extend(open(id));
    entries
}

/// The number of a project that is still to be made.
fn next_id(sheets: &Sheets) -> ProjectId {
    let listed = list(sheets).into_iter().map(|listed| listed.id.0);
    let used: BTreeSet<u32> = listed.chain(lying(sheets).map(|(id, _)| id.0)).collect();
    let last = used.last().copied().unwrap_or(1);
    let next = last.checked_add(1).or_else(|| (2..last).find(|id| !used.contains(id)));
    ProjectId(next.unwrap_or(last))
}

#[cfg(test)]
mod tests;

//! The project on the desk as data, and a project that is brought laid there.

use crate::desk::Desk;
use crate::store::{Entry, Fields, Typed};
use crate::tool;
use loopwright_project::{self as project, Project, Sheets, Texts};

/// The project that lies on the desk.
pub fn open(desk: &Desk) -> Project {
    let sheets = desk.newest();
    let is_of_a_project = |name: &str| {
        let main = name.split('.').next().unwrap_or_default();
        ["known", "project", "step"].contains(&main) || tool::find(name).is_some()
    };
    let sheets = sheets.iter().filter(|(name, _)| is_of_a_project(name));
    let sheets: Sheets = sheets.map(|(name, fields)| (name.clone(), texts(fields))).collect();
    Project::from_sheets(&sheets)
}

/// Lays a project on the desk.
pub fn bring_in(desk: &Desk, project: &Project) {
    let entries = project.to_sheets().into_iter().flat_map(|(sheet, texts)| {
        let entry = move |(field, typed): (String, project::Typed)| {
            let project::Typed { text, unit } = typed;
            Entry::new(sheet.clone(), field, Some(Typed { text, unit }))
        };
        texts.into_iter().map(entry)
    });
    desk.write_many(entries.collect());
}

fn texts(fields: &Fields) -> Texts {
    let text = |(field, typed): (&String, &Typed)| {
        let (text, unit) = (typed.text.clone(), typed.unit.clone());
        (field.clone(), project::Typed { text, unit })
    };
    fields.iter().map(text).collect()
}

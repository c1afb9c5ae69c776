//! Bringing a project in, and undoing that, also after a reload. On the sheet `projects` stands which one was brought last,
//! and which was open before: `3 2`. Undone, it is deleted as any other and can be had back.

use super::{Standing, bring_in_entries, list, open, set_aside};
use crate::desk::Desk;
use crate::store::{Entry, PROJECTS, ProjectId, Sheets, Typed};
use loopwright_project::Project;

/// The field of `projects` that says which one was brought last.
pub const BROUGHT: &str = "brought";

/// Makes a project out of data, opens it, and answers its number.
pub fn bring_in(desk: &Desk, project: &Project) -> ProjectId {
    let (id, entries) = brought(&desk.newest(), desk.project_id(), project);
    desk.write_stored(entries);
    id
}

fn brought(sheets: &Sheets, before: ProjectId, project: &Project) -> (ProjectId, Vec<Entry>) {
    let (id, mut entries) = bring_in_entries(sheets, project);
    let note = Typed::plain(format!("{id} {before}"));
    entries.push(Entry::new(PROJECTS, BROUGHT, Some(note)));
    (id, entries)
}

/// Whether the open project was brought in last, so that this can be undone.
pub fn can_undo(sheets: &Sheets, open: ProjectId) -> bool {
    last(sheets).is_some_and(|(id, _)| id == open)
}

/// The changes that delete what was brought in last, and open the project that was open before.
pub fn undo(sheets: &Sheets, open_now: ProjectId) -> Vec<Entry> {
    let Some((id, before)) = last(sheets) else {
        return Vec::new();
    };
    let mut entries = set_aside(sheets, id, open_now, Standing::Deleted);
    let is_here = |listed: &super::Listed| listed.id == before && listed.standing == Standing::Here;
    if list(sheets).iter().any(is_here) {
        // Each field is written once.
        let openings = open(before);
        entries.retain(|entry| openings.iter().all(|opening| opening.field != entry.field));
        entries.extend(openings);
    }
    entries.push(Entry::new(PROJECTS, BROUGHT, None));
    entries
}

fn last(sheets: &Sheets) -> Option<(ProjectId, ProjectId)> {
    let (id, before) = sheets.text(PROJECTS, BROUGHT)?.text.split_once(' ')?;
    Some((ProjectId::parse(id)?, ProjectId::parse(before)?))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::project::{name_of, start};

    fn yoke() -> Project {
        Project {
            name: "Yoke".into(),
            ..Project::default()
        }
    }

    fn standing(sheets: &Sheets) -> Vec<(u32, Standing)> {
        let all = list(sheets).into_iter();
        all.map(|listed| (listed.id.0, listed.standing)).collect()
    }

    #[test]
    fn what_was_brought_in_is_taken_out_and_the_one_before_is_open_again() {
        let mut sheets = Sheets::default();
        sheets.apply_all(&start(&sheets.clone()));
        let second = ProjectId(2);
        let (third, entries) = brought(&sheets, second, &yoke());
        sheets.apply_all(&entries);
        assert!(can_undo(&sheets, third) && !can_undo(&sheets, second));
        sheets.apply_all(&undo(&sheets.clone(), third));
        let expected = [(1, Standing::Here), (2, Standing::Here), (3, Standing::Deleted)];
        assert_eq!(standing(&sheets), expected);
        assert_eq!(sheets.text(PROJECTS, super::super::OPEN), Some(&Typed::plain("2")));
        assert!(!can_undo(&sheets, third) && undo(&sheets, third).is_empty());
        // It can be had back.
        assert_eq!(name_of(&sheets, third), "Yoke");
    }

    #[test]
    fn where_the_one_before_is_gone_another_is_opened() {
        let mut sheets = Sheets::default();
        sheets.apply_all(&start(&sheets.clone()));
        let second = ProjectId(2);
        let (third, entries) = brought(&sheets, second, &yoke());
        sheets.apply_all(&entries);
        sheets.apply_all(&set_aside(&sheets.clone(), second, third, Standing::Deleted));
        sheets.apply_all(&undo(&sheets.clone(), third));
        assert_eq!(sheets.text(PROJECTS, super::super::OPEN), Some(&Typed::plain("1")));
    }
}

//! Projects as entries of the log.

use super::*;
use crate::store::Typed;
use loopwright_project::Step;

fn sheets_of(pairs: &[(&str, &str, &str)]) -> Sheets {
    let mut sheets = Sheets::default();
    for (sheet, field, text) in pairs {
        sheets.apply(&Entry::new(*sheet, *field, Some(Typed::plain(*text))));
    }
    sheets
}

fn yoke() -> Project {
    let mut project = Project {
        name: "Pullover".into(),
        ..Project::default()
    };
    project.facts.insert("cast_on".into(), Typed::plain("96"));
    project.add(Step::new("yoke", "Yoke"));
    project
}

fn open_id(sheets: &Sheets) -> ProjectId {
    let open = sheets.text(PROJECTS, OPEN);
    open.and_then(|typed| ProjectId::parse(&typed.text))
        .unwrap_or(ProjectId::FIRST)
}

#[test]
fn what_was_typed_before_there_were_projects_is_the_first_one() {
    let sheets = sheets_of(&[("known", "bust", "91"), ("spacing", "stitches", "132")]);
    assert_eq!(list(&sheets).len(), 1);
    let first = Project::from_sheets(&sheets.of_project(ProjectId::FIRST));
    assert_eq!(first.facts["bust"], Typed::plain("91"));
    assert_eq!(first.drafts["spacing"].fields["stitches"], Typed::plain("132"));
}

#[test]
fn a_project_brought_in_is_another_one_and_is_open() {
    let mut sheets = sheets_of(&[("known", "cast_on", "60")]);
    let (id, entries) = bring_in_entries(&sheets, &yoke());
    sheets.apply_all(&entries);
    assert_eq!((id, open_id(&sheets)), (ProjectId(2), ProjectId(2)));
    assert_eq!(Project::from_sheets(&sheets.of_project(id)), yoke());
    assert_eq!(sheets.fields("known")["cast_on"], Typed::plain("60"));
}

#[test]
fn what_is_done_to_a_copy_is_not_done_to_the_project() {
    let mut sheets = Sheets::default();
    let (id, entries) = bring_in_entries(&sheets, &yoke());
    sheets.apply_all(&entries);
    let entries = copy(&sheets, id, "Copy".into());
    sheets.apply_all(&entries);
    let copied = open_id(&sheets);
    assert_eq!(name_of(&sheets, copied), "Copy");
    sheets.apply(&Entry::new("p3/known", "cast_on", Some(Typed::plain("100"))));
    assert_eq!(Project::from_sheets(&sheets.of_project(id)), yoke());
}

#[test]
fn a_deleted_project_can_be_had_back_until_it_is_forgotten() {
    let mut sheets = Sheets::default();
    let (id, entries) = bring_in_entries(&sheets, &yoke());
    sheets.apply_all(&entries);
    let entries = set_aside(&sheets, id, id, Standing::Deleted);
    sheets.apply_all(&entries);
    assert_eq!(open_id(&sheets), ProjectId::FIRST);
    assert_eq!(Project::from_sheets(&sheets.of_project(id)), yoke());
    sheets.apply_all(&open(id));
    assert_eq!(list(&sheets)[1].standing, Standing::Here);
    let entries = forget(&sheets, id);
    sheets.apply_all(&entries);
    assert!(sheets.of_project(id).is_empty());
}

#[test]
fn where_none_is_left_a_new_one_is_opened() {
    let mut sheets = sheets_of(&[("known", "cast_on", "60")]);
    let entries = set_aside(&sheets, ProjectId::FIRST, ProjectId::FIRST, Standing::Away);
    sheets.apply_all(&entries);
    assert_eq!(open_id(&sheets), ProjectId(2));
    assert!(sheets.of_project(ProjectId(2)).is_empty());
}

#[test]
fn a_change_is_undone_field_by_field() {
    let mut sheets = sheets_of(&[("step.1.about", "name", "Yoke"), ("step.1", "from", "96")]);
    let before = sheets.of_project(ProjectId::FIRST);
    let entries = vec![
        Entry::new("step.1.about", "name", None),
        Entry::new("step.2", "stitches", Some(Typed::plain("9"))),
    ];
    let entries = undo::undoable(&sheets, ProjectId::FIRST, "taking out", entries);
    sheets.apply_all(&entries);
    assert_eq!(undo::what(&sheets, ProjectId::FIRST).as_deref(), Some("taking out"));
    let entries = undo::undo(&sheets, ProjectId::FIRST);
    sheets.apply_all(&entries);
    assert_eq!(sheets.of_project(ProjectId::FIRST), before);
}

/// How far she was in something is forgotten with it, and nothing else of anyone's becomes a new project's.
#[test]
fn a_new_project_has_nothing_of_another_one() {
    let mut sheets = sheets_of(&[
        ("projects", "2", "deleted"),
        ("p2/known", "bust", "92"),
        ("p2/yoke.knit", "1764491000123-k3-0", "+1"),
    ]);
    let entries = forget(&sheets, ProjectId(2));
    sheets.apply_all(&entries);
    assert_eq!(sheets, Sheets::default());
    // Sheets of a project that nobody lists, as a stranger's copy may have them.
    let strays = sheets_of(&[("p2/known", "bust", "92"), ("projects", "3", "here")]);
    assert_eq!(next_id(&strays), ProjectId(4));
    let last = sheets_of(&[("projects", "4294967295", "here"), ("known", "bust", "92")]);
    assert_eq!(next_id(&last), ProjectId(2));
}

#[test]
fn a_new_project_has_no_taps_of_one_that_was_forgotten() {
    let mut sheets = Sheets::default();
    let (id, entries) = bring_in_entries(&sheets, &yoke());
    sheets.apply_all(&entries);
    sheets.apply(&Entry::new(
        "p2/step.1.knit",
        "1764491000123-k3-0",
        Some(Typed::plain("+1")),
    ));
    let entries = forget(&sheets, id);
    sheets.apply_all(&entries);
    assert_eq!(sheets.sheet("p2/step.1.knit"), None);
    // Those of one that an older release forgot are still there: its number is not given to another.
    sheets.apply(&Entry::new(
        "p7/step.1.knit",
        "1764491000123-k3-0",
        Some(Typed::plain("+1")),
    ));
    assert_eq!(bring_in_entries(&sheets, &yoke()).0, ProjectId(8));
}

#[test]
fn what_lies_on_sheets_of_a_project_is_reached_though_the_list_does_not_name_it() {
    let sheets = sheets_of(&[("p4294967295/known", "bust", "91"), ("p3/project", "name", "Grey")]);
    let listed = list(&sheets);
    let ids: Vec<u32> = listed.iter().map(|listed| listed.id.0).collect();
    assert_eq!(ids, [1, 3, u32::MAX]);
    assert!(listed.iter().all(|listed| listed.standing == Standing::Here));
    // No project is written over by one that is brought in.
    assert_eq!(bring_in_entries(&sheets, &yoke()).0, ProjectId(2));
}

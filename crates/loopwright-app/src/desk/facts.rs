//! What a fact was before it was changed, remembered until she says that she has seen what moved.
//!
//! Every write passes here, wherever it comes from: a field of the project's page, "keep" beside an answer, another tab.

use crate::store::{Entry, SheetId, Sheets, Typed};
use loopwright_project::is_name;
use loopwright_project::stored::{FACTS, WAS, kept_was};

/// The entries that remember what the facts among these were. A project without steps has nothing that could move.
pub fn remembered(sheets: &Sheets, entries: &[Entry]) -> Vec<Entry> {
    entries.iter().filter_map(|entry| remember(sheets, entry)).collect()
}

fn remember(sheets: &Sheets, entry: &Entry) -> Option<Entry> {
    let id = SheetId::parse(&entry.sheet);
    // A name moves nothing.
    let project = id.project.filter(|_| id.name == FACTS && !is_name(&entry.field))?;
    let has_steps = sheets.of_project(project).keys().any(|name| name.ends_with(".about"));
    let was = SheetId::within(project, WAS).to_string();
    let now = sheets.text(&entry.sheet, &entry.field);
    match sheets.text(&was, &entry.field) {
        None if has_steps => Some(remembering(&was, entry, Some(kept_was(now)))),
        None => None,
        // As it was: there is nothing to be seen.
        Some(was_text) if *was_text == kept_was(entry.typed.as_ref()) => Some(remembering(&was, entry, None)),
        Some(_) => None,
    }
}

fn remembering(was: &str, entry: &Entry, typed: Option<Typed>) -> Entry {
    Entry::new(was, entry.field.clone(), typed)
}

#[cfg(test)]
mod tests {
    use super::*;
    use loopwright_project::{Project, Step};

    /// What a project knows it was, after its own facts were changed in this order.
    fn after(texts: &[Option<&str>]) -> Project {
        let mut project = Project::default();
        project.facts.insert("cast_on".into(), Typed::plain("96"));
        project.add(Step::new("tail", "Neck"));
        let mut sheets = Sheets::default();
        for (sheet, fields) in project.to_sheets() {
            for (field, typed) in fields {
                sheets.apply(&Entry::new(sheet.clone(), field, Some(typed)));
            }
        }
        for text in texts {
            let mut entries = vec![Entry::new(FACTS, "cast_on", text.map(Typed::plain))];
            entries.extend(remembered(&sheets, &entries));
            sheets.apply_all(&entries);
        }
        Project::from_sheets(&sheets.of_project(crate::store::ProjectId::FIRST))
    }

    #[test]
    fn a_fact_typed_digit_by_digit_was_what_it_was_before_the_first() {
        let was = |texts: &[Option<&str>]| after(texts).was.get("cast_on").cloned();
        assert_eq!(was(&[Some("9"), Some("90")]), Some(Some(Typed::plain("96"))));
        assert_eq!(was(&[Some("9"), Some("96")]), None);
        assert_eq!(was(&[None]), Some(Some(Typed::plain("96"))));
        assert_eq!(was(&[None, Some("96")]), None);
    }

    #[test]
    fn the_model_remembers_the_same() {
        let mut project = after(&[]);
        project.set_fact("cast_on", Some(Typed::plain("90")));
        assert_eq!(project, after(&[Some("90")]));
    }
}

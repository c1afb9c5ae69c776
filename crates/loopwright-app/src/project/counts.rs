//! What can be done with the counts of a project to which she gave names of her own: one more, and one fewer, which can be
//! undone. Pure: sheets in, entries out.

use super::undo::{self, undoable};
use crate::form::kept::Called;
use crate::store::{Entry, ProjectId, SheetId, Sheets, Typed};
use crate::words::facts as words;
use loopwright_project::stored::{FACTS, UNDO};
use loopwright_project::{OwnCount, Project};

/// One more count, with this number and no name yet.
pub fn add(sheets: &Sheets, id: ProjectId, number: Typed) -> Vec<Entry> {
    let project = Project::from_sheets(&sheets.of_project(id));
    vec![Entry::new(facts_of(id), project.next_own_count().key(), Some(number))]
}

/// Takes a count away, its number and its name.
pub fn take_away(sheets: &Sheets, id: ProjectId, own: OwnCount) -> Vec<Entry> {
    let facts = facts_of(id);
    let name = Called::Own(own.name(&sheets.fields(&facts)).to_owned()).in_sentence();
    let gone = [own.key(), own.name_key()].map(|key| Entry::new(facts.clone(), key, None));
    undoable(sheets, id, &words::taking_away(&name), gone.into())
}

/// What the last change was, in words, if it took a count away and can be undone.
pub fn taken_away(sheets: &Sheets, id: ProjectId) -> Option<String> {
    let kept = sheets.fields(&SheetId::within(id, UNDO).to_string());
    let is_count = |place: &String| {
        let place = place.split_once(' ').filter(|(sheet, _)| *sheet == FACTS);
        place.is_some_and(|(_, key)| OwnCount::of_key(key).is_some())
    };
    undo::what(sheets, id).filter(|_| kept.keys().any(is_count))
}

fn facts_of(id: ProjectId) -> String {
    SheetId::within(id, FACTS).to_string()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::project::copy;
    use loopwright_project::{file, link, own_counts};
    use proptest::prelude::*;

    const HERE: ProjectId = ProjectId::FIRST;

    /// A project with one count, which was named letter by letter.
    fn named(name: &str) -> Sheets {
        let mut sheets = Sheets::default();
        sheets.apply_all(&add(&sheets, HERE, Typed::plain("96")));
        let own = own_counts(&sheets.fields(FACTS))[0];
        let mut typed = String::new();
        for letter in name.chars() {
            typed.push(letter);
            sheets.apply(&Entry::new(FACTS, own.name_key(), Some(Typed::plain(typed.clone()))));
            assert_eq!(own.name(&sheets.fields(FACTS)), typed.trim());
            assert_eq!(sheets.fields(FACTS)[&own.key()], Typed::plain("96"));
        }
        sheets
    }

    fn project(sheets: &Sheets, id: ProjectId) -> Project {
        Project::from_sheets(&sheets.of_project(id))
    }

    #[test]
    fn what_is_taken_away_comes_back_with_its_name() {
        let mut sheets = named("hood");
        let before = project(&sheets, HERE);
        let own = own_counts(&before.facts)[0];
        sheets.apply_all(&take_away(&sheets, HERE, own));
        assert!(project(&sheets, HERE).facts.is_empty());
        assert_eq!(taken_away(&sheets, HERE).as_deref(), Some("took away “hood”"));
        sheets.apply_all(&undo::undo(&sheets, HERE));
        assert_eq!(project(&sheets, HERE), before);
        // What was done to steps is undone where they stand.
        let moved = vec![Entry::new("step.1", "width", Some(Typed::plain("50")))];
        sheets.apply_all(&undoable(&sheets, HERE, "moved", moved));
        assert_eq!(taken_away(&sheets, HERE), None);
    }

    #[test]
    fn one_more_never_takes_the_place_of_another() {
        let mut sheets = named("hood");
        sheets.apply_all(&add(&sheets, HERE, Typed::plain("40")));
        let facts = project(&sheets, HERE).facts;
        let numbers: Vec<&str> = own_counts(&facts).iter().map(|own| &*facts[&own.key()].text).collect();
        assert_eq!(numbers, ["96", "40"]);
    }

    proptest! {
        #[test]
        fn any_name_goes_with_its_count_into_a_copy_a_file_and_a_link(name in ".{0,20}") {
            let mut sheets = named(&name);
            let here = project(&sheets, HERE);
            sheets.apply_all(&copy(&sheets, HERE, "Copy".into()));
            prop_assert_eq!(&project(&sheets, ProjectId(2)).facts, &here.facts);
            prop_assert_eq!(file::parse(&file::print(&here)), Ok(here.clone()));
            prop_assert_eq!(link::parse(&link::print(&here)), Ok(here));
        }
    }
}

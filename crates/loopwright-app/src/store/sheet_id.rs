//! Which sheet the name in an entry means: of which project, and what of it.
//!
//! | stored        | means                                                                            |
//! |---------------|----------------------------------------------------------------------------------|
//! | `settings`    | what holds for all projects: `settings`, `projects`, `home`, `frame`             |
//! | `known`       | the first project, which is there before anybody makes one                       |
//! | `p2/known`    | another project                                                                  |
//!
//! What lies on a sheet of a project is said in `loopwright_project::stored`.

use std::fmt;

/// The number of a project. The first one is there from the beginning.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct ProjectId(pub u32);

impl ProjectId {
    /// The project that is there before anybody makes one.
    pub const FIRST: Self = Self(1);

    /// The number that a text is, if it is written as this house writes it.
    pub fn parse(text: &str) -> Option<Self> {
        let number = text.parse::<u32>().ok().filter(|number| number.to_string() == text);
        number.filter(|number| *number > 0).map(Self)
    }
}

impl fmt::Display for ProjectId {
    fn fmt(&self, text: &mut fmt::Formatter<'_>) -> fmt::Result {
        self.0.fmt(text)
    }
}

/// The sheet on which it is said which projects there are, and which is open.
pub const PROJECTS: &str = "projects";

/// The sheets that belong to no project.
const FOR_ALL: [&str; 4] = ["settings", PROJECTS, "home", "frame"];

/// A sheet of the log.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct SheetId {
    /// The project it belongs to, if to any.
    pub project: Option<ProjectId>,
    /// Its name there.
    pub name: String,
}

impl SheetId {
    /// The sheet of this name, as it is called within a project.
    pub fn within(project: ProjectId, name: &str) -> Self {
        Self {
            project: (!is_for_all(name)).then_some(project),
            name: name.to_owned(),
        }
    }

    /// The sheet that is stored under this name. Reading is total: what no version wrote belongs to no project.
    pub fn parse(stored: &str) -> Self {
        let (project, name) = match stored.split_once('/') {
            Some((prefix, name)) => {
                let id = prefix.strip_prefix('p').and_then(ProjectId::parse);
                match id.filter(|id| *id != ProjectId::FIRST && !is_for_all(name)) {
                    Some(id) => (Some(id), name),
                    None => (None, stored),
                }
            }
            None => ((!is_for_all(stored)).then_some(ProjectId::FIRST), stored),
        };
        let name = name.to_owned();
        Self { project, name }
    }
}

impl fmt::Display for SheetId {
    fn fmt(&self, text: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self.project {
            None | Some(ProjectId::FIRST) => text.write_str(&self.name),
            Some(id) => write!(text, "p{id}/{}", self.name),
        }
    }
}

/// Whether a sheet, or one that lies beside it, belongs to no project.
fn is_for_all(name: &str) -> bool {
    let main = name.split_once('.').map_or(name, |(main, _)| main);
    FOR_ALL.contains(&main)
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    #[test]
    fn what_was_stored_before_there_were_projects_is_the_first_one() {
        for name in ["known", "spacing", "spacing.before", "cast_on"] {
            let id = SheetId::within(ProjectId::FIRST, name);
            assert_eq!(id.to_string(), name);
            assert_eq!(SheetId::parse(name), id);
        }
        assert_eq!(SheetId::within(ProjectId(2), "known").to_string(), "p2/known");
        assert_eq!(SheetId::within(ProjectId(2), "settings").to_string(), "settings");
        assert_eq!(SheetId::parse("p01/known").project, None);
        assert_eq!(SheetId::parse("p2/settings").project, None);
    }

    proptest! {
        #[test]
        fn any_stored_name_comes_back(stored in ".*|p[0-3]/[a-z.]{0,6}|[a-z.]{1,9}") {
            prop_assert_eq!(SheetId::parse(&stored).to_string(), stored);
        }

        #[test]
        fn any_sheet_of_a_project_comes_back(project in 1u32..4, name in "[a-z][a-z_.0-9]{0,9}") {
            let id = SheetId::within(ProjectId(project), &name);
            prop_assert_eq!(SheetId::parse(&id.to_string()), id);
        }
    }
}

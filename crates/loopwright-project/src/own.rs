//! Counts to which a knitter gives a name of her own, such as the hood's.
//!
//! They are facts like the others: `count_3` holds the number as typed, and `count_3_name` beside it what she calls it. So a
//! file, a link, a copy and an undo carry both, a name may have any characters, and a field that follows the count follows
//! it still when it is called something else. A number once given is given to no other count as long as anything stands on
//! it.

use crate::project::Project;
use crate::reference::Reference;
use crate::text::Texts;
use std::collections::BTreeSet;

const COUNT: &str = "count_";
const NAME: &str = "_name";

/// One count of her own.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct OwnCount(u32);

impl OwnCount {
    /// The key of the fact that is its number.
    pub fn key(self) -> String {
        format!("{COUNT}{}", self.0)
    }

    /// The key of the fact that is its name.
    pub fn name_key(self) -> String {
        format!("{COUNT}{}{NAME}", self.0)
    }

    /// The count to which a fact belongs, as its number or its name; none if it is another fact.
    pub fn of_key(key: &str) -> Option<Self> {
        let rest = key.strip_prefix(COUNT)?;
        let written = rest.strip_suffix(NAME).unwrap_or(rest);
        let number = written
            .parse::<u32>()
            .ok()
            .filter(|number| number.to_string() == written);
        number.filter(|number| *number > 0).map(Self)
    }

    /// What she calls it; empty until she does.
    pub fn name(self, facts: &Texts) -> &str {
        facts.get(&self.name_key()).map_or("", |typed| typed.text.trim())
    }
}

/// Whether a fact is the name of a count. Nothing is derived from a name, so nothing moves when it changes.
pub fn is_name(key: &str) -> bool {
    OwnCount::of_key(key).is_some() && key.ends_with(NAME)
}

/// Her own counts, in the order in which they were made: each of which there is the number or the name.
pub fn own_counts(facts: &Texts) -> Vec<OwnCount> {
    let counts: BTreeSet<OwnCount> = facts.keys().filter_map(|key| OwnCount::of_key(key)).collect();
    counts.into_iter().collect()
}

impl Project {
    /// A count that is still to be made: one that nothing in the project stands on.
    pub fn next_own_count(&self) -> OwnCount {
        let steps = self.steps.iter().flat_map(|step| step.from.values());
        let drafts = self.drafts.values().flat_map(|draft| draft.from.values());
        let referred = steps.chain(drafts).filter_map(|reference| match reference {
            Reference::Fact(key) => Some(key),
            Reference::Step { .. } | Reference::Gone(_) => None,
        });
        let keys = self.facts.keys().chain(self.was.keys()).chain(referred);
        let last = keys.filter_map(|key| OwnCount::of_key(key)).max();
        let next = last.and_then(|OwnCount(last)| last.checked_add(1));
        next.map_or_else(|| self.first_free(), OwnCount)
    }

    /// The first number that no fact has: in a file of a stranger the last number there is may be taken.
    fn first_free(&self) -> OwnCount {
        let taken: BTreeSet<OwnCount> = own_counts(&self.facts).into_iter().collect();
        let free = (1..=u32::MAX).map(OwnCount).find(|count| !taken.contains(count));
        free.unwrap_or(OwnCount(1))
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::{Step, Typed, file, link};
    use proptest::prelude::*;

    fn known(facts: &[(&str, &str)]) -> Project {
        let facts = facts.iter().map(|(key, text)| ((*key).to_owned(), Typed::plain(*text)));
        Project {
            facts: facts.collect(),
            ..Project::default()
        }
    }

    #[test]
    fn a_count_has_its_number_and_its_name_beside_it() {
        let project = known(&[
            ("count_2", "96"),
            ("count_2_name", " hood "),
            ("count_11_name", "cuff"),
            ("bust", "92"),
        ]);
        let counts = own_counts(&project.facts);
        assert_eq!(counts, [OwnCount(2), OwnCount(11)]);
        let names: Vec<&str> = counts.iter().map(|count| count.name(&project.facts)).collect();
        assert_eq!(names, ["hood", "cuff"]);
        assert_eq!(project.next_own_count(), OwnCount(12));
    }

    #[test]
    fn what_is_written_otherwise_is_no_count() {
        for key in [
            "count_",
            "count_0",
            "count_01",
            "count_-1",
            "count_4294967296",
            "count_1_names",
            "count_1_name_name",
            "counts",
        ] {
            assert_eq!(OwnCount::of_key(key), None, "{key}");
            assert!(!is_name(key), "{key}");
        }
        assert!(is_name("count_7_name") && !is_name("count_7"));
    }

    #[test]
    fn a_number_that_something_stands_on_is_not_given_again() {
        let mut project = known(&[("count_1", "96")]);
        let mut step = Step::new("tail", "Hood");
        step.from.insert("stitches".into(), Reference::Fact("count_4".into()));
        project.add(step);
        assert_eq!(project.next_own_count(), OwnCount(5));
        // The last number there is leaves the first free one.
        project.facts.insert(OwnCount(u32::MAX).key(), Typed::plain("1"));
        assert_eq!(project.next_own_count(), OwnCount(2));
    }

    #[test]
    fn a_name_is_typed_letter_by_letter_and_nothing_has_moved() {
        let mut project = known(&[("count_1", "96")]);
        let name = OwnCount(1).name_key();
        for text in ["h", "ho", "hoo", "hood"] {
            project.set_fact(&name, Some(Typed::plain(text)));
            assert_eq!(OwnCount(1).name(&project.facts), text);
        }
        assert!(project.was.is_empty());
        project.set_fact("count_1", Some(Typed::plain("90")));
        assert_eq!(project.as_it_was().facts[&name], Typed::plain("hood"));
    }

    const HOSTILE: [&str; 7] = [
        "",
        "neck",
        "<b onclick=x>",
        "__proto__",
        "\u{202e}dooh",
        "a\nb\u{0}c",
        "\"},{",
    ];

    proptest! {
        #[test]
        fn any_name_comes_back_from_file_and_link(name in ".{0,40}", hostile in 0..HOSTILE.len()) {
            for name in [&*name, HOSTILE[hostile]] {
                let project = known(&[("count_1", "96"), ("count_1_name", name)]);
                prop_assert_eq!(file::parse(&file::print(&project)), Ok(project.clone()));
                prop_assert_eq!(link::parse(&link::print(&project)), Ok(project.clone()));
                prop_assert_eq!(Project::from_sheets(&project.to_sheets()), project);
            }
        }

        #[test]
        fn any_key_is_a_count_or_another_fact(key in "count_[0-9]{0,12}(_name)?|.*") {
            let keys = |count: OwnCount| [count.key(), count.name_key()];
            prop_assert!(OwnCount::of_key(&key).is_none_or(|count| keys(count).contains(&key)));
        }
    }
}

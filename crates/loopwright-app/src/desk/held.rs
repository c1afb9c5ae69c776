//! The field in which she is typing while another window writes into it. The log decides, and the page shows what is stored;
//! but nothing is changed under her cursor. So that one field holds what she sees until she takes the other text, types on, or
//! goes elsewhere, and the page says meanwhile what another window wrote.

use crate::store::{Entry, Sheets, Typed};
use gloo_utils::document;

/// The attribute of an element in which is typed: the sheet and the field under which it is kept.
pub const KEPT_AS: &str = "data-kept";

/// The attribute of the button that takes what another window wrote.
pub const TAKES: &str = "data-takes";

/// A field of the log.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct FieldName {
    /// The sheet under the name it is kept under.
    pub sheet: String,
    /// The field.
    pub field: String,
}

impl FieldName {
    /// As it stands in an attribute: no sheet has a space in its name.
    pub fn print(&self) -> String {
        [&self.sheet, " ", &self.field].concat()
    }

    fn parse(text: &str) -> Option<Self> {
        let (sheet, field) = text.split_once(' ')?;
        let (sheet, field) = (sheet.to_owned(), field.to_owned());
        Some(Self { sheet, field })
    }

    fn text(&self, sheets: &Sheets) -> Option<Typed> {
        sheets.text(&self.sheet, &self.field).cloned()
    }

    fn entry(&self, typed: Option<Typed>) -> Entry {
        Entry::new(&self.sheet, &self.field, typed)
    }
}

/// The field in which she types now; none where this window is not the one in which she does.
pub fn typed_in() -> Option<FieldName> {
    let is_here = document().has_focus().unwrap_or(true) && !document().hidden();
    let element = document().active_element().filter(|_| is_here)?;
    FieldName::parse(&element.get_attribute(KEPT_AS)?)
}

/// A field that another window wrote into while she was typing there.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Held {
    /// Which one.
    pub name: FieldName,
    /// What she saw there.
    pub ours: Option<Typed>,
    /// What another window wrote, which is what is kept.
    pub theirs: Option<Typed>,
    /// Whether she is elsewhere meanwhile, so that the page shows what is kept.
    pub is_left: bool,
}

/// Lays what was read over what is seen, but for the field in which she types; answers what is held of it.
pub fn lay_over_seen(
    seen: &Sheets,
    held: Option<Held>,
    read: &mut Sheets,
    typed_in: Option<FieldName>,
) -> Option<Held> {
    let Some(name) = typed_in else {
        // What was said about a field that she left is true as long as it holds that text.
        return held
            .and_then(Held::left)
            .filter(|held| held.name.text(read) == held.theirs);
    };
    let (ours, theirs) = (name.text(seen), name.text(read));
    if ours == theirs {
        return held.filter(|held| held.is_left && held.name == name && held.theirs == theirs);
    }
    read.apply(&name.entry(ours.clone()));
    let is_left = false;
    Some(Held {
        name,
        ours,
        theirs,
        is_left,
    })
}

impl Held {
    /// She went elsewhere. Where nothing of hers stood there is nothing to be said any more.
    pub fn left(self) -> Option<Self> {
        let is_left = true;
        self.ours.is_some().then_some(Self { is_left, ..self })
    }

    /// The change that has the page show what is kept.
    pub fn giving_way(&self) -> Entry {
        self.name.entry(self.theirs.clone())
    }

    /// The change that puts back what she saw.
    pub fn putting_back(&self) -> Entry {
        self.name.entry(self.ours.clone())
    }

    /// Whether one of these changes is of this field.
    pub fn is_among(&self, entries: &[Entry]) -> bool {
        let is_it = |entry: &Entry| entry.sheet == self.name.sheet && entry.field == self.name.field;
        entries.iter().any(is_it)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn sheets(text: Option<&str>) -> Sheets {
        let mut sheets = Sheets::default();
        sheets.apply(&Entry::new("p2/known", "gauge", text.map(Typed::plain)));
        sheets.apply(&Entry::new("p2/known", "bust", text.map(Typed::plain)));
        sheets
    }

    fn name() -> FieldName {
        FieldName::parse("p2/known gauge").expect("a name")
    }

    #[test]
    fn a_field_is_known_by_its_attribute() {
        assert_eq!(name().print(), "p2/known gauge");
        for text in ["", "gauge"] {
            assert_eq!(FieldName::parse(text), None);
        }
    }

    #[test]
    fn only_the_field_that_is_typed_in_is_held() {
        let (seen, mut read) = (sheets(Some("22")), sheets(Some("20")));
        let held = lay_over_seen(&seen, None, &mut read, Some(name())).expect("it is held");
        assert_eq!(name().text(&read), Some(Typed::plain("22")));
        assert_eq!(read.text("p2/known", "bust"), Some(&Typed::plain("20")));
        assert_eq!(held.theirs, Some(Typed::plain("20")));
        // She goes elsewhere: the page shows what is kept, and says what it was.
        let left = held.left().expect("hers was something");
        read.apply(&left.giving_way());
        assert_eq!(read, sheets(Some("20")));
        assert_eq!(
            left.putting_back(),
            Entry::new("p2/known", "gauge", Some(Typed::plain("22")))
        );
    }

    #[test]
    fn nothing_is_held_where_the_same_was_written_or_nobody_types() {
        for typed_in in [Some(name()), None] {
            let mut read = sheets(Some("22"));
            assert_eq!(lay_over_seen(&sheets(Some("22")), None, &mut read, typed_in), None);
        }
        let mut read = sheets(Some("20"));
        assert_eq!(lay_over_seen(&sheets(Some("22")), None, &mut read, None), None);
        assert_eq!(read, sheets(Some("20")));
    }

    #[test]
    fn what_is_held_is_what_the_log_says_last() {
        let seen = sheets(Some("22"));
        let mut read = sheets(Some("20"));
        let held = lay_over_seen(&seen, None, &mut read, Some(name()));
        let seen = read;
        let mut read = sheets(None);
        let held = lay_over_seen(&seen, held, &mut read, Some(name())).expect("it is still held");
        assert_eq!(
            (held.ours.clone(), held.theirs.clone()),
            (Some(Typed::plain("22")), None)
        );
        // The other window writes what she has: there is nothing to be said.
        let mut read = sheets(Some("22"));
        assert_eq!(
            lay_over_seen(&sheets(Some("22")), Some(held), &mut read, Some(name())),
            None
        );
    }

    #[test]
    fn what_was_left_is_said_until_it_is_another_text() {
        let left = Held {
            name: name(),
            ours: Some(Typed::plain("22")),
            theirs: Some(Typed::plain("20")),
            is_left: true,
        };
        let mut read = sheets(Some("20"));
        let seen = read.clone();
        assert_eq!(
            lay_over_seen(&seen, Some(left.clone()), &mut read, None),
            Some(left.clone())
        );
        let mut read = sheets(Some("19"));
        assert_eq!(lay_over_seen(&seen, Some(left), &mut read, None), None);
    }
}

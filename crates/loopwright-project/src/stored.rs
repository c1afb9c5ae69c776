//! A project as it is kept: sheets of texts, as everything is that was ever typed.
//!
//! | sheet          | fields                                                     |
//! |----------------|------------------------------------------------------------|
//! | `project`      | `name`, `next`, `pace`                                     |
//! | `known`        | a fact each; of a count of hers `count_1`, `count_1_name`  |
//! | `known.was`    | the same, as they were when she last saw what moved        |
//! | `step.3`       | what was typed into the fields of the step                 |
//! | `step.3.from`  | where others of them get their text                        |
//! | `step.3.about` | `tool`, `name`, `section`, `amount`, `place`, and of a     |
//! |                | track `alongside` and `from_row`                           |
//! | `tail`         | what was typed into a tool and is no step                  |
//! | `tail.from`    | where others of its fields get their text                  |
//! | `undo`         | what the last change of the steps can be undone with       |
//!
//! Reading is total: what means nothing is passed over, and stays where it is kept.

use crate::project::{Draft, Project, Step, StepId};
use crate::reference::Reference;
use crate::text::{Texts, Typed};
use std::collections::BTreeMap;

/// Sheets by their names.
pub type Sheets = BTreeMap<String, Texts>;

/// The sheet of the facts.
pub const FACTS: &str = "known";
/// The sheet of facts as they were.
pub const WAS: &str = "known.was";
/// The sheet of the project itself.
pub const PROJECT: &str = "project";
/// The sheet of what the last change of the steps can be undone with.
pub const UNDO: &str = "undo";
/// What stands for a fact that was not there.
const ABSENT: &str = "absent";

/// The sheet of what was typed into a step.
pub fn step_sheet(id: StepId) -> String {
    format!("step.{id}")
}

/// The sheet that says what a step is.
pub fn about_sheet(id: StepId) -> String {
    format!("step.{id}.about")
}

/// The sheet that says where fields of a sheet get their text.
pub fn from_sheet(sheet: &str) -> String {
    format!("{sheet}.from")
}

/// What is kept for a fact as it was.
pub fn kept_was(was: Option<&Typed>) -> Typed {
    was.cloned().unwrap_or_else(|| Typed::with_unit("", ABSENT))
}

/// What was, of what is kept for it.
pub fn read_was(typed: &Typed) -> Option<Typed> {
    let is_absent = typed.text.is_empty() && typed.unit.as_deref() == Some(ABSENT);
    (!is_absent).then(|| typed.clone())
}

/// References as they are kept.
pub fn kept_references(from: &BTreeMap<String, Reference>) -> Texts {
    let kept = |(field, reference): (&String, &Reference)| (field.clone(), Typed::plain(reference.to_string()));
    from.iter().map(kept).collect()
}

/// References from what is kept; what means nothing to this version is passed over.
pub fn read_references(kept: &Texts) -> BTreeMap<String, Reference> {
    let read = |(field, typed): (&String, &Typed)| Some((field.clone(), Reference::parse(&typed.text)?));
    kept.iter().filter_map(read).collect()
}

impl Project {
    /// The project on these sheets.
    pub fn from_sheets(sheets: &Sheets) -> Self {
        let on = |name: &str| sheets.get(name).cloned().unwrap_or_default();
        let project = on(PROJECT);
        let was = on(WAS);
        let drafts = sheets.iter().filter(|(name, _)| is_draft(name)).map(|(name, fields)| {
            let from = read_references(&on(&from_sheet(name)));
            let fields = fields.clone();
            (name.clone(), Draft { fields, from })
        });
        Self {
            name: text(&project, "name"),
            facts: on(FACTS),
            was: was.iter().map(|(key, typed)| (key.clone(), read_was(typed))).collect(),
            steps: read_steps(sheets),
            next: text(&project, "next").parse().unwrap_or_default(),
            pace: text(&project, "pace"),
            drafts: drafts.collect(),
        }
    }

    /// The sheets of the project; one that holds nothing is not there.
    pub fn to_sheets(&self) -> Sheets {
        let mut sheets = Sheets::new();
        let mut put = |name: String, texts: Texts| {
            if !texts.is_empty() {
                sheets.insert(name, texts);
            }
        };
        let next = if self.next == 0 {
            String::new()
        } else {
            self.next.to_string()
        };
        let own = [("name", &*self.name), ("next", &next), ("pace", &self.pace)];
        put(PROJECT.into(), texts(own));
        put(FACTS.into(), self.facts.clone());
        let was = self.was.iter().map(|(key, was)| (key.clone(), kept_was(was.as_ref())));
        put(WAS.into(), was.collect());
        for (place, step) in self.steps.iter().enumerate() {
            put(about_sheet(step.id), about(step, place));
            put(step_sheet(step.id), step.fields.clone());
            put(from_sheet(&step_sheet(step.id)), kept_references(&step.from));
        }
        for (tool, draft) in &self.drafts {
            put(tool.clone(), draft.fields.clone());
            put(from_sheet(tool), kept_references(&draft.from));
        }
        sheets
    }
}

/// Whether a name is one that a tool can have, and no other sheet.
pub(crate) fn is_draft(name: &str) -> bool {
    !name.contains('.') && ![PROJECT, FACTS, UNDO].contains(&name)
}

fn text(texts: &Texts, field: &str) -> String {
    texts.get(field).map_or_else(String::new, |typed| typed.text.clone())
}

fn texts<const N: usize>(pairs: [(&str, &str); N]) -> Texts {
    let held = pairs.into_iter().filter(|(_, text)| !text.is_empty());
    held.map(|(field, text)| (field.to_owned(), Typed::plain(text)))
        .collect()
}

/// What is kept about a step that stands in this place.
pub fn about(step: &Step, place: usize) -> Texts {
    let place = place.to_string();
    texts([
        ("tool", &step.tool),
        ("name", &step.name),
        ("section", &step.section),
        ("amount", &step.amount),
        ("alongside", &step.alongside),
        ("from_row", &step.from_row),
        ("place", &place),
    ])
}

fn read_steps(sheets: &Sheets) -> Vec<Step> {
    let mut steps: Vec<(u32, Step)> = sheets
        .iter()
        .filter_map(|(name, about)| read_step(sheets, name, about))
        .collect();
    steps.sort_by_key(|(place, step)| (*place, step.id));
    steps.into_iter().map(|(_, step)| step).collect()
}

fn read_step(sheets: &Sheets, name: &str, about: &Texts) -> Option<(u32, Step)> {
    let id = StepId::parse(name.strip_prefix("step.")?.strip_suffix(".about")?)?;
    let on = |name: &str| sheets.get(name).cloned().unwrap_or_default();
    let fields = step_sheet(id);
    let step = Step {
        id,
        tool: text(about, "tool"),
        name: text(about, "name"),
        section: text(about, "section"),
        amount: text(about, "amount"),
        alongside: text(about, "alongside"),
        from_row: text(about, "from_row"),
        from: read_references(&on(&from_sheet(&fields))),
        fields: on(&fields),
    };
    Some((text(about, "place").parse().unwrap_or(u32::MAX), step))
}

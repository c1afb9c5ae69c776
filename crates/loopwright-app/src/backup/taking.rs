//! What is taken of a copy that is brought back: the sheets that this page keeps, and on each the fields it has. Anything may
//! stand in a file. What is left out is counted and named. One pass, and then each sheet by itself.

use crate::desk::{hers, undo};
use crate::form::kept::Kept;
use crate::form::taken::{LeftOut, MOST_BYTES, Why, has};
use crate::form::{HAND, Measures, NEEDLE, SETTINGS, TAPE, WEIGHT, YARN};
use crate::knit::{Comfort, keeps_beside_taps};
use crate::page::{home, light, panel::chosen, project::BESIDE};
use crate::project::{self, steps::About};
use crate::store::{Entry, PROJECTS, SheetId, Sheets};
use crate::tool;
use crate::words::taken as words;
use loopwright::choice::Key;
use loopwright_project::file::HIGHEST_NUMBER;
use loopwright_project::knitting::{Tap, is_knitting};
use loopwright_project::stored::{FACTS, PROJECT, UNDO, WAS};
use loopwright_project::{OwnCount, StepId};
use std::collections::{BTreeMap, BTreeSet};

/// More sheets than any shelf of projects has.
const MOST_SHEETS: usize = 5_000;
/// More counts of her own than any project has.
const MOST_OWN_COUNTS: usize = 200;
/// More fields than any tool has.
const MOST_OF_A_STRANGER: usize = 500;

/// What is taken of a copy.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Taken {
    /// The sheets.
    pub sheets: Sheets,
    /// What this page has no place for.
    pub left_out: LeftOut,
}

/// What this page knows of these entries, each of which sets a field.
pub fn take(entries: Vec<Entry>) -> Taken {
    let copy = Copy::of(&entries);
    let mut taken = Taken::default();
    let mut room = Room::default();
    for entry in entries {
        let longest = entry
            .typed
            .as_ref()
            .map_or(0, |typed| typed.text.len())
            .max(entry.field.len());
        let why = match copy.knows(&entry) {
            Known::Not => Some(Why::Unknown),
            _ if longest > most_bytes(&entry.field) => Some(Why::TooLong),
            known if !room.has(&entry, known) => Some(Why::TooMany),
            _ => None,
        };
        match why {
            Some(why) => taken.left_out.note(&words::on_sheet(&entry.sheet, &entry.field), why),
            None => taken.sheets.apply(&entry),
        }
    }
    taken
}

/// The most bytes of a field: the text of a pattern is longer than what is typed anywhere else.
fn most_bytes(field: &str) -> usize {
    if hers::is_hers(field) {
        hers::MOST_BYTES
    } else {
        MOST_BYTES
    }
}

/// Whether this page knows a field of a sheet.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Known {
    /// It does not.
    Not,
    /// It does.
    Well,
    /// It is one of a step that a later version made, which is listed as one whose tool is not here, and goes along.
    OfAStranger,
}

impl Known {
    const fn if_so(known: bool) -> Self {
        if known { Self::Well } else { Self::Not }
    }
}

/// How much was taken of what there may be many of, and not endlessly many.
#[derive(Default)]
struct Room {
    sheets: BTreeSet<String>,
    own_counts: BTreeMap<String, BTreeSet<OwnCount>>,
    of_strangers: BTreeMap<String, usize>,
}

impl Room {
    /// Whether there is room for this.
    fn has(&mut self, entry: &Entry, known: Known) -> bool {
        if !self.sheets.contains(&entry.sheet) {
            if self.sheets.len() >= MOST_SHEETS {
                return false;
            }
            self.sheets.insert(entry.sheet.clone());
        }
        let own_count = OwnCount::of_key(&entry.field).filter(|_| known == Known::Well);
        match (own_count, known) {
            (Some(count), _) => {
                let counts = self.own_counts.entry(entry.sheet.clone()).or_default();
                counts.insert(count);
                counts.len() <= MOST_OWN_COUNTS
            }
            (None, Known::OfAStranger) => {
                let fields = self.of_strangers.entry(entry.sheet.clone()).or_default();
                *fields += 1;
                *fields <= MOST_OF_A_STRANGER
            }
            (None, Known::Well | Known::Not) => true,
        }
    }
}

/// What has to be known of a whole copy before one entry is.
struct Copy {
    /// The tool of each step, by the sheet of the step.
    tools: BTreeMap<String, String>,
}

impl Copy {
    fn of(entries: &[Entry]) -> Self {
        let about = |entry: &Entry| {
            let step = entry.sheet.strip_suffix(".about").filter(|_| entry.field == TOOL)?;
            Some((step.to_owned(), entry.typed.as_ref()?.text.clone()))
        };
        Self {
            tools: entries.iter().filter_map(about).collect(),
        }
    }

    fn knows(&self, entry: &Entry) -> Known {
        let id = SheetId::parse(&entry.sheet);
        let text = entry.typed.as_ref().map_or("", |typed| &typed.text);
        match id.project {
            None => Known::if_so(knows_for_all(&id.name, &entry.field)),
            Some(_) => self.knows_of_project(&entry.sheet, &id.name, &entry.field, text),
        }
    }

    /// Whether a field of a sheet of a project is one of ours; `name` is what the sheet is called in the project.
    fn knows_of_project(&self, stored: &str, name: &str, field: &str, text: &str) -> Known {
        if let Some((main, stored)) = without_side(name).zip(without_side(stored)) {
            return self.knows_of_project(stored, main, field, text);
        }
        let about = name.strip_suffix(".about").filter(|step| is_step(step));
        match (name, about) {
            (FACTS | WAS, _) => Known::if_so(is_fact(field)),
            (PROJECT, _) => Known::if_so(["name", "next", "pace"].contains(&field)),
            (UNDO, _) => self.knows_undoing(stored, field),
            (_, Some(_)) => Known::if_so(is_about(field)),
            (name, None) if is_knitting(name) => Known::if_so(has_rows(name) && is_of_knitting(field, text)),
            (name, None) => self.knows_field(stored, name, field),
        }
    }

    /// What a change of steps can be undone with stands under the names of a sheet and a field of it.
    fn knows_undoing(&self, stored: &str, field: &str) -> Known {
        let project = stored.strip_suffix(UNDO).unwrap_or_default();
        match field.split_once(' ') {
            Some(("", "")) => Known::Well,
            Some(("" | UNDO, _)) | None => Known::Not,
            Some((name, field)) => self.knows_of_project(&[project, name].concat(), name, field, ""),
        }
    }

    /// Whether a tool or a step has a field.
    fn knows_field(&self, stored: &str, name: &str, field: &str) -> Known {
        let sheet = |sheet: &str| sheet.strip_suffix(".from").unwrap_or(sheet).to_owned();
        if !is_step(&sheet(name)) {
            return Known::if_so(tool::find(&sheet(name)).is_some_and(|tool| has(tool.fields, field)));
        }
        match self.tools.get(&sheet(stored)).map(|tool| tool::find(tool)) {
            Some(Some(tool)) => Known::if_so(has(tool.fields, field)),
            Some(None) => Known::OfAStranger,
            // What is left of a step that was taken out.
            None => Known::if_so(tool::TOOLS.iter().any(|tool| has(tool.fields, field))),
        }
    }
}

/// The field that says which tool a step is of.
const TOOL: &str = "tool";

/// The sheet beside which one lies that was put aside.
fn without_side(name: &str) -> Option<&str> {
    undo::is_side_sheet(name).then(|| undo::main_sheet(name))
}

fn is_step(name: &str) -> bool {
    let id = name.strip_prefix("step.").and_then(StepId::parse);
    id.is_some_and(|id| id.0 <= HIGHEST_NUMBER)
}

fn is_fact(field: &str) -> bool {
    Kept::from_key(field).is_some() || OwnCount::of_key(field).is_some()
}

fn is_about(field: &str) -> bool {
    About::from_key(field).is_some() || [TOOL, "place"].contains(&field)
}

/// Whether taps may lie on a sheet: beside a tool, or beside a step, also one that was taken out and can be had back.
fn has_rows(name: &str) -> bool {
    let followed = name.split(".knit").next().unwrap_or_default();
    is_step(followed) || tool::find(followed).is_some()
}

/// A tap, or what is noted beside the taps.
fn is_of_knitting(field: &str, text: &str) -> bool {
    let is_tap = field.starts_with(|letter: char| letter.is_ascii_digit()) && Tap::parse(text).is_some();
    is_tap || keeps_beside_taps(field)
}

/// Whether a field is one of those that are kept for all projects.
fn knows_for_all(sheet: &str, field: &str) -> bool {
    match without_side(sheet).unwrap_or(sheet) {
        SETTINGS => is_setting(field),
        PROJECTS => project::keeps(field) || field == BESIDE,
        home::SHEET => field == home::SEARCH,
        chosen::SHEET => is_of_frame(field),
        _ => false,
    }
}

fn is_setting(field: &str) -> bool {
    let settings = [
        Measures::SETTING,
        TAPE.setting,
        YARN.setting,
        WEIGHT.setting,
        NEEDLE.setting,
        HAND,
        light::SETTING,
    ];
    settings.contains(&field) || Comfort::from_key(field).is_some()
}

fn is_of_frame(field: &str) -> bool {
    let is_of_tool = |(tool, key): (&str, &str)| tool::find(tool).is_some() && chosen::OfTool::from_key(key).is_some();
    chosen::Setting::from_key(field).is_some() || field.split_once('.').is_some_and(is_of_tool)
}

#[cfg(test)]
mod tests;

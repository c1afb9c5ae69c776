//! Laying something over a sheet without losing what lay there: a link that is opened, an answer that is handed on, a copy
//! that is brought back. Pure: sheets in, entries out.
//!
//! What lay there goes on a pile: the sheet `<sheet>.before`, below it `<sheet>.before.2`, and so on; and with each, on
//! `<sheet>.from.before`, from where others of its fields got their text. Putting back takes the uppermost that differs from
//! what lies there, and puts that at the bottom, so that every one of them can be had again.
//!
//! A link that was only looked at is no work of hers: on the pile lies one such at most, so that looking at many links does not
//! push her own figures out of it. `<sheet>.link` remembers what was laid last, and `<sheet>.link.before` which of the pile
//! was only looked at.

use crate::store::{Entry, Fields, PROJECTS, ProjectId, SheetId, Sheets};
use loopwright_project::Project;
use loopwright_project::stored::{FACTS, PROJECT, UNDO, from_sheet};

/// How many lie on a pile at most.
const MOST: usize = 9;

/// What lies on a sheet, or lay there.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Laid {
    /// Its fields.
    pub fields: Fields,
    /// From where others of its fields get their text.
    pub from: Fields,
}

impl Laid {
    fn on(sheets: &Sheets, sheet: &str) -> Self {
        Self {
            fields: sheets.fields(sheet),
            from: sheets.fields(&from_sheet(sheet)),
        }
    }

    fn is_empty(&self) -> bool {
        self.fields.is_empty() && self.from.is_empty()
    }
}

/// What putting back would bring.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Back {
    /// Figures of her own.
    Own,
    /// What a link brought that was only looked at.
    LookedAt,
}

/// The name of the sheet that holds what was there before; of an older one by its place on the pile.
fn before(sheet: &str, place: usize) -> String {
    match place {
        0 => format!("{sheet}.before"),
        _ => format!("{sheet}.before.{}", place + 1),
    }
}

fn link(sheet: &str) -> String {
    format!("{sheet}.link")
}

/// Whether a sheet's name is one of this file's own.
pub fn is_side_sheet(sheet: &str) -> bool {
    main_sheet(sheet) != sheet
}

/// The sheet beside which one lies, without what is added to its name here.
pub fn main_sheet(sheet: &str) -> &str {
    let ends = [".before", ".link"].iter().filter_map(|side| {
        let end = sheet.find(side)?;
        let rest = &sheet[end + side.len()..];
        (rest.is_empty() || rest.starts_with('.')).then_some(end)
    });
    let main = ends.min().map_or(sheet, |end| &sheet[..end]);
    match main.len() == sheet.len() {
        true => sheet,
        false => main.strip_suffix(".from").unwrap_or(main),
    }
}

/// Whether what lies on a sheet is put back on a page of its own: that of a tool or of a step.
pub fn has_a_page(stored: &str) -> bool {
    let id = SheetId::parse(stored);
    let is_step = |name: &str| name.strip_prefix("step.").is_some_and(|number| !number.contains('.'));
    let is_tool = |name: &str| !name.contains('.') && ![PROJECT, FACTS, UNDO, PROJECTS].contains(&name);
    id.project.is_some() && (is_step(&id.name) || is_tool(&id.name))
}

/// What lay on a sheet before, the newest first.
pub fn pile(sheets: &Sheets, sheet: &str) -> Vec<Laid> {
    let at = |place| Laid {
        fields: sheets.fields(&before(sheet, place)),
        from: sheets.fields(&before(&from_sheet(sheet), place)),
    };
    (0..MOST).map(at).take_while(|laid| !laid.is_empty()).collect()
}

fn pile_up(sheets: &Sheets, sheet: &str, pile: &[Laid]) -> Vec<Entry> {
    let nothing = Laid::default();
    let at = |place| {
        let laid = pile.get(place).unwrap_or(&nothing);
        let mut entries = become_exactly(sheets, &before(sheet, place), &laid.fields);
        entries.extend(become_exactly(sheets, &before(&from_sheet(sheet), place), &laid.from));
        entries
    };
    (0..MOST).flat_map(at).collect()
}

fn become_laid(sheets: &Sheets, sheet: &str, laid: &Laid) -> Vec<Entry> {
    let mut entries = become_exactly(sheets, sheet, &laid.fields);
    entries.extend(become_exactly(sheets, &from_sheet(sheet), &laid.from));
    entries
}

/// Makes a sheet exactly this. Nothing to do if it is that already.
pub fn lay_over(sheets: &Sheets, sheet: &str, laid: &Laid) -> Vec<Entry> {
    let now = Laid::on(sheets, sheet);
    if now == *laid {
        return Vec::new();
    }
    let mut entries = become_exactly(sheets, &link(sheet), &laid.fields);
    if !now.is_empty() {
        entries.extend(put_on_pile(sheets, sheet, &now, laid));
    }
    entries.extend(become_laid(sheets, sheet, laid));
    entries
}

/// Puts what lies on a sheet on the pile, where each is once, and what will lie there is not.
fn put_on_pile(sheets: &Sheets, sheet: &str, now: &Laid, then: &Laid) -> Vec<Entry> {
    let looked_at = sheets.fields(&before(&link(sheet), 0));
    let is_looked_at = is_same(&now.fields, &sheets.fields(&link(sheet)));
    let mut pile = pile(sheets, sheet);
    if is_looked_at && pile.first().is_some_and(|first| is_same(&first.fields, &looked_at)) {
        pile.remove(0);
    }
    pile.retain(|laid| laid != now && laid != then);
    pile.insert(0, now.clone());
    pile.truncate(MOST);
    let looked_at = if is_looked_at {
        now.fields.clone()
    } else {
        Fields::new()
    };
    let mut entries = become_exactly(sheets, &before(&link(sheet), 0), &looked_at);
    entries.extend(pile_up(sheets, sheet, &pile));
    entries
}

/// What putting back would bring; none where nothing lay there that differs.
pub fn back(sheets: &Sheets, sheet: &str) -> Option<Back> {
    let now = Laid::on(sheets, sheet);
    let pile = pile(sheets, sheet);
    let then = pile.iter().find(|laid| **laid != now)?;
    let is_looked_at = is_same(&then.fields, &sheets.fields(&before(&link(sheet), 0)));
    Some(if is_looked_at { Back::LookedAt } else { Back::Own })
}

/// Whether two sheets hold the same, and something.
fn is_same(one: &Fields, other: &Fields) -> bool {
    !one.is_empty() && one == other
}

/// Brings back what was there, and puts what is there now below the pile, so that this too can be undone.
pub fn put_back(sheets: &Sheets, sheet: &str) -> Vec<Entry> {
    let now = Laid::on(sheets, sheet);
    let mut pile = pile(sheets, sheet);
    pile.retain(|laid| *laid != now);
    if pile.is_empty() {
        return Vec::new();
    }
    let then = pile.remove(0);
    if !now.is_empty() {
        pile.push(now);
    }
    let mut entries = become_laid(sheets, sheet, &then);
    entries.extend(pile_up(sheets, sheet, &pile));
    entries
}

/// The changes that make a sheet equal to these fields.
pub fn become_exactly(sheets: &Sheets, sheet: &str, fields: &Fields) -> Vec<Entry> {
    let now = sheets.fields(sheet);
    let mut entries = Vec::new();
    for (field, _) in now.iter() {
        if !fields.contains_key(field) {
            entries.push(Entry::new(sheet, field.clone(), None));
        }
    }
    for (field, typed) in fields.iter() {
        if now.get(field) != Some(typed) {
            entries.push(Entry::new(sheet, field.clone(), Some(typed.clone())));
        }
    }
    entries
}

/// The changes that make the sheets of a project those of this one, as far as it says what lies on them.
pub fn become_project(sheets: &Sheets, id: ProjectId, project: &Project) -> Vec<Entry> {
    let stored = |name: &str| SheetId::within(id, name).to_string();
    let then = project.to_sheets();
    let now = Project::from_sheets(&sheets.of_project(id)).to_sheets();
    let gone = now.into_keys().filter(|name| !then.contains_key(name));
    let mut entries: Vec<Entry> = gone
        .flat_map(|name| become_exactly(sheets, &stored(&name), &Fields::new()))
        .collect();
    let changed = then
        .iter()
        .flat_map(|(name, fields)| become_exactly(sheets, &stored(name), fields));
    entries.extend(changed);
    entries
}

/// The changes that make one desk of another.
pub fn become_desk(now: &Sheets, then: &Sheets) -> Vec<Entry> {
    let gone = now.iter().filter(|(name, _)| then.sheet(name).is_none());
    let mut entries: Vec<Entry> = gone
        .flat_map(|(name, _)| become_exactly(now, name, &Fields::new()))
        .collect();
    let changed = then.iter().filter(|(name, fields)| now.sheet(name) != Some(*fields));
    entries.extend(changed.flat_map(|(name, fields)| become_exactly(now, name, fields)));
    entries
}

#[cfg(test)]
mod tests;

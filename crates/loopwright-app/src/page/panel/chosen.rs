//! What she chose in the panel, as it is kept; and what follows from it for a frame of the tool as it stands. Pure: sheets
//! in, a frame out.
//!
//! One sheet for all tools: light, colour, units and the address are those of her page. Which fields are fixed or left out
//! and which has the cursor is chosen for each tool, under a key that begins with its id: `spacing.locked`.

use super::heights::WIDTHS;
use super::snippet::Placed;
use crate::form::{Field, Fields, Kind, Measures, Place, Settings};
use crate::frame::{self, Accent, Light, NoAccent, Options, Units};
use crate::route;
use crate::store::{self, Typed};
use crate::tool::Entry;
use crate::words::{Worded, intl, panel as words};
use loopwright::choice::{Choice, GroupName, Key};
use std::collections::BTreeMap;

/// The sheet of what is chosen here.
pub const SHEET: &str = "frame";

/// What is chosen for all tools, by the key it is kept under.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Setting {
    /// Light or dusk.
    Light,
    /// The accent colour.
    Accent,
    /// Centimetres or inches.
    Units,
    /// The language.
    Language,
    /// The buttons of the frame.
    Buttons,
    /// How wide her column is.
    Width,
    /// The address of the copy that the tool comes from.
    Address,
}

loopwright::keys!(Setting {
    Light = "light",
    Accent = "accent",
    Units = "units",
    Language = "language",
    Buttons = "buttons",
    Width = "width",
    Address = "address",
});

/// What is chosen for one tool, by the key behind its id.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum OfTool {
    /// Fields that are fixed.
    Locked,
    /// Fields that are left empty.
    Left,
    /// The field with the cursor.
    Cursor,
}

loopwright::keys!(OfTool { Locked = "locked", Left = "left", Cursor = "cursor" });

impl OfTool {
    /// The key it is kept under for a tool.
    pub fn stored(self, tool: &str) -> String {
        [tool, ".", self.key()].concat()
    }
}

/// Which language the frame is to have.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Language {
    /// That of the copy it comes from, whichever that is.
    OfCopy,
    /// This one; a copy that has another says so.
    This,
}

loopwright::choice!(Language starts OfCopy { OfCopy = "copy", This = "this" });

impl Worded for Language {
    fn words(self) -> &'static str {
        match self {
            Self::OfCopy => words::LANGUAGE_OF_COPY,
            Self::This => words::LANGUAGE_THIS,
        }
    }
}

/// Which buttons the frame has.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Buttons {
    /// None.
    Neither,
    /// One that prints.
    Print,
    /// One that starts afresh.
    Afresh,
    /// Both.
    Both,
}

loopwright::choice!(Buttons starts Neither { Neither = "none", Print = "print", Afresh = "afresh", Both = "both" });

impl Buttons {
    /// Whether there is one that prints, and one that starts afresh.
    const fn asked(self) -> (bool, bool) {
        match self {
            Self::Neither => (false, false),
            Self::Print => (true, false),
            Self::Afresh => (false, true),
            Self::Both => (true, true),
        }
    }
}

impl Worded for Buttons {
    fn words(self) -> &'static str {
        match self {
            Self::Neither => words::BUTTONS_NONE,
            Self::Print => words::BUTTONS_PRINT,
            Self::Afresh => words::BUTTONS_AFRESH,
            Self::Both => words::BUTTONS_BOTH,
        }
    }
}

/// What becomes of what stands in a field.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Use {
    /// It is filled in and can be changed.
    Open,
    /// It is shown and cannot be changed.
    Locked,
    /// It is left out.
    Left,
}

loopwright::choice!(Use starts Open { Open = "open", Locked = "locked", Left = "left" });

/// A field that can stand in a frame.
#[derive(Clone, Debug, PartialEq)]
pub struct Row {
    /// The key it is stored under.
    pub key: String,
    /// What it is called.
    pub label: String,
    /// What stands in it, if anything.
    pub standing: Option<String>,
    /// Whether that was typed; else it is what the field starts with.
    pub is_typed: bool,
    /// What becomes of it.
    pub becomes: Use,
}

/// All that is chosen.
#[derive(Clone, Debug, PartialEq)]
pub struct Chosen {
    /// The fields that can stand in the frame.
    pub rows: Vec<Row>,
    /// The buttons.
    pub buttons: Buttons,
    /// The frame.
    pub placed: Placed,
    /// Why the colour that is typed is not taken, if one is typed.
    pub no_accent: Option<NoAccent>,
}

/// What is chosen for a tool, as its sheet and the one of the panel stand.
pub fn chosen(tool: &Entry, typed: &store::Fields, kept: &store::Fields, settings: &Settings) -> Chosen {
    let text = |setting: Setting| kept.get(setting.key()).map_or("", |typed| typed.text.as_str());
    let light = Light::from_key(text(Setting::Light)).unwrap_or(Light::START);
    let accent = Some(text(Setting::Accent).trim()).filter(|text| !text.is_empty());
    let accent = accent.map(|text| Accent::parse(text).and_then(|accent| accent.readable(light)));
    let language = Language::from_key(text(Setting::Language)).unwrap_or(Language::START);
    let buttons = Buttons::from_key(text(Setting::Buttons)).unwrap_or(Buttons::START);
    let (print, afresh) = buttons.asked();
    let fields = Fields::new(tool.fields, typed.clone(), settings.clone());
    let rows = rows(tool.id, &fields, kept);
    let is_left = |key: &str| rows.iter().any(|row| row.key == *key && row.becomes == Use::Left);
    let options = Options {
        locked: keys_of(&rows, |row| row.becomes == Use::Locked),
        cursor: cursor(tool.id, &rows, kept),
        light,
        accent: accent.clone().and_then(Result::ok),
        units: units(text(Setting::Units), settings),
        print,
        afresh,
        language: (language == Language::This).then_some(intl::LANGUAGE),
    };
    let preset = typed.iter().filter(|(key, _)| !is_left(key));
    let placed = Placed {
        id: tool.id,
        title: tool.title.name,
        preset: preset.map(|(key, typed)| (key.clone(), typed.clone())).collect(),
        options,
        width: width(text(Setting::Width)),
    };
    Chosen {
        rows,
        buttons,
        placed,
        no_accent: accent.and_then(Result::err),
    }
}

/// The width that is chosen; of a column for reading on a phone before anything is.
fn width(text: &str) -> u32 {
    let chosen = WIDTHS.into_iter().find(|width| width.to_string() == text);
    chosen.unwrap_or(WIDTHS[1])
}

/// Centimetres need not be said: a frame has them by itself.
fn units(text: &str, settings: &Settings) -> Option<Units> {
    match Units::from_key(text).unwrap_or(usual_units(settings)) {
        Units::Centimetres => None,
        Units::Inches => Some(Units::Inches),
    }
}

/// Before anything is chosen here: those in which she measures herself.
fn usual_units(settings: &Settings) -> Units {
    match settings.measures() {
        Measures::Metric => Units::Centimetres,
        Measures::Inches => Units::Inches,
    }
}

fn listed(tool: &str, which: OfTool, kept: &store::Fields) -> Vec<String> {
    let typed = kept.get(&which.stored(tool));
    typed.map_or_else(Vec::new, |typed| frame::listed(&typed.text))
}

/// The field with the cursor, if it can be typed into.
fn cursor(tool: &str, rows: &[Row], kept: &store::Fields) -> Option<String> {
    let key = listed(tool, OfTool::Cursor, kept).into_iter().next()?;
    let row = rows.iter().find(|row| row.key == key)?;
    (row.becomes != Use::Locked).then_some(key)
}

fn keys_of(rows: &[Row], is_meant: impl Fn(&Row) -> bool) -> Vec<String> {
    let meant = rows.iter().filter(|row| is_meant(row));
    meant.map(|row| row.key.clone()).collect()
}

/// The fields that are asked, those of each member of a repeated group behind the others.
fn rows(tool: &str, fields: &Fields, kept: &store::Fields) -> Vec<Row> {
    let (locked, left) = (listed(tool, OfTool::Locked, kept), listed(tool, OfTool::Left, kept));
    let row = |(fields, field): (Fields, &'static Field)| {
        let key = fields.path_of(field).stored();
        let standing = fields.standing(field);
        let becomes = match (locked.contains(&key), left.contains(&key)) {
            (true, _) if standing.is_some() => Use::Locked,
            (_, true) => Use::Left,
            (_, false) => Use::Open,
        };
        Row {
            label: label(&fields, field),
            is_typed: fields.typed(fields.path_of(field)).is_some(),
            key,
            standing,
            becomes,
        }
    };
    let alone = fields.table(None).map(|field| (fields.clone(), field));
    let members = members(fields).into_iter().flat_map(|(index, group)| {
        let member = fields.table(Some(group));
        member.map(move |field| (fields.member(index), field))
    });
    let all = alone.chain(members).filter(|(fields, field)| is_shown(fields, field));
    all.map(row).collect()
}

/// The members of a repeated group in which anything was ever typed, in their order.
fn members(fields: &Fields) -> BTreeMap<usize, &'static GroupName> {
    let typed = fields.typed_keys().filter_map(|key| fields.stored_as(key));
    typed
        .filter_map(|(fields, field)| fields.index().zip(field.group))
        .collect()
}

/// What is chosen beside the answer goes along as it is, and what no link has stays here.
fn is_shown(fields: &Fields, field: &Field) -> bool {
    let is_field = !matches!(field.kind, Kind::Whole) && field.place != Place::Answer;
    is_field && field.linked && (field.asked)(fields)
}

fn label(fields: &Fields, field: &'static Field) -> String {
    let label = field.label_in(fields);
    match fields.index().and_then(|index| u32::try_from(index).ok()) {
        Some(index) => words::of_member(label, index.saturating_add(1)),
        None => label.to_owned(),
    }
}

/// What is kept when a field becomes something else: the lists of those that are fixed and of those that are left out.
pub fn becoming(chosen: &Chosen, key: &str, becomes: Use) -> [(OfTool, Option<Typed>); 2] {
    let list = |which: Use| {
        let now = |row: &&Row| if row.key == key { becomes } else { row.becomes };
        let rows = chosen.rows.iter().filter(|row| now(row) == which);
        let keys: Vec<&str> = rows.map(|row| row.key.as_str()).collect();
        (!keys.is_empty()).then(|| Typed::plain(keys.join(",")))
    };
    [(OfTool::Locked, list(Use::Locked)), (OfTool::Left, list(Use::Left))]
}

/// The hash of the preview: without a cursor, which would be taken out of the field that is typed in here.
pub fn preview(placed: &Placed) -> String {
    let options = Options {
        cursor: None,
        ..placed.options.clone()
    };
    route::print(&route::Route::embed(placed.id, &placed.preset, &options))
}

#[cfg(test)]
mod tests;

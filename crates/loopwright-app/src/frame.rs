//! How a tool is shown inside another page: which of its fields are locked, which has the cursor, light, accent, units.
//!
//! The page that frames a tool says it in the address, beside the fields: `#/embed/spacing?stitches=132&frame.light=dusk`.
//! The name of an option begins with `frame.`, as that of no field does. Reading is total: what is no option, or no value
//! of one, is a [`Fault`], which the frame says in a sentence, and never guessed at.

mod accent;

pub use accent::{Accent, NoAccent};

use crate::words::{Worded, frame as words, intl};
use loopwright::choice::{Choice, Key};
use std::collections::BTreeSet;

/// What the name of each option begins with.
pub const PREFIX: &str = "frame.";

/// The word by which a button is asked for.
pub const YES: &str = "yes";

/// Between the fields of a list.
const COMMA: char = ',';

/// The options, by the names that stand behind [`PREFIX`] in an address.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Name {
    /// Fields that are shown and not to be changed.
    Locked,
    /// The field that has the cursor.
    Cursor,
    /// Light or dusk.
    Light,
    /// The accent colour.
    Accent,
    /// Centimetres or inches.
    Units,
    /// A button that prints.
    Print,
    /// A button that starts afresh.
    Afresh,
    /// The language.
    Language,
}

loopwright::keys!(Name {
    Locked = "locked",
    Cursor = "cursor",
    Light = "light",
    Accent = "accent",
    Units = "units",
    Print = "print",
    Afresh = "afresh",
    Language = "language",
});

/// How light the frame is.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Light {
    /// As the page around it, or the device, is set.
    #[default]
    Host,
    /// Light.
    Day,
    /// Dark, not black.
    Dusk,
}

loopwright::choice!(Light starts Host { Host = "host", Day = "day", Dusk = "dusk" });

impl Worded for Light {
    fn words(self) -> &'static str {
        match self {
            Self::Host => words::LIGHT_HOST,
            Self::Day => words::LIGHT_DAY,
            Self::Dusk => words::LIGHT_DUSK,
        }
    }
}

/// What fresh fields of the frame show.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Units {
    /// Centimetres, and what goes with them.
    Centimetres,
    /// Inches, and what goes with them.
    Inches,
}

loopwright::choice!(Units starts Centimetres { Centimetres = "centimetres", Inches = "inches" });

impl Worded for Units {
    fn words(self) -> &'static str {
        match self {
            Self::Centimetres => words::UNITS_CENTIMETRES,
            Self::Inches => words::UNITS_INCHES,
        }
    }
}

/// How a tool is shown inside another page.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Options {
    /// The keys of fields that are shown and not to be changed, each once.
    pub locked: Vec<String>,
    /// The key of the field that has the cursor.
    pub cursor: Option<String>,
    /// Light or dusk.
    pub light: Light,
    /// The accent colour, which can be read in at least one light that it is shown in.
    pub accent: Option<Accent>,
    /// What fresh fields show; as the page does by itself where nothing is said.
    pub units: Option<Units>,
    /// Whether there is a button that prints.
    pub print: bool,
    /// Whether there is a button that starts afresh.
    pub afresh: bool,
    /// The language that was asked for, which is the one that is built.
    pub language: Option<&'static str>,
}

/// What was asked of a frame and cannot be done.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Fault {
    /// There is no option of this name.
    NoOption(String),
    /// An option has no such value.
    NoValue(Name, String),
    /// The accent is no colour, or cannot be read.
    Accent(NoAccent),
    /// There is no such field to be locked or to have the cursor.
    NoField(String),
    /// A field that is to be locked holds nothing, so that it stays open.
    LockedEmpty(&'static str),
}

/// Whether a pair of an address is an option, known or not.
pub fn is_option(name: &str) -> bool {
    name.starts_with(PREFIX)
}

/// The options of an address, and what of it cannot be done. The last of a repeated option stands.
pub fn parse(pairs: &[(String, String)]) -> (Options, Vec<Fault>) {
    let (mut options, mut faults) = (Options::default(), Vec::new());
    let mut accent = None;
    for (name, value) in pairs {
        let known = name.strip_prefix(PREFIX).and_then(Name::from_key);
        let taken = match known {
            Some(Name::Accent) => {
                accent = Some(value);
                Ok(())
            }
            Some(known) => options.take(known, value),
            None => Err(Fault::NoOption(name.clone())),
        };
        faults.extend(taken.err());
    }
    // Whether a colour can be read depends on the light, which may stand behind it.
    match accent.map(|text| Accent::parse(text).and_then(|accent| accent.readable(options.light))) {
        Some(Ok(accent)) => options.accent = Some(accent),
        Some(Err(why)) => faults.push(Fault::Accent(why)),
        None => {}
    }
    (options, faults)
}

/// The options as an address carries them; what is as usual is left out.
pub fn print(options: &Options) -> Vec<(String, String)> {
    let yes = |asked: bool| asked.then(|| YES.to_owned());
    let value = |name: Name| match name {
        Name::Locked => (!options.locked.is_empty()).then(|| options.locked.join(",")),
        Name::Cursor => options.cursor.clone(),
        Name::Light => (options.light != Light::START).then(|| options.light.key().to_owned()),
        Name::Accent => options.accent.map(Accent::print),
        Name::Units => options.units.map(|units| units.key().to_owned()),
        Name::Print => yes(options.print),
        Name::Afresh => yes(options.afresh),
        Name::Language => options.language.map(str::to_owned),
    };
    let pair = |name: &Name| Some(([PREFIX, name.key()].concat(), value(*name)?));
    Name::ALL.iter().filter_map(pair).collect()
}

impl Options {
    /// Takes in one option; an accent is for [`parse`] to take, which knows the light.
    fn take(&mut self, name: Name, value: &str) -> Result<(), Fault> {
        let no_value = || Fault::NoValue(name, value.to_owned());
        match name {
            Name::Locked => self.locked = listed(value),
            Name::Cursor => self.cursor = listed(value).into_iter().next(),
            Name::Light => self.light = Light::from_key(value).ok_or_else(no_value)?,
            Name::Units => self.units = Some(Units::from_key(value).ok_or_else(no_value)?),
            Name::Print => self.print = is_yes(value).ok_or_else(no_value)?,
            Name::Afresh => self.afresh = is_yes(value).ok_or_else(no_value)?,
            Name::Language if value == intl::LANGUAGE => self.language = Some(intl::LANGUAGE),
            Name::Language | Name::Accent => return Err(no_value()),
        }
        Ok(())
    }
}

/// The keys in a list, each once.
pub fn listed(text: &str) -> Vec<String> {
    let mut known = BTreeSet::new();
    let keys = text.split(COMMA).map(str::trim).filter(|key| !key.is_empty());
    keys.filter(|key| known.insert(*key)).map(str::to_owned).collect()
}

fn is_yes(value: &str) -> Option<bool> {
    match value {
        YES => Some(true),
        "no" => Some(false),
        _ => None,
    }
}

#[cfg(test)]
mod tests;

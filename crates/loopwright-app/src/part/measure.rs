//! A field for a length or a weight, with the unit beside it. Switching the unit shows the quantity converted; what was
//! typed stays stored as typed, so switching back brings the very text back. The unit is chosen once for all tools.

use super::advice::{Advice, advised};
use super::field::input;
use super::plain::{button, el};
use super::select::chooser;
use super::{Choice, Label, Sheet};
use crate::desk::Desk;
use crate::store::Typed;
use crate::words::units as words;
use loopwright::bounds::Bounds;
use loopwright::problem::Kind;
use loopwright::units::parse::Unreadable;
use loopwright::units::print::{self, Step};
use loopwright::units::{Length, LengthUnit, Mass, MassUnit, Measure, switch};
use yew::prelude::*;

/// The sheet of what holds for all tools.
const SETTINGS: &str = "settings";

/// The units one kind of quantity is shown in, each by the key it is stored under and the step it is printed to.
pub struct Scale<T: Measure + 'static> {
    /// The setting that says which is shown.
    setting: &'static str,
    units: &'static [(&'static str, T::Unit, Step)],
    name: fn(T::Unit) -> &'static str,
}

/// What a tape measures.
pub const TAPE: Scale<Length> = Scale {
    setting: "length",
    units: &[
        ("cm", LengthUnit::Cm, Step::Tenth),
        ("in", LengthUnit::Inch, Step::Eighths),
    ],
    name: words::length,
};

/// How far yarn runs.
pub const YARN: Scale<Length> = Scale {
    setting: "yarn",
    units: &[("m", LengthUnit::M, Step::Tenth), ("yd", LengthUnit::Yard, Step::Tenth)],
    name: words::length,
};

/// What a needle measures.
pub const NEEDLE: Scale<Length> = Scale {
    setting: "needle",
    units: &[("mm", LengthUnit::Mm, Step::Hundredth)],
    name: words::length,
};

/// What a scale says.
pub const WEIGHT: Scale<Mass> = Scale {
    setting: "weight",
    units: &[
        ("g", MassUnit::Gram, Step::Tenth),
        ("oz", MassUnit::Ounce, Step::Hundredth),
    ],
    name: words::mass,
};

/// A number and its unit stay on one line.
fn unbroken(quantity: String) -> String {
    quantity.replace(' ', "\u{a0}")
}

/// Fractions that a decimal keypad has no slash for.
const EIGHTHS: [&str; 7] = ["1/8", "1/4", "3/8", "1/2", "5/8", "3/4", "7/8"];

impl<T: Measure> Scale<T> {
    /// The key, the unit and the step of printing that hold now.
    pub(super) fn shown(&self, desk: &Desk) -> (&'static str, T::Unit, Step) {
        let key = desk.text(SETTINGS, self.setting).map(|typed| typed.text);
        self.unit(key.as_deref())
    }

    fn unit(&self, key: Option<&str>) -> (&'static str, T::Unit, Step) {
        let found = self.units.iter().find(|(name, ..)| Some(*name) == key);
        *found.unwrap_or(&self.units[0])
    }

    /// The text as typed with the unit it was typed in; `start`, in the first unit, before anything was.
    fn typed(&self, sheet: &Sheet, field: &str, start: &str) -> switch::Typed<T> {
        match sheet.desk.text(sheet.id, field) {
            Some(typed) => switch::Typed::new(typed.text, self.unit(typed.unit.as_deref()).1),
            None => switch::Typed::new(start, self.units[0].1),
        }
    }

    /// The quantity in a field, or in `start` where nothing stands.
    ///
    /// # Errors
    /// Why the text is none.
    pub fn read(&self, sheet: &Sheet, field: &str, bounds: Bounds<T>, start: &str) -> Result<T, Kind> {
        let mut read = self.typed(sheet, field, start).read(bounds);
        if read == Err(Unreadable::Empty) {
            read = switch::Typed::new(start, self.units[0].1).read(bounds);
        }
        read.map(|read| read.value).map_err(Kind::Unreadable)
    }

    /// The quantity in a field that may stay empty.
    ///
    /// # Errors
    /// Why the text is none.
    pub fn read_if_any(&self, sheet: &Sheet, field: &str, bounds: Bounds<T>) -> Result<Option<T>, Kind> {
        match self.read(sheet, field, bounds, "") {
            Err(Kind::Unreadable(Unreadable::Empty)) => Ok(None),
            other => other.map(Some),
        }
    }

    /// A quantity as it stands in a sentence, in the unit that is shown: `7 1/2 in`.
    pub fn print(&self, desk: &Desk, value: T) -> String {
        let (_, unit, step) = self.shown(desk);
        unbroken(print::with_unit(value, unit, step))
    }

    /// The same, as finely as `step` says.
    pub fn print_to(&self, desk: &Desk, value: T, step: Step) -> String {
        unbroken(print::with_unit(value, self.shown(desk).1, step))
    }

    /// The field.
    pub fn field(&self, sheet: &Sheet, field: &'static str, label: &str, start: &str, advice: Option<Advice>) -> Html {
        let (key, unit, step) = self.shown(&sheet.desk);
        let value = self.typed(sheet, field, start).shown_in(unit, step).into_owned();
        let label = words::labelled(label, (self.name)(unit));
        let mut content = vec![
            Label::Shown(&label).draw(&sheet.element(field)),
            input(
                sheet,
                field,
                value.clone(),
                "text",
                sheet.typing(field, Some(key)),
                advice.is_some(),
            ),
        ];
        if self.units.len() > 1 {
            content.push(self.switch(sheet, field, key));
        }
        if key == "in" {
            content.push(chips(sheet, field, &value));
        }
        content.push(advised(sheet, field, advice));
        el("div", "quantity", content)
    }

    /// The choice of unit: one setting for every field of this scale, and an id of its own beside each.
    fn switch(&self, sheet: &Sheet, field: &str, key: &str) -> Html {
        let settings = Sheet::new(&sheet.desk, SETTINGS);
        let choice = |&(key, unit, _): &(&'static str, T::Unit, Step)| Choice {
            key,
            label: AttrValue::Static((self.name)(unit)),
        };
        let units = self.units.iter().map(choice).collect();
        let id = [&sheet.element(field), "-unit"].concat();
        chooser(&settings, self.setting, id, Label::Unseen(words::UNIT), units, key)
    }
}

/// Taps that put a fraction behind the whole number that stands there.
fn chips(sheet: &Sheet, field: &'static str, value: &str) -> Html {
    let whole = value
        .split(' ')
        .next()
        .filter(|whole| !whole.is_empty() && !whole.contains('/'));
    let chip = |eighth: &&'static str| {
        let eighth = *eighth;
        let text = whole.map_or_else(|| eighth.to_owned(), |whole| [whole, " ", eighth].concat());
        let sheet = sheet.clone();
        let put = move |_| {
            let typed = Typed::with_unit(text.clone(), "in");
            sheet.desk.write(sheet.id, field, Some(typed));
        };
        button(eighth.into(), Callback::from(put))
    };
    el("div", "chips", EIGHTHS.iter().map(chip).collect())
}

impl Scale<Length> {
    /// Whether inches and yards are shown.
    pub fn in_inches(&self, desk: &Desk) -> bool {
        matches!(self.shown(desk).1, LengthUnit::Inch | LengthUnit::Yard)
    }
}

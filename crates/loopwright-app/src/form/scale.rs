//! The units that one kind of quantity is shown in. Which of them is chosen once for all tools; what was typed stays
//! stored as typed, with the unit it was typed in, so that switching back brings the very text back.

use super::strange::written_unit;
use super::{Measures, Settings};
use crate::store::Typed;
use crate::words::units as words;
use loopwright::bounds::Bounds;
use loopwright::tables::needle::{Across, Bare, read_across_as};
use loopwright::units::parse::{Unreadable, read_unit};
use loopwright::units::print::{self, Step};
use loopwright::units::{Length, LengthUnit, Mass, MassUnit, Measure, switch};

/// The sheet of what holds for all tools but is no fact of the knitting: units and light.
pub const SETTINGS: &str = "settings";

/// One unit of a scale.
#[derive(Clone, Copy)]
pub struct ScaleUnit<T: Measure> {
    /// The key it is stored under.
    pub key: &'static str,
    /// The unit.
    pub unit: T::Unit,
    /// How finely a quantity in it is shown.
    pub step: Step,
}

impl<T: Measure> ScaleUnit<T> {
    const fn new(key: &'static str, unit: T::Unit, step: Step) -> Self {
        Self { key, unit, step }
    }
}

/// Reads a text that may name what it measures in another way than by a unit.
pub type ReadNamed<T> = fn(&Typed, Bounds<T>) -> Result<T, Unreadable>;

/// The units one kind of quantity is shown in.
pub struct Scale<T: Measure + 'static> {
    /// The setting that says which is shown.
    pub setting: &'static str,
    /// The unit before anything is chosen.
    pub first: ScaleUnit<T>,
    /// The other one, if there is one.
    pub other: Option<ScaleUnit<T>>,
    /// A unit in words.
    pub name: fn(T::Unit) -> &'static str,
    /// How such a text is read, where there are such, as of needles.
    pub named: Option<ReadNamed<T>>,
}

/// What a tape measures.
pub const TAPE: Scale<Length> = Scale {
    setting: "length",
    first: ScaleUnit::new("cm", LengthUnit::Cm, Step::Tenth),
    other: Some(ScaleUnit::new("in", LengthUnit::Inch, Step::Eighths)),
    name: words::length,
    named: None,
};

/// How far yarn runs.
pub const YARN: Scale<Length> = Scale {
    setting: "yarn",
    first: ScaleUnit::new("m", LengthUnit::M, Step::Tenth),
    other: Some(ScaleUnit::new("yd", LengthUnit::Yard, Step::Tenth)),
    name: words::length,
    named: None,
};

/// What a needle measures.
pub const NEEDLE: Scale<Length> = Scale {
    setting: "needle",
    first: ScaleUnit::new("mm", LengthUnit::Mm, Step::Hundredth),
    other: None,
    name: words::length,
    named: Some(|typed, bounds| read_needle(typed, bounds).map(|read| read.across)),
};

/// What is stored as the unit of a needle that was typed where US numbers are typed too. A number alone is then asked
/// about; one that was typed as millimetres stays so many millimetres.
const MILLIMETRES_OR_US: &str = "us";

/// Reads a needle as it was typed.
///
/// # Errors
/// Why it is none.
pub fn read_needle(typed: &Typed, bounds: Bounds<Length>) -> Result<Across, Unreadable> {
    let read = |bare| read_across_as(&typed.text, bounds, bare);
    match (written_unit(typed), NEEDLE.unit_beside(typed)?) {
        (Some(MILLIMETRES_OR_US), _) => read(Bare::MillimetresOrUs),
        (_, LengthUnit::Mm) => read(Bare::Millimetres),
        // In any other unit it is what is typed with that unit behind it.
        (unit, _) => read_across_as(
            &[&*typed.text, " ", unit.unwrap_or_default()].concat(),
            bounds,
            Bare::Millimetres,
        ),
    }
}

/// What a scale says.
pub const WEIGHT: Scale<Mass> = Scale {
    setting: "weight",
    first: ScaleUnit::new("g", MassUnit::Gram, Step::Tenth),
    other: Some(ScaleUnit::new("oz", MassUnit::Ounce, Step::Hundredth)),
    name: words::mass,
    named: None,
};

impl<T: Measure> Scale<T> {
    /// The units, the first one first.
    pub fn units(&self) -> impl Iterator<Item = ScaleUnit<T>> {
        [Some(self.first), self.other].into_iter().flatten()
    }

    /// The unit that is shown now.
    pub fn shown(&self, settings: &Settings) -> ScaleUnit<T> {
        match (settings.text(self.setting), settings.measures()) {
            (Some(key), _) => self.unit(Some(key)),
            (None, Measures::Metric) => self.first,
            (None, Measures::Inches) => self.other.unwrap_or(self.first),
        }
    }

    /// The unit that is shown beside a field. Once it is chosen what she measures in, what is typed keeps the unit it was
    /// typed in; a unit chosen for this scale is shown wherever the scale is.
    pub fn shown_beside(&self, settings: &Settings, typed: Option<&Typed>) -> ScaleUnit<T> {
        let is_chosen = settings.measures_chosen().is_some() && settings.text(self.setting).is_none();
        let typed = typed.filter(|typed| is_chosen && !typed.text.trim().is_empty() && written_unit(typed).is_some());
        let unit = typed.and_then(|typed| self.unit_beside(typed).ok());
        let typed_in = unit.and_then(|unit| self.units().find(|known| known.unit == unit));
        typed_in.unwrap_or_else(|| self.shown(settings))
    }

    /// What is stored beside a text that is typed while this unit is shown.
    pub fn stored_unit(&self, settings: &Settings, shown: &'static str) -> &'static str {
        if self.by_us_number(settings) {
            MILLIMETRES_OR_US
        } else {
            shown
        }
    }

    /// Whether a number alone may be a US needle's.
    pub fn by_us_number(&self, settings: &Settings) -> bool {
        match settings.measures() {
            Measures::Inches => self.named.is_some(),
            Measures::Metric => false,
        }
    }

    /// A text as it is read now: where nothing says in what it was typed, it may have been a US number.
    pub fn settled(&self, settings: &Settings, typed: Typed) -> Typed {
        match typed.unit {
            None if self.by_us_number(settings) => Typed::with_unit(typed.text, MILLIMETRES_OR_US),
            Some(_) | None => typed,
        }
    }

    /// The unit of this key; the first where there is none.
    fn unit(&self, key: Option<&str>) -> ScaleUnit<T> {
        self.units().find(|unit| Some(unit.key) == key).unwrap_or(self.first)
    }

    /// The unit that stands beside a text, by any of its names; the first of the scale where none does.
    ///
    /// # Errors
    /// Why it is none of this quantity.
    pub fn unit_beside(&self, typed: &Typed) -> Result<T::Unit, Unreadable> {
        match written_unit(typed) {
            None => Ok(self.first.unit),
            Some(MILLIMETRES_OR_US) if self.named.is_some() => Ok(self.first.unit),
            Some(written) => {
                let written = read_unit(written)?;
                T::unit_of(written).ok_or(Unreadable::WrongKind {
                    written,
                    wanted: T::DIMENSION,
                })
            }
        }
    }

    /// A text with the unit that stood beside it as it was typed.
    ///
    /// # Errors
    /// Why that unit is none of this quantity.
    pub fn as_typed(&self, typed: &Typed) -> Result<switch::Typed<T>, Unreadable> {
        Ok(switch::Typed::new(typed.text.clone(), self.unit_beside(typed)?))
    }

    /// A text as it is shown in this unit, to this step; as it stands, where nobody knows in what it is.
    pub fn shown_in(&self, typed: &Typed, unit: T::Unit, step: Step) -> String {
        match self.as_typed(typed) {
            Ok(known) => known.shown_in(unit, step).into_owned(),
            Err(_) => typed.text.clone(),
        }
    }

    /// The quantity of a text.
    ///
    /// # Errors
    /// Why it is none.
    pub fn read(&self, typed: &Typed, bounds: Bounds<T>) -> Result<T, Unreadable> {
        match self.named {
            Some(read) => read(typed, bounds),
            None => self.as_typed(typed)?.read(bounds).map(|read| read.value),
        }
    }

    /// The quantity of a text, however small or large, if it is one.
    pub fn read_any(&self, typed: &Typed) -> Option<T> {
        let [least, most] = [i64::MIN, i64::MAX].map(T::from_base);
        self.read(typed, Bounds::new(least, most)).ok()
    }

    /// A quantity as it would be typed in the first unit.
    pub fn typed(&self, value: T) -> Typed {
        Typed::with_unit(print::print(value, self.first.unit, self.first.step), self.first.key)
    }

    /// A quantity as it stands in a sentence, in the unit that is shown: `7 1/2 in`. A number and its unit stay on one
    /// line.
    pub fn print(&self, settings: &Settings, value: T) -> String {
        self.print_to(settings, value, self.shown(settings).step)
    }

    /// The same, as finely as `step` says.
    pub fn print_to(&self, settings: &Settings, value: T, step: Step) -> String {
        words::quantity(value, self.shown(settings).unit, step)
    }
}

impl Scale<Length> {
    /// Whether inches and yards are shown.
    pub fn in_inches(&self, settings: &Settings) -> bool {
        matches!(self.shown(settings).unit, LengthUnit::Inch | LengthUnit::Yard)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::store::Fields;

    fn settings(pairs: &[(&str, &str)]) -> Settings {
        let typed = |(setting, key): &(&str, &str)| ((*setting).to_owned(), Typed::plain(*key));
        Settings::new(pairs.iter().map(typed).collect::<Fields>())
    }

    #[test]
    fn one_choice_sets_the_unit_of_every_field_in_which_nothing_stands() {
        let inches = settings(&[("measures", "inches")]);
        assert_eq!(TAPE.shown_beside(&inches, None).key, "in");
        assert_eq!(YARN.shown_beside(&inches, None).key, "yd");
        assert_eq!(WEIGHT.shown_beside(&inches, None).key, "oz");
        assert_eq!(NEEDLE.shown_beside(&inches, None).key, "mm");
        for metric in [settings(&[]), settings(&[("measures", "metric")])] {
            assert_eq!(TAPE.shown_beside(&metric, None).key, "cm");
        }
    }

    #[test]
    fn what_is_typed_keeps_its_unit_when_the_choice_is_made() {
        let inches = settings(&[("measures", "inches")]);
        let typed = Typed::with_unit("91", "cm");
        assert_eq!(TAPE.shown_beside(&inches, Some(&typed)).key, "cm");
        assert_eq!(TAPE.shown(&inches).key, "in");
        // An emptied field is a fresh one.
        let emptied = Typed::with_unit(" ", "cm");
        assert_eq!(TAPE.shown_beside(&inches, Some(&emptied)).key, "in");
    }

    #[test]
    fn a_unit_that_is_chosen_beside_a_field_counts_more() {
        let both = settings(&[("measures", "inches"), ("length", "cm")]);
        assert_eq!(TAPE.shown_beside(&both, None).key, "cm");
        assert_eq!(YARN.shown_beside(&both, None).key, "yd");
        // Before anything is chosen all fields of a scale show one unit, and what is typed is converted to be seen.
        let typed = Typed::with_unit("7 1/2", "in");
        assert_eq!(TAPE.shown_beside(&settings(&[]), Some(&typed)).key, "cm");
    }

    #[test]
    fn a_needle_typed_beside_us_numbers_is_asked_about_and_an_older_one_is_not() {
        let needle = |typed: Typed| NEEDLE.read(&typed, loopwright::tail::NEEDLE);
        let [inches, metric] = ["inches", "metric"].map(|key| settings(&[("measures", key)]));
        let fresh = |settings: &Settings| Typed::with_unit("6", NEEDLE.stored_unit(settings, "mm"));
        assert!(matches!(needle(fresh(&inches)), Err(Unreadable::Ambiguous(_))));
        assert_eq!(needle(fresh(&metric)), Ok(Length::from_mm(6)));
        // Typed before the choice was made, its unit says that it is millimetres.
        let older = NEEDLE.settled(&inches, Typed::with_unit("6", "mm"));
        assert_eq!(needle(older), Ok(Length::from_mm(6)));
        // Brought by a link, nothing says what it is.
        let linked = |settings: &Settings| NEEDLE.settled(settings, Typed::plain("6"));
        assert!(matches!(needle(linked(&inches)), Err(Unreadable::Ambiguous(_))));
        assert_eq!(needle(linked(&metric)), Ok(Length::from_mm(6)));
        // No other field is concerned.
        assert_eq!(TAPE.stored_unit(&inches, "in"), "in");
        assert_eq!(TAPE.settled(&inches, Typed::plain("6")), Typed::plain("6"));
    }
}

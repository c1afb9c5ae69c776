//! What stands in a field, as it is said elsewhere on the page: beside a fold that hides it, and beside an answer that
//! is older than what is typed now.

use super::{Field, Fields, Kind, Scale};
use crate::words::units as words;
use loopwright::units::Measure;

impl Fields {
    /// What stands in a field, with its unit; nothing where it is empty.
    pub fn standing(&self, field: &'static Field) -> Option<String> {
        let path = self.path_of(field);
        let text = self.text(path).trim().to_owned();
        if text.is_empty() {
            return None;
        }
        match field.kind {
            Kind::Count(_) | Kind::Text | Kind::List(_) | Kind::Whole => Some(text),
            Kind::Length(scale, _) => Some(self.with_unit(field, scale)),
            Kind::Mass(scale, _) => Some(self.with_unit(field, scale)),
            Kind::Gauge | Kind::Gauges => Some([&text, " ", &words::span(self.gauge(path).1.key)].concat()),
            Kind::Choice(options) => {
                let chosen = self.chosen(path)?;
                let option = options.all().into_iter().find(|(key, _)| *key == chosen);
                option.map(|(_, words)| words.to_owned())
            }
        }
    }

    /// What stands in a field, where that is not what it starts with.
    pub fn set(&self, field: &'static Field) -> Option<String> {
        let path = self.path_of(field);
        let start = self.start(path).text;
        let is_start = match field.kind {
            Kind::Choice(_) => self.chosen(path).is_none_or(|chosen| chosen == start),
            Kind::Count(_)
            | Kind::Length(..)
            | Kind::Mass(..)
            | Kind::Gauge
            | Kind::Gauges
            | Kind::List(_)
            | Kind::Text
            | Kind::Whole => !self.is_typed_at(path) || self.text(path).trim() == start,
        };
        if is_start { None } else { self.standing(field) }
    }

    /// A length or a weight in the unit that is shown.
    fn with_unit<T: Measure>(&self, field: &'static Field, scale: &Scale<T>) -> String {
        let path = self.path_of(field);
        let shown = scale.shown(self.settings());
        let typed = self.typed(path).cloned().unwrap_or_else(|| self.start(path));
        let typed = scale.as_typed(&typed);
        let text = typed.shown_in(shown.unit, shown.step);
        [&text, " ", shown.key].concat()
    }
}

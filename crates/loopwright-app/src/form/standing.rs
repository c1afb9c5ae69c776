//! What stands in a field, as it is said elsewhere on the page: beside a fold that hides it, and beside an answer that
//! is older than what is typed now.

use super::strange::written_unit;
use super::{Field, Fields, Kind, Scale, span_read};
use crate::words::units as words;
use loopwright::problem::FieldPath;
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
            Kind::Count(_) | Kind::Text | Kind::Pattern | Kind::List(_) | Kind::Whole => Some(text),
            Kind::Length(scale, _) => Some(self.with_unit(field, scale)),
            Kind::Mass(scale, _) => Some(self.with_unit(field, scale)),
            Kind::Gauge | Kind::Gauges => Some(self.with_span(path, &text)),
            Kind::Choice(_) if self.strange_choice(field).is_some() => Some(text),
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
            Kind::Choice(_) if self.strange_choice(field).is_some() => false,
            Kind::Choice(_) => self.chosen(path).is_none_or(|chosen| chosen == start),
            Kind::Count(_)
            | Kind::Length(..)
            | Kind::Mass(..)
            | Kind::Gauge
            | Kind::Gauges
            | Kind::List(_)
            | Kind::Text
            | Kind::Pattern
            | Kind::Whole => !self.is_typed_at(path) || self.text(path).trim() == start,
        };
        if is_start { None } else { self.standing(field) }
    }

    /// A count with what it was taken over, as it is stored where that is nothing that is known.
    fn with_span(&self, path: FieldPath, text: &str) -> String {
        let typed = self.typed(path);
        match (span_read(typed), typed.and_then(written_unit)) {
            (Err(_), Some(written)) => [text, " ", written].concat(),
            (Ok(_), _) | (Err(_), None) => [text, " ", &words::span(self.gauge(path).1.key)].concat(),
        }
    }

    /// A length or a weight in the unit that is shown.
    fn with_unit<T: Measure>(&self, field: &'static Field, scale: &Scale<T>) -> String {
        let path = self.path_of(field);
        let shown = scale.shown(self.settings());
        let typed = self.typed(path).cloned().unwrap_or_else(|| self.start(path));
        if let (Err(_), Some(written)) = (scale.unit_beside(&typed), written_unit(&typed)) {
            return [typed.text.trim(), " ", written].concat();
        }
        let is_in_doubt = || scale.read_any(&scale.settled(self.settings(), typed.clone())).is_none();
        if scale.named.is_some() && (typed.text.contains(char::is_alphabetic) || is_in_doubt()) {
            // What names its system itself, is in doubt, or is no needle at all, has no unit.
            return typed.text.trim().to_owned();
        }
        let text = scale.shown_in(&typed, shown.unit, shown.step);
        [&text, " ", shown.key].concat()
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::fields;
    use crate::form::{NEEDLE, Settings, Start, TAPE};
    use crate::store::Typed;
    use loopwright::cast_on::WIDTH;
    use loopwright::spacing::{Decrease, MULTIPLE};
    use loopwright::tail::NEEDLE as NEEDLES;

    #[derive(Clone, Copy, Debug, PartialEq, Eq)]
    enum Name {
        Multiple,
        Width,
        Decrease,
        Needle,
    }

    loopwright::field_names!(Name { Multiple = "multiple", Width = "width", Decrease = "decrease", Needle = "needle" });

    const fn label(_: Name) -> &'static str {
        ""
    }

    fields! { FIELDS of Name, label;
        Multiple => Field::count(MULTIPLE).starts(Start::Count(1)),
        Width => Field::length(&TAPE, WIDTH),
        Decrease => Field::choice::<Decrease>(),
        Needle => Field::length(&NEEDLE, NEEDLES),
    }

    fn fields(typed: &[(Name, Typed)]) -> Fields {
        let typed = typed.iter().map(|(name, typed)| (name.key().to_owned(), typed.clone()));
        Fields::new(FIELDS, typed.collect(), Settings::default())
    }

    fn set(typed: &[(Name, Typed)]) -> Vec<String> {
        let fields = fields(typed);
        FIELDS.iter().filter_map(|field| fields.set(field)).collect()
    }

    #[test]
    fn what_counts_in_a_fold_is_said_and_what_it_starts_with_is_not() {
        let plain = |name, text: &str| (name, Typed::plain(text));
        let inches = (Name::Width, Typed::with_unit("4", "in"));
        assert_eq!(set(&[]), [""; 0]);
        assert_eq!(
            set(&[plain(Name::Multiple, "1"), plain(Name::Decrease, "k2tog")]),
            [""; 0]
        );
        assert_eq!(set(&[plain(Name::Multiple, " "), plain(Name::Width, "")]), [""; 0]);
        assert_eq!(set(&[plain(Name::Multiple, "8"), inches]), ["8", "10.2 cm"]);
        assert_eq!(set(&[plain(Name::Multiple, "eight")]), ["eight"]);
        assert_eq!(set(&[plain(Name::Decrease, "ssk")]), ["ssk (leans left)"]);
    }

    /// 4 mm are no `us 6 mm`.
    #[test]
    fn a_needle_by_its_number_has_no_millimetres_behind_it() {
        let needle = |text| set(&[(Name::Needle, Typed::plain(text))]);
        assert_eq!(needle("us 6"), ["us 6"]);
        assert_eq!(needle("4"), ["4 mm"]);
        assert_eq!(needle("4 mm"), ["4 mm"]);
    }

    #[test]
    fn an_older_answer_names_the_texts_that_differ_by_now() {
        let before = fields(&[(Name::Multiple, Typed::plain("72")), (Name::Width, Typed::plain("50"))]);
        let now = fields(&[(Name::Multiple, Typed::plain("7")), (Name::Width, Typed::plain("50"))]);
        let texts = |unlike: Vec<(Fields, &'static Field)>| -> Vec<_> {
            let texts = unlike.iter().filter_map(|(fields, field)| fields.standing(field));
            texts.collect()
        };
        assert_eq!(texts(before.unlike(&now)), ["72"]);
        assert!(before.unlike(&before).is_empty());
        // What began only since then stood there as what it starts with.
        assert_eq!(texts(fields(&[]).unlike(&now)), ["1"]);
    }
}

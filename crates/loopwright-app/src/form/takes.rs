//! Whether a field takes a text: whether it is read as what the field holds. What no field takes is never offered to be
//! kept, or to be used.

use super::{Field, Fields, Kind, gauge_as_typed, span_of, span_read};
use crate::store::Typed;
use loopwright::gauge::Direction;
use loopwright::problem::FieldPath;
use loopwright::terms::PLUS;
use loopwright::units::gauge_text::{self, GaugeText};
use loopwright::units::parse::Unreadable;
use loopwright::units::{Gauge, count};

impl Field {
    /// Whether the text is read as what the field holds.
    pub fn takes(&self, typed: &Typed) -> bool {
        self.strange_unit(typed).is_none() && self.takes_text(typed)
    }

    /// The same, where the unit beside the text is one that the field knows.
    fn takes_text(&self, typed: &Typed) -> bool {
        match self.kind {
            Kind::Count(bounds) if self.plus => count::read_plus(&typed.text, bounds, PLUS).is_ok(),
            Kind::Count(bounds) => count::read(&typed.text, bounds).is_ok(),
            Kind::Length(scale, bounds) => scale.read(typed, bounds).is_ok(),
            Kind::Mass(scale, bounds) => scale.read(typed, bounds).is_ok(),
            Kind::Gauge => gauge_text(typed).is_ok_and(|read| read.gauge(self.counts).is_ok()),
            Kind::Gauges => {
                let span = span_of(Some(typed)).length;
                gauge_text::read_several(&typed.text, span, self.counts).is_ok()
            }
            Kind::Choice(options) => options.read(&typed.text).is_some(),
            // These the tool reads itself, and nobody else knows what they are.
            Kind::List(_) | Kind::Text | Kind::Pattern | Kind::Whole => false,
        }
    }

    /// A text as it would be kept: of a gauge that is printed with more than its count, what this field reads in it.
    pub fn keepable(&self, typed: &Typed) -> Typed {
        let plain = || typed.clone();
        match (self.kind, gauge_text(typed)) {
            (Kind::Gauge | Kind::Gauges, Ok(read)) if is_label(&read, self.counts) => {
                let gauge = read.gauge(self.counts).ok();
                gauge.and_then(gauge_as_typed).unwrap_or_else(plain)
            }
            (..) => plain(),
        }
    }
}

impl Fields {
    /// What was typed into a field, more than spaces, as it is read now.
    pub fn typed_as_read(&self, field: &'static Field) -> Option<Typed> {
        let typed = self.typed(self.path_of(field))?;
        if typed.text.trim().is_empty() {
            return None;
        }
        Some(match field.kind {
            Kind::Length(scale, _) => scale.settled(self.settings(), typed.clone()),
            Kind::Mass(scale, _) => scale.settled(self.settings(), typed.clone()),
            Kind::Count(_)
            | Kind::Gauge
            | Kind::Gauges
            | Kind::Choice(_)
            | Kind::List(_)
            | Kind::Text
            | Kind::Pattern
            | Kind::Whole => typed.clone(),
        })
    }

    /// The gauge of a field, in the direction that the field counts.
    ///
    /// # Errors
    /// Why it is none.
    pub fn gauge_read(&self, path: FieldPath) -> Result<Gauge, Unreadable> {
        let (text, span) = self.gauge(path);
        span_read(self.typed(path))?;
        gauge_text::read(text, span.length)?.gauge(self.counts(path))
    }

    /// What is counted in the gauge of a field.
    pub fn counts(&self, path: FieldPath) -> Direction {
        self.row(path).map_or(Direction::Stitches, |row| row.counts)
    }
}

/// A gauge as it is printed, over the span that stands beside it where it names none.
///
/// # Errors
/// Why it is none.
pub fn gauge_text(typed: &Typed) -> Result<GaugeText, Unreadable> {
    gauge_text::read(&typed.text, span_read(Some(typed))?.length)
}

/// Whether a text says more than one count.
fn is_label(read: &GaugeText, direction: Direction) -> bool {
    let is_range = read.of(direction).is_some_and(|counted| counted.range.is_some());
    is_range || read.span.is_some() || read.other(direction).is_some()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::form::NEEDLE;
    use loopwright::bounds::Bounds;

    #[test]
    fn a_text_is_taken_as_what_the_field_holds() {
        let needle = Field::length(&NEEDLE, loopwright::tail::NEEDLE);
        for (text, is_taken) in [
            ("US 6", true),
            ("6 us", true),
            ("4", true),
            ("US 12", false),
            ("10½", false),
            ("six", false),
        ] {
            assert_eq!(needle.takes(&Typed::with_unit(text, "mm")), is_taken, "{text}");
        }
        let count = Field::count(Bounds::new(1, 100));
        assert!(count.takes(&Typed::plain("12")) && !count.takes(&Typed::plain("88 112")));
        let rows = Field::gauge().of_rows();
        assert!(rows.takes(&Typed::plain("20 sts and 28 rows")) && !rows.takes(&Typed::plain("20 sts")));
        assert!(Field::gauges().takes(&Typed::plain("21, 22")) && !Field::gauge().takes(&Typed::plain("21, 22")));
    }

    #[test]
    fn of_a_label_what_the_field_reads_is_kept() {
        let keep = |text: &str| Field::gauge().of_rows().keepable(&Typed::with_unit(text, "10 cm"));
        assert_eq!(keep("20 sts and 28 rows"), Typed::with_unit("28", "10 cm"));
        assert_eq!(keep("28 rows to 4 in"), Typed::with_unit("28", "4 in"));
        // As typed, where that is a count.
        assert_eq!(keep("28½"), Typed::with_unit("28½", "10 cm"));
    }
}

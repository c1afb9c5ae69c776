//! In what a knitter measures, chosen once for all tools: centimetres, metres, grams and millimetre needles, or inches,
//! yards, ounces and US needles. The choice fills fields in which nothing stands yet. What is typed keeps the unit it was
//! typed in, and a unit that is chosen beside a field counts more than this.

use super::{SPANS, Settings, Span, TAPE, WEIGHT, YARN};
use crate::words::{Worded, about as words};
use loopwright::units::Gauge;

/// The units a knitter measures in.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Measures {
    /// Centimetres, counts over 10 cm, metres, grams, needles in millimetres.
    Metric,
    /// Inches, counts over 4 in, yards, ounces, needles by their US size.
    Inches,
}

loopwright::choice!(Measures starts Metric { Metric = "metric", Inches = "inches" });

impl Measures {
    /// The setting it is stored under.
    pub const SETTING: &'static str = "measures";

    /// The settings of single scales that a new choice takes away, so that it holds for all of them.
    pub const OVERRIDDEN: [&'static str; 3] = [TAPE.setting, YARN.setting, WEIGHT.setting];

    /// What a gauge is counted over before anything is typed or chosen beside it.
    pub fn span(self) -> Span {
        let length = match self {
            Self::Metric => Gauge::TEN_CM,
            Self::Inches => Gauge::FOUR_INCHES,
        };
        let span = SPANS.into_iter().find(|span| span.length == length);
        span.unwrap_or(Span::USUAL)
    }
}

impl Worded for Measures {
    fn words(self) -> &'static str {
        match self {
            Self::Metric => words::MEASURES_METRIC,
            Self::Inches => words::MEASURES_INCHES,
        }
    }
}

impl Settings {
    /// What is chosen, if anything is.
    pub fn measures_chosen(&self) -> Option<Measures> {
        loopwright::choice::Key::from_key(self.text(Measures::SETTING)?)
    }

    /// What holds.
    pub fn measures(&self) -> Measures {
        self.measures_chosen().unwrap_or(Measures::Metric)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::store::{Fields, Typed};
    use loopwright::choice::Key;

    #[test]
    fn the_choice_is_read_by_the_keys_it_was_stored_under() {
        assert_eq!(Measures::SETTING, "measures");
        assert_eq!(Measures::OVERRIDDEN, ["length", "yarn", "weight"]);
        for (key, measures) in [("metric", Measures::Metric), ("inches", Measures::Inches)] {
            assert_eq!(Measures::from_key(key), Some(measures));
            let stored = Fields::from_iter([(Measures::SETTING.to_owned(), Typed::plain(key))]);
            assert_eq!(Settings::new(stored).measures(), measures);
        }
        assert_eq!(Settings::default().measures_chosen(), None);
    }

    #[test]
    fn a_gauge_is_counted_over_the_span_that_goes_with_the_choice() {
        assert_eq!(Measures::Metric.span(), Span::USUAL);
        assert_eq!(Measures::Inches.span().key, "4 in");
    }
}

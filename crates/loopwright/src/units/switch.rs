//! What stands in the field when she switches between inches and centimetres.
//!
//! What she typed is kept as she typed it, with the unit the field had then ([`Typed`]). In that unit the field shows
//! her own text; in another it shows the text converted and printed; back again, it is her own text once more, since
//! nothing was rewritten. Sums take the quantity from [`Typed::read`], never from what is shown.
//!
//! ```
//! use loopwright::units::print::Step;
//! use loopwright::units::switch::Typed;
//! use loopwright::units::{Length, LengthUnit};
//!
//! let width = Typed::<Length>::new("7 1/2", LengthUnit::Inch);
//! assert_eq!(width.shown_in(LengthUnit::Cm, Step::Half), "19");
//! assert_eq!(width.shown_in(LengthUnit::Inch, Step::Eighths), "7 1/2");
//! // 7 1/2 in is 19.05 cm, and that is what is reckoned with, whatever the field shows.
//! assert_eq!(width.read_any().map(|read| read.value), Ok(Length::from_sixty_fourths(480)));
//! ```

use super::Measure;
use super::parse::{Read, Unreadable, Wanted, read};
use super::print::{Step, print};
use crate::bounds::Bounds;
use std::borrow::Cow;

/// A text as it was typed, and the unit its field was in at that moment. Typing anew makes a new one.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Typed<T: Measure> {
    /// The text, untouched.
    pub text: String,
    /// The unit that is meant where the text names none.
    pub unit: T::Unit,
}

impl<T: Measure> Typed<T> {
    /// A text as typed into a field that is in this unit.
    pub fn new(text: impl Into<String>, unit: T::Unit) -> Self {
        Self {
            text: text.into(),
            unit,
        }
    }

    /// The quantity, or why it is none.
    pub fn read(&self, bounds: Bounds<T>) -> Result<Read<T>, Unreadable> {
        read(
            &self.text,
            &Wanted {
                bounds,
                unit: self.unit,
            },
        )
    }

    /// The quantity, however small or large.
    pub fn read_any(&self) -> Result<Read<T>, Unreadable> {
        read(&self.text, &Wanted::any(self.unit))
    }

    /// What the field shows when it is in this unit.
    ///
    /// It is the text as typed in the unit it was typed in, in the unit it names itself (`19 cm`), and wherever it
    /// cannot be read; else the quantity printed in this unit to this step, without the unit's sign.
    pub fn shown_in(&self, unit: T::Unit, step: Step) -> Cow<'_, str> {
        let as_typed = Cow::Borrowed(self.text.as_str());
        if unit == self.unit {
            return as_typed;
        }
        match self.read_any() {
            Ok(read) if read.unit != Some(unit.into()) => Cow::Owned(print(read.value, unit, step)),
            _ => as_typed,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::{Length, LengthUnit, Mass, MassUnit};
    use proptest::prelude::*;

    fn shown(text: &str, from: LengthUnit, to: LengthUnit) -> String {
        Typed::<Length>::new(text, from)
            .shown_in(to, to.usual_step())
            .into_owned()
    }

    #[test]
    fn a_written_unit_is_kept_until_another_is_asked_for() {
        assert_eq!(shown("19 cm", LengthUnit::Inch, LengthUnit::Inch), "19 cm");
        assert_eq!(shown("19 cm", LengthUnit::Inch, LengthUnit::Cm), "19 cm");
        assert_eq!(shown("19 cm", LengthUnit::Inch, LengthUnit::Mm), "190");
        assert_eq!(shown(" 7½ ", LengthUnit::Inch, LengthUnit::Cm), "19");
        assert_eq!(shown("100", LengthUnit::M, LengthUnit::Yard), "109.4");
    }

    #[test]
    fn what_cannot_be_read_is_shown_as_it_is() {
        for text in ["", " ", "7 1/", "about 7", "1,000", "7 oz", "99999999999999999999"] {
            assert_eq!(shown(text, LengthUnit::Inch, LengthUnit::Cm), text);
        }
    }

    #[test]
    fn weights_switch_too() {
        let ball = Typed::<Mass>::new("50", MassUnit::Gram);
        assert_eq!(ball.shown_in(MassUnit::Ounce, Step::Hundredth), "1.76");
    }

    proptest! {
        #[test]
        fn switching_there_and_back_gives_her_own_text(
            text in "\\PC{0,20}|[0-9]{0,3}[ -]?[1-7]/8( in| cm|\")?|[0-9]{0,4}[.,][0-9]{0,3}",
            from in prop::sample::select(&LengthUnit::ALL[..]),
            via in prop::sample::select(&LengthUnit::ALL[..]),
        ) {
            let typed = Typed::<Length>::new(text.clone(), from);
            let _ = typed.shown_in(via, via.usual_step());
            prop_assert_eq!(typed.shown_in(from, from.usual_step()), text);
        }

        #[test]
        fn what_is_shown_is_within_half_a_step_of_what_was_typed(
            eighths in 0..8_000_i64,
            to in prop::sample::select(&LengthUnit::ALL[..]),
        ) {
            let length = Length::from_sixty_fourths(eighths * 8);
            let typed = Typed::<Length>::new(print(length, LengthUnit::Inch, Step::Eighths), LengthUnit::Inch);
            let step = to.usual_step();
            let text = typed.shown_in(to, step).into_owned();
            let back = Typed::<Length>::new(text, to).read_any().unwrap().value;
            let off = back.saturating_sub(length).to_nm().abs();
            prop_assert!(off * 2 * i64::from(step.parts()) <= to.base(), "off by {} nm", off);
        }
    }
}

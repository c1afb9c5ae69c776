//! Lists of bodies to take where a pattern has none: a tap fills the list as text and says that it measures bodies. A list
//! of her own is never written over.

use crate::form::{LIST_UNITS, TAPE};
use crate::part::View;
use crate::part::plain::{element, folded, text_element};
use crate::store::Typed;
use crate::words::page::certainty;
use crate::words::sizing as words;
use loopwright::problem::FieldPath;
use loopwright::sizing::{Measured, Name, Standard};
use loopwright::units::LengthUnit;
use yew::prelude::*;

/// The lists, folded away.
pub fn offered(view: &View) -> Html {
    if view.sheet.locks(Name::Sizes.into()) {
        return Html::default();
    }
    let mut content = vec![text_element("p", "", words::TAKING)];
    if is_own(&view.fields.text(Name::Sizes.into())) {
        content.push(text_element("p", "", words::KEEPING_OWN));
    } else {
        let wanted = TAPE.shown(view.fields.settings()).unit;
        content.extend(Standard::ALL.into_iter().map(|standard| offer(view, standard, wanted)));
    }
    content.push(text_element("p", "source", words::STANDARDS_SOURCE));
    folded("how", words::STANDARDS, content)
}

fn offer(view: &View, standard: Standard, wanted: LengthUnit) -> Html {
    let content = vec![
        view.sheet
            .putting(words::standard(standard).into(), taken(standard, wanted)),
        text_element("small", "practice", certainty(standard.certainty(wanted))),
    ];
    element("p", "line", content)
}

/// What taking a list sets.
fn taken(standard: Standard, wanted: LengthUnit) -> Vec<(FieldPath, Typed)> {
    let unit = standard.unit(wanted);
    let text = standard.written(wanted);
    let list = match LIST_UNITS.iter().find(|(_, listed)| *listed == unit) {
        Some((key, _)) => Typed::with_unit(text, *key),
        None => Typed::plain(text),
    };
    vec![
        (Name::Sizes.into(), list),
        (Name::Listed.into(), Typed::plain(Measured::Body.key())),
    ]
}

/// Whether a list was typed that is none of these.
fn is_own(text: &str) -> bool {
    let is_standard = |standard: Standard| LengthUnit::ALL.into_iter().any(|unit| standard.written(unit) == text);
    !text.trim().is_empty() && !Standard::ALL.into_iter().any(is_standard)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::form::{Fields, Settings};
    use crate::store;
    use crate::tool::Tool;
    use crate::tool::sizing::Sizing;
    use loopwright::sizing::Listed;

    /// A bust, and what taking a list sets.
    fn fields(standard: Standard, wanted: LengthUnit) -> Fields {
        let mut typed = store::Fields::default();
        typed.insert("bust".into(), Typed::with_unit("94", "cm"));
        for (path, value) in taken(standard, wanted) {
            typed.insert(path.stored(), value);
        }
        Fields::new(Sizing::FIELDS, typed, Settings::default())
    }

    #[test]
    fn what_is_taken_is_a_list_of_bodies_and_is_answered() {
        for standard in Standard::ALL {
            for wanted in [LengthUnit::Cm, LengthUnit::Inch] {
                let question = Sizing::read(&fields(standard, wanted)).unwrap();
                assert_eq!(question.listed, Some(Listed::Body), "{standard:?}");
                assert_eq!(question.sizes, standard.sizes(wanted), "{standard:?}");
                assert!(Sizing::answer(&question).is_ok(), "{standard:?}");
            }
        }
    }

    #[test]
    fn a_list_of_her_own_is_not_written_over() {
        assert!(is_own("S 81-86, M 91-97"));
        assert!(!is_own(" "));
        assert!(!is_own(&Standard::EnMen.written(LengthUnit::Inch)));
    }

    #[test]
    fn the_named_state_is_what_a_tap_brings_about() {
        let state = Sizing::STATES
            .iter()
            .find(|state| state.name == "standard-list")
            .unwrap();
        let shown = crate::tool::tests::fields_of::<Sizing>(state);
        for (path, typed) in taken(Standard::EnWomen, LengthUnit::Cm) {
            assert_eq!(shown.text(path), typed.text);
        }
    }
}

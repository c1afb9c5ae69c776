//! The one choice between centimetres and inches for all tools, on the first page and on the page about it all.

use crate::desk::Desk;
use crate::form::{Measures, SETTINGS};
use crate::part::plain::element;
use crate::part::{Label, selected};
use crate::store::{Entry, Typed};
use crate::words::{Worded, about as words};
use loopwright::choice::{Choice, Key};
use web_sys::HtmlSelectElement;
use yew::prelude::*;

/// The choice with its label.
pub fn units(desk: &Desk) -> Html {
    let id = format!("{SETTINGS}-{}", Measures::SETTING);
    let typed = desk.text(SETTINGS, Measures::SETTING);
    let chosen = typed.and_then(|typed| Measures::from_key(&typed.text));
    let chosen = chosen.unwrap_or(Measures::START);
    let options = Measures::ALL
        .iter()
        .map(|measures| (measures.key(), measures.words().into()));
    let desk = desk.clone();
    let onchange = Callback::from(move |event: Event| {
        let key = event.target_unchecked_into::<HtmlSelectElement>().value();
        desk.write_many(choosing(key));
    });
    let label = Label::Shown(words::MEASURES_LABEL).draw(&id);
    let select = selected(id, options.collect(), chosen.key(), onchange);
    element("div", "units line", vec![label, select])
}

/// What a choice changes: units that were chosen for single kinds of fields give way to it, what is typed does not.
fn choosing(key: String) -> Vec<Entry> {
    let chosen = Entry::new(SETTINGS, Measures::SETTING, Some(Typed::plain(key)));
    let overridden = Measures::OVERRIDDEN.map(|setting| Entry::new(SETTINGS, setting, None));
    [chosen].into_iter().chain(overridden).collect()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::form::{Settings, TAPE};
    use crate::store::Sheets;

    #[test]
    fn the_choice_holds_for_all_scales_until_one_differs() {
        let mut sheets = Sheets::default();
        let shown = |sheets: &Sheets| TAPE.shown(&Settings::new(sheets.fields(SETTINGS))).key;
        sheets.apply(&Entry::new(SETTINGS, TAPE.setting, Some(Typed::plain("cm"))));
        sheets.apply_all(&choosing("inches".into()));
        assert_eq!(shown(&sheets), "in");
        sheets.apply(&Entry::new(SETTINGS, TAPE.setting, Some(Typed::plain("cm"))));
        assert_eq!(shown(&sheets), "cm");
        sheets.apply_all(&choosing("inches".into()));
        assert_eq!(shown(&sheets), "in");
    }
}

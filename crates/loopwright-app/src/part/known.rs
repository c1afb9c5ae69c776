//! What the knitter has settled once, for all tools: gauges, needle, yarn, bust. It is written only by her tap on
//! "keep", and taken only by her tap on "use"; never silently.

use super::Sheet;
use super::plain::{button, el, says, tells};
use crate::desk::Desk;
use crate::store::Typed;
use crate::words::known as words;
use yew::prelude::*;

/// The sheet of what is settled.
pub(super) const KNOWN: &str = "known";

/// Beside a field: takes the kept value, or keeps the one that stands there, or says that it is the kept one.
///
/// `name` is what the value is called on the known sheet, the same in every tool that has it.
pub fn known(sheet: &Sheet, field: &'static str, name: &'static str) -> Html {
    offered(sheet, field, name, true)
}

/// The same; what stands in the field is offered to be kept only if the tool `keeps` such.
#[inline(never)]
pub(super) fn offered(sheet: &Sheet, field: &'static str, name: &'static str, keeps: bool) -> Html {
    let here = sheet.desk.text(sheet.id, field);
    let here = here.filter(|typed| !typed.text.trim().is_empty());
    let kept = sheet.desk.text(KNOWN, name);
    if here == kept {
        return match here {
            Some(_) => says("p", "known", words::TAKEN),
            None => Html::default(),
        };
    }
    let mut offers = Vec::new();
    if let Some(kept) = kept {
        let label = words::take(&named(&kept));
        offers.push(button(label, writes(sheet, sheet.id, field, kept)));
    }
    if let Some(here) = here.filter(|_| keeps) {
        let label = words::keep(&named(&here));
        offers.push(button(label, writes(sheet, KNOWN, name, here)));
    }
    el("div", "known", offers)
}

/// Beside an answer: keeps it, or says that it is the kept one.
pub fn keep(desk: &Desk, name: &'static str, value: Typed) -> Html {
    let said = named(&value);
    let content = if desk.text(KNOWN, name).as_ref() == Some(&value) {
        vec![tells("span", "", words::taken(&said))]
    } else {
        let known = Sheet::new(desk, KNOWN);
        vec![button(words::keep(&said), writes(&known, KNOWN, name, value))]
    };
    el("p", "line", content)
}

fn named(typed: &Typed) -> String {
    words::value(typed.text.trim(), typed.unit.as_deref())
}

fn writes(sheet: &Sheet, to: &'static str, field: &'static str, typed: Typed) -> Callback<MouseEvent> {
    let desk = sheet.desk.clone();
    Callback::from(move |_| desk.write(to, field, Some(typed.clone())))
}

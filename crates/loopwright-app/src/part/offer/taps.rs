//! Beside a field that asks for stitches, and not for those of one part: a tap for each count of the project that it would
//! take. Once she took one the field follows it, as it follows a fact that it asks for by itself.

use crate::form::kept::{Called, Kept, SHEET, named_counts};
use crate::form::{Field, Keeping};
use crate::part::View;
use crate::part::plain::{button, element, folded, text_element};
use crate::store::{Entry, Typed};
use crate::words::known as words;
use loopwright_project::Reference;
use loopwright_project::stored::from_sheet;
use yew::prelude::*;

/// So many stand in sight; the others lie folded, so that a phone has room for the question.
const HANDFUL: usize = 5;
/// So many more lie there: whoever has more counts types the number.
const FOLDED: usize = 40;

/// A value of the project that may be meant.
struct Offered {
    fact: String,
    label: String,
    typed: Typed,
}

/// The taps, if the project has anything that the field would take.
pub fn offered(view: &View, field: &'static Field) -> Option<Html> {
    let mut all = match field.kept {
        Keeping::Counts => counts(view),
        Keeping::Offered(kept) => fact(view, kept).into_iter().collect(),
        Keeping::Nothing | Keeping::As(_) | Keeping::Either(..) | Keeping::By(_) => Vec::new(),
    };
    all.retain(|offered| field.takes(&offered.typed));
    if all.is_empty() {
        return None;
    }
    let mut taps = all.into_iter().map(|offered| tap(view, field, offered));
    let mut content = vec![text_element("span", "", words::COUNTS)];
    content.extend(taps.by_ref().take(HANDFUL));
    let more: Vec<Html> = taps.take(FOLDED).collect();
    if !more.is_empty() {
        content.push(folded(
            "more-counts",
            words::MORE_COUNTS,
            vec![element("div", "taken", more)],
        ));
    }
    Some(element("div", "taken", content))
}

fn counts(view: &View) -> Vec<Offered> {
    let counts = named_counts(&view.sheet.desk.fields(SHEET)).into_iter();
    let offered = counts.map(|count| Offered {
        label: words::counted_as(&count.called.name(), count.typed.text.trim()),
        fact: count.key,
        typed: count.typed,
    });
    offered.collect()
}

fn fact(view: &View, kept: Kept) -> Option<Offered> {
    let typed = view.sheet.desk.text(SHEET, kept.key())?;
    let value = kept.print_in(view.fields.settings().measures(), &typed);
    Some(Offered {
        fact: kept.key().to_owned(),
        label: words::counted_as(&Called::Kept(kept).name(), &value),
        typed,
    })
}

/// Has the field follow the fact. What was typed there goes: a text of her own would count more.
fn tap(view: &View, field: &'static Field, offered: Offered) -> Html {
    let (sheet, key) = (view.sheet.clone(), view.fields.path_of(field).stored());
    let reference = Reference::Fact(offered.fact).to_string();
    let follow = move |_| {
        sheet.desk.write_many(vec![
            Entry::new(from_sheet(sheet.id), key.clone(), Some(Typed::plain(reference.clone()))),
            Entry::new(sheet.id, key.clone(), None),
        ]);
    };
    button(offered.label, Callback::from(follow))
}

//! The counts to which she gave names of her own, below what every project knows: name and number, each edited in place, one
//! more by a tap, and one fewer, which can be undone.

use crate::desk::Desk;
use crate::form::kept::{SHEET, name_trouble};
use crate::part::plain::{button, element, list, quiet_button, text_element};
use crate::part::{Label, Place, name_sentence, typed_text};
use crate::project::counts;
use crate::project::undo::{undo, what};
use crate::store::{Fields, Typed};
use crate::words::{facts as words, problem, project};
use loopwright::problem::Kind;
use loopwright::tail::STITCHES;
use loopwright::units::count;
use loopwright_project::{OwnCount, own_counts};
use yew::prelude::*;

/// The most that are shown: a file of a stranger may hold any number.
const SHOWN: usize = 50;

/// All of them.
pub fn own(desk: &Desk) -> Html {
    let known = desk.fields(SHEET);
    let counts = own_counts(&known);
    let more = counts.len().saturating_sub(SHOWN);
    let is_open = !counts.is_empty();
    let mut content: Vec<Html> = counts
        .into_iter()
        .take(SHOWN)
        .map(|own| one(desk, &known, own))
        .collect();
    if more > 0 {
        content.push(text_element("p", "quiet", words::more_counts(more)));
    }
    let add = {
        let desk = desk.clone();
        move |_| desk.write_stored(counts::add(&desk.newest(), desk.project_id(), Typed::plain("")))
    };
    let taps = vec![button(words::ADD_COUNT.into(), Callback::from(add)), undoing(desk)];
    content.push(element("div", "taken", taps));
    html! {
        <details class="own-counts" open={is_open}>
            <summary>{ words::OWN_COUNTS }</summary>
            <p class="quiet">{ words::OWN_WHY }</p>
            { list(content) }
        </details>
    }
}

fn one(desk: &Desk, known: &Fields, own: OwnCount) -> Html {
    let field = |key: String, label, example| {
        let place = Place {
            sheet: SHEET.into(),
            field: key,
            stays: true,
        };
        let content = vec![Label::Shown(label).draw(&place.id()), typed_text(desk, &place, example)];
        element("div", "quantity", content)
    };
    let trouble = name_trouble(own, known).map(name_sentence);
    let said = [trouble.map(str::to_owned), unread(known, own)];
    let said = said.into_iter().flatten();
    let content = vec![
        field(own.name_key(), words::OWN_NAME, words::OWN_NAME_EXAMPLE),
        field(own.key(), words::OWN_STITCHES, ""),
        taking_away(desk, own),
        // The room is there before anything is said in it.
        element("div", "room", said.map(wrong).collect()),
    ];
    html! { <div class="own-count" key={own.key()}>{ list(content) }</div> }
}

fn wrong(sentence: String) -> Html {
    element("div", "problem", vec![text_element("p", "", sentence)])
}

/// What is wrong with its number, if anything is typed.
fn unread(known: &Fields, own: OwnCount) -> Option<String> {
    let typed = known.get(&own.key()).filter(|typed| !typed.text.trim().is_empty())?;
    let why = count::read(&typed.text, STITCHES).err()?;
    Some(problem::sentence(&Kind::Unreadable(why)))
}

fn taking_away(desk: &Desk, own: OwnCount) -> Html {
    let desk = desk.clone();
    let take_away = move |_| desk.write_stored(counts::take_away(&desk.newest(), desk.project_id(), own));
    quiet_button(words::TAKE_AWAY.into(), Callback::from(take_away))
}

/// The tap that undoes, where something can be undone: the same as below the steps, within reach of what was taken away.
fn undoing(desk: &Desk) -> Html {
    let Some(what) = what(&desk.newest(), desk.project_id()) else {
        return Html::default();
    };
    let desk = desk.clone();
    let back = move |_| desk.write_stored(undo(&desk.newest(), desk.project_id()));
    button(project::undo(&what), Callback::from(back))
}

//! How fast she knits: typed, or timed by a tap at either end of so many stitches.

use crate::desk::Desk;
use crate::part::plain::{button, element, folded, list, status, text, text_element};
use crate::part::{Label, Place, typed_text};
use crate::project::PACE;
use crate::project::whole::{Time, Whole, pace_between};
use crate::store::Typed;
use crate::words::whole as words;
use js_sys::Date;
use loopwright::follow::pace::{TIMED, USUAL_TIMED};
use loopwright::units::count;
use loopwright_project::stored::PROJECT;
use web_sys::HtmlInputElement;
use yew::prelude::*;

/// The field, what it comes to in hours, and the watch.
pub fn pace(desk: &Desk, whole: &Whole) -> Html {
    let place = Place {
        sheet: PROJECT.into(),
        field: PACE.into(),
        stays: false,
    };
    let field = typed_text(desk, &place, words::PACE_EXAMPLE);
    let said = match whole.time {
        Time::Hours { hours, pace, left } => list(vec![
            text_element("p", "row", words::hours(hours, pace)),
            left.map(|left| text_element("p", "row", words::hours_left(left)))
                .unwrap_or_default(),
            text_element("p", "quiet", words::ON_TOP),
        ]),
        Time::Unknown => text_element("p", "quiet", words::PACE_USUAL),
        Time::Unreadable => text_element("p", "advice", words::PACE_WRONG),
    };
    let asked = vec![Label::Shown(words::PACE).draw(&place.id()), field];
    let watch = html! { <Watch desk={desk.clone()} /> };
    list(vec![
        element("div", "quantity", asked),
        said,
        folded("watch", words::TIME_IT, vec![watch]),
    ])
}

/// What the watch does.
#[derive(Clone, Copy, Debug, PartialEq)]
enum State {
    Waiting,
    /// Since when, in milliseconds, and for how many stitches.
    Running(f64, u32),
    /// The time was no pace.
    NoPace,
    /// She typed no number of stitches.
    NoStitches,
}

#[derive(Properties, PartialEq)]
struct Props {
    desk: Desk,
}

/// The watch: it keeps nothing but the pace that comes of it.
#[component]
fn Watch(props: &Props) -> Html {
    const ID: &str = "timed-stitches";
    let state = use_state_eq(|| State::Waiting);
    let typed = use_state_eq(|| USUAL_TIMED.to_string());
    let oninput = {
        let typed = typed.setter();
        move |event: InputEvent| typed.set(event.target_unchecked_into::<HtmlInputElement>().value())
    };
    let running = matches!(*state, State::Running(..));
    let tap = {
        let (state, typed, desk) = (state.clone(), typed.clone(), props.desk.clone());
        Callback::from(move |_: MouseEvent| {
            state.set(match *state {
                State::Running(since, stitches) => stop(&desk, since, stitches),
                State::Waiting | State::NoPace | State::NoStitches => start(&typed),
            });
        })
    };
    let said = match *state {
        State::Waiting => "",
        State::Running(..) => words::RUNNING,
        State::NoPace => words::NO_PACE,
        State::NoStitches => words::STITCHES_WRONG,
    };
    let label = if running { words::STOP } else { words::START };
    let value = (*typed).clone();
    let input = html! { <input id={ID} type="text" inputmode="numeric" {value} {oninput} disabled={running} autocomplete="off" /> };
    list(vec![
        text_element("p", "quiet", words::TIME_HOW),
        element(
            "div",
            "quantity",
            vec![Label::Shown(words::TIMED_STITCHES).draw(ID), input],
        ),
        element("div", "taps", vec![button(label.into(), tap)]),
        status(text(said.into())),
    ])
}

fn start(typed: &str) -> State {
    match count::read(typed, TIMED) {
        Ok(read) => State::Running(Date::now(), read.value),
        Err(_) => State::NoStitches,
    }
}

/// Keeps the pace, if it is one.
fn stop(desk: &Desk, since: f64, stitches: u32) -> State {
    match pace_between(stitches, since, Date::now()) {
        Some(pace) => {
            desk.write(PROJECT, PACE, Some(Typed::plain(pace.to_string())));
            State::Waiting
        }
        None => State::NoPace,
    }
}

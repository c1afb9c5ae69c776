//! The page that is knitted from. The lower half of the window is where she taps; above it stands what to do in this row and
//! what comes next, and below that, when she looks for it, the rows that follow and what helps her.

mod aside;
mod now;
mod pad;
mod paper;
mod rows;
mod side;

use crate::desk::Desk;
use crate::knit::keys::{Turn, use_turns};
use crate::knit::{Comfort, Counter, Followed, Subject, awake::use_awake, buzz};
use crate::part::plain::{element, link, list, text, text_element};
use crate::route;
use crate::words::knit as words;
use js_sys::{Date, Math};
use loopwright_project::knitting::{self, Tap};
use std::rc::Rc;
use yew::prelude::*;

/// What the page is drawn from.
#[derive(Properties, PartialEq)]
pub struct Props {
    /// The desk as it lies.
    pub desk: Desk,
    /// What is knitted from; none where there is no such tool or step.
    pub subject: Option<Subject>,
    /// Whether all that was tapped is kept.
    pub is_kept: bool,
}

/// The page.
#[component]
pub fn Knit(props: &Props) -> Html {
    match props.subject {
        Some(subject) => html! { <Row desk={props.desk.clone()} {subject} is_kept={props.is_kept} /> },
        None => text_element("p", "", words::NOTHING_TO_KNIT),
    }
}

/// What the rows of one subject are drawn from.
#[derive(Properties, PartialEq)]
struct RowProps {
    desk: Desk,
    subject: Subject,
    is_kept: bool,
}

/// All that the parts of this page are drawn from.
struct Page<'a> {
    desk: &'a Desk,
    subject: Subject,
    followed: Followed,
    naming: Naming,
    is_kept: bool,
}

/// The window that taps: it names its taps so that those of two windows never have one name.
#[derive(Clone)]
struct Naming {
    window: Rc<str>,
    count: Rc<std::cell::Cell<u32>>,
}

impl Naming {
    fn new() -> Self {
        let random = (Math::random() * f64::from(u32::MAX)) as u32;
        Self {
            window: format!("{random:x}").into(),
            count: Rc::default(),
        }
    }

    /// The name of the next tap.
    fn name(&self, now: u64) -> String {
        let count = self.count.get();
        self.count.set(count.wrapping_add(1));
        knitting::name(now, &self.window, count)
    }
}

/// The clock beside her, in milliseconds since 1970.
fn now() -> u64 {
    Date::now() as u64
}

/// Keeps a tap on a counter, as it stands now: also in a callback older than the last one.
fn tap(
    desk: &Desk,
    subject: Subject,
    naming: &Naming,
    counter: u32,
    tap: impl FnOnce(&Followed, &Counter, u64) -> Option<Tap>,
) {
    let Some(followed) = subject.followed(desk) else {
        return;
    };
    let now = now();
    let found = followed.counters.iter().find(|one| one.number == counter);
    let Some(tap) = found.and_then(|found| tap(&followed, found, now)) else {
        return;
    };
    subject.tap(desk, counter, &naming.name(now), tap);
    if Comfort::Buzz.is_on(desk) {
        buzz();
    }
}

/// A row is done, where there is one left.
fn on(followed: &Followed, counter: &Counter, now: u64) -> Option<Tap> {
    (!followed.plan.is_done(counter.done)).then(|| counter.on(now))
}

impl Page<'_> {
    /// A callback that leads a counter to a row.
    fn jumping(&self, counter: u32, row: u32) -> Callback<MouseEvent> {
        let (desk, subject, naming) = (self.desk.clone(), self.subject, self.naming.clone());
        Callback::from(move |_| tap(&desk, subject, &naming, counter, |_, counter, _| counter.to(row)))
    }

    /// A callback that taps on a counter.
    fn tapping(&self, counter: u32, which: fn(&Followed, &Counter, u64) -> Option<Tap>) -> Callback<MouseEvent> {
        let (desk, subject, naming) = (self.desk.clone(), self.subject, self.naming.clone());
        Callback::from(move |_| tap(&desk, subject, &naming, counter, which))
    }
}

#[component]
fn Row(props: &RowProps) -> Html {
    let RowProps { desk, subject, is_kept } = props;
    let naming = use_memo((), |()| Naming::new());
    let awake = use_awake(Comfort::Awake.is_on(desk));
    let large = use_state(|| false);
    let earlier = use_state(|| false);
    let turned = side::use_turned(*subject);
    use_turns(turning(desk, *subject, &naming));
    let followed = subject.followed(desk);
    let done = followed
        .as_ref()
        .and_then(Followed::counter)
        .map_or(0, |counter| counter.done);
    let done_at_first = side::use_done_at_first(*subject, done);
    let Some(followed) = followed else {
        return nothing(*subject);
    };
    let page = Page {
        desk,
        subject: *subject,
        followed,
        naming: (*naming).clone(),
        is_kept: *is_kept,
    };
    let Some(counter) = page.followed.counter() else {
        return nothing(*subject);
    };
    let content = vec![
        header(&page, &large),
        element(
            "div",
            "knitting",
            vec![
                side::side(&page, counter, done_at_first, &turned),
                now::now(&page, counter),
                now::warnings(&page, counter),
            ],
        ),
        rows::upcoming(&page, counter),
        aside::aside(&page, counter, awake, &earlier),
        paper::paper(&page),
        pad::pad(&page),
    ];
    element("article", if *large { "knit large" } else { "knit" }, content)
}

/// What keys do: they count on the counter that was tapped last.
fn turning(desk: &Desk, subject: Subject, naming: &Naming) -> Callback<Turn> {
    let (desk, naming) = (desk.clone(), naming.clone());
    Callback::from(move |turn| {
        let Some(active) = subject.followed(&desk).map(|followed| followed.active) else {
            return;
        };
        match turn {
            Turn::On => tap(&desk, subject, &naming, active, on),
            Turn::Back => tap(&desk, subject, &naming, active, |_, counter, _| counter.back()),
        }
    })
}

fn nothing(subject: Subject) -> Html {
    list(vec![
        text_element("h1", "", words::TITLE),
        text_element("p", "", words::NOTHING_TO_KNIT),
        element("p", "", vec![to_answer(subject)]),
    ])
}

fn to_answer(subject: Subject) -> Html {
    link(
        route::print(&subject.answer()),
        vec![text(words::BACK_TO_ANSWER.into())],
    )
}

fn header(page: &Page, large: &UseStateHandle<bool>) -> Html {
    let is_large = **large;
    let label = if is_large {
        words::CLASS_SCREEN_OFF
    } else {
        words::CLASS_SCREEN
    };
    let onclick = {
        let large = large.clone();
        Callback::from(move |_: MouseEvent| large.set(!is_large))
    };
    html! {
        <header>
            <h1>{ page.followed.name.clone() }</h1>
            { to_answer(page.subject) }
            <button type="button" class="quiet" aria-pressed={is_large.to_string()} {onclick}>{ label }</button>
        </header>
    }
}

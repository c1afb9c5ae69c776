//! The page that is knitted from. The lower half of the window is where she taps; above it stands what to do in this row and
//! what comes next, and below that, when she looks for it, the rows that follow and what helps her.

mod aside;
mod now;
mod pad;
mod paper;
mod rows;
mod side;
mod tapper;

use crate::desk::Desk;
use crate::form::SETTINGS;
use crate::knit::awake::use_awake;
use crate::knit::keys::{Turn, use_turns};
use crate::knit::{self, Comfort, Followed, Rows, Subject};
use crate::part::plain::{element, link, list, text, text_element};
use crate::route::{self, Route};
use crate::words::knit as words;
use gloo_utils::window;
use loopwright_project::StepId;
use paper::Paper;
use std::rc::Rc;
use tapper::{Naming, Tapper};
use yew::prelude::*;

/// Which page it is: the tool or the step that its address names.
#[derive(Clone, Debug, PartialEq)]
pub enum Which {
    /// A tool.
    Tool(String),
    /// A step of the open project.
    Step(StepId),
}

/// What the page is drawn from.
#[derive(Properties, PartialEq)]
pub struct Props {
    /// The desk as it lies.
    pub desk: Desk,
    /// What its address names.
    pub which: Which,
    /// Whether all that was tapped is kept.
    pub is_kept: bool,
}

/// The page. Its rows are derived anew when a figure has changed, and not at every tap.
#[component]
pub fn Knit(props: &Props) -> Html {
    let Props { desk, which, is_kept } = props;
    let figures = (which.clone(), desk.project(), desk.fields(SETTINGS));
    let looked_at = desk.clone();
    let found = use_memo(figures, move |(which, ..)| {
        let found = match which {
            Which::Tool(id) => knit::of_tool(&looked_at, id),
            Which::Step(id) => knit::of_step(&looked_at, *id),
        };
        found.map(|(subject, rows)| (subject, Rc::new(rows)))
    });
    match &*found {
        Some((subject, rows)) => html! {
            <Row key={format!("{subject:?}")} desk={desk.clone()} subject={*subject} rows={rows.clone()} is_kept={*is_kept} />
        },
        None => nothing(which),
    }
}

/// What the rows of one subject are drawn from.
#[derive(Properties, PartialEq)]
struct RowProps {
    desk: Desk,
    subject: Subject,
    rows: Rc<Rows>,
    is_kept: bool,
}

/// All that the parts of this page are drawn from.
struct Page<'a> {
    desk: &'a Desk,
    subject: Subject,
    rows: Rc<Rows>,
    followed: Followed,
    tapper: Tapper,
    is_kept: bool,
}

#[component]
fn Row(props: &RowProps) -> Html {
    let RowProps {
        desk,
        subject,
        rows,
        is_kept,
    } = props;
    // What is to be done now stands at the top, wherever the page before was scrolled to.
    use_effect_with((), |()| window().scroll_to_with_x_and_y(0.0, 0.0));
    let naming = use_memo((), |()| Naming::new());
    let tapper = Tapper {
        desk: desk.clone(),
        subject: *subject,
        rows: rows.clone(),
        naming: (*naming).clone(),
    };
    let followed = tapper.followed();
    let done = followed.counter().map_or(0, |counter| counter.done);
    let done_at_first = side::use_done_at_first(*subject, done);
    let turned = side::use_turned(*subject);
    let awake = use_awake(Comfort::Awake.is_on(desk));
    let (large, earlier) = (use_state(|| false), use_state(|| false));
    use_turns(turning(&tapper));
    let page = Page {
        desk,
        subject: *subject,
        rows: rows.clone(),
        followed,
        tapper,
        is_kept: *is_kept,
    };
    let Some(counter) = page.followed.counter() else {
        return Html::default();
    };
    let content = vec![
        header(&page, &large),
        element(
            "div",
            "knitting",
            vec![
                now::warnings(&page, counter),
                side::side(&page, counter, done_at_first, &turned),
                now::now(&page, counter),
            ],
        ),
        rows::upcoming(&page, counter),
        aside::aside(&page, counter, awake, &earlier),
        html! { <Paper rows={page.rows.clone()} /> },
        pad::pad(&page),
    ];
    element("article", if *large { "knit large" } else { "knit" }, content)
}

/// What keys do: they count on the counter that was tapped last.
fn turning(tapper: &Tapper) -> Callback<Turn> {
    let tapper = tapper.clone();
    Callback::from(move |turn| {
        let active = tapper.followed().active;
        match turn {
            Turn::On => tapper.tap(active, tapper::on),
            Turn::Back => tapper.tap(active, tapper::back),
        }
    })
}

fn nothing(which: &Which) -> Html {
    let answer = match which {
        Which::Tool(id) => Route::tool(id.clone(), &Default::default()),
        Which::Step(id) => Route::Step(*id),
    };
    list(vec![
        text_element("h1", "", words::TITLE),
        text_element("p", "", words::NOTHING_TO_KNIT),
        element("p", "", vec![to_answer(&answer)]),
    ])
}

fn to_answer(answer: &Route) -> Html {
    link(route::print(answer), vec![text(words::BACK_TO_ANSWER.into())])
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
            <h1>{ page.rows.name.clone() }</h1>
            { to_answer(&page.subject.answer()) }
            <button type="button" class="quiet" aria-pressed={is_large.to_string()} {onclick}>{ label }</button>
        </header>
    }
}

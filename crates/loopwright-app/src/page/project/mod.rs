//! The page of a project: what is known at the top, the steps below in their order, each with what it comes to, and what it
//! comes to all together. The sheet is derived whenever this page is drawn; nothing of it is kept.

mod beside;
mod changes;
mod facts;
mod own;
mod pace;
mod projects;
mod schematic;
pub mod states;
mod step;
mod steps;
mod totals;
mod tracks;

pub use beside::BESIDE;
pub use facts::{named as named_facts, own_named};
pub use projects::choosing;
pub use step::step;

use crate::desk::Desk;
use crate::part::plain::{button, element, link, text, text_element};
use crate::part::{Label, Place, announced, typed_text};
use crate::project::bringing;
use crate::project::together::{Knitted, knitted};
use crate::route::{self, Route};
use crate::tool::Tools;
use crate::words::project as words;
use loopwright_project::{Project, Sheet, StepId, change, derive, stored};
use yew::prelude::*;

/// All that the parts of this page are drawn from.
struct Page<'a> {
    desk: &'a Desk,
    project: Project,
    sheet: Sheet,
    /// What moved since she last said that she saw it.
    changes: Vec<change::Change>,
    /// The steps, those together that are knitted at the same time.
    knitted: Vec<Knitted>,
}

/// The page of the open project.
pub fn project(desk: &Desk) -> Html {
    let (project, tools) = (desk.project(), Tools::on(desk));
    let sheet = derive(&project, &tools);
    let changes = change::since_seen(&project, &tools, &sheet);
    let knitted = knitted(&project, &sheet, &tools);
    let page = Page {
        desk,
        project,
        sheet,
        changes,
        knitted,
    };
    let content = vec![
        header(&page),
        facts::facts(desk),
        // Below the facts: what moved must not push the field away that is typed in.
        changes::changes(&page),
        element(
            "section",
            "steps",
            vec![text_element("h2", "", words::STEPS), steps::steps(&page)],
        ),
        schematic::schematic(&page),
        totals::totals(&page),
        beside::beside(&page),
        super::carry(desk, &page.project),
        projects::projects(desk),
        crate::part::plain::status(announced(desk)),
    ];
    element("article", "project", content)
}

fn header(page: &Page) -> Html {
    let place = Place {
        sheet: stored::PROJECT.into(),
        field: crate::project::NAME.into(),
        stays: false,
    };
    let name = typed_text(page.desk, &place, words::NAME_EXAMPLE);
    let content = vec![
        text_element("h1", "", words::TITLE),
        text_element("p", "", words::INTRO),
        element(
            "div",
            "quantity",
            vec![Label::Shown(words::NAME).draw(&place.id()), name],
        ),
        brought_in(page),
    ];
    element("header", "", content)
}

/// What steps are called.
fn names(project: &Project, steps: impl Iterator<Item = StepId>) -> Vec<String> {
    let name = |id| project.step(id).map_or_else(String::new, |step| step.name.clone());
    steps.map(name).collect()
}

/// What was brought in last can be taken out again.
fn brought_in(page: &Page) -> Html {
    let desk = page.desk.clone();
    if !bringing::can_undo(&desk.newest(), desk.project_id()) {
        return Html::default();
    }
    let what = words::brought_in(page.project.name.trim());
    let undo = move |_| desk.write_stored(bringing::undo(&desk.newest(), desk.project_id()));
    element(
        "p",
        "brought-in",
        vec![button(words::undo(&what), Callback::from(undo))],
    )
}

/// The tools, from which every step comes.
fn to_tools() -> Html {
    let tools = link(route::print(&Route::Home), vec![text(words::TO_TOOLS.into())]);
    element("p", "to-tools", vec![tools])
}

//! Steps that are knitted at the same time: what is said of it in the list of steps, and where it is set on the page of one.

use super::{Page, names};
use crate::desk::Desk;
use crate::part::plain::{element, list, option, text_element};
use crate::part::{Label, Place, typed_text};
use crate::project::steps::About;
use crate::project::together::Knitted;
use crate::store::Typed;
use crate::words::tracks as words;
use loopwright::follow::Together;
use loopwright_project::stored::about_sheet;
use loopwright_project::{Project, Sheet, Step, StepId, TrackTrouble};
use web_sys::HtmlSelectElement;
use yew::prelude::*;

/// The key of none.
const NONE: &str = "";

/// What a step is knitted at the same time as, or why that cannot be; nothing where nothing is said.
pub fn line(project: &Project, sheet: &Sheet, step: &Step) -> Html {
    match project.track(step, sheet) {
        None => Html::default(),
        Some(Ok(begins)) => {
            let with = project.step(begins.with).map_or("", |with| &*with.name);
            text_element("p", "along", words::along(with, begins.row))
        }
        Some(Err(trouble)) => text_element("p", "advice", why(project, &trouble)),
    }
}

fn why(project: &Project, trouble: &TrackTrouble) -> String {
    let name = |id: &StepId| project.step(*id).map_or("", |step| &*step.name);
    match trouble {
        TrackTrouble::Gone(name) => words::gone(name.as_deref()),
        TrackTrouble::OtherPart(step) => words::other_part(name(step)),
        TrackTrouble::Circle => words::CIRCLE.into(),
        TrackTrouble::NoRow => words::NO_ROW.into(),
        TrackTrouble::RowBehind { step, rows } => words::behind(name(step), *rows),
        TrackTrouble::Amounts(step) => words::amounts(name(step)),
    }
}

/// Below the last step of those that are knitted at the same time: what they come to.
pub fn together(page: &Page, step: &Step) -> Html {
    let of_step = |one: &&Knitted| one.is_several() && one.last == step.id;
    let Some(one) = page.knitted.iter().find(of_step) else {
        return Html::default();
    };
    let called = names(&page.project, one.steps());
    let first = called.first().cloned().unwrap_or_default();
    let said = match &one.rows {
        Err(untold) => {
            let untold = names(&page.project, [*untold].into_iter());
            vec![text_element("p", "", words::untold(&called, &untold.concat()))]
        }
        Ok(together) => told(one, together, &called, &first),
    };
    element("li", "together", said)
}

fn told(one: &Knitted, together: &Together<String>, called: &[String], first: &str) -> Vec<Html> {
    let mut said = vec![text_element(
        "p",
        "",
        words::at_the_end(called, together.plan.rows, one.after),
    )];
    if let Some(meeting) = &together.meeting {
        said.push(text_element("p", "advice", words::meet(meeting)));
    }
    if together.plan.stitches.is_none() {
        said.push(text_element("p", "advice", words::no_stitches(first)));
    }
    let turned = together.turned.iter().filter_map(|place| {
        let (_, from) = one.bundle.tracks.get(*place)?;
        // The first stands before the tracks.
        let name = called.get(place + 1)?;
        Some(text_element("p", "advice", words::turned(name, first, *from)))
    });
    said.extend(turned);
    said
}

/// The fields on the page of a step. Where its part has no other step there is nothing to choose, and nothing to ask.
pub fn fields(desk: &Desk, project: &Project, step: &Step) -> Vec<Html> {
    let others = project.steps.iter().filter(|other| project.may_go_along(step, other));
    let mut options = vec![(NONE.to_owned(), words::NONE.to_owned())];
    options.extend(others.map(|other| (other.id.to_string(), other.name.clone())));
    let is_offered = options.iter().any(|(key, _)| *key == step.alongside);
    if !is_offered {
        options.push((step.alongside.clone(), chosen_name(project, step)));
    }
    if options.len() == 1 {
        return Vec::new();
    }
    let place = |about: About| Place {
        sheet: about_sheet(step.id),
        field: about.key().into(),
        stays: false,
    };
    let (along, row) = (place(About::Alongside), place(About::FromRow));
    let quantity = |label: &'static str, id: &str, control| {
        element("div", "quantity", vec![Label::Shown(label).draw(id), control])
    };
    let mut fields = vec![quantity(
        words::ALONGSIDE,
        &along.id(),
        choosing(desk, &along, options, &step.alongside),
    )];
    if step.alongside.is_empty() {
        fields.push(text_element("p", "quiet", words::WHY));
    } else {
        let typed = typed_text(desk, &row, words::FROM_ROW_EXAMPLE);
        fields.push(quantity(words::FROM_ROW, &row.id(), typed));
    }
    fields
}

/// What is called that was chosen and cannot be chosen any more.
fn chosen_name(project: &Project, step: &Step) -> String {
    let other = step.companion().and_then(|with| project.step(with));
    other.map_or_else(|| words::GONE.to_owned(), |other| other.name.clone())
}

fn choosing(desk: &Desk, place: &Place, options: Vec<(String, String)>, chosen: &str) -> Html {
    let onchange = {
        let (desk, place) = (desk.clone(), place.clone());
        Callback::from(move |event: Event| {
            let key = event.target_unchecked_into::<HtmlSelectElement>().value();
            let typed = (key != NONE).then(|| Typed::plain(key));
            desk.write(&place.sheet, &place.field, typed);
        })
    };
    let drawn = |(key, name): (String, String)| option(&key, name, key == chosen);
    list(vec![html! {
        <select id={place.id()} {onchange}>{ for options.into_iter().map(drawn) }</select>
    }])
}

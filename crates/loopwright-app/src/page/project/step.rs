//! The page of one step: what she calls it, the part it stands under, how often it is knitted, and its tool, filled in.

use super::tracks;
use crate::desk::Desk;
use crate::part::plain::{button, element, folded, link, list, text, text_element};
use crate::part::{Label, Place, typed_text};
use crate::project::steps::About;
use crate::route::{self, Route};
use crate::store::Typed;
use crate::tool::{self, Tools};
use crate::words::project as words;
use loopwright_project::stored::about_sheet;
use loopwright_project::{Project, Step, StepId, derive};
use yew::prelude::*;

/// The page of a step of the open project.
pub fn step(desk: &Desk, id: StepId) -> Html {
    let project = desk.project();
    let back = link(route::print(&Route::Project), vec![text(words::TO_PROJECT.into())]);
    let Some(step) = project.step(id) else {
        return list(vec![
            text_element("p", "", words::NO_STEP),
            element("p", "", vec![back]),
        ]);
    };
    let tool = match tool::find(&step.tool) {
        Some(tool) => tool.page(&desk.at_step(tool.id, id)),
        None => text_element("p", "", words::trouble(&loopwright_project::Trouble::NoSuchTool, "")),
    };
    let place = words::standing_under(&step.name, &step.section);
    let here = element("nav", "back", vec![back, text_element("strong", "", place)]);
    let along = match step.alongside.as_str() {
        "" => Html::default(),
        _ => tracks::line(&project, &derive(&project, &Tools::on(desk)), step),
    };
    list(vec![here, about(desk, &project, step), along, tool])
}

fn about(desk: &Desk, project: &Project, step: &Step) -> Html {
    let place = |about: About| Place {
        sheet: about_sheet(step.id),
        field: about.key().into(),
        stays: false,
    };
    let field = |about, label: &'static str, example| {
        let place = place(about);
        let content = vec![Label::Shown(label).draw(&place.id()), typed_text(desk, &place, example)];
        element("div", "quantity", content)
    };
    let mut fields = vec![
        field(About::Name, words::STEP_NAME, ""),
        field(About::Section, words::SECTION, words::SECTION_EXAMPLE),
        field(About::Amount, words::AMOUNT, "1"),
    ];
    if step.times().is_none() {
        fields.push(text_element("p", "advice", words::AMOUNT_WRONG));
    }
    fields.extend(tracks::fields(desk, project, step));
    let fields = element("div", "fields", fields);
    folded(
        "about-step",
        words::ABOUT_STEP,
        vec![fields, chips(desk, project, step)],
    )
}

/// The parts that other steps stand under, a tap each.
fn chips(desk: &Desk, project: &Project, step: &Step) -> Html {
    let sections = project.sections();
    let others = sections
        .iter()
        .filter(|(name, _)| !name.is_empty() && *name != step.section);
    let chip = |(name, _): &(&str, Vec<&Step>)| {
        let (desk, sheet, name) = (desk.clone(), about_sheet(step.id), (*name).to_owned());
        let label = name.clone();
        let put = move |_| {
            let typed = Typed::plain(name.clone());
            desk.write(&sheet, About::Section.key(), Some(typed));
        };
        button(label, Callback::from(put))
    };
    element("div", "chips", others.map(chip).collect())
}

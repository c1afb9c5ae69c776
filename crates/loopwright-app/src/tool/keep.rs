//! "Keep in the project": what stands in a tool becomes a step of the open project.

use crate::desk::Desk;
use crate::desk::undo::become_project;
use crate::part::View;
use crate::part::plain::{button, element, text_element};
use crate::route::{self, Route};
use crate::store::Fields;
use crate::words::project as words;
use gloo_utils::window;
use loopwright_project::stored::{from_sheet, read_references};
use loopwright_project::{Project, Step, StepId};
use yew::prelude::*;

/// The tap that keeps an answer as a step and goes to its page. Not on the page of a step, nor where nothing is kept.
pub fn keep_offer(view: &View, name: &'static str) -> Html {
    let desk = &view.sheet.desk;
    if view.sheet.frame.is_some() || desk.step().is_some() || desk.is_guest() {
        return Html::default();
    }
    let (desk, tool) = (desk.clone(), view.sheet.id);
    let onclick = Callback::from(move |_| {
        let step = keep(&desk, tool, name);
        // A browser that does not go there has the project's page still.
        drop(window().location().set_hash(&route::print(&Route::Step(step))));
    });
    let content = vec![
        button(words::KEEP.into(), onclick),
        text_element("span", "quiet", words::KEEP_WHY),
    ];
    element("section", "keep", content)
}

/// Keeps what stands in a tool as a step of this name, and empties the tool: its figures lie in the step from now on, and
/// can be put back.
fn keep(desk: &Desk, tool: &'static str, name: &str) -> StepId {
    let mut project = desk.project();
    let step = Step {
        fields: desk.fields(tool),
        from: read_references(&desk.fields(&from_sheet(tool))),
        section: project
            .steps
            .last()
            .map_or_else(String::new, |step| step.section.clone()),
        ..Step::new(tool, free_name(&project, name))
    };
    let id = project.add(step);
    desk.write_stored(become_project(&desk.newest(), desk.project_id(), &project));
    desk.hand_over(tool, &Fields::new(), &Fields::new());
    id
}

/// A name that no other step has: "Even spacing", "Even spacing 2".
fn free_name(project: &Project, name: &str) -> String {
    let is_free = |name: &String| project.steps.iter().all(|step| step.name != *name);
    let numbered = (2..).map(|number: u32| words::numbered(name, number));
    let mut names = std::iter::once(name.to_owned()).chain(numbered);
    names.find(is_free).unwrap_or_else(|| name.to_owned())
}

//! The steps of a project under the parts of the garment, each with its answer in a line, what it counts, and the taps that
//! move it or take it out. Where one step's last count is not the next one's first, that is said between them.

use super::{Page, names, to_tools, tracks};
use crate::desk::Desk;
use crate::form::Fields;
use crate::knit::Subject;
use crate::part::plain::{button, element, element_with, link, list, text, text_element};
use crate::project::together::{self, Knitted};
use crate::project::{steps, undo};
use crate::route::{self, Route};
use crate::store::Typed;
use crate::tool;
use crate::words::{knit as knit_words, known, project as words, tracks as track_words, whole};
use loopwright::spacing;
use loopwright_project::{Answered, Derived, Step, StepId, Trouble};
use yew::prelude::*;

/// All steps.
pub fn steps(page: &Page) -> Html {
    let sections = page.project.sections();
    let is_divided = sections.iter().any(|(name, _)| !name.is_empty());
    let last = sections.len().saturating_sub(1);
    let mut content = Vec::new();
    for (place, (name, steps)) in sections.into_iter().enumerate() {
        let heading = match is_divided {
            true => heading(page.desk, name, [place == 0, place == last]),
            false => Html::default(),
        };
        content.push(section(page, heading, &steps));
    }
    if content.is_empty() {
        content.push(text_element("p", "quiet", words::NO_STEPS));
    }
    content.push(to_tools());
    content.push(undoing(page.desk));
    list(content)
}

fn undoing(desk: &Desk) -> Html {
    let Some(what) = undo::what(&desk.newest(), desk.project_id()) else {
        return Html::default();
    };
    let desk = desk.clone();
    let onclick = Callback::from(move |_| desk.write_stored(undo::undo(&desk.newest(), desk.project_id())));
    element("p", "", vec![button(words::undo(&what), onclick)])
}

/// A part of the garment, and the taps that move it; it may be the first or the last of them.
fn heading(desk: &Desk, name: &str, [is_first, is_last]: [bool; 2]) -> Html {
    let called = if name.is_empty() { words::NO_SECTION } else { name };
    let tap = |label: &'static str, up: bool, disabled: bool| {
        let (desk, name) = (desk.clone(), name.to_owned());
        let onclick = move |_: MouseEvent| steps::shift_part(&desk, &name, up);
        let spoken = words::of_step(label, called);
        html! { <button type="button" class="quiet" aria-label={spoken} {onclick} {disabled}>{ label }</button> }
    };
    let mut content = vec![text_element("h3", "", called.to_owned())];
    // A part that is the only one has no place to go to.
    if !(is_first && is_last) {
        let taps = vec![
            tap(whole::PART_UP, true, is_first),
            tap(whole::PART_DOWN, false, is_last),
        ];
        content.push(element("div", "doings", taps));
    }
    element("div", "line", content)
}

fn section(page: &Page, heading: Html, steps: &[&Step]) -> Html {
    let mut items = Vec::new();
    for (place, step) in steps.iter().enumerate() {
        items.push(item(page, step, [place == 0, place + 1 == steps.len()]));
        items.push(tracks::together(page, step));
        if let Some(next) = steps.get(place + 1) {
            items.push(between(page, step, next));
        }
    }
    element("section", "part", vec![heading, element("ol", "", items)])
}

/// A step of a part, which may be the first or the last of it.
fn item(page: &Page, step: &Step, ends: [bool; 2]) -> Html {
    let derived = page.sheet.step(step.id);
    let is_moved = page.changes.iter().any(|change| change.step == step.id);
    let name = link(
        route::print(&Route::Step(step.id)),
        vec![text(step.name.clone().into())],
    );
    let tool = tool::find(&step.tool).map_or("", |tool| tool.title.name);
    let mut head = vec![element("h4", "", vec![name])];
    if tool != step.name {
        head.push(text_element("span", "quiet", tool));
    }
    head.push(taps(page.desk, step, ends));
    let content = vec![
        element("div", "line", head),
        tracks::line(&page.project, &page.sheet, step),
        derived.map_or_else(Html::default, |derived| outcome(step, derived)),
        derived.map_or_else(Html::default, |derived| unread(page, step, derived)),
        knit(page, step),
    ];
    let class = if is_moved { "moved" } else { "" };
    element_with("li", &[("class", class)], content)
}

/// The way to knit from it, with how far she is, where it has rows.
fn knit(page: &Page, step: &Step) -> Html {
    let one = page.knitted.iter().find(|one| one.bundle.holds(step.id));
    let rows = one.and_then(|one| one.rows.as_ref().ok());
    let subject = Subject::with_step(&page.project, &page.knitted, step.id);
    let (Some(rows), Some(subject)) = (rows, subject) else {
        return Html::default();
    };
    let plan = &rows.plan;
    // What is knitted twice is as far as the one that is behind.
    let done = subject.done_on_each(page.desk, plan.rows, step.times().unwrap_or(1));
    let label = match done.into_iter().min().unwrap_or_default() {
        0 => knit_words::KNIT_THIS.to_owned(),
        done => knit_words::knit_on(done, plan.rows, plan.knitting),
    };
    let way = link(route::print(&subject.page()), vec![text(label.into())]);
    element("p", "knit-on", vec![way])
}

fn outcome(step: &Step, derived: &Derived) -> Html {
    match answer_of(step, &derived.answered) {
        Ok(answer) => list(vec![
            text_element("p", "row", answer),
            text_element("p", "quiet", counts(step, derived)),
        ]),
        Err(why) => text_element("p", "advice", why),
    }
}

/// What the step asks of the project and cannot read there: beside an answer as well, which then stands on something else.
fn unread(page: &Page, step: &Step, derived: &Derived) -> Html {
    let Some(tool) = tool::find(&step.tool) else {
        return Html::default();
    };
    let fields = Fields::new(tool.fields, step.fields.clone(), Default::default()).with_given(derived.given.clone());
    let unread = fields.unread_facts(&page.project.facts).into_iter();
    let said = unread.map(|(kept, typed)| known::unread(kept.label(), typed.text.trim()));
    list(said.map(|sentence| text_element("p", "advice", sentence)).collect())
}

fn counts(step: &Step, derived: &Derived) -> String {
    let totals = derived.outcome().map(|outcome| outcome.totals).unwrap_or_default();
    words::counts(&totals, step.times().unwrap_or(1))
}

/// The answer of a step in a line, or why there is none.
pub fn answer_of(step: &Step, answered: &Answered) -> Result<String, String> {
    match answered {
        Ok(outcome) => Ok(outcome.headline.clone()),
        Err(troubles) => Err(troubles.first().map_or_else(String::new, |trouble| why(step, trouble))),
    }
}

fn why(step: &Step, trouble: &Trouble) -> String {
    let label = match trouble {
        Trouble::NoSuchTool => "",
        Trouble::Missing { field, .. } | Trouble::Circle { field } | Trouble::Field { field, .. } => label(step, field),
    };
    words::trouble(trouble, label)
}

fn label(step: &Step, field: &str) -> &'static str {
    let label = tool::find(&step.tool).and_then(|tool| {
        let fields = Fields::new(tool.fields, step.fields.clone(), Default::default());
        fields.stored_as(field).map(|(fields, row)| row.label_in(&fields))
    });
    label.unwrap_or_default()
}

fn taps(desk: &Desk, step: &Step, [is_first, is_last]: [bool; 2]) -> Html {
    let tap = |label: &'static str, disabled: bool, does: fn(&Desk, StepId)| {
        let (desk, id) = (desk.clone(), step.id);
        let onclick = move |_: MouseEvent| does(&desk, id);
        let spoken = words::of_step(label, &step.name);
        html! { <button type="button" class="quiet" aria-label={spoken} {onclick} {disabled}>{ label }</button> }
    };
    let taps = vec![
        tap(words::UP, is_first, |desk, id| steps::shift(desk, id, true)),
        tap(words::DOWN, is_last, |desk, id| steps::shift(desk, id, false)),
        tap(words::TAKE_OUT, false, steps::take_out),
    ];
    element("div", "doings", taps)
}

/// Between two steps of a part whose counts do not meet: that they do not, and the tool that brings them together.
fn between(page: &Page, step: &Step, next: &Step) -> Html {
    let after = together::left_by(&page.knitted, step.id);
    let before = together::begun_by(&page.knitted, &page.sheet, next.id);
    let (Some(after), Some(before)) = (after, before) else {
        return Html::default();
    };
    if after == before {
        return Html::default();
    }
    let said = not_meeting(page, step, after, next, before);
    let mut content = vec![text(said.into()), text(" ".into())];
    content.extend(spacing_between(after, before).map(|to| link(to, vec![text(words::SPACE_BETWEEN.into())])));
    element("li", "between", content)
}

fn not_meeting(page: &Page, step: &Step, after: u32, next: &Step, before: u32) -> String {
    let holds = |one: &&Knitted| one.is_several() && one.bundle.holds(step.id);
    match page.knitted.iter().find(holds) {
        Some(all) => track_words::do_not_meet(&names(&page.project, all.steps()), after, &next.name, before),
        None => words::does_not_meet(&step.name, after, &next.name, before),
    }
}

fn spacing_between(after: u32, before: u32) -> Option<String> {
    let asked = if before > after {
        spacing::Asked::Gain
    } else {
        spacing::Asked::Lose
    };
    let fields = [
        (spacing::Name::Stitches.key(), after.to_string()),
        (spacing::Name::Amount.key(), after.abs_diff(before).to_string()),
        (spacing::Name::Ask.key(), asked.key().to_owned()),
    ];
    let fields = fields
        .into_iter()
        .map(|(key, text)| (key.to_owned(), Typed::plain(text)));
    Some(route::print(&Route::tool(tool::find("spacing")?.id, &fields.collect())))
}

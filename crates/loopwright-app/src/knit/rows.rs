//! The rows that are knitted, derived from the answer. They are the same until a figure changes, whatever is tapped, so that
//! they are derived anew only then.

use super::subject::Subject;
use crate::desk::Desk;
use crate::project::together::{Knitted, knitted};
use crate::tool::{self, Tools};
use crate::words::knit as words;
use loopwright::follow::{Meeting, Of, Part, Plan};
use loopwright_project::{Project, StepId, derive};

/// What is knitted.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Rows {
    /// What she calls it.
    pub name: String,
    /// Its rows.
    pub plan: Plan<String>,
    /// How often it is knitted.
    pub times: u32,
    /// The row in which steps that are knitted at the same time would meet.
    pub meeting: Option<Meeting>,
    /// What is knitted next in the same part of the garment, with what she calls it.
    pub next: Option<(Subject, String)>,
}

/// The rows of a tool as it stands on the desk; none where there is no answer that has rows.
pub fn of_tool(desk: &Desk, id: &str) -> Option<(Subject, Rows)> {
    let tool = tool::find(id)?;
    let rows = Rows {
        name: tool.title.name.to_owned(),
        plan: tool.plan_on(desk)?,
        times: 1,
        meeting: None,
        next: None,
    };
    Some((Subject::of_tool(id)?, rows))
}

/// The rows of a step of the open project. With those that are knitted at the same time it is one plan, in which each says what
/// it does by its name; by itself it is its own, on the stitches that the step before it has left where it counts none.
pub fn of_step(desk: &Desk, id: StepId) -> Option<(Subject, Rows)> {
    let (project, tools) = (desk.project(), Tools::on(desk));
    let sheet = derive(&project, &tools);
    let knitted = knitted(&project, &sheet, &tools);
    let subject = Subject::with_step(&project, &knitted, id)?;
    let one = knitted.iter().find(|one| one.bundle.holds(id))?;
    let step = project.step(one.bundle.first)?;
    let (plan, meeting) = match one.is_several() {
        true => several(&project, one)?,
        false => (alone(desk, subject, one)?, None),
    };
    let rows = Rows {
        name: step.name.clone(),
        plan,
        times: step.times().unwrap_or(1),
        meeting,
        next: next(&project, &knitted, one),
    };
    Some((subject, rows))
}

fn several(project: &Project, one: &Knitted) -> Option<(Plan<String>, Option<Meeting>)> {
    let together = one.rows.as_ref().ok()?;
    let name = |step| project.step(step).map_or("", |step| &*step.name);
    let names: Vec<&str> = one.steps().map(name).collect();
    let plan = together.plan.told(|event| told(&names, &event.doing));
    Some((plan, together.meeting))
}

/// What several steps do in one row, each by its name.
fn told(names: &[&str], parts: &[Part<String>]) -> String {
    let told = parts.iter().map(|part| {
        let place = match part.of {
            Of::First => 0,
            Of::Track(track) => track.saturating_add(1),
        };
        words::row_and_doing(names.get(place).copied().unwrap_or_default(), &part.doing)
    });
    told.collect::<Vec<_>>().join(" ")
}

fn alone(desk: &Desk, subject: Subject, one: &Knitted) -> Option<Plan<String>> {
    let together = one.rows.as_ref().ok()?;
    let own = tool::find(subject.tool)?.plan_on(&subject.at(desk));
    let mut plan = own.unwrap_or_else(|| Plan::plain(together.plan.knitting, together.plan.rows, None));
    plan.stitches = plan.stitches.or(together.plan.stitches);
    Some(plan)
}

/// The step behind this one in the same part that has rows.
fn next(project: &Project, knitted: &[Knitted], one: &Knitted) -> Option<(Subject, String)> {
    let sections = project.sections();
    let is_here = |steps: &[&loopwright_project::Step]| steps.iter().any(|step| step.id == one.last);
    let (_, steps) = sections.iter().find(|(_, steps)| is_here(steps))?;
    let behind = steps.iter().skip_while(|step| step.id != one.last).skip(1);
    let mut with_rows = behind.filter(|step| {
        let theirs = knitted.iter().find(|other| other.bundle.holds(step.id));
        theirs.is_some_and(|other| other.rows.is_ok())
    });
    let step = with_rows.next()?;
    Some((Subject::with_step(project, knitted, step.id)?, step.name.clone()))
}

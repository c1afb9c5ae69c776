//! What is knitted from: the answer of a tool, or of a step of the open project, with the place in it.

use super::counter::Counter;
use super::extent::Extent;
use crate::desk::Desk;
use crate::project::together;
use crate::route::Route;
use crate::store::{Entry, Typed};
use crate::tool::{self, Tools};
use crate::words::knit as words;
use loopwright::follow::{Meeting, Of, Part, Plan};
use loopwright_project::{Project, StepId, derive};
use loopwright_project::knitting::{self, Tap};

/// What is knitted from.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Subject {
    tool: &'static str,
    step: Option<StepId>,
}

/// The fields of its sheet that are no taps.
const BEGAN: &str = "began";
const COUNTERS: &str = "counters";
const ACTIVE: &str = "active";
const JUMP: &str = "jump";

/// So many counters have room beside each other.
pub const MOST_COUNTERS: u32 = 4;

/// What is knitted, and where she is in it.
pub struct Followed {
    /// What she calls it.
    pub name: String,
    /// Its rows.
    pub plan: Plan<String>,
    /// Its counters; there is at least one.
    pub counters: Vec<Counter>,
    /// Which of them the keys count on.
    pub active: u32,
    /// What it was when she began, where it has changed since.
    pub was: Option<Extent>,
    /// The row in which steps that are knitted at the same time would meet.
    pub meeting: Option<Meeting>,
}

impl Followed {
    /// The counter that the keys count on.
    pub fn counter(&self) -> Option<&Counter> {
        let active = self.counters.iter().find(|counter| counter.number == self.active);
        active.or(self.counters.first())
    }

    /// The rows that are done on the counter that is furthest behind.
    pub fn furthest_back(&self) -> u32 {
        self.counters
            .iter()
            .map(|counter| counter.done)
            .min()
            .unwrap_or_default()
    }
}

/// The rows of a step. With those that are knitted at the same time it is one plan, in which each says what it does by its
/// name; by itself it is its own, on the stitches that the step before it has left where it counts none.
fn rows_of_step(desk: &Desk, project: &Project, id: StepId) -> Option<(Plan<String>, Option<Meeting>)> {
    let tools = Tools::on(desk);
    let sheet = derive(project, &tools);
    let knitted = together::knitted(project, &sheet, &tools);
    let one = knitted.iter().find(|one| one.bundle.holds(id))?;
    let rows = one.rows.as_ref().ok()?;
    if one.is_several() {
        let names: Vec<&str> = one.steps().map(|step| project.step(step).map_or("", |step| &*step.name)).collect();
        return Some((rows.plan.told(|event| told(&names, &event.doing)), rows.meeting));
    }
    let step = project.step(id)?;
    let own = tool::find(&step.tool)?.plan_on(desk);
    let mut plan = own.unwrap_or_else(|| Plan::plain(rows.plan.knitting, rows.plan.rows, None));
    plan.stitches = plan.stitches.or(rows.plan.stitches);
    Some((plan, None))
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

impl Subject {
    /// The answer of a tool; none where there is no such tool.
    pub fn of_tool(id: &str) -> Option<Self> {
        let tool = tool::find(id)?.id;
        Some(Self { tool, step: None })
    }

    /// The answer of a step of the open project, and with it the steps that are knitted at the same time; none where there is
    /// no such step, or its tool is not known.
    pub fn of_step(desk: &Desk, id: StepId) -> Option<Self> {
        let project = desk.project();
        let bundles = project.bundles(&derive(&project, &Tools::on(desk)));
        let bundle = bundles.iter().find(|bundle| bundle.holds(id));
        let first = bundle.map_or(id, |bundle| bundle.first);
        let tool = tool::find(&project.step(first)?.tool)?.id;
        Some(Self {
            tool,
            step: Some(first),
        })
    }

    /// The page of the answer.
    pub fn answer(self) -> Route {
        match self.step {
            Some(step) => Route::Step(step),
            None => Route::tool(self.tool, &Default::default()),
        }
    }

    /// The sheet of a counter, by the name that it has beside its tool.
    fn sheet(self, counter: u32) -> String {
        match counter {
            1 => format!("{}.knit", self.tool),
            _ => format!("{}.knit.{counter}", self.tool),
        }
    }

    fn at(self, desk: &Desk) -> Desk {
        match self.step {
            Some(step) => desk.at_step(self.tool, step),
            None => desk.clone(),
        }
    }

    /// What is knitted as it stands on the desk; none where there is no answer that has rows.
    pub fn followed(self, desk: &Desk) -> Option<Followed> {
        let (desk, entry) = (self.at(desk), tool::find(self.tool)?);
        let project = desk.project();
        let step = self.step.and_then(|id| project.step(id)).cloned();
        let (plan, meeting) = match self.step {
            Some(id) => rows_of_step(&desk, &project, id)?,
            None => (entry.plan_on(&desk)?, None),
        };
        let times = step.as_ref().and_then(|step| step.times()).unwrap_or(1);
        let number = |field| -> Option<u32> { desk.text(&self.sheet(1), field)?.text.parse().ok() };
        let counters = number(COUNTERS).unwrap_or(times).clamp(1, MOST_COUNTERS);
        let counter = |count| Counter::new(count, desk.fields(&self.sheet(count)), plan.rows);
        let began = desk.text(&self.sheet(1), BEGAN);
        let began = began.and_then(|typed| Extent::parse(&typed.text));
        Some(Followed {
            name: step.map_or_else(|| entry.title.name.to_owned(), |step| step.name),
            counters: (1..=counters).map(counter).collect(),
            active: number(ACTIVE).unwrap_or(1).clamp(1, counters),
            was: began.filter(|began| *began != Extent::of(&plan)),
            meeting,
            plan,
        })
    }

    /// The page on which it is knitted.
    pub fn page(self) -> Route {
        match self.step {
            Some(step) => Route::KnitStep(step),
            None => Route::Knit(self.tool.to_owned()),
        }
    }

    /// The step that is knitted next in the same part of the garment, with what she calls it.
    pub fn knitted_next(self, desk: &Desk) -> Option<(Self, String)> {
        let (project, id) = (desk.project(), self.step?);
        let sections = project.sections();
        let (_, steps) = sections
            .iter()
            .find(|(_, steps)| steps.iter().any(|step| step.id == id))?;
        let behind = steps.iter().skip_while(|step| step.id != id).skip(1);
        let mut knitted = behind.filter_map(|step| {
            let subject = Self::of_step(desk, step.id)?;
            subject.followed(desk).map(|_| (subject, step.name.clone()))
        });
        knitted.next()
    }

    /// Keeps a tap, made now by the hand of this window. The first one remembers what was knitted.
    pub fn tap(self, desk: &Desk, counter: u32, name: &str, tap: Tap) {
        let (desk, sheet) = (self.at(desk), self.sheet(counter));
        let mut entries = vec![Entry::new(sheet, name, Some(Typed::plain(tap.to_string())))];
        let first = self.sheet(1);
        if desk.text(&first, BEGAN).is_none()
            && let Some(followed) = self.followed(&desk)
        {
            let began = Extent::of(&followed.plan).to_string();
            entries.push(Entry::new(first, BEGAN, Some(Typed::plain(began))));
        }
        desk.write_many(entries);
    }

    /// Takes the last tap of a counter back.
    pub fn take_back(self, desk: &Desk, counter: u32) {
        let (desk, sheet) = (self.at(desk), self.sheet(counter));
        let taps = desk.fields(&sheet);
        if let Some(last) = knitting::taps(&taps).next_back() {
            desk.write(&sheet, last.name, None);
        }
    }

    /// Has so many counters. Taps of one that is put away stay where they are.
    pub fn have_counters(self, desk: &Desk, counters: u32) {
        let counters = counters.clamp(1, MOST_COUNTERS).to_string();
        self.at(desk)
            .write(&self.sheet(1), COUNTERS, Some(Typed::plain(counters)));
    }

    /// The keys count on this counter from now on.
    pub fn activate(self, desk: &Desk, counter: u32) {
        self.at(desk)
            .write(&self.sheet(1), ACTIVE, Some(Typed::plain(counter.to_string())));
    }

    /// What is typed as the number of a row to go to.
    pub fn jump(self, desk: &Desk) -> String {
        let typed = self.at(desk).text(&self.sheet(1), JUMP);
        typed.map_or_else(String::new, |typed| typed.text)
    }

    /// Keeps what is typed as the number of a row to go to.
    pub fn set_jump(self, desk: &Desk, text: String) {
        let typed = (!text.is_empty()).then(|| Typed::plain(text));
        self.at(desk).write(&self.sheet(1), JUMP, typed);
    }

    /// What is knitted is what it is now: the change was seen.
    pub fn accept(self, desk: &Desk, extent: Extent) {
        self.at(desk)
            .write(&self.sheet(1), BEGAN, Some(Typed::plain(extent.to_string())));
    }
}

//! What is knitted from: the answer of a tool, or of a step of the open project, and where its place is kept.

use super::counter::Counter;
use super::extent::Extent;
use super::rows::Rows;
use crate::desk::Desk;
use crate::project::together::Knitted;
use crate::route::Route;
use crate::store::{Entry, Typed};
use crate::tool;
use loopwright_project::knitting::{self, Tap};
use loopwright_project::{Project, StepId};

/// What is knitted from.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Subject {
    /// The tool that answers.
    pub tool: &'static str,
    /// The step of the open project whose answer it is, if it is one.
    pub step: Option<StepId>,
}

/// The fields of its sheet that are no taps.
const BEGAN: &str = "began";
const COUNTERS: &str = "counters";
const ACTIVE: &str = "active";
const JUMP: &str = "jump";

/// Whether a field of such a sheet is one that is kept beside the taps.
pub fn keeps_beside_taps(field: &str) -> bool {
    [BEGAN, COUNTERS, ACTIVE, JUMP].contains(&field)
}

/// So many counters have room beside each other.
pub const MOST_COUNTERS: u32 = 4;

/// What is knitted, and where she is in it.
#[derive(Clone)]
pub struct Followed {
    /// Its counters; there is at least one.
    pub counters: Vec<Counter>,
    /// Which of them the keys count on.
    pub active: u32,
    /// What it was when she began, where it has changed since.
    pub was: Option<Extent>,
}

impl Followed {
    /// The counter that the keys count on.
    pub fn counter(&self) -> Option<&Counter> {
        let active = self.counters.iter().find(|counter| counter.number == self.active);
        active.or(self.counters.first())
    }
}

impl Subject {
    /// The answer of a tool; none where there is no such tool.
    pub fn of_tool(id: &str) -> Option<Self> {
        let tool = tool::find(id)?.id;
        Some(Self { tool, step: None })
    }

    /// A step of a project by itself; none where there is none of this number, or its tool is not known.
    pub fn of_step(project: &Project, id: StepId) -> Option<Self> {
        let tool = tool::find(&project.step(id)?.tool)?.id;
        Some(Self { tool, step: Some(id) })
    }

    /// The steps that are knitted together with one: their place is that of the one that the others begin in.
    pub fn with_step(project: &Project, knitted: &[Knitted], id: StepId) -> Option<Self> {
        let together = knitted.iter().find(|one| one.bundle.holds(id));
        Self::of_step(project, together.map_or(id, |one| one.bundle.first))
    }

    /// The page of the answer.
    pub fn answer(self) -> Route {
        match self.step {
            Some(step) => Route::Step(step),
            None => Route::tool(self.tool, &Default::default()),
        }
    }

    /// The page on which it is knitted.
    pub fn page(self) -> Route {
        match self.step {
            Some(step) => Route::KnitStep(step),
            None => Route::Knit(self.tool.to_owned()),
        }
    }

    /// The sheet of a counter, by the name that it has beside its tool.
    fn sheet(self, counter: u32) -> String {
        match counter {
            1 => format!("{}.knit", self.tool),
            _ => format!("{}.knit.{counter}", self.tool),
        }
    }

    /// The desk where the sheet of its tool is that of the step.
    pub fn at(self, desk: &Desk) -> Desk {
        match self.step {
            Some(step) => desk.at_step(self.tool, step),
            None => desk.clone(),
        }
    }

    /// Where she is in what is knitted.
    pub fn followed(self, desk: &Desk, rows: &Rows) -> Followed {
        let desk = self.at(desk);
        let number = |field| -> Option<u32> { desk.text(&self.sheet(1), field)?.text.parse().ok() };
        let counters = number(COUNTERS).unwrap_or(rows.times).clamp(1, MOST_COUNTERS);
        let counter = |count| desk.look(&self.sheet(count), |texts| Counter::new(count, texts, rows.plan.rows));
        let began = desk.text(&self.sheet(1), BEGAN);
        let began = began.and_then(|typed| Extent::parse(&typed.text));
        Followed {
            counters: (1..=counters).map(counter).collect(),
            active: number(ACTIVE).unwrap_or(1).clamp(1, counters),
            was: began.filter(|began| *began != Extent::of(&rows.plan)),
        }
    }

    /// How many of so many rows are done on each counter. Something that is knitted several times has as many counters.
    pub fn done_on_each(self, desk: &Desk, rows: u32, times: u32) -> Vec<u32> {
        let desk = self.at(desk);
        let counters = desk.text(&self.sheet(1), COUNTERS);
        let counters = counters.and_then(|typed| typed.text.parse().ok()).unwrap_or(times);
        let done = |count| desk.look(&self.sheet(count), |texts| knitting::rows_done(&knitting::taps(texts)));
        let counters = 1..=counters.clamp(1, MOST_COUNTERS);
        counters.map(|count| done(count).min(rows)).collect()
    }

    /// Keeps a tap. The first one remembers what was knitted.
    pub fn tap(self, desk: &Desk, rows: &Rows, counter: u32, name: &str, tap: Tap) {
        let (desk, sheet) = (self.at(desk), self.sheet(counter));
        let mut entries = vec![Entry::new(sheet, name, Some(Typed::plain(tap.to_string())))];
        let first = self.sheet(1);
        if desk.text(&first, BEGAN).is_none() {
            let began = Extent::of(&rows.plan).to_string();
            entries.push(Entry::new(first, BEGAN, Some(Typed::plain(began))));
        }
        desk.write_many(entries);
    }

    /// Takes the last tap of a counter back.
    pub fn take_back(self, desk: &Desk, counter: u32) {
        let (desk, sheet) = (self.at(desk), self.sheet(counter));
        let last = desk.look(&sheet, |texts| knitting::last_name(texts).map(str::to_owned));
        if let Some(last) = last {
            desk.write(&sheet, &last, None);
        }
    }

    /// Has so many counters. Taps of one that is put away stay where they are.
    pub fn have_counters(self, desk: &Desk, counters: u32) {
        let counters = counters.clamp(1, MOST_COUNTERS).to_string();
        self.write(desk, COUNTERS, Some(counters));
    }

    /// The keys count on this counter from now on.
    pub fn activate(self, desk: &Desk, counter: u32) {
        self.write(desk, ACTIVE, Some(counter.to_string()));
    }

    /// What is typed as the number of a row to go to.
    pub fn jump(self, desk: &Desk) -> String {
        let typed = self.at(desk).text(&self.sheet(1), JUMP);
        typed.map_or_else(String::new, |typed| typed.text)
    }

    /// Keeps what is typed as the number of a row to go to.
    pub fn set_jump(self, desk: &Desk, text: String) {
        self.write(desk, JUMP, (!text.is_empty()).then_some(text));
    }

    /// What is knitted is what it is now: the change was seen.
    pub fn accept(self, desk: &Desk, extent: Extent) {
        self.write(desk, BEGAN, Some(extent.to_string()));
    }

    fn write(self, desk: &Desk, field: &str, text: Option<String>) {
        self.at(desk).write(&self.sheet(1), field, text.map(Typed::plain));
    }
}

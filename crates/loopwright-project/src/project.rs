//! A project: facts, and steps in their order.

use crate::derive::Sheet;
use crate::own::is_name;
use crate::reference::Reference;
use crate::text::{Texts, Typed};
use std::collections::{BTreeMap, BTreeSet};
use std::fmt;

/// The number of a step: given once, in the order in which steps are added, and never to another one.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct StepId(pub u32);

impl StepId {
    /// The number that a text is, if it is written as this house writes it.
    pub fn parse(text: &str) -> Option<Self> {
        let number = text.parse::<u32>().ok().filter(|number| number.to_string() == text);
        number.map(Self)
    }
}

impl fmt::Display for StepId {
    fn fmt(&self, text: &mut fmt::Formatter<'_>) -> fmt::Result {
        self.0.fmt(text)
    }
}

/// One step of the garment: a tool with its fields.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Step {
    /// Its number. Whoever makes a step need not know it: [`Project::add`] gives it one.
    pub id: StepId,
    /// The tool that answers it.
    pub tool: String,
    /// What she calls it.
    pub name: String,
    /// The part of the garment it stands under, as she names it; none where it is empty.
    pub section: String,
    /// How often it is knitted, as typed: a sleeve twice. Once where it is empty.
    pub amount: String,
    /// The step it is knitted at the same time as, as kept: its number, or `gone` and the name it had. None where it is empty.
    pub alongside: String,
    /// In which row of that one it begins, as typed. In the first where it is empty.
    pub from_row: String,
    /// What was typed into its fields.
    pub fields: Texts,
    /// Where fields that stand on something else get their text.
    pub from: BTreeMap<String, Reference>,
}

impl Step {
    /// A step of a tool, with nothing in its fields.
    pub fn new(tool: impl Into<String>, name: impl Into<String>) -> Self {
        Self {
            id: StepId(0),
            tool: tool.into(),
            name: name.into(),
            section: String::new(),
            amount: String::new(),
            alongside: String::new(),
            from_row: String::new(),
            fields: Texts::new(),
            from: BTreeMap::new(),
        }
    }

    /// How often it is knitted; none where that is no number from 1 to 99.
    pub fn times(&self) -> Option<u32> {
        match self.amount.trim() {
            "" => Some(1),
            amount => amount.parse().ok().filter(|times| (1..=99).contains(times)),
        }
    }
}

/// A project of a knitter.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Project {
    /// What she calls it; empty until she does.
    pub name: String,
    /// What she knows or has decided, by the key of the fact.
    pub facts: Texts,
    /// Facts that have changed since she last said that she saw what moved, as they were; none where there was nothing.
    pub was: BTreeMap<String, Option<Typed>>,
    /// The steps, in their order.
    pub steps: Vec<Step>,
    /// The number that the next step is given.
    pub next: u32,
    /// How many stitches she knits in a minute, as typed.
    pub pace: String,
    /// What stands in the tools and is no step yet, by the tool.
    pub drafts: BTreeMap<String, Draft>,
}

/// What stands in a tool and is no step yet.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Draft {
    /// What was typed into its fields.
    pub fields: Texts,
    /// Where fields that stand on something else get their text.
    pub from: BTreeMap<String, Reference>,
}

impl Project {
    /// The step of this number.
    pub fn step(&self, id: StepId) -> Option<&Step> {
        self.steps.iter().find(|step| step.id == id)
    }

    /// Adds a step behind the others, and answers the number it was given.
    pub fn add(&mut self, step: Step) -> StepId {
        let used = self.steps.iter().map(|step| step.id.0.saturating_add(1)).max();
        let id = self.unless_taken(StepId(self.next.max(used.unwrap_or(1)).max(1)));
        self.next = id.0.saturating_add(1);
        self.steps.push(Step { id, ..step });
        id
    }

    /// This number; in a project of a stranger the last number there is may be taken, and then the first that is not.
    fn unless_taken(&self, id: StepId) -> StepId {
        if self.step(id).is_none() {
            return id;
        }
        let taken: BTreeSet<StepId> = self.steps.iter().map(|step| step.id).collect();
        let free = (1..=u32::MAX).map(StepId).find(|id| !taken.contains(id));
        free.unwrap_or(id)
    }

    /// Sets a fact, or takes it away, and remembers what it was when she last looked; of a name there is nothing to remember.
    pub fn set_fact(&mut self, key: &str, typed: Option<Typed>) {
        let now = self.facts.get(key).cloned();
        if now == typed {
            return;
        }
        if !is_name(key) {
            let was = self.was.entry(key.to_owned()).or_insert(now);
            if *was == typed {
                self.was.remove(key);
            }
        }
        match typed {
            Some(typed) => self.facts.insert(key.to_owned(), typed),
            None => self.facts.remove(key),
        };
    }

    /// The project with its facts as they were when she last looked.
    pub fn as_it_was(&self) -> Self {
        let mut before = self.clone();
        for (key, was) in &self.was {
            match was {
                Some(typed) => before.facts.insert(key.clone(), typed.clone()),
                None => before.facts.remove(key),
            };
        }
        before.was.clear();
        before
    }

    /// Takes a step out. What it gave to others stays in their fields, marked with its name.
    pub fn take_out(&mut self, id: StepId, sheet: &Sheet) {
        let Some(name) = self.step(id).map(|step| step.name.clone()) else {
            return;
        };
        self.steps.retain(|step| step.id != id);
        for step in &mut self.steps {
            step.lose_companion(id, &name);
            let given = sheet.step(step.id).map(|derived| &derived.given);
            for (field, reference) in &mut step.from {
                if !matches!(reference, Reference::Step { step, .. } if *step == id) {
                    continue;
                }
                *reference = Reference::Gone(name.clone());
                if let Some(given) = given.and_then(|given| given.get(field)) {
                    step.fields.entry(field.clone()).or_insert_with(|| given.typed.clone());
                }
            }
        }
    }

    /// Moves a step one place up or down among those of its section.
    pub fn shift(&mut self, id: StepId, up: bool) {
        let Some(place) = self.steps.iter().position(|step| step.id == id) else {
            return;
        };
        let section = self.steps[place].section.clone();
        let is_beside = |other: &usize| self.steps[*other].section == section;
        let other = if up {
            (0..place).rev().find(is_beside)
        } else {
            (place + 1..self.steps.len()).find(is_beside)
        };
        if let Some(other) = other {
            self.steps.swap(place, other);
        }
    }

    /// Moves a section with all its steps before the one before it, or behind the one behind it.
    pub fn shift_part(&mut self, name: &str, up: bool) {
        let mut sections: Vec<(&str, Vec<&Step>)> = self.sections();
        let Some(place) = sections.iter().position(|(section, _)| *section == name) else {
            return;
        };
        let other = if up { place.checked_sub(1) } else { Some(place + 1) };
        if let Some(other) = other.filter(|other| *other < sections.len()) {
            sections.swap(place, other);
            self.steps = sections.into_iter().flat_map(|(_, steps)| steps).cloned().collect();
        }
    }

    /// The sections in the order of their first steps, each with its steps.
    pub fn sections(&self) -> Vec<(&str, Vec<&Step>)> {
        let mut sections: Vec<(&str, Vec<&Step>)> = Vec::new();
        for step in &self.steps {
            match sections.iter_mut().find(|(name, _)| *name == step.section) {
                Some((_, steps)) => steps.push(step),
                None => sections.push((&step.section, vec![step])),
            }
        }
        sections
    }
}

//! From a project to its sheet: every step answered anew.
//!
//! A step is answered when it is first asked for, by the sheet or by another step that stands on it, and once only. Which
//! steps are being asked for is remembered on the way down, so that a circle in a file ends as a trouble of the step that
//! closes it.

use crate::outcome::{Answered, Outcome, Trouble};
use crate::project::{Project, Step, StepId};
use crate::reference::Reference;
use crate::text::{Texts, Typed};
use std::collections::{BTreeMap, BTreeSet};

/// The tools that answer steps.
pub trait Toolbox {
    /// The facts that a tool asks for as its fields stand: a field, and the key of the fact. A field may ask for several, and
    /// is given the first of them that the project knows.
    fn asks(&self, tool: &str, fields: &Texts) -> Vec<(String, String)>;

    /// Whether a field would take a text.
    fn takes(&self, tool: &str, field: &str, typed: &Typed) -> bool;

    /// The answer of a tool to its fields.
    fn answer(&self, tool: &str, fields: &Texts) -> Answered;
}

/// A text that is given to a field.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct GivenText {
    /// The text.
    pub typed: Typed,
    /// Where it comes from.
    pub from: Reference,
}

/// What is given to the fields of a step; what is typed into one of them counts more.
pub type Given = BTreeMap<String, GivenText>;

/// A step with what it comes to.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Derived {
    /// The step.
    pub id: StepId,
    /// What is given to its fields.
    pub given: Given,
    /// What it comes to.
    pub answered: Answered,
}

impl Derived {
    /// What it comes to, if it comes to anything.
    pub fn outcome(&self) -> Option<&Outcome> {
        self.answered.as_ref().ok()
    }
}

/// The steps of a project, in their order, each with what it comes to.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Sheet {
    /// The steps.
    pub steps: Vec<Derived>,
}

impl Sheet {
    /// The step of this number.
    pub fn step(&self, id: StepId) -> Option<&Derived> {
        self.steps.iter().find(|step| step.id == id)
    }
}

/// The sheet of a project.
pub fn derive(project: &Project, toolbox: &impl Toolbox) -> Sheet {
    let mut walk = Walk::new(project, toolbox);
    for step in &project.steps {
        walk.answer(step);
    }
    let mut done = walk.done;
    let steps = project.steps.iter().filter_map(|step| done.remove(&step.id));
    Sheet { steps: steps.collect() }
}

/// What is given to the fields of a tool that is no step, or not yet: facts, and what steps hand on.
pub fn given(
    project: &Project,
    toolbox: &impl Toolbox,
    tool: &str,
    fields: &Texts,
    from: &BTreeMap<String, Reference>,
) -> Given {
    Walk::new(project, toolbox).given(tool, fields, from, &mut Vec::new())
}

struct Walk<'a, T> {
    project: &'a Project,
    toolbox: &'a T,
    done: BTreeMap<StepId, Derived>,
    /// The steps that wait for the one that is being answered.
    waiting: Vec<StepId>,
}

/// Steps that stand on one another deeper than this are nobody's garment, and a file that has them is no reason to stop.
const DEEPEST: usize = 200;

impl<'a, T: Toolbox> Walk<'a, T> {
    const fn new(project: &'a Project, toolbox: &'a T) -> Self {
        Self {
            project,
            toolbox,
            done: BTreeMap::new(),
            waiting: Vec::new(),
        }
    }

    fn answer(&mut self, step: &Step) {
        if self.done.contains_key(&step.id) {
            return;
        }
        self.waiting.push(step.id);
        let mut troubles = Vec::new();
        let given = self.given(&step.tool, &step.fields, &step.from, &mut troubles);
        self.waiting.pop();
        let answered = if troubles.is_empty() {
            self.toolbox.answer(&step.tool, &filled(&step.fields, &given))
        } else {
            Err(troubles)
        };
        let id = step.id;
        self.done.insert(id, Derived { id, given, answered });
    }

    fn given(
        &mut self,
        tool: &str,
        fields: &Texts,
        from: &BTreeMap<String, Reference>,
        troubles: &mut Vec<Trouble>,
    ) -> Given {
        let mut given = Given::new();
        for (field, reference) in from {
            match self.text(reference) {
                Some(typed) => {
                    let from = reference.clone();
                    given.insert(field.clone(), GivenText { typed, from });
                }
                None if fields.contains_key(field) => (),
                None => troubles.push(self.trouble(field, reference)),
            }
        }
        let mut settled: BTreeSet<String> = from.keys().cloned().collect();
        for (field, fact) in self.toolbox.asks(tool, &filled(fields, &given)) {
            let typed = self.project.facts.get(&fact);
            let known = typed.filter(|typed| !typed.text.trim().is_empty());
            let Some(typed) = known.filter(|_| settled.insert(field.clone())) else {
                continue;
            };
            // A fact that cannot be read is not passed over for the next one: she would not know why that one stands there.
            if self.toolbox.takes(tool, &field, typed) {
                let (typed, from) = (typed.clone(), Reference::Fact(fact));
                given.insert(field, GivenText { typed, from });
            }
        }
        given
    }

    fn text(&mut self, reference: &Reference) -> Option<Typed> {
        match reference {
            Reference::Fact(key) => self.project.facts.get(key).cloned(),
            Reference::Step { step, gift } => {
                if self.is_closed(*step) {
                    return None;
                }
                let project = self.project;
                self.answer(project.step(*step)?);
                self.done.get(step)?.outcome()?.gifts.get(gift).cloned()
            }
            Reference::Gone(_) => None,
        }
    }

    fn is_closed(&self, step: StepId) -> bool {
        self.waiting.contains(&step) || self.waiting.len() > DEEPEST
    }

    fn trouble(&self, field: &str, reference: &Reference) -> Trouble {
        let field = field.to_owned();
        match reference {
            Reference::Step { step, .. } if self.is_closed(*step) => Trouble::Circle { field },
            reference => Trouble::Missing {
                field,
                reference: reference.clone(),
            },
        }
    }
}

/// What stands in the fields: what was typed, and where nothing was, what is given.
fn filled(fields: &Texts, given: &Given) -> Texts {
    let given = given.iter().map(|(field, given)| (field.clone(), given.typed.clone()));
    let mut filled: Texts = given.collect();
    filled.extend(fields.iter().map(|(field, typed)| (field.clone(), typed.clone())));
    filled
}

#[cfg(test)]
mod tests;

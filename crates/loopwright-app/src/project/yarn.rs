//! The sections of a yarn step, made from the steps of the project: their stitches and rows are references to the steps, so
//! that the yarn moves with them.
//!
//! A step is a section if it counts its rows and the stitches they are worked on, or goes on with those of the step before it
//! in its part. What is knitted at the same time as another step has no section of its own, since its rows are those of the
//! other one. Nor does a step go on with what the two leave, since neither of them hands that on.

use crate::tool::Gift;
use crate::words::whole as words;
use loopwright::choice::FieldName;
use loopwright::yarn::{Name, Presence, SECTIONS, SectionName, ShapeKind, Source};
use loopwright_project::{Derived, Outcome, Project, Reference, Sheet, Step, StepId, Texts, Typed};
use std::collections::BTreeMap;

/// The tool that counts yarn.
const YARN: &str = "yarn";

/// The sections that can be made.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Sections {
    /// What is typed into them.
    pub fields: Texts,
    /// Where their counts come from.
    pub from: BTreeMap<String, Reference>,
    /// How many there are.
    pub count: usize,
    /// Steps that count rows and are in no section, by their names.
    pub left_out: Vec<String>,
}

/// The sections that the steps of a project make.
pub fn sections(project: &Project, sheet: &Sheet) -> Sections {
    let mut sections = Sections::default();
    let bundles = project.bundles(sheet);
    for (_, steps) in project.sections() {
        let mut on_needle = None;
        for step in steps {
            let Some(outcome) = sheet.step(step.id).and_then(Derived::outcome) else {
                continue;
            };
            let bundle = bundles.iter().find(|bundle| bundle.first == step.id);
            if outcome.totals.rows.is_some() && !project.is_counted_elsewhere(step, sheet, Gift::Rows.key()) {
                let begins = begins(step, outcome, on_needle).filter(|_| bundle.is_some());
                sections.add(step, outcome, begins);
            }
            on_needle = match bundle {
                Some(bundle) if !bundle.tracks.is_empty() => None,
                Some(_) if outcome.totals.after.is_some() => Some(step.id),
                Some(_) | None => on_needle,
            };
        }
    }
    sections
}

/// From where a step has its first stitches: from itself, or from the step before it.
fn begins(step: &Step, outcome: &Outcome, on_needle: Option<StepId>) -> Option<Reference> {
    match outcome.totals.before {
        Some(_) => Some(gift(step.id, Gift::Before)),
        None => on_needle.map(|before| gift(before, Gift::After)),
    }
}

fn gift(step: StepId, gift: Gift) -> Reference {
    let gift = gift.key().to_owned();
    Reference::Step { step, gift }
}

impl Sections {
    fn add(&mut self, step: &Step, outcome: &Outcome, begins: Option<Reference>) {
        let Some(begins) = begins.filter(|_| self.count < SECTIONS.most as usize) else {
            self.left_out.push(step.name.clone());
            return;
        };
        self.put(SectionName::On, Presence::In.key());
        self.put(SectionName::Name, &step.name);
        if let Some(times) = step.times().filter(|times| *times > 1) {
            self.put(SectionName::Times, &times.to_string());
        }
        self.refer(SectionName::Stitches, begins);
        let totals = outcome.totals;
        if totals.after.is_some() && totals.after != totals.before {
            self.put(SectionName::Shape, ShapeKind::Tapered.key());
            self.refer(SectionName::To, gift(step.id, Gift::After));
        }
        self.refer(SectionName::Rows, gift(step.id, Gift::Rows));
        self.count += 1;
    }

    fn put(&mut self, field: SectionName, text: &str) {
        self.fields.insert(in_section(self.count, field), Typed::plain(text));
    }

    fn refer(&mut self, field: SectionName, from: Reference) {
        self.from.insert(in_section(self.count, field), from);
    }
}

/// The name under which a field of a section is kept; sections are counted from nought.
pub fn in_section(place: usize, field: SectionName) -> String {
    let group = SectionName::GROUP.map_or("", |group| group.stored);
    format!("{group}{}_{}", place + 1, field.key())
}

/// Whether a field is one of a section.
fn is_in_section(field: &str) -> bool {
    let group = SectionName::GROUP.map_or("", |group| group.stored);
    let rest = field.strip_prefix(group).and_then(|rest| rest.split_once('_'));
    rest.is_some_and(|(number, _)| !number.is_empty() && number.chars().all(|digit| digit.is_ascii_digit()))
}

fn yarn_step(project: &Project) -> Option<&Step> {
    project.steps.iter().find(|step| step.tool == YARN)
}

/// Whether the project has a yarn step.
pub fn is_there(project: &Project) -> bool {
    yarn_step(project).is_some()
}

/// Puts the sections into the first yarn step of the project, in place of those that it has, or into a new one. What else
/// stands in that step stays.
pub fn fill(project: &mut Project, sheet: &Sheet) {
    let sections = sections(project, sheet);
    if sections.count == 0 {
        return;
    }
    let id = match yarn_step(project) {
        Some(step) => step.id,
        None => project.add(Step {
            section: words::YARN_PART.into(),
            ..Step::new(YARN, words::YARN_STEP)
        }),
    };
    if let Some(step) = project.steps.iter_mut().find(|step| step.id == id) {
        step.fields.retain(|field, _| !is_in_section(field));
        step.from.retain(|field, _| !is_in_section(field));
        // A step that counted the pattern's balls has sections from now on.
        let piece = Typed::plain(Source::Piece.key());
        if let Some(source) = step.fields.get_mut(Name::From.key()) {
            *source = piece;
        }
        step.fields.extend(sections.fields);
        step.from.extend(sections.from);
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::form::Settings;
    use crate::form::kept::Kept;
    use crate::project::demo::{fronts, pullover};
    use crate::tool::Tools;
    use crate::words::demo as words;
    use loopwright_project::derive;

    fn tools() -> Tools {
        Tools::measuring(Settings::default())
    }

    fn filled(mut project: Project) -> Project {
        let sheet = derive(&project, &tools());
        fill(&mut project, &sheet);
        project
    }

    fn balls(project: &Project) -> Option<u32> {
        let sheet = derive(project, &tools());
        let yarn = yarn_step(project)?;
        sheet.step(yarn.id)?.outcome()?.totals.balls
    }

    #[test]
    fn the_sections_of_the_example_are_its_parts() {
        let project = pullover();
        let sections = sections(&project, &derive(&project, &tools()));
        assert_eq!((sections.count, &*sections.left_out), (3, &[][..]));
        let names = (0..3).map(|place| &*sections.fields[&in_section(place, SectionName::Name)].text);
        assert_eq!(names.collect::<Vec<_>>()[0], words::YOKE);
        assert_eq!(sections.fields[&in_section(2, SectionName::Times)], Typed::plain("2"));
    }

    #[test]
    fn a_yarn_step_is_filled_again_and_moves_with_the_steps() {
        let mut project = filled(pullover());
        let once = project.clone();
        assert_eq!(filled(project.clone()), once);
        assert_eq!(project.steps.len(), pullover().steps.len());
        let before = balls(&project).unwrap();
        let key = Kept::GaugeStitches.key();
        project.set_fact(key, Some(Typed::with_unit("28", "10 cm")));
        assert!(balls(&project).unwrap() > before);
    }

    #[test]
    fn where_there_is_none_a_yarn_step_is_made() {
        let project = filled(fronts("12"));
        let yarn = project.steps.last().unwrap();
        assert_eq!(yarn.tool, YARN);
        // The armhole alone: the neck has the same rows, and what the two leave is handed on by neither.
        assert_eq!(
            yarn.fields[&in_section(0, SectionName::On)],
            Typed::plain(Presence::In.key())
        );
        assert!(!yarn.fields.contains_key(&in_section(1, SectionName::On)));
        let left_out = sections(&project, &derive(&project, &tools())).left_out;
        assert_eq!(left_out, [words::FRONT_NECK, words::TO_THE_SHOULDER]);
    }
}

//! The project of a JSON value, name by name. What is not as it is written is an error with its place, and what a later
//! version may have added is passed over and noted. In a file of a later version of the format nothing is an error that this
//! version may only not understand: it is passed over as well.

use super::json::{Json, MARKER};
use super::{FileError, HIGHEST_NUMBER, MOST_STEPS, MadeBy, Place, Reading, VERSION};
use crate::project::{Draft, Project, Step, StepId};
use crate::reference::Reference;
use crate::stored::is_draft;
use crate::text::{Texts, Typed};
use std::collections::{BTreeMap, BTreeSet};

type Result<T> = std::result::Result<T, FileError>;

/// The project of a file's value.
pub fn project(json: &Json) -> Result<Reading> {
    let Json::Object(pairs) = json else {
        return Err(FileError::NotOurs);
    };
    let made_by = made_by(pairs)?;
    let passed_over = Vec::new();
    let mut reader = Reader { made_by, passed_over };
    let mut project = reader.project(json)?;
    if made_by == MadeBy::LaterVersion {
        keep_numbers_apart(&mut project);
    }
    let passed_over = reader.passed_over;
    Ok(Reading {
        project,
        passed_over,
        made_by,
    })
}

/// A step that is passed over leaves its number behind where others refer to it: no new step may be given it.
fn keep_numbers_apart(project: &mut Project) {
    let drafts = project.drafts.values().map(|draft| &draft.from);
    let from = project.steps.iter().map(|step| &step.from).chain(drafts);
    let referred = from.flat_map(BTreeMap::values).filter_map(|reference| match reference {
        Reference::Step { step, .. } => Some(step.0),
        Reference::Fact(_) | Reference::Gone(_) => None,
    });
    let highest = referred.filter(|number| *number < HIGHEST_NUMBER).max();
    project.next = project.next.max(highest.map_or(0, |number| number + 1));
}

/// Which version of the format a project is of, if it is one.
fn made_by(pairs: &[(String, Json)]) -> Result<MadeBy> {
    let has = |marker: &str| pairs.iter().find(|(name, _)| name == marker);
    match (has(MARKER), has("loopwright")) {
        (Some((_, Json::Number(number))), _) => match number.as_u64() {
            Some(VERSION) => Ok(MadeBy::ThisVersion),
            Some(later) if later > VERSION => Ok(MadeBy::LaterVersion),
            Some(_) | None => Err(FileError::NotOurs),
        },
        (None, Some(_)) => Err(FileError::CopyOfAll),
        (Some(_), _) | (None, None) => Err(FileError::NotOurs),
    }
}

struct Reader {
    made_by: MadeBy,
    passed_over: Vec<Place>,
}

impl Reader {
    fn project(&mut self, json: &Json) -> Result<Project> {
        let mut project = Project::default();
        for (name, value) in object(json, "")? {
            self.understand(|reader| {
                match &**name {
                    MARKER => (),
                    "name" => project.name = text(value, name)?,
                    "facts" => project.facts = reader.texts(value, name)?,
                    "were" => project.was = reader.were(value, name)?,
                    "steps" => project.steps = reader.steps(value, name)?,
                    "pace" => project.pace = text(value, name)?,
                    "next" => project.next = number(value, name)?,
                    "drafts" => project.drafts = reader.drafts(value, name)?,
                    unknown => reader.pass_over(unknown),
                }
                Ok(())
            })?;
        }
        Ok(project)
    }

    fn steps(&mut self, json: &Json, at: &str) -> Result<Vec<Step>> {
        let Json::List(values) = json else {
            return Err(damaged(at));
        };
        if values.len() > MOST_STEPS {
            return Err(FileError::TooLong);
        }
        let mut steps = Vec::new();
        let mut numbers = BTreeSet::new();
        for (place, value) in values.iter().enumerate() {
            let at = format!("{at}[{}]", place + 1);
            let step = self.understand(|reader| {
                let step = reader.step(value, &at)?;
                let is_new = numbers.insert(step.id);
                is_new.then_some(step).ok_or_else(|| damaged(&below(&at, "number")))
            })?;
            steps.extend(step);
        }
        Ok(steps)
    }

    fn step(&mut self, json: &Json, at: &str) -> Result<Step> {
        let (mut step, mut id, mut tool) = (Step::new("", ""), None, None);
        for (name, value) in object(json, at)? {
            let at = below(at, name);
            self.understand(|reader| {
                match &**name {
                    "number" => id = Some(StepId(number(value, &at)?)),
                    "tool" => tool = Some(text(value, &at)?),
                    "name" => step.name = text(value, &at)?,
                    "section" => step.section = text(value, &at)?,
                    "amount" => step.amount = text(value, &at)?,
                    "alongside" => step.alongside = text(value, &at)?,
                    "from_row" => step.from_row = text(value, &at)?,
                    "fields" => step.fields = reader.texts(value, &at)?,
                    "from" => step.from = reader.references(value, &at)?,
                    _ => reader.pass_over(&at),
                }
                Ok(())
            })?;
        }
        step.id = id.ok_or_else(|| damaged(&below(at, "number")))?;
        step.tool = tool.ok_or_else(|| damaged(&below(at, "tool")))?;
        Ok(step)
    }

    /// Drafts by their tools. A name that is none of a tool's could stand for another sheet of hers where it is kept.
    fn drafts(&mut self, json: &Json, at: &str) -> Result<BTreeMap<String, Draft>> {
        self.each(json, at, |reader, tool, value, at| {
            if is_draft(tool) {
                reader.draft(value, at)
            } else {
                Err(damaged(at))
            }
        })
    }

    fn draft(&mut self, json: &Json, at: &str) -> Result<Draft> {
        let mut draft = Draft::default();
        for (name, value) in object(json, at)? {
            let at = below(at, name);
            self.understand(|reader| {
                match &**name {
                    "fields" => draft.fields = reader.texts(value, &at)?,
                    "from" => draft.from = reader.references(value, &at)?,
                    _ => reader.pass_over(&at),
                }
                Ok(())
            })?;
        }
        Ok(draft)
    }

    fn texts(&mut self, json: &Json, at: &str) -> Result<Texts> {
        self.each(json, at, |reader, _, value, at| reader.typed(value, at))
    }

    fn were(&mut self, json: &Json, at: &str) -> Result<BTreeMap<String, Option<Typed>>> {
        self.each(json, at, |reader, _, value, at| match value {
            Json::Null => Ok(None),
            value => reader.typed(value, at).map(Some),
        })
    }

    fn typed(&mut self, json: &Json, at: &str) -> Result<Typed> {
        if let Json::Text(text) = json {
            return Ok(Typed::plain(text));
        }
        let (mut held, mut unit) = (None, None);
        for (name, value) in object(json, at)? {
            let at = below(at, name);
            match &**name {
                "text" => held = Some(text(value, &at)?),
                "unit" => unit = Some(text(value, &at)?),
                _ => self.pass_over(&at),
            }
        }
        let text = held.ok_or_else(|| damaged(&below(at, "text")))?;
        Ok(Typed { text, unit })
    }

    /// References by their fields. A later version may know more kinds of them.
    fn references(&mut self, json: &Json, at: &str) -> Result<BTreeMap<String, Reference>> {
        let read = self.each(json, at, |reader, _, value, at| {
            let reference = Reference::parse(&text(value, at)?);
            if reference.is_none() {
                reader.pass_over(at);
            }
            Ok(reference)
        })?;
        let known = |(field, reference): (String, Option<Reference>)| Some((field, reference?));
        Ok(read.into_iter().filter_map(known).collect())
    }

    /// Every name of an object with what is read of its value, which is told its place.
    fn each<T>(
        &mut self,
        json: &Json,
        at: &str,
        mut read: impl FnMut(&mut Self, &str, &Json, &str) -> Result<T>,
    ) -> Result<BTreeMap<String, T>> {
        let mut all = BTreeMap::new();
        for (name, value) in object(json, at)? {
            let at = below(at, name);
            let read = self.understand(|reader| read(reader, name, value, &at))?;
            all.extend(read.map(|read| (name.clone(), read)));
        }
        Ok(all)
    }

    /// What is read here; nothing where a later version wrote it in a way of its own, and then its place is noted.
    fn understand<T>(&mut self, read: impl FnOnce(&mut Self) -> Result<T>) -> Result<Option<T>> {
        match (read(self), self.made_by) {
            (Ok(read), _) => Ok(Some(read)),
            (Err(FileError::Damaged(place)), MadeBy::LaterVersion) => {
                // A step without a number that can be read is one thing that is not understood, and not two.
                if self.passed_over.last() != Some(&place) {
                    self.passed_over.push(place);
                }
                Ok(None)
            }
            (Err(why), _) => Err(why),
        }
    }

    fn pass_over(&mut self, path: &str) {
        self.passed_over.push(Place::name(path));
    }
}

/// The names of an object, each once.
fn object<'a>(json: &'a Json, at: &str) -> Result<&'a [(String, Json)]> {
    let Json::Object(pairs) = json else {
        return Err(damaged(at));
    };
    let mut names = BTreeSet::new();
    match pairs.iter().find(|(name, _)| !names.insert(name)) {
        Some((twice, _)) => Err(damaged(&below(at, twice))),
        None => Ok(pairs),
    }
}

fn text(json: &Json, at: &str) -> Result<String> {
    match json {
        Json::Text(text) => Ok(text.clone()),
        Json::Null | Json::Truth(_) | Json::Number(_) | Json::List(_) | Json::Object(_) => Err(damaged(at)),
    }
}

fn number(json: &Json, at: &str) -> Result<u32> {
    let whole = match json {
        Json::Number(number) => number.as_u64(),
        Json::Null | Json::Truth(_) | Json::Text(_) | Json::List(_) | Json::Object(_) => None,
    };
    whole
        .and_then(|number| number.try_into().ok())
        .filter(|number| *number <= HIGHEST_NUMBER)
        .ok_or_else(|| damaged(at))
}

fn below(at: &str, name: &str) -> String {
    if at.is_empty() {
        return name.to_owned();
    }
    [at, ".", name].concat()
}

fn damaged(at: &str) -> FileError {
    FileError::Damaged(Place::name(at))
}

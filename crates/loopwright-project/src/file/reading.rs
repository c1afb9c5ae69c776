//! The project of a JSON value, name by name. What is not as it is written is an error with its place, and what a later
//! version may have added is passed over and noted.

use super::json::{Json, MARKER};
use super::{FileError, HIGHEST_NUMBER, MOST_STEPS, Place, Reading, VERSION};
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
    check_kind(pairs)?;
    let mut reader = Reader::default();
    let project = reader.project(json)?;
    let passed_over = reader.passed_over;
    Ok(Reading { project, passed_over })
}

/// Whether it is a project of a version that can be read here. A later one may give any name another meaning, so nothing
/// else of it is looked at.
fn check_kind(pairs: &[(String, Json)]) -> Result<()> {
    let has = |marker: &str| pairs.iter().find(|(name, _)| name == marker);
    match (has(MARKER), has("loopwright")) {
        (Some((_, Json::Number(number))), _) => match number.as_u64() {
            Some(VERSION) => Ok(()),
            Some(newer) if newer > VERSION => Err(FileError::Newer),
            Some(_) | None => Err(FileError::NotOurs),
        },
        (None, Some(_)) => Err(FileError::CopyOfAll),
        (Some(_), _) | (None, None) => Err(FileError::NotOurs),
    }
}

#[derive(Default)]
struct Reader {
    passed_over: Vec<Place>,
}

impl Reader {
    fn project(&mut self, json: &Json) -> Result<Project> {
        let mut project = Project::default();
        for (name, value) in object(json, "")? {
            match &**name {
                MARKER => (),
                "name" => project.name = text(value, name)?,
                "facts" => project.facts = self.texts(value, name)?,
                "were" => project.was = self.were(value, name)?,
                "steps" => project.steps = self.steps(value, name)?,
                "next" => project.next = number(value, name)?,
                "pace" => project.pace = text(value, name)?,
                "drafts" => project.drafts = self.drafts(value, name)?,
                unknown => self.pass_over(unknown),
            }
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
            let step = self.step(value, &at)?;
            if !numbers.insert(step.id) {
                return Err(damaged(&below(&at, "number")));
            }
            steps.push(step);
        }
        Ok(steps)
    }

    fn step(&mut self, json: &Json, at: &str) -> Result<Step> {
        let (mut step, mut id, mut tool) = (Step::new("", ""), None, None);
        for (name, value) in object(json, at)? {
            let at = below(at, name);
            match &**name {
                "number" => id = Some(StepId(number(value, &at)?)),
                "tool" => tool = Some(text(value, &at)?),
                "name" => step.name = text(value, &at)?,
                "section" => step.section = text(value, &at)?,
                "amount" => step.amount = text(value, &at)?,
                "alongside" => step.alongside = text(value, &at)?,
                "from_row" => step.from_row = text(value, &at)?,
                "fields" => step.fields = self.texts(value, &at)?,
                "from" => step.from = self.references(value, &at)?,
                _ => self.pass_over(&at),
            }
        }
        step.id = id.ok_or_else(|| damaged(&below(at, "number")))?;
        step.tool = tool.ok_or_else(|| damaged(&below(at, "tool")))?;
        Ok(step)
    }

    /// Drafts by their tools. A name that is none of a tool's could stand for another sheet of hers where it is kept.
    fn drafts(&mut self, json: &Json, at: &str) -> Result<BTreeMap<String, Draft>> {
        let draft = |(tool, value): &(String, Json)| {
            let at = below(at, tool);
            if !is_draft(tool) {
                return Err(damaged(&at));
            }
            Ok((tool.clone(), self.draft(value, &at)?))
        };
        object(json, at)?.iter().map(draft).collect()
    }

    fn draft(&mut self, json: &Json, at: &str) -> Result<Draft> {
        let mut draft = Draft::default();
        for (name, value) in object(json, at)? {
            let at = below(at, name);
            match &**name {
                "fields" => draft.fields = self.texts(value, &at)?,
                "from" => draft.from = self.references(value, &at)?,
                _ => self.pass_over(&at),
            }
        }
        Ok(draft)
    }

    fn texts(&mut self, json: &Json, at: &str) -> Result<Texts> {
        let read = |(name, value): &(String, Json)| Ok((name.clone(), self.typed(value, &below(at, name))?));
        object(json, at)?.iter().map(read).collect()
    }

    fn were(&mut self, json: &Json, at: &str) -> Result<BTreeMap<String, Option<Typed>>> {
        let read = |(name, value): &(String, Json)| {
            let was = match value {
                Json::Null => None,
                value => Some(self.typed(value, &below(at, name))?),
            };
            Ok((name.clone(), was))
        };
        object(json, at)?.iter().map(read).collect()
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
        let mut references = BTreeMap::new();
        for (field, value) in object(json, at)? {
            let at = below(at, field);
            match Reference::parse(&text(value, &at)?) {
                Some(reference) => drop(references.insert(field.clone(), reference)),
                None => self.pass_over(&at),
            }
        }
        Ok(references)
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

//! The JSON of a project. What is empty is not written, but for the project's name.

use super::VERSION;
use super::json::{Json, MARKER};
use crate::project::{Draft, Project, Step};
use crate::reference::Reference;
use crate::text::{Texts, Typed};
use std::collections::BTreeMap;

/// The object of a project.
pub fn project(project: &Project) -> Json {
    let mut pairs = vec![pair(MARKER, number(VERSION)), pair("name", text(&project.name))];
    put(&mut pairs, "facts", texts(&project.facts));
    let were = |(key, was): (&String, &Option<Typed>)| (key.clone(), was.as_ref().map_or(Json::Null, typed));
    put(&mut pairs, "were", project.was.iter().map(were).collect());
    if !project.steps.is_empty() {
        pairs.push(pair("steps", Json::List(project.steps.iter().map(step).collect())));
    }
    if project.next != 0 {
        pairs.push(pair("next", number(project.next.into())));
    }
    if !project.pace.is_empty() {
        pairs.push(pair("pace", text(&project.pace)));
    }
    let drafts = project.drafts.iter();
    let drafts = drafts.map(|(tool, draft)| (tool.clone(), Json::Object(draft_pairs(draft))));
    put(&mut pairs, "drafts", drafts.collect());
    Json::Object(pairs)
}

fn step(step: &Step) -> Json {
    let mut pairs = vec![pair("number", number(step.id.0.into())), pair("tool", text(&step.tool))];
    for (name, held) in [
        ("name", &step.name),
        ("section", &step.section),
        ("amount", &step.amount),
        ("alongside", &step.alongside),
        ("from_row", &step.from_row),
    ] {
        if !held.is_empty() {
            pairs.push(pair(name, text(held)));
        }
    }
    put(&mut pairs, "fields", texts(&step.fields));
    put(&mut pairs, "from", references(&step.from));
    Json::Object(pairs)
}

fn draft_pairs(draft: &Draft) -> Vec<(String, Json)> {
    let mut pairs = Vec::new();
    put(&mut pairs, "fields", texts(&draft.fields));
    put(&mut pairs, "from", references(&draft.from));
    pairs
}

fn texts(texts: &Texts) -> Vec<(String, Json)> {
    texts.iter().map(|(field, held)| (field.clone(), typed(held))).collect()
}

fn typed(held: &Typed) -> Json {
    match &held.unit {
        None => text(&held.text),
        Some(unit) => Json::Object(vec![pair("text", text(&held.text)), pair("unit", text(unit))]),
    }
}

fn references(from: &BTreeMap<String, Reference>) -> Vec<(String, Json)> {
    let written = |(field, reference): (&String, &Reference)| (field.clone(), text(&reference.to_string()));
    from.iter().map(written).collect()
}

fn put(pairs: &mut Vec<(String, Json)>, name: &str, object: Vec<(String, Json)>) {
    if !object.is_empty() {
        pairs.push(pair(name, Json::Object(object)));
    }
}

fn pair(name: &str, value: Json) -> (String, Json) {
    (name.to_owned(), value)
}

fn text(text: &str) -> Json {
    Json::Text(text.to_owned())
}

fn number(number: u64) -> Json {
    Json::Number(number.into())
}

//! With one thing wrong there is one sentence: in each named state that is answered one field after the other is spoiled, and
//! no more than one problem may be told for it; what the field itself refuses is told exactly once.

use super::*;
use crate::form::{Kind, List, Settings};
use crate::route;
use loopwright::problem::{self, Problem};
use loopwright::units::parse::Unreadable;

/// Texts that no field of a kind takes.
fn spoilt(field: &Field) -> Vec<Typed> {
    match field.kind {
        Kind::Count(bounds) => {
            let beyond = bounds.most.checked_add(1).map(|most| most.to_string());
            let texts = ["seven".to_owned(), "1/0".to_owned()].into_iter().chain(beyond);
            texts.map(Typed::plain).chain([Typed::with_unit("7", "cm")]).collect()
        }
        Kind::Length(..) => vec![
            Typed::plain("wide"),
            Typed::plain("9999999 m"),
            Typed::with_unit("7", "inchs"),
        ],
        Kind::Mass(..) => vec![
            Typed::plain("heavy"),
            Typed::plain("9999999 kg"),
            Typed::with_unit("7", "cm"),
        ],
        Kind::Gauge | Kind::Gauges => vec![
            Typed::plain("tight"),
            Typed::plain("99999"),
            Typed::with_unit("20", "18 cm"),
        ],
        Kind::List(List { lengths: true, .. }) => vec![Typed::plain("86, ninety, 94"), Typed::with_unit("86", "stone")],
        Kind::List(_) => vec![Typed::plain("86, ninety, 94")],
        Kind::Choice(_) => vec![Typed::plain("nosuch")],
        Kind::Text | Kind::Pattern | Kind::Whole => Vec::new(),
    }
}

/// Whether a sentence stands beside the field for this; of what is still empty none does.
fn is_told(fields: &Fields, problem: &&Problem) -> bool {
    let is_choice = fields
        .row(problem.field)
        .is_some_and(|row| matches!(row.kind, Kind::Choice(_)));
    match problem.kind {
        problem::Kind::Unreadable(Unreadable::Empty) => false,
        problem::Kind::Missing => !is_choice,
        _ => true,
    }
}

fn told(tool: &Entry, fields: &Fields) -> Vec<String> {
    let problems = (tool.problems)(fields);
    let told = problems.iter().filter(|problem| is_told(fields, problem));
    told.map(|problem| format!("{}: {:?}", problem.field, problem.kind))
        .collect()
}

#[test]
fn with_one_thing_wrong_there_is_one_sentence() {
    let mut wrong = Vec::new();
    for tool in TOOLS {
        for state in tool.states {
            let typed = route::to_fields(&route::parse_query(state.link));
            let with = |typed: store::Fields| Fields::new(tool.fields, typed, Settings::default());
            let fields = with(typed.clone());
            if !(tool.problems)(&fields).is_empty() {
                continue;
            }
            for key in typed.keys() {
                let Some((seen, field)) = fields.stored_as(key).filter(|(seen, field)| (field.asked)(seen)) else {
                    continue;
                };
                drop(seen);
                for spoilt in spoilt(field) {
                    let mut typed = typed.clone();
                    typed.insert(key.clone(), spoilt.clone());
                    let fields = with(typed);
                    let told = told(tool, &fields);
                    if told.len() != 1 {
                        wrong.push(format!("{} {}: {key} = {spoilt:?}: {told:?}", tool.id, state.name));
                    }
                }
            }
        }
    }
    assert!(wrong.is_empty(), "{} of them:\n{}", wrong.len(), wrong.join("\n"));
}

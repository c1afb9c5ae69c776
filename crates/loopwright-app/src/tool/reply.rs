//! What a tool says to the page around it: the question as it stands, and the answer as data, or what is wrong with it.
//! Nothing is drawn for it, and nothing is read from what is drawn.

use super::{Tool, ask};
use crate::desk::Desk;
use crate::form::{Fields, SETTINGS, Settings};
use crate::part::Summary;
use crate::route::{self, Pairs};
use crate::store;
use crate::words::page as words;
use loopwright::problem::Problem;

/// What a tool says to some fields.
#[derive(Clone, Debug, PartialEq)]
pub struct Reply {
    /// The tool's id.
    pub tool: &'static str,
    /// The fields, as a link has them.
    pub question: Pairs,
    /// The answer, or each field that has something wrong, with the sentence that says what.
    pub answer: Result<Summary, Vec<(String, String)>>,
}

/// What a tool says to the fields as they stand on the desk, with these in the place of some of them.
pub fn reply<T: Tool>(desk: &Desk, instead: &store::Fields) -> Reply {
    let mut typed = desk.fields(T::ID);
    typed.extend(instead.clone());
    let fields = Fields::new(T::FIELDS, typed.clone(), Settings::new(desk.fields(SETTINGS)));
    // A name that is asked by mistake is said, so that nobody takes the answer to something else for hers.
    let unknown: Vec<_> = fields
        .unknown()
        .into_iter()
        .filter(|name| instead.contains_key(*name))
        .collect();
    let sentence = |name: &str| (name.to_owned(), words::NO_SUCH_FIELD.to_owned());
    Reply {
        tool: T::ID,
        question: route::to_pairs(&typed),
        answer: match unknown[..] {
            [] => answer::<T>(&fields),
            _ => Err(unknown.into_iter().map(sentence).collect()),
        },
    }
}

fn answer<T: Tool>(fields: &Fields) -> Result<Summary, Vec<(String, String)>> {
    let question = ask::read::<T>(fields).map_err(|problems| said::<T>(fields, None, &problems))?;
    match T::answer(&question) {
        Ok(answer) => Ok(T::summary(fields, &question, &answer)),
        Err(problems) => Err(said::<T>(fields, Some(&question), &problems)),
    }
}

fn said<T: Tool>(fields: &Fields, question: Option<&T::Question>, problems: &[Problem]) -> Vec<(String, String)> {
    let sentence = |problem: &Problem| (problem.field.stored(), ask::sentence::<T>(fields, question, problem));
    problems.iter().map(sentence).collect()
}

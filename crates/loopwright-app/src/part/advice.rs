//! What to type instead, beside the field: a sentence, and the nearest numbers that would be right as buttons.

use super::plain::{button, element, element_with, text, text_element};
use super::{Sheet, View};
use crate::form::Field;
use crate::store::Typed;
use crate::words::{doubt, intl, page};
use loopwright::problem::{FieldPath, Kind, Problem};
use loopwright::units::meant::Meant;
use loopwright::units::parse::Unreadable;
use yew::prelude::*;

/// What to type instead.
#[derive(Clone, Debug, PartialEq)]
pub struct Advice {
    /// One sentence.
    pub sentence: AttrValue,
    /// Numbers that would be right.
    pub nearest: Vec<u32>,
    /// The ways in which the text may be meant.
    pub ways: Vec<Meant>,
}

/// The advice for one field, if something is wrong with it. A field that is still empty needs none.
pub fn advice(
    problems: &[Problem],
    field: impl Into<FieldPath>,
    sentence: &dyn Fn(&Problem) -> String,
) -> Option<Advice> {
    let field = field.into();
    let problem = problems.iter().find(|problem| problem.field == field)?;
    if problem.kind == Kind::Unreadable(Unreadable::Empty) {
        return None;
    }
    Some(Advice {
        sentence: sentence(problem).into(),
        nearest: problem.kind.nearest(),
        ways: ways(problem.kind),
    })
}

fn ways(kind: Kind) -> Vec<Meant> {
    let Kind::Unreadable(Unreadable::Ambiguous(readings)) = kind else {
        return Vec::new();
    };
    readings.ways().collect()
}

/// Where the answer will be; or, when something that was typed is wrong, where to look: first at what can be seen.
pub fn wait(view: &View, problems: &[Problem], words: &'static str) -> Html {
    let fold = |problem: &Problem| view.fields.row(problem.field).and_then(Field::fold);
    let mut sentence = words.to_owned();
    for problem in problems {
        match (problem.kind, fold(problem)) {
            (Kind::Unreadable(Unreadable::Empty), _) => {}
            (_, Some(title)) => sentence = page::under_fold(title),
            (Kind::Missing, None) => {}
            (_, None) => return text_element("p", "quiet", page::MEND),
        }
    }
    text_element("p", "quiet", sentence)
}

/// The id of the advice below a field.
pub(super) fn advice_id(element: &str) -> String {
    [element, "-problem"].concat()
}

/// The advice as it stands below its field.
pub(super) fn advised(sheet: &Sheet, field: FieldPath, advice: Advice) -> Html {
    let is_locked = sheet.locks(field);
    let field = field.stored();
    let Advice {
        sentence,
        nearest,
        ways,
    } = advice;
    let mut content = vec![element("p", "", vec![text(sentence)])];
    let nearest = nearest
        .into_iter()
        .map(|value| (intl::number(value), value.to_string()));
    let ways = ways.into_iter().map(|way| (doubt::way(way), way.text()));
    for (words, typed) in nearest.chain(ways).filter(|_| !is_locked) {
        let label = [page::USE, " ", &words].concat();
        let (sheet, field) = (sheet.clone(), field.clone());
        // The unit that stands beside the field, such as a gauge's span, stays.
        let put = move |_| {
            let unit = sheet.desk.text(sheet.id, &field).and_then(|typed| typed.unit);
            let text = typed.clone();
            sheet.desk.write(sheet.id, &field, Some(Typed { text, unit }));
        };
        content.push(button(label, Callback::from(put)));
    }
    let id = advice_id(&sheet.element(&field));
    element_with("div", &[("class", "problem"), ("id", &id)], content)
}

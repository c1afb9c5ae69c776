//! The page of a tool, from its fields to its answer: read once, answered once, drawn once.

use super::Tool;
use crate::desk::Desk;
use crate::form::{Fields, SETTINGS, Settings};
use crate::part::{Form, Sheet, View, tool_page};
use crate::words::Title;
use loopwright::problem::Problem;
use yew::prelude::*;

/// Draws a tool as it stands on the desk.
pub fn page<T: Tool>(desk: &Desk, title: Title) -> Html {
    let sheet = Sheet::new(desk, T::ID);
    let settings = Settings::new(desk.fields(SETTINGS));
    let view = View {
        fields: Fields::new(T::FIELDS, desk.fields(T::ID), settings),
        sheet,
    };
    let question = T::read(&view.fields);
    let outcome = match &question {
        Ok(question) => T::answer(question).map(|answer| T::show(&view, question, &answer)),
        Err(problems) => Err(problems.clone()),
    };
    let (answers, problems) = match outcome {
        Ok(answers) => (answers, Vec::new()),
        Err(problems) => (T::wait(&view, &problems), problems),
    };
    let sentence = |problem: &Problem| T::problem(&view, question.as_ref().ok(), problem);
    let form = Form {
        view: &view,
        problems: &problems,
        sentence: &sentence,
    };
    tool_page(&view.sheet, title, T::form(&form), answers)
}

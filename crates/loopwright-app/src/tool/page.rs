//! The page of a tool, from its fields to its answer: read once, answered once, drawn once.
//!
//! It is a component, so that it is drawn when something on the desk has changed and not when the desk says that it is
//! kept; and it remembers the last answer, which stays as long as what is typed next has none.

use super::{Entry, Tool};
use crate::desk::Desk;
use crate::form::{Fields, SETTINGS, Settings};
use crate::part::{Answered, Form, Frame, Memory, Sheet, View, tool_page};
use loopwright::problem::Problem;
use std::rc::Rc;
use yew::prelude::*;

/// What a page is drawn from.
#[derive(Properties, PartialEq)]
pub struct Props {
    /// The tool.
    pub tool: Id,
    /// The desk as it lies.
    pub desk: Desk,
    /// How it is shown inside another page, if it is.
    pub frame: Option<Rc<Frame>>,
}

/// A row of the list of tools; two are equal if they are the same tool.
#[derive(Clone, Copy)]
pub struct Id(pub &'static Entry);

impl PartialEq for Id {
    fn eq(&self, other: &Self) -> bool {
        self.0.id == other.0.id
    }
}

/// The page of a tool as it stands on the desk.
#[component]
pub fn Page(props: &Props) -> Html {
    let memory = use_mut_ref(Memory::default);
    (props.tool.0.draw)(props, &mut memory.borrow_mut())
}

/// Draws a tool as it stands on the desk.
pub fn draw<T: Tool>(props: &Props, memory: &mut Memory) -> Html {
    let Props { tool, desk, frame } = props;
    let view = View {
        fields: Fields::new(T::FIELDS, desk.fields(T::ID), Settings::new(desk.fields(SETTINGS))),
        sheet: Sheet::new(desk, T::ID, frame.clone()),
    };
    let (answers, question, problems) = match answered::<T>(&view) {
        Ok(answered) => (memory.fresh(answered), None, Vec::new()),
        Err((question, problems)) => (memory.stale(&view, || T::wait(&view, &problems)), question, problems),
    };
    let sentence = |problem: &Problem| T::problem(&view, question.as_ref(), problem);
    let form = Form {
        view: &view,
        problems: &problems,
        sentence: &sentence,
    };
    tool_page(&view.sheet, tool.0.title, T::form(&form), answers)
}

/// The answer to what stands in the fields; or what is wrong, with the question where all of it could be read.
fn answered<T: Tool>(view: &View) -> Result<Answered, (Option<T::Question>, Vec<Problem>)> {
    let question = T::read(&view.fields).map_err(|problems| (None, problems))?;
    match T::answer(&question) {
        Ok(answer) => Ok(Answered::new(view.clone(), move |view| {
            T::show(view, &question, &answer)
        })),
        Err(problems) => Err((Some(question), problems)),
    }
}

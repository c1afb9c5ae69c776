//! The page of a tool, from its fields to its answer: read once, answered once, drawn once.
//!
//! It is a component, so that it is drawn when something on the desk has changed and not when the desk says that it is
//! kept; and it remembers the last answer, which stays as long as what is typed next has none.
//!
//! A browser compiles WebAssembly function by function, each when it is first called, so that the key that brings about the
//! first answer would wait for all of them (four times as long as any later key). An example is answered unseen before.

use super::next::{self, Gifts};
use super::{Entry, FILLED, Tool, ask, keep, knit, toolbox};
use crate::desk::Desk;
use crate::form::{Fields, SETTINGS, Settings};
use crate::part::plain::list;
use crate::part::{Answered, Form, Frame, Memory, Sheet, View, tool_page};
use crate::route;
use gloo_timers::callback::Timeout;
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
    let Id(tool) = props.tool;
    let desk = props.desk.clone();
    use_effect_with((), move |()| {
        let timeout = Timeout::new(PAGE_IS_SEEN_MS, move || (tool.rehearse)(&desk));
        move || drop(timeout)
    });
    (tool.draw)(props, &mut memory.borrow_mut())
}

/// By then the page itself is drawn, and no key is pressed yet.
const PAGE_IS_SEEN_MS: u32 = 100;

/// Reads, answers and draws the named state that is filled in, and shows none of it.
pub fn rehearse<T: Tool>(desk: &Desk) {
    let Some(state) = T::STATES.iter().find(|state| state.name == FILLED) else {
        return;
    };
    let typed = route::to_fields(&route::parse_query(state.link));
    let view = View {
        fields: Fields::new(T::FIELDS, typed, Settings::new(desk.fields(SETTINGS))),
        sheet: Sheet::new(desk, T::ID, None),
    };
    if let Ok(answered) = answered::<T>(&view, "") {
        drop(answered.draw());
    }
}

/// Draws a tool as it stands on the desk.
pub fn draw<T: Tool>(props: &Props, memory: &mut Memory) -> Html {
    let Props { tool, desk, frame } = props;
    let view = View {
        fields: toolbox::fields_on(desk, tool.0, frame.as_deref()),
        sheet: Sheet::new(desk, T::ID, frame.clone()),
    };
    let (answers, question, problems) = match answered::<T>(&view, tool.0.title.name) {
        Ok(answered) => (memory.fresh(answered), None, Vec::new()),
        Err((question, problems)) => (memory.stale(&view, || T::wait(&view, &problems)), question, problems),
    };
    let sentence = |problem: &Problem| ask::sentence::<T>(&view.fields, question.as_ref(), problem);
    let form = Form {
        view: &view,
        problems: &problems,
        sentence: &sentence,
    };
    tool_page(&view, tool.0.title, T::form(&form), answers)
}

/// The answer to what stands in the fields; or what is wrong, with the question where all of it could be read.
fn answered<T: Tool>(view: &View, name: &'static str) -> Result<Answered, (Option<T::Question>, Vec<Problem>)> {
    let question = ask::read::<T>(&view.fields).map_err(|problems| (None, problems))?;
    match T::answer(&question) {
        Ok(answer) => Ok(Answered::new(view.clone(), move |view| {
            let gifts = given::<T>(&question, &answer);
            list(vec![
                T::show(view, &question, &answer),
                knit::knit_offer(view, T::plan(&view.fields, &question, &answer).is_some()),
                if T::IS_HERS_ALONE {
                    Html::default()
                } else {
                    keep::keep_offer(view, name)
                },
                next::next(view, &gifts),
            ])
        })),
        Err(problems) => Err((Some(question), problems)),
    }
}

/// What an answer hands on, as far as it can be typed.
pub fn given<T: Tool>(question: &T::Question, answer: &T::Answer) -> Gifts {
    let gifts = T::gifts(question, answer).into_iter();
    gifts.filter_map(|(gift, typed)| Some((gift, typed?))).collect()
}

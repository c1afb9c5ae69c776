//! The answer of a page, drawn once and kept until there is another one.
//!
//! Half a number is a number: 7 on the way to 72 may have no answer, or a wrong one. The last right answer stays while the
//! next one is typed, dimmed, and says which numbers it answers. It is a component, so that it is drawn anew only when it
//! is another answer.

use super::View;
use super::plain::{element, text_element};
use crate::form::{Kind, kept};
use crate::store::Fields;
use crate::words::page as words;
use std::rc::Rc;
use yew::prelude::*;

/// An answer, with the fields that it answers.
pub struct Answered {
    view: View,
    /// What holds for all tools, which an answer offers to keep or says to be kept.
    known: Fields,
    show: Box<dyn Fn(&View) -> Html>,
}

impl Answered {
    /// The answer to the fields of this view, which `show` draws.
    pub fn new(view: View, show: impl Fn(&View) -> Html + 'static) -> Self {
        let known = view.sheet.desk.fields(kept::SHEET);
        Self {
            view,
            known,
            show: Box::new(show),
        }
    }

    /// What is drawn.
    pub fn draw(&self) -> Html {
        (self.show)(&self.view)
    }

    fn is_same(&self, other: &Self) -> bool {
        self.view.fields == other.view.fields && self.known == other.known
    }

    /// The texts it answers, of those fields that hold other ones by now; nothing where something else was chosen, which
    /// makes it another question.
    fn texts_unlike(&self, now: &View) -> Option<Vec<(&'static str, String)>> {
        let unlike = self.view.fields.unlike(&now.fields);
        let is_chosen = unlike.iter().any(|(_, field)| matches!(field.kind, Kind::Choice(_)));
        let texts = unlike
            .iter()
            .filter_map(|(fields, field)| Some((field.label_in(fields), fields.standing(field)?)));
        (!is_chosen).then(|| texts.collect())
    }
}

/// The last answer of a page.
#[derive(Default)]
pub struct Memory {
    last: Option<Rc<Answered>>,
    laid: u32,
}

impl Memory {
    /// Takes in the answer to what stands in the fields now, and draws it.
    pub fn fresh(&mut self, answered: Answered) -> Html {
        self.laid = answered.view.sheet.desk.laid();
        let is_same = self.last.as_ref().is_some_and(|last| last.is_same(&answered));
        if !is_same {
            self.last = Some(Rc::new(answered));
        }
        self.draw(None)
    }

    /// Where there is no answer to what stands in the fields now: the last one, unless the question is another altogether
    /// since then, or else what stands there until there is one.
    pub fn stale(&mut self, now: &View, wait: impl FnOnce() -> Html) -> Html {
        match self.texts(now) {
            Some(texts) => self.draw(Some(words::still_for(&texts).into())),
            None => {
                self.last = None;
                element("div", "answers", vec![text_element("p", "since", ""), wait()])
            }
        }
    }

    /// The texts that the last answer is for, if it still belongs to the question.
    fn texts(&self, now: &View) -> Option<Vec<(&'static str, String)>> {
        let is_laid_over = self.laid != now.sheet.desk.laid();
        let last = self.last.as_ref().filter(|_| !is_laid_over && now.fields.is_begun())?;
        last.texts_unlike(now)
    }

    fn draw(&self, since: Option<AttrValue>) -> Html {
        let Some(answered) = self.last.clone() else {
            return Html::default();
        };
        let class = if since.is_some() { "answers stale" } else { "answers" };
        let mark = text_element("p", "since", since.unwrap_or_default());
        element("div", class, vec![mark, html! { <Drawn {answered} /> }])
    }
}

#[derive(Properties)]
struct DrawnProps {
    answered: Rc<Answered>,
}

impl PartialEq for DrawnProps {
    fn eq(&self, other: &Self) -> bool {
        Rc::ptr_eq(&self.answered, &other.answered)
    }
}

/// Draws an answer, once.
#[component]
fn Drawn(props: &DrawnProps) -> Html {
    props.answered.draw()
}

//! The tools, each with its view, its words and its named states, in the order of the list.

use crate::desk::Desk;
use crate::form::kept::Offer;
use crate::form::{Field, Fields};
use crate::part::{Form, Frame, Memory, Summary, View};
use crate::store::{self, Typed};
use crate::words::{self, Title};
use loopwright::follow::Plan;
use loopwright::problem::Problem;
use loopwright::tools::Group;
use loopwright::units::Length;
use loopwright_project::Answered;
#[cfg(test)]
use next::Gifts;
use std::fmt::Debug;
use std::rc::Rc;
use yew::{Html, html};

mod ask;
mod keep;
mod knit;
mod link;
mod next;
mod page;
mod reply;
mod toolbox;

pub use next::Gift;
pub use reply::Reply;
pub use toolbox::Tools;

/// A tool: its table of fields, and four functions from what was typed to what is shown. What it asks and how it answers
/// can be run without drawing anything.
pub trait Tool {
    /// Its id: the name of its module, its sheet and its address.
    const ID: &'static str;
    /// Its fields, those of a repeated group among them.
    const FIELDS: &'static [Field];
    /// Its named states.
    const STATES: &'static [State];
    /// Whether what stands in it is hers alone, such as the text of a pattern: then it becomes no step of a project, and is put
    /// into no other page.
    const IS_HERS_ALONE: bool = false;
    /// The question of the maths.
    type Question: Debug + 'static;
    /// The answer of the maths.
    type Answer: 'static;

    /// From the fields as typed to the question.
    ///
    /// # Errors
    /// What cannot be read.
    fn read(fields: &Fields) -> Result<Self::Question, Vec<Problem>>;

    /// The answer of the maths.
    ///
    /// # Errors
    /// What is wrong with the question.
    fn answer(question: &Self::Question) -> Result<Self::Answer, Vec<Problem>>;

    /// What of an answer can be kept or carried on; nothing where none of it is asked for by another tool.
    fn offers(_answer: &Self::Answer) -> Vec<Offer> {
        Vec::new()
    }

    /// What of an answer is handed to the tools that follow from it, as it would be typed there.
    fn gifts(_question: &Self::Question, _answer: &Self::Answer) -> Vec<(Gift, Option<Typed>)> {
        Vec::new()
    }

    /// The answer row by row, where it has rows, with what happens in them told in words, for the hand that is set. What
    /// is chosen beside the answer, such as one of several ways to write it, stands in the fields.
    fn plan(_fields: &Fields, _question: &Self::Question, _answer: &Self::Answer) -> Option<Plan<String>> {
        None
    }

    /// What of an answer is bought, of the one tool that counts yarn.
    fn bought(_answer: &Self::Answer) -> Option<Bought> {
        None
    }

    /// The cords that an answer asks for, each with what it is called.
    fn cords(_fields: &Fields, _question: &Self::Question, _answer: &Self::Answer) -> Vec<(Length, String)> {
        Vec::new()
    }

    /// Draws the answer.
    fn show(view: &View, question: &Self::Question, answer: &Self::Answer) -> Html;

    /// The answer in short, as data: what its headline says, and its figures.
    fn summary(fields: &Fields, question: &Self::Question, answer: &Self::Answer) -> Summary;

    /// The answer in a line, as it stands in the list of a project's steps.
    fn in_a_list(summary: &Summary) -> String {
        summary.in_a_list()
    }

    /// Draws the question; without a sentence around its fields it is the table from top to bottom.
    fn form(form: &Form) -> Html {
        form.columns()
    }

    /// What stands where the answer will be, as long as there is none.
    fn wait(view: &View, problems: &[Problem]) -> Html;

    /// What to type instead, for a problem; the question is there if all of it could be read.
    fn problem(_fields: &Fields, _question: Option<&Self::Question>, problem: &Problem) -> String {
        words::problem::sentence(&problem.kind)
    }

    /// Its small picture on the first page.
    fn sign() -> Html;
}

/// Yarn that an answer counts.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Bought {
    /// What is needed.
    pub need: Length,
    /// The balls to buy.
    pub balls: u32,
}

/// One named state of a tool, for the gallery and the browser tests.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct State {
    /// Its name.
    pub name: &'static str,
    /// The fields that bring it about, as a link has them: `length=40&gauge=28`.
    pub link: &'static str,
}

impl State {
    /// The state of this name that the fields of a link bring about.
    pub const fn new(name: &'static str, link: &'static str) -> Self {
        Self { name, link }
    }
}

/// The name of the state that every tool has: filled in as a knitter would.
const FILLED: &str = "filled";

/// A tool as the app knows it: the one table of function pointers through which all of them are reached.
#[derive(Clone, Copy)]
pub struct Entry {
    /// Its id: the name of its module, its sheet and its address.
    pub id: &'static str,
    /// What it is called and asks.
    pub title: Title,
    /// Where it stands in the menu.
    pub group: Group,
    /// Its named states.
    pub states: &'static [State],
    /// Its small picture on the first page.
    pub sign: fn() -> Html,
    /// Whether what stands in it is hers alone.
    pub is_hers_alone: bool,
    /// Its fields.
    pub fields: &'static [Field],
    /// What it says to some fields, as data.
    pub reply: fn(&Desk, &store::Fields) -> Reply,
    /// What it answers to some fields, for the sheet of a project.
    pub outcome: fn(&Fields) -> Answered,
    /// The answer to some fields row by row; nothing where it has no rows, or there is none.
    pub plan: fn(&Fields) -> Option<Plan<String>>,
    rehearse: fn(&Desk),
    draw: fn(&page::Props, &mut Memory) -> Html,
    #[cfg(test)]
    check: fn(),
    #[cfg(test)]
    given: fn(&Fields) -> Option<Gifts>,
    #[cfg(test)]
    problems: fn(&Fields) -> Vec<Problem>,
}

impl Entry {
    /// The row of a tool. Where it stands in the menu is for the list of tools to say.
    pub const fn of<T: Tool>(title: Title) -> Self {
        Self {
            id: T::ID,
            title,
            group: Group::Before,
            states: T::STATES,
            sign: T::sign,
            is_hers_alone: T::IS_HERS_ALONE,
            reply: reply::reply::<T>,
            outcome: toolbox::outcome::<T>,
            plan: toolbox::plan::<T>,
            rehearse: page::rehearse::<T>,
            fields: T::FIELDS,
            draw: page::draw::<T>,
            #[cfg(test)]
            check: tests::check::<T>,
            #[cfg(test)]
            given: tests::given::<T>,
            #[cfg(test)]
            problems: tests::problems::<T>,
        }
    }

    const fn standing_in(self, group: Group) -> Self {
        Self { group, ..self }
    }

    /// Draws the tool as it stands on the desk.
    pub fn page(&'static self, desk: &Desk) -> Html {
        self.shown(desk, None)
    }

    /// All that stands in its fields on the desk, as a link to it carries: whoever opens that has another project.
    pub fn filled(&'static self, desk: &Desk) -> store::Fields {
        toolbox::fields_on(desk, self, None).linked()
    }

    /// Its answer on the desk row by row; nothing where there is none, or it has no rows.
    pub fn plan_on(&'static self, desk: &Desk) -> Option<Plan<String>> {
        (self.plan)(&toolbox::fields_on(desk, self, None))
    }

    /// Lays a link on its sheet, as it was sent. What one of its own answers handed on lies there already.
    pub fn open_link(&'static self, desk: &Desk, link: store::Fields) {
        if desk.fields(self.id) != link {
            desk.open_link(self.id, &toolbox::as_sent(desk, self, link));
        }
    }

    /// Draws the tool inside another page.
    pub fn framed(&'static self, desk: &Desk, frame: Rc<Frame>) -> Html {
        self.shown(desk, Some(frame))
    }

    fn shown(&'static self, desk: &Desk, frame: Option<Rc<Frame>>) -> Html {
        let key = match desk.step() {
            Some(step) => format!("{} {step}", self.id),
            None => self.id.to_owned(),
        };
        html! { <page::Page {key} tool={page::Id(self)} desk={desk.clone()} {frame} /> }
    }
}

/// The list of tools, expanded.
macro_rules! entries {
    ($($tool:ident in $group:ident,)*) => {
        $(mod $tool;)*
        /// Every tool, in the order of the list.
        pub static TOOLS: &[Entry] = &[$($tool::ENTRY.standing_in(Group::$group)),*];
    };
}
loopwright::each_tool!(entries);

/// The tool with this id.
pub fn find(id: &str) -> Option<&'static Entry> {
    TOOLS.iter().find(|tool| tool.id == id)
}

#[cfg(test)]
mod followed;

#[cfg(test)]
mod knitted;

#[cfg(test)]
mod one_wrong;

#[cfg(test)]
pub mod tests;

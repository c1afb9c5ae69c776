//! The tools, each with its view, its words and its named states, in the order of the list.

use crate::desk::Desk;
use crate::form::{Field, Fields};
use crate::kept::Offer;
use crate::part::{Form, View};
use crate::words::{self, Title};
use loopwright::problem::Problem;
use loopwright::tools::Group;
use yew::Html;

/// A tool: its table of fields, and four functions from what was typed to what is shown. What it asks and how it answers
/// can be run without drawing anything.
pub trait Tool {
    /// Its id: the name of its module, its sheet and its address.
    const ID: &'static str;
    /// Its fields, those of a repeated group among them.
    const FIELDS: &'static [Field];
    /// Its named states.
    const STATES: &'static [State];
    /// The question of the maths.
    type Question;
    /// The answer of the maths.
    type Answer;

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

    /// What of an answer can be kept or carried on.
    fn offers(answer: &Self::Answer) -> Vec<Offer>;

    /// Draws the answer.
    fn show(view: &View, question: &Self::Question, answer: &Self::Answer) -> Html;

    /// Draws the question; without a sentence around its fields it is the table from top to bottom.
    fn form(form: &Form) -> Html {
        form.columns()
    }

    /// What stands where the answer will be, as long as there is none.
    fn wait(view: &View, problems: &[Problem]) -> Html;

    /// What to type instead, for a problem; the question is there if all of it could be read.
    fn problem(_view: &View, _question: Option<&Self::Question>, problem: &Problem) -> String {
        words::problem::sentence(&problem.kind)
    }

    /// Its small picture on the first page.
    fn sign() -> Html;
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

/// A tool as the app knows it: the one table of function pointers through which all of them are reached.
#[derive(Clone, Copy)]
pub struct Entry {
    /// Its id: the name of its module, its sheet and its address.
    pub id: &'static str,
    /// Where it stands in the menu.
    pub group: Group,
    /// What it is called and asks.
    pub title: Title,
    /// Draws it.
    pub view: fn(&Desk) -> Html,
    /// Its small picture on the first page.
    pub sign: fn() -> Html,
    /// Its named states.
    pub states: &'static [State],
}

/// The list of tools, expanded.
macro_rules! entries {
    ($($tool:ident in $group:ident,)*) => {
        $(mod $tool;)*
        /// Every tool, in the order of the list.
        pub static TOOLS: &[Entry] = &[$(Entry {
            id: stringify!($tool),
            group: Group::$group,
            title: words::$tool::TITLE,
            view: $tool::view,
            sign: $tool::sign,
            states: $tool::STATES,
        }),*];
    };
}
loopwright::each_tool!(entries);

/// The tool with this id.
pub fn find(id: &str) -> Option<&'static Entry> {
    TOOLS.iter().find(|tool| tool.id == id)
}

#[cfg(test)]
pub mod tests {
    use super::*;
    use crate::form::Settings;
    use crate::route;

    /// The fields of a tool in one of its states.
    pub fn fields_of<T: Tool>(state: &State) -> Fields {
        let typed = route::to_fields(&route::parse_query(state.link));
        Fields::new(T::FIELDS, typed, Settings::default())
    }

    /// A tool's question is read by names: from its table in any other order it is the same question.
    pub fn shuffle_the_table<T: Tool<Question: std::fmt::Debug>>() {
        for turn in 1..T::FIELDS.len() {
            let mut rows = T::FIELDS.to_vec();
            rows.rotate_left(turn);
            rows.swap(0, turn / 2);
            // A table lives as long as the program; a test may leak a few.
            let rows: &'static [Field] = rows.leak();
            for state in T::STATES {
                let typed = route::to_fields(&route::parse_query(state.link));
                let shuffled = T::read(&Fields::new(rows, typed, Settings::default()));
                let usual = T::read(&fields_of::<T>(state));
                assert_eq!(
                    format!("{shuffled:?}"),
                    format!("{usual:?}"),
                    "{}, state {}",
                    T::ID,
                    state.name
                );
            }
        }
    }

    /// Every state of a tool is read and answered without a page; each field that a state fills is in the table, and the
    /// states called "filled" and "empty" are what they are called.
    pub fn run_every_state<T: Tool>() {
        for state in T::STATES {
            let fields = fields_of::<T>(state);
            for unknown in fields.unknown() {
                panic!("{} is no field of {}, state {}", unknown, T::ID, state.name);
            }
            let outcome = T::read(&fields).and_then(|question| T::answer(&question));
            match state.name {
                "filled" => assert!(outcome.is_ok(), "{}: {:?}", T::ID, outcome.err()),
                "empty" => assert!(outcome.is_err(), "{} answers nobody", T::ID),
                _ => {}
            }
            if let Ok(answer) = outcome {
                T::offers(&answer);
            }
        }
    }
}

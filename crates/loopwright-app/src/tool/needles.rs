//! The view of needle sizes: a size in one system, the millimetres, and what the same needle is called in the others.

use super::next::Gift;
use super::{Entry, State, Tool};
use crate::drawing::holes;
use crate::fields;
use crate::form::kept::{Kept, Offer, Value};
use crate::form::{Field, Fields, Reader};
use crate::part::plain::{element, list, text_element};
use crate::part::{Figure, Form, Part, Summary, View, answered, good_to_know, keep_offer, wait, working};
use crate::store::Typed;
use crate::words::needles as words;
use loopwright::needles::{Answer, GivenIn, Name, Needle, Question, Size, answer};
use loopwright::problem::Problem;
use loopwright::tail::NEEDLE;
use yew::prelude::*;

/// The named states.
const NAMED: &[State] = &[
    State::new("empty", ""),
    State::new("filled", "size=7"),
    State::new("nearest", "size=5&system=jp"),
    State::new("two", "size=17"),
    State::new("hole", "size=5.5&system=hole"),
    State::new("impossible", "size=12"),
    State::new("unreadable", "size=seven"),
    State::new("extreme", "size=50 mm&system=uk"),
];

fields! { FIELDS of Name, words::label;
    Size => Field::text().in_sentence(),
    System => Field::choice::<GivenIn>().in_sentence(),
}

/// Needle sizes.
pub struct Needles;

/// Its row in the list of tools.
pub const ENTRY: Entry = Entry::of::<Needles>(words::TITLE);

impl Tool for Needles {
    const ID: &'static str = "needles";
    const FIELDS: &'static [Field] = FIELDS;
    const STATES: &'static [State] = NAMED;
    type Question = Question;
    type Answer = Answer;

    fn read(fields: &Fields) -> Result<Question, Vec<Problem>> {
        let mut reader = Reader::new(fields);
        let read = Size::read_given_in(&reader.text(Name::Size), reader.choice(Name::System));
        let size = reader.value(Name::Size, read, Size::Metric(NEEDLE.least));
        reader.done(Question { size })
    }

    fn answer(question: &Question) -> Result<Answer, Vec<Problem>> {
        answer(question)
    }

    fn offers(answer: &Answer) -> Vec<Offer> {
        answer.needles.iter().map(offer).collect()
    }

    fn gifts(_: &Question, answer: &Answer) -> Vec<(Gift, Option<Typed>)> {
        let needle = answer
            .needles
            .first()
            .map(|needle| (Gift::Needle, Value::Needle(needle.across).as_typed()));
        needle.into_iter().collect()
    }

    fn form(form: &Form) -> Html {
        form.line(&[Part::Labelled(Name::Size), Part::Field(Name::System)])
    }

    fn show(view: &View, _: &Question, answer: &Answer) -> Html {
        shown(view, answer)
    }

    fn summary(_: &Fields, _: &Question, answer: &Answer) -> Summary {
        let across = |needle: &Needle| Figure::length("across", needle.across);
        Summary {
            title: words::ANSWER,
            lines: vec![words::headline(answer)],
            outcome: words::outcome(answer),
            figures: answer.needles.iter().map(across).collect(),
        }
    }

    fn wait(view: &View, problems: &[Problem]) -> Html {
        wait(view, problems, words::WAITING)
    }

    fn problem(_: &Fields, _: Option<&Question>, problem: &Problem) -> String {
        words::problem(problem)
    }

    /// Three holes of a needle gauge, and a shaft in the middle one.
    fn sign() -> Html {
        holes::sign()
    }
}

const fn offer(needle: &Needle) -> Offer {
    (Kept::Needle, Value::Needle(needle.across))
}

/// The millimetres, the names and how they were found.
fn shown(view: &View, answer: &Answer) -> Html {
    let line = text_element("p", "row", words::headline(answer));
    let needle = |needle: &Needle| {
        list(vec![
            text_element("h3", "", words::called(needle)),
            names(needle),
            keep_offer(view, offer(needle)),
        ])
    };
    list(vec![
        answered(words::ANSWER, line, words::outcome(answer)),
        list(answer.needles.iter().map(needle).collect()),
        good_to_know(vec![words::NEAREST.into()]),
        working(vec![words::STEP.into()], words::SOURCE),
        text_element("p", "practice", words::SURE),
    ])
}

/// The names of a needle.
fn names(needle: &Needle) -> Html {
    let mut table = Vec::new();
    for named in &needle.named {
        table.push(text_element("dt", "", words::system(named.system)));
        table.push(text_element("dd", "", words::named(named)));
    }
    element("div", "meanings", vec![element("dl", "", table)])
}

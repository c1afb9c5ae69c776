//! The view of steps at a shoulder or a neck: how many stitches in how many steps; the instruction, the stairs, and the
//! rows one by one.

use super::{Entry, State, Tool};
use crate::drawing::stairs as drawing;
use crate::fields;
use crate::form::{Field, Fields, Reader, Start};
use crate::part::plain::{element, list, text_element};
use crate::part::{Form, Part, Part::Words, View, answered, good_to_know, row_by_row, wait, working};
use crate::words::page::MORE;
use crate::words::{schedule, stairs as words};
use loopwright::problem::Problem;
use loopwright::stairs::{Answer, Ask, Asked, Edge, Name, Place, Question, ROWS, STEPS, STITCHES, Side, Way, answer};
use yew::prelude::*;

/// More rows than this are folded away.
const MOST_OPEN: usize = 40;

/// The named states.
const NAMED: &[State] = &[
    State::new("empty", ""),
    State::new("filled", "stitches=27&steps=4"),
    State::new("both", "stitches=27&steps=4&edge=both"),
    State::new("neck", "stitches=14&by=rows&rows=10&place=neck&edge=left"),
    State::new("short-rows", "stitches=27&steps=4&way=short&next=wrong"),
    State::new("one-step", "stitches=6&steps=1&way=short&edge=both"),
    State::new("impossible", "stitches=3&steps=4"),
    State::new("unreadable", "stitches=27 cm&steps=few"),
    State::new("extreme", "stitches=100000&steps=500&edge=both"),
];

fields! { FIELDS of Name, words::label;
    Way => Field::choice::<Way>().in_sentence(),
    Stitches => Field::count(STITCHES).in_sentence(),
    Place => Field::choice::<Place>().in_sentence(),
    Steps => Field::count(STEPS).starts(Start::From(rows_as_typed)).in_sentence().only_if(asks_steps),
    Rows => Field::count(ROWS).starts(Start::From(steps_as_typed)).in_sentence().only_if(asks_rows),
    By => Field::choice::<Asked>().in_sentence(),
    Edge => Field::choice::<Edge>().offered_if(may_move).folded(MORE),
    Next => Field::choice::<Side>().folded(MORE),
}

fn asks_steps(fields: &Fields) -> bool {
    fields.choice::<Asked>(Name::By) == Asked::Steps
}

fn asks_rows(fields: &Fields) -> bool {
    fields.choice::<Asked>(Name::By) == Asked::Rows
}

/// Until something is typed into the field of the steps it has what stands in that of the rows, and the other way round.
fn rows_as_typed(fields: &Fields) -> String {
    as_typed(fields, Name::Rows)
}

fn steps_as_typed(fields: &Fields) -> String {
    as_typed(fields, Name::Steps)
}

fn as_typed(fields: &Fields, name: Name) -> String {
    let typed = fields.typed(name.into());
    typed.map_or_else(String::new, |typed| typed.text.clone())
}

/// Each half of a neck is worked alone, and moves at one edge.
fn may_move(fields: &Fields, edge: &str) -> bool {
    match fields.choice(Name::Place) {
        Place::Shoulder => true,
        Place::Neck => edge != Edge::Both.key(),
    }
}

/// Steps at a shoulder or a neck.
pub struct Stairs;

/// Its row in the list of tools.
pub const ENTRY: Entry = Entry::of::<Stairs>(words::TITLE);

impl Tool for Stairs {
    const ID: &'static str = "stairs";
    const FIELDS: &'static [Field] = FIELDS;
    const STATES: &'static [State] = NAMED;
    type Question = Question;
    type Answer = Answer;

    fn read(fields: &Fields) -> Result<Question, Vec<Problem>> {
        let mut reader = Reader::new(fields);
        let question = Question {
            stitches: reader.count(Name::Stitches),
            ask: match reader.choice(Name::By) {
                Asked::Steps => Ask::Steps(reader.count(Name::Steps)),
                Asked::Rows => Ask::Rows(reader.count(Name::Rows)),
            },
            edge: reader.choice(Name::Edge),
            place: reader.choice(Name::Place),
            way: reader.choice(Name::Way),
            next: reader.choice(Name::Next),
        };
        reader.done(question)
    }

    fn answer(question: &Question) -> Result<Answer, Vec<Problem>> {
        answer(question)
    }

    fn form(form: &Form) -> Html {
        let counted = match form.view.fields.choice(Name::By) {
            Asked::Steps => Name::Steps,
            Asked::Rows => Name::Rows,
        };
        list(vec![
            form.line(&[
                Words(words::I_HAVE_TO),
                Part::Field(Name::Way),
                Part::Field(Name::Stitches),
                Words(words::AT),
                Part::Field(Name::Place),
                Words(words::IN),
                Part::Field(counted),
                Part::Field(Name::By),
            ]),
            form.columns(),
        ])
    }

    fn show(_: &View, question: &Question, answer: &Answer) -> Html {
        let line = text_element("p", "row", words::headline(question, answer));
        let figure = vec![
            drawing::stairs(answer, question.edge, &words::drawing(question, answer)),
            text_element("figcaption", "quiet", words::KEY),
        ];
        list(vec![
            answered(schedule::FROM_NEXT_ROW, line, words::outcome(question, answer)),
            element("figure", "needle", figure),
            row_by_row(words::listed(question, answer), answer.stairs.len() > MOST_OPEN),
            good_to_know(words::notes(question, answer)),
            working(words::steps(question, answer), words::SOURCE),
        ])
    }

    fn wait(view: &View, problems: &[Problem]) -> Html {
        wait(view, problems, words::WAITING)
    }

    /// Three steps at either edge.
    fn sign() -> Html {
        drawing::sign()
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn read(link: &'static str) -> Result<Question, Vec<Problem>> {
        Stairs::read(&crate::tool::tests::fields_of::<Stairs>(&State::new("", link)))
    }

    /// What was chosen for a shoulder is there again when the place is one again.
    #[test]
    fn a_neck_never_moves_at_both_edges() {
        let edge = |link| read(link).map(|question| question.edge);
        assert_eq!(edge("stitches=27&steps=4&edge=both"), Ok(Edge::Both));
        assert_eq!(edge("stitches=27&steps=4&edge=both&place=neck"), Ok(Edge::Right));
        assert_eq!(edge("stitches=27&steps=4&edge=left&place=neck"), Ok(Edge::Left));
    }

    #[test]
    fn the_number_stays_when_steps_become_rows() {
        let ask = |link| read(link).map(|question| question.ask);
        assert_eq!(ask("stitches=27&steps=4&by=rows"), Ok(Ask::Rows(4)));
        assert_eq!(ask("stitches=27&rows=9"), Ok(Ask::Steps(9)));
        assert_eq!(ask("stitches=27&steps=4&rows=9&by=rows"), Ok(Ask::Rows(9)));
    }
}

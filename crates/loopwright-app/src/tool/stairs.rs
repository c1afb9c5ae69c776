//! The view of steps at a shoulder or a neck: how many stitches in how many steps, or a back neck that is raised by short
//! rows; the instruction, the stairs, and the rows one by one.

mod raised;

use super::{Entry, State, Tool};
use crate::drawing::stairs as drawing;
use crate::fields;
use crate::form::kept::Kept;
use crate::form::{Field, Fields, Reader, Start, TAPE};
use crate::part::plain::{element, list, text_element};
use crate::part::{Figure, Form, Part, Part::Words, Summary, View, answered, good_to_know, row_by_row, wait, working};
use crate::words::page::MORE;
use crate::words::schedule;
use crate::words::stairs as words;
use loopwright::follow::Plan;
use loopwright::problem::Problem;
use loopwright::stairs::raise::{self, Begins, HEIGHT, Method, TURNS, WIDTH};
use loopwright::stairs::{
    Answer, Ask, Asked, Edge, Name, Place, Question, ROWS, STEPS, STITCHES, Side, Way, Work, answer, plan,
};
use loopwright::units::Length;
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
    State::new("raise", "way=raise&stitches=40&height=2.5&row_gauge=32"),
    State::new(
        "raise-wrapped",
        "way=raise&width=18&gauge=22&height=3&row_gauge=30&method=wrap&begins=edge",
    ),
    State::new("raise-turns", "way=raise&stitches=41&height=2&row_gauge=28&turns=4"),
    State::new("raise-impossible", "way=raise&stitches=6&height=4&row_gauge=30"),
    State::new("impossible", "stitches=3&steps=4"),
    State::new("unreadable", "stitches=27 cm&steps=few"),
    State::new("extreme", "stitches=100000&steps=500&edge=both"),
];

/// How high a back neck may be raised, for example.
const RAISED: Start = Start::Length(Length::from_mm(25));

fields! { FIELDS of Name, words::label;
    Way => Field::choice::<Work>().in_sentence(),
    Stitches => Field::count(STITCHES)
        .labelled_by(stitches_label)
        .offering_counts()
        .in_sentence(),
    Place => Field::choice::<Place>().in_sentence().only_if(is_edge),
    Steps => Field::count(STEPS).starts(Start::From(rows_as_typed)).in_sentence().only_if(asks_steps),
    Rows => Field::count(ROWS).starts(Start::From(steps_as_typed)).in_sentence().only_if(asks_rows),
    By => Field::choice::<Asked>().in_sentence().only_if(is_edge),
    Edge => Field::choice::<Edge>().offered_if(may_move).folded(MORE).only_if(is_edge),
    Next => Field::choice::<Side>().folded(MORE).only_if(is_edge),
    Height => Field::length(&TAPE, HEIGHT).example(RAISED).in_sentence().only_if(is_raise),
    RowGauge => Field::gauge().of_rows().kept(Kept::GaugeRows).in_sentence().only_if(is_raise),
    Turns => Field::count(TURNS).folded(MORE).only_if(is_raise),
    Width => Field::length(&TAPE, WIDTH).folded(MORE).only_if(asks_width),
    Gauge => Field::gauge().kept(Kept::GaugeStitches).folded(MORE).only_if(asks_width),
    Method => Field::choice::<Method>().folded(MORE).only_if(is_raise),
    Begins => Field::choice::<Begins>().folded(MORE).only_if(is_raise),
}

fn is_raise(fields: &Fields) -> bool {
    match fields.choice(Name::Way) {
        Work::Raise => true,
        Work::Edge(_) => false,
    }
}

fn is_edge(fields: &Fields) -> bool {
    !is_raise(fields)
}

fn asks_steps(fields: &Fields) -> bool {
    is_edge(fields) && fields.choice::<Asked>(Name::By) == Asked::Steps
}

fn asks_rows(fields: &Fields) -> bool {
    is_edge(fields) && fields.choice::<Asked>(Name::By) == Asked::Rows
}

/// The width is asked where the stitches are not typed, so that never both are there and one of them counts for nothing.
fn asks_width(fields: &Fields) -> bool {
    is_raise(fields) && !fields.is_typed(Name::Stitches)
}

fn stitches_label(fields: &Fields) -> &'static str {
    words::stitches_label(fields.choice(Name::Way))
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

/// What is asked: steps at an edge, or a back neck that is raised.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Asks {
    /// Steps.
    Edge(Question),
    /// A raise.
    Raise(raise::Question),
}

/// What is answered.
pub enum Found {
    /// Steps.
    Edge(Question, Answer),
    /// A raise.
    Raise(raise::Question, raise::Answer),
}

/// Steps at a shoulder or a neck.
pub struct Stairs;

/// Its row in the list of tools.
pub const ENTRY: Entry = Entry::of::<Stairs>(words::TITLE);

impl Tool for Stairs {
    const ID: &'static str = "stairs";
    const FIELDS: &'static [Field] = FIELDS;
    const STATES: &'static [State] = NAMED;
    type Question = Asks;
    type Answer = Found;

    fn read(fields: &Fields) -> Result<Asks, Vec<Problem>> {
        let mut reader = Reader::new(fields);
        let question = match reader.choice(Name::Way) {
            Work::Edge(way) => Asks::Edge(edge(&mut reader, way)),
            Work::Raise => Asks::Raise(raised::question(&mut reader)),
        };
        reader.done(question)
    }

    fn answer(question: &Asks) -> Result<Found, Vec<Problem>> {
        match *question {
            Asks::Edge(question) => answer(&question).map(|answer| Found::Edge(question, answer)),
            Asks::Raise(question) => raise::answer(&question).map(|answer| Found::Raise(question, answer)),
        }
    }

    fn plan(_: &Fields, _: &Asks, found: &Found) -> Option<Plan<String>> {
        Some(match found {
            Found::Edge(question, answer) => {
                let plan = plan(question, answer);
                plan.told(|event| words::followed(&event.doing))
            }
            Found::Raise(question, answer) => {
                let plan = raise::plan(question, answer);
                plan.told(|event| words::raise::followed(&event.doing))
            }
        })
    }

    fn form(form: &Form) -> Html {
        let asked = match form.view.fields.choice(Name::Way) {
            Work::Edge(_) => edge_form(form),
            Work::Raise => list(vec![
                form.line(&[Words(words::I_HAVE_TO), Part::Field(Name::Way)]),
                element(
                    "div",
                    "fields",
                    form.asked(&[Name::Stitches, Name::Height, Name::RowGauge]),
                ),
            ]),
        };
        list(vec![asked, form.columns()])
    }

    fn show(view: &View, _: &Asks, found: &Found) -> Html {
        match found {
            Found::Edge(question, answer) => show_edge(question, answer),
            Found::Raise(question, answer) => raised::show(view, question, answer),
        }
    }

    fn summary(fields: &Fields, _: &Asks, found: &Found) -> Summary {
        match found {
            Found::Edge(question, answer) => Summary {
                title: schedule::FROM_NEXT_ROW,
                lines: vec![words::headline(question, answer)],
                outcome: words::outcome(question, answer),
                figures: vec![
                    Figure::count("steps", answer.steps),
                    Figure::count("smaller", answer.smaller),
                    Figure::count("used", answer.used),
                    Figure::count("left", answer.left),
                ],
            },
            Found::Raise(_, answer) => raised::summary(fields, answer),
        }
    }

    fn wait(view: &View, problems: &[Problem]) -> Html {
        wait(view, problems, words::WAITING)
    }

    /// Three steps at either edge.
    fn sign() -> Html {
        drawing::sign()
    }
}

/// Steps at an edge.
fn edge(reader: &mut Reader, way: Way) -> Question {
    Question {
        stitches: reader.count(Name::Stitches),
        ask: match reader.choice(Name::By) {
            Asked::Steps => Ask::Steps(reader.count(Name::Steps)),
            Asked::Rows => Ask::Rows(reader.count(Name::Rows)),
        },
        edge: reader.choice(Name::Edge),
        place: reader.choice(Name::Place),
        way,
        next: reader.choice(Name::Next),
    }
}

/// The sentence about an edge.
fn edge_form(form: &Form) -> Html {
    let counted = match form.view.fields.choice(Name::By) {
        Asked::Steps => Name::Steps,
        Asked::Rows => Name::Rows,
    };
    form.line(&[
        Words(words::I_HAVE_TO),
        Part::Field(Name::Way),
        Part::Field(Name::Stitches),
        Words(words::AT),
        Part::Field(Name::Place),
        Words(words::IN),
        Part::Field(counted),
        Part::Field(Name::By),
    ])
}

/// The steps, the stairs, and the rows one by one. A neck is drawn with both its halves.
fn show_edge(question: &Question, answer: &Answer) -> Html {
    let line = text_element("p", "row", words::headline(question, answer));
    let described = words::drawing(question, answer);
    let picture = match question.place {
        Place::Shoulder => drawing::stairs(answer, question.edge, &described),
        Place::Neck => drawing::neck(answer, &described),
    };
    let figure = vec![picture, text_element("figcaption", "quiet", words::key(question.place))];
    list(vec![
        answered(schedule::FROM_NEXT_ROW, line, words::outcome(question, answer)),
        element("figure", "needle", figure),
        row_by_row(words::listed(question, answer), answer.stairs.len() > MOST_OPEN),
        good_to_know(words::notes(question, answer)),
        working(words::steps(question, answer), words::SOURCE),
    ])
}

#[cfg(test)]
mod tests {
    use super::*;
    use loopwright::stairs::raise::Across;

    fn asks(link: &'static str) -> Result<Asks, Vec<Problem>> {
        Stairs::read(&crate::tool::tests::fields_of::<Stairs>(&State::new("", link)))
    }

    fn read(link: &'static str) -> Result<Question, Vec<Problem>> {
        asks(link).map(|asks| match asks {
            Asks::Edge(question) => question,
            Asks::Raise(_) => panic!("{link} raises"),
        })
    }

    /// A back neck goes by its stitches, and where none are typed by its width.
    #[test]
    fn a_raise_goes_by_stitches_or_by_width() {
        let across = |link| match asks(link) {
            Ok(Asks::Raise(question)) => question.across,
            other => panic!("{other:?}"),
        };
        let counted = across("way=raise&stitches=40&height=2.5&row_gauge=32");
        assert_eq!(counted, Across::Stitches(40));
        let measured = across("way=raise&width=20&gauge=20&height=2.5&row_gauge=32");
        assert!(matches!(measured, Across::Width { .. }));
        let neither = asks("way=raise&height=2.5&row_gauge=32").unwrap_err();
        assert!(neither.iter().all(|problem| problem.field == Name::Stitches.into()));
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

//! The view of rows and length: what is asked and the washed row gauge; the rows or the length with its neighbours, and
//! in mid-knit whether the tape is ahead or behind.

use super::{Entry, State, Tool};
use crate::drawing::rows as drawing;
use crate::fields;
use crate::form::kept::Kept;
use crate::form::{Field, Fields, Reader, Start, TAPE};
use crate::part::plain::{items, list, text_element};
use crate::part::{Figure, Form, Part, Part::Words, Summary, View, answered, good_to_know, wait, working};
use crate::words::page::{MORE, PRACTICE};
use crate::words::rows as words;
use loopwright::cast_on::WIDTH;
use loopwright::problem::Problem;
use loopwright::rows::{
    Answer, Ask, Asked, EDGES, END_AFTER, Fabric, Name, Question, REPEAT, ROWS, SET_UP, Tape, Turning, answer,
};
use yew::prelude::*;

/// The named states.
const NAMED: &[State] = &[
    State::new("empty", ""),
    State::new("filled", "length=40&gauge=28"),
    State::new("chart", "length=40&gauge=28&repeat=12&set_up=2&end_after=7"),
    State::new("as-near", "length=10&gauge=28&repeat=8"),
    State::new("ridges", "ask=ridges&ridges=21&gauge=42"),
    State::new("garter", "length=10.7&gauge=42&fabric=garter&knitting=round&edges=2"),
    State::new("elsewhere", "ask=rows&rows=112&gauge=28&repeat=12"),
    State::new(
        "on-course",
        "length=50&gauge=28&unwashed=30&tape_rows=60&tape_length=20",
    ),
    State::new(
        "ahead",
        "length=50&gauge=28&unwashed=30&tape_rows=60&tape_length=21&repeat=4",
    ),
    State::new("behind", "length=50&gauge=28&tape_rows=60&tape_length=20"),
    State::new("past", "length=50&gauge=28&unwashed=30&tape_rows=150&tape_length=50"),
    State::new(
        "take-back",
        "length=37.3&gauge=28&unwashed=28&tape_rows=112&tape_length=40",
    ),
    State::new("set-up", "length=1&gauge=28&repeat=40&set_up=10"),
    State::new("impossible", "length=9999&gauge=400&end_after=13&tape_rows=5"),
    State::new("unreadable", "length=long&gauge=28 cm"),
    State::new("extreme", "length=2000&gauge=90&repeat=2"),
];

fields! { FIELDS of Name, words::label;
    Ask => Field::choice::<Asked>().in_sentence(),
    Length => Field::length(&TAPE, WIDTH).only_if(asks_length),
    Rows => Field::count(ROWS).only_if(asks_rows),
    Ridges => Field::count(ROWS).only_if(asks_ridges),
    Repeats => Field::count(ROWS).only_if(asks_repeats),
    Gauge => Field::gauge().of_rows().kept(Kept::GaugeRows),
    Knitting => Field::choice::<Turning>().folded(MORE),
    Fabric => Field::choice::<Fabric>().folded(MORE),
    Repeat => Field::count(REPEAT).starts(Start::Count(REPEAT.least)).folded(MORE),
    SetUp => Field::count(SET_UP).starts(Start::Count(SET_UP.least)).folded(MORE),
    EndAfter => Field::count(END_AFTER).starts(Start::Count(END_AFTER.least)).folded(MORE),
    Edges => Field::count(EDGES).starts(Start::Count(EDGES.least)).folded(MORE).remarked(PRACTICE),
    TapeRows => Field::count(ROWS).folded(words::MIDWAY),
    TapeLength => Field::length(&TAPE, WIDTH).folded(words::MIDWAY),
    Unwashed => Field::gauge().of_rows().kept(Kept::GaugeRowsUnwashed).folded(words::MIDWAY),
}

fn asks_length(fields: &Fields) -> bool {
    fields.choice::<Asked>(Name::Ask) == Asked::Length
}

fn asks_rows(fields: &Fields) -> bool {
    fields.choice::<Asked>(Name::Ask) == Asked::Rows
}

fn asks_ridges(fields: &Fields) -> bool {
    fields.choice::<Asked>(Name::Ask) == Asked::Ridges
}

fn asks_repeats(fields: &Fields) -> bool {
    fields.choice::<Asked>(Name::Ask) == Asked::Repeats
}

/// Rows and length.
pub struct Rows;

/// Its row in the list of tools.
pub const ENTRY: Entry = Entry::of::<Rows>(words::TITLE);

impl Tool for Rows {
    const ID: &'static str = "rows";
    const FIELDS: &'static [Field] = FIELDS;
    const STATES: &'static [State] = NAMED;
    type Question = Question;
    type Answer = Answer;

    fn read(fields: &Fields) -> Result<Question, Vec<Problem>> {
        let mut reader = Reader::new(fields);
        let ask = ask(&mut reader);
        let tape = reader.both(Name::TapeRows, Name::TapeLength);
        let question = Question {
            ask,
            gauge: reader.gauge(Name::Gauge),
            unwashed: reader.gauge_if_any(Name::Unwashed),
            garter: is_garter(&reader, ask),
            round: is_round(&reader),
            repeat: reader.count(Name::Repeat),
            set_up: reader.count(Name::SetUp),
            end_after: reader.count(Name::EndAfter),
            edges: reader.count(Name::Edges),
            tape: tape.map(|(rows, length)| Tape { rows, length }),
        };
        reader.done(question)
    }

    fn answer(question: &Question) -> Result<Answer, Vec<Problem>> {
        answer(question)
    }

    fn form(form: &Form) -> Html {
        list(vec![
            form.line(&[Words(words::I_HAVE), Part::Field(Name::Ask)]),
            form.columns(),
        ])
    }

    /// The rows or the length, the course, the neighbours, the drawing and the sum.
    fn show(view: &View, question: &Question, answer: &Answer) -> Html {
        let lengths = view.lengths(&TAPE);
        let line = text_element("p", "row", words::headline(question, answer, lengths));
        list(vec![
            answered(words::title(question), line, words::outcome(question, answer, lengths)),
            text_element("p", "", words::widths(question, answer, lengths)),
            course(view, question, answer),
            neighbours(view, question, answer),
            drawing::piece(question, answer, lengths),
            good_to_know(answer.notes.iter().copied().map(words::note).collect()),
            working(words::steps(question, answer, lengths), words::SOURCE),
        ])
    }

    fn summary(view: &View, question: &Question, answer: &Answer) -> Summary {
        let lengths = view.lengths(&TAPE);
        Summary {
            title: words::title(question),
            lines: vec![words::headline(question, answer, lengths)],
            outcome: words::outcome(question, answer, lengths),
            figures: vec![
                Figure::count("rows", answer.pick.rows),
                Figure::length("length", answer.pick.length),
            ],
        }
    }

    fn wait(view: &View, problems: &[Problem]) -> Html {
        wait(view, problems, words::WAITING)
    }

    fn problem(_: &View, _: Option<&Question>, problem: &Problem) -> String {
        words::problem(problem)
    }

    /// Two repeats, and half of the rows done.
    fn sign() -> Html {
        drawing::strip(26, 2, 8, 13)
    }
}

fn ask(reader: &mut Reader) -> Ask {
    match reader.choice(Name::Ask) {
        Asked::Length => Ask::Length(reader.length(Name::Length)),
        Asked::Rows => Ask::Rows(reader.count(Name::Rows)),
        Asked::Ridges => Ask::Ridges(reader.count(Name::Ridges)),
        Asked::Repeats => Ask::Repeats(reader.count(Name::Repeats)),
    }
}

/// Ridges are of garter, whatever stitch is chosen.
fn is_garter(reader: &Reader, ask: Ask) -> bool {
    match (ask, reader.choice(Name::Fabric)) {
        (Ask::Ridges(_), Fabric::Any | Fabric::Garter) => true,
        (Ask::Length(_) | Ask::Rows(_) | Ask::Repeats(_), fabric) => fabric == Fabric::Garter,
    }
}

fn is_round(reader: &Reader) -> bool {
    match reader.choice(Name::Knitting) {
        Turning::Flat => false,
        Turning::Round => true,
    }
}

/// Ahead or behind, where the tape was read.
fn course(view: &View, question: &Question, answer: &Answer) -> Html {
    let Some(course) = &answer.course else {
        return Html::default();
    };
    let lengths = view.lengths(&TAPE);
    list(vec![
        text_element("p", "verdict", words::standing(question, course, lengths)),
        text_element("p", "", words::tape_says(question, course, lengths)),
    ])
}

/// The numbers below and above, where not every number will do.
fn neighbours(view: &View, question: &Question, answer: &Answer) -> Html {
    let Some(lead) = words::neighbours_lead(question, answer) else {
        return Html::default();
    };
    let neighbours = words::neighbours(question, answer, view.lengths(&TAPE));
    if neighbours.is_empty() {
        return Html::default();
    }
    list(vec![text_element("h3", "", lead), items("ul", neighbours)])
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn ridges_are_of_garter_whatever_stitch_is_chosen() {
        let read = |link| Rows::read(&crate::tool::tests::fields_of::<Rows>(&State::new("garter", link)));
        let garter = |link| read(link).map(|question| question.garter);
        assert_eq!(garter("ask=ridges&ridges=21&gauge=42&fabric=any"), Ok(true));
        assert_eq!(garter("length=10&gauge=42&fabric=garter"), Ok(true));
        assert_eq!(garter("length=10&gauge=42"), Ok(false));
    }
}

//! The view of rows and length: what is asked and the washed row gauge; the rows or the length with its neighbours. In
//! mid-knit it is another question with an answer of its own: whether the tape is ahead or behind, and how many are to go.

use super::next::Gift;
use super::{Entry, State, Tool};
use crate::drawing::rows as drawing;
use crate::fields;
use crate::form::kept::{Kept, Value};
use crate::form::{Field, Fields, Reader, Start, TAPE};
use crate::part::plain::{items, list, text_element};
use crate::part::{Figure, Form, Part, Part::Words, Summary, View, answered, good_to_know, wait, working};
use crate::store::Typed;
use crate::words::page::{MORE, PRACTICE};
use crate::words::rows as words;
use crate::words::units::Lengths;
use loopwright::cast_on::WIDTH;
use loopwright::follow::Plan;
use loopwright::problem::Problem;
use loopwright::rows::{
    Answer, Ask, Asked, Course, EDGES, END_AFTER, Fabric, Name, Question, REPEAT, ROWS, SET_UP, Tape, Turning, Wanted,
    answer, plan,
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
    State::new("midway-waiting", "wanted=course&length=50&gauge=28"),
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
    Wanted => Field::choice::<Wanted>().starts(Start::From(usually_wanted)).in_sentence(),
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
    TapeRows => Field::count(ROWS).only_if(asks_course),
    TapeLength => Field::length(&TAPE, WIDTH).only_if(asks_course),
    Unwashed => Field::gauge().of_rows().kept(Kept::GaugeRowsUnwashed).only_if(asks_unwashed),
}

/// The course is asked about where that is chosen; or where a tape was typed before there was anything to choose.
fn asks_course(fields: &Fields) -> bool {
    match fields.choice(Name::Wanted) {
        Wanted::Plan => false,
        Wanted::Course => true,
    }
}

fn usually_wanted(fields: &Fields) -> String {
    let is_typed = fields.is_typed(Name::TapeRows) || fields.is_typed(Name::TapeLength);
    let wanted = if is_typed { Wanted::Course } else { Wanted::Plan };
    wanted.key().into()
}

/// The gauge before washing is for the tape; one that was typed without a tape, before there was a choice, is still seen.
fn asks_unwashed(fields: &Fields) -> bool {
    asks_course(fields)
        || (fields.is_typed(Name::Unwashed)
            && !fields.is_given(Name::Unwashed.into())
            && !fields.is_typed(Name::Wanted))
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
        let tape = asks_course(fields).then(|| Tape {
            rows: reader.count(Name::TapeRows),
            length: reader.length(Name::TapeLength),
        });
        let unwashed = asks_unwashed(fields).then(|| reader.gauge_if_any(Name::Unwashed));
        let question = Question {
            ask,
            gauge: reader.gauge(Name::Gauge),
            unwashed: unwashed.flatten(),
            garter: is_garter(&reader, ask),
            round: is_round(&reader),
            repeat: reader.count(Name::Repeat),
            set_up: reader.count(Name::SetUp),
            end_after: reader.count(Name::EndAfter),
            edges: reader.count(Name::Edges),
            tape,
        };
        reader.done(question)
    }

    fn answer(question: &Question) -> Result<Answer, Vec<Problem>> {
        answer(question)
    }

    fn gifts(_: &Question, answer: &Answer) -> Vec<(Gift, Option<Typed>)> {
        vec![(Gift::Rows, Value::Count(answer.pick.rows).as_typed())]
    }

    fn plan(_: &Fields, question: &Question, answer: &Answer) -> Option<Plan<String>> {
        let plan = plan(question, answer);
        Some(plan.told(|event| words::followed(&event.doing)))
    }

    fn form(form: &Form) -> Html {
        let asked = match asks_course(&form.view.fields) {
            true => words::I_GO_BY,
            false => words::I_HAVE,
        };
        list(vec![
            form.line_of("line wanted", &[Part::Labelled(Name::Wanted)]),
            form.line(&[Words(asked), Part::Field(Name::Ask)]),
            form.columns(),
        ])
    }

    /// The rows or the length, the neighbours, the drawing and the sum; or the course.
    fn show(view: &View, question: &Question, answer: &Answer) -> Html {
        let lengths = view.lengths(&TAPE);
        if let Some(course) = &answer.course {
            return midway(question, answer, course, lengths);
        }
        let line = text_element("p", "row", words::headline(question, answer, lengths));
        list(vec![
            answered(words::title(question), line, words::outcome(question, answer, lengths)),
            text_element("p", "", words::widths(question, answer, lengths)),
            neighbours(view, question, answer),
            drawing::piece(question, answer, lengths),
            good_to_know(answer.notes.iter().copied().map(words::note).collect()),
            working(words::steps(question, answer, lengths), words::SOURCE),
        ])
    }

    fn summary(fields: &Fields, question: &Question, answer: &Answer) -> Summary {
        let lengths = fields.lengths(&TAPE);
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
        let words = match asks_course(&view.fields) {
            true => words::WAITING_FOR_TAPE,
            false => words::WAITING,
        };
        wait(view, problems, words)
    }

    fn problem(_: &Fields, _: Option<&Question>, problem: &Problem) -> String {
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

/// Ahead or behind: what the tape says, the piece on the needle and the sum.
fn midway(question: &Question, answer: &Answer, course: &Course, lengths: Lengths) -> Html {
    let line = text_element("p", "row", words::standing(course, lengths));
    list(vec![
        answered(words::MIDWAY, line, words::remaining(question, course)),
        text_element("p", "", words::tape_says(question, course, lengths)),
        drawing::piece(question, answer, lengths),
        working(words::steps(question, answer, lengths), words::SOURCE),
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
    use loopwright::units::{Length, LengthUnit};

    #[test]
    fn ridges_are_of_garter_whatever_stitch_is_chosen() {
        let read = |link| Rows::read(&crate::tool::tests::fields_of::<Rows>(&State::new("garter", link)));
        let garter = |link| read(link).map(|question| question.garter);
        assert_eq!(garter("ask=ridges&ridges=21&gauge=42&fabric=any"), Ok(true));
        assert_eq!(garter("length=10&gauge=42&fabric=garter"), Ok(true));
        assert_eq!(garter("length=10&gauge=42"), Ok(false));
    }

    /// The tape was typed into a fold once, when there was nothing to choose: it is still asked about and seen.
    #[test]
    fn what_was_typed_before_there_was_a_choice_is_still_asked_about() {
        let fields = |link: &str| {
            let link = ["length=50&gauge=28", link].concat();
            crate::tool::tests::fields_of::<Rows>(&State::new("linked", link.leak()))
        };
        let tape = |link| Rows::read(&fields(link)).map(|question| question.tape);
        let length = Length::of(20, LengthUnit::Cm);
        assert_eq!(
            tape("&tape_rows=60&tape_length=20"),
            Ok(Some(Tape { rows: 60, length }))
        );
        assert!(tape("&tape_rows=60").is_err_and(|problems| problems[0].field == Name::TapeLength.into()));
        assert_eq!(tape("&wanted=plan&tape_rows=60&tape_length=20"), Ok(None));
        assert_eq!(tape("&unwashed=30"), Ok(None));
        let is_seen = |link| asks_unwashed(&fields(link));
        assert_eq!(
            ["&unwashed=30", "&wanted=plan&unwashed=30", ""].map(is_seen),
            [true, false, false]
        );
    }
}

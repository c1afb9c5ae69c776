//! The view of the swatch: the gauge that is hoped for, round or flat; the count, how high, the middle that is measured,
//! and what is done in which order.

use super::{Entry, State, Tool};
use crate::drawing::outline::{self, Figures, Size};
use crate::fields;
use crate::form::kept::Kept;
use crate::form::{Field, Fields, NEEDLE, Reader, Start, plus_behind, read_multiple};
use crate::part::plain::{element, items, list, text_element};
use crate::part::{Figure, Form, Part, Summary, View, answered, good_to_know, wait, working};
use crate::words::page::MORE;
use crate::words::{swatch as words, units::length_beside};
use loopwright::problem::Problem;
use loopwright::swatch::{Answer, Name, Question, USUAL_ROW_REPEAT, answer};
use loopwright::tail::NEEDLE as NEEDLES;
use loopwright::terms::{MULTIPLE, Multiple, PLUS, Working};
use loopwright::units::Length;
use yew::prelude::*;

/// The named states.
const NAMED: &[State] = &[
    State::new("empty", ""),
    State::new("filled", "gauge=21&rows=28"),
    State::new("repeats", "gauge=21&knitting=flat&rows=28&multiple=8 + 3&row_repeat=8"),
    State::new("needle", "gauge=21&rows=28&needle=us 6"),
    State::new("short", "gauge=5 in 1 in&rows=7 in 1 in"),
    State::new("halves", "gauge=20 1/2&knitting=flat"),
    State::new("plus", "gauge=21&multiple=8&plus=3"),
    State::new("impossible", "gauge=21&multiple=0&row_repeat=0"),
    State::new("unreadable", "gauge=21 cm&rows=some"),
    State::new("extreme", "gauge=400 in 1 m&rows=99 in 5mm&multiple=1000"),
];

fields! { FIELDS of Name, words::label;
    Gauge => Field::gauge().beside(Name::Rows.key()).taken(Kept::GaugeStitches),
    Knitting => Field::choice::<Working>().in_sentence(),
    Rows => Field::gauge().of_rows().beside(Name::Gauge.key()).taken(Kept::GaugeRows).folded(MORE),
    Multiple => Field::count(MULTIPLE)
        .with_plus()
        .starts(Start::Count(Multiple::ANY.of))
        .kept(Kept::Multiple)
        .folded(MORE),
    Plus => Field::count(PLUS)
        .starts(Start::From(|fields| plus_behind(fields, Name::Multiple)))
        .folded(MORE),
    RowRepeat => Field::count(MULTIPLE).starts(Start::Count(USUAL_ROW_REPEAT)).folded(MORE),
    Needle => Field::length(&NEEDLE, NEEDLES).kept(Kept::Needle).folded(MORE),
}

/// The swatch.
pub struct Swatch;

/// Its row in the list of tools.
pub const ENTRY: Entry = Entry::of::<Swatch>(words::TITLE);

impl Tool for Swatch {
    const ID: &'static str = "swatch";
    const FIELDS: &'static [Field] = FIELDS;
    const STATES: &'static [State] = NAMED;
    type Question = Question;
    type Answer = Answer;

    fn read(fields: &Fields) -> Result<Question, Vec<Problem>> {
        let mut reader = Reader::new(fields);
        let question = Question {
            gauge: reader.gauge(Name::Gauge),
            knitting: reader.choice(Name::Knitting),
            rows: reader.gauge_if_any(Name::Rows),
            multiple: read_multiple(&mut reader, Name::Multiple, Name::Plus),
            row_repeat: reader.count(Name::RowRepeat),
            needle: reader.length_if_any(Name::Needle),
        };
        reader.done(question)
    }

    fn answer(question: &Question) -> Result<Answer, Vec<Problem>> {
        answer(question)
    }

    fn form(form: &Form) -> Html {
        list(vec![
            form.open(None),
            form.line(&[Part::Words(words::I_KNIT), Part::Field(Name::Knitting)]),
            form.folds(None),
        ])
    }

    fn show(_: &View, question: &Question, answer: &Answer) -> Html {
        shown(question, answer)
    }

    fn summary(_: &Fields, _: &Question, answer: &Answer) -> Summary {
        Summary {
            title: words::BEFORE,
            lines: vec![words::headline(answer)],
            outcome: words::outcome(answer),
            figures: vec![
                Figure::count("cast_on", answer.cast_on),
                Figure::length("width", answer.width),
                Figure::length("height", answer.height),
            ],
        }
    }

    fn wait(view: &View, problems: &[Problem]) -> Html {
        wait(view, problems, words::WAITING)
    }

    /// A swatch and its middle.
    fn sign() -> Html {
        let swatch = Size {
            width: Length::from_mm(160),
            height: Length::from_mm(84),
        };
        outline::swatch(swatch, Length::from_mm(50), Figures::default())
    }
}

/// The count, the drawing, the order, and the sum. Lengths are printed in the unit that the gauge was counted in.
fn shown(question: &Question, answer: &Answer) -> Html {
    let long = |length| length_beside(question.gauge, length);
    let line = text_element("p", "row", words::headline(answer));
    list(vec![
        answered(words::BEFORE, line, words::outcome(answer)),
        text_element("p", "", words::height(question, answer, &long)),
        words::needles(answer).map_or_else(Html::default, |needles| text_element("p", "", needles)),
        figure(answer, words::drawing(answer, &long)),
        text_element("h3", "", words::ORDER),
        items("ol", words::order(question.knitting, answer.span)),
        good_to_know(answer.notes.iter().map(words::note).collect()),
        working(words::steps(question, answer, &long), words::SOURCE),
    ])
}

fn figure(answer: &Answer, caption: String) -> Html {
    let swatch = Size {
        width: answer.width,
        height: answer.height,
    };
    let [inside, below] = words::drawn(answer);
    let figures = Figures {
        words: [&*inside, "; ", &below, ". ", &caption].concat(),
        inside,
        below,
    };
    let drawn = outline::swatch(swatch, answer.span, figures);
    element(
        "figure",
        "scale",
        vec![drawn, text_element("figcaption", "quiet", caption)],
    )
}

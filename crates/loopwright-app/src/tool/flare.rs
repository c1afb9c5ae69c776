//! The view of the flare: where it begins, how deep it is and how wide the hem; the increase rounds, how it hangs from
//! the side and from above, the counts round by round, and the yarn of the bind-off.

use super::next::Gift;
use super::{Entry, State, Tool};
use crate::drawing::flare as drawing;
use crate::fields;
use crate::form::kept::{Kept, Value};
use crate::form::{Field, Fields, Reader, Start, TAPE};
use crate::part::plain::{element, list, text_element};
use crate::part::{Figure, Summary, View, answered, choices, counted, keep_count, spoken, wait, working};
use crate::store::Typed;
use crate::words::flare as words;
use crate::words::page::{MORE, PRACTICE};
use crate::words::tail::Print;
use loopwright::flare::{
    Answer, DEPTH, GIRTH, Hang, Hem, HemKind, MULTIPLE, Name, Placing, Question, STITCHES, Shape, USUAL_EACH, answer,
    plan,
};
use loopwright::follow::Plan;
use loopwright::problem::Problem;
use loopwright::shaping::{EACH, PLAIN, Pace, USUAL_LAST};
use loopwright::terms::Multiple;
use loopwright::units::Length;
use yew::prelude::*;

/// The named states.
const NAMED: &[State] = &[
    State::new("empty", ""),
    State::new("filled", "neck=96&depth=30&gauge=21&row_gauge=28"),
    State::new("cone", "neck=96&depth=30&gauge=21&row_gauge=28&hem=girth&girth=120"),
    State::new("ruffle", "neck=96&depth=30&gauge=21&row_gauge=28&hem=girth&girth=3 m"),
    State::new(
        "tube",
        "neck=96&depth=12&gauge=21&row_gauge=28&hem=stitches&stitches=96",
    ),
    State::new(
        "scattered",
        "neck=96&depth=12&gauge=21&row_gauge=42&each=20&lines=scattered",
    ),
    State::new(
        "impossible",
        "neck=96&depth=20&gauge=21&row_gauge=28&hem=girth&girth=3 m&each=4",
    ),
    State::new(
        "once",
        "neck=96&depth=40&gauge=21&row_gauge=28&hem=stitches&stitches=104",
    ),
    State::new(
        "listed",
        "neck=96&depth=40&gauge=21&row_gauge=28&hem=stitches&stitches=624",
    ),
    State::new("most-even", "neck=96&depth=30&gauge=21&row_gauge=28&rhythm=most-even"),
    State::new(
        "plain-end",
        "neck=96&depth=20&gauge=21&row_gauge=28&hem=stitches&stitches=256&last=70",
    ),
    State::new("multiple", "neck=97&depth=30&gauge=21&row_gauge=28&multiple=8"),
    State::new("unreadable", "neck=many&depth=deep&gauge=21 cm&multiple=0"),
    State::new("extreme", "neck=40000&depth=5 m&gauge=100&row_gauge=200"),
];

fields! { FIELDS of Name, words::label;
    Neck => Field::count(STITCHES).kept_or(Kept::Neck, Kept::CastOn),
    Depth => Field::length(&TAPE, DEPTH),
    Hem => Field::choice::<HemKind>(),
    Girth => Field::length(&TAPE, GIRTH).only_if(asks_girth),
    Stitches => Field::count(STITCHES).offering_counts().only_if(asks_stitches),
    Gauge => Field::gauge().beside(Name::RowGauge.key()).kept(Kept::GaugeStitches),
    RowGauge => Field::gauge().of_rows().beside(Name::Gauge.key()).kept(Kept::GaugeRows),
    Each => Field::count(EACH).starts(Start::Count(USUAL_EACH)).folded(MORE),
    Lines => Field::choice::<Placing>().folded(MORE),
    Multiple => Field::count(MULTIPLE)
        .starts(Start::Count(Multiple::ANY.of))
        .offering(Kept::Multiple)
        .folded(MORE),
    First => Field::count(PLAIN).folded(MORE),
    Last => Field::count(PLAIN).starts(Start::Count(USUAL_LAST)).folded(MORE).remarked(PRACTICE),
    Rhythm => Field::choice::<Pace>().in_answer(),
}

fn asks_girth(fields: &Fields) -> bool {
    fields.choice::<HemKind>(Name::Hem) == HemKind::Girth
}

fn asks_stitches(fields: &Fields) -> bool {
    fields.choice::<HemKind>(Name::Hem) == HemKind::Stitches
}

/// A cone, and how far it is from flat.
const SIGN: Shape = Shape {
    neck_girth: Length::from_mm(188),
    hem_girth: Length::from_mm(440),
    neck_radius: Length::from_mm(30),
    radius: Length::from_mm(70),
    flat_radius: Length::from_mm(100),
    slant: Length::from_mm(70),
    drop: Length::from_mm(57),
    fullness: 1_000,
};

/// A flare.
pub struct Flare;

/// Its row in the list of tools.
pub const ENTRY: Entry = Entry::of::<Flare>(words::TITLE);

impl Tool for Flare {
    const ID: &'static str = "flare";
    const FIELDS: &'static [Field] = FIELDS;
    const STATES: &'static [State] = NAMED;
    type Question = Question;
    type Answer = Answer;

    fn read(fields: &Fields) -> Result<Question, Vec<Problem>> {
        let mut reader = Reader::new(fields);
        let question = Question {
            neck: reader.count(Name::Neck),
            hem: match reader.choice(Name::Hem) {
                HemKind::Flat => Hem::Flat,
                HemKind::Girth => Hem::Girth(reader.length(Name::Girth)),
                HemKind::Stitches => Hem::Stitches(reader.count(Name::Stitches)),
            },
            depth: reader.length(Name::Depth),
            gauge: reader.gauge(Name::Gauge),
            row_gauge: reader.gauge(Name::RowGauge),
            each: reader.count(Name::Each),
            lines: reader.choice::<Placing>(Name::Lines) == Placing::InLines,
            multiple: reader.count(Name::Multiple),
            first: reader.count_if_any(Name::First),
            last: reader.count(Name::Last),
            rhythm: reader.choice(Name::Rhythm),
        };
        reader.done(question)
    }

    fn answer(question: &Question) -> Result<Answer, Vec<Problem>> {
        answer(question)
    }

    fn gifts(question: &Question, answer: &Answer) -> Vec<(Gift, Option<Typed>)> {
        vec![
            (Gift::Before, Value::Count(question.neck).as_typed()),
            (Gift::After, Value::Count(answer.hem).as_typed()),
            (Gift::Rows, Value::Count(answer.rounds).as_typed()),
        ]
    }

    fn plan(fields: &Fields, question: &Question, answer: &Answer) -> Option<Plan<String>> {
        let plan = plan(question, answer).for_hand(fields.settings().hand(), |doing| doing);
        Some(plan.told(words::followed))
    }

    fn show(view: &View, question: &Question, answer: &Answer) -> Html {
        let long = &|length: Length| view.tape(length);
        let print = Print {
            yards: view.in_inches(&TAPE),
        };
        let picture = vec![
            drawing::flare(answer, &words::labels(question, answer, long)),
            text_element("figcaption", "quiet", words::key(answer, question.neck, long)),
        ];
        let line = spoken(vec![words::headline(question, answer)]);
        list(vec![
            answered(words::ANSWER, line, words::outcome(answer, long)),
            text_element("p", "verdict", words::hang(answer, long)),
            match words::drift(question, answer) {
                Some(drift) => list(vec![
                    text_element("p", "", drift),
                    choices(view, Name::Rhythm, question.rhythm),
                ]),
                None => Html::default(),
            },
            text_element("p", "", words::growth(question, answer)),
            element("figure", "needle", picture),
            counted(&answer.schedule, words::tells_rounds(answer)),
            text_element("p", "", words::bind_off(answer, print)),
            keep_count(view, answer.hem),
            working(words::steps(question, answer, long), words::SOURCE),
        ])
    }

    fn summary(fields: &Fields, question: &Question, answer: &Answer) -> Summary {
        let long = &|length: Length| fields.tape(length);
        Summary {
            title: words::ANSWER,
            lines: vec![words::headline(question, answer)],
            outcome: words::outcome(answer, long),
            figures: vec![
                Figure::count("hem", answer.hem),
                Figure::count("gain", answer.gain),
                Figure::count("rounds", answer.rounds),
                Figure::count("increase_rounds", answer.increase_rounds),
            ],
        }
    }

    fn wait(view: &View, problems: &[Problem]) -> Html {
        wait(view, problems, words::WAITING)
    }

    fn problem(_: &Fields, _: Option<&Question>, problem: &Problem) -> String {
        words::problem(problem)
    }

    fn sign() -> Html {
        drawing::sign(&SIGN, Hang::Cone)
    }
}

//! The view of the raglan: body and sleeve at the neck and below the underarm, and the rounds between; at which rates body
//! and sleeves grow, how near that keeps to an even slope, and what is cast on at the underarm.

use super::next::Gift;
use super::{Entry, State, Tool};
use crate::drawing::raglan as drawing;
use crate::fields;
use crate::form::kept::{Kept, Value};
use crate::form::{Field, Fields, Reader, Start};
use crate::part::plain::{element, list, text_element};
use crate::part::{Figure, MOST_COUNTED, Summary, View, answered, choices, counts, keep_count, spoken, wait, working};
use crate::store::Typed;
use crate::words::page::{MORE, PRACTICE};
use crate::words::raglan as words;
use loopwright::follow::Plan;
use loopwright::problem::Problem;
use loopwright::raglan::{Answer, Name, Question, STITCHES, UNDERARM, USUAL_UNDERARM, answer, plan};
use loopwright::shaping::{PLAIN, Pace, ROWS, USUAL_FIRST, USUAL_LAST};
use yew::prelude::*;

/// The named states.
const NAMED: &[State] = &[
    State::new("empty", ""),
    State::new(
        "filled",
        "body=56&sleeve=16&body_to=200&sleeve_to=68&rounds=64&underarm=8",
    ),
    State::new(
        "sleeves-only",
        "body=80&sleeve=12&body_to=160&sleeve_to=70&rounds=50&underarm=6",
    ),
    State::new(
        "plain",
        "body=80&sleeve=16&body_to=96&sleeve_to=24&rounds=60&underarm=8",
    ),
    State::new(
        "together",
        "body=80&sleeve=16&body_to=176&sleeve_to=64&rounds=41&underarm=8",
    ),
    State::new(
        "apart",
        "body=60&sleeve=14&body_to=204&sleeve_to=62&rounds=58&underarm=8&first=2",
    ),
    State::new(
        "most-even",
        "body=56&sleeve=16&body_to=200&sleeve_to=68&rounds=76&underarm=8&rhythm=most-even",
    ),
    State::new("impossible", "body=56&sleeve=16&body_to=200&sleeve_to=68&rounds=30"),
    State::new("unreadable", "body=front&sleeve=1/2&rounds=20 cm&underarm=-8"),
    State::new(
        "extreme",
        "body=1000&sleeve=1000&body_to=30000&sleeve_to=9000&rounds=10000",
    ),
];

fields! { FIELDS of Name, words::label;
    Body => Field::count(STITCHES).offering_counts(),
    Sleeve => Field::count(STITCHES).offering_counts(),
    BodyTo => Field::count(STITCHES).kept(Kept::Body),
    SleeveTo => Field::count(STITCHES).kept(Kept::Sleeve),
    Rounds => Field::count(ROWS),
    Underarm => Field::count(UNDERARM)
        .starts(Start::Count(USUAL_UNDERARM))
        .kept(Kept::Underarm)
        .folded(MORE),
    First => Field::count(PLAIN).starts(Start::Count(USUAL_FIRST)).folded(MORE),
    Last => Field::count(PLAIN).starts(Start::Count(USUAL_LAST)).folded(MORE).remarked(PRACTICE),
    Rhythm => Field::choice::<Pace>().in_answer(),
}

/// A raglan.
pub struct Raglan;

/// Its row in the list of tools.
pub const ENTRY: Entry = Entry::of::<Raglan>(words::TITLE);

impl Tool for Raglan {
    const ID: &'static str = "raglan";
    const FIELDS: &'static [Field] = FIELDS;
    const STATES: &'static [State] = NAMED;
    type Question = Question;
    type Answer = Answer;

    fn read(fields: &Fields) -> Result<Question, Vec<Problem>> {
        let mut reader = Reader::new(fields);
        let question = Question {
            body: reader.count(Name::Body),
            sleeve: reader.count(Name::Sleeve),
            body_to: reader.count(Name::BodyTo),
            sleeve_to: reader.count(Name::SleeveTo),
            underarm: reader.count(Name::Underarm),
            rounds: reader.count(Name::Rounds),
            first: reader.count(Name::First),
            last: reader.count(Name::Last),
            rhythm: reader.choice(Name::Rhythm),
        };
        reader.done(question)
    }

    fn answer(question: &Question) -> Result<Answer, Vec<Problem>> {
        answer(question)
    }

    fn gifts(question: &Question, answer: &Answer) -> Vec<(Gift, Option<Typed>)> {
        // The sleeves lie on the needle with front and back.
        vec![
            (
                Gift::Before,
                Value::Count(question.body + 2 * question.sleeve).as_typed(),
            ),
            (Gift::After, Value::Count(answer.needle).as_typed()),
            (Gift::Rows, Value::Count(question.rounds).as_typed()),
        ]
    }

    fn plan(_: &Fields, question: &Question, answer: &Answer) -> Option<Plan<String>> {
        let plan = plan(question, answer);
        Some(plan.told(|event| words::followed(&event.doing)))
    }

    fn show(view: &View, question: &Question, answer: &Answer) -> Html {
        let picture = vec![
            drawing::raglan(question, answer, &words::labels(question, answer)),
            text_element("figcaption", "quiet", words::key(question, answer)),
        ];
        let listed = words::listed(answer, MOST_COUNTED);
        list(vec![
            answered(
                words::title(answer),
                spoken(words::headline(answer)),
                words::outcome(question, answer),
            ),
            text_element("p", "verdict", words::underarm(question, answer)),
            match words::drift(answer) {
                Some(drift) => list(vec![
                    text_element("p", "", drift),
                    choices(view, Name::Rhythm, question.rhythm),
                ]),
                None => Html::default(),
            },
            words::lines(question, answer).map_or_else(Html::default, |lines| text_element("p", "", lines)),
            element("figure", "needle", picture),
            counts(listed, words::tells_rounds(answer)),
            keep_count(view, answer.needle),
            working(words::steps(question, answer), words::SOURCE),
        ])
    }

    fn summary(_: &Fields, question: &Question, answer: &Answer) -> Summary {
        Summary {
            title: words::title(answer),
            lines: words::headline(answer),
            outcome: words::outcome(question, answer),
            figures: vec![
                Figure::count("full", answer.full),
                Figure::count("body_only", answer.body_only),
                Figure::count("sleeves_only", answer.sleeves_only),
                Figure::count("needle", answer.needle),
            ],
        }
    }

    fn wait(view: &View, problems: &[Problem]) -> Html {
        wait(view, problems, words::WAITING)
    }

    fn problem(_: &Fields, question: Option<&Question>, problem: &Problem) -> String {
        words::problem(question, problem)
    }

    /// Four parts that open from a neck.
    fn sign() -> Html {
        drawing::sign()
    }
}

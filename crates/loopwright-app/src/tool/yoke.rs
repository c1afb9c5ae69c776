//! The view of the yoke: from how many stitches to how many and in how many rounds; the shaping rounds, each written out,
//! and the division at the underarm; the yoke from above, to scale.

use super::next::Gift;
use super::{Entry, State, Tool};
use crate::drawing::rounds::sign;
use crate::drawing::yoke as drawing;
use crate::fields;
use crate::form::kept::{Kept, Offer, Value};
use crate::form::{Field, Fields, Reader, Start};
use crate::part::plain::{element, list, text, text_element};
use crate::part::{Figure, Summary, View, answered, keep_offer, notes, wait, working};
use crate::store::Typed;
use crate::words::followed;
use crate::words::page::{MORE, PRACTICE};
use crate::words::row;
use crate::words::yoke as words;
use loopwright::bounds::Bounds;
use loopwright::cords::{Step, print_steps};
use loopwright::follow::{Event, Plan};
use loopwright::problem::Problem;
use loopwright::shaping::{PLAIN, ROWS, USUAL_LAST};
use loopwright::spacing::Spaced;
use loopwright::terms::Multiple;
use loopwright::units::count;
use loopwright::yoke::{
    Answer, Division, Growth, MULTIPLE, Name, Question, Round, SHAPING_ROUNDS, STITCHES, UNDERARM, USUAL_ROUNDS,
    USUAL_UNDERARM, answer, plan,
};
use yew::prelude::*;

/// The named states.
const NAMED: &[State] = &[
    State::new("empty", ""),
    State::new("filled", "from=96&to=320&rounds=60&multiple=8"),
    State::new("body-up", "from=321&to=96&rounds=60"),
    State::new("neck-down", "from=97&to=300&rounds=50&shaping_rounds=3"),
    State::new("mixed", "from=96&to=280&rounds=60&multiple=8"),
    State::new("circle", "from=96&to=320&rounds=60&growth=circle&sleeve=66&underarm=10"),
    State::new("many-rounds", "from=96&to=320&rounds=60&shaping_rounds=12"),
    State::new("impossible", "from=300&to=8&rounds=3"),
    State::new("unreadable", "from=wide&to=9 1/2&rounds=20 cm&last=some"),
    State::new("extreme", "from=1000&to=100000&rounds=10000&shaping_rounds=100"),
];

fields! { FIELDS of Name, words::label;
    From => Field::count(STITCHES).kept_or(Kept::Neck, Kept::CastOn),
    To => Field::count(STITCHES).offering_counts(),
    Rounds => Field::count(ROWS),
    ShapingRounds => Field::count(SHAPING_ROUNDS).starts(Start::Count(USUAL_ROUNDS)).folded(MORE),
    Growth => Field::choice::<Growth>().folded(MORE),
    Multiple => Field::count(MULTIPLE)
        .starts(Start::Count(Multiple::ANY.of))
        .offering(Kept::Multiple)
        .folded(MORE),
    First => Field::count(PLAIN).starts(Start::From(usual_first)).folded(MORE).remarked(PRACTICE),
    Last => Field::count(PLAIN).starts(Start::From(usual_last)).folded(MORE).remarked(PRACTICE),
    // Without the underarm, which the project counts with the sleeve.
    Sleeve => Field::count(STITCHES)
        .starts(Start::From(usual_sleeve))
        .offering_counts()
        .folded(MORE)
        .remarked(PRACTICE),
    Underarm => Field::count(UNDERARM)
        .starts(Start::Count(USUAL_UNDERARM))
        .kept(Kept::Underarm)
        .folded(MORE)
        .remarked(PRACTICE),
}

/// The question as far as its first fields tell it: what the others start with follows from these.
fn begun(fields: &Fields) -> Option<Question> {
    let whole = |name: Name, bounds: Bounds<u32>| {
        let read = count::read(&fields.text(fields.path(name)), bounds);
        read.ok().map(|read| read.value)
    };
    let [from, to] = [whole(Name::From, STITCHES)?, whole(Name::To, STITCHES)?];
    let about = Question::about(from, to, whole(Name::Rounds, ROWS)?);
    let shaping_rounds = whole(Name::ShapingRounds, SHAPING_ROUNDS).unwrap_or(USUAL_ROUNDS);
    Some(Question {
        shaping_rounds,
        ..about
    })
}

/// From the neck down the first gap is like the others, and nothing stands there.
fn usual_first(fields: &Fields) -> String {
    let body_up = begun(fields).filter(|question| !question.is_neck_down());
    body_up.map_or_else(String::new, |question| question.usual_plain().to_string())
}

fn usual_last(fields: &Fields) -> String {
    let neck_down = begun(fields).filter(Question::is_neck_down);
    let usual = neck_down.map_or(USUAL_LAST, |question| question.usual_plain());
    usual.to_string()
}

fn usual_sleeve(fields: &Fields) -> String {
    let usual = |question: Question| Division::usual_sleeve(question.widest()).to_string();
    begun(fields).map_or_else(String::new, usual)
}

/// A count after the division, where there is one.
fn divided(answer: &Answer, count: fn(&Division) -> u32) -> Option<Typed> {
    answer
        .division
        .as_ref()
        .and_then(|division| Value::Count(count(division)).as_typed())
}

/// A yoke.
pub struct Yoke;

/// Its row in the list of tools.
pub const ENTRY: Entry = Entry::of::<Yoke>(words::TITLE);

impl Tool for Yoke {
    const ID: &'static str = "yoke";
    const FIELDS: &'static [Field] = FIELDS;
    const STATES: &'static [State] = NAMED;
    type Question = Question;
    type Answer = Answer;

    fn read(fields: &Fields) -> Result<Question, Vec<Problem>> {
        let mut reader = Reader::new(fields);
        let question = Question {
            from: reader.count(Name::From),
            to: reader.count(Name::To),
            rounds: reader.count(Name::Rounds),
            shaping_rounds: reader.count(Name::ShapingRounds),
            growth: reader.choice(Name::Growth),
            multiple: reader.count(Name::Multiple),
            first: reader.count_if_any(Name::First),
            last: reader.count_if_any(Name::Last),
            sleeve: reader.count_if_any(Name::Sleeve),
            underarm: reader.count(Name::Underarm),
        };
        reader.done(question)
    }

    fn answer(question: &Question) -> Result<Answer, Vec<Problem>> {
        answer(question)
    }

    fn gifts(question: &Question, answer: &Answer) -> Vec<(Gift, Option<Typed>)> {
        let steps = answer.rounds.iter().map(|round| Step {
            round: round.round,
            stitches: round.after,
        });
        vec![
            (Gift::Before, Value::Count(question.from).as_typed()),
            (
                Gift::After,
                Value::Count(answer.rounds.last().map_or(question.from, |round| round.after)).as_typed(),
            ),
            (Gift::Rows, Value::Count(question.rounds).as_typed()),
            (Gift::Steps, Some(Typed::plain(print_steps(&steps.collect::<Vec<_>>())))),
            (Gift::Body, divided(answer, |division| division.body_round)),
            (Gift::Sleeve, divided(answer, |division| division.sleeve_round)),
        ]
    }

    fn plan(fields: &Fields, question: &Question, answer: &Answer) -> Option<Plan<String>> {
        let plan = plan(question, answer).for_hand(fields.settings().hand(), |spaced| spaced);
        let told = |event: &Event<Spaced>| followed::spaced(plan.knitting, event.doing, event.written.as_ref());
        Some(plan.told(told))
    }

    fn offers(answer: &Answer) -> Vec<Offer> {
        let Some(division) = &answer.division else {
            return Vec::new();
        };
        vec![
            (Kept::Body, Value::Count(division.body_round)),
            (Kept::Sleeve, Value::Count(division.sleeve_round)),
            (Kept::Underarm, Value::Count(division.underarm)),
        ]
    }

    fn show(view: &View, question: &Question, answer: &Answer) -> Html {
        let line = text_element("p", "row", words::headline(answer));
        let picture = vec![
            drawing::yoke(question, answer, words::drawing(question, answer)),
            text_element("figcaption", "quiet", words::KEY),
        ];
        let rounds = answer.rounds.iter().map(|round| written_out(question, round));
        let first = answer.rounds.first();
        let meanings = first.map_or_else(Html::default, |round| notes(Vec::new(), &round.row));
        list(vec![
            answered(words::ANSWER, line, words::outcome(question)),
            text_element("p", "verdict", words::division(question, answer)),
            text_element("h3", "", words::ROUNDS),
            element("div", "ticked", vec![element("ul", "rounds", rounds.collect())]),
            element("figure", "needle", picture),
            meanings,
            list(
                Self::offers(answer)
                    .into_iter()
                    .map(|offer| keep_offer(view, offer))
                    .collect(),
            ),
            working(words::steps(question, answer), words::SOURCE),
        ])
    }

    fn summary(_: &Fields, question: &Question, answer: &Answer) -> Summary {
        let after = answer.rounds.last().map(|round| Figure::count("after", round.after));
        let mut figures = vec![Figure::count("plain", answer.plain)];
        figures.extend(after);
        Summary {
            title: words::ANSWER,
            lines: vec![words::headline(answer)],
            outcome: words::outcome(question),
            figures,
        }
    }

    fn wait(view: &View, problems: &[Problem]) -> Html {
        wait(view, problems, words::WAITING)
    }

    fn problem(_: &Fields, question: Option<&Question>, problem: &Problem) -> String {
        words::problem(question, problem)
    }

    /// Three steps from a neck.
    fn sign() -> Html {
        sign(5, 30, 3)
    }
}

/// One shaping round: what it comes to, and what is knitted.
fn written_out(question: &Question, round: &Round) -> Html {
    let sentence = text(words::listed(question, round).into());
    let words = vec![sentence, text_element("p", "instruction", row::line(&round.row))];
    // One element beside the box that paper has to tick.
    element("li", "", vec![element("div", "", words)])
}

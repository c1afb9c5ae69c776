//! The view of the yoke: from how many stitches to how many and in how many rounds; the shaping rounds, each with how
//! many it changes and the count after it.

use super::{Entry, State, Tool};
use crate::drawing::rounds as drawing;
use crate::fields;
use crate::form::kept::Kept;
use crate::form::{Field, Fields, Reader, Start};
use crate::part::plain::{element, items, list, text_element};
use crate::part::{View, answered, wait, working};
use crate::words::page::{MORE, PRACTICE};
use crate::words::yoke as words;
use loopwright::problem::Problem;
use loopwright::shaping::{PLAIN, ROWS, USUAL_LAST};
use loopwright::terms::Multiple;
use loopwright::yoke::{Answer, MULTIPLE, Name, Question, SHAPING_ROUNDS, STITCHES, USUAL_ROUNDS, answer};
use yew::prelude::*;

/// The named states.
const NAMED: &[State] = &[
    State::new("empty", ""),
    State::new("filled", "from=320&to=96&rounds=60&multiple=8"),
    State::new("neck-down", "from=97&to=300&rounds=50&shaping_rounds=3"),
    State::new("mixed", "from=96&to=280&rounds=60&multiple=8"),
    State::new("impossible", "from=300&to=8&rounds=3"),
    State::new("unreadable", "from=wide&to=9 1/2&rounds=20 cm&last=some"),
    State::new("extreme", "from=1000&to=100000&rounds=10000&shaping_rounds=100"),
];

fields! { FIELDS of Name, words::label;
    From => Field::count(STITCHES).kept(Kept::CastOn),
    To => Field::count(STITCHES),
    Rounds => Field::count(ROWS),
    ShapingRounds => Field::count(SHAPING_ROUNDS).starts(Start::Count(USUAL_ROUNDS)).folded(MORE),
    Multiple => Field::count(MULTIPLE).starts(Start::Count(Multiple::ANY.of)).folded(MORE),
    First => Field::count(PLAIN).folded(MORE),
    Last => Field::count(PLAIN).starts(Start::Count(USUAL_LAST)).folded(MORE).remarked(PRACTICE),
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
            multiple: reader.count(Name::Multiple),
            first: reader.count_if_any(Name::First),
            last: reader.count(Name::Last),
        };
        reader.done(question)
    }

    fn answer(question: &Question) -> Result<Answer, Vec<Problem>> {
        answer(question)
    }

    fn show(_: &View, question: &Question, answer: &Answer) -> Html {
        let schedule = &answer.schedule;
        let line = text_element("p", "row", words::headline(schedule));
        let picture = vec![
            drawing::rounds(schedule, &words::drawing(schedule)),
            text_element("figcaption", "quiet", words::KEY),
        ];
        list(vec![
            answered(words::ANSWER, line, words::outcome(question)),
            items("ul", words::listed(schedule)),
            text_element("p", "", words::EVENLY),
            element("figure", "needle", picture),
            working(words::steps(question, schedule), words::SOURCE),
        ])
    }

    fn wait(view: &View, problems: &[Problem]) -> Html {
        wait(view, problems, words::WAITING)
    }

    fn problem(_: &View, _: Option<&Question>, problem: &Problem) -> String {
        words::problem(problem)
    }

    /// Three steps from a neck.
    fn sign() -> Html {
        drawing::sign(5, 30, 3)
    }
}

//! The view of shaping over rows: how many stitches in how many rows; the instruction, what to work at the two edges,
//! the edges drawn row by row, and the rows one by one.

use super::next::Gift;
use super::{Entry, State, Tool};
use crate::drawing::shaping as drawing;
use crate::fields;
use crate::form::kept::{Kept, Value};
use crate::form::{Field, Fields, Reader, Start};
use crate::part::plain::{element, items, list, text_element};
use crate::part::{
    Figure, Form, Part, Part::Words, Summary, View, answered, good_to_know, keep_count, one_by_one, spoken, wait,
    working,
};
use crate::store::Typed;
use crate::words::page::MORE;
use crate::words::{problem, schedule, shaping as words};
use loopwright::bounds::Bounds;
use loopwright::follow::Plan;
use loopwright::problem::Problem;
use loopwright::shaping::{
    Answer, Ask, Asked, Doing, EACH, EDGE, Increase, KnittingKind, LastRow, Name, Order, PLAIN, Question, ROWS,
    STITCHES, ShapedSides, Slope, USUAL_EACH, USUAL_EDGE, USUAL_FIRST, USUAL_LAST, answer, plan,
};
use yew::prelude::*;

/// Stitches to lose, to gain or to end with; what is too many there is for the maths to say.
const AMOUNTS: Bounds<u32> = Bounds::new(0, STITCHES.most);

/// Shaping rows listed one by one.
const MOST_LISTED: usize = 400;

/// The named states.
const NAMED: &[State] = &[
    State::new("empty", ""),
    State::new("filled", "amount=18&rows=66"),
    State::new(
        "sleeve",
        "ask=reach&amount=84&rows=96&stitches=56&knitting=round&increase=kfb&first=",
    ),
    State::new(
        "any-row",
        "amount=13&rows=40&stitches=15&edge=3&rest=fewer&sides=any&first=2",
    ),
    State::new("mixed", "amount=24&rows=80&order=mixed"),
    State::new("one-edge", "amount=8&rows=16&each=1"),
    State::new("cramped", "amount=75&rows=80&stitches=80&edge=3&rest=fewer"),
    State::new("once", "ask=gain&amount=2&rows=12"),
    State::new("impossible", "amount=80&rows=66"),
    State::new("no-count", "ask=reach&amount=40&rows=66"),
    State::new("unreadable", "amount=18 cm&rows=many&each=0"),
    State::new("extreme", "ask=gain&amount=9998&rows=10000&order=mixed&sides=any"),
];

fields! { FIELDS of Name, words::label;
    Ask => Field::choice::<Asked>().in_sentence(),
    Amount => Field::count(AMOUNTS).in_sentence(),
    Rows => Field::count(ROWS).in_sentence(),
    Knitting => Field::choice::<KnittingKind>().in_sentence(),
    Stitches => Field::count(STITCHES).offering_counts(),
    Each => Field::count(EACH).starts(Start::Count(USUAL_EACH)).folded(MORE),
    First => Field::count(PLAIN).starts(Start::Count(USUAL_FIRST)).folded(MORE),
    Last => Field::count(PLAIN).starts(Start::Count(USUAL_LAST)).folded(MORE),
    Edge => Field::count(EDGE)
        .starts(Start::Count(USUAL_EDGE))
        .offering(Kept::Edge)
        .folded(MORE),
    Rest => Field::choice::<LastRow>().folded(MORE),
    Order => Field::choice::<Order>().folded(MORE),
    Sides => Field::choice::<ShapedSides>().folded(MORE),
    Slope => Field::choice::<Slope>().folded(MORE),
    Increase => Field::choice::<Increase>().folded(MORE),
}

/// Shaping over rows.
pub struct Shaping;

/// Its row in the list of tools.
pub const ENTRY: Entry = Entry::of::<Shaping>(words::TITLE);

impl Tool for Shaping {
    const ID: &'static str = "shaping";
    const FIELDS: &'static [Field] = FIELDS;
    const STATES: &'static [State] = NAMED;
    type Question = Question;
    type Answer = Answer;

    fn read(fields: &Fields) -> Result<Question, Vec<Problem>> {
        let mut reader = Reader::new(fields);
        let question = Question {
            ask: ask(&mut reader),
            rows: reader.count(Name::Rows),
            stitches: reader.count_if_any(Name::Stitches),
            each: reader.count(Name::Each),
            rest: reader.choice::<LastRow>(Name::Rest) == LastRow::MayChangeFewer,
            right_side: reader.choice::<ShapedSides>(Name::Sides) == ShapedSides::RightOnly,
            knitting: reader.choice::<KnittingKind>(Name::Knitting).knitting(),
            // Left empty it is a gap like the others.
            first: reader.count_unless_emptied(Name::First),
            last: reader.count(Name::Last),
            order: reader.choice(Name::Order),
            edge: reader.count(Name::Edge),
            slope: reader.choice(Name::Slope),
            increase: reader.choice(Name::Increase),
        };
        reader.done(question)
    }

    fn answer(question: &Question) -> Result<Answer, Vec<Problem>> {
        answer(question)
    }

    fn gifts(question: &Question, answer: &Answer) -> Vec<(Gift, Option<Typed>)> {
        let count = |count: Option<u32>| count.and_then(|count| Value::Count(count).as_typed());
        vec![
            (Gift::Before, count(question.stitches)),
            (Gift::After, count(answer.after)),
            (Gift::Rows, count(Some(question.rows))),
        ]
    }

    fn plan(fields: &Fields, question: &Question, answer: &Answer) -> Option<Plan<String>> {
        let plan = plan(question, answer).for_hand(fields.settings().hand(), Doing::left_handed);
        Some(plan.told(|event| words::followed(&event.doing)))
    }

    fn form(form: &Form) -> Html {
        let knitting = form.view.fields.choice(Name::Knitting);
        list(vec![
            form.line(&[
                Words(words::I_HAVE_TO),
                Part::Field(Name::Ask),
                Part::Field(Name::Amount),
                Words(words::IN_THE_NEXT),
                Part::Field(Name::Rows),
                Words(words::rows_wanted(knitting)),
                Part::Field(Name::Knitting),
            ]),
            form.columns(),
        ])
    }

    fn show(view: &View, question: &Question, answer: &Answer) -> Html {
        let mut line = vec![spoken(vec![words::headline(question, answer)])];
        line.extend(words::in_full(answer).map(|full| text_element("p", "", full)));
        let rows = schedule::listed(&answer.schedule, MOST_LISTED);
        let figure = vec![
            drawing::edges(question, answer, &words::labels(question, answer)),
            text_element("figcaption", "quiet", words::key(question, answer)),
        ];
        let limits = words::limits(question, answer).map(|limits| text_element("p", "", limits));
        list(vec![
            answered(
                words::from_next(question.knitting),
                list(line),
                words::outcome(question, answer),
            ),
            items("ul", words::pair(question, answer)),
            limits.unwrap_or_default(),
            element("figure", "needle", figure),
            one_by_one(schedule::one_by_one(question.knitting), rows, words::tells_rows(answer)),
            good_to_know(words::notes(question, answer)),
            answer.after.map_or_else(Html::default, |after| keep_count(view, after)),
            working(words::steps(question, answer), words::SOURCE),
        ])
    }

    fn summary(_: &Fields, question: &Question, answer: &Answer) -> Summary {
        let mut lines = vec![words::headline(question, answer)];
        lines.extend(words::in_full(answer));
        let mut figures = vec![
            Figure::count("shaping_rows", answer.shaping_rows),
            Figure::count("change", answer.change),
            Figure::count("used", answer.used),
        ];
        figures.extend(answer.after.map(|after| Figure::count("after", after)));
        Summary {
            title: words::from_next(question.knitting),
            lines,
            outcome: words::outcome(question, answer),
            figures,
        }
    }

    /// The first line is all of it. The one behind it says the same row by row, and is left to the page of the step.
    fn in_a_list(summary: &Summary) -> String {
        let first = summary.lines.first().cloned().into_iter().collect();
        let short = Summary {
            lines: first,
            ..summary.clone()
        };
        short.in_a_list()
    }

    /// What is too steep can be mended in the sentence, which is looked at first, or by a figure that is folded away.
    fn wait(view: &View, problems: &[Problem]) -> Html {
        wait(view, problems, words::WAITING)
    }

    fn problem(_: &Fields, question: Option<&Question>, problem: &Problem) -> String {
        match question {
            Some(question) => words::problem(question, problem),
            None => problem::sentence(&problem.kind),
        }
    }

    /// A piece that becomes narrower.
    fn sign() -> Html {
        drawing::sign()
    }
}

fn ask(reader: &mut Reader) -> Ask {
    let amount = reader.count(Name::Amount);
    match reader.choice(Name::Ask) {
        Asked::Lose => Ask::Lose(amount),
        Asked::Gain => Ask::Gain(amount),
        Asked::Reach => Ask::Reach(amount),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Untouched it starts with a number; emptied it is a gap like the others.
    #[test]
    fn plain_rows_first_may_be_emptied() {
        let first = |link| {
            let fields = crate::tool::tests::fields_of::<Shaping>(&State::new("", link));
            Shaping::read(&fields).map(|question| question.first)
        };
        assert_eq!(first("amount=18&rows=66"), Ok(Some(USUAL_FIRST)));
        assert_eq!(first("amount=18&rows=66&first="), Ok(None));
        assert_eq!(first("amount=18&rows=66&first=3"), Ok(Some(3)));
    }
}

//! The view of the tail: how many stitches, how and in what yarn; the tail as a line beside an arm's length, the ways
//! it was reckoned side by side, and in the middle of casting on whether what is left will do.

mod ask;
mod states;

use super::{Entry, State, Tool};
use crate::drawing::tail as drawing;
use crate::form::{Field, Fields, TAPE, YARN};
use crate::part::plain::{element, list, text_element};
use crate::part::{Figure, Form, Part, Part::Words, Summary, View, answered, good_to_know, unit_choice, wait, working};
use crate::words::page::PRACTICE;
use crate::words::tail::{self as words, Print};
use loopwright::problem::Problem;
use loopwright::tail::{ARM, Answer, Estimate, Name, Question, Strand, Way, Why, answer};
use loopwright::units::{Length, LengthUnit};
use yew::prelude::*;

/// The tail of a cast-on.
pub struct Tail;

/// Its row in the list of tools.
pub const ENTRY: Entry = Entry::of::<Tail>(words::TITLE);

impl Tool for Tail {
    const ID: &'static str = "tail";
    const FIELDS: &'static [Field] = ask::FIELDS;
    const STATES: &'static [State] = states::NAMED;
    type Question = Question;
    type Answer = Answer;

    fn read(fields: &Fields) -> Result<Question, Vec<Problem>> {
        ask::question(fields)
    }

    fn answer(question: &Question) -> Result<Answer, Vec<Problem>> {
        answer(question)
    }

    /// The sentence with its fields, and the rest folded away.
    fn form(form: &Form) -> Html {
        let stitches = [
            Words(words::I_CAST_ON),
            Part::Field(Name::Stitches),
            Words(words::STITCHES),
        ];
        let mut how = vec![Part::Field(Name::Method)];
        let mut unit = Html::default();
        if ask::draws_from_tail(&form.view.fields) {
            how.extend([Words(words::IN_YARN), Part::Field(Name::Yarn)]);
            let choice = unit_choice(form.view, &YARN, words::LABEL_UNIT);
            unit = element(
                "div",
                "line",
                vec![text_element("span", "", words::MEASURED_IN), choice],
            );
        }
        list(vec![form.line(&stitches), form.line(&how), unit, form.columns()])
    }

    /// The tail, its drawing, the estimates and the sum.
    fn show(view: &View, question: &Question, answer: &Answer) -> Html {
        let print = Print {
            yards: is_in_yards(view, answer),
        };
        let line = text_element("p", "row", words::headline(answer, print));
        let verdict = answer.left.as_ref().map_or_else(Html::default, |left| {
            text_element("p", "verdict", words::verdict(left, print))
        });
        list(vec![
            answered(words::title(answer.strand), line, words::outcome(answer)),
            verdict,
            text_element("p", "", words::because(answer, print)),
            drawn(answer, print),
            estimates(question, answer, print),
            good_to_know(words::notes(answer)),
            working(words::sum(answer, question.end, print), words::SOURCE),
        ])
    }

    fn summary(view: &View, _: &Question, answer: &Answer) -> Summary {
        let print = Print {
            yards: is_in_yards(view, answer),
        };
        Summary {
            title: words::title(answer.strand),
            lines: vec![words::headline(answer, print)],
            outcome: words::outcome(answer),
            figures: vec![
                Figure::length("tail", answer.tail),
                Figure::length("needs", answer.needs),
            ],
        }
    }

    fn wait(view: &View, problems: &[Problem]) -> Html {
        wait(view, problems, words::WAITING)
    }

    fn problem(_: &View, _: Option<&Question>, problem: &Problem) -> String {
        words::problem(problem)
    }

    /// A tail in its three parts.
    fn sign() -> Html {
        let cm = |cm| Length::of(cm, LengthUnit::Cm);
        let tail = drawing::Tail {
            stitches: cm(240),
            with_reserve: cm(290),
            with_end: cm(350),
        };
        drawing::line(&tail, ARM, "")
    }
}

/// In which family of units all lengths are printed. Where no yarn is measured off there is the end only, which was
/// typed as a tape shows it.
fn is_in_yards(view: &View, answer: &Answer) -> bool {
    match answer.strand {
        Strand::Thumb { .. } => view.in_inches(&YARN),
        Strand::EndOnly | Strand::HalfInWaste | Strand::Second => match answer.left {
            Some(_) => view.in_inches(&YARN),
            None => view.in_inches(&TAPE),
        },
    }
}

/// The tail as a line.
fn drawn(answer: &Answer, print: Print) -> Html {
    let tail = drawing::Tail {
        stitches: answer.needs,
        with_reserve: answer.with_reserve,
        with_end: answer.tail,
    };
    let figure = vec![
        drawing::line(&tail, ARM, &words::drawing(answer, print)),
        text_element("figcaption", "quiet", words::key(print)),
    ];
    element("figure", "needle", figure)
}

/// The ways it was reckoned, side by side.
fn estimates(question: &Question, answer: &Answer, print: Print) -> Html {
    if answer.estimates.is_empty() {
        return Html::default();
    }
    let ways = answer.estimates.iter().enumerate().map(|(place, estimate)| {
        let sum = words::estimate(estimate, question.stitches, print);
        let wins = words::wins(answer).filter(|_| answer.wins == Some(place));
        way(estimate, sum, wins)
    });
    let mut content = vec![
        text_element("h3", "", words::ESTIMATES),
        element("div", "ways", ways.collect()),
    ];
    if answer.why != Why::Measured {
        content.push(text_element("p", "quiet", words::SURER));
    }
    element("section", "", content)
}

/// One way, with its sum.
fn way(estimate: &Estimate, sum: String, wins: Option<&'static str>) -> Html {
    let mut content = vec![
        text_element("p", "", words::way(&estimate.way)),
        text_element("p", "", sum),
    ];
    match estimate.way {
        Way::Measured(_) => {}
        Way::Wraps { .. } | Way::Edge { .. } | Way::Gauge { .. } | Way::Class { .. } => {
            content.push(text_element("p", "practice", PRACTICE))
        }
    }
    if let Some(wins) = wins {
        content.push(text_element("strong", "", wins));
    }
    element("div", if wins.is_some() { "wins" } else { "" }, content)
}

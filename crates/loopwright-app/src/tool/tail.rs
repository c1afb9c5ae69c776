//! The view of the tail: how many stitches, how and in what yarn; the tail as a line beside an arm's length, and the ways
//! it was reckoned side by side. In the middle of casting on it is another question with an answer of its own: how many
//! stitches what is left gives, and whether that will do.

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
use loopwright::tail::{ARM, Answer, Estimate, Name, Question, Remaining, Strand, Way, Why, answer};
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
        let is_left = ask::asks_what_is_left(&form.view.fields);
        let cast_on = [
            Words(words::I_CAST_ON),
            Part::Field(Name::Stitches),
            Words(words::STITCHES),
            Part::Field(Name::Method),
        ];
        let mut yarn = Vec::new();
        if ask::draws_from_tail(&form.view.fields) {
            yarn.push(form.line(&[Words(words::THE_YARN_IS), Part::Field(Name::Yarn)]));
            // Beside a tail that is typed its unit stands already.
            if !is_left {
                let choice = unit_choice(form.view, &YARN, words::LABEL_UNIT);
                let said = text_element("span", "", words::MEASURED_IN);
                yarn.push(element("div", "line", vec![said, choice]));
            }
        }
        let wanted = form.line_of("line wanted", &[Part::Labelled(Name::Wanted)]);
        list(vec![wanted, form.line(&cast_on), list(yarn), form.columns()])
    }

    /// The tail, its drawing, the estimates and the sum; or what is left, and whether it will do.
    fn show(view: &View, question: &Question, answer: &Answer) -> Html {
        let print = Print {
            yards: is_in_yards(&view.fields, answer),
        };
        if let Some(left) = &answer.left {
            return left_over(question, answer, left, print);
        }
        let line = text_element("p", "row", words::headline(answer, print));
        list(vec![
            answered(words::title(answer.strand), line, words::outcome(answer)),
            text_element("p", "", words::because(answer, print)),
            drawn(answer, print),
            estimates(question, answer, words::ESTIMATES.into(), print),
            good_to_know(words::notes(answer)),
            working(words::sum(answer, question.end, print), words::SOURCE),
        ])
    }

    fn summary(fields: &Fields, _: &Question, answer: &Answer) -> Summary {
        let print = Print {
            yards: is_in_yards(fields, answer),
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
        let words = match ask::asks_what_is_left(&view.fields) {
            true => words::WAITING_FOR_LEFT,
            false => words::WAITING,
        };
        wait(view, problems, words)
    }

    fn problem(_: &Fields, _: Option<&Question>, problem: &Problem) -> String {
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
fn is_in_yards(fields: &Fields, answer: &Answer) -> bool {
    match answer.strand {
        Strand::Thumb { .. } => fields.in_inches(&YARN),
        Strand::EndOnly | Strand::HalfInWaste | Strand::Second => match answer.left {
            Some(_) => fields.in_inches(&YARN),
            None => fields.in_inches(&TAPE),
        },
    }
}

/// What is left: how many stitches it gives, whether it will do, and the sum.
fn left_over(question: &Question, answer: &Answer, left: &Remaining, print: Print) -> Html {
    let line = text_element("p", "row", words::left::headline(left));
    list(vec![
        answered(words::left::TITLE, line, words::left::verdict(left, print)),
        text_element("p", "", words::left::because(answer, left, question.end, print)),
        estimates(question, answer, words::left::estimates(question.stitches), print),
        working(words::left::sum(answer, left, question.end, print), words::SOURCE),
    ])
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
fn estimates(question: &Question, answer: &Answer, title: String, print: Print) -> Html {
    if answer.estimates.is_empty() {
        return Html::default();
    }
    let ways = answer.estimates.iter().enumerate().map(|(place, estimate)| {
        let sum = words::estimate(estimate, question.stitches, print);
        let wins = words::wins(answer).filter(|_| answer.wins == Some(place));
        way(estimate, sum, wins)
    });
    let mut content = vec![text_element("h3", "", title), element("div", "ways", ways.collect())];
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

//! The answer as it is drawn: the balls to buy, where the yarn goes, and the sum.

use crate::drawing::balls::{self, Balls};
use crate::form::{Fields, WEIGHT, YARN};
use crate::part::plain::{element, items, list, text_element};
use crate::part::{Figure, Summary, View, answered, good_to_know, working};
use crate::words::yarn::{self as words, Printer};
use loopwright::units::print::Step;
use loopwright::units::{Mass, MassUnit};
use loopwright::yarn::{Answer, Question};
use yew::prelude::*;

/// The answer as data.
pub fn summary(fields: &Fields, question: &Question, answer: &Answer) -> Summary {
    let print = &Printer {
        yarn: &|length, step| fields.print_to(&YARN, length, step),
        mass: &|mass| fields.print_to(&WEIGHT, mass, weighed(fields, mass)),
        unit: YARN.shown(fields.settings()).unit,
    };
    let mut figures = vec![
        Figure::count("balls", answer.balls),
        Figure::length("need", answer.need),
        Figure::length("bought", answer.bought),
    ];
    figures.extend(answer.mass.map(|mass| Figure::mass("mass", mass)));
    Summary {
        title: words::title(question),
        lines: vec![words::buy(answer)],
        outcome: words::used(question, answer, print),
        figures,
    }
}

/// The answer, its drawing, and its sum.
pub fn show(view: &View, question: &Question, answer: &Answer) -> Html {
    printed(view, |print| drawn_below_each_other(question, answer, print))
}

/// Something drawn with a printer for the units that are shown.
pub fn printed(view: &View, draw: impl FnOnce(&Printer) -> Html) -> Html {
    draw(&Printer {
        yarn: &|length, step| view.print_to(&YARN, length, step),
        mass: &|mass| view.print_to(&WEIGHT, mass, weighed(&view.fields, mass)),
        unit: YARN.shown(view.fields.settings()).unit,
    })
}

fn drawn_below_each_other(question: &Question, answer: &Answer, print: &Printer) -> Html {
    let line = text_element("p", "row", words::buy(answer));
    let close = words::close(answer, print);
    list(vec![
        answered(words::title(question), line, words::used(question, answer, print)),
        if close.is_empty() {
            Html::default()
        } else {
            text_element("p", "close", close)
        },
        apart(answer, print),
        text_element("p", "", words::bought(question, answer, print)),
        drawn(answer, print),
        lines(question, answer, print),
        good_to_know(
            answer
                .notes
                .iter()
                .map(|note| words::note(*note, question, print))
                .collect(),
        ),
        working(words::steps(question, answer, print), words::source(question)),
    ])
}

/// What is bought of each yarn, where there are several.
fn apart(answer: &Answer, print: &Printer) -> Html {
    match answer.yarns.is_empty() {
        true => Html::default(),
        false => items("ul", words::apart(answer, print)),
    }
}

/// How finely a weight is said: no kitchen scale shows tenths of a gram, and of a few grams they are something.
fn weighed(fields: &Fields, mass: Mass) -> Step {
    const FEW: Mass = Mass::of(10, MassUnit::Gram);
    let shown = WEIGHT.shown(fields.settings());
    match shown.unit {
        MassUnit::Gram if mass >= FEW => Step::Whole,
        MassUnit::Gram | MassUnit::Kilogram | MassUnit::Ounce | MassUnit::Pound => shown.step,
    }
}

/// The balls, and what each band means.
fn drawn(answer: &Answer, print: &Printer) -> Html {
    let bands = answer.bands();
    let key = bands
        .iter()
        .map(|(band, end)| text_element("li", balls::class(*band), words::band(*band, *end, print)));
    let key = key.collect();
    let picture = balls::balls(&Balls {
        count: answer.balls,
        all: answer.bought,
        caption: Some(&words::drawing(answer, balls::each(answer.balls), print)),
        bands,
    });
    element("figure", "skeins", vec![picture, element("ul", "key", key)])
}

/// Where the yarn goes, if not all for one purpose.
pub fn lines(question: &Question, answer: &Answer, print: &Printer) -> Html {
    if answer.lines.len() < 2 {
        return Html::default();
    }
    let lines = answer
        .lines
        .iter()
        .map(|line| words::line(line, question, print))
        .collect();
    let content = vec![
        text_element("h3", "", words::LINES),
        items("ol", lines),
        text_element("p", "source", words::footnote()),
    ];
    element("section", "lines", content)
}

//! The view of yarn needed: the pieces and the swatch, or the pattern's yarn; the balls to buy, drawn; where it goes.

mod ask;
mod form;
mod items;
mod states;

pub use states::STATES;

use crate::desk::Desk;
use crate::drawing::balls::{self, Balls};
use crate::part::plain::{el, items, list, says, tells};
use crate::part::{Sheet, WEIGHT, YARN, answered, good_to_know, tool_page, waiting, working};
use crate::words::intl::decimal;
use crate::words::page;
use crate::words::yarn::{self as words, Print, Value};
use form::Form;
use loopwright::problem::{Kind, Problem};
use loopwright::tables::Certainty;
use loopwright::units::print::{self, Step};
use loopwright::units::{Length, LengthUnit};
use loopwright::yarn::{Answer, Question, answer};
use yew::prelude::*;

const SHEET: &str = "yarn";

/// Yarn shorter than this is printed to a tenth.
const FINE: Length = Length::of(10, LengthUnit::M);

/// Draws the tool.
pub fn view(desk: &Desk) -> Html {
    let sheet = Sheet::new(desk, SHEET);
    let mut problems = Vec::new();
    let question = ask::question(&sheet, &mut problems);
    let mut answers = None;
    if problems.is_empty() {
        match answer(&question) {
            Ok(answer) => answers = Some(shown(desk, &question, &answer)),
            Err(found) => problems = found,
        }
    }
    let answers = answers.unwrap_or_else(|| missing(&sheet, &problems));
    let form = Form {
        sheet: &sheet,
        problems: &problems,
    };
    tool_page(&sheet, form.draw(), answers)
}

/// Its small picture: three balls, the last one partly used.
pub fn sign() -> Html {
    let metres = |metres| Length::of(metres, LengthUnit::M);
    balls::balls(&Balls {
        count: 3,
        all: metres(30),
        bands: &[("sure", metres(22)), ("perhaps", metres(25)), ("reserve", metres(28))],
        caption: None,
    })
}

/// What stands where the answer will be.
fn missing(sheet: &Sheet, problems: &[Problem]) -> Html {
    match problems.first() {
        Some(problem) if problem.kind == Kind::NeedsSwatch => {
            tells("p", "quiet", words::refused(&sheet.text("swatch_fabric", "")))
        }
        first => waiting(
            problems,
            items::FOLDED,
            words::waiting(first.map_or("", |first| first.field.key())),
        ),
    }
}

/// The answer, its drawing, and its sum.
fn shown(desk: &Desk, question: &Question, answer: &Answer) -> Html {
    let print = &|value: Value| match value {
        Value::Yarn(length) if length >= FINE => YARN.print_to(desk, length, Step::Whole),
        Value::Yarn(length) | Value::Exact(length) => YARN.print(desk, length),
        Value::Held(length) => {
            let held = YARN.print(desk, length);
            if held == YARN.print_to(desk, length, Step::Thousandth) {
                return held;
            }
            [words::ABOUT, &held].concat()
        }
        Value::Fine(length) => print::with_unit(length, LengthUnit::Cm, Step::Thousandth),
        Value::Mass(mass) => WEIGHT.print(desk, mass),
        Value::Word(word) => word.into(),
        Value::Number(number) => decimal(number),
    };
    let line = tells("p", "row", words::buy(answer));
    let used = words::used(question, answer, print);
    let mut notes = Vec::new();
    for note in &answer.notes {
        notes.push(words::note(*note).into());
    }
    let close = words::close(answer, print);
    let close = if close.is_empty() {
        Html::default()
    } else {
        tells("p", "close", close)
    };
    let named = match answer.lines.len() {
        0 | 1 => Html::default(),
        _ => lines(answer, print),
    };
    list(vec![
        answered(words::title(question), line, used),
        close,
        tells("p", "", words::bought(question, answer, print)),
        drawn(answer, print),
        named,
        good_to_know(notes),
        working(words::steps(question, answer, print), words::source(question)),
    ])
}

/// The balls, and what each band means.
fn drawn(answer: &Answer, print: Print) -> Html {
    let mut captions = vec![words::drawing(answer, balls::each(answer.balls))];
    let (mut bands, mut key) = (Vec::new(), Vec::new());
    let mut reached = Length::ZERO;
    let range = answer.length;
    let ends = [range.least, range.expected, range.most, answer.need, answer.bought];
    for ((class, pattern), end) in words::BANDS.into_iter().zip(ends) {
        // A band of no width is not there.
        if end <= reached {
            continue;
        }
        reached = end;
        bands.push((class, end));
        let said = words::band(pattern, end, print);
        captions.push(said.clone());
        key.push(tells("li", class, said));
    }
    let picture = balls::balls(&Balls {
        count: answer.balls,
        all: answer.bought,
        bands: &bands,
        caption: Some(&captions.join(", ")),
    });
    el("figure", "skeins", vec![picture, el("ul", "key", key)])
}

/// Where the yarn goes.
fn lines(answer: &Answer, print: Print) -> Html {
    let mut named = Vec::new();
    for line in &answer.lines {
        let mut said = words::line(line, print);
        if line.certainty == Certainty::Practice {
            said.push_str(words::MARK);
        }
        named.push(said);
    }
    let content = vec![
        says("h3", "", words::LINES),
        items("ol", named),
        tells("p", "source", [words::FOOTNOTE, page::PRACTICE].concat()),
    ];
    el("section", "lines", content)
}

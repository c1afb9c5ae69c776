//! The view of one size marked through a pattern: the text she pastes, the size she taps, and the text again with her numbers
//! large. What is in doubt is asked about below its line.

mod file;
mod marked;
mod states;

use super::{Entry, State, Tool};
use crate::drawing::sign::sign as lines;
use crate::fields;
use crate::form::kept::{Kept, Value};
use crate::form::{Field, Fields, Reader, Start};
use crate::part::plain::{button, element, element_with, folded, items, list, quiet_button, text_element};
use crate::part::{
    Figure, Form, Part as Piece, Summary, View, answered, choices, keep_count, keep_offer, wait, working,
};
use crate::store::Typed;
use crate::words::sizes_in_text as words;
use file::{copying, opening};
use loopwright::problem::Problem;
use loopwright::sizes_in_text::{
    Answer, HerCount, Name, Part, Question, Show, answer, print_size, read_decisions, read_from_lines, read_names,
    read_size, without_from_line,
};
use loopwright::terms::Keep;
use states::NAMED;
use yew::prelude::*;

fields! { FIELDS of Name, words::label;
    PatternText => Field::pattern().example(Start::Text(words::EXAMPLE)),
    Keep => Field::choice::<Keep>().unlinked().in_sentence(),
    Sizes => Field::counts(words::EXAMPLE_SIZES).taken(Kept::Sizes),
    Size => Field::text().in_answer(),
    Show => Field::choice::<Show>().in_answer(),
    Decided => Field::pattern().in_answer(),
    OtherSizes => Field::pattern().in_answer(),
    Next => Field::text().unlinked().in_answer(),
}

/// One size in a text.
pub struct SizesInText;

/// Its row in the list of tools.
pub const ENTRY: Entry = Entry::of::<SizesInText>(words::TITLE);

impl Tool for SizesInText {
    const ID: &'static str = "sizes_in_text";
    const FIELDS: &'static [Field] = FIELDS;
    const STATES: &'static [State] = NAMED;
    const IS_HERS_ALONE: bool = true;
    type Question = Question;
    type Answer = Answer;

    fn read(fields: &Fields) -> Result<Question, Vec<Problem>> {
        let text = |name| fields.text(fields.path(name));
        let question = Question {
            text: text(Name::PatternText),
            names: read_names(&text(Name::Sizes)),
            size: read_size(&text(Name::Size)),
            from: read_from_lines(&text(Name::OtherSizes)),
            decisions: read_decisions(&text(Name::Decided)),
        };
        Reader::new(fields).done(question)
    }

    fn answer(question: &Question) -> Result<Answer, Vec<Problem>> {
        answer(question)
    }

    fn form(form: &Form) -> Html {
        let is_kept = form.view.fields.choice::<Keep>(Name::Keep) == Keep::OnDevice;
        list(vec![
            element("div", "fields", vec![form.labelled(Name::PatternText)]),
            opening(&form.view.sheet),
            form.line(&[Piece::Words(words::STAYS), Piece::Field(Name::Keep)]),
            text_element("p", "quiet", words::keeping(is_kept)),
            element("div", "fields", vec![form.labelled(Name::Sizes)]),
        ])
    }

    fn show(view: &View, question: &Question, answer: &Answer) -> Html {
        shown(view, question, answer)
    }

    fn summary(_: &Fields, _: &Question, answer: &Answer) -> Summary {
        let count = |number: usize| u32::try_from(number).unwrap_or(u32::MAX);
        Summary {
            title: words::FOUND,
            lines: vec![words::headline(answer)],
            outcome: words::outcome(answer),
            figures: vec![
                Figure::count("lists", count(answer.found.lists.len())),
                Figure::count("in_doubt", count(answer.in_doubt)),
                Figure::count("marked", count(answer.marked)),
            ],
        }
    }

    fn wait(view: &View, problems: &[Problem]) -> Html {
        wait(view, problems, words::WAITING)
    }

    fn problem(_: &Fields, _: Option<&Question>, problem: &Problem) -> String {
        words::problem(problem)
    }

    /// Lines of a text, with one number of each ringed.
    fn sign() -> Html {
        lines(
            "sign",
            "0 0 160 84",
            &[
                ("thin", "M8 20H66M94 20H152M8 42H88M116 42H152M8 64H44M72 64H152"),
                ("tick", "M72 14h16v12h-16zM94 36h16v12h-16zM50 58h16v12h-16z"),
            ],
        )
    }
}

/// The sentence at the top, her size, the text, and what follows from it.
fn shown(view: &View, question: &Question, answer: &Answer) -> Html {
    let line = text_element("p", "row spoken", words::headline(answer));
    let show = view.fields.choice::<Show>(Name::Show);
    list(vec![
        answered(words::FOUND, line, words::outcome(answer)),
        sizes(view, answer),
        choices(view, Name::Show, show),
        copying(answer.plain.clone()),
        marked::text_of(view, question, answer, show),
        another_size(view, answer),
        meeting(view, answer),
        counts(view, answer),
        text_element("p", "quiet", words::STAYS_HERE),
        working(words::steps(answer), words::SOURCE),
    ])
}

/// The name of a size.
fn name(answer: &Answer, size: usize) -> &str {
    answer.names.get(size).map_or("", String::as_str)
}

/// A button for each size; the one that is hers is pressed.
fn sizes(view: &View, answer: &Answer) -> Html {
    let button = |(size, name): (usize, &String)| {
        let pressed = if answer.size == Some(size) { "true" } else { "false" };
        let onclick = writing(view, vec![(Name::Size, print_size(size))]);
        html! { <button type="button" class="size" aria-pressed={pressed} {onclick}>{ name.clone() }</button> }
    };
    let buttons = answer.names.iter().enumerate().map(button).collect();
    let attributes = [
        ("class", "size-taps"),
        ("role", "group"),
        ("aria-label", words::YOUR_SIZE),
    ];
    list(vec![
        text_element("h3", "", words::YOUR_SIZE),
        element_with("div", &attributes, buttons),
        text_element("p", "quiet", words::named_in(answer)),
        other_names(view, answer),
    ])
}

/// Other lines that name sizes, each a tap away.
fn other_names(view: &View, answer: &Answer) -> Html {
    let others = answer.offered.iter().filter(|line| line.names != answer.names);
    let tap = |line: &loopwright::sizes_in_text::SizesLine| {
        let typed = vec![(Name::Sizes, line.names.join(", "))];
        quiet_button(words::take_names(line.line, &line.names), writing(view, typed))
    };
    element("div", "size-taps", others.take(OFFERED).map(tap).collect())
}

/// So many other lines are offered.
const OFFERED: usize = 4;

/// Writes texts into fields of this tool.
fn writing(view: &View, typed: Vec<(Name, String)>) -> Callback<MouseEvent> {
    let sheet = view.sheet.clone();
    Callback::from(move |_| {
        let entry = |(name, text): &(Name, String)| {
            crate::store::Entry::new(sheet.id, name.key(), Some(Typed::plain(text.clone())))
        };
        sheet.desk.write_many(typed.iter().map(entry).collect());
    })
}

/// "From a line on my size is another": first the size, then the line.
fn another_size(view: &View, answer: &Answer) -> Html {
    if answer.size.is_none() {
        return Html::default();
    }
    let next = read_size(&view.fields.text(view.fields.path(Name::Next))).filter(|size| *size < answer.names.len());
    let content = match next {
        Some(size) => vec![
            text_element("p", "", words::tap_line(name(answer, size))),
            quiet_button(words::LEAVE_IT.into(), writing(view, vec![(Name::Next, String::new())])),
        ],
        None => {
            let tap = |(size, name): (usize, &String)| {
                button(name.clone(), writing(view, vec![(Name::Next, print_size(size))]))
            };
            let taps = answer.names.iter().enumerate().map(tap).collect();
            vec![
                text_element("p", "quiet", words::ANOTHER_HOW),
                element("div", "size-taps", taps),
            ]
        }
    };
    let title = text_element("h3", "", words::ANOTHER);
    element("section", "another-size", [vec![title], content].concat())
}

/// Where two sizes meet, and lines that are no longer there.
fn meeting(view: &View, answer: &Answer) -> Html {
    let joins = answer.joins.iter();
    let joins = joins.map(|join| words::join(join.line, name(answer, join.before), name(answer, join.after)));
    let kept = view.fields.text(view.fields.path(Name::OtherSizes));
    let lost = answer.lost.iter().map(|from| {
        let without = without_from_line(&kept, &from.line);
        let sentence = words::lost(&from.line.words, name(answer, from.size));
        let end = quiet_button(words::END_IT.into(), writing(view, vec![(Name::OtherSizes, without)]));
        element("div", "to-ask", vec![text_element("p", "", sentence), end])
    });
    let joins: Vec<String> = joins.collect();
    let said = if joins.is_empty() {
        Html::default()
    } else {
        items("ul", joins)
    };
    list([said].into_iter().chain(lost).collect())
}

/// The stitch counts of her size, each with its line and a tap that keeps it. Nothing is kept inside another page.
fn counts(view: &View, answer: &Answer) -> Html {
    if answer.counts.is_empty() || view.sheet.frame.is_some() {
        return Html::default();
    }
    let count = |found: &HerCount| {
        let keep = match meant(found) {
            Some(kept) => keep_offer(view, (kept, Value::Count(found.stitches))),
            None => keep_count(view, found.stitches),
        };
        element(
            "li",
            "",
            vec![text_element("span", "", words::stitch_count(found)), keep],
        )
    };
    let counts = element("ul", "stitch-counts", answer.counts.iter().map(count).collect());
    folded(
        "more",
        words::COUNTS,
        vec![text_element("p", "quiet", words::COUNTS_HOW), counts],
    )
}

/// Under which name of the project a count is most likely kept.
const fn meant(found: &HerCount) -> Option<Kept> {
    match (found.of.part, found.of.is_cast_on) {
        (Some(Part::Neck), _) => Some(Kept::Neck),
        (Some(Part::Sleeve), _) => Some(Kept::Sleeve),
        (Some(Part::Underarm), _) => Some(Kept::Underarm),
        (Some(Part::Body), false) => Some(Kept::Body),
        (Some(Part::Body) | None, true) => Some(Kept::CastOn),
        (None, false) => None,
    }
}

#[cfg(test)]
mod tests;

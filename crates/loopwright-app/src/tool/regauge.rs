//! The view of a pattern at another gauge: both gauges and the counts; the size to follow or the counts that take their
//! place, then rows, shaping, and what else the gauge moves.

mod figure;
mod read;
mod states;

use super::{Entry, State, Tool};
use crate::drawing::rows::strip;
use crate::fields;
use crate::form::kept::Kept;
use crate::form::{Field, Fields, Start, TAPE, plus_behind};
use crate::part::plain::{element, list, text_element};
use crate::part::{Below, Figure, Summary, View, answered, good_to_know, row_by_row, wait, working};
use crate::words::regauge::{self as words, ABOUT_COUNTS, ABOUT_ROWS, ABOUT_SHAPING, Column, Lead, Sentences};
use crate::words::shaping::followed;
use crate::words::{schedule, sizing};
use loopwright::cast_on::EDGE;
use loopwright::follow::Plan;
use loopwright::problem::Problem;
use loopwright::regauge::{
    Answer, Converted, KnittingKind, MEASURE, NO_REPEAT, Name, Parity, Question, REPEAT, ROWS, STITCHES, Shaped,
    ShapingSide, USUAL_EACH, answer, places, plan,
};
use loopwright::shaping::{Doing, EACH};
use loopwright::terms::{MULTIPLE, Multiple, PLUS};
use yew::prelude::*;

/// More shaping rows than this are not listed one by one.
const MOST_LISTED: usize = 300;

fields! { FIELDS of Name, words::label;
    Pattern => Field::gauge().beside(Name::PatternRows.key()).kept(Kept::PatternStitches),
    Own => Field::gauge().beside(Name::OwnRows.key()).kept(Kept::GaugeStitches),
    Counts => Field::counts(words::EXAMPLE_COUNTS),
    Multiple => Field::count(MULTIPLE)
        .with_plus()
        .starts(Start::Count(Multiple::ANY.of))
        .kept(Kept::Multiple)
        .folded(ABOUT_COUNTS),
    Plus => Field::count(PLUS).starts(Start::From(plus)).folded(ABOUT_COUNTS),
    Wanted => Field::length(&TAPE, MEASURE).folded(ABOUT_COUNTS),
    Knitting => Field::choice::<KnittingKind>().folded(ABOUT_COUNTS),
    Edge => Field::count(EDGE).starts(Start::Count(EDGE.least)).folded(ABOUT_COUNTS),
    // The page asks for seam stitches together with the edge stitches.
    Seam => Field::whole().folded(ABOUT_COUNTS),
    Parity => Field::choice::<Parity>().folded(ABOUT_COUNTS),
    PatternRows => Field::gauge().of_rows().beside(Name::Pattern.key()).kept(Kept::PatternRows).folded(ABOUT_ROWS),
    OwnRows => Field::gauge().of_rows().beside(Name::Own.key()).kept(Kept::GaugeRows).folded(ABOUT_ROWS),
    Rows => Field::counts(words::EXAMPLE_ROWS).folded(ABOUT_ROWS),
    Length => Field::length(&TAPE, MEASURE).folded(ABOUT_ROWS),
    RowRepeat => Field::count(REPEAT).starts(Start::Count(NO_REPEAT)).folded(ABOUT_ROWS),
    From => Field::count(STITCHES).offering_counts().folded(ABOUT_SHAPING),
    To => Field::count(STITCHES).offering_counts().folded(ABOUT_SHAPING),
    ShapingRows => Field::count(ROWS).folded(ABOUT_SHAPING),
    Each => Field::count(EACH).starts(Start::Count(USUAL_EACH)).folded(ABOUT_SHAPING),
    Sides => Field::choice::<ShapingSide>().folded(ABOUT_SHAPING),
}

fn plus(fields: &Fields) -> String {
    plus_behind(fields, Name::Multiple)
}

/// A pattern at another gauge.
pub struct Regauge;

/// Its row in the list of tools.
pub const ENTRY: Entry = Entry::of::<Regauge>(words::TITLE);

impl Tool for Regauge {
    const ID: &'static str = "regauge";
    const FIELDS: &'static [Field] = FIELDS;
    const STATES: &'static [State] = states::NAMED;
    type Question = Question;
    type Answer = Answer;

    fn read(fields: &Fields) -> Result<Question, Vec<Problem>> {
        read::read(fields)
    }

    fn answer(question: &Question) -> Result<Answer, Vec<Problem>> {
        answer(question)
    }

    fn show(view: &View, question: &Question, answer: &Answer) -> Html {
        let sentences = Sentences {
            question,
            answer,
            lengths: view.lengths(&TAPE),
        };
        shown(&sentences, &read::missing_of_shaping(&view.fields))
    }

    /// The shaping, where one is asked about.
    fn plan(fields: &Fields, _: &Question, answer: &Answer) -> Option<Plan<String>> {
        let plan = plan(answer)?.for_hand(fields.settings().hand(), Doing::left_handed);
        Some(plan.told(|event| followed(&event.doing)))
    }

    fn summary(fields: &Fields, question: &Question, answer: &Answer) -> Summary {
        let sentences = Sentences {
            question,
            answer,
            lengths: fields.lengths(&TAPE),
        };
        let Lead { title, line, outcome } = sentences.lead();
        let stitches = answer
            .stitches
            .iter()
            .map(|found| Figure::count("stitches", found.count));
        let rows = answer.rows.iter().map(|found| Figure::count("rows", found.count));
        Summary {
            title,
            lines: vec![line],
            outcome,
            figures: stitches.chain(rows).collect(),
        }
    }

    fn wait(view: &View, problems: &[Problem]) -> Html {
        wait(view, problems, words::WAITING)
    }

    fn problem(fields: &Fields, _: Option<&Question>, problem: &Problem) -> String {
        words::problem(problem, &fields.text(problem.field))
    }

    /// Stitches, and wider ones over the same width.
    fn sign() -> Html {
        strip(22, 0, 5, 0)
    }
}

/// The counts and rows as tables, the shaping or what is missing of it, and the sum.
fn shown(sentences: &Sentences, missing: &[Name]) -> Html {
    let answer = sentences.answer;
    let Lead { title, line, outcome } = sentences.lead();
    let mut below = Below::of(answered(title, text_element("p", "row", line), outcome));
    below.sentence("verdict", sentences.rows_wait().unwrap_or_default());
    below.sentence("", sentences.near().unwrap_or_default());
    below.add(figure::counts(sentences));
    let picked = answer.follow.as_ref().map(|follow| follow.size);
    below.add(table(
        sentences,
        words::STITCHES,
        (&answer.stitches, &sentences.question.count_gaps),
        picked,
    ));
    below.add(table(
        sentences,
        words::ROWS,
        (&answer.rows, &sentences.question.row_gaps),
        None,
    ));
    below.sentence("verdict", words::shaping_waits(missing).unwrap_or_default());
    if let Some(shaped) = &answer.shaping {
        add_shaping(&mut below, sentences, shaped);
    }
    below.list(sizing::MOVES, sizing::moves(&answer.moves, sentences.lengths));
    below.add(good_to_know(answer.notes.iter().copied().map(words::note).collect()));
    below.add(working(sentences.steps(), words::SOURCE));
    below.done()
}

fn add_shaping(below: &mut Below, sentences: &Sentences, shaped: &Shaped) {
    below.add(text_element("h3", "", words::SHAPING));
    below.sentence("", sentences.ends(shaped));
    below.sentence("verdict", sentences.shaping(shaped));
    below.add(figure::shaping(sentences, shaped));
    if let Some(schedule) = &shaped.schedule {
        below.add(row_by_row(schedule::listed(schedule, MOST_LISTED), true));
    }
}

/// Old and new, a line each, the one to follow marked by a word, and a dash where the pattern has one.
fn table(
    sentences: &Sentences,
    title: &'static str,
    (found, gaps): (&[Converted], &[usize]),
    picked: Option<usize>,
) -> Html {
    if found.is_empty() {
        return Html::default();
    }
    let head = Column::ALL.map(|column| text_element("th", "", column.heading()));
    let numbered: Vec<(usize, &Converted)> = found.iter().enumerate().collect();
    let line = |place: Option<&(usize, &Converted)>| {
        let Some((place, one)) = place else {
            let cells = Column::ALL.map(|_| text_element("td", "", words::NO_COUNT));
            return element("tr", "", cells.into());
        };
        let is_picked = picked == Some(*place);
        let cells = Column::ALL.map(|column| text_element("td", "", sentences.cell(column, one, is_picked)));
        element("tr", if is_picked { "pick" } else { "" }, cells.into())
    };
    let mut lines = vec![element("tr", "", head.into())];
    lines.extend(places(&numbered, gaps).into_iter().map(line));
    list(vec![
        text_element("h3", "", title),
        element("table", "", vec![element("tbody", "", lines)]),
    ])
}

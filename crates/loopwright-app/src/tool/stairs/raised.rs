//! A back neck that is raised: its question from the fields as typed, and its answer as it is drawn.

use super::MOST_OPEN;
use crate::drawing::raise::raise as raise_drawn;
use crate::form::{Fields, Reader};
use crate::part::plain::{element, list, text_element};
use crate::part::{Figure, Summary, View, answered, good_to_know, row_by_row, working};
use crate::words::stairs::raise as words;
use crate::words::tell::Long;
use loopwright::stairs::Name;
use loopwright::stairs::raise::{self, ACROSS, Across};
use yew::prelude::*;

/// A back neck that is raised; its width stands in where its stitches are not typed.
pub(super) fn question(reader: &mut Reader) -> raise::Question {
    let has_width = !reader.fields().is_typed(Name::Stitches) && reader.fields().is_typed(Name::Width);
    let across = if has_width {
        Across::Width {
            width: reader.length(Name::Width),
            gauge: reader.gauge(Name::Gauge),
        }
    } else {
        Across::Stitches(reader.count_within(Name::Stitches, ACROSS))
    };
    raise::Question {
        turns: reader.count_if_any(Name::Turns),
        method: reader.choice(Name::Method),
        begins: reader.choice(Name::Begins),
        ..raise::Question::about(across, reader.length(Name::Height), reader.gauge(Name::RowGauge))
    }
}

/// The answer as data.
pub(super) fn summary(fields: &Fields, answer: &raise::Answer) -> Summary {
    let long: Long = &|length| fields.tape(length);
    Summary {
        title: words::WHEN,
        lines: vec![words::headline(answer)],
        outcome: words::outcome(answer, long),
        figures: vec![
            Figure::count("across", answer.across),
            Figure::length("raised", answer.raised),
        ],
    }
}

/// The turns, the raised back, and the short rows one by one.
pub(super) fn show(view: &View, question: &raise::Question, answer: &raise::Answer) -> Html {
    let long: Long = &|length| view.tape(length);
    let line = text_element("p", "row", words::headline(answer));
    let picture = raise_drawn(&answer.turns, &words::drawing(answer));
    let figure = vec![picture, text_element("figcaption", "quiet", words::KEY)];
    list(vec![
        answered(words::WHEN, line, words::outcome(answer, long)),
        element("figure", "needle", figure),
        row_by_row(words::listed(question, answer), answer.rows.len() > MOST_OPEN),
        good_to_know(words::notes(question, answer, long)),
        working(words::steps(question, answer, long), words::SOURCE),
    ])
}

//! The fields of a pattern at another gauge, and the question they make.

use crate::part::plain::{el, folded, list};
use crate::part::{Field, Reading, Say, Sheet, TAPE, chosen, fields, folded_fields, multiple, multiple_fields};
use crate::words::{cast_on, regauge as words};
use loopwright::bounds::Bounds;
use loopwright::cast_on::{EDGE, Knitting};
use loopwright::problem::Kind;
use loopwright::regauge::{MEASURE, Question, REPEAT, ROWS, STITCHES, Shaping};
use loopwright::shaping::EACH;
use loopwright::sizing::{WhyUnread, read_counts};
use loopwright::units::parse::Unreadable;
use yew::prelude::*;

/// The fields that may be folded away.
pub const FOLDED: [&str; 13] = [
    "wanted",
    "multiple",
    "plus",
    "edge",
    "pattern_rows",
    "own_rows",
    "rows",
    "length",
    "row_repeat",
    "from",
    "to",
    "shaping_rows",
    "each",
];

/// What comes first.
const FIRST: [Field; 3] = [
    Field::Gauge(("pattern", words::LABEL_PATTERN, "")),
    Field::Gauge(("own", words::LABEL_OWN, "gauge_stitches")),
    Field::Counts("counts", words::LABEL_COUNTS),
];

/// What the counts are, which size to follow, and what stands at the edges.
const COUNTS: [Field; 4] = [
    Field::Figure(("wanted", words::LABEL_WANTED, "", Some(&TAPE))),
    Field::Choice(&words::KNITTING),
    Field::Figure(("edge", words::LABEL_EDGE, "0", None)),
    Field::Choice(&words::PARITY),
];

/// Rows, and lengths by rows.
const TALL: [Field; 5] = [
    Field::Gauge(("pattern_rows", words::LABEL_PATTERN_ROWS, "")),
    Field::Gauge(("own_rows", words::LABEL_OWN_ROWS, "gauge_rows")),
    Field::Counts("rows", words::LABEL_ROWS),
    Field::Figure(("length", words::LABEL_LENGTH, "", Some(&TAPE))),
    Field::Figure(("row_repeat", words::LABEL_REPEAT, "1", None)),
];

/// The shaping.
const SHAPING: [Field; 5] = [
    Field::Figure(("from", words::LABEL_FROM, "", None)),
    Field::Figure(("to", words::LABEL_TO, "", None)),
    Field::Figure(("shaping_rows", words::LABEL_SHAPING_ROWS, "", None)),
    Field::Figure(("each", words::LABEL_EACH, "2", None)),
    Field::Choice(&words::SIDES),
];

/// What shaping cannot be without.
const ENDS: [(&str, Bounds<u32>); 3] = [("from", STITCHES), ("to", STITCHES), ("shaping_rows", ROWS)];

/// A list of counts; none where the field is empty.
fn counts(reading: &mut Reading, sheet: &Sheet, field: &'static str, each: Bounds<u32>) -> Vec<u32> {
    read_counts(&sheet.text(field, ""), each).unwrap_or_else(|unread| {
        let why = match unread.why {
            WhyUnread::Number(why) => why,
            _ => Unreadable::NotANumber,
        };
        reading.wrong(field, Kind::Unreadable(why));
        Vec::new()
    })
}

/// The shaping, where any of it is typed: the rest is missing then.
fn shaping(reading: &mut Reading, sheet: &Sheet) -> Option<Shaping> {
    let mut typed = [None; 3];
    for (figure, (field, bounds)) in typed.iter_mut().zip(ENDS) {
        *figure = reading.count_if_any(field, bounds);
    }
    if let [Some(from), Some(to), Some(rows)] = typed {
        return Some(Shaping {
            from,
            to,
            rows,
            each: reading.count("each", EACH, "2"),
            right_side_only: chosen(sheet, &words::SIDES) == 0,
        });
    }
    if typed != [None; 3] {
        for (figure, (field, _)) in typed.iter().zip(ENDS) {
            if figure.is_none() {
                reading.wrong(field, Kind::Missing);
            }
        }
    }
    None
}

/// From the fields as typed to the question.
pub fn question(reading: &mut Reading, sheet: &Sheet) -> Question {
    let (pattern, own) = (reading.gauge("pattern"), reading.gauge("own"));
    let stitches = counts(reading, sheet, "counts", STITCHES);
    let question = Question {
        pattern_rows: reading.gauge_if_any("pattern_rows"),
        own_rows: reading.gauge_if_any("own_rows"),
        rows: counts(reading, sheet, "rows", ROWS),
        length: reading.length_if_any(&TAPE, "length", MEASURE),
        wanted: reading.length_if_any(&TAPE, "wanted", MEASURE),
        shaping: shaping(reading, sheet),
        multiple: multiple(reading, sheet),
        knitting: match chosen(sheet, &words::KNITTING) {
            2 => Knitting::Flat {
                edge: reading.count("edge", EDGE, "0"),
                seam: 0,
            },
            how => Knitting::Round { extra: how == 1 },
        },
        parity: chosen(sheet, &words::PARITY) == 1,
        row_repeat: reading.count("row_repeat", REPEAT, "1"),
        ..Question::about(pattern, own, stitches)
    };
    let asks_rows = !question.rows.is_empty() || question.length.is_some() || question.shaping.is_some();
    if question.counts.is_empty() && !asks_rows && question.wanted.is_none() {
        // Nothing is asked yet.
        reading.wrong("counts", Kind::Unreadable(Unreadable::Empty));
    }
    question
}

/// Gauges and counts, and the rest folded away by what it is about.
pub fn form(sheet: &Sheet, say: Say) -> Html {
    let counts = vec![
        multiple_fields(sheet, [cast_on::LABEL_MULTIPLE, cast_on::LABEL_PLUS], say),
        fields(sheet, &COUNTS, say),
    ];
    list(vec![
        fields(sheet, &FIRST, say),
        folded("more", words::ABOUT_COUNTS, vec![el("div", "fields", counts)]),
        folded_fields(sheet, words::ABOUT_ROWS, &TALL, say),
        folded_fields(sheet, words::ABOUT_SHAPING, &SHAPING, say),
    ])
}

//! The fields of the tail, and the question they make.

use crate::part::plain::{el, folded, list, says};
use crate::part::{Choice, Label, NEEDLE, Reading, Row, Say, Sheet, TAPE, YARN, field, known, more, rows, select};
use crate::words::page::PRACTICE;
use crate::words::tail as words;
use loopwright::bounds::Bounds;
use loopwright::tables::yarn_weight::CLASSES;
use loopwright::tail::{
    EDGE, END, LEFT, Left, METHODS, Method, NEEDLE as NEEDLES, Piece, Question, STITCHES, Strand, Thickness, USED,
    WRAPS,
};
use yew::prelude::*;

/// The fields that may be folded away.
pub const FOLDED: [&str; 9] = [
    "needle",
    "second",
    "wraps",
    "width",
    "measured_stitches",
    "measured_used",
    "end",
    "left_tail",
    "left_to_go",
];

/// The end to weave in before anything is typed, in centimetres.
const USUAL_END: &str = "20";

/// The rest of what the stitches can be reckoned from, row by row.
const REST: [Row; 5] = [
    ("second", words::LABEL_SECOND, "", Some(&NEEDLE)),
    ("wraps", words::LABEL_WRAPS, "", None),
    ("width", words::LABEL_WIDTH, "", Some(&TAPE)),
    ("measured_stitches", words::LABEL_MEASURED, "", None),
    ("measured_used", words::LABEL_USED, "", Some(&TAPE)),
];

/// The end, which every method has.
const ENDS: [Row; 1] = [("end", words::LABEL_END, USUAL_END, Some(&TAPE))];

/// For the middle of casting on.
const MIDWAY: [Row; 2] = [
    ("left_tail", words::LABEL_LEFT, "", Some(&YARN)),
    ("left_to_go", words::LABEL_TO_GO, "", None),
];

/// The place of what is chosen, the first before anything is.
fn chosen(sheet: &Sheet, field: &str, choices: &[(&str, &str)]) -> usize {
    let key = sheet.text(field, "");
    choices.iter().position(|choice| choice.0 == key).unwrap_or(0)
}

/// The method, and whether its stitches are drawn from the tail.
fn method(sheet: &Sheet) -> (Method, bool) {
    let place = chosen(sheet, "method", &words::METHODS);
    let (method, strand) = METHODS.get(place).unwrap_or(&METHODS[0]);
    (*method, matches!(strand, Strand::Thumb { .. }))
}

/// How thick the yarn is: by its wraps where they are typed, else by its class.
fn yarn(reading: &mut Reading, sheet: &Sheet) -> Option<Thickness> {
    if let Some(wraps) = reading.count_if_any("wraps", WRAPS) {
        return Some(Thickness::Wraps(wraps));
    }
    let place = chosen(sheet, "yarn", &words::YARNS);
    let class = place.checked_sub(1).and_then(|place| CLASSES.get(place));
    class.map(|class| Thickness::Class(class.weight))
}

/// From the fields as typed to the question.
pub fn question(reading: &mut Reading, sheet: &Sheet) -> Question {
    let (method, draws_from_tail) = method(sheet);
    let mut question = Question {
        method,
        end: reading.length(&TAPE, "end", END, USUAL_END),
        ..Question::about(reading.count("stitches", STITCHES, ""))
    };
    let to_go = ("left_to_go", Bounds::new(0, STITCHES.most));
    let left = reading.both(to_go, ("left_tail", &YARN, LEFT));
    question.left = left.map(|(to_go, tail)| Left { tail, to_go });
    if draws_from_tail {
        question.yarn = yarn(reading, sheet);
        question.needle = reading.length_if_any(&NEEDLE, "needle", NEEDLES);
        question.second = reading.length_if_any(&NEEDLE, "second", NEEDLES);
        question.width = reading.length_if_any(&TAPE, "width", EDGE);
        let measured = reading.both(("measured_stitches", STITCHES), ("measured_used", &TAPE, USED));
        question.measured = measured.map(|(stitches, used)| Piece { stitches, used });
    }
    question
}

/// The sentence with its fields, and the rest folded away.
pub fn form(sheet: &Sheet, say: Say) -> Html {
    let word = |words| says("span", "", words);
    let choice = |sheet: &Sheet, name, label, choices: &[(&'static str, &'static str)]| {
        select(sheet, name, Label::Unseen(label), Choice::keyed(choices), "")
    };
    let stitches = Label::Unseen(words::LABEL_STITCHES);
    let count = vec![
        word(words::I_CAST_ON),
        field(sheet, "stitches", stitches, "", say("stitches")),
        word(words::STITCHES),
    ];
    let mut how = vec![choice(sheet, "method", words::LABEL_METHOD, &words::METHODS)];
    let (mut yarn, mut rest) = (Vec::new(), Vec::new());
    if method(sheet).1 {
        how.push(word(words::IN_YARN));
        how.push(choice(sheet, "yarn", words::LABEL_YARN, &words::YARNS));
        let settings = Sheet::new(&sheet.desk, "settings");
        let unit = vec![
            word(words::MEASURED_IN),
            choice(&settings, "yarn", words::LABEL_UNIT, &words::UNITS),
        ];
        yarn = vec![known(sheet, "yarn", "yarn_class"), el("div", "line", unit)];
        rest.push(NEEDLE.field(sheet, "needle", words::LABEL_NEEDLE, "", say("needle")));
        rest.push(known(sheet, "needle", "needle"));
        rest.push(rows(sheet, &REST, say));
    }
    let mut form = vec![
        el("div", "line", count),
        known(sheet, "stitches", "cast_on"),
        el("div", "line", how),
    ];
    form.append(&mut yarn);
    rest.push(rows(sheet, &ENDS, say));
    rest.push(says("p", "practice", PRACTICE));
    form.push(more(rest));
    let midway = el("div", "fields", vec![rows(sheet, &MIDWAY, say)]);
    form.push(folded("more", words::MIDWAY, vec![midway]));
    list(form)
}

#[cfg(test)]
mod tests {
    use super::*;
    use loopwright::tail;
    use loopwright::units::{Length, LengthUnit};

    #[test]
    fn every_method_and_class_can_be_chosen() {
        assert_eq!(METHODS.len(), words::METHODS.len());
        assert_eq!(CLASSES.len() + 1, words::YARNS.len());
        for ((_, label), class) in words::YARNS[1..].iter().zip(&CLASSES) {
            assert!(label.contains(&format!("({})", class.number)), "{label}");
        }
    }

    #[test]
    fn the_usual_end_is_the_one_of_the_maths() {
        assert_eq!(tail::USUAL_END, Length::of(20, LengthUnit::Cm));
        assert_eq!(USUAL_END, "20");
    }
}

//! The fields of shaping, and the question they make.

use crate::part::plain::{el, list, says};
use crate::part::{ChoiceRow, Label, Reading, Row, Say, Sheet, choice, choices, chosen, field, more, rows};
use crate::words::shaping as words;
use loopwright::bounds::Bounds;
use loopwright::shaping::{Ask, EACH, EDGE, Increase, Knitting, Order, PLAIN, Question, ROWS, STITCHES, Side, Slope};
use yew::prelude::*;

/// The fields under "more".
pub const FOLDED: [&str; 4] = ["each", "first", "last", "edge"];

/// What is typed in the sentence; what is too many there is for the maths to say.
const AMOUNTS: Bounds<u32> = Bounds::new(0, STITCHES.most);

const ASK: ChoiceRow = ("ask", words::LABEL_ASK, &words::ASKS);
const KNITTING: ChoiceRow = ("knitting", words::LABEL_KNITTING, &words::KNITTINGS);
const REST: ChoiceRow = ("rest", words::LABEL_REST, &words::RESTS);
const SIDES: ChoiceRow = ("sides", words::LABEL_SIDES, &words::SIDES);
const ORDER: ChoiceRow = ("order", words::LABEL_ORDER, &words::ORDERS);
const SLOPE: ChoiceRow = ("slope", words::LABEL_SLOPE, &words::SLOPES);
const INCREASE: ChoiceRow = ("increase", words::LABEL_INCREASE, &words::INCREASES);

/// The count now, which only an end that is asked for has to know.
const NOW: [Row; 1] = [("stitches", words::LABEL_STITCHES, "", None)];

/// Figures with a sensible start.
const FIGURES: [Row; 4] = [
    ("each", words::LABEL_EACH, EACHES, None),
    ("first", words::LABEL_FIRST, FIRST, None),
    ("last", words::LABEL_LAST, LAST, None),
    ("edge", words::LABEL_EDGE, OUTSIDE, None),
];
const EACHES: &str = "2";
const FIRST: &str = "0";
const LAST: &str = "1";
const OUTSIDE: &str = "1";

/// From the fields as typed to the question.
pub fn question(reading: &mut Reading, sheet: &Sheet) -> Question {
    let amount = reading.count("amount", AMOUNTS, "");
    let knitting = match chosen(sheet, &KNITTING) {
        0 => Knitting::Flat { next: Side::Right },
        1 => Knitting::Flat { next: Side::Wrong },
        _ => Knitting::Round,
    };
    Question {
        ask: match chosen(sheet, &ASK) {
            0 => Ask::Lose(amount),
            1 => Ask::Gain(amount),
            _ => Ask::Reach(amount),
        },
        rows: reading.count("rows", ROWS, ""),
        stitches: reading.count_if_any("stitches", STITCHES),
        each: reading.count("each", EACH, EACHES),
        rest: chosen(sheet, &REST) == 1,
        right_side: chosen(sheet, &SIDES) == 0,
        knitting,
        // Left empty it is a gap like the others.
        first: match sheet.text("first", FIRST).trim() {
            "" => None,
            _ => Some(reading.count("first", PLAIN, FIRST)),
        },
        last: reading.count("last", PLAIN, LAST),
        order: match chosen(sheet, &ORDER) {
            0 => Order::CloseFirst,
            1 => Order::WideFirst,
            2 => Order::OneRate,
            _ => Order::Mixed,
        },
        edge: reading.count("edge", EDGE, OUTSIDE),
        slope: if chosen(sheet, &SLOPE) == 0 {
            Slope::Along
        } else {
            Slope::Across
        },
        increase: match chosen(sheet, &INCREASE) {
            0 => Increase::M1,
            1 => Increase::Yo,
            _ => Increase::Kfb,
        },
    }
}

/// The sentence with its fields, and the rest under "more".
pub fn form(sheet: &Sheet, say: Say) -> Html {
    let number = |name, label| field(sheet, name, Label::Unseen(label), "", say(name));
    let sentence = vec![
        says("span", "", words::I_HAVE_TO),
        choice(sheet, &ASK),
        number("amount", words::LABEL_AMOUNT),
        says("span", "", words::IN_THE_NEXT),
        number("rows", words::LABEL_ROWS),
        says("span", "", words::ROWS[chosen(sheet, &KNITTING) / 2]),
        choice(sheet, &KNITTING),
    ];
    let ways = [&REST, &ORDER, &SIDES, &SLOPE, &INCREASE];
    list(vec![
        el("div", "line", sentence),
        el("div", "quantity", vec![rows(sheet, &NOW, say)]),
        more(vec![rows(sheet, &FIGURES, say), choices(sheet, &ways)]),
    ])
}

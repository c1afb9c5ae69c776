//! Even spacing: the function, and the answer with each row as text beside its data.

use crate::bind;
use loopwright::row::{Row, Stitch};
use loopwright::spacing::{self, Fraction, Multiples, Note, Order, Question, Step};
use serde::Serialize;
use wasm_bindgen::prelude::*;

/// "I have 132 stitches and want to lose 16 evenly in this round. What do I knit?"
///
/// # Errors
/// A `TypeError` whose sentence names the field, when the object is no question.
#[wasm_bindgen(unchecked_return_type = "SpacingResult")]
pub fn spacing(
    #[wasm_bindgen(unchecked_param_type = "Asked<SpacingQuestion, 'stitches' | 'ask'>")] question: JsValue,
) -> Result<JsValue, JsValue> {
    let usual = Question::about(1);
    bind::ask("spacing", &usual, &["stitches", "ask"], &question, |q| {
        spacing::answer(q).map(Answer::from)
    })
}

/// The row to work, written in up to three orders.
#[derive(Serialize)]
struct Answer {
    /// Stitches before.
    before: u32,
    /// Stitches after.
    after: u32,
    /// The change, as it is worked on this side of the fabric.
    change: Stitch,
    /// How many of them.
    changes: u32,
    /// The ways to write it: easiest first, most even last.
    ways: Vec<Way>,
    /// Which of `ways` to offer first: the shortest to say of those that stray too little to be seen.
    suggested: usize,
    /// The counts either side, when a multiple was asked for.
    multiples: Option<Multiples>,
    /// What else she should know.
    notes: Vec<Note>,
    /// The sum.
    steps: Vec<Step>,
}

/// One order of the runs, written.
#[derive(Serialize)]
struct Way {
    /// The order of the long and the short runs.
    order: Order,
    /// The row as it is written: `K3, k2tog, (K7, k2tog) 3 times, K4`.
    text: String,
    /// The row as data.
    row: Row,
    /// How far the changes stray from dead even, in stitches.
    drift: Fraction,
    /// Whether the text is short enough to knit from.
    readable: bool,
}

// Taken apart field by field, so that one that is added to the arithmetic and not here does not compile.
impl From<spacing::Answer> for Answer {
    fn from(answer: spacing::Answer) -> Self {
        let spacing::Answer {
            before,
            after,
            change,
            changes,
            ways,
            suggested,
            multiples,
            notes,
            steps,
        } = answer;
        Self {
            before,
            after,
            change,
            changes,
            ways: ways.into_iter().map(Way::from).collect(),
            suggested,
            multiples,
            notes,
            steps,
        }
    }
}

impl From<spacing::Way> for Way {
    fn from(way: spacing::Way) -> Self {
        let spacing::Way {
            order,
            row,
            drift,
            readable,
        } = way;
        Self {
            order,
            text: row.to_string(),
            row,
            drift,
            readable,
        }
    }
}

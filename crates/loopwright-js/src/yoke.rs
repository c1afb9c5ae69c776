//! Yoke: the function, and the answer with each round as text beside its data.

use crate::bind;
use loopwright::row::Row;
use loopwright::shaping::Schedule;
use loopwright::yoke::{self, Division, Question};
use serde::Serialize;
use wasm_bindgen::prelude::*;

/// "96 stitches at the neck, 320 at the underarm, 60 rounds, shaped in 4 of them. How many in each, how are they spaced, and
/// how is the yoke divided?"
///
/// # Errors
/// A `TypeError` whose sentence names the field, when the object is no question.
#[wasm_bindgen(unchecked_return_type = "YokeResult")]
pub fn yoke(
    #[wasm_bindgen(unchecked_param_type = "Asked<YokeQuestion, 'from' | 'to' | 'rounds'>")] question: JsValue,
) -> Result<JsValue, JsValue> {
    let usual = Question::about(1, 1, 1);
    bind::ask("yoke", &usual, &["from", "to", "rounds"], &question, |q| {
        yoke::answer(q).map(Answer::from)
    })
}

/// The shaping rounds of a yoke, and what follows at the underarm.
#[derive(Serialize)]
struct Answer {
    /// Each shaping round, what it changes and the count after it.
    schedule: Schedule,
    /// The same rounds, each written out.
    rounds: Vec<Round>,
    /// Plain rounds between the underarm and the shaping round next to it.
    plain: u32,
    /// The yoke divided into front, back and two sleeves; none where it has too few stitches for four.
    division: Option<Division>,
}

/// One shaping round.
#[derive(Serialize)]
struct Round {
    /// Its number.
    round: u32,
    /// Stitches before it.
    before: u32,
    /// Stitches gained or lost in it.
    change: u32,
    /// Stitches after it.
    after: u32,
    /// How much that is of the stitches before it, in whole per cent.
    percent: u32,
    /// What is knitted, as it is written: `K3, M1, (K7, M1) 3 times, K4`.
    text: String,
    /// The same as data.
    row: Row,
}

// Taken apart field by field, so that one that is added to the arithmetic and not here does not compile.
impl From<yoke::Answer> for Answer {
    fn from(answer: yoke::Answer) -> Self {
        let yoke::Answer {
            schedule,
            rounds,
            plain,
            division,
        } = answer;
        Self {
            schedule,
            rounds: rounds.into_iter().map(Round::from).collect(),
            plain,
            division,
        }
    }
}

impl From<yoke::Round> for Round {
    fn from(round: yoke::Round) -> Self {
        let yoke::Round {
            round,
            before,
            change,
            after,
            percent,
            row,
        } = round;
        Self {
            round,
            before,
            change,
            after,
            percent,
            text: row.to_string(),
            row,
        }
    }
}

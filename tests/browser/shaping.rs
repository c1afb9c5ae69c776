//! Shaping over rows: two numbers typed, and the rows to shape in are read from the screen.

use crate::{
    stage::Stage,
    steps::{Step::*, play},
};
use anyhow::Result;

const AMOUNT: &str = "#shaping-amount";
const ROWS: &str = "#shaping-rows";

/// Flat and from the first page: the instruction in its one convention, the rows used, both ends of the pair.
pub async fn she_loses_stitches_over_many_rows(stage: &mut Stage) -> Result<()> {
    let steps = [
        Enter("shaping"),
        Type(AMOUNT, "18"),
        Hides(".answer", "an answer before a question"),
        Type(ROWS, "66"),
        Reads("Work a decrease row. Then 7 rows plain, then a decrease row; 8 times. Then 1 row plain."),
        Is(".answer .outcome", "65 rows used of 66. You lose 18 stitches."),
        Says(".answers", "K1, ssk, knit to the last 3 stitches, k2tog, K1"),
        Says(".answers", "at most 66 can go"),
        Press(".places summary"),
        Says(".answers", "Row 9 (RS): 4 fewer in all"),
        // The same from a wrong-side row: a plain row first, so that shaping stays on the right side.
        Choose("#shaping-knitting", "wrong"),
        Type("#shaping-stitches", "58"),
        Reads(
            "Work 1 row plain, then a decrease row. Then 5 rows plain, then a decrease row. Then 7 rows plain, then a decrease row; 7 times. Then 2 rows plain.",
        ),
        Is(".answer .outcome", "64 rows used of 66. 58 stitches become 40."),
    ];
    play(stage, &steps).await
}

/// A sleeve from the cuff in the round: the count in the end is asked for, and that of now.
pub async fn she_widens_a_sleeve(stage: &mut Stage) -> Result<()> {
    let steps = [
        Open("#/shaping"),
        Choose("#shaping-ask", "reach"),
        Choose("#shaping-knitting", "round"),
        Type(AMOUNT, "84"),
        Type(ROWS, "96"),
        Hides(".answer", "an answer before the count now is known"),
        Type("#shaping-stitches", "56"),
        Unfold,
        // The beginning as a gap like the others.
        Type("#shaping-first", " "),
        Reads(
            "Work 5 rounds plain, then an increase round; 3 times. Then 6 rounds plain, then an increase round; 11 times. Then 1 round plain.",
        ),
        Is(".answer .outcome", "95 rounds used of 96. 56 stitches become 84."),
        Choose("#shaping-increase", "kfb"),
        Says(".answers", "K1, kfb, knit to the last 3 stitches, kfb, K2"),
    ];
    play(stage, &steps).await
}

/// Too steep: the nearest number of rows is a tap away.
pub async fn she_is_told_what_the_rows_can_take(stage: &mut Stage) -> Result<()> {
    let steps = [
        Open("#/shaping"),
        Type(AMOUNT, "80"),
        Type(ROWS, "66"),
        Button("#shaping-rows-problem", "Use 80"),
        Reads("Work a decrease row. Then 1 row plain, then a decrease row; 39 times. Then 1 row plain."),
        Is(".answer .outcome", "79 rows used of 80. You lose 80 stitches."),
    ];
    play(stage, &steps).await
}

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
        Reads("Decrease now, then every 8th row 8 times more."),
        Says(
            ".answer",
            "In full: Work a decrease row. Then 7 rows plain, then a decrease row; 8 times. Then 1 row plain.",
        ),
        Is(
            ".answer .outcome",
            "The last change is in row 65 of 66. You lose 18 stitches",
        ),
        Says(".answers", "K1, ssk, knit to the last 3 stitches, k2tog, K1"),
        Says(".answers", "66 − 1 − 1 = 64 rows are shared between 8 gaps"),
        Press(".places summary"),
        Says(".answers", "Row 9 (RS): 4 fewer in all"),
        // The same from a wrong-side row: a plain row first, so that shaping stays on the right side.
        Choose("#shaping-knitting", "wrong"),
        Type("#shaping-stitches", "58"),
        Reads("Decrease in row 2, then once 6 rows later, then every 8th row 7 times."),
        Is(
            ".answer .outcome",
            "The last change is in row 64 of 66. 58 stitches become 40",
        ),
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
        Reads("Increase in round 6, then every 6th round twice more, then every 7th round 11 times."),
        Is(".places summary", "Round by round"),
        Is(
            ".answer .outcome",
            "The last change is in round 95 of 96. 56 stitches become 84",
        ),
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
        Reads("Decrease now, then every 2nd row 39 times more."),
        Is(
            ".answer .outcome",
            "The last change is in row 79 of 80. You lose 80 stitches",
        ),
        Says(".answers", "At most 80 stitches could go in these 80 rows"),
    ];
    play(stage, &steps).await
}

//! Steps at a shoulder and a neck: stitches and steps typed, and what to bind off in which row is read from the screen.

use crate::{
    stage::Stage,
    steps::{Step::*, play},
};
use anyhow::Result;

/// One shoulder, then both; and the rows that are there instead of the steps.
pub async fn she_binds_off_a_shoulder(stage: &mut Stage) -> Result<()> {
    let steps = [
        Enter("stairs"),
        Type("#stairs-stitches", "27"),
        Hides(".answer", "an answer before a question"),
        Type("#stairs-steps", "4"),
        Reads("Bind off 7, 7, 7, 6, each at the start of a right-side row."),
        Says(".answers", "Row 7 (RS): bind off 6; 27 of 27 gone"),
        Says(".answers", "one row later, in row 2"),
        Unfold,
        Choose("#stairs-edge", "both"),
        Reads("Bind off 7, 7, 7, 7, 7, 7, 6, 6, each at the start of a row."),
        Choose("#stairs-edge", "left"),
        Choose("#stairs-by", "rows"),
        // What was typed stays: 4 rows are two steps of the left edge.
        Reads("Bind off 14, 13, each at the start of a wrong-side row."),
        Type("#stairs-rows", "7"),
        // Of 7 rows three begin at the left edge.
        Reads("Bind off 9, 9, 9, each at the start of a wrong-side row. Then 1 row plain."),
    ];
    play(stage, &steps).await
}

/// A neck has its larger steps first; and the same in short rows, with as many turns.
pub async fn she_rounds_a_neck_and_turns(stage: &mut Stage) -> Result<()> {
    let steps = [
        Open("#/stairs"),
        Type("#stairs-stitches", "10"),
        Type("#stairs-steps", "4"),
        Reads("Bind off 3, 2, 3, 2, each at the start of a right-side row."),
        Choose("#stairs-place", "neck"),
        Reads("Bind off 3, 3, 2, 2, each at the start of a right-side row."),
        Choose("#stairs-way", "short"),
        Reads("Turn with 3, 6, 8 stitches left, each at the end of a wrong-side row. Then work 1 such row to the end."),
        Says(".answers", "3 turns at an edge"),
        Says(".answers", "close the gaps in the last row"),
        Says(".answers", "Each half of a neck is worked alone;"),
        Type("#stairs-steps", "11"),
        Button("#stairs-steps-problem", "Use 10"),
        Says(".answers", "9 turns at an edge"),
    ];
    play(stage, &steps).await
}

/// The back of a yoke is raised in short rows: where to turn, both ways of turning, and what the typed turns come to.
pub async fn she_raises_the_back_of_her_yoke(stage: &mut Stage) -> Result<()> {
    let steps = [
        Open("#/stairs"),
        Choose("#stairs-way", "raise"),
        Type("#stairs-stitches", "40"),
        Hides(".answer", "the example of a height is none of hers"),
        Type("#stairs-height", "2.5"),
        Type("#stairs-row_gauge", "32"),
        Reads("Turn 5, 10, 15, 20 stitches from the middle of the back, at each side."),
        Outcome("2.5 cm"),
        Says(".answers", "Row 2 (WS): DS, P11, turn"),
        Says(".answers", "Then DS, K20 to where the round begins"),
        Named(".edges", "rise to its middle"),
        Unfold,
        Choose("#stairs-method", "wrap"),
        Says(".answers", "Row 2 (WS): P10, w&t"),
        Type("#stairs-turns", "3"),
        Outcome("1.9 cm"),
        Says(".answers", "You asked for 2.5 cm"),
        // What is asked about a shoulder is there again.
        Choose("#stairs-way", "bind"),
        Type("#stairs-steps", "4"),
        Reads("Bind off 10, 10, 10, 10, each at the start of a right-side row."),
    ];
    play(stage, &steps).await
}

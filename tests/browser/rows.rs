//! Rows and length: a length and a washed swatch typed, the rows read from the screen, and the tape held to them.

use crate::{
    stage::Stage,
    steps::{Step::*, play},
};
use anyhow::Result;

/// In centimetres: the rows of a length, and whole repeats of a chart with its set-up rows and its end.
pub async fn she_works_as_many_rows_as_her_length_takes(stage: &mut Stage) -> Result<()> {
    let steps = [
        Enter("rows"),
        Type("#rows-length", "40"),
        Hides(".answer", "an answer before a question"),
        Type("#rows-gauge", "28"),
        Reads("Work 112 rows"),
        Outcome("40 cm long"),
        Says(".answers", "39.3 cm to 40.7 cm"),
        Named(".answers .scale svg", "112 rows, the first below"),
        Press(".question > details:first-of-type summary"),
        Type("#rows-end_after", "5"),
        Shown("#rows-repeat-problem"),
        Type("#rows-end_after", "0"),
        Type("#rows-repeat", "12"),
        Type("#rows-set_up", "2"),
        // 2 + 9 x 12, and not 112, which would end in the middle of the chart.
        Reads("Work 110 rows"),
        Outcome("39.3 cm long"),
        Says(".answers", "9 repeats of 12, after 2 for the set-up."),
        Says(".answers", "122 rows: 43.6 cm"),
        Type("#rows-end_after", "7"),
        Reads("Work 117 rows"),
        Outcome("41.8 cm long"),
        Type("#rows-end_after", "13"),
        Button(".problem", "Use 12"),
        Reads("Work 110 rows"),
        Outcome("39.3 cm long"),
    ];
    play(stage, &steps).await
}

/// In inches, and back: garter ridges are two rows each, in the round a knit and a purl round.
pub async fn she_counts_ridges_in_inches(stage: &mut Stage) -> Result<()> {
    let steps = [
        Open("#/rows"),
        Choose("#rows-length-unit", "in"),
        Type("#rows-length", "4 1/4"),
        Type("#rows-gauge", "42"),
        Choose("#rows-gauge-unit", "4 in"),
        // 44.6 rows.
        Reads("Work 45 rows"),
        Outcome("4 1/4 in long"),
        Press(".question > details:first-of-type summary"),
        Choose("#rows-fabric", "garter"),
        Reads("Work 44 rows"),
        Outcome("4 1/4 in long"),
        Says(".answers", "22 ridges."),
        Choose("#rows-knitting", "round"),
        Says(".answers", "a knit round, then a purl round"),
        Choose("#rows-ask", "ridges"),
        Type("#rows-ridges", "21"),
        Reads("4 in long"),
        Outcome("42 rounds"),
    ];
    play(stage, &steps).await
}

/// In mid-knit: the tape meets unwashed knitting, so it is held to the gauge before washing, kept once.
pub async fn she_holds_a_tape_to_her_knitting(stage: &mut Stage) -> Result<()> {
    let steps = [
        Open("#/rows"),
        Type("#rows-length", "50"),
        Type("#rows-gauge", "28"),
        Button(".question", "Keep 28 over 10 cm for the project"),
        Choose("#rows-wanted", "course"),
        Hides(".answer", "an answer to a question that she did not ask"),
        Type("#rows-tape_rows", "60"),
        Type("#rows-tape_length", "20"),
        // Held to the washed gauge 60 rows of 20 cm look too short; the page says what that rests on.
        Reads("Behind by 1.4 cm"),
        NeverSays(".answers", "Work 140 rows"),
        Says(".answers", "count the swatch before washing too."),
        Type("#rows-unwashed", "30"),
        Reads("On course"),
        Outcome("80 are to go"),
        Named(".answers .scale svg", "60 done, 20 cm by the tape; it should be 20 cm"),
        Says(".answers", "Stop when the tape says 46.7 cm"),
        Type("#rows-tape_length", "21"),
        Reads("Ahead by 1 cm"),
        Begins(
            ".outcome",
            "Knitted on like this, 133 rows make the length: 73 are to go",
        ),
        // What was kept stands where rows are asked for again.
        Go("#/regauge"),
        Shown("#regauge-own_rows"),
        Press(".question > details:nth-of-type(2) summary"),
        Holds("#regauge-own_rows", "28"),
        Says(".question", "from the project"),
    ];
    play(stage, &steps).await
}

//! A pattern at another gauge: its numbers typed as they stand there, and one's own read from the screen.

use crate::{
    stage::Stage,
    steps::{Step::*, play},
};
use anyhow::Result;

/// A list as the pattern has it becomes a list; with the width she wants a size is followed instead.
pub async fn she_brings_a_pattern_to_her_gauge(stage: &mut Stage) -> Result<()> {
    let steps = [
        Enter("regauge"),
        Type("#regauge-pattern", "20"),
        Type("#regauge-own", "22"),
        Hides(".answer", "an answer before a question"),
        Type("#regauge-counts", "180 (196, 212)"),
        Reads("198 (216, 233)"),
        Outcome("90 (98.2, 105.9) cm"),
        Press(".question > details:first-of-type summary"),
        Type("#regauge-multiple", "8"),
        Reads("200 (216, 232)"),
        Outcome("90.9 (98.2, 105.5) cm"),
        Type("#regauge-wanted", "91"),
        // The size that is 90 cm in the pattern comes out at 81.8.
        Reads("Follow the size of 196 stitches"),
        Outcome("89.1 cm, 1.9 cm less than you want"),
        Says("table .pick", "196"),
        Says("table .pick", "follow this"),
        Says(".answers", "81.8 cm"),
        Type("#regauge-counts", "180 (19x, 212)"),
        Says(".question .problem", "figures"),
        Holds("#regauge-counts", "180 (19x, 212)"),
    ];
    play(stage, &steps).await
}

/// In inches: 20 in 4 in are not 20 in 10 cm.
pub async fn she_converts_between_inches_and_centimetres(stage: &mut Stage) -> Result<()> {
    let steps = [
        Open("#/regauge"),
        Type("#regauge-pattern", "20"),
        Type("#regauge-own", "20"),
        Type("#regauge-counts", "200"),
        Reads("200"),
        Outcome("100 cm"),
        Choose("#regauge-pattern-unit", "4 in"),
        Reads("203"),
        Outcome("101.5 cm"),
        Says(".answers", "4 in are longer than 10 cm"),
        Press(".question > details:first-of-type summary"),
        Choose("#regauge-wanted-unit", "in"),
        Type("#regauge-wanted", "40"),
        Reads("Follow the size of 200 stitches"),
        Outcome("39 3/8 in, 5/8 in less than you want"),
    ];
    play(stage, &steps).await
}

/// Rows and shaping: the ends and the rows are converted, and the shaping is shared out anew.
pub async fn she_shapes_at_her_gauge(stage: &mut Stage) -> Result<()> {
    let steps = [
        Open("#/regauge"),
        Type("#regauge-pattern", "20"),
        Type("#regauge-own", "22"),
        Press(".question > details:nth-of-type(2) summary"),
        Type("#regauge-rows", "40"),
        // Of three folds the one where it is.
        Says(".answers", "Look under “Rows and lengths”"),
        // A row gauge that is missing does not hide the stitches.
        Type("#regauge-counts", "180"),
        Reads("198"),
        Outcome("90 cm"),
        Begins(".verdict", "Rows and shaping are still to come"),
        Named(".answers .scale svg", "180 stitches, 90 cm; 198 stitches, 90 cm"),
        Type("#regauge-counts", " "),
        Type("#regauge-pattern_rows", "28"),
        Type("#regauge-own_rows", "30"),
        Reads("43"),
        Outcome("14.3 cm"),
        Press(".question > details:first-of-type summary"),
        Choose("#regauge-knitting", "flat"),
        // Back and forth they end on the same side.
        Reads("42"),
        Outcome("14 cm"),
        Type("#regauge-rows", " "),
        Press(".question > details:last-of-type summary"),
        Type("#regauge-from", "60"),
        Type("#regauge-to", "42"),
        Type("#regauge-shaping_rows", "56"),
        Reads("From 66 to 46 stitches"),
        Outcome("60 rows"),
        Says(".answers", "Row 1 of the shaping is taken to be a right-side row"),
        // Ten times, not nine: every 6th row of the pattern is no rate here.
        Is(
            ".verdict",
            "Work 4 rows plain, then a decrease row. Then 5 rows plain, then a decrease row; 9 times. Then 1 row plain.",
        ),
        Type("#regauge-to", "41"),
        Button(".problem", "Use 40"),
        Reads("From 66 to 44 stitches"),
        Outcome("60 rows"),
    ];
    play(stage, &steps).await
}

//! The flare: from the neck to a hem that lies flat, hangs or ruffles; when to increase is read from the screen.

use crate::{
    stage::Stage,
    steps::{Step::*, play},
};
use anyhow::Result;

/// The gauge is kept once in another tool and taken here; the hem lies flat first, then is so far round.
pub async fn she_flares_a_cape_with_the_gauge_she_keeps(stage: &mut Stage) -> Result<()> {
    let steps = [
        Open("#/cast_on"),
        Type("#cast_on-gauge", "21"),
        Button(".question", "Keep 21 over 10 cm for the project"),
        Go("#/flare"),
        Holds("#flare-gauge", "21"),
        Says(".question", "from the project"),
        Type("#flare-neck", "96"),
        Type("#flare-depth", "30"),
        Type("#flare-row_gauge", "28"),
        Outcome("488 stitches, 232.4 cm round"),
        Reads("Increase 8 in round 3. Then 16 times over: in the next round, then every 2nd round twice."),
        Begins(".verdict", "It lies flat: 30 cm from neck to hem"),
        Choose("#flare-hem", "girth"),
        Type("#flare-girth", "120"),
        Outcome("248 stitches, 118.1 cm round"),
        Begins(
            ".answer .row",
            "Increase 8 in round 6, then every 4th round 18 times more.",
        ),
        Begins(".verdict", "It hangs as a cone: 30 cm along its side"),
        Type("#flare-girth", "3 m"),
        Begins(".verdict", "It ruffles: 30 cm along the fabric, the hem"),
        // Of the 632 stitches of the last round, not of the 96 at the neck.
        Says(".answers", "To bind off 632 stitches"),
        // Garter has more rows, and the same depth more rounds.
        Type("#flare-row_gauge", "42"),
        Says(".answers", "126 rounds, 67 of them"),
        Choose("#flare-rhythm", "most-even"),
        Begins(".answer .row", "Increase 8 in 67 rounds, as listed below."),
        Says(".answers", "Round 125: 632 stitches"),
        // Too fast for four at a time: what would do is a tap away.
        Type("#flare-row_gauge", "28"),
        Unfold,
        Type("#flare-each", "4"),
        Button(".question .more", "Use 7"),
        Outcome("628 stitches, 299 cm round"),
    ];
    play(stage, &steps).await
}

/// In inches, with both gauges over 4 inches; and a hem of so many stitches that her lines do not reach.
pub async fn she_flares_in_inches(stage: &mut Stage) -> Result<()> {
    let steps = [
        Open("#/flare"),
        Choose("#flare-depth-unit", "in"),
        Type("#flare-neck", "96"),
        Type("#flare-depth", "12"),
        Type("#flare-gauge", "20"),
        Choose("#flare-gauge-unit", "4 in"),
        Type("#flare-row_gauge", "28"),
        Choose("#flare-row_gauge-unit", "4 in"),
        // 84 rounds of 2 pi 20 / 28 stitches.
        Outcome("472 stitches, 94 3/8 in round"),
        Choose("#flare-hem", "stitches"),
        Type("#flare-stitches", "397"),
        Begins(".question .problem", "Type 392 or 400."),
        Button(".question .problem", "Use 400"),
        Outcome("400 stitches, 80 in round"),
        Unfold,
        Type("#flare-stitches", "397"),
        Choose("#flare-lines", "scattered"),
        Outcome("397 stitches, 79 3/8 in round"),
        Says(".answer .row", "in the last of them only 5"),
    ];
    play(stage, &steps).await
}

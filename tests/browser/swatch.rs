//! The swatch: what is hoped for typed, and what to cast on, how high, and in which order read.

use crate::{
    stage::Stage,
    steps::{Step::*, play},
};
use anyhow::Result;

const GAUGE: &str = "#swatch-gauge";

/// For a round, and flat with repeats.
pub async fn she_casts_on_a_swatch_with_room_round_its_middle(stage: &mut Stage) -> Result<()> {
    let steps = [
        Enter("swatch"),
        Type(GAUGE, "21"),
        Reads("Cast on 43"),
        Outcome("21 stitches"),
        Says(".answers", "until it is 15 cm high"),
        Says(".answers", "loosely across the back"),
        Says(".answers", "Cut the strands"),
        Unfold,
        Type("#swatch-rows", "28"),
        Says(".answers", "Work 42 rows, 15 cm high"),
        // In the round a repeat has no plus.
        Type("#swatch-multiple", "8 + 3"),
        Reads("Cast on 48"),
        Outcome("21 stitches"),
        Choose("#swatch-knitting", "flat"),
        Reads("Cast on 43"),
        Outcome("21 stitches"),
        Type("#swatch-row_repeat", "8"),
        Says(".answers", "Work 48 rows, 17.1 cm high"),
        Says(".answers", "5 repeats of 8, plus 3"),
        Says(".answers", "back and forth"),
        NeverSays(".answers", "Cut the strands"),
        NeverSays(".answers", "across the back"),
    ];
    play(stage, &steps).await
}

/// In inches: the middle is 4 in, and the height 6.
pub async fn she_plans_a_swatch_in_inches(stage: &mut Stage) -> Result<()> {
    let steps = [
        Open("#/swatch"),
        Type(GAUGE, "18"),
        Choose("#swatch-gauge-unit", "4 in"),
        Reads("Cast on 36"),
        Outcome("18 stitches"),
        Says(".answers", "until it is 6 in high; it should be 8 in wide"),
        Says(".answers", "measured, 4 in each way"),
        Says(".answers", "Bind off"),
        // An inch is what was counted, and 4 in are measured all the same.
        Type(GAUGE, "5"),
        Choose("#swatch-gauge-unit", "1 in"),
        Reads("Cast on 40"),
        Outcome("20 stitches"),
        Choose("#swatch-knitting", "flat"),
        Says(".answers", "over 4 in in the middle"),
        NeverSays(".answers", "off for a round"),
    ];
    play(stage, &steps).await
}

//! Casting on: a width and a washed swatch typed, the count read from the screen, and counted by taps.

use crate::{
    stage::Stage,
    steps::{Step::*, play},
};
use anyhow::Result;

const WIDTH: &str = "#cast_on-width";
const GAUGE: &str = "#cast_on-gauge";

/// In centimetres: from the first page to the tool in one tap, and the nearest count that the pattern takes.
pub async fn she_casts_on_the_width_she_wants(stage: &mut Stage) -> Result<()> {
    let steps = [
        Enter("cast_on"),
        Type(WIDTH, "100"),
        Hides(".answer", "an answer before a question"),
        Type(GAUGE, "21"),
        Reads("Cast on 210"),
        Outcome("100 cm round"),
        Unfold,
        Type("#cast_on-multiple", "8"),
        Type("#cast_on-plus", "3"),
        // The multiple: 26 repeats; the plus is for a flat piece.
        Reads("Cast on 208"),
        Outcome("99 cm round"),
        Says(".answers", "200: 95.2 cm, 4.8 cm less than you want"),
        Says(".answers", "216: 102.9 cm, 2.9 cm more than you want"),
        Says(".answers", "96.7 cm to 101.5 cm"),
        Choose("#cast_on-knitting", "flat"),
        // 26 repeats and 3 are 211, and a stitch at each edge for the seam.
        Reads("Cast on 213"),
        Outcome("100.5 cm wide"),
        Begins(".answer .outcome", "211 for the pattern, 2 for the seams"),
        // As the pattern writes it: both in one field. And of 27 and 28 repeats neither is nearer.
        Type(GAUGE, "22"),
        Type("#cast_on-plus", "0"),
        Type("#cast_on-multiple", "8 + 3"),
        // A 0 beside it and a 3 behind the plus are two answers.
        Hides(".answer", "which of the two pluses?"),
        Button("#cast_on-plus-problem", "Use 3"),
        Reads("Cast on 221"),
        Outcome("99.5 cm wide"),
        Choose("#cast_on-knitting", "round"),
        Reads("Cast on 216"),
        Outcome("98.2 cm round"),
        Says(".answers", "just as near"),
    ];
    play(stage, &steps).await
}

/// In inches, with a gauge over 4 inches: 40 in at 18 are 180, and not what 10 cm would make of it.
pub async fn she_casts_on_in_inches(stage: &mut Stage) -> Result<()> {
    let steps = [
        Open("#/cast_on"),
        Choose("#cast_on-width-unit", "in"),
        Type(WIDTH, "40"),
        Type(GAUGE, "18"),
        Choose("#cast_on-gauge-unit", "4 in"),
        Reads("Cast on 180"),
        Outcome("40 in round"),
        Choose("#cast_on-gauge-unit", "10 cm"),
        Reads("Cast on 183"),
        Outcome("40 in round"),
        Choose("#cast_on-gauge-unit", "4 in"),
        Button(".question .chips", "1/2"),
        Reads("Cast on 182"),
        Outcome("40 1/2 in round"),
    ];
    play(stage, &steps).await
}

/// A tap at each marker; each is kept, and goes on from where it was.
pub async fn she_counts_by_taps_while_casting_on(stage: &mut Stage) -> Result<()> {
    let steps = [
        Open("#/cast_on"),
        Type(WIDTH, "54"),
        Type(GAUGE, "20"),
        Reads("Cast on 108"),
        Outcome("54 cm round"),
        Button(".taps", "20 are on"),
        Button(".taps", "40 are on"),
        Button(".taps", "60 are on"),
        Is(".tally [role=status]", "60 of 108 are on the needle."),
        Button(".taps", "Back to 40"),
        Is(".tally [role=status]", "40 of 108 are on the needle."),
        Kept,
        Reload,
        Is(".tally [role=status]", "40 of 108 are on the needle."),
        // With other markers it goes on to the next of them.
        Choose("#cast_on-every", "25"),
        Button(".taps", "50 are on"),
        Button(".taps", "75 are on"),
        Button(".taps", "100 are on"),
        Button(".taps", "108 are on"),
        Is(".tally [role=status]", "All 108 are on the needle."),
        Button(".taps", "Begin the count again"),
        Begins(".tally [role=status]", "Nothing"),
    ];
    play(stage, &steps).await
}

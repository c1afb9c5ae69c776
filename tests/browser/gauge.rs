//! Gauge: counts from a swatch and the pattern's typed; the needle, the would-be piece and the gauge to keep are read.

use crate::{
    stage::Stage,
    steps::{Step::*, play},
};
use anyhow::Result;

const STITCHES: &str = "#gauge-stitches";
const PATTERN: &str = "#gauge-pattern";

/// Three spots of the swatch; alone they are her gauge, and with the pattern's beside them she goes up a needle. The mean
/// is kept by one tap, and taken by another where it is asked for.
pub async fn she_counts_several_spots_and_goes_up_a_needle(stage: &mut Stage) -> Result<()> {
    let steps = [
        Enter("gauge"),
        Type(STITCHES, "21"),
        Reads("21 stitches over 10 cm"),
        Outcome("about 21¼ over 4 in"),
        // The obvious range is even on both sides: 97.6 to 102.4.
        Says(".answers", "may be anything from 97.7 cm to 102.4 cm"),
        Says(".answers", "over 15 cm, 98.4 cm to 101.6 cm"),
        Type(STITCHES, "21, 20 1/2, 21"),
        // Nobody says 20.833 stitches; nobody is told 20¾ for it without "about".
        Reads("about 20¾ stitches over 10 cm"),
        Outcome("about 21¼ over 4 in"),
        Type(PATTERN, "19"),
        Reads("Go up 1 needle size and swatch again"),
        Outcome("91.2 cm"),
        Says(".answers", "the mean of 3 spots, from 20½ to 21 over 10 cm"),
        Says(".answers", "Type the needle of the swatch"),
        Type("#gauge-needle", "4"),
        Reads("Go up 1 needle size, from US 6 (4 mm) to US 7 (4.5 mm), and swatch again"),
        Outcome("91.2 cm"),
        Named(".answers .scale svg", "91.2 cm wide; wanted: 100 cm wide"),
        Says(".answers", "9.6 % more stitches than the pattern"),
        Button(".answers", "Keep 20.83 over 10 cm for the project"),
        Go("#/cast_on"),
        // The fraction that it is goes along.
        Says(".known", "from the project"),
        Type("#cast_on-width", "100"),
        Is(".answer .row", "Cast on 208"),
    ];
    play(stage, &steps).await
}

/// In inches, over 4 in; and 10 cm are not taken for 4 in.
pub async fn she_swatches_in_inches_and_four_inches_stay_four(stage: &mut Stage) -> Result<()> {
    let steps = [
        Open("#/gauge"),
        Type(STITCHES, "20"),
        Choose("#gauge-stitches-unit", "4 in"),
        Reads("20 stitches over 4 in"),
        Outcome("about 19¾ over 10 cm"),
        Type(PATTERN, "22"),
        Choose("#gauge-pattern-unit", "4 in"),
        Unfold,
        Choose("#gauge-width-unit", "in"),
        Type("#gauge-width", "40"),
        Reads("Go down 1 needle size and swatch again"),
        Outcome("44 in"),
        // A label that says both is read as 10 cm, and then she is nearer to it.
        Says(".question", "read as 10 cm"),
        Choose("#gauge-pattern-unit", "10 cm"),
        Reads("Go down 2 needle sizes and swatch again"),
        Outcome("44 3/4 in"),
        // An inch is too short to tell a match from a miss: no needle, and what is kept is 5 over 1 in.
        Choose("#gauge-pattern-unit", "4 in"),
        Type(STITCHES, "5"),
        Choose("#gauge-stitches-unit", "1 in"),
        Reads("Count over 4 in or more"),
        Outcome("44 in"),
        Button(".answers", "Keep 5 over 1 in for the project"),
        // An emptied width goes by its start, and counts parted by a slash ask for commas.
        Type("#gauge-width", " "),
        Reads("Count over 4 in or more"),
        Outcome("43 1/4 in"),
        Type(STITCHES, "21/20"),
        Says("#gauge-stitches-problem", "commas"),
    ];
    play(stage, &steps).await
}

/// Washed and unwashed, stitches and rows: what matches, what does not, and what to knit by the tape.
pub async fn she_knits_what_is_right_after_washing(stage: &mut Stage) -> Result<()> {
    let steps = [
        Open("#/gauge"),
        Type(STITCHES, "21"),
        Type(PATTERN, "21"),
        Unfold,
        Type("#gauge-rows", "28"),
        Type("#gauge-rows_unwashed", "30"),
        Type("#gauge-pattern_rows", "26"),
        Reads("Keep this needle"),
        Outcome("the pattern’s"),
        Says(".answers", "Stitches match and rows do not"),
        Says(".answers", "50 cm would be 46.4 cm"),
        Says(".answers", "for 50 cm washed, knit 46.7 cm by the tape"),
        Says(".answers", "Keep 28 over 10 cm"),
        Says(".answers", "Keep 30 over 10 cm"),
        // What cannot be read says what to type, and what was typed stays.
        Type("#gauge-rows", "28 or so"),
        Shown("#gauge-rows-problem"),
        Holds("#gauge-rows", "28 or so"),
    ];
    play(stage, &steps).await
}

//! Measures typed as they are printed and called: read, asked about, or with what else may be meant a tap away.

use crate::{
    stage::Stage,
    steps::{Step::*, play},
};
use anyhow::Result;

/// The name of a needle in a field of millimetres: its millimetres stand beside it, and it can be kept as it was typed.
pub async fn a_needle_is_typed_as_it_is_called(stage: &mut Stage) -> Result<()> {
    const NEEDLE: &str = "#tail-needle";
    let steps = [
        Open("#/tail"),
        Type("#tail-stitches", "120"),
        Choose("#tail-yarn", "medium"),
        Unfold,
        Type(NEEDLE, "US 6"),
        Holds(NEEDLE, "US 6"),
        Says(".question", "US 6 (4 mm)"),
        Says(".question", "Keep US 6 for the project"),
        Shown(".answer"),
        // No needle has that number: what cannot be read is never offered to be kept.
        Type(NEEDLE, "US 12"),
        Says("#tail-needle-problem", "Do you mean US 11 (8 mm) or US 13 (9 mm)?"),
        NeverSays(".question", "Keep US 12"),
        Type(NEEDLE, "10½"),
        Says("#tail-needle-problem", "Do you mean 10.5 mm or US 10 1/2 (6.5 mm)?"),
        NeverSays(".question", "Keep 10½"),
        Button("#tail-needle-problem", "Use US 10 1/2 (6.5 mm)"),
        Holds(NEEDLE, "US 10 1/2"),
        Says(".question", "Keep US 10 1/2 for the project"),
        Go("#/needles"),
        Type("#needles-size", "6 US"),
        Reads("4 mm"),
    ];
    play(stage, &steps).await
}

/// With inches and US needles chosen, a number alone is asked about where it is a US size; one that was typed before the
/// choice stays what it was.
pub async fn a_number_alone_may_be_a_us_needle(stage: &mut Stage) -> Result<()> {
    const NEEDLE: &str = "#gauge-needle";
    const PROBLEM: &str = "#gauge-needle-problem";
    let steps = [
        Open("#/gauge"),
        Type(NEEDLE, "6"),
        Go("#/"),
        Shown("#settings-measures"),
        Choose("#settings-measures", "inches"),
        Go("#/gauge"),
        Shown(NEEDLE),
        Holds(NEEDLE, "6"),
        Hides(PROBLEM, "a question about what was typed as millimetres"),
        Type(NEEDLE, ""),
        Type(NEEDLE, "6"),
        Says(PROBLEM, "Do you mean US 6 (4 mm) or 6 mm?"),
        Button(PROBLEM, "Use US 6 (4 mm)"),
        Holds(NEEDLE, "US 6"),
        Hides(PROBLEM, "a question that was answered"),
        Type(NEEDLE, "6"),
        Button(PROBLEM, "Use 6 mm"),
        Holds(NEEDLE, "6 mm"),
        Hides(PROBLEM, "a question that was answered"),
    ];
    play(stage, &steps).await
}

/// Two counts or one, thousands or decimals: one question, and each way is a tap in the unit that was typed.
pub async fn a_number_in_doubt_is_asked_about(stage: &mut Stage) -> Result<()> {
    let steps = [
        Open("#/spacing"),
        Type("#spacing-stitches", "88 112"),
        Says("#spacing-stitches-problem", "Do you mean 88, 112 or 88112?"),
        Hides(".answer", "an answer to a number in doubt"),
        Button("#spacing-stitches-problem", "Use 112"),
        Holds("#spacing-stitches", "112"),
        Open("#/yarn?from=length"),
        Choose("#yarn-length-unit", "yd"),
        Type("#yarn-length", "1,150"),
        Says(
            "#yarn-length-problem",
            "The comma may part thousands or decimals. Do you mean 1150 yd or 1.15 yd?",
        ),
        Type("#yarn-length", "1.150"),
        Says("#yarn-length-problem", "The point may part"),
        Button("#yarn-length-problem", "Use 1150 yd"),
        Holds("#yarn-length", "1150 yd"),
        Type("#yarn-ball_length", "125"),
        Shown(".answer"),
    ];
    play(stage, &steps).await
}

/// What is seldom knitted over the span that stands beside it, and usual over an inch; and a bust in inches beside
/// centimetres.
pub async fn what_was_left_in_the_wrong_unit_is_a_tap_away(stage: &mut Stage) -> Result<()> {
    let steps = [
        Open("#/cast_on"),
        Type("#cast_on-width", "100"),
        Type("#cast_on-gauge", "5.5"),
        Shown(".answer"),
        Button(".question", "5.5 over 1 in?"),
        Holds("#cast_on-gauge", "5.5"),
        Holds("#cast_on-gauge-unit", "1 in"),
        Open("#/sizing"),
        Type("#sizing-bust", "38 1/4"),
        Button(".question", "38 1/4 in?"),
        Holds("#sizing-bust", "38 1/4"),
        Holds("#sizing-bust-unit", "in"),
        NeverSays(".question", "38 1/4 in?"),
    ];
    play(stage, &steps).await
}

/// Both counts typed at once, mark by mark, into the field of one: the other is filled in and says from what; cleared by
/// one tap, offered by another, and never written over.
pub async fn a_label_fills_stitches_and_rows(stage: &mut Stage) -> Result<()> {
    const STITCHES: &str = "#flare-gauge";
    const ROWS: &str = "#flare-row_gauge";
    let steps = [
        Open("#/flare"),
        Type(STITCHES, "20 sts and 28 rows"),
        Holds(STITCHES, "20 sts and 28 rows"),
        Holds(ROWS, "28"),
        Says(".question", "Filled in from “20 sts and 28 rows”."),
        Type("#flare-neck", "96"),
        Type("#flare-depth", "30"),
        Shown(".answer"),
        Button(".question", "Clear it"),
        Holds(ROWS, ""),
        Button(".question", "Use 28, from “20 sts and 28 rows”"),
        Holds(ROWS, "28"),
        Type(ROWS, "31"),
        Type(STITCHES, "22 x 30"),
        Holds(ROWS, "31"),
        Says(".question", "Use 30, from “22 x 30”"),
        Type(STITCHES, "21-22"),
        Says(".question", "Read as 21.5, the middle of 21 to 22."),
        NeverSays(".question", "Filled in"),
    ];
    play(stage, &steps).await
}

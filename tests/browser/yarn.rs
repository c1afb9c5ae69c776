//! The job of yarn needed: stitches, rows and a swatch typed, or what a pattern asks for, and the balls to buy read
//! from the screen.

use crate::{
    stage::Stage,
    steps::{Step::*, play},
};
use anyhow::{Result, ensure};

/// A scarf in garter from a stockinette swatch, in metres and in yards.
pub async fn she_types_her_scarf_and_reads_the_balls(stage: &mut Stage) -> Result<()> {
    let steps = [
        Enter("yarn"),
        Hides(".answer", "an answer before a question"),
        Type("#yarn-s1_stitches", "40"),
        Type("#yarn-s1_rows", "400"),
        Choose("#yarn-s1_fabric", "garter"),
        Type("#yarn-swatch_stitches", "21"),
        Type("#yarn-swatch_rows", "28"),
        // The example in the field is no ball of hers: it is told how much yarn, and what is missing for the balls.
        Begins(".answer .row", "You need about "),
        Says(".answers", "Type how much yarn is on the ball you buy"),
        NeverSays(".answers", "Buy"),
        Holds("#yarn-ball_length", ""),
        Type("#yarn-ball_length", "125"),
        Reads("Buy 4 balls"),
        Says(".answer .outcome", " m"),
        // Nothing is bound off until that is said, and what it would take is told.
        Says(".notes", "Nothing is counted for binding off"),
        NeverSays(".lines", "Binding off"),
        Choose("#yarn-s1_bind_off", "plain"),
        Says(".lines", "Binding off"),
        NeverSays(".notes", "Nothing is counted for binding off"),
        Reads("Buy 4 balls"),
        // The same in yards: the ball keeps what was typed, and the answer is the same ball count.
        Choose("#yarn-ball_length-unit", "yd"),
        Says(".answer .outcome", " yd"),
        Reads("Buy 4 balls"),
        // What stands there adds up: four of 136.7 yd are 546.8 yd.
        Says(".answers", "4 balls of about 136.7"),
        Type("#yarn-ball_length", "230"),
        Reads("Buy 2 balls"),
        // What is likely stands beside what makes it sure, and no advice against either.
        Type("#yarn-s1_rows", "2000"),
        Says(".close", "likely enough;"),
        Says(".close", "reserve only"),
        // How often is asked in the line itself.
        Type("#yarn-s1_times", "2"),
        Says(".working", "2 × 40 × 2,000"),
        NeverSays(".answers", "weighs"),
        Type("#yarn-ball_mass", "50"),
        Says(".answers", "weighs"),
    ];
    play(stage, &steps).await
}

/// A scarf whose swatch was counted over 4 inches and then over 10 centimetres, with its seams in either.
pub async fn she_measures_with_a_tape(stage: &mut Stage) -> Result<()> {
    let over_inches = [
        Open("#/yarn"),
        Type("#yarn-s1_stitches", "40"),
        Type("#yarn-s1_rows", "420"),
        Type("#yarn-swatch_stitches", "21"),
        Choose("#yarn-swatch_stitches-unit", "4 in"),
        Type("#yarn-swatch_rows", "28"),
        Choose("#yarn-swatch_rows-unit", "4 in"),
        Type("#yarn-ball_length", "125"),
        // 16,800 stitches of 1.948 cm are 327 m.
        Reads("Buy 4 balls"),
        Says(".working", "1.947 cm"),
    ];
    play(stage, &over_inches).await?;
    let inches = stage.browser.text(".answer .outcome").await?;
    let over_centimetres = [
        Press("details.more > summary"),
        Choose("#yarn-seams-unit", "in"),
        Type("#yarn-seams", "23 5/8"),
        Says(".lines", "Seams: 1.1 m"),
        // The same in centimetres: what was typed is the same length, and so is the yarn.
        Choose("#yarn-seams-unit", "cm"),
        Holds("#yarn-seams", "60"),
        Says(".lines", "Seams: 1.1 m"),
        // As many stitches over 10 cm are smaller ones.
        Choose("#yarn-swatch_stitches-unit", "10 cm"),
        Choose("#yarn-swatch_rows-unit", "10 cm"),
        Says(".working", "1.917 cm"),
    ];
    play(stage, &over_centimetres).await?;
    let metric = stage.browser.text(".answer .outcome").await?;
    ensure!(metric != inches, "\"{metric}\" over 10 cm and over 4 in");
    Ok(())
}

/// A piece measured by its tape takes the gauge of its own fabric, and no other.
pub async fn she_measures_the_piece_itself(stage: &mut Stage) -> Result<()> {
    let steps = [
        Open("#/yarn"),
        Choose("#yarn-s1_shape", "measured"),
        Choose("#yarn-s1_width-unit", "cm"),
        Type("#yarn-s1_width", "50"),
        Type("#yarn-s1_length", "180"),
        Type("#yarn-swatch_stitches", "21"),
        Type("#yarn-swatch_rows", "28"),
        Type("#yarn-ball_length", "125"),
        Says(".working", "105 stitches × 504 rows"),
        Choose("#yarn-s1_fabric", "garter"),
        Says(".problem", "in its own fabric"),
        Hides(".answer", "garter by a stockinette gauge"),
    ];
    play(stage, &steps).await
}

/// A rib gauge is refused, and a weighed swatch is a tap away; a second section comes and goes, and loses nothing.
pub async fn a_rib_gauge_is_refused_and_a_weighed_swatch_taken(stage: &mut Stage) -> Result<()> {
    let steps = [
        Open("#/yarn"),
        Type("#yarn-ball_length", "125"),
        Type("#yarn-s1_stitches", "120"),
        Type("#yarn-s1_rows", "60"),
        Choose("#yarn-s1_fabric", "rib"),
        Choose("#yarn-swatch_fabric", "rib"),
        Type("#yarn-own_stitches", "34"),
        Type("#yarn-own_rows", "28"),
        Says(".problem", "weigh a swatch"),
        Hides(".answer", "yarn from a rib gauge"),
        Says(".answers", "From a gauge in rib"),
        Button(".problem", "Weigh a swatch"),
        Shown("#yarn-swatch_mass"),
        Type("#yarn-w_stitches", "40"),
        Type("#yarn-w_rows", "60"),
        Type("#yarn-swatch_mass", "24"),
        // By the scale it takes what the ball weighs.
        Says(".answers", "what the ball you buy weighs"),
        Type("#yarn-ball_mass", "50"),
        Reads("Buy 3 balls"),
        Button(".question", "Add a section"),
        Shown("#yarn-s2_stitches"),
        Hides(".answer", "an answer without the second section"),
        Type("#yarn-s2_stitches", "120"),
        Type("#yarn-s2_rows", "200"),
        Type("#yarn-s2_name", "body"),
        Says(".working", "body: 1 × 120 × 200"),
        Says(".lines", "body: "),
        Says(".lines", "Section 1: "),
        Reads("Buy 8 balls"),
        // It goes on from the first, until it is said to have a cast-on of its own.
        Holds("#yarn-s2_cast_on", "no"),
        Button(".section + .section", "Take it out"),
        Reads("Buy 3 balls"),
        Button(".question", "Bring back what I took out"),
        Reads("Buy 8 balls"),
    ];
    play(stage, &steps).await
}

/// A pattern's seven balls of 125 m, in balls of 210 m.
pub async fn a_patterns_balls_become_her_own(stage: &mut Stage) -> Result<()> {
    let steps = [
        Open("#/yarn"),
        Choose("#yarn-from", "balls"),
        Type("#yarn-balls", "7"),
        Type("#yarn-pattern_length", "125"),
        Type("#yarn-ball_length", "125"),
        Reads("Buy 7 balls"),
        Hides(".close", "a warning where the same ball goes in and out"),
        Type("#yarn-ball_length", "210"),
        Reads("Buy 5 balls"),
        Says(".answer .outcome", "751 m to 875 m"),
        // Six of 125 m are 750 m to the last bit, and are six.
        Choose("#yarn-from", "length"),
        Type("#yarn-length", "750"),
        Type("#yarn-ball_length", "125"),
        Reads("Buy 6 balls"),
        Says(".close", "Buy one more"),
    ];
    play(stage, &steps).await
}

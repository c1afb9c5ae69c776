//! Cords: stitches at both ends of a piece and a gauge typed, and the circular needles and the changes read.

use crate::{
    stage::Stage,
    steps::{Step::*, play},
};
use anyhow::Result;

const GAUGE: &str = "#cords-gauge";

/// A yoke in centimetres, which grows: the cords, the window of the change, and the cords that she has.
pub async fn she_changes_cords_as_her_yoke_grows(stage: &mut Stage) -> Result<()> {
    let steps = [
        Enter("cords"),
        Type("#cords-from", "90"),
        Type(GAUGE, "20"),
        // Two figures are enough for a tube.
        Reads("40 cm"),
        Type("#cords-to", "230"),
        Hides(".answer", "over how many rounds?"),
        Type("#cords-rounds", "60"),
        Reads("40 cm, then 60 cm"),
        Outcome("45 cm, in the end 115 cm"),
        Is(
            ".verdict",
            "Change to 60 cm between round 14 and round 31, on a plain round.",
        ),
        Named(".scale svg", "60 cm, round 14 to 60."),
        Is(
            ".scale figcaption",
            "Thick: take these. Thin: would do too. The numbers are rounds.",
        ),
        Says(".notes", "The growth is taken as even"),
        Unfold,
        Type("#cords-cords", "40 and 80"),
        Reads("40 cm, then 80 cm"),
        Is(".verdict", "Change to 80 cm at round 31: no other round will do."),
        // With stiff tips nothing closes the ring at the start.
        Type("#cords-tip", "13"),
        Reads("double-pointed needles or magic loop, then 80 cm"),
        // Back and forth nothing has to close.
        Choose("#cords-knitting", "flat"),
        Reads("80 cm"),
    ];
    play(stage, &steps).await
}

/// The crown of a hat in inches, which shrinks below the shortest cord.
pub async fn she_shrinks_a_crown_in_inches(stage: &mut Stage) -> Result<()> {
    let steps = [
        Open("#/cords"),
        Unfold,
        Choose("#cords-tip-unit", "in"),
        Type("#cords-from", "100"),
        Type("#cords-to", "8"),
        Type("#cords-rounds", "31"),
        Type("#cords-gauge", "5"),
        Choose("#cords-gauge-unit", "1 in"),
        Outcome("20 in, in the end 1 5/8 in"),
        Reads("16 in, then double-pointed needles or magic loop"),
        Type("#cords-cords", "16, 24, 32"),
        Reads("16 in, then double-pointed needles or magic loop"),
        // 16 in takes 80 stitches to reach round.
        Says(".answers", "From round 8 to round 31 none of the cords will do."),
        Says(".answers", "Double-pointed needles."),
        Says(".answers", "Magic loop, on a cord of 32"),
        Says(".answers", "Two circular needles"),
        Type("#cords-around", "10"),
        Reads("double-pointed needles or magic loop"),
    ];
    play(stage, &steps).await
}

/// The washed gauge she keeps is offered for a washed swatch only, and then with a caution.
pub async fn a_washed_gauge_is_taken_with_a_caution(stage: &mut Stage) -> Result<()> {
    let steps = [
        Open("#/cast_on"),
        Type("#cast_on-gauge", "20"),
        Button(".question", "Keep 20 over 10 cm for the project"),
        Go("#/cords"),
        Type("#cords-from", "90"),
        Hides(".question .known button", "washed is not unwashed"),
        Choose("#cords-swatch", "washed"),
        Says(".known", "from the project"),
        Reads("40 cm"),
        Says(".notes", "Your swatch is washed"),
    ];
    play(stage, &steps).await
}

/// A yoke's own steps are the growth: the cord that grows evenly into its window would be too long for round 5.
pub async fn she_types_the_steps_of_her_yoke(stage: &mut Stage) -> Result<()> {
    let steps = [
        Open("#/cords"),
        Type("#cords-from", "90"),
        Type(GAUGE, "20"),
        Unfold,
        Type("#cords-steps", "5: 120, 12: 160, 25"),
        Begins("#cords-steps-problem", "Type a round and the stitches after it"),
        Type("#cords-steps", "5: 120, 12: 160, 25: 230"),
        Outcome("45 cm, in the end 115 cm"),
        Reads("40 cm, then 60 cm"),
        Is(
            ".verdict",
            "Change to 60 cm between round 5 and round 25, on a plain round.",
        ),
        NeverSays(".notes", "taken as even"),
        Type("#cords-to", "200"),
        Begins("#cords-to-problem", "You typed 230"),
    ];
    play(stage, &steps).await
}

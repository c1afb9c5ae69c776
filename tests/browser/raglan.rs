//! The raglan: body and sleeves, each to its own count.

use crate::{
    stage::Stage,
    steps::{Step::*, play},
};
use anyhow::Result;

/// Two targets, a cast-on at the underarm, and what would be right where a target cannot be had.
pub async fn she_shapes_a_raglan_to_two_targets(stage: &mut Stage) -> Result<()> {
    let steps = [
        Open("#/raglan"),
        Type("#raglan-body", "40"),
        Type("#raglan-sleeve", "10"),
        Type("#raglan-body_to", "120"),
        Type("#raglan-sleeve_to", "50"),
        Type("#raglan-rounds", "12"),
        Begins(".question .problem", "In 12 rounds the body grows to 84 at most."),
        Type("#raglan-rounds", "24"),
        // 20 raglan rounds in 24: one rate after the other would stray, and a turn that comes again keeps to the slope.
        Reads("Increase 8 now. Then 4 times over: every round 4 times, then 2 rounds later; 20 in all."),
        Says(".answers", "It grows evenly, to the round."),
        Begins(".answers", "From neck to underarm"),
        Unfold,
        Type("#raglan-body", "56"),
        Type("#raglan-sleeve", "16"),
        Type("#raglan-body_to", "202"),
        Type("#raglan-sleeve_to", "68"),
        Type("#raglan-rounds", "64"),
        Type("#raglan-underarm", "8"),
        Button(".question .problem", "Use 200"),
        Begins(".answer .row", "Body: 4 now, then every 2nd round 31 times more."),
        Says(
            ".answer",
            "Sleeves: 2 each now. Then 11 times over: 2 rounds later, then 4 rounds later; 22 in all.",
        ),
        Says(".answers", "Both grow evenly, to the round."),
        Begins(".answer .outcome strong", "304 stitches"),
        Begins(
            ".verdict",
            "Then put 60 aside for each sleeve and cast on 8 at each underarm: 200 round the body, 68 round each sleeve.",
        ),
        Named(
            "figure svg",
            "From above, in stitches and rounds: the neck with 88 in the middle",
        ),
        // As even as can be it is a list.
        Type("#raglan-rounds", "76"),
        Choose("#raglan-rhythm", "most-even"),
        Begins(".answer .row", "Body: 4 in 32 rounds, as listed below."),
        Says(".listed", "Round 3, body and sleeves: 64 + 2 × 20 = 104"),
    ];
    play(stage, &steps).await
}

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
        Begins(".question .problem", "Type 84 or fewer."),
        Type("#raglan-rounds", "24"),
        // Every round but the last four, since 20 raglan rounds are to fit into 24.
        Begins(".answer .row", "Increase 8 in rounds 1, 2, 3, 4, 5, 6, 7, 8, 9"),
        Begins(".answers", "From neck to underarm"),
        Unfold,
        Type("#raglan-body", "56"),
        Type("#raglan-sleeve", "16"),
        Type("#raglan-body_to", "202"),
        Type("#raglan-sleeve_to", "68"),
        Type("#raglan-rounds", "64"),
        Type("#raglan-underarm", "8"),
        Button(".question .problem", "Use 200"),
        Begins(
            ".answer .row",
            "Increase 8 in rounds 3, 5, 9, 11, 15, 17, 21, 23, 27, 29, 31, 35, 37, 41, 43, 47, 49, 53, 55, 59, 61 and 63. \
                 Increase 4, on the body only, in rounds 1, 7, 13, 19, 25, 33, 39, 45, 51 and 57.",
        ),
        Begins(".answer .outcome strong", "304 stitches"),
        Begins(
            ".verdict",
            "Put 60 aside for each sleeve and cast on 8 at each underarm: 200 round the body, 68 round each sleeve.",
        ),
    ];
    play(stage, &steps).await
}

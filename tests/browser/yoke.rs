//! The yoke: its few rounds, each with how many it changes and the count after it.

use crate::{
    stage::Stage,
    steps::{Step::*, play},
};
use anyhow::Result;

/// From the body up, in whole repeats; then the same yoke from the neck down.
pub async fn she_shapes_a_yoke_in_four_rounds(stage: &mut Stage) -> Result<()> {
    let steps = [
        Open("#/yoke"),
        Type("#yoke-from", "320"),
        Type("#yoke-to", "100"),
        Type("#yoke-rounds", "60"),
        Reads("Decrease 55 evenly in rounds 14, 29, 44 and 59"),
        Unfold,
        Type("#yoke-multiple", "8"),
        Button(".question .problem", "Use 96"),
        Reads("Decrease 56 evenly in rounds 14, 29, 44 and 59"),
        Says(".answers", "Round 14: decrease 56 evenly, 264 stitches after it."),
        Says(".answers", "Round 59: decrease 56 evenly, 96 stitches after it."),
        Type("#yoke-multiple", "1"),
        Type("#yoke-from", "97"),
        Type("#yoke-to", "300"),
        Type("#yoke-shaping_rounds", "3"),
        Reads("Increase evenly: 68 in round 19, 67 in round 39, 68 in round 59"),
        // The count that is kept is taken beside the first field.
        Button(".question", "Keep 97 for all tools"),
        // No round takes more than one in each gap.
        Type("#yoke-shaping_rounds", "1"),
        Button(".question .problem", "Use 3"),
        Reads("Increase evenly: 68 in round 19, 67 in round 39, 68 in round 59"),
    ];
    play(stage, &steps).await
}

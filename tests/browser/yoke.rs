//! The yoke: its few rounds, each with how many it changes and the count after it.

use crate::{
    stage::Stage,
    steps::{Step::*, play},
};
use anyhow::Result;

/// From the body up, in whole repeats; then from the neck down, with the division.
pub async fn she_shapes_a_yoke_in_four_rounds(stage: &mut Stage) -> Result<()> {
    let steps = [
        Open("#/yoke"),
        Type("#yoke-from", "320"),
        Type("#yoke-to", "100"),
        Type("#yoke-rounds", "60"),
        Reads("Work 20 rounds plain. Decrease 55 evenly in rounds 21, 33, 46 and 59."),
        Says(".answers", "96 for the front, 96 for the back, 64 for each sleeve."),
        Unfold,
        Type("#yoke-multiple", "8"),
        Button(".question .problem", "Use 96"),
        Reads("Work 20 rounds plain. Decrease 56 evenly in rounds 21, 33, 46 and 59."),
        Says(
            ".answers",
            "Round 21: decrease 56 evenly, 18 % fewer. 264 stitches after it.",
        ),
        Says(
            ".answers",
            "Round 59: decrease 56 evenly, 37 % fewer. 96 stitches after it.",
        ),
        // Plain rounds that are typed hold.
        Type("#yoke-first", "10"),
        Reads("Work 10 rounds plain. Decrease 56 evenly in rounds 11, 27, 43 and 59."),
        Type("#yoke-first", ""),
        Type("#yoke-multiple", "1"),
        Type("#yoke-from", "97"),
        Type("#yoke-to", "301"),
        Type("#yoke-shaping_rounds", "3"),
        Reads("Increase 68 evenly in rounds 13, 26 and 40, then work 20 rounds plain."),
        Says(
            ".answers",
            "Cast on 8 at each underarm: 197 round the body, 68 round each sleeve. The odd stitch is at the back.",
        ),
        // The count that is kept is taken beside the first field.
        Button(".question", "Keep 97 as the neck"),
        // No round takes more than one in each gap.
        Type("#yoke-shaping_rounds", "1"),
        Button(".question .problem", "Use 3"),
        Reads("Increase 68 evenly in rounds 13, 26 and 40, then work 20 rounds plain."),
        Choose("#yoke-growth", "circle"),
        Says(".answers", "Round 40: increase"),
    ];
    play(stage, &steps).await
}

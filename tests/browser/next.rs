//! From an answer to the tool that follows: what is carried stands there, what lay there can be put back, and the count goes
//! on from tool to tool without being typed again.

use crate::{
    stage::Stage,
    steps::{Step::*, play},
};
use anyhow::Result;

/// The link to a tool below an answer.
macro_rules! on_to {
    ($tool:literal) => {
        concat!(".next a[href^='#/", $tool, "?']")
    };
}

/// Girth and gauge give the cast-on; that goes to the tail and to the first increase, typed once.
pub async fn a_count_is_carried_from_tool_to_tool(stage: &mut Stage) -> Result<()> {
    let steps = [
        Open("#/cast_on"),
        Type("#cast_on-width", "106"),
        Type("#cast_on-gauge", "20"),
        Says(".next", "with 212 stitches"),
        Press(on_to!("tail")),
        Holds("#tail-stitches", "212"),
        Holds("#tail-gauge", "20"),
        Shown(".answer"),
        Open("#/cast_on"),
        Press(on_to!("spacing")),
        Holds("#spacing-stitches", "212"),
        Type("#spacing-amount", "12"),
        Says(".next", "200"),
    ];
    play(stage, &steps).await
}

/// What lay on the next tool's sheet stays where nothing is carried, and can be put back where something is.
pub async fn what_lay_there_can_be_put_back(stage: &mut Stage) -> Result<()> {
    let steps = [
        Open("#/tail"),
        Type("#tail-stitches", "80"),
        Choose("#tail-yarn", "light"),
        Go("#/cast_on"),
        Type("#cast_on-width", "100"),
        Type("#cast_on-gauge", "21"),
        Press(on_to!("tail")),
        Holds("#tail-stitches", "210"),
        Holds("#tail-yarn", "light"),
        Button(".doings", "Put mine back"),
        Holds("#tail-stitches", "80"),
    ];
    play(stage, &steps).await
}

/// A yoke goes to the cords with each of its rounds.
pub async fn a_yoke_goes_to_the_cords(stage: &mut Stage) -> Result<()> {
    let steps = [
        Open("#/yoke?from=96&to=320&rounds=60&multiple=8"),
        Press(on_to!("cords")),
        Holds("#cords-from", "96"),
        Holds("#cords-rounds", "60"),
        Type("#cords-gauge", "22"),
        Shown(".answer"),
    ];
    play(stage, &steps).await
}

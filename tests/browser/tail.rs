//! The tail: a count and the class on the ball band, and how much yarn to leave is read from the screen.

use crate::{
    stage::Stage,
    steps::{Step::*, play},
};
use anyhow::Result;

const STITCHES: &str = "#tail-stitches";

/// The count that was cast on, with the one more that joins the round, is kept there by one tap and taken here by
/// another; then only the yarn is asked for.
pub async fn she_takes_her_count_along_to_the_tail(stage: &mut Stage) -> Result<()> {
    let steps = [
        Open("#/cast_on"),
        Type("#cast_on-width", "100"),
        Type("#cast_on-gauge", "21"),
        Unfold,
        Choose("#cast_on-extra", "extra"),
        // The obvious count is that of the round, one stitch short of what the tail is for.
        Button(".answers", "Keep 211 as the cast-on"),
        Go("#/tail"),
        Holds(STITCHES, "211"),
        Is(".question .known", "\u{21b3} from the project: cast-on"),
        Says(".answers", "choose the class"),
        Choose("#tail-yarn", "medium"),
        // An inch a stitch, 10 %, and 20 cm to weave in.
        Reads("Leave a tail of 6.1 m"),
        // The stitches of this one come from the ball.
        Choose("#tail-method", "cable"),
        Reads("Leave 20 cm"),
    ];
    play(stage, &steps).await
}

/// In inches and yards; and what she measured over 20 stitches wins.
pub async fn she_leaves_a_tail_in_yards(stage: &mut Stage) -> Result<()> {
    let steps = [
        Open("#/tail"),
        Type(STITCHES, "120"),
        Choose("#tail-yarn", "medium"),
        Reads("Leave a tail of 3.6 m"),
        Choose("#settings-yarn", "yd"),
        Reads("Leave a tail of 3.9 yd"),
        Unfold,
        Choose("#tail-measured_used-unit", "in"),
        Type("#tail-measured_stitches", "20"),
        Begins(".question .problem", "Type this too"),
        Type("#tail-measured_used", "17 1/2"),
        // 17 1/2 in a 20 stitches are 105 in; 5 % on top, and 20 cm.
        Reads("Leave a tail of 3.3 yd"),
        Says(".ways .wins", "By the piece you measured"),
        NeverSays(".answers", "A piece of 20 stitches"),
        Type("#tail-needle", "six"),
        Begins(".question .problem", "Type the number on the needle"),
        Type("#tail-needle", "US 8"),
        Shown(".ways > div:nth-of-type(3)"),
        Reads("Leave a tail of 3.3 yd"),
    ];
    play(stage, &steps).await
}

/// In the middle of casting on, which is a question of its own: enough, tight, or begun again.
pub async fn she_asks_whether_the_tail_will_do(stage: &mut Stage) -> Result<()> {
    let steps = [
        Open("#/tail"),
        Choose("#tail-wanted", "left"),
        Type(STITCHES, "120"),
        Choose("#tail-yarn", "medium"),
        // As long as she does not say otherwise all of them are still to be cast on.
        Holds("#tail-left_to_go", "120"),
        Hides(".answer", "an answer to a question that she did not ask"),
        Type("#tail-left_tail", "1.5"),
        Reads("It gives 46 to 51 stitches"),
        Type("#tail-left_to_go", "40"),
        Begins(".outcome", "Enough: with 40 to go, 18 cm will be over"),
        NeverSays(".answers", "Leave a tail"),
        Type("#tail-left_tail", "1.25"),
        Begins(".outcome", "Tight: 40 to go just fit"),
        Type("#tail-left_tail", "0.9"),
        Begins(".outcome", "Not enough: for 40 to go, 32 cm is lacking"),
        Choose("#tail-wanted", "tail"),
        Reads("Leave a tail of 3.6 m"),
        // What was typed in a fold before there was a choice is asked about where it is opened again.
        Open("#/tail?stitches=120&yarn=medium&left_tail=1.25&left_to_go=40"),
        Holds("#tail-wanted", "left"),
        Holds("#tail-left_tail", "1.25"),
        Reads("It gives 37 to 41 stitches"),
    ];
    play(stage, &steps).await
}

//! Steps that are knitted at the same time, and what the whole project comes to.

use crate::{
    stage::Stage,
    steps::{Step, Step::*, play},
};
use anyhow::Result;

const KEEP: Step = Button(".keep", "Keep in the project");
const ALONGSIDE: &str = "#step-2-about-alongside";
const FROM_ROW: &str = "#step-2-about-from_row";

/// Armhole and neck on one needle: the row is asked for, the stitches are added up, and where the two would meet is pointed at.
pub async fn two_shapings_at_once_are_added_up(stage: &mut Stage) -> Result<()> {
    let steps = [
        Open("#/shaping?amount=12&rows=60&stitches=50&each=1"),
        KEEP,
        Shown(".back"),
        Go("#/shaping?amount=40&rows=20&each=4&sides=any"),
        KEEP,
        Shown(".about-step"),
        Press(".about-step summary"),
        Choose(ALONGSIDE, "1"),
        Type(FROM_ROW, "half way"),
        Says(".advice", "Type the number of a row"),
        Type(FROM_ROW, "70"),
        Says(".advice", "has 60 rows. Type 60 or less."),
        Holds(FROM_ROW, "70"),
        Type(FROM_ROW, "41"),
        Says(".along", "from its row 41 on."),
        Go("#/project"),
        Says(".together", "at the same time: 60 rows in all"),
        Says(".together", "They meet in row"),
        Says(".totals", "60 rows or rounds"),
        Kept,
        Reload,
        Says(".together", "They meet in row"),
        Go("#/project/2"),
        Type("#shaping-amount", "12"),
        Go("#/project"),
        Says(".together", "26 stitches on the needle at the end."),
        NeverSays(".together", "They meet"),
        // A step that is gone never brings the other one down.
        Press(".steps li:first-child .doings button:last-child"),
        Says(".steps .advice", "which was taken out"),
        Button(".steps", "Undo: took out “Shaping”"),
        Says(".together", "26 stitches on the needle at the end."),
    ];
    play(stage, &steps).await
}

/// The whole of the example in stitches, hours and cords; a pace that is none; and the yarn's sections, made and undone.
pub async fn the_whole_piece_is_added_up(stage: &mut Stage) -> Result<()> {
    const PACE: &str = "#project-pace";
    let steps = [
        Open(""),
        Button(".example", "Look at an example"),
        Says(".totals", "stitches worked in them."),
        Says(".totals", "Cords over all of it:"),
        Type(PACE, "25"),
        Says(".totals", "hours, at 25 stitches a minute."),
        Type(PACE, "fast"),
        Says(".totals .advice", "Type a whole number of stitches"),
        Holds(PACE, "fast"),
        Press(".watch summary"),
        Type("#timed-stitches", "some"),
        Button(".watch", "Start"),
        Says(".watch", "Type a whole number of stitches from 1 to 10,000 first."),
        // So many that no machine is slow enough for a pace.
        Type("#timed-stitches", "10000"),
        Button(".watch", "Start"),
        Says(".watch", "It runs."),
        Button(".watch", "Stop"),
        Says(".watch", "Nothing was changed."),
        Holds(PACE, "fast"),
        Button(".yarn-from-steps", "Make the yarn\u{2019}s sections from these steps"),
        Says(".steps", "Undo: made the yarn\u{2019}s sections from the steps"),
        Says(".totals", "balls of yarn"),
        Button(".steps", "Undo: made the yarn\u{2019}s sections from the steps"),
        NeverSays(".steps", "Undo: made"),
        Says(".totals", "balls of yarn"),
        Kept,
        Reload,
        Holds(PACE, "fast"),
    ];
    play(stage, &steps).await
}

/// Parts of the garment move with their steps, and back again.
pub async fn parts_move_with_their_steps(stage: &mut Stage) -> Result<()> {
    let steps = [
        Open(""),
        Button(".example", "Look at an example"),
        Begins(".steps .part", "Before casting on"),
        Press(".steps button[aria-label='Part down: Before casting on']"),
        Begins(".steps .part", "Neckband"),
        Button(".steps", "Undo: moved \u{201c}Before casting on\u{201d}"),
        Begins(".steps .part", "Before casting on"),
    ];
    play(stage, &steps).await
}

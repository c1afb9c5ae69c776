//! Needle sizes: a number typed as it stands on the needle, and the millimetres read from the screen.

use crate::{
    stage::Stage,
    steps::{Step::*, play},
};
use anyhow::Result;

const SIZE: &str = "#needles-size";
const SYSTEM: &str = "#needles-system";

/// From a US and a Japanese number to the needle, which is kept and taken along to the tail.
pub async fn she_finds_her_needle_and_takes_it_along(stage: &mut Stage) -> Result<()> {
    let steps = [
        Enter("needles"),
        Type(SIZE, "10 1/2"),
        Reads("6.5 mm"),
        Outcome("6.5 mm hole of a needle gauge, not the 6 mm one"),
        // A quarter of a millimetre is never rounded away.
        Type(SIZE, "1"),
        Reads("2.25 mm"),
        Outcome("2.25 mm hole of a needle gauge, not the 2 mm one"),
        Type(SIZE, "5"),
        Choose(SYSTEM, "jp"),
        // The nearest hole is 3.5 mm, and stops it.
        Reads("3.6 mm"),
        Outcome("3.75 mm hole of a needle gauge, not the 3.5 mm one"),
        Says(".answers .meanings", "nearest is 4 (3.5"),
        Says(".answers .meanings", "thinner)"),
        // How sure the table is, once, at its foot.
        NeverSays(".answers .meanings", "from memory"),
        Says(".answers", "From memory: all other numbers"),
        Button(".answers", "Keep 3.6 mm for the project"),
        Go("#/tail"),
        Unfold,
        Holds("#tail-needle", "3.6"),
    ];
    play(stage, &steps).await
}

/// A number that stands for two needles, one that none has, and a needle that has lost its number.
pub async fn a_number_may_be_two_needles_or_none(stage: &mut Stage) -> Result<()> {
    let steps = [
        Open("#/needles"),
        Type(SIZE, "17"),
        Reads("12 mm or 12.75 mm"),
        Outcome("12 mm"),
        Type(SIZE, "12"),
        Hides(".answer", "there is no such needle"),
        Button(".question .problem", "Use 13"),
        Reads("9 mm"),
        Outcome("9 mm hole of a needle gauge, not the 8 mm one"),
        Type(SIZE, "uk 7"),
        Reads("4.5 mm"),
        Outcome("4.5 mm hole of a needle gauge, not the 4 mm one"),
        Choose(SYSTEM, "hole"),
        Type(SIZE, "3.75"),
        Reads("3.6 mm or 3.75 mm"),
        Outcome("3.75 mm"),
    ];
    play(stage, &steps).await
}

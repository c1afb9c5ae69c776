//! Size and ease: a bust and a pattern's list typed, the size read from the screen, in centimetres and in inches.

use crate::{
    stage::Stage,
    steps::{Step::*, play},
};
use anyhow::Result;

const BUST: &str = "#sizing-bust";
const SIZES: &str = "#sizing-sizes";
const LISTED: &str = "#sizing-listed";

/// What she knows is enough: her bust, the list as it stands, and what it measures. Nothing is guessed before that.
pub async fn she_finds_her_size_among_finished_measures(stage: &mut Stage) -> Result<()> {
    let steps = [
        Enter("sizing"),
        Type(BUST, "91"),
        Type(SIZES, "XS 85, S 91, M 97, L 103"),
        Hides(".answer", "what the list measures was guessed"),
        Choose(LISTED, "garment"),
        Reads("Knit size M"),
        Is(".answer .outcome", "97 cm round, 6 cm more than you: standard"),
        Choose("#sizing-fit", "ease"),
        Type("#sizing-ease", "-6"),
        Reads("Knit size XS"),
        Is(".answer .outcome", "85 cm round, 6 cm less than you: very close"),
        Choose("#sizing-fit", "more"),
        Type("#sizing-percent", "-7%"),
        Reads("Knit size XS"),
        Is(".answer .outcome", "85 cm round, 6 cm less than you: very close"),
    ];
    play(stage, &steps).await
}

/// What is copied from a pattern is read as it stands: names above girths, and of two lists the one that is meant.
pub async fn two_rows_and_two_lists_are_read_as_they_stand(stage: &mut Stage) -> Result<()> {
    let steps = [
        Open("#/sizing"),
        Type(BUST, "91"),
        Says(".answers", "still to be filled"),
        Type(
            SIZES,
            "Size 8 10 12\u{e007}To fit bust 86 91 97\u{e007}Finished bust 91 97 103",
        ),
        Choose(LISTED, "body"),
        Reads("Knit size 10"),
        Is(".answer .outcome", "Made for a bust of 91 cm, and yours is the same"),
        Choose(LISTED, "garment"),
        Reads("Knit size 10"),
        Is(".answer .outcome", "97 cm round, 6 cm more than you: standard"),
        Type(SIZES, "8, 81, 10, 86"),
        Says("#sizing-sizes-problem", "three times"),
        Begins(".stale .since", "This is still the answer for "),
    ];
    play(stage, &steps).await
}

/// Colons, dashes and ranges are read as patterns print them; a number that would be left out is shown, not dropped.
pub async fn no_number_of_a_printed_list_is_dropped(stage: &mut Stage) -> Result<()> {
    let steps = [
        Open("#/sizing"),
        Type(BUST, "96.5"),
        Type(SIZES, "81[86:91:97:102:107]"),
        Choose(LISTED, "garment"),
        Reads("Knit size 102"),
        Choose(LISTED, "body"),
        Reads("Knit size 97"),
        Type(SIZES, "S-M-L: 82–90–98"),
        Reads("Knit size L"),
        Type(SIZES, "81: (86, 91, 97)"),
        Says("#sizing-sizes-problem", "“81” would be left out"),
        Type(SIZES, "34\"-36\" (38\"-40\", 42\"-44\")"),
        Reads("Knit size 38-40"),
        Says(".notes", "a tape cannot tell that from yours"),
    ];
    play(stage, &steps).await
}

/// A list of bodies has the ease in it: none is added, and a gap is said to be one.
pub async fn a_list_of_bodies_is_met_with_the_body(stage: &mut Stage) -> Result<()> {
    let steps = [
        Open("#/sizing"),
        Type(BUST, "94"),
        Type(SIZES, "S 81-86, M 91-97, L 102-107"),
        Choose(LISTED, "body"),
        Reads("Knit size M"),
        Is(".answer .outcome", "Made for 91 to 97 cm, and yours is within"),
        Hides("#sizing-fit", "a fit is asked for beside a list of bodies"),
        Type(BUST, "88"),
        Reads("Knit size S"),
        Is(".answer .outcome", "Made for 81 to 86 cm; yours is 2 cm more"),
        Says(".notes", "between size S and size M"),
        Named(".girths", "you 88 cm"),
        Named(".girths", "S: knit this"),
        Press("details.more summary"),
        Choose("#sizing-cloth", "drapes"),
        Reads("Knit size M"),
        Is(".answer .outcome", "Made for 91 to 97 cm; yours is 3 cm less"),
        // Outside them all the headline says so, and the nearest comes next.
        Type(BUST, "130"),
        Reads("No size fits: the largest is 23 cm too small"),
        Is(
            ".answer .outcome",
            "The nearest is size L. Made for 102 to 107 cm; yours is 23 cm more",
        ),
    ];
    play(stage, &steps).await
}

/// The same in inches, with halves; a list keeps the unit it was typed in when the tape is switched.
pub async fn she_finds_her_size_in_inches(stage: &mut Stage) -> Result<()> {
    let steps = [
        Open("#/sizing"),
        Choose("#sizing-bust-unit", "in"),
        Type(BUST, "36 1/2"),
        Type(SIZES, "34 (37, 39 1/2, 42)"),
        Choose(LISTED, "garment"),
        Reads("Knit size 39 1/2"),
        Is(".answer .outcome", "39 1/2 in round, 3 in more than you: standard"),
        Choose("#sizing-bust-unit", "cm"),
        Reads("Knit size 39 1/2"),
        Is(".answer .outcome", "100.3 cm round, 7.6 cm more than you: standard"),
        Holds("#sizing-sizes-unit", "in"),
        // Said to be centimetres, the same numbers are other girths.
        Choose("#sizing-sizes-unit", "cm"),
        Reads("No size fits: the largest is 58.2 cm too small"),
        Is(
            ".answer .outcome",
            "The nearest is size 42. 42 cm round, 50.7 cm less than you: very close",
        ),
    ];
    play(stage, &steps).await
}

/// Her own gauge moves the girths, and the size is picked by what it will measure.
pub async fn her_own_gauge_picks_another_size(stage: &mut Stage) -> Result<()> {
    let steps = [
        Open("#/sizing"),
        Type(BUST, "91"),
        Type(SIZES, "XS 85, S 91, M 97, L 103"),
        Choose(LISTED, "garment"),
        Press("details.more summary"),
        Type("#sizing-pattern_stitches", "22"),
        Type("#sizing-own_stitches", "20 1/2"),
        Type("#sizing-stitches", "188 (200, 214, 226)"),
        Reads("Knit size S"),
        Is(
            ".answer .outcome",
            "97.6 cm round at your gauge (91 cm in the pattern), 6.6 cm more than you: standard",
        ),
        // What cannot be used is said beside its field.
        Type("#sizing-stitches", "188 (200"),
        Shown("#sizing-stitches-problem"),
        Hides(".answer", "an old answer under a new question"),
    ];
    play(stage, &steps).await
}

/// Without a list she takes a standard one, which says that it measures bodies; a list of her own is never written over.
pub async fn she_takes_a_standard_list(stage: &mut Stage) -> Result<()> {
    let steps = [
        Open("#/sizing"),
        Type(BUST, "94"),
        Press(".question > details:last-of-type summary"),
        Button(".question", "Women, EN 13402-3"),
        Reads("Knit size M"),
        Is(".answer .outcome", "Made for 90 to 98 cm, and yours is within"),
        Holds(LISTED, "body"),
        // Another one takes its place; her own stays.
        Button(".question", "Men, EN 13402-3"),
        Reads("Knit size S"),
        Is(".answer .outcome", "Made for 86 to 94 cm, and yours is within"),
        Type(SIZES, "S 81-86, M 91-97"),
        Hides(".question .how button", "her own list may be written over"),
        Reads("Knit size M"),
        Is(".answer .outcome", "Made for 91 to 97 cm, and yours is within"),
    ];
    play(stage, &steps).await
}

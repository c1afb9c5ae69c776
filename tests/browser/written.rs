//! The lines of a pattern: they are pasted, the one that fails is read with its place and what would come out, and nothing of
//! the text is stored unless she says so.

use crate::{
    stage::Stage,
    steps::{Step::*, play},
};
use anyhow::{Result, ensure};

const TEXT: &str = "#written-pattern_text";
const STITCHES: &str = "#written-stitches";

/// What the foot of the page says as long as the text is on the page only.
const ALL_BUT: &str = "Kept on this device, all but the text of your pattern";

/// A row that runs out: where, by how many, and what would come out in its place.
pub async fn she_reads_where_a_line_runs_out(stage: &mut Stage) -> Result<()> {
    let steps = [
        Open("#/written"),
        Type(TEXT, "K1, (k4, k2tog) 9 times"),
        Begins(".question .problem", "Type how many stitches are on the needle"),
        Type(STITCHES, "54"),
        Reads("Line 1 runs out 1 short in the 9th k2tog"),
        Outcome("0 come out"),
        Is(".failure mark", "k2tog"),
        Says(".nearest", "With 55 stitches before it"),
        Named(".stitches", "A row, drawn as far as it goes"),
        Type(STITCHES, "55"),
        Reads("The line comes out"),
        Hides(".failure", "a line that comes out is not opened"),
    ];
    play(stage, &steps).await
}

/// Several sizes, named by the pattern; and a word that nobody knows is named once.
pub async fn she_works_every_size_and_names_a_stitch(stage: &mut Stage) -> Result<()> {
    let steps = [
        Open("#/written"),
        Type(
            TEXT,
            "Sizes: S (M) CO 20 (22) sts. Row 1: (K2, p2) to end. Row 2: K4, bobbly, k to end.",
        ),
        // All of that in one line names the sizes, and nothing is worked.
        Reads("None of these lines could be read as a row"),
    ];
    play(stage, &steps).await?;
    let lines = "Sizes: S (M)\nCO 20 (22) sts.\nRow 1: (K2, p2) to end.\nRow 2: K4, bobbly, k to end.";
    stage.browser.paste(TEXT, lines).await?;
    let steps = [
        Reads("Row 1 leaves 2 stitches over after the 5th repeat, in size M"),
        Says(".lines thead", "S M"),
        Says(".pointed", "“bobbly”: this word is not known."),
        Button(".pointed", "It is a stitch of mine: uses 1, gives 1"),
        Outcome("2 come out"),
        Choose("#written-size", "1"),
        Says(".lines thead", "Before Used After"),
    ];
    play(stage, &steps).await
}

/// The text is on the page alone until she says otherwise.
pub async fn her_lines_are_kept_only_where_she_says_so(stage: &mut Stage) -> Result<()> {
    let steps = [
        Open("#/written"),
        Type(STITCHES, "10"),
        Type(TEXT, "Knit."),
        Reads("The line comes out"),
        Says(".question", "it is gone when you close it"),
        Says("footer.keeping", ALL_BUT),
        Reload,
        Holds(STITCHES, "10"),
        Holds(TEXT, ""),
        Type(TEXT, "Purl."),
        Choose("#written-keep", "device"),
        Says(".question", "is kept on this device"),
        Kept,
        Reload,
        Holds(TEXT, "Purl."),
        Reads("The line comes out"),
    ];
    play(stage, &steps).await?;
    let address = stage.browser.look_up("location.href").await?;
    ensure!(
        !address.to_string().contains("Purl"),
        "the text stands in the address: {address}"
    );
    Ok(())
}

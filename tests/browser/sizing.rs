//! Size and ease: a bust and a pattern's list typed, the size read from the screen, in centimetres and in inches.

use crate::{
    browser::{Browser, words_of},
    stage::Stage,
};
use anyhow::{Result, ensure};

const BUST: &str = "#sizing-bust";
const SIZES: &str = "#sizing-sizes";
const LISTED: &str = "#sizing-listed";

/// What she knows is enough: her bust, the list as it stands, and what it measures. Nothing is guessed before that.
pub async fn she_finds_her_size_among_finished_measures(stage: &mut Stage) -> Result<()> {
    let browser = &stage.browser;
    stage.open("").await?;
    browser.press("main a[href='#/sizing']").await?;
    browser.until("document.querySelector('#sizing-bust')").await?;
    browser.type_into(BUST, "91").await?;
    browser.type_into(SIZES, "XS 85, S 91, M 97, L 103").await?;
    ensure!(!browser.shows(".answer").await?, "what the list measures was guessed");
    browser.choose(LISTED, "garment").await?;
    reads(browser, "Knit size M", "97 cm round, 6 cm more than you: standard.").await?;
    browser.choose("#sizing-fit", "ease").await?;
    browser.type_into("#sizing-ease", "-6").await?;
    reads(browser, "Knit size XS", "85 cm round, 6 cm less than you: very close.").await?;
    browser.choose("#sizing-fit", "more").await?;
    browser.type_into("#sizing-percent", "-7%").await?;
    reads(browser, "Knit size XS", "85 cm round, 6 cm less than you: very close.").await
}

/// What is copied from a pattern is read as it stands: names above girths, and of two lists the one that is meant.
pub async fn two_rows_and_two_lists_are_read_as_they_stand(stage: &mut Stage) -> Result<()> {
    let browser = &stage.browser;
    stage.open("#/sizing").await?;
    browser.type_into(BUST, "91").await?;
    ensure!(
        browser.text(".answers").await?.contains("still to be filled"),
        "an empty field is not asked for"
    );
    let lists = "Size 8 10 12\u{e007}To fit bust 86 91 97\u{e007}Finished bust 91 97 103";
    browser.type_into(SIZES, lists).await?;
    browser.choose(LISTED, "body").await?;
    reads(
        browser,
        "Knit size 10",
        "Made for a bust of 91 cm, and yours is the same.",
    )
    .await?;
    browser.choose(LISTED, "garment").await?;
    reads(browser, "Knit size 10", "97 cm round, 6 cm more than you: standard.").await?;
    browser.type_into(SIZES, "8, 81, 10, 86").await?;
    browser
        .until("document.querySelector('#sizing-sizes-problem')?.textContent.includes('three times')")
        .await?;
    ensure!(
        browser.text(".answers").await?.contains("marked in the question"),
        "what is marked is not pointed at"
    );
    Ok(())
}

/// A list of bodies has the ease in it: none is added, and a gap is said to be one.
pub async fn a_list_of_bodies_is_met_with_the_body(stage: &mut Stage) -> Result<()> {
    let browser = &stage.browser;
    stage.open("#/sizing").await?;
    browser.type_into(BUST, "94").await?;
    browser.type_into(SIZES, "S 81-86, M 91-97, L 102-107").await?;
    browser.choose(LISTED, "body").await?;
    reads(browser, "Knit size M", "Made for 91 to 97 cm, and yours is within.").await?;
    ensure!(
        !browser.shows("#sizing-fit").await?,
        "a fit is asked for beside a list of bodies"
    );
    browser.type_into(BUST, "88").await?;
    reads(browser, "Knit size S", "Made for 81 to 86 cm; yours is 2 cm more.").await?;
    let notes = browser.text(".notes").await?;
    ensure!(notes.contains("between size S and size M"), "no gap in: {notes}");
    let drawing = browser
        .find(".girths")
        .await?
        .attr("aria-label")
        .await?
        .unwrap_or_default();
    ensure!(
        drawing.contains("you 88\u{a0}cm") && drawing.contains("S: knit this"),
        "the drawing says: {drawing}"
    );
    browser.press("details.more summary").await?;
    browser.choose("#sizing-cloth", "drapes").await?;
    reads(browser, "Knit size M", "Made for 91 to 97 cm; yours is 3 cm less.").await?;
    // Outside them all the headline says so, and the nearest comes next.
    browser.type_into(BUST, "130").await?;
    reads(
        browser,
        "No size fits: the largest is 23 cm too small",
        "The nearest is size L. Made for 102 to 107 cm; yours is 23 cm more.",
    )
    .await
}

/// The same in inches, with halves; a list keeps the unit it was typed in when the tape is switched.
pub async fn she_finds_her_size_in_inches(stage: &mut Stage) -> Result<()> {
    let browser = &stage.browser;
    stage.open("#/sizing").await?;
    browser.choose("#sizing-bust-unit", "in").await?;
    browser.type_into(BUST, "36 1/2").await?;
    browser.type_into(SIZES, "34 (37, 39 1/2, 42)").await?;
    browser.choose(LISTED, "garment").await?;
    reads(
        browser,
        "Knit size 39 1/2",
        "39 1/2 in round, 3 in more than you: standard.",
    )
    .await?;
    browser.choose("#sizing-bust-unit", "cm").await?;
    reads(
        browser,
        "Knit size 39 1/2",
        "100.3 cm round, 7.6 cm more than you: standard.",
    )
    .await?;
    ensure!(
        browser.value("#sizing-sizes-unit").await? == "in",
        "the list changed its unit"
    );
    // Said to be centimetres, the same numbers are other girths.
    browser.choose("#sizing-sizes-unit", "cm").await?;
    reads(
        browser,
        "No size fits: the largest is 58.2 cm too small",
        "The nearest is size 42. 42 cm round, 50.7 cm less than you: very close.",
    )
    .await
}

/// Her own gauge moves the girths, and the size is picked by what it will measure.
pub async fn her_own_gauge_picks_another_size(stage: &mut Stage) -> Result<()> {
    let browser = &stage.browser;
    stage.open("#/sizing").await?;
    browser.type_into(BUST, "91").await?;
    browser.type_into(SIZES, "XS 85, S 91, M 97, L 103").await?;
    browser.choose(LISTED, "garment").await?;
    browser.press("details.more summary").await?;
    browser.type_into("#sizing-pattern_stitches", "22").await?;
    browser.type_into("#sizing-own_stitches", "20 1/2").await?;
    browser.type_into("#sizing-stitches", "188 (200, 214, 226)").await?;
    let outcome = "97.6 cm round at your gauge (91 cm in the pattern), 6.6 cm more than you: standard.";
    reads(browser, "Knit size S", outcome).await?;
    // What cannot be used is said beside its field.
    browser.type_into("#sizing-stitches", "188 (200").await?;
    browser
        .until("document.querySelector('#sizing-stitches-problem')")
        .await?;
    ensure!(!browser.shows(".answer").await?, "an old answer under a new question");
    Ok(())
}

/// Without a list she takes a standard one, which says that it measures bodies; a list of her own is never written over.
pub async fn she_takes_a_standard_list(stage: &mut Stage) -> Result<()> {
    let browser = &stage.browser;
    stage.open("#/sizing").await?;
    browser.type_into(BUST, "94").await?;
    browser.press(".question > details:last-of-type summary").await?;
    browser.press_button(".question", "Women, EN 13402-3").await?;
    reads(browser, "Knit size M", "Made for 90 to 98 cm, and yours is within.").await?;
    ensure!(
        browser.value(LISTED).await? == "body",
        "it is not said what the list measures"
    );
    // Another one takes its place; her own stays.
    browser.press_button(".question", "Men, EN 13402-3").await?;
    reads(browser, "Knit size S", "Made for 86 to 94 cm, and yours is within.").await?;
    browser.type_into(SIZES, "S 81-86, M 91-97").await?;
    browser
        .until("!document.querySelector('.question .how button')")
        .await?;
    reads(browser, "Knit size M", "Made for 91 to 97 cm, and yours is within.").await
}

/// The line of the answer and what it comes to.
async fn reads(browser: &Browser, line: &str, outcome: &str) -> Result<()> {
    let shown = words_of(".answer .row");
    browser.until(&format!("{shown} === {line:?}")).await?;
    let said = browser.text(".answer .outcome").await?;
    ensure!(said == outcome, "the page says: {said}");
    Ok(())
}

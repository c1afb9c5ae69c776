//! A pattern on the table: her size is marked through it, what is in doubt waits for her word, and nothing of the text is stored
//! that she has not said to keep.

use crate::{
    browser::Browser,
    carry,
    stage::Stage,
    steps::{Step::*, play},
};
use anyhow::{Result, ensure};
use serde_json::json;

/// An invented pattern, with one list that has a number too few.
const PATTERN: &str = "Sizes: S (M, L)\nHedge cowl\nCast on 96 (108, 120) sts.\nWork 6 (7) rnds, then (k1, p1) twice.";
const TEXT: &str = "#sizes_in_text-pattern_text";
const KEEP: &str = "#sizes_in_text-keep";

/// What the foot of the page says as long as the text is on the page only.
const ALL_BUT: &str = "Kept on this device, all but the text of your pattern";

/// All that the browser has stored, as one text.
async fn stored(browser: &Browser) -> Result<String> {
    Ok(carry::stored(browser).await?.to_string())
}

/// The words of all elements of a kind in the marked text.
async fn marked(browser: &Browser, css: &str, words: &[&str]) -> Result<()> {
    let found = format!("[...document.querySelectorAll('.marked-pattern {css}')].map((one) => one.textContent)");
    browser
        .until(&format!("JSON.stringify({found}) === {:?}", json!(words).to_string()))
        .await
}

/// The text is pasted, its sizes are found in it, and one is tapped. The text is on the page only: a reload takes it away.
pub async fn her_size_is_marked_and_nothing_of_the_text_is_stored(stage: &mut Stage) -> Result<()> {
    let browser = &stage.browser;
    stage.open("#/sizes_in_text").await?;
    browser.paste(TEXT, PATTERN).await?;
    let pasted = [
        Reads("3 lists of numbers for 3 sizes"),
        Outcome("Tap your size."),
        Button(".size-taps", "M"),
        Outcome("2 numbers"),
        Says("footer.keeping", ALL_BUT),
    ];
    play(stage, &pasted).await?;
    marked(browser, ".hers", &["M", "108"]).await?;
    marked(browser, "s", &["S", "L", "96", "120"]).await?;
    marked(browser, "mark", &["6 (7) rnds"]).await?;
    play(stage, &[Button(".size-taps", "L")]).await?;
    marked(browser, ".hers", &["L", "120"]).await?;
    let text = stored(browser).await?;
    ensure!(text.contains("size"), "her size is not stored: {text}");
    ensure!(!text.contains("Cast on"), "the text is stored: {text}");
    play(stage, &[Reload, Holds(TEXT, "")]).await
}

/// Her word about a doubtful list is kept with the text once she says so, and both leave the storage when she takes it back.
pub async fn a_doubt_is_decided_and_kept_when_she_says_so(stage: &mut Stage) -> Result<()> {
    let browser = &stage.browser;
    stage.open("#/sizes_in_text").await?;
    browser.paste(TEXT, PATTERN).await?;
    let decided = [
        Button(".size-taps", "M"),
        Says(".to-ask", "has fewer numbers than the 3 sizes"),
        Button(".to-ask", "For M it is 7"),
        Outcome("3 numbers"),
        Says(".to-ask", "You said: yours is 7."),
        Choose(KEEP, "device"),
        Kept,
        Reload,
        Outcome("3 numbers"),
        Holds(TEXT, PATTERN),
        Says(".to-ask", "You said: yours is 7."),
    ];
    play(stage, &decided).await?;
    ensure!(stored(browser).await?.contains("Cast on"), "it is not stored");
    play(
        stage,
        &[
            Choose(KEEP, "page"),
            Says("footer.keeping", ALL_BUT),
            Holds(TEXT, PATTERN),
        ],
    )
    .await?;
    // The older records are taken out of the log right behind the last write.
    for _ in 0..20 {
        if !stored(browser).await?.contains("Cast on") {
            return play(stage, &[Reload, Holds(TEXT, "")]).await;
        }
        browser.settle().await?;
    }
    anyhow::bail!("the text is still stored: {}", stored(browser).await?)
}

/// Another size from a line on, and her sizes alone as plain text.
pub async fn another_size_from_a_line_on_is_copied_as_plain_text(stage: &mut Stage) -> Result<()> {
    const LISTENS: &str = "Object.defineProperty(navigator, 'clipboard',
        { configurable: true, value: { writeText: (text) => { window.copied = text; return Promise.resolve(); } } })";
    let browser = &stage.browser;
    stage.open("#/sizes_in_text").await?;
    browser.paste(TEXT, PATTERN).await?;
    browser.run(LISTENS).await?;
    let parts = [
        Button(".size-taps", "S"),
        Outcome("2 numbers"),
        Button(".another-size", "L"),
        Says(".another-size", "L is yours"),
    ];
    play(stage, &parts).await?;
    // The third line of the text, which is the third that can be tapped.
    browser
        .run("document.querySelectorAll('.marked-pattern > button')[2].click()")
        .await?;
    marked(browser, ".hers", &["S", "120"]).await?;
    play(
        stage,
        &[
            Says(".begins", "From this line on your size is L."),
            Button(".copying", "Copy as plain text"),
            Says(".copying", "Copied: your size only"),
        ],
    )
    .await?;
    let copied = browser.look_up("window.copied").await?;
    let wanted = "Sizes: S\nHedge cowl\nCast on 120 sts.\nWork 6 (7) rnds, then (k1, p1) twice.";
    ensure!(copied == json!(wanted), "{copied}");
    play(
        stage,
        &[
            Button(".begins", "Take this away"),
            NeverSays(".answers", "From this line on"),
        ],
    )
    .await?;
    marked(browser, ".hers", &["S", "96"]).await
}

//! A page that cannot start, or stops: it says so, shows what is stored, and opens again.

use crate::{
    job::{fill, works_out},
    keep::stands,
    server::WAYS,
    stage::Stage,
};
use anyhow::{Context, Result, ensure};

/// The recover screen is shown.
pub const SHOWN: &str = "!document.getElementById('recover').hidden";

/// From now on no element can be made, so that the app panics when it draws the next page.
pub const PANIC: &str = "
    document.createElement = document.createElementNS = Node.prototype.cloneNode = () => { throw new Error('no more'); };
    location.hash = '#/about';";

/// The first visit goes wrong on the network: she is told, and once the network is well a tap is enough.
pub async fn a_first_visit_that_breaks_says_so(stage: &mut Stage) -> Result<()> {
    stage.expect_faults();
    for file in ["loopwright-app_bg.wasm", "loopwright-app.js"] {
        for how in WAYS {
            stage.server.mend();
            stage.server.spoil(file, how);
            // In a folder of its own, or a whole file that the browser kept from the time before would do.
            stage.server.mount(&format!("/{file}-{how:?}/"));
            stage.browser.leave().await?;
            stage.browser.driver.goto(stage.at("#/spacing")).await?;
            stage.browser.until(SHOWN).await?;
            says_what_happened(stage, "nothing").await?;
        }
    }
    stage.server.mend();
    stage.browser.press("#recover-reload").await?;
    stage
        .browser
        .until("document.querySelector('#spacing-stitches')")
        .await?;
    fill(&stage.browser, "132", "16").await?;
    works_out(&stage.browser, 132, 116).await
}

/// The app stops in the middle: what she typed is shown to be copied, and is there when the page opens again.
pub async fn an_app_that_stops_shows_what_she_typed(stage: &mut Stage) -> Result<()> {
    stage.expect_faults();
    stage.open("#/spacing").await?;
    fill(&stage.browser, "132", "16").await?;
    stage.until_kept().await?;
    stage.browser.run(PANIC).await?;
    stage.browser.until(SHOWN).await?;
    says_what_happened(stage, "something").await?;
    stage
        .browser
        .until("document.getElementById('recover-text').value.includes('132')")
        .await?;
    stage.browser.press("#recover-copy").await?;
    let chosen = "getSelection().toString().includes('132') || document.activeElement.selectionEnd > 0";
    stage.browser.until(chosen).await?;
    stage.browser.run("history.back()").await?;
    stage.browser.until("location.hash === '#/spacing'").await?;
    stage.browser.press("#recover-reload").await?;
    // The fields of the app that stopped are still there, unseen, until the page is opened again.
    let anew = "document.getElementById('recover').hidden && document.querySelector('#spacing-stitches')";
    stage.browser.until(anew).await?;
    stands(&stage.browser, "132", "16").await
}

/// It says that it stopped, and what it found of what is stored, in one sentence.
pub async fn says_what_happened(stage: &Stage, found: &str) -> Result<()> {
    let browser = &stage.browser;
    ensure!(!browser.shows("#app").await?, "a dead app is still shown");
    for part in ["#recover h1", "#recover p", "#recover-reload"] {
        ensure!(!browser.text(part).await?.is_empty(), "{part} says nothing");
    }
    let said = "[...document.querySelectorAll('[data-found]')].filter(({ hidden }) => !hidden).map(({ dataset }) => dataset.found)";
    browser
        .until(&format!("({said}).join() === {found:?}"))
        .await
        .with_context(|| format!("it does not say that {found} was found"))
}

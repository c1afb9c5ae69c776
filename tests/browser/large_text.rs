//! Type twice as large on a phone: nothing scrolls sideways, no choice is cut, and words in a drawing do not run into
//! each other. Each tool is looked at in its filled state, as it opens and with everything unfolded.

use crate::{
    browser::Engine,
    stage::Stage,
    states::{self, PHONE},
};
use anyhow::{Result, ensure};
use loopwright_tests::drive::STARTED;
use serde_json::json;

/// What is wrong with how the page is laid out, in a list of words.
const LAID_OUT: &str = include_str!("layout.js");

/// Twice the size that the browser starts with, as a setting of the browser would make it.
const TWICE: &str = "document.documentElement.style.fontSize = '200%'";

/// Opens whatever is folded away.
const UNFOLD: &str = "document.querySelectorAll('details').forEach((details) => { details.open = true; })";

/// Words of a drawing that run into each other. The box of a word is higher than its letters.
const OVERLAPS: &str = "
    const found = [];
    for (const drawing of document.querySelectorAll('svg')) {
        const words = [...drawing.querySelectorAll('text')].map((text) => [text.textContent, text.getBoundingClientRect()]);
        words.forEach(([one, left], place) => words.slice(place + 1).forEach(([other, right]) => {
            const across = Math.min(left.right, right.right) - Math.max(left.left, right.left);
            const down = Math.min(left.bottom, right.bottom) - Math.max(left.top, right.top);
            const lower = Math.min(left.height, right.height);
            if (across > 1 && down > 0.4 * lower) found.push(`\"${one}\" runs into \"${other}\"`);
        }));
    }
    return found;";

/// Pages that are no tool.
const OTHERS: [&str; 3] = ["#/", "#/about", "#/spacing"];

/// All of it, with type twice as large.
pub async fn every_tool_can_be_read_with_type_twice_as_large(stage: &mut Stage) -> Result<()> {
    let states = states::named(stage).await?.into_iter();
    let filled = states.filter(|state| state.name == "filled").map(|state| state.page);
    let pages: Vec<String> = OTHERS.map(str::to_owned).into_iter().chain(filled).collect();
    ensure!(pages.len() >= 19, "only {pages:?}");
    narrow(stage).await?;
    finds_words_that_run_into_each_other(stage).await?;
    let mut found = Vec::new();
    for page in pages {
        found.extend(wrong(stage, &page).await?);
    }
    found.dedup();
    ensure!(found.is_empty(), "{}", found.join("\n"));
    Ok(())
}

/// Makes the page as wide as a phone's. A window of WebKit's cannot be, so there the page is shown in a frame that is.
async fn narrow(stage: &Stage) -> Result<()> {
    let browser = &stage.browser;
    match stage.engine {
        Engine::Chromium => browser.look(PHONE).await?,
        Engine::WebKit => {
            let frame = format!(
                "<iframe title=phone width={} height={} style='border: 0' src='{}'></iframe>",
                PHONE.width,
                PHONE.height,
                stage.at("#/gallery")
            );
            let head = "<!doctype html><html lang=en><link rel=icon href='data:,'><title>Phone</title>";
            stage.server.page("/phone.html", &[head, &frame].concat());
            let host = stage.at("");
            browser
                .driver
                .goto([host.trim_end_matches('/'), "/phone.html"].concat())
                .await?;
            browser.driver.enter_frame(0).await?;
            browser.until(STARTED).await?;
        }
    }
    let width = browser.look_up("innerWidth").await?;
    ensure!(width == json!(PHONE.width), "the page is {width} wide");
    Ok(())
}

/// What is wrong with a page.
async fn wrong(stage: &Stage, page: &str) -> Result<Vec<String>> {
    let browser = &stage.browser;
    browser.go(page).await?;
    browser.until("document.querySelector('main h1')").await?;
    browser.run(TWICE).await?;
    let mut found = Vec::new();
    for script in ["", UNFOLD] {
        browser.run(script).await?;
        browser.settle().await?;
        for list in [
            browser.ask(LAID_OUT, [json!(PHONE.width)]).await?,
            browser.run(OVERLAPS).await?,
        ] {
            let list: Vec<String> = serde_json::from_value(list)?;
            found.extend(list.into_iter().map(|fault| format!("{page}: {fault}")));
        }
    }
    Ok(found)
}

/// Whoever finds nothing must be able to find something.
async fn finds_words_that_run_into_each_other(stage: &Stage) -> Result<()> {
    const SPOIL: &str = "document.querySelector('main').insertAdjacentHTML('beforeend',
        '<svg id=\"wrong\" viewBox=\"0 0 90 20\"><text y=\"15\">one</text><text x=\"9\" y=\"15\">two</text></svg>')";
    let browser = &stage.browser;
    browser.run(SPOIL).await?;
    let found = browser.run(OVERLAPS).await?;
    ensure!(found != json!([]), "words that run into each other are not found");
    browser.run("document.getElementById('wrong').remove()").await?;
    Ok(())
}

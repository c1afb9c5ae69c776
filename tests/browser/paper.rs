//! What is printed: dark on white whatever the light of the page, with the drawing, and without what only a screen can
//! use.

use crate::stage::Stage;
use anyhow::{Result, ensure};

/// The marks of the drawing take room, in both directions of change.
const MARKS: &str = "(() => { const box = document.querySelector('.needle .marks').getBoundingClientRect(); \
                     return box.width > 50 && box.height > 50; })()";
/// Ink is dark, paper is white.
const BLACK_ON_WHITE: &str = "(() => { const style = getComputedStyle(document.body); \
                              return style.color === 'rgb(0, 0, 0)' && style.backgroundColor === 'rgb(255, 255, 255)'; })()";

/// A page printed at dusk is read on white paper.
pub async fn a_page_printed_at_dusk_is_dark_on_white(stage: &mut Stage) -> Result<()> {
    for state in ["filled", "increases"] {
        stage.open(&format!("#/gallery/spacing/{state}")).await?;
        let browser = &stage.browser;
        browser.put_on_paper().await?;
        browser.until(BLACK_ON_WHITE).await?;
        browser.until(MARKS).await?;
        ensure!(browser.shows(".answer .row").await?, "{state}: no row on paper");
        ensure!(!browser.shows(".doings").await?, "{state}: buttons on paper");
        ensure!(!browser.shows("details.more").await?, "{state}: folded fields on paper");
        browser.run("document.documentElement.dataset.light = 'dusk'").await?;
        browser.until(BLACK_ON_WHITE).await?;
    }
    Ok(())
}

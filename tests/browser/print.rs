//! Each tool on paper: one page on A4 and on letter, with its rounds open and a box to tick before each, its source at
//! the foot, and nothing that can only be pressed. Only Chromium's paper has pages that can be counted; that folds open before
//! printing and fold again after is seen in all browsers.

use crate::{
    stage::Stage,
    states::{self, State},
};
use anyhow::{Result, ensure};
use serde_json::{Value, json};
use thirtyfour::common::print::{PrintPage, PrintParameters};

/// Sheets of paper, in centimetres.
const PAPERS: [(&str, f64, f64); 2] = [("A4", 21.0, 29.7), ("letter", 21.59, 27.94)];

/// What is on the page and should not be on paper, what should be and is not, as a list of words.
const ON_PAPER: &str = "
    const found = [];
    const shown = (element) => element.checkVisibility() && element.getBoundingClientRect().height > 0;
    for (const pressed of document.querySelectorAll('button, .doings, .known, .chips, nav')) {
        if (shown(pressed)) found.push(`${pressed.localName}.${pressed.className} is printed: ${pressed.innerText}`);
    }
    for (const row of document.querySelectorAll('.ticked li')) {
        const box = getComputedStyle(row, '::before');
        if (!shown(row)) found.push(`folded away: ${row.innerText}`);
        if (box.borderTopStyle !== 'solid' || parseFloat(box.width) < 6) found.push(`no box before ${row.innerText}`);
    }
    // On paper a marked pattern stands without the text that it was made of.
    const asked = document.querySelector('.marked-pattern') ? '.marked-pattern' : '.question';
    for (const part of ['h1', asked, '.answers']) {
        const element = document.querySelector(part);
        if (!element || !shown(element)) found.push(`${part} is not printed`);
    }
    return found;";

/// Which folds of the answer are open.
const FOLDS: &str = "return [...document.querySelectorAll('.answers details:not(.how)')].map((fold) => fold.open)";

/// Each tool's filled state on one sheet.
pub async fn every_tool_is_printed_on_one_page(stage: &mut Stage) -> Result<()> {
    let mut found = Vec::new();
    for state in filled(stage).await? {
        stage.open(&state.page).await?;
        for (paper, width, height) in PAPERS {
            let pages = printed(stage, width, height).await?;
            if pages != 1 {
                found.push(format!("{} takes {pages} pages of {paper}", state.tool));
            }
        }
    }
    ensure!(found.is_empty(), "{}", found.join("\n"));
    Ok(())
}

/// What a printer sees of each tool.
pub async fn paper_holds_rounds_to_tick_and_nothing_to_press(stage: &mut Stage) -> Result<()> {
    let (mut found, mut boxes) = (Vec::new(), 0);
    for state in filled(stage).await? {
        stage.open(&state.page).await?;
        let browser = &stage.browser;
        browser.put_on_paper().await?;
        browser.run("dispatchEvent(new Event('beforeprint'))").await?;
        browser.settle().await?;
        let list: Vec<String> = serde_json::from_value(browser.run(ON_PAPER).await?)?;
        found.extend(list.into_iter().map(|fault| format!("{}: {fault}", state.tool)));
        let ticked = browser
            .look_up("document.querySelectorAll('.ticked li').length")
            .await?;
        boxes += ticked.as_u64().unwrap_or_default();
    }
    ensure!(found.is_empty(), "{}", found.join("\n"));
    ensure!(boxes > 20, "only {boxes} rounds can be ticked");
    Ok(())
}

/// A fold is opened for the printer and is as it was afterwards; one that she opened stays open.
pub async fn folds_open_before_printing_and_fold_again(stage: &mut Stage) -> Result<()> {
    stage.open("#/gallery/spacing/filled").await?;
    let browser = &stage.browser;
    let folds = async || browser.run(FOLDS).await;
    let all = |open: bool, folds: &Value| {
        folds
            .as_array()
            .is_some_and(|all| all.iter().all(|one| *one == json!(open)))
    };
    let before = folds().await?;
    ensure!(before != json!([]) && all(false, &before), "these are open: {before}");
    browser
        .run("document.querySelector('.answers details').open = true")
        .await?;
    let hers = folds().await?;
    browser.run("dispatchEvent(new Event('beforeprint'))").await?;
    let printed = folds().await?;
    ensure!(all(true, &printed), "folded on paper: {printed}");
    browser.run("dispatchEvent(new Event('afterprint'))").await?;
    let after = folds().await?;
    ensure!(after == hers, "after printing they are {after}, not {hers}");
    Ok(())
}

async fn filled(stage: &Stage) -> Result<Vec<State>> {
    let mut states = states::named(stage).await?;
    states.retain(|state| state.name == "filled");
    ensure!(states.len() >= 16, "only {} tools are filled", states.len());
    Ok(states)
}

/// How many pages it takes. The browser writes the count plainly at the root of its pages.
async fn printed(stage: &Stage, width: f64, height: f64) -> Result<usize> {
    let parameters = PrintParameters {
        page: PrintPage { width, height },
        ..PrintParameters::default()
    };
    let file = stage.browser.driver.print_page(parameters).await?;
    let text = String::from_utf8_lossy(&file);
    let pages = text.matches("/Type /Page").count() - text.matches("/Type /Pages").count();
    ensure!(pages > 0, "no page can be counted");
    Ok(pages)
}

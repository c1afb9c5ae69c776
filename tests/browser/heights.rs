//! The table of heights is right: inside another page, where nothing is kept of a tool's height but this table, each tool
//! is as high as it says, filled in or empty, whichever is higher, within two in a hundred. `cargo xtask heights` writes it
//! anew.

use crate::{
    stage::Stage,
    states::{self, State},
};
use anyhow::{Context, Result, ensure};
use loopwright_tests::chromium::View;
use serde_json::json;
use std::{env, fs};
use xtask::heights::{self, Height, WIDTHS};

/// A window that is higher than any tool, so that no bar stands beside it.
const HIGHEST: u32 = 8_000;

/// How much a height may differ from what the table says: type is not quite the same on every machine.
const TOLERANCE: f64 = 0.02;

const HEIGHT: &str = "Math.ceil(document.documentElement.getBoundingClientRect().height)";

/// Each tool is as high inside another page as the table says.
pub async fn every_tool_is_as_high_as_the_table_says(stage: &mut Stage) -> Result<()> {
    let measured = measured(stage).await?;
    if env::var("LOOPWRIGHT_HEIGHTS").is_ok_and(|wanted| wanted == "write") {
        return Ok(fs::write(heights::path(), heights::print(&measured))?);
    }
    let written = heights::table()?;
    ensure!(written.len() == measured.len(), "the table has {} lines", written.len());
    let differing = written
        .iter()
        .zip(&measured)
        .filter(|(written, measured)| !is_close(written, measured));
    let differing: Vec<String> = differing.map(|pair| format!("{pair:?}")).collect();
    ensure!(
        differing.is_empty(),
        "run `cargo xtask heights` where these differ on purpose:\n{}",
        differing.join("\n")
    );
    Ok(())
}

fn is_close(written: &Height, measured: &Height) -> bool {
    let [was, is] = [written, measured].map(|line| f64::from(line.height));
    (&written.tool, written.width) == (&measured.tool, measured.width) && (was - is).abs() <= was * TOLERANCE
}

async fn measured(stage: &Stage) -> Result<Vec<Height>> {
    let filled = states::named(stage)
        .await?
        .into_iter()
        .filter(|state| state.name == "filled");
    let mut table = Vec::new();
    for state in filled {
        stage.looked_at(&state.page);
        for width in WIDTHS {
            let view = View {
                width,
                height: HIGHEST,
                dark: false,
            };
            stage.browser.look(view).await?;
            let empty = height_empty(stage, &state.tool).await?;
            let filled = height_filled(stage, &state).await?;
            table.push(Height {
                tool: state.tool.clone(),
                width,
                height: filled.max(empty),
            });
        }
    }
    Ok(table)
}

/// How high a tool is before anything is typed.
async fn height_empty(stage: &Stage, tool: &str) -> Result<u32> {
    stage.browser.go(&format!("#/embed/{tool}")).await?;
    height(stage, "form.question").await
}

/// How high a tool is in this state. A pattern's text is in no link, so that it is pasted.
async fn height_filled(stage: &Stage, state: &State) -> Result<u32> {
    const READ: &str = "return decodeURIComponent(arguments[0])";
    const TEXT: &str = "pattern_text";
    let (texts, linked): (Vec<_>, Vec<_>) = state.link.split('&').partition(|part| part.starts_with(TEXT));
    let browser = &stage.browser;
    browser
        .go(&format!("#/embed/{}?{}", state.tool, linked.join("&")))
        .await?;
    for text in texts {
        let (name, text) = text.split_once('=').context("a part of a link without a value")?;
        let text = browser.ask(READ, [json!(text)]).await?;
        let text = text.as_str().context("no text")?;
        browser.find("main.embedded form.question").await?;
        browser.paste(&format!("#{}-{name}", state.tool), text).await?;
    }
    height(stage, ".answer").await
}

/// How high the page is, once there is such an element on it.
async fn height(stage: &Stage, drawn: &str) -> Result<u32> {
    let browser = &stage.browser;
    let drawn = format!("document.querySelector('main.embedded {drawn}')");
    browser.until(&drawn).await?;
    browser.settle().await?;
    Ok(serde_json::from_value(browser.look_up(HEIGHT).await?)?)
}

//! What a framed tool says to the page around it by the element: its answers as figures and plain text, the same that it
//! draws; the replies to that page's questions; and what becomes of attributes that change.

use crate::{browser::one_line, embed, job::works_out, stage::Stage, states};
use anyhow::{Result, ensure};
use serde_json::{Value, json};

/// Notes what the element says.
const LISTEN: &str = "
    window.told = [];
    addEventListener('loopwright-answer', ({ detail }) => told.push(detail));
    window.tool = document.querySelector('loopwright-tool');";

/// Asks by the element and waits for the reply.
const ASK: &str = "const [values, done] = arguments;
    tool.ask(values).then(done, (reason) => done({ refused: String(reason) }));";

/// Opens a page of someone else's with one element in it.
pub async fn open(stage: &Stage, attributes: &str) -> Result<()> {
    let guest = stage.server.other_site();
    stage.server.page(
        "/class/tool.html",
        &format!(
            "<!doctype html><html lang=en><meta charset=utf-8><title>Class</title><link rel=icon href='data:,'>
            <script src='{guest}embed.js'></script><loopwright-tool {attributes}><a href='{guest}'>A tool</a></loopwright-tool>"
        ),
    );
    let browser = &stage.browser;
    browser.leave().await?;
    let host = stage.server.url();
    browser
        .driver
        .goto(format!("{}/class/tool.html", host.trim_end_matches('/')))
        .await?;
    browser.run(LISTEN).await?;
    browser.until("tool.answer").await
}

async fn ask(stage: &Stage, values: Value) -> Result<Value> {
    let reply = stage.browser.driver.execute_async(ASK, vec![values]).await?;
    Ok(reply.json().clone())
}

fn figure(answer: &Value, name: &str) -> Option<f64> {
    let figures = answer["figures"].as_array()?;
    figures.iter().find(|figure| figure["name"] == name)?["value"].as_f64()
}

/// Each new answer is told, also that there is none; a question is answered and leaves the fields as they are.
pub async fn a_page_hears_answers_and_asks(stage: &mut Stage) -> Result<()> {
    open(stage, "tool=spacing values='stitches=132&amount=16'").await?;
    let browser = &stage.browser;
    let answer = browser.look_up("tool.answer").await?;
    ensure!(figure(&answer, "after") == Some(116.0), "{answer}");
    ensure!(
        answer["question"] == json!({ "stitches": "132", "amount": "16" }),
        "{answer}"
    );
    let reply = ask(stage, json!({ "stitches": "120" })).await?;
    ensure!(figure(&reply, "after") == Some(104.0), "{reply}");
    let reply = ask(stage, json!("stitches=90&amount=70")).await?;
    ensure!(reply["problems"][0]["field"] == "amount", "{reply}");
    let reply = ask(stage, json!({ "loops": "1" })).await?;
    ensure!(reply["problems"][0]["field"] == "loops", "{reply}");
    embed::enter(browser, 0).await?;
    works_out(browser, 132, 116).await?;
    embed::types_into_a_frame(browser).await?;
    browser.driver.enter_default_frame().await?;
    browser
        .until("tool.answer.figures?.some(({ name, value }) => name === 'after' && value === 81)")
        .await?;
    ensure!(
        browser.look_up("told.length > 1").await? == json!(true),
        "told once only"
    );
    Ok(())
}

/// Attributes that change are followed without loading anything again.
pub async fn attributes_are_followed(stage: &mut Stage) -> Result<()> {
    open(stage, "tool=spacing values='stitches=132&amount=16'").await?;
    let browser = &stage.browser;
    let before = embed::fetched(stage);
    browser
        .run("tool.setAttribute('values', 'stitches=90&amount=9')")
        .await?;
    embed::enter(browser, 0).await?;
    works_out(browser, 90, 81).await?;
    browser.driver.enter_default_frame().await?;
    ensure!(embed::fetched(stage) == before, "it was loaded again");
    browser
        .run("tool.setAttribute('values', 'stitches=120'); tool.setAttribute('tool', 'tail')")
        .await?;
    browser.until("tool.answer.tool === 'tail'").await?;
    let title = browser.look_up("tool.shadowRoot.querySelector('iframe').title").await?;
    ensure!(title == "A tool", "the frame is called {title}");
    Ok(())
}

/// In every tool's filled state what is told has the words that are drawn, and figures; and the frame is as high as
/// what stands in it.
pub async fn every_tool_tells_what_it_draws(stage: &mut Stage) -> Result<()> {
    const HEIGHTS: &str = "[innerHeight, Math.ceil(document.documentElement.getBoundingClientRect().height)]";
    let filled = states::named(stage)
        .await?
        .into_iter()
        // A pattern's text is hers, and no page around the frame brings one.
        .filter(|state| state.name == "filled" && !state.link.contains("pattern_text="));
    for states::State { tool, link, .. } in filled {
        open(stage, &format!("tool={tool} values=\"{link}\"")).await?;
        let browser = &stage.browser;
        let answer = browser.look_up("tool.answer").await?;
        let sentence = one_line(answer["sentence"].as_str().unwrap_or_default());
        ensure!(
            answer["figures"].as_array().is_some_and(|figures| !figures.is_empty()),
            "{tool}: {answer}"
        );
        embed::enter(browser, 0).await?;
        for css in [".answer h2", ".answer .row", ".answer .outcome"] {
            let drawn = browser.text(css).await?;
            ensure!(
                sentence.contains(drawn.trim_end_matches('.')),
                "{tool} draws \"{drawn}\" and tells \"{sentence}\""
            );
        }
        let fits = format!("(([window, page]) => Math.abs(window - page) <= 1)({HEIGHTS})");
        browser.until(&fits).await?;
        browser.driver.enter_default_frame().await?;
    }
    Ok(())
}

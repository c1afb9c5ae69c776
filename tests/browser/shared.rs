//! The frames of one page take the program from each other: what one of them fetched it keeps for the others, and only what
//! is of this release. A frame that waits for another does not wait for ever, and a page by itself keeps nothing there.

use crate::{
    browser::Browser,
    embed::{ANSWERS, enter, lesson},
    job::works_out,
    stage::Stage,
};
use anyhow::{Result, ensure};
use serde_json::json;

/// What is kept in the frames' cache, by its addresses, once no frame is at it.
const KEPT: &str = "const done = arguments[arguments.length - 1];
    navigator.locks.request('loopwright-frames', async () => {
        const isThere = await caches.has('loopwright-frames');
        const kept = isThere ? await (await caches.open('loopwright-frames')).keys() : [];
        done(kept.map(({ url }) => url.replace(/-[0-9a-f]{16}[.]/, '.').replace(/.*[/]/, '')));
    });";

/// Puts another release's program in the place of the one that is kept.
const AGE: &str = "const done = arguments[arguments.length - 1];
    caches.delete('loopwright-frames').then(async () => {
        const cache = await caches.open('loopwright-frames');
        await cache.put('./older_bg.wasm', new Response('older'));
        done(true);
    });";

/// Holds what a frame holds while it fetches, and never lets go.
const HOLD: &str = "const done = arguments[arguments.length - 1];
    navigator.locks.request('loopwright-frames', () => { done(true); return new Promise(() => {}); });";

/// What is kept is one program, of this release.
pub async fn frames_keep_one_program_for_each_other(stage: &mut Stage) -> Result<()> {
    let browser = &stage.browser;
    open_lesson(stage).await?;
    keeps(browser, &["loopwright-app_bg.wasm"]).await?;
    browser.driver.execute_async(AGE, []).await?;
    keeps(browser, &["older_bg.wasm"]).await?;
    open_lesson(stage).await?;
    keeps(browser, &["loopwright-app_bg.wasm"]).await?;
    // At home a worker keeps the files.
    stage.open_and_keep("#/spacing").await?;
    keeps(browser, &[]).await
}

/// Opens the lesson with its plain frames, and goes into each of them.
async fn open_lesson(stage: &Stage) -> Result<()> {
    let address = lesson(stage, "plain.html", |html| html)?;
    stage.browser.leave().await?;
    stage.browser.driver.goto(&address).await?;
    for place in 0..ANSWERS.len() {
        enter(&stage.browser, place).await?;
    }
    Ok(())
}

async fn keeps(browser: &Browser, files: &[&str]) -> Result<()> {
    let kept = browser.driver.execute_async(KEPT, []).await?;
    ensure!(kept.json() == &json!(files), "it keeps {}, not {files:?}", kept.json());
    Ok(())
}

/// A frame whose fetch never ends holds up no other.
pub async fn a_frame_does_not_wait_for_another_for_ever(stage: &mut Stage) -> Result<()> {
    let frame = |tool: &str| format!("{}#/embed/{tool}", stage.server.other_site());
    let first = format!(
        "<iframe title=tool width=700 height=900 src='{}'></iframe>",
        frame("tail")
    );
    let head = "<!doctype html><html lang=en><link rel=icon href='data:,'><title>Class</title>";
    stage.server.page("/class.html", &format!("{head}{first}"));
    let browser = &stage.browser;
    browser.driver.goto(format!("{}class.html", stage.server.url())).await?;
    enter(browser, 0).await?;
    browser.driver.execute_async(HOLD, []).await?;
    browser.driver.enter_default_frame().await?;
    let second = frame("spacing?stitches=132&amount=16");
    browser
        .ask(
            "document.body.append(Object.assign(document.createElement('iframe'), { src: arguments[0], title: 'tool' }))",
            [json!(second)],
        )
        .await?;
    enter(browser, 1).await?;
    works_out(browser, 132, 116).await?;
    browser.driver.enter_default_frame().await?;
    Ok(())
}

//! What was typed stays: over a reload, over a browser that is ended without warning, and without any network.

use crate::{
    browser::Browser,
    job::{AMOUNT, KNITTING, STITCHES, fill, works_out},
    stage::Stage,
};
use anyhow::{Result, ensure};
use loopwright_tests::drive::PATIENCE;
use std::{
    collections::BTreeSet,
    time::{Duration, Instant},
};
use xtask::yardstick::{Patience, slowness};

/// The page is reloaded: the fields stand as typed, spaces and all, and so does the answer.
pub async fn a_reload_keeps_what_she_typed(stage: &mut Stage) -> Result<()> {
    stage.open("#/spacing").await?;
    fill(&stage.browser, " 132", "16 ").await?;
    stage.browser.choose(KNITTING, "flat").await?;
    stage.until_kept().await?;
    stage.browser.reload().await?;
    stands(&stage.browser, " 132", "16 ").await?;
    ensure!(stage.browser.value(KNITTING).await? == "flat", "the choice is lost");
    works_out(&stage.browser, 132, 116).await?;
    // The first page knows where she left off.
    stage.browser.go("#/").await?;
    ensure!(stage.browser.shows("main .begun").await?, "the first page forgot");
    Ok(())
}

/// The browser is ended by force once the page has said that everything is kept.
pub async fn a_killed_browser_keeps_what_it_said_it_keeps(stage: &mut Stage) -> Result<()> {
    // The log is the session's; what was said before the end goes with it.
    for amount in ["16", "17", "18"] {
        stage.open("#/spacing").await?;
        fill(&stage.browser, "132", amount).await?;
        stage.until_kept().await?;
        stage.lose_power().await?;
        stage.open("#/spacing").await?;
        stands(&stage.browser, "132", amount).await?;
    }
    works_out(&stage.browser, 132, 114).await
}

/// The server is gone: the page opens again and computes.
pub async fn without_a_network_the_page_opens_and_computes(stage: &mut Stage) -> Result<()> {
    stage.open_and_keep("#/spacing").await?;
    fill(&stage.browser, "132", "16").await?;
    stage.until_kept().await?;
    stage.server.stop()?;
    stage.expect_faults();
    stage.browser.reload().await?;
    stands(&stage.browser, "132", "16").await?;
    works_out(&stage.browser, 132, 116).await?;
    // And as one who comes back to it the next day, by its address and by its address with a file's name.
    for address in ["", "#/about", "index.html#/spacing"] {
        stage.open(address).await?;
    }
    fill(&stage.browser, "90", "9").await?;
    works_out(&stage.browser, 90, 81).await
}

/// The same from a folder somewhere below the root of a host.
pub async fn a_folder_of_a_host_will_do(stage: &mut Stage) -> Result<()> {
    stage.server.mount("/some/where/");
    stage.open_and_keep("#/spacing").await?;
    let outside: Vec<String> = stage
        .server
        .asked()
        .into_iter()
        .filter(|path| !path.starts_with("/some/where/"))
        .collect();
    ensure!(outside.is_empty(), "asked for outside of the folder: {outside:?}");
    stage.server.stop()?;
    stage.expect_faults();
    stage.browser.reload().await?;
    fill(&stage.browser, "132", "16").await?;
    works_out(&stage.browser, 132, 116).await
}

/// Once everything is on the machine nothing is asked while she works, of the page's own server or any other. When it looks for
/// a newer version is shown in `update.rs`.
pub async fn nothing_leaves_the_page_while_she_works(stage: &mut Stage) -> Result<()> {
    const LOADED: &str = "return performance.getEntriesByType('resource').map((entry) => entry.name)";
    stage.open_and_keep("").await?;
    until_quiet(stage).await?;
    let (asked, loaded) = (stage.server.asked().len(), stage.browser.run(LOADED).await?);
    let elsewhere: BTreeSet<&str> = loaded
        .as_array()
        .into_iter()
        .flatten()
        .filter_map(|name| name.as_str())
        .collect();
    let own = stage.server.url();
    ensure!(
        elsewhere.iter().all(|name| name.starts_with(&own)),
        "loaded from elsewhere: {elsewhere:?}"
    );
    for page in ["#/spacing", "#/about", "#/gallery", "#/spacing"] {
        stage.browser.go(page).await?;
    }
    fill(&stage.browser, "132", "16").await?;
    works_out(&stage.browser, 132, 116).await?;
    stage.until_kept().await?;
    until_quiet(stage).await?;
    ensure!(
        stage.server.asked().len() == asked,
        "asked the server while she worked: {:?}",
        &stage.server.asked()[asked..]
    );
    let after = stage.browser.run(LOADED).await?;
    ensure!(after == loaded, "loaded while she worked: {after}");
    Ok(())
}

/// Waits until the server has not been asked for a while: longer on a machine that is slow now.
async fn until_quiet(stage: &Stage) -> Result<()> {
    const QUIET: Duration = Duration::from_millis(700);
    let quiet = QUIET.mul_f32(slowness());
    let mut patience = Patience::of(PATIENCE);
    let (mut count, mut since) = (stage.server.asked().len(), Instant::now());
    while since.elapsed() < quiet {
        ensure!(!patience.is_over(), "the page never stops asking");
        tokio::time::sleep(Duration::from_millis(50)).await;
        let now = stage.server.asked().len();
        if now != count {
            (count, since) = (now, Instant::now());
        }
    }
    Ok(())
}

/// The two numbers stand as typed.
pub async fn stands(browser: &Browser, stitches: &str, amount: &str) -> Result<()> {
    browser.until("document.querySelector('#spacing-stitches')").await?;
    let found = (browser.value(STITCHES).await?, browser.value(AMOUNT).await?);
    ensure!(
        found == (stitches.to_owned(), amount.to_owned()),
        "typed \"{stitches}\" and \"{amount}\", found {found:?}"
    );
    Ok(())
}

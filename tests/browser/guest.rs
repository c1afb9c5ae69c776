//! Where the page is not at home: opened from a file, shown inside another page, without storage.

use crate::{
    job::{fill, works_out},
    one_file::{CATCH, caught},
    server::named,
    stage::{KEPT, Stage},
};
use anyhow::{Result, ensure};
use loopwright_tests::drive::STARTED;
use serde_json::json;

const WORKERS: &str = "const done = arguments[arguments.length - 1];
    if (!navigator.serviceWorker) done(0);
    else navigator.serviceWorker.getRegistrations().then((all) => done(all.length), () => done(0));";

/// The single file, opened from a disk.
pub async fn the_single_file_computes(stage: &mut Stage) -> Result<()> {
    let browser = &stage.browser;
    let file = named("LOOPWRIGHT_FILE", "dist-file/loopwright.html")?;
    let address = format!("file://{}", file.display());
    browser
        .open(&format!("{address}#/spacing?stitches=132&amount=12"))
        .await?;
    works_out(browser, 132, 120).await?;
    fill(browser, "90", "9").await?;
    works_out(browser, 90, 81).await?;
    browser.go("#/about").await?;
    ensure!(browser.shows("main h1").await?, "no page behind the first");
    browser.go("#/spacing").await?;
    works_out(browser, 90, 81).await?;
    let loaded = "performance.getEntriesByType('resource').filter((entry) => !/^(data|blob):/.test(entry.name)).length";
    ensure!(browser.look_up(loaded).await? == json!(0), "the file loads something");
    ensure!(stage.server.asked().is_empty(), "the file asked a server");
    Ok(())
}

/// Inside someone else's page it computes, keeps nothing, registers nothing, and says so.
pub async fn inside_another_page_it_is_a_guest(stage: &mut Stage) -> Result<()> {
    // The frame is of another site than the page around it.
    let (host, guest) = (stage.at(""), stage.server.other_site());
    for (path, question) in [("/class.html", "embed/spacing"), ("/shop.html", "spacing")] {
        let frame =
            format!("<iframe title=tool width=700 height=900 src='{guest}#/{question}?stitches=132&amount=16'>");
        stage.server.page(
            path,
            &format!("<!doctype html><html lang=en><link rel=icon href='data:,'><title>Class</title>{frame}</iframe>"),
        );
        let browser = &stage.browser;
        browser.leave().await?;
        browser
            .driver
            .goto(format!("{}{}", host.trim_end_matches('/'), path))
            .await?;
        browser.driver.enter_frame(0).await?;
        browser.until(STARTED).await?;
        works_out(browser, 132, 116).await?;
        browser.press("#spacing-stitches").await?;
        fill(browser, "90", "9").await?;
        works_out(browser, 90, 81).await?;
        let keeps = browser.driver.execute_async(WORKERS, []).await?;
        ensure!(keeps.json() == &json!(0), "a guest registered {} workers", keeps.json());
        ensure!(
            browser.shows("nav").await? != question.starts_with("embed"),
            "{question}: the wrong frame of the page"
        );
        if !question.starts_with("embed") {
            let footer = browser.text("footer.keeping").await?;
            ensure!(!footer.is_empty() && footer != KEPT, "a guest says: {footer}");
        }
        browser.driver.enter_default_frame().await?;
    }
    stage.browser.open(&format!("{guest}#/spacing")).await?;
    let value = stage.browser.value("#spacing-stitches").await?;
    ensure!(value.is_empty(), "a guest kept {value}");
    Ok(())
}

/// A browser that lets no page store anything: it computes, and says that nothing is kept.
pub async fn without_storage_it_computes_and_says_so(stage: &mut Stage) -> Result<()> {
    stage.deny_storage().await?;
    stage.expect_faults();
    stage.open("#/spacing").await?;
    let browser = &stage.browser;
    fill(browser, "132", "16").await?;
    works_out(browser, 132, 116).await?;
    browser
        .until("!document.querySelector('footer.keeping').innerText.includes('…')")
        .await?;
    let footer = browser.text("footer.keeping").await?;
    ensure!(footer.contains("Not kept"), "it says: {footer}");
    browser.type_into("#spacing-amount", "12").await?;
    works_out(browser, 132, 120).await?;
    // What is on the page can be taken along all the same.
    browser.run(CATCH).await?;
    browser.press_button("footer.keeping", "Save a copy").await?;
    let copy = caught(browser).await?;
    ensure!(copy.text.contains("\"132\""), "the copy: {}", copy.text);
    browser.reload().await?;
    ensure!(
        browser.value("#spacing-stitches").await?.is_empty(),
        "it was kept after all"
    );
    Ok(())
}

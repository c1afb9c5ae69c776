//! A new version: it waits and asks where she has begun, comes in silently where she has not, and a broken one never
//! takes the place of one that works.

use crate::{
    edition::{self, OPENED, RUNNING},
    job::{AMOUNT, fill, works_out},
    keep::stands,
    server::{Spoil, WAYS},
    stage::Stage,
};
use anyhow::{Result, ensure};
use loopwright_tests::drive::PATIENCE;
use serde_json::json;
use std::path::PathBuf;
use xtask::{files, yardstick::Patience};

/// The banner that asks.
const BANNER: &str = "aside.update";

/// What browsers do by themselves when a page is opened or a day has passed. `became` is then what became of the new
/// version: a state that lasts, or that the browser refused it, or that there was none to be found.
const LOOK_FOR_ONE: &str = "
    window.became = '';
    const end = (word) => { window.became ||= word; };
    const follow = (worker) => {
        const look = () => { if (worker.state !== 'installing') end(worker.state); };
        worker.addEventListener('statechange', look);
        look();
    };
    navigator.serviceWorker.getRegistration().then(async (registration) => {
        registration.addEventListener('updatefound', () => follow(registration.installing));
        // The browser looks by itself when a page is opened, and may have found one already.
        if (registration.installing) return follow(registration.installing);
        try {
            await registration.update();
        } catch {
            return end('refused');
        }
        if (registration.installing) return follow(registration.installing);
        // Whatever was found is told before the next task but one.
        setTimeout(() => setTimeout(() => end(registration.waiting?.state ?? 'nothing new')));
    });";

/// What a look says that found no new version.
const NOTHING: &str = "nothing new";

/// Whether a new version waits to be let in.
const WAITS: &str = "const done = arguments[arguments.length - 1];
    navigator.serviceWorker.getRegistration().then((registration) => done(Boolean(registration.waiting)));";

/// She has typed: the new version asks, what she typed is there afterwards, and the page opens again once.
pub async fn a_new_version_asks_and_loses_nothing(stage: &mut Stage) -> Result<()> {
    let [first, second] = editions(stage)?;
    stage.server.serve(&first);
    stage.open_and_keep("#/spacing").await?;
    fill(&stage.browser, "132", "16").await?;
    stage.server.serve(&second);
    expect(&look_for_one(stage).await?, &["installed"])?;
    stage
        .browser
        .until("document.documentElement.dataset.update === 'waiting'")
        .await?;
    ensure!(stage.browser.shows(BANNER).await?, "nobody asked her");
    let waits = stage.browser.driver.execute_async(WAITS, []).await?;
    ensure!(waits.json() == &json!(true), "the new version did not wait");
    runs(stage, "first").await?;
    // She goes on as long as she likes, and takes it with her last keystroke still on its way to the storage.
    stage.browser.type_into(AMOUNT, "12").await?;
    works_out(&stage.browser, 132, 120).await?;
    stage.browser.press("aside.update button").await?;
    until_runs(stage, "second").await?;
    stands(&stage.browser, "132", "12").await?;
    works_out(&stage.browser, 132, 120).await?;
    ensure!(!stage.browser.shows(BANNER).await?, "asked again");
    opened(stage, 2).await
}

/// She has typed nothing in this visit: the new version is simply there, after one reload of its own.
pub async fn an_untouched_page_renews_itself_once(stage: &mut Stage) -> Result<()> {
    let [first, second] = editions(stage)?;
    stage.server.serve(&first);
    stage.open_and_keep("#/spacing").await?;
    fill(&stage.browser, "132", "16").await?;
    stage.until_kept().await?;
    stage.server.serve(&second);
    // The next visit. It ends by itself when the new version has come, so nothing can be asked of it.
    stage.browser.run("setTimeout(() => location.reload(), 0)").await?;
    until_runs(stage, "second").await?;
    stands(&stage.browser, "132", "16").await?;
    opened(stage, 3).await
}

/// The release before had files without a hash in their names: it goes on by what its worker keeps, also where the host
/// has the new files only, and is followed by the new one as any other.
pub async fn a_release_with_plain_names_goes_on_and_is_followed(stage: &mut Stage) -> Result<()> {
    let first = edition::make_with_plain_names(&stage.dist, stage.folder.path(), "first")?;
    let second = edition::make(&stage.dist, stage.folder.path(), "second")?;
    ensure!(
        first.join("boot.js").exists() && !second.join("boot.js").exists(),
        "no difference in the names"
    );
    stage.server.serve(&first);
    stage.open_and_keep("#/spacing").await?;
    fill(&stage.browser, "132", "16").await?;
    stage.until_kept().await?;
    stage.server.serve(&second);
    expect(&look_for_one(stage).await?, &["installed"])?;
    runs(stage, "first").await?;
    stage.browser.run("setTimeout(() => location.reload(), 0)").await?;
    until_runs(stage, "second").await?;
    stands(&stage.browser, "132", "16").await?;
    works_out(&stage.browser, 132, 116).await?;
    // Once at first, once more by the old worker alone, and once as the new one.
    opened(stage, 3).await
}

/// Two windows, both worked in: the one that takes the new version reloads; the other keeps its words, asks as well,
/// and comes along when she says so.
pub async fn another_window_is_not_pulled_along(stage: &mut Stage) -> Result<()> {
    let [first, second] = editions(stage)?;
    stage.server.serve(&first);
    stage.open_and_keep("#/spacing").await?;
    fill(&stage.browser, "132", "16").await?;
    stage.until_kept().await?;
    let driver = stage.browser.driver.clone();
    let window = driver.window().await?;
    let other = driver.new_tab().await?;
    driver.switch_to_window(other).await?;
    stage.open_and_keep("#/spacing").await?;
    stage.browser.type_into(AMOUNT, "12").await?;
    stage.until_kept().await?;
    stage.server.serve(&second);
    expect(&look_for_one(stage).await?, &["installed"])?;
    stage
        .browser
        .until("document.querySelector('aside.update button')")
        .await?;
    stage.browser.press("aside.update button").await?;
    until_runs(stage, "second").await?;
    driver.switch_to_window(window).await?;
    runs(stage, "first").await?;
    stage
        .browser
        .until("document.querySelector('aside.update button')")
        .await?;
    opened(stage, 1).await?;
    stage.browser.press("aside.update button").await?;
    until_runs(stage, "second").await?;
    stands(&stage.browser, "132", "12").await?;
    opened(stage, 2).await
}

/// However a new version breaks on its way, the old one goes on, also without a network, until a whole one comes.
pub async fn a_broken_update_changes_nothing(stage: &mut Stage) -> Result<()> {
    stage.expect_faults();
    let [first, second] = editions(stage)?;
    stage.server.serve(&first);
    stage.open_and_keep("#/spacing").await?;
    fill(&stage.browser, "132", "16").await?;
    stage.server.serve(&second);
    let app = WAYS.map(|how| ("loopwright-app_bg.wasm", how));
    for (file, how) in app.into_iter().chain([
        ("styles.css", Spoil::Half),
        ("sw.js", Spoil::Missing),
        ("sw.js", Spoil::Page),
    ]) {
        stage.server.spoil(file, how);
        let became = look_for_one(stage).await?;
        ensure!(
            ["redundant", "refused"].contains(&became.as_str()),
            "{file} {how:?}: the worker is {became}"
        );
        stage.browser.reload().await?;
        runs(stage, "first").await?;
        works_out(&stage.browser, 132, 116).await?;
        ensure!(
            !stage.browser.shows(BANNER).await?,
            "{file} {how:?}: a broken version is offered"
        );
        stage.server.mend();
        stage.server.spoil(file, how);
    }
    stage.server.mend();
    stage.browser.run("setTimeout(() => location.reload(), 0)").await?;
    until_runs(stage, "second").await?;
    stage.server.stop()?;
    stage.browser.reload().await?;
    runs(stage, "second").await?;
    works_out(&stage.browser, 132, 116).await
}

/// About says what the page asks for once it is loaded: its own files and a newer version, at its own address. That is what the
/// server is asked for.
pub async fn only_the_pages_own_address_is_asked_for_a_newer_version(stage: &mut Stage) -> Result<()> {
    let [first, second] = editions(stage)?;
    stage.server.serve(&first);
    stage.open_and_keep("#/spacing").await?;
    // Where something was begun, a newer version waits.
    fill(&stage.browser, "132", "16").await?;
    stage.browser.go("#/about").await?;
    let about = stage.browser.text("main").await?;
    let says = "the page asks its own address for its files and for a newer version, and nothing else";
    ensure!(about.contains(says), "about says: {about}");
    let before = stage.server.asked().len();
    expect(&look_once(stage).await?, &[NOTHING])?;
    let asked = stage.server.asked().split_off(before);
    ensure!(
        asked.iter().all(|path| path == "/sw.js"),
        "asked for a newer version: {asked:?}"
    );
    stage.server.serve(&second);
    expect(&look_for_one(stage).await?, &["installed"])?;
    let listed: Vec<String> = files::read(&second)?
        .into_keys()
        .map(|path| format!("/{path}"))
        .collect();
    let asked = stage.server.asked().split_off(before);
    let strange: Vec<_> = asked
        .iter()
        .filter(|path| *path != "/" && !listed.contains(path))
        .collect();
    ensure!(strange.is_empty(), "asked for what is no file of the page: {strange:?}");
    let loaded = "performance.getEntriesByType('resource').map(({ name }) => name).filter((name) => !name.startsWith(location.origin))";
    let elsewhere = stage.browser.look_up(loaded).await?;
    ensure!(elsewhere == json!([]), "asked elsewhere: {elsewhere}");
    Ok(())
}

fn editions(stage: &Stage) -> Result<[PathBuf; 2]> {
    let make = |name| edition::make(&stage.dist, stage.folder.path(), name);
    Ok([make("first")?, make("second")?])
}

/// What became of the version that the server has now. A look that finds nothing, because the browser's own look was
/// under way at that moment, is repeated.
async fn look_for_one(stage: &Stage) -> Result<String> {
    let mut patience = Patience::of(PATIENCE);
    loop {
        let became = look_once(stage).await?;
        if became != NOTHING || patience.is_over() {
            return Ok(became);
        }
    }
}

async fn look_once(stage: &Stage) -> Result<String> {
    stage.browser.run(LOOK_FOR_ONE).await?;
    stage.browser.until("window.became").await?;
    let became = stage.browser.look_up("window.became").await?;
    Ok(became.as_str().unwrap_or_default().to_owned())
}

fn expect(found: &str, wanted: &[&str]) -> Result<()> {
    ensure!(wanted.contains(&found), "the new version is {found}, not {wanted:?}");
    Ok(())
}

async fn runs(stage: &Stage, edition: &str) -> Result<()> {
    let running = stage.browser.look_up(RUNNING).await?;
    ensure!(running == json!(edition), "{running} runs, not {edition}");
    Ok(())
}

async fn until_runs(stage: &Stage, edition: &str) -> Result<()> {
    stage.browser.until(&format!("{RUNNING} === {edition:?}")).await?;
    stage.browser.until(loopwright_tests::drive::STARTED).await?;
    stage.until_offline().await
}

/// The page was opened so many times in all, and stays: when the browser has looked once more for a new version and
/// found none, whatever would have made it reload has happened.
async fn opened(stage: &Stage, times: u32) -> Result<()> {
    expect(&look_once(stage).await?, &[NOTHING, "installed"])?;
    stage.browser.settle().await?;
    let opened = stage.browser.look_up(OPENED).await?;
    ensure!(opened == json!(times), "opened {opened} times, not {times}");
    Ok(())
}

//! A page that does not get as far as the app: whatever does not come, and whatever is thrown, there are words on the page and
//! a way on, and what they say of the storage is what was found there.

use crate::{
    broken::{PANIC, SHOWN, says_what_happened},
    browser::{Browser, Engine, one_line},
    differences::Difference,
    gallery::{axe, barriers},
    job::{fill, works_out},
    keep::stands,
    server::{Spoil, WAYS, named},
    stage::Stage,
};
use anyhow::{Result, ensure};
use loopwright_tests::{chromium::View, drive::STARTED};
use serde_json::json;

/// In a document: whether the words are seen that come late.
const LATE: &str =
    "(late => late && getComputedStyle(late).visibility === 'visible')(page().querySelector('.waiting .late'))";

/// In a document: how the late words come. Nothing of them moves, and they are what comes next to who reads by ear.
const COMES: &str = "const late = page().querySelector('.waiting .late');
    const [animation, ...more] = late.getAnimations();
    const { delay, duration, fill } = animation.effect.getComputedTiming();
    const changed = animation.effect.getKeyframes().flatMap(Object.keys).filter((key) => /visib|opac|trans|size|margin/.test(key));
    const follows = late.closest('main').querySelector('p').compareDocumentPosition(late) === 4;
    return { delay, duration, fill, more: more.length, changed: [...new Set(changed)].join(), follows, spoken: Boolean(late.closest('[role=status]')) };";

/// In a document: what must not have to be waited for.
const HURRY: &str = "page().querySelector('.waiting .late').getAnimations().forEach((animation) => animation.finish())";

/// The page is this one.
const HERE: &str = "window.page = () => document;";

/// The page is one in another window, which is still loading: a driver waits until its own window is loaded.
const BESIDE: &str = "window.beside = open(arguments[0]); window.page = () => beside.document;";

/// The same, in a frame.
const FRAMED: &str = "const frame = document.createElement('iframe');
    frame.src = arguments[0];
    document.body.replaceChildren(frame);
    window.beside = frame.contentWindow;
    window.page = () => frame.contentDocument;";

/// The other window's app runs.
const BESIDE_STARTED: &str = "page().querySelector('#app > *') && !page().querySelector('#app > .waiting')";

/// The page's own script does not come, in whatever way: the words are there at once, with a way, and it works.
pub async fn a_page_without_its_script_says_what_to_do(stage: &mut Stage) -> Result<()> {
    stage.expect_faults();
    for how in WAYS.into_iter().chain([Spoil::Plain]) {
        stage.server.mend();
        stage.server.spoil("boot.js", how);
        // In a folder of its own, or what the browser kept from the time before would do.
        stage.server.mount(&format!("/{how:?}/"));
        stage.browser.leave().await?;
        stage.browser.driver.goto(stage.at("#/spacing")).await?;
        stage.browser.run(HERE).await?;
        stage.browser.until(LATE).await?;
        let words = stage.browser.text(".late").await?;
        let way = stage.browser.text(".late a[href='./']").await?;
        ensure!(
            words.contains("still not opened") && way == "the start page",
            "{how:?}: it says {words}"
        );
    }
    can_be_read(stage).await?;
    stage.server.mend();
    stage.browser.press(".late .on-web .again").await?;
    stage
        .browser
        .until("document.querySelector('#spacing-stitches')")
        .await?;
    fill(&stage.browser, "132", "16").await?;
    works_out(&stage.browser, 132, 116).await
}

/// By day and at dusk, as far as a machine can tell.
async fn can_be_read(stage: &Stage) -> Result<()> {
    let Some(axe) = axe()? else { return Ok(()) };
    let lights = if stage.engine == Engine::Chromium {
        &[false, true][..]
    } else {
        &[false]
    };
    for dark in lights.iter().copied() {
        let (width, height) = (390, 844);
        stage.browser.look(View { width, height, dark }).await?;
        let found = barriers(&stage.browser, &axe, "a page that does not start").await?;
        ensure!(found.is_empty(), "dusk {dark}: {found:?}");
    }
    Ok(())
}

/// A file never comes: the first words are there, and after a while those that say what to do. When it comes after all the app
/// opens by itself.
pub async fn a_page_that_waits_for_ever_says_what_to_do(stage: &mut Stage) -> Result<()> {
    stage.expect_faults();
    stage
        .server
        .page("/beside.html", "<!doctype html><title>Beside</title>");
    let here = format!("{}beside.html", stage.server.url());
    for file in ["boot.js", "styles.css", "loopwright-app.js", "loopwright-app_bg.wasm"] {
        stage.server.spoil(file, Spoil::Never);
        stage.server.mount(&format!("/{file}/"));
        let browser = &stage.browser;
        browser.driver.goto(&here).await?;
        let beside = match stage.engine.has(Difference::NoWindowBeside) {
            true => FRAMED,
            false => BESIDE,
        };
        browser.ask(beside, [json!(stage.at("#/spacing"))]).await?;
        browser.until("page().querySelector('.waiting .late')").await?;
        ensure!(browser.look_up(LATE).await? == json!(false), "{file}: said at once");
        // Words that are not drawn are not there. WebKit does not draw the page of a window that nobody sees.
        if stage.engine == Engine::Chromium {
            browser
                .until("beside.performance.getEntriesByName('first-contentful-paint').length")
                .await?;
        }
        comes_by_itself(browser).await?;
        stage.server.mend();
        browser.until(BESIDE_STARTED).await?;
        ensure!(
            browser.look_up("page().querySelector('.late')").await?.is_null(),
            "{file}: still said"
        );
        browser.run("beside.close()").await?;
    }
    Ok(())
}

/// The words come after fifteen seconds, without a movement and without a script.
async fn comes_by_itself(browser: &Browser) -> Result<()> {
    let comes = browser.run(COMES).await?;
    let expected = json!({
        "delay": 15_000, "duration": 0, "fill": "forwards", "more": 0, "changed": "visibility", "follows": true, "spoken": true,
    });
    ensure!(comes == expected, "the words come so: {comes}");
    browser.run(HURRY).await?;
    ensure!(browser.look_up(LATE).await? == json!(true), "the words do not come");
    Ok(())
}

/// On a host that forbids every script the words come as well: nothing has to run for them.
pub async fn a_page_whose_scripts_are_forbidden_says_what_to_do(stage: &mut Stage) -> Result<()> {
    const NO_SCRIPT: &str = "<meta http-equiv=\"Content-Security-Policy\" content=\"script-src 'none'\">";
    stage.expect_faults();
    let html = std::fs::read_to_string(stage.dist.join("index.html"))?;
    stage
        .server
        .page("/", &html.replacen("<meta ", &format!("{NO_SCRIPT}<meta "), 1));
    stage.browser.driver.goto(stage.at("#/spacing")).await?;
    stage.browser.run(HERE).await?;
    ensure!(stage.browser.look_up(LATE).await? == json!(false), "said at once");
    comes_by_itself(&stage.browser).await?;
    stage.browser.press(".late .on-web .again").await?;
    stage.browser.until("document.querySelector('.waiting .late')").await
}

/// The network is gone, and an address of the past lies deeper down than the page: it opens where it is kept.
pub async fn without_a_network_a_deeper_address_opens_the_page(stage: &mut Stage) -> Result<()> {
    stage.server.mount("/loopwright/");
    stage.open_and_keep("#/spacing").await?;
    fill(&stage.browser, "132", "16").await?;
    stage.until_kept().await?;
    stage.server.stop()?;
    stage.expect_faults();
    for deeper in ["some/where/#/spacing", "some/where#/spacing", "index.htm#/spacing"] {
        stage.browser.leave().await?;
        stage.browser.driver.goto(stage.at(deeper)).await?;
        stage.browser.until(STARTED).await?;
        let address = stage.browser.look_up("location.pathname + location.hash").await?;
        ensure!(address == json!("/loopwright/#/spacing"), "{deeper} opens {address}");
        stands(&stage.browser, "132", "16").await?;
        works_out(&stage.browser, 132, 116).await?;
    }
    Ok(())
}

/// From now on a text that is drawn anew is an error, which no one in the app expects; where `late` is set it comes to light as a
/// promise that is broken, and otherwise as an error of the window. The browser itself throws it: of one that a driver's script
/// threw a page is told nothing, and nor of a promise that only the script's own world knows.
const THROW: &str = "const [late] = arguments;
    if (late) window.queueMicrotask = (task) => { window.Promise.resolve().then(task); };
    document.createTextNode = document.appendChild.bind(document);
    Object.defineProperty(Node.prototype, 'nodeValue', { set: Node.prototype.appendChild });
    location.hash = '#/about';";

/// What a function of the browser throws into the app is no trap. The app stops all the same, and says so.
pub async fn an_error_in_the_glue_shows_what_is_stored(stage: &mut Stage) -> Result<()> {
    stage.expect_faults();
    for late in [false, true] {
        stage.open("#/spacing").await?;
        fill(&stage.browser, "132", "16").await?;
        stage.until_kept().await?;
        stage.browser.ask(THROW, [json!(late)]).await?;
        stage.browser.until(SHOWN).await?;
        says_what_happened(stage, "something").await?;
    }
    // An error of somebody else's is none of the app's.
    stage.open("#/spacing").await?;
    let foreign = "setTimeout(document.appendChild.bind(document, 'theirs')); createImageBitmap(new Blob());";
    stage.browser.run(foreign).await?;
    stage.browser.until("window.faults.length >= 2").await?;
    ensure!(
        stage.browser.look_up(SHOWN).await? == json!(false),
        "it stops for an error of others"
    );
    works_out(&stage.browser, 132, 116).await
}

/// A newer version has the database, with a log or without.
const NEWER: &str = "const [keepsLog, done] = arguments;
    const opening = indexedDB.open('loopwright', 2);
    opening.onupgradeneeded = () => keepsLog || opening.result.deleteObjectStore('log');
    opening.onsuccess = () => { opening.result.close(); done(true); };";

/// The storage is forbidden, or does not answer; what the page has to wait for is there at once. WebKit's driver waits for a
/// script by the page's own clock, much longer than the page ever waits.
const FORBID: &str = "indexedDB.open = () => { throw new DOMException('not here', 'SecurityError'); };";
const SILENCE: &str = "const wait = setTimeout;
    window.setTimeout = (task, time, ...more) => wait(task, time < 20_000 ? 0 : time, ...more);
    indexedDB.open = () => ({});";

/// What the recover screen says of the storage is what it found there.
pub async fn a_page_that_stops_says_what_it_found(stage: &mut Stage) -> Result<()> {
    stage.expect_faults();
    for (script, found) in [(FORBID, "unread"), (SILENCE, "silent")] {
        stage.open("#/spacing").await?;
        stage.browser.run(script).await?;
        stops(stage, found).await?;
        ensure!(
            !stage.browser.shows("#recover-stored").await?,
            "{found}: it shows something"
        );
    }
    stage.open("#/spacing").await?;
    stops(stage, "nothing").await?;
    ensure!(
        !stage.browser.shows("#recover-stored").await?,
        "it shows what is not there"
    );
    Ok(())
}

/// A newer version has taken the storage: the screen says so in the page's words, and shows what it can read.
///
/// By itself, since a page that stopped may still have the storage open in what a browser keeps of pages that were left.
pub async fn a_page_that_stops_says_that_the_storage_is_newer(stage: &mut Stage) -> Result<()> {
    stage.expect_faults();
    stage.open("#/spacing").await?;
    fill(&stage.browser, "132", "16").await?;
    stage.until_kept().await?;
    // The records of a newer version, a log that is left where it was; in the words of the page, not of the browser.
    for (keeps_log, found) in [(true, "newer"), (false, "newer-only")] {
        let version = if keeps_log { "2" } else { "3" };
        let newer = NEWER.replace("'loopwright', 2", &format!("'loopwright', {version}"));
        let driver = &stage.browser.driver;
        driver.execute_async(&newer, vec![json!(keeps_log)]).await?;
        stops(stage, found).await?;
        let shown = stage.browser.shows("#recover-stored").await?;
        ensure!(shown == keeps_log, "{found}: shown {shown}");
        let said = one_line(&stage.browser.text("#recover").await?);
        ensure!(
            said.contains("newer version") && !said.contains("Error"),
            "it says {said}"
        );
        stage.open("#/spacing").await?;
    }
    Ok(())
}

async fn stops(stage: &Stage, found: &str) -> Result<()> {
    stage.browser.run(PANIC).await?;
    stage.browser.until(SHOWN).await?;
    says_what_happened(stage, found).await
}

/// Who has the page as a file is told of nothing that a file has not: no address of its own, no connection to look after.
pub async fn a_page_in_one_file_says_what_is_so_of_a_file(stage: &mut Stage) -> Result<()> {
    stage.expect_faults();
    let file = named("LOOPWRIGHT_FILE", "dist-file/loopwright.html")?;
    let address = format!("file://{}", file.display());
    let browser = &stage.browser;
    browser.open(&format!("{address}#/about")).await?;
    let about = one_line(&browser.text("main").await?);
    for wrong in ["its web address", "https address", "no request"] {
        ensure!(!about.contains(wrong), "about says: {about}");
    }
    ensure!(
        about.contains("the site that this file was saved from"),
        "about says: {about}"
    );
    // The words for a page that waits, by the page's own styles: those of a file, and not those of the web.
    const WORDS: &str = "return ['on-web', 'in-file'].map((kind) => {
            const made = document.createElement('p');
            made.className = kind;
            document.body.append(made);
            return getComputedStyle(made).display;
        });";
    let words = browser.run(WORDS).await?;
    ensure!(words == json!(["none", "block"]), "while it waits it shows {words}");
    browser.go("#/spacing").await?;
    stops(stage, if is_kept(stage).await? { "nothing" } else { "unread" }).await?;
    browser.run("location.hash = '#/spacing'").await?;
    browser.press("#recover-reload").await?;
    let anew = "document.getElementById('recover').hidden && document.querySelector('#spacing-stitches')";
    browser.until(anew).await
}

/// Whether this browser keeps anything for a file.
async fn is_kept(stage: &Stage) -> Result<bool> {
    const OPENS: &str = "const [done] = arguments;
        try {
            const opening = indexedDB.open('loopwright');
            opening.onsuccess = () => { opening.result.close(); done(true); };
            opening.onerror = () => done(false);
        } catch { done(false); }";
    let opens = stage.browser.driver.execute_async(OPENS, []).await?;
    Ok(opens.json() == &json!(true))
}

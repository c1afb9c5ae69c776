//! What the storage does under an open page: a newer version takes it over, it is cleared, it is full. Each is said, what is on
//! the page stays, and can be saved as a file.

use crate::{
    browser::Browser,
    carry::stored,
    job::{fill, works_out},
    keep::stands,
    one_file::{CATCH, caught},
    stage::Stage,
    steps::{Step::*, play},
};
use anyhow::{Context, Result, bail, ensure};
use loopwright_tests::drive::STARTED;
use serde_json::json;

/// Where it is said what is kept.
const FOOTER: &str = "footer.keeping";
/// The button that saves what is on the page.
const SAVE: &str = "Save a copy";

/// Another window with a newer version, which rebuilds the database.
const UPGRADE: &str = "const [done] = arguments;
    const opening = indexedDB.open('loopwright', 2);
    opening.onblocked = () => done('blocked');
    opening.onerror = () => done(String(opening.error));
    opening.onsuccess = () => { opening.result.close(); done('open'); };";

/// Another window that deletes all that is stored. Whether what is written into a log that was emptied is counted on from
/// there, which the page relies on, is looked up first.
const CLEAR: &str = "const [done] = arguments;
    const counting = indexedDB.open('counting', 1);
    counting.onupgradeneeded = () => counting.result.createObjectStore('log', { autoIncrement: true });
    counting.onsuccess = () => {
        const log = counting.result.transaction('log', 'readwrite').objectStore('log');
        log.add('first');
        log.add('second');
        log.clear();
        const third = log.add('third');
        third.onsuccess = () => {
            if (third.result !== 3) return done(`counted ${third.result}`);
            const deleting = indexedDB.deleteDatabase('loopwright');
            deleting.onblocked = () => done('blocked');
            deleting.onerror = () => done(String(deleting.error));
            deleting.onsuccess = () => done('gone');
        };
    };";

/// The browser has lost everything once it is let go of, as Chromium has after a write that failed.
const LOSE: &str = "const { open } = IDBFactory.prototype;
    IDBFactory.prototype.open = function (...what) {
        IDBFactory.prototype.open = open;
        this.deleteDatabase('loopwright');
        return open.apply(this, what);
    };";

/// From here on the disc is full, until `mend()`.
const FILL_THE_DISC: &str = "const add = IDBObjectStore.prototype.add;
    IDBObjectStore.prototype.add = () => { throw new DOMException('no room', 'QuotaExceededError'); };
    window.mend = () => { IDBObjectStore.prototype.add = add; };";

async fn answers(browser: &Browser, script: &str, expected: &str) -> Result<()> {
    let answer = browser.driver.execute_async(script, []).await?;
    ensure!(answer.json() == &json!(expected), "it answers {}", answer.json());
    Ok(())
}

/// Saves what is on the page, with the button in the footer; it has to hold these.
async fn saves(browser: &Browser, texts: &[&str]) -> Result<()> {
    browser.run(CATCH).await?;
    browser.press_button(FOOTER, SAVE).await?;
    let copy = caught(browser).await?;
    let holds = |text: &&str| copy.text.contains(&format!("\"{text}\""));
    ensure!(
        copy.name == "loopwright-backup.json" && texts.iter().all(holds),
        "{} holds {}",
        copy.name,
        copy.text
    );
    Ok(())
}

/// Presses a button that reloads the page.
async fn reloads(browser: &Browser) -> Result<()> {
    browser.run("window.leaving = true").await?;
    browser.press_button(FOOTER, "Reload").await?;
    browser.until("!window.leaving").await?;
    browser.until(STARTED).await
}

/// A newer version in another window has the storage: the older page says so, writes no more, and saves what it has.
pub async fn a_newer_version_in_another_window_is_given_way_to(stage: &mut Stage) -> Result<()> {
    let browser = &stage.browser;
    stage.open("#/spacing").await?;
    fill(browser, "132", "16").await?;
    stage.until_kept().await?;
    let before = stored(browser).await?;
    answers(browser, UPGRADE, "open").await?;
    let said = [
        Says(FOOTER, "A newer version of this page is open in another window."),
        Says(FOOTER, "What you typed is kept."),
        Type("#spacing-amount", "17"),
        Says(FOOTER, "what you typed last is not kept"),
    ];
    play(stage, &said).await?;
    works_out(browser, 132, 115).await?;
    saves(browser, &["132", "17"]).await?;
    ensure!(stored(browser).await? == before, "it went on writing");
    reloads(browser).await?;
    let said = [
        Says(FOOTER, "a newer version of this page was opened on this device"),
        NeverSays(FOOTER, "Error"),
        Holds("#spacing-stitches", ""),
        Type("#spacing-stitches", "90"),
        Type("#spacing-amount", "9"),
    ];
    play(stage, &said).await?;
    works_out(browser, 90, 81).await?;
    saves(browser, &["90", "9"]).await?;
    ensure!(
        stored(browser).await? == before,
        "it wrote over what a newer version keeps"
    );
    Ok(())
}

/// All that is stored is deleted from another window: what is on the page stays, is said not to be kept, and is kept anew.
pub async fn a_storage_cleared_from_another_window_takes_nothing_away(stage: &mut Stage) -> Result<()> {
    stage.open("#/spacing").await?;
    fill(&stage.browser, "132", "16").await?;
    stage.until_kept().await?;
    answers(&stage.browser, CLEAR, "gone").await?;
    is_kept_anew(stage).await
}

async fn is_kept_anew(stage: &Stage) -> Result<()> {
    let browser = &stage.browser;
    let said = [
        Says(FOOTER, "What was kept on this device was cleared."),
        Type("#spacing-amount", "17"),
        Says(FOOTER, "is still here, and is not kept"),
        Holds("#spacing-stitches", "132"),
    ];
    play(stage, &said).await?;
    saves(browser, &["132", "17"]).await?;
    ensure!(stored(browser).await? == json!("[]"), "half of it was written unasked");
    let again = [
        Button(FOOTER, "Keep it again"),
        Says(FOOTER, "Kept on this device"),
        Reload,
    ];
    play(stage, &again).await?;
    stands(browser, "132", "17").await
}

/// The disc is full, and later there is room again: neither is passed over, and the doubt ends with a copy.
pub async fn a_disc_that_was_full_is_not_trusted_until_a_copy_is_saved(stage: &mut Stage) -> Result<()> {
    let browser = &stage.browser;
    stage.open("#/spacing").await?;
    fill(browser, "132", "16").await?;
    stage.until_kept().await?;
    browser.run(FILL_THE_DISC).await?;
    let said = [
        Type("#spacing-amount", "17"),
        Says(FOOTER, "Not kept: this browser says that its storage is full."),
    ];
    play(stage, &said).await?;
    saves(browser, &["132", "17"]).await?;
    browser.run("window.mend()").await?;
    let said = [
        Type("#spacing-amount", "18"),
        Says(FOOTER, "The storage failed once: save a copy."),
        Type("#spacing-amount", "19"),
        NeverSays(FOOTER, "Kept on this device"),
    ];
    play(stage, &said).await?;
    browser.run(LOSE).await?;
    saves(browser, &["132", "19"]).await?;
    play(stage, &[Is("footer.keeping p", "Kept on this device"), Reload]).await?;
    stands(browser, "132", "19").await
}

/// Puts anything into the log beside what is there, under any key, and many entries of one field, so that it is shortened. In
/// Firefox only an array of the page's own world is a key.
const STRANGE: &str = "const [done] = arguments;
    const round = {}; round.round = round;
    const values = [undefined, null, 5, -1e300, NaN, true, '', 'text', '{', '[]', {}, [], [[undefined]], round, new Date(0), 12n,
        new Map([[1, 2]]), new Uint8Array(3), { v: 1, sheet: 7 }, '{\"v\":2,\"sheet\":\"spacing\",\"field\":\"stitches\"}',
        '{\"v\":1,\"sheet\":\"spacing\",\"field\":\"stitches\",\"typed\":7}', '['.repeat(1e5), '\\ud800'];
    const late = JSON.stringify({ v: 1, sheet: 'spacing', field: 'stitches', typed: { text: '1' } });
    const keys = ['x', [1], new Date(5), new window.Uint8Array(2)];
    const opening = indexedDB.open('loopwright', 1);
    opening.onsuccess = () => {
        const writing = opening.result.transaction('log', 'readwrite'), log = writing.objectStore('log');
        for (const value of values) log.add(value);
        for (const key of keys) log.put(late, key);
        log.put(late, -1.5);
        for (let count = 0; count < 3000; count += 1) {
            log.add(JSON.stringify({ v: 1, sheet: 'spacing', field: 'amount', typed: { text: String(count) } }));
        }
        writing.onabort = () => done(String(writing.error));
        writing.oncomplete = () => { opening.result.close(); done(values.length + keys.length); };
    };";

/// How many records lie in the log that are no text, or no text of an entry, and how many there are in all.
const LEFT: &str = "const [done] = arguments;
    const opening = indexedDB.open('loopwright');
    opening.onsuccess = () => {
        const log = opening.result.transaction('log').objectStore('log'), keys = log.getAllKeys(), reading = log.getAll();
        reading.onsuccess = () => {
            opening.result.close();
            const isStrange = (value, place) => typeof keys.result[place] !== 'number' || typeof value !== 'string' || !value.includes('text\":\"');
            done([reading.result.filter(isStrange).length, reading.result.length]);
        };
    };";

/// Whatever stands in the store: it opens with what is known, says in one sentence that there is more, and leaves that alone.
pub async fn whatever_is_stored_the_page_opens(stage: &mut Stage) -> Result<()> {
    let browser = &stage.browser;
    stage.open("#/spacing").await?;
    fill(browser, "132", "16").await?;
    stage.until_kept().await?;
    let put = browser.driver.execute_async(STRANGE, []).await?.json().clone();
    let strange = put.as_u64().with_context(|| format!("it is not put there: {put}"))?;
    let opened = [
        Reload,
        Holds("#spacing-stitches", "132"),
        Holds("#spacing-amount", "2999"),
        Type("#spacing-amount", "17"),
        Kept,
        Reload,
        Holds("#spacing-amount", "17"),
        Go("#/about"),
    ];
    play(stage, &opened).await?;
    let said = format!("{strange} records in the storage of this page are nothing that this version knows.");
    browser
        .until(&format!("document.querySelector('main').innerText.includes({said:?})"))
        .await?;
    let left = browser.driver.execute_async(LEFT, []).await?.json().clone();
    let [Some(strange_left), Some(all)] = [0, 1].map(|place| left[place].as_u64()) else {
        bail!("the log is not read: {left}");
    };
    ensure!(strange_left == strange, "{strange_left} of {strange} are left");
    ensure!(all < 200, "it was not shortened: {all} records");
    Ok(())
}

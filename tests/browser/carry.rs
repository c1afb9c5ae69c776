//! A project goes out, as a file, as a link and as a picture of the link, and comes in. A picture is read as a camera reads
//! it. Whatever else a file or a link holds, it gets its sentence, and nothing is changed.

use crate::{
    browser::{Browser, words_of},
    job::fill,
    keep::stands,
    one_file::{CATCH, caught},
    stage::Stage,
    steps::{Step::*, play},
};
use anyhow::{Context, Result, ensure};
use serde_json::{Value, json};
use std::fs;

/// The page on which a project is handed out.
const PAGE: &str = "#/project";
/// Where a project that is brought is shown.
const BROUGHT: &str = ".brought";
/// Why it is refused.
const REFUSED: &str = ".brought .refused";
/// The button that keeps what is brought.
const KEEP: &str = "Keep it as a project of its own";

/// All that the browser has stored, as one text.
const STORED: &str = "const [done] = arguments;
    const opening = indexedDB.open('loopwright');
    opening.onsuccess = () => {
        const reading = opening.result.transaction('log').objectStore('log').getAll();
        reading.onsuccess = () => { opening.result.close(); done(JSON.stringify(reading.result)); };
    };";

/// The squares of a picture, a character each, drawn by the browser itself: a row of them after the other.
const SQUARES: &str = "const [css] = arguments;
    const picture = document.querySelector(css), side = picture.viewBox.baseVal.width;
    const colour = (name) => getComputedStyle(picture.querySelector(name)).fill;
    const canvas = Object.assign(document.createElement('canvas'), { width: side, height: side });
    const drawing = canvas.getContext('2d');
    drawing.fillStyle = colour('.qr-paper');
    drawing.fillRect(0, 0, side, side);
    drawing.fillStyle = colour('.qr-squares');
    drawing.fill(new Path2D(picture.querySelector('.qr-squares').getAttribute('d')));
    const dots = drawing.getImageData(0, 0, side, side).data;
    const shades = Array.from({ length: side * side }, (_, place) => dots[4 * place]);
    return shades.map((shade) => shade < 128 ? '#' : '.').join('');";

/// The dots of a side of a square, as far as the one who reads is concerned.
const DOTS: usize = 8;

/// What a camera reads from a picture on the page.
async fn scanned(browser: &Browser, css: &str) -> Result<String> {
    let squares = browser.driver.execute(SQUARES, vec![json!(css)]).await?;
    let squares = squares.json().as_str().context("no squares")?.as_bytes().to_vec();
    let side = squares.len().isqrt();
    let shade = |x: usize, y: usize| match squares[y / DOTS * side + x / DOTS] {
        b'#' => 0,
        _ => 255,
    };
    let mut image = rqrr::PreparedImage::prepare_from_greyscale(side * DOTS, side * DOTS, shade);
    let grids = image.detect_grids();
    let grid = grids.first().context("a camera finds no code in the picture")?;
    Ok(grid.decode()?.1)
}

/// Opens a fold with a picture in it, and answers what a camera reads there, which is what is written below.
async fn scan(browser: &Browser, within: &str) -> Result<String> {
    browser.press(&format!("{within} > summary")).await?;
    let picture = format!("{within} .qr");
    browser.until(&format!("document.querySelector('{picture}')")).await?;
    let read = scanned(browser, &picture).await?;
    let written = browser.text(&format!("{within} .address")).await?;
    ensure!(
        read == written,
        "the picture says {read}, and below it stands {written}"
    );
    Ok(read)
}

/// The sum is on the teacher's screen; who scans it has the same, at dusk too.
pub async fn a_class_scans_the_sum_from_the_screen(stage: &mut Stage) -> Result<()> {
    let browser = &stage.browser;
    stage.open("#/about").await?;
    browser.choose("#settings-light", "dusk").await?;
    browser.go("#/spacing").await?;
    fill(browser, "132", "16").await?;
    let link = scan(browser, ".scan").await?;
    ensure!(
        link == stage.at("#/spacing?amount=16&stitches=132"),
        "another link: {link}"
    );
    // The picture follows what is typed.
    fill(browser, "90", "9").await?;
    browser
        .until("document.querySelector('.scan .address').innerText.includes('90')")
        .await?;
    let link = scanned(browser, ".scan .qr").await?;
    browser.open(&link).await?;
    stands(browser, "90", "9").await
}

/// Out as a link and as a file, and in again: looked at first, and the same.
pub async fn a_project_goes_out_and_comes_in(stage: &mut Stage) -> Result<()> {
    let browser = &stage.browser;
    stage.open("#/spacing").await?;
    fill(browser, "132", "16").await?;
    stage.until_kept().await?;
    browser.go(PAGE).await?;
    let link = scan(browser, ".carry .scan").await?;
    browser.run(CATCH).await?;
    browser.press_button(".carry", "Save as a file").await?;
    let file = caught(browser).await?;
    ensure!(
        file.name == "loopwright-project.json" && file.text.contains("\"loopwright-project\": 1"),
        "{} holds {}",
        file.name,
        file.text
    );
    // She who brings it has something else on her desk.
    browser.go("#/spacing").await?;
    fill(browser, "90", "9").await?;
    stage.until_kept().await?;
    let place = stage.folder.path().join(&file.name);
    fs::write(&place, &file.text)?;
    browser.go(PAGE).await?;
    let field = browser.find("#project-file").await?;
    field.send_keys(place.to_string_lossy().as_ref()).await?;
    looks_at_it(stage).await?;
    browser.go("#/spacing").await?;
    stands(browser, "90", "9").await?;
    browser.open(&link).await?;
    looks_at_it(stage).await?;
    browser.press_button(BROUGHT, KEEP).await?;
    browser.until(&format!("!document.querySelector('{BROUGHT}')")).await?;
    browser.go("#/spacing").await?;
    stands(browser, "132", "16").await
}

/// Chooses a file on the page of the project.
async fn choose_file(stage: &Stage, text: &str) -> Result<()> {
    let place = stage.folder.path().join("brought.json");
    fs::write(&place, text)?;
    stage.browser.go(PAGE).await?;
    let field = stage.browser.find("#project-file").await?;
    field.send_keys(place.to_string_lossy().as_ref()).await?;
    stage
        .browser
        .until(&format!("document.querySelector('{BROUGHT} h1')"))
        .await
}

/// A file of a later version: what is understood of it is shown, the rest is counted and named, and nothing is kept unasked.
const LATER: &str = r#"{
    "loopwright-project": 2, "name": "Yoke of tomorrow", "tracks": [[1, 2]],
    "facts": { "cast_on": "96", "wingspan": "150" },
    "steps": [
        { "number": 1, "tool": "loom", "name": "Warp" },
        { "number": 2, "tool": "tail", "name": "Tail", "fields": { "stitches": "96" }, "from": { "gauge": "step 1 after" } }
    ]
}"#;

/// A project of a later version is looked at, and what is understood of it is kept beside the others.
pub async fn a_later_versions_project_is_looked_at_and_kept_in_part(stage: &mut Stage) -> Result<()> {
    let browser = &stage.browser;
    stage.open("#/spacing").await?;
    fill(browser, "90", "9").await?;
    stage.until_kept().await?;
    let before = stored(browser).await?;
    choose_file(stage, LATER).await?;
    let shown = [
        Is(".brought h1", "Yoke of tomorrow"),
        Says(".brought .later", "made with a later version of the page"),
        Says(BROUGHT, "1 thing known, 1 step."),
        Says(".brought .left-out", "3 things in it mean nothing to this version"),
        Says(
            ".brought .left-out",
            "would be left out: tracks, facts.wingspan, steps[1] (loom).",
        ),
    ];
    play(stage, &shown).await?;
    ensure!(stored(browser).await? == before, "something is kept already");
    let kept = [
        Button(BROUGHT, "Keep what is shown as a project of its own"),
        Holds("#project-name", "Yoke of tomorrow"),
        Holds("#known-cast_on", "96"),
        Press(".steps a[href='#/project/2']"),
        Holds("#tail-stitches", "96"),
    ];
    play(stage, &kept).await?;
    // Where nothing is understood there is nothing to keep.
    choose_file(
        stage,
        r#"{"loopwright-project": 3, "name": "Other", "steps": "of another kind"}"#,
    )
    .await?;
    let shown = [
        Is(".brought h1", "Other"),
        Says(BROUGHT, "This version understands nothing of what is in it."),
        NeverSays(BROUGHT, "Keep what is shown"),
        Button(BROUGHT, "Leave it"),
    ];
    play(stage, &shown).await
}

/// What was brought in is taken out by one tap, also after a reload; the project that was open before is open again.
pub async fn what_was_brought_in_is_undone_after_a_reload_too(stage: &mut Stage) -> Result<()> {
    let file = r#"{"loopwright-project": 1, "name": "Brought", "facts": {"cast_on": "96"}}"#;
    let own = [
        Open("#/project"),
        Type("#project-name", "First"),
        Button(".projects", "Start another project"),
        Type("#project-name", "Mine"),
        Type("#known-cast_on", "60"),
        Kept,
    ];
    play(stage, &own).await?;
    choose_file(stage, file).await?;
    let brought = [
        Says(BROUGHT, "your own stay as they are, and you can undo it there"),
        Button(BROUGHT, KEEP),
        Holds("#project-name", "Brought"),
        Kept,
        Reload,
        Holds("#known-cast_on", "96"),
        Button(".brought-in", "Undo: brought in \u{201c}Brought\u{201d}"),
        Holds("#project-name", "Mine"),
        Holds("#known-cast_on", "60"),
        Hides(".brought-in", "there is nothing to undo any more"),
        Kept,
        Reload,
        Holds("#project-name", "Mine"),
        Says(".projects", "deleted"),
        Button(".projects", "Have it back"),
        Holds("#project-name", "Brought"),
    ];
    play(stage, &brought).await
}

/// A project whose link no phone could read from a picture says so, and offers the file.
pub async fn a_project_too_long_for_a_picture_says_so(stage: &mut Stage) -> Result<()> {
    let steps = [
        Open(""),
        Button(".example", "Look at an example"),
        Shown(".project .steps li"),
        Press(".carry .scan > summary"),
        Says(
            ".carry .scan",
            "too long for a picture that a phone could read. Save it as a file instead.",
        ),
        Hides(".carry .qr", "it could not be read"),
        Shown(".carry button"),
    ];
    play(stage, &steps).await
}

async fn looks_at_it(stage: &Stage) -> Result<()> {
    let begun = format!("{}?.includes('Even spacing')", words_of(".brought li"));
    stage.browser.until(&begun).await
}

/// The lines of the list of strangers that are of this kind and are refused.
fn refused(kind: &str) -> Vec<&'static str> {
    let lines = include_str!("../../crates/loopwright-project/tests/hostile.txt").lines();
    let cells = lines.filter_map(|line| {
        let mut cells = line.splitn(3, '|').map(str::trim);
        Some((cells.next()?, cells.next()?, cells.next()?))
    });
    let ours = cells.filter(|(is, comes_to, _)| *is == kind && !comes_to.starts_with("opens"));
    ours.map(|(_, _, text)| text).collect()
}

/// All that the browser has stored.
pub async fn stored(browser: &Browser) -> Result<Value> {
    Ok(browser.driver.execute_async(STORED, []).await?.json().clone())
}

/// Every link of the list, followed on a page with something on it.
pub async fn a_hostile_link_gets_its_sentence_and_changes_nothing(stage: &mut Stage) -> Result<()> {
    let browser = &stage.browser;
    stage.open("#/spacing").await?;
    fill(browser, "90", "9").await?;
    stage.until_kept().await?;
    let before = stored(browser).await?;
    let links = refused("link");
    ensure!(links.len() >= 15, "only {} links", links.len());
    for link in links {
        browser.go(&format!("#/p={link}")).await?;
        is_refused(browser).await.with_context(|| format!("the link {link}"))?;
    }
    let huge = format!("#/p=1{}", "A".repeat(300_000));
    browser.go(&huge).await?;
    is_refused(browser).await.context("a huge link")?;
    ensure!(stored(browser).await? == before, "something else is stored than before");
    browser.go("#/spacing").await?;
    stands(browser, "90", "9").await
}

/// Files of the list, and one of five megabytes, chosen one after the other.
pub async fn a_hostile_file_gets_its_sentence_and_changes_nothing(stage: &mut Stage) -> Result<()> {
    let browser = &stage.browser;
    stage.open("#/spacing").await?;
    fill(browser, "90", "9").await?;
    stage.until_kept().await?;
    let before = stored(browser).await?;
    let huge = format!("{{\"loopwright-project\": 1, \"name\": \"{}\"}}", "x".repeat(5_000_000));
    let mut files: Vec<&str> = refused("file").into_iter().step_by(5).collect();
    files.push(&huge);
    for text in files {
        let place = stage.folder.path().join("stranger.json");
        fs::write(&place, text)?;
        browser.go(PAGE).await?;
        let field = browser.find("#project-file").await?;
        field.send_keys(place.to_string_lossy().as_ref()).await?;
        let begins: String = text.chars().take(80).collect();
        is_refused(browser)
            .await
            .with_context(|| format!("the file {begins}"))?;
    }
    ensure!(stored(browser).await? == before, "something else is stored than before");
    browser.go("#/spacing").await?;
    stands(browser, "90", "9").await
}

/// There is a sentence, it says that nothing was changed, and nothing can be kept.
async fn is_refused(browser: &Browser) -> Result<()> {
    browser.until(&format!("{}?.length > 20", words_of(REFUSED))).await?;
    let said = browser.text(BROUGHT).await?;
    ensure!(said.contains("nothing of yours has changed"), "it says: {said}");
    ensure!(!browser.shows(&format!("{BROUGHT} button")).await?, "it can be kept");
    Ok(())
}

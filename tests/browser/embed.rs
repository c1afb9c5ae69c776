//! The lesson in `web/lesson/` on another site than the calculators: they compute in it by the element and as plain
//! frames, with storage blocked and in a sandbox without an origin of its own; they are fetched once, nothing jumps, and
//! there is no barrier that a machine can find.

use crate::{
    browser::Browser,
    differences::Difference,
    gallery::{axe, barriers},
    job::{fill, works_out},
    stage::Stage,
};
use anyhow::{Context, Result, ensure};
use loopwright_tests::drive::{PATIENCE, STARTED};
use serde_json::json;
use std::{fs, time::Duration};
use thirtyfour::WebElement;
use xtask::yardstick::Patience;

/// The frames of a lesson in their order, by the words that their answers have in them.
pub const ANSWERS: [&str; 3] = ["132", "tail", "k2tog"];

/// Adds up how far things jump that nobody touched, from the first drawing on.
const WATCH_JUMPS: &str = "
    window.jumped = 0;
    window.jumps = [];
    const place = ({ top, height }) => `at ${Math.round(top)}, ${Math.round(height)} high`;
    const jump = ({ node, previousRect, currentRect }) => `${node?.nodeName}: ${place(previousRect)}; then ${place(currentRect)}`;
    const seen = (list) => list.getEntries().filter(({ hadRecentInput }) => !hadRecentInput).forEach(({ value, sources }) => {
        jumped += value;
        jumps.push(...sources.map(jump));
    });
    new PerformanceObserver(seen).observe({ type: 'layout-shift', buffered: true });";

/// Between two looks.
const PAUSE: Duration = Duration::from_millis(40);

/// More than this a reader notices.
const MOST_JUMPED: f64 = 0.02;

/// Nothing in the frame has to be scrolled to.
const FITS: &str = "Math.ceil(document.documentElement.getBoundingClientRect().height) <= innerHeight + 1";

/// Finds a frame, whether it stands in the page or in an element.
const FRAME: &str = "const frame = document.querySelectorAll('loopwright-tool, iframe')[arguments[0]];
    frame.scrollIntoView();
    return frame.shadowRoot?.querySelector('iframe') ?? frame;";

/// A page of the lesson as it is shipped, put on another site than the calculators as its comment says.
pub fn lesson(stage: &Stage, page: &str, change: impl Fn(String) -> String) -> Result<String> {
    let file = stage.dist.join("lesson").join(page);
    let html = fs::read_to_string(&file).with_context(|| format!("no lesson at {}", file.display()))?;
    let guest = stage.server.other_site();
    let html = html
        .replace("'self'", &format!("'self' {guest}"))
        .replace("\"../", &format!("\"{guest}"))
        .replace("\"lesson.css", "\"/lesson/lesson.css");
    let path = format!("/class/{page}");
    stage.server.page(&path, &change(html));
    Ok(format!("{}{path}", stage.server.url().trim_end_matches('/')))
}

/// Goes into one of the frames of the page and waits until the app runs there. A frame that is not loaded yet becomes
/// another document under the driver's hands, so each look goes in anew.
pub async fn enter(browser: &Browser, place: usize) -> Result<()> {
    let mut patience = Patience::of(PATIENCE);
    while !is_entered(browser, place).await.unwrap_or(false) {
        ensure!(!patience.is_over(), "the app does not start in frame {place}");
        tokio::time::sleep(PAUSE).await;
    }
    Ok(())
}

async fn is_entered(browser: &Browser, place: usize) -> Result<bool> {
    browser.driver.enter_default_frame().await?;
    frame(browser, place).await?.enter_frame().await?;
    Ok(browser.look_up(&format!("Boolean({STARTED})")).await? == json!(true))
}

async fn frame(browser: &Browser, place: usize) -> Result<WebElement> {
    let found = browser.driver.execute(FRAME, vec![json!(place)]).await?;
    Ok(found.element()?)
}

/// How many times the WebAssembly was asked for.
pub fn fetched(stage: &Stage) -> usize {
    let asked = stage.server.asked();
    asked.iter().filter(|path| path.ends_with(".wasm")).count()
}

/// Opens a page and goes through its frames from top to bottom: each computes, and computes again. How many times the
/// WebAssembly was asked for meanwhile.
async fn reads_through(stage: &Stage, address: &str) -> Result<usize> {
    let browser = &stage.browser;
    let before = fetched(stage);
    browser.leave().await?;
    browser.driver.goto(address).await?;
    if !stage.engine.has(Difference::NoShifts) {
        browser.run(WATCH_JUMPS).await?;
    }
    for (place, words) in ANSWERS.iter().enumerate() {
        enter(browser, place).await.with_context(|| format!("frame {place}"))?;
        let answer = "document.querySelector('.answer .row')?.innerText";
        browser.until(&format!("{answer}.includes({words:?})")).await?;
        // An element takes a moment until it has heard; a plain frame has to be high enough as it is.
        browser
            .until(FITS)
            .await
            .with_context(|| format!("frame {place} is too low"))?;
    }
    browser.driver.enter_default_frame().await?;
    browser.settle().await?;
    if !stage.engine.has(Difference::NoShifts) {
        let jumped = browser.look_up("window.jumped").await?.as_f64().unwrap_or(1.0);
        println!("{address}: what nobody touched jumped by {jumped}");
        let jumps = browser.look_up("jumps").await?;
        ensure!(jumped < MOST_JUMPED, "what nobody touched jumped by {jumped}: {jumps}");
    }
    enter(browser, ANSWERS.len() - 1).await?;
    works_out(browser, 132, 116).await?;
    types_into_a_frame(browser).await?;
    browser.driver.enter_default_frame().await?;
    let times = fetched(stage) - before;
    println!(
        "{:?}, {address}: the WebAssembly was asked for {times} times",
        stage.engine
    );
    Ok(times)
}

/// In the frame of the even spacing that is entered. WebKit's driver types where the frame has the focus.
pub async fn types_into_a_frame(browser: &Browser) -> Result<()> {
    browser.press("#spacing-stitches").await?;
    fill(browser, "90", "9").await?;
    works_out(browser, 90, 81).await
}

/// By the element: all three compute, and the WebAssembly is asked for once.
pub async fn a_lesson_computes_in_three_elements(stage: &mut Stage) -> Result<()> {
    let address = lesson(stage, "index.html", |html| html)?;
    let times = reads_through(stage, &address).await?;
    ensure!(times == 1, "the WebAssembly was asked for {times} times");
    no_barrier(stage).await
}

/// As plain frames, which are loaded at the same time, on a page that may run no script.
pub async fn a_lesson_computes_without_a_script_of_its_own(stage: &mut Stage) -> Result<()> {
    let address = lesson(stage, "plain.html", |html| html)?;
    let times = reads_through(stage, &address).await?;
    ensure!(times == 1, "the WebAssembly was asked for {times} times");
    no_barrier(stage).await
}

/// The frames kept apart, with an origin that no other page has. Such a frame shares nothing with the next one.
pub async fn a_lesson_computes_in_frames_kept_apart(stage: &mut Stage) -> Result<()> {
    let elements = lesson(stage, "index.html", |html| {
        html.replace("<loopwright-tool ", "<loopwright-tool sandbox=\"apart\" ")
    })?;
    let plain = lesson(stage, "plain.html", apart)?;
    for address in [elements, plain] {
        let times = reads_through(stage, &address).await?;
        ensure!(times <= ANSWERS.len(), "the WebAssembly was asked for {times} times");
    }
    Ok(())
}

/// A page of plain frames, with each of them kept apart.
fn apart(html: String) -> String {
    html.replace("allow-same-origin ", "")
}

/// In a browser that lets no page store anything, so that no frame keeps anything for the next one.
pub async fn a_lesson_computes_without_storage(stage: &mut Stage) -> Result<()> {
    stage.deny_storage().await?;
    for page in ["index.html", "plain.html"] {
        let address = lesson(stage, page, |html| html)?;
        let times = reads_through(stage, &address).await?;
        ensure!(times <= ANSWERS.len(), "the WebAssembly was asked for {times} times");
    }
    Ok(())
}

/// On a host whose headers do not let a frame that is kept apart have its scripts, the page says what is missing.
pub async fn a_frame_kept_apart_says_which_header_is_missing(stage: &mut Stage) -> Result<()> {
    stage.expect_faults();
    stage.server.withhold_leave();
    let browser = &stage.browser;
    enter_apart(stage).await?;
    browser.until(&says("Access-Control-Allow-Origin")).await?;
    browser.driver.enter_default_frame().await?;
    Ok(())
}

/// To WebKit the page's own files are another site's in a frame that is kept apart, where a host says `'self'` in a header.
/// The page says so.
pub async fn a_frame_kept_apart_says_what_a_header_forbids(stage: &mut Stage) -> Result<()> {
    stage.expect_faults();
    stage.server.send_self();
    let browser = &stage.browser;
    enter_apart(stage).await?;
    if stage.engine.has(Difference::SelfIsNoAddress) {
        browser.until(&says("it has to name its own address instead")).await?;
    } else {
        browser.until(STARTED).await?;
    }
    browser.driver.enter_default_frame().await?;
    Ok(())
}

/// Opens the lesson with its plain frames kept apart, and goes into the first.
async fn enter_apart(stage: &Stage) -> Result<()> {
    let address = lesson(stage, "plain.html", apart)?;
    let browser = &stage.browser;
    browser.leave().await?;
    browser.driver.goto(&address).await?;
    frame(browser, 0).await?.enter_frame().await?;
    Ok(())
}

/// The page in a frame that is kept apart has these words in what can be read there.
fn says(words: &str) -> String {
    format!("document.querySelector('.apart')?.innerText.includes({words:?})")
}

/// The page and each of its frames.
async fn no_barrier(stage: &Stage) -> Result<()> {
    let Some(axe) = axe()? else { return Ok(()) };
    let browser = &stage.browser;
    for place in 0..ANSWERS.len() {
        enter(browser, place).await?;
        let found = barriers(browser, &axe, &format!("frame {place}")).await?;
        ensure!(found.is_empty(), "{}", found.join("\n"));
    }
    browser.driver.enter_default_frame().await?;
    let found = barriers(browser, &axe, "the lesson").await?;
    ensure!(found.is_empty(), "{}", found.join("\n"));
    Ok(())
}

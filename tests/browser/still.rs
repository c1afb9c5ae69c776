//! The page holds still while she types: each tool is filled in key by key, and after each key every field stands where
//! it stood, on a phone and on a tablet. Where the browser tells of layout shifts, none is large, whoever caused it.

use crate::{
    browser::{Browser, words_of},
    stage::Stage,
    states::{self, PHONE, TABLET},
    steps::{Step::*, play},
};
use anyhow::{Context, Result, bail, ensure};
use loopwright_tests::chromium::View;
use serde::Deserialize;
use serde_json::json;
use thirtyfour::Key;

/// The largest shift of what is on the screen, as the browser reckons it.
const LARGEST_SHIFT: f64 = 0.05;

/// On a phone nothing moves under her thumb.
pub async fn every_tool_holds_still_on_a_phone(stage: &mut Stage) -> Result<()> {
    every_tool_holds_still(stage, PHONE).await
}

/// On a tablet nothing moves beside the keyboard.
pub async fn every_tool_holds_still_on_a_tablet(stage: &mut Stage) -> Result<()> {
    every_tool_holds_still(stage, TABLET).await
}

/// A field and what stands in it.
#[derive(Clone, Debug, PartialEq, Deserialize)]
struct Field {
    id: String,
    chosen: bool,
    text: String,
}

/// The fields of the question that is open, in their order.
const FIELDS: &str = "return [...document.querySelectorAll('form.question :is(input, select, textarea)[id]')]
    .map((field) => ({ id: field.id, chosen: field.localName === 'select', text: field.value }))";

/// Notes layout shifts from here on, with or without a key before them.
const WATCH: &str = "window.shifts = [];
    window.watch?.disconnect();
    window.watch = new PerformanceObserver((list) => shifts.push(...list.getEntries().map((shift) => shift.value)));
    if (PerformanceObserver.supportedEntryTypes.includes('layout-shift')) watch.observe({ type: 'layout-shift' });";

/// Where every field stands in the page; what lies in a closed fold stands nowhere.
const PLACES: &str = "return Object.fromEntries(
    [...document.querySelectorAll('form.question :is(input, select, textarea, button, summary)')]
        .filter((field) => field.checkVisibility?.() ?? field.offsetParent)
        .map((field) => [field.id || field.textContent, field.getBoundingClientRect()])
        .map(([name, box]) => [name, [Math.round(box.left + scrollX), Math.round(box.top + scrollY)]]))";

async fn every_tool_holds_still(stage: &Stage, view: View) -> Result<()> {
    stage.browser.look(view).await?;
    let mut found = Vec::new();
    for state in states::named(stage).await? {
        if state.name == "filled" {
            let told = || format!("{} at {}", state.tool, view.width);
            found.extend(holds_still(stage, &state.tool).await.with_context(told)?);
        }
    }
    ensure!(found.is_empty(), "{}", found.join("\n"));
    Ok(())
}

/// Fills a tool in key by key, and says what moved.
async fn holds_still(stage: &Stage, tool: &str) -> Result<Vec<String>> {
    let browser = &stage.browser;
    let empty = fields(browser, &format!("#/gallery/{tool}/empty")).await?;
    let filled = fields(browser, &format!("#/gallery/{tool}/filled")).await?;
    let to_fill: Vec<Field> = filled.into_iter().filter(|field| !empty.contains(field)).collect();
    let (chosen, typed): (Vec<Field>, Vec<Field>) = to_fill.into_iter().partition(|field| field.chosen);
    stage.open(&format!("#/{tool}")).await?;
    for field in &chosen {
        browser.choose(&format!("[id='{}']", field.id), &field.text).await?;
    }
    browser.settle().await?;
    browser.run(WATCH).await?;
    let mut found = Vec::new();
    for field in &typed {
        found.extend(types_still(browser, field).await?);
    }
    browser
        .until("document.querySelector('.answers:not(.stale) .answer')")
        .await?;
    // A number is half a number again while it is mended.
    for field in &typed {
        found.extend(mends_still(browser, field).await?);
    }
    Ok(found.into_iter().map(|moved| format!("{tool}: {moved}")).collect())
}

async fn fields(browser: &Browser, state: &str) -> Result<Vec<Field>> {
    browser.go(state).await?;
    browser.until("document.querySelector('form.question')").await?;
    Ok(serde_json::from_value(browser.run(FIELDS).await?)?)
}

/// Types a text into a field, key by key.
async fn types_still(browser: &Browser, field: &Field) -> Result<Vec<String>> {
    let css = format!("[id='{}']", field.id);
    const UNFOLD: &str = "document.querySelector(arguments[0])?.closest('details')?.setAttribute('open', '')";
    browser.ask(UNFOLD, [json!(css)]).await?;
    // She taps the field before she types.
    browser.press(&css).await?;
    let mut found = Vec::new();
    for key in field.text.chars() {
        found.extend(press_still(browser, &css, key.to_string()).await?);
    }
    Ok(found)
}

/// Takes the last letter of a field away and types it anew.
async fn mends_still(browser: &Browser, field: &Field) -> Result<Vec<String>> {
    let css = format!("[id='{}']", field.id);
    browser.press(&css).await?;
    browser.keys(Key::End).await?;
    let mut found = press_still(browser, &css, Key::Backspace).await?;
    let last = field.text.chars().next_back().map(String::from).unwrap_or_default();
    found.extend(press_still(browser, &css, last).await?);
    Ok(found)
}

/// One key, and what moved by it.
async fn press_still(browser: &Browser, css: &str, key: impl Into<thirtyfour::TypingData>) -> Result<Vec<String>> {
    let before = browser.run(PLACES).await?;
    browser.keys(key).await?;
    browser.settle().await?;
    let after = browser.run(PLACES).await?;
    let text = browser.value(css).await?;
    let (Some(before), Some(after)) = (before.as_object(), after.as_object()) else {
        bail!("the fields stand nowhere");
    };
    let moved = before.iter().filter_map(|(name, place)| {
        let now = after.get(name)?;
        (now != place).then(|| format!("at \"{text}\" in {css}, {name} went from {place} to {now}"))
    });
    let mut found: Vec<String> = moved.collect();
    let shifts: Vec<f64> = serde_json::from_value(browser.run("return shifts.splice(0)").await?)?;
    let large = shifts.into_iter().filter(|shift| *shift > LARGEST_SHIFT);
    found.extend(large.map(|shift| format!("at \"{text}\" in {css}, a shift of {shift}")));
    Ok(found)
}

/// Half a number does not take the answer away: it stays, and says which numbers it is for.
pub async fn half_a_number_leaves_the_answer(stage: &mut Stage) -> Result<()> {
    const ROW: &str = "K3, k2tog, (K7, k2tog) 3 times, (K6, k2tog) 12 times, K4";
    let steps = [
        Open("#/spacing?stitches=132&amount=16"),
        Reads(ROW),
        Hides(".stale", "an answer to what is typed is dimmed"),
        Type("#spacing-stitches", "1"),
        Is(".stale .since", "This is still the answer for 132."),
        Reads(ROW),
        Outcome("116"),
        Says("#spacing-stitches-problem, #spacing-amount-problem", "1"),
        Type("#spacing-amount", ""),
        Is(".stale .since", "This is still the answer for 16 and 132."),
        Type("#spacing-stitches", "140"),
        Type("#spacing-amount", "14"),
        Shown(".answers:not(.stale) .answer"),
        Outcome("126"),
        Is(".since", ""),
        // Another question altogether has no answer to leave behind.
        Button(".doings", "Start afresh"),
        Hides(".answer", "the answer to a question that is gone"),
    ];
    play(stage, &steps).await
}

/// On a phone the answer's line is at the foot of the window until the answer itself is in sight.
pub async fn on_a_phone_the_answer_is_in_the_window(stage: &mut Stage) -> Result<()> {
    const IN_SIGHT: &str = "(() => {
        const box = document.querySelector('.foot').getBoundingClientRect();
        const shown = (place) => document.elementsFromPoint(innerWidth / 2, place).some((seen) => seen.closest('.foot, .answer'));
        return box.bottom <= innerHeight + 1 && shown(innerHeight - 20);
    })()";
    let browser = &stage.browser;
    browser.look(View { height: 600, ..PHONE }).await?;
    for state in states::named(stage).await? {
        if state.name == "filled" {
            browser.go(&state.page).await?;
            browser.until("document.querySelector('.answer')").await?;
            let told = || format!("{}: neither the answer nor its line is in the window", state.tool);
            browser.until(IN_SIGHT).await.with_context(told)?;
        }
    }
    Ok(())
}

/// What is set in a closed fold is said beside it, and one tap clears it.
pub async fn a_fold_tells_what_is_set_in_it(stage: &mut Stage) -> Result<()> {
    let steps = [
        Open("#/rows?length=40&gauge=28&repeat=12&set_up=2"),
        Begins(".set", "2 set here: Rows of one repeat 12,"),
        Button(".set", "Clear"),
        Hides(".set", "nothing is set any more"),
        Holds("#rows-repeat", "1"),
        Unfold,
        Type("#rows-repeat", "8"),
        Hides(".set", "it stands in sight"),
        Press("details.more summary"),
        Begins(".set", "1 set here: Rows of one repeat 8."),
    ];
    play(stage, &steps).await
}

/// A link paints its values first: no frame shows its page with a field that is still empty.
pub async fn a_link_is_never_seen_empty(stage: &mut Stage) -> Result<()> {
    const FRAMES: &str = "window.empty = [];
        const look = () => {
            const field = document.querySelector('#spacing-stitches');
            if (field && field.value !== '132') empty.push(field.value);
        };
        new MutationObserver(look).observe(document.body, { childList: true, subtree: true });
        const frame = () => { look(); requestAnimationFrame(frame); };
        frame();";
    let browser = &stage.browser;
    stage.open("#/").await?;
    browser.run(FRAMES).await?;
    browser.go("#/spacing?stitches=132&amount=16").await?;
    browser
        .until(&format!("{}?.startsWith('K3')", words_of(".answer .row")))
        .await?;
    let empty = browser.run("return empty").await?;
    ensure!(empty == json!([]), "the page was seen with {empty} in its first field");
    Ok(())
}

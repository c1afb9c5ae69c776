//! Wrong input: what was typed stays as it is, a sentence beside it says what to type, and no answer pretends.

use crate::{
    browser::Browser,
    job::{AMOUNT, ASK, KNITTING, STITCHES, fill, works_out},
    stage::Stage,
    steps::{Step::*, play, unfold},
};
use anyhow::{Result, ensure};
use serde_json::json;

/// Texts that are no count of stitches.
const NASTY: &[&str] = &[
    "13z",
    "-5",
    "−5",
    "0",
    "1e3",
    "NaN",
    "Infinity",
    "-0",
    "+",
    "--",
    ".",
    ",",
    "/",
    "7 1/2",
    "7½",
    "½",
    "1/0",
    "13 2",
    "132 cm",
    "132\"",
    "50 g",
    "0x84",
    "9007199254740993",
    "99999999999999999999999999",
    "100001",
    "1.5",
    "1,5",
    "null",
    "undefined",
    "<b>132</b>",
    "<img src=x onerror=alert(1)>",
    "'; drop table log; --",
    "&amp;",
    "🧶",
    "１３２ z",
    "%00",
    "132;16",
    "seven",
    "[object Object]",
    "💥💥💥💥💥💥💥💥",
];

/// Texts with nothing in them: no answer, and no reproach either.
const EMPTY: &[&str] = &["", " ", "\u{a0}", "\t"];

/// Each of them in both fields, over a good answer.
pub async fn nothing_she_types_is_changed_or_answered_wrongly(stage: &mut Stage) -> Result<()> {
    let browser = &stage.browser;
    stage.open("#/spacing").await?;
    fill(browser, "132", "16").await?;
    let long = "9".repeat(500);
    for (field, good) in [(STITCHES, "132"), (AMOUNT, "16")] {
        for text in NASTY.iter().copied().chain([long.as_str()]) {
            works_out(browser, 132, 116).await?;
            refused(browser, field, text).await?;
            browser.paste(field, good).await?;
        }
        for text in EMPTY {
            let typed = browser.paste(field, text).await?;
            browser.settle().await?;
            ensure!(browser.value(field).await? == typed, "{text:?} was changed");
            ensure!(!browser.shows(".answer").await?, "an answer to {text:?} in {field}");
            ensure!(!browser.shows(".problem").await?, "a reproach for an empty {field}");
            browser.paste(field, good).await?;
        }
        works_out(browser, 132, 116).await?;
    }
    Ok(())
}

async fn refused(browser: &Browser, field: &str, text: &str) -> Result<()> {
    const LOOK: &str = "const field = document.querySelector(arguments[0]);
        const said = document.getElementById(field.getAttribute('aria-describedby'));
        return [field.value, said ? said.innerText : null, said ? said.getClientRects().length : 0,
            Boolean(document.querySelector('.answers:not(.stale) .answer')), document.body.innerText, field.getAttribute('aria-invalid')];";
    let typed = browser.paste(field, text).await?;
    browser.settle().await?;
    let seen = browser.ask(LOOK, [json!(field)]).await?;
    ensure!(
        seen[0] == json!(typed),
        "{field}: typed {typed:?}, then {} stands there",
        seen[0]
    );
    ensure!(seen[3] == json!(false), "{field}: an answer to {text:?}");
    let said = seen[1].as_str().unwrap_or_default().trim();
    ensure!(
        !said.is_empty() && seen[2] != json!(0),
        "{field}: no sentence beside {text:?}"
    );
    ensure!(seen[5] == json!("true"), "{field}: {text:?} is not marked as wrong");
    let screen = seen[4].as_str().unwrap_or_default();
    for word in ["NaN", "undefined", "Infinity", "null", "[object"] {
        ensure!(
            !screen.contains(word),
            "{field}: \"{word}\" on the screen after {text:?}"
        );
    }
    Ok(())
}

/// What cannot be knitted comes with the nearest that can, a tap away.
pub async fn the_nearest_numbers_are_a_tap_away(stage: &mut Stage) -> Result<()> {
    let browser = &stage.browser;
    stage.open("#/spacing").await?;
    fill(browser, "132", "70").await?;
    tap(browser, 1, "66").await?;
    works_out(browser, 132, 66).await?;
    browser.choose(ASK, "reach").await?;
    unfold(browser).await?;
    browser.choose("#spacing-decrease", "sk2p").await?;
    for (button, count) in [(1, 116), (2, 118)] {
        browser.type_into(AMOUNT, "117").await?;
        tap(browser, button, &count.to_string()).await?;
        works_out(browser, 132, count).await?;
    }
    browser.choose(ASK, "gain").await?;
    browser.type_into(AMOUNT, "1000").await?;
    tap(browser, 1, "132").await?;
    works_out(browser, 132, 264).await?;
    browser.choose(KNITTING, "flat").await?;
    browser.type_into(AMOUNT, "1000").await?;
    tap(browser, 1, "131").await?;
    works_out(browser, 132, 263).await
}

/// Presses one of the buttons beside the amount and finds its number in the field.
async fn tap(browser: &Browser, button: u32, number: &str) -> Result<()> {
    let css = format!("#spacing-amount-problem button:nth-of-type({button})");
    browser.until(&format!("document.querySelector({css:?})")).await?;
    let words = browser.text(&css).await?;
    ensure!(words.contains(number), "\"{words}\" instead of {number}");
    browser.press(&css).await?;
    browser
        .until(&format!("document.querySelector({AMOUNT:?}).value === {number:?}"))
        .await
}

/// A choice that was made by hand shows what counts also when something else changes it: a fresh start, what lay there
/// before, a link.
pub async fn a_choice_made_by_hand_shows_what_counts(stage: &mut Stage) -> Result<()> {
    const FACE: &str = "#spacing-face";
    let steps = [
        Open("#/spacing?stitches=132&amount=16"),
        Unfold,
        Choose(KNITTING, "flat"),
        Choose(FACE, "purl"),
        Button(".doings", "Start afresh"),
        Holds(KNITTING, "round"),
        Holds(FACE, "knit"),
        Button(".doings", "Put mine back"),
        Holds(KNITTING, "flat"),
        Holds(FACE, "purl"),
        Go("#/spacing?stitches=90&amount=9&knitting=round&face=knit"),
        Holds("#spacing-stitches", "90"),
        Holds(KNITTING, "round"),
        Holds(FACE, "knit"),
        Button(".doings", "Put mine back"),
        Holds(KNITTING, "flat"),
        Holds(FACE, "purl"),
    ];
    play(stage, &steps).await
}

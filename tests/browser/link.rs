//! Links: one opens a tool with its fields, one can be copied, none takes away what was there.

use crate::{
    browser::{Browser, one_line},
    job::{AMOUNT, KNITTING, STITCHES, fill, works_out},
    keep::stands,
    stage::Stage,
};
use anyhow::{Result, ensure};
use thirtyfour::Key;

/// The buttons below a tool, by their words.
const DOINGS: &str = ".doings";
const PUT_BACK: &str = "Put mine back";
const BACK_TO_LINK: &str = "Back to the link before";
const AFRESH: &str = "Start afresh";
const COPY: &str = "Copy link";

/// A teacher's link over a student's own figures: they can be put back, and back again.
pub async fn a_link_brings_its_fields_and_takes_nothing_away(stage: &mut Stage) -> Result<()> {
    let browser = &stage.browser;
    stage.open("#/spacing").await?;
    fill(browser, "90", "9").await?;
    stage.until_kept().await?;
    stage.open("#/spacing?stitches=132&amount=16").await?;
    stands(browser, "132", "16").await?;
    works_out(browser, 132, 116).await?;
    browser.press_button(DOINGS, PUT_BACK).await?;
    browser.settle().await?;
    stands(browser, "90", "9").await?;
    browser.press_button(DOINGS, PUT_BACK).await?;
    browser.settle().await?;
    stands(browser, "132", "16").await?;
    // What is typed over a link is not laid flat by a reload.
    browser.type_into(AMOUNT, "12").await?;
    stage.until_kept().await?;
    browser.reload().await?;
    stands(browser, "132", "12").await?;
    // A link followed while the page is open.
    browser.go("#/spacing?stitches=60&amount=6&knitting=flat").await?;
    stands(browser, "60", "6").await?;
    works_out(browser, 60, 54).await?;
    browser.press_button(DOINGS, AFRESH).await?;
    browser.settle().await?;
    stands(browser, "", "").await?;
    // A link that was only looked at comes back as what it is, and below it her own figures.
    browser.press_button(DOINGS, BACK_TO_LINK).await?;
    browser.settle().await?;
    stands(browser, "60", "6").await?;
    browser.press_button(DOINGS, PUT_BACK).await?;
    browser.settle().await?;
    stands(browser, "132", "12").await?;
    browser.press_button(DOINGS, AFRESH).await?;
    browser.press_button(DOINGS, PUT_BACK).await?;
    browser.settle().await?;
    stands(browser, "132", "12").await
}

/// What she copies opens to the same, also for someone who never was here.
pub async fn a_copied_link_opens_to_the_same(stage: &mut Stage) -> Result<()> {
    let browser = &stage.browser;
    stage.open("#/spacing").await?;
    fill(browser, "60", "6").await?;
    browser.choose(KNITTING, "flat").await?;
    let row = browser.text(".answer .row").await?;
    browser.press_button(DOINGS, COPY).await?;
    browser
        .until("document.querySelector('.doings [role=status]').innerText.trim()")
        .await?;
    let link = copied(browser).await?;
    ensure!(link.starts_with(&stage.at("#/spacing?")), "copied: {link}");
    browser.press_button(DOINGS, AFRESH).await?;
    browser.settle().await?;
    stands(browser, "", "").await?;
    browser.open(&link).await?;
    stands(browser, "60", "6").await?;
    ensure!(browser.value(KNITTING).await? == "flat", "the choice is lost");
    works_out(browser, 60, 54).await?;
    ensure!(browser.text(".answer .row").await? == row, "another row");
    Ok(())
}

/// Where the browser let the page copy, what it copied is pasted to be read; else it stands there to be copied.
async fn copied(browser: &Browser) -> Result<String> {
    if browser.shows(".doings input[readonly]").await? {
        return browser.value(".doings input[readonly]").await;
    }
    let field = browser.find(AMOUNT).await?;
    field.send_keys(Key::Control + "a").await?;
    field.send_keys(Key::Control + "v").await?;
    browser.settle().await?;
    browser.value(AMOUNT).await
}

/// Addresses that mean nothing say so, and the way home works. Addresses full of rubbish are a field's text at most.
pub async fn an_address_without_a_page_says_so(stage: &mut Stage) -> Result<()> {
    let browser = &stage.browser;
    for lost in [
        "#/nothing",
        "#/gallery/spacing/none",
        "#/a/b/c",
        "#/embed",
        "#/%FF%",
        "#/spacing/x",
    ] {
        stage.open(lost).await?;
        let said = one_line(&browser.text("main").await?);
        ensure!(said.split(' ').count() > 3, "{lost} says \"{said}\"");
        ensure!(!browser.shows("main input").await?, "{lost} shows a tool");
        browser.press("nav a.mark").await?;
        browser
            .until("document.querySelector(\"main a[href='#/spacing']\")")
            .await?;
    }
    for rubbish in [
        "#/spacing?stitches=%3Cb%3E9&amount=%FF",
        "#/spacing?=&&=&stitches",
        "#/spacing?ask=dance&edge=x&order=%00",
    ] {
        stage.open(rubbish).await?;
        browser.until("document.querySelector('#spacing-stitches')").await?;
        ensure!(!browser.shows(".answer").await?, "an answer to {rubbish}");
    }
    // A choice that is none stays until another is made.
    stage.open("#/spacing?ask=lose").await?;
    browser.type_into(STITCHES, "132").await?;
    browser.type_into(AMOUNT, "16").await?;
    works_out(browser, 132, 116).await
}

//! "Put this in my page": the lines it makes work in a page of somebody else's, what is fixed there holds, nothing is kept
//! there, and what could not be read or is no address is refused with a sentence.

use crate::{
    browser::{Browser, words_of},
    differences::Difference,
    embed::enter,
    job::{fill, works_out},
    stage::Stage,
    steps::{Step::*, play},
};
use anyhow::{Context, Result, ensure};
use serde_json::json;

const FRAME: &str = "#panel-frame";
const ELEMENT: &str = "#panel-element";

/// Opens the panel of a tool.
async fn open_panel(stage: &Stage, hash: &str) -> Result<()> {
    stage.open(hash).await?;
    unfold(&stage.browser).await
}

async fn unfold(browser: &Browser) -> Result<()> {
    browser.press(".panel > summary").await?;
    browser.until("document.querySelector('.panel .halves')").await
}

/// Puts lines into a page of somebody else's, opens it and goes into the frame.
async fn put_in_a_page(stage: &Stage, lines: &str) -> Result<()> {
    let head = "<!doctype html><html lang=en><link rel=icon href='data:,'><title>Lesson</title><h1>Lesson</h1>";
    stage.server.page("/lesson.html", &[head, lines].concat());
    let browser = &stage.browser;
    browser.leave().await?;
    browser
        .driver
        .goto([&stage.server.url(), "lesson.html"].concat())
        .await?;
    enter(browser, 0).await
}

/// What she chooses for a lesson: the count is fixed, the cursor waits beside it, and it looks as her page does.
async fn choose_for_a_lesson(stage: &Stage) -> Result<()> {
    let browser = &stage.browser;
    open_panel(stage, "#/spacing?stitches=132&amount=16&decrease=k2tog").await?;
    browser.type_into("#frame-address", &stage.server.other_site()).await?;
    browser.choose("#frame-use-stitches", "locked").await?;
    browser.choose("#frame-cursor", "amount").await?;
    browser.choose("#frame-light", "day").await?;
    browser.choose("#frame-units", "inches").await?;
    browser.type_into("#frame-accent", "#00549F").await?;
    browser.choose("#frame-buttons", "afresh").await?;
    browser
        .until(&format!(
            "document.querySelector({FRAME:?}).value.includes('accent=00549f')"
        ))
        .await
}

/// What holds in the frame, whichever lines brought it there.
async fn is_as_chosen(stage: &Stage) -> Result<()> {
    let browser = &stage.browser;
    const COLOUR: &str = "getComputedStyle(document.querySelector('.doings a')).color";
    works_out(browser, 132, 116).await?;
    ensure!(
        browser.text("output#spacing-stitches").await? == "132",
        "what is fixed is not shown"
    );
    ensure!(
        !browser.shows("input#spacing-stitches").await?,
        "what is fixed can be typed into"
    );
    if !stage.engine.has(Difference::NoCursorInFrames) {
        browser.until("document.activeElement?.id === 'spacing-amount'").await?;
    }
    ensure!(
        browser.look_up(COLOUR).await? == json!("rgb(0, 84, 159)"),
        "another colour"
    );
    ensure!(
        browser.look_up("document.documentElement.dataset.light").await? == json!("day"),
        "another light"
    );
    for absent in ["nav", "footer.keeping", ".panel", ".known button"] {
        ensure!(!browser.shows(absent).await?, "{absent} stands in the frame");
    }
    let is_open = browser
        .look_up("document.querySelector('details.working').open")
        .await?;
    ensure!(is_open == json!(false), "the working is not folded");
    let buttons = browser.look_up("[...document.querySelectorAll('.doings button')].map((one) => one.innerText)");
    ensure!(buttons.await? == json!(["Start afresh"]), "other buttons");
    takes_along(browser).await
}

/// What is typed there goes along on the way to the tool itself; to start afresh is to go back to what was filled in.
async fn takes_along(browser: &Browser) -> Result<()> {
    const AWAY: &str = "(({ target, rel, hash }) => [target, rel, hash])(document.querySelector('.doings a'))";
    // A field of another site's frame can be typed into once it was pressed.
    browser.press("#spacing-amount").await?;
    browser.type_into("#spacing-amount", "12").await?;
    works_out(browser, 132, 120).await?;
    let away = browser.look_up(AWAY).await?;
    let wanted = json!(["_blank", "noopener", "#/spacing?amount=12&decrease=k2tog&stitches=132"]);
    ensure!(away == wanted, "the way to the tool is {away}");
    // Pressed by the page itself: WebKit's driver does not reach what lies far down in a frame.
    browser.run("document.querySelector('.doings button').click()").await?;
    works_out(browser, 132, 116).await
}

/// A plain frame.
pub async fn her_lines_make_a_frame(stage: &mut Stage) -> Result<()> {
    choose_for_a_lesson(stage).await?;
    let lines = stage.browser.value(FRAME).await?;
    put_in_a_page(stage, &lines).await?;
    is_as_chosen(stage).await?;
    stage.browser.driver.enter_default_frame().await?;
    Ok(())
}

/// A script and an element.
pub async fn her_lines_make_an_element(stage: &mut Stage) -> Result<()> {
    choose_for_a_lesson(stage).await?;
    let lines = stage.browser.value(ELEMENT).await?;
    put_in_a_page(stage, &lines).await?;
    is_as_chosen(stage).await?;
    stage.browser.driver.enter_default_frame().await?;
    Ok(())
}

/// What is chosen is kept like all that is typed.
pub async fn what_she_chooses_is_kept(stage: &mut Stage) -> Result<()> {
    open_panel(stage, "#/spacing?stitches=132&amount=16").await?;
    let chosen = [
        Choose("#frame-light", "dusk"),
        Choose("#frame-width", "640"),
        Choose("#frame-use-amount", "left"),
        Type("#frame-address", "https://wool.example/tools"),
        Kept,
        Reload,
    ];
    play(stage, &chosen).await?;
    unfold(&stage.browser).await?;
    let kept = [
        Holds("#frame-light", "dusk"),
        Holds("#frame-width", "640"),
        Holds("#frame-use-amount", "left"),
        Holds("#frame-address", "https://wool.example/tools"),
        Go("#/tail?stitches=132"),
        Hides(".panel .halves", "the panel of another tool is open"),
    ];
    play(stage, &kept).await?;
    // It has the same look, and fields of its own.
    unfold(&stage.browser).await?;
    let same = [Holds("#frame-light", "dusk"), Holds("#frame-use-stitches", "open")];
    play(stage, &same).await?;
    let lines = stage.browser.value(FRAME).await?;
    let wanted =
        "<iframe src=\"https://wool.example/tools/#/embed/tail?stitches=132&amp;frame.light=dusk\" title=\"Tail\"";
    ensure!(lines.starts_with(wanted), "{lines}");
    Ok(())
}

/// Texts that are no colour, and colours that cannot be read.
const HOSTILE_COLOURS: [&str; 10] = [
    "red",
    "12345",
    "000;background:url(//a.example)",
    "var(--ink)",
    "rgb(0,0,0)",
    "</style><script>alert(1)</script>",
    "javascript:alert(1)",
    "\"><img src=x onerror=alert(1)>",
    "eeeeee",
    "808080",
];

/// A colour that is none or cannot be read is refused in the panel and in the frame, and the page keeps its own.
pub async fn hostile_accents_are_refused(stage: &mut Stage) -> Result<()> {
    const SET: &str = "document.documentElement.style.cssText";
    let browser = &stage.browser;
    open_panel(stage, "#/spacing?stitches=132&amount=16").await?;
    browser.choose("#frame-light", "day").await?;
    for colour in HOSTILE_COLOURS {
        browser.paste("#frame-accent", colour).await?;
        browser.settle().await?;
        let said = browser.text(".panel .fields .problem").await?;
        ensure!(said.contains("colour") || said.contains("read"), "of {colour}: {said}");
        let lines = browser.value(FRAME).await?;
        ensure!(!lines.contains("accent"), "{colour} is taken: {lines}");
    }
    for colour in HOSTILE_COLOURS {
        let encoded = browser
            .ask("return encodeURIComponent(arguments[0])", [json!(colour)])
            .await?;
        let hash = format!(
            "#/embed/spacing?stitches=132&amount=16&frame.light=day&frame.accent={}",
            encoded.as_str().context("no text")?
        );
        browser.go(&hash).await?;
        browser.until("document.querySelector('main.embedded > p')").await?;
        let said = browser.text("main.embedded > p").await?;
        ensure!(said.contains(colour.trim()), "of {colour}: {said}");
        let set = browser.look_up(SET).await?;
        ensure!(set == json!(""), "{colour} set {set}");
    }
    Ok(())
}

/// What a frame does not know is said in a sentence each, and all else holds.
pub async fn what_a_frame_does_not_know_is_said(stage: &mut Stage) -> Result<()> {
    stage
        .open("#/embed/rows?length=40&gauge=28&frame.light=night&frame.colour=red&frame.locked=needle,length&frame.units=inches")
        .await?;
    let steps = [
        Says("main.embedded", "“night” is nothing that “frame.light” can be"),
        Says(
            "main.embedded",
            "“frame.colour” is nothing that a frame of this version knows",
        ),
        Says("main.embedded", "This tool has no field “needle”."),
        Says("output#rows-length", "in"),
        Shown(".answer"),
    ];
    play(stage, &steps).await
}

/// A frame that is opened by itself keeps nothing either, and lays nothing over what she typed.
pub async fn a_frame_opened_by_itself_keeps_nothing(stage: &mut Stage) -> Result<()> {
    stage.open("#/spacing").await?;
    fill(&stage.browser, "90", "9").await?;
    stage.until_kept().await?;
    stage
        .open("#/embed/spacing?stitches=132&amount=16&frame.units=inches")
        .await?;
    works_out(&stage.browser, 132, 116).await?;
    stage.browser.type_into("#spacing-amount", "12").await?;
    works_out(&stage.browser, 132, 120).await?;
    stage.open("#/spacing").await?;
    works_out(&stage.browser, 90, 81).await?;
    let steps = [
        Hides(".doings button:nth-of-type(4)", "there is something to put back"),
        Go("#/"),
        Holds("#settings-measures", "metric"),
    ];
    play(stage, &steps).await
}

/// An address that is none makes no lines; one that no reader can open is said.
pub async fn an_address_is_checked(stage: &mut Stage) -> Result<()> {
    open_panel(stage, "#/spacing?stitches=132").await?;
    let steps = [
        Says(".panel .wide .problem", "Only this computer can open that address."),
        Type("#frame-address", "wool.example"),
        Says(".panel .wide .problem", "That is no web address."),
        Hides(FRAME, "lines without an address"),
        Type("#frame-address", "https://wool.example/a b"),
        Says(".panel .wide .problem", "That is no web address."),
        Type("#frame-address", "http://wool.example/"),
        Says(".panel .wide .problem", "shows no frame that comes by http"),
        Type("#frame-address", "https://wool.example/"),
        Shown(FRAME),
        Hides(".panel .wide .problem", "nothing is wrong with it"),
    ];
    play(stage, &steps).await
}

/// A tap on "copy" says what came of it; where the clipboard never answers the lines are selected.
pub async fn copying_says_what_came_of_it(stage: &mut Stage) -> Result<()> {
    const SELECTED: &str = "(({ id, selectionStart, selectionEnd, value }) =>
        id === 'panel-frame' && selectionStart === 0 && selectionEnd === value.length)(document.activeElement)";
    let browser = &stage.browser;
    open_panel(stage, "#/spacing?stitches=132").await?;
    let answers = [
        ("Promise.resolve()", "Copied.", false),
        ("Promise.reject(new Error('no'))", "This browser did not copy it.", true),
        ("new Promise(() => {})", "The clipboard does not answer.", true),
    ];
    for (answer, said, is_selected) in answers {
        let instead = format!(
            "document.activeElement?.blur();
             Object.defineProperty(navigator, 'clipboard',
                 {{ configurable: true, value: {{ writeText: () => {answer} }} }});"
        );
        browser.run(&instead).await?;
        browser.press_button(".lines section", "Copy these lines").await?;
        browser
            .until(&format!("{}?.startsWith({said:?})", words_of(".lines [role='status']")))
            .await?;
        let selected = browser.look_up(SELECTED).await?;
        ensure!(selected == json!(is_selected), "{said} selected: {selected}");
    }
    Ok(())
}

/// The preview is the page itself, follows what is chosen, and leaves no step for "back".
pub async fn the_preview_follows_what_she_chooses(stage: &mut Stage) -> Result<()> {
    let browser = &stage.browser;
    open_panel(stage, "#/spacing?stitches=132&amount=16").await?;
    enter_preview(browser).await?;
    works_out(browser, 132, 116).await?;
    browser.driver.enter_default_frame().await?;
    let steps = browser.look_up("history.length").await?;
    browser.choose("#frame-light", "dusk").await?;
    browser.choose("#frame-use-stitches", "locked").await?;
    browser.type_into("#spacing-amount", "12").await?;
    enter_preview(browser).await?;
    works_out(browser, 132, 120).await?;
    browser
        .until("document.documentElement.dataset.light === 'dusk'")
        .await?;
    browser
        .until("document.querySelector('output#spacing-stitches')")
        .await?;
    browser.driver.enter_default_frame().await?;
    ensure!(
        browser.look_up("history.length").await? == steps,
        "the preview is a step back"
    );
    Ok(())
}

async fn enter_preview(browser: &Browser) -> Result<()> {
    browser.find("iframe.preview").await?.enter_frame().await?;
    browser.until("document.querySelector('main.embedded h1')").await
}

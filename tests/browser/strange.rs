//! What strangers write: units, choices and names in links, in addresses, in copies and in frames. What is not understood is
//! said where it stands, nothing is answered with something else in its place, and no text of any length breaks the page.

use crate::{
    browser::{Browser, one_line, words_of},
    job::{STITCHES, fill, works_out},
    keep::stands,
    stage::Stage,
    states::PHONE,
    steps::{
        Step::{Choose, Go, Hides, Holds, Is, Says, Shown, Type},
        play,
    },
};
use anyhow::{Context, Result, ensure};
use serde_json::json;
use std::fs;

const WIDTH: &str = "#cast_on-width";
const LEFT_OUT: &str = ".left-out";

/// Inches by any of their names are inches; what is no unit is said beside its field, and mended by typing.
pub async fn a_unit_in_a_link_is_read_or_said(stage: &mut Stage) -> Result<()> {
    let link = |unit: &str| format!("#/cast_on?width=36&width.unit={unit}&gauge=20&gauge.unit=4%20in");
    let mut answers = Vec::new();
    for unit in ["in", "inches", "%22", "Inch", "cm"] {
        stage.open(&link(unit)).await?;
        stage.browser.until("document.querySelector('.answer')").await?;
        answers.push(one_line(&stage.browser.text(".answer .outcome").await?));
    }
    let (centimetres, inches) = answers.split_last().context("five answers")?;
    ensure!(
        inches.iter().all(|answer| answer == &inches[0]),
        "inches are not one: {inches:?}"
    );
    ensure!(centimetres != &inches[0], "36 inches are 36 centimetres: {centimetres}");
    stage.open(&link("inchs")).await?;
    let steps = [
        Holds(WIDTH, "36"),
        Says(
            ".problem",
            "“inchs” is no unit that is known here. Type the number anew, in cm or in.",
        ),
        Hides(".answer", "an answer to a width that nobody knows"),
        Type(WIDTH, "90"),
        Shown(".answer"),
        Go("#/cast_on?width=36&gauge=20&gauge.unit=4+thumbs"),
        Holds("#cast_on-gauge-unit", "4+thumbs"),
        Says(".problem", "Counts are not taken over “4+thumbs” here."),
        Choose("#cast_on-gauge-unit", "4 in"),
        Shown(".answer"),
    ];
    play(stage, &steps).await
}

/// A choice that is none stands in its list as it was written, until she chooses; a closed fold says it beside it.
pub async fn a_choice_that_is_none_is_said_and_kept(stage: &mut Stage) -> Result<()> {
    stage.open("#/spacing?stitches=132&amount=16&knitting=Flat").await?;
    let steps = [
        Holds("#spacing-knitting", "Flat"),
        Says(".problem", "“Flat” cannot be chosen here. Choose one of these:"),
        Hides(".answer", "an answer to a choice that nobody made"),
        Choose("#spacing-knitting", "flat"),
        Shown(".answer"),
        Hides(".problem", "it is mended"),
        Go("#/spacing?stitches=132&amount=16&decrease=nosuch"),
        Says(".set", "“nosuch” cannot be chosen here."),
        Hides(".answers:not(.stale) .answer", "an answer to a decrease that is none"),
        Go("#/spacing?stitches=132&amount=16&order=xyz"),
        Says(
            ".answers",
            "“xyz” is no order that is known here; the suggested one is shown.",
        ),
        Go("#/flare?neck=96&depth=30&gauge=21&row_gauge=28&rhythm=nosuch"),
        // What stands beside an answer is mended in the question where it takes the answer away.
        Holds("#flare-rhythm", "nosuch"),
        Choose("#flare-rhythm", "easiest"),
        Hides(".problem", "it is mended"),
    ];
    play(stage, &steps).await
}

/// What a tool does not have is counted in one sentence, kept nowhere, and takes nothing away.
pub async fn what_a_link_says_in_vain_is_counted(stage: &mut Stage) -> Result<()> {
    const SAID: &str = "3 parts of the link are not known to this tool and were left out: f0, f1, f2.";
    let browser = &stage.browser;
    stage.open("#/spacing").await?;
    fill(browser, "90", "9").await?;
    stage.until_kept().await?;
    stage.open("#/spacing?f0=1&f1=2&f2=3").await?;
    play(stage, &[Is(LEFT_OUT, SAID)]).await?;
    stands(browser, "90", "9").await?;
    stage.open("#/spacing?f0=1&f1=2&stitches=132&f2=3&amount=16").await?;
    works_out(browser, 132, 116).await?;
    play(stage, &[Is(LEFT_OUT, SAID)]).await?;
    let many: String = (0..50_000).map(|name| format!("f{name}=1&")).collect();
    browser
        .ask(
            "location.hash = arguments[0]",
            [json!(format!("#/spacing?{many}stitches=60&amount=6"))],
        )
        .await?;
    works_out(browser, 60, 54).await?;
    play(stage, &[Says(LEFT_OUT, "and 49,995 more.")]).await?;
    stage.until_kept().await?;
    stage
        .open("#/embed/spacing?f0=1&f1=2&stitches=132&f2=3&amount=16")
        .await?;
    play(stage, &[Says("main.embedded", SAID)]).await?;
    works_out(browser, 132, 116).await?;
    let options: String = (0..2_000).map(|name| format!("frame.f{name}=1&")).collect();
    stage
        .open(&format!("#/embed/spacing?{options}stitches=132&amount=16"))
        .await?;
    play(
        stage,
        &[Says(
            "main.embedded",
            "1,995 parts more of the address are not understood here.",
        )],
    )
    .await
}

/// Copies whose version was never written, and one with a hundred thousand names.
pub async fn a_copy_that_is_not_ours_is_refused(stage: &mut Stage) -> Result<()> {
    let browser = &stage.browser;
    stage.open("#/spacing").await?;
    fill(browser, "90", "9").await?;
    stage.until_kept().await?;
    let sheets = r#"{"spacing": {"stitches": {"text": "132"}}}"#;
    for version in ["0", "-5", "1.5", "\"1\"", "null", "true", "[1]"] {
        bring(stage, &format!("{{\"loopwright\": {version}, \"sheets\": {sheets}}}")).await?;
        play(stage, &[Says("[role='status']", "That is not a copy from here")])
            .await
            .context(version)?;
    }
    bring(stage, &format!("{{\"sheets\": {sheets}}}")).await?;
    play(stage, &[Says("[role='status']", "That is not a copy from here")]).await?;
    bring(stage, &format!("{{\"loopwright\": 2, \"sheets\": {sheets}}}")).await?;
    play(stage, &[Says("[role='status']", "a later version")]).await?;
    let names: Vec<String> = (0..100_000)
        .map(|name| format!("\"f{name}\":{{\"text\":\"1\"}}"))
        .collect();
    let names = format!(
        "{{\"loopwright\": 1, \"sheets\": {{\"spacing\": {{{}}}, \"tail\": {{\"stitches\": {{\"text\": \"60\"}}}}}}}}",
        names.join(",")
    );
    bring(stage, &names).await?;
    let steps = [
        Says("[role='status']", "1 field brought back."),
        Says(
            "[role='status']",
            "100,000 parts of the copy are not known here and were left out: spacing.f0,",
        ),
        Go("#/tail"),
        Holds("#tail-stitches", "60"),
    ];
    play(stage, &steps).await?;
    browser.go("#/spacing").await?;
    stands(browser, "90", "9").await
}

/// Chooses a file with this text on the page about copies.
async fn bring(stage: &Stage, text: &str) -> Result<()> {
    let place = stage.folder.path().join("copy.json");
    fs::write(&place, text)?;
    stage.browser.go("#/").await?;
    stage.browser.go("#/about").await?;
    let field = stage.browser.find("#bring-back").await?;
    field.send_keys(place.to_string_lossy().as_ref()).await?;
    Ok(())
}

/// A clipboard that never answers: after a second that is said, and the link stands there selected.
pub async fn a_silent_clipboard_is_said_after_a_second(stage: &mut Stage) -> Result<()> {
    const SILENT: &str = "Object.defineProperty(navigator, 'clipboard',
        { configurable: true, value: { writeText: () => new Promise(() => {}) } })";
    const SELECTED: &str =
        "(({ localName, readOnly, selectionStart, selectionEnd, value }) => localName === 'input' && readOnly
        && value.includes('#/') && selectionStart === 0 && selectionEnd === value.length)(document.activeElement)";
    const SAID: &str = "The clipboard did not take the link. Copy it by hand:";
    let browser = &stage.browser;
    for (page, within, words) in [
        ("#/spacing?stitches=132&amount=16", ".doings", "Copy link"),
        ("#/project", ".carry", "Copy a link"),
    ] {
        stage.open(page).await?;
        browser.run(SILENT).await?;
        browser
            .press_button(within, words)
            .await
            .with_context(|| page.to_owned())?;
        play(
            stage,
            &[Says(if within == ".carry" { ".carry" } else { ".doings" }, SAID)],
        )
        .await?;
        browser.until(SELECTED).await.with_context(|| page.to_owned())?;
    }
    Ok(())
}

/// Three hundred letters without a space, wherever something of hers is quoted: no page is wider than the phone.
pub async fn no_quoted_text_is_wider_than_a_phone(stage: &mut Stage) -> Result<()> {
    let long = "W".repeat(300);
    let browser = &stage.browser;
    browser.look(PHONE).await?;
    let project = project_file(&long);
    let pages = [
        format!("#/spacing?stitches={long}&amount=16&knitting={long}&decrease={long}&edge={long}"),
        format!("#/cast_on?width={long}&width.unit={long}&gauge={long}&gauge.unit={long}"),
        format!("#/sizing?bust={long}&sizes={long}&sizes.unit={long}&listed={long}"),
        format!("#/tail?stitches={long}&needle={long}&yarn={long}&{long}={long}"),
        format!("#/yarn?s1_stitches={long}&s1_shape={long}&ball_mass={long}&ball_mass.unit={long}"),
        format!("#/{long}"),
        format!(
            "#/embed/spacing?stitches={long}&frame.{long}=1&frame.light={long}&frame.accent={long}&frame.locked=stitches,{long}&{long}=1"
        ),
        format!("#/p=1{long}"),
    ];
    for page in &pages {
        stage.open(page).await?;
        fits(browser, page).await?;
    }
    // A project of a stranger: looked at, kept, and each of its pages.
    let place = stage.folder.path().join("long.json");
    fs::write(&place, project)?;
    stage.open("#/project").await?;
    let field = browser.find("#project-file").await?;
    field.send_keys(place.to_string_lossy().as_ref()).await?;
    browser.until(&words_of(".brought h1")).await?;
    fits(browser, "a project that is brought").await?;
    browser
        .press_button(".brought", "Keep it as a project of its own")
        .await?;
    browser.until("location.hash === '#/project'").await?;
    for page in [
        "#/project",
        "#/project/1",
        "#/project/2",
        "#/project/2/knit",
        "#/cast_on",
        "#/tail",
        "#/yoke",
        "#/about",
        "#/",
    ] {
        browser.go(page).await?;
        fits(browser, page).await?;
    }
    Ok(())
}

/// A project in which everything is this text.
fn project_file(long: &str) -> String {
    let fields = json!({ "stitches": long, "width": { "text": long, "unit": long } });
    json!({
        "loopwright-project": 1,
        "name": long,
        "facts": {
            "bust": long, "cast_on": long, "needle": long, "yarn_class": long, "sizes": long, "gauge_stitches": long,
            "neck": long, "multiple": long, "count_1": long, "count_1_name": long, "ball_price": long, "nosuch": long,
        },
        "steps": [
            { "number": 1, "tool": "tail", "name": long, "section": long, "amount": long, "fields": fields },
            { "number": 2, "tool": "yoke", "name": long, "section": long, "fields": { "from": "90", "to": "120", "rounds": "40" } },
            { "number": 3, "tool": long, "name": long, "alongside": "gone ".to_owned() + long },
        ],
    })
    .to_string()
}

/// Nothing of the page stands outside the window, folds opened and closed.
async fn fits(browser: &Browser, page: &str) -> Result<()> {
    const WIDER: &str = "const root = document.documentElement;
        const wide = [...document.body.querySelectorAll('*')].filter((element) => element.checkVisibility()
            && !element.closest('.unseen, .skip, svg') && element.getBoundingClientRect().right > root.clientWidth + 1);
        const wider = root.scrollWidth > root.clientWidth + 1 || wide.length;
        return wider ? `${root.scrollWidth} in ${root.clientWidth}: ${wide.slice(0, 4).map(({ outerHTML }) => outerHTML.slice(0, 90))}` : '';";
    const UNFOLD: &str =
        "for (const fold of document.querySelectorAll('details:not(.panel, .scan)')) fold.open = true;";
    browser.settle().await?;
    for script in ["", UNFOLD] {
        browser.run(script).await?;
        browser.settle().await?;
        let wider = browser.ask(WIDER, []).await?;
        let page: String = page.chars().take(60).collect();
        ensure!(wider == json!(""), "{page} is wider than the window: {wider}");
    }
    Ok(())
}

/// Addresses of steps, of what is knitted and of frames that nobody has: each is a page with a sentence, and a way on.
pub async fn every_nonsense_address_is_a_page_with_a_sentence(stage: &mut Stage) -> Result<()> {
    let browser = &stage.browser;
    stage.open("#/spacing").await?;
    fill(browser, "90", "9").await?;
    stage.until_kept().await?;
    let long = "9".repeat(10_000);
    for nonsense in [
        "#/project/3",
        "#/project/0",
        "#/project/-1",
        "#/project/1.5",
        "#/project/4294967295",
        "#/project/4294967296",
        "#/project/99999999999999999999",
        "#/project/%33",
        "#/project/3/knit",
        "#/project/4294967295/knit",
        "#/project/-1/knit",
        "#/project/3/knit/4",
        "#/project/spacing",
        "#/project/",
        "#/knit/yoke",
        "#/knit/spacing",
        "#/knit/needles",
        "#/knit/nosuch",
        "#/knit/__proto__",
        "#/knit/3",
        "#/knit/",
        "#/knit",
        "#/about/",
        "#/about/nosuch",
        "#/gallery/yoke/%00",
        "#/embed/nosuch?frame.light=dusk",
        "#/embed/spacing?frame.locked=__proto__,constructor,,&frame.cursor=constructor&frame.accent=%00&frame.=1",
        "#/embed/spacing?frame.light=&frame.units=&frame.print=maybe&frame.language=xx&frame.locked=",
        &format!("#/project/{long}"),
        &format!("#/knit/{long}"),
        &format!("#/embed/{long}"),
    ] {
        stage.open(nonsense).await?;
        let address: String = nonsense.chars().take(80).collect();
        let said = one_line(&browser.text("main").await?);
        ensure!(said.split(' ').count() > 3, "{address} says \"{said}\"");
    }
    stage.open("#/spacing").await?;
    stands(browser, "90", "9").await?;
    browser.type_into(STITCHES, "91").await
}

/// The page for whoever writes links: reached from "About" and from the panel, every tool in it, and each example opens.
pub async fn the_page_about_links_lists_every_tool(stage: &mut Stage) -> Result<()> {
    const LISTED: &str =
        "[...document.querySelectorAll('.links details')].map((fold) => fold.querySelectorAll('dt').length)";
    let browser = &stage.browser;
    stage.open("#/about").await?;
    browser.press("main a[href='#/about/links']").await?;
    browser.until("document.querySelector('article.links h1')").await?;
    let listed = browser.look_up(LISTED).await?;
    let counts: Vec<u64> = listed
        .as_array()
        .into_iter()
        .flatten()
        .filter_map(|count| count.as_u64())
        .collect();
    ensure!(
        counts.len() >= 16 && counts.iter().all(|count| *count > 0),
        "it lists {listed}"
    );
    browser.look(PHONE).await?;
    fits(browser, "the page about links").await?;
    browser.press("article.links a[href^='#/spacing?']").await?;
    works_out(browser, 132, 116).await?;
    browser.press("details.panel > summary").await?;
    browser.press("details.panel a[href='#/about/links']").await?;
    browser.until("document.querySelector('article.links h1')").await
}

//! Type twice as large on a phone: words, fields and choices really grow, nothing scrolls sideways, no choice is cut, no
//! word is broken in its middle where there is room for all of it on a line of its own, and words in a drawing do not get
//! smaller nor run into each other. Each tool is looked at in its filled state, as it opens and with everything unfolded.

use crate::{
    differences::Difference,
    stage::Stage,
    states::{self, PHONE},
};
use anyhow::{Result, ensure};
use loopwright_tests::drive::STARTED;
use serde_json::json;

/// What is wrong with how the page is laid out, in a list of words.
const LAID_OUT: &str = include_str!("layout.js");

/// Twice the size that the browser starts with, as a setting of the browser would make it.
const TWICE: &str = "document.documentElement.style.fontSize = '200%'";

/// The size that the browser starts with.
const ONCE: &str = "document.documentElement.style.fontSize = ''";

/// Opens whatever is folded away.
const UNFOLD: &str = "document.querySelectorAll('details').forEach((details) => { details.open = true; })";

/// Words of a drawing that run into each other. The box of a word is higher than its letters.
const OVERLAPS: &str = "
    const found = [];
    for (const drawing of document.querySelectorAll('svg')) {
        const words = [...drawing.querySelectorAll('text')].map((text) => [text.textContent, text.getBoundingClientRect()]);
        words.forEach(([one, left], place) => words.slice(place + 1).forEach(([other, right]) => {
            const across = Math.min(left.right, right.right) - Math.max(left.left, right.left);
            const down = Math.min(left.bottom, right.bottom) - Math.max(left.top, right.top);
            const lower = Math.min(left.height, right.height);
            if (across > 1 && down > 0.4 * lower) found.push(`\"${one}\" runs into \"${other}\"`);
        }));
    }
    return found;";

/// How large the type is: of everything that holds words and of every field, in the order they stand, with what it is; and
/// how high the words of a drawing are. A choice has the size of the words that are seen in its place, if any are.
const SIZES: &str = "
    const found = [];
    const size = (element) => parseFloat(getComputedStyle(element).fontSize);
    for (const element of document.querySelectorAll('#app main *')) {
        const name = `<${element.localName}#${element.id}.${element.getAttribute('class')}>`;
        const parent = element.parentElement;
        if (element.localName === 'text') found.push([name, element.getBoundingClientRect().height, true]);
        if (element.ownerSVGElement || ['option', 'svg'].includes(element.localName)) continue;
        if (parent.className === 'choice' && element.localName === 'span') continue;
        const words = [...element.childNodes].some((node) => node.nodeType === Node.TEXT_NODE && node.data.trim());
        const isField = ['input', 'textarea', 'select'].includes(element.localName);
        const seen = getComputedStyle(element).opacity === '0' ? element.previousElementSibling : element;
        if (words || isField) found.push([name, size(seen), false]);
    }
    return found;";

/// Words that are broken in their middle though a line would hold them whole.
const BROKEN: &str = "
    const found = [];
    const walk = document.createTreeWalker(document.querySelector('#app main'), NodeFilter.SHOW_TEXT);
    const blockOf = (element) => getComputedStyle(element).display === 'inline' ? blockOf(element.parentElement) : element;
    for (let node = walk.nextNode(); node; node = walk.nextNode()) {
        const parent = node.parentElement;
        if (!parent.checkVisibility() || parent.closest('svg, select, textarea, .foot, .unseen')) continue;
        const room = blockOf(parent).clientWidth;
        for (const { 0: word, index } of node.data.matchAll(/[^\\s\\u2013\\u2014\\/-]+/g)) {
            const range = document.createRange();
            range.setStart(node, index);
            range.setEnd(node, index + word.length);
            const boxes = [...range.getClientRects()].filter((box) => box.width > 0);
            const lines = new Set(boxes.map((box) => Math.round(box.top)));
            const needs = boxes.reduce((sum, box) => sum + box.width, 0);
            if (lines.size > 1 && needs <= room) found.push(`\"${word}\" is broken in ${parent.localName}.${parent.className}`);
        }
    }
    return found;";

/// Type twice as large grows by so much at the least, also where there is no room for twice.
const LEAST_GROWTH: f64 = 1.5;

/// Pages that are no tool.
const OTHERS: [&str; 5] = [
    "#/",
    "#/about",
    "#/spacing",
    "#/gallery/project/other-gauge",
    "#/gallery/project/tracks-meet",
];

/// All of it, with type twice as large.
pub async fn every_tool_can_be_read_with_type_twice_as_large(stage: &mut Stage) -> Result<()> {
    let states = states::named(stage).await?.into_iter();
    let filled = states.filter(|state| state.name == "filled").map(|state| state.page);
    let pages: Vec<String> = OTHERS.map(str::to_owned).into_iter().chain(filled).collect();
    ensure!(pages.len() >= 19, "only {pages:?}");
    narrow(stage).await?;
    finds_words_that_run_into_each_other(stage).await?;
    let mut found = Vec::new();
    for page in pages {
        found.extend(wrong(stage, &page).await?);
    }
    found.dedup();
    ensure!(found.is_empty(), "{}", found.join("\n"));
    Ok(())
}

/// Makes the page as wide as a phone's. A window of WebKit's cannot be, so there the page is shown in a frame that is.
async fn narrow(stage: &Stage) -> Result<()> {
    let browser = &stage.browser;
    if stage.engine.has(Difference::AboutThatSize) {
        show_in_a_frame(stage).await?;
    } else {
        browser.look(PHONE).await?;
    }
    let width = browser.look_up("innerWidth").await?;
    ensure!(width == json!(PHONE.width), "the page is {width} wide");
    Ok(())
}

async fn show_in_a_frame(stage: &Stage) -> Result<()> {
    let browser = &stage.browser;
    let frame = format!(
        "<iframe title=phone width={} height={} style='border: 0' src='{}'></iframe>",
        PHONE.width,
        PHONE.height,
        stage.at("#/gallery")
    );
    let head = "<!doctype html><html lang=en><link rel=icon href='data:,'><title>Phone</title>";
    stage.server.page("/phone.html", &[head, &frame].concat());
    let host = stage.at("");
    let page = [host.trim_end_matches('/'), "/phone.html"].concat();
    browser.driver.goto(page).await?;
    browser.driver.enter_frame(0).await?;
    browser.until(STARTED).await
}

/// What is wrong with a page.
async fn wrong(stage: &Stage, page: &str) -> Result<Vec<String>> {
    let browser = &stage.browser;
    browser.go(page).await?;
    stage.looked_at(page);
    browser.until("document.querySelector('main h1')").await?;
    browser.run(ONCE).await?;
    browser.settle().await?;
    let usual = sizes(stage).await?;
    browser.run(TWICE).await?;
    browser.settle().await?;
    let mut found: Vec<String> = too_small(&usual, &sizes(stage).await?);
    found.iter_mut().for_each(|fault| *fault = format!("{page}: {fault}"));
    for script in ["", UNFOLD] {
        browser.run(script).await?;
        browser.settle().await?;
        for list in [
            browser.ask(LAID_OUT, [json!(PHONE.width)]).await?,
            browser.run(OVERLAPS).await?,
            browser.run(BROKEN).await?,
        ] {
            let list: Vec<String> = serde_json::from_value(list)?;
            found.extend(list.into_iter().map(|fault| format!("{page}: {fault}")));
        }
    }
    Ok(found)
}

/// What something is, how large its type is, and whether it stands in a drawing.
type Size = (String, f64, bool);

async fn sizes(stage: &Stage) -> Result<Vec<Size>> {
    let sizes: Vec<Size> = serde_json::from_value(stage.browser.run(SIZES).await?)?;
    ensure!(!sizes.is_empty(), "nothing has a size");
    Ok(sizes)
}

/// What does not grow with the type around it. The words of a drawing are as large as that makes them.
fn too_small(usual: &[Size], large: &[Size]) -> Vec<String> {
    if usual.len() != large.len() {
        return vec![format!("{} sizes became {}", usual.len(), large.len())];
    }
    let both = usual.iter().zip(large);
    let small = both.filter(|((_, before, drawn), (_, after, _))| {
        let least = if *drawn { 0.98 } else { LEAST_GROWTH };
        *after < least * before
    });
    small
        .map(|((name, before, _), (_, after, _))| format!("{name} is {after} large where {before} is usual"))
        .collect()
}

/// Whoever finds nothing must be able to find something.
async fn finds_words_that_run_into_each_other(stage: &Stage) -> Result<()> {
    const SPOIL: &str = "const add = (place, name, attributes, text = '') => {
            const made = document.createElementNS('http://www.w3.org/2000/svg', name);
            for (const [attribute, value] of Object.entries(attributes)) made.setAttribute(attribute, value);
            made.append(text);
            place.append(made);
            return made;
        };
        const wrong = add(document.querySelector('main'), 'svg', { id: 'wrong', viewBox: '0 0 90 20' });
        add(wrong, 'text', { y: 15 }, 'one');
        add(wrong, 'text', { x: 9, y: 15 }, 'two');";
    let browser = &stage.browser;
    browser.run(SPOIL).await?;
    let found = browser.run(OVERLAPS).await?;
    ensure!(found != json!([]), "words that run into each other are not found");
    browser.run("document.getElementById('wrong').remove()").await?;
    const BREAK: &str = "const wrong = document.createElement('p');
        wrong.id = 'wrong';
        wrong.append('seven hundred');
        wrong.style.cssText = 'inline-size: 6em; word-break: break-all';
        document.querySelector('main').append(wrong);";
    browser.run(BREAK).await?;
    let found = browser.run(BROKEN).await?;
    ensure!(found != json!([]), "a word broken in its middle is not found");
    browser.run("document.getElementById('wrong').remove()").await?;
    Ok(())
}

//! What knitters have already: a log that an earlier release wrote while it was typed into, and links that it copied.
//! Both are in `fixtures/` and never written anew. Whatever becomes of the code, they open with every value in its
//! place and with the answer that stood below it.
//!
//! `log.jsonl` holds one record of the database a line. `log.txt` and `links.txt` hold addresses, and below each what
//! is read there: the fields with their values, buttons, drawings, and after `=` the answer. An address may end
//! on `then` and the words of a button that is pressed first. A sentence that was changed on purpose is taken over by
//! `cargo xtask snapshot`, which writes what is read and leaves addresses and records alone.

use crate::{
    snapshot,
    stage::Stage,
    states::TABLET,
    visible::{difference, visible},
};
use anyhow::{Context, Result, bail, ensure};
use serde_json::json;
use std::{
    collections::BTreeSet,
    fs,
    path::{Path, PathBuf},
};

/// Puts records in the place of all that the log holds.
const PUT: &str = "const [records, done] = arguments;
    const opening = indexedDB.open('loopwright', 1);
    opening.onerror = () => done(String(opening.error));
    opening.onsuccess = () => {
        const writing = opening.result.transaction('log', 'readwrite');
        const log = writing.objectStore('log');
        log.clear();
        for (const record of records) log.add(record);
        writing.onabort = () => done(String(writing.error));
        writing.oncomplete = () => { opening.result.close(); done(''); };
    };";

/// Between an address and the button that is pressed there.
const THEN: &str = " then ";

/// The taps that put a fraction behind a number; they are the same at every field.
const FRACTIONS: &str = "<1/8>";

/// An address, and the lines that are read there.
struct Opened {
    address: String,
    lines: Vec<String>,
}

/// A log from before opens with every value in its place.
pub async fn a_log_from_before_opens_as_it_was_left(stage: &mut Stage) -> Result<()> {
    let records = fs::read_to_string(fixture("log.jsonl"))?;
    let records: Vec<&str> = records.lines().collect();
    stage.open("#/about").await?;
    let failure = stage.browser.driver.execute_async(PUT, vec![json!(records)]).await?;
    ensure!(
        failure.json() == &json!(""),
        "the log is not put there: {}",
        failure.json()
    );
    stage.browser.reload().await?;
    opens_as_before(stage, "log.txt").await
}

/// Links from before open with every value in its place.
pub async fn links_from_before_open_as_they_did(stage: &mut Stage) -> Result<()> {
    stage.open("#/about").await?;
    opens_as_before(stage, "links.txt").await
}

/// The first link of each tool opens with the answer that stood below it, in whatever page is open.
pub async fn one_link_of_each_tool_opens(stage: &Stage) -> Result<()> {
    let mut links = parse(&fs::read_to_string(fixture("links.txt"))?)?;
    let mut met = BTreeSet::new();
    links.retain(|link| met.insert(link.address.split('?').next().unwrap_or_default().to_owned()));
    ensure!(links.len() >= 16, "links of {} tools only", links.len());
    stage.browser.look(TABLET).await?;
    for before in links {
        let lines = read(stage, &before.address).await?;
        let address = before.address.clone();
        if let Some(difference) = differs((&before, &Opened { address, lines })) {
            bail!(difference);
        }
    }
    Ok(())
}

async fn opens_as_before(stage: &Stage, name: &str) -> Result<()> {
    let place = fixture(name);
    let before = parse(&fs::read_to_string(&place)?)?;
    ensure!(!before.is_empty(), "{name} holds no address");
    stage.browser.look(TABLET).await?;
    let mut after = Vec::new();
    for opened in &before {
        let lines = read(stage, &opened.address).await?;
        let address = opened.address.clone();
        after.push(Opened { address, lines });
    }
    if snapshot::is_written() {
        return Ok(fs::write(place, print(&after))?);
    }
    let differing: Vec<String> = before.iter().zip(&after).filter_map(differs).collect();
    ensure!(differing.is_empty(), "{}", differing.join("\n"));
    Ok(())
}

/// Opens an address without a reload, and reads.
async fn read(stage: &Stage, address: &str) -> Result<Vec<String>> {
    let browser = &stage.browser;
    match address.split_once(THEN) {
        Some((page, button)) => {
            browser.go(page).await?;
            browser.press_button("main", button).await?;
            browser.settle().await?;
        }
        None => browser.go(address).await?,
    }
    let mut lines = visible(browser, "main").await?.lines;
    lines.retain(|line| line.starts_with(['[', '{', '<']) && !line.starts_with(FRACTIONS));
    let answer = visible(browser, "main .answer").await?.lines;
    lines.extend(answer.into_iter().map(|line| format!("= {line}")));
    Ok(lines)
}

fn differs<'a>((before, after): (&'a Opened, &'a Opened)) -> Option<String> {
    let list = |opened: &'a Opened| -> Vec<&str> { opened.lines.iter().map(String::as_str).collect() };
    let difference = difference(&list(before), &list(after));
    (!difference.is_empty()).then(|| format!("{}\n{}", before.address, difference.join("\n")))
}

fn fixture(name: &str) -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR"))
        .join("browser/fixtures")
        .join(name)
}

fn parse(text: &str) -> Result<Vec<Opened>> {
    text.split("\n\n")
        .filter(|block| !block.trim().is_empty())
        .map(|block| {
            let mut lines = block.lines().map(str::to_owned);
            let address = lines.next().context("a block without an address")?;
            ensure!(address.starts_with("#/"), "not an address: {address}");
            Ok(Opened {
                address,
                lines: lines.collect(),
            })
        })
        .collect()
}

fn print(all: &[Opened]) -> String {
    let block = |opened: &Opened| format!("{}\n{}", opened.address, snapshot::text(opened.lines.clone()));
    all.iter().map(block).collect::<Vec<_>>().join("\n")
}

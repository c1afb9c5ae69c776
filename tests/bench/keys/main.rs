//! How long a keystroke waits to be seen: `keys <page> [<other page>]`, each a built folder.
//!
//! Every tool is filled in as its state "filled" has it, key by key, on a processor slowed down, and each field is then
//! typed over again and again. The time of a key is what the browser says itself (Event Timing): from the key to the next
//! frame that shows what it did, in steps of 8 ms. Two pages take turns, tool by tool, so that what else the machine does
//! burdens both alike. It is reported and decides nothing.

use anyhow::{Context, Result};
use loopwright_tests::chromium::{Chromium, View};
use serde_json::json;
use std::{env, net::TcpListener, path::PathBuf, thread};
use thirtyfour::{By, Key, TypingData};
use xtask::{http, site};

/// How often each field is typed.
const TIMES: usize = 4;

/// How many times slower the processor is than this machine's.
const SLOWER: u32 = 4;

/// What the slowest but two in a hundred keys should take at most, in milliseconds.
const AIM: f64 = 50.0;

/// The window: an upright tablet.
const TABLET: View = View {
    width: 820,
    height: 1180,
    dark: false,
};

#[tokio::main]
async fn main() -> Result<()> {
    let folders: Vec<PathBuf> = env::args().skip(1).map(PathBuf::from).collect();
    let mut pages = Vec::new();
    for folder in &folders {
        pages.push(Page::open(folder.clone()).await?);
    }
    let first = pages.first().context("which page?")?;
    println!("a key until it is seen, processor {SLOWER}x slower, in ms: the middle, and all but two in a hundred\n");
    let mut all = vec![Vec::new(); pages.len()];
    for tool in first.tools().await? {
        let mut line = format!("{tool:<10}");
        for (page, all) in pages.iter().zip(&mut all) {
            let times = page.types(&tool).await?;
            line += &format!("  {}", told(&times));
            all.extend(times);
        }
        println!("{line}");
    }
    let line: Vec<String> = all.iter().map(|times| told(times)).collect();
    println!(
        "{:<10}  {}\n\nthe aim is {AIM} ms for all but two in a hundred",
        "all",
        line.join("  ")
    );
    for page in pages {
        page.browser.quit().await?;
    }
    Ok(())
}

/// The middle, and what all but two in a hundred stay within.
fn told(times: &[f64]) -> String {
    let mut times = times.to_vec();
    times.sort_by(f64::total_cmp);
    let at = |share: usize| times.get((times.len() * share / 100).min(times.len().saturating_sub(1)));
    let (middle, most) = (at(50).copied().unwrap_or(f64::NAN), at(98).copied().unwrap_or(f64::NAN));
    format!("{middle:>5.0} {most:>5.0} ({} keys)", times.len())
}

/// A built page in a browser of its own.
struct Page {
    browser: Chromium,
    address: String,
}

/// The fields of a state that are typed, by their ids, with their texts.
const FIELDS: &str = "return [...document.querySelectorAll('form.question :is(input, select, textarea)[id]')]
    .map((field) => [field.id, field.localName === 'select', field.value])";

/// Notes the time of every key from here on. A key that was seen so soon that the browser does not tell of it took less
/// than the least it tells of.
const WATCH: &str = "window.keys = [];
    new PerformanceObserver((list) => {
        for (const entry of list.getEntries()) if (entry.name === 'keydown') keys.push(entry.duration);
    }).observe({ type: 'event', durationThreshold: 16 });";

/// The least that the browser tells of, halved.
const UNTOLD: f64 = 8.0;

/// Once two more frames are drawn.
const DRAWN: &str = "const done = arguments[arguments.length - 1];
    requestAnimationFrame(() => requestAnimationFrame(() => setTimeout(() => done(true), 30)));";

impl Page {
    async fn open(folder: PathBuf) -> Result<Self> {
        let listener = TcpListener::bind("127.0.0.1:0")?;
        let address = format!("http://{}/", listener.local_addr()?);
        thread::spawn(move || http::serve(&listener, move |path| site::respond(&folder, path)));
        let browser = Chromium::start().await?;
        browser.look(TABLET).await?;
        Ok(Self { browser, address })
    }

    async fn goes_to(&self, place: &str) -> Result<()> {
        self.browser.driver.goto("about:blank").await?;
        self.browser.driver.goto(format!("{}{place}", self.address)).await?;
        self.browser.until_started().await
    }

    /// Every tool that has a state "filled".
    async fn tools(&self) -> Result<Vec<String>> {
        const TOOLS: &str = "return [...document.querySelectorAll('a[data-state$=\"/filled\"]')]
            .map((link) => link.dataset.state.split('/')[0])";
        self.goes_to("#/gallery").await?;
        let tools = self.browser.driver.execute(TOOLS, []).await?;
        Ok(serde_json::from_value(tools.json().clone())?)
    }

    async fn fields(&self, state: &str) -> Result<Vec<(String, bool, String)>> {
        self.goes_to(&format!("#/gallery/{state}")).await?;
        self.browser.until("document.querySelector('form.question')").await?;
        let fields = self.browser.driver.execute(FIELDS, []).await?;
        Ok(serde_json::from_value(fields.json().clone())?)
    }

    /// The milliseconds of each key.
    async fn types(&self, tool: &str) -> Result<Vec<f64>> {
        let empty = self.fields(&format!("{tool}/empty")).await?;
        let filled = self.fields(&format!("{tool}/filled")).await?;
        self.goes_to(&format!("#/{tool}")).await?;
        let mut typed = Vec::new();
        for field in filled.into_iter().filter(|field| !empty.contains(field)) {
            match field {
                (id, true, key) => self.chooses(&id, &key).await?,
                (id, false, text) => typed.push((id, text)),
            }
        }
        self.slow_down(SLOWER).await?;
        for (id, text) in &typed {
            self.over(id, text).await?;
        }
        self.browser.driver.execute(WATCH, []).await?;
        let mut pressed = 0;
        for (id, text) in typed.iter().cycle().take(typed.len() * TIMES) {
            pressed += self.over(id, text).await?;
        }
        let told = self.browser.driver.execute("return keys", []).await?;
        self.slow_down(1).await?;
        let mut times: Vec<f64> = serde_json::from_value(told.json().clone())?;
        times.resize(times.len().max(pressed), UNTOLD);
        Ok(times)
    }

    async fn slow_down(&self, rate: u32) -> Result<()> {
        let rate = json!({ "rate": rate });
        self.browser
            .tell("Emulation.setCPUThrottlingRate", rate)
            .await
            .map(drop)
    }

    async fn chooses(&self, id: &str, key: &str) -> Result<()> {
        let option = format!("[id='{id}'] option[value='{key}']");
        Ok(self.browser.driver.find(By::Css(option)).await?.click().await?)
    }

    /// Types a text over what stands in a field, and answers how many keys that took.
    async fn over(&self, id: &str, text: &str) -> Result<usize> {
        const TAKE: &str = "const field = document.getElementById(arguments[0]);
            field.closest('details')?.setAttribute('open', '');
            field.focus();
            field.select();";
        let driver = &self.browser.driver;
        driver.execute(TAKE, vec![json!(id)]).await?;
        self.presses(Key::Backspace).await?;
        for key in text.chars() {
            self.presses(key.to_string()).await?;
        }
        Ok(text.chars().count() + 1)
    }

    async fn presses(&self, key: impl Into<TypingData>) -> Result<()> {
        let driver = &self.browser.driver;
        driver.action_chain().send_keys(key).perform().await?;
        driver.execute_async(DRAWN, []).await?;
        Ok(())
    }
}

//! How long a first visit waits for its answer: `pages <page> <bare page> [<other page>]`, each a built folder.
//!
//! Each visit is a browser of its own that has seen nothing before, on a processor slowed down and behind a slow line
//! ([`mod@line`]). The pages take turns, so that what else the machine does burdens all of them alike. What counts is the
//! middle one of several visits, and its ratio to the bare page's: the ratio says what the page costs beyond what any
//! page of its kind costs, on any machine. It is reported and decides nothing.

mod line;

use anyhow::{Context, Result, ensure};
use line::Line;
use loopwright_tests::chromium::Chromium;
use serde_json::json;
use std::{env, path::PathBuf, time::Duration};

/// How often each page is visited.
const VISITS: usize = 7;

/// How many times slower the processor is than this machine's.
const SLOWER: u32 = 4;

/// The line: a phone's where the signal is weak.
const LINE: Line = Line {
    bits_a_second: 1_600_000,
    wait: Duration::from_millis(150),
};

/// The ratio to stay below.
const AIM: f64 = 1.4;

/// A page to visit.
struct Page {
    name: &'static str,
    folder: PathBuf,
    /// What follows the address of the folder.
    place: &'static str,
    /// What is on the page once it has answered.
    answer: &'static str,
}

impl Page {
    /// A build of Loopwright, with a link that asks a question.
    fn loopwright(name: &'static str, folder: PathBuf) -> Self {
        Self {
            name,
            folder,
            place: "#/spacing?stitches=132&amount=16",
            answer: ".answer .row",
        }
    }

    /// The bare page.
    fn bare(folder: PathBuf) -> Self {
        Self {
            name: "bare",
            folder,
            place: "",
            answer: "#count",
        }
    }
}

#[tokio::main]
async fn main() -> Result<()> {
    let mut folders = env::args().skip(1).map(PathBuf::from);
    let page = folders.next().context("which page?")?;
    let bare = folders.next().context("which bare page?")?;
    let mut pages = vec![Page::bare(bare), Page::loopwright("page", page)];
    pages.extend(folders.next().map(|other| Page::loopwright("other", other)));
    let times = visit_in_turns(&pages).await?;
    print(&pages, times);
    Ok(())
}

/// The milliseconds of each visit, page by page.
async fn visit_in_turns(pages: &[Page]) -> Result<Vec<Vec<f64>>> {
    let mut addresses = Vec::new();
    for page in pages {
        addresses.push(line::serve(&page.folder, LINE)?);
    }
    let mut times = vec![Vec::new(); pages.len()];
    for turn in 1..=VISITS {
        for ((page, address), times) in pages.iter().zip(&addresses).zip(&mut times) {
            let time = visit(page, address).await?;
            println!("visit {turn} of {VISITS}: {:<6} {time:>6.0} ms", page.name);
            times.push(time);
        }
    }
    Ok(times)
}

/// Opens the page in a new browser and answers after how many milliseconds its answer was drawn.
async fn visit(page: &Page, address: &str) -> Result<f64> {
    let browser = Chromium::start().await?;
    let watch = WATCH.replace("ANSWER", &serde_json::to_string(page.answer)?);
    browser
        .tell("Page.addScriptToEvaluateOnNewDocument", json!({ "source": watch }))
        .await?;
    browser
        .tell("Emulation.setCPUThrottlingRate", json!({ "rate": SLOWER }))
        .await?;
    browser.driver.goto(format!("{address}{}", page.place)).await?;
    browser.until("window.firstAnswer").await?;
    let time = browser.driver.execute("return window.firstAnswer", []).await?;
    let fetched = browser.driver.execute(FETCHED, []).await?;
    ensure!(
        fetched.json() == &json!(1),
        "the WebAssembly was fetched {} times",
        fetched.json()
    );
    browser.quit().await?;
    time.json().as_f64().context("the page gave no time")
}

/// Notes when the answer is first drawn, counted from the start of the visit. What stands in the page when a frame
/// begins is drawn in it; the first task after that comes when it is done.
const WATCH: &str = "
    const look = () => {
        if (document.querySelector(ANSWER)) setTimeout(() => { window.firstAnswer = performance.now(); });
        else requestAnimationFrame(look);
    };
    requestAnimationFrame(look);
";

/// How often the page asked the network for its WebAssembly.
const FETCHED: &str =
    "return performance.getEntriesByType('resource').filter((entry) => entry.name.endsWith('.wasm')).length";

fn print(pages: &[Page], times: Vec<Vec<f64>>) {
    println!(
        "\nuntil the first answer is drawn, median of {VISITS}; {:.1} Mbit/s, {} ms a request, processor {SLOWER}x slower",
        f64::from(LINE.bits_a_second) / 1e6,
        LINE.wait.as_millis(),
    );
    let medians: Vec<f64> = times.into_iter().map(median).collect();
    let bare = medians.first().copied().unwrap_or(f64::NAN);
    for (page, median) in pages.iter().zip(medians) {
        println!("{:<6} {:>5.2} s   {:.2} x bare", page.name, median / 1e3, median / bare);
    }
    println!("the aim is at most {AIM} x bare");
}

/// The middle one of an odd number of values.
fn median(mut values: Vec<f64>) -> f64 {
    values.sort_by(f64::total_cmp);
    values[values.len() / 2]
}

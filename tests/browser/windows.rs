//! Two windows side by side: they show one truth, nothing is changed under the cursor, and no power cut takes what either has
//! said to be kept.

use crate::{
    browser::Browser,
    job::{AMOUNT, STITCHES},
    stage::{KEPT, Stage},
    steps::{Step::*, play},
};
use anyhow::{Result, ensure};
use serde_json::{Value, json};
use std::time::{Duration, Instant};
use thirtyfour::WindowHandle;
use xtask::yardstick::slowness;

/// Another window writes into a field of spacing, and tells the others. It is said to have the focus, as the one has in which
/// she types: a driver gives it to none.
const ANOTHER_WRITES: &str = "const [field, text, done] = arguments;
    document.hasFocus = () => true;
    Object.defineProperty(document, 'hidden', { value: false, configurable: true });
    const opening = indexedDB.open('loopwright', 1);
    opening.onsuccess = () => {
        const writing = opening.result.transaction('log', 'readwrite');
        writing.objectStore('log').add(JSON.stringify({ v: 1, sheet: 'spacing', field, typed: { text } }));
        writing.oncomplete = () => {
            opening.result.close();
            new BroadcastChannel('loopwright').postMessage(true);
            done(true);
        };
    };";

async fn another_writes(browser: &Browser, field: &str, text: &str) -> Result<()> {
    let arguments = vec![json!(field), json!(text)];
    browser.driver.execute_async(ANOTHER_WRITES, arguments).await?;
    Ok(())
}

/// While she types another window writes there: her text stays under her cursor and she is told; she takes the other one, types
/// on, or goes elsewhere and puts hers back. Any other field shows at once what is kept.
pub async fn a_field_that_is_typed_in_is_never_overwritten(stage: &mut Stage) -> Result<()> {
    let browser = &stage.browser;
    play(stage, &[Open("#/spacing"), Type(STITCHES, "132"), Kept]).await?;
    another_writes(browser, "amount", "9").await?;
    play(stage, &[Holds(AMOUNT, "9"), Holds(STITCHES, "132")]).await?;
    another_writes(browser, "stitches", "90").await?;
    let told = [
        Says(".question .room", "Another window wrote \u{201c}90\u{201d} here."),
        Holds(STITCHES, "132"),
        Button(".question", "Take it"),
        Holds(STITCHES, "90"),
        NeverSays(".question", "Another window"),
    ];
    play(stage, &told).await?;
    // What she types on is the newest.
    play(stage, &[Type(STITCHES, "80"), Kept]).await?;
    another_writes(browser, "stitches", "70").await?;
    play(stage, &[Says(".question .room", "\u{201c}70\u{201d}")]).await?;
    browser.find(STITCHES).await?.send_keys("1").await?;
    play(
        stage,
        &[NeverSays(".question", "Another window"), Holds(STITCHES, "801"), Kept],
    )
    .await?;
    // She goes elsewhere: what is kept stands there, and hers can be had back.
    another_writes(browser, "stitches", "60").await?;
    play(
        stage,
        &[Says(".question .room", "\u{201c}60\u{201d}"), Holds(STITCHES, "801")],
    )
    .await?;
    let left = [
        Press(AMOUNT),
        Holds(STITCHES, "60"),
        Says(".question .room", "Yours was \u{201c}801\u{201d}."),
        Button(".question", "Put mine back"),
        Holds(STITCHES, "801"),
        NeverSays(".question", "Another window"),
        Kept,
        Reload,
        Holds(STITCHES, "801"),
        Holds(AMOUNT, "9"),
    ];
    play(stage, &left).await
}

/// How often the power is cut in one scenario.
const CUTS: u32 = 20;

/// Types into some fields as fast as the page draws, numbers that go up from a first one, and remembers of each field the last
/// one that the page said was kept. Not by a timer: those of a hidden window go off once a second.
const TYPING: &str = "const [first, fields] = arguments;
    const footer = document.querySelector('footer.keeping');
    const typing = window.typing = { next: first, typed: {}, kept: {}, on: true };
    const look = () => { if (footer.innerText.trim() === KEPT) typing.kept = { ...typing.kept, ...typing.typed }; };
    new MutationObserver(look).observe(footer, { subtree: true, childList: true, characterData: true });
    const channel = new MessageChannel();
    let last = 0;
    channel.port1.onmessage = () => {
        if (!typing.on) return;
        channel.port2.postMessage(0);
        if (performance.now() - last < 8) return;
        last = performance.now();
        const css = fields[typing.next % fields.length], field = document.querySelector(css);
        field.value = String(typing.next);
        typing.typed[css] = typing.next;
        typing.next += 1;
        field.dispatchEvent(new InputEvent('input', { bubbles: true }));
    };
    channel.port2.postMessage(0);";

/// Where she types, a field for each window alone and one that both write into.
const PAGE: &str = "#/gauge";
const BOTH: &str = "#gauge-needle";
const FIELDS: [[&str; 2]; 2] = [["#gauge-stitches", BOTH], ["#gauge-pattern", BOTH]];

/// Twenty cuts of the power while she types in two windows.
pub async fn twenty_power_cuts_with_two_windows_lose_nothing(stage: &mut Stage) -> Result<()> {
    cuts(stage, 1_000).await
}

/// Another twenty.
pub async fn forty_power_cuts_with_two_windows_lose_nothing(stage: &mut Stage) -> Result<()> {
    cuts(stage, 500_000).await
}

/// Two windows on one tool.
struct Pair {
    windows: [WindowHandle; 2],
}

impl Pair {
    async fn open(stage: &Stage) -> Result<Self> {
        let driver = &stage.browser.driver;
        stage.open(PAGE).await?;
        let first = driver.window().await?;
        let second = driver.new_tab().await?;
        driver.switch_to_window(second.clone()).await?;
        stage.open(PAGE).await?;
        let windows = [first, second];
        Ok(Self { windows })
    }

    async fn go_to(&self, stage: &Stage, window: usize) -> Result<()> {
        Ok(stage
            .browser
            .driver
            .switch_to_window(self.windows[window].clone())
            .await?)
    }

    /// What a field shows in each window.
    async fn show(&self, stage: &Stage, field: &str) -> Result<[String; 2]> {
        let mut shown = [String::new(), String::new()];
        for (window, shown) in shown.iter_mut().enumerate() {
            self.go_to(stage, window).await?;
            *shown = stage.browser.value(field).await?;
        }
        Ok(shown)
    }

    /// What a window typed, and what the page there said was kept.
    async fn typing(&self, stage: &Stage, window: usize) -> Result<Value> {
        self.go_to(stage, window).await?;
        stage.browser.look_up("window.typing").await
    }
}

async fn cuts(stage: &mut Stage, first: u32) -> Result<()> {
    let mut seen = Seen::default();
    let mut next = first;
    for cut in 0..CUTS {
        let pair = Pair::open(stage).await?;
        seen.is_there(stage, cut).await?;
        for (window, fields) in FIELDS.iter().enumerate() {
            pair.go_to(stage, window).await?;
            let script = TYPING.replace("KEPT", &format!("{KEPT:?}"));
            stage.browser.ask(&script, [json!(next), json!(fields)]).await?;
        }
        tokio::time::sleep(Duration::from_millis(u64::from(60 + cut * 37 % 240))).await;
        if cut % 4 == 3 {
            seen.agree(stage, &pair, cut).await?;
        }
        for window in [0, 1] {
            let typing = pair.typing(stage, window).await?;
            next = next.max(number(&typing["next"]));
            seen.note(&typing, window);
        }
        next += 1_000;
        stage.lose_power().await?;
    }
    stage.open(PAGE).await?;
    seen.is_there(stage, CUTS).await?;
    println!("{}", seen.told());
    Ok(())
}

/// A number that is not there is nought.
fn number(value: &Value) -> u32 {
    value
        .as_u64()
        .and_then(|number| number.try_into().ok())
        .unwrap_or_default()
}

/// What is known of all windows so far.
#[derive(Default)]
struct Seen {
    kept: [u32; 2],
    /// Entries whose keeping the page had said when the power was cut, and those on their way then.
    entries: [u64; 2],
    /// How long it took until both windows showed the same.
    agreed: Vec<Duration>,
}

impl Seen {
    /// What the page said was kept is there, or what was typed into the same field after it.
    async fn is_there(&self, stage: &Stage, cut: u32) -> Result<()> {
        for (kept, [field, _]) in self.kept.iter().zip(FIELDS) {
            let found = stage.browser.value(field).await?;
            let is_there = found.parse().map_or(*kept == 0, |found: u32| found >= *kept);
            ensure!(
                is_there,
                "cut {cut}: {field} was said to be kept with {kept}, and holds {found:?}"
            );
        }
        Ok(())
    }

    fn note(&mut self, typing: &Value, window: usize) {
        let own = FIELDS[window][0];
        let [kept, last] = ["kept", "typed"].map(|what| number(&typing[what][own]));
        self.kept[window] = self.kept[window].max(kept);
        self.entries[0] += u64::from(kept > 0);
        self.entries[1] += u64::from(last > kept);
    }

    /// Nobody types any more: both windows show the same in every field, the one in front and the hidden one.
    async fn agree(&mut self, stage: &Stage, pair: &Pair, cut: u32) -> Result<()> {
        for window in [0, 1] {
            pair.go_to(stage, window).await?;
            stage.browser.run("window.typing.on = false").await?;
        }
        if cut % 8 == 7 {
            pair.go_to(stage, 0).await?;
            stage.browser.bring_to_front().await?;
        }
        let begun = Instant::now();
        let longest = Duration::from_secs(1).mul_f32(slowness().max(1.0));
        for field in [FIELDS[0][0], FIELDS[1][0], BOTH] {
            loop {
                let [one, other] = pair.show(stage, field).await?;
                if one == other {
                    break;
                }
                ensure!(
                    begun.elapsed() < longest,
                    "cut {cut}: {field} shows {one:?} here and {other:?} there"
                );
            }
        }
        self.agreed.push(begun.elapsed());
        Ok(())
    }

    fn told(&self) -> String {
        let longest = self.agreed.iter().max().copied().unwrap_or_default();
        format!(
            "{CUTS} cuts with typing in two windows: nothing is lost of {} fields that were said to be kept, {} of them typed in \
             again when the power was cut; {} times both windows showed the same, after {longest:?} at most",
            self.entries[0],
            self.entries[1],
            self.agreed.len()
        )
    }
}

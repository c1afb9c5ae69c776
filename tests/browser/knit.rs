//! Knitting from an answer: the place in it is moved by keys and by taps, what comes is said in time, and nothing that was
//! shown as kept is ever lost.

use crate::{
    browser::Browser,
    stage::Stage,
    states::{PHONE, TABLET},
    steps::{Step::*, play},
};
use anyhow::{Context, Result, ensure};
use loopwright_tests::chromium::View;
use serde_json::{Value, json};
use std::time::{Duration, Instant};
use thirtyfour::Key;

/// Where she taps.
const TAP: &str = ".pad .tap";

/// A tablet on its side.
const TABLET_ON_ITS_SIDE: View = View {
    width: 1180,
    height: 820,
    dark: false,
};

/// What the page says of a row.
#[derive(Debug, PartialEq)]
struct Said {
    done: u32,
    of: String,
    doing: String,
    then: String,
    count: String,
}

const SAID: &str = "const text = (css) => document.querySelector(css)?.innerText.replace(/\\s+/g, ' ').trim() ?? '';
    return [Number(document.querySelector('.pad .tap').dataset.done), text('.pad .tap'), text('.knit .doing'),
        text('.knit .then'), text('.knit .count')];";

async fn said(browser: &Browser) -> Result<Said> {
    let (done, of, doing, then, count) = serde_json::from_value(browser.run(SAID).await?)?;
    Ok(Said {
        done,
        of,
        doing,
        then,
        count,
    })
}

/// Waits until so many rows are done.
async fn until_done(browser: &Browser, rows: u32) -> Result<()> {
    browser
        .until(&format!("document.querySelector({TAP:?})?.dataset.done === '{rows}'"))
        .await
}

/// Opens the example's yoke to be knitted; answers its rounds, and the count after them by its answer.
async fn open_the_yoke(stage: &Stage) -> Result<(u32, u32)> {
    let steps = [
        Open(""),
        Button(".example", "Look at an example"),
        Shown(".project .steps li .knit-on a"),
    ];
    play(stage, &steps).await?;
    let yoke = "const step = [...document.querySelectorAll('.steps li')]
            .find((step) => step.querySelector('h4')?.innerText.trim() === 'Yoke');
        const counts = step.innerText.match(/([0-9]+) to ([0-9]+) stitches/);
        step.querySelector('.knit-on a').click();
        return counts.slice(1).map(Number);";
    let counts: [u32; 2] = serde_json::from_value(stage.browser.run(yoke).await?)?;
    stage.browser.until(&format!("document.querySelector({TAP:?})")).await?;
    let first = said(&stage.browser).await?;
    let rounds = first.of.split("of ").nth(1).and_then(|rest| rest.split(' ').next());
    let rounds = rounds.context("no number of rounds")?.parse()?;
    ensure!(
        first.count.contains(&counts[0].to_string()),
        "begins with {}",
        first.count
    );
    Ok((rounds, counts[1]))
}

/// From the first row to the last: whatever happens was announced in the row before, and in every row since the last time
/// something happened.
async fn follow(stage: &Stage, rounds: u32, after: u32, on: impl AsyncFn(&Browser) -> Result<()>) -> Result<()> {
    let browser = &stage.browser;
    let (mut announced, mut events) = (String::new(), 0);
    for done in 0..rounds {
        let now = said(browser).await?;
        ensure!(now.done == done, "{} rows are done, not {done}", now.done);
        let happens = !now.doing.starts_with("Work this round plain");
        if happens {
            events += 1;
            ensure!(
                done == 0 || announced.ends_with(&now.doing),
                "round {}: {:?} was announced as {announced:?}",
                done + 1,
                now.doing
            );
        }
        announced = now.then;
        on(browser).await?;
        until_done(browser, done + 1).await?;
    }
    ensure!(events > 1, "nothing happened in {rounds} rounds");
    let end = said(browser).await?;
    ensure!(
        end.doing.contains(&format!("{after} stitches on the needle")),
        "it ends: {}",
        end.doing
    );
    stage.until_kept().await
}

/// The yoke of the example from its first round to its last, by keys alone.
pub async fn a_yoke_is_followed_by_keys_alone(stage: &mut Stage) -> Result<()> {
    let (rounds, after) = open_the_yoke(stage).await?;
    // Each of them counts; a key that is pressed on the page and one that is pressed on a link alike.
    follow(stage, rounds, after, async |browser| browser.keys(" ").await).await?;
    stage.browser.keys(Key::PageUp).await?;
    until_done(&stage.browser, rounds - 1).await?;
    stage.browser.keys(Key::PageDown).await?;
    until_done(&stage.browser, rounds).await?;
    stage.browser.reload().await?;
    until_done(&stage.browser, rounds).await
}

/// The same by taps alone, with a way back and a place that outlives the window.
pub async fn a_yoke_is_followed_by_taps_alone(stage: &mut Stage) -> Result<()> {
    let (rounds, after) = open_the_yoke(stage).await?;
    stage.browser.press(TAP).await?;
    until_done(&stage.browser, 1).await?;
    stage.browser.press(".pad .step-back").await?;
    until_done(&stage.browser, 0).await?;
    follow(stage, rounds, after, async |browser| browser.press(TAP).await).await
}

/// A key that is held down counts once, one for a button that has the focus counts once, and none while she types.
pub async fn keys_count_once_and_not_while_she_types(stage: &mut Stage) -> Result<()> {
    stage.open("#/shaping?amount=18&rows=66&stitches=84").await?;
    play(stage, &[Press(".knit-this a"), Shown(TAP)]).await?;
    let browser = &stage.browser;
    browser.keys(" ").await?;
    until_done(browser, 1).await?;
    let held = "for (const repeat of [true, true, true])
        document.body.dispatchEvent(new KeyboardEvent('keydown', { key: ' ', repeat, bubbles: true, cancelable: true }));";
    browser.run(held).await?;
    browser
        .run(&format!("document.querySelector({TAP:?}).focus();"))
        .await?;
    browser.keys(Key::Enter).await?;
    until_done(browser, 2).await?;
    browser.type_into("#jump", "12").await?;
    browser.keys(" ").await?;
    browser.settle().await?;
    until_done(browser, 2).await?;
    let steps = [
        Button(".jump", "Go there"),
        Says(".pad .tap", "12"),
        Kept,
        Reload,
        Says(".pad .tap", "12"),
        // Flat work that is taken up again: her eyes know the side.
        Says(".facing", "wrong side"),
        Button(".facing", "No, the other side"),
        Button(".facing", "I am in row 13"),
        Says(".pad .tap", "13"),
        Hides(".facing", "she has answered"),
    ];
    play(stage, &steps).await
}

/// Two taps in a moment are counted, marked, and one of them is taken back by a tap.
pub async fn two_taps_in_a_moment_count_and_are_marked(stage: &mut Stage) -> Result<()> {
    stage.open("#/shaping?amount=18&rows=66&stitches=84").await?;
    play(stage, &[Press(".knit-this a"), Shown(TAP)]).await?;
    let twice = format!("const tap = () => document.querySelector({TAP:?}).click(); tap(); tap();");
    stage.browser.run(&twice).await?;
    until_done(&stage.browser, 2).await?;
    let steps = [
        Says(".knit .advice", "Two taps in a moment: both counted."),
        Button(".knit .advice", "Take the second back"),
    ];
    play(stage, &steps).await?;
    until_done(&stage.browser, 1).await
}

/// What is done often lies in the lower two thirds of the window and is as large as a thumb is sure of.
pub async fn one_hand_reaches_all_that_is_done_often(stage: &mut Stage) -> Result<()> {
    const LAID: &str = "return [...document.querySelectorAll('.pad button')].map((button) => {
        const { top, left, right, bottom, width, height } = button.getBoundingClientRect();
        return { words: button.innerText, top, left, right, bottom, width, height };
    });";
    for view in [PHONE, TABLET, TABLET_ON_ITS_SIDE] {
        stage.browser.look(view).await?;
        for address in [
            "#/shaping?amount=18&rows=66&stitches=84",
            "#/spacing?stitches=132&amount=12&knitting=round",
        ] {
            stage.open(address).await?;
            play(stage, &[Press(".knit-this a"), Shown(TAP)]).await?;
            let window = stage.browser.run("return [innerWidth, innerHeight]").await?;
            let [wide, high]: [f64; 2] = serde_json::from_value(window)?;
            let laid = stage.browser.run(LAID).await?;
            let targets = laid.as_array().context("no targets")?;
            ensure!(targets.len() >= 2, "{laid}");
            for target in targets {
                let at = |side: &str| target.get(side).and_then(Value::as_f64).unwrap_or(f64::NAN);
                ensure!(
                    at("width") >= 96.0 && at("height") >= 96.0,
                    "too small at {view:?}: {target}"
                );
                ensure!(at("top") >= high / 3.0 - 0.5, "too high at {view:?}: {target}");
                ensure!(
                    at("left") >= -0.5 && at("right") <= wide + 0.5 && at("bottom") <= high + 0.5,
                    "cut at {view:?}: {target}"
                );
            }
        }
    }
    Ok(())
}

/// A stand-in for the browser's own way to keep the screen awake, which does as it is told. Its promises are the page's: in
/// Firefox a driver's script is a world of its own, and so are the promises it makes.
const STAND_IN: &str = "window.locks = [];
    const request = () => window.refuses
        ? window.Promise.reject(new DOMException('low battery', 'NotAllowedError'))
        : window.Promise.resolve(window.locks[window.locks.push(Object.assign(new EventTarget(), { release() {} })) - 1]);
    Object.defineProperty(navigator, 'wakeLock', { configurable: true, value: arguments[0] ? { request } : undefined });";

/// The switch says what is so: on, refused, let go and taken again, absent, off.
pub async fn the_screen_is_said_to_stay_awake_only_when_it_does(stage: &mut Stage) -> Result<()> {
    stage.open("#/shaping?amount=18&rows=66&stitches=84").await?;
    let browser = &stage.browser;
    let hide = "Object.defineProperty(document, 'hidden', { configurable: true, get: () => arguments[0] });
        document.dispatchEvent(new Event('visibilitychange'));";
    let away_and_back = |refuses: bool| format!("window.refuses = {refuses};");
    browser.ask(STAND_IN, [json!(true)]).await?;
    play(stage, &[Press(".knit-this a"), Shown(TAP)]).await?;
    // What lies below the place to tap is scrolled to by hand.
    let unfold = "const fold = document.querySelector('.comfort'); fold.open = true; fold.scrollIntoView();";
    browser.run(unfold).await?;
    play(stage, &[Says(".awake", "The screen stays awake")]).await?;
    // The device lets go while the page is hidden, and is asked again when it is seen.
    browser.ask(hide, [json!(true)]).await?;
    browser
        .run("window.locks.at(-1).dispatchEvent(new Event('release'));")
        .await?;
    play(stage, &[Says(".awake", "has let the screen go")]).await?;
    browser.ask(hide, [json!(false)]).await?;
    play(stage, &[Says(".awake", "The screen stays awake")]).await?;
    browser.run(&away_and_back(true)).await?;
    browser
        .run("window.locks.at(-1).dispatchEvent(new Event('release'));")
        .await?;
    browser.ask(hide, [json!(false)]).await?;
    play(
        stage,
        &[
            Says(".awake", "does not allow it now"),
            Press(".comfort .switch input"),
            Says(".awake", "goes dark as your device is set"),
        ],
    )
    .await?;
    browser.ask(STAND_IN, [json!(false)]).await?;
    play(
        stage,
        &[
            Press(".comfort .switch input"),
            Says(".awake", "This browser cannot keep the screen awake"),
        ],
    )
    .await
}

/// Two windows in which she taps add up.
pub async fn two_windows_add_up(stage: &mut Stage) -> Result<()> {
    stage.open("#/shaping?amount=18&rows=66&stitches=84").await?;
    play(stage, &[Press(".knit-this a"), Press(TAP), Kept]).await?;
    let driver = &stage.browser.driver;
    let first = driver.window().await?;
    let second = driver.new_tab().await?;
    driver.switch_to_window(second).await?;
    stage.open("#/knit/shaping").await?;
    until_done(&stage.browser, 1).await?;
    play(stage, &[Press(TAP), Kept]).await?;
    until_done(&stage.browser, 2).await?;
    driver.close_window().await?;
    driver.switch_to_window(first).await?;
    until_done(&stage.browser, 2).await?;
    play(stage, &[Press(TAP), Kept]).await?;
    until_done(&stage.browser, 3).await
}

/// How many taps are made in each of two halves, and how often the power is cut among them in Chromium.
const TAPS: u32 = 5_000;
const CUTS: u32 = 20;

/// Taps as fast as the page draws, and remembers the last number that it showed as kept.
const TAPPING: &str = "window.kept = Number(document.querySelector('.pad .tap').dataset.done); window.waits = []; let tapped = 0; let since = null;
    const tap = document.querySelector('.pad .tap'); const [goal, most] = arguments;
    const look = () => {
        if (document.querySelector('.pad.unkept')) return;
        window.kept = Number(tap.dataset.done);
        if (since !== null) { window.waits.push(performance.now() - since); since = null; }
    };
    new MutationObserver(look).observe(document.querySelector('.knit'), { subtree: true, childList: true, attributes: true });
    const go = () => {
        if (tapped >= goal) return;
        if (since === null) since = performance.now();
        for (let burst = 0; burst < most && tapped < goal; burst += 1) { tapped += 1; tap.click(); }
        setTimeout(go, 0);
    };
    go();";

/// The first five thousand taps with twenty cuts: what the page showed as kept is there when it is opened again.
pub async fn five_thousand_taps_lose_nothing_that_was_shown_as_kept(stage: &mut Stage) -> Result<()> {
    taps_and_cuts(stage, 0).await
}

/// Another five thousand with twenty cuts, on top of as many.
pub async fn ten_thousand_taps_lose_nothing_that_was_shown_as_kept(stage: &mut Stage) -> Result<()> {
    taps_and_cuts(stage, TAPS).await
}

async fn taps_and_cuts(stage: &mut Stage, before: u32) -> Result<()> {
    stage.open("#/shaping?amount=18&rows=10000&stitches=84").await?;
    play(stage, &[Press(".knit-this a"), Shown(TAP), Kept]).await?;
    tap_on(stage, before, 100).await?;
    until_kept_are(stage, before).await?;
    let (mut done, mut waits, mut seconds, mut in_flight) = (before, Vec::<f64>::new(), 0.0, 0);
    let cuts = stage.engine.cuts(CUTS);
    for cut in 0..cuts {
        stage.lose_power().await?;
        let found = open_again(stage).await?;
        ensure!(
            found >= done,
            "cut {cut}: {done} rows were shown as kept, and {found} are there"
        );
        // From one tap at a time to some twenty before the page is drawn again.
        let begun = Instant::now();
        tap_on(stage, TAPS / cuts, 1 + cut * 7 % 25).await?;
        // Most cuts come while taps are on their way; every fourth when all of them are kept.
        if cut % 4 == 3 {
            until_kept_are(stage, found + TAPS / cuts).await?;
        } else {
            tokio::time::sleep(Duration::from_millis(u64::from(cut * 37 % 200))).await;
        }
        let kept = stage.browser.run("return [window.kept, window.waits]").await?;
        let kept: (u32, Vec<f64>) = serde_json::from_value(kept)?;
        seconds += begun.elapsed().as_secs_f64();
        in_flight += u32::from(kept.0 < found + TAPS / cuts);
        done = done.max(kept.0);
        waits.extend(kept.1);
    }
    stage.lose_power().await?;
    let found = open_again(stage).await?;
    ensure!(found >= done, "{done} rows were shown as kept, and {found} are there");
    let left = (before + TAPS).saturating_sub(found);
    tap_on(stage, left, 20).await?;
    until_kept_are(stage, found + left).await?;
    stage.browser.reload().await?;
    until_done(&stage.browser, found + left).await?;
    waits.sort_by(f64::total_cmp);
    let at = |hundredth: usize| {
        let place = waits.len().saturating_sub(1) * hundredth / 100;
        waits.get(place).copied().unwrap_or_default()
    };
    println!(
        "{TAPS} taps on top of {before}, {cuts} cuts, {in_flight} of them with taps on their way: nothing is lost that was \
         shown as kept; {:.0} taps a second; kept after {:.0} ms by the middle, {:.0} ms by the 98th percentile",
        f64::from(TAPS) / seconds.max(0.001),
        at(50),
        at(98)
    );
    Ok(())
}

/// Taps so often, some of them before the page is drawn again, and does not wait for it.
async fn tap_on(stage: &Stage, times: u32, at_once: u32) -> Result<()> {
    stage
        .browser
        .ask(TAPPING, [json!(times), json!(at_once)])
        .await
        .map(drop)
}

/// Waits until so many are shown as kept. How long thousands take is not asked; only that there are more and more of them.
async fn until_kept_are(stage: &Stage, rows: u32) -> Result<()> {
    let mut kept = 0;
    while kept < rows {
        let more = format!("window.kept > {kept} || window.kept >= {rows}");
        stage.browser.until(&more).await?;
        kept = serde_json::from_value(stage.browser.look_up("window.kept").await?)?;
    }
    Ok(())
}

/// Opens the page again; answers how many rows are done there.
async fn open_again(stage: &Stage) -> Result<u32> {
    stage.open("#/knit/shaping").await?;
    stage.browser.until(&format!("document.querySelector({TAP:?})")).await?;
    Ok(said(&stage.browser).await?.done)
}

//! What strangers may put into a frame or say to one, line by line from `strangers.txt`: markup, scripts, what is huge, what
//! comes from the wrong window, and a greeting that is said twice. Nothing of it runs, nothing is said back, and the
//! frame computes as before.

use crate::{channel, embed, stage::Stage};
use anyhow::{Context, Result, ensure};
use serde_json::{Value, json};

/// Notes, in a window, what must not happen there: that a stranger's text runs, breaks the policy, or becomes an element.
const WATCH: &str = "
    window.wrong = window.wrong ?? [];
    window.ran = () => wrong.push('it ran');
    addEventListener('error', (event) => wrong.push(String(event.message)));
    addEventListener('securitypolicyviolation', (event) => wrong.push(`forbidden: ${event.violatedDirective}`));
    new MutationObserver((changes) => {
        for (const { addedNodes } of changes) for (const node of addedNodes)
            if (node.matches?.('script, img, object, embed, base, style')) wrong.push(node.outerHTML);
    }).observe(document, { childList: true, subtree: true });";

/// Sets an attribute of the element, and asks the app something, so that what came before has been taken in.
const PUT: &str = "const [name, value, done] = arguments;
    tool.setAttribute(name, value);
    tool.ask('').then(() => { tool.removeAttribute(name); done(true); }, (reason) => done(String(reason)));";

/// Frames a tool without the element, beside a window that has nothing to do with it, and notes what either hears.
const FRAME: &str = "const [address, beside, done] = arguments;
    window.heard = [];
    window.answered = [];
    const frame = document.createElement('iframe');
    window.other = document.createElement('iframe');
    frame.title = 'Tool';
    other.title = 'Other';
    window.addEventListener('message', ({ data }) => heard.push(data));
    const channel = (heard) => {
        const { port1, port2 } = new MessageChannel();
        port1.onmessage = ({ data }) => heard.push(data);
        port1.postMessage({ ask: 1, values: '' });
        return [port1, port2];
    };
    // With their addresses from the beginning: an empty frame is loaded as well, and then is no more what it was.
    frame.src = address;
    other.src = beside;
    other.addEventListener('load', () => {
        other.contentWindow.addEventListener('message', ({ data }) => heard.push(data));
        // By functions of the pages themselves: in Firefox a driver's script is a world of its own, and nobody's window.
        const post = ['to', 'message', 'ports', `to.postMessage(message, '*', ports)`];
        const [hostPost, otherPost] = [window, other.contentWindow].map((page) => page.Function(...post));
        window.fromOther = (message) => otherPost(frame.contentWindow, message, [channel(heard)[1]]);
        window.fromHost = (message, ports) => hostPost(frame.contentWindow, message, ports ?? [channel(heard)[1]]);
        // Asked twice before anything is answered: both are kept until the app listens.
        window.greet = () => {
            const [mine, theirs] = channel(answered);
            window.port = mine;
            mine.postMessage({ ask: 2, values: '' });
            fromHost({ loopwright: 1 }, [theirs]);
        };
        frame.addEventListener('load', () => done(true), { once: true });
        document.body.append(frame);
    }, { once: true });
    document.body.append(other);";

/// A line of the list.
struct Stranger {
    kind: &'static str,
    text: String,
}

/// The lines of this kind.
fn strangers(kind: &str) -> Vec<Stranger> {
    let lines = include_str!("strangers.txt")
        .lines()
        .filter(|line| !line.starts_with('#'));
    let parted = lines.filter_map(|line| line.split_once(' '));
    let of_kind = parted.filter(|(of, _)| *of == kind);
    of_kind
        .map(|(kind, text)| Stranger {
            kind,
            text: repeated(text.trim()),
        })
        .collect()
}

/// The text with what it stands for.
fn repeated(text: &str) -> String {
    let Some((before, rest)) = text.split_once("@repeat ") else {
        return text.to_owned();
    };
    let digits = |end: &str| end.chars().take_while(char::is_ascii_digit).collect::<String>();
    let Some((what, end)) = rest.rsplit_once(',') else {
        return text.to_owned();
    };
    let times = digits(end);
    let after = &end[times.len()..];
    [before, &what.repeat(times.parse().unwrap_or(1)), after].concat()
}

/// A message as text, which the page reads: on its way a driver would change some of them.
fn message(stranger: &Stranger) -> Result<Value> {
    let read: serde_json::Result<Value> = serde_json::from_str(&stranger.text);
    read.with_context(|| format!("{}: no message: {}", stranger.kind, stranger.text))?;
    Ok(json!(stranger.text))
}

/// There are a hundred of them, and some of every kind.
#[test]
fn there_are_a_hundred_of_every_kind() {
    let kinds = ["values", "option", "tool", "greeting", "down", "up"].map(|kind| strangers(kind).len());
    assert!(
        kinds.iter().sum::<usize>() >= 100 && kinds.iter().all(|count| *count >= 10),
        "{kinds:?}"
    );
    assert_eq!(repeated("{\"set\": \"@repeat ab,3\"}"), "{\"set\": \"ababab\"}");
}

/// Nothing has happened in the window that is entered.
async fn nothing_happened(stage: &Stage, because: &str) -> Result<()> {
    let wrong = stage.browser.look_up("window.wrong").await?;
    ensure!(wrong == json!([]), "{because}: {wrong}");
    Ok(())
}

async fn watch_both(stage: &Stage) -> Result<()> {
    embed::enter(&stage.browser, 0).await?;
    stage.browser.run(WATCH).await?;
    stage.browser.driver.enter_default_frame().await?;
    Ok(())
}

/// In both windows; and the tool still answers.
async fn nothing_happened_to(stage: &Stage, because: &str) -> Result<()> {
    let browser = &stage.browser;
    nothing_happened(stage, because).await?;
    embed::enter(browser, 0).await?;
    nothing_happened(stage, because).await?;
    browser.driver.enter_default_frame().await?;
    Ok(())
}

/// In values, options and names of tools.
pub async fn nothing_that_is_put_into_a_frame_runs(stage: &mut Stage) -> Result<()> {
    channel::open(stage, "tool=spacing values='stitches=132&amount=16'").await?;
    stage.browser.run(WATCH).await?;
    watch_both(stage).await?;
    for stranger in strangers("values") {
        put(stage, "values", &stranger.text).await?;
    }
    for stranger in strangers("option") {
        let (name, value) = stranger.text.split_once('=').context("an option has a value")?;
        put(stage, name, value).await?;
    }
    nothing_happened_to(stage, "values and options").await?;
    stage
        .browser
        .run("tool.setAttribute('values', 'stitches=132&amount=16')")
        .await?;
    let is_116 = "tool.answer.figures?.some(({ name, value }) => name === 'after' && value === 116)";
    stage.browser.until(is_116).await?;
    for stranger in strangers("tool") {
        stage
            .browser
            .ask("tool.setAttribute('tool', arguments[0])", [json!(stranger.text)])
            .await?;
        watch_both(stage).await.context(stranger.text.clone())?;
        nothing_happened_to(stage, &stranger.text).await?;
    }
    Ok(())
}

async fn put(stage: &Stage, name: &str, value: &str) -> Result<()> {
    let put = stage
        .browser
        .driver
        .execute_async(PUT, vec![json!(name), json!(value)])
        .await?;
    ensure!(put.json() == &json!(true), "{name} {value}: {}", put.json());
    nothing_happened(stage, value).await
}

/// In greetings, from the page around and from another window, before and after the right one; and in what is sent down
/// the channel.
pub async fn nothing_is_said_to_a_stranger(stage: &mut Stage) -> Result<()> {
    channel::open(stage, "tool=tail").await?;
    let browser = &stage.browser;
    browser.run(WATCH).await?;
    let address = format!("{}#/embed/spacing?stitches=132&amount=16", stage.server.other_site());
    let beside = "/class/other.html";
    stage.server.page(beside, "<!doctype html><title>Other</title>");
    let arguments = vec![json!(address), json!(beside)];
    browser.driver.execute_async(FRAME, arguments).await?;
    let greetings = strangers("greeting");
    for stranger in &greetings {
        browser
            .ask(
                "fromOther(JSON.parse(arguments[0])); fromHost(JSON.parse(arguments[0]))",
                [message(stranger)?],
            )
            .await?;
    }
    browser
        .run("fromOther({ loopwright: 1 }); fromHost({ loopwright: 1 }, []); greet()")
        .await?;
    browser.until("answered.some(({ reply }) => reply === 2)").await?;
    // Said once more it is a stranger's, whoever says it.
    browser
        .run("fromHost({ loopwright: 1 }); fromOther({ loopwright: 1 })")
        .await?;
    for stranger in strangers("down") {
        browser
            .ask("port.postMessage(JSON.parse(arguments[0]))", [message(&stranger)?])
            .await?;
    }
    browser
        .run("port.postMessage({ ask: 3, values: 'stitches=90&amount=9' })")
        .await?;
    browser.until("answered.some(({ reply }) => reply === 3)").await?;
    let heard = browser.look_up("heard").await?;
    ensure!(heard == json!([]), "strangers heard {heard}");
    let replies = browser
        .look_up("answered.filter(({ reply }) => reply !== undefined).map(({ reply }) => reply)")
        .await?;
    ensure!(replies == json!([1, 2, 3]), "replies to {replies}");
    nothing_happened(stage, "greetings").await
}

/// In what a page in the frame says to the element, as if it were another's.
pub async fn an_element_takes_figures_and_text_only(stage: &mut Stage) -> Result<()> {
    channel::open(stage, "tool=spacing values='stitches=132&amount=16'").await?;
    let browser = &stage.browser;
    browser.run(WATCH).await?;
    let before = browser.look_up("told.length").await?;
    watch_both(stage).await?;
    let strangers = strangers("up");
    for stranger in &strangers {
        embed::enter(browser, 0).await?;
        browser
            .ask(
                "dispatchEvent(new CustomEvent('loopwright:tell', { detail: JSON.parse(arguments[0]) }))",
                [message(stranger)?],
            )
            .await?;
        browser.driver.enter_default_frame().await?;
        // What was sent before it has been taken in when the reply is here.
        browser
            .driver
            .execute_async("tool.ask('').then(arguments[0])", [])
            .await?;
        let height = browser.look_up("tool.getBoundingClientRect().height").await?;
        let height = height.as_f64().unwrap_or_default();
        ensure!((100.0..=20_000.0).contains(&height), "{}: {height} high", stranger.text);
    }
    let told = browser.look_up("told.length").await?;
    ensure!(
        told == before,
        "taken for an answer: {}",
        browser.look_up("told.at(-1)").await?
    );
    nothing_happened_to(stage, "messages").await
}

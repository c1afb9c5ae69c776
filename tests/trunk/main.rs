//! Is the page under `trunk serve` the page we ship? It is fetched, opened in a browser under its strict policy, kept
//! for offline use, and opened again with the server gone: all from the same `web/index.html`.

use anyhow::{Context, Result, ensure};
use loopwright_tests::chromium::{Chromium, free_port};
use serde_json::json;
use std::{
    io::{Read, Write},
    net::TcpStream,
    process::Command,
    thread,
    time::Duration,
};
use xtask::{
    house, names,
    run::{Ending, minutes},
    yardstick::Patience,
};

#[tokio::test]
async fn trunk_serve_gives_a_working_page() -> Result<()> {
    let port = free_port()?;
    let mut trunk = start(port)?;
    let page = wait_for_page(&mut trunk, port)?;
    ensure!(
        page.contains("Content-Security-Policy") && !page.contains("data-trunk"),
        "the page is not finished"
    );
    let wasm = fetch(port, &format!("/{}", wasm_of(&page)?))?;
    ensure!(
        wasm.head.contains("application/wasm"),
        "WebAssembly under a wrong type: {}",
        wasm.head
    );
    ensure!(wasm.body.starts_with(b"\0asm"), "what was served is no WebAssembly");

    let browser = Chromium::start().await?;
    browser
        .tell("Page.addScriptToEvaluateOnNewDocument", json!({ "source": LISTEN }))
        .await?;
    let address = format!("http://127.0.0.1:{port}/");
    browser.driver.goto(&address).await?;
    browser.until_started().await?;
    browser
        .until("document.documentElement.dataset.offline === 'ready'")
        .await?;
    let faults = browser.driver.execute("return window.faults", []).await?;
    ensure!(
        faults.json() == &json!([]),
        "the page's policy was broken, or an error thrown: {}",
        faults.json()
    );

    drop(trunk);
    ensure!(TcpStream::connect(("127.0.0.1", port)).is_err(), "trunk still serves");
    browser.driver.goto("about:blank").await?;
    browser.driver.goto(&address).await?;
    browser.until_started().await?;
    browser.quit().await
}

/// The file that the page asks for ahead by its name, which carries a hash.
fn wasm_of(page: &str) -> Result<String> {
    let links = xtask::page::elements(page, "link").into_iter();
    let mut files = links.filter_map(|link| Some(link.attribute("href")?.trim_start_matches("./").to_owned()));
    let wasm = files.find(|file| names::without_hash(file) == format!("{}_bg.wasm", house::APP));
    let wasm = wasm.context("the page asks for no WebAssembly")?;
    ensure!(names::has_hash(&wasm), "{wasm} has no hash in its name");
    Ok(wasm)
}

/// Notes what goes wrong in the page, from its first moment.
const LISTEN: &str = "
    window.faults = [];
    addEventListener('securitypolicyviolation', (event) => faults.push(event.violatedDirective));
    addEventListener('error', (event) => faults.push(String(event.message)));
    addEventListener('unhandledrejection', (event) => faults.push(String(event.reason)));
";

/// An answer over HTTP, as far as it matters here.
struct Answer {
    head: String,
    body: Vec<u8>,
}

fn start(port: u16) -> Result<Ending> {
    let dist = house::target_folder()?.join("trunk-dist");
    let trunk = Command::new("trunk")
        .args(["serve", "--address", "127.0.0.1", "--port", &port.to_string(), "--dist"])
        .arg(dist)
        .current_dir(house::root())
        // Trunk takes this for its own switch and refuses the usual value 1.
        .env_remove("NO_COLOR")
        .spawn()
        .context("trunk could not be started")?;
    Ok(Ending(trunk))
}

/// The page, as soon as trunk has built it and serves.
fn wait_for_page(trunk: &mut Ending, port: u16) -> Result<String> {
    let mut patience = Patience::of(minutes(6));
    loop {
        if let Some(status) = trunk.0.try_wait()? {
            anyhow::bail!("trunk ended by itself ({status})");
        }
        if let Ok(answer) = fetch(port, "/")
            && answer.head.starts_with("HTTP/1.1 200")
        {
            return Ok(String::from_utf8(answer.body)?);
        }
        ensure!(!patience.is_over(), "trunk serves no page");
        thread::sleep(Duration::from_millis(200));
    }
}

fn fetch(port: u16, path: &str) -> Result<Answer> {
    let mut stream = TcpStream::connect(("127.0.0.1", port))?;
    stream.set_read_timeout(Some(Duration::from_secs(20)))?;
    let request = format!("GET {path} HTTP/1.1\r\nHost: 127.0.0.1:{port}\r\nAccept: */*\r\nConnection: close\r\n\r\n");
    stream.write_all(request.as_bytes())?;
    let mut bytes = Vec::new();
    stream.read_to_end(&mut bytes)?;
    let end = bytes
        .windows(4)
        .position(|window| window == b"\r\n\r\n")
        .context("half an answer")?;
    Ok(Answer {
        head: String::from_utf8(bytes[..end].to_vec())?,
        body: bytes.split_off(end + 4),
    })
}

//! What steering any browser needs: a port of one's own, and waits that end. Every wait is for something to become
//! true, and its limit is said in seconds of a quiet machine (see `xtask::yardstick`).

use anyhow::{Result, bail};
use serde_json::json;
use std::{
    net::{TcpListener, TcpStream},
    path::Path,
    process::Command,
    time::Duration,
};
use thirtyfour::WebDriver;
use xtask::yardstick::Patience;

/// True once the app has taken the place of the words that stand there while it loads.
pub const STARTED: &str = "document.querySelector('#app > *') && !document.querySelector('#app > .waiting')";

/// How long anything on a page may take.
pub const PATIENCE: Duration = Duration::from_secs(20);

/// How long a driver may take for one command. Only a driver that hangs takes as long, on any machine.
pub const COMMAND: Duration = Duration::from_secs(120);

/// Between two looks.
const PAUSE: Duration = Duration::from_millis(30);

/// How often a page looks before it answers that something is not so: for a third of a second.
const LOOKS: u32 = 10;

/// Has a program write into this folder only.
pub fn live_in<'a>(command: &'a mut Command, home: &Path) -> &'a mut Command {
    command
        .env("HOME", home)
        .env("XDG_DATA_HOME", home.join("data"))
        .env("XDG_CACHE_HOME", home.join("cache"))
        .env("XDG_CONFIG_HOME", home.join("config"))
}

/// The letters that pages are measured with.
const LETTERS: &str = concat!(env!("CARGO_MANIFEST_DIR"), "/src/fonts.conf");

/// Has a browser write with the same letters on every machine that has them; elsewhere with its own.
pub fn lettered(command: &mut Command) -> &mut Command {
    if Path::new(xtask::packages::LETTER).exists() {
        command.env("FONTCONFIG_FILE", LETTERS);
    }
    command
}

/// A port that is free now.
pub fn free_port() -> Result<u16> {
    Ok(TcpListener::bind("127.0.0.1:0")?.local_addr()?.port())
}

/// How often a browser is started before it is given up.
const TRIES: u32 = 3;

/// Starts something that needs a port. Between choosing a free port and listening on it another test may take it, so a
/// start that fails is tried again with another; each failure is said.
pub async fn start_again<T>(mut start: impl AsyncFnMut() -> Result<T>) -> Result<T> {
    for _ in 1..TRIES {
        match start().await {
            Ok(started) => return Ok(started),
            Err(why) => println!("not started, trying again: {why:#}"),
        }
    }
    start().await
}

/// Waits until something listens there.
pub async fn wait_for_port(port: u16) -> Result<()> {
    let mut patience = Patience::of(PATIENCE);
    while TcpStream::connect(("127.0.0.1", port)).is_err() {
        if patience.is_over() {
            bail!("nothing listens on port {port}");
        }
        tokio::time::sleep(PAUSE).await;
    }
    Ok(())
}

/// Waits until an expression is true in the page. The page itself looks again and again for a while before it answers: to be
/// asked through a driver costs a browser more than what it is doing meanwhile.
pub async fn until(driver: &WebDriver, expression: &str) -> Result<()> {
    let mut patience = Patience::of(PATIENCE);
    let script = format!(
        "const done = arguments[arguments.length - 1];
        let looks = 0;
        const look = () => {{
            let is = false;
            try {{ is = Boolean({expression}); }} catch {{ /* What cannot be looked up yet may be a moment later. */ }}
            if (is || ++looks === {LOOKS}) done(is); else setTimeout(look, {});
        }};
        look();",
        PAUSE.as_millis()
    );
    loop {
        // While a page is being left there is nowhere to run a script.
        let value = driver.execute_async(script.as_str(), []).await;
        if value.is_ok_and(|value| value.json() == &json!(true)) {
            return Ok(());
        }
        if patience.is_over() {
            bail!("this did not become true: {expression}");
        }
        tokio::time::sleep(PAUSE).await;
    }
}

/// Ends when a limit is used up.
pub async fn used_up(limit: Duration) {
    let mut patience = Patience::of(limit);
    while !patience.is_over() {
        tokio::time::sleep(PAUSE * 5).await;
    }
}

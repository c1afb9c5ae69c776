//! What steering any browser needs: a port of one's own, and waits that end.

use anyhow::{Result, bail};
use serde_json::json;
use std::{
    net::{TcpListener, TcpStream},
    time::{Duration, Instant},
};
use thirtyfour::WebDriver;

/// True once the app has taken the place of the words that stand there while it loads.
pub const STARTED: &str = "document.querySelector('#app > *') && !document.querySelector('#app > .waiting')";

/// How long anything on a page may take.
pub const PATIENCE: Duration = Duration::from_secs(20);

/// How long a driver may take for one command.
pub const COMMAND: Duration = Duration::from_secs(30);

/// Between two looks.
const PAUSE: Duration = Duration::from_millis(40);

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
pub async fn wait_for_port(port: u16, patience: Duration) -> Result<()> {
    let start = Instant::now();
    while TcpStream::connect(("127.0.0.1", port)).is_err() {
        if start.elapsed() > patience {
            bail!("nothing listens on port {port} after {patience:?}");
        }
        tokio::time::sleep(PAUSE).await;
    }
    Ok(())
}

/// Waits until an expression is true in the page.
pub async fn until(driver: &WebDriver, expression: &str) -> Result<()> {
    let start = Instant::now();
    loop {
        let value = driver.execute(format!("return Boolean({expression})"), []).await;
        // While a page is being left there is nowhere to run a script.
        if value.is_ok_and(|value| value.json() == &json!(true)) {
            return Ok(());
        }
        if start.elapsed() > PATIENCE {
            bail!("this did not become true in {PATIENCE:?}: {expression}");
        }
        tokio::time::sleep(PAUSE).await;
    }
}

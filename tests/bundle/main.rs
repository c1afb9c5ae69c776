//! The package for JavaScript in a page that a bundler made, in a real browser and under the policy that its README names:
//! every function is asked what node asks it, and has to answer the same.
//!
//! The bundle is made by the package's own tests, and `LOOPWRIGHT_BUNDLE` names its folder.

use anyhow::{Context, Result, ensure};
use loopwright_tests::chromium::Chromium;
use std::{env, net::TcpListener, path::PathBuf, thread};
use xtask::{http, site};

#[tokio::test]
async fn a_bundled_page_asks_every_function() -> Result<()> {
    let folder = env::var_os("LOOPWRIGHT_BUNDLE").context("LOOPWRIGHT_BUNDLE names no folder")?;
    let folder = PathBuf::from(folder);
    ensure!(folder.join("index.html").exists(), "no page in {}", folder.display());
    let listener = TcpListener::bind("127.0.0.1:0")?;
    let address = format!("http://{}/", listener.local_addr()?);
    thread::spawn(move || http::serve(&listener, move |path| site::respond(&folder, path)));
    let browser = Chromium::start().await?;
    browser.driver.goto(&address).await?;
    let asked = browser.until("window.asked").await;
    let log = browser.driver.browser_log().await?;
    let complaints: Vec<&str> = log.iter().map(|entry| entry.message.as_str()).collect();
    ensure!(
        complaints.is_empty(),
        "the browser complains:\n{}",
        complaints.join("\n")
    );
    asked?;
    browser.quit().await
}

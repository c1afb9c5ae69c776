//! Do the example configurations do what `web/HOSTING.md` says? Each real server is started with ours, the site in a folder
//! below its root, and asked as a browser would ask; then browsers show a tool from it in a frame without an origin.

mod ask;
mod host;

use anyhow::{Result, ensure};
use ask::{Answer, ask};
use host::{FOLDER, Host};
use loopwright_tests::{chromium::Chromium, drive, webkit::WebKit};
use thirtyfour::WebDriver;
use xtask::{files, names, packed};

#[tokio::test]
async fn nginx_serves_the_site_as_the_chapter_says() -> Result<()> {
    serves_well(&Host::nginx()?).await
}

#[tokio::test]
async fn apache_serves_the_site_as_the_chapter_says() -> Result<()> {
    serves_well(&Host::apache()?).await
}

async fn serves_well(host: &Host) -> Result<()> {
    drive::wait_for_port(host.port).await?;
    every_file_has_its_headers(host)?;
    packed_files_are_handed_out(host)?;
    a_frame_without_an_origin_computes(host).await
}

fn every_file_has_its_headers(host: &Host) -> Result<()> {
    let mut site = files::read(&host.site())?;
    packed::take_away(&mut site);
    ensure!(
        site.keys().filter(|path| names::has_hash(path)).count() > 5,
        "few hashes"
    );
    for (path, bytes) in &site {
        let asked = if path == "index.html" { "" } else { path };
        let answer = ask(host.port, &format!("{FOLDER}{asked}"), "identity")?;
        ensure!(
            answer.status == 200 && answer.body == *bytes,
            "{path} is not what it was"
        );
        let kind = xtask::site::kind(path);
        // What only a person reads may be any text.
        ensure!(
            answer.header("content-type").eq_ignore_ascii_case(kind) || kind == "application/octet-stream",
            "{path} is {}",
            answer.header("content-type")
        );
        let keeping = answer.header("cache-control");
        let expected = xtask::site::keeping(path);
        ensure!(keeping == expected, "{path} may be kept: {keeping}");
        for (name, value) in [
            ("access-control-allow-origin", "*"),
            ("cross-origin-resource-policy", "cross-origin"),
            ("x-content-type-options", "nosniff"),
            ("referrer-policy", "no-referrer"),
            ("permissions-policy", xtask::site::NO_DEVICES),
        ] {
            ensure!(
                answer.header(name) == value,
                "{path}: {name} is {}",
                answer.header(name)
            );
        }
        ensure!(answer.header("x-frame-options").is_empty(), "{path} may not be framed");
        let is_worker = path == "sw.js";
        let policy = answer.header("content-security-policy");
        ensure!(policy.is_empty() != is_worker, "{path} has the policy {policy:?}");
    }
    Ok(())
}

fn packed_files_are_handed_out(host: &Host) -> Result<()> {
    let site = files::read(&host.site())?;
    let all: Vec<&String> = site.keys().filter(|path| packed::is_packed(path)).collect();
    ensure!(all.len() > 8, "few files are packed: {all:?}");
    for path in all {
        let (plain, encoding) = match path.strip_suffix(".br") {
            Some(plain) => (plain, "br"),
            None => (path.trim_end_matches(".gz"), "gzip"),
        };
        let whole = ask(host.port, &format!("{FOLDER}{plain}"), "identity")?;
        let answer = ask(host.port, &format!("{FOLDER}{plain}"), encoding)?;
        ensure!(
            answer.header("content-encoding") == encoding && answer.body == site[path],
            "{path} is not handed out"
        );
        for name in ["content-type", "cache-control", "access-control-allow-origin"] {
            let same = answer.header(name) == whole.header(name);
            ensure!(same, "{path}: {name} is {}", answer.header(name));
        }
        let vary = Answer::header(&answer, "vary").to_ascii_lowercase();
        ensure!(vary.contains("accept-encoding"), "{path} varies by {vary:?}");
    }
    // A browser that takes both gets the smaller one.
    let both = ask(host.port, FOLDER, "gzip, deflate, br")?;
    ensure!(both.header("content-encoding") == "br", "brotli is not preferred");
    Ok(())
}

async fn a_frame_without_an_origin_computes(host: &Host) -> Result<()> {
    let guest = format!(
        "http://localhost:{}{FOLDER}#/embed/spacing?stitches=132&amount=16",
        host.port
    );
    host.write(
        "lesson.html",
        &format!("<iframe sandbox='allow-scripts' title=tool src='{guest}'></iframe>"),
    )?;
    let lesson = format!("http://127.0.0.1:{}/lesson.html", host.port);
    let chromium = Chromium::start().await?;
    computes(&chromium.driver, &lesson).await?;
    chromium.quit().await?;
    let webkit = WebKit::start(&host.home()?).await?;
    computes(&webkit.driver, &lesson).await?;
    Ok(webkit.driver.clone().quit().await?)
}

/// Opens the lesson, and waits for the answer of the tool in it.
async fn computes(driver: &WebDriver, lesson: &str) -> Result<()> {
    driver.goto(lesson).await?;
    driver.enter_frame(0).await?;
    drive::until(driver, drive::STARTED).await?;
    drive::until(driver, "document.body.innerText.includes('116')").await
}

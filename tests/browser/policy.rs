//! The page may load from its own address only, whoever shows it. The policy that it carries allows the web, and the page's
//! first script narrows it to that address: what is tried here would be loaded if it did not.

use crate::{
    embed::{enter, lesson},
    stage::Stage,
};
use anyhow::{Context, Result, ensure};
use serde_json::{Value, json};

/// Asks another site for one file of each kind, and for something that runs in the page itself.
const TRY: &str = "const [elsewhere] = arguments;
    window.forbidden = [];
    addEventListener('securitypolicyviolation', ({ effectiveDirective }) => forbidden.push(effectiveDirective));
    const add = (name, properties) => document.body.append(Object.assign(document.createElement(name), properties));
    for (const name of ['script', 'img', 'iframe']) add(name, { src: elsewhere });
    add('link', { rel: 'stylesheet', href: elsewhere });
    add('script', { textContent: 'window.ran = true' });
    fetch(elsewhere).catch(() => {});";

/// The rules that this breaks.
const BROKEN: [&str; 5] = ["script-src", "img-src", "frame-src", "style-src", "connect-src"];

/// A path that nothing else asks for.
const ELSEWHERE: &str = "elsewhere";

/// Opened by itself, in a frame, and in one that is kept apart.
pub async fn the_page_loads_from_its_own_address_only(stage: &mut Stage) -> Result<()> {
    stage.expect_faults();
    let (here, there) = (stage.server.url(), stage.server.other_site());
    stage.open("#/spacing").await?;
    nothing_comes_from(stage, &there).await.context("by itself")?;
    for (kept_apart, tokens) in [("in a frame", "allow-same-origin "), ("kept apart", "")] {
        let address = lesson(stage, "plain.html", |html| html.replace("allow-same-origin ", tokens))?;
        stage.browser.driver.goto(&address).await?;
        enter(&stage.browser, 0).await?;
        nothing_comes_from(stage, &here).await.context(kept_apart)?;
        stage.browser.driver.enter_default_frame().await?;
    }
    Ok(())
}

async fn nothing_comes_from(stage: &Stage, site: &str) -> Result<()> {
    let browser = &stage.browser;
    let address = format!("{site}{ELSEWHERE}");
    browser.ask(TRY, [json!(address)]).await?;
    for rule in BROKEN {
        browser
            .until(&format!("forbidden.some((found) => found.startsWith({rule:?}))"))
            .await
            .with_context(|| format!("{rule} holds nothing back"))?;
    }
    ensure!(
        browser.look_up("window.ran ?? null").await? == Value::Null,
        "a script ran"
    );
    let asked = stage.server.asked();
    let has_asked = asked.iter().any(|path| path.ends_with(ELSEWHERE));
    ensure!(!has_asked, "another site was asked");
    Ok(())
}

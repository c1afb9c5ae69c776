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
    const add = (name, properties, ...text) => {
        const made = document.createElement(name);
        made.append(...text);
        // What Trusted Types refuse is not even put into the page.
        try { Object.assign(made, properties); } catch { return; }
        document.body.append(made);
    };
    for (const name of ['script', 'img', 'iframe']) add(name, { src: elsewhere });
    add('link', { rel: 'stylesheet', href: elsewhere });
    add('script', {}, 'window.ran = true');
    import(elsewhere).catch(() => {});
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

/// Texts put where they would run or become a piece of page, each by a function that answers what came of it; and the policies
/// of Trusted Types that somebody else would make.
const TRUST: &str =
    "const outcome = (put) => { try { put(); return 'taken'; } catch (reason) { return reason.name; } };
    const place = document.createElement('div');
    const script = document.createElement('script');
    return [
        () => { place.innerHTML = '<b>x</b>'; },
        () => place.insertAdjacentHTML('beforeend', '<b>x</b>'),
        () => { script.textContent = 'window.ran = true'; },
        () => { script.src = './boot.js'; },
        () => new DOMParser().parseFromString('<b>x</b>', 'text/html'),
        () => trustedTypes.createPolicy('another', {}),
        () => trustedTypes.createPolicy('loopwright', {}),
        () => trustedTypes.createPolicy('default', {}),
    ].map(outcome).join(' ');";

/// Where a browser knows Trusted Types no text becomes a script or a piece of the page, opened by itself, in a frame and in one
/// that is kept apart; and the page's one policy is taken.
pub async fn text_becomes_a_script_nowhere(stage: &mut Stage) -> Result<()> {
    stage.expect_faults();
    stage.open("#/spacing").await?;
    if stage.browser.look_up("window.trustedTypes ?? null").await?.is_null() {
        println!("skipped: this {:?} knows no Trusted Types", stage.engine);
        return Ok(());
    }
    refuses_text(stage).await.context("by itself")?;
    for (kept_apart, tokens) in [("in a frame", "allow-same-origin "), ("kept apart", "")] {
        let address = lesson(stage, "plain.html", |html| html.replace("allow-same-origin ", tokens))?;
        stage.browser.driver.goto(&address).await?;
        enter(&stage.browser, 0).await?;
        refuses_text(stage).await.context(kept_apart)?;
        stage.browser.driver.enter_default_frame().await?;
    }
    Ok(())
}

async fn refuses_text(stage: &Stage) -> Result<()> {
    let outcomes = stage.browser.run(TRUST).await?;
    let refused = ["TypeError"; 8].join(" ");
    ensure!(outcomes == json!(refused), "texts came to: {outcomes}");
    Ok(())
}

/// A teacher's page may require Trusted Types and trust no policy: the element needs none.
pub async fn an_element_computes_on_a_page_that_trusts_no_text(stage: &mut Stage) -> Result<()> {
    const REQUIRED: &str = "require-trusted-types-for 'script'; trusted-types 'none'; script-src";
    let address = lesson(stage, "index.html", |html| html.replace("script-src", REQUIRED))?;
    stage.browser.driver.goto(&address).await?;
    enter(&stage.browser, 0).await?;
    stage.browser.until("document.querySelector('.answer .row')").await?;
    stage.browser.driver.enter_default_frame().await?;
    Ok(())
}

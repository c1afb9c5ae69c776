//! Every state of the gallery and every other page, on a phone and on a tablet, by day and at dusk: nothing is cut
//! off, nothing stands out of the page, and there is no barrier that a machine can find.

use crate::{
    browser::Engine,
    stage::Stage,
    states::{PHONE, TABLET},
};
use anyhow::{Context, Result, ensure};
use loopwright_tests::chromium::View;
use serde_json::{Value, json};
use std::{env, fs};

/// What is wrong with how the page is laid out, in a list of words.
const LAID_OUT: &str = include_str!("layout.js");

/// What axe-core finds.
const BARRIERS: &str = include_str!("barriers.js");

/// On a phone, by day.
pub async fn every_state_fits_a_phone_by_day(stage: &mut Stage) -> Result<()> {
    every_state(stage, PHONE).await
}

/// On a phone, at dusk.
pub async fn every_state_fits_a_phone_at_dusk(stage: &mut Stage) -> Result<()> {
    every_state(stage, View { dark: true, ..PHONE }).await
}

/// On a phone that lies on its side: as wide as a tablet, and low.
pub async fn every_state_fits_a_phone_on_its_side(stage: &mut Stage) -> Result<()> {
    let lying = View {
        width: PHONE.height,
        height: PHONE.width,
        dark: false,
    };
    every_state(stage, lying).await
}

/// On a tablet, by day.
pub async fn every_state_fits_a_tablet_by_day(stage: &mut Stage) -> Result<()> {
    every_state(stage, TABLET).await
}

/// On a tablet, at dusk.
pub async fn every_state_fits_a_tablet_at_dusk(stage: &mut Stage) -> Result<()> {
    every_state(stage, View { dark: true, ..TABLET }).await
}

async fn every_state(stage: &mut Stage, view: View) -> Result<()> {
    let axe = axe()?;
    let width = begin(stage, view, axe.as_deref()).await?;
    let has_axe = axe.is_some();
    finds_what_is_wrong(&Look::at(stage, &width, has_axe)).await?;
    let mut found = Vec::new();
    for page in pages(stage).await? {
        let seen = Look::at(stage, &width, has_axe).wrong(&page).await;
        found.extend(match seen {
            Ok(wrong) => wrong,
            // A browser that ends on a walk of a hundred pages may be short of something; one that ends at a page twice
            // ends because of it.
            Err(why) => {
                println!("{page}: {why:#}; looked at again in a new browser");
                stage.prefer(json!({})).await?;
                begin(stage, view, axe.as_deref()).await?;
                Look::at(stage, &width, has_axe).wrong(&page).await?
            }
        });
    }
    found.dedup();
    ensure!(found.is_empty(), "{}", found.join("\n"));
    Ok(())
}

/// Opens the gallery in a window of this size, with what finds barriers in it, and says how wide the page is.
async fn begin(stage: &Stage, view: View, axe: Option<&str>) -> Result<Value> {
    let browser = &stage.browser;
    browser.look(view).await?;
    stage.open("#/gallery").await?;
    let width = browser.look_up("innerWidth").await?;
    // A window of WebKit's has a frame and a bar of its own; there it is about that size.
    let exact = stage.engine == Engine::Chromium;
    ensure!(
        !exact || width == json!(view.width),
        "the page is {width} wide, not {}",
        view.width
    );
    if let Some(axe) = axe {
        browser.run(axe).await?;
    }
    Ok(width)
}

/// Whoever finds nothing must be able to find something.
async fn finds_what_is_wrong(look: &Look<'_>) -> Result<()> {
    const SPOIL: &str = "const wide = document.createElement('img');
        wide.id = 'wrong';
        wide.style.cssText = 'display: block; inline-size: 3000px; block-size: 9px';
        document.querySelector('main').append(wide);";
    let browser = &look.stage.browser;
    browser.run(SPOIL).await?;
    let found = look.faults("spoiled").await?.join("\n");
    ensure!(
        found.contains("scrolls sideways") && found.contains("img#wrong"),
        "a wide page is not found: {found}"
    );
    let found = look.barriers("spoiled").await?.join("\n");
    ensure!(
        !look.axe || found.contains("image-alt"),
        "a nameless picture is not found: {found}"
    );
    browser.run("document.getElementById('wrong').remove()").await?;
    Ok(())
}

/// The states that the gallery lists, and the other pages.
async fn pages(stage: &Stage) -> Result<Vec<String>> {
    const STATES: &str =
        "return [...document.querySelectorAll('a[data-state]')].map((link) => link.getAttribute('href'))";
    let states = stage.browser.run(STATES).await?;
    let states: Vec<String> = serde_json::from_value(states)?;
    ensure!(states.len() > 10, "the gallery lists only {states:?}");
    let others = ["#/", "#/about", "#/gallery", "#/spacing"].map(str::to_owned);
    let embedded = ["#/embed/spacing?stitches=132&amount=16".to_owned()];
    Ok(others.into_iter().chain(states).chain(embedded).collect())
}

/// How the pages are looked at.
struct Look<'a> {
    stage: &'a Stage,
    width: &'a Value,
    axe: bool,
}

impl<'a> Look<'a> {
    fn at(stage: &'a Stage, width: &'a Value, axe: bool) -> Self {
        Self { stage, width, axe }
    }

    /// What is wrong with a page, as it opens and with everything unfolded.
    async fn wrong(&self, page: &str) -> Result<Vec<String>> {
        let browser = &self.stage.browser;
        browser.go(page).await?;
        browser.until("document.querySelector('main h1')").await?;
        let mut found = self.faults(page).await?;
        browser
            .run("document.querySelectorAll('details').forEach((details) => { details.open = true; })")
            .await?;
        browser.settle().await?;
        found.extend(self.faults(page).await?);
        found.extend(self.barriers(page).await?);
        Ok(found)
    }

    /// What is wrong with the layout.
    async fn faults(&self, page: &str) -> Result<Vec<String>> {
        let list = self.stage.browser.ask(LAID_OUT, [self.width.clone()]).await?;
        told(page, &list)
    }

    /// What axe-core finds, if it is here.
    async fn barriers(&self, page: &str) -> Result<Vec<String>> {
        if !self.axe {
            return Ok(Vec::new());
        }
        let list = self.stage.browser.driver.execute_async(BARRIERS, []).await?;
        told(page, list.json())
    }
}

/// A script's list of words, each with the page it is about.
fn told(page: &str, list: &Value) -> Result<Vec<String>> {
    let words: Vec<String> =
        serde_json::from_value(list.clone()).with_context(|| format!("not a list of words: {list}"))?;
    Ok(words.into_iter().map(|fault| format!("{page}: {fault}")).collect())
}

fn axe() -> Result<Option<String>> {
    let Some(place) = env::var_os("LOOPWRIGHT_AXE") else {
        println!("skipped: barriers are not looked for, because LOOPWRIGHT_AXE names no script");
        return Ok(None);
    };
    let script = fs::read_to_string(&place);
    Ok(Some(
        script.with_context(|| format!("no axe-core at {}", place.display()))?,
    ))
}

//! Every state of the gallery and every other page, on a phone and on a tablet, by day and at dusk: nothing is cut
//! off, nothing stands out of the page, and there is no barrier that a machine can find.
//!
//! A walk keeps one page open and goes from state to state by the address. The layout is looked at on every walk.
//! Barriers depend on the page's elements and colours and hardly on its width, and dusk changes colours alone. So there
//! is one walk a width, and barriers are looked for twice: by day where the most is side by side, and at dusk where the
//! least is.

use crate::{
    browser::Browser,
    differences::Difference,
    stage::Stage,
    states::{self, PHONE, TABLET},
};
use anyhow::{Context, Result, ensure};
use loopwright_tests::chromium::View;
use serde_json::{Value, json};
use std::{env, fs};

/// What is wrong with how the page is laid out, in a list of words.
const LAID_OUT: &str = include_str!("layout.js");

/// What axe-core finds.
const BARRIERS: &str = include_str!("barriers.js");

/// Opens whatever is folded away, and says whether anything was.
const UNFOLD: &str = "const folded = [...document.querySelectorAll('details:not([open])')];
    for (const details of folded) details.open = true;
    return folded.length > 0;";

/// What a walk looks for.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum LookFor {
    Layout,
    LayoutAndBarriers,
}

/// On a phone, at dusk where the browser's light can be changed.
pub async fn every_state_fits_a_phone(stage: &mut Stage) -> Result<()> {
    every_state(stage, View { dark: true, ..PHONE }, LookFor::LayoutAndBarriers).await
}

/// On a phone that lies on its side: as wide as a tablet, and low.
pub async fn every_state_fits_a_phone_on_its_side(stage: &mut Stage) -> Result<()> {
    let lying = View {
        width: PHONE.height,
        height: PHONE.width,
        dark: false,
    };
    every_state(stage, lying, LookFor::Layout).await
}

/// On a tablet, by day.
pub async fn every_state_fits_a_tablet_by_day(stage: &mut Stage) -> Result<()> {
    let look_for = if stage.engine.has(Difference::BarriersElsewhere) {
        LookFor::Layout
    } else {
        LookFor::LayoutAndBarriers
    };
    every_state(stage, TABLET, look_for).await
}

async fn every_state(stage: &Stage, view: View, look_for: LookFor) -> Result<()> {
    let axe = match look_for {
        LookFor::Layout => None,
        LookFor::LayoutAndBarriers => axe()?,
    };
    stage.browser.look(view).await?;
    let pages = pages(stage).await?;
    let look = Look::begin(stage, view, axe.as_deref()).await?;
    finds_what_is_wrong(&look).await?;
    let mut found = Vec::new();
    for page in pages {
        found.extend(look.wrong(&page).await?);
    }
    found.dedup();
    ensure!(found.is_empty(), "{}", found.join("\n"));
    Ok(())
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
    let states = states::named(stage).await?.into_iter().map(|state| state.page);
    let others = ["#/", "#/about", "#/about/links", "#/gallery", "#/spacing"].map(str::to_owned);
    let embedded = ["#/embed/spacing?stitches=132&amount=16".to_owned()];
    Ok(others.into_iter().chain(states).chain(embedded).collect())
}

/// How the pages are looked at.
struct Look<'a> {
    stage: &'a Stage,
    width: Value,
    axe: bool,
}

impl<'a> Look<'a> {
    /// Looks from now on at the page that is open; `axe` is put into it.
    async fn begin(stage: &'a Stage, view: View, axe: Option<&str>) -> Result<Self> {
        let width = stage.browser.look_up("innerWidth").await?;
        ensure!(
            stage.engine.has(Difference::AboutThatSize) || width == json!(view.width),
            "the page is {width} wide, not {}",
            view.width
        );
        if let Some(axe) = axe {
            stage.browser.run(axe).await?;
        }
        let axe = axe.is_some();
        Ok(Self { stage, width, axe })
    }

    /// What is wrong with a page, as it opens and with everything unfolded.
    async fn wrong(&self, page: &str) -> Result<Vec<String>> {
        let browser = &self.stage.browser;
        self.stage.looked_at(page);
        browser.go(page).await?;
        browser.until("document.querySelector('main h1')").await?;
        let mut found = self.faults(page).await?;
        if browser.run(UNFOLD).await? == json!(true) {
            browser.settle().await?;
            found.extend(self.faults(page).await?);
        }
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

/// What axe-core finds on any page that is open.
pub async fn barriers(browser: &Browser, axe: &str, page: &str) -> Result<Vec<String>> {
    browser.run(axe).await?;
    told(page, browser.driver.execute_async(BARRIERS, []).await?.json())
}

/// A script's list of words, each with the page it is about.
fn told(page: &str, list: &Value) -> Result<Vec<String>> {
    let words: Vec<String> =
        serde_json::from_value(list.clone()).with_context(|| format!("not a list of words: {list}"))?;
    Ok(words.into_iter().map(|fault| format!("{page}: {fault}")).collect())
}

/// The script of axe-core, if it is here.
pub fn axe() -> Result<Option<String>> {
    let Some(place) = env::var_os("LOOPWRIGHT_AXE") else {
        println!("skipped: barriers are not looked for, because LOOPWRIGHT_AXE names no script");
        return Ok(None);
    };
    let script = fs::read_to_string(&place);
    Ok(Some(
        script.with_context(|| format!("no axe-core at {}", place.display()))?,
    ))
}

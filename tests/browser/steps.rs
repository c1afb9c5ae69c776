//! The steps of a job as a table: what a knitter opens, types and presses, and what she reads then. A scenario that is
//! only that is a list of steps; they are played in their order, and a step that reads waits until it can be read.

use crate::{
    browser::{Browser, words_of},
    stage::Stage,
};
use anyhow::{Context, Result, ensure};

/// One step. Elements are named by their selector; what is read is compared on one line, whatever the spaces.
#[derive(Clone, Copy, Debug)]
pub enum Step {
    /// Opens an address afresh.
    Open(&'static str),
    /// Opens the first page and goes to a tool by one tap.
    Enter(&'static str),
    /// Goes to another address of the page.
    Go(&'static str),
    /// Types into a field, over what stands there.
    Type(&'static str, &'static str),
    /// Chooses by the stored key.
    Choose(&'static str, &'static str),
    /// Presses an element.
    Press(&'static str),
    /// Presses the button with these words inside an element.
    Button(&'static str, &'static str),
    /// Opens the fields that have a sensible start.
    Unfold,
    /// Waits until everything typed is kept.
    Kept,
    /// Reloads the page.
    Reload,
    /// The line of the answer is this.
    Reads(&'static str),
    /// What the answer comes to is this.
    Outcome(&'static str),
    /// An element's words are these.
    Is(&'static str, &'static str),
    /// An element's words begin so.
    Begins(&'static str, &'static str),
    /// An element's words have these among them.
    Says(&'static str, &'static str),
    /// An element's words do not have these among them.
    NeverSays(&'static str, &'static str),
    /// The name of a drawing has these words in it.
    Named(&'static str, &'static str),
    /// A field holds this.
    Holds(&'static str, &'static str),
    /// There is such an element.
    Shown(&'static str),
    /// There is no such element to be seen; and why there must not be.
    Hides(&'static str, &'static str),
}

/// Plays the steps in their order.
pub async fn play(stage: &Stage, steps: &[Step]) -> Result<()> {
    for (place, step) in steps.iter().enumerate() {
        let told = || format!("step {}, {step:?}", place + 1);
        play_one(stage, *step).await.with_context(told)?;
    }
    Ok(())
}

async fn play_one(stage: &Stage, step: Step) -> Result<()> {
    let browser = &stage.browser;
    match step {
        Step::Open(address) => stage.open(address).await,
        Step::Enter(tool) => enter(stage, tool).await,
        Step::Go(address) => browser.go(address).await,
        Step::Type(field, text) => browser.type_into(field, text).await,
        Step::Choose(field, key) => browser.choose(field, key).await,
        Step::Press(css) => browser.press(css).await,
        Step::Button(within, words) => browser.press_button(within, words).await,
        Step::Unfold => unfold(browser).await,
        Step::Kept => stage.until_kept().await,
        Step::Reload => browser.reload().await,
        Step::Reads(line) => until(browser, ".answer .row", &format!(" === {line:?}")).await,
        Step::Outcome(words) => until(browser, ".answer .outcome strong", &format!(" === {words:?}")).await,
        Step::Is(css, words) => until(browser, css, &format!(" === {words:?}")).await,
        Step::Begins(css, words) => until(browser, css, &format!("?.startsWith({words:?})")).await,
        Step::Says(css, words) => until(browser, css, &format!("?.includes({words:?})")).await,
        Step::NeverSays(css, words) => {
            browser.settle().await?;
            until(browser, css, &format!("?.includes({words:?}) === false")).await
        }
        Step::Named(css, words) => {
            let name = format!("document.querySelector({css:?})?.ariaLabel.replace(/\\s+/g, ' ')");
            browser.until(&format!("{name}.includes({words:?})")).await
        }
        Step::Holds(field, text) => {
            browser.settle().await?;
            browser
                .until(&format!("document.querySelector({field:?}).value === {text:?}"))
                .await
        }
        Step::Shown(css) => browser.until(&format!("document.querySelector({css:?})")).await,
        Step::Hides(css, why) => {
            browser.settle().await?;
            ensure!(!browser.shows(css).await?, "{why}");
            Ok(())
        }
    }
}

async fn enter(stage: &Stage, tool: &str) -> Result<()> {
    stage.open("").await?;
    stage.browser.press(&format!("main a[href='#/{tool}']")).await?;
    stage.browser.until("document.querySelector('form.question')").await
}

/// Opens the fields that have a sensible start.
pub async fn unfold(browser: &Browser) -> Result<()> {
    browser.press("details.more summary").await?;
    browser.until("document.querySelector('details.more').open").await
}

/// Waits until the words of an element are as a comparison in the page's own language says.
async fn until(browser: &Browser, css: &str, compares: &str) -> Result<()> {
    browser.until(&format!("{}{compares}", words_of(css))).await
}

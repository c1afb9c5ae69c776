//! What every scenario stands on: a browser, a server, and an end that is reached whatever happens.
//!
//! A scenario that fails is played once more in a new browser. If it passes then it is shaky: that is said at once, and
//! noted in `target/browser-failures/shaky.txt`, which the whole run says again at its end. If it fails twice it has
//! failed: a picture and the page are in `target/browser-failures/`, and the words on the screen in the message. How each
//! one ended is noted for the table of engines (`notes.rs`).

use crate::{
    browser::{Browser, Engine, Storage, one_line},
    differences::Difference,
    folder::Folder,
    needs::Needs,
    notes, power,
    server::{Server, named},
};
use anyhow::{Context, Result, anyhow, ensure};
use loopwright_tests::drive::used_up;
use serde_json::json;
use std::{
    cell::RefCell,
    collections::BTreeSet,
    fs::{self, OpenOptions},
    io::{self, Write},
    path::{Path, PathBuf},
    sync::LazyLock,
    time::{Duration, Instant},
};
use tokio::runtime::Runtime;
use xtask::engines::Outcome;

/// What the page says in its footer when everything typed is stored.
pub const KEPT: &str = "Kept on this device";

/// The longest that one scenario may take on a quiet machine.
const LONGEST: Duration = Duration::from_secs(150);

/// One for all scenarios: a browser that is used again is spoken to from where it was started.
static RUNTIME: LazyLock<Runtime> = LazyLock::new(|| {
    let runtime = tokio::runtime::Builder::new_multi_thread().enable_all().build();
    runtime.expect("a runtime")
});

/// A browser and a server for one scenario.
pub struct Stage {
    /// Which browser.
    pub engine: Engine,
    /// The browser.
    pub browser: Browser,
    /// The server.
    pub server: Server,
    /// A folder for what the scenario makes.
    pub folder: Folder,
    /// The folder of the built page.
    pub dist: PathBuf,
    needs: Needs,
    profile: Folder,
    faults_expected: bool,
    states: RefCell<BTreeSet<String>>,
}

/// Plays a scenario in a browser, and once more in a new one if it fails; and notes how it ended.
pub fn play(engine: Engine, scenes: &str, name: &str, scenario: impl AsyncFn(&mut Stage) -> Result<()>) {
    let begun = Instant::now();
    let needs = Needs::of(&[scenes, "::", name].concat());
    let played = || RUNTIME.block_on(play_once(engine, needs, name, &scenario));
    let note = |outcome, states| {
        let noted = notes::add(engine, scenes, name, outcome, begun.elapsed(), states);
        if let Err(why) = noted {
            let _ = writeln!(io::stderr(), "the end of {engine:?} {name} could not be noted: {why:#}");
        }
    };
    let first = match played() {
        Ok(states) => return note(Outcome::Passed, states),
        Err(first) => first,
    };
    match played() {
        Ok(states) => {
            note_shaky(engine, name, &first);
            note(Outcome::Shaky(one_line(&first.root_cause().to_string())), states);
        }
        Err(second) => {
            note(
                Outcome::Failed(one_line(&second.root_cause().to_string())),
                BTreeSet::new(),
            );
            panic!("{}\n\nplayed again: {}", reasons(&first), reasons(&second));
        }
    }
}

/// The states of the gallery that were looked at.
async fn play_once(
    engine: Engine,
    needs: Needs,
    name: &str,
    scenario: &impl AsyncFn(&mut Stage) -> Result<()>,
) -> Result<BTreeSet<String>> {
    let mut stage = Stage::set(engine, needs).await?;
    let outcome = tokio::select! {
        outcome = scenario(&mut stage) => outcome,
        () = used_up(LONGEST) => Err(anyhow!("not over after {LONGEST:?} of a quiet machine")),
    };
    let outcome = match outcome {
        Ok(()) => stage.without_faults().await,
        failed => failed,
    };
    match outcome {
        Ok(()) => {
            stage.browser.rest().await;
            Ok(stage.states.take())
        }
        Err(why) => {
            let seen = stage.seen(name).await;
            stage.browser.quit().await;
            Err(why.context(seen))
        }
    }
}

fn reasons(why: &anyhow::Error) -> String {
    let reasons: Vec<String> = why.chain().map(ToString::to_string).collect();
    reasons.join("\nbecause: ")
}

/// Says that a scenario passed only when it was played again. Past the test's own output, which is shown of failures
/// only.
fn note_shaky(engine: Engine, name: &str, first: &anyhow::Error) {
    let _ = writeln!(
        io::stderr(),
        "shaky: {engine:?} {name}, which failed at first:\n{}",
        reasons(first)
    );
    let noted = failures().and_then(|folder| {
        let mut notes = OpenOptions::new()
            .create(true)
            .append(true)
            .open(folder.join("shaky.txt"))?;
        Ok(writeln!(
            notes,
            "{engine:?} {name}: {}",
            one_line(&first.root_cause().to_string())
        )?)
    });
    if let Err(why) = noted {
        let _ = writeln!(io::stderr(), "this could not be noted: {why:#}");
    }
}

impl Stage {
    async fn set(engine: Engine, needs: Needs) -> Result<Self> {
        let dist = named("LOOPWRIGHT_DIST", "dist")?;
        let server = Server::start(&dist)?;
        let profile = Folder::new()?;
        let browser = Browser::start(engine, needs, &profile, Storage::Allowed).await?;
        Ok(Self {
            engine,
            browser,
            server,
            folder: Folder::new()?,
            dist,
            needs,
            profile,
            faults_expected: false,
            states: RefCell::default(),
        })
    }

    /// The address of a page of the app.
    pub fn at(&self, hash: &str) -> String {
        self.server.url() + hash
    }

    /// Opens a page of the app afresh. Where its power will be cut, Firefox puts the page's files away first: one that is
    /// ended in the midst of that counts its storage wrongly, and says that it is full until it is started once more.
    pub async fn open(&self, hash: &str) -> Result<()> {
        self.browser.open(&self.at(hash)).await?;
        match (self.engine, self.needs) {
            (Engine::Firefox, Needs::OwnProfile) => self.until_offline().await,
            _ => Ok(()),
        }
    }

    /// Opens a page of the app and waits until all files are on the machine.
    pub async fn open_and_keep(&self, hash: &str) -> Result<()> {
        self.open(hash).await?;
        self.until_offline().await
    }

    /// Waits until all files are on the machine and a page that is loaded is answered from there.
    pub async fn until_offline(&self) -> Result<()> {
        let ready = "document.documentElement.dataset.offline === 'ready' && navigator.serviceWorker.controller";
        self.browser.until(ready).await
    }

    /// Waits until the page says that everything typed is stored.
    pub async fn until_kept(&self) -> Result<()> {
        let footer = "document.querySelector('footer.keeping')?.innerText";
        self.browser.until(&format!("{footer}.trim() === {KEPT:?}")).await
    }

    /// Ends the browser without a word of warning and starts it again on the same profile.
    pub async fn lose_power(&mut self) -> Result<()> {
        power::cut(self.engine, &self.profile).await?;
        self.browser.forget();
        self.browser = Browser::start(self.engine, self.needs, &self.profile, Storage::Allowed).await?;
        Ok(())
    }

    /// Starts the browser again so that no page may keep anything, on a profile of its own.
    pub async fn deny_storage(&mut self) -> Result<()> {
        let profile = Folder::new()?;
        let browser = Browser::start(self.engine, self.needs, &profile, Storage::Denied).await?;
        std::mem::replace(&mut self.browser, browser).quit().await;
        self.profile = profile;
        Ok(())
    }

    /// Notes that this page was looked at, if it is a state of the gallery.
    pub fn looked_at(&self, page: &str) {
        if let Some(state) = page.strip_prefix("#/gallery/") {
            self.states.borrow_mut().insert(state.to_owned());
        }
    }

    /// From here on the browser may complain: the scenario spoils something on purpose.
    pub fn expect_faults(&mut self) {
        self.faults_expected = true;
    }

    /// No error in the console and no breach of the page's policy, as far as the browser tells.
    pub async fn without_faults(&self) -> Result<()> {
        if self.faults_expected {
            return Ok(());
        }
        let faults = self.browser.run("return window.faults ?? []").await?;
        ensure!(faults == json!([]), "the page complains: {faults}");
        if self.engine.has(Difference::NoLog) {
            return Ok(());
        }
        let log = self.browser.driver.browser_log().await?;
        let bad = log
            .iter()
            .filter(|entry| matches!(entry.level.as_str(), "SEVERE" | "WARNING"));
        let bad: Vec<&str> = bad.map(|entry| entry.message.as_str()).collect();
        ensure!(bad.is_empty(), "the browser complains:\n{}", bad.join("\n"));
        Ok(())
    }

    /// What is on the screen, for the message of a failure; with a picture.
    async fn seen(&self, name: &str) -> String {
        let look = async {
            let folder = failures()?;
            let picture = folder.join(format!("{:?}-{name}.png", self.engine));
            let words = self.browser.run("return document.body.innerText").await?;
            let source = self.browser.driver.source().await?;
            fs::write(picture.with_extension("html"), source)?;
            self.browser.driver.screenshot(&picture).await?;
            let address = self.browser.driver.current_url().await?;
            let words = one_line(words.as_str().unwrap_or_default());
            anyhow::Ok(format!(
                "{:?} at {address}\non the screen: {words}\npicture: {}",
                self.engine,
                picture.display()
            ))
        };
        let look = tokio::time::timeout(Duration::from_secs(10), look).await;
        match look {
            Ok(Ok(seen)) => seen,
            Ok(Err(why)) => format!("{:?}, the screen could not be seen: {why}", self.engine),
            Err(_) => format!("{:?} does not answer", self.engine),
        }
    }
}

fn failures() -> Result<PathBuf> {
    let folder = target()?.join("browser-failures");
    fs::create_dir_all(&folder)?;
    Ok(folder)
}

/// Cargo's target folder.
pub fn target() -> Result<&'static Path> {
    let target = Path::new(env!("CARGO_TARGET_TMPDIR")).parent();
    target.context("no target folder")
}

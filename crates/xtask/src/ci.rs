//! All that has to hold before a change is kept, in one chore, cheapest first; it stops at the first step that fails.
//!
//! It installs what it needs. Nothing is skipped in silence: what cannot be done on a person's machine is said, and
//! where `CI` is set it is an error.
//!
//! Lints, documentation, tests and browser tests all ask cargo for the whole workspace with the features that drive a
//! browser. The choice of packages decides the features of what they depend on; with another choice the same crates
//! would be compiled once more.

use crate::{
    browsers, build, compile, elsewhere, files, house, npm, npm_package, packages,
    run::{minutes, run, say},
    tidy, tools,
};
use anyhow::{Context, Result, ensure};
use std::{
    process::Command,
    time::{Duration, Instant},
};

/// How much is tested.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Extent {
    /// Everything.
    Whole,
    /// What needs no browser and no second build: for a person in the middle of a change.
    Quick,
}

/// The feature with which the tests' crate has all that its browser tests depend on.
const DRIVEN: &str = "loopwright-tests/driven";

/// Makes a warning an error.
const LINT: [&str; 3] = ["--", "-D", "warnings"];

/// Runs every step. The last one is a run of tests, so that its result is the last thing printed.
pub fn test(extent: Extent) -> Result<()> {
    let mut steps = Steps::default();
    compile::add_target()?;
    sources(&mut steps)?;
    steps.take("release build", build::build)?;
    steps.take("tidiness of what is shipped", tidy::tidy_built)?;
    match extent {
        Extent::Quick => steps.last("the package for JavaScript", package),
        Extent::Whole => {
            steps.take("the package for JavaScript", package)?;
            steps.take("the same bytes from another folder", elsewhere::same_bytes)?;
            browsers::play(&mut steps)?;
            steps.take("the package in a bundled page", bundle)?;
            steps.take("the site on real servers", hosting)?;
            live_reload(&mut steps)
        }
    }
}

/// Measures how long the sums take, and then a project of sixty steps: to be derived, and to be read and written.
pub fn bench() -> Result<()> {
    // The benches are all in the tests' crate; to build more than that with full optimisation takes minutes.
    let arguments = ["bench", "--locked", "--package", "loopwright-tests", "--benches"];
    run(&mut cargo(&arguments), minutes(60))?;
    // Steps are answered by the tools, and those are the app's: what is measured stands among its tests.
    let arguments = [
        "test",
        "--release",
        "--locked",
        "--package",
        house::APP,
        "how_long_a_project_takes",
    ];
    let mut command = cargo(&arguments);
    command.args(["--", "--ignored", "--nocapture"]);
    run(&mut command, minutes(60))
}

/// Writes down anew what the browser tests compare: the text of every named state, what stands below old links, and where
/// the engines differ.
pub fn snapshot() -> Result<()> {
    build::build_folder()?;
    packages::install()?;
    let mut command = browser_test("browser");
    command.env("LOOPWRIGHT_SNAPSHOT", "write");
    command.args([
        "chromium::every_state_says",
        "chromium::a_log_from",
        "chromium::links_from",
        "differences::the_readme",
    ]);
    run(&mut command, minutes(10))
}

/// Measures anew how high each tool is inside another page, and builds the page once more, with what was measured in it.
pub fn heights() -> Result<()> {
    build::build_folder()?;
    packages::install()?;
    let mut command = browser_test("browser");
    command
        .env("LOOPWRIGHT_HEIGHTS", "write")
        .arg("chromium::every_tool_is_as_high");
    run(&mut command, minutes(10))?;
    build::build_folder()
}

/// What can be said of the sources without a browser. The benches are run once as tests: that they work is shown, and
/// how fast they are is not asked.
fn sources(steps: &mut Steps) -> Result<()> {
    steps.take("formatting", || run(&mut formatting()?, minutes(2)))?;
    steps.take("tidiness of the sources", tidy::tidy_sources)?;
    steps.take("lints", || {
        let mut command = workspace("clippy");
        run(
            command.args(["--all-targets", "--all-features"]).args(LINT),
            minutes(15),
        )
    })?;
    steps.take("lints of what runs in the browser", || {
        let mut command = cargo(&["clippy", "--locked", "--target", house::WASM_TARGET]);
        let packages = ["--package", house::APP, "--package", "loopwright-js"];
        run(command.args(packages).args(LINT), minutes(15))
    })?;
    steps.take("documentation", || {
        let mut command = workspace("doc");
        command.args(["--no-deps", "--features", DRIVEN]);
        run(command.env("RUSTDOCFLAGS", "-D warnings"), minutes(10))
    })?;
    steps.take("the crate as it would be published", || {
        // Built once more from what is packed, without the network: nothing it needs lies outside of it.
        let arguments = [
            "package",
            "--locked",
            "--offline",
            "--allow-dirty",
            "--package",
            "loopwright",
        ];
        run(&mut cargo(&arguments), minutes(10))
    })?;
    steps.take("tests", || {
        run(workspace("test").args(["--features", DRIVEN]), minutes(15))
    })
}

/// Every Rust file by name: `cargo fmt` does not see the modules that the list of tools expands to.
fn formatting() -> Result<Command> {
    let mut command = Command::new("rustfmt");
    command.args(["--check", "--edition", house::EDITION]);
    for folder in ["crates", "tests"] {
        let folder = house::root().join(folder);
        let paths = files::read(&folder)?.into_keys();
        command.args(paths.filter(|path| path.ends_with(".rs")).map(|path| folder.join(path)));
    }
    Ok(command)
}

/// The package for JavaScript, used from node and read by a type checker.
fn package() -> Result<()> {
    let folder = npm_package::build()?;
    let features = [DRIVEN, "loopwright-js/package"].join(",");
    let mut command = workspace("test");
    command.args(["--features", &features, "--test", "package"]);
    command.env("LOOPWRIGHT_NPM", folder);
    if let Some(compiler) = npm::fetch("typescript", house::TYPESCRIPT)? {
        command.env("LOOPWRIGHT_TSC", compiler);
    }
    if let Some(bundler) = npm::fetch("vite", house::VITE)? {
        command.env("LOOPWRIGHT_VITE", bundler);
    }
    run(&mut command, minutes(10))
}

/// The page that the package's tests bundled, in a browser; there is none where the bundler could not be had.
fn bundle() -> Result<()> {
    let folder = house::target_folder()?.join("tmp/bundled/dist");
    if !folder.exists() && !house::is_ci() {
        say("The bundled page is not opened: there is none");
        return Ok(());
    }
    run(browser_test("bundle").env("LOOPWRIGHT_BUNDLE", folder), minutes(5))
}

/// The site on the servers that the examples are written for. A person's machine may lack them and be unable to install
/// them, which is said; a machine may not.
fn hosting() -> Result<()> {
    if let Err(why) = packages::install_servers() {
        ensure!(!house::is_ci(), "the servers are needed: {why:#}");
        say(&format!("The examples for servers are not tried: {why:#}"));
        return Ok(());
    }
    let mut command = browser_test("hosting");
    run(command.env("LOOPWRIGHT_DIST", house::root().join("dist")), minutes(5))
}

/// That `trunk serve` gives a working page.
fn live_reload(steps: &mut Steps) -> Result<()> {
    let mut folders = Vec::new();
    steps.take("trunk", || {
        for tool in [tools::TRUNK, tools::WASM_BINDGEN] {
            folders.extend(tools::install(&tool)?);
        }
        Ok(())
    })?;
    steps.last("the page under trunk serve", || {
        let path = tools::path_with(&folders)?;
        run(browser_test("trunk").env("PATH", path), minutes(10))
    })
}

/// A target of the tests' crate that needs a browser; each is behind a feature of its own name.
pub fn browser_test(name: &str) -> Command {
    let feature = ["loopwright-tests/", name].concat();
    let mut command = workspace("test");
    command.args(["--features", &feature, "--test", name, "--"]);
    command
}

/// A command of cargo for the whole workspace.
fn workspace(command: &str) -> Command {
    cargo(&[command, "--locked", "--workspace"])
}

fn cargo(arguments: &[&str]) -> Command {
    let mut command = Command::new("cargo");
    command.args(arguments).current_dir(house::root());
    command
}

/// Counts the steps, takes their time, and says both at the end.
#[derive(Default)]
pub struct Steps {
    done: Vec<(&'static str, Duration)>,
    /// Scenarios that failed at first and passed when they were played again.
    pub shaky: Vec<String>,
}

impl Steps {
    /// Takes one step, and its time.
    pub fn take(&mut self, name: &'static str, step: impl FnOnce() -> Result<()>) -> Result<()> {
        say(&format!("Step {}: {name}", self.done.len() + 1));
        let start = Instant::now();
        step().with_context(|| format!("the step \"{name}\" failed"))?;
        self.done.push((name, start.elapsed()));
        Ok(())
    }

    /// The last step: what came before it is summed up first, since its own result is to be the last thing printed.
    fn last(&mut self, name: &'static str, step: impl FnOnce() -> Result<()>) -> Result<()> {
        self.summary();
        self.take(name, step)
    }

    fn summary(&self) {
        for (name, time) in &self.done {
            say(&format!("{:>7.1} s  {name}", time.as_secs_f32()));
        }
        let total: Duration = self.done.iter().map(|step| step.1).sum();
        say(&format!("{:>7.1} s  so far", total.as_secs_f32()));
        for scenario in &self.shaky {
            say(&format!("shaky, passed when played again: {scenario}"));
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use anyhow::anyhow;

    #[test]
    fn a_failing_step_is_named_and_stops_the_rest() {
        let mut steps = Steps::default();
        steps.take("one", || Ok(())).unwrap();
        let error = steps.take("two", || Err(anyhow!("broken"))).unwrap_err();
        assert_eq!(format!("{error:#}"), "the step \"two\" failed: broken");
        assert_eq!(steps.done.len(), 1);
    }
}

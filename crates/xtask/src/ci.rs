//! All that has to hold before a change is kept, in one chore, cheapest first; it stops at the first step that fails.
//!
//! It installs what it needs. Nothing is skipped in silence: what cannot be done on a person's machine is said, and
//! where `CI` is set it is an error.

use crate::{
    build, compile, elsewhere, files, house, npm, npm_package, packages,
    run::{minutes, run, say},
    tidy, tools,
};
use anyhow::{Context, Result, ensure};
use std::{
    path::PathBuf,
    process::Command,
    time::{Duration, Instant},
};

/// Runs every step.
pub fn test() -> Result<()> {
    let mut steps = Steps::default();
    compile::add_target()?;
    sources(&mut steps)?;
    release(&mut steps)?;
    browsers(&mut steps)?;
    live_reload(&mut steps)
}

/// Measures how long the sums take.
pub fn bench() -> Result<()> {
    run(&mut benches(), minutes(60))
}

/// Writes down anew what the browser tests compare: the text of every named state, and what stands below old links.
pub fn snapshot() -> Result<()> {
    build::build_folder()?;
    packages::install()?;
    let mut command = browser_test("browser");
    command.env("LOOPWRIGHT_SNAPSHOT", "write");
    command.args(["chromium::every_state_says", "chromium::a_log_from", "chromium::links_from"]);
    run(&mut command, minutes(10))
}

/// What can be said of the sources without a browser.
fn sources(steps: &mut Steps) -> Result<()> {
    const LINT: [&str; 3] = ["--", "-D", "warnings"];
    steps.take("formatting", || run(&mut formatting()?, minutes(2)))?;
    steps.take("tidiness of the sources", tidy::tidy_sources)?;
    steps.take("lints", || {
        let arguments = ["clippy", "--locked", "--workspace", "--all-targets", "--all-features"];
        run(cargo(&arguments).args(LINT), minutes(15))
    })?;
    steps.take("lints of what runs in the browser", || {
        let arguments = ["clippy", "--locked", "--target", house::WASM_TARGET];
        run(
            cargo(&arguments)
                .args(["-p", house::APP, "-p", "loopwright-js"])
                .args(LINT),
            minutes(15),
        )
    })?;
    steps.take("documentation", || {
        let mut command = cargo(&["doc", "--locked", "--workspace", "--no-deps"]);
        run(command.env("RUSTDOCFLAGS", "-D warnings"), minutes(10))
    })?;
    steps.take("tests", || {
        run(&mut cargo(&["test", "--locked", "--workspace"]), minutes(20))
    })?;
    steps.take("benches compile", || run(benches().arg("--no-run"), minutes(15)))
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

/// What is shipped, and that it does not depend on where it was made.
fn release(steps: &mut Steps) -> Result<()> {
    steps.take("release build", build::build)?;
    steps.take("tidiness of what is shipped", tidy::tidy_built)?;
    steps.take("the same bytes from another folder", elsewhere::same_bytes)?;
    steps.take("the package for JavaScript", package)
}

/// The package for JavaScript, used from node and read by a type checker.
fn package() -> Result<()> {
    let folder = npm_package::build()?;
    let mut command = cargo(&["test", "--locked", "--package", "loopwright-js"]);
    command.args(["--features", "package", "--test", "package"]);
    command.env("LOOPWRIGHT_NPM", folder);
    if let Some(compiler) = npm::fetch("typescript", house::TYPESCRIPT)? {
        command.env("LOOPWRIGHT_TSC", compiler);
    }
    run(&mut command, minutes(10))
}

/// The page in real browsers.
fn browsers(steps: &mut Steps) -> Result<()> {
    steps.take("browsers", packages::install)?;
    let mut axe = None;
    steps.take("axe-core", || {
        axe = axe_script()?;
        Ok(())
    })?;
    steps.take("the page in browsers", || {
        let mut command = browser_test("browser");
        command
            .arg("--test-threads=2")
            .env("LOOPWRIGHT_DIST", house::root().join("dist"))
            .env(
                "LOOPWRIGHT_FILE",
                house::root().join(build::SINGLE_FOLDER).join(build::SINGLE),
            );
        match &axe {
            Some(axe) => command.env("LOOPWRIGHT_AXE", axe),
            None => command.env_remove("LOOPWRIGHT_AXE"),
        };
        run(&mut command, minutes(20))
    })
}

/// That `trunk serve` gives a working page. The last step, so that its summary is the last thing printed.
fn live_reload(steps: &mut Steps) -> Result<()> {
    let mut folders = Vec::new();
    steps.take("trunk", || {
        for tool in [tools::TRUNK, tools::WASM_BINDGEN] {
            folders.extend(tools::install(&tool)?);
        }
        Ok(())
    })?;
    steps.summary();
    steps.take("the page under trunk serve", || {
        run(
            browser_test("trunk").env("PATH", tools::path_with(&folders)?),
            minutes(10),
        )
    })
}

/// The script that looks for barriers. Without it that part of the browser tests is left out, which a machine may not.
fn axe_script() -> Result<Option<PathBuf>> {
    let script = npm::fetch("axe-core", house::AXE)?.map(|folder| folder.join("axe.min.js"));
    ensure!(
        script.is_some() || !house::is_ci(),
        "axe-core is needed: install node with npm"
    );
    if script.is_none() {
        say("Barriers for readers are not looked for: axe-core is missing");
    }
    Ok(script)
}

/// A target of the tests' crate that needs a browser; each is behind a feature of its own name.
fn browser_test(name: &str) -> Command {
    let mut command = cargo(&["test", "--locked", "--package", "loopwright-tests"]);
    command.args(["--features", name, "--test", name, "--"]);
    command
}

/// The benches are all in the tests' crate; to build more than that with full optimisation takes minutes.
fn benches() -> Command {
    cargo(&["bench", "--locked", "--package", "loopwright-tests", "--benches"])
}

fn cargo(arguments: &[&str]) -> Command {
    let mut command = Command::new("cargo");
    command.args(arguments).current_dir(house::root());
    command
}

/// Counts the steps and takes their time.
#[derive(Default)]
struct Steps {
    done: Vec<(&'static str, Duration)>,
}

impl Steps {
    fn take(&mut self, name: &'static str, step: impl FnOnce() -> Result<()>) -> Result<()> {
        say(&format!("Step {}: {name}", self.done.len() + 1));
        let start = Instant::now();
        step().with_context(|| format!("the step \"{name}\" failed"))?;
        self.done.push((name, start.elapsed()));
        Ok(())
    }

    fn summary(&self) {
        for (name, time) in &self.done {
            say(&format!("{:>7.1} s  {name}", time.as_secs_f32()));
        }
        let total: Duration = self.done.iter().map(|step| step.1).sum();
        say(&format!("{:>7.1} s  so far", total.as_secs_f32()));
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

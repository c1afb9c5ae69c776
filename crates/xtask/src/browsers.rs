//! The step of the tests that plays the scenarios in browsers: it sees to browsers and drivers, and tells afterwards how it
//! went in each.

use crate::{
    build,
    ci::{Steps, browser_test},
    engines, house, npm, packages,
    run::{minutes, run, say},
    tools,
};
use anyhow::{Result, ensure};
use std::{
    fs,
    path::{Path, PathBuf},
    process::Command,
    thread,
};

/// The file in the target folder that the browser tests write shaky scenarios to, a line each.
const SHAKY: &str = "browser-failures/shaky.txt";

/// How many scenarios are played at the same time: one for each core, and two at least, since each waits now and then.
fn at_once() -> usize {
    thread::available_parallelism().map_or(2, |cores| cores.get().clamp(2, 4))
}

/// The page in every browser.
pub fn play(steps: &mut Steps) -> Result<()> {
    steps.take("browsers", packages::install)?;
    // Debian has no package of what drives Firefox.
    steps.take("geckodriver", || tools::install(&tools::GECKODRIVER).map(drop))?;
    let mut axe = None;
    steps.take("axe-core", || {
        axe = axe_script()?;
        Ok(())
    })?;
    let target = house::target_folder()?;
    let shaky = target.join(SHAKY);
    steps.take("the page in browsers", || {
        if shaky.exists() {
            fs::remove_file(&shaky)?;
        }
        engines::forget(&target)?;
        play_and_tell(&mut scenarios(axe.as_deref()), &target)
    })?;
    if let Ok(scenarios) = fs::read_to_string(&shaky) {
        steps.shaky = scenarios.lines().map(str::to_owned).collect();
    }
    Ok(())
}

/// The scenarios on the page that was built last.
fn scenarios(axe: Option<&Path>) -> Command {
    let single = house::root().join(build::SINGLE_FOLDER).join(build::SINGLE);
    let mut command = browser_test("browser");
    command
        .arg(format!("--test-threads={}", at_once()))
        .env("LOOPWRIGHT_DIST", house::root().join("dist"))
        .env("LOOPWRIGHT_FILE", single);
    match axe {
        Some(axe) => command.env("LOOPWRIGHT_AXE", axe),
        None => command.env_remove("LOOPWRIGHT_AXE"),
    };
    command
}

/// The table of what was played is wanted most where something failed; that there is none is then no news.
fn play_and_tell(command: &mut Command, target: &Path) -> Result<()> {
    let played = run(command, minutes(60));
    let told = engines::write_table(target);
    for line in told.iter().flatten() {
        say(line);
    }
    played.and(told.map(drop))
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

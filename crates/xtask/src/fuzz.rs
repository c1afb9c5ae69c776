//! Lets libFuzzer make up texts against everything that reads text, for a minute each. Texts to begin with are in
//! `tests/fuzz/corpus`, a line each; what is found on the way is kept under cargo's target folder, and the next run goes on from
//! there. A text that something is wrong with stands in `tests/fuzz/artifacts`: it belongs into a test.

use crate::{
    files, house,
    run::{minutes, run, say},
    tools::{self, Tool},
};
use anyhow::{Context, Result, ensure};
use std::{fs, path::Path, process::Command};

/// What runs libFuzzer with a crate.
const CARGO_FUZZ: Tool = Tool {
    package: "cargo-fuzz",
    program: "cargo-fuzz",
    version: "0.13.2",
    locked: true,
};

/// How long each reader is tried, in seconds.
const SECONDS: u32 = 60;

/// Longer texts are no more telling.
const LONGEST: u32 = 4096;

/// Runs every target, one after the other, and stops at the first text that something is wrong with.
pub fn fuzz() -> Result<()> {
    let folders: Vec<_> = tools::install(&CARGO_FUZZ)?.into_iter().collect();
    let path = tools::path_with(&folders)?;
    let place = house::target_folder()?.join("fuzz");
    let home = house::root().join("tests/fuzz");
    for name in targets(&home)? {
        say(&format!("Making up texts for {name}, for {SECONDS} seconds"));
        let (found, begin) = (place.join("found").join(&name), place.join("begin").join(&name));
        fs::create_dir_all(&found)?;
        lay_out(&home.join("corpus").join(format!("{name}.txt")), &begin)?;
        let mut command = Command::new("cargo");
        // Without a sanitizer the stable compiler will do; there is no unsafe code that one could find something in.
        command.args(["fuzz", "run", "--sanitizer", "none", "--fuzz-dir"]);
        command.arg(&home).arg("--target-dir").arg(place.join("built"));
        command.arg(&name).arg(&found).arg(&begin).arg("--");
        command.args([
            format!("-max_total_time={SECONDS}"),
            format!("-max_len={LONGEST}"),
            "-timeout=20".to_owned(),
        ]);
        run(command.current_dir(house::root()).env("PATH", &path), minutes(10))?;
    }
    Ok(())
}

/// The targets by name, in their order.
fn targets(home: &Path) -> Result<Vec<String>> {
    let sources = files::read(&home.join("fuzz_targets"))?.into_keys();
    let names: Vec<String> = sources
        .filter_map(|path| path.strip_suffix(".rs").map(str::to_owned))
        .collect();
    ensure!(!names.is_empty(), "there is nothing to be tried in {}", home.display());
    Ok(names)
}

/// Each line of a file as a file of its own, as libFuzzer wants them.
fn lay_out(lines: &Path, folder: &Path) -> Result<()> {
    let lines = fs::read_to_string(lines).with_context(|| format!("no texts to begin with: {}", lines.display()))?;
    let texts = lines.lines().enumerate();
    let texts = texts.map(|(place, text)| (format!("{place}"), text.as_bytes().to_vec()));
    files::replace(folder, &texts.collect())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_target_is_built_and_has_texts_to_begin_with() {
        let home = house::root().join("tests/fuzz");
        let manifest = fs::read_to_string(home.join("Cargo.toml")).unwrap();
        for name in targets(&home).unwrap() {
            assert!(
                manifest.contains(&format!("name = \"{name}\"\npath = \"fuzz_targets/{name}.rs\"")),
                "{name}"
            );
            let texts = fs::read_to_string(home.join("corpus").join(format!("{name}.txt"))).unwrap();
            assert!(texts.lines().count() >= 5, "{name}");
        }
    }
}

//! The package in its folder, as a JavaScript user has it: run by node, and its declarations by TypeScript.
//!
//! `cargo xtask npm` makes the folder; `LOOPWRIGHT_NPM` names it where it is elsewhere. `LOOPWRIGHT_TSC` names
//! TypeScript's folder, or that part is left out. Without node this says so and passes, except where `CI` is set.

use std::path::{Path, PathBuf};
use std::process::{Command, Stdio};
use std::{env, fs};

#[test]
fn node_asks_and_is_answered() {
    let Some(place) = installed("asked") else {
        return;
    };
    place_script(&place, "ask.mjs", include_str!("ask.mjs"));
    node(&place, &["ask.mjs"]);
}

#[test]
fn the_declarations_allow_what_is_right_and_refuse_what_is_wrong() {
    let (Some(place), Some(typescript)) = (installed("typed"), env::var_os("LOOPWRIGHT_TSC")) else {
        println!("left out: LOOPWRIGHT_TSC names no folder of TypeScript");
        return;
    };
    place_script(&place, "typed.ts", include_str!("typed.ts"));
    let tsc = PathBuf::from(typescript).join("bin/tsc");
    let strict = ["--strict", "--noEmit", "--target", "es2022", "--module", "nodenext"];
    let tsc = tsc.to_string_lossy();
    node(&place, &[&[tsc.as_ref()][..], &strict, &["typed.ts"]].concat());
}

/// A folder in which the package is installed, or nothing where there is no node.
fn installed(name: &str) -> Option<PathBuf> {
    let has_node = Command::new("node")
        .arg("--version")
        .stdout(Stdio::null())
        .status()
        .is_ok_and(|status| status.success());
    if !has_node {
        assert!(env::var_os("CI").is_none(), "node is needed");
        println!("left out: node is not installed");
        return None;
    }
    let place = Path::new(env!("CARGO_TARGET_TMPDIR")).join(name);
    let home = place.join("node_modules/loopwright");
    fs::create_dir_all(&home).expect("the folder of the test can be written");
    for entry in fs::read_dir(package()).expect("run `cargo xtask npm` first") {
        let entry = entry.expect("the package can be listed");
        fs::copy(entry.path(), home.join(entry.file_name())).expect("the package can be copied");
    }
    Some(place)
}

/// The package, in the target folder that holds this test's own.
fn package() -> PathBuf {
    env::var_os("LOOPWRIGHT_NPM").map_or_else(
        || Path::new(env!("CARGO_TARGET_TMPDIR")).join("../npm/loopwright"),
        PathBuf::from,
    )
}

fn place_script(place: &Path, name: &str, text: &str) {
    fs::write(place.join(name), text).expect("the script can be written");
}

fn node(place: &Path, arguments: &[&str]) {
    let output = Command::new("node")
        .args(arguments)
        .current_dir(place)
        .output()
        .expect("node can be started");
    assert!(
        output.status.success(),
        "{}{}",
        String::from_utf8_lossy(&output.stdout),
        String::from_utf8_lossy(&output.stderr)
    );
}

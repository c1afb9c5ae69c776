//! The package as a JavaScript user has it: packed by npm, installed in a fresh folder, run by node, its declarations read
//! by TypeScript, and bundled.
//!
//! `cargo xtask npm` makes the folder; `LOOPWRIGHT_NPM` names it where it is elsewhere. `LOOPWRIGHT_TSC` and
//! `LOOPWRIGHT_VITE` name TypeScript's and Vite's folder, or those parts are left out. Without node this says so and
//! passes, except where `CI` is set.

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
fn every_tool_says_what_the_app_would_say() {
    let Some(place) = installed("words") else {
        return;
    };
    place_script(&place, "words.mjs", include_str!("words.mjs"));
    node(&place, &["words.mjs"]);
}

#[test]
fn a_call_before_the_start_names_what_is_missing() {
    let Some(place) = installed("early") else {
        return;
    };
    place_script(&place, "early.mjs", include_str!("early.mjs"));
    node(&place, &["early.mjs"]);
}

#[test]
fn the_examples_of_the_readme_print_what_they_say() {
    let Some(place) = installed("readme") else {
        return;
    };
    let readme = read(&place.join("node_modules/loopwright/README.md"));
    for size in ["{wasm}", "{packed}", "{words}", "{words packed}"] {
        assert!(!readme.contains(size), "{size} is missing");
    }
    let examples: Vec<&str> = readme
        .split("```js\n")
        .skip(1)
        .filter_map(|rest| rest.split("```").next())
        .collect();
    assert!(examples.len() >= 4, "the README has {} examples", examples.len());
    for (number, example) in examples.into_iter().enumerate() {
        let name = format!("example{number}.mjs");
        place_script(&place, &name, example);
        let lines = example.lines().filter_map(|line| line.strip_prefix("// "));
        let promised: Vec<&str> = lines.collect();
        assert!(!promised.is_empty(), "it promises nothing: {example}");
        let printed = node(&place, &[&name]);
        assert_eq!(printed.lines().collect::<Vec<_>>(), promised, "{example}");
    }
}

#[test]
fn the_declarations_are_those_that_stand_in_git() {
    for (name, kept) in [
        ("index.d.ts", include_str!("../index.d.ts")),
        ("words.d.ts", include_str!("../words.d.ts")),
    ] {
        is_kept(&read(&package().join(name)), kept);
    }
}

/// That a file that was made is the one in git.
fn is_kept(made: &str, kept: &str) {
    let at = made.lines().zip(kept.lines()).position(|(made, kept)| made != kept);
    let line = at.map_or("its end", |at| made.lines().nth(at).unwrap_or_default());
    assert!(
        made == kept,
        "the interface changed at {line:?}: `cargo xtask npm declare`, and read `git diff`"
    );
}

#[test]
fn the_declarations_allow_what_is_right_and_refuse_what_is_wrong() {
    let (Some(place), Some(typescript)) = (installed("typed"), env::var_os("LOOPWRIGHT_TSC")) else {
        println!("left out: LOOPWRIGHT_TSC names no folder of TypeScript");
        return;
    };
    place_script(&place, "typed.ts", include_str!("typed.ts"));
    let tsc = PathBuf::from(typescript).join("bin/tsc");
    let strict = ["--strict", "--noEmit", "--target", "es2022"];
    for module in [
        &["--module", "nodenext"][..],
        &["--module", "esnext", "--moduleResolution", "bundler"],
    ] {
        node(
            &place,
            &[&[&*tsc.to_string_lossy()][..], &strict, module, &["typed.ts"]].concat(),
        );
    }
}

/// The element that frames a tool has no package; its types are checked where a compiler is.
#[test]
fn the_types_of_the_element_allow_what_is_right_and_refuse_what_is_wrong() {
    let (Some(place), Some(typescript)) = (installed("element"), env::var_os("LOOPWRIGHT_TSC")) else {
        println!("left out: LOOPWRIGHT_TSC names no folder of TypeScript");
        return;
    };
    place_script(&place, "embed.d.ts", include_str!("../../../web/embed.d.ts"));
    place_script(&place, "embed.ts", include_str!("embed.ts"));
    let tsc = PathBuf::from(typescript).join("bin/tsc");
    let compiler = &*tsc.to_string_lossy();
    let strict = ["--strict", "--noEmit", "--target", "es2022", "--lib", "es2022,dom"];
    node(&place, &[&[compiler][..], &strict, &["embed.ts"]].concat());
}

#[test]
fn every_function_is_asked() {
    let ask = include_str!("ask.mjs");
    let (_, imported) = ask.rsplit_once("import {").expect("ask.mjs imports");
    let (imported, _) = imported.split_once('}').expect("ask.mjs names what it imports");
    let imported: Vec<&str> = imported.split([',', ' ', '\n']).collect();
    let declared = include_str!("../index.d.ts").lines();
    let functions = declared.filter_map(|line| line.strip_prefix("export function ")?.split('(').next());
    let functions: Vec<&str> = functions.filter(|name| *name != "initSync").collect();
    assert!(functions.len() >= 22, "{functions:?}");
    for name in functions {
        assert!(imported.contains(&name), "nobody asks {name}");
    }
}

/// A browser opens the same bundle in a test of its own, which finds it where this one leaves it.
#[test]
fn a_bundle_has_the_webassembly_beside_it() {
    let (Some(place), Some(vite)) = (installed("bundled"), env::var_os("LOOPWRIGHT_VITE")) else {
        println!("left out: LOOPWRIGHT_VITE names no folder of Vite");
        return;
    };
    place_script(&place, "index.html", PAGE);
    let page = [
        include_str!("page.js"),
        include_str!("ask.mjs"),
        "globalThis.asked = true;\n",
    ];
    place_script(&place, "page.js", &page.concat());
    place_script(&place, "assert.js", include_str!("assert.js"));
    place_script(&place, "vite.config.js", include_str!("vite.config.js"));
    let vite = PathBuf::from(vite).join("bin/vite.js");
    node(&place, &[&vite.to_string_lossy(), "build", "--logLevel", "warn"]);
    place_script(&place, "bundled.mjs", include_str!("bundled.mjs"));
    node(&place, &["bundled.mjs"]);
}

/// A page with the policy that the README says is needed, and no more; it trusts no policy of Trusted Types.
const PAGE: &str = "<!doctype html><html lang=\"en\"><meta charset=\"utf-8\"><title>Asked</title>
<meta http-equiv=\"Content-Security-Policy\"
  content=\"default-src 'none'; script-src 'self' 'wasm-unsafe-eval'; connect-src 'self'; img-src data:;
    require-trusted-types-for 'script'; trusted-types 'none'\">
<link rel=\"icon\" href=\"data:,\">
<script type=\"module\" src=\"page.js\"></script>
";

/// A folder in which the packed package is installed, or nothing where there is no node.
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
    if place.exists() {
        fs::remove_dir_all(&place).expect("the folder of the test can be cleared");
    }
    fs::create_dir_all(&place).expect("the folder of the test can be written");
    place_script(&place, "package.json", "{ \"private\": true, \"type\": \"module\" }\n");
    let packed = npm(&place, &["pack", "--silent", &package().to_string_lossy()]);
    let packed = packed
        .lines()
        .last()
        .expect("npm names the package it packed")
        .to_owned();
    npm(
        &place,
        &["install", "--offline", "--silent", "--no-audit", "--no-fund", &packed],
    );
    Some(place)
}

/// The package, in the target folder that holds this test's own.
fn package() -> PathBuf {
    env::var_os("LOOPWRIGHT_NPM").map_or_else(
        || Path::new(env!("CARGO_TARGET_TMPDIR")).join("../npm/loopwright"),
        PathBuf::from,
    )
}

fn read(path: &Path) -> String {
    fs::read_to_string(path).expect("run `cargo xtask npm` first")
}

fn place_script(place: &Path, name: &str, text: &str) {
    fs::write(place.join(name), text).expect("the script can be written");
}

fn node(place: &Path, arguments: &[&str]) -> String {
    run("node", place, arguments)
}

fn npm(place: &Path, arguments: &[&str]) -> String {
    run("npm", place, arguments)
}

/// Runs a command to its end, and gives what it printed.
fn run(program: &str, place: &Path, arguments: &[&str]) -> String {
    let output = Command::new(program)
        .args(arguments)
        .current_dir(place)
        .output()
        .expect("node and npm can be started");
    let printed = String::from_utf8_lossy(&output.stdout).into_owned();
    assert!(
        output.status.success(),
        "{program} {arguments:?}: {printed}{}",
        String::from_utf8_lossy(&output.stderr)
    );
    printed
}

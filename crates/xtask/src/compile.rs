//! Compiles a package to WebAssembly and makes its JavaScript glue, so that the bytes say nothing of this machine.

use crate::{
    elsewhere,
    files::Files,
    glue, house,
    run::{minutes, run, say},
};
use anyhow::{Context, Result, ensure};
use std::{fs, path::Path, process::Command};
use wasm_bindgen_cli_support::Bindgen;

/// The two files of a package that are compiled: the glue and the WebAssembly, not yet optimised.
pub fn compile(package: &str) -> Result<Files> {
    add_target()?;
    say(&format!(
        "Compiling {package} to WebAssembly with {} (the slow part, a minute or so the first time)",
        compiler()?
    ));
    run(
        Command::new("cargo")
            .args(["build", "--locked", "--release", "--package", package])
            .args(["--target", house::WASM_TARGET])
            .current_dir(house::root())
            .env_remove("RUSTFLAGS")
            .env("CARGO_ENCODED_RUSTFLAGS", flags()?.join("\x1f")),
        minutes(15),
    )?;
    let wasm = house::target_folder()?
        .join(house::WASM_TARGET)
        .join("release")
        .join(format!("{package}.wasm"));
    say("Making the glue between WebAssembly and the browser");
    bind(package, &wasm)
}

/// Adds the WebAssembly target to the toolchain where it is missing.
pub fn add_target() -> Result<()> {
    let libraries = Path::new(&rustc(&["--print", "sysroot"])?)
        .join("lib/rustlib")
        .join(house::WASM_TARGET);
    if libraries.is_dir() {
        return Ok(());
    }
    say("Adding the WebAssembly target to the Rust toolchain");
    ensure!(
        house::on_path("rustup"),
        "the Rust toolchain lacks the target {}; add it in the way your system offers",
        house::WASM_TARGET
    );
    run(
        Command::new("rustup").args(["target", "add", house::WASM_TARGET]),
        minutes(5),
    )
}

/// Compiler flags that replace this machine's folders by fixed names wherever the program would carry a path.
///
/// Of two prefixes that fit the compiler takes the later, so the list goes from the general to the particular.
pub(crate) fn flags() -> Result<Vec<String>> {
    let mut prefixes = Vec::new();
    if let Some(home) = house::home() {
        prefixes.push((home, "/home".to_owned()));
    }
    prefixes.push((rustc(&["--print", "sysroot"])?.into(), "/rust".to_owned()));
    // The library's sources, where they are installed, are named as they are where they are not.
    let sources = Path::new(&rustc(&["--print", "sysroot"])?).join("lib/rustlib/src/rust");
    prefixes.push((sources, format!("/rustc/{}", commit()?)));
    if let Some(cargo) = house::cargo_home() {
        let registries = cargo.join("registry/src");
        prefixes.push((cargo, "/cargo".to_owned()));
        for entry in fs::read_dir(registries).into_iter().flatten().flatten() {
            prefixes.push((entry.path(), "dep".to_owned()));
        }
    }
    for (folder, name) in elsewhere::named()? {
        prefixes.push((folder, name.to_owned()));
    }
    Ok(prefixes
        .into_iter()
        .map(|(from, to)| format!("--remap-path-prefix={}={to}", from.display()))
        .collect())
}

/// The compiler's version, in its own words.
pub fn compiler() -> Result<String> {
    rustc(&["--version"])
}

/// The commit the compiler was built from.
fn commit() -> Result<String> {
    let version = rustc(&["--version", "--verbose"])?;
    let line = version.lines().find_map(|line| line.strip_prefix("commit-hash: "));
    Ok(line.context("rustc names no commit")?.to_owned())
}

fn rustc(arguments: &[&str]) -> Result<String> {
    let output = Command::new("rustc")
        .args(arguments)
        .current_dir(house::root())
        .output()
        .context("rustc could not be started")?;
    ensure!(output.status.success(), "rustc {arguments:?} failed");
    Ok(String::from_utf8(output.stdout)?.trim().to_owned())
}

fn bind(package: &str, wasm: &Path) -> Result<Files> {
    let mut output = Bindgen::new()
        .input_path(wasm)
        .out_name(package)
        .web(true)?
        .typescript(false)
        // The glue finds the WebAssembly beside itself; the library's start leaves that out, the program's does not.
        .omit_default_module_path(false)
        .remove_name_section(true)
        .remove_producers_section(true)
        .generate_output()?;
    // Foreign JavaScript would need files of its own; the page in one file could not hold it.
    let inline = output
        .snippets()
        .iter()
        .filter(|(_, list)| !list.is_empty())
        .map(|(name, _)| name);
    let modules = output.local_modules().keys().chain(output.npm_dependencies().keys());
    let foreign: Vec<&String> = inline.chain(modules).collect();
    ensure!(foreign.is_empty(), "a crate brings JavaScript of its own: {foreign:?}");
    let js = glue::without_comments(output.js())?;
    Ok(Files::from([
        (format!("{package}.js"), js.into_bytes()),
        (format!("{package}_bg.wasm"), output.wasm_mut().emit_wasm()),
    ]))
}

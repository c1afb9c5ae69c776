//! The maths for JavaScript as a package folder: `target/npm/loopwright`, ready for `npm pack` or `npm install`.
//!
//! The glue and the WebAssembly come from the binding library, as for the page; the declarations are made from the
//! Rust types by `declare`, with the library's own for the functions behind them.

mod declare;
mod sources;

use crate::{
    compile,
    files::{self, Files},
    house,
    run::{minutes, run, say},
    squeeze,
};
use anyhow::{Context, Result, ensure};
use std::{path::PathBuf, process::Command};
use wasm_bindgen_cli_support::Bindgen;

/// The crate that is bound.
const CRATE: &str = "loopwright-js";
/// The package's name, and that of its files.
const NAME: &str = "loopwright";

const README: &str = include_str!("readme.md");

/// Builds the package and says where it is.
pub fn build() -> Result<PathBuf> {
    compile::add_target()?;
    say("Compiling the maths to WebAssembly");
    run(
        Command::new("cargo")
            .args(["build", "--locked", "--release", "--package", CRATE])
            .args(["--target", house::WASM_TARGET])
            .current_dir(house::root())
            .env_remove("RUSTFLAGS")
            .env("CARGO_ENCODED_RUSTFLAGS", compile::flags()?.join("\x1f")),
        minutes(15),
    )?;
    let mut files = bind()?;
    let wasm = format!("{NAME}_bg.wasm");
    if let Some(smaller) = squeeze::squeeze(&files[&wasm])? {
        files.insert(wasm, smaller);
    }
    files.insert("package.json".to_owned(), manifest()?);
    files.insert("README.md".to_owned(), README.as_bytes().to_vec());
    for license in ["LICENSE-MIT", "LICENSE-APACHE"] {
        if let Ok(text) = std::fs::read(house::root().join(license)) {
            files.insert(license.to_owned(), text);
        }
    }
    let folder = house::target_folder()?.join("npm").join(NAME);
    files::replace(&folder, &files)?;
    for (path, bytes) in &files {
        say(&format!("{:>8} {path}", bytes.len()));
    }
    say(&format!("The package is in {}", folder.display()));
    Ok(folder)
}

fn bind() -> Result<Files> {
    let wasm = house::target_folder()?
        .join(house::WASM_TARGET)
        .join("release")
        .join(format!("{}.wasm", CRATE.replace('-', "_")));
    let mut output = Bindgen::new()
        .input_path(wasm)
        .out_name(NAME)
        .web(true)?
        .typescript(true)
        .omit_default_module_path(false)
        .remove_name_section(true)
        .remove_producers_section(true)
        .generate_output()?;
    ensure!(
        output.snippets().values().all(Vec::is_empty) && output.local_modules().is_empty(),
        "a crate brings JavaScript of its own"
    );
    let functions = output.ts().context("the binding library wrote no declarations")?;
    let declared = format!("{}\n{functions}", types()?);
    Ok(Files::from([
        (format!("{NAME}.d.ts"), declared.into_bytes()),
        (format!("{NAME}.js"), output.js().as_bytes().to_vec()),
        (format!("{NAME}_bg.wasm"), output.wasm_mut().emit_wasm()),
    ]))
}

/// The declarations of everything that goes in and comes out.
fn types() -> Result<String> {
    let bindings = house::root().join("crates").join(CRATE).join("src");
    let maths = house::root().join("crates/loopwright/src");
    let tools = sources::tools(&bindings)?;
    declare::declarations(&sources::types(&maths, &bindings)?, &tools)
}

fn manifest() -> Result<Vec<u8>> {
    let manifest = serde_json::json!({
        "name": NAME,
        "version": env!("CARGO_PKG_VERSION"),
        "description": "The arithmetic of hand knitting: exact, total, and explained.",
        "license": "MIT OR Apache-2.0",
        "type": "module",
        "main": format!("./{NAME}.js"),
        "types": format!("./{NAME}.d.ts"),
        "exports": {
            ".": { "types": format!("./{NAME}.d.ts"), "default": format!("./{NAME}.js") },
            "./wasm": format!("./{NAME}_bg.wasm"),
        },
        "sideEffects": false,
    });
    let mut text = serde_json::to_string_pretty(&manifest)?;
    text.push('\n');
    Ok(text.into_bytes())
}

#[cfg(test)]
mod tests {
    #[test]
    fn every_tool_with_a_binding_can_be_declared() {
        let text = super::types().unwrap();
        assert!(text.contains("export interface SpacingQuestion {"), "{text}");
        assert!(text.contains("  text: string;"), "{text}");
    }

    // So that a type of the maths that cannot cross is found before its tool is listed.
    #[test]
    fn the_tools_that_are_still_to_be_listed_can_be_declared_too() {
        let maths = super::house::root().join("crates/loopwright/src");
        let types = super::sources::types(&maths, &maths).unwrap();
        let tools = ["cast_on", "sizing", "spacing", "tail", "yarn"].map(str::to_owned);
        let text = super::declare::declarations(&types, &tools).unwrap();
        assert!(text.contains("export interface YarnAnswer {"), "{text}");
    }
}

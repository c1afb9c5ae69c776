//! The maths for JavaScript as a package folder: `target/npm/loopwright`, ready for `npm pack` or `npm install`.
//!
//! The glue and the WebAssembly come from the binding library, as for the page; `entry` writes what a program imports.
//! The declarations are made from the Rust types by `declare`, with the library's own for the functions behind them. They
//! stand in git as well (`crates/loopwright-js/index.d.ts`), so that a change of the interface is seen.

mod declare;
mod entry;
mod sources;

use crate::{
    compile,
    files::{self, Files},
    house,
    run::{minutes, run, say},
    sizes, squeeze,
};
use anyhow::{Context, Result, ensure};
use std::{path::PathBuf, process::Command};
use wasm_bindgen_cli_support::Bindgen;

/// The crate that is bound.
const CRATE: &str = "loopwright-js";
/// The package's name.
const NAME: &str = "loopwright";
/// What the binding library writes.
const GLUE: &str = "loopwright.js";
/// The WebAssembly, as the glue looks for it.
const WASM: &str = "loopwright_bg.wasm";
/// Everything that is declared; the same file stands in git.
const DECLARATIONS: &str = "index.d.ts";

const README: &str = include_str!("readme.md");
/// The manifest. In `exports` the order counts: the first condition that holds is taken, so `types` comes first.
const MANIFEST: &str = include_str!("package.json");

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
    if let Some(smaller) = squeeze::squeeze(&files[WASM])? {
        files.insert(WASM.to_owned(), smaller);
    }
    files.insert("README.md".to_owned(), readme(&files[WASM])?.into_bytes());
    for license in ["LICENSE-MIT", "LICENSE-APACHE"] {
        if let Ok(text) = std::fs::read(house::root().join(license)) {
            files.insert(license.to_owned(), text);
        }
    }
    let manifest = MANIFEST.replace("{version}", env!("CARGO_PKG_VERSION"));
    files.insert("package.json".to_owned(), manifest.into_bytes());
    let folder = house::target_folder()?.join("npm").join(NAME);
    files::replace(&folder, &files)?;
    println!("\nnpm/{NAME}/\n{}", sizes::table(&files)?.0);
    say(&format!("The package is in {}", folder.display()));
    Ok(folder)
}

/// Builds the package and keeps its declarations in git, where a change of the interface is seen.
pub fn declare() -> Result<()> {
    let made = build()?.join(DECLARATIONS);
    let kept = house::root().join("crates").join(CRATE).join(DECLARATIONS);
    std::fs::copy(&made, &kept).with_context(|| format!("cannot write {}", kept.display()))?;
    say(&format!(
        "{} is written anew; `git diff` shows what changed",
        kept.display()
    ));
    Ok(())
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
    let bound = output.ts().context("the binding library wrote no declarations")?;
    let declared = format!("{}\n{}", types()?, entry::declarations(bound)?);
    Ok(Files::from([
        (DECLARATIONS.to_owned(), declared.into_bytes()),
        ("index.js".to_owned(), entry::browsers(bound)?.into_bytes()),
        ("node.js".to_owned(), entry::node().into_bytes()),
        (GLUE.to_owned(), output.js().as_bytes().to_vec()),
        (WASM.to_owned(), output.wasm_mut().emit_wasm()),
    ]))
}

/// The declarations of everything that goes in and comes out.
fn types() -> Result<String> {
    let bindings = house::root().join("crates").join(CRATE).join("src");
    let maths = house::root().join("crates/loopwright/src");
    let tools = sources::tools(&bindings)?;
    declare::declarations(&sources::types(&maths, &bindings)?, &tools)
}

/// The README with the size of what it tells of.
fn readme(wasm: &[u8]) -> Result<String> {
    let kilobytes = |bytes: usize| format!("{} KB", bytes.div_ceil(1000));
    let text = README.replace("{wasm}", &kilobytes(wasm.len()));
    Ok(text.replace("{packed}", &kilobytes(sizes::gzip(wasm)?.len())))
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

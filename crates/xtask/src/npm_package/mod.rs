//! The maths for JavaScript as a package folder: `target/npm/loopwright`, ready for `npm pack` or `npm install`. It has two
//! entries, one of data and one with the sentences of the app beside it.
//!
//! The glue and the WebAssembly come from the binding library, as for the page; `entry` writes what a program imports.
//! The declarations are made from the Rust types by `declare`, with the library's own for the functions behind them. They
//! stand in git as well (beside the sources of `loopwright-js`), so that a change of the interface is seen.

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
/// Everything that is declared; the same files stand in git.
const DECLARATIONS: [&str; 2] = ["index.d.ts", "words.d.ts"];

/// One of the two entries, each with a WebAssembly of its own: who wants no sentences loads none.
struct Entry {
    /// What a browser or a bundler imports, and node.
    scripts: [&'static str; 2],
    /// What the binding library's files are called.
    bound: &'static str,
    /// The features of the crate.
    features: &'static [&'static str],
}

/// The maths alone.
const DATA: Entry = Entry {
    scripts: ["index.js", "node.js"],
    bound: "loopwright",
    features: &[],
};

/// The same with the sentences of the app beside the data.
const WORDS: Entry = Entry {
    scripts: ["words.js", "words-node.js"],
    bound: "loopwright_words",
    features: &["--features", "words"],
};

impl Entry {
    /// What the binding library writes.
    fn glue(&self) -> String {
        format!("{}.js", self.bound)
    }

    /// The WebAssembly, as the glue looks for it.
    fn wasm(&self) -> String {
        format!("{}_bg.wasm", self.bound)
    }
}

const README: &str = include_str!("readme.md");
/// The manifest. In `exports` the order counts: the first condition that holds is taken, so `types` comes first.
const MANIFEST: &str = include_str!("package.json");

/// Builds the package and says where it is.
pub fn build() -> Result<PathBuf> {
    compile::add_target()?;
    let types = types()?;
    let mut files = Files::new();
    for (entry, declared) in [DATA, WORDS].into_iter().zip(DECLARATIONS) {
        compile(&entry)?;
        let (bound, made) = bind(&entry)?;
        files.extend(made);
        let text = match declared {
            "words.d.ts" => entry::declarations_in_words(&types, &bound)?,
            _ => format!("{types}\n{}", entry::declarations(&bound)?),
        };
        files.insert(declared.to_owned(), text.into_bytes());
        if let Some(smaller) = squeeze::squeeze(&files[&entry.wasm()])? {
            files.insert(entry.wasm(), smaller);
        }
    }
    files.insert("README.md".to_owned(), readme(&files)?.into_bytes());
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
    let folder = build()?;
    for name in DECLARATIONS {
        let kept = house::root().join("crates").join(CRATE).join(name);
        std::fs::copy(folder.join(name), &kept).with_context(|| format!("cannot write {}", kept.display()))?;
        say(&format!(
            "{} is written anew; `git diff` shows what changed",
            kept.display()
        ));
    }
    Ok(())
}

fn compile(entry: &Entry) -> Result<()> {
    say(&format!("Compiling {} to WebAssembly", entry.bound));
    run(
        Command::new("cargo")
            .args(["build", "--locked", "--release", "--package", CRATE])
            .args(["--target", house::WASM_TARGET])
            .args(entry.features)
            .current_dir(house::root())
            .env_remove("RUSTFLAGS")
            .env("CARGO_ENCODED_RUSTFLAGS", compile::flags()?.join("\x1f")),
        minutes(15),
    )
}

/// What the binding library declares, and the files of an entry without its declarations.
fn bind(entry: &Entry) -> Result<(String, Files)> {
    let wasm = house::target_folder()?
        .join(house::WASM_TARGET)
        .join("release")
        .join(format!("{}.wasm", CRATE.replace('-', "_")));
    let mut output = Bindgen::new()
        .input_path(wasm)
        .out_name(entry.bound)
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
    let bound = output
        .ts()
        .context("the binding library wrote no declarations")?
        .to_owned();
    let [browsers, node] = entry.scripts;
    let files = Files::from([
        (browsers.to_owned(), entry::browsers(&bound, entry)?.into_bytes()),
        (node.to_owned(), entry::node(entry).into_bytes()),
        (entry.glue(), output.js().as_bytes().to_vec()),
        (entry.wasm(), output.wasm_mut().emit_wasm()),
    ]);
    Ok((bound, files))
}

/// The declarations of everything that goes in and comes out.
fn types() -> Result<String> {
    let bindings = house::root().join("crates").join(CRATE).join("src");
    let maths = house::root().join("crates/loopwright/src");
    let tools = sources::tools(&bindings)?;
    declare::declarations(&sources::types(&maths, &bindings)?, &tools)
}

/// The README with the sizes of what it tells of.
fn readme(files: &Files) -> Result<String> {
    let kilobytes = |bytes: usize| format!("{} KB", bytes.div_ceil(1000));
    let mut text = README.to_owned();
    for (entry, names) in [(DATA, ["{wasm}", "{packed}"]), (WORDS, ["{words}", "{words packed}"])] {
        let wasm = &files[&entry.wasm()];
        text = text.replace(names[0], &kilobytes(wasm.len()));
        text = text.replace(names[1], &kilobytes(sizes::gzip(wasm)?.len()));
    }
    Ok(text)
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

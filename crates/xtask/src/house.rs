//! Where things stand: the root of the house, cargo's target folder, the cache, and the versions of foreign tools.

use anyhow::{Context, Result};
use std::{
    env,
    path::{Path, PathBuf},
    process::Command,
};

/// The edition of the language, as in `Cargo.toml`.
pub const EDITION: &str = "2024";

/// The version of npm's `typescript`, which reads the package's types as a user's editor would.
pub const TYPESCRIPT: &str = "5.9.3";
/// The version of npm's `vite`, which bundles the package as a user's page would.
pub const VITE: &str = "8.4.0";
/// The version of npm's `binaryen`, whose `wasm-opt` makes the WebAssembly smaller.
pub const BINARYEN: &str = "132.0.0";
/// The version of npm's `esbuild`, which makes scripts and styles smaller.
pub const ESBUILD: &str = "0.28.2";
/// The version of npm's `axe-core`, which looks for barriers in the finished pages.
pub const AXE: &str = "4.14.1";
/// The version of trunk with which live reload is proven.
pub const TRUNK: &str = "0.21.14";
/// The version of the binding generator's program, which trunk calls; the same as the library's.
pub const WASM_BINDGEN: &str = "0.2.130";
/// The version of the program that drives Firefox.
pub const GECKODRIVER: &str = "0.37.1";

/// The target the app is compiled for.
pub const WASM_TARGET: &str = "wasm32-unknown-unknown";
/// The package that becomes the page.
pub const APP: &str = "loopwright-app";
/// The package of the bare page that it is measured beside.
pub const BARE: &str = "loopwright-bare";

/// The folder that holds `Cargo.toml`, `crates/` and `web/`.
///
/// `cargo run` names the manifest at run time, so that a binary built in one folder never looks into another.
pub fn root() -> PathBuf {
    let manifest = env::var_os("CARGO_MANIFEST_DIR")
        .map(PathBuf::from)
        .unwrap_or_else(|| PathBuf::from(env!("CARGO_MANIFEST_DIR")));
    let root = manifest.ancestors().find(|folder| folder.join("Cargo.lock").is_file());
    root.unwrap_or(&manifest).to_path_buf()
}

/// Cargo's target folder, asked of cargo itself because it may be set in several places.
pub fn target_folder() -> Result<PathBuf> {
    let output = Command::new("cargo")
        .args(["metadata", "--no-deps", "--format-version", "1"])
        .current_dir(root())
        .output()
        .context("cargo metadata could not be started")?;
    anyhow::ensure!(
        output.status.success(),
        "cargo metadata failed:\n{}",
        String::from_utf8_lossy(&output.stderr)
    );
    let metadata: serde_json::Value = serde_json::from_slice(&output.stdout)?;
    let folder = metadata["target_directory"]
        .as_str()
        .context("cargo metadata names no target folder")?;
    Ok(PathBuf::from(folder))
}

/// A folder outside the repository for tools that take long to fetch, so that a fresh clone need not fetch them again.
pub fn cache() -> Result<PathBuf> {
    let base = env::var_os("XDG_CACHE_HOME")
        .map(PathBuf::from)
        .filter(|path| path.is_absolute())
        .or_else(|| home().map(|home| home.join(".cache")))
        .context("neither XDG_CACHE_HOME nor HOME is set")?;
    Ok(base.join("loopwright"))
}

/// Cargo's own folder, in which downloaded crates are kept.
pub fn cargo_home() -> Option<PathBuf> {
    env::var_os("CARGO_HOME")
        .map(PathBuf::from)
        .or_else(|| home().map(|home| home.join(".cargo")))
}

/// The home folder of whoever runs the chore.
pub fn home() -> Option<PathBuf> {
    env::var_os("HOME")
        .or_else(|| env::var_os("USERPROFILE"))
        .map(PathBuf::from)
}

/// Whether a program can be found.
pub fn on_path(program: &str) -> bool {
    let Some(path) = env::var_os("PATH") else {
        return false;
    };
    env::split_paths(&path).any(|folder| is_program(&folder.join(program)))
}

fn is_program(place: &Path) -> bool {
    place.is_file() || place.with_extension("exe").is_file()
}

/// Whether this run is a machine's, not a person's: then nothing may be skipped.
pub fn is_ci() -> bool {
    env::var("CI").is_ok_and(|value| value == "true" || value == "1")
}

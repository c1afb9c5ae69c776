//! Makes the WebAssembly smaller with `wasm-opt`, where node is there to run it.

use crate::{
    house, npm,
    run::{minutes, run, say},
};
use anyhow::{Context, Result};
use std::{fs, process::Command};

/// What `wasm-opt` is asked for: its usual passes for size.
const WANTED: &str = "-Oz";

/// The smaller module, or `None` where it cannot be made; then the reason has been said.
pub fn squeeze(wasm: &[u8]) -> Result<Option<Vec<u8>>> {
    let Some(folder) = npm::fetch("binaryen", house::BINARYEN)? else {
        say("The WebAssembly is not optimised");
        return Ok(None);
    };
    say("Optimising the WebAssembly for size");
    let work = house::target_folder()?.join("squeeze");
    fs::create_dir_all(&work)?;
    let (before, after) = (work.join("before.wasm"), work.join("after.wasm"));
    fs::write(&before, wasm)?;
    run(
        Command::new("node")
            .arg(folder.join("bin/wasm-opt"))
            .arg(WANTED)
            .arg(&before)
            .arg("-o")
            .arg(&after),
        minutes(5),
    )?;
    Ok(Some(fs::read(&after).context("wasm-opt wrote nothing")?))
}

//! What the house is built of: that every crate may be used under the house's licences, that none is there in two versions
//! unless it is listed why, and that all come from the one registry. `.ci/deny.toml` is the list.

use crate::{
    house,
    run::{minutes, run},
    tools::{self, Tool},
};
use anyhow::Result;
use std::process::Command;

/// What reads licences and versions.
const CARGO_DENY: Tool = Tool {
    package: "cargo-deny",
    program: "cargo-deny",
    version: "0.20.2",
    locked: true,
};

/// Checks all crates of the lock file, without the network.
pub fn check() -> Result<()> {
    let folders: Vec<_> = tools::install(&CARGO_DENY)?.into_iter().collect();
    let path = tools::path_with(&folders)?;
    let mut command = Command::new("cargo");
    command.args([
        "deny",
        "--offline",
        "--locked",
        "--all-features",
        "check",
        "--config",
        ".ci/deny.toml",
    ]);
    command.args(["--hide-inclusion-graph", "licenses", "bans", "sources"]);
    run(command.current_dir(house::root()).env("PATH", path), minutes(2))
}

//! Fetches a package from npm into the cache, once for each version.

use crate::{
    house,
    run::{minutes, run, say},
};
use anyhow::{Context, Result};
use std::{fs, path::PathBuf, process::Command};

/// The folder of the unpacked package, or `None` where node is missing or npm cannot be reached; then the reason has
/// been said.
pub fn fetch(name: &str, version: &str) -> Result<Option<PathBuf>> {
    let place = house::cache()?.join(format!("{name}-{version}"));
    let folder = place.join("node_modules").join(name);
    if !(house::on_path("node") && house::on_path("npm")) {
        say(&format!("node with npm is not installed, so {name} is left out"));
        return Ok(None);
    }
    if folder.is_dir() {
        return Ok(Some(folder));
    }
    say(&format!("Fetching {name} {version} from npm, once for this machine"));
    // Under another name until it is whole, so that a broken download is never taken for the package.
    let part = house::cache()?.join(format!("{name}-{version}.part{}", std::process::id()));
    fs::create_dir_all(&part).with_context(|| format!("cannot make {}", part.display()))?;
    let fetched = run(
        Command::new("npm")
            .args(["install", "--ignore-scripts", "--no-audit", "--no-fund", "--silent"])
            .arg("--prefix")
            .arg(&part)
            .arg(format!("{name}@{version}"))
            .current_dir(&part),
        minutes(5),
    );
    if let Err(error) = fetched {
        let _ = fs::remove_dir_all(&part);
        say(&format!("{name} could not be fetched: {error}"));
        return Ok(None);
    }
    // Another run may have been quicker; its copy is as good.
    if fs::rename(&part, &place).is_err() {
        fs::remove_dir_all(&part)?;
    }
    Ok(folder.is_dir().then_some(folder))
}

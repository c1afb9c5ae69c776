//! A built page in memory: every path under the folder, with its bytes.

use anyhow::{Context, Result};
use std::{collections::BTreeMap, fs, path::Path};

/// Path inside the folder (with `/` between its parts) to bytes, in the order of the paths.
pub type Files = BTreeMap<String, Vec<u8>>;

/// Reads every file under `folder`.
pub fn read(folder: &Path) -> Result<Files> {
    let mut files = Files::new();
    read_into(folder, "", &mut files)?;
    Ok(files)
}

/// Writes `files` as the whole content of `folder`; what stood there before is removed.
pub fn replace(folder: &Path, files: &Files) -> Result<()> {
    if folder.exists() {
        fs::remove_dir_all(folder).with_context(|| format!("cannot clear {}", folder.display()))?;
    }
    write(folder, files)
}

/// Writes `files` into `folder` and leaves what else is there.
pub fn write(folder: &Path, files: &Files) -> Result<()> {
    for (path, bytes) in files {
        let place = folder.join(path);
        if let Some(parent) = place.parent() {
            fs::create_dir_all(parent).with_context(|| format!("cannot make {}", parent.display()))?;
        }
        fs::write(&place, bytes).with_context(|| format!("cannot write {}", place.display()))?;
    }
    Ok(())
}

/// Reads everything under `folder` into `files`, each path led by `prefix` (empty, or ending in `/`).
pub fn read_into(folder: &Path, prefix: &str, files: &mut Files) -> Result<()> {
    let entries = fs::read_dir(folder).with_context(|| format!("cannot read {}", folder.display()))?;
    for entry in entries {
        let entry = entry?;
        let name = entry.file_name();
        let name = name
            .to_str()
            .with_context(|| format!("{} is not a plain name", entry.path().display()))?;
        if entry.file_type()?.is_dir() {
            read_into(&entry.path(), &format!("{prefix}{name}/"), files)?;
        } else {
            let bytes = fs::read(entry.path()).with_context(|| format!("cannot read {}", entry.path().display()))?;
            files.insert(format!("{prefix}{name}"), bytes);
        }
    }
    Ok(())
}

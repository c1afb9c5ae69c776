//! Finds foreign programs, and installs those that cargo can build into the cache, once for each version.

use crate::{
    house,
    run::{minutes, run, say},
};
use anyhow::Result;
use std::{
    env,
    ffi::OsString,
    path::{Path, PathBuf},
    process::Command,
};

/// A program of one exact version that cargo can build.
pub struct Tool {
    /// The crate it comes from.
    pub package: &'static str,
    /// The program's name.
    pub program: &'static str,
    /// Its version.
    pub version: &'static str,
    /// Whether its own lock file is kept to.
    pub locked: bool,
}

/// Builds the page anew at every change, and reloads it.
pub const TRUNK: Tool = Tool {
    package: "trunk",
    program: "trunk",
    version: house::TRUNK,
    locked: true,
};

/// What trunk calls to make the glue. Its lock file names a crate that may have been withdrawn, so it is not kept to.
pub const WASM_BINDGEN: Tool = Tool {
    package: "wasm-bindgen-cli",
    program: "wasm-bindgen",
    version: house::WASM_BINDGEN,
    locked: false,
};

/// What drives Firefox. Debian has no package of it.
pub const GECKODRIVER: Tool = Tool {
    package: "geckodriver",
    program: "geckodriver",
    version: house::GECKODRIVER,
    locked: true,
};

/// In the place of a foreign program's own release profile: it runs for seconds, and to make it quick takes minutes.
const QUICKLY_BUILT: [(&str, &str); 4] = [
    ("CARGO_PROFILE_RELEASE_OPT_LEVEL", "1"),
    ("CARGO_PROFILE_RELEASE_LTO", "off"),
    ("CARGO_PROFILE_RELEASE_CODEGEN_UNITS", "16"),
    ("CARGO_PROFILE_RELEASE_DEBUG", "false"),
];

/// Where the program is: the one that is found anyway if it has the right version, otherwise the one that was installed.
/// `None` if it has yet to be installed.
pub fn place(tool: &Tool) -> Option<PathBuf> {
    if has_version(Path::new(tool.program), tool.version) {
        return Some(PathBuf::from(tool.program));
    }
    let installed = folder(tool).ok()?.join("bin").join(tool.program);
    has_version(&installed, tool.version).then_some(installed)
}

/// The program's folder, or `None` if the one that is found anyway has the right version; installed if need be.
pub fn install(tool: &Tool) -> Result<Option<PathBuf>> {
    if has_version(Path::new(tool.program), tool.version) {
        return Ok(None);
    }
    let place = folder(tool)?;
    let folder = place.join("bin");
    if !has_version(&folder.join(tool.program), tool.version) {
        say(&format!(
            "Installing {} {}, once for this machine (some minutes)",
            tool.package, tool.version
        ));
        let mut command = Command::new("cargo");
        command.args(["install", "--quiet", "--force", "--root"]);
        command.arg(&place);
        if tool.locked {
            command.arg("--locked");
        }
        command.arg(format!("{}@{}", tool.package, tool.version));
        command.envs(QUICKLY_BUILT);
        // Outside the house, whose cargo settings are not meant for it.
        command.current_dir(house::cache()?).env_remove("CARGO_TARGET_DIR");
        run(&mut command, minutes(20))?;
    }
    Ok(Some(folder))
}

/// The folder in the cache that a tool is installed into.
fn folder(tool: &Tool) -> Result<PathBuf> {
    Ok(house::cache()?.join(format!("{}-{}", tool.package, tool.version)))
}

/// The search path with these folders before it.
pub fn path_with(folders: &[PathBuf]) -> Result<OsString> {
    let path = env::var_os("PATH").unwrap_or_default();
    let all = folders.iter().cloned().chain(env::split_paths(&path));
    Ok(env::join_paths(all)?)
}

/// Whether the program runs and says that it is of this version.
fn has_version(program: &Path, version: &str) -> bool {
    let output = Command::new(program).arg("--version").output();
    output.is_ok_and(|output| says_version(&String::from_utf8_lossy(&output.stdout), version))
}

fn says_version(text: &str, version: &str) -> bool {
    text.split_whitespace().any(|word| word == version)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn only_the_exact_version_will_do() {
        assert!(says_version("trunk 0.21.14\n", "0.21.14"));
        assert!(!says_version("trunk 0.21.140", "0.21.14"));
        assert!(!has_version(Path::new("no-such-program"), "1"));
    }

    #[test]
    fn the_binding_generator_has_one_version_everywhere() {
        let manifest = std::fs::read_to_string(house::root().join("Cargo.toml")).unwrap();
        let pin = format!("\"={}\"", house::WASM_BINDGEN);
        assert_eq!(manifest.matches(&pin).count(), 2, "wasm-bindgen's pins in Cargo.toml");
        let trunk = std::fs::read_to_string(house::root().join("Trunk.toml")).unwrap();
        assert!(trunk.contains(&format!("wasm_bindgen = \"{}\"", house::WASM_BINDGEN)));
        assert!(trunk.contains(&format!("trunk-version = \"={}\"", house::TRUNK)));
    }
}

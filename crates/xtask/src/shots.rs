//! Pictures of the page: every state of the gallery for looking at, and the one in the README.

use crate::{
    build, house, http,
    run::{minutes, run, say},
    site,
};
use anyhow::Result;
use std::{net::TcpListener, path::PathBuf, process::Command, thread};

/// The picture that the README shows.
const README_PICTURE: &str = "crates/loopwright-app/picture.png";

/// Builds the page, serves it for as long as it takes, and has a browser take the pictures.
///
/// The browser is driven by a program in the tests' crate, so that the chores compile quickly.
pub fn shots(folder: Option<PathBuf>) -> Result<()> {
    let folder = match folder {
        Some(folder) => folder,
        None => house::target_folder()?.join("shots"),
    };
    build::build_folder()?;
    let listener = TcpListener::bind("127.0.0.1:0")?;
    let address = format!("http://{}/", listener.local_addr()?);
    let dist = house::root().join("dist");
    thread::spawn(move || http::serve(&listener, move |path| site::respond(&dist, path)));
    say("Taking the pictures");
    run(
        Command::new("cargo")
            .args(["run", "--locked", "--package", "loopwright-tests"])
            .args(["--features", "browser", "--bin", "shots", "--", &address])
            .arg(&folder)
            .arg(house::root().join(README_PICTURE))
            .current_dir(house::root()),
        minutes(15),
    )?;
    say(&format!("They are in {}", folder.display()));
    Ok(())
}

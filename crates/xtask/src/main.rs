//! The chores by name: `cargo xtask <chore>`.

use anyhow::{Context, Result, bail};
use std::{
    env,
    path::{Path, PathBuf},
    process::ExitCode,
};
use xtask::{
    build,
    ci::{self, Extent},
    deny, files, finish, fuzz, npm_package, pages, serve, shots, tidy, tour,
};

const HELP: &str = "\
cargo xtask serve [--port N]   build the page and serve it on this machine
cargo xtask build              the release in dist/, the single file in dist-file/, and their sizes
cargo xtask test               everything that has to hold; installs what it needs
cargo xtask test --quick       the same without browsers, a second folder and trunk, while a change is being made
cargo xtask tidy               the house rules, for the sources and for dist/ if it is there
cargo xtask bench              how long the sums take, and a project of sixty steps
cargo xtask bench pages        how long a first visit waits for its answer; [--beside D] and in another built folder
cargo xtask bench keys         how long a key waits to be seen, in every tool; [--beside D] and in another built folder
cargo xtask deny               licences, crates in two versions, and where crates come from
cargo xtask fuzz               texts made up against everything that reads text, a minute each
cargo xtask npm                the maths for JavaScript, a package folder in target/npm/
cargo xtask npm declare        the same, and its declarations into crates/loopwright-js/index.d.ts
cargo xtask tour               the README of the maths crate, from the words at the head of its lib.rs
cargo xtask snapshot           the text of every state, for the browser tests to compare: look at `git diff`
cargo xtask heights            how high each tool is inside another page, into web/heights.txt
cargo xtask shots [--out D]    pictures of every state of the gallery, and the README's
cargo xtask finish [--dist D]  policy and offline list for a page built by trunk";

fn main() -> ExitCode {
    let arguments: Vec<String> = env::args().skip(1).collect();
    match chore(&arguments) {
        Ok(()) => ExitCode::SUCCESS,
        Err(error) => {
            eprintln!("xtask: {error:#}");
            ExitCode::FAILURE
        }
    }
}

fn chore(arguments: &[String]) -> Result<()> {
    let words: Vec<&str> = arguments.iter().map(String::as_str).collect();
    match words.as_slice() {
        ["serve"] => build::build_folder().and_then(|()| serve::serve(None)),
        ["serve", "--port", port] => {
            let port = port.parse().with_context(|| format!("{port} is not a port"))?;
            build::build_folder().and_then(|()| serve::serve(Some(port)))
        }
        ["build"] => build::build(),
        ["test"] => ci::test(Extent::Whole),
        ["test", "--quick"] => ci::test(Extent::Quick),
        ["tidy"] => tidy::tidy(),
        ["bench"] => ci::bench(),
        ["bench", "pages"] => pages::pages(None),
        ["bench", "pages", "--beside", folder] => pages::pages(Some(Path::new(folder))),
        ["bench", "keys"] => pages::keys(None),
        ["bench", "keys", "--beside", folder] => pages::keys(Some(Path::new(folder))),
        ["deny"] => deny::check(),
        ["fuzz"] => fuzz::fuzz(),
        ["npm"] => npm_package::build().map(|_| ()),
        ["npm", "declare"] => npm_package::declare(),
        ["tour"] => tour::write(),
        ["snapshot"] => ci::snapshot(),
        ["heights"] => ci::heights(),
        ["shots"] => shots::shots(None),
        ["shots", "--out", folder] => shots::shots(Some(folder.into())),
        ["finish"] => {
            let folder = env::var_os("TRUNK_STAGING_DIR").context("trunk names no folder; give one by --dist")?;
            finish_folder(folder.into())
        }
        ["finish", "--dist", folder] => finish_folder(folder.into()),
        [] | ["help" | "--help" | "-h"] => {
            println!("{HELP}");
            Ok(())
        }
        _ => bail!("there is no chore `{}`\n{HELP}", words.join(" ")),
    }
}

fn finish_folder(folder: PathBuf) -> Result<()> {
    let mut page = files::read(&folder)?;
    finish::finish(&mut page)?;
    files::replace(&folder, &page)
}

//! From sources to `dist/`, the page in a folder, and `dist-file/loopwright.html`, the page in one file.

use crate::{
    compile,
    files::{self, Files},
    finish, house, minify, page,
    run::say,
    single, sizes, squeeze,
};
use anyhow::Result;

/// The folder that holds the page in one file.
pub const SINGLE_FOLDER: &str = "dist-file";
/// The page in one file.
pub const SINGLE: &str = "loopwright.html";

/// Builds the release: the folder, the single file, and the table of their sizes.
pub fn build() -> Result<()> {
    let files = assemble()?;
    let single = Files::from([(SINGLE.to_owned(), single::single(&files)?)]);
    let finished = write_folder(files)?;
    files::replace(&house::root().join(SINGLE_FOLDER), &single)?;
    say("Weighing it");
    println!(
        "\ndist/\n{}\n{SINGLE_FOLDER}/\n{}",
        sizes::table(&finished)?,
        sizes::table(&single)?
    );
    Ok(())
}

/// Builds the folder only, for a look at the page.
pub fn build_folder() -> Result<()> {
    write_folder(assemble()?).map(|_| ())
}

/// Everything that belongs to the page, not yet finished.
fn assemble() -> Result<Files> {
    let mut files = page::gather(&house::root().join("web"))?;
    files.extend(compile::compile()?);
    let wasm = format!("{}_bg.wasm", house::APP);
    if let Some(smaller) = squeeze::squeeze(&files[&wasm])? {
        files.insert(wasm, smaller);
    }
    Ok(files)
}

fn write_folder(mut files: Files) -> Result<Files> {
    minify::minify(&mut files)?;
    say("Writing dist/ with its policy and its list for offline use");
    finish::finish(&mut files)?;
    files::replace(&house::root().join("dist"), &files)?;
    Ok(files)
}

//! From sources to `dist/`, the page in a folder, and `dist-file/loopwright.html`, the page in one file.

use crate::{
    compile,
    files::{self, Files},
    finish, house, minify, packed, page,
    run::say,
    single, sizes, squeeze,
    weight::{self, Weight},
};
use anyhow::Result;
use std::path::PathBuf;

/// The folder that holds the page in one file.
pub const SINGLE_FOLDER: &str = "dist-file";
/// The page in one file.
pub const SINGLE: &str = "loopwright.html";

/// Builds the release: the folder, the single file, and the table of their sizes.
pub fn build() -> Result<()> {
    let made = assemble(house::APP, "web")?;
    let single = Files::from([(SINGLE.to_owned(), single::single(&made.files)?)]);
    let finished = write_folder(made)?;
    files::replace(&house::root().join(SINGLE_FOLDER), &single)?;
    say("Weighing it");
    let (table, sum) = sizes::table(&finished.files)?;
    println!("\ndist/\n{table}\n{SINGLE_FOLDER}/\n{}", sizes::table(&single)?.0);
    println!("{}", compare(&finished, sum.brotli)?);
    Ok(())
}

/// Builds the folder only, for a look at the page.
pub fn build_folder() -> Result<()> {
    write_folder(assemble(house::APP, "web")?).map(|_| ())
}

/// Builds the bare page in the same way, into a folder under cargo's, and answers where that is.
pub fn build_bare() -> Result<PathBuf> {
    let mut made = assemble(house::BARE, "tests/bench/bare")?;
    minify::minify(&mut made.files)?;
    finish::finish_page(&mut made.files, house::BARE)?;
    let folder = house::target_folder()?.join("bare");
    files::replace(&folder, &made.files)?;
    Ok(folder)
}

/// A page, and whether all that makes it smaller could be done.
struct Made {
    files: Files,
    is_small: bool,
}

/// Everything that belongs to the page of a package, not yet finished; `page` is the folder with what is not compiled.
fn assemble(package: &str, page: &str) -> Result<Made> {
    let mut files = page::gather(&house::root().join(page))?;
    files.extend(compile::compile(package)?);
    let wasm = format!("{package}_bg.wasm");
    let smaller = squeeze::squeeze(&files[&wasm])?;
    let is_small = smaller.is_some();
    files.extend(smaller.map(|smaller| (wasm, smaller)));
    Ok(Made { files, is_small })
}

fn write_folder(mut made: Made) -> Result<Made> {
    made.is_small &= minify::minify(&mut made.files)?;
    say("Writing dist/ with its policy, its list for offline use, and each file packed beside itself");
    finish::finish(&mut made.files)?;
    let dist = house::root().join("dist");
    files::replace(&dist, &made.files)?;
    files::write(&dist, &packed::beside(&made.files)?)?;
    Ok(made)
}

/// The folder's weight beside its budget and beside an earlier one, if it could be made as small as that was.
fn compare(made: &Made, brotli: usize) -> Result<String> {
    if !made.is_small {
        return Ok("not compared: what makes the page smaller could not all be done".to_owned());
    }
    let compiler = compile::compiler()?;
    weight::compare(&Weight { brotli, compiler }, sizes::Budget::now()?)
}

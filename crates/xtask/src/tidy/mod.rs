//! The house rules that no compiler knows: how files open, what the page may not do, what the bytes may not tell.
//!
//! A rule is a function from text to findings, so that each has a test in which it fails. `sources` looks at what is
//! written, `built` at what is shipped, `top` at what stands at the top of the house.

mod built;
mod code;
mod faults;
mod layers;
mod lists;
mod marks;
mod sentences;
mod sources;
mod top;

use crate::{files, house, packed, tour};
use anyhow::{Result, bail, ensure};

/// Something that breaks a rule: where, and what.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Finding {
    /// The file, with a line where there is one.
    pub place: String,
    /// The rule that is broken, in a sentence.
    pub broken: String,
}

/// Checks what is written, and what is shipped if it has been built.
pub fn tidy() -> Result<()> {
    tidy_sources()?;
    if house::root().join("dist").is_dir() {
        tidy_built()?;
    }
    Ok(())
}

/// Checks what is written: sources, pages and the top of the house.
pub fn tidy_sources() -> Result<()> {
    let root = house::root();
    let paths = built::machine_paths()?;
    let mut texts = files::Files::new();
    for folder in ["crates", "tests", "web", ".ci"] {
        files::read_into(&root.join(folder), &format!("{folder}/"), &mut texts)?;
    }
    // What is not text is a picture, and has no rules here.
    let texts: Vec<(&String, &str)> = texts
        .iter()
        .filter_map(|(path, bytes)| Some((path, std::str::from_utf8(bytes).ok()?)))
        .collect();
    // A walk that found no files would find no faults either.
    ensure!(texts.len() > 10, "only {} sources were found", texts.len());
    let test_modules: Vec<String> = texts
        .iter()
        .flat_map(|(path, text)| sources::test_modules(path, text))
        .collect();
    let mut findings = top::check(&root)?;
    let readme = texts.iter().find(|(path, _)| path.as_str() == faults::PLACE);
    findings.extend(faults::check(readme.map_or("", |(_, text)| text), &texts));
    for (path, text) in texts {
        let for_tests = test_modules.iter().any(|module| sources::is_in(path, module));
        findings.extend(sources::check(path, text, for_tests));
        findings.extend(layers::check(path, text));
        findings.extend(sentences::check(path, text, for_tests));
        findings.extend(marks::check(path, text, for_tests));
        findings.extend(built::paths_in(path, text.as_bytes(), &paths));
    }
    findings.extend(lists::check()?);
    if !tour::is_told()? {
        findings.push(Finding {
            place: "crates/loopwright/README.md".to_owned(),
            broken: "it does not say what the tour in lib.rs says: `cargo xtask tour`".to_owned(),
        });
    }
    report(findings)
}

/// Checks what is shipped: `dist/` and the single file.
pub fn tidy_built() -> Result<()> {
    let root = house::root();
    let paths = built::machine_paths()?;
    let mut dist = files::read(&root.join("dist"))?;
    packed::take_away(&mut dist);
    let single = files::read(&root.join(crate::build::SINGLE_FOLDER))?;
    let mut findings = built::check(&dist)?;
    findings.extend(built::weigh(&dist)?);
    for (path, bytes) in dist.iter().chain(&single) {
        findings.extend(built::paths_in(path, bytes, &paths));
    }
    report(findings)
}

fn report(findings: Vec<Finding>) -> Result<()> {
    if findings.is_empty() {
        return Ok(());
    }
    for finding in &findings {
        eprintln!("  {}: {}", finding.place, finding.broken);
    }
    bail!("{} things are not tidy", findings.len())
}

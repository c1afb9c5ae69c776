//! The list of tools, wherever it is told: the tour of the maths and the README name every tool of `tools.rs`, and none
//! beside them.

use super::Finding;
use crate::{house, sizes};
use anyhow::{Context, Result};
use std::fs;

/// What the tour and the README leave out or make up.
pub fn check() -> Result<Vec<Finding>> {
    let root = house::root();
    let read = |path: &str| fs::read_to_string(root.join(path)).with_context(|| format!("{path} cannot be read"));
    let tools = sizes::tools(&read("crates/loopwright/src/tools.rs")?);
    let mut names = Vec::new();
    for tool in &tools {
        names.push(title(
            &read(&format!("crates/loopwright-app/src/words/english/{tool}.rs"))?,
            tool,
        )?);
    }
    let mut findings = tour(&read("crates/loopwright/src/lib.rs")?, &tools);
    findings.extend(table(&read("README.md")?, &names));
    Ok(findings)
}

/// What a tool is called on the page.
fn title(words: &str, tool: &str) -> Result<String> {
    let after = words.split_once("const TITLE").map(|(_, rest)| rest);
    let name = after.and_then(|rest| rest.split_once("name: \"")?.1.split_once('"'));
    let (name, _) = name.with_context(|| format!("the words of {tool} give it no name"))?;
    Ok(name.to_owned())
}

/// The chapters of the tour against the list.
fn tour(text: &str, tools: &[String]) -> Vec<Finding> {
    let rows = text.lines().filter(|line| line.starts_with("//! | [`"));
    let chapters = rows.flat_map(|row| {
        let cell = row.split('|').nth(1).unwrap_or_default();
        cell.split("[`")
            .skip(1)
            .filter_map(|rest| Some(rest.split_once('`')?.0.to_owned()))
    });
    differing("crates/loopwright/src/lib.rs", &chapters.collect::<Vec<_>>(), tools)
}

/// The first table of the README against the names on the page.
fn table(text: &str, names: &[String]) -> Vec<Finding> {
    let rows = text.lines().skip_while(|line| !line.starts_with("| tool |")).skip(2);
    let rows = rows.take_while(|line| line.starts_with('|'));
    let told = rows.map(|row| row.split('|').nth(1).unwrap_or_default().trim().to_owned());
    differing("README.md", &told.collect::<Vec<_>>(), names)
}

fn differing(place: &str, told: &[String], wanted: &[String]) -> Vec<Finding> {
    let finding = |broken: String| Finding {
        place: place.to_owned(),
        broken,
    };
    let missing = wanted.iter().filter(|tool| !told.contains(tool));
    let extra = told.iter().filter(|tool| !wanted.contains(tool));
    missing
        .map(|tool| finding(format!("the list of tools lacks {tool}")))
        .chain(extra.map(|tool| finding(format!("the list of tools names {tool}, which is none"))))
        .collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    fn list(names: &[&str]) -> Vec<String> {
        names.iter().map(|name| (*name).to_owned()).collect()
    }

    #[test]
    fn a_tool_that_is_missing_or_made_up_is_found() {
        let tour_text = "//! | chapter | x |\n//! |---|---|\n//! | [`gauge`] | x |\n//! | [`yoke`], [`raglan`] | x |\n";
        assert!(tour(tour_text, &list(&["gauge", "yoke", "raglan"])).is_empty());
        assert_eq!(tour(tour_text, &list(&["gauge", "yoke", "flare"])).len(), 2);
        let readme = "x\n| tool | its question |\n|---|---|\n| Gauge | x |\n| Cast-on | y |\n\n| other | z |\n";
        assert!(table(readme, &list(&["Gauge", "Cast-on"])).is_empty());
        assert_eq!(table(readme, &list(&["Gauge"])).len(), 1);
    }

    #[test]
    fn a_tool_is_called_what_its_words_say() {
        let words = "/// x\npub const TITLE: Title = Title {\n    name: \"Even spacing\",\n    asks: \"x\",\n};";
        assert_eq!(title(words, "spacing").unwrap(), "Even spacing");
        assert!(title("x", "spacing").is_err());
    }
}

//! The net under every change: what each named state of the gallery says, word for word, is in git, one file a tool in
//! `snapshot/`. A state that says something else fails until the change is looked at and taken over:
//! `cargo xtask snapshot` writes the files anew, and `git diff` shows what changed.
//!
//! A file holds the states in the order of their names, and at its end each choice with its keys. Boxes, classes and
//! line breaks are not in it, so that a page that is only laid out otherwise stays the same.

use crate::{
    stage::Stage,
    states::{self, TABLET},
    visible::{difference, visible},
};
use anyhow::{Context, Result, ensure};
use std::{
    collections::{BTreeMap, BTreeSet},
    env, fs,
    path::{Path, PathBuf},
};

/// Stands before the name of a state.
const STATE: &str = "== ";

/// Stands before the choices at the end.
const CHOICES: &str = "== (choices)";

/// The text of every state by its name, behind the name of its tool.
type Said = BTreeMap<String, BTreeMap<String, String>>;

/// Every state says what it said when the files were written.
pub async fn every_state_says_what_it_said(stage: &mut Stage) -> Result<()> {
    let said = everything_said(stage).await?;
    if is_written() {
        return write(&said);
    }
    let before = read()?;
    let mut differing = Vec::new();
    let tools: BTreeSet<&String> = before.keys().chain(said.keys()).collect();
    for tool in tools {
        let none = BTreeMap::new();
        let (before, after) = (before.get(tool).unwrap_or(&none), said.get(tool).unwrap_or(&none));
        let states: BTreeSet<&String> = before.keys().chain(after.keys()).collect();
        for state in states {
            let lines = |said: &BTreeMap<String, String>| said.get(state).cloned().unwrap_or_default();
            let (before, after) = (lines(before), lines(after));
            let difference = difference(&list(&before), &list(&after));
            if !difference.is_empty() {
                differing.push(format!("{tool}/{state}\n{}", difference.join("\n")));
            }
        }
    }
    ensure!(
        differing.is_empty(),
        "{} states say something else; if that is meant, run `cargo xtask snapshot` and look at `git diff`\n{}",
        differing.len(),
        differing.join("\n")
    );
    Ok(())
}

/// Whether what is read is to be written down, and not compared.
pub fn is_written() -> bool {
    env::var_os("LOOPWRIGHT_SNAPSHOT").is_some_and(|value| value == "write")
}

fn list(text: &str) -> Vec<&str> {
    text.lines().collect()
}

async fn everything_said(stage: &Stage) -> Result<Said> {
    stage.browser.look(TABLET).await?;
    let mut said = Said::new();
    let mut choices: BTreeMap<String, BTreeSet<String>> = BTreeMap::new();
    for state in states::named(stage).await? {
        stage.browser.go(&state.page).await?;
        stage.looked_at(&state.page);
        let read = visible(&stage.browser, "main").await?;
        ensure!(!read.lines.is_empty(), "{} says nothing", state.page);
        choices.entry(state.tool.clone()).or_default().extend(read.choices);
        said.entry(state.tool).or_default().insert(state.name, text(read.lines));
    }
    for (tool, choices) in choices {
        let states = said.get_mut(&tool).context("choices without a state")?;
        states.insert(CHOICES[STATE.len()..].to_owned(), text(choices));
    }
    Ok(said)
}

/// Lines as they stand in a file.
pub fn text(lines: impl IntoIterator<Item = String>) -> String {
    lines.into_iter().map(|line| line + "\n").collect()
}

fn folder() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("browser/snapshot")
}

fn read() -> Result<Said> {
    let mut said = Said::new();
    for entry in fs::read_dir(folder()).context("there is no snapshot: run `cargo xtask snapshot`")? {
        let path = entry?.path();
        let tool = path.file_stem().unwrap_or_default().to_string_lossy().into_owned();
        let text = fs::read_to_string(&path)?;
        let states = said.entry(tool).or_default();
        let mut state = String::new();
        for line in text.lines().filter(|line| !line.is_empty()) {
            match line.strip_prefix(STATE) {
                Some(name) => name.clone_into(&mut state),
                None => {
                    let said: &mut String = states.entry(state.clone()).or_default();
                    said.push_str(line);
                    said.push('\n');
                }
            }
        }
    }
    Ok(said)
}

fn write(said: &Said) -> Result<()> {
    let folder = folder();
    if folder.is_dir() {
        fs::remove_dir_all(&folder)?;
    }
    fs::create_dir_all(&folder)?;
    for (tool, states) in said {
        let is_last = |name: &str| STATE.to_owned() + name == CHOICES;
        let named = states.iter().filter(|(name, _)| !is_last(name));
        let last = states.iter().filter(|(name, _)| is_last(name));
        let sections: Vec<String> = named
            .chain(last)
            .map(|(name, text)| format!("{STATE}{name}\n{text}"))
            .collect();
        fs::write(folder.join(format!("{tool}.txt")), sections.join("\n"))?;
    }
    println!("the text of every state is in {}", folder.display());
    Ok(())
}

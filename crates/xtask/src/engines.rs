//! What came of each browser scenario in each engine: noted by the scenarios as they end, a line each, and put together as
//! a table when the run is over.
//!
//! The tests and the chore share the shape of a line, so that it is written and read in one place. The table has a row a
//! scenario and a column an engine; a second one tells how many walks looked at each state of the gallery.

use anyhow::{Context, Result, ensure};
use std::{
    collections::{BTreeMap, BTreeSet},
    fmt::Write,
    fs,
    path::Path,
    time::Duration,
};

/// The folder of notes in the target folder, a file for each process that played scenarios.
pub const NOTES: &str = "browser-runs";

/// The table in the target folder.
pub const TABLE: &str = "engines.md";

/// How a scenario ended in an engine.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Outcome {
    /// As it should.
    Passed,
    /// As it should when it was played again; and why it failed at first.
    Shaky(String),
    /// Twice as it should not; and why.
    Failed(String),
    /// It was not played, for this reason.
    Skipped(String),
}

/// One scenario in one engine.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Note {
    /// The engine's name.
    pub engine: String,
    /// The scenario's name, behind that of its module.
    pub scenario: String,
    /// How it ended.
    pub outcome: Outcome,
    /// How long it took, with all that is started for it.
    pub took: Duration,
    /// The states of the gallery that it looked at.
    pub states: BTreeSet<String>,
}

impl Outcome {
    const fn key(&self) -> &'static str {
        match self {
            Self::Passed => "passed",
            Self::Shaky(_) => "shaky",
            Self::Failed(_) => "failed",
            Self::Skipped(_) => "skipped",
        }
    }

    fn why(&self) -> &str {
        match self {
            Self::Passed => "",
            Self::Shaky(why) | Self::Failed(why) | Self::Skipped(why) => why,
        }
    }

    fn read(key: &str, why: &str) -> Option<Self> {
        let why = why.to_owned();
        Some(match key {
            "passed" => Self::Passed,
            "shaky" => Self::Shaky(why),
            "failed" => Self::Failed(why),
            "skipped" => Self::Skipped(why),
            _ => return None,
        })
    }
}

impl Note {
    /// The note as a line, its parts between tabs.
    pub fn print(&self) -> String {
        let states: Vec<&str> = self.states.iter().map(String::as_str).collect();
        let took = self.took.as_millis().to_string();
        let parts = [
            self.engine.as_str(),
            &self.scenario,
            self.outcome.key(),
            &took,
            self.outcome.why(),
            &states.join(" "),
        ];
        // A reason may be anything that a browser said.
        parts.map(|part| part.replace(['\t', '\n', '\r'], " ")).join("\t")
    }

    /// The note that such a line is.
    pub fn read(line: &str) -> Option<Self> {
        let parts: Vec<&str> = line.split('\t').collect();
        let &[engine, scenario, key, took, why, states] = parts.as_slice() else {
            return None;
        };
        Some(Self {
            engine: engine.to_owned(),
            scenario: scenario.to_owned(),
            outcome: Outcome::read(key, why)?,
            took: Duration::from_millis(took.parse().ok()?),
            states: states.split_whitespace().map(str::to_owned).collect(),
        })
    }
}

/// Forgets what earlier runs noted.
pub fn forget(target: &Path) -> Result<()> {
    let folder = target.join(NOTES);
    if folder.exists() {
        fs::remove_dir_all(&folder)?;
    }
    Ok(())
}

/// Puts together what was noted, and answers a line for each engine that says how it went there.
pub fn write_table(target: &Path) -> Result<Vec<String>> {
    let notes = read_all(&target.join(NOTES))?;
    fs::write(target.join(TABLE), table(&notes))?;
    Ok(engines(&notes).map(|engine| summary(engine, &notes)).collect())
}

fn read_all(folder: &Path) -> Result<Vec<Note>> {
    let mut notes = Vec::new();
    for entry in fs::read_dir(folder).context("no scenario noted how it ended")? {
        let text = fs::read_to_string(entry?.path())?;
        for line in text.lines() {
            notes.push(Note::read(line).with_context(|| format!("this is no note: {line}"))?);
        }
    }
    ensure!(!notes.is_empty(), "no scenario noted how it ended");
    Ok(notes)
}

/// The engines in the order of their names.
fn engines(notes: &[Note]) -> impl Iterator<Item = &str> {
    let names: BTreeSet<&str> = notes.iter().map(|note| note.engine.as_str()).collect();
    names.into_iter()
}

fn summary(engine: &str, notes: &[Note]) -> String {
    let own = || notes.iter().filter(|note| note.engine == engine);
    let took: Duration = own().map(|note| note.took).sum();
    let mut counts: BTreeMap<&str, usize> = BTreeMap::new();
    for note in own() {
        *counts.entry(note.outcome.key()).or_default() += 1;
    }
    let counts: Vec<String> = counts.iter().map(|(key, count)| format!("{count} {key}")).collect();
    format!("{engine}: {}; {:.0} s in all", counts.join(", "), took.as_secs_f32())
}

fn table(notes: &[Note]) -> String {
    let engines: Vec<&str> = engines(notes).collect();
    let mut text = "# What was played, in which engine\n\n".to_owned();
    for engine in &engines {
        let _ = writeln!(text, "- {}", summary(engine, notes));
    }
    let reasons: BTreeSet<&str> = notes.iter().map(|note| note.outcome.why()).collect();
    let reasons: Vec<&str> = reasons.into_iter().filter(|why| !why.is_empty()).collect();
    let number = |why: &str| reasons.iter().position(|reason| *reason == why).map(|place| place + 1);
    let scenarios: BTreeSet<&str> = notes.iter().map(|note| note.scenario.as_str()).collect();
    text.push_str(&head("scenario", &engines));
    for scenario in scenarios {
        row(&mut text, scenario, &engines, |engine| {
            let found = notes
                .iter()
                .find(|note| note.scenario == scenario && note.engine == engine);
            found.map(|note| cell(note, number(note.outcome.why())))
        });
    }
    text.push('\n');
    for (place, why) in reasons.iter().enumerate() {
        let _ = writeln!(text, "{}. {why}", place + 1);
    }
    let states: BTreeSet<&String> = notes.iter().flat_map(|note| &note.states).collect();
    text.push_str(&head("state, and how many walks looked at it", &engines));
    for state in states {
        row(&mut text, state, &engines, |engine| {
            let walks = notes
                .iter()
                .filter(|note| note.engine == engine && note.states.contains(state));
            Some(walks.count().to_string())
        });
    }
    text
}

fn head(first: &str, engines: &[&str]) -> String {
    format!(
        "\n| {first} | {} |\n|---{}|\n",
        engines.join(" | "),
        "|---".repeat(engines.len())
    )
}

fn row(text: &mut String, name: &str, engines: &[&str], cell: impl Fn(&str) -> Option<String>) {
    let cells: Vec<String> = engines
        .iter()
        .map(|engine| cell(engine).unwrap_or_else(|| "not asked for".to_owned()))
        .collect();
    let _ = writeln!(text, "| {name} | {} |", cells.join(" | "));
}

fn cell(note: &Note, reason: Option<usize>) -> String {
    let took = match note.outcome {
        Outcome::Skipped(_) => String::new(),
        _ => format!(", {:.1} s", note.took.as_secs_f32()),
    };
    let reason = reason.map(|number| format!(" ({number})")).unwrap_or_default();
    format!("{}{reason}{took}", note.outcome.key())
}

#[cfg(test)]
mod tests {
    use super::*;

    fn note(engine: &str, outcome: Outcome, states: &[&str]) -> Note {
        Note {
            engine: engine.to_owned(),
            scenario: "keep::it_stays".to_owned(),
            outcome,
            took: Duration::from_millis(1500),
            states: states.iter().map(|state| (*state).to_owned()).collect(),
        }
    }

    #[test]
    fn a_note_is_read_as_it_was_written() {
        let outcomes = [
            Outcome::Passed,
            Outcome::Shaky("late once".to_owned()),
            Outcome::Failed("it is gone".to_owned()),
            Outcome::Skipped("it keeps nothing".to_owned()),
        ];
        for outcome in outcomes {
            let note = note("WebKit", outcome, &["cords/empty", "cords/filled"]);
            assert_eq!(Note::read(&note.print()), Some(note));
        }
        let lines = note("WebKit", Outcome::Failed("one\ttwo\nthree".to_owned()), &[]);
        assert_eq!(
            Note::read(&lines.print()).map(|note| note.outcome),
            Some(Outcome::Failed("one two three".to_owned()))
        );
        assert_eq!(Note::read("passed"), None);
    }

    #[test]
    fn the_table_has_a_cell_for_each_engine() {
        let notes = [
            note("Chromium", Outcome::Passed, &["cords/empty"]),
            note("WebKit", Outcome::Skipped("It keeps nothing.".to_owned()), &[]),
        ];
        let table = table(&notes);
        assert!(
            table.contains("| keep::it_stays | passed, 1.5 s | skipped (1) |"),
            "{table}"
        );
        assert!(table.contains("1. It keeps nothing."), "{table}");
        assert!(table.contains("| cords/empty | 1 | 0 |"), "{table}");
        assert!(table.contains("- WebKit: 1 skipped;"), "{table}");
    }
}

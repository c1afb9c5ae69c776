//! How each scenario ended in each engine, noted in a file of this run's own in `target/browser-runs/`. The chore makes the
//! table of engines of it (`xtask::engines`).

use crate::{browser::Engine, differences, stage::target};
use anyhow::Result;
use std::{
    collections::BTreeSet,
    fs::{self, OpenOptions},
    io::Write,
    process,
    sync::{Mutex, PoisonError},
    time::Duration,
};
use xtask::engines::{NOTES, Note, Outcome};

/// Whether this run's file has been begun. Scenarios end at the same time.
static BEGUN: Mutex<bool> = Mutex::new(false);

/// Notes how a scenario ended. The first note of a run stands behind those of all that it does not play.
pub fn add(
    engine: Engine,
    scenes: &str,
    name: &str,
    outcome: Outcome,
    took: Duration,
    states: BTreeSet<String>,
) -> Result<()> {
    let note = Note {
        engine: format!("{engine:?}"),
        scenario: format!("{scenes}::{name}"),
        outcome,
        took,
        states,
    };
    let mut begun = BEGUN.lock().unwrap_or_else(PoisonError::into_inner);
    if !*begun {
        write(&not_played())?;
        *begun = true;
    }
    write(&[note])
}

/// What is not played, engine by engine, with the reasons.
fn not_played() -> Vec<Note> {
    let skipped = differences::not_played();
    let note = |(engine, scenario, why): (Engine, &str, &str)| Note {
        engine: format!("{engine:?}"),
        scenario: scenario.to_owned(),
        outcome: Outcome::Skipped(why.to_owned()),
        took: Duration::ZERO,
        states: BTreeSet::new(),
    };
    skipped.map(note).collect()
}

fn write(notes: &[Note]) -> Result<()> {
    let folder = target()?.join(NOTES);
    fs::create_dir_all(&folder)?;
    let mut file = OpenOptions::new()
        .create(true)
        .append(true)
        .open(folder.join(format!("{}.txt", process::id())))?;
    let lines: String = notes.iter().map(|note| note.print() + "\n").collect();
    Ok(file.write_all(lines.as_bytes())?)
}

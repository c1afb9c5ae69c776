//! Runs other programs: says what is done, bounds how long it may take, and ends what runs over, by process id.

use crate::yardstick::Patience;
use anyhow::{Context, Result, bail};
use std::{
    fs,
    process::{Child, Command, ExitStatus, Stdio},
    thread,
    time::Duration,
};

/// One line to the reader about what happens now.
pub fn say(line: &str) {
    eprintln!("xtask: {line}");
}

/// A span of whole minutes.
pub const fn minutes(count: u64) -> Duration {
    Duration::from_secs(count * 60)
}

/// Runs `command` with its output shown; an error when it fails or takes longer than `limit`, which is said for two
/// quiet cores.
pub fn run(command: &mut Command, limit: Duration) -> Result<()> {
    let name = describe(command);
    let child = command
        .spawn()
        .with_context(|| format!("`{name}` could not be started"))?;
    let status = wait(child, &name, limit)?;
    if !status.success() {
        bail!("`{name}` failed ({status})");
    }
    Ok(())
}

/// Ends a process and all that it started, by their ids.
///
/// Children of a browser's driver outlive it otherwise, and hold its pipes open. The family is read from the process
/// table under `/proc`; where there is none only the process itself is ended.
pub fn end(child: &mut Child) {
    for id in family(child.id()).into_iter().rev() {
        if id != child.id() {
            // It may have ended by itself in between, which is no news.
            let _ = Command::new("kill")
                .args(["-KILL", &id.to_string()])
                .stderr(Stdio::null())
                .status();
        }
    }
    let _ = child.kill();
    let _ = child.wait();
}

/// A child process that is ended when it is no longer needed.
pub struct Ending(pub Child);

impl Drop for Ending {
    fn drop(&mut self) {
        end(&mut self.0);
    }
}

fn wait(mut child: Child, name: &str, limit: Duration) -> Result<ExitStatus> {
    let mut patience = Patience::of(limit);
    loop {
        if let Some(status) = child.try_wait()? {
            return Ok(status);
        }
        if patience.is_over() {
            end(&mut child);
            bail!(
                "`{name}` took longer than {} minutes of a quiet machine and was ended",
                limit.as_secs() / 60
            );
        }
        thread::sleep(Duration::from_millis(30));
    }
}

/// The process and its descendants, elders first.
fn family(elder: u32) -> Vec<u32> {
    let parents = parents();
    let mut family = vec![elder];
    let mut next = 0;
    while let Some(&parent) = family.get(next) {
        family.extend(parents.iter().filter(|pair| pair.1 == parent).map(|pair| pair.0));
        next += 1;
    }
    family
}

/// Pairs of a process and its parent.
fn parents() -> Vec<(u32, u32)> {
    let Ok(entries) = fs::read_dir("/proc") else {
        return Vec::new();
    };
    entries
        .flatten()
        .filter_map(|entry| {
            let id = entry.file_name().to_str()?.parse().ok()?;
            let stat = fs::read_to_string(entry.path().join("stat")).ok()?;
            Some((id, parent_in(&stat)?))
        })
        .collect()
}

/// The parent's id in a line of `/proc/<id>/stat`: two words after the name, which stands in brackets and may itself
/// hold spaces and brackets.
fn parent_in(stat: &str) -> Option<u32> {
    let (_, rest) = stat.rsplit_once(')')?;
    rest.split_whitespace().nth(1)?.parse().ok()
}

fn describe(command: &Command) -> String {
    let mut words = vec![command.get_program().to_string_lossy().into_owned()];
    words.extend(command.get_args().map(|word| word.to_string_lossy().into_owned()));
    words.join(" ")
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_parent_is_found_behind_a_name_with_brackets() {
        assert_eq!(parent_in("12 (a ) b) S 7 12 12 0"), Some(7));
        assert_eq!(parent_in("nonsense"), None);
    }

    #[test]
    fn what_runs_over_is_ended() {
        let error = run(Command::new("sleep").arg("60"), Duration::from_millis(80)).unwrap_err();
        assert!(error.to_string().contains("took longer"), "{error}");
    }

    #[test]
    fn a_failure_names_the_command() {
        let error = run(Command::new("sh").args(["-c", "exit 3"]), minutes(1)).unwrap_err();
        assert!(error.to_string().contains("exit 3"), "{error}");
    }

    #[test]
    fn the_grandchildren_are_ended_too() {
        let mut child = Command::new("sh").args(["-c", "sleep 61 & wait"]).spawn().unwrap();
        let found = (0..100).any(|_| {
            thread::sleep(Duration::from_millis(20));
            family(child.id()).len() > 1
        });
        assert!(found);
        let grandchild = family(child.id())[1];
        end(&mut child);
        let still_there = (0..100).all(|_| {
            thread::sleep(Duration::from_millis(20));
            // A process that has ended but is not yet collected is a zombie, "Z".
            fs::read_to_string(format!("/proc/{grandchild}/stat")).is_ok_and(|stat| !stat.contains(") Z"))
        });
        assert!(!still_there);
    }
}

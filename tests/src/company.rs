//! A program with all that it starts. It is ended as one when it is no longer needed, and also when this process ends, in
//! whichever way: a shell beside it waits for the end of its own input, which only this process holds open.

use crate::drive::{lettered, live_in};
use anyhow::{Context, Result};
use std::{
    os::unix::process::CommandExt,
    path::Path,
    process::{Child, Command, Stdio},
};

/// Starts the program, waits, asks it and all that it started to end, and clears a folder away if one is named.
const WATCH: &str = "to_clear=$1; shift
    trap : TERM
    \"$@\" </dev/null &
    read -r nothing
    kill -TERM 0
    sleep 0.5
    [ -z \"$to_clear\" ] || rm -rf \"$to_clear\"
    kill -KILL 0";

/// What becomes of the folder in which a program lived.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Afterwards {
    /// It stays: another one may go on there, and whoever made it clears it away.
    Stays,
    /// It is cleared away with the program.
    Goes,
}

/// The program, and the shell that watches over it.
pub struct Company(Child);

impl Company {
    /// Starts a program, which lives in this folder and nowhere else.
    pub fn start(program: &Path, arguments: &[&str], lives_in: &Path, afterwards: Afterwards) -> Result<Self> {
        let to_clear = match afterwards {
            Afterwards::Stays => Path::new(""),
            Afterwards::Goes => lives_in,
        };
        let mut command = Command::new("sh");
        command.args(["-c", WATCH, "sh"]).arg(to_clear).arg(program);
        let started = lettered(live_in(&mut command, lives_in))
            .args(arguments)
            .stdin(Stdio::piped())
            .stdout(Stdio::null())
            .stderr(Stdio::null())
            .process_group(0)
            .spawn();
        let started = started.with_context(|| format!("{} could not be started", program.display()))?;
        Ok(Self(started))
    }
}

impl Drop for Company {
    fn drop(&mut self) {
        drop(self.0.stdin.take());
        let _ = self.0.wait();
    }
}

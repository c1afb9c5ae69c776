//! A program with all that it starts. It is ended as one when it is no longer needed, and also when this process ends, in
//! whichever way: a shell beside it waits for the end of its own input, which only this process holds open.

use anyhow::{Context, Result};
use std::{
    path::Path,
    process::{Child, Command, Stdio},
};

/// Starts the program, waits, asks it and all that it started to end, and clears away the folder it lived in.
const WATCH: &str = "lives_in=$1; shift
    trap : TERM
    \"$@\" </dev/null &
    read -r nothing
    kill -TERM 0
    sleep 0.5
    rm -rf \"$lives_in\"
    kill -KILL 0";

/// The program, and the shell that watches over it.
pub struct Company(Child);

impl Company {
    /// Starts a program, which lives in this folder and nowhere else.
    pub fn start(program: &Path, arguments: &[&str], lives_in: &Path) -> Result<Self> {
        use std::os::unix::process::CommandExt;
        let started = Command::new("sh")
            .args(["-c", WATCH, "sh"])
            .arg(lives_in)
            .arg(program)
            .args(arguments)
            .env("HOME", lives_in)
            .env("XDG_DATA_HOME", lives_in.join("data"))
            .env("XDG_CACHE_HOME", lives_in.join("cache"))
            .env("XDG_CONFIG_HOME", lives_in.join("config"))
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

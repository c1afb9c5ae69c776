//! Serves the built page on this machine.

use crate::{house, http, run::say, site};
use anyhow::{Context, Result};
use std::{io::ErrorKind, net::TcpListener};

/// The port that is tried first. What the page stores belongs to its address, so the address should not change.
const PORT: u16 = 8017;

/// Serves `dist/` until the program is ended. With a port, that one or none.
pub fn serve(port: Option<u16>) -> Result<()> {
    let listener = match TcpListener::bind(("127.0.0.1", port.unwrap_or(PORT))) {
        Err(error) if error.kind() == ErrorKind::AddrInUse && port.is_none() => {
            say(&format!(
                "Port {PORT} is taken; the page stores what you type for each address by itself"
            ));
            TcpListener::bind("127.0.0.1:0")
        }
        bound => bound,
    };
    let listener = listener.context("the page cannot be served there; try another --port")?;
    say(&format!(
        "Open http://{}/ in a browser; Ctrl-C ends it",
        listener.local_addr()?
    ));
    let dist = house::root().join("dist");
    http::serve(&listener, move |path| site::respond(&dist, path));
    Ok(())
}

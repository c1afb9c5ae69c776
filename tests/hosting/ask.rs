//! One request over HTTP, and the answer byte for byte, whatever it is packed with.

use anyhow::{Context, Result};
use std::{
    io::{Read, Write},
    net::TcpStream,
    time::Duration,
};

/// What a server answered.
pub struct Answer {
    /// The status code.
    pub status: u16,
    /// The bytes as they came.
    pub body: Vec<u8>,
    headers: Vec<(String, String)>,
}

impl Answer {
    /// The value of a header, by its name in small letters; empty where there is none.
    pub fn header(&self, name: &str) -> &str {
        let found = self.headers.iter().find(|header| header.0 == name);
        found.map_or("", |header| &header.1)
    }
}

/// Asks for a path, packed in one of these ways.
pub fn ask(port: u16, path: &str, encodings: &str) -> Result<Answer> {
    let mut stream = TcpStream::connect(("127.0.0.1", port))?;
    stream.set_read_timeout(Some(Duration::from_secs(20)))?;
    // A file is sent in one piece, since its length is known.
    let request = format!("GET {path} HTTP/1.1\r\nHost: 127.0.0.1:{port}\r\nAccept-Encoding: {encodings}\r\n");
    stream.write_all(format!("{request}Connection: close\r\n\r\n").as_bytes())?;
    let mut bytes = Vec::new();
    stream.read_to_end(&mut bytes)?;
    let end = bytes.windows(4).position(|window| window == b"\r\n\r\n");
    let end = end.with_context(|| format!("half an answer for {path}"))?;
    let head = String::from_utf8(bytes[..end].to_vec())?;
    let mut lines = head.lines();
    let first = lines.next().unwrap_or_default();
    let status = first.split_whitespace().nth(1).context("no status")?.parse()?;
    let pair = |line: &str| {
        let (name, value) = line.split_once(": ")?;
        Some((name.to_ascii_lowercase(), value.to_owned()))
    };
    let headers = lines.filter_map(pair).collect();
    let body = bytes.split_off(end + 4);
    Ok(Answer { status, body, headers })
}

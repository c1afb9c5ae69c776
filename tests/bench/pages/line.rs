//! A built page served over a slow line: every answer is waited for, and all of them together share so many bits a
//! second, each packed with brotli as a good host would send it.

use anyhow::Result;
use std::{
    collections::BTreeMap,
    io::{self, Write},
    net::{TcpListener, TcpStream},
    path::Path,
    sync::{Arc, Mutex, PoisonError},
    thread,
    time::{Duration, Instant},
};
use xtask::{
    files, http,
    site::{self, Response},
    sizes,
};

/// Bytes that are sent in one go, about what a network does.
const PIECE: usize = 1_400;

/// How slow the line is.
#[derive(Debug, Clone, Copy)]
pub struct Line {
    /// What all answers share.
    pub bits_a_second: u32,
    /// From a request to the first byte of its answer.
    pub wait: Duration,
}

/// Serves a folder behind a line of its own for as long as the program runs, and answers with its address.
pub fn serve(folder: &Path, line: Line) -> Result<String> {
    let answers = Arc::new(answers(folder)?);
    let listener = TcpListener::bind("127.0.0.1:0")?;
    let address = format!("http://{}/", listener.local_addr()?);
    let free = Arc::new(Mutex::new(Instant::now()));
    thread::spawn(move || {
        for stream in listener.incoming().flatten() {
            let (answers, free) = (Arc::clone(&answers), Arc::clone(&free));
            thread::spawn(move || {
                let slow = Slow {
                    line,
                    free,
                    stream: &stream,
                };
                // A browser that goes away in the middle is no error of ours.
                let _ = http::converse_over(&stream, slow, &|path| {
                    thread::sleep(line.wait);
                    answer(&answers, path)
                });
            });
        }
    });
    Ok(address)
}

/// One connection's end of the line.
struct Slow<'a> {
    line: Line,
    /// When the line has sent all that was given to it so far, by any connection.
    free: Arc<Mutex<Instant>>,
    stream: &'a TcpStream,
}

impl Slow<'_> {
    /// Takes the line for this many bytes, and answers when the last of them will have been sent.
    fn take(&self, bytes: usize) -> Instant {
        let seconds = bytes as f64 * 8.0 / f64::from(self.line.bits_a_second);
        let mut free = self.free.lock().unwrap_or_else(PoisonError::into_inner);
        *free = (*free).max(Instant::now()) + Duration::from_secs_f64(seconds);
        *free
    }
}

impl Write for Slow<'_> {
    fn write(&mut self, bytes: &[u8]) -> io::Result<usize> {
        let piece = &bytes[..bytes.len().min(PIECE)];
        let sent = self.take(piece.len());
        thread::sleep(sent.saturating_duration_since(Instant::now()));
        self.stream.write_all(piece)?;
        Ok(piece.len())
    }

    fn flush(&mut self) -> io::Result<()> {
        self.stream.flush()
    }
}

/// The answer for each path, packed once before anybody asks.
fn answers(folder: &Path) -> Result<BTreeMap<String, Response>> {
    let mut answers = BTreeMap::new();
    for path in files::read(folder)?.into_keys() {
        let path = format!("/{path}");
        let mut response = site::respond(folder, &path);
        response.body = sizes::brotli(&response.body)?;
        response.headers.retain(|(name, _)| name != "Content-Length");
        response.headers.extend([
            ("Content-Length".to_owned(), response.body.len().to_string()),
            ("Content-Encoding".to_owned(), "br".to_owned()),
        ]);
        answers.insert(path, response);
    }
    Ok(answers)
}

fn answer(answers: &BTreeMap<String, Response>, asked: &str) -> Response {
    let path = match asked.split('?').next() {
        Some("/") | None => "/index.html",
        Some(path) => path,
    };
    let missing = || site::answer(404, "text/plain", &[], b"Not here.\n".to_vec());
    answers.get(path).cloned().unwrap_or_else(missing)
}

//! As much of HTTP as a page on this machine needs: one request, one answer, then the connection is closed.
//!
//! It is written here and not taken from a library because the browser tests need answers that no library gives:
//! half a file under its full length, or nothing at all.

use crate::site::{self, Response};
use std::{
    io::{self, BufRead, BufReader, Read, Write},
    net::{TcpListener, TcpStream},
    sync::Arc,
    thread,
    time::Duration,
};

/// The longest request that is read, in bytes.
const LONGEST: u64 = 16 * 1024;

/// How long a browser may take to ask, or to take the answer.
const PATIENCE: Duration = Duration::from_secs(20);

/// Answers every request by `answer`, a function from the path as asked to the answer, for as long as the program runs.
pub fn serve(listener: &TcpListener, answer: impl Fn(&str) -> Response + Send + Sync + 'static) {
    let answer = Arc::new(answer);
    for stream in listener.incoming().flatten() {
        let answer = Arc::clone(&answer);
        // A browser opens connections it does not use yet; each waits in a thread of its own.
        thread::spawn(move || {
            // A browser that goes away in the middle is no error of ours.
            let _ = converse(&stream, &*answer);
        });
    }
}

/// Reads one request from the stream and writes its answer.
pub fn converse(stream: &TcpStream, answer: &dyn Fn(&str) -> Response) -> io::Result<()> {
    converse_over(stream, stream, answer)
}

/// The same, with the answer written to `out`, which hands it on to the stream in its own way.
pub fn converse_over(stream: &TcpStream, out: impl Write, answer: &dyn Fn(&str) -> Response) -> io::Result<()> {
    stream.set_read_timeout(Some(PATIENCE))?;
    stream.set_write_timeout(Some(PATIENCE))?;
    let Some((method, path)) = read_head(stream)? else {
        return Ok(());
    };
    let response = match method.as_str() {
        "GET" | "HEAD" => answer(&path),
        _ => site::answer(
            405,
            "text/plain; charset=utf-8",
            &[("Allow", "GET, HEAD")],
            b"Only GET.\n".to_vec(),
        ),
    };
    write(out, &response, method != "HEAD")
}

/// Writes an answer as it is; a body shorter than its `Content-Length` reaches the browser as a broken download.
pub fn write(mut out: impl Write, response: &Response, with_body: bool) -> io::Result<()> {
    let mut head = format!("HTTP/1.1 {} {}\r\n", response.status, reason(response.status));
    for (name, value) in &response.headers {
        head += &format!("{name}: {value}\r\n");
    }
    head += "Connection: close\r\n\r\n";
    out.write_all(head.as_bytes())?;
    if with_body {
        out.write_all(&response.body)?;
    }
    out.flush()
}

/// Method and path; `None` if the browser closed the connection without asking, or asked for nothing we can read.
fn read_head(stream: &TcpStream) -> io::Result<Option<(String, String)>> {
    let mut lines = BufReader::new(stream.take(LONGEST));
    let mut first = String::new();
    lines.read_line(&mut first)?;
    let mut line = String::new();
    while line != "\r\n" && line != "\n" {
        line.clear();
        if lines.read_line(&mut line)? == 0 {
            return Ok(None);
        }
    }
    let mut words = first.split_whitespace();
    let pair = words.next().zip(words.next());
    Ok(pair.map(|(method, path)| (method.to_owned(), path.to_owned())))
}

fn reason(status: u16) -> &'static str {
    match status {
        200 => "OK",
        404 => "Not Found",
        405 => "Method Not Allowed",
        _ => "Answer",
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn ask(request: &str) -> String {
        let listener = TcpListener::bind("127.0.0.1:0").unwrap();
        let mut stream = TcpStream::connect(listener.local_addr().unwrap()).unwrap();
        stream.write_all(request.as_bytes()).unwrap();
        let (other, _) = listener.accept().unwrap();
        converse(&other, &|path| {
            site::answer(200, "text/plain", &[], path.as_bytes().to_vec())
        })
        .unwrap();
        drop(other);
        let mut text = String::new();
        stream.read_to_string(&mut text).unwrap();
        text
    }

    #[test]
    fn get_has_a_body_and_head_has_none() {
        assert!(ask("GET /a?b HTTP/1.1\r\nHost: x\r\n\r\n").ends_with("\r\n\r\n/a?b"));
        let head = ask("HEAD /a HTTP/1.1\r\n\r\n");
        assert!(
            head.starts_with("HTTP/1.1 200 OK") && head.contains("Content-Length: 2") && head.ends_with("\r\n\r\n")
        );
    }

    #[test]
    fn nothing_can_be_sent_here() {
        assert!(ask("POST / HTTP/1.1\r\n\r\n").starts_with("HTTP/1.1 405"));
    }
}

//! What a good static host answers for a path of the page: the bytes, their type, and the headers that keep it strict.
//!
//! A function from folder and path to answer, without a socket, so that the browser tests can serve the same answers
//! and spoil some of them. It never leaves the folder, and it never forbids being framed: a teacher may put a tool in
//! a page of her own.

use crate::{csp, names};
use std::{fs, path::Path};

/// What the page never asks a device for.
pub const NO_DEVICES: &str = "camera=(), geolocation=(), microphone=(), payment=(), usb=()";

/// An answer over HTTP.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Response {
    /// The status code.
    pub status: u16,
    /// The headers, among them the length of the body.
    pub headers: Vec<(String, String)>,
    /// The body.
    pub body: Vec<u8>,
}

/// Answers for a path as it stands in a request, with or without a query.
pub fn respond(root: &Path, url_path: &str) -> Response {
    let Some(path) = file_for(url_path) else {
        return missing();
    };
    let place = root.join(&path);
    // A link that leads out of the folder is not followed.
    let inside =
        matches!((place.canonicalize(), root.canonicalize()), (Ok(place), Ok(root)) if place.starts_with(&root));
    match fs::read(&place) {
        Ok(body) if inside => found(&path, body),
        _ => missing(),
    }
}

/// An answer with the headers that every answer has.
pub fn answer(status: u16, kind: &str, headers: &[(&str, &str)], body: Vec<u8>) -> Response {
    let length = body.len().to_string();
    let common = [
        ("Content-Type", kind),
        ("Content-Length", &length),
        ("X-Content-Type-Options", "nosniff"),
        ("Referrer-Policy", "no-referrer"),
    ];
    let headers = common.iter().chain(headers);
    let headers = headers
        .map(|&(name, value)| (name.to_owned(), value.to_owned()))
        .collect();
    Response { status, headers, body }
}

/// The type of a file by the ending of its name.
pub fn kind(path: &str) -> &'static str {
    match path.rsplit_once('.').map(|(_, ending)| ending) {
        Some("html") => "text/html; charset=utf-8",
        Some("css") => "text/css; charset=utf-8",
        Some("js") => "text/javascript; charset=utf-8",
        Some("wasm") => "application/wasm",
        Some("webmanifest") => "application/manifest+json",
        Some("svg") => "image/svg+xml",
        Some("png") => "image/png",
        Some("json") => "application/json",
        Some("txt" | "ts") => "text/plain; charset=utf-8",
        _ => "application/octet-stream",
    }
}

fn found(path: &str, body: Vec<u8>) -> Response {
    let html = path.ends_with(".html");
    let policy = match std::str::from_utf8(&body) {
        Ok(text) if html => csp::policy_in(text),
        _ => None,
    };
    // What is no page needs nothing, but the worker, which asks for the page's files.
    let policy = policy.unwrap_or_else(|| "default-src 'none'; connect-src 'self'".to_owned());
    let headers = [
        ("Cache-Control", keeping(path)),
        ("Content-Security-Policy", &policy),
        ("Permissions-Policy", NO_DEVICES),
        // In a frame whose sandbox gives it no origin, the page's own scripts are another origin's. Nothing in the files
        // is secret, so anyone may have them.
        ("Access-Control-Allow-Origin", "*"),
        ("Cross-Origin-Resource-Policy", "cross-origin"),
    ];
    answer(200, kind(path), &headers, body)
}

/// How long a browser may keep a file: for ever where its name would be another if its bytes were.
pub fn keeping(path: &str) -> &'static str {
    if names::has_hash(path) {
        "public, max-age=31536000, immutable"
    } else {
        "no-cache"
    }
}

fn missing() -> Response {
    answer(
        404,
        "text/plain; charset=utf-8",
        &[("Cache-Control", "no-store")],
        b"There is nothing here.\n".to_vec(),
    )
}

/// The file that a path means, relative to the folder; `None` for a path that would leave it or name a hidden file.
fn file_for(url_path: &str) -> Option<String> {
    let path = url_path.split(['?', '#']).next()?;
    let path = decoded(path.strip_prefix('/')?)?;
    let plain = |part: &str| !part.is_empty() && !part.starts_with('.') && !part.contains(['\\', ':', '\0']);
    let path = if path.is_empty() || path.ends_with('/') {
        path + "index.html"
    } else {
        path
    };
    path.split('/').all(plain).then_some(path)
}

/// The text with its `%` escapes resolved.
fn decoded(text: &str) -> Option<String> {
    let mut bytes = Vec::with_capacity(text.len());
    let mut rest = text.as_bytes();
    while let Some((&first, tail)) = rest.split_first() {
        rest = tail;
        if first != b'%' {
            bytes.push(first);
            continue;
        }
        let digits = std::str::from_utf8(rest.get(..2)?).ok()?;
        let all_hex = digits.bytes().all(|digit| digit.is_ascii_hexdigit());
        bytes.push(u8::from_str_radix(digits, 16).ok().filter(|_| all_hex)?);
        rest = &rest[2..];
    }
    String::from_utf8(bytes).ok()
}

#[cfg(test)]
mod tests {
    use super::*;
    use std::path::PathBuf;

    fn folder(name: &str) -> PathBuf {
        let folder = std::env::temp_dir().join(format!("xtask-site-{name}-{}", std::process::id()));
        fs::create_dir_all(folder.join("in/sub")).unwrap();
        fs::write(folder.join("secret.txt"), "secret").unwrap();
        fs::write(folder.join("in/index.html"), "<meta charset=utf-8>").unwrap();
        fs::write(folder.join("in/a b.wasm"), "wasm").unwrap();
        fs::write(folder.join("in/a-0123456789abcdef.js"), "f()").unwrap();
        folder
    }

    fn header<'a>(response: &'a Response, name: &str) -> &'a str {
        let found = response.headers.iter().find(|header| header.0 == name);
        found.map_or("", |header| &header.1)
    }

    #[test]
    fn files_are_found_with_their_type() {
        let folder = folder("found");
        let root = folder.join("in");
        let page = respond(&root, "/?x=1");
        assert_eq!(
            (page.status, header(&page, "Content-Type")),
            (200, "text/html; charset=utf-8")
        );
        assert_eq!(header(&page, "Cache-Control"), "no-cache");
        let wasm = respond(&root, "/a%20b.wasm");
        assert_eq!((wasm.status, header(&wasm, "Content-Type")), (200, "application/wasm"));
        assert_eq!(header(&wasm, "Content-Length"), "4");
        let hashed = respond(&root, "/a-0123456789abcdef.js");
        assert!(header(&hashed, "Cache-Control").ends_with(" immutable"));
        assert!(page.headers.iter().all(|header| header.0 != "X-Frame-Options"));
        for file in [&page, &wasm] {
            assert_eq!(header(file, "Access-Control-Allow-Origin"), "*");
            assert_eq!(header(file, "Cross-Origin-Resource-Policy"), "cross-origin");
            assert_eq!(header(file, "X-Content-Type-Options"), "nosniff");
        }
        fs::remove_dir_all(folder).unwrap();
    }

    #[test]
    fn the_folder_is_never_left() {
        let folder = folder("left");
        let root = folder.join("in");
        let paths = [
            "/../secret.txt",
            "/%2e%2e/secret.txt",
            "/..%2fsecret.txt",
            "/sub/../../secret.txt",
            "//etc/passwd",
            "/%2fetc/passwd",
            "secret.txt",
            "/..\\secret.txt",
            "/%",
            "/%+1",
            "/.git",
            "/\0",
            "",
            "/sub",
        ];
        for path in paths {
            assert_eq!(respond(&root, path).status, 404, "{path}");
        }
        #[cfg(unix)]
        {
            std::os::unix::fs::symlink(folder.join("secret.txt"), root.join("link.txt")).unwrap();
            assert_eq!(respond(&root, "/link.txt").status, 404);
        }
        fs::remove_dir_all(folder).unwrap();
    }

    #[test]
    fn the_pages_own_policy_is_sent() {
        let folder = folder("policy");
        let html = csp::enforce("<meta charset=utf-8><style>a{}</style>", csp::Sources::OwnFolder).unwrap();
        fs::write(folder.join("in/index.html"), &html).unwrap();
        let page = respond(&folder.join("in"), "/index.html");
        assert!(header(&page, "Content-Security-Policy").contains("'sha256-"));
        fs::remove_dir_all(folder).unwrap();
    }
}

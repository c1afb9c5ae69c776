//! The last step of every build: files get names by their bytes, the page its policy and its preload links, and the offline
//! worker its list of files.
//!
//! The list is written after everything else has its final bytes. Each file stands in it with a hash, so that the
//! worker can refuse a file that arrived broken; the version is a hash over all of them and the worker's own text, so
//! that it changes exactly when something did. `sw.js` itself is in no list: the browser looks after it.

use crate::{
    csp::{self, Sources},
    files::Files,
    heights, house, names, packed,
    page::{elements, replaced, without},
    preload::preload,
};
use anyhow::{Context, Result, bail};
use base64::{Engine, engine::general_purpose::STANDARD};
use sha2::{Digest, Sha256};

/// Where the worker stands in the page's folder, for ever.
pub const WORKER: &str = "sw.js";

/// The element for other pages. It has one address, which stands in pages that are not ours.
pub const EMBED: &str = "embed.js";

/// What the worker's version stands between, and its list of files.
const VERSION: [&str; 2] = ["const VERSION = ", ";\n"];
const LIST: [&str; 2] = ["const FILES = ", ";\n"];

/// Finishes a page that was built by us or by trunk, or one that was finished before and changed since.
pub fn finish(files: &mut Files) -> Result<()> {
    heights::fill(files)?;
    packed::take_away(files);
    names::plain(files);
    heights::fill(files)?;
    link(files, house::APP)?;
    names::by_bytes(files)?;
    enforce(files)?;
    list(files)
}

/// Finishes the page of the program of this name; a page that keeps nothing for offline use needs no more.
pub fn finish_page(files: &mut Files, program: &str) -> Result<()> {
    link(files, program)?;
    enforce(files)
}

/// Writes the list of files into the worker, and a version over them. It is made anew where there was one.
pub fn list(files: &mut Files) -> Result<()> {
    let worker = fill(&emptied(&text(files, WORKER)?)?, files)?;
    files.insert(WORKER.to_owned(), worker.into_bytes());
    Ok(())
}

/// The page's links are those that a browser needs.
fn link(files: &mut Files, program: &str) -> Result<()> {
    let html = settle_reload(&drop_links(&text(files, "index.html")?));
    let html = preload(&html, program)?;
    files.insert("index.html".to_owned(), html.into_bytes());
    Ok(())
}

/// The page carries its policy.
fn enforce(files: &mut Files) -> Result<()> {
    let html = csp::enforce(&text(files, "index.html")?, Sources::OwnFolder)?;
    files.insert("index.html".to_owned(), html.into_bytes());
    Ok(())
}

/// The text of a file, with line breaks as the browser sees them.
pub fn text(files: &Files, path: &str) -> Result<String> {
    let bytes = files.get(path).with_context(|| format!("the page has no {path}"))?;
    let text = std::str::from_utf8(bytes).with_context(|| format!("{path} is not text"))?;
    Ok(text.replace("\r\n", "\n"))
}

/// The page without the links that were meant for the build; trunk leaves one of them standing.
fn drop_links(html: &str) -> String {
    let links = elements(html, "link").into_iter();
    let ranges = links
        .filter(|link| link.attribute("data-trunk").is_some())
        .map(|link| link.range);
    without(html, ranges.collect())
}

/// The page with trunk's reload script, if it is there, in a form that stays as it is.
///
/// `trunk serve` fills the server's address into the script at each request, and a text that changes can have no
/// hash. The script asks the browser for the address just as well.
fn settle_reload(html: &str) -> String {
    let scripts = elements(html, "script").into_iter();
    let ours = scripts.filter(|script| html[script.content.clone()].contains("{{__TRUNK_ADDRESS__}}"));
    let changes = ours.map(|script| {
        let text = html[script.content.clone()]
            .replace("'{{__TRUNK_ADDRESS__}}'", "window.location.host")
            .replace("'{{__TRUNK_WS_BASE__}}'", "new URL('./', window.location).pathname");
        (script.content, text)
    });
    replaced(html, changes.collect())
}

/// The worker's text with the version and the list written into it.
fn fill(worker: &str, files: &Files) -> Result<String> {
    let mut version = Sha256::new_with_prefix(worker);
    let mut list = String::from("[\n");
    for (path, bytes) in files.iter().filter(|(path, _)| *path != WORKER) {
        let digest = Sha256::digest(bytes);
        version.update(path);
        version.update(digest);
        let address = if path == "index.html" {
            "./".to_owned()
        } else {
            format!("./{path}")
        };
        list += &format!(
            "  [{}, {:?}],\n",
            serde_json::to_string(&address)?,
            STANDARD.encode(digest)
        );
    }
    list += "]";
    let version = version
        .finalize()
        .iter()
        .take(8)
        .fold(String::new(), |text, byte| format!("{text}{byte:02x}"));
    let worker = write_in(worker, VERSION, &format!("{version:?}"))?;
    write_in(&worker, LIST, &list)
}

/// The worker's text without what an earlier build wrote into it.
fn emptied(worker: &str) -> Result<String> {
    write_in(&write_in(worker, VERSION, "\"\"")?, LIST, "[]")
}

/// `text` with what is written between these two, in their one place.
fn write_in(text: &str, [start, end]: [&str; 2], filling: &str) -> Result<String> {
    let mut parts = text.split(start);
    let only = (parts.next(), parts.next(), parts.next());
    let (Some(before), Some(rest), None) = only else {
        bail!("{WORKER} must have `{start}` exactly once");
    };
    let (_, after) = rest
        .split_once(end)
        .with_context(|| format!("`{start}` does not end"))?;
    Ok([before, start, filling, end, after].concat())
}

#[cfg(test)]
mod tests {
    use super::*;

    fn page() -> Files {
        let html = "<meta charset=\"utf-8\">\n<title>a</title>\n<link data-trunk rel=\"rust\">\n<p>";
        let worker = "// w\nconst VERSION = \"\";\nconst FILES = [];\n";
        Files::from([
            ("index.html".to_owned(), html.as_bytes().to_vec()),
            (WORKER.to_owned(), worker.as_bytes().to_vec()),
            ("a/b.css".to_owned(), b"a{}".to_vec()),
        ])
    }

    fn finished(files: Files) -> (String, String) {
        let mut files = files;
        finish(&mut files).unwrap();
        (text(&files, "index.html").unwrap(), text(&files, WORKER).unwrap())
    }

    #[test]
    fn every_file_but_the_worker_is_listed_with_its_hash() {
        let (_, worker) = finished(page());
        let css = "[\"./a/b-5f546eb4606b5c2b.css\", \"X1RutGBrXCt9KkSaXMK7tHftWiRscFHOhxsS8tv8hBk=\"]";
        assert!(worker.contains(css), "{worker}");
        assert!(worker.contains("[\"./\", ") && !worker.contains("./sw.js"), "{worker}");
    }

    #[test]
    fn the_version_follows_the_bytes() {
        let (_, first) = finished(page());
        assert_eq!(first, finished(page()).1);
        let mut other = page();
        other.insert("a/b.css".to_owned(), b"b{}".to_vec());
        let version = |worker: &str| worker.lines().nth(1).map(str::to_owned);
        assert_ne!(version(&first), version(&finished(other).1));
        let mut other = page();
        other.insert(
            WORKER.to_owned(),
            b"// x\nconst VERSION = \"\";\nconst FILES = [];\n".to_vec(),
        );
        assert_ne!(version(&first), version(&finished(other).1));
    }

    #[test]
    fn a_finished_page_that_changed_is_finished_anew() {
        let mut files = page();
        finish(&mut files).unwrap();
        let css = names::find(&files, "a/b.css").unwrap().to_owned();
        files.insert(css, b"b{}".to_vec());
        files.insert("index.html.br".to_owned(), Vec::new());
        let mut other = page();
        other.insert("a/b.css".to_owned(), b"b{}".to_vec());
        assert_eq!(finished(files), finished(other));
    }

    #[test]
    fn a_worker_without_blanks_is_refused() {
        let mut files = page();
        files.insert(WORKER.to_owned(), b"const VERSION = \"\";".to_vec());
        assert!(finish(&mut files).is_err());
    }

    #[test]
    fn links_for_the_build_are_gone_and_the_policy_is_there() {
        let (html, _) = finished(page());
        assert!(
            !html.contains("data-trunk") && html.find("Content-Security-Policy") < html.find("modulepreload"),
            "{html}"
        );
    }

    #[test]
    fn trunks_reload_script_is_allowed_and_keeps_its_text() {
        let mut files = page();
        let html = "<meta charset=\"utf-8\"><title>a</title><script>const a = '{{__TRUNK_ADDRESS__}}';</script>";
        files.insert("index.html".to_owned(), html.as_bytes().to_vec());
        let (html, _) = finished(files);
        assert!(
            html.contains("const a = window.location.host;")
                && html.contains("script-src http: https: ws: wss: 'wasm-unsafe-eval' 'sha256-")
        );
    }
}

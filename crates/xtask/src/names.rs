//! Names that carry a hash of their bytes, so that a host may let a browser keep a file for ever: other bytes have
//! another name.
//!
//! What others link to by name keeps it (`KEPT`). Every other file becomes `name-<16 hex>.ending`, and is called that
//! wherever a file of the page names it: in quotes, relative to the file that names it. A file that names others is
//! itself named after them, because its bytes change with theirs. [`plain`] is the way back, so that a finished page can
//! be finished once more.

use crate::files::Files;
use anyhow::{Result, ensure};
use sha2::{Digest, Sha256};
use std::collections::BTreeMap;

/// What keeps its name: the page, its worker, what a device or another site asks for by name. A folder ends in `/`.
const KEPT: [&str; 6] = [
    "index.html",
    "sw.js",
    "manifest.webmanifest",
    "embed.js",
    "embed.d.ts",
    "lesson/",
];

/// Letters of a hash in a name.
const LETTERS: usize = 16;

/// What stands around a name where a file names another.
const QUOTES: [char; 3] = ['"', '\'', '`'];

/// Gives every file that may have one a name by its bytes.
///
/// # Errors
/// Where files name each other in a ring: then none can be named first.
pub fn by_bytes(files: &mut Files) -> Result<()> {
    let mut unnamed: Vec<String> = files.keys().filter(|path| !is_kept(path)).cloned().collect();
    while !unnamed.is_empty() {
        let is_ready = |path: &String| !unnamed.iter().any(|other| other != path && names(files, path, other));
        let ready: Vec<String> = unnamed.iter().filter(|path| is_ready(path)).cloned().collect();
        ensure!(!ready.is_empty(), "these files name each other in a ring: {unnamed:?}");
        let named = ready.iter().map(|path| (path.clone(), with_hash(path, &files[path])));
        rename(files, &named.collect());
        unnamed.retain(|path| !ready.contains(path));
    }
    Ok(())
}

/// Takes the hashes out of the names again.
pub fn plain(files: &mut Files) {
    let hashed = files.keys().filter(|path| has_hash(path));
    let plain = hashed.map(|path| (path.clone(), without_hash(path)));
    rename(files, &plain.collect());
}

/// Whether the name carries a hash, and the file behind it will therefore never be another.
pub fn has_hash(path: &str) -> bool {
    without_hash(path) != path
}

/// The name as it was before it was given a hash.
pub fn without_hash(path: &str) -> String {
    let (name, ending) = parts(path);
    match name.rsplit_once('-') {
        Some((name, hash)) if hash.len() == LETTERS && hash.bytes().all(|byte| b"0123456789abcdef".contains(&byte)) => {
            format!("{name}{ending}")
        }
        _ => path.to_owned(),
    }
}

/// The file that was called so before it was given a hash.
pub fn find<'a>(files: &'a Files, plain: &str) -> Option<&'a str> {
    files
        .keys()
        .map(String::as_str)
        .find(|path| *path == plain || without_hash(path) == plain)
}

fn with_hash(path: &str, bytes: &[u8]) -> String {
    let digest = Sha256::digest(bytes);
    let hash = digest.iter().take(LETTERS / 2).map(|byte| format!("{byte:02x}"));
    let (name, ending) = parts(path);
    format!("{name}-{}{ending}", hash.collect::<String>())
}

/// The path up to the last dot of the file's name, and the rest.
fn parts(path: &str) -> (&str, &str) {
    let file = path.rfind('/').map_or(0, |at| at + 1);
    path.split_at(path[file..].rfind('.').map_or(path.len(), |at| file + at))
}

fn is_kept(path: &str) -> bool {
    KEPT.iter()
        .any(|kept| path == *kept || (kept.ends_with('/') && path.starts_with(kept)))
}

/// Whether the first file names the second.
fn names(files: &Files, path: &str, other: &str) -> bool {
    let text = std::str::from_utf8(&files[path]).unwrap_or_default();
    ways(path, other).iter().any(|way| text.contains(way))
}

/// How a file may name another, with the quotes around it.
fn ways(path: &str, other: &str) -> Vec<String> {
    let up = "../".repeat(path.matches('/').count());
    let addresses = if up.is_empty() {
        vec![other.to_owned(), format!("./{other}")]
    } else {
        vec![format!("{up}{other}")]
    };
    let quoted = |address: &String| QUOTES.map(|quote| format!("{quote}{address}{quote}"));
    addresses.iter().flat_map(quoted).collect()
}

/// Moves the files to their new names, and says so in those that name them.
fn rename(files: &mut Files, names: &BTreeMap<String, String>) {
    for (path, bytes) in files.iter_mut() {
        let Ok(text) = std::str::from_utf8(bytes) else { continue };
        let mut changed = text.to_owned();
        for (old, new) in names {
            for (old, new) in ways(path, old).iter().zip(ways(path, new)) {
                changed = changed.replace(old, &new);
            }
        }
        *bytes = changed.into_bytes();
    }
    let moved = names
        .iter()
        .filter_map(|(old, new)| Some((new.clone(), files.remove(old)?)));
    let moved: Vec<_> = moved.collect();
    files.extend(moved);
}

#[cfg(test)]
mod tests {
    use super::*;

    fn page() -> Files {
        let files = [
            (
                "index.html",
                "<script src=\"./boot.js\"></script><link href=\"./icons/a.svg\">",
            ),
            ("boot.js", "import('./app.js'); say(\"app.js is here\")"),
            ("app.js", "new URL(`app_bg.wasm`)"),
            ("app_bg.wasm", "\0asm"),
            ("icons/a.svg", "<svg>"),
            ("manifest.webmanifest", "{\"src\":\"icons/a.svg\"}"),
            (
                "lesson/index.html",
                "<link href=\"../icons/a.svg\"><script src=\"../embed.js\"></script>",
            ),
            ("embed.js", "frame()"),
        ];
        files
            .map(|(path, text)| (path.to_owned(), text.as_bytes().to_vec()))
            .into()
    }

    fn named() -> Files {
        let mut files = page();
        by_bytes(&mut files).unwrap();
        files
    }

    fn text<'a>(files: &'a Files, plain: &str) -> &'a str {
        std::str::from_utf8(&files[find(files, plain).unwrap()]).unwrap()
    }

    #[test]
    fn every_file_is_found_by_the_name_it_is_called() {
        let files = named();
        let glue = find(&files, "app.js").unwrap();
        assert!(has_hash(glue) && text(&files, "boot.js").starts_with(&format!("import('./{glue}')")));
        let wasm = find(&files, "app_bg.wasm").unwrap();
        assert_eq!(text(&files, "app.js"), format!("new URL(`{wasm}`)"));
        let icon = find(&files, "icons/a.svg").unwrap();
        assert!(icon.starts_with("icons/a-") && icon.ends_with(".svg"), "{icon}");
        assert!(text(&files, "index.html").contains(&format!("\"./{icon}\"")));
        assert!(text(&files, "manifest.webmanifest").contains(&format!("\"{icon}\"")));
        assert!(text(&files, "lesson/index.html").contains(&format!("\"../{icon}\"")));
    }

    #[test]
    fn what_others_link_to_keeps_its_name() {
        for path in named().keys() {
            let kept = ["index.html", "manifest.webmanifest", "lesson/index.html", "embed.js"].contains(&path.as_str());
            assert_eq!(has_hash(path), !kept, "{path}");
        }
    }

    #[test]
    fn other_bytes_have_another_name_and_so_has_what_names_them() {
        let mut other = page();
        other.insert("app_bg.wasm".to_owned(), b"\0asm, newer".to_vec());
        by_bytes(&mut other).unwrap();
        let first = named();
        for (path, same) in [
            ("app_bg.wasm", false),
            ("app.js", false),
            ("boot.js", false),
            ("icons/a.svg", true),
        ] {
            assert_eq!(find(&first, path) == find(&other, path), same, "{path}");
        }
    }

    #[test]
    fn the_way_back_leads_to_what_was_there() {
        let mut files = named();
        plain(&mut files);
        assert_eq!(files, page());
        assert_eq!(without_hash("a-b.js"), "a-b.js");
        assert_eq!(
            without_hash("x/a-0123456789abcdef.tar.gz"),
            "x/a-0123456789abcdef.tar.gz"
        );
    }

    #[test]
    fn a_ring_is_refused() {
        let mut files = page();
        files.insert("app.js".to_owned(), b"import('./boot.js')".to_vec());
        assert!(by_bytes(&mut files).is_err());
    }
}

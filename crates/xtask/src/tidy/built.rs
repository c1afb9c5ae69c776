//! Rules for what is shipped.

use super::Finding;
use crate::{
    files::Files,
    finish::{EMBED, text},
    house,
    page::elements,
    sizes,
};
use anyhow::Result;
use std::{fs, path::PathBuf};

/// Names that look like addresses and are none: nothing is ever fetched from them.
const NAMESPACES: [&str; 6] = [
    // The name that is kept for examples (RFC 2606): the page shows how an address is typed.
    "https://example.org/",
    "http://www.w3.org/2000/svg",
    "http://www.w3.org/1999/xlink",
    "http://www.w3.org/1999/xhtml",
    "http://www.w3.org/1998/Math/MathML",
    "http://www.w3.org/XML/1998/namespace",
];

/// What the element for other pages may weigh, in bytes with brotli.
const ELEMENT: usize = 4_096;

/// Everything in the finished folder that breaks a rule.
pub fn check(dist: &Files) -> Result<Vec<Finding>> {
    let mut findings: Vec<Finding> = dist
        .iter()
        .flat_map(|(path, bytes)| addresses_in(path, bytes))
        .collect();
    let html = text(dist, "index.html")?;
    if crate::csp::policy_in(&html).is_none() {
        findings.push(finding("index.html", "the page carries no policy"));
    }
    if elements(&html, "link")
        .iter()
        .any(|link| link.attribute("data-trunk").is_some())
    {
        findings.push(finding("index.html", "a link for the build was left in the page"));
    }
    if text(dist, crate::finish::WORKER)?.contains("const FILES = [];") {
        findings.push(finding(crate::finish::WORKER, "the worker's list of files is empty"));
    }
    findings.extend(weigh_element(dist)?);
    Ok(findings)
}

/// A finding if the folder is heavier than its budget.
pub fn weigh(dist: &Files) -> Result<Vec<Finding>> {
    let (weight, budget) = (sizes::total(dist)?.brotli, sizes::Budget::now()?.bytes());
    if weight <= budget {
        return Ok(Vec::new());
    }
    Ok(vec![finding(
        "dist/",
        &format!("{weight} bytes with brotli; {budget} are allowed"),
    )])
}

/// A finding if the element for other pages, which each of them fetches, is heavier than it may be.
fn weigh_element(dist: &Files) -> Result<Vec<Finding>> {
    let weight = sizes::brotli(text(dist, EMBED)?.as_bytes())?.len();
    if weight < ELEMENT {
        return Ok(Vec::new());
    }
    Ok(vec![finding(
        EMBED,
        &format!("{weight} bytes with brotli; it has to be under {ELEMENT}"),
    )])
}

/// The paths and names of this machine that a build could carry along.
pub fn machine_paths() -> Result<Vec<String>> {
    let mut folders: Vec<PathBuf> = vec![house::root(), house::target_folder()?];
    folders.extend(house::home());
    folders.extend(house::cargo_home());
    let mut paths: Vec<String> = folders.iter().map(|folder| format!("{}/", folder.display())).collect();
    let registries = house::cargo_home().map(|cargo| cargo.join("registry/src"));
    for entry in registries.into_iter().flat_map(fs::read_dir).flatten().flatten() {
        paths.push(entry.file_name().to_string_lossy().into_owned());
    }
    // A home such as "/" would be found in every file.
    paths.retain(|path| path.len() > 3);
    Ok(paths)
}

/// Findings where one of `paths` stands in the bytes.
pub fn paths_in(path: &str, bytes: &[u8], paths: &[String]) -> Vec<Finding> {
    let found = paths.iter().filter(|name| contains(bytes, name.as_bytes()));
    found
        .map(|name| finding(path, &format!("it names a place on this machine, {name}")))
        .collect()
}

fn addresses_in(path: &str, bytes: &[u8]) -> Vec<Finding> {
    let text = String::from_utf8_lossy(bytes);
    let starts = text.match_indices("http://").chain(text.match_indices("https://"));
    let is_namespace = |at: usize| NAMESPACES.iter().any(|name| text[at..].starts_with(name));
    // The beginning of an address, in a sentence about addresses, leads nowhere.
    let is_bare = |at: usize, begins: &str| !text[at + begins.len()..].starts_with(|c: char| c.is_ascii_alphanumeric());
    starts
        .filter(|(at, begins)| !is_namespace(*at) && !is_bare(*at, begins) && !in_comment(&text, *at))
        .map(|(at, _)| {
            let address: String = text[at..]
                .chars()
                .take_while(|c| c.is_ascii_graphic())
                .take(60)
                .collect();
            finding(path, &format!("it names a foreign address, {address}"))
        })
        .collect()
}

/// Whether the line is a comment up to this place; the glue explains itself in such lines.
fn in_comment(text: &str, at: usize) -> bool {
    let line = text[..at].rsplit('\n').next().unwrap_or_default();
    line.trim_start().starts_with("//")
}

fn contains(bytes: &[u8], word: &[u8]) -> bool {
    bytes.windows(word.len()).any(|window| window == word)
}

fn finding(place: &str, broken: &str) -> Finding {
    Finding {
        place: place.to_owned(),
        broken: broken.to_owned(),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn dist(html: &str, worker: &str) -> Files {
        Files::from([
            ("index.html".to_owned(), html.as_bytes().to_vec()),
            ("sw.js".to_owned(), worker.as_bytes().to_vec()),
            (EMBED.to_owned(), b"// a frame".to_vec()),
        ])
    }

    const GOOD: &str = "<meta charset=utf-8><meta http-equiv=\"Content-Security-Policy\" content=\"x\">";

    #[test]
    fn a_good_page_is_let_be() {
        assert_eq!(check(&dist(GOOD, "const FILES = [1];")).unwrap(), []);
    }

    #[test]
    fn an_unfinished_page_is_found() {
        let found = check(&dist("<link data-trunk rel=rust>", "const FILES = [];")).unwrap();
        assert_eq!(found.len(), 3, "{found:?}");
    }

    #[test]
    fn foreign_addresses_are_found_and_namespaces_are_not() {
        let found = addresses_in(
            "a",
            b"\xff http://www.w3.org/2000/svghttps://example.com/x \"http://example.org\"",
        );
        assert_eq!(found.len(), 2, "{found:?}");
        let said = b"begins with https:// and is such as https://example.org/loopwright/";
        assert!(addresses_in("a", said).is_empty());
        let comment = b"  // see https://example.org\nfetch('https://example.org')";
        assert_eq!(addresses_in("a.js", comment).len(), 1);
        assert!(
            found
                .iter()
                .any(|finding| finding.broken.ends_with("https://example.com/x")),
            "{found:?}"
        );
    }

    #[test]
    fn a_place_on_this_machine_is_found() {
        let paths = machine_paths().unwrap();
        let leak = format!("\0x{}/src/lib.rs", house::root().display());
        assert!(!paths_in("a", leak.as_bytes(), &paths).is_empty());
        assert!(paths_in("a", b"dep/yew-0.23.0/src/lib.rs", &paths).is_empty());
    }

    /// Bytes without a pattern cannot be packed.
    fn noise(count: usize) -> Vec<u8> {
        let mut seed = 1_u32;
        let noise = std::iter::repeat_with(|| {
            seed = seed.wrapping_mul(1_664_525).wrapping_add(1_013_904_223);
            (seed >> 24) as u8
        });
        noise.take(count).collect()
    }

    #[test]
    fn too_heavy_an_element_is_found() {
        let mut dist = dist(GOOD, "const FILES = [1];");
        let written = fs::read(house::root().join("web").join(EMBED)).unwrap();
        assert!(
            sizes::brotli(&written).unwrap().len() < ELEMENT,
            "with all that it says to its readers"
        );
        let letters = noise(4 * ELEMENT).into_iter().map(|byte| b'a' + byte % 16);
        dist.insert(EMBED.to_owned(), letters.collect());
        assert_eq!(check(&dist).unwrap().len(), 1);
    }

    #[test]
    fn too_heavy_a_page_is_found() {
        let budget = sizes::Budget::now().unwrap().bytes();
        let heavy = Files::from([("a".to_owned(), noise(budget + 1))]);
        assert_eq!(weigh(&heavy).unwrap().len(), 1);
        assert_eq!(weigh(&dist(GOOD, "")).unwrap(), []);
    }
}

//! Reads `index.html`: which elements it has, and what its `data-trunk` links say belongs to the page.
//!
//! Those links are the one list of what is copied; trunk reads the same ones. This is a scanner for a page we write
//! ourselves, not a parser for the web: elements are found by their opening tag, comments are passed over.

use crate::{
    files::{self, Files},
    glue,
};
use anyhow::{Context, Result, bail};
use std::{fs, ops::Range, path::Path};

/// An element as it stands in the page.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Element {
    /// From its opening `<` to the end of its opening tag, or of its closing tag where it has content.
    pub range: Range<usize>,
    /// What stands between the tags; empty for an element without content.
    pub content: Range<usize>,
    attributes: Vec<(String, String)>,
}

impl Element {
    /// The value of an attribute; empty for one without a value.
    pub fn attribute(&self, name: &str) -> Option<&str> {
        let found = self.attributes.iter().find(|pair| pair.0 == name);
        found.map(|pair| pair.1.as_str())
    }

    /// Whether `rel` is this word.
    pub fn rel_is(&self, rel: &str) -> bool {
        self.attribute("rel") == Some(rel)
    }
}

/// All elements of that name, in order.
pub fn elements(html: &str, name: &str) -> Vec<Element> {
    let mut found = Vec::new();
    let mut from = 0;
    while let Some(start) = html[from..].find('<').map(|at| at + from) {
        from = if html[start..].starts_with("<!--") {
            html[start..].find("-->").map_or(html.len(), |at| start + at + 3)
        } else if let Some(element) = element_at(html, start, name) {
            let end = element.range.end;
            found.push(element);
            end
        } else {
            start + 1
        };
    }
    found
}

/// The page with each range replaced by its text; ranges must not overlap.
pub fn replaced(html: &str, mut changes: Vec<(Range<usize>, String)>) -> String {
    changes.sort_by_key(|change| change.0.start);
    let mut page = String::with_capacity(html.len());
    let mut from = 0;
    for (range, text) in changes {
        page.push_str(&html[from..range.start]);
        page.push_str(&text);
        from = range.end;
    }
    page + &html[from..]
}

/// The page with these elements taken out, each with its line where it stood alone on one.
pub fn without(html: &str, ranges: Vec<Range<usize>>) -> String {
    let lines = ranges.into_iter().map(|range| (whole_line(html, range), String::new()));
    replaced(html, lines.collect())
}

/// The files that `web/index.html` names, and the page itself with those links resolved.
pub fn gather(web: &Path) -> Result<Files> {
    let index = web.join("index.html");
    let html = fs::read_to_string(&index).with_context(|| format!("cannot read {}", index.display()))?;
    let mut files = Files::new();
    let mut gone = Vec::new();
    let mut changes = Vec::new();
    for link in elements(&html, "link") {
        if link.attribute("data-trunk").is_none() {
            continue;
        }
        let href = link.attribute("href").unwrap_or_default();
        match link.attribute("rel").unwrap_or_default() {
            "rust" => gone.push(link.range),
            "css" => {
                copy_file(web, href, &mut files)?;
                changes.push((
                    link.range.clone(),
                    format!("<link rel=\"stylesheet\" href=\"./{href}\">"),
                ));
            }
            "copy-file" => {
                copy_file(web, href, &mut files)?;
                gone.push(link.range);
            }
            "copy-dir" => {
                files::read_into(&web.join(href), &format!("{href}/"), &mut files)
                    .with_context(|| format!("index.html names the folder {href}"))?;
                gone.push(link.range);
            }
            other => bail!("index.html has a data-trunk link of a kind not known here: {other}"),
        }
    }
    lighten(&mut files)?;
    changes.extend(gone.into_iter().map(|range| (whole_line(&html, range), String::new())));
    let html = lighten_inline(&replaced(&html, changes))?;
    files.insert("index.html".to_owned(), html.into_bytes());
    Ok(files)
}

/// Nor is what those say that stand in the page.
fn lighten_inline(html: &str) -> Result<String> {
    let found = ["script", "style"].map(|name| elements(html, name));
    let inline = found
        .into_iter()
        .flatten()
        .filter(|element| !element.content.is_empty());
    let light = inline.map(|element| {
        let text = glue::without_comments(&html[element.content.clone()])?;
        Ok((element.content, text))
    });
    Ok(replaced(html, light.collect::<Result<_>>()?))
}

/// What scripts and styles say to their readers is not shipped.
fn lighten(files: &mut Files) -> Result<()> {
    for (path, bytes) in files.iter_mut() {
        if path.ends_with(".js") || path.ends_with(".css") {
            let text = std::str::from_utf8(bytes).with_context(|| format!("{path} is no text"))?;
            let light = glue::without_comments(text).with_context(|| path.clone())?;
            *bytes = light.into_bytes();
        }
    }
    Ok(())
}

fn copy_file(web: &Path, href: &str, files: &mut Files) -> Result<()> {
    let bytes = fs::read(web.join(href)).with_context(|| format!("index.html names {href}, which cannot be read"))?;
    files.insert(href.to_owned(), bytes);
    Ok(())
}

/// The range with the blanks before it and the line break after it, if nothing else is on its line.
fn whole_line(html: &str, range: Range<usize>) -> Range<usize> {
    let before = html[..range.start].trim_end_matches([' ', '\t']);
    let alone = before.is_empty() || before.ends_with('\n');
    if alone && html[range.end..].starts_with('\n') {
        before.len()..range.end + 1
    } else {
        range
    }
}

fn element_at(html: &str, start: usize, name: &str) -> Option<Element> {
    let rest = html[start + 1..].strip_prefix(name)?;
    if !rest.starts_with(|c: char| c.is_ascii_whitespace() || c == '>' || c == '/') {
        return None;
    }
    let (attributes, opening_end) = attributes(html, start + 1 + name.len())?;
    let mut element = Element {
        range: start..opening_end,
        content: opening_end..opening_end,
        attributes,
    };
    if matches!(name, "script" | "style" | "title") {
        let closing = format!("</{name}>");
        let at = opening_end + html[opening_end..].find(&closing)?;
        element.content = opening_end..at;
        element.range.end = at + closing.len();
    }
    Some(element)
}

/// The attributes from `at` on, and where the tag ends.
fn attributes(html: &str, mut at: usize) -> Option<(Vec<(String, String)>, usize)> {
    let mut found = Vec::new();
    loop {
        at += html[at..].find(|c: char| !c.is_ascii_whitespace() && c != '/')?;
        if html[at..].starts_with('>') {
            return Some((found, at + 1));
        }
        let length = html[at..].find(|c: char| c.is_ascii_whitespace() || matches!(c, '=' | '>' | '/'))?;
        let name = html[at..at + length].to_ascii_lowercase();
        at += length;
        let Some(rest) = html[at..].strip_prefix('=') else {
            found.push((name, String::new()));
            continue;
        };
        let (value, length) = match rest.chars().next()? {
            quote @ ('"' | '\'') => {
                let length = rest[1..].find(quote)?;
                (&rest[1..1 + length], length + 2)
            }
            _ => {
                let length = rest.find(|c: char| c.is_ascii_whitespace() || c == '>')?;
                (&rest[..length], length)
            }
        };
        found.push((name, value.to_owned()));
        at += 1 + length;
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn attributes_are_read_with_and_without_quotes() {
        let found = &elements("<p><link data-trunk rel='css' href=\"a>b.css\" x=y/></p>", "link")[0];
        assert_eq!(found.attribute("data-trunk"), Some(""));
        assert_eq!(found.attribute("rel"), Some("css"));
        assert_eq!(found.attribute("href"), Some("a>b.css"));
        assert_eq!(found.attribute("nothing"), None);
    }

    #[test]
    fn comments_and_longer_names_are_passed_over() {
        assert!(elements("<!-- <link rel=css> --><linker rel=css>", "link").is_empty());
    }

    #[test]
    fn content_is_what_stands_between_the_tags() {
        let html = "<style>a{}</style><script src=x></script>";
        assert_eq!(&html[elements(html, "style")[0].content.clone()], "a{}");
        assert!(elements(html, "script")[0].content.is_empty());
    }

    #[test]
    fn a_removed_element_takes_its_line_along() {
        let html = "<head>\n  <link a>\n  <link b> <p>\n</head>";
        let ranges = elements(html, "link").into_iter().map(|link| link.range).collect();
        assert_eq!(without(html, ranges), "<head>\n   <p>\n</head>");
    }

    #[test]
    fn what_stands_in_the_page_says_nothing_to_its_readers_either() {
        let html = "<style>\n  /* why */\n  a {}\n</style><script>\n// why\nf();\n</script>";
        assert_eq!(
            lighten_inline(html).unwrap(),
            "<style>a {}\n</style><script>f();\n</script>"
        );
    }

    #[test]
    fn the_recover_screen_knows_the_database_as_the_app_does() {
        let read = |path: &str| fs::read_to_string(crate::house::root().join(path)).unwrap();
        let (app, boot) = (read("crates/loopwright-app/src/store/idb.rs"), read("web/boot.js"));
        let number = |text: &str, before: &str| {
            let (_, after) = text.split_once(before).unwrap();
            after.split(';').next().unwrap().to_owned()
        };
        assert_eq!(
            number(&boot, "const DATABASE_VERSION = "),
            number(&app, "const VERSION: u32 = ")
        );
        assert!(
            app.contains("const DATABASE: &str = \"loopwright\";") && boot.contains("indexedDB.open(\"loopwright\")")
        );
        assert!(app.contains("const LOG: &str = \"log\";") && boot.contains(".objectStore(\"log\")"));
    }

    #[test]
    fn a_missing_file_is_named() {
        let folder = std::env::temp_dir().join(format!("xtask-page-{}", std::process::id()));
        fs::create_dir_all(&folder).unwrap();
        fs::write(
            folder.join("index.html"),
            "<link data-trunk rel=\"copy-file\" href=\"none.txt\">",
        )
        .unwrap();
        let error = gather(&folder).unwrap_err();
        fs::remove_dir_all(&folder).unwrap();
        assert!(error.to_string().contains("none.txt"), "{error}");
    }
}

//! The page's content security policy: what may run and load, with a hash for each piece that stands inside the page.

use crate::page::{elements, replaced, without};
use anyhow::{Context, Result};
use base64::{Engine, engine::general_purpose::STANDARD};
use sha2::{Digest, Sha256};

/// Where the page's parts may come from.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Sources {
    /// From its own folder.
    OwnFolder,
    /// From nowhere: the page is one file.
    Nowhere,
}

/// What stands in the policy for the page's own address, which nobody knows when it is built: any address of the web. The
/// page's first script adds the policy once more with the address in its place (`web/index.html`). `'self'` would need no
/// script, but in a frame without an origin of its own it means no address to WebKit. The sockets are for trunk, whose
/// reload script `'self'` lets in.
pub const OWN: &str = "http: https: ws: wss:";

/// The policy for a page: nothing but its own files and the very scripts and styles that stand in it.
pub fn policy(html: &str, sources: Sources) -> String {
    let own = match sources {
        Sources::OwnFolder => OWN,
        Sources::Nowhere => "",
    };
    let mut rules = vec![
        "default-src 'none'".to_owned(),
        rule("script-src", &[own, "'wasm-unsafe-eval'", &hashes(html, "script")]),
        rule("style-src", &[own, &hashes(html, "style")]),
        rule("img-src", &[own, "data:"]),
    ];
    if sources == Sources::OwnFolder {
        rules.extend(["connect-src", "frame-src", "manifest-src", "worker-src"].map(|name| rule(name, &[own])));
    }
    rules.extend(["base-uri 'none'".to_owned(), "form-action 'none'".to_owned()]);
    rules.push("require-trusted-types-for 'script'".to_owned());
    rules.push(rule("trusted-types", &[TRUSTED]));
    rules.join("; ")
}

/// The one policy of Trusted Types, which `web/boot.js` makes.
const TRUSTED: &str = "loopwright";

/// The page with its policy written as the first thing after the character set, before anything it governs, in place of
/// one that it may have from an earlier build.
pub fn enforce(html: &str, sources: Sources) -> Result<String> {
    let earlier = elements(html, "meta").into_iter();
    let earlier = earlier.filter(|meta| meta.attribute("http-equiv") == Some(NAME));
    let html = &without(html, earlier.map(|meta| meta.range).collect());
    let metas = elements(html, "meta");
    let charset = metas.iter().find(|meta| meta.attribute("charset").is_some());
    let end = charset.context("the page does not open with <meta charset>")?.range.end;
    let meta = format!("\n  <meta http-equiv=\"{NAME}\" content=\"{}\">", policy(html, sources));
    Ok(replaced(html, vec![(end..end, meta)]))
}

/// The policy that a finished page carries.
pub fn policy_in(html: &str) -> Option<String> {
    let metas = elements(html, "meta");
    let meta = metas.iter().find(|meta| meta.attribute("http-equiv") == Some(NAME))?;
    meta.attribute("content").map(str::to_owned)
}

const NAME: &str = "Content-Security-Policy";

fn rule(name: &str, values: &[&str]) -> String {
    let values: Vec<&str> = values.iter().copied().filter(|value| !value.is_empty()).collect();
    format!(
        "{name} {}",
        if values.is_empty() {
            "'none'".to_owned()
        } else {
            values.join(" ")
        }
    )
}

/// A hash for each element of that name with content of its own.
fn hashes(html: &str, name: &str) -> String {
    let inline = elements(html, name)
        .into_iter()
        .filter(|element| element.attribute("src").is_none());
    let runs = inline.filter(|element| element.attribute("type").is_none_or(|kind| kind == "module"));
    let hashes = runs.map(|element| {
        let digest = Sha256::digest(html[element.content].as_bytes());
        format!("'sha256-{}'", STANDARD.encode(digest))
    });
    hashes.collect::<Vec<_>>().join(" ")
}

#[cfg(test)]
mod tests {
    use super::*;

    const PAGE: &str = "<meta charset=\"utf-8\"><style>a{}</style><script src=\"x.js\"></script>";

    #[test]
    fn what_stands_in_the_page_is_allowed_by_hash_and_nothing_else() {
        let policy = policy(PAGE, Sources::OwnFolder);
        // printf 'a{}' | openssl dgst -sha256 -binary | base64
        assert!(
            policy.contains("style-src http: https: ws: wss: 'sha256-X1RutGBrXCt9KkSaXMK7tHftWiRscFHOhxsS8tv8hBk='"),
            "{policy}"
        );
        assert!(
            policy.contains("script-src http: https: ws: wss: 'wasm-unsafe-eval';"),
            "{policy}"
        );
        assert!(!policy.contains("'unsafe-"), "{policy}");
    }

    #[test]
    fn the_pages_first_script_narrows_what_stands_for_its_address() {
        let page = std::fs::read_to_string(crate::house::root().join("web/index.html")).unwrap();
        let first = &elements(&page, "script")[0];
        let narrows = format!(".replaceAll(\"{OWN}\", own)");
        assert!(page[first.content.clone()].contains(&narrows));
    }

    #[test]
    fn a_page_in_one_file_may_load_nothing() {
        let policy = policy(PAGE, Sources::Nowhere);
        assert!(!policy.contains(OWN) && !policy.contains("connect-src"), "{policy}");
    }

    #[test]
    fn text_becomes_a_script_nowhere_but_by_the_pages_own_policy() {
        for sources in [Sources::OwnFolder, Sources::Nowhere] {
            let policy = policy(PAGE, sources);
            assert!(
                policy.ends_with("require-trusted-types-for 'script'; trusted-types loopwright"),
                "{policy}"
            );
        }
        let boot = std::fs::read_to_string(crate::house::root().join("web/boot.js")).unwrap();
        assert_eq!(boot.matches("createPolicy(").count(), 1);
        assert!(boot.contains(&format!("createPolicy(\"{TRUSTED}\", ")));
    }

    #[test]
    fn the_policy_stands_before_what_it_governs_and_is_read_back() {
        let page = enforce(PAGE, Sources::OwnFolder).unwrap();
        assert!(page.find("http-equiv").unwrap() < page.find("<style").unwrap());
        assert_eq!(policy_in(&page), Some(policy(PAGE, Sources::OwnFolder)));
        assert_eq!(policy_in(PAGE), None);
    }

    #[test]
    fn a_page_that_has_a_policy_is_given_the_new_one() {
        let page = PAGE.replace("<style>", "\n<style>");
        let once = enforce(&page, Sources::Nowhere).unwrap();
        assert_eq!(enforce(&once, Sources::Nowhere).unwrap(), once);
        let other = enforce(&once, Sources::OwnFolder).unwrap();
        assert_eq!(other, enforce(&page, Sources::OwnFolder).unwrap());
    }

    #[test]
    fn a_page_without_a_character_set_is_refused() {
        assert!(enforce("<p>", Sources::OwnFolder).is_err());
    }
}

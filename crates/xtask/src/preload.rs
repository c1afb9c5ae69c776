//! Links in the page's head by which the glue and the WebAssembly are fetched at once.
//!
//! Without them a browser learns of the glue from `boot.js`, and of the WebAssembly from the glue: each a wait of its own.
//! The glue is preloaded by the browser. The WebAssembly's link tells the page's own script where it is: a browser may ask
//! for it twice where it is preloaded and fetched, as WebKit does.

use crate::page::{elements, replaced, without};
use anyhow::{Context, Result};

/// The page with the links for the program of this name, in place of those that it may have from an earlier build.
pub fn preload(html: &str, program: &str) -> Result<String> {
    let links = elements(html, "link").into_iter();
    let earlier = links.filter(|link| {
        ["modulepreload", "preload", "program"]
            .iter()
            .any(|rel| link.rel_is(rel))
    });
    let html = without(html, earlier.map(|link| link.range).collect());
    // After the script that narrows the policy, and before the one that fetches.
    let title = html.find("<title>").context("the page has no <title>")?;
    let end = html[..title].trim_end().len();
    let links = format!(
        "\n  <link rel=\"modulepreload\" href=\"./{program}.js\">\n  \
         <link rel=\"program\" href=\"./{program}_bg.wasm\">"
    );
    Ok(replaced(&html, vec![(end..end, links)]))
}

#[cfg(test)]
mod tests {
    use super::*;

    const PAGE: &str = "<head>\n  <meta charset=\"utf-8\">\n  <title>a</title>\n</head>";

    #[test]
    fn both_files_are_asked_for_at_once() {
        let html = preload(PAGE, "app").unwrap();
        let links = elements(&html, "link");
        assert_eq!(links.len(), 2);
        assert!(links[0].rel_is("modulepreload") && links[0].attribute("href") == Some("./app.js"));
        assert!(links[1].rel_is("program") && links[1].attribute("href") == Some("./app_bg.wasm"));
        assert!(html.find("charset") < html.find("modulepreload") && html.find("program") < html.find("<title>"));
    }

    #[test]
    fn a_page_that_has_them_stays_as_it_is() {
        let once = preload(PAGE, "app").unwrap();
        assert_eq!(preload(&once, "app").unwrap(), once);
    }
}

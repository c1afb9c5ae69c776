//! Links in the page's head by which a browser fetches the glue and the WebAssembly at once.
//!
//! Without them it learns of the glue from `boot.js`, and of the WebAssembly from the glue: each a wait of its own.

use crate::page::{elements, replaced, without};
use anyhow::{Context, Result};

/// The page with the links for the program of this name, in place of those that it may have from an earlier build.
pub fn preload(html: &str, program: &str) -> Result<String> {
    let links = elements(html, "link").into_iter();
    let earlier = links.filter(|link| link.rel_is("modulepreload") || link.rel_is("preload"));
    let html = without(html, earlier.map(|link| link.range).collect());
    let metas = elements(&html, "meta");
    let charset = metas.iter().find(|meta| meta.attribute("charset").is_some());
    let end = charset.context("the page does not open with <meta charset>")?.range.end;
    // `crossorigin` because the glue's own request is of that kind; a browser would fetch twice what differs in it.
    let links = format!(
        "\n  <link rel=\"modulepreload\" href=\"./{program}.js\">\n  \
         <link rel=\"preload\" as=\"fetch\" crossorigin href=\"./{program}_bg.wasm\">"
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
        assert!(links[1].rel_is("preload") && links[1].attribute("href") == Some("./app_bg.wasm"));
        assert_eq!(links[1].attribute("crossorigin"), Some(""));
        assert!(html.find("charset") < html.find("modulepreload") && html.find("preload") < html.find("<title>"));
    }

    #[test]
    fn a_page_that_has_them_stays_as_it_is() {
        let once = preload(PAGE, "app").unwrap();
        assert_eq!(preload(&once, "app").unwrap(), once);
    }
}

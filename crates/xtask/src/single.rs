//! The whole page as one HTML file that can be opened from a disk or sent by mail.
//!
//! Nothing of it is fetched: styles and scripts stand in the page, the WebAssembly is packed with gzip and written in
//! base64 in a block that is not run, and is unpacked by the browser. There is no worker and no manifest, because a
//! file has no address for them. Scripts and styles are allowed by their hashes, as in the page in a folder.

use crate::{
    csp::{self, Sources},
    files::Files,
    finish::text,
    house,
    page::{Element, elements, replaced},
    sizes::gzip,
};
use anyhow::{Context, Result, ensure};
use base64::{Engine, engine::general_purpose::STANDARD};

/// How `boot.js` asks for the glue; in one file there is nothing to ask for.
const ASK: &str = "import(\"./loopwright-app.js\")";

/// How `boot.js` asks for what assembles such a page in the browser.
const ASSEMBLE: &str = "import(\"./one-file.js\")";

/// The name under which the glue is found instead.
const GLUE: &str = "loopwrightGlue";

/// Makes the page from a built folder that is not yet finished.
pub fn single(files: &Files) -> Result<Vec<u8>> {
    let html = text(files, "index.html")?;
    let mut changes = Vec::new();
    for link in elements(&html, "link") {
        let text = match link.attribute("rel") {
            Some("stylesheet") => style(files, &link)?,
            Some("icon") => icon(files, &link)?,
            _ => String::new(),
        };
        changes.push((link.range, text));
    }
    for script in elements(&html, "script") {
        // What stands in the page looks after scripts that do not arrive, of which there are none here.
        ensure!(
            script.attribute("src").is_none() || file_of(&script, "src") == "boot.js",
            "the page has a script that is not boot.js"
        );
        changes.push((script.range, String::new()));
    }
    let end = html.rfind("</body>").context("the page has no </body>")?;
    changes.push((end..end, scripts(files)?));
    let html = replaced(&html, changes);
    let html: String = html
        .split_inclusive('\n')
        .filter(|line| !line.trim().is_empty())
        .collect();
    Ok(csp::enforce(&html, Sources::Nowhere)?.into_bytes())
}

/// The stylesheet as an element. It may name no further file, and hold nothing that ends the element.
fn style(files: &Files, link: &Element) -> Result<String> {
    let css = text(files, &file_of(link, "href"))?;
    ensure!(
        !css.contains("url(") && !css.contains("@import"),
        "the stylesheet names another file"
    );
    ensure!(!css.contains("</style"), "the stylesheet would end its own element");
    Ok(format!("<style>\n{css}</style>"))
}

fn icon(files: &Files, link: &Element) -> Result<String> {
    let svg = text(files, &file_of(link, "href"))?;
    Ok(format!(
        "<link rel=\"icon\" type=\"image/svg+xml\" href=\"data:image/svg+xml;base64,{}\">",
        STANDARD.encode(svg)
    ))
}

/// The packed WebAssembly and the one module: glue, unpacking, boot.
fn scripts(files: &Files) -> Result<String> {
    let wasm = files
        .get(&format!("{}_bg.wasm", house::APP))
        .context("the page has no WebAssembly")?;
    let packed = STANDARD.encode(gzip(wasm)?);
    let glue = without_exports(&text(files, &format!("{}.js", house::APP))?)?;
    let boot = text(files, "boot.js")?;
    ensure!(
        boot.matches(ASK).count() == 1,
        "boot.js must ask for the glue once, by `{ASK}`"
    );
    // A page that is one file is copied as it stands: there is nothing to assemble it from, and no need.
    let boot = boot.replace(ASK, &format!("{GLUE}()")).replace(ASSEMBLE, "null");
    let module = format!("const {GLUE} = (() => {{\n{glue}\n{UNPACK}}})();\n{{\n{boot}}}\n");
    Ok(format!(
        "<script type=\"application/octet-stream\" id=\"loopwright-wasm\">{packed}</script>\n\
         <script type=\"module\">\n{}</script>\n",
        harmless(&module)
    ))
}

/// Gives the glue in the form of a module whose start needs no address.
const UNPACK: &str = r#"
  const unpack = () => {
    const text = document.getElementById("loopwright-wasm").textContent;
    const packed = Uint8Array.from(atob(text), (letter) => letter.charCodeAt(0));
    const stream = new Blob([packed]).stream().pipeThrough(new DecompressionStream("gzip"));
    return new Response(stream).arrayBuffer();
  };
  return async () => ({ default: async () => __wbg_init({ module_or_path: await unpack() }) });
"#;

/// The glue as plain statements: a function's body has neither imports nor exports.
fn without_exports(glue: &str) -> Result<String> {
    let mut lines = Vec::new();
    for line in glue.lines() {
        ensure!(!line.starts_with("import "), "the glue imports another module: {line}");
        if line.starts_with("export {") {
            ensure!(
                line.trim_end().ends_with("};"),
                "the glue's list of exports is not on one line: {line}"
            );
            continue;
        }
        lines.push(line.strip_prefix("export ").unwrap_or(line));
    }
    Ok(lines.join("\n"))
}

/// The script with the letters broken up that would end its element or open a comment in it; to JavaScript, where
/// such letters can only stand in strings and comments, it is the same.
fn harmless(script: &str) -> String {
    script.replace("</script", "<\\/script").replace("<!--", "<\\!--")
}

/// The file an element names, without the `./` before it.
fn file_of(element: &Element, attribute: &str) -> String {
    let address = element.attribute(attribute).unwrap_or_default();
    address.trim_start_matches("./").to_owned()
}

#[cfg(test)]
mod tests {
    use super::*;

    fn page() -> Files {
        let html = "<meta charset=\"utf-8\">\n<link rel=\"stylesheet\" href=\"./s.css\">\n<link rel=\"manifest\" \
                    href=\"./m\">\n<script type=\"module\" src=\"./boot.js\"></script>\n<body></body>";
        let files = [
            ("index.html", html),
            ("s.css", "a{}\n"),
            (
                "boot.js",
                "import(\"./loopwright-app.js\").then((glue) => glue.default());\n",
            ),
            (
                "loopwright-app.js",
                "export function f() { return \"</script>\"; }\nexport { x as default };\n",
            ),
            ("loopwright-app_bg.wasm", "wasm"),
        ];
        files
            .map(|(path, text)| (path.to_owned(), text.as_bytes().to_vec()))
            .into()
    }

    #[test]
    fn nothing_is_left_to_fetch() {
        let html = String::from_utf8(single(&page()).unwrap()).unwrap();
        for gone in ["src=", "href=", "export ", "import("] {
            assert!(!html.contains(gone), "{gone} in {html}");
        }
        assert!(html.contains("<style>\na{}\n</style>"));
    }

    #[test]
    fn a_string_cannot_end_the_script() {
        let html = String::from_utf8(single(&page()).unwrap()).unwrap();
        assert_eq!(html.matches("</script>").count(), 2, "{html}");
        assert!(html.contains("\"<\\/script>\""));
    }

    #[test]
    fn what_would_be_fetched_is_refused() {
        let mut files = page();
        files.insert("s.css".to_owned(), b"a{background:url(x.png)}".to_vec());
        assert!(single(&files).is_err());
        let mut files = page();
        files.insert("loopwright-app.js".to_owned(), b"import x from \"y\";".to_vec());
        assert!(single(&files).is_err());
        let mut files = page();
        files.insert("boot.js".to_owned(), b"// asks for nothing".to_vec());
        assert!(single(&files).is_err());
    }
}

//! Rules for what is written.

use super::{
    Finding,
    code::{block_end, code_only, line_of, without_tests},
};

/// Everything in a source file that breaks a rule; one that is compiled for tests only has fewer.
pub fn check(path: &str, text: &str, for_tests: bool) -> Vec<Finding> {
    let mut findings = opening(path, text);
    let ending = path.rsplit_once('.').map_or("", |(_, ending)| ending);
    match ending {
        "rs" => findings.extend(rust(path, text, for_tests)),
        "js" => findings.extend(words(path, text, &RAW_IN_JS)),
        "html" => findings.extend(style_in_page(path, text)),
        _ => {}
    }
    findings
}

/// The modules in files of their own that this file declares for tests only, as paths without an ending.
pub fn test_modules(path: &str, text: &str) -> Vec<String> {
    let Some(stem) = path.strip_suffix(".rs") else {
        return Vec::new();
    };
    // The file of a folder, or of a crate, keeps its modules beside it; any other in a folder of its own name.
    let (folder, name) = stem.rsplit_once('/').unwrap_or(("", stem));
    let home = if matches!(name, "mod" | "lib" | "main") {
        folder
    } else {
        stem
    };
    let code = code_only(text);
    let declared = code.split("#[cfg(test)]").skip(1).filter_map(|rest| {
        let rest = rest.trim_start();
        let (name, _) = rest
            .strip_prefix("pub ")
            .unwrap_or(rest)
            .strip_prefix("mod ")?
            .split_once(';')?;
        name.chars()
            .all(|letter| letter.is_alphanumeric() || letter == '_')
            .then_some(name)
    });
    declared.map(|name| format!("{home}/{name}")).collect()
}

/// Whether a file is this module's, or that of a module within it.
pub fn is_in(path: &str, module: &str) -> bool {
    let rest = path.strip_prefix(module);
    rest.is_some_and(|rest| rest == ".rs" || rest.starts_with('/'))
}

/// Ways to put markup or code into a page that the policy forbids or that a stranger's text could use.
const RAW_IN_RUST: [&str; 5] = [
    "from_html_unchecked",
    "VRaw",
    "inner_html",
    "outer_html",
    "insert_adjacent_html",
];
/// To read what stands in a page does no harm; a page that is one file copies itself so.
const RAW_IN_JS: [&str; 6] = [
    "innerHTML",
    "outerHTML =",
    "insertAdjacentHTML",
    "document.write",
    "eval(",
    "new Function",
];

/// A file opens with what it answers.
fn opening(path: &str, text: &str) -> Vec<Finding> {
    let (good, says) = match path.rsplit_once('.').map(|(_, ending)| ending) {
        Some("rs") => (text.starts_with("//!"), "//!"),
        Some("js") => (text.starts_with("//") || text.starts_with("/*"), "//"),
        Some("css") => (text.starts_with("/*"), "/*"),
        Some("sh") => (script_opens_well(text), "#"),
        _ if path == ".ci/run" => (script_opens_well(text), "#"),
        _ => return Vec::new(),
    };
    if good {
        return Vec::new();
    }
    vec![finding(
        path,
        1,
        format!("the file does not open with `{says}` and what it answers"),
    )]
}

/// A line for the shell, then one for the reader.
fn script_opens_well(text: &str) -> bool {
    let mut lines = text.lines();
    lines.next().is_some_and(|line| line.starts_with("#!")) && lines.next().is_some_and(|line| line.starts_with("# "))
}

fn rust(path: &str, text: &str, for_tests: bool) -> Vec<Finding> {
    let code = code_only(text);
    let mut findings = style_in_views(path, &code);
    // What runs in the browser may not write markup; the browser tests may well read it.
    if path.starts_with("crates/loopwright") {
        findings.extend(words(path, &code, &RAW_IN_RUST));
    }
    // Clippy refuses them too, but lets each file say otherwise.
    if path.contains("/src/") && !for_tests {
        let unwraps = places(&without_tests(&code), ".unwrap()");
        let say = |at| finding(path, line_of(&code, at), "`.unwrap()` outside tests".to_owned());
        findings.extend(unwraps.into_iter().map(say));
    }
    findings
}

/// The policy drops a `style` attribute without a word, so none may be written.
fn style_in_views(path: &str, code: &str) -> Vec<Finding> {
    let mut findings = Vec::new();
    for start in places(code, "html!") {
        let Some(open) = code[start..].find(['{', '(', '[']).map(|at| at + start) else {
            continue;
        };
        let view = &code[open..block_end(code, open)];
        for at in places(view, "style")
            .into_iter()
            .filter(|&at| is_style_attribute(view, at))
        {
            let line = line_of(code, open + at);
            findings.push(finding(
                path,
                line,
                "`style` in html! is dropped by the page's policy; use a class".to_owned(),
            ));
        }
    }
    findings
}

/// Whether the word at `at` is an attribute: `style=`, or `{style}` for short.
fn is_style_attribute(view: &str, at: usize) -> bool {
    let (before, after) = (&view[..at], view[at + "style".len()..].trim_start());
    let own_word = before.ends_with([' ', '\n', '\t', '{']);
    let given = after.starts_with('=') && !after.starts_with("==") && !before.trim_end().ends_with("let");
    own_word && (given || before.trim_end().ends_with('{') && after.starts_with('}'))
}

fn style_in_page(path: &str, text: &str) -> Vec<Finding> {
    let found = places(text, "style").into_iter().filter(|&at| {
        let own_word = text[..at].ends_with(char::is_whitespace);
        own_word && text[at + "style".len()..].trim_start().starts_with('=')
    });
    found
        .map(|at| {
            finding(
                path,
                line_of(text, at),
                "a `style` attribute is dropped by the page's policy".to_owned(),
            )
        })
        .collect()
}

fn words(path: &str, text: &str, words: &[&str]) -> Vec<Finding> {
    let found = words
        .iter()
        .flat_map(|word| places(text, word).into_iter().map(move |at| (at, word)));
    found
        .map(|(at, word)| {
            finding(
                path,
                line_of(text, at),
                format!("`{word}` puts raw markup or code into the page"),
            )
        })
        .collect()
}

fn places(text: &str, word: &str) -> Vec<usize> {
    text.match_indices(word).map(|(at, _)| at).collect()
}

fn finding(path: &str, line: usize, broken: String) -> Finding {
    Finding {
        place: format!("{path}:{line}"),
        broken,
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// The places of the findings.
    fn found(path: &str, text: &str) -> Vec<String> {
        check(path, text, false)
            .into_iter()
            .map(|finding| finding.place)
            .collect()
    }

    #[test]
    fn a_file_without_its_opening_is_found() {
        for path in ["a/b.rs", "a/b.js", "a/b.css", "a/b.sh", ".ci/run"] {
            assert_eq!(found(path, "x\n"), [format!("{path}:1")]);
        }
        assert_eq!(found("a/b.rs", "// plain\n").len(), 1);
        assert_eq!(found("a/b.sh", "#!/bin/sh\nx\n").len(), 1);
    }

    #[test]
    fn a_file_with_its_opening_is_let_be() {
        let good = [
            ("b.rs", "//! x"),
            ("b.js", "// x"),
            ("b.css", "/* x */"),
            ("b.sh", "#!/bin/sh\n# x"),
        ];
        for (path, text) in good {
            assert!(found(path, text).is_empty(), "{path}");
        }
    }

    #[test]
    fn a_style_in_a_view_is_found_in_all_its_spellings() {
        for style in [
            "style=\"a\"",
            "style={a}",
            "style = {a}",
            "\nstyle={a}",
            "{style}",
            "{ style }",
        ] {
            let text = format!("//! x\nfn f() {{ html! {{ <p {style}>{{ \"style=\" }}</p> }} }}");
            assert_eq!(found("crates/a/src/b.rs", &text).len(), 1, "{style}");
        }
    }

    #[test]
    fn what_only_looks_like_a_style_is_let_be() {
        let text =
            "//! style=\nfn f() { let style = 1; html! { <p class=\"style=\" data-style=\"a\">{ style.get() }</p> } }";
        assert!(found("crates/a/src/b.rs", text).is_empty());
        assert!(found("web/a.html", "<style>a{}</style><!-- style -->").is_empty());
    }

    #[test]
    fn a_style_in_a_page_is_found() {
        assert_eq!(found("web/a.html", "<p>\n<p style='a'>"), ["web/a.html:2"]);
    }

    #[test]
    fn raw_markup_is_found() {
        let text = "//! x\nfn f() { Html::from_html_unchecked(x); e.set_inner_html(y) }";
        assert_eq!(found("crates/loopwright-app/src/b.rs", text).len(), 2);
        assert_eq!(found("web/a.js", "// x\ne.innerHTML = 1;"), ["web/a.js:2"]);
    }

    #[test]
    fn an_unwrap_is_found_outside_tests_only() {
        let text = "//! x.unwrap()\nfn f() { x.unwrap() }\n#[cfg(test)]\nmod t { fn g() { x.unwrap() } }\n";
        assert_eq!(found("crates/a/src/b.rs", text), ["crates/a/src/b.rs:2"]);
        assert!(found("tests/a/b.rs", text).is_empty());
        assert!(check("crates/a/src/b/tests.rs", text, true).is_empty());
    }

    #[test]
    fn modules_for_tests_are_found_by_their_declaration() {
        let text = "//! x\n#[cfg(test)]\nmod one;\n#[cfg(test)]\nmod two { mod no; }\nmod three;\n";
        assert_eq!(test_modules("crates/a/src/b/mod.rs", text), ["crates/a/src/b/one"]);
        assert_eq!(test_modules("crates/a/src/b.rs", text), ["crates/a/src/b/one"]);
        assert_eq!(test_modules("crates/a/src/lib.rs", text), ["crates/a/src/one"]);
        assert!(is_in("a/one.rs", "a/one") && is_in("a/one/x.rs", "a/one"));
        assert!(!is_in("a/oneself.rs", "a/one"));
    }
}

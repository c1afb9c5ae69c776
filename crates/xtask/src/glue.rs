//! Makes the glue between WebAssembly and the browser lighter: short names where the two meet, and no comments.
//!
//! wasm-bindgen names each import by what it does and a hash, so that versions cannot be mixed up. Both halves are made
//! here in one go and kept together by the offline list, and two hundred hashes that no packer can shorten stand in
//! both: together five kilobytes that say nothing to a browser.

use anyhow::{Result, ensure};

/// The short name of the import at this place: `a`, `b`, ... `z`, `aa`, ...
pub fn short_name(place: usize) -> String {
    const LETTERS: &[u8; 26] = b"abcdefghijklmnopqrstuvwxyz";
    let mut name = String::new();
    let mut rest = place + 1;
    while rest > 0 {
        rest -= 1;
        name.insert(0, char::from(LETTERS[rest % 26]));
        rest /= 26;
    }
    name
}

/// Gives an import its short name in the glue, which must hold it exactly once, as a key.
///
/// # Errors
/// When the glue does not look as it has to, so that nothing is renamed by chance.
pub fn rename(glue: &str, name: &str, short: &str) -> Result<String> {
    let key = format!("\n{name}: ");
    let indented = format!("\n        {name}: ");
    let found = [&key, &indented].into_iter().find(|key| glue.contains(key.as_str()));
    ensure!(
        found.is_some_and(|key| glue.matches(key.as_str()).count() == 1),
        "the glue does not hold {name} exactly once as a key"
    );
    Ok(found.map_or_else(String::new, |key| {
        glue.replacen(key.as_str(), &format!("\n{short}: "), 1)
    }))
}

/// The glue without comments that stand on lines of their own, blank lines and indentation.
///
/// A line that opens a template of more than one line would be changed by this, so that is refused.
///
/// # Errors
/// When there is such a template.
pub fn without_comments(glue: &str) -> Result<String> {
    let mut light = String::new();
    let mut in_comment = false;
    for line in glue.lines().map(str::trim) {
        ensure!(
            line.matches('`').count() % 2 == 0,
            "the glue has a template of several lines: {line}"
        );
        let opens = line.starts_with("/*");
        in_comment |= opens;
        let is_comment = in_comment || line.starts_with("//");
        if in_comment && line.ends_with("*/") {
            in_comment = false;
        }
        if !is_comment && !line.is_empty() {
            light.push_str(line);
            light.push('\n');
        }
    }
    Ok(light)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn short_names_are_all_different() {
        let mut names: Vec<String> = (0..2_000).map(short_name).collect();
        assert_eq!(
            (names[0].as_str(), names[25].as_str(), names[26].as_str()),
            ("a", "z", "aa")
        );
        names.sort();
        names.dedup();
        assert_eq!(names.len(), 2_000);
    }

    #[test]
    fn a_key_is_renamed_and_nothing_else() {
        let glue = "const x = {\n__wbg_go_1: function() { return __wbg_go_12; },\n};";
        let renamed = rename(glue, "__wbg_go_1", "a").unwrap();
        assert_eq!(renamed, "const x = {\na: function() { return __wbg_go_12; },\n};");
        assert!(rename(glue, "__wbg_go_12", "b").is_err());
    }

    #[test]
    fn comments_go_and_code_stays() {
        let glue = "/**\n * what it does\n */\nfn(1); // why\n  // a note\n\n  'http://x/*';\n/* one */\nend();\n";
        assert_eq!(
            without_comments(glue).unwrap(),
            "fn(1); // why\n'http://x/*';\nend();\n"
        );
        assert!(without_comments("a = `two\nlines`;").is_err());
    }
}

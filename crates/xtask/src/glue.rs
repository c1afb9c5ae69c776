//! What scripts and styles say to their readers is not shipped: it is taken out here, before anything else is done.

use anyhow::{Result, ensure};

/// The script without comments that stand on lines of their own, blank lines and indentation.
///
/// A line that opens a template of more than one line would be changed by this, so that is refused.
///
/// # Errors
/// When there is such a template.
pub fn without_comments(script: &str) -> Result<String> {
    let mut light = String::new();
    let mut in_comment = false;
    for line in script.lines().map(str::trim) {
        ensure!(
            line.matches('`').count() % 2 == 0,
            "a script has a template of several lines: {line}"
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
    fn comments_go_and_code_stays() {
        let glue = "/**\n * what it does\n */\nfn(1); // why\n  // a note\n\n  'http://x/*';\n/* one */\nend();\n";
        assert_eq!(
            without_comments(glue).unwrap(),
            "fn(1); // why\n'http://x/*';\nend();\n"
        );
        assert!(without_comments("a = `two\nlines`;").is_err());
    }
}

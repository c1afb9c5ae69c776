//! What can be read on a page, as lines of text that say nothing of how the page is laid out; and what differs between
//! two lists of lines.

use crate::browser::Browser;
use anyhow::{Context, Result};
use serde_json::{Value, json};

/// The script that reads.
const VISIBLE: &str = include_str!("visible.js");

/// Lines of a difference that are shown; a reader looks at the rest in the files.
const MOST_SHOWN: usize = 12;

/// What can be read below an element.
pub struct Visible {
    /// Words, fields and drawings in their order.
    pub lines: Vec<String>,
    /// Every choice, with the keys that are stored and the words for each.
    pub choices: Vec<String>,
}

/// Reads all below this element; everything folded is unfolded. Nothing where there is no such element.
pub async fn visible(browser: &Browser, css: &str) -> Result<Visible> {
    let read = browser.ask(VISIBLE, [json!(css)]).await?;
    Ok(Visible {
        lines: list(&read["lines"])?,
        choices: list(&read["choices"])?,
    })
}

fn list(value: &Value) -> Result<Vec<String>> {
    serde_json::from_value(value.clone()).with_context(|| format!("not a list of lines: {value}"))
}

/// What stands between the lines that are the same at both ends: lines that went with `-`, lines that came with `+`.
/// Nothing where nothing differs.
pub fn difference(before: &[&str], after: &[&str]) -> Vec<String> {
    let same_start = before
        .iter()
        .zip(after)
        .take_while(|(left, right)| left == right)
        .count();
    let (before, after) = (&before[same_start..], &after[same_start..]);
    let same_end = before
        .iter()
        .rev()
        .zip(after.iter().rev())
        .take_while(|(left, right)| left == right)
        .count();
    let gone = before[..before.len() - same_end].iter().map(|line| format!("- {line}"));
    let new = after[..after.len() - same_end].iter().map(|line| format!("+ {line}"));
    shortened(gone).chain(shortened(new)).collect()
}

fn shortened(lines: impl ExactSizeIterator<Item = String>) -> impl Iterator<Item = String> {
    let left_out = lines.len().saturating_sub(MOST_SHOWN);
    let rest = (left_out > 0).then(|| format!("  and {left_out} more"));
    lines.take(MOST_SHOWN).chain(rest)
}

#[cfg(test)]
mod tests {
    use super::difference;

    #[test]
    fn only_what_differs_is_shown() {
        assert_eq!(
            difference(&["a", "b", "c"], &["a", "x", "y", "c"]),
            ["- b", "+ x", "+ y"]
        );
        assert_eq!(difference(&["a", "a"], &["a"]), ["- a"]);
        assert!(difference(&["a"], &["a"]).is_empty());
    }
}

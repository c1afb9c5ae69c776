//! What the page weighs beside what it may, and beside what it weighed at the last commit.
//!
//! A build of a tree without changes leaves its weight in the target folder, in a file with the commit's name. A later
//! build looks back from its own commit for the nearest one with such a file. Nothing of this is in the page, and where
//! there is no git, or no file, that is said.

use crate::{house, sizes::Budget};
use anyhow::{Context, Result};
use std::{cmp::Ordering, fs, path::Path, process::Command};

/// How many commits are looked at for an earlier figure.
const LOOK_BACK: &str = "200";

/// A weight, and the compiler that it depends on.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Weight {
    /// All files, each packed with brotli, in bytes.
    pub brotli: usize,
    /// The version of the compiler, as it says it.
    pub compiler: String,
}

/// A commit's name and what the page weighed at it.
type Earlier = (String, Weight);

/// The weight in words, with the budget and the change against an earlier commit; kept for later builds to look back at.
pub fn compare(weight: &Weight, budget: Budget) -> Result<String> {
    let folder = house::target_folder()?.join("weights");
    let commits = commits();
    let has_changes = git(&["status", "--porcelain"]).is_none_or(|changes| !changes.is_empty());
    let before = match commits.split_first() {
        Some((commit, before)) if !has_changes => {
            keep(&folder, commit, weight)?;
            before
        }
        _ => &commits,
    };
    Ok(sentences(weight, budget, earlier(&folder, before)))
}

/// The commits up to this one, the latest first; none where there is no git.
fn commits() -> Vec<String> {
    let list = git(&["rev-list", "--first-parent", "--max-count", LOOK_BACK, "HEAD"]);
    list.unwrap_or_default().lines().map(str::to_owned).collect()
}

/// What git answers, or `None` where it cannot.
fn git(arguments: &[&str]) -> Option<String> {
    let output = Command::new("git")
        .args(arguments)
        .current_dir(house::root())
        .output()
        .ok()?;
    let text = output.status.success().then_some(output.stdout)?;
    Some(String::from_utf8(text).ok()?.trim().to_owned())
}

fn keep(folder: &Path, commit: &str, weight: &Weight) -> Result<()> {
    fs::create_dir_all(folder)?;
    let text = format!("{}\n{}\n", weight.brotli, weight.compiler);
    fs::write(folder.join(commit), text).with_context(|| format!("cannot write into {}", folder.display()))
}

/// The nearest of these commits with a figure.
fn earlier(folder: &Path, commits: &[String]) -> Option<Earlier> {
    commits.iter().find_map(|commit| {
        let text = fs::read_to_string(folder.join(commit)).ok()?;
        let (brotli, compiler) = text.trim_end().split_once('\n')?;
        let brotli = brotli.parse().ok()?;
        let compiler = compiler.to_owned();
        Some((commit.clone(), Weight { brotli, compiler }))
    })
}

fn sentences(weight: &Weight, budget: Budget, earlier: Option<Earlier>) -> String {
    let Weight { brotli, compiler } = weight;
    let all = format!(
        "{brotli} bytes with brotli, of {} for {} tools",
        budget.bytes(),
        budget.tools
    );
    let Some((commit, before)) = earlier else {
        return format!("{all}; no earlier figure");
    };
    let difference = brotli.abs_diff(before.brotli);
    let change = match brotli.cmp(&before.brotli) {
        Ordering::Less => format!("{difference} fewer than"),
        Ordering::Equal => "as many as".to_owned(),
        Ordering::Greater => format!("{difference} more than"),
    };
    let commit = commit.get(..7).unwrap_or(&commit);
    let by = if before.compiler == *compiler {
        String::new()
    } else {
        format!(", made with {}", before.compiler)
    };
    format!("{all}; {change} at commit {commit}{by}")
}

#[cfg(test)]
mod tests {
    use super::*;
    use std::{env, process};

    const BUDGET: Budget = Budget { tools: 16, pages: 0 };

    fn weight(brotli: usize, compiler: &str) -> Weight {
        let compiler = compiler.to_owned();
        Weight { brotli, compiler }
    }

    #[test]
    fn a_change_is_said_with_its_direction() {
        let before = |brotli| Some(("0123456789".to_owned(), weight(brotli, "rustc 1")));
        let text = |earlier| sentences(&weight(1_000, "rustc 1"), BUDGET, earlier);
        assert!(text(before(990)).ends_with("; 10 more than at commit 0123456"));
        assert!(text(before(1_010)).ends_with("; 10 fewer than at commit 0123456"));
        assert!(text(before(1_000)).ends_with("; as many as at commit 0123456"));
        assert_eq!(
            text(None),
            "1000 bytes with brotli, of 349200 for 16 tools; no earlier figure"
        );
    }

    #[test]
    fn another_compiler_is_named() {
        let before = Some(("0123456".to_owned(), weight(990, "rustc 0")));
        assert!(sentences(&weight(1_000, "rustc 1"), BUDGET, before).ends_with("made with rustc 0"));
    }

    #[test]
    fn the_nearest_commit_with_a_figure_is_found() {
        let folder = env::temp_dir().join(format!("xtask-weight-{}", process::id()));
        let commits = ["c", "b", "a"].map(str::to_owned);
        assert_eq!(earlier(&folder, &commits), None);
        keep(&folder, "a", &weight(1, "rustc 1")).unwrap();
        keep(&folder, "b", &weight(2, "rustc 1")).unwrap();
        fs::write(folder.join("c"), "broken").unwrap();
        assert_eq!(earlier(&folder, &commits), Some(("b".to_owned(), weight(2, "rustc 1"))));
        fs::remove_dir_all(folder).unwrap();
    }
}

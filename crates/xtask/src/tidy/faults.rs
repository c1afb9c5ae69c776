//! The table of faults in `tests/README.md`: each row names a test that runs, so that no mended fault is a claim alone.

use super::Finding;

/// Where the table stands.
pub const PLACE: &str = "tests/README.md";

/// The head of its table.
const HEAD: &str = "| what was so | what is so now | test |";

/// Where the scenarios of the browser tests are listed; what is not listed there is not played.
const PLAYED: &str = "tests/browser/main.rs";

/// The rows that name no test, or one that does not run.
pub fn check(readme: &str, texts: &[(&String, &str)]) -> Vec<Finding> {
    let tests = running(texts);
    let finding = |broken: String| Finding {
        place: PLACE.to_owned(),
        broken,
    };
    let rows = rows(readme);
    if rows.is_empty() {
        return vec![finding("it has no table of faults".to_owned())];
    }
    let mut findings = Vec::new();
    for row in rows {
        let names = names(row);
        if names.is_empty() {
            findings.push(finding(format!("this row names no test: {row}")));
        }
        let missing = names.into_iter().filter(|name| !tests.iter().any(|test| test == name));
        findings.extend(missing.map(|name| finding(format!("`{name}` is no test that runs"))));
    }
    findings
}

/// The rows of all tables of faults.
fn rows(readme: &str) -> Vec<&str> {
    let mut rows = Vec::new();
    let mut lines = readme.lines();
    while lines.any(|line| line == HEAD) {
        let rest = lines.by_ref().skip(1);
        rows.extend(rest.take_while(|line| line.starts_with('|')));
    }
    rows
}

/// The names in the last cell of a row.
fn names(row: &str) -> Vec<&str> {
    let cell = row.trim_end_matches('|').rsplit('|').next().unwrap_or_default();
    cell.split('`').skip(1).step_by(2).collect()
}

/// Every function that is run as a test: marked as one, or played in a browser.
fn running<'a>(texts: &[(&'a String, &'a str)]) -> Vec<&'a str> {
    let mut names = Vec::new();
    for (path, text) in texts {
        if path.as_str() == PLAYED {
            names.extend(text.lines().filter_map(scenario));
        }
        let mut is_test = false;
        for line in text.lines().map(str::trim) {
            match line {
                "#[test]" => is_test = true,
                "#[ignore]" => is_test = false,
                _ if line.starts_with("#[ignore") => is_test = false,
                _ if line.starts_with("#[") || line.starts_with("//") => {}
                _ => {
                    names.extend(function(line).filter(|_| is_test));
                    is_test = false;
                }
            }
        }
    }
    names
}

/// The name of a function that begins on this line.
fn function(line: &str) -> Option<&str> {
    let (_, after) = line.split_once("fn ")?;
    after.split(|mark: char| !mark.is_alphanumeric() && mark != '_').next()
}

/// A scenario in the list of those that are played: `storage::two_windows_add_up,`.
fn scenario(line: &str) -> Option<&str> {
    let (_, name) = line.trim().strip_suffix(',')?.split_once("::")?;
    Some(name.trim()).filter(|name| {
        name.chars()
            .all(|mark| mark.is_ascii_lowercase() || mark.is_ascii_digit() || mark == '_')
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    const README: &str =
        "# Checks\n\n| what was so | what is so now | test |\n|---|---|---|\n| hung | opens | `it_opens` |\n\nx\n";

    fn found(readme: &str, path: &str, text: &str) -> usize {
        check(readme, &[(&path.to_owned(), text)]).len()
    }

    #[test]
    fn a_row_names_a_test_that_runs() {
        let test = "    #[test]\n    // why\n    fn it_opens() {\n";
        assert_eq!(found(README, "crates/x.rs", test), 0);
        assert_eq!(found(README, "crates/x.rs", "fn it_opens() {"), 1);
        assert_eq!(
            found(README, "crates/x.rs", "#[test]\n#[ignore = \"slow\"]\nfn it_opens() {"),
            1
        );
        assert_eq!(found(README, "tests/browser/main.rs", "        storage::it_opens,"), 0);
        assert_eq!(found(README, "tests/browser/storage.rs", "pub async fn it_opens("), 1);
    }

    #[test]
    fn a_row_without_a_test_and_a_missing_table_are_found() {
        let test = "#[test]\nfn it_opens() {\n";
        assert_eq!(found(&README.replace("`it_opens`", "seen"), "crates/x.rs", test), 1);
        assert_eq!(found("# Checks", "crates/x.rs", test), 1);
    }
}

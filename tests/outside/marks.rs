//! How sure each value is: the tables of the crate, the checks here and the README say the same of it, or this fails.
//!
//! Every file here opens with a constant `MARKS`. Of a table of the crate it names the rows that share a mark, and
//! [`Taken::marks`] tells what the rows say themselves; of any other value it says what that is. The README has a table
//! under each heading, with the same lines.

use loopwright::choice::Key;
use loopwright::tables::{Certainty, Taken};
use std::collections::BTreeSet;
use std::{fs, path::Path};

use super::*;

/// What is said to be so sure.
#[derive(Clone, Copy, Debug)]
pub enum What {
    /// Rows of a table of the crate, all of which have one mark.
    Rows(Taken, &'static str),
    /// Something that only the check has.
    Value(&'static str),
}

/// One thing that is checked against, and how sure that is.
pub type Marked = (What, Certainty);

/// Rows of a table.
pub const fn rows(taken: Taken, rows: &'static str, certainty: Certainty) -> Marked {
    (What::Rows(taken, rows), certainty)
}

/// A whole table.
pub const fn all(taken: Taken, certainty: Certainty) -> Marked {
    rows(taken, ALL, certainty)
}

/// Something that only the check has.
pub const fn value(what: &'static str, certainty: Certainty) -> Marked {
    (What::Value(what), certainty)
}

/// The rows of a table that has one mark throughout.
const ALL: &str = "all";

/// Every file here, with what it says of itself.
const FILES: [(&str, &[Marked]); 18] = [
    ("abbreviations", abbreviations::MARKS),
    ("brute_force_schedules", brute_force_schedules::MARKS),
    ("craft_yarn_council_sizes", craft_yarn_council_sizes::MARKS),
    ("en13402", en13402::MARKS),
    ("munden", munden::MARKS),
    ("needle_sizes", needle_sizes::MARKS),
    ("nist", nist::MARKS),
    ("printed_lists", printed_lists::MARKS),
    ("printed_measures", printed_measures::MARKS),
    ("python_cast_on_tail", python_cast_on_tail::MARKS),
    ("python_flare", python_flare::MARKS),
    ("python_gauge_rows", python_gauge_rows::MARKS),
    ("python_regauge_needles", python_regauge_needles::MARKS),
    ("python_sizing", python_sizing::MARKS),
    ("python_yarn", python_yarn::MARKS),
    ("quetelet", quetelet::MARKS),
    ("toussaint", toussaint::MARKS),
    ("yarn_council", yarn_council::MARKS),
];

const README: &str = include_str!("README.md");

/// A mark as the README writes it.
const fn words(certainty: Certainty) -> &'static str {
    match certainty {
        Certainty::Read => "read in its source",
        Certainty::Quoted => "as others quote it",
        Certainty::FromMemory => "from memory",
        Certainty::Practice => "common practice, no source",
        Certainty::Computed => "computed",
    }
}

const MARKS: [Certainty; 5] = [
    Certainty::Read,
    Certainty::Quoted,
    Certainty::FromMemory,
    Certainty::Practice,
    Certainty::Computed,
];

/// A line of the README's tables: of what, which rows, how sure.
type Line = [String; 3];

fn line((what, certainty): &Marked) -> Line {
    let (what, rows) = match what {
        What::Rows(taken, rows) => (format!("`{}`", taken.key()), *rows),
        What::Value(what) => ((*what).to_owned(), ""),
    };
    [what, rows.to_owned(), words(*certainty).to_owned()]
}

/// A chapter of the README under a heading of files.
struct Section<'a> {
    part: &'a str,
    files: Vec<&'a str>,
    lines: BTreeSet<Line>,
}

fn sections(readme: &str) -> Vec<Section<'_>> {
    let mut sections = Vec::new();
    for part in readme.split("\n## ").skip(1) {
        let title = part.lines().next().unwrap_or_default();
        for section in part.split("\n### ").skip(1) {
            let heading = section.lines().next().unwrap_or_default();
            // Every second piece stands between the marks of a name.
            let names = heading.split('`').skip(1).step_by(2);
            sections.push(Section {
                part: title,
                files: names.filter_map(|name| name.strip_suffix(".rs")).collect(),
                lines: table(section),
            });
        }
    }
    sections
}

/// The lines of a table, without its head.
fn table(section: &str) -> BTreeSet<Line> {
    let lines = section.lines().filter(|line| line.starts_with("| ")).skip(1);
    let cell = |line: &str, column: usize| line.split('|').nth(column).unwrap_or_default().trim().to_owned();
    lines.map(|line| [1, 2, 3].map(|column| cell(line, column))).collect()
}

/// What the files of a section say together.
fn said(files: &[&str]) -> BTreeSet<Line> {
    let in_section = FILES.iter().filter(|(name, _)| files.contains(name));
    in_section.flat_map(|(_, marks)| marks.iter().map(line)).collect()
}

/// The sections in which the README and the checks differ.
fn differing(readme: &str) -> Vec<String> {
    let sections = sections(readme).into_iter();
    let differ = sections.filter(|section| section.lines != said(&section.files));
    differ
        .map(|section| {
            let checks = said(&section.files);
            let only_readme: Vec<&Line> = section.lines.difference(&checks).collect();
            let only_checks: Vec<&Line> = checks.difference(&section.lines).collect();
            format!("{:?}: {only_readme:?} against {only_checks:?}", section.files)
        })
        .collect()
}

/// What the rows of a table say themselves: one line for each mark that any has.
fn rows_of(taken: Taken) -> Vec<Line> {
    let marks = taken.marks();
    let having = |certainty: &Certainty| {
        let rows = marks.iter().filter(|(_, source)| source.certainty() == *certainty);
        let rows: Vec<&str> = rows.map(|(row, _)| row.as_str()).collect();
        let names = if rows.len() == marks.len() {
            ALL.to_owned()
        } else {
            rows.join(", ")
        };
        (!rows.is_empty()).then(|| [format!("`{}`", taken.key()), names, words(*certainty).to_owned()])
    };
    MARKS.iter().filter_map(having).collect()
}

#[test]
fn the_readme_says_of_every_value_what_its_check_says() {
    assert_eq!(differing(README), [""; 0]);
}

#[test]
fn the_checks_say_of_every_table_what_its_rows_say() {
    let tables: BTreeSet<Line> = Taken::ALL.iter().copied().flat_map(rows_of).collect();
    let marks = FILES.iter().flat_map(|(_, marks)| marks.iter());
    let checked: Vec<Line> = marks
        .filter(|(what, _)| matches!(what, What::Rows(..)))
        .map(line)
        .collect();
    let once: BTreeSet<Line> = checked.iter().cloned().collect();
    assert_eq!(once.len(), checked.len(), "a table is checked in two files");
    assert_eq!(
        tables.difference(&once).collect::<Vec<_>>(),
        [&[""; 3]; 0],
        "only the tables say"
    );
    assert_eq!(
        once.difference(&tables).collect::<Vec<_>>(),
        [&[""; 3]; 0],
        "only the checks say"
    );
}

#[test]
fn every_file_is_listed_and_stands_in_one_section() {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("outside");
    let names = fs::read_dir(folder).expect("the folder of this file").map(|entry| {
        let name = entry.expect("an entry").file_name();
        name.to_string_lossy().into_owned()
    });
    let files: BTreeSet<String> = names
        .filter_map(|name| Some(name.strip_suffix(".rs")?.to_owned()))
        .filter(|name| !matches!(name.as_str(), "main" | "marks"))
        .collect();
    let listed: BTreeSet<String> = FILES.iter().map(|(name, _)| (*name).to_owned()).collect();
    assert_eq!(files, listed);
    let sections = sections(README);
    let mut told: Vec<&str> = sections.iter().flat_map(|section| section.files.clone()).collect();
    told.sort_unstable();
    assert_eq!(told, FILES.map(|(name, _)| name));
}

/// What we worked out a second time ourselves is no published value, and does not stand among them.
#[test]
fn published_values_stand_apart_from_our_own_second_computation() {
    let parts: Vec<&str> = README
        .split("\n## ")
        .skip(1)
        .filter_map(|part| part.lines().next())
        .collect();
    assert_eq!(parts, ["Published", "Our own second computation", "Practice"]);
    let published = [Certainty::Read, Certainty::Quoted].map(words);
    for Section { part, files, lines } in sections(README) {
        let is_published = lines.iter().any(|[_, _, mark]| published.contains(&mark.as_str()));
        let is_taken = lines.iter().any(|[what, ..]| what.starts_with('`'));
        assert_eq!(part == "Published", is_published || is_taken, "{files:?} in {part}");
    }
}

/// A comment in a check begins with a mark only if the file has it in its list, and none says "seen", which is no mark:
/// it leaves open whether the source was.
#[test]
fn comments_have_no_other_marks_than_the_lists() {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("outside");
    for (name, marks) in FILES {
        let text = fs::read_to_string(folder.join(format!("{name}.rs"))).expect(name);
        let comments = text.lines().filter(|line| line.trim_start().starts_with("//"));
        for comment in comments {
            let words_of = comment.split(|letter: char| !letter.is_alphabetic());
            assert!(
                !words_of.map(str::to_lowercase).any(|word| word == "seen"),
                "{name}: {comment}"
            );
            let begins = comment
                .trim_start()
                .trim_start_matches("///")
                .trim_start()
                .to_lowercase();
            let begun = MARKS
                .into_iter()
                .find(|certainty| begins.starts_with(words(*certainty)));
            let is_listed = begun.is_none_or(|certainty| marks.iter().any(|(_, listed)| *listed == certainty));
            assert!(is_listed, "{name}: {comment}");
        }
    }
    assert!(!README.to_lowercase().contains("seen"));
}

/// The comparison itself can fail: each line of the README with another mark, and each one left out.
#[test]
fn a_mark_that_is_changed_in_one_place_is_found() {
    let lines: Vec<&str> = README.lines().filter(|line| line.starts_with("| ")).collect();
    let is_marked = |line: &&&str| MARKS.iter().any(|certainty| line.contains(words(*certainty)));
    for line in lines.iter().filter(is_marked) {
        let marks = MARKS.map(words).into_iter();
        let mark = marks.into_iter().find(|mark| line.contains(mark)).expect("a mark");
        let other = MARKS
            .map(words)
            .into_iter()
            .find(|other| *other != mark)
            .expect("two marks");
        let changed = README.replace(line, &line.replacen(mark, other, 1));
        assert!(!differing(&changed).is_empty(), "{line}");
        assert!(!differing(&README.replace(line, "")).is_empty(), "{line}");
    }
}

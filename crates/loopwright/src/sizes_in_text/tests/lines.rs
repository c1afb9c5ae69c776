//! Every line of `lines.txt`, marked.

use super::super::*;
use super::template::of_size;

const LINES: &str = include_str!("lines.txt");

#[test]
fn every_line_is_marked_as_the_table_says() {
    let mut names: Vec<&str> = Vec::new();
    let (mut rows, mut wrong) = (0, Vec::new());
    for line in LINES.lines().filter(|line| !line.is_empty() && !line.starts_with('#')) {
        let Some((printed, wanted)) = line.split_once(" => ") else {
            let heading = line.trim_matches(['[', ']']);
            names = heading.split(", ").collect();
            continue;
        };
        rows += 1;
        let (printed, wanted) = (printed.replace("\\n", "\n"), wanted.replace("\\n", "\n"));
        wrong.extend(told_wrongly(&printed, &names, &wanted).map(|told| format!("{line}\n     found: {told}")));
    }
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
    assert!(rows >= 130, "the table is shorter than it was");
}

/// What is told of a line, where that is not what is wanted.
fn told_wrongly(printed: &str, names: &[&str], wanted: &str) -> Option<String> {
    let found = find(printed, names);
    let doubts = found
        .doubts()
        .map(|(_, doubt)| format!("{:?} at {:?}", doubt.kind, &printed[doubt.at.clone()]));
    let doubts: Vec<String> = doubts.collect();
    let is_doubt = wanted.contains(" at \"") && !wanted.contains('{');
    if is_doubt {
        return (doubts != [wanted]).then(|| format!("{doubts:?} {:?}", found.lists));
    }
    if wanted == "plain" {
        return (!found.lists.is_empty()).then(|| format!("{:?}", found.lists));
    }
    let texts = (0..names.len()).map(|size| plain_text(printed, &found, &Hers::one(size), &[]));
    let texts: Vec<String> = texts.collect();
    let is_right = (0..names.len()).all(|size| texts[size] == of_size(wanted, size)) && doubts.is_empty();
    (!is_right).then(|| format!("{texts:?} {doubts:?}"))
}

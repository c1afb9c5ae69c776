//! The invented pattern, marked for each of its five sizes, and with thirty faults of ten kinds sown into it.

use super::super::*;
use super::template::of_size;

const PATTERN: &str = include_str!("pattern.txt");
const FAULTS: &str = include_str!("faults.txt");

/// The pattern as printed, and line by line as it is for one size.
struct Pattern {
    text: String,
    templates: String,
}

fn pattern() -> Pattern {
    let (mut printed, mut templates) = (Vec::new(), Vec::new());
    let body = PATTERN
        .lines()
        .skip_while(|line| line.starts_with('#') || line.is_empty());
    let joined = body.collect::<Vec<_>>().join("\n");
    // What goes on in the next line is one line until the templates are made.
    let joined = joined.replace("\\\n", "\u{1}");
    for line in joined.lines() {
        match line.strip_prefix("= ") {
            None => {
                printed.push(line.replace('\u{1}', "\n"));
                templates.push(line.to_owned());
            }
            Some(template) => {
                templates.pop();
                templates.push(template.to_owned());
            }
        }
    }
    Pattern {
        text: printed.join("\n"),
        templates: templates.join("\n"),
    }
}

fn names(text: &str) -> Vec<String> {
    named(text).first().expect("the pattern names its sizes").names.clone()
}

fn told(text: &str, found: &Found) -> Vec<String> {
    let told = found.doubts().map(|(list, doubt)| {
        let line = &text[found.lines.ranges[list.line].clone()];
        format!("{:?} at \"{}\" in {line:?}", doubt.kind, &text[doubt.at.clone()])
    });
    told.collect()
}

#[test]
fn the_invented_pattern_is_marked_right_for_each_of_its_sizes() {
    let Pattern { text, templates } = pattern();
    assert!(text.lines().count() >= 120, "the pattern is shorter than it was");
    let names = names(&text);
    assert_eq!(names, ["XS", "S", "M", "L", "XL"]);
    let found = find(&text, &names);
    assert_eq!(told(&text, &found), [""; 0], "the clean pattern raises nothing");
    for (size, name) in names.iter().enumerate() {
        let marked = plain_text(&text, &found, &Hers::one(size), &[]);
        for (marked, wanted) in marked.lines().zip(of_size(&templates, size).lines()) {
            assert_eq!(marked, wanted, "size {name}");
        }
        assert_eq!(marked, of_size(&templates, size));
    }
}

#[test]
fn each_of_thirty_faults_is_pointed_at() {
    let Pattern { text, .. } = pattern();
    let names = names(&text);
    let (mut faults, mut kinds, mut wrong) = (0, 0, Vec::new());
    for line in FAULTS.lines().filter(|line| !line.is_empty() && !line.starts_with('#')) {
        let parts: Vec<&str> = line.split(" => ").collect();
        let [clean, faulty, wanted] = parts[..] else {
            kinds += 1;
            continue;
        };
        faults += 1;
        assert_eq!(
            text.matches(clean).count(),
            1,
            "{clean} has to stand once in the pattern"
        );
        let text = text.replace(clean, faulty);
        let told = told(&text, &find(&text, &names));
        if told.len() != 1 || !told[0].starts_with(&format!("{wanted} in ")) {
            wrong.push(format!("{line}\n     found: {told:?}"));
        }
    }
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
    assert_eq!((faults, kinds), (30, 10));
}

//! Written lines: no text goes on for ever, every place lies in the text, and what is printed reads the same. A paragraph
//! sign stands for the end of a line, since a text to begin with is one line of its file.

use loopwright::written::{Start, nearest, read, work};

/// How many of the lines the nearest that comes out is looked for; it tries hundreds each.
const LOOKED_AT: usize = 4;

/// Reads the text for one size and for three, and works it on a few needles.
pub fn every_line_comes_to_an_end(text: &str) {
    let text = &text.replace('\u{b6}', "\n");
    for sizes in [1, 3] {
        comes_to_an_end(text, sizes);
    }
}

fn comes_to_an_end(text: &str, sizes: usize) {
    let (pattern, faults) = read(text, sizes, &[]);
    for fault in &faults {
        assert!(text.get(fault.place.range()).is_some(), "{fault:?}");
    }
    for stitches in [0, 23, 132] {
        let start = Start::with(stitches);
        for worked in work(&pattern, &start, sizes - 1) {
            assert!(worked.place.is_none_or(|place| text.get(place.range()).is_some()));
        }
        for at in 0..pattern.lines.len().min(LOOKED_AT) {
            let _ = nearest(&pattern, &start, sizes - 1, at);
        }
    }
    let whole = pattern
        .lines
        .iter()
        .filter(|line| line.is_whole && !line.items.is_empty());
    for line in whole {
        let printed = line.to_string();
        let (again, faults) = read(&printed, sizes, &[]);
        assert!(faults.is_empty() && again.lines.len() == 1, "{printed:?}: {faults:?}");
        assert_eq!(again.lines[0].to_string(), printed);
    }
}

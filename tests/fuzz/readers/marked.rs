//! One size marked through a text: no letter of it is lost from view, in whichever size. A paragraph sign stands for the
//! end of a line, since a text to begin with is one line of its file.

use loopwright::sizes_in_text::{Hers, counts, find, for_some, named, only_hers, pieces, plain_text};
use std::ops::Range;

/// Marks each of three sizes in the text, and of the sizes that the text names itself.
pub fn no_letter_is_lost(text: &str) {
    let text = &text.replace('\u{b6}', "\n");
    marked(text, &["S", "M", "L"].map(str::to_owned));
    for line in named(text) {
        marked(text, &line.names);
    }
}

fn marked(text: &str, sizes: &[String]) {
    let found = find(text, sizes);
    let lies_there = |range: &Range<usize>| text.get(range.clone()).is_some();
    for list in &found.lists {
        assert!(lies_there(&list.range), "{list:?}");
    }
    for said in for_some(text, &found, sizes) {
        assert!(lies_there(&said.range), "{said:?}");
    }
    for count in counts(text, &found) {
        assert!(count.line < text.lines().count().max(1), "{count:?}");
    }
    for size in 0..sizes.len() {
        let hers = Hers::one(size);
        let shown = pieces(text, &found, &hers, &[]);
        let all: String = shown.iter().map(|piece| &text[piece.range.clone()]).collect();
        assert_eq!(&all, text);
        let _ = only_hers(text, &found, &hers, &[]);
        let _ = plain_text(text, &found, &hers, &[]);
    }
}

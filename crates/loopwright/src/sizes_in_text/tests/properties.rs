//! What holds for every text.

use super::super::*;
use proptest::prelude::*;

const NAMES: [&str; 3] = ["S", "M", "L"];

/// The pieces are the text: in its order, without gap or overlap.
fn are_whole(text: &str, shown: &[Piece]) {
    let mut end = 0;
    for piece in shown {
        assert_eq!(piece.range.start, end, "{text:?}");
        assert!(piece.range.end > end, "{text:?}");
        assert!(text.get(piece.range.clone()).is_some(), "{text:?}");
        end = piece.range.end;
    }
    assert_eq!(end, text.len(), "{text:?}");
}

/// What is found stands in order, within the text, and each doubt points into its list.
fn is_sound(text: &str, found: &Found) {
    let mut end = 0;
    for list in &found.lists {
        assert!(
            list.range.start >= end && list.range.end <= text.len(),
            "{text:?} {list:?}"
        );
        end = list.range.end;
        let mut entry_end = list.range.start;
        for entry in &list.entries {
            assert!(
                entry.range.start >= entry_end && entry.range.end <= end,
                "{text:?} {list:?}"
            );
            assert!(text.get(entry.number.clone()).is_some_and(|number| !number.is_empty()));
            entry_end = entry.range.end;
        }
        match &list.doubt {
            None => assert_eq!(list.entries.len(), found.sizes, "{text:?}"),
            Some(doubt) => assert!(
                text.get(doubt.at.clone()).is_some_and(|piece| !piece.is_empty()),
                "{text:?}"
            ),
        }
        let place = found.place(text, list);
        let at = place.and_then(|place| found.at_place(text, &place));
        assert_eq!(at.and_then(|at| found.lists.get(at)), Some(list), "{text:?}");
    }
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(1000))]
    #[test]
    fn no_text_panics_and_every_byte_is_shown_once(
        any: String,
        text in "[0-9a-zA-Z ,.:;/()\\[\\]{}=+\n½¾\"'x×–-]{0,60}",
        pieces_of in "([0-9]{1,3}|cm|in|sts|to|and|S|M|L|K|6th|x|½|1/2|/|:|\n|[ ,()\\[\\]–-]){0,40}",
        size in 0..4_usize,
    ) {
        for text in [any, text, pieces_of] {
            let found = find(&text, &NAMES);
            is_sound(&text, &found);
            let hers = Hers::one(size);
            are_whole(&text, &pieces(&text, &found, &hers, &[]));
            let decisions: Vec<Decision> = found.lists.iter().filter_map(|list| {
                Some(Decision { list: found.place(&text, list)?, verdict: Verdict::Number { size, entry: 1 } })
            }).collect();
            are_whole(&text, &pieces(&text, &found, &hers, &decisions));
            let _ = (plain_text(&text, &found, &hers, &decisions), counts(&text, &found), named(&text), for_some(&text, &found, &NAMES));
            let two = find(&text, &["2", "4"]);
            is_sound(&text, &two);
        }
    }

    /// No line changes what is found in another one, but for how the whole text prints its lists.
    #[test]
    fn a_list_is_found_wherever_its_line_stands(before in "[a-z ,.]{0,30}\n", behind in "\n[a-z ,.]{0,30}") {
        let line = "Cast on 96 (108, 120) sts.";
        let text = format!("{before}{line}{behind}");
        let found = find(&text, &NAMES);
        prop_assert_eq!(found.lists.len(), 1, "{}", text);
        prop_assert_eq!(&text[found.lists[0].range.clone()], "96 (108, 120) sts");
    }
}

//! Lists in every printed style, and what holds for every text.

use super::*;
use proptest::prelude::*;

/// The numbers of a list as they were read, ranges as `86..91`, a dash in place of a number as `-`, a space inside a
/// number as `_`.
fn numbers(text: &str) -> String {
    let reading = read(text);
    assert_eq!(reading.unplaced, [], "{text}");
    let figures = reading.entries.iter().filter_map(|entry| entry.figures.as_ref());
    let written = |figures: &Figures| match figures {
        Figures::Nothing(_) => "-".to_owned(),
        Figures::One(figure) => text[figure.range.clone()].to_owned(),
        Figures::Range(from, to) => format!("{}..{}", &text[from.range.clone()], &text[to.range.clone()]),
        Figures::Open(figure, _) => format!("{}..", &text[figure.range.clone()]),
    };
    let numbers = figures.map(|figures| written(figures).replace(' ', "_"));
    numbers.collect::<Vec<_>>().join(" ")
}

#[test]
fn every_printed_style_is_read_whole() {
    for (text, wanted) in [
        ("96 (108, 120)", "96 108 120"),
        ("96[108:120]", "96 108 120"),
        ("81 [86: 91: 97]", "81 86 91 97"),
        ("81[86:91:97:102:107]", "81 86 91 97 102 107"),
        ("81:86:91:97:102", "81 86 91 97 102"),
        ("88:92", "88 92"),
        ("81-86-91-97", "81 86 91 97"),
        ("81–86–91–97", "81 86 91 97"),
        ("81 — 86 — 91 — 97", "81 86 91 97"),
        ("81 (86-91-97)", "81 86 91 97"),
        ("6 (7, 7½)", "6 7 7½"),
        ("6 (7, 7 1/2)", "6 7 7_1/2"),
        ("8/9/10", "8 9 10"),
        ("6/7/8", "6 7 8"),
        ("34 1/2/36 1/2/38", "34_1/2 36_1/2 38"),
        ("6/8", "6 8"),
        ("3/4", "3/4"),
        ("S-M-L: 96-104-112", "96 104 112"),
        ("- (4, 6)", "- 4 6"),
        ("4 (-, 6)", "4 - 6"),
        ("1 (2) [3] {4}", "1 2 3 4"),
        ("81 (86 [91, 97], {102})", "81 86 91 97 102"),
        ("34-36 (38-40, 42-44)", "34..36 38..40 42..44"),
        ("34\"-36\" (38\"-40\", 42\"-44\")", "34..36 38..40 42..44"),
        ("34”–36” (38”–40”)", "34..36 38..40"),
        ("96(104:112:120)cm", "96 104 112 120"),
        ("96,5 (101,5)", "96,5 101,5"),
        ("86,91,97", "86 91 97"),
        ("97,103", "97 103"),
        ("1,150 (1,200)", "1,150 1,200"),
        ("1 150 (1 200)", "1_150 1_200"),
        ("6 100 110", "6 100 110"),
        ("94.5 100", "94.5 100"),
        ("94,5 100", "94,5 100"),
        ("15-1/2-16-1/2", "15-1/2..16-1/2"),
        ("96.5,97.5", "96.5 97.5"),
        ("86-", "86.."),
        ("22 sts and 30 rows", "22 30"),
    ] {
        assert_eq!(numbers(text), wanted, "{text}");
    }
}

#[test]
fn a_name_stands_before_its_number_its_colon_or_by_itself() {
    let names = |text: &str| {
        let entries = read(text).entries;
        let names = entries
            .iter()
            .flat_map(|entry| entry.head.iter().chain(&entry.before).chain(&entry.after));
        names
            .map(|range| text[range.clone()].to_owned())
            .collect::<Vec<_>>()
            .join("|")
    };
    for (text, wanted) in [
        ("S 86, M 91", "S|M"),
        ("86-91 S, 91-97 M", "S|M"),
        ("XS: 15 S: 17 M: 18", "XS|S|M"),
        ("XS: 15 (S: 17 M: 18 L: 20)", "XS|S|M|L"),
        ("10: 92, 12: 97", "10|12"),
        ("2/4: 53, 6-8 years: 60", "2/4|6-8|years"),
        ("X-Small 71, Extra Large 110", "X-Small|Extra|Large"),
        ("1X/2X 112", "1X/2X"),
        ("S – 86–91", "S"),
        ("S-M-L: 96-104-112", "S-M-L"),
        ("- S 86\n- M 91", "S|M"),
        ("15z", "15z"),
    ] {
        assert_eq!(names(text), wanted, "{text}");
    }
}

#[test]
fn what_has_no_place_is_pointed_at() {
    for (text, wanted) in [
        ("86 + 91", "+"),
        ("22 x 30", "x"),
        ("86 × 91", "×"),
        ("1) 86", ")"),
        ("-5, 6", "-"),
        ("81 (86]", "]"),
        ("m² 5", "²"),
    ] {
        let unplaced: Vec<&str> = read(text).unplaced.iter().map(|range| &text[range.clone()]).collect();
        assert_eq!(unplaced, [wanted], "{text}");
    }
}

#[test]
fn a_fraction_has_six_digits_on_either_side_at_most() {
    let is_one_number = |text: &str| read(text).unplaced.is_empty() && read(text).entries.len() == 1;
    assert!(is_one_number("34⁷⁄₈"));
    assert!(!is_one_number("¹⁄₂₂₂₂₂₂₂₂₂₂₂₂₂₂₂₂"));
    // Looked through from each of its marks, this would take minutes.
    let long = "¹".repeat(200_000);
    assert_eq!(read(&long).unplaced.len(), 200_000);
}

#[test]
fn tokens_of_a_gauge_are_told_apart() {
    use TokenKind::{Number, Times, Unit, Word};
    let kinds = |text| tokens(text).into_iter().map(|token| token.kind).collect::<Vec<_>>();
    let unit = |name| crate::units::names::named(&str::chars(name).collect::<Vec<_>>()).unwrap();
    assert_eq!(kinds("22x30"), [Number, Times, Number]);
    assert_eq!(kinds("22 × 30½"), [Number, Times, Number]);
    assert_eq!(
        kinds("22 sts and 30 rows to 4 in."),
        [
            Number,
            Unit(unit("sts")),
            Word,
            Number,
            Unit(unit("rows")),
            Word,
            Number,
            Unit(unit("in"))
        ]
    );
    assert_eq!(
        kinds("22sts = 10cm"),
        [Number, Unit(unit("sts")), TokenKind::Equals, Number, Unit(unit("cm"))]
    );
    assert_eq!(kinds("US6"), [Word, Number]);
    assert_eq!(kinds("21-22"), [Number, TokenKind::Dash, Number]);
}

/// Every place that a reading has an account of.
fn accounted(reading: &Reading) -> Vec<Range<usize>> {
    let mut places = reading.unplaced.clone();
    for entry in &reading.entries {
        places.extend(entry.head.iter().chain(&entry.before).chain(&entry.after).cloned());
        places.extend(entry.figures.iter().map(Figures::range));
    }
    places
}

/// Panics where a sign that says a number is neither used nor pointed at.
fn every_figure_is_accounted_for(text: &str) {
    let places = accounted(&read(text));
    for (at, mark) in text.char_indices().filter(|(_, mark)| mark.is_numeric()) {
        assert!(
            places.iter().any(|place| place.contains(&at)),
            "{mark} at {at} of {text:?}"
        );
    }
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(1000))]
    #[test]
    fn no_number_of_any_text_is_dropped(
        any: String,
        text in "[0-9a-zA-Z ,.:;/()\\[\\]{}=+\n½¾\"'x×–-]{0,40}",
        pieces in "([0-9]{1,3}|cm|in|to|and|S|XL|x|½|1/2|/|:|\n|²|[ ,()\\[\\]–-]){0,24}",
    ) {
        for text in [any, text, pieces] {
            every_figure_is_accounted_for(&text);
        }
    }

    #[test]
    fn tokens_stand_in_order_and_leave_out_spaces_only(text in "\\PC{0,30}|[0-9a-z ,./½x\n-]{0,30}") {
        let mut end = 0;
        for token in tokens(&text) {
            prop_assert!(token.range.start >= end && token.range.end > token.range.start);
            let between = &text[end..token.range.start];
            prop_assert!(between.chars().all(|mark| mark.is_whitespace() || crate::units::clean::unseen(mark)));
            end = token.range.end;
        }
        let behind = &text[end..];
        prop_assert!(behind.chars().all(|mark| mark.is_whitespace() || crate::units::clean::unseen(mark)));
    }
}

//! Lists as patterns print them and as knitters type them.

use super::*;
use crate::bounds::Bounds;
use crate::sizing::Span;
use crate::units::Length;
use crate::units::print::{Step, print};
use proptest::prelude::*;

fn cm(tenths: i64) -> Length {
    Length::from_mm(tenths)
}

/// What was read, each as `label from-to` in tenths of a centimetre.
fn read(text: &str, unit: LengthUnit) -> Vec<(String, i64, i64)> {
    let sizes = read_sizes(text, unit).unwrap_or_else(|unread| panic!("{text}: {unread:?}"));
    let tenths = |length: Length| (length.to_nm() + 500_000).div_euclid(1_000_000);
    sizes
        .into_iter()
        .map(|s| (s.label, tenths(s.girth.from), tenths(s.girth.to)))
        .collect()
}

fn same(text: &str, wanted: &[(&str, i64, i64)]) {
    let wanted: Vec<_> = wanted.iter().map(|(l, a, b)| ((*l).to_owned(), *a, *b)).collect();
    assert_eq!(read(text, LengthUnit::Cm), wanted, "{text}");
}

#[test]
fn a_to_fit_list_in_every_way_of_writing() {
    let wanted = [("S", 860, 910), ("M", 910, 970), ("L", 970, 1020)];
    for text in [
        "S 86-91, M 91-97, L 97-102",
        "S: 86–91; M: 91–97; L: 97–102 cm",
        "To fit bust: S 86 - 91, M 91 to 97, L 97-102cm",
        "S 86-91\nM 91-97\nL 97-102",
        "- S 86-91\n- M 91-97\n- L 97-102",
        "• S = 86—91 • M = 91—97 • L = 97—102",
        "S (M, L): 86-91 (91-97, 97-102) cm",
        "S (86-91) M (91-97) L (97-102)",
        "S - 86-91, M - 91-97, L - 97-102",
        "Sizes: S, M, L\nTo fit chest 86-91, 91-97, 97-102",
        "Sweater: S 91-86, M 91-97, L 97-102",
        "86-91 S, 91-97 M, 97-102 L",
        "S–86–91, M–91–97, L–97–102",
        "S/M/L 86-91/91-97/97-102",
        "S M L\n86-91 91-97 97-102",
        "S 86-91 M 91-97 L 97-102",
        "S 86-91, M 91-97 and L 97-102",
        "S 86-91 cm / 34-36 in, M 91-97 cm / 36-38 in, L 97-102 cm / 38-40 in",
    ] {
        let found = read(text, LengthUnit::Cm);
        let girths: Vec<_> = found.iter().map(|(_, a, b)| (*a, *b)).collect();
        assert_eq!(girths, wanted.map(|(_, a, b)| (a, b)), "{text}");
        let labels: Vec<_> = found.iter().map(|(l, _, _)| l.as_str()).collect();
        assert_eq!(labels, wanted.map(|(l, _, _)| l), "{text}");
    }
}

#[test]
fn a_finished_list_in_every_way_of_writing() {
    for text in [
        "97 (103, 111)",
        "97 (103, 111) cm",
        "97cm (103cm, 111cm)",
        "97, 103, 111",
        "97,103,111",
        "97 (103) (111)",
        "97 [103, 111]",
        "97 {103, 111}",
        "97/103/111",
        "97 / 103 / 111 cm",
        "97 103 111",
        "97, 103 and 111",
        "97,\n103,\n111",
        "97 (103, 111) cm / 38¼ (40½, 43¾) in",
        "38¼ (40½, 43¾) in / 97 (103, 111) cm",
        "Finished bust: 97 (103, 111) cm",
        "Pullover: 97 (103, 111)",
        "970 (1030, 1110) mm",
        "1 (2, 3): 97 (103, 111)",
    ] {
        let girths: Vec<_> = read(text, LengthUnit::Cm).iter().map(|(_, a, b)| (*a, *b)).collect();
        assert_eq!(girths, [(970, 970), (1030, 1030), (1110, 1110)], "{text}");
    }
    let labelled = read("1 (2, 3): 97 (103, 111)", LengthUnit::Cm);
    assert_eq!(
        labelled.iter().map(|(l, _, _)| l.as_str()).collect::<Vec<_>>(),
        ["1", "2", "3"]
    );
}

#[test]
fn inches_with_fractions_and_quotes() {
    let eighth = |parts: i64| Span::one(Length::from_sixty_fourths(parts * 8));
    for text in [
        "34 (36 1/2, 38¾, 40-1/2)",
        "34” (36½”, 38 3/4″, 40 1/2\")",
        "34 (36.5, 38,75; 40.5) in",
        "34 in (36 1⁄2 in, 38¾ in, 40½ in)",
        "34 (36½, 38¾, 40½)''",
        "34 36 1/2 38 3/4 40 1/2",
        "34/36½/38¾/40½",
        "S 34\" M 36½\" L 38¾\" XL 40½\"",
        "86.4 (92.7, 98.4, 102.9) cm / 34 (36½, 38¾, 40½) in",
    ] {
        let unit = LengthUnit::Inch;
        let girths: Vec<_> = read_sizes(text, unit).unwrap().into_iter().map(|s| s.girth).collect();
        assert_eq!(girths, [eighth(272), eighth(292), eighth(310), eighth(324)], "{text}");
    }
    let range = read_sizes("34\" - 36\", 38 in to 40 in, 42 in - 44", LengthUnit::Cm).unwrap();
    let inches = |a, b| Span::new(Length::from_inches(a), Length::from_inches(b));
    let girths: Vec<_> = range.into_iter().map(|s| s.girth).collect();
    assert_eq!(girths, [inches(34, 36), inches(38, 40), inches(42, 44)]);
}

#[test]
fn labels_of_every_kind() {
    same("XS/S 76-86, M/L 91-102", &[("XS/S", 760, 860), ("M/L", 910, 1020)]);
    same(
        "1X 112-117, 2X 122-127, 3XL 132",
        &[("1X", 1120, 1170), ("2X", 1220, 1270), ("3XL", 1320, 1320)],
    );
    same(
        "X-Small 71, Extra Large 110",
        &[("X-Small", 710, 710), ("Extra Large", 1100, 1100)],
    );
    same(
        "2 years: 53, 4 yrs: 58,5; 6-8 years: 64-67",
        &[("2 years", 530, 530), ("4 yrs", 585, 585), ("6-8 years", 640, 670)],
    );
    same("2T 53 (4T 58)", &[("2T", 530, 530), ("4T", 580, 580)]);
    same("size 10: 92, size 12: 97", &[("10", 920, 920), ("12", 970, 970)]);
    same("10: 92, 12: 97", &[("10", 920, 920), ("12", 970, 970)]);
    same("M 97", &[("M", 970, 970)]);
    same("One size fits 86-112", &[("86-112", 860, 1120)]);
    same("S/ 86", &[("S", 860, 860)]);
    same("1X/2X 112-122", &[("1X/2X", 1120, 1220)]);
    same("97 (103½) cm", &[("97", 970, 970), ("103½", 1035, 1035)]);
}

// Read as girths, the names would make a list of twice as many sizes, none of them with a name.
#[test]
fn names_that_could_be_girths_are_names_before_a_colon() {
    let inches = read("8 (10, 12): 32 (34, 36) in", LengthUnit::Cm);
    let names: Vec<_> = inches.iter().map(|(name, ..)| name.as_str()).collect();
    assert_eq!(names, ["8", "10", "12"]);
    same(
        "10 (12, 14, 16): 81 (86, 91, 97)",
        &[("10", 810, 810), ("12", 860, 860), ("14", 910, 910), ("16", 970, 970)],
    );
    same(
        "Sizes 34 (36, 38): 86-91 (91-97, 97-102) cm",
        &[("34", 860, 910), ("36", 910, 970), ("38", 970, 1020)],
    );
    same(
        "8 (10, 12): 81 (86, 91)",
        &[("8", 810, 810), ("10", 860, 860), ("12", 910, 910)],
    );
}

#[test]
fn of_two_rows_the_first_are_names() {
    let wanted = [("6", 800, 800), ("8", 840, 840), ("10", 880, 880), ("12", 920, 920)];
    for text in [
        "6 (8, 10, 12)\n80 (84, 88, 92)",
        "Size 6 8 10 12\nBust 80 84 88 92",
        "Bust 80 84 88 92\nSize 6 8 10 12",
        "6/8/10/12\n80/84/88/92 cm",
        "Pattern size: 6 (8, 10, 12)\nFinished bust: 80 (84, 88, 92) cm / 31½ (33, 34¾, 36¼) in",
    ] {
        same(text, &wanted);
    }
    for text in [
        "XS/S/M/L 82/90/98/106",
        "XS/S/M/L\n82/90/98/106",
        "XS S M L\n82 90 98 106",
    ] {
        same(
            text,
            &[("XS", 820, 820), ("S", 900, 900), ("M", 980, 980), ("L", 1060, 1060)],
        );
    }
    // A row that ends with a comma goes on, and rows of a size each are no lists.
    assert_eq!(read("86, 91, 97,\n102, 107, 112", LengthUnit::Cm).len(), 6);
    assert_eq!(read("S 86, M 91\nL 97, XL 102", LengthUnit::Cm).len(), 4);
    assert_eq!(read("86\n91", LengthUnit::Cm).len(), 2);
}

#[test]
fn bodies_and_garments_in_one_text_are_never_pooled() {
    for text in [
        "To fit bust: 86 (91, 97)\nFinished bust: 97 (103, 111)",
        "Finished: 97 (103, 111)\nTo fit: 86 (91, 97)",
        "Bust 86 91 97\nActual 97 103 111",
        "To fit 86 (91, 97); finished 97 (103, 111)",
        "S: to fit 86, finished 97; M: to fit 91, finished 103; L: to fit 97, finished 111",
        "Sizes 8 10 12\nTo fit bust 86 91 97\nFinished bust 97 103 111",
    ] {
        let girths = |listed| {
            let sizes = read_listed(text, LengthUnit::Cm, Some(listed));
            let sizes = sizes.unwrap_or_else(|unread| panic!("{text}: {unread:?}"));
            sizes.into_iter().map(|size| size.girth.from).collect::<Vec<_>>()
        };
        assert_eq!(girths(Listed::Body), [cm(860), cm(910), cm(970)], "{text}");
        assert_eq!(girths(Listed::Garment), [cm(970), cm(1030), cm(1110)], "{text}");
        assert_eq!(
            read_sizes(text, LengthUnit::Cm).unwrap_err().why,
            WhyUnread::TwoLists,
            "{text}"
        );
    }
    for text in ["Bust 86 91 97\nHip 90 95 101", "8 10 12\n86 91 97\n97 103 111"] {
        assert_eq!(
            read_sizes(text, LengthUnit::Cm).unwrap_err().why,
            WhyUnread::TwoLists,
            "{text}"
        );
    }
}

#[test]
fn names_are_not_taken_for_girths() {
    for text in ["8, 81, 10, 86", "6 8 10 80 84 88"] {
        assert_eq!(
            read_sizes(text, LengthUnit::Cm).unwrap_err().why,
            WhyUnread::FarApart,
            "{text}"
        );
    }
    // With names it may be a pattern for the whole family.
    assert_eq!(read("0-6 mo: 43, 4XL: 157", LengthUnit::Cm).len(), 2);
}

#[test]
fn a_comma_parts_sizes_or_decimals_as_it_makes_sense() {
    let girths = |text| {
        read(text, LengthUnit::Cm)
            .iter()
            .map(|(_, a, _)| *a)
            .collect::<Vec<_>>()
    };
    assert_eq!(girths("96,5 (101,5)"), [965, 1015]);
    assert_eq!(girths("96,5, 101,5"), [965, 1015]);
    assert_eq!(girths("86,91,97"), [860, 910, 970]);
    assert_eq!(girths("97,103"), [970, 1030]);
    assert_eq!(girths("96,50; 101,50"), [965, 1015]);
}

#[test]
fn what_cannot_be_read_is_pointed_at() {
    let unread = |text: &str| {
        let unread = read_sizes(text, LengthUnit::Cm).unwrap_err();
        (unread.piece(text).to_owned(), unread.why)
    };
    let number = |text: &str| match unread(text) {
        (piece, WhyUnread::Number(why)) => (piece, why),
        other => panic!("{other:?}"),
    };
    let not_as_many = |numbers, sizes| WhyUnread::NotAsMany { numbers, sizes };
    assert_eq!(number("").1, Unreadable::Empty);
    assert_eq!(number("to fit bust").1, Unreadable::Empty);
    assert_eq!(number("S 86-, M 91"), ("86-".to_owned(), Unreadable::Unfinished));
    assert_eq!(number("S 86-91 or so").1, Unreadable::UnknownUnit);
    assert_eq!(number("S 3, M 86, L 9000").0, "3");
    assert!(matches!(number("S 86, M 97 g").1, Unreadable::WrongKind { .. }));
    assert_eq!(unread("S 86-91, M ?").1, not_as_many(1, 2));
    assert_eq!(unread("S 86, M, L 97").1, not_as_many(2, 3));
    assert_eq!(unread("S, M, L").1, not_as_many(0, 3));
    assert_eq!(unread("S 86, 91, L 97").1, not_as_many(3, 2));
    for two in ["86 cm (91 cm), 40 in (44 in)", "97 (103) cm / 38 in", "97 cm (103 in)"] {
        assert_eq!(unread(two).1, WhyUnread::TwoUnits, "{two}");
    }
}

/// What was read, in centimetres and inches as printed, without names.
fn girths(text: &str, unit: LengthUnit) -> String {
    let sizes = read_sizes(text, unit).unwrap_or_else(|unread| panic!("{text}: {unread:?}"));
    let step = if unit == LengthUnit::Inch {
        Step::Eighths
    } else {
        Step::Tenth
    };
    let written = |girth: Span| match (print(girth.from, unit, step), print(girth.to, unit, step)) {
        (from, to) if from == to => from,
        (from, to) => format!("{from}..{to}"),
    };
    sizes
        .iter()
        .map(|size| written(size.girth))
        .collect::<Vec<_>>()
        .join(", ")
}

#[test]
fn colons_part_sizes_and_none_of_them_is_dropped() {
    for (text, wanted) in [
        ("81[86:91:97:102:107]", "81, 86, 91, 97, 102, 107"),
        ("81 [86:91:97:102:107]", "81, 86, 91, 97, 102, 107"),
        ("81 [86: 91: 97: 102]", "81, 86, 91, 97, 102"),
        ("81:86:91:97:102", "81, 86, 91, 97, 102"),
        ("96(104:112:120)cm", "96, 104, 112, 120"),
    ] {
        assert_eq!(girths(text, LengthUnit::Cm), wanted, "{text}");
    }
    assert_eq!(girths("36[38:40:42]", LengthUnit::Inch), "36, 38, 40, 42");
    assert_eq!(girths("36[38:40:42] in", LengthUnit::Cm), "91.4, 96.5, 101.6, 106.7");
}

#[test]
fn three_numbers_parted_by_dashes_are_sizes_and_two_a_range() {
    for (text, wanted) in [
        ("82-90-98-106", "82, 90, 98, 106"),
        ("82–90–98–106", "82, 90, 98, 106"),
        ("82 — 90 — 98 — 106 cm", "82, 90, 98, 106"),
        ("81 (86-91-97)", "81, 86, 91, 97"),
        ("86-91-97", "86, 91, 97"),
        ("86-91", "86..91"),
    ] {
        assert_eq!(girths(text, LengthUnit::Cm), wanted, "{text}");
    }
    same(
        "S-M-L: 96-104-112",
        &[("S", 960, 960), ("M", 1040, 1040), ("L", 1120, 1120)],
    );
}

#[test]
fn a_unit_at_both_ends_of_a_range_makes_no_two_sizes() {
    for text in [
        "34\"-36\" (38\"-40\", 42\"-44\")",
        "34”–36” (38”–40”, 42”–44”)",
        "34-36 (38-40, 42-44)",
    ] {
        assert_eq!(girths(text, LengthUnit::Inch), "34..36, 38..40, 42..44", "{text}");
    }
}

#[test]
fn a_dash_in_place_of_a_number_is_a_size_that_is_not_made() {
    same("- (86, 91)", &[("86", 860, 860), ("91", 910, 910)]);
    same("S (M, L): - (86, 91)", &[("M", 860, 860), ("L", 910, 910)]);
    let sizes = read_sizes("S (M, L): - (86, 91)", LengthUnit::Cm).unwrap();
    for (stitches, wanted) in [("- (204, 216)", [Some(204), Some(216)]), ("204, -", [Some(204), None])] {
        let with = with_stitches(sizes.clone(), stitches).unwrap();
        let found: Vec<_> = with.iter().map(|size| size.stitches).collect();
        assert_eq!(found, wanted, "{stitches}");
    }
    assert_eq!(
        read_counts("- (4, 6)", Bounds::new(1, 9)),
        Ok(vec![None, Some(4), Some(6)])
    );
}

#[test]
fn a_list_with_a_number_that_would_be_left_unused_is_not_read() {
    for (text, piece) in [("81: (86, 91, 97)", "81"), ("4 ply: 86, 91", "4 ply")] {
        let unread = read_sizes(text, LengthUnit::Cm).unwrap_err();
        assert_eq!((unread.piece(text), unread.why), (piece, WhyUnread::Unused), "{text}");
    }
    for (text, piece) in [("86 + 91", "+"), ("86, -91", "-"), ("1) 86", ")")] {
        let unread = read_sizes(text, LengthUnit::Cm).unwrap_err();
        assert_eq!(
            (unread.piece(text), unread.why),
            (piece, WhyUnread::Misplaced),
            "{text}"
        );
    }
    let unread = read_counts("88: 92", Bounds::new(1, 999)).unwrap_err();
    assert_eq!((unread.piece("88: 92"), unread.why), ("88", WhyUnread::Unused));
}

#[test]
fn stitches_are_given_in_order() {
    let sizes = read_sizes("97 (103, 111)", LengthUnit::Cm).unwrap();
    for text in [
        "204 (216, 234)",
        "204, 216, 234",
        "Cast on 204 (216, 234) sts",
        "S 204; M 216; L 234",
    ] {
        let with = with_stitches(sizes.clone(), text).unwrap();
        let stitches: Vec<_> = with.iter().map(|size| size.stitches).collect();
        assert_eq!(stitches, [Some(204), Some(216), Some(234)], "{text}");
    }
    let unread = with_stitches(sizes.clone(), "204 (216)").unwrap_err();
    assert_eq!(unread.why, WhyUnread::NotAsMany { numbers: 2, sizes: 3 });
    let unread = with_stitches(sizes.clone(), "204 (21½, 234)").unwrap_err();
    assert_eq!(unread.piece("204 (21½, 234)"), "21½");
    assert_eq!(with_stitches(sizes.clone(), " ").unwrap(), sizes);
}

#[test]
fn counts_are_read_as_a_pattern_has_them_and_none_is_dropped() {
    let any = Bounds::new(1, 100_000);
    for text in [
        "132 (144, 156)",
        "132, 144, 156",
        "132 144 156",
        "S 132, M 144, L 156",
        "Cast on 132 (144, 156)",
        "132\n144\n156",
        "132:144:156",
        "132[144:156]",
        "132-144-156",
        "132/144/156",
        "1 (2, 3): 132 (144, 156) sts",
        "S (M, L): 132 (144, 156)",
        "S, M, L: 132, 144, 156",
        "132 (144, 156) sts in total",
    ] {
        assert_eq!(
            read_counts(text, any),
            Ok(vec![Some(132), Some(144), Some(156)]),
            "{text}"
        );
    }
    assert_eq!(read_counts(" ", any), Ok(Vec::new()));
    for (text, piece) in [
        ("180 (19x, 212)", "19x"),
        ("180, 212.5", "212.5"),
        ("180, 100001", "100001"),
        ("wide", "wide"),
    ] {
        assert_eq!(read_counts(text, any).unwrap_err().piece(text), piece, "{text}");
    }
}

#[test]
fn a_word_that_is_neither_a_heading_nor_a_name_is_pointed_at() {
    for (text, piece) in [
        ("88 (x, 112)", "x"),
        ("88 (112, x)", "x"),
        ("x (88, 112)", "x"),
        ("88 (?, 112)", "?"),
        ("88 foo (112, 120)", "foo"),
        ("88 (112 foo, 120)", "foo"),
        ("Cast on 88 (x, 112)", "x"),
    ] {
        let unread = read_counts(text, Bounds::new(1, 999)).unwrap_err();
        assert_eq!(
            (unread.piece(text), unread.why),
            (piece, WhyUnread::Misplaced),
            "{text}"
        );
    }
    for (text, piece) in [("81, 86 foo 91", "foo"), ("81 (86, x)", "x"), ("81, 86 S", "S")] {
        let unread = read_sizes(text, LengthUnit::Cm).unwrap_err();
        assert_eq!(
            (unread.piece(text), unread.why),
            (piece, WhyUnread::Misplaced),
            "{text}"
        );
    }
    let long = "x".repeat(2000);
    let unread = read_sizes(&long, LengthUnit::Cm).unwrap_err();
    assert_eq!(unread.why, WhyUnread::Number(Unreadable::NotANumber));
    assert_eq!(unread.piece(&long), long);
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(2000))]
    #[test]
    fn no_text_of_counts_makes_it_panic(text in "[-0-9a-zA-Z(),;/ ½\"]{0,40}", any: String) {
        for text in [text, any] {
            let _ = read_counts(&text, Bounds::new(1, 100_000));
        }
    }
    #[test]
    fn no_text_panics_and_every_girth_is_in_its_bounds(text in "\\PC{0,40}|[SMLX0-9/,.()½\"' :-]{0,40}|([SML0-9]{1,3}|cm|in|to|fit|finished|size|and|½|/|:|\n|[ ,(\\-\u{2013}]){0,20}") {
        for unit in [LengthUnit::Cm, LengthUnit::Inch] {
            if let Ok(SizeList { sizes, used, set_aside }) = read_size_list(&text, unit, None) {
                for (at, mark) in text.char_indices().filter(|(_, mark)| mark.is_numeric()) {
                    assert!(used.iter().chain(&set_aside).any(|place| place.contains(&at)), "{mark} of {text:?}");
                }
                assert!(!sizes.is_empty());
                for size in sizes {
                    assert!(!size.label.is_empty() && size.girth.from <= size.girth.to);
                    assert!(GIRTH.allow(size.girth.from) && GIRTH.allow(size.girth.to));
                }
            }
            let sizes = vec![Size::new("", Span::one(cm(900)))];
            let _ = with_stitches(sizes, &text);
        }
    }

    #[test]
    fn a_list_that_is_written_out_reads_back(
        spans in prop::collection::vec((40..700_i64, 0..20_i64), 1..12),
        inches: bool, labelled: bool, tail: bool,
    ) {
        let (unit, step, part) = if inches { (LengthUnit::Inch, Step::Eighths, 8) } else { (LengthUnit::Cm, Step::Tenth, 1) };
        let length = |n: i64| if inches { Length::from_sixty_fourths(n * part) } else { cm(n + 100) };
        let labels = ["XS", "S", "M", "L", "1X", "2X", "3X", "4X", "5X", "6X", "7X", "8X"];
        let text: Vec<String> = spans.iter().enumerate().map(|(at, (from, more))| {
            let label = if labelled { format!("{} ", labels[at]) } else { String::new() };
            let (one, two) = (print(length(*from), unit, step), print(length(from + more), unit, step));
            if *more == 0 { format!("{label}{one}") } else { format!("{label}{one} - {two}") }
        }).collect();
        let text = format!("{}{}", text.join("; "), if tail { format!(" {}", unit.symbol()) } else { String::new() });
        let sizes = read_sizes(&text, unit);
        prop_assume!(spans.iter().all(|(from, _)| GIRTH.allow(length(*from))));
        if sizes.as_ref().is_err_and(|unread| unread.why == WhyUnread::FarApart) {
            let (least, most) = (spans.iter().map(|(from, _)| *from).min(), spans.iter().map(|(from, more)| from + more).max());
            prop_assert!(!labelled && length(most.unwrap_or(0)) > length(least.unwrap_or(0)).saturating_mul(FAR_APART));
            return Ok(());
        }
        let sizes = sizes.unwrap_or_else(|unread| panic!("{text}: {unread:?}"));
        prop_assert_eq!(sizes.len(), spans.len(), "{}", text);
        for (at, (size, (from, more))) in sizes.iter().zip(&spans).enumerate() {
            prop_assert_eq!(size.girth, Span::new(length(*from), length(from + more)), "{}", text);
            prop_assert!(!labelled || size.label == labels[at], "{}", text);
        }
    }
}

//! What is laid over a sheet, and how what lay there comes back.

use super::*;
use crate::store::Typed;
use proptest::prelude::*;

fn fields(pairs: &[(&str, &str)]) -> Fields {
    let field = |(field, text): &(&str, &str)| ((*field).to_owned(), Typed::plain(*text));
    pairs.iter().map(field).collect()
}

fn laid(pairs: &[(&str, &str)]) -> Laid {
    Laid {
        fields: fields(pairs),
        from: Fields::new(),
    }
}

fn stitches(count: &str) -> Laid {
    laid(&[("stitches", count)])
}

/// A desk on which she typed a count.
fn typed(count: &str) -> Sheets {
    let mut sheets = Sheets::default();
    sheets.apply(&Entry::new("spacing", "stitches", Some(Typed::plain(count))));
    sheets
}

fn open(sheets: &mut Sheets, count: &str) {
    let entries = lay_over(sheets, "spacing", &stitches(count));
    sheets.apply_all(&entries);
}

fn undo(sheets: &mut Sheets) -> Fields {
    let entries = put_back(sheets, "spacing");
    sheets.apply_all(&entries);
    sheets.fields("spacing")
}

#[test]
fn a_link_replaces_the_sheet_and_put_back_brings_it_back_and_forth() {
    let own = [("stitches", "132"), ("change", "k2tog")];
    let mut sheets = Sheets::default();
    sheets.apply_all(&become_exactly(&Sheets::default(), "spacing", &fields(&own)));
    open(&mut sheets, "90");
    assert_eq!(sheets.fields("spacing"), fields(&[("stitches", "90")]));
    assert_eq!(back(&sheets, "spacing"), Some(Back::Own));
    assert_eq!(undo(&mut sheets), fields(&own));
    assert_eq!(undo(&mut sheets), fields(&[("stitches", "90")]));
}

#[test]
fn where_texts_come_from_goes_with_them() {
    let own = Laid {
        fields: fields(&[("stitches", "132")]),
        from: fields(&[("amount", "step 3 after")]),
    };
    let mut sheets = Sheets::default();
    sheets.apply_all(&become_laid(&Sheets::default(), "spacing", &own));
    open(&mut sheets, "90");
    assert!(sheets.fields("spacing.from").is_empty());
    undo(&mut sheets);
    assert_eq!(Laid::on(&sheets, "spacing"), own);
    undo(&mut sheets);
    assert_eq!(Laid::on(&sheets, "spacing"), stitches("90"));
}

#[test]
fn an_empty_or_equal_sheet_leaves_no_before() {
    let mut sheets = Sheets::default();
    open(&mut sheets, "90");
    assert_eq!(back(&sheets, "spacing"), None);
    assert!(put_back(&sheets, "spacing").is_empty());
    assert!(lay_over(&sheets, "spacing", &stitches("90")).is_empty());
}

#[test]
fn what_lay_there_before_comes_back_also_after_a_second_link_over_the_first() {
    let mut sheets = typed("132");
    open(&mut sheets, "90");
    open(&mut sheets, "80");
    assert_eq!(back(&sheets, "spacing"), Some(Back::LookedAt));
    assert_eq!(undo(&mut sheets), stitches("90").fields);
    assert_eq!(back(&sheets, "spacing"), Some(Back::Own));
    assert_eq!(undo(&mut sheets), stitches("132").fields);
    assert_eq!(undo(&mut sheets), stitches("80").fields, "and round again");
}

#[test]
fn links_that_are_only_looked_at_do_not_push_out_her_own_figures() {
    let mut sheets = typed("132");
    for link in 1..100 {
        open(&mut sheets, &link.to_string());
    }
    assert_eq!(pile(&sheets, "spacing"), [stitches("98"), stitches("132")]);
    // Once a link's figures are worked on, they are her own.
    sheets.apply(&Entry::new("spacing", "stitches", Some(Typed::plain("99 1/2"))));
    open(&mut sheets, "70");
    assert_eq!(back(&sheets, "spacing"), Some(Back::Own));
    assert_eq!(undo(&mut sheets), stitches("99 1/2").fields);
}

#[test]
fn a_pile_has_an_end() {
    let mut sheets = Sheets::default();
    for own in 0..30 {
        sheets.apply(&Entry::new(
            "spacing",
            "stitches",
            Some(Typed::plain(format!("own {own}"))),
        ));
        open(&mut sheets, "90");
    }
    assert_eq!(pile(&sheets, "spacing").len(), MOST);
    assert_eq!(undo(&mut sheets), stitches("own 29").fields);
}

#[test]
fn what_was_stored_one_deep_is_a_pile_of_one() {
    let mut sheets = typed("90");
    sheets.apply(&Entry::new("spacing.before", "stitches", Some(Typed::plain("132"))));
    sheets.apply(&Entry::new("spacing.link", "stitches", Some(Typed::plain("90"))));
    assert_eq!(undo(&mut sheets), stitches("132").fields);
}

#[test]
fn side_sheets_are_known_by_their_names() {
    let rows = [
        ("spacing", "spacing"),
        ("spacing.before", "spacing"),
        ("spacing.before.2", "spacing"),
        ("spacing.from.before", "spacing"),
        ("p2/step.3.link.before", "p2/step.3"),
        ("step.3.from", "step.3.from"),
        ("spacing.linked", "spacing.linked"),
        ("yoke.knit.before.12", "yoke.knit"),
        (".before", ""),
    ];
    for (sheet, main) in rows {
        assert_eq!(main_sheet(sheet), main, "{sheet}");
        assert_eq!(is_side_sheet(sheet), sheet != main, "{sheet}");
    }
}

#[test]
fn only_tools_and_steps_are_put_back_on_a_page() {
    let with = ["spacing", "p2/tail", "step.3", "p2/step.12"];
    assert!(with.into_iter().all(has_a_page));
    let without = [
        "known",
        "p2/known",
        "settings",
        "projects",
        "step.3.about",
        "yoke.knit",
        "undo",
        "project",
        "home.x",
    ];
    assert!(!without.into_iter().any(has_a_page));
}

proptest! {
    /// Whatever is laid and typed: what lay there last comes back by one tap, if it differs, and the sentence knows it.
    #[test]
    fn what_lay_there_comes_back(steps in prop::collection::vec((any::<bool>(), 0_u8..6), 1..30), last in 0_u8..6) {
        let mut sheets = Sheets::default();
        for (is_link, count) in steps {
            match is_link {
                true => open(&mut sheets, &count.to_string()),
                false => sheets.apply(&Entry::new("spacing", "stitches", Some(Typed::plain(count.to_string())))),
            }
        }
        let lay = sheets.fields("spacing");
        open(&mut sheets, &last.to_string());
        if lay != sheets.fields("spacing") {
            prop_assert!(back(&sheets, "spacing").is_some());
            prop_assert_eq!(undo(&mut sheets), lay);
        }
    }

    #[test]
    fn putting_back_is_offered_where_it_does_something(steps in prop::collection::vec(0_u8..4, 1..20), taps in 0_usize..9) {
        let mut sheets = Sheets::default();
        for count in steps {
            open(&mut sheets, &count.to_string());
        }
        for _ in 0..taps {
            let before = sheets.clone();
            let offered = back(&sheets, "spacing").is_some();
            undo(&mut sheets);
            prop_assert_eq!(offered, sheets.fields("spacing") != before.fields("spacing"));
        }
    }
}

//! What is hers alone is in no store that she has not asked for it, and in no store any more when she takes that back.

use super::*;

const SHEET: &str = "sizes_in_text";
const TEXT: &str = "pattern_text";

fn set(field: &str, text: &str) -> Entry {
    Entry::new(SHEET, field, Some(Typed::plain(text)))
}

fn says(keep: Keep) -> Entry {
    set(KEEP, keep.key())
}

/// The page and the store after these taps and keystrokes, each by itself.
fn after(taps: &[Entry]) -> (Sheets, Sheets) {
    let (mut page, mut store) = (Sheets::default(), Sheets::default());
    for tap in taps {
        let mut entries = vec![tap.clone()];
        entries.extend(taken_back(&page, &entries));
        store.apply_all(&to_be_kept(&page, &entries));
        page.apply_all(&entries);
    }
    (page, store)
}

fn text(sheets: &Sheets) -> Option<&str> {
    sheets.text(SHEET, TEXT).map(|typed| typed.text.as_str())
}

#[test]
fn nothing_of_it_is_kept_unasked() {
    let (page, store) = after(&[
        set(TEXT, "Cast on"),
        set("size", "2"),
        set("decided", "list 0 0 Cast on"),
    ]);
    assert_eq!(text(&page), Some("Cast on"));
    assert_eq!(store.fields(SHEET).into_keys().collect::<Vec<_>>(), ["size"]);
    assert_eq!(without_unkept(&page), store);
    assert!(has_unkept(&page) && !has_unkept(&store));
}

#[test]
fn all_of_it_is_kept_once_she_says_so_and_what_she_types_then() {
    let before = [set(TEXT, "Cast"), set("decided", "list"), says(Keep::OnDevice)];
    let (page, store) = after(&before);
    assert_eq!(page, store);
    let (page, store) = after(&[&before[..], &[set(TEXT, "Cast on")]].concat());
    assert_eq!((text(&store), &page), (Some("Cast on"), &store));
    assert_eq!(without_unkept(&page), page);
}

#[test]
fn what_she_takes_back_leaves_the_store_and_stays_on_the_page() {
    let (page, store) = after(&[says(Keep::OnDevice), set(TEXT, "Cast on"), says(Keep::OnPage)]);
    assert_eq!((text(&page), text(&store)), (Some("Cast on"), None));
    assert!(store.fields(SHEET).contains_key(KEEP));
    // What is begun afresh is gone from both.
    let kept = [says(Keep::OnDevice), set(TEXT, "Cast on")];
    let gone = [Entry::new(SHEET, KEEP, None), Entry::new(SHEET, TEXT, None)];
    let (page, store) = after(&[&kept[..], &gone].concat());
    assert_eq!((text(&page), text(&store)), (None, None));
}

#[test]
fn what_was_put_aside_is_taken_back_with_it() {
    let aside = |field: &str, text: &str| Entry::new(format!("{SHEET}.before"), field, Some(Typed::plain(text)));
    let taps = [
        aside(KEEP, Keep::OnDevice.key()),
        aside(TEXT, "Older"),
        says(Keep::OnDevice),
        set(TEXT, "Cast on"),
    ];
    let pile = format!("{SHEET}.before");
    let (_, store) = after(&taps);
    assert!(store.text(&pile, TEXT).is_some());
    let (page, store) = after(&[&taps[..], &[says(Keep::OnPage)]].concat());
    assert_eq!((store.text(&pile, TEXT), text(&store)), (None, None));
    assert!(page.text(&pile, TEXT).is_some());
}

#[test]
fn one_step_of_several_changes_is_judged_by_what_comes_of_it() {
    let page = Sheets::default();
    let both = [set(TEXT, "Cast on"), says(Keep::OnDevice)];
    assert_eq!(to_be_kept(&page, &both), both);
    let mut page = page;
    page.apply_all(&both);
    let other = [says(Keep::OnPage), set(TEXT, "Knit")];
    assert_eq!(
        to_be_kept(&page, &other),
        [other[0].clone(), Entry::new(SHEET, TEXT, None)]
    );
    assert!(leaves_behind(&page, &to_be_kept(&page, &other)));
    assert!(!leaves_behind(&Sheets::default(), &both));
}

#[test]
fn another_window_neither_gets_it_nor_takes_it_away() {
    let (page, store) = after(&[set(TEXT, "Cast on"), set("size", "2")]);
    let mut other = store.clone();
    carry_over(&Sheets::default(), &mut other);
    assert_eq!(text(&other), None);
    // The other window writes; this one reads, and has its text still.
    let mut read = store;
    read.apply(&set("size", "3"));
    read.apply(&set(TEXT, "Another one"));
    read.apply(&says(Keep::OnDevice));
    carry_over(&page, &mut read);
    assert_eq!((text(&read), read.text(SHEET, KEEP)), (Some("Cast on"), None));
    assert_eq!(read.text(SHEET, "size"), Some(&Typed::plain("3")));
}

#[test]
fn what_another_window_takes_back_or_clears() {
    let (page, _) = after(&[says(Keep::OnDevice), set(TEXT, "Cast on")]);
    let mut taken_back = Sheets::default();
    taken_back.apply(&says(Keep::OnPage));
    carry_over(&page, &mut taken_back);
    assert_eq!(text(&taken_back), Some("Cast on"));
    let mut cleared = Sheets::default();
    carry_over(&page, &mut cleared);
    assert_eq!(text(&cleared), None);
}

#[test]
fn a_project_that_is_handed_on_has_none_of_it() {
    let (page, _) = after(&[says(Keep::OnDevice), set(TEXT, "Cast on"), set("size", "2")]);
    let project = Project::from_sheets(&page.of_project(crate::store::ProjectId::FIRST));
    assert!(project.drafts[SHEET].fields.contains_key(TEXT));
    let handed = handed_on(project);
    assert_eq!(handed.drafts[SHEET].fields.keys().collect::<Vec<_>>(), ["size"]);
}

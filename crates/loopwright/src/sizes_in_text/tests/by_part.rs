//! Her size by part, what she decides, and the counts that are offered.

use super::super::*;

const TEXT: &str = "Body\nCast on 96 (108, 120) sts.\nWork 4 (6, 8) rows.\nSleeve\nPick up 40 (44, 48) sts.\nKnit.";

#[test]
fn from_a_line_on_another_size_is_hers_and_where_they_meet_is_told() {
    let found = find(TEXT, &["S", "M", "L"]);
    let line = found.lines.place(TEXT, 3).unwrap();
    let hers = Hers {
        size: 0,
        from: vec![FromLine { line, size: 2 }],
    };
    let text = plain_text(TEXT, &found, &hers, &[]);
    assert_eq!(
        text,
        "Body\nCast on 96 sts.\nWork 4 rows.\nSleeve\nPick up 48 sts.\nKnit."
    );
    let joins = hers.joins(TEXT, &found);
    let wanted = Join {
        line: 3,
        before: 0,
        after: 2,
        lists_before: vec![1],
        lists_after: vec![2],
    };
    assert_eq!(joins, [wanted]);
    assert_eq!(hers.lost(TEXT, &found).count(), 0);

    // With a line more before it the same line begins the part; without the line the change is lost, and told so.
    let longer = format!("Read it all first.\n{TEXT}");
    let found = find(&longer, &["S", "M", "L"]);
    assert_eq!(hers.by_line(&longer, &found), [0, 0, 0, 0, 2, 2, 2]);
    let shorter = TEXT.replace("Sleeve\n", "");
    let found = find(&shorter, &["S", "M", "L"]);
    assert_eq!(hers.lost(&shorter, &found).count(), 1);
}

#[test]
fn her_word_decides_and_outlives_changes_in_other_lines() {
    let text = "Cast on 96 (108, 120) sts.\nK6 (K7, K8). Rep 4 (5) times.";
    let names = ["S", "M", "L"];
    let found = find(text, &names);
    let place = |nth: usize| {
        let list = found.lists.iter().find(|list| list.line == 1 && list.nth == nth);
        found.place(text, list.unwrap()).unwrap()
    };
    let decide = |nth: usize, verdict: Verdict| Decision {
        list: place(nth),
        verdict,
    };
    let decisions = [
        decide(0, Verdict::List),
        decide(1, Verdict::Number { size: 1, entry: 0 }),
    ];
    let plain = |text: &str, size: usize| plain_text(text, &find(text, &names), &Hers::one(size), &decisions);
    assert_eq!(plain(text, 1), "Cast on 108 sts.\nK7. Rep 4 times.");
    // What she said of one size says nothing of another one.
    assert_eq!(plain(text, 2), "Cast on 120 sts.\nK8. Rep 4 (5) times.");
    let longer = text.replace("sts.", "sts.\n2 (3, 4) rows.\n");
    assert_eq!(plain(&longer, 1), "Cast on 108 sts.\n3 rows.\n\nK7. Rep 4 times.");
    // Where its own line changes it is asked anew.
    let other = text.replace("Rep", "Work");
    assert_eq!(plain(&other, 1), "Cast on 108 sts.\nK6 (K7, K8). Work 4 (5) times.");

    let for_all = [decide(0, Verdict::ForAll)];
    let text_for_all = plain_text(text, &found, &Hers::one(0), &for_all);
    assert_eq!(text_for_all, "Cast on 96 sts.\nK6 (K7, K8). Rep 4 (5) times.");
    let shown = pieces(text, &found, &Hers::one(0), &for_all);
    assert_eq!(shown.iter().filter(|piece| piece.kind == PieceKind::InDoubt).count(), 1);
}

#[test]
fn a_list_is_cut_into_hers_the_others_and_the_marks_between() {
    let text = "Work - (4, 6) rows.";
    let found = find(text, &["S", "M", "L"]);
    let kinds = |size: usize| {
        let shown = pieces(text, &found, &Hers::one(size), &[]);
        let told = shown
            .iter()
            .map(|piece| (text[piece.range.clone()].to_owned(), piece.kind));
        told.collect::<Vec<_>>()
    };
    use PieceKind::{Anothers, Hers as Her, Marks, NoStep, Plain};
    let wanted = |kinds: [PieceKind; 3]| {
        let texts = ["Work ", "-", " (", "4", ", ", "6", ")", " rows", "."];
        let kinds = [Plain, kinds[0], Marks, kinds[1], Marks, kinds[2], Marks, Plain, Plain];
        texts.into_iter().map(str::to_owned).zip(kinds).collect::<Vec<_>>()
    };
    assert_eq!(kinds(0), wanted([NoStep, Anothers, Anothers]));
    assert_eq!(kinds(1), wanted([Anothers, Her, Anothers]));
}

#[test]
fn counts_of_stitches_are_offered_with_their_line() {
    let text = "Neck\nCO 96 (108, 120).\nWork 4 (6, 8) rows.\nInc to 200 (212, -) sts.\nBody\nPick up 10 (12, 14) \
                at the underarm.\nKnit 6 (7, 8)\". 3 (4) sts.";
    let found = find(text, &["S", "M", "L"]);
    let told: Vec<_> = counts(text, &found)
        .into_iter()
        .map(|count| (count.line, count.stitches, count.is_cast_on, count.part))
        .collect();
    assert_eq!(
        told,
        [
            (1, vec![Some(96), Some(108), Some(120)], true, Some(Part::Neck)),
            (3, vec![Some(200), Some(212), None], false, Some(Part::Neck)),
            (5, vec![Some(10), Some(12), Some(14)], false, Some(Part::Underarm)),
        ]
    );
}

#[test]
fn one_size_or_none_has_no_lists() {
    let text = "Cast on 96 (108) sts.";
    assert!(find(text, &["S"]).lists.is_empty());
    let none: [&str; 0] = [];
    let found = find(text, &none);
    assert_eq!(plain_text(text, &found, &Hers::one(3), &[]), text);
}

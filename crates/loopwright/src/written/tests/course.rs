//! Lines that depend on the ones before: numbers, even rows, rows again, sizes, and a line that fails on the way.

use super::told::{fault, told};
use super::*;

/// What each line comes to, worked in order from nothing; faults fail the test.
fn course(text: &str) -> Vec<String> {
    course_from(text, &Start::with(0))
}

fn course_from(text: &str, start: &Start) -> Vec<String> {
    let (pattern, faults) = read(text, 1, &[]);
    let faults: Vec<String> = faults.iter().map(|one| fault(text, one)).collect();
    assert_eq!(faults, Vec::<String>::new(), "{text}");
    let worked = work(&pattern, start, 0);
    worked.iter().map(|line| told(text, line)).collect()
}

#[test]
fn lines_are_worked_in_order_on_one_needle() {
    let text = "CO 40 sts.\n\
                Row 1 (RS): Knit.\n\
                Row 2: Purl.\n\
                Row 3: K1, ssk, k to last 3 sts, k2tog, k1.\n\
                Row 4: Purl. (38 sts)\n\
                Rep rows 3-4 5 times more. (28 sts)\n\
                BO all sts.";
    assert_eq!(course(text), ["40", "40", "40", "38", "38", "28", "0"]);
}

#[test]
fn rows_are_worked_by_their_numbers() {
    let text = "Rows 1 and 3 (RS): K2tog, k to end.\n\
                Rows 2 and 4: Purl.";
    assert_eq!(course_from(text, &Start::with(20)), ["18", "18"]);
    let text = "Row 1 (RS): K1, m1, k to end.\n\
                Row 3: K2, m1, k to end.\n\
                Row 5: K3, m1, k to end.\n\
                Even rows: Purl.\n\
                Rep rows 1-6 twice more.";
    // Three more in each six rows, worked three times.
    assert_eq!(course_from(text, &Start::with(20)), ["21", "22", "23", "23", "29"]);
    let text = "Row 1 (RS): K1, m1, k to end.\n\
                Row 2 and all WS rows: Purl.\n\
                Row 3: K2, m1, k to end.\n\
                Rep rows 1-4 once more.";
    let (pattern, _) = read(text, 1, &[]);
    let worked = work(&pattern, &Start::with(20), 0);
    assert_eq!(worked.iter().map(|line| line.rows).collect::<Vec<_>>(), [1, 2, 1, 1]);
    assert_eq!(worked[3].after, 24);
}

#[test]
fn rows_again_are_three_more_or_three_in_all() {
    let text = "Row 1: K1, k2tog, k to end.\nRow 2: Purl.\nRep rows 1-2 3 times.";
    let (pattern, _) = read(text, 1, &[]);
    let worked = work(&pattern, &Start::with(20), 0);
    assert_eq!(worked[2].after, 16);
    let other = worked[2].otherwise.expect("it may be meant otherwise");
    assert_eq!((other.doubt, other.is_usual, other.after), (Doubt::Times, false, 17));
    // Where only one of both is what the pattern says afterwards, that is said too.
    let text = "Row 1: K1, k2tog, k to end.\nRep row 1 3 times more. (16 sts)\nRep last 2 rows until 10 sts rem.";
    assert_eq!(course_from(text, &Start::with(20)), ["19", "16", "10"]);
}

#[test]
fn a_repeated_row_that_repeats_rows_itself_is_worked_with_that() {
    // Row 2 makes rows 1 and 2 twice more: 20 to 17. Rows 1 to 4 again: once more three fewer, or one without that.
    let text = "Row 1: K1, k2tog, k to end.\n\
                Row 2: Purl. Rep rows 1-2 twice more.\n\
                Row 3: Knit.\n\
                Row 4: Purl.\n\
                Rep rows 1-4 once more.";
    assert_eq!(course_from(text, &Start::with(20))[4], "14; or 16");
    // With the count that the pattern says the other way is taken, since only that one comes out.
    let said = format!("{text} (16 sts)");
    assert_eq!(course_from(&said, &Start::with(20))[4], "16; or says 16 is 14");
    // The last rows are those that were worked, each by itself.
    let last = text.replace("rows 1-4 once", "last 4 rows once");
    assert_eq!(course_from(&last, &Start::with(20))[4], "16");
}

#[test]
fn rows_that_repeat_each_other_come_to_an_end() {
    let text = "Row 1: Knit. Rep rows 1-2 9 times more.\n\
                Row 2: Purl. Rep rows 1-2 9 times more.\n\
                Even rows: K1, m1, k to end; rep rows 1-4 9 times.\n\
                Rep rows 1-4 9 times more.\n\
                Rep rows 1-4 until 1 st rem.";
    let (pattern, _) = read(text, 1, &[]);
    assert_eq!(work(&pattern, &Start::with(20), 0).len(), 5);
}

#[test]
fn rows_until_a_count_that_never_comes() {
    let text = "Row 1: Ssk, k to last 2 sts, k2tog.\nRep row 1 until 9 sts rem.";
    let worked = course_from(text, &Start::with(20));
    assert_eq!(worked, ["18", "never 9, 10 then 8 at Rep row 1 until 9 sts rem"]);
    let text = "Row 1: Knit.\nRep row 1 until 9 sts rem.";
    assert_eq!(
        course_from(text, &Start::with(20))[1],
        "never 9, 20 then 20 at Rep row 1 until 9 sts rem"
    );
    let text = "Row 1: Knit.\nRep rows 1-3 twice more.";
    assert_eq!(
        course_from(text, &Start::with(20))[1],
        "no row 2 at Rep rows 1-3 twice more"
    );
}

#[test]
fn a_row_that_fails_when_it_is_worked_again_is_pointed_at_in_its_own_text() {
    let text = "Row 1: K10, k2tog, k to last 12 sts, k2tog, k10.\nRep row 1 5 times more.";
    let (pattern, _) = read(text, 1, &[]);
    let worked = work(&pattern, &Start::with(30), 0);
    // 30, 28, 26, 24: then the middle is gone, and the last twelve stand on eleven or so.
    assert_eq!(
        worked[1].outcome,
        Outcome::ToLast {
            wanted: 12,
            leaves: 10,
            before: 10,
            repeats: 0
        }
    );
    assert_eq!((worked[1].row, worked[1].before), (4, 28));
    assert_eq!(worked[1].place.map(|place| place.text(text)), Some("k to last 12 sts"));
}

#[test]
fn a_raglan_keeps_its_markers_round_after_round() {
    let text = "CO 48 sts. Join in the round.\n\
                Set-up rnd: K16, pm, k8, pm, k16, pm, k8.\n\
                Rnd 1: *K1, m1l, k to 1 st before m, m1r, k1, sm; rep from * 3 more times. (56 sts)\n\
                Rnd 2: Knit.\n\
                Rep rnds 1-2 9 times more. (128 sts)";
    let worked = course(text);
    assert_eq!(worked, ["48", "48", "56", "56", "128"]);
}

#[test]
fn markers_are_in_the_mirror_on_the_way_back() {
    let text = "Row 1 (RS): K4, pm, k to end.\nRow 2: P to m, sm, p4.";
    assert_eq!(course_from(text, &Start::with(10)), ["10", "10"]);
    let text = "Row 1 (RS): K4, pm, k to end.\nRow 2: P4, sm, p to end.";
    assert_eq!(course_from(text, &Start::with(10)), ["10", "marker 2 on at sm"]);
}

#[test]
fn short_rows_leave_what_is_not_worked_where_it_is() {
    let text = "Row 1 (RS): K to last 5 sts, w&t.\n\
                Row 2: P10, w&t.\n\
                Row 3: K to end.\n\
                Row 4: Purl. (20 sts)";
    assert_eq!(course_from(text, &Start::with(20)), ["20", "20", "20", "20"]);
    let text = "Row 1 (RS): K to last 5 sts, turn.\nRow 2: P16, turn.";
    assert_eq!(course_from(text, &Start::with(20)), ["20", "1 short in time 1 at P"]);
}

#[test]
fn stitches_on_a_holder_come_back() {
    let text = "Row 1 (RS): K10, place next 8 sts on holder, k to end.\n\
                Row 2: Purl. (22 sts)\n\
                Row 3: K10, return held sts to needle, k to end. (30 sts)";
    let worked = course_from(text, &Start::with(30));
    assert_eq!(worked, ["22", "22", "30"]);
}

#[test]
fn a_line_that_fails_is_named_by_those_that_stand_on_it() {
    let text = "Row 1: K10.\nRow 2: Purl.\nRow 3: K2, blob, k to end. (24 sts)\nRow 4: P24.";
    let (pattern, faults) = read(text, 1, &[]);
    assert_eq!(
        faults.iter().map(|one| fault(text, one)).collect::<Vec<_>>(),
        ["unknown at blob"]
    );
    let worked = work(&pattern, &Start::with(11), 0);
    assert_eq!(
        worked[0].outcome,
        Outcome::LeftOver {
            stitches: 1,
            repeats: None
        }
    );
    assert_eq!((worked[1].stands_on, worked[1].outcome), (Some(0), Outcome::ComesOut));
    // The pattern says what there is behind the line that could not be read, so that the next one stands by itself.
    assert_eq!((worked[2].outcome, worked[2].stands_on), (Outcome::Unread, Some(0)));
    assert_eq!(
        (worked[3].before, worked[3].stands_on, worked[3].outcome),
        (24, None, Outcome::ComesOut)
    );
}

#[test]
fn a_word_of_her_own_is_worked_once_she_has_named_it() {
    let text = "K2, blob, k2, blob twice";
    let own = OwnStitch {
        word: "Blob".to_owned(),
        uses: 1,
        gives: 3,
    };
    let (pattern, faults) = read(text, 1, std::slice::from_ref(&own));
    assert_eq!(faults, []);
    assert_eq!(work(&pattern, &Start::with(7), 0)[0].after, 13);
    let (_, faults) = read(text, 1, &[]);
    let places: Vec<_> = faults.iter().map(|one| one.place.range()).collect();
    assert_eq!(places, [4..8, 14..18]);
}

#[test]
fn a_bracket_behind_a_number_is_sizes_or_a_repeat_and_says_which() {
    let text = "k2 (3), p1 (2), k4 (p1, k1) twice";
    let (pattern, faults) = read(text, 2, &[]);
    assert_eq!(faults, []);
    let taken: Vec<_> = pattern
        .brackets
        .iter()
        .map(|one| (one.place.text(text), one.is_sizes))
        .collect();
    assert_eq!(taken, [("(3)", true), ("(2)", true), ("(p1, k1)", false)]);
}

#[test]
fn a_decrease_over_a_marker_is_seen() {
    let (pattern, _) = read("k3, k2tog, k5", 1, &[]);
    let start = |marker| Start {
        markers: vec![marker],
        ..Start::with(10)
    };
    assert!(work(&pattern, &start(4), 0)[0].crosses_marker);
    assert!(!work(&pattern, &start(3), 0)[0].crosses_marker);
    assert!(!work(&pattern, &start(5), 0)[0].crosses_marker);
}

#[test]
fn the_nearest_line_that_comes_out_is_told_as_numbers() {
    let near = |text: &str, start: &Start| {
        let (pattern, faults) = read(text, 1, &[]);
        assert_eq!(faults, []);
        nearest(&pattern, start, 0, 0)
    };
    // Two too many: a repeat is four, so the plain edge takes them.
    let found = near("K2, (k2, p2) 5 times, k2", &Start::with(26));
    let edits: Vec<_> = found.iter().map(|near| near.way.clone()).collect();
    assert!(
        matches!(&edits[0], Way::Plain(edits) if (edits[0].was, edits[0].now) == (2, 4)),
        "{edits:?}"
    );
    assert!(edits.contains(&Way::Before(24)), "{edits:?}");
    // Four too many: one repeat more.
    let found = near("K2, (k2, p2) 5 times, k2", &Start::with(28));
    assert!(
        found
            .iter()
            .any(|near| matches!(&near.way, Way::Repeats(edit) if edit.now == 6)),
        "{found:?}"
    );
    // "To last 3 sts, k3" says three twice.
    let found = near("K2, *k2tog, yo; rep from * to last 3 sts, k3", &Start::with(22));
    let both = |near: &Near| matches!(&near.way, Way::Plain(edits) if edits.len() == 2 && edits[0].now == 4);
    assert!(found.iter().any(both), "{found:?}");
    assert!(
        found.iter().any(|near| near.way == Way::Before(21)) && found.iter().any(|near| near.way == Way::Before(23))
    );
    // The next line needs 18, and an evenly spaced row gets there.
    let (pattern, _) = read("K3, k2tog, k14\nP18", 1, &[]);
    let found = nearest(&pattern, &Start::with(20), 0, 0);
    let spaced = found.iter().find_map(|near| match &near.way {
        Way::Spaced(row) => Some((row.uses(), row.gives())),
        _ => None,
    });
    assert_eq!(spaced, Some((20, 18)), "{found:?}");
    assert_eq!(near("K10", &Start::with(10)), []);
}

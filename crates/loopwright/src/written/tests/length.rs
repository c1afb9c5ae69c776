//! Rows to a length, and words that say how and not how many: none of them changes the count.

use super::told::{fault, told};
use super::*;

/// What each line comes to, worked in order on twenty stitches; faults fail the test.
fn on_twenty(text: &str) -> Vec<String> {
    let (pattern, faults) = read(text, 3, &[]);
    let faults: Vec<String> = faults.iter().map(|one| fault(text, one)).collect();
    assert_eq!(faults, Vec::<String>::new(), "{text}");
    let worked = work(&pattern, &Start::with(20), 0);
    worked.iter().map(|line| told(text, line)).collect()
}

#[test]
fn rows_to_a_length_leave_the_count_as_it_is() {
    for line in [
        "Knit for 2 inches.",
        "Knit every rnd until hat measures 6 in from cast-on edge.",
        "Work in St st for 5 cm.",
        "Work 2½ inches in St st.",
        "Cont in garter stitch until piece measures 10 (11, 12) in from cast-on edge, ending with a WS row.",
        "Next row: P until work measures 7.5 cm from beg.",
        "Work even in patt until sleeve measures 5\" above cuff, end on a RS row. (20 sts)",
        "K for 2 inches more.",
    ] {
        assert_eq!(on_twenty(line), ["20"], "{line}");
    }
}

#[test]
fn repeats_to_a_length_are_told_where_they_leave_the_count_as_it_is() {
    let text = "Rnd 1: (K2, p2) to end.\nRep rnd 1 until piece measures 2 inches.\nRnd 2: Knit.";
    assert_eq!(on_twenty(text), ["20", "20", "20"]);
    let text = "Row 1: K2, m1, k to last 2 sts, k2tog.\nRow 2: Purl.\nRep rows 1-2 for 3 inches (20 sts).";
    assert_eq!(on_twenty(text)[2], "20");
    let text = "Row 1: K2tog, k to end.\nRep row 1 for 3 inches.\nRow 2: P17.";
    assert_eq!(on_twenty(text)[1], "by length at Rep row 1 for 3 inches");
    let (pattern, _) = read(text, 1, &[]);
    assert_eq!(work(&pattern, &Start::with(20), 0)[2].stands_on, Some(1));
}

#[test]
fn a_number_before_in_is_no_length() {
    assert_eq!(on_twenty("(K2 in patt, p2) to end"), ["20"]);
    let (_, faults) = read("K2 in next st", 1, &[]);
    assert!(!faults.is_empty());
}

#[test]
fn rows_of_a_fabric_are_as_many_stitches() {
    for line in [
        "Work 5 rows in St st.",
        "Work in St st for 10 rows.",
        "Work 4 rows in reverse stockinette stitch.",
        "Cont in patt as est for 6 rows.",
        "Work in seed st for 6 rows.",
        "Next row: K all.",
        "Next row: P all sts, slipping markers.",
        "Next row: Knit with MC.",
        "Next row: With RS facing, knit.",
        "Rows 2, 4 and 6: K the knit sts and p the purl sts.",
        "Next row: Purl the purl stitches, and knit the knit stitches.",
    ] {
        assert_eq!(on_twenty(line), ["20"], "{line}");
    }
}

#[test]
fn a_line_may_be_several_of_the_rows_that_came_last() {
    let text = "Next row: K1, k2tog, k to end.\nWork 3 rows even.\nRepeat the last 4 rows 4 more times. (15 sts)";
    assert_eq!(on_twenty(text), ["19", "19", "15"]);
    let text = "Knit 1 row.\nRepeat the last 4 rows 4 more times.";
    assert_eq!(on_twenty(text)[1], "no row 4 at Repeat the last 4 rows 4 more times");
}

#[test]
fn rows_until_a_count_are_told_in_other_words_too() {
    for until in [
        "30 sts rem",
        "there are 30 sts",
        "you have 30 sts on the needle, ending with a WS row",
    ] {
        let text = format!(
            "Row 1: K1, m1, k to end.\nRow 2 (and all even-numbered rows): Purl.\nRep rows 1 and 2 until {until}."
        );
        assert_eq!(on_twenty(&text), ["21", "21", "30"], "{until}");
    }
}

#[test]
fn all_are_bound_off_where_no_number_stands() {
    for line in [
        "BO.",
        "Bind off loosely.",
        "BO in patt",
        "Cast off knitwise",
        "BO loosely purlwise.",
    ] {
        assert_eq!(on_twenty(line), ["0"], "{line}");
    }
    let (_, faults) = read("BO, k10", 1, &[]);
    assert_eq!(faults.len(), 1);
}

#[test]
fn how_it_is_cast_on_is_no_matter_of_the_count() {
    let text = "With US 6 needles, cast on 96 sts using the long-tail method.\n\
                Join to work in the round, placing a marker for beginning of round.\n\
                Rnd 1: K96.";
    let (pattern, faults) = read(text, 1, &[]);
    assert_eq!(faults, []);
    let worked = work(&pattern, &Start::with(0), 0);
    assert_eq!(worked.iter().map(|line| line.after).collect::<Vec<_>>(), [96, 96, 96]);
    let text = "Using the long-tail method, CO 60 sts. Place marker and join for working in the round.\nRnd 1: K60.";
    let (pattern, faults) = read(text, 1, &[]);
    assert_eq!(faults, []);
    assert!(
        work(&pattern, &Start::with(0), 0)
            .iter()
            .all(|line| line.outcome == Outcome::ComesOut)
    );
    // The yarn in front is how a stitch is made, and not read over.
    let (_, faults) = read("Sl 1 with yarn in front", 1, &[]);
    assert!(!faults.is_empty());
}

#[test]
fn a_sentence_that_tells_of_rows_makes_those_behind_it_not_sure() {
    for sentence in ["Dec 1 st at each end of every 4th row.", "Repeat for the other side."] {
        let text = format!("CO 20.\n{sentence}\nRow 1: K20.");
        let answer = answer(&Question::about(text)).expect("it is answered");
        assert_eq!((answer.worked, answer.unread), (2, 1), "{sentence}");
        assert_eq!(answer.lines[2].sizes[0].stands_on, Some(1), "{sentence}");
    }
}

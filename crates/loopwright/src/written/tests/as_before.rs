//! Lines that are nothing but rows of before: worked row by row, and held to the rows that they name.

use super::told::{fault, told};
use super::*;

/// What each line comes to, worked in order on so many stitches; faults fail the test.
fn on(stitches: u32, text: &str) -> Vec<String> {
    let (pattern, faults) = read(text, 1, &[]);
    let faults: Vec<String> = faults.iter().map(|one| fault(text, one)).collect();
    assert_eq!(faults, Vec::<String>::new(), "{text}");
    let worked = work(&pattern, &Start::with(stitches), 0);
    worked.iter().map(|line| told(text, line)).collect()
}

/// Row 1 makes one stitch fewer, and row 2 none.
const TWO: &str = "Row 1 (RS): K1, k2tog, k to end.\nRow 2: Purl.\n";

fn after_two(line: &str) -> String {
    let text = format!("{TWO}{line}");
    on(20, &text).pop().unwrap_or_default()
}

#[test]
fn rows_that_are_named_are_as_many_as_are_worked() {
    let text = format!("{TWO}Rows 3-10: Rep rows 1-2 four times.\nRow 11: K15.");
    assert_eq!(on(20, &text), ["19", "19", "15", "15"]);
    let (pattern, _) = read(&text, 1, &[]);
    assert_eq!(work(&pattern, &Start::with(20), 0)[2].rows, 8);
}

#[test]
fn how_often_follows_from_the_rows_that_are_named() {
    assert_eq!(after_two("Rows 3-4: Rep rows 1-2."), "18");
    assert_eq!(after_two("Rows 3-8: Rep rows 1-2."), "16");
    assert_eq!(after_two("Rows 3 and 4: As rows 1 and 2."), "18");
    assert_eq!(after_two("Row 3: As row 1."), "18");
    assert_eq!(after_two("Row 3: Work as for row 1."), "18");
    assert_eq!(after_two("Row 3: Same as row 1."), "18");
    assert_eq!(after_two("Row 4: Rep row 2."), "19");
    assert_eq!(after_two("Next 4 rows: Rep last 2 rows."), "17");
    assert_eq!(after_two("Next 4 rows: Rep last 2 rows twice."), "17");
    assert_eq!(after_two("Next row: As row 1."), "18");
    assert_eq!(after_two("3rd row: As 1st row."), "18");
    assert_eq!(after_two("Rows 3-4: Rep 1st and 2nd rows."), "18");
}

#[test]
fn where_it_says_how_often_too_both_agree() {
    // Four times more, or five times with the first: both are rows 3 to 10.
    assert_eq!(after_two("Rows 3-10: Rep rows 1-2 4 times more."), "15");
    assert_eq!(after_two("Rows 3-10: Rep rows 1-2 5 times in all."), "15");
    assert_eq!(after_two("Rows 3-10: Rep rows 1-2 5 times."), "15");
    assert_eq!(
        after_two("Rows 3-8: Rep rows 1-2 5 times."),
        "names 6 rows makes 10 at Rep rows 1-2 5 times"
    );
    assert_eq!(
        after_two("Rows 3-9: Rep rows 1-2."),
        "names 7 rows makes 2 at Rep rows 1-2"
    );
    assert_eq!(
        after_two("Row 3: Rep rows 1-2 3 times more."),
        "names 1 rows makes 6 at Rep rows 1-2 3 times more"
    );
    // A line for one row without a number may go on as long as it likes.
    assert_eq!(after_two("Next row: Rep rows 1-2 3 times more."), "16");
}

#[test]
fn even_rows_are_all_as_one_of_them() {
    let text = format!("{TWO}Row 3: Knit.\nRow 5: Knit.\nEven rows: As row 1.\nRep rows 3-6 once more.");
    // Row 2 stands by itself; rows 4 and 6 are each one fewer, and so they are once more.
    assert_eq!(on(20, &text), ["19", "19", "19", "18", "17", "15"]);
}

#[test]
fn rows_in_between_do_not_take_the_numbers_away() {
    let text = format!("{TWO}Next row: Knit.\nRow 3: As row 1.\nRow 4: As row 2.");
    assert_eq!(on(20, &text), ["19", "19", "19", "18", "18"]);
    // Numbers from the start are rows of another piece.
    let text = format!("{TWO}Row 3: Knit.\nRow 1: Purl.\nRep rows 1-3 once more.");
    assert_eq!(on(20, &text)[4], "no row 2 at Rep rows 1-3 once more");
}

#[test]
fn the_count_that_it_says_is_that_behind_its_last_row() {
    assert_eq!(after_two("Rows 3-8: Rep rows 1-2. (16 sts)"), "16");
    assert_eq!(
        after_two("Rows 3-8: Rep rows 1-2. (17 sts)"),
        "says 17 is 16 at (17 sts)"
    );
    assert_eq!(after_two("Rows 3-8: Rep rows 1-2 until 16 sts rem."), "16");
    assert_eq!(
        after_two("Rows 3-8: Rep rows 1-2 until 14 sts rem."),
        "says 14 is 16 at Rep rows 1-2 until 14 sts rem"
    );
    // What row 2 says of its own count is said of the first time.
    let text = "Row 1: K1, k2tog, k to end.\nRow 2: Purl. (19 sts)\nRows 3-4: Rep rows 1-2.";
    assert_eq!(on(20, text), ["19", "19", "18"]);
}

#[test]
fn who_repeats_such_a_row_means_the_one_it_is_like() {
    let text = format!("{TWO}Row 3: As row 1.\nRow 4: As row 2.\nRow 5: As row 3.\nRep rows 3-5 twice more.");
    assert_eq!(on(20, &text), ["19", "19", "18", "18", "17", "13"]);
    let text = format!("{TWO}Rows 3-6: Rep rows 1-2.\nRows 7-10: Rep rows 3-6.\nRep last 4 rows once more.");
    assert_eq!(on(20, &text), ["19", "19", "17", "15", "13"]);
}

#[test]
fn a_row_that_is_not_there_or_not_worked_is_pointed_at() {
    assert_eq!(after_two("Row 3: As row 7."), "no row 7 at As row 7");
    assert_eq!(after_two("Row 3: As row 3."), "no row 3 at As row 3");
    assert_eq!(
        on(20, "Row 1: As row 2.\nRow 2: As row 1."),
        ["no row 2 at As row 2", "no row 1 at As row 1"]
    );
    assert_eq!(on(20, "Next 4 rows: Rep last 2 rows."), ["no row 2 at Rep last 2 rows"]);
}

#[test]
fn a_row_that_fails_is_pointed_at_where_it_is_written() {
    let text = "Row 1: K10, k2tog, (k2, p3) twice.\nRow 2: As row 1.";
    assert_eq!(on(22, text), ["21", "1 short in time 2 at p"]);
}

#[test]
fn a_row_like_one_that_is_not_read_is_not_read() {
    let text = "Row 1: K2, blob, k to end.\nRow 2: As row 1.\nRow 3: Knit.";
    let (pattern, _) = read(text, 1, &[]);
    let worked = work(&pattern, &Start::with(20), 0);
    assert_eq!(
        worked.iter().map(|line| line.outcome).collect::<Vec<_>>(),
        [Outcome::Unread, Outcome::Unread, Outcome::ComesOut]
    );
    let question = Question {
        stitches: vec![20],
        ..Question::about(text)
    };
    let answer = answer(&question).expect("it is answered");
    assert_eq!((answer.worked, answer.unread, answer.failing), (1, 2, 0));
}

#[test]
fn where_no_row_is_named_how_often_has_to_be_said() {
    let faults = |text: &str| {
        let (_, faults) = read(text, 1, &[]);
        faults.iter().map(|one| fault(text, one)).collect::<Vec<_>>()
    };
    assert_eq!(faults("Rep rows 1-2."), ["how often at Rep rows 1-2"]);
    assert_eq!(faults("Yoke: Rep rows 1-2."), ["how often at Rep rows 1-2"]);
    assert_eq!(faults("Even rows: As rows 2-4."), ["how often at As rows 2-4"]);
    assert_eq!(faults("Row 3: K2, as row 1."), ["how often at as row 1"]);
    assert_eq!(faults("Row 3: (as row 1) twice."), ["how often at as row 1"]);
    assert_eq!(faults("Row 3: K2. Rep rows 1-2 twice more."), Vec::<String>::new());
}

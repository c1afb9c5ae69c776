//! What is said of lines, word for word.

use super::*;
use loopwright::written::{Question, answer};

fn told(text: &str) -> (String, String) {
    let answer = answer(&Question::about(text)).unwrap();
    (headline(&answer, text), outcome(&answer).1)
}

#[test]
fn what_comes_out_is_said_of_all_lines() {
    let (line, comes) = told("CO 20 sts.\nRow 1: Knit.\nRow 2: Purl.");
    assert_eq!((line.as_str(), comes.as_str()), ("All 3 lines come out", "3 come out"));
    let (line, _) = told("Sizes: S (M)\nCO 20 (24) sts.\nRow 1: (K2, p2) to end.");
    assert_eq!(line, "Both lines come out in every size");
    assert_eq!(told("CO 20 sts").0, "The line comes out");
    // A line that is not read is none that comes out.
    let (line, comes) = told("CO 20 sts.\nRow 1: Wibble.");
    assert_eq!(line, "What could be read comes out");
    assert_eq!(comes, "1 comes out; 1 more is not read");
    assert_eq!(told("Wash it gently").0, "None of these lines could be read as a row");
}

#[test]
fn the_first_line_that_fails_is_named_with_its_place_and_size() {
    let (line, comes) = told("Sizes: S (M)\nCO 18 (17) sts.\nRow 7: K2tog 9 times.\nRow 8: Blobble.");
    assert_eq!(line, "Row 7 runs out 1 short in the 9th K2tog, in size M");
    assert_eq!(comes, "1 comes out; 1 more is not read");
    let (line, _) = told("CO 22 sts.\n*k2, p2; rep from * to end");
    assert_eq!(line, "Line 2 leaves 2 stitches over after the 5th repeat");
    let (line, _) = told("CO 22 sts.\nK2, *k2tog, yo; rep from * to last 3 sts, k3");
    assert_eq!(line, "Line 2 cannot stop at the last 3: one repeat more leaves 2");
    let (line, _) = told("CO 20 sts.\nRow 1: K2tog, k to end. (20 sts)");
    assert_eq!(line, "Row 1 says 20 stitches, and there are 19");
}

#[test]
fn both_counts_of_a_doubt_are_said() {
    let text = "CO 20 sts.\nRow 1: *k2tog, k3; rep from * 3 times";
    let answer = answer(&Question::about(text)).unwrap();
    let (line, worked) = (&answer.lines[1], &answer.lines[1].sizes[0]);
    let said = doubt(&answer, line, 1, 0, worked, &worked.otherwise.unwrap());
    assert_eq!(
        said,
        "Row 1: taken as so many times after the first, it comes out with 16 stitches. Taken as so many times in all, it leaves 5 stitches over after the 3rd repeat."
    );
}

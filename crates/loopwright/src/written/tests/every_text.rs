//! What holds for every text: nothing panics or goes on for ever, every sign is seen, and what is printed reads the same.

use super::*;
use proptest::prelude::*;
use proptest::sample::select;

/// Words and marks as patterns have them, put together anyhow.
const PIECES: &[&str] = &[
    "k",
    "k2",
    "p3",
    "K7",
    "k2tog",
    "ssk",
    "yo",
    "m1",
    "sl1",
    "psso",
    "kfb",
    "C4F",
    "2/2 RC",
    "(",
    ")",
    "[",
    "]",
    "{",
    "}",
    "*",
    "**",
    "rep from *",
    "rep from * to end",
    "to end",
    "to last 3 sts",
    "to m",
    "to 2 sts before m",
    "3 times",
    "twice",
    "3 more times",
    "once more",
    "in all",
    ",",
    ";",
    ".",
    ":",
    "-",
    "/",
    "4",
    "6 (7, 8)",
    "(8, 9)",
    "- (4, 6)",
    "BO 5",
    "CO 9",
    "BO all sts",
    "pm",
    "sm",
    "rm",
    "turn",
    "w&t",
    "join",
    "blob",
    "yf",
    "7½",
    "99999999999",
    "Row 1:",
    "Row 2 (WS):",
    "Rows 3-5:",
    "Rnd 1:",
    "Even rows:",
    "Rep rows 1-2 3 times",
    "rep last 2 rows twice more",
    "rep rows 1-2",
    "rep last row",
    "as row 1",
    "same as for rows 1 and 2",
    "work as",
    "for 2 inches",
    "until piece measures 5 (6) cm from cast-on edge",
    "in St st",
    "all",
    "using the long-tail method",
    "with",
    "slipping markers",
    "cont",
    "K the knit sts and p the purl sts",
    "rep last 4 rows until there are 9 sts",
    "every rnd",
    "in each st",
    "first st",
    "BO",
    "(and all even rows)",
    "Next 4 rows:",
    "\n",
    "(96 sts)",
    "96 sts",
    "sts",
    "but K2 the 5th time",
    "in next st",
    "tbl",
    "wyif",
    "place next 8 sts on holder",
    "return held sts to needle",
    "at beg of next 2 rows",
    "work even",
    "for 4 rows",
    "until 9 sts rem",
    "é",
    "ß",
    "’",
    "\u{2028}",
];

fn any_line() -> impl Strategy<Value = String> {
    prop::collection::vec(select(PIECES), 0..24).prop_map(|pieces| pieces.join(" "))
}

/// Every sign that can be seen lies in something that was read, in what was passed, or in what is pointed at; only marks
/// that part things may lie between.
fn unseen(text: &str, pattern: &Pattern, faults: &[Fault]) -> Vec<(usize, char)> {
    let mut places: Vec<Place> = faults.iter().map(|fault| fault.place).collect();
    for line in &pattern.lines {
        places.extend(line.label.iter().map(|label| label.place));
        places.extend(line.items.iter().map(|item| item.place));
        places.extend(&line.passed);
    }
    places.sort();
    let mut covered = vec![false; text.len()];
    for place in places {
        covered[place.range()].fill(true);
    }
    let is_mark = |sign: char| ",;.-= \n".contains(crate::units::clean::plain_form(sign));
    let is_plain = |sign: char| is_mark(sign) || crate::units::clean::unseen(sign);
    text.char_indices()
        .filter(|(at, sign)| !covered[*at] && !is_plain(*sign))
        .collect()
}

fn all_in_order(text: &str, pattern: &Pattern, faults: &[Fault]) {
    for place in faults.iter().map(|fault| fault.place) {
        assert!(text.get(place.range()).is_some(), "{place:?}");
    }
    for size in 0..pattern.sizes {
        for stitches in [0, 20] {
            let worked = work(pattern, &Start::with(stitches), size);
            assert_eq!(worked.len(), pattern.lines.len());
            for place in worked.iter().filter_map(|line| line.place) {
                assert!(text.get(place.range()).is_some(), "{place:?}");
            }
        }
    }
}

proptest! {
    #[test]
    fn words_put_together_anyhow(text in any_line(), sizes in 1_usize..4) {
        let (pattern, faults) = read(&text, sizes, &[]);
        prop_assert_eq!(unseen(&text, &pattern, &faults), vec![], "{}", text);
        all_in_order(&text, &pattern, &faults);
    }

    #[test]
    fn any_text_at_all(text in "\\PC*", sizes in 0_usize..4) {
        let (pattern, faults) = read(&text, sizes, &[]);
        prop_assert_eq!(unseen(&text, &pattern, &faults), vec![], "{}", text);
        all_in_order(&text, &pattern, &faults);
    }

    #[test]
    fn what_is_printed_reads_the_same(text in any_line(), sizes in 1_usize..4) {
        let (pattern, _) = read(&text, sizes, &[]);
        let whole = pattern.lines.iter().filter(|line| line.is_whole && !line.items.is_empty());
        for line in whole {
            let printed = line.to_string();
            let (again, faults) = read(&printed, sizes, &[]);
            prop_assert!(faults.is_empty(), "{}\n{}\n{:?}", text, printed, faults);
            prop_assert_eq!(again.lines.len(), 1, "{}", printed);
            prop_assert_eq!(again.lines[0].to_string(), printed.clone());
            prop_assert_eq!(without_places(&again.lines[0]), without_places(line), "{}", printed);
        }
    }

    #[test]
    fn whatever_is_nearest_does_come_out(text in any_line(), stitches in 0_u32..40) {
        let (pattern, _) = read(&text, 1, &[]);
        for at in 0..pattern.lines.len() {
            let _ = nearest(&pattern, &Start::with(stitches), 0, at);
        }
    }
}

/// The line as it is shown for debugging, with every place taken out of it.
fn without_places(line: &Line) -> String {
    let shown = format!(
        "{:?}",
        (
            &line.label.as_ref().map(|label| (&label.rows, label.every, label.side)),
            &line.items
        )
    );
    let mut parts = shown.split("Place {");
    let first = parts.next().unwrap_or_default().to_owned();
    parts.fold(first, |all, part| {
        all + part.split_once('}').map_or("", |(_, rest)| rest)
    })
}

/// A megabyte in one line is answered at once, whatever it is made of: nothing is looked through again and again.
#[test]
fn a_line_of_a_megabyte_is_answered() {
    let pieces = [
        "k1, ",
        "(",
        "[k2, ",
        "*",
        "*k1; ",
        "k",
        "9",
        "9,",
        "rep ",
        "rep rows 1, 2, ",
        "rep from * ",
        "Row 1, 2, ",
        "1st, 2nd, ",
        "k2 (",
        "6 (7, ",
        "(k1, p1) 3 times, ",
        "*k1, p1; rep from * 3 times, ",
        "blob ",
        "6/7/",
        "- ",
        "k to ",
        "to last ",
        ":",
        "’",
        "é",
        "\n",
        "yo, ",
        "place next ",
        "but ",
        "(k1) 9 times but k2 the 5th, ",
        "CO 5 at beg of ",
        "sl ",
        "2/2/",
        "Next ",
        "rep last 2 rows ",
        "k for 2, ",
        "k until p ",
        "k in rev ",
        "using k ",
        "slipping ",
        "Row 3: As row 2\n",
        "join ",
        "to 2 sts before ",
        "(((((((k1) 2 times) 2 times) 2 times) 2 times) 2 times) 2 times) 2 times, ",
        "rep rows 1-",
        " ",
        "\t",
        "\r",
        "(\n",
    ];
    for piece in pieces {
        let text = piece.repeat(1_000_000 / piece.len());
        let (pattern, faults) = read(&text, 3, &[]);
        let worked = work(&pattern, &Start::with(100), 0);
        assert_eq!(worked.len(), pattern.lines.len());
        assert!(faults.len() <= 2 * text.len());
    }
}

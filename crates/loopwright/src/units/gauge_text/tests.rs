//! Gauges as labels and patterns print them, and what is read.

use super::*;
use proptest::prelude::*;

const TEN: Length = Gauge::TEN_CM;
const FOUR: Length = Gauge::FOUR_INCHES;

/// What was read: stitches, rows and what names neither, in thousandths, and the span that is named.
type Seen = (Option<u32>, Option<u32>, Option<u32>, Option<Length>);

fn seen(text: &str) -> Result<Seen, Unreadable> {
    let read = read(text, TEN)?;
    let count = |counted: Option<Counted>| counted.map(|counted| counted.gauge.thousandths());
    let over = read.span.unwrap_or(TEN);
    let all = [read.stitches, read.rows, read.alone].into_iter().flatten();
    assert!(all.into_iter().all(|counted| counted.gauge.span() == over), "{text}");
    Ok((count(read.stitches), count(read.rows), count(read.alone), read.span))
}

#[test]
fn both_directions_and_the_span_are_read_as_labels_print_them() {
    let both = |stitches: u32, rows: u32, span| (Some(stitches * 500), Some(rows * 500), None, span);
    for (texts, wanted) in [
        (
            &[
                "22 x 30",
                "22x30",
                "22×30",
                "22 sts x 30 rows",
                "22 sts and 30 rows",
                "22 sts, 30 rows",
                "22 sts/30 rows",
                "22 sts 30 rows",
                "30 rows, 22 sts",
                "22 stitches and 30 rounds",
                "22 STS & 30 ROWS",
                "22 sts + 30 rows",
            ][..],
            both(44, 60, None),
        ),
        (
            &[
                "22 sts and 30 rows = 10 cm",
                "22 x 30 = 10 cm",
                "22 sts x 30 rows over 10 cm",
                "22x30/10cm",
                "22 sts and 30 rows in 10 cm",
                "22 sts and 30 rows to 10 cm/4 in",
                "22 sts and 30 rows to 4 in/10 cm",
                "22 sts x 30 rows = 10 x 10 cm",
                "22 sts x 30 rows = 10 cm x 10 cm",
                "10 cm = 22 sts x 30 rows",
                "10 x 10 cm = 22 sts and 30 rows",
                "Gauge: 22 sts and 30 rows = 10 cm in stockinette",
                "22 sts and 30 rows over 10 cm square",
                "22 sts and 30 rows = 4 in (10 cm)",
                "22 sts / 30 rows / 10 cm",
            ],
            both(44, 60, Some(TEN)),
        ),
        (
            &[
                "22 sts and 30 rows to 4 in",
                "22 sts and 30 rows to 4\"",
                "22 sts and 30 rows over 4 inches",
                "22 x 30 = 4 in",
                "22 sts and 30 rows = 4” x 4”",
                "4 in: 22 sts, 30 rows",
            ],
            both(44, 60, Some(FOUR)),
        ),
        (
            &[
                "20½ sts and 28 1/2 rows",
                "20.5 x 28.5",
                "20 1/2 sts x 28,5 rows",
                "20-21 sts and 28-29 rows",
            ],
            both(41, 57, None),
        ),
        (
            &[
                "22 sts = 10 cm",
                "22 sts per 10 cm",
                "22 sts/10cm",
                "22 sts in 10 cm",
                "10 cm: 22 sts",
            ],
            (Some(22_000), None, None, Some(TEN)),
        ),
        (
            &[
                "5.5 sts per inch",
                "5½ sts/inch",
                "5 1/2 sts to the inch",
                "5.5 sts in 1 in",
                "5.5 sts = 1\"",
            ],
            (Some(5_500), None, None, Some(Length::INCH)),
        ),
        (
            &["22 = 10 cm", "22 in 10 cm", "22/10 cm", "22 per 10 cm"],
            (None, None, Some(22_000), Some(TEN)),
        ),
        (
            &[
                "21-22",
                "21 - 22",
                "21–22",
                "21 to 22",
                "22-21",
                "21.5",
                "21 1/2",
                "21½",
                "21,5",
                "43/2".replace("43/2", "21 2/4").as_str(),
            ],
            (None, None, Some(21_500), None),
        ),
        (
            &["21 to 22 in 4 in", "21-22 to 4 in"],
            (None, None, Some(21_500), Some(FOUR)),
        ),
        (&["30 rows", "30 rnds"], (None, Some(30_000), None, None)),
        // As a mean of six spots is written.
        (&["20 5/6"], (None, None, Some(20_833), None)),
    ] {
        for text in texts {
            assert_eq!(seen(text), Ok(wanted), "{text}");
        }
    }
}

#[test]
fn a_range_is_its_middle_and_keeps_its_ends() {
    let counted = read("21-22 sts", TEN).unwrap().of(Direction::Stitches).unwrap();
    assert_eq!(counted.gauge.thousandths(), 21_500);
    assert_eq!(counted.range, Some((Gauge::of(21, TEN), Gauge::of(22, TEN))));
    assert_eq!(read("21", TEN).unwrap().of(Direction::Rows).unwrap().range, None);
    // Too far apart for a range: rows, more likely, and the second number would be lost.
    assert_eq!(seen("22-30"), Err(Unreadable::TwoNumbers));
}

#[test]
fn a_number_without_a_place_is_never_passed_over() {
    for text in [
        "22 30",
        "22/30",
        "22, 30",
        "22 sts and 30",
        "22 sts and 24 sts",
        "22 x 30 x 4",
        "22 x 30 rows 5",
        "22 sts = 10 cm on 4 mm needles",
        "22 sts = 10 cm = 4 in = 3",
        "22 sts in 10 x 8 cm",
        "21/20",
        "11/2",
        "10 cm = 22 sts = 4 in",
        "20-21-22",
    ] {
        assert_eq!(seen(text), Err(Unreadable::TwoNumbers), "{text}");
    }
    for text in [
        "22 x",
        "22 sts and",
        "22 sts =",
        "22 sts to",
        "22 sts and 30 rows to",
        "21-",
        "22 sts over",
        "21 in",
    ] {
        assert_eq!(seen(text), Err(Unreadable::Unfinished), "{text}");
    }
    assert_eq!(seen("22 sts = 15"), Err(Unreadable::UnknownUnit));
    assert_eq!(seen("many"), Err(Unreadable::NotANumber));
    assert!(matches!(seen("22 cm"), Err(Unreadable::WrongKind { .. })));
    assert!(matches!(seen("22 x 500"), Err(Unreadable::TooLarge { .. })));
    assert!(matches!(seen("22 sts in 2 m"), Err(Unreadable::TooLarge { .. })));
}

#[test]
fn a_field_takes_its_own_direction() {
    let label = read("20 sts and 28 rows", TEN).unwrap();
    assert_eq!(label.gauge(Direction::Stitches), Ok(Gauge::of(20, TEN)));
    assert_eq!(label.gauge(Direction::Rows), Ok(Gauge::of(28, TEN)));
    assert_eq!(label.only(), Err(Unreadable::TwoNumbers));
    // What names nothing is what its field asks for, and rows are no stitches.
    assert_eq!(read("28", TEN).unwrap().gauge(Direction::Rows), Ok(Gauge::of(28, TEN)));
    let rows = read("28 rows", TEN).unwrap();
    assert!(matches!(
        rows.gauge(Direction::Stitches),
        Err(Unreadable::WrongKind { .. })
    ));
}

#[test]
fn several_spots_and_a_label_are_told_apart() {
    let several = |text| {
        let read = read_several(text, TEN, Direction::Stitches);
        read.map(|gauges| gauges.into_iter().map(Gauge::thousandths).collect::<Vec<_>>())
    };
    assert_eq!(several("20 sts and 28 rows"), Ok(vec![20_000]));
    assert_eq!(several("22 sts, 30 rows"), Ok(vec![22_000]));
    assert_eq!(several("22 x 30"), Ok(vec![22_000]));
    assert_eq!(several("21-22"), Ok(vec![21_500]));
    assert_eq!(several("21-22, 21 and 20½"), Ok(vec![21_500, 21_000, 20_500]));
    assert_eq!(several("21 and 22"), Ok(vec![21_000, 22_000]));
    assert_eq!(several("21 sts, 22 sts"), Ok(vec![21_000, 22_000]));
    assert!(several("28 rows, 30 rows").is_err());
}

proptest! {
    #[test]
    fn no_text_makes_it_panic(text in "[-0-9 stsrowandxinm./½,=()\"]{0,18}", any: String) {
        for text in [text, any] {
            let _ = (read(&text, TEN), read_several(&text, TEN, Direction::Rows));
        }
    }

    #[test]
    fn what_is_printed_is_read(
        stitches in 1..=400_u32,
        rows in 1..=400_u32,
        over in prop::sample::select(&["10 cm", "4 in", "15 cm"][..]),
    ) {
        let text = format!("{stitches} sts and {rows} rows over {over}");
        let label = read(&text, Length::INCH).unwrap();
        prop_assert_eq!(label.gauge(Direction::Stitches).map(Gauge::thousandths), Ok(stitches * 1_000));
        prop_assert_eq!(label.gauge(Direction::Rows).map(Gauge::thousandths), Ok(rows * 1_000));
    }
}

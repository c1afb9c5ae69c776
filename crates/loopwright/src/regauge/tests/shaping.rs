//! Shaping at another gauge: ends and rows are converted, and shared out anew.

use super::*;

#[test]
fn shaping_is_shared_out_anew_and_not_multiplied() {
    let made = shaped(&sleeve());
    // 66 to 46 in 60 rows: ten times, not nine, in rows 5, 11, .. 53, 59.
    assert_eq!((made.from, made.to, made.rows, made.times), (66, 46, 60, 10));
    let after = work(&made);
    assert_eq!(after.last(), Some(&46));
    assert_eq!(shaping_rows(&made), [5, 11, 17, 23, 29, 35, 41, 47, 53, 59]);
    // The obvious conversion keeps nine times and multiplies the rate: every 6.4th row, so 6, ends at 48 stitches,
    // which at 22 in 10 cm is 21.8 cm for the 21 cm of the pattern.
    let obvious = made.from - 9 * 2;
    assert_eq!(obvious, 48);
    assert_ne!(obvious, made.to);
    // An odd number of rows or of stitches away has nothing to stand on.
    let left = made.schedule.unwrap().left;
    assert_eq!((made.from % 2, made.rows % 2, left), (0, 0, 1));
}

#[test]
fn right_side_shaping_stays_on_the_right_side() {
    let mut question = sleeve();
    question.shaping = question.shaping.map(|shaping| Shaping {
        right_side_only: true,
        ..shaping
    });
    let made = shaped(&question);
    // All odd. Every 6th row counted from the first is all even, and so on the wrong side.
    assert_eq!(shaping_rows(&made), [5, 11, 17, 23, 29, 35, 41, 47, 53, 59]);
    assert_eq!(work(&made).last(), Some(&46));
}

#[test]
fn increase_lines_keep_their_multiple() {
    let shaping = Shaping {
        from: 96,
        to: 192,
        rows: 40,
        each: 8,
        right_side_only: false,
    };
    let question = Question {
        shaping: Some(shaping),
        multiple: Multiple { of: 8, plus: 0 },
        ..counts(&[])
    };
    let made = shaped(&question);
    // 105.6 and 211.2: 104 and 208, thirteen times 8. The obvious ends are 106 and 211, which 8 lines do not reach.
    assert_eq!((made.from, made.to, made.times), (104, 208, 13));
    assert_eq!(work(&made).last(), Some(&208));
}

#[test]
fn ends_of_shaping_are_multiples_where_the_pattern_has_them() {
    // 96 to 64 by twos, both multiples of 8: 105.6 and 70.4.
    let shaping = Shaping {
        from: 96,
        to: 64,
        rows: 60,
        each: 2,
        right_side_only: false,
    };
    let question = Question {
        shaping: Some(shaping),
        multiple: Multiple { of: 8, plus: 0 },
        ..counts(&[])
    };
    let made = shaped(&question);
    assert_eq!((made.from, made.to, made.times), (104, 72, 16));
    // 95 to 64: the start is none and only stays odd, 104.5 to 105 and by ones to 72.
    let odd = Shaping {
        from: 95,
        each: 1,
        ..shaping
    };
    let made = shaped(&Question {
        shaping: Some(odd),
        parity: true,
        ..question
    });
    assert_eq!((made.from, made.to), (105, 72));
    assert_eq!(work(&made).last(), Some(&72));
}

#[test]
fn shaping_that_has_no_room_says_how_many_rows_it_needs() {
    let shaping = Shaping {
        from: 100,
        to: 40,
        rows: 31,
        each: 2,
        right_side_only: false,
    };
    let question = Question {
        shaping: Some(shaping),
        ..counts(&[])
    };
    let tight = Question {
        own_rows: Some(ten(28)),
        ..question.clone()
    };
    let made = shaped(&tight);
    assert_eq!((made.times, made.rows, made.needs, made.schedule), (33, 31, 34, None));
    let odd = Question {
        shaping: Some(Shaping { to: 41, ..shaping }),
        ..question
    };
    let kind = Kind::NoExact {
        below: Some(40),
        above: Some(42),
    };
    assert_eq!(answer(&odd).unwrap_err(), [Problem::new(Name::To, kind)]);
}

#[test]
fn a_shaped_piece_measures_what_its_counts_measure() {
    let shaped = shaped(&sleeve());
    let mm = |nm: i64| Length::from_nm(nm);
    assert_eq!((shaped.was.from, shaped.was.to), (60, 42));
    assert_eq!((shaped.becomes.from, shaped.becomes.rows), (shaped.from, shaped.rows));
    // 60 at 20 are 30 cm, and 66 at 22 are as well.
    assert_eq!(
        (shaped.was.lower, shaped.becomes.lower),
        (mm(300_000_000), mm(300_000_000))
    );
    assert_eq!(
        (shaped.was.upper, shaped.was.height),
        (mm(210_000_000), mm(200_000_000))
    );
}

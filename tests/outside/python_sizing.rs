//! The sums of choosing a size, worked by a general-purpose library: Python's `fractions` and `decimal`.
//!
//! Source: Python 3.11, standard library. The inputs and outputs below were recorded from it on 2026-11-25 with the
//! command in each comment; run it again to see them. Girths and shares must agree exactly.

use crate::marks::{Marked, value};
use loopwright::sizing::{Ask, Gauges, Listed, PerMille, Question, Size, Span, answer, read_sizes, with_stitches};
use loopwright::tables::Certainty;
use loopwright::units::{Gauge, Length, LengthUnit};

/// How sure each value is that is checked here.
pub const MARKS: &[Marked] = &[value("printed tables", Certainty::Computed)];

fn gauge(count: &str, span: &str) -> Gauge {
    Gauge::read(count, length(span)).expect(count)
}

fn length(cm: &str) -> Length {
    let wanted = loopwright::units::parse::Wanted::any(LengthUnit::Cm);
    loopwright::units::parse::read(cm, &wanted).expect(cm).value
}

/// `python3 -c "from fractions import Fraction as F; print(round(F(204)*F('10')/F('21')*10**7))"`, the same for each row:
/// stitches, gauge, its span in centimetres; the girth in nanometres.
const GIRTHS: [(u32, &str, &str, i64); 6] = [
    (204, "21", "10", 971_428_571),
    (216, "22.5", "10", 960_000_000),
    (234, "21", "10.16", 1_132_114_286),
    (187, "18.25", "10.16", 1_041_052_055),
    (160, "17", "10", 941_176_471),
    (301, "30.5", "10", 986_885_246),
];

#[test]
fn girths_from_stitches() {
    for (stitches, count, span, nm) in GIRTHS {
        let sizes = with_stitches(read_sizes("98", LengthUnit::Cm).unwrap(), &stitches.to_string());
        let found = answer(&Question {
            listed: Some(Listed::Garment),
            own: Some(Gauges {
                stitches: gauge(count, span),
                rows: None,
            }),
            ..Question::about(length("91"), sizes.unwrap())
        })
        .unwrap();
        assert_eq!(found.ranked[0].garment, Some(Length::from_nm(nm)), "{stitches}");
    }
}

/// `python3 -c "from fractions import Fraction as F; from math import floor; b,g=F('91'),F('97');
/// print((g-b)*10**7, floor((g-b)/b*1000+F(1,2)))"`, the same for each row: body and garment in centimetres; the ease in
/// nanometres and in thousandths of the body.
const SHARES: [(&str, &str, i64, i32); 6] = [
    ("91", "97", 60_000_000, 66),
    ("91", "88.9", -21_000_000, -23),
    ("100", "90", -100_000_000, -100),
    ("99.9", "89.9", -100_000_000, -100),
    ("92.3", "103", 107_000_000, 116),
    ("118.11", "101.6", -165_100_000, -140),
];

#[test]
fn ease_and_its_share() {
    for (body, garment, nm, thousandths) in SHARES {
        let sizes = vec![Size::new("", Span::one(length(garment)))];
        let found = answer(&Question {
            listed: Some(Listed::Garment),
            ask: Ask::Ease(Length::ZERO),
            ..Question::about(length(body), sizes)
        })
        .unwrap();
        assert_eq!(
            (found.ranked[0].ease, found.ranked[0].share),
            (Some(Length::from_nm(nm)), PerMille(thousandths)),
            "{body} {garment}"
        );
    }
}

/// `python3 -c "from fractions import Fraction as F; from decimal import Decimal as D; from math import floor;
/// q=lambda x: F((D(x.numerator)/D(x.denominator)).sqrt()); m=lambda x: floor((x-1)*1000+F(1,2));
/// s,r=F('23.1')/F('21'),F('28')/F('28'); print(m(s),m(r),m(q(s*r)),m(q(r/s)),round(22*10**7/r))"`, the same for each row:
/// the pattern's stitches and rows, her own; in thousandths more stitches, more rows, more yarn for the same measures,
/// more yarn for the same size; an armhole of 22 cm by the pattern's rows, in nanometres.
const MOVES: [([&str; 4], [i32; 4], i64); 4] = [
    (["21", "28", "23.1", "28"], [100, 0, 49, -47], 220_000_000),
    (["21", "28", "22.5", "26.4"], [71, -57, 5, -62], 233_333_333),
    (["18", "24", "17", "23"], [-56, -42, -49, 7], 229_565_217),
    (["21", "28", "20", "30"], [-48, 71, 10, 61], 205_333_333),
];

#[test]
fn what_a_gauge_moves() {
    for (counts, thousandths, armhole) in MOVES {
        let [ps, pr, os, or] = counts.map(|count| gauge(count, "10"));
        let found = answer(&Question {
            listed: Some(Listed::Garment),
            pattern: Some(Gauges {
                stitches: ps,
                rows: Some(pr),
            }),
            own: Some(Gauges {
                stitches: os,
                rows: Some(or),
            }),
            ..Question::about(length("91"), read_sizes("97", LengthUnit::Cm).unwrap())
        })
        .unwrap();
        let moves = found.moves.unwrap();
        let [stitches, rows, same_measure, same_size] = thousandths.map(PerMille);
        assert_eq!((moves.stitches, moves.rows), (stitches, Some(rows)), "{counts:?}");
        assert_eq!(moves.yarn_same_measure, same_measure, "{counts:?}");
        assert_eq!(moves.yarn_same_size, same_size, "{counts:?}");
        assert_eq!(moves.armhole_by_rows, Some(Length::from_nm(armhole)), "{counts:?}");
    }
}

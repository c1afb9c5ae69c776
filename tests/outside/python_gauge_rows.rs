//! Means of counts, washing, and rows to a length, worked out again in another language by its standard library.
//!
//! Source: CPython 3.11.7, modules `fractions`, `decimal` and `statistics`: the mean of stitches in a width is the
//! harmonic mean weighed by the stitches counted. Each table below was printed by the script above it, run as
//! `python3 -` with the script as input, and pasted. All values are computed. The rules (half a stitch, the root of the
//! number of counts, ties to the smaller) are our own and are not checked by this.

use crate::marks::{Marked, value};
use loopwright::gauge;
use loopwright::rows::{self, Ask};
use loopwright::tables::Certainty;
use loopwright::units::{Gauge, Length};

/// How sure each value is that is checked here.
pub const MARKS: &[Marked] = &[value("printed tables", Certainty::Computed)];

/// Counts in thousandths over nanometres; their mean in thousandths over 10 cm; a metre at the least and the most.
type Mean = (&'static [(u32, i64)], u32, [i64; 2]);

/// Length; thousandths of rows over a span; rows of a repeat and the fewest rows there can be; the rows; their length.
type Rows = ((i64, u32, i64), (u32, u32), u32, i64);

/// Rows in 10 cm before and after, in thousandths; a length; how much longer it becomes, in per mille; what to knit for
/// it; what it becomes.
type Wash = ((u32, u32), i64, i32, i64, i64);

// from decimal import Decimal as D, getcontext
// from fractions import Fraction as F
// from math import floor
// from statistics import harmonic_mean
// getcontext().prec = 50
// CM, IN = 10**7, 25400000
// near = lambda x: floor(F(x) + F(1, 2))
// def mean(*counts):
//     per_10_cm = harmonic_mean([F(s)*10*CM/span for s, span in counts], weights=[F(s) for s, _ in counts])
//     half = F(D(len(counts)).sqrt()) / 2
//     width, total = 100*CM, sum(F(s) for s, _ in counts)
//     text = ', '.join(f'({int(F(s)*1000)}, {span})' for s, span in counts)
//     ends = f'[{near(width*total/(total + half))}, {near(width*total/(total - half))}]'
//     print(f'    (&[{text}], {near(per_10_cm*1000)}, {ends}),')
// mean(('21', 10*CM))
// mean(('20.5', 4*IN))
// mean(('21', 10*CM), ('20.5', 10*CM))
// mean(('21', 10*CM), ('10', 5*CM), ('21', 4*IN))
// mean(('5.25', IN), ('5', IN), ('5.5', IN), ('5.25', IN))
// mean(('31.5', 15*CM), ('22', 10*CM), ('43', 8*IN))
#[rustfmt::skip]
const MEANS: [Mean; 6] = [
    (&[(21000, 100000000)], 21000, [976744186, 1024390244]),
    (&[(20500, 101600000)], 20177, [976190476, 1025000000]),
    (&[(21000, 100000000), (20500, 100000000)], 20750, [983246737, 1017334068]),
    (&[(21000, 100000000), (10000, 50000000), (21000, 101600000)], 20668, [983618488, 1016936399]),
    (&[(5250, 25400000), (5000, 25400000), (5500, 25400000), (5250, 25400000)], 20669, [954545455, 1050000000]),
    (&[(31500, 150000000), (22000, 100000000), (43000, 203200000)], 21293, [991105466, 1009055625]),
];

// from fractions import Fraction as F
// from math import floor
// CM, IN = 10**7, 25400000
// def row(length, rows, span, of, first):
//     ideal = F(length) * F(rows) / span
//     n = min((first + k*of for k in range(4000)), key=lambda n: (abs(n - ideal), n))
//     print(f'    (({length}, {int(F(rows)*1000)}, {span}), ({of}, {first}), {n}, {floor(n*F(span)/F(rows) + F(1, 2))}),')
// for length in (40*CM, 22*IN, 1524*10**5):
//     for rows, span in (('28', 10*CM), ('28', 4*IN), ('30.5', 10*CM), ('7.25', IN)):
//         for of, first in ((1, 1), (2, 2), (12, 2), (12, 9)):
//             row(length, rows, span, of, first)
#[rustfmt::skip]
const ROWS: [Rows; 48] = [
    ((400000000, 28000, 100000000), (1, 1), 112, 400000000),
    ((400000000, 28000, 100000000), (2, 2), 112, 400000000),
    ((400000000, 28000, 100000000), (12, 2), 110, 392857143),
    ((400000000, 28000, 100000000), (12, 9), 117, 417857143),
    ((400000000, 28000, 101600000), (1, 1), 110, 399142857),
    ((400000000, 28000, 101600000), (2, 2), 110, 399142857),
    ((400000000, 28000, 101600000), (12, 2), 110, 399142857),
    ((400000000, 28000, 101600000), (12, 9), 105, 381000000),
    ((400000000, 30500, 100000000), (1, 1), 122, 400000000),
    ((400000000, 30500, 100000000), (2, 2), 122, 400000000),
    ((400000000, 30500, 100000000), (12, 2), 122, 400000000),
    ((400000000, 30500, 100000000), (12, 9), 117, 383606557),
    ((400000000, 7250, 25400000), (1, 1), 114, 399393103),
    ((400000000, 7250, 25400000), (2, 2), 114, 399393103),
    ((400000000, 7250, 25400000), (12, 2), 110, 385379310),
    ((400000000, 7250, 25400000), (12, 9), 117, 409903448),
    ((558800000, 28000, 100000000), (1, 1), 156, 557142857),
    ((558800000, 28000, 100000000), (2, 2), 156, 557142857),
    ((558800000, 28000, 100000000), (12, 2), 158, 564285714),
    ((558800000, 28000, 100000000), (12, 9), 153, 546428571),
    ((558800000, 28000, 101600000), (1, 1), 154, 558800000),
    ((558800000, 28000, 101600000), (2, 2), 154, 558800000),
    ((558800000, 28000, 101600000), (12, 2), 158, 573314286),
    ((558800000, 28000, 101600000), (12, 9), 153, 555171429),
    ((558800000, 30500, 100000000), (1, 1), 170, 557377049),
    ((558800000, 30500, 100000000), (2, 2), 170, 557377049),
    ((558800000, 30500, 100000000), (12, 2), 170, 557377049),
    ((558800000, 30500, 100000000), (12, 9), 165, 540983607),
    ((558800000, 7250, 25400000), (1, 1), 159, 557048276),
    ((558800000, 7250, 25400000), (2, 2), 160, 560551724),
    ((558800000, 7250, 25400000), (12, 2), 158, 553544828),
    ((558800000, 7250, 25400000), (12, 9), 165, 578068966),
    ((152400000, 28000, 100000000), (1, 1), 43, 153571429),
    ((152400000, 28000, 100000000), (2, 2), 42, 150000000),
    ((152400000, 28000, 100000000), (12, 2), 38, 135714286),
    ((152400000, 28000, 100000000), (12, 9), 45, 160714286),
    ((152400000, 28000, 101600000), (1, 1), 42, 152400000),
    ((152400000, 28000, 101600000), (2, 2), 42, 152400000),
    ((152400000, 28000, 101600000), (12, 2), 38, 137885714),
    ((152400000, 28000, 101600000), (12, 9), 45, 163285714),
    ((152400000, 30500, 100000000), (1, 1), 46, 150819672),
    ((152400000, 30500, 100000000), (2, 2), 46, 150819672),
    ((152400000, 30500, 100000000), (12, 2), 50, 163934426),
    ((152400000, 30500, 100000000), (12, 9), 45, 147540984),
    ((152400000, 7250, 25400000), (1, 1), 43, 150648276),
    ((152400000, 7250, 25400000), (2, 2), 44, 154151724),
    ((152400000, 7250, 25400000), (12, 2), 38, 133131034),
    ((152400000, 7250, 25400000), (12, 9), 45, 157655172),
];

// from fractions import Fraction as F
// from math import floor
// near = lambda x: floor(F(x) + F(1, 2))
// for before, after, length in (('30', '28', 500), ('28', '30', 500), ('21', '20.5', 1000), ('33.25', '31', 635)):
//     nm, stretch = length*10**6, F(before)/F(after)
//     ours = f'({int(F(before)*1000)}, {int(F(after)*1000)}), {nm}'
//     print(f'    ({ours}, {near(1000*(stretch - 1))}, {near(nm/stretch)}, {near(nm*stretch)}),')
#[rustfmt::skip]
const WASHES: [Wash; 4] = [
    ((30000, 28000), 500000000, 71, 466666667, 535714286),
    ((28000, 30000), 500000000, -67, 535714286, 466666667),
    ((21000, 20500), 1000000000, 24, 976190476, 1024390244),
    ((33250, 31000), 635000000, 73, 592030075, 681088710),
];

fn gauge(thousandths: u32, span: i64) -> Gauge {
    Gauge::new(thousandths, Length::from_nm(span)).expect("above zero")
}

#[test]
fn means_of_counts_over_several_spans() {
    for (counts, ten_cm, [least, most]) in MEANS {
        let counts: Vec<Gauge> = counts.iter().map(|(count, span)| gauge(*count, *span)).collect();
        let question = gauge::Question {
            stitches: counts,
            ..gauge::Question::about(Gauge::of(1, Gauge::TEN_CM))
        };
        let found = gauge::answer(&question).expect("within bounds").stitches;
        let ours = gauge::over(found.all, Gauge::TEN_CM);
        assert_eq!(ours, gauge(ten_cm, Gauge::TEN_CM.to_nm()), "{question:?}");
        let reading = found.reading[0];
        let ours = [reading.least, reading.most].map(Length::to_nm);
        // The last spots are uneven, and their range is at least as wide.
        if found.uneven {
            assert!(ours[0] <= least && most <= ours[1], "{question:?}");
        } else {
            assert_eq!(ours, [least, most], "{question:?}");
        }
    }
}

#[test]
fn rows_to_a_length() {
    for ((length, thousandths, span), (of, first), count, long) in ROWS {
        let ask = Ask::Length(Length::from_nm(length));
        let (set_up, end_after) = if of == 12 { (2, first - 2) } else { (0, 0) };
        let question = rows::Question {
            repeat: of,
            set_up,
            end_after,
            ..rows::Question::about(ask, gauge(thousandths, span))
        };
        let found = rows::answer(&question).expect("within bounds").pick;
        assert_eq!((found.rows, found.length.to_nm()), (count, long), "{question:?}");
    }
}

#[test]
fn what_washing_does() {
    for ((before, after), length, permille, knit, becomes) in WASHES {
        let ten_cm = |thousandths| vec![gauge(thousandths, Gauge::TEN_CM.to_nm())];
        let question = gauge::Question {
            rows: ten_cm(after),
            rows_unwashed: ten_cm(before),
            length: Length::from_nm(length),
            ..gauge::Question::about(Gauge::of(20, Gauge::TEN_CM))
        };
        let rows = gauge::answer(&question).expect("within bounds").rows.expect("counted");
        let wash = rows.wash.expect("both were counted");
        let ours = (wash.permille, wash.knit.to_nm(), wash.becomes.to_nm());
        assert_eq!(ours, (permille, knit, becomes), "{question:?}");
    }
}

//! Flat circles, cones and ruffles, worked out again in another language by its standard library.
//!
//! Source: the geometry of circle and frustum (girth 2 pi r; side squared is drop squared and widening squared), and
//! CPython 3.11.7, module `decimal`, with 50 digits. The table was printed by the script above it, run as `python3 -`
//! with the script as input, and pasted. Pi is from memory; everything else is computed.

use crate::marks::{Marked, value};
use loopwright::flare::{Hem, Question, answer};
use loopwright::tables::Certainty;
use loopwright::units::{Gauge, Length};

/// How sure each value is that is checked here.
pub const MARKS: &[Marked] = &[
    value("printed tables", Certainty::Computed),
    value("pi", Certainty::FromMemory),
];

/// Neck, hem and rounds; stitches and rows in 10 cm; flat rate in thousandths, flat gain, then in nanometres girth and
/// radius of the hem, slant and drop, and fullness in thousandths.
type Row = ((u32, u32, u32), (u32, u32), [i64; 7]);

// from decimal import Decimal as D, getcontext, ROUND_HALF_UP
// getcontext().prec = 50
// PI = D('3.14159265358979323846264338327950288419716939937511')
// CM = D(10**7)
// whole = lambda x: int(x.to_integral_value(ROUND_HALF_UP))
// def row(neck, hem, rounds, sts, rows):
//     w, h = 10*CM/sts, 10*CM/rows
//     rate = 2*PI*h/w
//     r0, r1, s = neck*w/(2*PI), hem*w/(2*PI), rounds*h
//     r = min(r1, r0 + s)
//     drop = (s*s - (r1-r0)**2).sqrt() if r1 - r0 < s else D(0)
//     f = [whole(rate*1000), whole(rate*rounds), whole(hem*w), whole(r), whole(s), whole(drop), whole(r1/r*1000)]
//     print(f'    (({neck}, {hem}, {rounds}), ({sts}, {rows}), {f}),')
// for sts, rows in ((21, 28), (21, 42), (22, 30), (20, 28), (24, 24), (10, 14)):
//     for neck, hem, rounds in ((96, 96, 40), (96, 176, 60), (80, 200, 50), (8, 208, 60), (100, 600, 70), (72, 800, 60)):
//         row(neck, hem, rounds, sts, rows)
#[rustfmt::skip]
const FLARES: [Row; 36] = [
    ((96, 96, 40), (21, 28), [4712, 188, 457142857, 72756545, 142857143, 142857143, 1000]),
    ((96, 176, 60), (21, 28), [4712, 283, 838095238, 133387000, 214285714, 205529354, 1000]),
    ((80, 200, 50), (21, 28), [4712, 236, 952380952, 151576136, 178571429, 153677058, 1000]),
    ((8, 208, 60), (21, 28), [4712, 283, 990476190, 157639182, 214285714, 151469608, 1000]),
    ((100, 600, 70), (21, 28), [4712, 330, 2857142857, 325788068, 250000000, 0, 1396]),
    ((72, 800, 60), (21, 28), [4712, 283, 3809523810, 268853123, 214285714, 0, 2255]),
    ((96, 96, 40), (21, 42), [3142, 126, 457142857, 72756545, 95238095, 95238095, 1000]),
    ((96, 176, 60), (21, 42), [3142, 188, 838095238, 133387000, 142857143, 129352662, 1000]),
    ((80, 200, 50), (21, 42), [3142, 157, 952380952, 151576136, 119047619, 76819389, 1000]),
    ((8, 208, 60), (21, 42), [3142, 188, 990476190, 148920188, 142857143, 0, 1059]),
    ((100, 600, 70), (21, 42), [3142, 220, 2857142857, 242454735, 166666667, 0, 1876]),
    ((72, 800, 60), (21, 42), [3142, 188, 3809523810, 197424552, 142857143, 0, 3071]),
    ((96, 96, 40), (22, 30), [4608, 184, 436363636, 69449430, 133333333, 133333333, 1000]),
    ((96, 176, 60), (22, 30), [4608, 276, 800000000, 127323954, 200000000, 191443306, 1000]),
    ((80, 200, 50), (22, 30), [4608, 230, 909090909, 144686312, 166666667, 142272595, 1000]),
    ((8, 208, 60), (22, 30), [4608, 276, 945454545, 150473764, 200000000, 138079221, 1000]),
    ((100, 600, 70), (22, 30), [4608, 323, 2727272727, 305676489, 233333333, 0, 1420]),
    ((72, 800, 60), (22, 30), [4608, 276, 3636363636, 252087072, 200000000, 0, 2296]),
    ((96, 96, 40), (20, 28), [4488, 180, 480000000, 76394373, 142857143, 142857143, 1000]),
    ((96, 176, 60), (20, 28), [4488, 269, 880000000, 140056350, 214285714, 204610655, 1000]),
    ((80, 200, 50), (20, 28), [4488, 224, 1000000000, 159154943, 178571429, 150893501, 1000]),
    ((8, 208, 60), (20, 28), [4488, 269, 1040000000, 165521141, 214285714, 143485440, 1000]),
    ((100, 600, 70), (20, 28), [4488, 314, 3000000000, 329577472, 250000000, 0, 1449]),
    ((72, 800, 60), (20, 28), [4488, 269, 4000000000, 271581494, 214285714, 0, 2344]),
    ((96, 96, 40), (24, 24), [6283, 251, 400000000, 63661977, 166666667, 166666667, 1000]),
    ((96, 176, 60), (24, 24), [6283, 377, 733333333, 116713625, 250000000, 244306207, 1000]),
    ((80, 200, 50), (24, 24), [6283, 314, 833333333, 132629119, 208333333, 192536240, 1000]),
    ((8, 208, 60), (24, 24), [6283, 377, 866666667, 137934284, 250000000, 211918656, 1000]),
    ((100, 600, 70), (24, 24), [6283, 440, 2500000000, 357981226, 291666667, 0, 1111]),
    ((72, 800, 60), (24, 24), [6283, 377, 3333333333, 297746483, 250000000, 0, 1782]),
    ((96, 96, 40), (10, 14), [4488, 180, 960000000, 152788745, 285714286, 285714286, 1000]),
    ((96, 176, 60), (10, 14), [4488, 269, 1760000000, 280112700, 428571429, 409221309, 1000]),
    ((80, 200, 50), (10, 14), [4488, 224, 2000000000, 318309886, 357142857, 301787002, 1000]),
    ((8, 208, 60), (10, 14), [4488, 269, 2080000000, 331042282, 428571429, 286970880, 1000]),
    ((100, 600, 70), (10, 14), [4488, 314, 6000000000, 659154943, 500000000, 0, 1449]),
    ((72, 800, 60), (10, 14), [4488, 269, 8000000000, 543162988, 428571429, 0, 2344]),
];

#[test]
fn flares_are_the_frustums_of_another_language() {
    for ((neck, hem, rounds), (stitches, rows), [rate, gain, girth, radius, slant, drop, fullness]) in FLARES {
        let gauge = |count| Gauge::of(count, Gauge::TEN_CM);
        let depth = Length::from_nm(slant);
        let question = Question::about(neck, Hem::Stitches(hem), depth, gauge(stitches), gauge(rows));
        let ours = answer(&Question {
            each: neck.min(16),
            lines: false,
            ..question
        })
        .expect("a flare");
        assert_eq!(ours.rounds, rounds);
        assert_eq!((i64::from(ours.flat_rate), i64::from(ours.flat_gain)), (rate, gain));
        let shape = ours.shape;
        let near =
            |ours: Length, theirs: i64| assert!((ours.to_nm() - theirs).abs() <= 1, "{ours:?} {theirs} {question:?}");
        near(shape.hem_girth, girth);
        near(shape.radius, radius);
        near(shape.slant, slant);
        near(shape.drop, drop);
        assert_eq!(i64::from(shape.fullness), fullness);
        assert_eq!(
            ours.schedule
                .rows()
                .last()
                .and_then(|last| last.stitches)
                .unwrap_or(neck),
            hem
        );
    }
}

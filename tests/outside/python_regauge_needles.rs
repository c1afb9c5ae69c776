//! Counts at another gauge, and the fewest cords for a piece, worked out again in another language.
//!
//! Source: CPython 3.11.7, modules `fractions` and `itertools`: exact fractions, and every set of cords tried. The tables
//! below were printed by the script above them, run as `python3 -` with the script as input, and pasted. All values are
//! computed. The rules (ties to the smaller, a cord serves from its length to twice it) are our own and practice, and are
//! not checked by this.

use crate::marks::{Marked, value};
use loopwright::cast_on::{Knitting, Multiple};
use loopwright::cords::{self, Around};
use loopwright::regauge;
use loopwright::tables::Certainty;
use loopwright::units::{Gauge, Length, LengthUnit};

/// How sure each value is that is checked here.
pub const MARKS: &[Marked] = &[value("printed tables", Certainty::Computed)];

/// A gauge in thousandths, and its span in nanometres.
type Swatch = (u32, i64);

// from fractions import Fraction as F
// from itertools import combinations
// from math import floor
// CM, IN = 10**7, 25400000
// def near(ideal, step, least):
//     return min(range(least, 4000, step), key=lambda v: (abs(v - ideal), v))
// print("COUNTS")
// for theirs, tspan in ((20, 10*CM), ('18.5', 4*IN)):
//     for ours, ospan in ((22, 10*CM), (20, 4*IN), (5, IN)):
//         for of, plus in ((1, 0), (8, 3), (12, 1)):
//             for n in (plus + 5*of, plus + 23*of):
//                 own, pat = F(ours)/ospan, F(theirs)/tspan
//                 ideal = F(n)*own/pat
//                 v = near(ideal, of, of + plus)
//                 nm = lambda k: floor(F(k)/own + F(1, 2))
//                 print(f'    (({int(F(theirs)*1000)}, {tspan}), ({int(F(ours)*1000)}, {ospan}), ({of}, {plus}), {n}, {v}, [{nm(v)}, {nm(n)}]),')
// print("CORDS")
// import random
// random.seed(11)
// for _ in range(24):
//     cords = sorted(random.sample((23, 30, 40, 50, 60, 74, 80, 90, 100, 120, 150), 6))
//     a, b, rounds = random.randrange(30, 500), random.randrange(30, 500), random.randrange(20, 90)
//     counts = [floor(F(a*(rounds-1-i) + b*i, rounds-1) + F(1, 2)) for i in range(rounds)]
//     holds = lambda c, n: c*CM <= F(n*4*IN, F('21.5')) <= 2*c*CM
//     served = [n for n in counts if any(holds(c, n) for c in cords)]
//     least = next(k for k in range(7) if any(all(any(holds(c, n) for c in some) for n in served) for some in combinations(cords, k)))
//     runs = []
//     for c in cords:
//         at = [i + 1 for i, n in enumerate(counts) if holds(c, n)]
//         assert at == [] or at == list(range(at[0], at[-1] + 1))
//         runs.append((at[0], at[-1]) if at else (0, 0))
//     print(f'    ({a}, {b}, {rounds}, {cords}, {least}, {runs}),')
/// A row of the first table, as it says there.
type Count = (Swatch, Swatch, (u32, u32), u32, u32, [i64; 2]);
/// A row of the second.
type Piece = (u32, u32, u32, [i64; 6], usize, [(u32, u32); 6]);

/// The pattern's gauge and the own; multiple and plus; the pattern's count and what it becomes; what that measures, and
/// what the pattern's count would.
#[rustfmt::skip]
const COUNTS: [Count; 36] = [
    ((20000, 100000000), (22000, 100000000), (1, 0), 5, 5, [22727273, 22727273]),
    ((20000, 100000000), (22000, 100000000), (1, 0), 23, 25, [113636364, 104545455]),
    ((20000, 100000000), (22000, 100000000), (8, 3), 43, 51, [231818182, 195454545]),
    ((20000, 100000000), (22000, 100000000), (8, 3), 187, 203, [922727273, 850000000]),
    ((20000, 100000000), (22000, 100000000), (12, 1), 61, 73, [331818182, 277272727]),
    ((20000, 100000000), (22000, 100000000), (12, 1), 277, 301, [1368181818, 1259090909]),
    ((20000, 100000000), (20000, 101600000), (1, 0), 5, 5, [25400000, 25400000]),
    ((20000, 100000000), (20000, 101600000), (1, 0), 23, 23, [116840000, 116840000]),
    ((20000, 100000000), (20000, 101600000), (8, 3), 43, 43, [218440000, 218440000]),
    ((20000, 100000000), (20000, 101600000), (8, 3), 187, 187, [949960000, 949960000]),
    ((20000, 100000000), (20000, 101600000), (12, 1), 61, 61, [309880000, 309880000]),
    ((20000, 100000000), (20000, 101600000), (12, 1), 277, 277, [1407160000, 1407160000]),
    ((20000, 100000000), (5000, 25400000), (1, 0), 5, 5, [25400000, 25400000]),
    ((20000, 100000000), (5000, 25400000), (1, 0), 23, 23, [116840000, 116840000]),
    ((20000, 100000000), (5000, 25400000), (8, 3), 43, 43, [218440000, 218440000]),
    ((20000, 100000000), (5000, 25400000), (8, 3), 187, 187, [949960000, 949960000]),
    ((20000, 100000000), (5000, 25400000), (12, 1), 61, 61, [309880000, 309880000]),
    ((20000, 100000000), (5000, 25400000), (12, 1), 277, 277, [1407160000, 1407160000]),
    ((18500, 101600000), (22000, 100000000), (1, 0), 5, 6, [27272727, 22727273]),
    ((18500, 101600000), (22000, 100000000), (1, 0), 23, 28, [127272727, 104545455]),
    ((18500, 101600000), (22000, 100000000), (8, 3), 43, 51, [231818182, 195454545]),
    ((18500, 101600000), (22000, 100000000), (8, 3), 187, 227, [1031818182, 850000000]),
    ((18500, 101600000), (22000, 100000000), (12, 1), 61, 73, [331818182, 277272727]),
    ((18500, 101600000), (22000, 100000000), (12, 1), 277, 337, [1531818182, 1259090909]),
    ((18500, 101600000), (20000, 101600000), (1, 0), 5, 5, [25400000, 25400000]),
    ((18500, 101600000), (20000, 101600000), (1, 0), 23, 25, [127000000, 116840000]),
    ((18500, 101600000), (20000, 101600000), (8, 3), 43, 43, [218440000, 218440000]),
    ((18500, 101600000), (20000, 101600000), (8, 3), 187, 203, [1031240000, 949960000]),
    ((18500, 101600000), (20000, 101600000), (12, 1), 61, 61, [309880000, 309880000]),
    ((18500, 101600000), (20000, 101600000), (12, 1), 277, 301, [1529080000, 1407160000]),
    ((18500, 101600000), (5000, 25400000), (1, 0), 5, 5, [25400000, 25400000]),
    ((18500, 101600000), (5000, 25400000), (1, 0), 23, 25, [127000000, 116840000]),
    ((18500, 101600000), (5000, 25400000), (8, 3), 43, 43, [218440000, 218440000]),
    ((18500, 101600000), (5000, 25400000), (8, 3), 187, 203, [1031240000, 949960000]),
    ((18500, 101600000), (5000, 25400000), (12, 1), 61, 61, [309880000, 309880000]),
    ((18500, 101600000), (5000, 25400000), (12, 1), 277, 301, [1529080000, 1407160000]),
];

/// Stitches at the start and at the end, rounds; cords in cm; the fewest that serve what can be served; the first and the
/// last round of each, 0 for none. 21 1/2 stitches in 4 in.
#[rustfmt::skip]
const CORDS: [Piece; 24] = [
    (127, 124, 85, [60, 80, 90, 100, 120, 150], 1, [(1, 15), (0, 0), (0, 0), (0, 0), (0, 0), (0, 0)]),
    (102, 76, 88, [30, 40, 50, 90, 100, 120], 1, [(1, 88), (1, 59), (0, 0), (0, 0), (0, 0), (0, 0)]),
    (345, 362, 40, [23, 74, 80, 90, 100, 150], 1, [(0, 0), (0, 0), (0, 0), (1, 40), (1, 40), (1, 40)]),
    (127, 480, 50, [23, 30, 80, 100, 120, 150], 2, [(0, 0), (0, 0), (7, 30), (13, 42), (19, 50), (28, 50)]),
    (461, 130, 86, [23, 50, 60, 74, 90, 120], 2, [(0, 0), (66, 86), (55, 86), (39, 79), (22, 70), (1, 54)]),
    (264, 365, 55, [23, 50, 60, 74, 90, 100], 1, [(0, 0), (0, 0), (0, 0), (1, 27), (1, 55), (1, 55)]),
    (292, 177, 23, [30, 40, 60, 80, 100, 120], 1, [(0, 0), (0, 0), (9, 23), (1, 23), (1, 16), (1, 8)]),
    (227, 64, 22, [23, 30, 40, 80, 120, 150], 3, [(18, 22), (14, 22), (9, 19), (1, 8), (0, 0), (0, 0)]),
    (222, 392, 70, [23, 50, 90, 100, 120, 150], 1, [(0, 0), (0, 0), (1, 65), (1, 70), (14, 70), (40, 70)]),
    (189, 200, 21, [23, 30, 40, 50, 60, 80], 1, [(0, 0), (0, 0), (0, 0), (1, 21), (1, 21), (1, 21)]),
    (35, 60, 79, [23, 30, 40, 50, 74, 80], 1, [(44, 79), (0, 0), (0, 0), (0, 0), (0, 0), (0, 0)]),
    (127, 404, 36, [40, 50, 60, 90, 100, 150], 2, [(1, 6), (1, 11), (1, 16), (10, 33), (12, 36), (26, 36)]),
    (30, 168, 58, [30, 50, 80, 100, 120, 150], 2, [(15, 40), (33, 58), (0, 0), (0, 0), (0, 0), (0, 0)]),
    (358, 325, 32, [23, 40, 50, 60, 80, 90], 1, [(0, 0), (0, 0), (0, 0), (0, 0), (20, 32), (1, 32)]),
    (425, 342, 62, [23, 40, 50, 90, 120, 150], 1, [(0, 0), (0, 0), (0, 0), (34, 62), (1, 62), (1, 62)]),
    (328, 355, 51, [23, 30, 60, 80, 90, 100], 1, [(0, 0), (0, 0), (0, 0), (1, 20), (1, 51), (1, 51)]),
    (95, 330, 81, [23, 50, 60, 74, 100, 120], 3, [(1, 1), (5, 40), (12, 54), (22, 75), (41, 81), (55, 81)]),
    (189, 495, 49, [30, 40, 74, 80, 120, 150], 2, [(0, 0), (0, 0), (1, 20), (1, 24), (12, 49), (22, 49)]),
    (313, 130, 69, [40, 50, 74, 80, 120, 150], 2, [(55, 69), (39, 69), (1, 59), (1, 54), (1, 23), (0, 0)]),
    (85, 49, 85, [23, 30, 80, 90, 120, 150], 1, [(1, 85), (1, 51), (0, 0), (0, 0), (0, 0), (0, 0)]),
    (281, 180, 86, [50, 60, 80, 90, 120, 150], 1, [(60, 86), (25, 86), (1, 86), (1, 77), (1, 24), (0, 0)]),
    (364, 466, 29, [30, 40, 50, 60, 90, 150], 1, [(0, 0), (0, 0), (0, 0), (0, 0), (1, 5), (1, 29)]),
    (240, 258, 51, [23, 40, 50, 60, 90, 120], 1, [(0, 0), (0, 0), (0, 0), (1, 38), (1, 51), (39, 51)]),
    (322, 97, 31, [23, 40, 60, 90, 100, 150], 3, [(31, 31), (22, 31), (11, 27), (1, 18), (1, 15), (1, 1)]),
];

#[test]
fn counts_at_another_gauge() {
    for (theirs, ours, multiple, count, becomes, widths) in COUNTS {
        let gauge = |(thousandths, span)| Gauge::new(thousandths, Length::from_nm(span)).expect("above zero");
        let question = regauge::Question {
            multiple: Multiple {
                of: multiple.0,
                plus: multiple.1,
            },
            knitting: Knitting::Flat { edge: 0, seam: 0 },
            ..regauge::Question::about(gauge(theirs), gauge(ours), vec![count])
        };
        let found = regauge::answer(&question).expect("within bounds").stitches[0];
        let measures = [found.becomes, found.unchanged].map(Length::to_nm);
        assert_eq!((found.count, measures), (becomes, widths), "{question:?}");
    }
}

#[test]
fn the_fewest_cords_and_when_each_serves() {
    for (from, to, rounds, lengths, fewest, runs) in CORDS {
        let question = cords::Question {
            unwashed: Gauge::new(21_500, Gauge::FOUR_INCHES),
            cords: lengths.map(|cm| Length::of(cm, LengthUnit::Cm)).to_vec(),
            ..cords::Question::about(Around::Even { from, to, rounds })
        };
        let answer = cords::answer(&question).expect("within bounds");
        let ours = |cord: &cords::Cord| cord.runs.first().map_or((0, 0), |run| (run.from, run.to));
        let served: Vec<_> = answer.cords.iter().map(ours).collect();
        assert_eq!(
            (answer.picks.len(), served.as_slice()),
            (fewest, &runs[..]),
            "{question:?}"
        );
        assert!(answer.cords.iter().all(|cord| cord.runs.len() < 2));
    }
}

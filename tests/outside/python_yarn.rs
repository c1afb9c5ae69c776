//! The sums behind yarn needed, worked by a general-purpose library: Python's `decimal` and `fractions`.
//!
//! Run with Python 3.11.7; the command stands at each table, and the table is what it printed.

use crate::marks::{Marked, value};
use loopwright::fabric::Density;
use loopwright::tables::Certainty;
use loopwright::units::{Gauge, Length, Mass};
use loopwright::yarn::{Ask, Ball, Question, Section, Shape, StitchSum, answer};

/// How sure each value is that is checked here.
pub const MARKS: &[Marked] = &[value("printed tables", Certainty::Computed)];

/// `python3 -c '
/// from decimal import Decimal as D, getcontext
/// getcontext().prec = 30
/// for s, r in ((21,28),(22,30),(20,28),(24,32),(16,22),(30,42)):
///     for k in ("19.0","21.6","23.1"):
///         nm = ((D(k)/(D(s)*D(r)/100)).sqrt()*D(10)**7).to_integral_value("ROUND_HALF_EVEN")
///         print(f"({s}, {r}, {k}, {nm}),")'`
const LOOPS: [(u32, u32, f64, i64); 18] = [
    (21, 28, 19.0, 17975796),
    (21, 28, 21.6, 19166297),
    (21, 28, 23.1, 19820624),
    (22, 30, 19.0, 16966991),
    (22, 30, 21.6, 18090681),
    (22, 30, 23.1, 18708287),
    (20, 28, 19.0, 18419710),
    (20, 28, 21.6, 19639610),
    (20, 28, 23.1, 20310096),
    (24, 32, 19.0, 15728822),
    (24, 32, 21.6, 16770510),
    (24, 32, 23.1, 17343046),
    (16, 22, 19.0, 23233009),
    (16, 22, 21.6, 24771685),
    (16, 22, 23.1, 25617377),
    (30, 42, 19.0, 12279807),
    (30, 42, 21.6, 13093073),
    (30, 42, 23.1, 13540064),
];

#[test]
fn loop_lengths_in_nanometres() {
    for (stitches, rows, product, nm) in LOOPS {
        let gauge = |count| Gauge::of(count, Gauge::TEN_CM);
        let ours = Density::of(gauge(stitches), gauge(rows)).loop_length(product);
        assert_eq!(ours, Some(Length::from_nm(nm)), "{stitches} {rows} {product}");
    }
}

/// `python3 -c '
/// from fractions import Fraction as F
/// for a, b, r, t in ((31,46,25,1),(31,46,25,2),(60,100,40,1),(0,131,131,1),(7,8,1,3),(45,72,97,2)):
///     h = F(r*(a+b)*t, 1); s = F(h,2); print(f"({a}, {b}, {r}, {t}, {h}),", float(s))'`
const TRAPEZOIDS: [(u32, u32, u32, u32, u64); 6] = [
    (31, 46, 25, 1, 1925),   // 962.5
    (31, 46, 25, 2, 3850),   // 1925.0
    (60, 100, 40, 1, 6400),  // 3200.0
    (0, 131, 131, 1, 17161), // 8580.5
    (7, 8, 1, 3, 45),        // 22.5
    (45, 72, 97, 2, 22698),  // 11349.0
];

#[test]
fn trapezoids_in_half_stitches() {
    for (stitches, to, rows, times, halves) in TRAPEZOIDS {
        let section = Section {
            times,
            ..Section::stockinette(Shape::Trapezoid { stitches, to, rows })
        };
        assert_eq!(section.sum(), StitchSum { halves }, "{stitches} {to} {rows} {times}");
    }
}

/// `python3 -c '
/// from math import ceil
/// from fractions import Fraction as F
/// for need, ball in (("750","125"),("750.000000001","125"),("397","100"),("403","100"),("24.6","4.1"),("875","210"),
///                    ("1000.1","100.01"),("822.96","137.16")):
///     n, b = F(need), F(ball); print(f"({int(n*10**9)}, {int(b*10**9)}, {ceil(n/b)}),", ceil(float(n)/float(b)))'`
///
/// The last figure, by floating point, is in the comments where it differs.
const CEILINGS: [(i64, i64, u32); 8] = [
    (750000000000, 125000000000, 6),
    (750000000001, 125000000000, 7),
    (397000000000, 100000000000, 4),
    (403000000000, 100000000000, 5),
    (24600000000, 4100000000, 6), // 7
    (875000000000, 210000000000, 5),
    (1000100000000, 100010000000, 10),
    (822960000000, 137160000000, 6),
];

#[test]
fn balls() {
    for (need, ball, balls) in CEILINGS {
        let question = Question {
            ball: Ball {
                length: Length::from_nm(ball),
                mass: Some(Mass::from_grams(50)),
            },
            ..Question::from_pattern(Ask::Length(Length::from_nm(need)))
        };
        assert_eq!(answer(&question).map(|told| told.balls), Ok(balls), "{need} {ball}");
    }
}

//! How long the sums take, and what makes them longer.
//!
//! `cargo bench -p loopwright-tests --bench sums` (a word behind it picks the benches whose name holds it). The page
//! works out its answer at every keystroke, and WebAssembly on a tablet is perhaps five to ten times slower than this
//! machine: one answer over 5 ms here is felt there.
//!
//! - `stitches/16 of ..` has always 16 changes on a longer and a longer needle: the four numbers should be alike, or
//!   time grows with the stitches and not with the answer.
//! - `changes/.. of 100000` has more and more changes on the longest needle: time may grow in step with the changes.
//!   The number behind a short text shows the switch from the exact search to folding (`row::LONGEST_EXACT` runs). The
//!   last is the longest order there is, of which one bracket and its exceptions are written.
//! - `edge/..` is one needle with each kind of edge.
//! - `read/..` and `work/..` are the reader and the simulated needle, on which every text is tried in the tests;
//!   `work` grows with the stitches, since it works them one by one.
//! - `shaping/..` and `flare/..` are schedules: time may grow with the shaping rows, not with the rows.
//! - `gauge/..` and `swatch/..` are a swatch measured and one planned.
//! - `needles/..` is one size in every system; `cords/..` grows with the rounds times the cords.
//! - `shaping/..`, `flare/..`, `yoke/..` and `raglan/..` are schedules: time may grow with the shaping rows, not with
//!   the rows.
//! - `typed/..` is what one keystroke costs before any arithmetic.
//! - `written/..` is a pattern of 5,000 lines, read, and worked for twelve sizes: both together should take less than
//!   100 ms.

use criterion::Criterion;
use loopwright::row::{read, work};
use loopwright::spacing::{Ask, Edge, Knitting, Question, answer};
use loopwright::units::parse::{Wanted, read as read_quantity};
use loopwright::units::{Length, LengthUnit};
use std::hint::black_box;
use std::time::Duration;

fn main() {
    let mut criterion = Criterion::default()
        .warm_up_time(Duration::from_millis(300))
        .measurement_time(Duration::from_millis(900))
        .sample_size(10)
        .configure_from_args();
    stitches(&mut criterion);
    changes(&mut criterion);
    edges(&mut criterion);
    rows(&mut criterion);
    shaped(&mut criterion);
    swatched(&mut criterion);
    on_the_needle(&mut criterion);
    typed(&mut criterion);
    written(&mut criterion);
    criterion.final_summary();
}

/// The same 16 changes on a longer and a longer needle.
fn stitches(criterion: &mut Criterion) {
    let mut group = criterion.benchmark_group("stitches");
    for stitches in [100, 1_000, 10_000, 100_000] {
        let question = lose(stitches, 16);
        group.bench_function(format!("16 of {stitches}"), |bencher| {
            bencher.iter(|| answer(black_box(&question)));
        });
    }
    // A multiple is looked for on either side, so its own size might count.
    let multiple = Question {
        ask: Ask::Multiple { of: 997, plus: 0 },
        ..Question::about(100_000)
    };
    group.bench_function("a multiple of 997 near 100000", |bencher| {
        bencher.iter(|| answer(black_box(&multiple)));
    });
    group.finish();
}

/// More and more changes on the longest needle; none divides it, so that there are long runs and short ones.
fn changes(criterion: &mut Criterion) {
    let mut group = criterion.benchmark_group("changes");
    for changes in [7, 17, 37, 40, 41, 61, 79, 83, 307, 1_009, 10_007, 33_331] {
        let question = lose(100_000, changes);
        group.bench_function(format!("{changes} of 100000"), |bencher| {
            bencher.iter(|| answer(black_box(&question)));
        });
    }
    let dense = Question {
        ask: Ask::Gain(61_803),
        ..Question::about(100_000)
    };
    group.bench_function("61803 more on 100000", |bencher| {
        bencher.iter(|| answer(black_box(&dense)));
    });
    group.finish();
}

/// One needle, each kind of edge.
fn edges(criterion: &mut Criterion) {
    let mut group = criterion.benchmark_group("edge");
    let kinds = [
        ("in the round", Knitting::Round { end_on_change: false }),
        ("ends on the change", Knitting::Round { end_on_change: true }),
        ("half a run", Knitting::Flat { edge: Edge::Half }),
        ("at least 9", Knitting::Flat { edge: Edge::AtLeast(9) }),
        ("mirrored", Knitting::Flat { edge: Edge::Mirrored }),
    ];
    for (name, knitting) in kinds {
        let question = Question {
            knitting,
            ..lose(500, 37)
        };
        group.bench_function(name, |bencher| bencher.iter(|| answer(black_box(&question))));
    }
    group.finish();
}

/// Texts read and worked, the first as short as most are, the last of a thousand terms.
fn rows(criterion: &mut Criterion) {
    let long = vec!["K98, k2tog"; 500].join(", ");
    let texts = [
        ("132", "K3, k2tog, (K7, k2tog) 3 times, (K6, k2tog) 12 times, K4"),
        ("100000", "(K98, k2tog) 1000 times"),
        ("50000 in 1000 terms", long.as_str()),
    ];
    for (name, text) in texts {
        criterion.bench_function(&format!("read/{name}"), |bencher| {
            bencher.iter(|| read(black_box(text)));
        });
        let Ok(row) = read(text) else {
            unreachable!("{text} is a row");
        };
        let stitches = u32::try_from(row.uses()).unwrap_or(u32::MAX);
        criterion.bench_function(&format!("work/{name}"), |bencher| {
            bencher.iter(|| work(black_box(&row), stitches));
        });
    }
}

/// A sleeve, the longest schedules there can be, and flares with an awkward repeat, for
/// which every other number of lines is tried.
fn shaped(criterion: &mut Criterion) {
    use loopwright::{flare, shaping};
    let orders = [
        ("in two rates", shaping::Order::CloseFirst),
        ("mixed", shaping::Order::Mixed),
    ];
    for (name, order) in orders {
        for (amount, rows) in [(36, 120), (4_998, 10_000), (9_998, 10_000)] {
            let ask = shaping::Ask::Lose(amount);
            let question = shaping::Question {
                order,
                ..shaping::Question::about(ask, rows)
            };
            criterion.bench_function(&format!("shaping/{amount} in {rows}, {name}"), |bencher| {
                bencher.iter(|| shaping::answer(black_box(&question)));
            });
        }
    }
    let most = loopwright::stairs::Ask::Steps(500);
    let steps = loopwright::stairs::Question::about(100_000, most);
    criterion.bench_function("stairs/500 steps", |bencher| {
        bencher.iter(|| loopwright::stairs::answer(black_box(&steps)));
    });
    let yoke = loopwright::yoke::Question::about(1_000, 100_000, 10_000);
    criterion.bench_function("yoke/a hundred rounds written out", |bencher| {
        bencher.iter(|| loopwright::yoke::answer(black_box(&yoke)));
    });
    let yoke = loopwright::yoke::Question::about(96, 320, 60);
    criterion.bench_function("yoke/four rounds written out", |bencher| {
        bencher.iter(|| loopwright::yoke::answer(black_box(&yoke)));
    });
    let raglan = loopwright::raglan::Question::about([1_000, 1_000], [30_000, 9_000], 10_000);
    criterion.bench_function("raglan/7250 rounds", |bencher| {
        bencher.iter(|| loopwright::raglan::answer(black_box(&raglan)));
    });
    let gauge = |count| loopwright::units::Gauge::of(count, loopwright::units::Gauge::TEN_CM);
    let question = loopwright::rows::Question {
        garter: true,
        repeat: 997,
        ..loopwright::rows::Question::about(loopwright::rows::Ask::Length(Length::from_mm(20_000)), gauge(90))
    };
    criterion.bench_function("rows/20 m of garter", |bencher| {
        bencher.iter(|| loopwright::rows::answer(black_box(&question)));
    });
    let question = loopwright::regauge::Question {
        wanted: Some(Length::from_mm(910)),
        ..loopwright::regauge::Question::about(gauge(20), gauge(22), (80..180).collect())
    };
    criterion.bench_function("regauge/100 counts", |bencher| {
        bencher.iter(|| loopwright::regauge::answer(black_box(&question)));
    });
    for (name, hem) in [
        ("flat", flare::Hem::Flat),
        ("too fast", flare::Hem::Girth(Length::from_mm(90_000))),
    ] {
        let question = flare::Question {
            multiple: 997,
            ..flare::Question::about(96, hem, Length::from_mm(80), gauge(21), gauge(28))
        };
        criterion.bench_function(&format!("flare/{name}"), |bencher| {
            bencher.iter(|| flare::answer(black_box(&question)));
        });
    }
}

/// A dozen spots of a swatch beside a pattern, and the plan of one: both go by the counts that are typed, never by stitches.
fn swatched(criterion: &mut Criterion) {
    use loopwright::units::Gauge;
    use loopwright::{gauge, swatch};
    let counted = Gauge::of(21, Gauge::TEN_CM);
    let question = gauge::Question {
        stitches: vec![counted; 12],
        rows: vec![counted; 12],
        pattern: Some(Gauge::of(19, Gauge::FOUR_INCHES)),
        ..gauge::Question::about(counted)
    };
    criterion.bench_function("gauge/12 spots", |bencher| {
        bencher.iter(|| gauge::answer(black_box(&question)))
    });
    let plan = swatch::Question::about(counted);
    criterion.bench_function("swatch/plain", |bencher| {
        bencher.iter(|| swatch::answer(black_box(&plan)));
    });
}

/// A size that is between all numbers, and the longest piece there can be with as many cords.
fn on_the_needle(criterion: &mut Criterion) {
    use loopwright::{cords, needles};
    let size = needles::Size::Metric(Length::from_nm(2_600_000));
    criterion.bench_function("needles/between", |bencher| {
        bencher.iter(|| needles::answer(black_box(&needles::Question { size })));
    });
    let (from, to, rounds) = (1, 100_000, 10_000);
    let question = cords::Question {
        cords: (15..55).map(|cm| Length::from_mm(10 * cm)).collect(),
        unwashed: Some(loopwright::units::Gauge::of(400, Length::from_mm(100))),
        ..cords::Question::about(cords::Around::Even { from, to, rounds })
    };
    criterion.bench_function("cords/10000 rounds on 40", |bencher| {
        bencher.iter(|| cords::answer(black_box(&question)));
    });
}

/// What she types, as a length.
fn typed(criterion: &mut Criterion) {
    let wanted = Wanted::<Length>::any(LengthUnit::Cm);
    for text in ["91", "7 1/2 in", "7½\u{201d}", "1,000 m", "nothing that is a length"] {
        criterion.bench_function(&format!("typed/{text}"), |bencher| {
            bencher.iter(|| read_quantity(black_box(text), black_box(&wanted)));
        });
    }
}

/// A long pattern in twelve sizes.
fn written(criterion: &mut Criterion) {
    use loopwright::written::{Start, read, work};
    let counts: Vec<String> = (1..12).map(|size| (96 + 12 * size).to_string()).collect();
    let cast_on = format!("CO 96 ({}) sts. Join in the round.\n", counts.join(", "));
    let rounds = "Rnd 1: *K2, p2; rep from * to end.\n\
                  Rnd 2: (K4, p2) to end.\n\
                  Rnd 3: K3, yo, k2tog, k to last 3 sts, k3.\n\
                  Rnd 4: (K2, ssk, yo) 3 times, *k2, p2; rep from * to end.\n\
                  Rnd 5: Knit.\n";
    let text = cast_on + &rounds.repeat(1_000);
    criterion.bench_function("written/5000 lines read", |bencher| {
        bencher.iter(|| read(black_box(&text), 12, &[]))
    });
    let (pattern, faults) = read(&text, 12, &[]);
    assert_eq!(faults, []);
    criterion.bench_function("written/5000 lines x 12 sizes worked", |bencher| {
        bencher.iter(|| {
            let sizes = 0..12;
            sizes
                .map(|size| work(black_box(&pattern), &Start::with(0), size).len())
                .sum::<usize>()
        });
    });
}

fn lose(stitches: u32, changes: u32) -> Question {
    Question {
        ask: Ask::Decreases(changes),
        ..Question::about(stitches)
    }
}

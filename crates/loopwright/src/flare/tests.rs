//! The flat circle, cones and ruffles by their own geometry, every round counted, and each obvious sum beside ours.

mod limits;
mod properties;

use super::*;
use crate::problem::Kind;
use crate::shaping::Rates;
use crate::units::Amount;
use proptest::prelude::*;

thread_local! {
    /// How often counts that a hem can have were worked out, in this test.
    pub(super) static TRIED: std::cell::Cell<u32> = const { std::cell::Cell::new(0) };
}

fn gauge(count: u32) -> Gauge {
    Gauge::of(count, Gauge::TEN_CM)
}

/// 60 rounds of stockinette of 21 by 28.
fn sixty(hem: Hem) -> Question {
    let depth = Length::from_nm(60 * Gauge::TEN_CM.to_nm() / 28);
    Question::about(96, hem, depth, gauge(21), gauge(28))
}

fn problem(field: Name, kind: Kind) -> Problem {
    Problem::new(field, kind)
}

/// Stitches after each round, counted as a knitter does: plain rounds, then an increase round, so many times.
fn counts(answer: &Answer, neck: u32) -> Vec<u32> {
    let mut counts = vec![neck];
    let mut count = neck;
    for block in &answer.schedule.blocks {
        for _ in 0..block.times {
            counts.extend(std::iter::repeat_n(count, block.plain as usize));
            count += block.change;
            counts.push(count);
        }
    }
    counts.extend(std::iter::repeat_n(count, answer.schedule.left as usize));
    counts
}

/// 4.71 a round: rounded to 5 in every round it is 300 in 60 rounds, 17 stitches and a wave too many.
#[test]
fn the_flat_rate_is_summed_and_never_rounded_round_by_round() {
    let flat = answer(&Question {
        lines: false,
        rhythm: Pace::MostEven,
        ..sixty(Hem::Flat)
    })
    .unwrap();
    assert_eq!((flat.flat_rate, flat.flat_gain, flat.gain), (4_712, 283, 283));
    assert_eq!(flat.hang, Hang::Flat);
    let obvious = 5 * flat.rounds;
    assert_eq!(obvious - flat.gain, 17);
    // In every round the count is within one increase round of the straight line.
    let counts = counts(&flat, 96);
    assert_eq!((counts.len(), counts.last()), (61, Some(&(96 + 283))));
    for (round, count) in counts.iter().enumerate() {
        let line = 96.0 + 283.0 * round as f64 / 60.0;
        assert!(
            (f64::from(*count) - line).abs() <= 8.0 + 283.0 / 60.0,
            "round {round}: {count}"
        );
    }
}

/// 8 lines every 1.7 rounds are 2, 2, 1 rounds apart; "every 2nd round" would make a cone.
#[test]
fn eight_lines_alternate_between_one_round_and_two() {
    let flat = answer(&Question {
        rhythm: Pace::MostEven,
        ..sixty(Hem::Flat)
    })
    .unwrap();
    assert_eq!((flat.gain, flat.increase_rounds), (280, 35));
    assert!((8_000.0 / f64::from(flat.flat_rate) - 1.7).abs() < 0.01);
    let rows: Vec<_> = flat.schedule.rows().map(|shaped| shaped.row).collect();
    let gaps: Vec<_> = rows.windows(2).map(|pair| pair[1] - pair[0]).collect();
    assert!(gaps.iter().all(|gap| (1..=2).contains(gap)));
    // No stretch of gaps strays: three in a row are 4 to 6 rounds, never 3.
    assert!(
        gaps.windows(3)
            .all(|three| (4..=6).contains(&three.iter().sum::<u32>())),
        "{gaps:?}"
    );
    assert_eq!(96 + 8 * (60 / 2), 336, "the obvious sum, 40 stitches short of 376");
    assert_eq!(flat.hem, 376);
}

/// Garter of the same yarn has 42 rows: 3.14 a round. The stockinette rate is half as many again.
#[test]
fn garter_has_its_own_flat_rate() {
    let stockinette = answer(&sixty(Hem::Flat)).unwrap();
    let garter = answer(&Question {
        row_gauge: gauge(42),
        ..sixty(Hem::Flat)
    })
    .unwrap();
    assert_eq!((stockinette.flat_rate, garter.flat_rate), (4_712, 3_142));
    assert_eq!(stockinette.flat_rate * 2 / garter.flat_rate * 50, 100);
    assert_eq!(
        (f64::from(stockinette.flat_rate) / f64::from(garter.flat_rate) * 100.0).round(),
        150.0
    );
    // The stockinette rate on garter ruffles.
    let wrong = stockinette.flat_rate * garter.rounds / 1_000 + 96;
    let wrong = answer(&Question {
        row_gauge: gauge(42),
        lines: false,
        hem: Hem::Stitches(wrong),
        ..sixty(Hem::Flat)
    });
    assert_eq!(wrong.unwrap().hang, Hang::Ruffle);
}

#[test]
fn flat_rates_of_usual_gauges() {
    for (stitches, rows, rate) in [(22, 30, 4_608), (20, 28, 4_488), (21, 28, 4_712), (24, 24, 6_283)] {
        let question = Question {
            gauge: gauge(stitches),
            row_gauge: gauge(rows),
            ..sixty(Hem::Flat)
        };
        assert_eq!(answer(&question).unwrap().flat_rate, rate);
    }
}

/// The obvious girth is 2 pi times the depth from the middle; a ruffle's is its stitches.
#[test]
fn a_ruffles_girth_is_its_stitches() {
    let question = Question {
        each: 16,
        ..sixty(Hem::Stitches(96 + 16 * 50))
    };
    let ruffle = answer(&question).unwrap();
    assert_eq!(ruffle.hang, Hang::Ruffle);
    let Shape {
        hem_girth,
        neck_radius,
        radius,
        slant,
        drop,
        fullness,
        ..
    } = ruffle.shape;
    assert_eq!(Some(hem_girth), question.gauge.width_of(896.0));
    // It reaches no farther out than neck and depth together, and its radius is not its girth over 2 pi.
    let out = neck_radius.saturating_add(slant);
    assert!(out.saturating_sub(radius).to_nm().abs() <= 1);
    assert_eq!(drop, Length::ZERO);
    let obvious = std::f64::consts::TAU * radius.in_unit(LengthUnit::Cm);
    assert!(hem_girth.in_unit(LengthUnit::Cm) > 2.0 * obvious);
    assert_eq!(
        (hem_girth.in_unit(LengthUnit::Cm) / obvious * 1_000.0).round() as u32,
        fullness
    );
}

#[test]
fn tube_and_cone_hang_by_their_geometry() {
    let tube = answer(&sixty(Hem::Stitches(96))).unwrap();
    assert_eq!((tube.hang, tube.gain, tube.increase_rounds), (Hang::Tube, 0, 0));
    assert_eq!(
        (tube.shape.drop, tube.shape.radius),
        (tube.shape.slant, tube.shape.neck_radius)
    );
    assert_eq!((tube.schedule.blocks.len(), tube.schedule.left), (0, 60));
    // Half the flat rate: the side leans 30 degrees from the axis, and drops cos 30 of its length.
    let cone = answer(&Question {
        lines: false,
        ..sixty(Hem::Stitches(96 + 141))
    })
    .unwrap();
    assert_eq!(cone.hang, Hang::Cone);
    let part = cone.shape.drop.in_unit(LengthUnit::Cm) / cone.shape.slant.in_unit(LengthUnit::Cm);
    assert!((part - 0.866).abs() < 0.003, "{part}");
    assert_eq!(cone.shape.fullness, 1_000);
}

/// 30.1 cm are 84.28 rounds. Rounded up they would be 30.4 cm.
#[test]
fn a_depth_is_the_nearest_number_of_rounds() {
    let rounds = |mm| {
        let question = Question::about(
            96,
            Hem::Stitches(96 + 8 * 20),
            Length::from_mm(mm),
            gauge(21),
            gauge(28),
        );
        answer(&question).unwrap().rounds
    };
    assert_eq!([300, 301, 302, 304].map(rounds), [84, 84, 85, 85]);
}

/// 3 to 4 widths of the neck would be 1.4 m for a hem of 3 m.
#[test]
fn the_bind_off_is_of_the_last_round() {
    let girth = Length::of(3, LengthUnit::M);
    let flare = answer(&Question {
        hem: Hem::Girth(girth),
        lines: false,
        each: 16,
        ..sixty(Hem::Flat)
    })
    .unwrap();
    let BindOffYarn { plain, elastic, i_cord } = flare.bind_off;
    let range = |least, most| Range {
        least: girth.saturating_mul(least),
        most: girth.saturating_mul(most),
    };
    assert_eq!([plain, elastic, i_cord], [range(3, 4), range(4, 6), range(6, 10)]);
    assert!(plain.least > flare.shape.neck_girth.saturating_mul(6));
}

/// 35 increase rounds in 60, said in one breath: 17 turns of 2, 2 and 1 round break off nowhere near a growth.
#[test]
fn the_easiest_rates_keep_to_the_line() {
    let flat = answer(&sixty(Hem::Flat)).unwrap();
    assert_eq!((flat.hem, flat.increase_rounds), (376, 35));
    assert!(
        matches!(Rates::of(&flat.schedule), Rates::ByTurns { times: 34, .. }),
        "{:?}",
        flat.schedule
    );
    assert!(flat.drift.rounds() < flat.drift.gap);
    let even = answer(&Question {
        rhythm: Pace::MostEven,
        ..sixty(Hem::Flat)
    })
    .unwrap();
    assert!(even.drift.rounds().to_f64() < 1.0);
}

/// Each increase round is written out as even spacing has it, read and worked.
#[test]
fn every_increase_round_is_knitted() {
    use crate::{row, spacing};
    for hem in [
        Hem::Flat,
        Hem::Stitches(96 + 8 * 20),
        Hem::Stitches(397),
        Hem::Stitches(96 + 59 * 8),
    ] {
        for rhythm in [Pace::Easiest, Pace::MostEven] {
            let question = Question {
                lines: false,
                rhythm,
                ..sixty(hem)
            };
            let flare = answer(&question).unwrap();
            let mut count = 96;
            for shaped in flare.schedule.rows() {
                let ask = spacing::Ask::Gain(shaped.change);
                let spaced = spacing::answer(&spacing::Question {
                    ask,
                    ..spacing::Question::about(count)
                });
                let spaced = spaced.unwrap();
                let text = spaced.ways[spaced.suggested].row.to_string();
                let done = row::work(&row::read(&text).unwrap(), count).unwrap();
                count += shaped.change;
                assert_eq!((done.on_needle, done.left_over), (u64::from(count), 0), "{text}");
            }
            assert_eq!(count, flare.hem);
        }
    }
}

/// The obvious place is the end of the one gap: round 111 of 112, below a tube.
#[test]
fn a_single_increase_round_stands_in_the_middle() {
    let question = Question {
        depth: Length::from_mm(400),
        ..sixty(Hem::Stitches(104))
    };
    let once = answer(&question).unwrap();
    let rows: Vec<_> = once.schedule.rows().map(|shaped| shaped.row).collect();
    assert_eq!((once.rounds, rows), (112, vec![56]));
}

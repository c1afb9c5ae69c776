//! The traps of yarn sums, each by its subject.

use super::*;
use crate::fabric::Fabric;
use crate::problem::Kind;
use crate::units::{Gauge, MassUnit};

fn metres(count: i64) -> Length {
    Length::of(count, LengthUnit::M)
}

fn gauge(stitches: u32, rows: u32) -> (Gauge, Gauge) {
    (Gauge::of(stitches, Gauge::TEN_CM), Gauge::of(rows, Gauge::TEN_CM))
}

fn swatch(stitches: u32, rows: u32) -> Swatch {
    let (stitches, rows) = gauge(stitches, rows);
    Swatch::stockinette(stitches, rows)
}

fn swatch_of(fabric: Fabric, (stitches, rows): (Gauge, Gauge), rest: Rest) -> Swatch {
    Swatch::Gauge {
        fabric,
        stitches,
        rows,
        rest,
    }
}

fn rectangle(stitches: u32, rows: u32) -> Shape {
    Shape::Rectangle { stitches, rows }
}

/// The knitting alone, no edges and no extras.
fn bare(fabric: Fabric, shape: Shape) -> Section {
    Section {
        cast_on: false,
        bind_off: None,
        ..Section::of(fabric, shape)
    }
}

fn only(sections: Vec<Section>, swatch: Swatch) -> Question {
    Question {
        ask: Ask::Piece(Piece {
            sections,
            swatch,
            extras: Extras::NONE,
        }),
        ..Question::about(Vec::new(), swatch)
    }
}

fn expected(fabric: Fabric, swatch: Swatch) -> f64 {
    let question = only(vec![bare(fabric, Shape::Stitches(StitchSum::of(10_000)))], swatch);
    answer(&question).unwrap().length.expected.in_unit(LengthUnit::M)
}

fn exactly(length: Length, ball: i64) -> Answer {
    let question = Question {
        ball: Ball {
            length: metres(ball),
            ..Ball::USUAL
        },
        ..Question::from_pattern(Ask::Length(length))
    };
    answer(&question).unwrap()
}

fn kinds(question: &Question) -> Vec<(&'static str, Kind)> {
    let problems = answer(question).err().unwrap_or_default();
    problems.into_iter().map(|p| (p.field, p.kind)).collect()
}

/// Trap 1. Garter's own gauge in the stockinette sum is 18 % short.
#[test]
fn garter_takes_the_stockinette_loop() {
    let right = expected(Fabric::Garter, swatch(21, 28));
    assert!((right - 191.7).abs() < 0.1, "{right}");
    let naive = expected(Fabric::Stockinette, swatch(21, 42));
    assert!((1.0 - naive / right - 0.18).abs() < 0.005, "{naive}");
    // With only a garter gauge there is a number for it, and it is marked.
    let garter = swatch_of(Fabric::Garter, gauge(21, 42), Rest::Washed);
    assert!((expected(Fabric::Garter, garter) / right - 1.0).abs() < 0.01);
    let question = only(vec![bare(Fabric::Garter, rectangle(40, 400))], garter);
    let told = answer(&question).unwrap();
    assert_eq!(told.per_stitch.unwrap().certainty, Certainty::Practice);
    assert!(told.notes.contains(&Note::GarterIsPractice));
}

/// Trap 1. Rib and cable take more than stockinette, and with no stockinette gauge nothing is said.
#[test]
fn rib_and_cable_without_a_stockinette_gauge_are_refused() {
    let plain = expected(Fabric::Stockinette, swatch(21, 28));
    for fabric in [Fabric::Rib, Fabric::Cable] {
        assert!(expected(fabric, swatch(21, 28)) > 1.02 * plain);
        let own = swatch_of(fabric, gauge(34, 28), Rest::Washed);
        let garter = swatch_of(Fabric::Garter, gauge(21, 42), Rest::Washed);
        for swatch in [own, garter] {
            let question = only(vec![bare(fabric, rectangle(40, 40))], swatch);
            assert_eq!(kinds(&question), [("swatch", Kind::NeedsSwatch)]);
        }
        // On the scale it may be anything.
        let weighed = Swatch::Weighed {
            fabric,
            stitches: 40,
            rows: 40,
            mass: Mass::from_grams(20),
            scale: Mass::from_grams(1),
            edges: true,
        };
        assert!(answer(&only(vec![bare(fabric, rectangle(40, 40))], weighed)).is_ok());
    }
    // The obvious sum from the rib's own gauge is a fifth short.
    let naive = expected(Fabric::Stockinette, swatch(34, 28));
    assert!(naive < 0.8 * plain);
}

/// Trap 2. The constants alone move the loop by -6 % to +3 %; the range is a tenth either way at the least.
#[test]
fn the_range_is_wider_than_the_state_of_rest() {
    let question = only(vec![bare(Fabric::Stockinette, rectangle(100, 100))], swatch(21, 28));
    let told = answer(&question).unwrap();
    let m = |length: Length| length.in_unit(LengthUnit::M);
    let (least, expected, most) = (m(told.length.least), m(told.length.expected), m(told.length.most));
    assert!(least < 0.9 * expected && most > 1.1 * expected);
    let states = told.steps.iter().find_map(|step| match step {
        Step::States { dry, wet, fully } => Some((m(*dry), m(*wet), m(*fully))),
        _ => None,
    });
    let (dry, wet, fully) = states.unwrap();
    assert!((dry / wet - 0.938).abs() < 1e-3 && (fully / wet - 1.034).abs() < 1e-3);
    // Half a stitch in 21 and half a row in 28 are 2.1 % by themselves.
    let reading = told.steps.iter().find_map(|step| match step {
        Step::Spread { reading, .. } => Some(*reading),
        _ => None,
    });
    assert!((208..=209).contains(&reading.unwrap()));
    // Balls come from the top, and the reserve is on the top.
    assert_eq!(told.need.to_nm(), (told.length.most.to_nm() * 11 + 9) / 10);
}

/// Trap 2. Lace pinned out by a quarter each way would overstate the yarn by a quarter.
#[test]
fn a_pinned_out_gauge_is_brought_back_to_rest() {
    let rest = gauge(25, 35);
    let pinned = gauge(20, 28);
    let right = expected(Fabric::Lace, swatch_of(Fabric::Lace, rest, Rest::Washed));
    let naive = expected(Fabric::Lace, swatch_of(Fabric::Lace, pinned, Rest::Washed));
    assert!((naive / right - 1.25).abs() < 1e-6);
    let asked = swatch_of(Fabric::Lace, pinned, Rest::PinnedOut { percent: 25 });
    assert!((expected(Fabric::Lace, asked) / right - 1.0).abs() < 1e-6);
    let told = answer(&only(vec![bare(Fabric::Lace, rectangle(10, 10))], asked)).unwrap();
    let note = Note::PinnedOut {
        percent: 25,
        overstated: 25,
    };
    assert!(told.notes.contains(&note));
}

/// Trap 21. 31 to 46 over 25 rows is 962 1/2, and two such are 1,925, not 1,924 or 1,926.
#[test]
fn halves_of_a_stitch_are_kept() {
    let sleeve = Section {
        times: 2,
        ..bare(
            Fabric::Stockinette,
            Shape::Trapezoid {
                from: 31,
                to: 46,
                rows: 25,
            },
        )
    };
    assert_eq!((sleeve.once().whole(), sleeve.once().has_half()), (962, true));
    let both = answer(&only(vec![sleeve.clone()], swatch(21, 28))).unwrap();
    assert_eq!(both.stitches, Some(StitchSum::of(1_925)));
    assert_ne!(2 * sleeve.once().whole(), 1_925);
    assert_ne!(2 * (sleeve.once().whole() + 1), 1_925);
}

/// Trap 21. Where there is a schedule it is summed: 60 to 100 by twos over 40 rows is 3,200 only on paper.
#[test]
fn a_schedule_is_summed_row_by_row() {
    let early: Vec<Level> = (1..=20)
        .map(|step| Level {
            stitches: 60 + 2 * step,
            rows: if step < 20 { 1 } else { 21 },
        })
        .collect();
    let late: Vec<Level> = (0..=20)
        .map(|step| Level {
            stitches: 60 + 2 * step,
            rows: if step > 0 { 1 } else { 20 },
        })
        .collect();
    let sum = |shape: Shape| Section::stockinette(shape).once().whole();
    let trapezoid = Shape::Trapezoid {
        from: 60,
        to: 100,
        rows: 40,
    };
    assert_eq!(sum(trapezoid), 3_200);
    assert_eq!(sum(Shape::Rows(early)), 3_620);
    assert_eq!(sum(Shape::Rows(late)), 2_820);
}

/// Trap 21. Edges, joins and the swatch are on from the start, each a line of its own.
#[test]
fn edges_and_ends_are_lines_of_their_own() {
    let question = Question::about(vec![Section::garter(rectangle(40, 400))], swatch(21, 28));
    let told = answer(&question).unwrap();
    let parts: Vec<Part> = told.lines.iter().map(|line| line.part).collect();
    let all = [
        Part::Knitting,
        Part::CastOn,
        Part::BindOff,
        Part::Swatch,
        Part::Joins,
        Part::Reserve,
    ];
    assert_eq!(parts, all);
    let joins = told.lines.iter().find(|line| line.part == Part::Joins).unwrap();
    assert_eq!(
        joins.length.most,
        practice::JOIN.saturating_mul(i64::from(told.balls) - 1)
    );
    let bare = only(vec![bare(Fabric::Garter, rectangle(40, 400))], swatch(21, 28));
    assert!(told.need > answer(&bare).unwrap().need);
}

/// Trap 22. Six balls of 125 m hold 750 m, however the 750 m came about; a float makes seven of some of them.
#[test]
fn six_balls_exactly_are_six() {
    let told = exactly(metres(750), 125);
    assert_eq!((told.balls, told.leftover), (6, Length::ZERO));
    let spare = Close::JustUnder {
        spare: Length::ZERO,
        one_more: 7,
    };
    assert_eq!(told.close, Some(spare));
    // In floats: 4.1 m of yarn, a hundred and twenty-three times, in balls of 4.1 m.
    let ball = Length::from_mm(4_100);
    let wanted = ball.saturating_mul(6);
    let floats: f64 = (0..6).map(|_| 4.1_f64).sum::<f64>() / 4.1;
    assert_eq!(floats.ceil(), 7.0, "{floats}");
    let question = Question {
        ball: Ball {
            length: ball,
            ..Ball::USUAL
        },
        ..Question::from_pattern(Ask::Length(wanted))
    };
    assert_eq!(answer(&question).unwrap().balls, 6);
}

/// Trap 22. Both sides of a whole ball are warned of: 3.97 and 4.03.
#[test]
fn both_sides_of_a_whole_ball_are_warned_of() {
    let under = exactly(metres(397), 100);
    assert_eq!(under.balls, 4);
    let spare = metres(3);
    assert_eq!(under.close, Some(Close::JustUnder { spare, one_more: 5 }));
    let over = exactly(metres(403), 100);
    assert_eq!(over.balls, 5);
    let few = Close::JustOver {
        over: metres(3),
        thousandths: 8,
        stitches: None,
    };
    assert_eq!(over.close, Some(few));
    assert_eq!(exactly(metres(450), 100).close, None);
    // One ball is never too many.
    assert_eq!(exactly(metres(3), 100).close, None);
}

/// Trap 22. What is left is bought less expected; the reserve is bought and not used.
#[test]
fn the_reserve_counts_as_left() {
    let question = Question::about(vec![Section::stockinette(rectangle(100, 200))], swatch(21, 28));
    let told = answer(&question).unwrap();
    assert_eq!(told.leftover, told.bought.saturating_sub(told.length.expected));
    let naive = told.bought.saturating_sub(told.need);
    assert!(told.leftover > naive);
}

/// Trap 22. Seven balls of 125 m mean more than six: 751 to 875 m, and the substitute is bought for the top.
#[test]
fn a_patterns_balls_are_a_range_bought_from_its_top() {
    let pattern = Ask::Balls {
        balls: 7,
        ball: Ball::USUAL,
    };
    let question = Question {
        ball: Ball {
            length: metres(210),
            ..Ball::USUAL
        },
        ..Question::from_pattern(pattern)
    };
    let told = answer(&question).unwrap();
    assert_eq!((told.length.least, told.length.most), (metres(751), metres(875)));
    assert_eq!((told.fewest, told.balls), (4, 5));
    assert_eq!((told.bought, told.leftover), (metres(1_050), metres(175)));
    // The thinner yarn is named as such: 400 and 238 tex.
    let thinner = Note::OtherThickness { pattern: 400, own: 238 };
    assert!(told.notes.contains(&thinner) && told.notes.contains(&Note::OneDyeLot));
}

/// Trap 26, for yarn. 21 and 28 in 4 in are another loop than in 10 cm, by 1.6 %.
#[test]
fn four_inches_are_another_loop_than_ten_centimetres() {
    let inches = Swatch::stockinette(Gauge::of(21, Gauge::FOUR_INCHES), Gauge::of(28, Gauge::FOUR_INCHES));
    let metric = swatch(21, 28);
    let plain = Fabric::Stockinette;
    assert!((expected(plain, inches) / expected(plain, metric) - 1.016).abs() < 1e-6);
    // And a metre square has as many stitches fewer, twice.
    let square = |(stitches, rows): (Gauge, Gauge)| {
        let shape = Shape::Area {
            width: metres(1),
            length: metres(1),
            stitches,
            rows,
        };
        Section::stockinette(shape).once().whole()
    };
    let four = Gauge::FOUR_INCHES;
    assert_eq!(square(gauge(21, 28)), 58_800);
    assert_eq!(square((Gauge::of(21, four), Gauge::of(28, four))), 56_962);
    // The two gauges may have different spans.
    assert_eq!(square((Gauge::of(21, four), Gauge::of(28, Gauge::TEN_CM))), 57_874);
}

#[test]
fn a_weighed_swatch_shares_its_yarn_between_its_loops() {
    // 24 g of 50 g / 125 m is 60 m; 40 x 60 and its edges are 2,528 loops.
    let weighed = Swatch::weighed(40, 60, Mass::from_grams(24));
    let told = answer(&only(vec![bare(Fabric::Stockinette, rectangle(100, 100))], weighed)).unwrap();
    let per_stitch = told.per_stitch.unwrap();
    assert_eq!(per_stitch.length.to_nm(), 23_734_177);
    assert_eq!((per_stitch.route, per_stitch.spread), (Route::Weighed, 1_000));
    assert!(told.notes.contains(&Note::Weighed));
    // Weight comes out as it went in, whatever the length on the band.
    let grams = told.mass.expected.in_unit(MassUnit::Gram);
    assert!((grams - 24.0 * 10_000.0 / 2_528.0).abs() < 1e-4, "{grams}");
    // A light one on a coarse scale says less.
    let light = Swatch::weighed(20, 20, Mass::from_grams(5));
    let told = answer(&only(vec![bare(Fabric::Stockinette, rectangle(100, 100))], light)).unwrap();
    assert_eq!(told.per_stitch.unwrap().spread, 2_500);
    let least = practice::SWATCH_MASS;
    assert!(told.notes.contains(&Note::WeighMore { least }));
}

#[test]
fn a_swatch_in_the_fabric_itself_needs_no_factor() {
    let weigh = |fabric| Swatch::Weighed {
        fabric,
        stitches: 40,
        rows: 60,
        mass: Mass::from_grams(24),
        scale: Mass::from_grams(1),
        edges: false,
    };
    let own = expected(Fabric::Rib, weigh(Fabric::Rib));
    assert_eq!(own, expected(Fabric::Stockinette, weigh(Fabric::Stockinette)));
    assert!(expected(Fabric::Stockinette, weigh(Fabric::Rib)) < own);
    // Both yarns of a colour-work swatch were weighed, and each is asked for by itself.
    let both = Fabric::Stranded { percent: 50 };
    assert!((expected(both, weigh(both)) / own - 0.5).abs() < 1e-9);
}

#[test]
fn every_wrong_quantity_is_named() {
    let good = Question::about(vec![Section::stockinette(rectangle(1, 1))], swatch(21, 28));
    assert!(answer(&good).is_ok());
    let with = |change: fn(&mut Question)| {
        let mut question = good.clone();
        change(&mut question);
        kinds(&question).into_iter().map(|(field, _)| field).collect::<Vec<_>>()
    };
    assert_eq!(with(|q| q.reserve = 101), ["reserve"]);
    assert_eq!(with(|q| q.ball.length = Length::ZERO), ["ball_length"]);
    assert_eq!(with(|q| q.ball.mass = Mass::ZERO), ["ball_mass"]);
    assert_eq!(with(|q| q.ask = Ask::Length(Length::ZERO)), ["length"]);
    assert_eq!(
        kinds(&Question::about(Vec::new(), swatch(21, 28))),
        [("sections", Kind::TooFew { least: 1 })]
    );
    let nothing = Shape::Trapezoid {
        from: 0,
        to: 0,
        rows: 5,
    };
    assert_eq!(Section::stockinette(nothing).problems().len(), 1);
    let vast = Section {
        times: 100,
        ..Section::stockinette(rectangle(100_000, 100_000))
    };
    assert_eq!(
        kinds(&Question::about(vec![vast], swatch(21, 28))),
        [("sections", Kind::TooMany { most: 50_000_000 })]
    );
    assert_eq!(
        kinds(&Question::about(
            vec![Section::stockinette(rectangle(1, 1))],
            swatch(401, 28)
        )),
        [("swatch_stitches", Kind::TooMany { most: 400 })]
    );
}

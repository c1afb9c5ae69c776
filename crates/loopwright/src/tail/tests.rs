//! Each obvious sum beside the right one, and the promises that hold for every question.

mod method;
mod properties;

use super::*;
use crate::choice::Key;
use crate::problem::Kind;
use crate::units::Gauge;
use proptest::prelude::*;

const CM: i64 = 10_000_000;

fn cm(whole: i64) -> Length {
    Length::of(whole, LengthUnit::Cm)
}

fn per_inch(wraps: u32) -> Option<Thickness> {
    Some(Thickness::Wraps(wraps))
}

fn measured(stitches: u32, used: Length) -> Option<Piece> {
    Some(Piece { stitches, used })
}

fn is_wraps(way: &Way) -> bool {
    matches!(way, Way::Wraps { .. })
}

fn is_class(way: &Way) -> bool {
    matches!(way, Way::Class { .. })
}

fn is_measured(way: &Way) -> bool {
    matches!(way, Way::Measured(_))
}

/// 120 stitches on 5 mm, 9 wraps an inch.
fn worsted() -> Question {
    Question {
        yarn: per_inch(9),
        needle: Some(Length::from_mm(5)),
        ..Question::about(120)
    }
}

fn by(answer: &Answer, way: fn(&Way) -> bool) -> &Estimate {
    answer.estimates.iter().find(|estimate| way(&estimate.way)).unwrap()
}

fn winner(answer: &Answer) -> Way {
    answer.estimates[answer.wins.unwrap()].way
}

#[test]
fn yarn_is_as_thick_as_its_wraps_and_not_as_its_count() {
    let answer = answer(&worsted()).unwrap();
    let wraps = by(&answer, is_wraps).needs.most;
    // Wraps 2.95 m, an inch a stitch 3.05 m.
    assert_eq!((wraps.to_nm() + CM / 2) / CM, 295);
    assert_eq!(by(&answer, is_class).needs.most, Length::from_inches(120));
    // The obvious sum takes how thick the yarn is from its count: Peirce, 0.03733 sqrt(tex) mm. 100 g in 180 m are
    // 555.6 tex, so 0.88 mm and 2.22 m, which by the wraps runs out near stitch 90.
    let peirce = 0.037_33 * (100_000.0_f64 / 180.0).sqrt();
    let obvious = 120.0 * std::f64::consts::PI * (5.0 + peirce);
    let obvious = Length::from_f64(obvious, LengthUnit::Mm).unwrap();
    assert_eq!((obvious.to_nm() + CM / 2) / CM, 222);
    let bare = Question {
        yarn: worsted().yarn,
        end: Length::ZERO,
        left: Some(Left {
            tail: obvious,
            to_go: 120,
        }),
        ..worsted()
    };
    let left = super::answer(&bare).unwrap().left.unwrap();
    assert_eq!(left.verdict, Verdict::Short);
    let reached = obvious.to_nm() * 120 / wraps.to_nm();
    assert_eq!(reached, 90);
}

#[test]
fn the_needle_is_the_one_of_the_cast_on_and_two_are_added() {
    let needs = |needle: i64, second: Option<i64>| {
        let question = Question {
            needle: Some(Length::from_mm(needle)),
            second: second.map(Length::from_mm),
            ..worsted()
        };
        by(&answer(&question).unwrap(), is_wraps).needs.most
    };
    let two = needs(5, Some(5));
    assert_eq!(two, needs(10, None));
    // The obvious sum takes one of the two, which is the knitting needle: more than a third short.
    assert!(needs(5, None).saturating_mul(3) < two.saturating_mul(2));
}

#[test]
fn needles_and_measures_are_never_rounded() {
    let needs = |question: Question| answer(&question).unwrap().estimates[0].needs.most.to_nm();
    // 120 turns round 2.25 mm and 25.4 / 12 mm of yarn; a needle rounded to half a millimetre
    // takes 94 mm more.
    let sock = Question {
        yarn: per_inch(12),
        needle: Some(Length::from_nm(2_250_000)),
        ..worsted()
    };
    let turns = 120.0 * std::f64::consts::PI * (2.25 + 25.4 / 12.0);
    assert!((needs(sock) as f64 / 1e6 - turns).abs() < 0.01);
    // 60.3 cm and not the 60.5 on the page: four times that are 241.2 cm, not 242.
    let edge = Question {
        width: Some(Length::from_mm(603)),
        ..Question::about(120)
    };
    assert_eq!(needs(edge), Length::from_mm(2_412).to_nm());
    // 20 stitches used 17 1/2 in; a printed 44.5 cm gives 267 cm for 120.
    let piece = Question {
        measured: measured(20, Length::from_sixty_fourths(17 * 64 + 32)),
        ..Question::about(120)
    };
    assert_eq!(needs(piece), Length::from_inches(105).to_nm());
}

#[test]
fn what_was_measured_over_few_stitches_does_not_beat_the_largest() {
    let with = |stitches: u32, used: Length| {
        let question = Question {
            measured: measured(stitches, used),
            ..worsted()
        };
        answer(&question).unwrap()
    };
    // Ten stitches used 20 cm: 2.4 m. The obvious sum lets it win; the rule says 3.05 m.
    let few = with(10, cm(20));
    assert_eq!(by(&few, is_measured).needs.most, cm(240));
    assert!(is_class(&winner(&few)));
    assert_eq!((few.why, few.reserve), (Why::FewMeasured, USUAL_RESERVE));
    // Where it is the larger it wins, on few stitches too.
    assert!(is_measured(&winner(&with(10, cm(30)))));
    assert!(is_class(&winner(&with(19, cm(38)))));
    let enough = with(20, cm(40));
    assert!(is_measured(&winner(&enough)));
    assert_eq!(enough.why, Why::Measured);
}

#[test]
fn measured_gets_five_percent_and_the_end_once() {
    // 20 stitches used 34 cm; 120 take 204 cm, 5 % is 10.2 cm, and 20 cm.
    let question = Question {
        measured: measured(20, cm(34)),
        ..worsted()
    };
    let answer = answer(&question).unwrap();
    assert_eq!(answer.tail, Length::from_mm(2_342));
    // The obvious sum puts the reserve on the end too.
    let obvious = Length::from_mm((2_040 + 200) * 105 / 100);
    assert_eq!(obvious, Length::from_mm(2_352));
    assert_ne!(answer.tail, obvious);
    assert_eq!((answer.needs, answer.with_reserve), (cm(204), Length::from_mm(2_142)));
}

#[test]
fn the_reserve_is_on_the_stitches_only() {
    let tail = |end: Length, stitches: u32| {
        let question = Question {
            stitches,
            end,
            ..worsted()
        };
        answer(&question).unwrap().tail
    };
    let without = tail(Length::ZERO, 120);
    assert_eq!(tail(cm(20), 120).saturating_sub(without), cm(20));
    assert_eq!(tail(cm(20), 12).saturating_sub(tail(Length::ZERO, 12)), cm(20));
}

#[test]
fn three_and_up_times_the_edge() {
    let question = Question {
        width: Some(cm(60)),
        ..Question::about(120)
    };
    let answer = answer(&question).unwrap();
    let needs = answer.estimates[0].needs;
    assert_eq!((needs.least, needs.most), (cm(180), cm(240)));
    assert_eq!((answer.tail, answer.why), (cm(264 + 20), Why::Largest));
    assert_eq!(answer.range.least, cm(200));
}

#[test]
fn nothing_known_is_a_problem_for_a_long_tail_only() {
    let needle = Some(Length::from_mm(4));
    let question = Question {
        needle,
        ..Question::about(100)
    };
    let missing = Problem::new(Name::Yarn, Kind::Missing);
    assert_eq!(answer(&question), Err(vec![missing]));
    let method = Method::Knitted;
    assert!(answer(&Question { method, ..question }).is_ok());
}

#[test]
fn enough_tight_and_short_are_told_by_how_much() {
    let with = |tail: i64| {
        let question = Question {
            measured: measured(20, cm(40)),
            left: Some(Left {
                tail: cm(tail),
                to_go: 50,
            }),
            ..worsted()
        };
        answer(&question).unwrap().left.unwrap()
    };
    // 50 stitches: 100 cm, 105 with the reserve, 125 with the end.
    assert_eq!(with(130).verdict, Verdict::Enough);
    assert_eq!((with(130).over, with(125).over), (cm(5), Length::ZERO));
    assert_eq!(with(124).verdict, Verdict::Tight);
    assert_eq!((with(124).over, with(124).over_bare), (cm(-1), cm(4)));
    let short = with(62);
    assert_eq!((short.verdict, short.over), (Verdict::Short, cm(-63)));
    assert_eq!(short.over_bare, cm(-58));
}

#[test]
fn wraps_find_the_class_they_begin() {
    for row in &CLASSES {
        let question = Question {
            yarn: row.wraps.least.and_then(per_inch),
            ..Question::about(100)
        };
        let answer = answer(&question).unwrap();
        let each = per_stitch(row.weight);
        assert_eq!(answer.estimates[0].piece.used, each, "{:?}", row.weight);
    }
    assert_eq!(
        per_stitch(Weight::Medium),
        answer(&worsted()).unwrap().estimates[1].piece.used
    );
}

#[test]
fn a_stitch_by_class_is_the_inch_scaled_by_the_needle_and_rounded_up() {
    for row in &CLASSES {
        let ends = (row.needle.least.unwrap(), row.needle.most);
        let twice = ends.0.saturating_add(ends.1.unwrap_or(ends.0));
        // An inch is for the 5 mm in the middle of class 4: eighths are 8 x (twice / 2) / 5 mm, rounded up.
        let eighths = twice.saturating_mul(4).div_ceil(Length::from_mm(5)).unwrap();
        let expected = Length::from_sixty_fourths(8 * eighths);
        assert_eq!(per_stitch(row.weight), expected, "{:?}", row.weight);
    }
    assert_eq!(class(Weight::Medium).needle.least, Some(Length::from_nm(4_500_000)));
}

#[test]
fn every_field_out_of_bounds_is_named() {
    let question = Question {
        stitches: 0,
        yarn: per_inch(300),
        needle: Some(Length::from_mm(51)),
        second: Some(Length::ZERO),
        width: Some(Length::ZERO),
        gauge: Some(Gauge::of(0, Gauge::TEN_CM)),
        measured: measured(0, Length::from_mm(-1)),
        end: Length::from_mm(-1),
        left: Some(Left {
            tail: Length::from_mm(-1),
            to_go: 1,
        }),
        method: Method::LongTail,
    };
    let problems = answer(&question).unwrap_err();
    let names: Vec<Name> = problems.iter().filter_map(|problem| problem.field.name()).collect();
    let all = [
        Name::Stitches,
        Name::End,
        Name::LeftTail,
        Name::LeftToGo,
        Name::Yarn,
        Name::Needle,
        Name::Second,
        Name::Width,
        Name::Gauge,
        Name::MeasuredStitches,
        Name::MeasuredUsed,
    ];
    assert_eq!(names, all);
    assert_eq!(problems[4].kind, Kind::TooMany { most: WRAPS.most });
    let cable = Question {
        stitches: 10,
        method: Method::Cable,
        end: cm(15),
        left: None,
        ..question
    };
    assert!(answer(&cable).is_ok(), "what a method does not need is not looked at");
}

/// Where the gauge is known the edge need not be measured: 120 stitches at 20 in 10 cm lie 60 cm.
#[test]
fn a_gauge_says_how_long_the_edge_will_lie() {
    let gauge = Some(Gauge::of(20, Gauge::TEN_CM));
    let by_gauge = answer(&Question {
        gauge,
        ..Question::about(120)
    })
    .unwrap();
    let needs = by_gauge.estimates[0].needs;
    assert_eq!((needs.least, needs.most), (cm(180), cm(240)));
    let measured = answer(&Question {
        width: Some(cm(60)),
        ..Question::about(120)
    });
    assert_eq!(measured.unwrap().tail, by_gauge.tail);
    // Beside the others, and none of them is dropped for it.
    let beside = answer(&Question {
        gauge,
        width: Some(cm(58)),
        ..worsted()
    });
    assert_eq!(beside.unwrap().estimates.len(), 4);
}

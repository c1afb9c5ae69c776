//! Each obvious sum beside the right one, and the promises that hold for every question.

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
fn the_method_of_casting_on_is_asked() {
    let tail = |method: Method| answer(&Question { method, ..worsted() }).unwrap();
    let long = tail(Method::LongTail);
    // The obvious sum is the same for all: 3.5 m for methods that need 20 cm.
    for method in [
        Method::Cable,
        Method::Knitted,
        Method::BackwardLoop,
        Method::CrochetChain,
    ] {
        let short = tail(method);
        assert_eq!((short.tail, short.strand), (cm(20), Strand::EndOnly), "{method:?}");
        assert_eq!((short.range.least, short.range.most), (cm(15), cm(20)));
        assert!(short.estimates.is_empty());
        assert!(long.tail > short.tail.saturating_mul(10));
    }
    let twisted = tail(Method::TwistedGerman);
    let stitches = |answer: &Answer| answer.tail.saturating_sub(USUAL_END);
    assert_eq!(
        stitches(&twisted).saturating_mul(100),
        stitches(&long).saturating_mul(130)
    );
    let range = by(&twisted, is_class).needs;
    assert_eq!(range.least, Length::from_inches(150));
    assert_eq!(range.most, Length::from_inches(156));
    let two = tail(Method::TwoStrand);
    assert_eq!((two.tail, two.strand), (cm(20), Strand::Second));
    let tubular = tail(Method::Tubular);
    assert_eq!(tubular.tail, cm(20));
    assert_eq!(tubular.waste, Some(60));
}

#[test]
fn half_of_an_odd_count_in_waste_yarn_is_rounded_up() {
    let question = Question {
        method: Method::Tubular,
        ..Question::about(121)
    };
    assert_eq!(answer(&question).unwrap().waste, Some(61));
}

#[test]
fn a_measured_piece_has_the_factor_of_its_method_in_it() {
    let question = Question {
        method: Method::TwistedGerman,
        measured: measured(20, cm(60)),
        ..worsted()
    };
    let answer = answer(&question).unwrap();
    // The obvious sum takes 130 % of what was cast on twisted already.
    assert_eq!(by(&answer, is_measured).needs.most, cm(360));
    assert_eq!(answer.tail, cm(360 + 18 + 20));
}

#[test]
fn the_extra_stitch_of_a_join_has_its_tail_too() {
    use crate::cast_on;
    let question = cast_on::Question {
        knitting: cast_on::Knitting::Round { extra: true },
        ..cast_on::Question::about(cm(60), Gauge::of(20, Gauge::TEN_CM))
    };
    let pick = cast_on::answer(&question).unwrap().pick;
    let tail = |stitches: u32| {
        let measured = measured(20, cm(34));
        let question = Question {
            measured,
            ..Question::about(stitches)
        };
        answer(&question).unwrap().tail
    };
    // 17 mm and 5 %, which the obvious sum for the 120 of the round leaves out.
    let one = tail(pick.cast_on).saturating_sub(tail(pick.worked));
    assert_eq!(one, Length::from_nm(17_850_000));
}

#[test]
fn two_strands_are_offered_above_a_count() {
    let offered = |stitches: u32| {
        let question = Question { stitches, ..worsted() };
        answer(&question).unwrap().two_strands
    };
    assert!(!offered(TWO_STRANDS_ABOVE) && offered(TWO_STRANDS_ABOVE + 1));
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

fn any_question() -> impl Strategy<Value = Question> {
    let yarn = prop_oneof![
        Just(None),
        (2_u32..40).prop_map(per_inch),
        (0_usize..8).prop_map(|index| Some(Thickness::Class(CLASSES[index].weight))),
    ];
    let mm = |least: i64, most: i64| (least * 1_000_000..most * 1_000_000).prop_map(Length::from_nm);
    let needle = (mm(1, 20), proptest::option::of(mm(1, 20)));
    let piece = (1_u32..60, mm(10, 2_000)).prop_map(|(stitches, used)| Piece { stitches, used });
    (
        (1_u32..1_000, 0_usize..8, yarn),
        proptest::option::of(needle),
        mm(50, 3_000),
        proptest::option::of(piece),
        (mm(0, 500), mm(0, 20_000), 0.0..=1.0_f64),
    )
        .prop_map(
            |((stitches, method, yarn), needle, width, measured, (end, tail, share))| Question {
                method: Method::ALL[method],
                yarn,
                needle: needle.map(|(first, _)| first),
                second: needle.and_then(|(_, second)| second),
                width: Some(width),
                measured,
                end,
                left: Some(Left {
                    tail,
                    to_go: (f64::from(stitches) * share) as u32,
                }),
                ..Question::about(stitches)
            },
        )
}

proptest! {
    #[test]
    fn the_tail_is_the_winner_with_reserve_and_the_end_once(question in any_question()) {
        let answer = answer(&question).unwrap();
        prop_assert!(answer.range.least <= answer.tail && answer.tail <= answer.range.most);
        let Some(wins) = answer.wins else {
            prop_assert_eq!(answer.tail, question.end);
            return Ok(());
        };
        let wins = &answer.estimates[wins];
        let trusted = question.measured.is_some_and(|m| m.stitches >= MEASURED_FROM);
        if trusted {
            prop_assert!(is_measured(&wins.way));
        } else {
            prop_assert!(answer.estimates.iter().all(|e| e.needs.most <= wins.needs.most));
        }
        let expected = i128::from(wins.needs.most.to_nm()) * i128::from(100 + answer.reserve) / 100;
        let expected = expected + i128::from(question.end.to_nm());
        // `needs` was rounded up once, and so was the tail: twice a nanometre at the most.
        prop_assert!((i128::from(answer.tail.to_nm()) - expected).abs() <= 2);
        prop_assert!(answer.estimates.iter().all(|e| e.needs.least <= e.needs.most));
    }

    #[test]
    fn the_tail_that_was_left_is_enough_for_all_and_exactly_so(question in any_question()) {
        let tail = answer(&question).unwrap().tail;
        let left = Left { tail, to_go: question.stitches };
        let again = answer(&Question { left: Some(left), ..question }).unwrap().left.unwrap();
        prop_assert_eq!((again.verdict, again.over), (Verdict::Enough, Length::ZERO));
    }

    #[test]
    fn arms_lengths_never_fall_short_and_by_less_than_a_tenth(question in any_question()) {
        let answer = answer(&question).unwrap();
        let (tail, arm) = (i128::from(answer.tail.to_nm()), i128::from(ARM.to_nm()));
        let Fraction { over, under } = answer.arms;
        // In tenths of an arm: the sum without a division.
        prop_assert_eq!(10 % under, 0);
        let tenths = i128::from(over * (10 / under));
        prop_assert!(tenths * arm >= tail * 10 && (tenths - 1) * arm < tail * 10);
    }

    #[test]
    fn the_verdict_is_what_is_over(question in any_question()) {
        let left = answer(&question).unwrap().left.unwrap();
        prop_assert_eq!(left.verdict == Verdict::Enough, left.over >= Length::ZERO);
        prop_assert_eq!(left.verdict == Verdict::Short, left.over_bare < Length::ZERO);
    }

    #[test]
    fn what_is_left_gives_as_many_stitches_as_it_says_and_no_more(question in any_question()) {
        let tail = question.left.unwrap().tail;
        let with = |to_go: u32| {
            // Only then may so many be to go; what they take hangs on the stitches by the edge alone.
            let left = Some(Left { tail, to_go: to_go.min(question.stitches) });
            answer(&Question { left, ..question }).unwrap().left.unwrap()
        };
        let Some(gives) = with(0).gives else {
            let is_thumb = matches!(question.method.strand(), Strand::Thumb { .. });
            prop_assert!(!is_thumb);
            return Ok(());
        };
        prop_assert!(gives.with_reserve <= gives.bare);
        for to_go in [gives.with_reserve, gives.bare, gives.with_reserve + 1, gives.bare + 1] {
            if to_go > question.stitches {
                continue;
            }
            let verdict = with(to_go).verdict;
            let is_short_of_its_end = tail < question.end;
            prop_assert_eq!(verdict == Verdict::Enough, !is_short_of_its_end && to_go <= gives.with_reserve);
            prop_assert_eq!(verdict == Verdict::Short, is_short_of_its_end || to_go > gives.bare);
        }
    }

    #[test]
    fn more_stitches_never_need_less(question in any_question(), more in 1_u32..500) {
        // By the edge alone more stitches lie in the same edge, so it is longer too.
        let width = question.width.map(|width| {
            let nm = i128::from(width.to_nm()) * i128::from(question.stitches + more) / i128::from(question.stitches);
            Length::from_nm(nm as i64)
        });
        let longer = Question { stitches: question.stitches + more, width, ..question };
        let tail = |question: &Question| answer(question).unwrap().tail;
        // The longer edge was rounded down, to four nanometres and 130 % and a reserve of as much again.
        let slack = Length::from_nm(12);
        prop_assert!(tail(&longer).saturating_add(slack) >= tail(&question));
    }

    #[test]
    fn nothing_panics(
        stitches: u32,
        method in 0_usize..8,
        wraps: u32,
        nm: [i64; 6],
        counts: [u32; 2],
    ) {
        let [a, b, c, d, e, f] = nm.map(Length::from_nm);
        let question = Question {
            method: Method::ALL[method],
            yarn: per_inch(wraps),
            needle: Some(a),
            second: Some(b),
            width: Some(c),
            gauge: Some(Gauge::of(counts[1], b)),
            measured: measured(counts[0], d),
            end: e,
            left: Some(Left { tail: f, to_go: counts[1] }),
            ..Question::about(stitches)
        };
        let _ = answer(&question);
        let _ = answer(&Question { yarn: None, needle: None, width: None, gauge: None, measured: None, ..question });
        let most = Question {
            stitches: STITCHES.most,
            yarn: Some(Thickness::Class(Weight::Jumbo)),
            needle: Some(NEEDLE.most),
            second: Some(NEEDLE.most),
            width: Some(EDGE.most),
            gauge: Some(Gauge::of(1, Gauge::TEN_CM)),
            measured: measured(1, USED.most),
            end: END.most,
            left: Some(Left { tail: LEFT.most, to_go: STITCHES.most }),
            ..question
        };
        let answer = answer(&most).unwrap();
        prop_assert!(answer.tail < Length::MAX);
    }
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

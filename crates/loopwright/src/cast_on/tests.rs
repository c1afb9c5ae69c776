//! The nearest count by trying them all, the round against the flat, and each obvious sum beside the right one.

use super::*;
use proptest::prelude::*;

const METRE: Length = Length::of(1, LengthUnit::M);
const ROUND: Knitting = Knitting::Round { extra: false };

/// 21 stitches in 10 cm.
fn metre() -> Question {
    Question::about(METRE, Gauge::of(21, Gauge::TEN_CM))
}

fn eight_plus_three(knitting: Knitting) -> Answer {
    let multiple = Multiple { of: 8, plus: 3 };
    let question = Question {
        multiple,
        knitting,
        ..metre()
    };
    answer(&question).unwrap()
}

#[test]
fn multiple_of_m_plus_c_in_the_round_drops_c_and_says_so() {
    let round = eight_plus_three(ROUND);
    assert_eq!(round.pick.cast_on % 8, 0);
    assert!(round.notes.contains(&Note::PlusDropped { plus: 3 }));
    // The obvious sum carries the plus into the round: 208 + 3, which no repeat of 8 closes.
    let carried = 8 * round.pick.repeats + 3;
    assert_ne!((carried, carried % 8), (round.pick.cast_on, 0));
}

#[test]
fn multiple_of_m_plus_c_has_its_c_back_when_flat() {
    let flat = Knitting::Flat { edge: 0, seam: 0 };
    let answer = eight_plus_three(flat);
    assert_eq!((answer.pick.cast_on, answer.pick.cast_on % 8), (211, 3));
    let dropped = |note: &Note| matches!(note, Note::PlusDropped { .. });
    assert!(!answer.notes.iter().any(dropped));
    assert_eq!((answer.pick.repeats, answer.plus), (26, 3));
}

#[test]
fn seam_stitches_are_outside_the_width() {
    let question = Question {
        knitting: Knitting::SEWN,
        width: Length::of(50, LengthUnit::Cm),
        ..metre()
    };
    let piece = answer(&question).unwrap().pick;
    assert_eq!((piece.inside, piece.cast_on), (105, 107));
    assert_eq!(piece.width, question.width);
    // The obvious sum has no seam: two pieces sewn lose 4 stitches, which at 21 in 10 cm is 1.9 cm.
    let lost = question.gauge.width_of(4.0).unwrap();
    assert_eq!(lost, Length::from_nm(19_047_619));
    let obvious = question.gauge.width_of(f64::from(2 * piece.inside - 4)).unwrap();
    assert_eq!(METRE.saturating_sub(obvious), lost);
    let ours = question.gauge.width_of(f64::from(2 * piece.cast_on - 4)).unwrap();
    assert_eq!(ours, METRE);
}

#[test]
fn edge_stitches_are_outside_the_multiple_and_seen() {
    let answer = eight_plus_three(Knitting::Flat { edge: 2, seam: 1 });
    let pick = answer.pick;
    assert_eq!((pick.inside, pick.worked, pick.cast_on), (211, 211 + 6, 211 + 6));
    // The width is that of the 211, seen and sewn edges apart.
    assert_eq!(pick.width, metre().gauge.width_of(211.0).unwrap());
    assert!(answer.notes.contains(&Note::EdgesWiden { stitches: 4 }));
    assert!(answer.notes.contains(&Note::SeamsTakeIn { stitches: 2 }));
}

#[test]
fn joining_in_the_round_with_one_extra_stitch() {
    let width = Length::of(60, LengthUnit::Cm);
    let gauge = Gauge::of(20, Gauge::TEN_CM);
    let question = Question {
        knitting: Knitting::Round { extra: true },
        ..Question::about(width, gauge)
    };
    let answer = answer(&question).unwrap();
    assert_eq!((answer.pick.cast_on, answer.pick.worked), (121, 120));
    assert_eq!(answer.pick.width, width);
    assert!(answer.notes.contains(&Note::JoinTogether { after: 120 }));
    // Markers are for what is cast on; the obvious plan for 120 leaves the extra stitch uncounted.
    let twenty = answer.markers[0];
    assert_eq!((twenty.groups, twenty.rest, twenty.marks().len()), (6, 1, 6));
    assert_ne!(twenty, MarkerPlan::of(answer.pick.worked, 20));
    assert_eq!(twenty.next(120), Some(121));
}

#[test]
fn ten_centimetres_are_not_four_inches_when_casting_on() {
    let inches = Question {
        gauge: Gauge::of(21, Gauge::FOUR_INCHES),
        ..metre()
    };
    let (ten, four) = (answer(&metre()).unwrap(), answer(&inches).unwrap());
    // The obvious sum takes one for the other: 3 stitches of 210, and a metre that measures 98.6 cm.
    assert_eq!((ten.pick.cast_on, four.pick.cast_on), (210, 207));
    let wrong = metre().gauge.width_of(207.0).unwrap();
    assert_eq!(METRE.saturating_sub(wrong), Length::from_nm(14_285_714));
    assert_eq!(ten.ideal.to_f64(), 210.0);
    assert!((four.ideal.to_f64() - 206.69).abs() < 0.01);
}

#[test]
fn neighbours_are_a_repeat_away_with_their_own_widths() {
    let answer = eight_plus_three(ROUND);
    let (below, above) = (answer.below.unwrap(), answer.above.unwrap());
    assert_eq!((below.cast_on, above.cast_on), (200, 216));
    assert_eq!(below.width, Length::from_nm(952_380_952));
    assert_eq!(above.off, Length::from_nm(28_571_429));
}

#[test]
fn of_two_equally_near_the_fewer_are_picked_beside_the_other() {
    let multiple = Multiple { of: 4, plus: 0 };
    let question = Question { multiple, ..metre() };
    let answer = answer(&question).unwrap();
    assert_eq!(answer.pick.cast_on, 208);
    let above = answer.above.unwrap();
    assert_eq!((above.cast_on, above.off), (212, Length::from_nm(9_523_810)));
    assert_eq!(answer.pick.off, Length::from_nm(-9_523_810));
    assert!(answer.as_near);
    // 22 in 10 cm: 220 lies midway between 27 and 28 repeats of 8.
    let multiple = Multiple { of: 8, plus: 0 };
    let question = Question::about(METRE, Gauge::of(22, Gauge::TEN_CM));
    let answer = super::answer(&Question { multiple, ..question }).unwrap();
    let above = answer.above.map(|count| count.cast_on);
    assert_eq!((answer.pick.cast_on, above, answer.as_near), (216, Some(224), true));
    // A nanometre more, and there is one that is nearer.
    let width = METRE.saturating_add(Length::from_nm(1));
    let answer = super::answer(&Question {
        multiple,
        width,
        ..question
    })
    .unwrap();
    assert_eq!((answer.pick.cast_on, answer.as_near), (224, false));
}

#[test]
fn at_least_one_repeat() {
    let question = Question {
        width: Length::of(3, LengthUnit::Cm),
        multiple: Multiple { of: 24, plus: 30 },
        ..metre()
    };
    let round = answer(&question).unwrap();
    assert_eq!((round.pick.cast_on, round.below), (24, None));
    assert!(round.pick.off > Length::ZERO);
    let flat = Question {
        knitting: Knitting::SEWN,
        ..question
    };
    assert_eq!(answer(&flat).unwrap().pick.inside, 54);
}

#[test]
fn the_range_is_half_a_stitch_of_reading() {
    let range = answer(&metre()).unwrap().range;
    // 210 at 21.5 and at 20.5 in 10 cm: the swatch is good for 97.7 to 102.4 cm.
    assert_eq!(range.least, Length::from_nm(976_744_186));
    assert_eq!(range.most, Length::from_nm(1_024_390_244));
}

/// 31 1/2 in 15 cm are 21 in 10 cm, and half a stitch of them is less: the obvious range of half a stitch in every 10 cm
/// would be as wide as before, and counting over a longer span no cure.
#[test]
fn the_range_is_of_the_span_that_was_counted() {
    let span = Length::from_mm(150);
    let longer = Question {
        gauge: Gauge::new(31_500, span).unwrap(),
        ..metre()
    };
    let longer = answer(&longer).unwrap();
    assert_eq!(longer.pick.inside, 210);
    // 210 at 32 and at 31 in 15 cm: 98.4 to 101.6 cm.
    assert_eq!(longer.range.least, Length::from_nm(984_375_000));
    assert_eq!(longer.range.most, Length::from_nm(1_016_129_032));
}

#[test]
fn too_many_to_cast_on_names_the_widest_that_can_be() {
    let gauge = Gauge::of(400, Gauge::SPANS.least);
    let question = Question::about(WIDTH.most, gauge);
    let problems = answer(&question).unwrap_err();
    let Kind::TooLarge {
        most: Amount::Length(most),
    } = problems[0].kind
    else {
        panic!("{problems:?}");
    };
    let widest = answer(&Question::about(most, gauge)).unwrap();
    assert_eq!(widest.pick.cast_on, STITCHES.most);
    assert_eq!(widest.above, None);
    // The stitch of the join is one of them: the obvious sum casts on 100,001.
    let knitting = Knitting::Round { extra: true };
    let joined = |width| {
        answer(&Question {
            knitting,
            ..Question::about(width, gauge)
        })
    };
    assert!(joined(most).is_err());
    let one_less = most.saturating_sub(gauge.width_of(1.0).unwrap());
    assert_eq!(joined(one_less).unwrap().pick.cast_on, STITCHES.most);
}

#[test]
fn every_field_out_of_bounds_is_named() {
    let question = Question {
        width: Length::ZERO,
        gauge: Gauge::new(999, Length::from_nm(1)).unwrap(),
        multiple: Multiple { of: 0, plus: 1_001 },
        knitting: Knitting::Flat {
            edge: u32::MAX,
            seam: 101,
        },
    };
    let problems = answer(&question).unwrap_err();
    let names: Vec<Name> = problems.iter().filter_map(|problem| problem.field.name()).collect();
    let all = [
        Name::Width,
        Name::Gauge,
        Name::Gauge,
        Name::Multiple,
        Name::Plus,
        Name::Edge,
        Name::Seam,
    ];
    assert_eq!(names, all);
}

fn any_knitting() -> impl Strategy<Value = Knitting> {
    prop_oneof![
        any::<bool>().prop_map(|extra| Knitting::Round { extra }),
        (0_u32..=6, 0_u32..=3).prop_map(|(edge, seam)| Knitting::Flat { edge, seam }),
    ]
}

fn any_question() -> impl Strategy<Value = Question> {
    let span = prop_oneof![Just(Gauge::TEN_CM), Just(Gauge::FOUR_INCHES)];
    let width = 5_000_000_i64..3_000_000_000;
    (width, 3_000_u32..60_000, span, 1_u32..40, 0_u32..20, any_knitting()).prop_map(
        |(nm, thousandths, span, of, plus, knitting)| Question {
            width: Length::from_nm(nm),
            gauge: Gauge::new(thousandths, span).unwrap(),
            multiple: Multiple { of, plus },
            knitting,
        },
    )
}

proptest! {
    #[test]
    fn no_count_of_the_pattern_is_nearer(question in any_question()) {
        let answer = answer(&question).unwrap();
        let plus = match question.knitting {
            Knitting::Round { .. } => 0,
            Knitting::Flat { .. } => question.multiple.plus,
        };
        let ideal = question.gauge.count_over(question.width);
        let miss = |count: u32| (f64::from(count) - ideal).abs();
        let nearest = (1..)
            .map(|repeats| repeats * question.multiple.of + plus)
            .take_while(|count| f64::from(*count) < ideal + 80.0 || *count <= question.multiple.of + plus)
            .map(miss)
            .fold(f64::INFINITY, f64::min);
        prop_assert!((miss(answer.pick.inside) - nearest).abs() < 1e-6);
        prop_assert!((answer.pick.inside - plus).is_multiple_of(question.multiple.of));
    }

    #[test]
    fn as_near_is_as_far_off_on_the_other_side(question in any_question()) {
        let answer = answer(&question).unwrap();
        let ideal = question.gauge.count_over(question.width);
        let miss = |count: Count| (f64::from(count.inside) - ideal).abs();
        let above = answer.above.map_or(f64::INFINITY, miss);
        prop_assert_eq!(answer.as_near, (above - miss(answer.pick)).abs() < 1e-9);
    }

    #[test]
    fn the_parts_add_up(question in any_question()) {
        let answer = answer(&question).unwrap();
        for count in [Some(answer.pick), answer.below, answer.above].into_iter().flatten() {
            let (beside, extra) = match question.knitting {
                Knitting::Round { extra } => (0, u32::from(extra)),
                Knitting::Flat { edge, seam } => (2 * (edge + seam), 0),
            };
            prop_assert_eq!(count.worked, count.inside + beside);
            prop_assert_eq!(count.cast_on, count.worked + extra);
            prop_assert_eq!(count.off, count.width.saturating_sub(question.width));
            let width = question.gauge.width_of(f64::from(count.inside)).unwrap();
            prop_assert!(width.saturating_sub(count.width).to_nm().abs() <= 1);
        }
        prop_assert!(answer.range.least < answer.pick.width && answer.pick.width < answer.range.most);
        prop_assert!(answer.below.is_none_or(|below| below.width < answer.pick.width));
    }

    #[test]
    fn markers_count_every_stitch_once(stitches in 0_u32..100_000, every in 0_u32..200) {
        let plan = MarkerPlan::of(stitches, every);
        prop_assert_eq!(plan.groups * plan.every + plan.rest, stitches);
        // From tap to tap: every marker, then the end, and back again.
        let marks = plan.marks();
        prop_assert!(marks.iter().all(|mark| *mark < stitches));
        let mut on = 0;
        for end in marks.iter().copied().chain((stitches > 0).then_some(stitches)) {
            prop_assert_eq!(plan.before(end), Some(on).filter(|on| *on > 0));
            prop_assert_eq!(plan.next(on), Some(end));
            on = end;
        }
        prop_assert_eq!(plan.next(on), None);
    }

    #[test]
    fn nothing_panics(
        lengths: [i64; 2],
        counts: [u32; 5],
        extra: bool,
        flat: bool,
    ) {
        let [nm, span] = lengths;
        let [thousandths, of, plus, edge, seam] = counts;
        let span = Length::from_nm(span.saturating_abs().max(1));
        let knitting = if flat { Knitting::Flat { edge, seam } } else { Knitting::Round { extra } };
        let gauge = Gauge::new(thousandths.max(1), span).unwrap();
        for multiple in [Multiple { of, plus }, Multiple { of: 1_000, plus: 1_000 }] {
            let question = Question { width: Length::from_nm(nm), gauge, multiple, knitting };
            let _ = answer(&question);
            let allowed = Question { width: WIDTH.most, knitting: Knitting::Flat { edge: 100, seam: 100 }, ..question };
            let _ = answer(&allowed);
            let _ = answer(&Question { gauge: Gauge::of(400, Gauge::SPANS.least), ..allowed });
        }
    }
}

#[test]
fn a_tap_goes_on_from_where_the_count_is() {
    let plan = MarkerPlan::of(47, 20);
    // Begun with other markers.
    assert_eq!((plan.next(25), plan.before(25)), (Some(40), Some(20)));
    assert_eq!((plan.next(u32::MAX), plan.before(20)), (None, None));
}

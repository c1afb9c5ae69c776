//! Each obvious swatch beside the right one, and what holds for every swatch.

use super::*;
use crate::choice::Key;
use crate::tables::needle::NEEDLES;
use crate::units::LengthUnit;
use proptest::prelude::*;

const FIVE_CM: Length = Length::of(5, LengthUnit::Cm);

fn ten(count: u32) -> Gauge {
    Gauge::of(count, Gauge::TEN_CM)
}

#[test]
fn the_swatch_is_wider_and_higher_than_what_is_measured() {
    let question = Question {
        rows: Some(ten(28)),
        multiple: Multiple { of: 8, plus: 3 },
        row_repeat: 8,
        knitting: Working::Flat,
        ..Question::about(ten(21))
    };
    let flat = answer(&question).unwrap();
    // The obvious swatch is 21 by 28: its edge stitches are counted, and drawn in.
    assert_eq!((flat.cast_on, flat.measured, flat.beside), (43, 21, 22));
    assert_eq!(flat.width, Length::from_nm(204_761_905));
    // 42 rows are 15 cm; 48 are whole repeats, and their height is said, not that of 42.
    assert_eq!(flat.repeats, 5);
    let rows = flat.rows.unwrap();
    assert_eq!((rows.least, rows.repeats, rows.count), (42, 6, 48));
    assert_eq!(flat.height, Length::from_nm(171_428_571));
    // Even the thickest yarn has 3 stitches on each side.
    let thick = answer(&Question::about(ten(3))).unwrap();
    assert_eq!((thick.cast_on, thick.beside, thick.rows), (9, 6, None));
}

#[test]
fn a_gauge_over_a_short_span_is_still_measured_over_a_long_one() {
    // The obvious swatch for 5 in 1 in has 5 stitches to measure, which half a stitch misread makes 10 % wrong.
    for (count, span) in [
        (5, Length::INCH),
        (10, Length::from_inches(2)),
        (20, Gauge::FOUR_INCHES),
    ] {
        let plan = answer(&Question::about(Gauge::of(count, span))).unwrap();
        assert_eq!((plan.span, plan.measured, plan.cast_on), (Gauge::FOUR_INCHES, 20, 40));
        assert_eq!(plan.height, Length::from_inches(6));
    }
    let short = answer(&Question::about(Gauge::new(10_500, FIVE_CM).unwrap())).unwrap();
    assert_eq!((short.span, short.measured), (Gauge::TEN_CM, 21));
    // Who counts over more measures more.
    let long = answer(&Question::about(Gauge::of(31, Length::from_mm(150)))).unwrap();
    assert_eq!((long.span, long.measured), (Length::from_mm(150), 31));
}

#[test]
fn the_stitches_beside_the_repeats_are_dropped_in_the_round() {
    let question = Question {
        multiple: Multiple { of: 8, plus: 3 },
        knitting: Working::Round,
        ..Question::about(ten(21))
    };
    let round = answer(&question).unwrap();
    // Carried along they would make 43, and the pattern would not meet itself.
    assert_eq!((round.cast_on, round.repeats, round.plus), (48, 6, 0));
}

#[test]
fn every_field_of_the_swatch_is_named() {
    let bad = Gauge::new(1, Length::from_nm(1)).unwrap();
    let problems = answer(&Question {
        gauge: bad,
        rows: Some(bad),
        multiple: Multiple { of: 0, plus: 1_001 },
        row_repeat: 0,
        knitting: Working::Flat,
        needle: Some(Length::from_mm(60)),
    });
    let problems = problems.unwrap_err();
    for name in Name::ALL {
        let found = problems.iter().any(|problem| problem.field.name() == Some(*name));
        assert_eq!(found, *name != Name::Knitting, "{name:?}");
    }
}

fn working() -> impl Strategy<Value = Working> {
    prop::sample::select(Working::ALL)
}

/// Any gauge that is accepted, over any span or a usual one.
fn gauge() -> impl Strategy<Value = Gauge> {
    let spans = [Gauge::TEN_CM, Gauge::FOUR_INCHES, FIVE_CM, Length::INCH];
    let span = prop_oneof![
        prop::sample::select(spans.to_vec()),
        (Gauge::SPANS.least.to_nm()..Gauge::SPANS.most.to_nm() / 2).prop_map(Length::from_nm),
    ];
    (1_000_u32..=400_000, span).prop_map(|(count, span)| Gauge::new(count, span).unwrap())
}

/// The same count over no less than 4 in.
fn long(gauge: Gauge) -> Gauge {
    Gauge::new(
        (gauge.count() * 1_000.0).round() as u32,
        gauge.span().max(Gauge::FOUR_INCHES),
    )
    .unwrap()
}

proptest! {
    #[test]
    fn what_is_measured_has_room_and_repeats_are_whole(
        gauge in gauge(), rows in gauge(), of in 1_u32..60, plus in 0_u32..60, row_repeat in 1_u32..60, knitting in working(),
    ) {
        let multiple = Multiple { of, plus };
        let question = Question { gauge, rows: Some(rows), multiple, row_repeat, knitting, needle: None };
        let plan = answer(&question).unwrap();
        prop_assert_eq!(plan.measured + plan.beside, plan.cast_on);
        prop_assert_eq!(plan.repeats * of + plan.plus, plan.cast_on);
        prop_assert!(plan.beside >= (2 * LEAST_BESIDE).max(plan.measured));
        prop_assert!(plan.width > plan.span && plan.span >= gauge.span().max(Gauge::TEN_CM));
        let rows = plan.rows.unwrap();
        prop_assert_eq!(rows.repeats * row_repeat, rows.count);
        prop_assert!(rows.count >= rows.least && rows.count < rows.least + row_repeat);
        prop_assert!(plan.height.to_nm() + 1 >= plan.span.to_nm() * 3 / 2);
    }

    #[test]
    fn twice_the_scale_changes_no_count(gauge in gauge().prop_map(long), rows in gauge(), of in 1_u32..30, knitting in working()) {
        let double = |gauge: Gauge| {
            Gauge::new((gauge.count() * 1_000.0).round() as u32, gauge.span().saturating_mul(2)).unwrap()
        };
        let small = Question { rows: Some(rows), multiple: Multiple { of, plus: 1 }, knitting, ..Question::about(gauge) };
        let large = Question { gauge: double(gauge), rows: Some(double(rows)), ..small };
        let counts = |question| {
            let Answer { cast_on, measured, rows, .. } = answer(question).unwrap();
            (cast_on, measured, rows)
        };
        prop_assert_eq!(counts(&small), counts(&large));
    }

    #[test]
    fn any_question_has_an_answer_or_a_reason(
        thousandths: u32, span: i64, of: u32, plus: u32, row_repeat: u32, knitting in working(),
    ) {
        if let Some(gauge) = Gauge::new(thousandths, Length::from_nm(span)) {
            let multiple = Multiple { of, plus };
            let _ = answer(&Question { gauge, rows: Some(gauge), multiple, row_repeat, knitting, needle: Some(gauge.span()) });
        }
    }
}

/// A swatch on 4 mm: a size down and a size up have names, and where the table ends there is none.
#[test]
fn the_needles_to_try_next_are_named() {
    let beside = |needle| {
        let question = Question {
            needle: Some(needle),
            ..Question::about(Gauge::of(21, Gauge::TEN_CM))
        };
        let needles = answer(&question).unwrap().needles.unwrap();
        let across = |called: Called| called.across;
        (
            needles.thinner.map(across),
            across(needles.this),
            needles.thicker.map(across),
        )
    };
    let four = Length::from_mm(4);
    let [thinner, thicker] = [375, 450].map(|hundredths| Some(Length::from_nm(hundredths * 10_000)));
    assert_eq!(beside(four), (thinner, four, thicker));
    let [first, last] = [NEEDLES[0].across, NEEDLES[NEEDLES.len() - 1].across];
    assert_eq!(beside(first).0, None);
    assert_eq!(beside(last).2, None);
    assert_eq!(
        answer(&Question::about(Gauge::of(21, Gauge::TEN_CM))).unwrap().needles,
        None
    );
}

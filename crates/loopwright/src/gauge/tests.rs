//! Each obvious sum beside the right one, the swatch plan stitch by stitch, and no question that panics.

use super::swatch::Care;
use super::*;
use crate::cast_on::{Multiple, SPAN};
use crate::tables::yarn_weight::Weight;
use proptest::prelude::*;

const METRE: Length = Length::of(1, LengthUnit::M);
const FIVE_CM: Length = Length::of(5, LengthUnit::Cm);

fn ten(count: u32) -> Gauge {
    Gauge::of(count, Gauge::TEN_CM)
}

fn halves(count: u32, span: Length) -> Gauge {
    Gauge::new(count * 500, span).unwrap()
}

fn stitches(question: &Question) -> Measured {
    answer(question).unwrap().stitches.unwrap()
}

fn against(own: Gauge, pattern: Gauge) -> Answer {
    let pattern = Some(pattern);
    answer(&Question {
        pattern,
        ..Question::about(own)
    })
    .unwrap()
}

#[test]
fn ten_centimetres_are_not_four_inches_in_a_swatch() {
    let inches = Gauge::of(21, Gauge::FOUR_INCHES);
    let answer = against(inches, ten(21));
    let found = answer.stitches.unwrap().against.unwrap();
    // The obvious sum sees 21 and 21 and no difference: a metre would come out 1.6 cm longer.
    assert_eq!((found.off_permille, found.would_be), (-16, Length::from_mm(1_016)));
    let note = Note::SpansDiffer {
        counted: Counted::Stitches,
        own: Gauge::FOUR_INCHES,
        pattern: Gauge::TEN_CM,
    };
    assert!(answer.notes.contains(&note));
    // And 206.7 stitches, not 210, make a metre.
    assert_eq!(over(inches, METRE), Gauge::new(206_693, METRE).unwrap());
    // A switch of units converts the count, there and back.
    let four = over(ten(21), Gauge::FOUR_INCHES);
    assert_eq!(four, Gauge::new(21_336, Gauge::FOUR_INCHES).unwrap());
    assert_eq!(over(four, LABEL_SPAN), ten(21));
}

#[test]
fn counts_over_several_spans_are_put_together_by_their_stitches() {
    let question = Question {
        stitches: vec![ten(21), Gauge::of(10, FIVE_CM), Gauge::of(21, Gauge::FOUR_INCHES)],
        ..Question::about(ten(1))
    };
    let mean = stitches(&question).mean;
    // 52 stitches in 25.16 cm. The mean of the bare numbers is 17.3.
    assert_eq!(mean.all, Gauge::of(52, Length::from_nm(251_600_000)));
    assert_eq!(mean.ten_cm, Gauge::new(20_668, Gauge::TEN_CM).unwrap());
    assert_eq!(mean.four_inches, Gauge::new(20_998, Gauge::FOUR_INCHES).unwrap());
    assert_eq!((mean.fewest, mean.most), (Gauge::of(10, FIVE_CM), ten(21)));
    assert_eq!((mean.readings, mean.spread_permille), (3, 50));
}

#[test]
fn half_a_stitch_of_reading_is_carried_into_the_width() {
    let reading = stitches(&Question::about(ten(21))).reading;
    assert_eq!((reading.span, reading.permille), (Gauge::TEN_CM, 24));
    assert_eq!(reading.least, Length::from_nm(976_744_186));
    assert_eq!(reading.most, Length::from_nm(1_024_390_244));
    // The obvious range, W x (1 -+ 0.5 / N), is even on both sides: 97.6 to 102.4.
    assert_ne!(METRE.saturating_sub(reading.least), reading.most.saturating_sub(METRE));
    // It takes 29 stitches to know it to 1.7 %.
    assert_eq!(stitches(&Question::about(ten(29))).reading.permille, 17);
    assert_eq!(stitches(&Question::about(ten(28))).reading.permille, 18);
}

#[test]
fn counting_over_a_longer_span_or_more_often_narrows_it() {
    let once = stitches(&Question::about(ten(21)));
    let [half_more, twice] = once.longer;
    assert_eq!((half_more.span, half_more.permille), (Length::from_mm(150), 16));
    assert_eq!((twice.span, twice.permille), (Length::from_mm(200), 12));
    // The very numbers of a count that was so taken: 31 1/2 in 15 cm.
    let counted = stitches(&Question::about(halves(63, half_more.span))).reading;
    assert_eq!(counted, half_more);
    // Four counts halve it, as one over four times the span would quarter it; the obvious sum leaves it as it is.
    let four = stitches(&Question {
        stitches: vec![ten(21); 4],
        ..Question::about(ten(21))
    });
    assert_eq!((four.reading.permille, four.mean.usual), (12, ten(21)));
    assert_eq!(four.reading.most, Length::from_nm(1_012_048_193));
}

#[test]
fn washed_and_unwashed_are_kept_apart() {
    let question = Question {
        rows: vec![ten(28)],
        rows_unwashed: vec![ten(30)],
        pattern_rows: Some(ten(28)),
        ..Question::about(ten(21))
    };
    let rows = answer(&question).unwrap().rows.unwrap();
    let wash = rows.wash.unwrap();
    // 50 cm by the tape become 53.6 when washed, so 46.7 are to be knitted.
    assert_eq!((wash.permille, wash.becomes), (71, Length::from_nm(535_714_286)));
    assert_eq!(wash.knit, Length::from_nm(466_666_667));
    // The obvious sum puts all counts into one mean, 29, which is neither, and finds the pattern missed.
    assert_eq!((rows.mean.usual, rows.unwashed.unwrap().usual), (ten(28), ten(30)));
    assert!(rows.washed && rows.against.unwrap().matches);
}

#[test]
fn a_swatch_that_was_not_washed_serves_with_a_caution() {
    let question = Question {
        stitches: Vec::new(),
        stitches_unwashed: vec![ten(22)],
        ..Question::about(ten(1))
    };
    let answer = answer(&question).unwrap();
    let found = answer.stitches.unwrap();
    assert_eq!((found.washed, found.mean.usual, found.wash), (false, ten(22), None));
    let counted = Counted::Stitches;
    assert_eq!(answer.notes, [Note::OnlyUnwashed { counted }]);
}

#[test]
fn too_few_stitches_go_down_a_needle_and_too_many_up() {
    // The obvious slip turns it round: a tight swatch has *more* stitches, and wants a larger needle.
    assert_eq!(against(ten(20), ten(21)).needle, Some(Needle::Down { steps: 1 }));
    assert_eq!(against(ten(22), ten(21)).needle, Some(Needle::Up { steps: 1 }));
    assert_eq!(against(ten(18), ten(21)).needle, Some(Needle::Down { steps: 2 }));
    assert_eq!(against(halves(43, Gauge::TEN_CM), ten(21)).needle, Some(Needle::Keep));
    let far = against(ten(30), ten(20));
    assert_eq!(far.needle, Some(Needle::Up { steps: 2 }));
    assert!(far.notes.contains(&Note::FarOff { off_permille: 500 }));
    // 20 in 10 cm lie between medium and light; the pattern's class is asked for, not the swatch's.
    let (thicker, thinner) = (Weight::Medium, Weight::Light);
    assert_eq!(
        against(ten(30), ten(20)).published,
        Some(Place::Between { thicker, thinner })
    );
}

#[test]
fn the_garment_if_nothing_changed() {
    let found = against(ten(20), ten(22)).stitches.unwrap().against.unwrap();
    assert_eq!((found.off_permille, found.would_be), (-91, Length::from_mm(1_100)));
    assert_eq!(found.least, Length::from_nm(1_073_170_732));
    assert_eq!(found.most, Length::from_nm(1_128_205_128));
}

#[test]
fn rows_that_do_not_match_change_what_is_counted() {
    let question = Question {
        rows: vec![ten(30)],
        pattern: Some(ten(21)),
        pattern_rows: Some(ten(28)),
        ..Question::about(ten(21))
    };
    let answer = answer(&question).unwrap();
    assert_eq!(answer.needle, Some(Needle::Keep));
    assert_eq!(answer.notes, [Note::RowsOnly { off_permille: 71 }]);
    // 140 rows of the pattern, 50 cm there, are 46.7 here.
    let rows = answer.rows.unwrap().against.unwrap();
    assert_eq!(rows.would_be, Length::from_nm(466_666_667));
}

#[test]
fn spots_that_differ_by_more_than_a_misreading_are_uneven() {
    let uneven = |few, many| {
        let question = Question {
            stitches: vec![ten(few), ten(many)],
            ..Question::about(ten(1))
        };
        let counted = Counted::Stitches;
        answer(&question).unwrap().notes.contains(&Note::Uneven { counted })
    };
    assert!(!uneven(20, 21) && uneven(20, 22));
}

#[test]
fn every_field_out_of_bounds_is_named() {
    let bad = Gauge::new(1, Length::from_nm(1)).unwrap();
    let question = Question {
        stitches: vec![ten(20); 13],
        rows: vec![bad],
        stitches_unwashed: vec![ten(401)],
        rows_unwashed: vec![Gauge::of(20, Length::of(2, LengthUnit::M))],
        pattern: Some(bad),
        pattern_rows: Some(bad),
        width: Length::ZERO,
        length: Length::MAX,
    };
    let problems = answer(&question).unwrap_err();
    let fields: Vec<_> = problems.iter().map(|problem| problem.field).collect();
    let all = "stitches rows stitches_unwashed rows_unwashed pattern pattern_rows width length";
    assert_eq!(fields.join(" "), all);
    assert_eq!(problems[0].kind, Kind::TooMany { most: 12 });
    let nothing = Question {
        stitches: Vec::new(),
        ..Question::about(ten(20))
    };
    let kind = Kind::Missing;
    assert_eq!(
        answer(&nothing).unwrap_err(),
        [Problem {
            field: "stitches",
            kind
        }]
    );
}

#[test]
fn the_swatch_is_wider_and_higher_than_what_is_measured() {
    let question = swatch::Question {
        rows: Some(ten(28)),
        multiple: Multiple { of: 8, plus: 3 },
        row_repeat: 8,
        ..swatch::Question::about(ten(21))
    };
    let flat = swatch::answer(&question).unwrap();
    // The obvious swatch is 21 by 28: its edge stitches are counted, and drawn in.
    assert_eq!((flat.cast_on, flat.measured, flat.beside), (43, 21, 22));
    assert_eq!(
        (flat.repeats, flat.rows, flat.height),
        (5, Some(48), Length::from_mm(150))
    );
    // In the round the repeat has no plus, and the strand goes across the back.
    let round = swatch::answer(&swatch::Question {
        round: true,
        ..question
    })
    .unwrap();
    assert_eq!((round.cast_on, round.repeats), (48, 6));
    let at = |care| round.care.iter().position(|step| *step == care).unwrap();
    let order = [
        Care::StrandAcross,
        Care::Cut,
        Care::Wash,
        Care::LayOut,
        Care::Dry,
        Care::Middle,
    ]
    .map(at);
    assert!(order.is_sorted());
    assert!(!flat.care.contains(&Care::StrandAcross) && !flat.care.contains(&Care::Cut));
    // Even the thickest yarn has 3 stitches on each side.
    let thick = swatch::answer(&swatch::Question::about(Gauge::of(3, FIVE_CM))).unwrap();
    assert_eq!((thick.cast_on, thick.beside), (9, 6));
}

#[test]
fn every_field_of_the_swatch_is_named() {
    let bad = Gauge::new(1, Length::from_nm(1)).unwrap();
    let problems = swatch::answer(&swatch::Question {
        gauge: bad,
        rows: Some(bad),
        multiple: Multiple { of: 0, plus: 1_001 },
        row_repeat: 0,
        round: false,
    });
    let problems = problems.unwrap_err();
    let fields: Vec<_> = problems.iter().map(|problem| problem.field).collect();
    assert_eq!(fields.join(" "), "gauge rows multiple plus row_repeat");
}

/// Any gauge that is accepted.
fn gauge() -> impl Strategy<Value = Gauge> {
    let spans = [Gauge::TEN_CM, Gauge::FOUR_INCHES, FIVE_CM, Length::INCH];
    let span = prop_oneof![
        prop::sample::select(spans.to_vec()),
        (SPAN.least.to_nm()..SPAN.most.to_nm() / 2).prop_map(Length::from_nm),
    ];
    (1_000_u32..=400_000, span).prop_map(|(count, span)| Gauge::new(count, span).unwrap())
}

fn gauges(least: usize) -> impl Strategy<Value = Vec<Gauge>> {
    prop::collection::vec(gauge(), least..=5)
}

fn question() -> impl Strategy<Value = Question> {
    let lists = (gauges(1), gauges(0), gauges(0), gauges(0));
    let patterns = (prop::option::of(gauge()), prop::option::of(gauge()));
    let lengths = (
        WIDTH.least.to_nm()..WIDTH.most.to_nm() / 2,
        WIDTH.least.to_nm()..WIDTH.most.to_nm() / 2,
    );
    (lists, patterns, lengths).prop_map(|(lists, (pattern, pattern_rows), (width, length))| Question {
        stitches: lists.0,
        rows: lists.1,
        stitches_unwashed: lists.2,
        rows_unwashed: lists.3,
        pattern,
        pattern_rows,
        width: Length::from_nm(width),
        length: Length::from_nm(length),
    })
}

fn doubled(gauge: Gauge) -> Gauge {
    Gauge::new((gauge.count() * 1_000.0).round() as u32, gauge.span().saturating_mul(2)).unwrap()
}

proptest! {
    #[test]
    fn the_mean_lies_among_its_counts_in_any_order(mut list in gauges(1)) {
        let of = |list: &[Gauge]| stitches(&Question { stitches: list.to_vec(), ..Question::about(ten(1)) }).mean;
        let mean = of(&list);
        prop_assert!(mean.fewest.per_cm() <= mean.all.per_cm() * 1.000_000_001);
        prop_assert!(mean.all.per_cm() <= mean.most.per_cm() * 1.000_000_001);
        list.reverse();
        prop_assert_eq!(mean.all, of(&list).all);
        let same = of(&[list[0]]);
        prop_assert_eq!((same.usual, same.all, same.spread_permille), (list[0], list[0], 0));
    }

    #[test]
    fn the_wanted_width_is_inside_its_range_and_a_longer_span_inside_that(question in question()) {
        let found = stitches(&question);
        let [near, far] = found.longer;
        let ends = [found.reading.least, near.least, far.least, question.width, far.most, near.most, found.reading.most];
        prop_assert!(ends.is_sorted());
        if let Some(against) = found.against {
            prop_assert!(against.least <= against.would_be && against.would_be <= against.most);
            prop_assert!(!against.matches || (against.least <= question.width && question.width <= against.most));
        }
    }

    #[test]
    fn knitting_what_it_says_is_right_after_washing(question in question()) {
        if let Some(wash) = stitches(&question).wash {
            let found = stitches(&Question { width: wash.knit.max(WIDTH.least).min(WIDTH.most), ..question.clone() });
            let becomes = found.wash.unwrap().becomes;
            if WIDTH.allow(wash.knit) {
                // One nanometre of what is knitted is as much as the swatch stretches.
                let stretch = 2 + becomes.to_nm() / wash.knit.to_nm().max(1);
                prop_assert!(becomes.saturating_sub(question.width).to_nm().abs() <= stretch);
            }
        }
    }

    #[test]
    fn twice_the_scale_changes_no_count(question in question(), rows in gauge(), of in 1_u32..30, round: bool) {
        let double = |list: &Vec<Gauge>| list.iter().copied().map(doubled).collect::<Vec<_>>();
        let large = Question {
            stitches: double(&question.stitches),
            rows: double(&question.rows),
            stitches_unwashed: double(&question.stitches_unwashed),
            rows_unwashed: double(&question.rows_unwashed),
            pattern: question.pattern.map(doubled),
            pattern_rows: question.pattern_rows.map(doubled),
            width: question.width.saturating_mul(2),
            length: question.length.saturating_mul(2),
        };
        let (small, large) = (answer(&question).unwrap(), answer(&large).unwrap());
        prop_assert_eq!(small.needle, large.needle);
        for (small, large) in [(small.stitches, large.stitches), (small.rows, large.rows)] {
            let counts = |found: Measured| {
                let against = found.against.map(|against| (against.off_permille, against.matches));
                let wash = found.wash.map(|wash| wash.permille);
                (found.mean.usual.count().to_bits(), found.mean.spread_permille, found.reading.permille, against, wash)
            };
            prop_assert_eq!(small.map(counts), large.map(counts));
            if let (Some(small), Some(large)) = (small, large) {
                let off = small.reading.most.saturating_mul(2).saturating_sub(large.reading.most);
                prop_assert!(off.to_nm().abs() <= 1);
            }
        }
        let plan = |gauge, rows| {
            let multiple = Multiple { of, plus: 2 };
            let question = swatch::Question { gauge, rows: Some(rows), multiple, row_repeat: of, round };
            let plan = swatch::answer(&question).unwrap();
            (plan.cast_on, plan.measured, plan.rows)
        };
        let gauge = question.stitches[0];
        prop_assert_eq!(plan(gauge, rows), plan(doubled(gauge), doubled(rows)));
    }

    #[test]
    fn the_swatch_has_room_and_whole_repeats(gauge in gauge(), rows in gauge(), of in 1_u32..200, plus in 0_u32..20, round: bool) {
        let multiple = Multiple { of, plus };
        let question = swatch::Question { gauge, rows: Some(rows), multiple, row_repeat: of, round };
        let plan = swatch::answer(&question).unwrap();
        let plus = if round { 0 } else { plus };
        prop_assert_eq!(plan.cast_on, plan.repeats * of + plus);
        prop_assert_eq!(plan.cast_on, plan.measured + plan.beside);
        prop_assert!(f64::from(plan.measured) >= gauge.count());
        prop_assert!(plan.beside >= 2 * swatch::LEAST_BESIDE && plan.beside >= plan.measured);
        let least = rows.count_over(plan.height);
        let planned = plan.rows.unwrap();
        prop_assert!(planned.is_multiple_of(of) && f64::from(planned) > least - 1e-6);
        prop_assert!(f64::from(planned) < least + f64::from(of) + 1e-6);
    }

    #[test]
    fn nothing_panics(counts: [u32; 6], spans: [i64; 6], lengths: [i64; 2], many in 0_usize..40, of: [u32; 3], round: bool) {
        let any = |index: usize| {
            let span = Length::from_nm(spans[index].saturating_abs().max(1));
            Gauge::new(counts[index].max(1), span).unwrap()
        };
        let [width, length] = lengths.map(Length::from_nm);
        let wild = Question {
            stitches: vec![any(0); many],
            rows: vec![any(1), any(2)],
            stitches_unwashed: vec![any(3); many % 3],
            rows_unwashed: vec![any(2)],
            pattern: Some(any(4)),
            pattern_rows: Some(any(5)),
            width,
            length,
        };
        let _ = answer(&wild);
        let _ = over(any(0), length);
        let [of, plus, row_repeat] = of;
        let multiple = Multiple { of, plus };
        let _ = swatch::answer(&swatch::Question { gauge: any(0), rows: Some(any(1)), multiple, row_repeat, round });
        // The corners of what is accepted.
        let corners = [Gauge::of(400, SPAN.least), Gauge::of(1, SPAN.most), Gauge::of(400, SPAN.most), Gauge::of(1, SPAN.least)];
        for own in corners {
            for pattern in corners {
                let question = Question {
                    rows: vec![own; 12],
                    stitches_unwashed: vec![pattern; 12],
                    rows_unwashed: vec![pattern],
                    pattern: Some(pattern),
                    pattern_rows: Some(pattern),
                    width: WIDTH.most,
                    length: WIDTH.least,
                    ..Question::about(own)
                };
                prop_assert!(answer(&question).is_ok());
                let multiple = Multiple { of: 1_000, plus: 1_000 };
                let plan = swatch::Question { gauge: own, rows: Some(pattern), multiple, row_repeat: 1_000, round };
                prop_assert!(swatch::answer(&plan).is_ok());
            }
        }
    }
}

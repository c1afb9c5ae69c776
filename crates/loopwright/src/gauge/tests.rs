//! Each obvious sum beside the right one, and no question that panics.

use super::*;
use crate::choice::Key;
use crate::tables::needle::Number;
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
    answer(question).unwrap().stitches
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
    let found = answer.stitches;
    // The obvious sum sees 21 and 21 and no difference: a metre would come out 1.6 cm longer.
    assert_eq!(found.against.unwrap().off_permille, -16);
    assert_eq!(found.would_be, Length::from_mm(1_016));
    // The gauge is kept over the span it was counted over, and said over the other as well.
    assert_eq!(found.gauge, inches);
    assert_eq!(found.converted, Gauge::new(20_669, Gauge::TEN_CM).unwrap());
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
    let mean = stitches(&question);
    // 52 stitches in 25.16 cm. The mean of the bare numbers is 17.3.
    assert_eq!(mean.all, Gauge::of(52, Length::from_nm(251_600_000)));
    assert_eq!(mean.gauge, Gauge::new(20_668, Gauge::TEN_CM).unwrap());
    assert_eq!(mean.converted, Gauge::new(20_998, Gauge::FOUR_INCHES).unwrap());
    assert_eq!((mean.fewest, mean.most), (Gauge::of(10, FIVE_CM), ten(21)));
    assert_eq!((mean.readings, mean.spread_permille), (3, 50));
}

#[test]
fn a_gauge_is_kept_over_the_span_it_was_counted_over() {
    // Kept as 20 over 4 in, half a stitch of 5 over 1 in would look like a fourth of what it is.
    let inch = Gauge::of(5, Length::INCH);
    let one = stitches(&Question::about(inch));
    assert_eq!((one.gauge, one.reading[0].permille), (inch, 100));
    assert_eq!(one.converted, Gauge::new(19_685, Gauge::TEN_CM).unwrap());
    let several = stitches(&Question {
        stitches: vec![Gauge::of(10, FIVE_CM), Gauge::of(11, FIVE_CM)],
        stitches_unwashed: vec![halves(23, FIVE_CM)],
        ..Question::about(inch)
    });
    assert_eq!(
        (several.gauge, several.unwashed),
        (halves(21, FIVE_CM), Some(halves(23, FIVE_CM)))
    );
    let mixed = stitches(&Question {
        stitches: vec![inch, Gauge::of(10, Length::from_inches(2))],
        ..Question::about(inch)
    });
    assert_eq!(mixed.gauge, Gauge::of(20, Gauge::FOUR_INCHES));
}

#[test]
fn half_a_stitch_of_reading_is_carried_into_the_width() {
    let reading = stitches(&Question::about(ten(21))).reading[0];
    assert_eq!((reading.span, reading.permille), (Gauge::TEN_CM, 24));
    assert_eq!(reading.least, Length::from_nm(976_744_186));
    assert_eq!(reading.most, Length::from_nm(1_024_390_244));
    // The obvious range, W x (1 -+ 0.5 / N), is even on both sides: 97.6 to 102.4.
    assert_ne!(METRE.saturating_sub(reading.least), reading.most.saturating_sub(METRE));
    // It takes 29 stitches to know it to 1.7 %.
    assert_eq!(stitches(&Question::about(ten(29))).reading[0].permille, 17);
    assert_eq!(stitches(&Question::about(ten(28))).reading[0].permille, 18);
}

#[test]
fn counting_over_a_longer_span_or_more_often_narrows_it() {
    let found = stitches(&Question::about(ten(21)));
    let [_, half_more, twice] = found.reading[..] else {
        panic!("{found:?}")
    };
    assert_eq!((half_more.span, half_more.permille), (Length::from_mm(150), 16));
    assert_eq!((twice.span, twice.permille), (Length::from_mm(200), 12));
    // The very numbers of a count that was so taken: 31 1/2 in 15 cm.
    let counted = stitches(&Question::about(halves(63, half_more.span))).reading[0];
    assert_eq!(counted, half_more);
    // Only spans that a tape has, and only longer ones.
    let spans = |span| {
        let reading = stitches(&Question::about(Gauge::of(21, span))).reading;
        reading.iter().map(|reading| reading.span).collect::<Vec<_>>()
    };
    let [six, eight] = [6, 8].map(Length::from_inches);
    assert_eq!(spans(Length::INCH), [Length::INCH, Gauge::FOUR_INCHES, six, eight]);
    assert_eq!(spans(half_more.span), [half_more.span, twice.span]);
    assert_eq!(spans(Gauge::SPANS.most), [Gauge::SPANS.most]);
    // Four counts halve it, as one over four times the span would quarter it; the obvious sum leaves it as it is.
    let four = stitches(&Question {
        stitches: vec![ten(21); 4],
        ..Question::about(ten(21))
    });
    assert_eq!((four.reading[0].permille, four.gauge), (12, ten(21)));
    assert_eq!(four.reading[0].most, Length::from_nm(1_012_048_193));
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
    assert_eq!((rows.gauge, rows.unwashed), (ten(28), Some(ten(30))));
    assert!(rows.washed && rows.against.unwrap().matches);
}

/// The spots before washing were counted over several spans of either measure: they are said in that of the washed ones.
#[test]
fn unwashed_spots_that_differ_are_kept_in_the_measure_of_the_washed_ones() {
    let question = Question {
        stitches_unwashed: vec![Gauge::of(5, Length::INCH), ten(22)],
        ..Question::about(ten(21))
    };
    let unwashed = stitches(&question).unwashed;
    assert_eq!(unwashed.map(Gauge::span), Some(Gauge::TEN_CM));
}

#[test]
fn a_swatch_that_was_not_washed_serves_with_a_caution() {
    let question = Question {
        stitches: Vec::new(),
        stitches_unwashed: vec![ten(22)],
        ..Question::about(ten(1))
    };
    let found = stitches(&question);
    assert_eq!((found.washed, found.gauge, found.wash), (false, ten(22), None));
    assert_eq!(found.unwashed, Some(ten(22)));
}

#[test]
fn too_few_stitches_go_down_a_needle_and_too_many_up() {
    // The obvious slip turns it round: a tight swatch has *more* stitches, and wants a larger needle.
    assert_eq!(against(ten(20), ten(21)).next, Some(Next::Down { sizes: 1 }));
    assert_eq!(against(ten(22), ten(21)).next, Some(Next::Up { sizes: 1 }));
    assert_eq!(against(ten(18), ten(21)).next, Some(Next::Down { sizes: 2 }));
    assert_eq!(against(halves(43, Gauge::TEN_CM), ten(21)).next, Some(Next::Keep));
    assert_eq!(against(ten(23), ten(20)).next, Some(Next::Up { sizes: 2 }));
}

#[test]
fn a_miss_beyond_two_needles_asks_for_another_yarn() {
    // The obvious advice is two sizes, after which 30 for 20 are still 26.
    for (own, pattern) in [(30, 20), (14, 22)] {
        assert_eq!(against(ten(own), ten(pattern)).next, Some(Next::AnotherYarn));
    }
}

#[test]
fn a_miss_of_less_than_half_a_needle_keeps_the_needle() {
    // 2.9 % off, and more than half a stitch; a size down is 4 % off on the other side.
    let near = against(Gauge::new(20_400, Gauge::TEN_CM).unwrap(), ten(21));
    let off = near.stitches.against.unwrap();
    assert_eq!((off.off_permille, off.matches), (-29, false));
    assert_eq!(near.next, Some(Next::Keep));
    let edge = |count| against(Gauge::of(count, METRE), Gauge::of(200, METRE)).next;
    assert_eq!((edge(206), edge(194)), (Some(Next::Keep), Some(Next::Keep)));
    assert_eq!(
        (edge(207), edge(193)),
        (Some(Next::Up { sizes: 1 }), Some(Next::Down { sizes: 1 }))
    );
}

#[test]
fn a_span_too_short_to_judge_asks_for_a_longer_one() {
    // 5 in 1 in are 9 % fewer than 22 in 4 in, and may be 5 1/2: neither a match nor a miss.
    let inch = Gauge::of(5, Length::INCH);
    let short = against(inch, Gauge::of(22, Gauge::FOUR_INCHES));
    let off = short.stitches.against.unwrap();
    assert_eq!((off.off_permille, off.matches), (-91, true));
    assert_eq!((short.next, short.rows_only), (Some(Next::CountLonger), false));
    let long = against(Gauge::of(20, Gauge::FOUR_INCHES), Gauge::of(22, Gauge::FOUR_INCHES));
    assert_eq!(long.next, Some(Next::Down { sizes: 1 }));
}

#[test]
fn the_garment_if_nothing_changed() {
    let found = against(ten(20), ten(22)).stitches;
    assert_eq!(found.against.unwrap().off_permille, -91);
    assert_eq!(found.would_be, Length::from_mm(1_100));
    // The reading is about what it would be, not about what was wanted.
    assert_eq!(found.reading[0].least, Length::from_nm(1_073_170_732));
    assert_eq!(found.reading[0].most, Length::from_nm(1_128_205_128));
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
    assert_eq!(answer.next, Some(Next::Keep));
    assert!(answer.rows_only);
    // 140 rows of the pattern, 50 cm there, are 46.7 here.
    let rows = answer.rows.unwrap();
    assert_eq!(rows.against.unwrap().off_permille, 71);
    assert_eq!(rows.would_be, Length::from_nm(466_666_667));
}

#[test]
fn spots_that_differ_by_more_than_a_misreading_are_uneven() {
    let uneven = |few, many| {
        let question = Question {
            stitches: vec![ten(few), ten(many)],
            ..Question::about(ten(1))
        };
        stitches(&question).uneven
    };
    assert!(!uneven(20, 21) && uneven(20, 22));
    // The mean of 18 and 24 is the pattern's 21; that says nothing, and a metre may be 87.5 or 116.7 cm.
    let mut question = Question {
        stitches: vec![ten(18), ten(24)],
        pattern: Some(ten(21)),
        ..Question::about(ten(1))
    };
    let answer = |question: &Question| answer(question).unwrap();
    let spots = answer(&question);
    assert_eq!(spots.next, Some(Next::CountAgain));
    let [reading] = spots.stitches.reading[..] else {
        panic!("{spots:?}")
    };
    assert_eq!(
        (reading.least, reading.most),
        (Length::from_mm(875), Length::from_nm(1_166_666_667))
    );
    question.pattern = None;
    assert_eq!(answer(&question).next, Some(Next::CountAgain));
    question.stitches = vec![ten(20), ten(21)];
    assert_eq!(answer(&question).next, None);
}

#[test]
fn every_field_out_of_bounds_is_named() {
    let bad = Gauge::new(1, Length::from_nm(1)).unwrap();
    let question = Question {
        stitches: vec![ten(20), bad],
        rows: vec![bad],
        stitches_unwashed: vec![ten(401)],
        rows_unwashed: vec![Gauge::of(20, Length::of(2, LengthUnit::M))],
        pattern: Some(bad),
        pattern_rows: Some(bad),
        needle: Some(Length::ZERO),
        width: Length::ZERO,
        length: Length::MAX,
    };
    let problems = answer(&question).unwrap_err();
    for name in Name::ALL {
        let found = problems.iter().any(|problem| problem.field.name() == Some(*name));
        assert!(found, "{name:?}");
    }
    let nothing = Question {
        stitches: Vec::new(),
        ..Question::about(ten(20))
    };
    let kind = Kind::Missing;
    assert_eq!(
        answer(&nothing).unwrap_err(),
        [Problem {
            field: Name::Stitches.into(),
            kind
        }]
    );
}

/// Any gauge that is accepted.
fn gauge() -> impl Strategy<Value = Gauge> {
    let spans = [Gauge::TEN_CM, Gauge::FOUR_INCHES, FIVE_CM, Length::INCH];
    let span = prop_oneof![
        prop::sample::select(spans.to_vec()),
        (Gauge::SPANS.least.to_nm()..Gauge::SPANS.most.to_nm() / 2).prop_map(Length::from_nm),
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
        needle: None,
        width: Length::from_nm(width),
        length: Length::from_nm(length),
    })
}

fn doubled(gauge: Gauge) -> Gauge {
    Gauge::new((gauge.count() * 1_000.0).round() as u32, gauge.span().saturating_mul(2)).unwrap()
}

/// On this needle, so many stitches against the pattern's.
fn change(own: u32, pattern: u32, hundredths: i64) -> Option<Change> {
    answer(&Question {
        pattern: Some(ten(pattern)),
        needle: Some(Length::from_nm(hundredths * 10_000)),
        ..Question::about(ten(own))
    })
    .unwrap()
    .change
}

#[test]
fn the_next_needle_has_a_name() {
    let called = |hundredths: i64, us| Called {
        across: Length::from_nm(hundredths * 10_000),
        us,
    };
    let us = |number| Some(Number::whole(number));
    // Too few stitches: US 6 (4 mm) to US 5 (3.75 mm). The obvious half millimetre down is 3.5 mm, two sizes.
    let down = change(21, 22, 400).unwrap();
    assert_eq!((down.from, down.to), (called(400, us(6)), Some(called(375, us(5)))));
    let up = change(21, 19, 400).unwrap();
    assert_eq!(up.to, Some(called(500, us(8))));
    // No US needle is 7.5 mm thick, and none is made up.
    assert_eq!(change(21, 22, 800).unwrap().to, Some(called(750, None)));
    // A Japanese 5 is no row of the table.
    assert_eq!(change(21, 22, 360).unwrap().from, called(360, None));
    // The table has ends.
    assert_eq!(change(21, 22, 150).unwrap().to, None);
    assert_eq!(change(21, 19, 2_500).unwrap().to, None);
    // Where no other needle is next there is nothing to name.
    assert_eq!(change(21, 21, 400), None);
    assert_eq!(change(14, 22, 400), None);
}

#[test]
fn the_next_needle_is_never_on_the_wrong_side() {
    for hundredths in 50..=3_000 {
        for sizes in 1..=MOST_SIZES {
            let needle = Length::from_nm(hundredths * 10_000);
            let to = |next| Change::by(next, needle).unwrap().to.map(|to| to.across);
            assert!(to(Next::Down { sizes }).is_none_or(|to| to < needle), "{hundredths}");
            assert!(to(Next::Up { sizes }).is_none_or(|to| to > needle), "{hundredths}");
        }
    }
}

proptest! {
    #[test]
    fn the_mean_lies_among_its_counts_in_any_order(mut list in gauges(1)) {
        let of = |list: &[Gauge]| stitches(&Question { stitches: list.to_vec(), ..Question::about(ten(1)) });
        let mean = of(&list);
        prop_assert!(mean.fewest.per_cm() <= mean.all.per_cm() * 1.000_000_001);
        prop_assert!(mean.all.per_cm() <= mean.most.per_cm() * 1.000_000_001);
        list.reverse();
        prop_assert_eq!(mean.all, of(&list).all);
        let same = of(&[list[0]]);
        prop_assert_eq!((same.all, same.spread_permille, same.uneven), (list[0], 0, false));
    }

    #[test]
    fn the_width_is_inside_its_range_and_a_longer_span_inside_that(question in question()) {
        let found = stitches(&question);
        let (one, middle) = (found.reading[0], found.would_be);
        for pair in found.reading.windows(2) {
            prop_assert!([pair[0].least, pair[1].least, middle, pair[1].most, pair[0].most].is_sorted());
        }
        prop_assert!(one.least <= middle && middle <= one.most);
        match found.against {
            Some(against) => {
                prop_assert!(!against.matches || (one.least <= question.width && question.width <= one.most));
            }
            None => prop_assert_eq!(middle, question.width),
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
    fn twice_the_scale_changes_no_count(question in question()) {
        let double = |list: &Vec<Gauge>| list.iter().copied().map(doubled).collect::<Vec<_>>();
        let large = Question {
            stitches: double(&question.stitches),
            rows: double(&question.rows),
            stitches_unwashed: double(&question.stitches_unwashed),
            rows_unwashed: double(&question.rows_unwashed),
            pattern: question.pattern.map(doubled),
            pattern_rows: question.pattern_rows.map(doubled),
            needle: question.needle,
            width: question.width.saturating_mul(2),
            length: question.length.saturating_mul(2),
        };
        let (small, large) = (answer(&question).unwrap(), answer(&large).unwrap());
        prop_assert_eq!(small.next, large.next);
        for (small, large) in [(Some(small.stitches), Some(large.stitches)), (small.rows, large.rows)] {
            let counts = |found: &Measured| {
                let wash = found.wash.map(|wash| wash.permille);
                (found.all.count().to_bits(), found.spread_permille, found.reading[0].permille, found.against, wash)
            };
            prop_assert_eq!(small.as_ref().map(counts), large.as_ref().map(counts));
            if let (Some(small), Some(large)) = (small, large) {
                let off = small.reading[0].most.saturating_mul(2).saturating_sub(large.reading[0].most);
                prop_assert!(off.to_nm().abs() <= 1);
            }
        }
    }

    #[test]
    fn nothing_panics(counts: [u32; 6], spans: [i64; 6], lengths: [i64; 2], many in 0_usize..40) {
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
            needle: Some(length),
            width,
            length,
        };
        let _ = answer(&wild);
        let _ = over(any(0), length);
        // The corners of what is accepted.
        let corners = [Gauge::of(400, Gauge::SPANS.least), Gauge::of(1, Gauge::SPANS.most), Gauge::of(400, Gauge::SPANS.most), Gauge::of(1, Gauge::SPANS.least)];
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
            }
        }
    }
}

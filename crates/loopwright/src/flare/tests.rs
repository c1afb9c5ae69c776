//! The flat circle, cones and ruffles by their own geometry, every round counted, and each obvious sum beside ours.

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

/// 301 more is no multiple of 8 lines.
#[test]
fn a_hem_that_lines_do_not_reach_has_both_neighbours() {
    let hem = |hem| Question {
        each: 8,
        ..sixty(Hem::Stitches(hem))
    };
    let (below, above) = (Some(96 + 296), Some(96 + 304));
    let kind = Kind::NoExact { below, above };
    assert_eq!(answer(&hem(397)).unwrap_err(), [problem(Name::Stitches, kind)]);
    // A girth takes the nearer of them.
    let girth = gauge(21).width_of(397.0).unwrap();
    let near = answer(&Question {
        hem: Hem::Girth(girth),
        ..hem(0)
    })
    .unwrap();
    assert_eq!(near.hem, 400);
    // Scattered, the last round takes the rest.
    let rest = answer(&Question {
        lines: false,
        ..hem(397)
    })
    .unwrap();
    assert_eq!((rest.hem, rest.increase_rounds), (397, 38));
    assert_eq!(rest.rest, Some(5));
    // Fewer than at the neck is no flare.
    let kind = Kind::TooFew { least: 96 };
    assert_eq!(answer(&hem(90)).unwrap_err(), [problem(Name::Stitches, kind)]);
}

/// An increase lifts the bar between two stitches: 96 in the round have 96 of them.
#[test]
fn the_neck_has_one_increase_to_a_gap() {
    for (neck, each, hem) in [(96, 97, Hem::Flat), (80, 200, Hem::Stitches(480)), (80, 200, Hem::Flat)] {
        for lines in [true, false] {
            let question = Question {
                neck,
                each,
                lines,
                ..sixty(hem)
            };
            let kind = Kind::TooMany { most: neck };
            assert_eq!(answer(&question).unwrap_err(), [problem(Name::Each, kind)]);
            assert!(answer(&Question { each: neck, ..question }).is_ok());
        }
    }
}

#[test]
fn repeats_are_respected_or_named() {
    // 96 and steps of 8: multiples of 12 are 24 apart.
    let twelve = answer(&Question {
        multiple: 12,
        ..sixty(Hem::Flat)
    })
    .unwrap();
    assert_eq!((twelve.hem % 12, twelve.gain % 8), (0, 0));
    assert_eq!(twelve.hem, 384);
    // From 97 in steps of 8 no count is even, so none is a multiple of 10; 9 and 11 can be had.
    let even = Question {
        neck: 97,
        multiple: 10,
        ..sixty(Hem::Flat)
    };
    let kind = Kind::NoExact {
        below: Some(9),
        above: Some(11),
    };
    assert_eq!(answer(&even).unwrap_err(), [problem(Name::Multiple, kind)]);
}

#[test]
fn growth_that_is_too_fast_says_what_would_do() {
    let question = Question {
        each: 4,
        ..sixty(Hem::Stitches(96 + 4 * 70))
    };
    // 71 rounds are 253.6 mm.
    let depth = Length::from_mm(255);
    assert_eq!(
        answer(&question).unwrap_err(),
        [
            problem(Name::Each, Kind::TooFew { least: 5 }),
            problem(Name::Stitches, Kind::TooMany { most: 96 + 4 * 59 }),
            problem(
                Name::Depth,
                Kind::TooSmall {
                    least: Amount::Length(depth)
                }
            ),
        ]
    );
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

/// Advice is worked out once, and not again for every amount that is tried: "3" on the way to "30" is such a state. Each
/// amount, and each multiple that could be advised, is tried once.
#[test]
fn growth_that_is_too_fast_with_a_multiple_is_tried_once_each() {
    let question = Question {
        multiple: 990,
        ..Question::about(
            9_973,
            Hem::Girth(Length::of(90, LengthUnit::M)),
            Length::from_mm(5),
            gauge(21),
            gauge(28),
        )
    };
    for each in 1..=40 {
        TRIED.set(0);
        let problems = answer(&Question { each, ..question }).unwrap_err();
        assert!(!problems.is_empty());
        assert!(TRIED.get() <= EACH.most + MULTIPLE.most, "{each}: {}", TRIED.get());
    }
}

/// The rule against the obvious search for the least count.
#[test]
fn the_least_count_of_a_multiple_is_the_first_there_is() {
    for neck in 1..=30 {
        for each in 1..=neck.min(12) {
            for multiple in 1..=24 {
                let asked = |hem| Question {
                    neck,
                    each,
                    multiple,
                    ..sixty(Hem::Stitches(hem))
                };
                let reached = |hem: u32| hem.is_multiple_of(multiple) && (hem - neck).is_multiple_of(each);
                let least = (neck..neck + each * multiple).find(|hem| reached(*hem));
                let found = answer(&asked(neck));
                match (least, found) {
                    (Some(least), Ok(found)) => assert_eq!((least, found.hem), (neck, neck)),
                    (Some(least), Err(problems)) => {
                        let kind = Kind::TooFew { least };
                        assert_eq!(problems, [problem(Name::Stitches, kind)]);
                    }
                    (None, Ok(found)) => panic!("{found:?}"),
                    (None, Err(problems)) => assert_eq!(problems[0].field, Name::Multiple.into()),
                }
            }
        }
    }
}

/// 120 plain rounds at the end leave none of 60: the piece need not be deeper.
#[test]
fn too_many_plain_rounds_at_the_end_are_what_is_wrong() {
    let question = Question {
        last: 50,
        ..sixty(Hem::Stitches(96 + 8 * 20))
    };
    let last = |most| problem(Name::Last, Kind::TooMany { most });
    assert_eq!(answer(&question).unwrap_err(), [last(40)]);
    let question = Question { last: 120, ..question };
    assert_eq!(answer(&question).unwrap_err(), [last(40)]);
    // At both ends: each to its own.
    let both = answer(&Question {
        first: Some(90),
        ..question
    });
    let first = problem(Name::First, Kind::TooMany { most: 39 });
    assert_eq!(both.unwrap_err(), [first, last(40)]);
}

/// 120 plain rounds first leave none of 60: the piece need not be deeper.
#[test]
fn too_many_plain_rounds_first_are_what_is_wrong() {
    let question = Question {
        first: Some(120),
        ..sixty(Hem::Stitches(96 + 8 * 20))
    };
    let kind = Kind::TooMany { most: 39 };
    assert_eq!(answer(&question).unwrap_err(), [problem(Name::First, kind)]);
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

fn questions() -> impl Strategy<Value = Question> {
    let hem = prop_oneof![
        Just(Hem::Flat),
        (10_i64..5_000).prop_map(|mm| Hem::Girth(Length::from_mm(mm))),
        (1_u32..2_000).prop_map(Hem::Stitches),
    ];
    let counts = (
        1_u32..300,
        1_u32..20,
        1_u32..12,
        proptest::option::of(0_u32..5),
        0_u32..4,
        any::<bool>(),
    );
    let fabric = (5_i64..800, 8_u32..50, 8_u32..70, any::<bool>());
    (hem, counts, fabric).prop_map(
        |(hem, (neck, each, multiple, first, last, even), (mm, stitches, rows, lines))| Question {
            neck,
            hem,
            depth: Length::from_mm(mm),
            gauge: gauge(stitches),
            row_gauge: gauge(rows),
            each,
            lines,
            multiple,
            first,
            last,
            rhythm: if even { Pace::MostEven } else { Pace::Easiest },
        },
    )
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(2_000))]
    #[test]
    fn every_round_counted_ends_at_the_hem(question in questions()) {
        let Ok(answer) = answer(&question) else { return Ok(()) };
        let counts = counts(&answer, question.neck);
        prop_assert_eq!(counts.len() as u32, answer.rounds + 1);
        prop_assert_eq!(counts.last(), Some(&answer.hem));
        prop_assert!(answer.schedule.left >= question.last.min(answer.rounds));
        prop_assert!(answer.hem.is_multiple_of(question.multiple));
        if question.lines { prop_assert!(answer.gain.is_multiple_of(question.each)); }
        if let Hem::Stitches(hem) = question.hem { prop_assert_eq!(hem, answer.hem); }
        prop_assert_eq!(answer.schedule.rows().count() as u32, answer.increase_rounds);
        prop_assert!(answer.increase_rounds < 2 || answer.drift.rounds() < answer.drift.gap);
    }

    #[test]
    fn the_shape_is_a_frustum_or_a_ruffle(question in questions()) {
        let Ok(answer) = answer(&question) else { return Ok(()) };
        let cm = |length: Length| length.in_unit(LengthUnit::Cm);
        let Shape { neck_radius, radius, slant, drop, hem_girth, .. } = answer.shape;
        prop_assert!(cm(radius) <= cm(neck_radius) + cm(slant) + 1e-6);
        if answer.hang == Hang::Ruffle {
            prop_assert_eq!(drop, Length::ZERO);
        } else if drop > Length::ZERO {
            let side = (cm(drop).powi(2) + (cm(radius) - cm(neck_radius)).powi(2)).sqrt();
            prop_assert!((side - cm(slant)).abs() < 1e-5);
            prop_assert!((cm(hem_girth) - std::f64::consts::TAU * cm(radius)).abs() < 1e-5);
        }
    }

    /// A tape and a ruler of twice the length change no count.
    #[test]
    fn twice_the_length_over_twice_the_span_changes_no_count(question in questions()) {
        let twice = |length: Length| length.saturating_mul(2);
        let double = |gauge: Gauge| Gauge::of(gauge.count() as u32, twice(gauge.span()));
        let scaled = Question {
            depth: twice(question.depth),
            gauge: double(question.gauge),
            row_gauge: double(question.row_gauge),
            hem: match question.hem { Hem::Girth(girth) => Hem::Girth(twice(girth)), other => other },
            ..question
        };
        let (Ok(one), Ok(two)) = (answer(&question), answer(&scaled)) else { return Ok(()) };
        prop_assert_eq!(&one.schedule, &two.schedule);
        prop_assert_eq!((one.hem, one.flat_rate, one.hang), (two.hem, two.flat_rate, two.hang));
        let off = two.shape.drop.saturating_sub(twice(one.shape.drop)).to_nm().abs();
        prop_assert!(off <= 2, "{}", off);
    }

    #[test]
    fn the_nearest_is_right(question in questions()) {
        let Err(problems) = answer(&question) else { return Ok(()) };
        prop_assert!(!problems.is_empty());
        for problem in problems {
            let mut offers = Vec::new();
            for value in problem.kind.nearest() {
                let mut better = question;
                match problem.field.name() {
                    Some(Name::Each) => better.each = value,
                    Some(Name::Multiple) => better.multiple = value,
                    Some(Name::Stitches) => better.hem = Hem::Stitches(value),
                    Some(Name::First) => better.first = Some(value),
                    Some(Name::Last) => better.last = value,
                    Some(Name::Neck) => better.neck = value,
                    other => return Err(TestCaseError::fail(format!("{other:?} offers a number"))),
                }
                offers.push(better);
            }
            if let Kind::TooSmall { least: Amount::Length(length) } | Kind::TooLarge { most: Amount::Length(length) } = problem.kind {
                let mut better = question;
                match problem.field.name() {
                    Some(Name::Depth) => better.depth = length,
                    Some(Name::Girth) => better.hem = Hem::Girth(length),
                    other => return Err(TestCaseError::fail(format!("{other:?} offers a length"))),
                }
                offers.push(better);
            }
            for better in offers {
                let again = answer(&better).err().unwrap_or_default();
                prop_assert!(!again.contains(&problem), "{:?} {:?}", problem, again);
            }
        }
    }

    #[test]
    fn no_question_panics(
        numbers: [u32; 6],
        lengths: [i64; 4],
        thousandths in 1_u32..,
        question in questions(),
        which in 0..512_u32,
    ) {
        let [neck, each, multiple, first, last, hem] = numbers;
        let mut asked = question;
        if which & 1 > 0 { asked.neck = neck; }
        if which & 2 > 0 { asked.each = each; }
        if which & 4 > 0 { asked.multiple = multiple; }
        if which & 8 > 0 { (asked.first, asked.last) = (Some(first), last); }
        if which & 16 > 0 { asked.hem = Hem::Stitches(hem); }
        if which & 32 > 0 { asked.hem = Hem::Girth(Length::from_nm(lengths[0])); }
        if which & 64 > 0 { asked.depth = Length::from_nm(lengths[1]); }
        for (bit, gauge, length) in [(128, &mut asked.gauge, lengths[2]), (256, &mut asked.row_gauge, lengths[3])] {
            if which & bit > 0 {
                *gauge = Gauge::new(thousandths, Length::from_nm(length)).unwrap_or(*gauge);
            }
        }
        let _ = answer(&asked);
    }

    #[test]
    fn the_largest_questions_do_not_panic(
        neck in 90_000_u32..=100_000,
        depth in 4_000_i64..=5_000,
        girth in 90_000_i64..=100_000,
        stitches in 1_u32..=400,
        rows in 1_u32..=400,
        each in 1_u32..=1_000,
        multiple in 990_u32..=1_000,
    ) {
        for hem in [Hem::Flat, Hem::Girth(Length::from_mm(girth)), Hem::Stitches(100_000)] {
            for lines in [true, false] {
                let depth = Length::from_mm(depth);
                let question = Question::about(neck, hem, depth, gauge(stitches), gauge(rows));
                let question = Question { each, multiple, lines, ..question };
                if let Err(problems) = answer(&question) { prop_assert!(!problems.is_empty()); }
            }
        }
    }
}

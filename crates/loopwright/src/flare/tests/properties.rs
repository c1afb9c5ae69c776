//! What holds for every flare.

use super::*;

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

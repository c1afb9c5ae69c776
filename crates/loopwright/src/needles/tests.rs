//! Each obvious sum beside the right one, the fewest cords against every other choice, and what holds for every question.

use super::*;
use crate::problem::Kind;
use crate::tables::needle::{CIRCULARS, NEEDLES, Number, System};
use proptest::prelude::*;

fn cm(whole: i64) -> Length {
    Length::of(whole, LengthUnit::Cm)
}

fn mm(hundredths: i64) -> Length {
    Length::from_nm(hundredths * 10_000)
}

/// In the round at 20 stitches in 10 cm, so that stitches are half centimetres.
fn round(around: Around, cords: &[i64]) -> Question {
    Question {
        around: Some(around),
        unwashed: Some(Gauge::of(20, Gauge::TEN_CM)),
        cords: cords.iter().map(|length| cm(*length)).collect(),
        ..Question::default()
    }
}

fn sized(size: Size) -> Vec<Needle> {
    let question = Question {
        size: Some(size),
        ..Question::default()
    };
    answer(&question).unwrap().needles
}

fn numbers(needle: &Needle, system: System) -> Vec<String> {
    let named = needle.named.iter().filter(|named| named.system == system);
    named
        .map(|named| named.number.map_or(String::new(), |number| number.to_string()))
        .collect()
}

fn runs(answer: &Answer, length: i64) -> Vec<(u32, u32)> {
    let cord = answer.cords.iter().find(|cord| cord.length == cm(length)).unwrap();
    cord.runs.iter().map(|run| (run.from, run.to)).collect()
}

#[test]
fn each_cord_serves_from_its_length_to_twice_it_as_the_tube_grows() {
    // A centimetre a round, 45 cm in round 1 to 150 cm in round 106.
    let counts = (45..=150).map(|girth| 2 * girth).collect();
    let answer = answer(&round(Around::Rounds(counts), &[])).unwrap();
    assert_eq!(runs(&answer, 40), [(1, 36)]);
    assert_eq!(runs(&answer, 60), [(16, 76)]);
    assert_eq!(runs(&answer, 80), [(36, 106)]);
    assert_eq!(runs(&answer, 100), [(56, 106)]);
    // Not 120 until 120 cm, in round 76; the obvious rule has only the upper end, and keeps 40 cm for all 150 cm.
    assert_eq!(runs(&answer, 120), [(76, 106)]);
    assert_eq!(runs(&answer, 150), [(106, 106)]);
    assert_eq!(answer.picks, [cm(40), cm(80)]);
    let changes: Vec<_> = answer
        .plan
        .iter()
        .map(|part| (part.earliest, part.latest, part.last))
        .collect();
    assert_eq!(changes, [(1, 1, 36), (36, 37, 106)]);
}

#[test]
fn a_change_has_a_window_as_wide_as_the_fewest_cords_allow() {
    let counts = (45..=115).map(|girth| 2 * girth).collect();
    let answer = answer(&round(Around::Rounds(counts), &[])).unwrap();
    // 40 and 80 would do as well, with a window of one round; 40 and 60 leave rounds 16 to 37.
    assert_eq!(answer.picks, [cm(40), cm(60)]);
    assert_eq!((answer.plan[1].earliest, answer.plan[1].latest), (16, 37));
}

#[test]
fn a_shrinking_tube_goes_the_other_way_and_ends_without_a_cord() {
    let around = Around::Even {
        from: 240,
        to: 40,
        rounds: 101,
    };
    let answer = answer(&round(around, &[40, 60, 80])).unwrap();
    let parts: Vec<_> = answer.plan.iter().map(|part| part.by).collect();
    assert_eq!(answer.picks, [cm(40), cm(60)]);
    assert_eq!(parts[..2], [By::Cord(cm(60)), By::Cord(cm(40))]);
    let By::Gap(gap) = parts[2] else { panic!("{parts:?}") };
    assert!(gap.small);
    assert_eq!((gap.least, gap.most), (cm(20), cm(39)));
    // Magic loop needs 80 cm, which is at hand; no circular needle is so short that it serves 20 to 39 cm.
    // Magic loop needs 80 cm, which is at hand; no circular needle is so short that it serves 20 to 39 cm.
    assert_eq!(
        (gap.magic_loop, gap.at_hand, gap.cord),
        (Some(cm(80)), Some(cm(80)), None)
    );
}

#[test]
fn between_two_cords_the_one_that_is_missing_is_named() {
    let counts = vec![80, 160, 170, 190, 200];
    let answer = answer(&round(Around::Rounds(counts), &[40, 100])).unwrap();
    let By::Gap(gap) = answer.plan[1].by else {
        panic!("{:?}", answer.plan)
    };
    assert_eq!((answer.plan[1].latest, answer.plan[1].last), (3, 4));
    assert_eq!(gap.cord, Some((Length::from_mm(475), cm(85))));
    assert_eq!((gap.small, gap.magic_loop, gap.at_hand), (false, Some(cm(125)), None));
}

#[test]
fn flat_knitting_has_no_lower_limit() {
    let around = Around::Even {
        from: 20,
        to: 200,
        rounds: 91,
    };
    let flat = Question {
        flat: true,
        ..round(around.clone(), &[40, 60, 80])
    };
    let back = answer(&flat).unwrap();
    assert_eq!(runs(&back, 80), [(1, 91)]);
    assert_eq!(runs(&back, 40), [(1, 71)]);
    // The shortest that holds the most: 100 cm on 60 cm. The rule for a tube finds nothing for the first 40 cm.
    assert_eq!((back.picks.as_slice(), back.plan.len()), (&[cm(60)][..], 1));
    assert!(matches!(
        answer(&round(around, &[40, 60, 80])).unwrap().plan[0].by,
        By::Gap(_)
    ));
}

#[test]
fn tips_that_do_not_bend_leave_a_short_cord_out() {
    let hat = round(
        Around::Even {
            from: 100,
            to: 100,
            rounds: 40,
        },
        &[40, 30],
    );
    let ask = answer(&hat).unwrap();
    assert_eq!(ask.picks, [cm(40)]);
    assert!(ask.notes.contains(&Note::AskTip {
        cord: cm(40),
        most: cm(10)
    }));
    // The obvious rule looks at the label alone: with tips of 12 cm neither 40 cm nor 30 cm closes into a ring.
    let stiff = answer(&Question {
        tip: Some(cm(12)),
        ..hat.clone()
    })
    .unwrap();
    assert_eq!((stiff.cords[0].stiff, stiff.picks.len()), (true, 0));
    assert!(stiff.notes.contains(&Note::TooStiff {
        cord: cm(30),
        most: Length::from_mm(75)
    }));
    let short = answer(&Question {
        tip: Some(cm(8)),
        ..hat.clone()
    })
    .unwrap();
    assert_eq!((short.cords[0].stiff, short.cords[1].stiff), (false, true));
    // Back and forth nothing has to bend, and from 60 cm on nobody asks.
    let flat = answer(&Question {
        tip: Some(cm(12)),
        flat: true,
        ..hat.clone()
    })
    .unwrap();
    assert!(flat.cords.iter().all(|cord| !cord.stiff && cord.tip.is_none()));
    let long = Question {
        cords: vec![cm(60)],
        ..hat
    };
    assert_eq!(answer(&long).unwrap().cords[0].tip, None);
}

#[test]
fn what_lies_on_the_needle_is_not_washed() {
    // 84 stitches: 42 cm washed at 20 in 10 cm, but 38.2 cm on the needle at 22.
    let around = Around::Even {
        from: 84,
        to: 84,
        rounds: 1,
    };
    let (washed, unwashed) = (Gauge::of(20, Gauge::TEN_CM), Gauge::of(22, Gauge::TEN_CM));
    let both = Question {
        washed: Some(washed),
        unwashed: Some(unwashed),
        ..round(around, &[40])
    };
    let right = answer(&both).unwrap();
    assert_eq!(right.picks, []);
    assert!(!right.notes.contains(&Note::WashedGauge));
    // The obvious sum takes the gauge of the pattern, which is washed, and a cord that is too long.
    let only = answer(&Question { unwashed: None, ..both }).unwrap();
    assert_eq!(only.picks, [cm(40)]);
    assert!(only.notes.contains(&Note::WashedGauge));
}

#[test]
fn a_ruffle_goes_by_its_stitches() {
    // 400 stitches are 200 cm on the needle, however small the neck: 100 cm holds them, 60 cm as the body would have it not.
    let ruffle = Question {
        flat: true,
        ..round(
            Around::Even {
                from: 400,
                to: 400,
                rounds: 1,
            },
            &[60, 100],
        )
    };
    assert_eq!(answer(&ruffle).unwrap().picks, [cm(100)]);
    let body = Question {
        around: Some(Around::Girth(cm(90))),
        ..ruffle
    };
    let typed = answer(&body).unwrap();
    assert_eq!(typed.picks, [cm(60)]);
    assert!(typed.notes.contains(&Note::GirthIsItsStitches));
}

#[test]
fn a_girth_serves_without_a_gauge_and_to_the_nanometre() {
    let girth = |nm| {
        let around = Some(Around::Girth(Length::from_nm(nm)));
        answer(&Question {
            around,
            cords: vec![cm(40)],
            ..Question::default()
        })
        .unwrap()
        .picks
        .len()
    };
    assert_eq!(
        [
            girth(399_999_999),
            girth(400_000_000),
            girth(800_000_000),
            girth(800_000_001)
        ],
        [0, 1, 1, 0]
    );
}

#[test]
fn needles_are_never_rounded() {
    for hundredths in [225, 275, 325, 375, 1275] {
        assert_eq!(sized(Size::Metric(mm(hundredths)))[0].across, mm(hundredths));
    }
    // The obvious print with one decimal makes 2.3 of 2.25, which no system has.
    let exact = &sized(Size::Metric(mm(225)))[0];
    let rounded = &sized(Size::Metric(mm(230)))[0];
    let off = |needle: &Needle| {
        needle
            .named
            .iter()
            .filter(|named| named.system != System::Japanese)
            .any(|named| named.off != Length::ZERO)
    };
    assert!(!off(exact) && off(rounded));
    assert_eq!(Size::read("2,25", System::Metric), Ok(Size::Metric(mm(225))));
}

#[test]
fn a_number_may_stand_for_two_needles_and_a_needle_for_none() {
    let seventeen = sized(Size::Us(Number::whole(17)));
    assert_eq!(
        seventeen.iter().map(|needle| needle.across).collect::<Vec<_>>(),
        [mm(1200), mm(1275)]
    );
    let thin = &sized(Size::Metric(mm(250)))[0];
    assert_eq!(numbers(thin, System::Us), ["1 1/2"]);
    // No UK number at 2.5 mm: 13 and 12 are equally near, and both are said.
    assert_eq!(numbers(thin, System::Uk), ["13", "12"]);
    // No UK number is so thick, and none is made up.
    assert!(numbers(&sized(Size::Metric(mm(1200)))[0], System::Uk).is_empty());
    let japanese = &sized(Size::Japanese(5))[0];
    assert_eq!((japanese.across, japanese.hole), (mm(360), Some(mm(375))));
    assert_eq!(
        (numbers(japanese, System::Us), numbers(japanese, System::Uk)),
        (vec!["4".into()], vec!["9".into()])
    );
}

#[test]
fn the_same_number_is_another_needle_in_the_other_system() {
    // The obvious reading drops the system: US 8 is 5 mm, UK 8 is 4 mm. Only 7 is the same in both.
    for number in 0..=15 {
        let us = NEEDLES.iter().find(|row| row.us == Some(Number::whole(number)));
        let uk = NEEDLES.iter().find(|row| row.uk == Some(Number::whole(number)));
        if let (Some(us), Some(uk)) = (us, uk) {
            assert_eq!(us.across == uk.across, number == 7, "{number}");
        }
    }
}

#[test]
fn a_shaft_without_a_number_lies_between_two_holes() {
    let could = |passes, stops| {
        let found = sized(Size::Hole {
            passes: mm(passes),
            stops,
        });
        found.iter().map(|needle| needle.across).collect::<Vec<_>>()
    };
    // It passes 3.75 and not 3.5: 3.75, or a Japanese 5 of 3.6.
    assert_eq!(could(375, None), [mm(360), mm(375)]);
    // A gauge without a hole of 3.5 cannot tell 3.5 from 3.75, and the obvious answer is the hole alone.
    assert_eq!(could(375, Some(mm(325))), [mm(330), mm(350), mm(360), mm(375)]);
    assert_eq!(could(4_000, Some(mm(3_000))), [mm(4_000)]);
}

#[test]
fn sizes_are_read_as_they_are_written() {
    let read = |text| Size::read(text, System::Us);
    assert_eq!(read("10.5"), Ok(Size::Us(Number::quarters(42))));
    assert_eq!(read("10 3/4"), Ok(Size::Us(Number::quarters(43))));
    assert_eq!(read(" 00 "), Ok(Size::Us(Number::noughts(2))));
    assert_eq!(read("0"), Ok(Size::Us(Number::whole(0))));
    assert_eq!(read("UK13"), Ok(Size::Uk(Number::whole(13))));
    assert_eq!(read("JP 8"), Ok(Size::Japanese(8)));
    assert_eq!(read("3 3/4 mm"), Ok(Size::Metric(mm(375))));
    for text in ["", "US", "x", "10 1/3", "-2", "JP 1/2", "ü7"] {
        assert!(read(text).is_err(), "{text}");
    }
}

#[test]
fn a_number_that_no_needle_has_names_its_neighbours() {
    let wrong = |size| {
        answer(&Question {
            size: Some(size),
            ..Question::default()
        })
        .unwrap_err()[0]
            .kind
    };
    let near = |below, above| Kind::NoExact { below, above };
    assert_eq!(wrong(Size::Us(Number::whole(12))), near(Some(11), Some(13)));
    assert_eq!(wrong(Size::Us(Number::whole(60))), near(Some(50), None));
    assert_eq!(wrong(Size::Uk(Number::whole(20))), near(Some(15), None));
    assert_eq!(wrong(Size::Us(Number::noughts(9))), near(None, Some(0)));
    assert_eq!(wrong(Size::Japanese(u32::MAX)), near(Some(15), None));
    assert!(matches!(wrong(Size::Metric(cm(6))), Kind::TooLarge { .. }));
}

#[test]
fn every_field_out_of_bounds_is_named() {
    let fields = |question: &Question| {
        answer(question)
            .unwrap_err()
            .iter()
            .map(|wrong| wrong.field)
            .collect::<Vec<_>>()
    };
    assert_eq!(fields(&Question::default()), ["size"]);
    let bare = Question {
        around: Some(Around::Rounds(vec![])),
        ..Question::default()
    };
    assert_eq!(fields(&bare), ["around", "gauge"]);
    let all = Question {
        size: Some(Size::Metric(Length::ZERO)),
        around: Some(Around::Even {
            from: 0,
            to: 200_000,
            rounds: 1,
        }),
        unwashed: Gauge::new(1, Length::from_nm(1)),
        cords: vec![Length::ZERO; 41],
        tip: Some(Length::MAX),
        ..Question::default()
    };
    assert_eq!(
        fields(&all),
        [
            "size", "from", "to", "rounds", "gauge", "gauge", "cords", "cords", "tip"
        ]
    );
}

/// The fewest cords of a set that serve every count which any of them serves, by trying every subset.
fn fewest(counts: &[u32], cords: &[i64], flat: bool) -> usize {
    let holds = |cord: i64, count: u32| {
        let half_cm = i64::from(count);
        (flat || 2 * cord <= half_cm) && half_cm <= 4 * cord
    };
    let served: Vec<u32> = counts
        .iter()
        .copied()
        .filter(|count| cords.iter().any(|cord| holds(*cord, *count)))
        .collect();
    let subsets = (0_u32..1 << cords.len()).filter(|subset| {
        let chosen = |count: &u32| (0..cords.len()).any(|i| subset & 1 << i != 0 && holds(cords[i], *count));
        served.iter().all(chosen)
    });
    subsets.map(|subset| subset.count_ones() as usize).min().unwrap()
}

/// The fewest changes with these cords, by going through the rounds with every cord at once.
fn fewest_stretches(counts: &[u32], picks: &[Length], flat: bool) -> usize {
    let holds = |cord: Length, count: u32| {
        let (cord, girth) = (cord.to_nm(), i64::from(count) * 5_000_000);
        (flat || cord <= girth) && girth <= 2 * cord
    };
    // What it takes to end a round on each cord; the last is no cord at all, where none holds.
    let mut ways = vec![0_usize; picks.len() + 1];
    let mut begun = false;
    for count in counts {
        let least = *ways.iter().min().unwrap();
        let none = !picks.iter().any(|cord| holds(*cord, *count));
        let next = (0..ways.len()).map(|i| {
            let fits = picks.get(i).map_or(none, |cord| holds(*cord, *count));
            let stay = if begun { ways[i] } else { usize::MAX };
            if fits {
                stay.min(least.saturating_add(1))
            } else {
                usize::MAX / 2
            }
        });
        ways = next.collect();
        begun = true;
    }
    *ways.iter().min().unwrap()
}

proptest! {
    #[test]
    fn no_set_of_cords_is_smaller(
        counts in prop::collection::vec(20_u32..700, 1..40),
        cords in prop::collection::vec(20_i64..180, 1..9),
        flat: bool,
    ) {
        let question = Question { flat, ..round(Around::Rounds(counts.clone()), &cords) };
        let answer = answer(&question).unwrap();
        prop_assert_eq!(answer.picks.len(), fewest(&counts, &cords, flat));
        prop_assert!(answer.picks.is_sorted());
        prop_assert_eq!(answer.plan.len(), fewest_stretches(&counts, &answer.picks, flat));
    }

    #[test]
    fn every_change_within_its_window_works(
        counts in prop::collection::vec(60_u32..400, 1..60),
        cords in prop::collection::vec(20_i64..180, 1..9),
        flat: bool,
        pick in 0_u32..100,
    ) {
        let question = Question { flat, ..round(Around::Rounds(counts.clone()), &cords) };
        let answer = answer(&question).unwrap();
        // Knit it: change at some round of each window, and look at every round whether the cord serves it.
        let mut on = Vec::new();
        let mut before = 0;
        for part in &answer.plan {
            prop_assert!(before < part.earliest && part.earliest <= part.latest && part.latest <= part.last);
            before = part.latest;
            let change = part.earliest + pick % (part.latest - part.earliest + 1);
            on.truncate(change as usize - 1);
            on.resize(part.last as usize, part.by);
        }
        prop_assert_eq!(on.len(), counts.len());
        for (round, by) in (1..).zip(on) {
            let serves = |cord: &Cord| cord.runs.iter().any(|run| (run.from..=run.to).contains(&round));
            match by {
                By::Cord(length) => prop_assert!(answer.cords.iter().any(|cord| cord.length == length && serves(cord))),
                By::Gap(gap) => {
                    prop_assert!(!answer.cords.iter().any(serves));
                    let girth = Length::from_mm(5 * i64::from(counts[round as usize - 1]));
                    prop_assert!(gap.least <= girth && girth <= gap.most);
                    if let Some((shortest, longest)) = gap.cord {
                        prop_assert!(shortest <= longest && gap.most <= shortest.saturating_mul(2));
                        prop_assert!(flat || longest <= gap.least);
                    }
                }
            }
        }
    }

    #[test]
    fn lengths_twice_as_long_change_no_round(
        counts in prop::collection::vec(20_u32..700, 1..30),
        thousandths in 5_000_u32..60_000,
        cords in prop::collection::vec(150_000_000_i64..2_000_000_000, 1..9),
        flat: bool,
    ) {
        let scaled = |times: i64| {
            let question = Question {
                around: Some(Around::Rounds(counts.clone())),
                unwashed: Gauge::new(thousandths, Gauge::FOUR_INCHES.saturating_mul(times)),
                cords: cords.iter().map(|nm| Length::from_nm(nm * times)).collect(),
                flat,
                ..Question::default()
            };
            let answer = answer(&question).unwrap();
            let runs: Vec<_> = answer.cords.into_iter().map(|cord| (cord.stitches, cord.runs)).collect();
            let plan: Vec<_> = answer.plan.iter().map(|part| (part.earliest, part.latest, part.last)).collect();
            (runs, plan)
        };
        prop_assert_eq!(scaled(1), scaled(2));
    }

    #[test]
    fn the_nearest_of_a_system_is_nearest(hundredths in 50_i64..3_000) {
        let needle = &sized(Size::Metric(mm(hundredths)))[0];
        for named in &needle.named {
            prop_assert_eq!(named.off, named.across.saturating_sub(needle.across));
            let number = |row: &&crate::tables::needle::Needle| match named.system {
                System::Us => row.us.is_some(),
                System::Uk => row.uk.is_some(),
                System::Metric | System::Japanese => named.system == System::Metric,
            };
            let off = |row: &crate::tables::needle::Needle| row.across.saturating_sub(needle.across).to_nm().abs();
            let least = NEEDLES.iter().filter(number).map(off).min();
            prop_assert!(least.is_none_or(|least| named.off.to_nm().abs() == least));
            prop_assert!(least.is_some() || named.off.to_nm().abs() <= 1_500_000);
        }
        prop_assert!(needle.hole.is_none_or(|hole| hole >= needle.across));
    }

    #[test]
    fn each_number_is_found_again(quarters in -3_i16..300) {
        let number = Number::quarters(quarters);
        for (system, size) in [(System::Us, Size::Us(number)), (System::Uk, Size::Uk(number))] {
            prop_assert_eq!(Size::read(&number.to_string(), system), Ok(size));
            let found = answer(&Question { size: Some(size), ..Question::default() });
            for needle in found.iter().flat_map(|answer| &answer.needles) {
                prop_assert!(numbers(needle, system).contains(&number.to_string()));
            }
        }
    }

    #[test]
    fn nothing_panics(
        lengths: [i64; 6],
        numbers: [u32; 3],
        quarters: i16,
        counts in prop::collection::vec(any::<u32>(), 0..20),
        thousandths: u32,
        flags: [bool; 2],
        text in ".*",
    ) {
        let [a, b, c, d, e, f] = lengths.map(Length::from_nm);
        let [from, to, rounds] = numbers;
        let sizes = [
            Size::Metric(a),
            Size::Us(Number::quarters(quarters)),
            Size::Uk(Number::noughts(quarters)),
            Size::Japanese(from),
            Size::Hole { passes: a, stops: flags[1].then_some(b) },
            Size::Hole { passes: Length::from_mm(5), stops: Some(b) },
        ];
        let small = Around::Even { from: from % 100_000 + 1, to: to % 100_000 + 1, rounds: rounds % 300 + 2 };
        let arounds = [Around::Girth(c), Around::Even { from, to, rounds }, Around::Rounds(counts), small];
        for (size, around) in sizes.into_iter().zip(arounds.iter().cycle()) {
            let question = Question {
                size: Some(size),
                around: Some(around.clone()),
                unwashed: Gauge::new(thousandths, d),
                washed: Gauge::new(thousandths % 400_000, SPAN.least),
                flat: flags[0],
                cords: vec![e, f],
                tip: Some(e),
            };
            let _ = answer(&question);
            let _ = answer(&Question { size: Some(Size::Japanese(3)), unwashed: None, cords: vec![], tip: None, ..question });
        }
        let _ = Size::read(&text, System::Us);
        let _ = NEEDLES.len() + CIRCULARS.len();
    }
}

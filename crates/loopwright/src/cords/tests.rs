//! Each obvious sum beside the right one, the fewest cords against every other choice, and what holds for every question.

mod properties;
mod steps;

use super::*;
use proptest::prelude::*;

fn cm(whole: i64) -> Length {
    Length::of(whole, LengthUnit::Cm)
}

/// In the round at 20 stitches in 10 cm, so that stitches are half centimetres.
fn round(around: Around, cords: &[i64]) -> Question {
    Question {
        unwashed: Some(Gauge::of(20, Gauge::TEN_CM)),
        cords: cords.iter().map(|length| cm(*length)).collect(),
        ..Question::about(around)
    }
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
    // Magic loop needs 80 cm; no circular needle is so short that it serves 20 to 39 cm.
    assert_eq!((gap.magic_loop, gap.cord), (Some(cm(80)), None));
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
    assert_eq!(
        (gap.small, gap.magic_loop, gap.sold),
        (false, Some(cm(150)), Some((cm(50), cm(80))))
    );
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

/// 40 cm are 85.2 stitches at 21.3 in 10 cm. Rounded down, 85 would have to stretch round a cord that is longer.
#[test]
fn no_part_of_a_stitch_is_stretched_round_a_cord() {
    let stitches = |count: u32, flat: bool| {
        let even = Around::Even {
            from: count,
            to: count,
            rounds: 1,
        };
        let question = Question {
            unwashed: Gauge::new(21_300, Gauge::TEN_CM),
            flat,
            ..round(even, &[40])
        };
        answer(&question).unwrap().cords[0].clone()
    };
    assert!(stitches(85, false).runs.is_empty());
    assert_eq!(stitches(86, false).stitches, (86, 170));
    assert_eq!(stitches(85, true).stitches, (0, 170));
}

/// What a tube of 80 to 110 cm lacks is a cord of 55 to 80 cm, or magic loop. Back and forth the obvious answer is the
/// same; but there a cord may be as long as all the stitches, and nothing is to be drawn through.
#[test]
fn what_is_missing_back_and_forth_may_be_longer_and_needs_no_loop() {
    let gap = |flat: bool| {
        let counts = vec![80, 162, 190, 220];
        let question = Question {
            flat,
            ..round(Around::Rounds(counts), &[40])
        };
        match answer(&question).unwrap().plan[1].by {
            By::Gap(gap) => gap,
            by => panic!("{by:?}"),
        }
    };
    let (tube, flat) = (gap(false), gap(true));
    assert_eq!((tube.least, tube.most), (cm(81), cm(110)));
    assert_eq!((tube.cord, tube.magic_loop), (Some((cm(55), cm(81))), Some(cm(150))));
    assert_eq!((flat.cord, flat.magic_loop), (Some((cm(55), cm(110))), None));
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
    // Nobody knows the tip yet: the longest that bends is told.
    let ask = answer(&hat).unwrap();
    assert_eq!((ask.picks.as_slice(), ask.cords[0].tip), (&[cm(40)][..], Some(cm(10))));
    // The obvious rule looks at the label alone: with tips of 12 cm neither 40 cm nor 30 cm closes into a ring.
    let stiff = answer(&Question {
        tip: Some(cm(12)),
        ..hat.clone()
    })
    .unwrap();
    assert_eq!((stiff.cords[0].stiff, stiff.picks.len()), (true, 0));
    assert_eq!(stiff.cords[1].tip, Some(Length::from_mm(75)));
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
    // The obvious sum takes the gauge of the pattern, which is washed, and a cord that is too long.
    let only = answer(&Question { unwashed: None, ..both }).unwrap();
    assert_eq!(only.picks, [cm(40)]);
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
        around: Around::Girth(cm(90)),
        ..ruffle
    };
    assert_eq!(answer(&body).unwrap().picks, [cm(60)]);
}

#[test]
fn a_girth_serves_without_a_gauge_and_to_the_nanometre() {
    let girth = |nm| {
        let around = Around::Girth(Length::from_nm(nm));
        let question = Question {
            cords: vec![cm(40)],
            ..Question::about(around)
        };
        answer(&question).unwrap().picks.len()
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
fn every_field_out_of_bounds_is_named() {
    let fields = |question: &Question| {
        answer(question)
            .unwrap_err()
            .iter()
            .filter_map(|wrong| wrong.field.name())
            .collect::<Vec<Name>>()
    };
    assert_eq!(
        fields(&Question::about(Around::Rounds(vec![]))),
        [Name::Around, Name::Gauge]
    );
    let all = Question {
        unwashed: Gauge::new(1, Length::from_nm(1)),
        cords: vec![Length::ZERO; 41],
        tip: Some(Length::MAX),
        ..Question::about(Around::Even {
            from: 0,
            to: 200_000,
            rounds: 1,
        })
    };
    let gauge = Name::Gauge;
    assert_eq!(
        fields(&all)[..6],
        [Name::From, Name::To, Name::Rounds, gauge, gauge, Name::Cords]
    );
    assert_eq!(fields(&all).last(), Some(&Name::Tip));
}

/// 40 cm and 80 cm meet in one round; 60 cm between them leaves many for each change.
#[test]
fn one_cord_more_widens_a_window_of_one_round() {
    let around = Around::Even {
        from: 90,
        to: 300,
        rounds: 60,
    };
    let answered = answer(&round(around.clone(), &[40, 60, 80])).unwrap();
    assert_eq!(answered.picks, [cm(40), cm(80)]);
    assert_eq!(answered.plan[1].earliest, answered.plan[1].latest);
    let easier = answered.easier.unwrap();
    assert_eq!((easier.cord, easier.plan.len()), (cm(60), 3));
    assert!(easier.plan[1..].iter().all(|part| part.earliest < part.latest));
    // Without another cord there is none to tell of.
    assert_eq!(answer(&round(around, &[40, 80])).unwrap().easier, None);
}

/// The obvious answer, since no cord at hand is left, would be double-pointed needles.
#[test]
fn a_wide_piece_is_not_small_because_the_short_cord_is_stiff() {
    let gap = |stitches: u32| {
        let around = Around::Even {
            from: stitches,
            to: stitches,
            rounds: 1,
        };
        let question = Question {
            tip: Some(Length::from_mm(130)),
            ..round(around, &[40])
        };
        match answer(&question).unwrap().plan[0].by {
            By::Gap(gap) => gap,
            By::Cord(cord) => panic!("{cord:?} serves"),
        }
    };
    // 200 cm and 42 cm at 20 stitches in 10 cm.
    assert!(!gap(400).small && gap(400).cord.is_some());
    assert!(gap(84).small);
}

//! Flares that cannot be had, and what is said to be nearest.

use super::*;

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

//! What there is no room for, and the ends of all numbers.

use super::*;

/// More stitches would be no help to her who typed the edges too wide, least of all four thousand million.
#[test]
fn edges_that_leave_no_room_are_what_is_wrong() {
    let with_edge = |ask, plain, increase| Question {
        ask,
        increase,
        knitting: Knitting::Flat {
            edge: Edge::AtLeast(plain),
        },
        ..Question::about(100)
    };
    let asks = [
        (Ask::Lose(1), Increase::M1, 49),
        (Ask::Decreases(1), Increase::M1, 49),
        (Ask::Reach(99), Increase::M1, 49),
        (Ask::Gain(1), Increase::M1, 50),
        (Ask::Increases(1), Increase::Kfb, 49),
        (Ask::Reach(101), Increase::Kfb, 49),
        (Ask::Multiple { of: 99, plus: 0 }, Increase::Kfb, 49),
    ];
    for (ask, increase, most) in asks {
        for plain in [most + 1, 1_000, u32::MAX] {
            let problems = answer(&with_edge(ask, plain, increase)).unwrap_err();
            assert_eq!(
                problems,
                [Problem::new(Name::EdgePlain, Kind::TooMany { most })],
                "{ask:?}"
            );
        }
        assert!(answer(&with_edge(ask, most, increase)).is_ok(), "{ask:?}");
    }
}

/// It is a function for anybody, and no count of a `u32` may overflow in it.
#[test]
fn multiples_are_found_at_the_end_of_all_numbers() {
    let kinds = [
        Knitting::Round { end_on_change: false },
        Knitting::Flat { edge: Edge::Half },
        Knitting::Flat { edge: Edge::Mirrored },
        Knitting::Flat {
            edge: Edge::AtLeast(u32::MAX),
        },
    ];
    for knitting in kinds {
        for (decrease, increase) in [(Decrease::K2tog, Increase::M1), (Decrease::Cdd, Increase::Kfb)] {
            for stitches in [0, 1, 2, u32::MAX - 1, u32::MAX] {
                for (of, plus) in [(0, 0), (1, 0), (2, 1), (8, 3), (u32::MAX, 0), (u32::MAX, u32::MAX)] {
                    let about = Question::about(stitches);
                    let found = multiples(
                        &Question {
                            knitting,
                            decrease,
                            increase,
                            ..about
                        },
                        of,
                        plus,
                    );
                    assert!(found.below.is_none_or(|below| below.stitches < stitches));
                    assert!(found.above.is_none_or(|above| above.stitches > stitches));
                }
            }
        }
    }
    let below = multiples(&Question::about(u32::MAX), 1_000, 0).below;
    assert_eq!(below.map(|below| below.stitches), Some(4_294_967_000));
}

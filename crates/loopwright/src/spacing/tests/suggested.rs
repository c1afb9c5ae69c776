//! Which order is suggested, and that it can be held in the head.

use super::*;

#[test]
fn blocks_that_drift_are_said_to_and_come_with_more_even_ones() {
    let ways = |stitches, changes| {
        let question = Question {
            ask: Ask::Lose(changes),
            ..Question::about(stitches)
        };
        let answer = answer(&question).unwrap();
        let ways: Vec<_> = answer.ways.iter().map(|way| (way.order, way.drift)).collect();
        (ways, answer.ways[answer.suggested].row.to_string())
    };
    // Seven and six in turn is shorter to say than five times six of each.
    let (orders, suggested) = ways(510, 60);
    assert_eq!(orders[0], (Order::TwoBlocks, Fraction::new(15, 1)));
    assert_eq!(orders[1], (Order::BlocksInTurn, Fraction::new(3, 1)));
    assert_eq!(orders[2], (Order::MostEven, Fraction::new(1, 2)));
    assert_eq!(suggested, "K3, k2tog, K7, k2tog, (K6, k2tog, K7, k2tog) 29 times, K3");
    let (orders, suggested) = ways(320, 56);
    let orders: Vec<_> = orders.iter().map(|(order, _)| *order).collect();
    assert_eq!(orders, [Order::TwoBlocks, Order::BlocksInTurn, Order::MostEven]);
    assert_eq!(
        suggested,
        "K2, k2tog, (K4, k2tog, K4, k2tog, K3, k2tog, K4, k2tog) 7 times, (K4, k2tog, K4, k2tog, K3, k2tog) 9 times, K2"
    );
}

#[test]
fn the_ordinary_run_is_named_where_changes_are_dense() {
    let suggested = |ask, stitches| {
        let answer = answer(&Question {
            ask,
            ..Question::about(stitches)
        })
        .unwrap();
        answer.ways[answer.suggested].row.to_string()
    };
    assert_eq!(
        suggested(Ask::Gain(40), 48),
        "(K1, M1) 40 times, but K2 the 6th, 11th, 16th, 21st, 26th, 31st and 36th time, K1"
    );
    // Two lengths of run that are nearly as many each are blocks of a few.
    assert_eq!(
        suggested(Ask::Gain(61), 100),
        "K1, M1, (K2, M1, K1, M1, K2, M1) 16 times, (K2, M1, K1, M1) 6 times, K1"
    );
}

/// As long as it is short enough to knit from, what is suggested strays less than anybody sees, and no bracket in it holds a
/// bracket.
#[test]
fn what_is_suggested_is_easy_to_hold() {
    for stitches in (20..=320).step_by(12) {
        for changes in 1..=stitches / 2 {
            for ask in [Ask::Lose(changes), Ask::Gain(changes)] {
                let answer = answer(&Question {
                    ask,
                    ..Question::about(stitches)
                })
                .unwrap();
                let Way {
                    row, drift, readable, ..
                } = &answer.ways[answer.suggested];
                assert!(*readable && row.depth() <= 1, "{row}");
                let shorter = answer
                    .ways
                    .iter()
                    .find(|way| way.row.terms() < row.terms() && way.drift <= *drift);
                assert_eq!(shorter, None, "{row}");
            }
        }
    }
}

/// Nobody reads an order of a hundred thousand terms, so none is written: one bracket, and the times that differ.
#[test]
fn the_longest_orders_are_one_term_of_data() {
    let answer = answer(&Question {
        ask: Ask::Gain(61_803),
        ..Question::about(100_000)
    });
    for way in answer.unwrap().ways {
        assert!(
            way.row.items.len() < 12,
            "{:?}: {} items",
            way.order,
            way.row.items.len()
        );
        assert_eq!(row::work(&way.row, 100_000).map(|worked| worked.on_needle), Ok(161_803));
    }
}

/// What is suggested does not hang on whether the other ways are written too.
#[test]
fn the_suggested_row_alone_is_the_one_among_all_ways() {
    let mut rows = 0;
    for stitches in (5..=400).step_by(7).chain((1_000..=9_000).step_by(1_237)) {
        for changes in (1..=stitches).step_by(1 + stitches as usize / 40) {
            for ask in [Ask::Lose(changes), Ask::Gain(changes)] {
                let question = Question {
                    ask,
                    ..Question::about(stitches)
                };
                let Ok(mut answer) = answer(&question) else { continue };
                let among_all = answer.ways.swap_remove(answer.suggested).row;
                assert_eq!(suggested_row(&question), Ok(among_all), "{question:?}");
                rows += 1;
            }
        }
    }
    assert!(rows > 3_000, "{rows}");
}

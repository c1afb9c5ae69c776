//! The traps of whole balls, each by its subject.

use super::*;

fn exactly(length: Length, ball: i64) -> Answer {
    let question = Question {
        ball: Ball {
            length: metres(ball),
            ..Ball::USUAL
        },
        ..Question::from_pattern(Ask::Length(length))
    };
    answer(&question).unwrap()
}

/// Six balls of 125 m hold 750 m, however the 750 m came about; a float makes seven of some of them.
#[test]
fn six_balls_exactly_are_six() {
    let answered = exactly(metres(750), 125);
    assert_eq!((answered.balls, answered.leftover), (6, Length::ZERO));
    let spare = Length::ZERO;
    assert_eq!(answered.close, Some(Close::JustUnder { spare }));
    // In floats: 4.1 m of yarn, a hundred and twenty-three times, in balls of 4.1 m.
    let ball = Length::from_mm(4_100);
    let wanted = ball.saturating_mul(6);
    let floats: f64 = (0..6).map(|_| 4.1_f64).sum::<f64>() / 4.1;
    assert_eq!(floats.ceil(), 7.0, "{floats}");
    let question = Question {
        ball: Ball {
            length: ball,
            ..Ball::USUAL
        },
        ..Question::from_pattern(Ask::Length(wanted))
    };
    assert_eq!(answer(&question).unwrap().balls, 6);
}

/// Both sides of a whole ball are warned of: 3.97 and 4.03.
#[test]
fn both_sides_of_a_whole_ball_are_warned_of() {
    let under = exactly(metres(397), 100);
    assert_eq!(under.balls, 4);
    let spare = metres(3);
    assert_eq!(under.close, Some(Close::JustUnder { spare }));
    let over = exactly(metres(403), 100);
    assert_eq!(over.balls, 5);
    assert_eq!(over.close, Some(Close::JustOver { over: metres(3) }));
    assert_eq!(exactly(metres(450), 100).close, None);
    // One ball is never too many.
    assert_eq!(exactly(metres(3), 100).close, None);
}

/// The reserve is no reason to knit a shorter piece, and a pattern's own ball is no sum to be close.
#[test]
fn a_last_ball_is_for_the_reserve_only() {
    let with = |metres_needed, reserve| {
        let ball = Ball {
            length: metres(100),
            ..Ball::USUAL
        };
        let ask = Ask::Length(metres(metres_needed));
        answer(&Question {
            ask,
            ball,
            reserve,
            yarns: Vec::new(),
        })
        .unwrap()
    };
    let answered = with(380, 6);
    assert_eq!((answered.likely, answered.balls), (4, 5));
    assert_eq!(answered.close, Some(Close::ReserveOnly { balls: 1 }));
    assert_eq!(with(396, 30).close, Some(Close::ReserveOnly { balls: 2 }));
    // What is said to be over is what the sum shows over, the reserve with it.
    let over = Length::from_mm(4_020);
    assert_eq!(with(402, 0).close, Some(Close::JustOver { over: metres(2) }));
    let question = Question {
        reserve: 0,
        ..only(
            vec![bare(Fabric::Stockinette, Shape::Stitches(StitchSum::of(10)))],
            swatch(21, 28),
        )
    };
    let Ask::Piece(mut piece) = question.ask else {
        panic!("a piece")
    };
    piece.extras.joins = true;
    piece.extras.other = metres(500);
    let ask = Ask::Piece(piece);
    let answered = answer(&Question { ask, ..question }).unwrap();
    assert!(matches!(answered.close, Some(Close::JustOver { over: said }) if said < over));
    let fewer = Ball::USUAL.length.saturating_mul(i64::from(answered.balls) - 1);
    let shown = answered.need.saturating_sub(fewer);
    assert_eq!(answered.close, Some(Close::JustOver { over: shown }));
}

/// Seven balls in, the same seven out: nothing is close.
#[test]
fn the_patterns_own_ball_is_not_warned_of() {
    let ask = Ask::Balls {
        balls: 7,
        ball: Ball::USUAL,
    };
    let answered = answer(&Question::from_pattern(ask)).unwrap();
    assert_eq!((answered.balls, answered.likely, answered.close), (7, 7, None));
}

/// What is left is bought less expected; the reserve is bought and not used.
#[test]
fn the_reserve_counts_as_left() {
    let question = Question::about(vec![Section::stockinette(rectangle(100, 200))], swatch(21, 28));
    let answered = answer(&question).unwrap();
    assert_eq!(
        answered.leftover,
        answered.bought.saturating_sub(answered.length.expected)
    );
    let naive = answered.bought.saturating_sub(answered.need);
    assert!(answered.leftover > naive);
}

/// Seven balls of 125 m mean more than six: 751 to 875 m, and the substitute is bought for the top.
#[test]
fn a_patterns_balls_are_a_range_bought_from_its_top() {
    let pattern = Ask::Balls {
        balls: 7,
        ball: Ball::USUAL,
    };
    let question = Question {
        ball: Ball {
            length: metres(210),
            ..Ball::USUAL
        },
        ..Question::from_pattern(pattern)
    };
    let answered = answer(&question).unwrap();
    assert_eq!(
        (answered.length.least, answered.length.most),
        (metres(751), metres(875))
    );
    assert_eq!(answered.balls, 5);
    assert_eq!((answered.bought, answered.leftover), (metres(1_050), metres(175)));
    // The thinner yarn is named as such: 400 and 238 tex.
    assert_eq!(answered.notes, [Note::OtherThickness, Note::OneDyeLot]);
}

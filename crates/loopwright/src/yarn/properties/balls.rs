//! What holds for every number of balls.

use super::*;

/// What is left at a change of ball.
fn join(question: &Question) -> Length {
    match &question.ask {
        Ask::Piece(piece) if piece.extras.joins => practice::JOIN,
        _ => Length::ZERO,
    }
}

/// What so many balls hold.
fn held(question: &Question, balls: u32) -> Length {
    question.ball.length.saturating_mul(i64::from(balls))
}

/// The answer to a question about a pattern's yarn, which always has one.
fn told_of_pattern(question: &Question) -> Answer {
    answer(question).unwrap()
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(2_000))]

    #[test]
    fn one_ball_fewer_would_not_do(question in Values::Sensible.question()) {
        let Some(answered) = answered(&question) else { return Ok(()) };
        if answered.balls > 1 {
            // With one change fewer, where ends are left at the changes.
            let fewer = held(&question, answered.balls - 1);
            prop_assert!(answered.need.saturating_sub(join(&question)) > fewer);
            if let Some(Close::JustOver { over }) = answered.close {
                prop_assert_eq!(answered.need.saturating_sub(fewer), over);
            }
        }
    }

    #[test]
    fn the_likely_balls_hold_what_is_expected(question in Values::Sensible.question()) {
        let Some(answered) = answered(&question) else { return Ok(()) };
        prop_assert!(1 <= answered.likely && answered.likely <= answered.balls);
        let with = |balls: u32| {
            let changes = join(&question).saturating_mul(i64::from(answered.balls) - i64::from(balls));
            answered.length.expected.saturating_sub(changes)
        };
        prop_assert!(with(answered.likely) <= held(&question, answered.likely));
        prop_assert!(answered.likely == 1 || with(answered.likely - 1) > held(&question, answered.likely - 1));
    }

    #[test]
    fn what_is_said_of_the_last_ball_contradicts_nothing(question in Values::Sensible.question()) {
        let Some(answered) = answered(&question) else { return Ok(()) };
        let fewer = held(&question, answered.balls - 1);
        let top = answered.length.most.saturating_sub(join(&question));
        let reserve_only = answered.balls > 1 && top <= fewer;
        prop_assert_eq!(reserve_only, matches!(answered.close, Some(Close::ReserveOnly { .. })));
        match answered.close {
            // "Buy one more" is not said where fewer are likely enough.
            Some(Close::JustUnder { .. }) => prop_assert_eq!(answered.likely, answered.balls),
            Some(Close::ReserveOnly { balls }) => prop_assert!(answered.likely <= answered.balls - balls),
            _ => {}
        }
        if let Ask::Balls { ball, .. } = &question.ask {
            let same = Question { ball: *ball, ..question.clone() };
            let close = told_of_pattern(&same).close;
            prop_assert!(matches!(close, None | Some(Close::ReserveOnly { .. })), "{:?}", close);
        }
    }

    #[test]
    fn whole_balls_are_whole(balls in 1_i64..1_000, mm in 1_000_i64..1_000_000) {
        let ball = Ball { length: Length::from_mm(mm), ..Ball::USUAL };
        let ask = |length| Question { ball, ..Question::from_pattern(Ask::Length(length)) };
        let whole = ball.length.saturating_mul(balls);
        prop_assert_eq!(i64::from(answer(&ask(whole)).unwrap().balls), balls);
        let more = whole.saturating_add(Length::from_nm(1));
        prop_assert_eq!(i64::from(answer(&ask(more)).unwrap().balls), balls + 1);
    }
}

//! From the lines to whole balls: top of the range, reserve, joins, and only then the ceiling, of whole nanometres.

use super::note::{Note, Step};
use super::swatch::nearest;
use super::{Answer, Ball, Estimate, Line, Part, Question, practice};
use crate::tables::Certainty;
use crate::units::{Length, Mass};

/// The need lies within a twentieth of a ball of a whole number of balls.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub enum Close {
    /// Just enough: buy one more, or swatch.
    JustUnder {
        /// What the balls hold beyond the need; it may be nothing.
        spare: Length,
        /// That would be so many balls.
        one_more: u32,
    },
    /// The last ball is for a few metres: a slightly shorter piece would do without it.
    JustOver {
        /// What is needed beyond one ball fewer.
        over: Length,
        /// That is this part of the whole need, in thousandths, rounded up.
        thousandths: u32,
        /// So many stitches fewer would do it, when stitches were counted.
        stitches: Option<u64>,
    },
}

/// From the lines to the balls: top of the range, reserve, joins, and then the ceiling.
pub(super) fn finish(question: &Question, mut lines: Vec<Line>, join: Length, mut steps: Vec<Step>) -> Answer {
    let (ball, whole) = (question.ball, question.ball.length);
    let base = sum(&lines);
    let reserve = percent_of(base.most, question.reserve);
    let held = base.most.saturating_add(reserve);
    let (balls, fewest) = (cover(held, join, whole), cover(base.least, join, whole));
    let changes = |balls: i64| join.saturating_mul(balls - 1);
    let joins = Estimate {
        least: changes(fewest),
        expected: changes(cover(base.expected, join, whole)),
        most: changes(balls),
    };
    let need = held.saturating_add(joins.most);
    let beside = [
        (Part::Joins, joins),
        (
            Part::Reserve,
            Estimate {
                most: reserve,
                ..Estimate::exactly(Length::ZERO)
            },
        ),
    ];
    lines.extend(
        beside
            .into_iter()
            .filter(|(_, length)| length.most > Length::ZERO)
            .map(|(part, length)| Line {
                part,
                length,
                certainty: Certainty::Practice,
            }),
    );
    let mut length = sum(&lines);
    length.most = base.most.saturating_add(joins.most);
    let bought = whole.saturating_mul(balls);
    let leftover = bought.saturating_sub(length.expected);
    let balls_u32 = as_count(balls);
    steps.extend([
        Step::Need {
            top: base.most,
            reserve,
            joins: joins.most,
            need,
        },
        Step::Balls {
            need,
            ball: whole,
            thousandths: u64::try_from(thousandths(need, whole)).unwrap_or(u64::MAX),
            balls: balls_u32,
        },
        Step::Left {
            bought,
            expected: length.expected,
            leftover,
        },
    ]);
    Answer {
        balls: balls_u32,
        fewest: as_count(fewest),
        ball,
        length,
        mass: length.each(|length| weight(length, ball)),
        need,
        bought,
        leftover,
        close: close(need, join, whole, balls),
        stitches: None,
        per_stitch: None,
        lines,
        notes: if balls > 1 { vec![Note::OneDyeLot] } else { Vec::new() },
        steps,
    }
}

fn sum(lines: &[Line]) -> Estimate<Length> {
    lines
        .iter()
        .fold(Estimate::exactly(Length::ZERO), |sum, line| Estimate {
            least: sum.least.saturating_add(line.length.least),
            expected: sum.expected.saturating_add(line.length.expected),
            most: sum.most.saturating_add(line.length.most),
        })
}

/// So much in a hundred, rounded up to the nanometre.
fn percent_of(length: Length, percent: u32) -> Length {
    let nm = (i128::from(length.to_nm()) * i128::from(percent) + 99) / 100;
    Length::from_nm(i64::try_from(nm).unwrap_or(i64::MAX))
}

/// The fewest balls that hold a length and the ends at every change between them; at least one. The ends are shorter
/// than any ball.
fn cover(length: Length, join: Length, ball: Length) -> i64 {
    let (rest, each) = (length.saturating_sub(join), ball.saturating_sub(join));
    rest.div_ceil(each).unwrap_or(1).max(1)
}

/// Whether a need lies within a twentieth of a ball of a whole number of them.
fn close(need: Length, join: Length, ball: Length, balls: i64) -> Option<Close> {
    let is_close = |length: Length| length.saturating_mul(practice::CLOSE) <= ball;
    let spare = ball.saturating_mul(balls).saturating_sub(need);
    // With one ball fewer there is one change fewer.
    let over = ball.saturating_sub(join).saturating_sub(spare);
    if is_close(spare) {
        let one_more = as_count(balls).saturating_add(1);
        Some(Close::JustUnder { spare, one_more })
    } else if balls > 1 && is_close(over) {
        Some(Close::JustOver {
            over,
            thousandths: u32::try_from(thousandths(over, need)).unwrap_or(u32::MAX),
            stitches: None,
        })
    } else {
        None
    }
}

/// One length in thousandths of another that is above zero, rounded up.
fn thousandths(length: Length, of: Length) -> i128 {
    let of = i128::from(of.to_nm()).max(1);
    (i128::from(length.to_nm()) * 1_000 + of - 1) / of
}

/// What so much of this ball's yarn weighs.
fn weight(length: Length, ball: Ball) -> Mass {
    let whole = i128::from(ball.length.to_nm()).max(1);
    let ng = nearest(i128::from(length.to_nm()) * i128::from(ball.mass.to_ng()), whole);
    Mass::from_ng(i64::try_from(ng).unwrap_or(i64::MAX))
}

fn as_count(balls: i64) -> u32 {
    u32::try_from(balls).unwrap_or(u32::MAX)
}

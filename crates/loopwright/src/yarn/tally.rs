//! Each way of asking, from the question to its lines.

use super::balls::finish;
use super::line::lines;
use super::note::{self, Step};
use super::swatch::measure;
use super::{Answer, Ball, Close, Estimate, Line, Part, Piece, Question, STATED, Section, StitchSum, practice};
use crate::problem::{Kind, Problem};
use crate::tables::Certainty;
use crate::units::parse::Unreadable;
use crate::units::{Length, Measure};

/// Works out a piece.
pub(super) fn piece(question: &Question, piece: &Piece) -> Result<Answer, Vec<Problem>> {
    let mut steps = count(&piece.sections);
    let sum = StitchSum {
        halves: piece.sections.iter().map(|section| section.sum().halves).sum(),
    };
    steps.push(Step::Stitches { sum });
    let too_long = |field| {
        vec![Problem {
            field,
            kind: Kind::Unreadable(Unreadable::TooLarge {
                most: STATED.most.amount(),
            }),
        }]
    };
    let (per_stitch, swatch) = measure(&piece.swatch, question.ball, &mut steps).ok_or_else(|| too_long("swatch"))?;
    let wide = lines(piece, per_stitch, swatch);
    let total: i128 = wide.iter().map(|(_, length, _)| length.most).sum();
    if total > i128::from(STATED.most.to_nm()) {
        return Err(too_long("sections"));
    }
    let lines = wide.into_iter().map(|(part, length, certainty)| Line {
        part,
        length: length.each(|nm| Length::from_nm(i64::try_from(nm).unwrap_or(i64::MAX))),
        certainty,
    });
    let join = if piece.extras.joins {
        practice::JOIN
    } else {
        Length::ZERO
    };
    let mut answer = finish(question, lines.collect(), join, steps);
    answer.stitches = Some(sum);
    answer.per_stitch = Some(per_stitch);
    if let Some(Close::JustOver { over, stitches, .. }) = &mut answer.close {
        *stitches = over
            .div_ceil(per_stitch.length)
            .and_then(|count| u64::try_from(count).ok());
    }
    answer.notes.splice(0..0, note::of_piece(piece, per_stitch.route));
    Ok(answer)
}

/// Works out a pattern's balls: they may be anything above one ball fewer, and are answered from the top.
pub(super) fn from_balls(question: &Question, balls: u32, ball: Ball) -> Answer {
    let most = ball.length.saturating_mul(i64::from(balls));
    let metre = Length::from_mm(1_000).min(ball.length);
    let least = ball.length.saturating_mul(i64::from(balls) - 1).saturating_add(metre);
    let step = Step::Pattern {
        balls,
        ball,
        least,
        most,
    };
    let range = Estimate {
        least,
        expected: most,
        most,
    };
    pattern(question, range, vec![step])
}

/// Works out a pattern's length.
pub(super) fn from_length(question: &Question, length: Length) -> Answer {
    pattern(question, Estimate::exactly(length), Vec::new())
}

fn pattern(question: &Question, length: Estimate<Length>, steps: Vec<Step>) -> Answer {
    let line = Line {
        part: Part::Pattern,
        length,
        certainty: Certainty::Computed,
    };
    let mut answer = finish(question, vec![line], Length::ZERO, steps);
    answer.notes.splice(0..0, note::of_pattern(question));
    answer
}

/// The stitches of each section.
fn count(sections: &[Section]) -> Vec<Step> {
    let step = |(index, section): (usize, &Section)| Step::Section {
        index,
        once: section.once(),
        times: section.times,
        sum: section.sum(),
    };
    sections.iter().enumerate().map(step).collect()
}

//! Several yarns in one piece, such as its colours: each is reckoned by itself and its balls are rounded up apart, since
//! what is left of one cannot be knitted for the other.
//!
//! The balls are all alike. What belongs to no section, such as swatch and seams, is of the first section's yarn: common
//! practice, no source.

use super::{Answer, Estimate, Extras, Line, Part, Piece, Question, SECTIONS, StitchSum, USUAL_YARN, line, note};
use crate::problem::Problem;
use crate::units::{Length, Mass};

/// One of several yarns.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct PerYarn {
    /// Which one.
    pub yarn: u32,
    /// Balls of it to buy.
    pub balls: u32,
    /// What is used of it.
    pub length: Estimate,
    /// What its balls have to hold.
    pub need: Length,
    /// What is left of it as likely as not.
    pub leftover: Length,
}

impl Question {
    /// Which yarn a section is knitted with, by its place counted from nought.
    pub fn yarn_of(&self, section: usize) -> u32 {
        self.yarns.get(section).copied().unwrap_or(USUAL_YARN)
    }

    /// The yarns of so many sections, each once.
    pub(super) fn yarns_of(&self, sections: usize) -> Vec<u32> {
        let mut yarns: Vec<u32> = (0..sections).map(|section| self.yarn_of(section)).collect();
        yarns.sort_unstable();
        yarns.dedup();
        yarns
    }
}

/// What is knitted of a piece with one of its yarns.
fn part(question: &Question, piece: &Piece, yarn: u32) -> Piece {
    let sections = piece.sections.iter().enumerate();
    let of_it = sections.filter(|(place, _)| question.yarn_of(*place) == yarn);
    Piece {
        sections: of_it.map(|(_, section)| section.clone()).collect(),
        extras: Extras {
            joins: piece.extras.joins,
            ..if question.yarn_of(0) == yarn {
                piece.extras
            } else {
                Extras::NONE
            }
        },
        ..piece.clone()
    }
}

/// The answer for a piece of several yarns.
pub(super) fn answer(question: &Question, piece: &Piece, yarns: &[u32]) -> Result<Answer, Vec<Problem>> {
    let of = |yarn: &u32| super::answer_yarn(question, &part(question, piece, *yarn)).map(|answer| (*yarn, answer));
    let each: Vec<(u32, Answer)> = yarns.iter().map(of).collect::<Result<_, _>>()?;
    let count = |of: fn(&Answer) -> u32| {
        each.iter()
            .fold(0, |sum: u32, (_, answer)| sum.saturating_add(of(answer)))
    };
    let sum = |of: fn(&Answer) -> Length| {
        let lengths = each.iter().map(|(_, answer)| of(answer));
        lengths.fold(Length::ZERO, Length::saturating_add)
    };
    let masses = each.iter().map(|(_, answer)| answer.mass.map(Mass::to_ng));
    let halves = each
        .iter()
        .filter_map(|(_, answer)| answer.stitches)
        .map(|sum| sum.halves);
    let several = each.iter().any(|(_, answer)| answer.balls > 1);
    Ok(Answer {
        balls: count(|answer| answer.balls),
        likely: count(|answer| answer.likely),
        length: Estimate {
            least: sum(|answer| answer.length.least),
            expected: sum(|answer| answer.length.expected),
            most: sum(|answer| answer.length.most),
        },
        mass: masses.sum::<Option<i64>>().map(Mass::from_ng),
        need: sum(|answer| answer.need),
        bought: sum(|answer| answer.bought),
        leftover: sum(|answer| answer.leftover),
        close: None,
        stitches: Some(StitchSum { halves: halves.sum() }),
        per_stitch: each.first().and_then(|(_, answer)| answer.per_stitch),
        yarns: each.iter().map(|(yarn, answer)| told(*yarn, answer)).collect(),
        lines: lines(question, &each),
        notes: note::notes(question, several),
    })
}

fn told(yarn: u32, answer: &Answer) -> PerYarn {
    PerYarn {
        yarn,
        balls: answer.balls,
        length: answer.length,
        need: answer.need,
        leftover: answer.leftover,
    }
}

/// The lines of all yarns: each section by its place in the whole piece, and what is for the same purpose together.
fn lines(question: &Question, each: &[(u32, Answer)]) -> Vec<Line> {
    let mut lines: Vec<Line> = Vec::new();
    for (yarn, answer) in each {
        for line in &answer.lines {
            let line = Line {
                part: in_the_whole(question, *yarn, line.part),
                ..*line
            };
            match lines.iter_mut().find(|other| other.part == line.part) {
                Some(other) => other.length = line::total(&[*other, line]),
                None => lines.push(line),
            }
        }
    }
    lines.sort_by_key(|line| line.part);
    lines
}

/// A section that is so many of its yarn's, by its place among all.
fn in_the_whole(question: &Question, yarn: u32, part: Part) -> Part {
    let Part::Knitting { section } = part else {
        return part;
    };
    let mut places = (0..SECTIONS.most).filter(|place| question.yarn_of(*place as usize) == yarn);
    let section = places.nth(section as usize).unwrap_or(section);
    Part::Knitting { section }
}

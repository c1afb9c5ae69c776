//! The traps of choosing a size, each with the obvious sum beside ours, and what holds for every question.

use super::*;
use crate::problem::Kind;
use crate::tables::body::{EN_WOMEN, WOMEN};
use crate::units::print::{Step as PrintStep, print};
use crate::units::{Amount, LengthUnit};
use proptest::prelude::*;

mod bodies;
mod fits;
mod gauges;
mod lists;
mod properties;
mod wraps;

fn mm(mm: i64) -> Length {
    Length::from_mm(mm)
}

fn sizes(text: &str) -> Vec<Size> {
    read_sizes(text, LengthUnit::Cm).unwrap()
}

fn about(bust: i64, list: &str, listed: Listed) -> Question {
    Question {
        listed: Some(listed),
        ..Question::about(mm(bust), sizes(list))
    }
}

fn gauges(stitches: u32, rows: u32, span: Length) -> Option<Gauges> {
    let gauge = |tenths: u32| Gauge::new(tenths * 100, span).unwrap();
    Some(Gauges {
        stitches: gauge(stitches),
        rows: (rows > 0).then(|| gauge(rows)),
    })
}

/// The sizes that are as good as the pick.
fn tied(answer: &Answer) -> Vec<usize> {
    let tied = answer.ranked.iter().filter(|ranked| ranked.tied);
    tied.map(|ranked| ranked.size).collect()
}

/// The size whose listed girth is nearest to a wanted one: the obvious sum.
fn nearest_listed(question: &Question, wanted: Length) -> usize {
    let away = |at: &usize| question.sizes[*at].girth.middle().saturating_sub(wanted).to_nm().abs();
    (0..question.sizes.len()).min_by_key(away).unwrap()
}

fn has(answer: &Answer, is_meant: impl Fn(&Note) -> bool) -> bool {
    answer.notes.iter().any(is_meant)
}

fn found(question: &Question) -> Answer {
    answer(question).unwrap_or_else(|problems| panic!("{problems:?}"))
}

fn about_wrap(bust: i64, list: &str, wrap: Wrap) -> Question {
    Question {
        garment: Garment::Wrap(wrap),
        ..about(bust, list, Listed::Garment)
    }
}

//! The words in the drawing of rows and below it: only of what is drawn.

use super::super::intl::fill_pattern;
use super::super::tell::Value;
use super::super::units::{self, Lengths};
use super::{fill_pattern_with_values, made_of, rows};
use loopwright::rows::{Answer, Course, Question};
use loopwright::units::LengthUnit;

/// Something that is drawn and has to be explained.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Mark {
    /// The tape beside the washed piece.
    Washed,
    /// The tape beside the piece on the needle.
    OnTheNeedle,
    /// A stroke for each row.
    Rows,
    /// A line for each repeat.
    Repeats,
    /// What is done.
    Done,
    /// How long it is wanted.
    Wanted,
    /// How long it should be by now.
    ShouldBe,
}

/// All rows, at the top of the piece.
pub fn all(question: &Question, count: u32) -> String {
    super::super::schedule::rows(count, question.round)
}

/// Beside what is done.
pub fn done(count: u32) -> String {
    fill_pattern("# done", &[count])
}

/// Beside what is to go, or was knitted too far.
pub fn to_go(course: &Course) -> String {
    match course.past {
        0 => fill_pattern("# to go", &[course.to_go]),
        past => fill_pattern("# back", &[past]),
    }
}

/// Beside the whole repeats.
pub fn whole_repeats(question: &Question, answer: &Answer) -> String {
    fill_pattern("# × #", &[answer.repeats, question.repeat])
}

/// Beside the rows of one more repeat.
pub fn of_the_next(count: u32) -> String {
    fill_pattern("and #", &[count])
}

/// Beside the rows before the first repeat.
pub fn for_the_set_up(count: u32) -> String {
    fill_pattern("set-up #", &[count])
}

/// What the drawing shows, for those who cannot see it.
pub fn drawing(question: &Question, answer: &Answer, lengths: Lengths) -> String {
    let made_of = made_of(question, answer);
    let all = fill_pattern_with_values("@, the first below. ", &[rows(question, answer)], lengths);
    let course = answer.course.as_ref().zip(question.tape);
    let course = course.map_or(String::new(), |(course, tape)| {
        let values = [
            Value::Count(tape.rows),
            Value::Length(tape.length),
            Value::Length(course.should_be),
        ];
        fill_pattern_with_values("# done, @ by the tape; it should be @.", &values, lengths)
    });
    [all, made_of, course].concat().trim_end().to_owned()
}

/// Below the drawing: what its marks are.
pub fn caption(marks: &[Mark], unit: LengthUnit) -> String {
    let sentence = |mark: &Mark| match mark {
        Mark::Washed => format!("Washed, beside a tape in {}.", units::length(unit)),
        Mark::OnTheNeedle => format!("As it lies on the needle, beside a tape in {}.", units::length(unit)),
        Mark::Rows => "A short stroke ends each row.".into(),
        Mark::Repeats => "A line across ends each repeat.".into(),
        Mark::Done => "The thick line is done.".into(),
        Mark::Wanted => "Dotted: the length you want.".into(),
        Mark::ShouldBe => "Dotted: where it should be by now.".into(),
    };
    marks.iter().map(sentence).collect::<Vec<String>>().join(" ")
}

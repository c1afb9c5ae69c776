//! The sum of rows and length, with her numbers in it.

use super::super::tell::Value;
use super::super::units::Lengths;
use super::{fill_pattern_with_values, length, rows};
use loopwright::rows::{Answer, Ask, Question};
use loopwright::spacing::Fraction;

/// The sum.
pub fn steps(question: &Question, answer: &Answer, lengths: Lengths) -> Vec<String> {
    let gauge = Value::Gauge(question.gauge);
    let (all, count) = (rows(question, answer), answer.pick.rows);
    let mut steps = Vec::new();
    if let Ask::Length(wanted) = question.ask {
        let is_exact = answer.ideal == Fraction::new(u64::from(count), 1);
        let pattern = match is_exact {
            true => "@ at @ take just @.",
            false => "@ at @ take @ rows. The nearest that will do: #.",
        };
        let taken = if is_exact { all } else { Value::Part(answer.ideal) };
        let values = [Value::Length(wanted), gauge, taken, Value::Count(count)];
        steps.push(fill_pattern_with_values(pattern, &values, lengths));
    }
    let pattern = match question.edges {
        0 => "@ at @ measure @.",
        _ => "@ at @ measure @, with # more for the edges.",
    };
    let values = [all, gauge, length(answer), Value::Count(question.edges)];
    steps.push(fill_pattern_with_values(pattern, &values, lengths));
    if let (Some(measured), Some(course)) = (question.tape, &answer.course) {
        let gauge = Value::Gauge(question.unwashed.unwrap_or(question.gauge));
        let done = Value::Rows(measured.rows, question.round);
        let values = [done, gauge, Value::Length(course.should_be)];
        steps.push(fill_pattern_with_values(
            "@ at @ measure @ by the tape.",
            &values,
            lengths,
        ));
    }
    steps
}

pub const SOURCE: &str = "Arithmetic. One row for an edge, and how far a long piece drops: common practice, no source.";

//! A tool is asked here and nowhere else: by its page, by a page around it, and by a project. A question in which something
//! is strange, such as a choice that is none, is not asked at all: what else would be wrong with it depends on a guess.

use super::Tool;
use crate::form::Fields;
use loopwright::problem::Problem;

/// From the fields as typed to the question of a tool.
///
/// # Errors
/// What cannot be read.
pub fn read<T: Tool>(fields: &Fields) -> Result<T::Question, Vec<Problem>> {
    let strange = fields.strange();
    if strange.is_empty() {
        T::read(fields)
    } else {
        Err(strange)
    }
}

/// What to type instead, for a problem; the question is there if all of it could be read.
pub fn sentence<T: Tool>(fields: &Fields, question: Option<&T::Question>, problem: &Problem) -> String {
    let strange = fields.strange_sentence(problem.field);
    strange.unwrap_or_else(|| T::problem(fields, question, problem))
}

//! The page of a tool whose question and answer are plain: what is wrong stands below its field, and where the answer
//! will be, as long as there is none, stands what to do first.

use super::{Say, Sheet, advice, tool_page, waiting};
use loopwright::problem::Problem;
use yew::prelude::*;

/// What a page says as long as it has no answer.
pub struct Page<'a> {
    /// The fields that are folded away.
    pub folded: &'a [&'a str],
    /// What stands where the answer will be.
    pub waiting: &'static str,
    /// The sentence for a problem.
    pub problem: &'a dyn Fn(&Problem) -> String,
}

/// The page: the form, and the answer or what is wrong.
#[inline(never)]
pub fn asked(
    sheet: &Sheet,
    page: &Page,
    form: &dyn Fn(&Sheet, Say) -> Html,
    answers: Result<Html, Vec<Problem>>,
) -> Html {
    let (answers, problems) = match answers {
        Ok(answers) => (answers, Vec::new()),
        Err(problems) => (waiting(&problems, page.folded, page.waiting), problems),
    };
    let say = |field: &'static str| advice(&problems, field, page.problem);
    tool_page(sheet, form(sheet, &say), answers)
}

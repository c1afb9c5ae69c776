//! What is wrong with a question about a tail. Only what the method needs is looked at.

use super::{EDGE, END, LEFT, NEEDLE, Needle, Question, RESERVE, SPAN, STITCHES, Strand, THICKNESS, Thickness, USED};
use crate::bounds::Bounds;
use crate::problem::{Kind, Problem};
use crate::units::Gauge;

pub(super) fn check(question: &Question) -> Result<(), Vec<Problem>> {
    let mut problems = Vec::new();
    problems.extend(Problem::of_count("stitches", question.stitches, STITCHES));
    problems.extend(Problem::of_length("end", question.end, END));
    if let Some(left) = question.left {
        problems.extend(Problem::of_length("left_tail", left.tail, LEFT));
        let all = Bounds::new(0, question.stitches);
        problems.extend(Problem::of_count("left_to_go", left.to_go, all));
    }
    if matches!(question.method.row().strand, Strand::Thumb { .. }) {
        check_known(question, &mut problems);
    }
    if problems.is_empty() { Ok(()) } else { Err(problems) }
}

/// Nothing is known that a tail could be worked out from.
pub(super) fn nothing_known() -> Problem {
    Problem {
        field: "yarn",
        kind: Kind::Missing,
    }
}

fn check_known(question: &Question, problems: &mut Vec<Problem>) {
    if let Some(Thickness::Wraps(wraps)) = question.yarn {
        problems.extend(check_wraps(wraps));
    }
    match question.needle {
        Some(Needle::One(needle)) => problems.extend(Problem::of_length("needle", needle, NEEDLE)),
        Some(Needle::Two(first, second)) => {
            let wrong = [first, second].map(|needle| Problem::of_length("needle", needle, NEEDLE));
            problems.extend(wrong.into_iter().flatten().next());
        }
        None => {}
    }
    let width = question.width;
    problems.extend(width.and_then(|width| Problem::of_length("width", width, EDGE)));
    if let Some(measured) = question.measured {
        problems.extend(Problem::of_count("measured_stitches", measured.stitches, STITCHES));
        problems.extend(Problem::of_length("measured_used", measured.used, USED));
    }
    let reserve = question.reserve;
    problems.extend(reserve.and_then(|reserve| Problem::of_count("reserve", reserve, RESERVE)));
}

/// Wraps so many that the yarn is too thin, or so few that it is too thick: how many there may be in their span.
fn check_wraps(wraps: Gauge) -> Option<Problem> {
    let problem = Problem::of_length("yarn", wraps.span(), SPAN);
    if problem.is_some() {
        return problem;
    }
    let span = wraps.span();
    let whole = |count: Option<i64>| count.and_then(|count| u32::try_from(count).ok());
    let least = whole(span.div_ceil(THICKNESS.most)).unwrap_or(1).max(1);
    let most = whole(span.div_ceil(THICKNESS.least)).unwrap_or(u32::MAX);
    let kind = match wraps.count() {
        count if count < f64::from(least) => Kind::TooFew { least },
        count if count > f64::from(most) => Kind::TooMany { most },
        _ => return None,
    };
    Some(Problem { field: "yarn", kind })
}

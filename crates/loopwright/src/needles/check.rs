//! What is wrong with a question about needles. Only what is asked is looked at.

use super::{Around, CORD, CORDS, GIRTH, Needle, Question, ROUNDS, SPAN, STITCHES, Size, TIP};
use crate::bounds::Bounds;
use crate::problem::{Kind, Problem};
use crate::tail::NEEDLE;
use crate::units::Gauge;

/// The needles of the size that is asked for, if everything is right.
pub(super) fn check(question: &Question) -> Result<Vec<Needle>, Vec<Problem>> {
    let mut problems = Vec::new();
    let mut needles = Vec::new();
    let missing = |field| Problem {
        field,
        kind: Kind::Missing,
    };
    match question.size {
        Some(Size::Metric(across)) => problems.extend(Problem::of_length("size", across, NEEDLE)),
        Some(Size::Hole { passes, .. }) => problems.extend(Problem::of_length("size", passes, NEEDLE)),
        None if question.around.is_none() => problems.push(missing("size")),
        _ => {}
    }
    if let (true, Some(size)) = (problems.is_empty(), question.size) {
        match size.needles() {
            Ok(found) => needles = found,
            Err(problem) => problems.push(problem),
        }
    }
    if let Some(around) = &question.around {
        match around {
            Around::Girth(girth) => problems.extend(Problem::of_length("around", *girth, GIRTH)),
            Around::Even { from, to, rounds } => {
                problems.extend(Problem::of_count("from", *from, STITCHES));
                problems.extend(Problem::of_count("to", *to, STITCHES));
                let least = ROUNDS.least + u32::from(from != to);
                problems.extend(Problem::of_count("rounds", *rounds, Bounds::new(least, ROUNDS.most)));
            }
            Around::Rounds(counts) => of_list("around", counts, STITCHES, ROUNDS, &mut problems),
        }
        match question.unwashed.or(question.washed) {
            _ if matches!(around, Around::Girth(_)) => {}
            Some(gauge) => of_gauge("gauge", gauge, &mut problems),
            None => problems.push(missing("gauge")),
        }
        if question.cords.len() > CORDS.most as usize {
            let most = CORDS.most;
            problems.push(Problem {
                field: "cords",
                kind: Kind::TooMany { most },
            });
        }
        let wrong = question
            .cords
            .iter()
            .find_map(|cord| Problem::of_length("cords", *cord, CORD));
        problems.extend(wrong);
        problems.extend(question.tip.and_then(|tip| Problem::of_length("tip", tip, TIP)));
    }
    if problems.is_empty() {
        Ok(needles)
    } else {
        Err(problems)
    }
}

/// What is wrong with a gauge.
pub(crate) fn of_gauge(field: &'static str, gauge: Gauge, problems: &mut Vec<Problem>) {
    let count = if gauge.count() < 1.0 {
        0
    } else {
        gauge.count().ceil() as u32
    };
    problems.extend(Problem::of_length(field, gauge.span(), SPAN));
    problems.extend(Problem::of_count(field, count, Gauge::COUNTS));
}

/// What is wrong with a list: how many there are, or else the first that is wrong.
pub(crate) fn of_list(
    field: &'static str,
    counts: &[u32],
    each: Bounds<u32>,
    many: Bounds<u32>,
    problems: &mut Vec<Problem>,
) {
    let length = u32::try_from(counts.len()).unwrap_or(u32::MAX);
    let wrong = || counts.iter().find_map(|count| Problem::of_count(field, *count, each));
    problems.extend(Problem::of_count(field, length, many).or_else(wrong));
}

//! In the middle of casting on: how many stitches the tail gives that is left, and whether that will do.

use super::super::intl::{fill_pattern, fill_pattern_with};
use super::Print;
use loopwright::tail::{Answer, Gives, Remaining, Verdict};
use loopwright::units::Length;

pub const TITLE: &str = "The tail you have";

/// How many stitches it gives.
pub fn headline(left: &Remaining) -> String {
    match left.gives {
        None => "It only has to be woven in".into(),
        Some(Gives { bare: 0, .. }) => "It gives no stitch more".into(),
        Some(Gives { with_reserve, bare }) if with_reserve == bare => {
            fill_pattern("It gives # {stitch|stitches}", &[bare])
        }
        Some(Gives { with_reserve, bare }) => fill_pattern("It gives # to # stitches", &[with_reserve, bare]),
    }
}

/// Whether that will do, and by how much.
pub fn verdict(left: &Remaining, print: Print) -> (String, String) {
    let lacking = |over: Length| print.up(Length::ZERO.saturating_sub(over));
    let (before, after, off) = match (left.verdict, left.gives) {
        (Verdict::Enough, _) => ("Enough: with # to go,", "@ will be over", print.nearest(left.over)),
        (Verdict::Tight, _) => (
            "Tight: # to go just fit, but of the reserve",
            "@ is lacking",
            lacking(left.over),
        ),
        (Verdict::Short, Some(_)) => ("Not enough: for # to go,", "@ is lacking", lacking(left.over_bare)),
        (Verdict::Short, None) => ("Short for weaving in:", "@ is lacking", lacking(left.over_bare)),
    };
    (
        fill_pattern(before, &[left.to_go]),
        fill_pattern_with(after, &[], &[&off]),
    )
}

/// Why it is two numbers, what is kept back, and what to do where it will not do.
pub fn because(answer: &Answer, left: &Remaining, end: Length, print: Print) -> String {
    let end = print.nearest(end);
    let kept = match left.gives {
        None => fill_pattern_with(
            "The stitches come from the ball, and @ is for weaving in.",
            &[],
            &[&end],
        ),
        Some(Gives { with_reserve, bare }) if with_reserve == bare => {
            fill_pattern_with("@ is kept for weaving in.", &[], &[&end])
        }
        Some(Gives { with_reserve, bare }) => fill_pattern_with(
            "# with #\u{a0}% in reserve, # if no stitch takes more than it should. @ is kept for weaving in.",
            &[with_reserve, answer.reserve, bare],
            &[&end],
        ),
    };
    match (left.verdict, left.gives) {
        (Verdict::Short, Some(_)) => kept + " Begin again, or go on with a second strand.",
        (Verdict::Short, None) | (Verdict::Enough | Verdict::Tight, _) => kept,
    }
}

/// Above the ways by which it was reckoned, for all stitches.
pub fn estimates(stitches: u32) -> String {
    fill_pattern("How much # {stitch takes|stitches take}", &[stitches])
}

/// The sum: what is there for the stitches, and what those to go take.
pub fn sum(answer: &Answer, left: &Remaining, end: Length, print: Print) -> Vec<String> {
    let [tail, end, needs, with] = [left.tail, end, left.needs, left.with_reserve].map(|length| print.fine_up(length));
    let mut steps = vec![fill_pattern_with(
        "The tail you have: @. Of that @ is for the end to weave in.",
        &[],
        &[&tail, &end],
    )];
    if left.gives.is_some() {
        let pattern = "# to go take @, or @ with #\u{a0}% in reserve.";
        let [to_go, reserve] = [left.to_go, answer.reserve];
        steps.push(fill_pattern_with(pattern, &[to_go, reserve], &[&needs, &with]));
    }
    steps
}

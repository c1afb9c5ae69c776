//! What is worked in a shaping row that is followed.

use super::super::followed::verb;
use super::super::intl::fill_pattern;
use super::worked;
use loopwright::shaping::{Doing, Placed, Side};

/// "K1, ssk, knit to the last 3 stitches, k2tog, K1."
pub fn followed(doing: &Doing) -> String {
    match *doing {
        Doing::Pair {
            pair,
            side: Side::Right,
        } => worked("", "K", "knit", pair),
        Doing::Pair {
            pair,
            side: Side::Wrong,
        } => worked("", "P", "purl", pair),
        Doing::Changes { gain, stitches, placed } => {
            fill_pattern(&[verb(gain), where_placed(placed)].concat(), &[stitches])
        }
    }
}

const fn where_placed(placed: Placed) -> &'static str {
    match placed {
        Placed::AtTheSameEdge => " # {stitch|stitches}, at the same edge every time.",
        Placed::AtOneEdgeOnly => " # {stitch|stitches}, at one edge only.",
        Placed::WithoutRoom => " # {stitch|stitches}: there is no room for a change inside each edge.",
        Placed::AsThePatternSays => " # {stitch|stitches}, where your pattern says.",
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use loopwright::shaping::{Ask, Question, answer, plan};

    fn told(question: &Question) -> Vec<String> {
        let plan = plan(question, &answer(question).unwrap());
        plan.events.iter().map(|event| followed(&event.doing)).collect()
    }

    #[test]
    fn a_pair_is_told_from_either_side() {
        let question = Question {
            right_side: false,
            ..Question::about(Ask::Lose(20), 11)
        };
        let expected = [
            "K1, ssk, knit to the last 3 stitches, k2tog, K1.",
            "P1, p2tog, purl to the last 3 stitches, ssp, P1.",
        ];
        assert_eq!(told(&question)[..2], expected);
    }

    #[test]
    fn changes_that_are_no_pair_say_where_they_stand() {
        let at_one_edge = Question {
            each: 1,
            ..Question::about(Ask::Lose(8), 20)
        };
        assert_eq!(told(&at_one_edge)[0], "Decrease 1 stitch, at the same edge every time.");
        let in_lines = Question {
            each: 8,
            ..Question::about(Ask::Gain(16), 20)
        };
        assert_eq!(told(&in_lines)[0], "Increase 8 stitches, where your pattern says.");
    }
}

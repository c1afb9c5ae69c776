//! What is done in a row of steps that is followed.

use super::super::intl::fill_pattern;
use loopwright::stairs::Doing;

/// "Bind off 7 stitches at the beginning of the row, work to the end."
pub fn followed(doing: &Doing) -> String {
    let (pattern, stitches) = match *doing {
        Doing::BindOff { stitches, .. } => (
            "Bind off # {stitch|stitches} at the beginning of the row, work to the end.",
            stitches,
        ),
        Doing::Turn { left } => ("Work until # {stitch is|stitches are} left, and turn.", left),
        Doing::Back => ("Work back to the end of the row.", 0),
        Doing::OverAll { left: 0 } => ("Work to the end of the row.", 0),
        Doing::OverAll { left } => (
            "Work to the end of the row, over the # {stitch|stitches} left before.",
            left,
        ),
    };
    fill_pattern(pattern, &[stitches])
}

#[cfg(test)]
mod tests {
    use super::*;
    use loopwright::stairs::{Ask, Question, Way, answer, plan};

    fn told(question: &Question) -> Vec<String> {
        let plan = plan(question, &answer(question).unwrap());
        plan.events.iter().map(|event| followed(&event.doing)).collect()
    }

    #[test]
    fn each_step_is_told() {
        let question = Question::about(13, Ask::Steps(2));
        let expected = [
            "Bind off 7 stitches at the beginning of the row, work to the end.",
            "Bind off 6 stitches at the beginning of the row, work to the end.",
        ];
        assert_eq!(told(&question), expected);
        let short = Question {
            way: Way::ShortRows,
            ..question
        };
        let expected = [
            "Work until 7 stitches are left, and turn.",
            "Work back to the end of the row.",
            "Work to the end of the row, over the 7 stitches left before.",
        ];
        assert_eq!(told(&short), expected);
    }
}

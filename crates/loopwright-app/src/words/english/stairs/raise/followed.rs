//! What is done in a short row across the back that is followed.

use super::super::super::intl::fill_pattern_with;
use loopwright::stairs::Side;
use loopwright::stairs::raise::{Doing, Method};

/// "Make the double stitch, purl 11, turn."; "Knit 6, wrap the next stitch and turn."
pub fn followed(doing: &Doing) -> String {
    match *doing {
        Doing::Short {
            method,
            side,
            double,
            stitches,
        } => {
            let work = match (side, double) {
                (Side::Right, false) => "Knit",
                (Side::Wrong, false) => "Purl",
                (Side::Right, true) => "Make the double stitch, knit",
                (Side::Wrong, true) => "Make the double stitch, purl",
            };
            let turn = match method {
                Method::German => "turn",
                Method::Wrap => "wrap the next stitch and turn",
            };
            fill_pattern_with("@ #, @.", &[stitches], &[work, turn])
        }
        Doing::Home { double, stitches } => home(double, stitches),
    }
}

/// From the last turn to where the round begins.
fn home(double: bool, stitches: u32) -> String {
    let pattern = match (double, stitches) {
        (true, 0) => "Make the double stitch. The round begins here.",
        (true, _) => "Make the double stitch, then knit # to where the round begins.",
        (false, _) => "Knit # to where the round begins.",
    };
    fill_pattern_with(pattern, &[stitches], &[])
}

#[cfg(test)]
mod tests {
    use super::*;
    use loopwright::stairs::raise::{Across, Question, answer, plan};
    use loopwright::units::{Gauge, Length};

    #[test]
    fn there_and_back_and_home() {
        let told = |method| {
            let gauge = Gauge::of(32, Gauge::TEN_CM);
            let question = Question {
                turns: Some(1),
                method,
                ..Question::about(Across::Stitches(10), Length::from_mm(25), gauge)
            };
            let plan = plan(&question, &answer(&question).unwrap());
            plan.events
                .iter()
                .map(|event| followed(&event.doing))
                .collect::<Vec<_>>()
        };
        let german = [
            "Knit 6, turn.",
            "Make the double stitch, purl 11, turn.",
            "Make the double stitch, then knit 5 to where the round begins.",
        ];
        assert_eq!(told(Method::German), german);
        let wrapped = [
            "Knit 5, wrap the next stitch and turn.",
            "Purl 10, wrap the next stitch and turn.",
            "Knit 5 to where the round begins.",
        ];
        assert_eq!(told(Method::Wrap), wrapped);
    }
}

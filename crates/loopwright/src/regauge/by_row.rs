//! The shaping that is shared out anew, row by row.

use super::Answer;
use crate::follow::Plan;
use crate::shaping::{self, Doing, Placed};

/// The shaping at one's own gauge row by row; none where there is no shaping, or no room for it. Where its changes stand is
/// for the pattern to say.
pub fn plan(answer: &Answer) -> Option<Plan<Doing>> {
    let shaped = answer.shaping.as_ref()?;
    let schedule = shaped.schedule.as_ref()?;
    let as_the_pattern_says = |_| Placed::AsThePatternSays;
    Some(shaping::of_schedule(schedule, shaped.rows, None, as_the_pattern_says))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::follow::tests::work_through;
    use crate::regauge::{Question, Shaping, answer};
    use crate::units::Gauge;
    use proptest::prelude::*;

    proptest! {
        /// From one end of the piece to the other, in its rows.
        #[test]
        fn it_goes_from_one_end_to_the_other(from in 20_u32..200, change in 0_u32..20, own in 18_u32..26, rows in 30_u32..120) {
            let gauge = |count| Gauge::of(count, Gauge::TEN_CM);
            let shaping = Shaping { from, to: from + 2 * change, rows, each: 2, right_side_only: false };
            let question = Question {
                pattern_rows: Some(gauge(28)),
                own_rows: Some(gauge(30)),
                shaping: Some(shaping),
                ..Question::about(gauge(21), gauge(own), Vec::new())
            };
            let Ok(answer) = answer(&question) else { return Ok(()) };
            let Some(plan) = plan(&answer) else { return Ok(()) };
            let shaped = answer.shaping.as_ref().unwrap();
            prop_assert_eq!((plan.rows, plan.stitches), (shaped.rows, Some(shaped.from)));
            prop_assert_eq!(work_through(&plan), Some(shaped.to));
        }
    }
}

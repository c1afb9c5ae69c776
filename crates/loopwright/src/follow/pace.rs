//! How long so many stitches take: "31,000 stitches at 25 a minute are 20 to 35 hours."
//!
//! A pace is counted in stitches a minute and not in rows an hour, because rows of one garment differ in length: a yoke's
//! last round may be three times its first. It holds for stitches that are knitted at a stretch, as a pace that was timed
//! does. Turning, counting, undoing and looking things up come on top: up to half as much again (common practice, no
//! source). So the answer is a range, from the bare stitches to half as much again, in whole hours; above twenty hours in
//! fives and above a hundred in tens, because nobody knows it better than that. The lower end is rounded down and the upper
//! one up.
//!
//! ```
//! use loopwright::follow::pace::{Hours, hours, timed};
//!
//! assert_eq!(hours(31_000, 25), Some(Hours { least: 20, most: 35 }));
//! // Twenty stitches in 48 seconds.
//! assert_eq!(timed(20, 48_000), Some(25));
//! ```

use crate::bounds::Bounds;

/// Stitches a minute that somebody may knit at; the fastest hands are far below the most.
pub const PACE: Bounds<u32> = Bounds::new(1, 200);
/// Stitches that are knitted while a pace is timed.
pub const TIMED: Bounds<u32> = Bounds::new(1, 10_000);
/// How many stitches are usual for that: a minute or so.
pub const USUAL_TIMED: u32 = 20;

/// Hours, from the bare stitches to what comes on top.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Hours {
    /// At the least; none where it is less than an hour.
    pub least: u64,
    /// At the most.
    pub most: u64,
}

/// The hours that so many stitches take at so many a minute; none where either of them is none.
pub fn hours(stitches: u64, a_minute: u32) -> Option<Hours> {
    if stitches == 0 || a_minute == 0 {
        return None;
    }
    let an_hour = u64::from(a_minute) * 60;
    let (bare, most) = (stitches / an_hour, half_as_much_again(stitches).div_ceil(an_hour));
    Some(Hours {
        least: bare / step(bare) * step(bare),
        most: most.div_ceil(step(most)).saturating_mul(step(most)),
    })
}

/// The pace of somebody who knitted so many stitches in so many milliseconds, to the nearest whole stitch a minute; none where
/// it is outside [`PACE`].
pub fn timed(stitches: u32, milliseconds: u64) -> Option<u32> {
    const MINUTE: u64 = 60_000;
    if milliseconds == 0 {
        return None;
    }
    let twice = u64::from(stitches) * MINUTE * 2;
    let rounded = (twice / milliseconds).div_ceil(2);
    let pace = u32::try_from(rounded).ok()?;
    (PACE.least..=PACE.most).contains(&pace).then_some(pace)
}

const fn half_as_much_again(stitches: u64) -> u64 {
    stitches.saturating_add(stitches.div_ceil(2))
}

/// In what steps so many hours are said.
const fn step(hours: u64) -> u64 {
    match hours {
        0..=20 => 1,
        21..=100 => 5,
        _ => 10,
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    #[test]
    fn small_pieces_take_up_to_an_hour() {
        assert_eq!(hours(600, 20), Some(Hours { least: 0, most: 1 }));
        assert_eq!(hours(1_200, 20), Some(Hours { least: 1, most: 2 }));
        assert_eq!((hours(0, 20), hours(20, 0)), (None, None));
    }

    #[test]
    fn a_pace_is_rounded_to_the_nearest_and_no_pace_is_made_up() {
        assert_eq!(timed(20, 60_000), Some(20));
        assert_eq!(timed(20, 58_600), Some(20));
        assert_eq!(timed(20, 58_500), Some(21));
        assert_eq!((timed(20, 0), timed(20, 10), timed(1, 1_000_000)), (None, None, None));
    }

    proptest! {
        /// The range holds the bare stitches and half as much again, and is wider by a step at each end at most.
        #[test]
        fn the_range_holds_what_it_is_about(stitches in 1_u64..3_000_000, pace in PACE.least..=PACE.most) {
            let hours = hours(stitches, pace).unwrap();
            let an_hour = u64::from(pace) * 60;
            prop_assert!(hours.least * an_hour <= stitches);
            prop_assert!(hours.most * an_hour * 2 >= stitches * 3);
            prop_assert!((hours.least + 1 + step(hours.least + 10)) * an_hour > stitches);
            prop_assert!(hours.most >= 1 && hours.most > hours.least);
        }

        #[test]
        fn any_number_is_answered(stitches: u64, pace: u32, milliseconds: u64) {
            let _ = (hours(stitches, pace), timed(pace, milliseconds));
        }
    }
}

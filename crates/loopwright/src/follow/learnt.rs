//! How fast she knits, and how long the rest will take: "one to one and a half hours, at your pace".
//!
//! A pace is what rows took, each weighed by its stitches, so that a long row does not look slow. It is a range, from the
//! quicker quarter of her rows to the slower one, and never narrower than a tenth to either side: nobody knits two rows in
//! the same time. Between two taps that lie more than [`REST_MS`] apart she rested, and that time is not counted. Hours are
//! told in quarters and rounded outwards, since a forecast to the minute would claim more than anybody knows. Where the
//! limits lie is common practice, no source; the rest is arithmetic.
//!
//! ```
//! use loopwright::follow::learnt::{Pace, Timed};
//!
//! // Four rounds of 200 stitches that took 4, 5, 5 and 6 minutes; 2,400 stitches are left.
//! let minutes = |minutes: u64| Timed { millis: minutes * 60_000, stitches: 200 };
//! let pace = Pace::of(&[4, 5, 5, 6].map(minutes)).unwrap();
//! let left = pace.time_for(2_400);
//! assert_eq!((left.least_quarters, left.most_quarters), (3, 5));
//! ```

use super::pace::PACE;

/// A pause between two taps that is a rest: five minutes. Common practice, no source.
pub const REST_MS: u64 = 5 * 60_000;

const QUARTER_OF_AN_HOUR_MS: u128 = 15 * 60_000;

/// A row that was timed.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Timed {
    /// How long it took, in milliseconds.
    pub millis: u64,
    /// Its stitches; 1 where stitches are not known and rows are all that can be counted.
    pub stitches: u64,
}

/// How long a thousand stitches take, in milliseconds.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Pace {
    /// In her quicker rows.
    pub least: u64,
    /// In her slower rows.
    pub most: u64,
}

/// A stretch of time in quarters of an hour.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Quarters {
    /// At least so many.
    pub least_quarters: u64,
    /// At most so many.
    pub most_quarters: u64,
}

impl Pace {
    /// The pace of some timed rows; none where there is no row to learn from. Rests are left out.
    pub fn of(timed: &[Timed]) -> Option<Self> {
        let rows = timed
            .iter()
            .filter(|row| row.stitches > 0 && row.millis > 0 && row.millis <= REST_MS);
        let mut each: Vec<u64> = rows
            .map(|row| row.millis.saturating_mul(1_000) / row.stitches)
            .collect();
        each.sort_unstable();
        let last = each.len().checked_sub(1)?;
        let quicker = *each.get(last / 4)?;
        let slower = *each.get(last - last / 4)?;
        let middle = *each.get(last / 2)?;
        Some(Self {
            least: quicker.min(middle - middle / 10),
            most: slower.max(middle + middle / 10),
        })
    }

    /// Stitches a minute, between her quicker rows and her slower ones; none where that is outside of [`PACE`].
    pub fn a_minute(self) -> Option<u32> {
        let middle = (u128::from(self.least) + u128::from(self.most)) / 2;
        let stitches = 60_000_u128.checked_mul(1_000)?.checked_div(middle)?;
        u32::try_from(stitches)
            .ok()
            .filter(|pace| (PACE.least..=PACE.most).contains(pace))
    }

    /// How long so many stitches take.
    pub fn time_for(self, stitches: u64) -> Quarters {
        let millis = |pace: u64| u128::from(pace) * u128::from(stitches) / 1_000;
        let quarters = |quarters: u128| u64::try_from(quarters).unwrap_or(u64::MAX);
        Quarters {
            least_quarters: quarters(millis(self.least) / QUARTER_OF_AN_HOUR_MS),
            most_quarters: quarters(millis(self.most).div_ceil(QUARTER_OF_AN_HOUR_MS)),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    fn row(millis: u64, stitches: u64) -> Timed {
        Timed { millis, stitches }
    }

    #[test]
    fn nothing_is_learnt_from_nothing_or_from_a_rest() {
        assert_eq!(Pace::of(&[]), None);
        assert_eq!(Pace::of(&[row(REST_MS + 1, 100)]), None);
        assert_eq!(Pace::of(&[row(60_000, 0)]), None);
    }

    #[test]
    fn one_row_is_a_pace_with_a_tenth_to_either_side() {
        let pace = Pace::of(&[row(100_000, 100)]).unwrap();
        assert_eq!((pace.least, pace.most), (900_000, 1_100_000));
    }

    #[test]
    fn a_pace_is_told_in_stitches_a_minute_where_hands_can_have_it() {
        let pace = Pace::of(&[row(240_000, 100)]).unwrap();
        assert_eq!(pace.a_minute(), Some(25));
        assert_eq!(Pace::of(&[row(1, 1_000)]).unwrap().a_minute(), None);
    }

    #[test]
    fn a_long_row_is_not_a_slow_one() {
        let alike = Pace::of(&[row(100_000, 100), row(200_000, 200), row(50_000, 50)]);
        assert_eq!(alike, Pace::of(&[row(100_000, 100)]));
    }

    #[test]
    fn a_rest_among_rows_changes_nothing() {
        let rows = [row(100_000, 100), row(110_000, 100), row(120_000, 100)];
        let mut with_rest = rows.to_vec();
        with_rest.insert(1, row(40 * 60_000, 100));
        assert_eq!(Pace::of(&with_rest), Pace::of(&rows));
    }

    proptest! {
        #[test]
        fn the_range_is_a_range(rows in prop::collection::vec((0_u64..400_000, 0_u64..500), 0..20), left in 0_u64..1_000_000) {
            let rows: Vec<Timed> = rows.into_iter().map(|(millis, stitches)| row(millis, stitches)).collect();
            if let Some(pace) = Pace::of(&rows) {
                prop_assert!(pace.least <= pace.most);
                let time = pace.time_for(left);
                prop_assert!(time.least_quarters <= time.most_quarters);
            }
        }
    }
}

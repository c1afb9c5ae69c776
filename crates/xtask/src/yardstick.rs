//! How slow the machine is at this moment, so that a limit is said once, for two quiet cores, and holds on busy ones.
//!
//! The yardstick is a fixed sum. How much longer it takes than on a quiet machine is how much longer anything else may
//! take. Time that is waited is counted in the quiet machine's seconds: while the sum takes three times as long, three
//! seconds of waiting count as one. The factor has an end, because what hangs has to be ended on any machine.

use std::{
    hint::black_box,
    time::{Duration, Instant},
};

/// What the sum takes on two quiet cores, without optimisation.
const QUIET: Duration = Duration::from_millis(50);

/// Additions in the sum.
const ADDITIONS: u64 = 7_500_000;

/// A machine that is slower than this many times is taken for one that hangs.
const SLOWEST: f32 = 8.0;

/// Between two looks at the yardstick while something is waited for.
const LOOK: Duration = Duration::from_secs(5);

/// How many times slower than two quiet cores the machine is now; at least 1.
pub fn slowness() -> f32 {
    let start = Instant::now();
    let mut sum = 0_u64;
    for number in 0..ADDITIONS {
        sum = black_box(sum.wrapping_add(number));
    }
    black_box(sum);
    (start.elapsed().as_secs_f32() / QUIET.as_secs_f32()).clamp(1.0, SLOWEST)
}

/// A limit in seconds of two quiet cores, and how much of it is used up.
pub struct Patience {
    limit: Duration,
    used: Duration,
    counted: Instant,
    looked: Instant,
    slowness: f32,
}

impl Patience {
    /// Nothing of the limit is used up. The yardstick is not looked at before the wait is a long one.
    pub fn of(limit: Duration) -> Self {
        let now = Instant::now();
        Self {
            limit,
            used: Duration::ZERO,
            counted: now,
            looked: now,
            slowness: 1.0,
        }
    }

    /// Whether the limit is used up. To be asked several times a second.
    pub fn is_over(&mut self) -> bool {
        self.count(self.counted.elapsed());
        self.counted = Instant::now();
        if self.looked.elapsed() >= LOOK {
            self.slowness = slowness();
            self.looked = Instant::now();
        }
        self.used >= self.limit
    }

    fn count(&mut self, waited: Duration) {
        self.used += waited.div_f32(self.slowness);
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_slow_machine_is_given_longer_and_no_machine_for_ever() {
        assert!((1.0..=SLOWEST).contains(&slowness()));
        let mut patience = Patience::of(Duration::from_secs(10));
        patience.slowness = 4.0;
        patience.count(Duration::from_secs(39));
        assert!(!patience.is_over());
        patience.count(Duration::from_secs(1));
        assert!(patience.is_over());
    }
}

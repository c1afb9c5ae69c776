//! Where to set markers while casting on, so that a long count is made of short ones.
//!
//! "132 stitches, a marker every 20: six times 20, and 12." One stands between two groups, none behind the last.
//! Common practice, no source.
//!
//! ```
//! use loopwright::cast_on::MarkerPlan;
//!
//! let plan = MarkerPlan::of(132, 20);
//! assert_eq!((plan.groups, plan.rest), (6, 12));
//! assert_eq!(plan.marks(), [20, 40, 60, 80, 100, 120]);
//! // With nothing left over the last group needs no marker behind it.
//! assert_eq!(MarkerPlan::of(120, 20).marks().len(), 5);
//! ```

/// How far apart markers are set. Common practice, no source.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Distance {
    /// Every 20 stitches.
    Twenty,
    /// Every 25 stitches.
    TwentyFive,
    /// Every 50 stitches.
    Fifty,
}

crate::choice!(Distance starts Twenty { Twenty = "20", TwentyFive = "25", Fifty = "50" });

impl Distance {
    /// Stitches from one marker to the next.
    pub const fn stitches(self) -> u32 {
        match self {
            Self::Twenty => 20,
            Self::TwentyFive => 25,
            Self::Fifty => 50,
        }
    }
}

/// Markers at one distance, and what is left behind the last.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct MarkerPlan {
    /// All stitches that are cast on, the extra one of a join included.
    pub stitches: u32,
    /// A marker after so many.
    pub every: u32,
    /// Full groups.
    pub groups: u32,
    /// Stitches of the last group where it is not full.
    pub rest: u32,
}

impl MarkerPlan {
    /// The plan for so many stitches; a distance of none is taken as one.
    pub const fn of(stitches: u32, every: u32) -> Self {
        let every = if every == 0 { 1 } else { every };
        Self {
            stitches,
            every,
            groups: stitches / every,
            rest: stitches % every,
        }
    }

    /// After which stitches a marker stands, from the slip knot on.
    pub fn marks(self) -> Vec<u32> {
        (self.every..self.stitches).step_by(self.every as usize).collect()
    }

    /// How many are on the needle at the next marker, or at the end; none when all are.
    pub fn next(self, on: u32) -> Option<u32> {
        let marker = on.saturating_add(self.every - on % self.every);
        (on < self.stitches).then_some(marker.min(self.stitches))
    }

    /// How many were on the needle at the marker before; none at the first.
    pub fn before(self, on: u32) -> Option<u32> {
        let on = on.saturating_sub(1);
        (on >= self.every).then_some(on - on % self.every)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::choice::Key;

    #[test]
    fn the_key_of_a_distance_is_its_number() {
        for distance in Distance::ALL {
            assert_eq!(distance.key(), distance.stitches().to_string());
        }
    }
}

//! Where to set markers while casting on, so that a long count is made of short ones.
//!
//! "132 stitches, a marker every 20: six times 20, and 12." One stands between two groups, none behind the last.
//! Common practice, no source.
//!
//! ```
//! use loopwright::cast_on::MarkerPlan;
//!
//! let plan = MarkerPlan::of(132, 20);
//! assert_eq!((plan.groups, plan.rest, plan.markers), (6, 12, 6));
//! assert_eq!(plan.marks().collect::<Vec<_>>(), [20, 40, 60, 80, 100, 120]);
//! // With nothing left over the last group needs no marker behind it.
//! assert_eq!(MarkerPlan::of(120, 20).markers, 5);
//! ```

/// How far apart markers are set, in stitches. Common practice, no source.
pub const EVERY: [u32; 3] = [20, 25, 50];

/// More groups than this are themselves miscounted, and the next wider plan is offered first. Common practice, no
/// source.
pub const MOST_GROUPS: u32 = 12;

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
    /// Markers: one between two groups.
    pub markers: u32,
}

impl MarkerPlan {
    /// The plan for so many stitches; a distance of none is taken as one.
    pub const fn of(stitches: u32, every: u32) -> Self {
        let every = if every == 0 { 1 } else { every };
        let (groups, rest) = (stitches / every, stitches % every);
        Self {
            stitches,
            every,
            groups,
            rest,
            markers: if rest > 0 { groups } else { groups.saturating_sub(1) },
        }
    }

    /// After which stitches a marker stands, from the slip knot on.
    pub fn marks(self) -> impl Iterator<Item = u32> {
        (1..=self.markers).map(move |group| group * self.every)
    }

    /// How many stitches each group has, to be ticked off one by one.
    pub fn tally(self) -> impl Iterator<Item = u32> {
        let full = (0..self.groups).map(move |_| self.every);
        full.chain((self.rest > 0).then_some(self.rest))
    }
}

/// The closest markers that do not make too many groups, or the widest.
pub(super) fn suggest(plans: &[MarkerPlan; 3]) -> usize {
    let few = |plan: &MarkerPlan| plan.groups <= MOST_GROUPS;
    plans.iter().position(few).unwrap_or(plans.len() - 1)
}

//! What a bracket uses and gives, where that is the same every time.

use super::super::super::line::{Count, Counted, Doing, Item, Often, Repeat};
use super::Walk;

/// What is used and given by some items together.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub(in super::super) struct Sum {
    pub uses: u64,
    pub gives: u64,
}

impl Sum {
    fn and(self, other: Self) -> Self {
        Self {
            uses: self.uses.saturating_add(other.uses),
            gives: self.gives.saturating_add(other.gives),
        }
    }

    fn times(self, times: u64) -> Self {
        Self {
            uses: self.uses.saturating_mul(times),
            gives: self.gives.saturating_mul(times),
        }
    }
}

impl Walk<'_> {
    /// The sum of items that do the same wherever they are worked; none where it depends on the needle.
    pub(in super::super) fn fixed(&self, items: &[Item]) -> Option<Sum> {
        items
            .iter()
            .try_fold(Sum::default(), |sum, item| Some(sum.and(self.fixed_item(item)?)))
    }

    fn fixed_item(&self, item: &Item) -> Option<Sum> {
        match &item.doing {
            Doing::Stitches(stitches) => {
                let times = match &stitches.count {
                    Count::One => 1,
                    Count::Of(amount) => amount.value(self.size),
                    Count::Reach(_) => return None,
                };
                let name = &stitches.name;
                // Two that are passed over may be more than the bracket has made by then.
                (name.lifts() == 0).then(|| {
                    Sum {
                        uses: name.uses(),
                        gives: name.gives(),
                    }
                    .times(times)
                })
            }
            Doing::Repeat(repeat) => {
                let times = self.times_of(repeat)?;
                Some(self.fixed(&repeat.body)?.times(times))
            }
            Doing::IntoOne(body) => {
                let gives = self.fixed(body)?.gives;
                Some(Sum { uses: 1, gives })
            }
            _ => None,
        }
    }

    /// How often a repeat is worked, where the needle does not decide that and nothing is in doubt.
    fn times_of(&self, repeat: &Repeat) -> Option<u64> {
        match &repeat.often {
            Often::Times(amount, counted) if repeat.but.is_none() => {
                let times = amount.value(self.size);
                match (repeat.stars, counted) {
                    (None, _) | (_, Counted::All) => Some(times),
                    (Some(_), Counted::More) => Some(times + 1),
                    (Some(_), Counted::Unsaid) => None,
                }
            }
            Often::Times(..) | Often::Reach(_) => None,
        }
    }

    /// How many rounds of a bracket can be worked at once: up to the next marker, and no more than there is room for.
    pub(super) fn at_once(&self, sum: Sum, most: u64) -> u64 {
        if sum.uses == 0 {
            return most;
        }
        let room = self.needle.to_marker().unwrap_or_else(|| self.needle.ahead());
        most.min(room / sum.uses)
    }

    /// Works so many rounds of a bracket at once.
    pub(super) fn work_at_once(&mut self, sum: Sum, rounds: u64) {
        let all = sum.times(rounds);
        self.used = self.used.saturating_add(all.uses);
        self.needle.work(1, all.uses, all.gives);
        self.bridge = false;
    }
}

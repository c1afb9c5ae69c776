//! A written row: the stitches in the order they are worked, with repeats, and how to walk along it.
//!
//! A [`Row`] is plain data: runs of one stitch (`K7`), repeats (`(K7, k2tog) 4 times`), and repeats that are not all
//! alike (`(K1, M1) 40 times, but K2 the 5th, 10th and 15th time`). It can be written
//! ([`std::fmt::Display`]), read back ([`read`]), made as short as it can be ([`shortest`]) and worked on a simulated
//! needle ([`work`]). Every spacing and shaping instruction in this crate is checked by writing it, reading the text
//! and working what was read.
//!
//! ```
//! use loopwright::row::{self, Row};
//! let row: Row = row::read("(K7, k2tog) 4 times, (K6, k2tog) 12 times")?;
//! assert_eq!((row.uses(), row.gives()), (132, 116));
//! assert_eq!(row::work(&row, 132)?.on_needle, 116);
//! assert_eq!(row.to_string(), "(K7, k2tog) 4 times, (K6, k2tog) 12 times");
//! # Ok::<(), Box<dyn std::error::Error>>(())
//! ```

mod pairs;
mod read;
pub(crate) mod shorten;
mod stitch;
mod vary;
mod walk;
mod work;
mod write;

pub use read::{Misread, Misreading, read};
pub(crate) use shorten::shortest_within;
pub use shorten::{LONGEST_EXACT, shortest};
pub use stitch::{Lean, Stitch};
pub use vary::Varied;
pub use walk::{Change, Changes, Runs};
pub use work::{MOST_STEPS, MOST_WORKED, Stuck, Worked, work};

/// One row or round as it is written.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Row {
    /// What is worked, in order.
    pub items: Vec<Item>,
}

/// One term of a written row.
#[derive(Clone, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub enum Item {
    /// The same stitch some times over: `K7`, `k2tog`.
    Run(Run),
    /// A bracket worked some times over: `(K7, k2tog) 4 times`.
    Repeat {
        /// What stands in the bracket.
        body: Vec<Item>,
        /// How often it is worked in all.
        times: u32,
    },
    /// A bracket that is not the same every time: `(K1, M1) 40 times, but K2 the 5th, 10th and 15th time`.
    Varied(Varied),
}

/// The same stitch worked some times over.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Run {
    /// The stitch.
    pub stitch: Stitch,
    /// How often.
    pub count: u32,
}

impl Run {
    /// A run of `count` stitches.
    pub const fn new(stitch: Stitch, count: u32) -> Self {
        Self { stitch, count }
    }
}

impl Row {
    /// Stitches the row takes from the left needle.
    pub fn uses(&self) -> u64 {
        total(&self.items, Stitch::uses)
    }

    /// Stitches the row leaves on the right needle.
    pub fn gives(&self) -> u64 {
        total(&self.items, Stitch::gives)
    }

    /// How long the text is: one for each run, one for each bracket's "so many times", and one for each time that is
    /// named because it differs.
    pub fn terms(&self) -> usize {
        terms(&self.items)
    }

    /// How deep brackets stand within brackets: 0 without any.
    pub fn depth(&self) -> usize {
        depth(&self.items)
    }

    /// The runs in the order they are worked, repeats unrolled one at a time, in constant memory.
    pub fn runs(&self) -> Runs<'_> {
        Runs::new(&self.items)
    }

    /// Where the changes fall: see [`Change`].
    pub fn changes(&self) -> Changes<'_> {
        Changes::new(self)
    }
}

/// Sums `each` over the stitches of a row. Saturates, so that an absurd row read from text cannot overflow.
fn total(items: &[Item], each: fn(Stitch) -> u32) -> u64 {
    items.iter().fold(0, |sum: u64, item| {
        sum.saturating_add(match item {
            Item::Run(run) => u64::from(each(run.stitch)) * u64::from(run.count),
            Item::Repeat { body, times } => total(body, each).saturating_mul(u64::from(*times)),
            Item::Varied(varied) => varied.total(each),
        })
    })
}

fn terms(items: &[Item]) -> usize {
    items
        .iter()
        .map(|item| match item {
            Item::Run(_) => 1,
            Item::Repeat { body, .. } => 1 + terms(body),
            Item::Varied(varied) => varied.terms(),
        })
        .sum()
}

fn depth(items: &[Item]) -> usize {
    items
        .iter()
        .map(|item| match item {
            Item::Run(_) => 0,
            Item::Repeat { body, .. } => 1 + depth(body),
            Item::Varied(_) => 1,
        })
        .max()
        .unwrap_or(0)
}

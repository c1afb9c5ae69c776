//! The same row for a left-handed knitter.
//!
//! She knits the mirror image: her stitches go from the right needle to the left one, she begins a right-side row at the
//! left edge, and what she makes is the piece as a mirror shows it. So the counts and the order of the stitches stay as
//! they are written, and so does every stitch that is named by what the hands do: she knits two together where it says
//! k2tog, at the same place of the row. But what that looks like is turned: her k2tog leans left, her ssk right, and the
//! pair at her two edges is a pair as it was meant. Only stitches that are named by how they *look* change their names:
//! where M1R stands, which leans with the edge at the beginning of the row, she needs M1L. Of two edges the right one is
//! hers on the left. Common practice, no source.
//!
//! ```
//! use loopwright::row::{self, Lean, Stitch};
//!
//! let gain = row::read("K1, M1R, K40, M1L, K1")?;
//! assert_eq!(gain.left_handed().to_string(), "K1, M1L, K40, M1R, K1");
//! let lose = row::read("K1, ssk, K40, k2tog, K1")?;
//! assert_eq!(lose.left_handed(), lose);
//! assert_eq!((Stitch::Ssk.lean(), Stitch::Ssk.lean_left_handed()), (Lean::Left, Lean::Right));
//! # Ok::<(), loopwright::row::Misread>(())
//! ```

use super::{Event, Plan};
use crate::row::{Item, Lean, Row, Run, Stitch, Varied};
use crate::terms::Hand;

impl Lean {
    /// As a mirror shows it.
    pub const fn mirror(self) -> Self {
        match self {
            Self::Left => Self::Right,
            Self::Right => Self::Left,
            Self::Upright => Self::Upright,
        }
    }
}

impl Stitch {
    /// What a left-handed knitter works where this stands: the stitch whose name says its lean is called by the other one.
    pub const fn left_handed(self) -> Self {
        match self {
            Self::M1L => Self::M1R,
            Self::M1R => Self::M1L,
            Self::M1Lp => Self::M1Rp,
            Self::M1Rp => Self::M1Lp,
            other => other,
        }
    }

    /// Which way it leans when a left-handed knitter works it, seen from the knit side. What is named by its lean leans as
    /// it is named.
    pub const fn lean_left_handed(self) -> Lean {
        self.left_handed().lean().mirror()
    }
}

impl Row {
    /// The row for a left-handed knitter: the same counts in the same order.
    pub fn left_handed(&self) -> Self {
        Self {
            items: self.items.iter().map(item).collect(),
        }
    }
}

impl<Doing> Plan<Doing> {
    /// The plan for this hand: for the left one the same rows and counts, and every written row as she works it. What
    /// happens in a row is turned by whoever knows it; where no lean is named there is nothing to turn.
    pub fn for_hand(mut self, hand: Hand, turned: impl Fn(Doing) -> Doing) -> Self {
        let turn = |event: Event<Doing>| Event {
            written: event.written.as_ref().map(Row::left_handed),
            doing: turned(event.doing),
            ..event
        };
        self.events = match hand {
            Hand::Right => self.events,
            Hand::Left => self.events.into_iter().map(turn).collect(),
        };
        self
    }
}

fn item(item: &Item) -> Item {
    match item {
        Item::Run(each) => Item::Run(run(each)),
        Item::Repeat { body, times } => Item::Repeat {
            body: body.iter().map(self::item).collect(),
            times: *times,
        },
        Item::Varied(varied) => Item::Varied(Varied {
            body: varied.body.iter().map(run).collect(),
            times: varied.times,
            instead: run(&varied.instead),
            at: varied.at.clone(),
        }),
    }
}

const fn run(run: &Run) -> Run {
    Run::new(run.stitch.left_handed(), run.count)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::row::read;

    /// The look of every stitch is the mirror of what a right-handed knitter makes in its place, and the counts are the
    /// same.
    #[test]
    fn a_left_handed_knitter_makes_the_mirror_image() {
        for stitch in Stitch::ALL {
            let hers = stitch.left_handed();
            assert_eq!(hers.lean_left_handed(), stitch.lean().mirror(), "{stitch:?}");
            assert_eq!((hers.uses(), hers.gives()), (stitch.uses(), stitch.gives()));
            assert_eq!(hers.left_handed(), stitch);
            assert_eq!(hers.on_purl_side(), stitch.on_purl_side().left_handed());
        }
    }

    #[test]
    fn what_is_named_by_its_lean_leans_as_it_is_named() {
        assert_eq!(Stitch::M1L.lean_left_handed(), Lean::Left);
        assert_eq!(Stitch::M1Rp.lean_left_handed(), Lean::Right);
        assert_eq!(Stitch::K2tog.lean_left_handed(), Lean::Left);
    }

    #[test]
    fn brackets_are_turned_within() {
        let row = read("((M1L, K1) twice, M1R) 3 times, (K1, M1R) 5 times, but K2 the 3rd time").unwrap();
        let turned = row.left_handed();
        assert_eq!(
            turned.to_string(),
            "((M1R, K1) twice, M1L) 3 times, (K1, M1L) 5 times, but K2 the 3rd time"
        );
        assert_eq!((turned.uses(), turned.gives()), (row.uses(), row.gives()));
    }
}

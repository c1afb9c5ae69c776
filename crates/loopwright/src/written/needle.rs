//! The simulated needle: stitches ahead on the left one and done on the right one, with markers between, and what is
//! held aside.
//!
//! Each half counts from its far end, so that working a stitch moves no marker but the one it passes, and turning the work
//! is nothing but the two halves changing hands.

use crate::terms::Working;

/// Both needles.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub(super) struct Needle {
    ahead: Half,
    done: Half,
    /// Stitches on holders.
    pub held: u64,
    /// The work was turned, and nothing worked since.
    turned: bool,
    /// Around a round the wrong way, after a turn.
    pub backwards: bool,
    /// A marker stood in the midst of a stitch that was worked.
    pub crossed: bool,
}

/// One half: its stitches, and for each marker how many of them lie between it and the far end, the nearest to the tip
/// last.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
struct Half {
    stitches: u64,
    markers: Vec<u64>,
}

impl Needle {
    /// A needle before its next row, with a marker after so many stitches of it.
    pub fn with(stitches: u64, markers: &[u32], working: Working) -> Self {
        let mut after: Vec<u64> = markers.iter().map(|marker| u64::from(*marker).min(stitches)).collect();
        after.sort_unstable();
        if working == Working::Flat {
            after = after.iter().rev().map(|marker| stitches - marker).collect();
        }
        Self {
            done: Half {
                stitches,
                markers: after,
            },
            ..Self::default()
        }
    }

    /// Stitches that are not worked yet.
    pub const fn ahead(&self) -> u64 {
        self.ahead.stitches
    }

    /// Stitches on both needles.
    pub const fn total(&self) -> u64 {
        self.ahead.stitches.saturating_add(self.done.stitches)
    }

    /// Whether nothing was worked in this row.
    pub const fn is_at_start(&self) -> bool {
        self.done.stitches == 0
    }

    /// Takes the needle to its next row.
    pub fn begin_row(&mut self, working: Working) {
        match working {
            Working::Flat => self.turned = true,
            Working::Round if !self.turned && self.ahead.stitches == 0 => {
                let total = self.done.stitches;
                let markers = self.done.markers.drain(..).rev();
                self.ahead.markers = markers.map(|marker| total - marker.min(total)).collect();
                self.ahead.stitches = total;
                self.done.stitches = 0;
            }
            Working::Round => self.backwards ^= self.turned,
        }
        self.begin();
    }

    /// The work is turned when something is worked again.
    pub const fn turn(&mut self) {
        self.turned = true;
    }

    pub const fn is_turned(&self) -> bool {
        self.turned
    }

    /// Changes hands if the work was turned.
    pub fn begin(&mut self) {
        if self.turned {
            std::mem::swap(&mut self.ahead, &mut self.done);
            self.turned = false;
        }
    }

    /// Works so many, each of which takes `uses` and gives `gives`. There have to be as many.
    pub fn work(&mut self, times: u64, uses: u64, gives: u64) {
        let from = self.ahead.stitches;
        self.ahead.stitches = from - times.saturating_mul(uses).min(from);
        while let Some(marker) = self.ahead.markers.last().copied() {
            if marker <= self.ahead.stitches {
                break;
            }
            self.ahead.markers.pop();
            let before = from - marker.min(from);
            self.crossed |= !before.is_multiple_of(uses.max(1));
            let passed = (before / uses.max(1)).saturating_mul(gives);
            self.done.markers.push(self.done.stitches.saturating_add(passed));
        }
        self.done.stitches = self.done.stitches.saturating_add(times.saturating_mul(gives));
    }

    /// Passes stitches over on the right needle; whether there were as many, and one beside.
    pub fn pass_over(&mut self, stitches: u64) -> bool {
        let is_enough = stitches < self.done.stitches;
        self.done.stitches -= stitches.min(self.done.stitches);
        self.keep_markers_within();
        is_enough
    }

    fn keep_markers_within(&mut self) {
        for marker in &mut self.done.markers {
            *marker = (*marker).min(self.done.stitches);
        }
    }

    /// Casts on before the stitches that are ahead, rather than behind those that are done.
    pub const fn cast_on_ahead(&mut self, stitches: u64) {
        self.ahead.stitches = self.ahead.stitches.saturating_add(stitches);
    }

    /// How many stitches there are to the next marker.
    pub fn to_marker(&self) -> Option<u64> {
        let marker = self.ahead.markers.last()?;
        Some(self.ahead.stitches - marker.min(&self.ahead.stitches))
    }

    pub fn place_marker(&mut self) {
        self.done.markers.push(self.done.stitches);
    }

    /// Takes the marker that stands right here; whether there is one, before the next stitch or behind the last.
    pub fn take_marker(&mut self) -> bool {
        if self.ahead.markers.last() == Some(&self.ahead.stitches) {
            self.ahead.markers.pop();
            return true;
        }
        let is_passed = self.done.markers.last() == Some(&self.done.stitches);
        if is_passed {
            self.done.markers.pop();
        }
        is_passed
    }

    /// Counts all that is on the needle as done, where a row was left in its midst.
    pub fn settle(&mut self) {
        let (ahead, done) = (self.ahead.stitches, self.done.stitches);
        let markers = self.ahead.markers.drain(..).rev();
        self.done
            .markers
            .extend(markers.map(|marker| done.saturating_add(ahead - marker.min(ahead))));
        self.done.stitches = done.saturating_add(ahead);
        self.ahead.stitches = 0;
        self.turned = false;
    }

    /// So many stitches, as the pattern says; where the markers are then nobody knows.
    pub fn set(&mut self, stitches: u64) {
        self.settle();
        if stitches != self.done.stitches {
            self.done.stitches = stitches;
            self.done.markers.clear();
        }
    }

    /// Puts what is held behind what is done.
    pub const fn take_back(&mut self) {
        self.done.stitches = self.done.stitches.saturating_add(self.held);
        self.held = 0;
    }
}

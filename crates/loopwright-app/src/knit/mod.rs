//! Knitting from an answer row by row: what is knitted, the place in it, and what helps her hands and eyes meanwhile.
//!
//! The place is kept beside the figures it belongs to, on the sheet `yoke.knit` of a tool or `step.3.knit` of a step; a
//! second counter on `step.3.knit.2`. Each tap is an entry of the log with a name of its own
//! (`loopwright_project::knitting`), so that nothing overwrites anything.

pub mod awake;
mod buzz;
mod comfort;
mod counter;
mod extent;
pub mod keys;
mod rows;
mod subject;

pub use buzz::{buzz, can_buzz};
pub use comfort::Comfort;
pub use counter::{Counter, Tapped};
pub use extent::Extent;
pub use rows::{Rows, of_step, of_tool};
pub use subject::{Followed, MOST_COUNTERS, Subject, keeps_beside_taps};

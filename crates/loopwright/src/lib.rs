//! The arithmetic of hand knitting: exact, total, and explained.
//!
//! Every tool is a question with one answer. Each has one module of the same shape, so that who has read one has read
//! all: a `Question` of typed quantities, an `Answer` of plain data with its working, and a pure function `answer`
//! between them that never panics. What is wrong with a question comes back as [`problem::Problem`]s: the field, and the
//! nearest value that would be right. There are no sentences here; the page makes them.
//!
//! Beside the tools stand the rooms they share: [`units`], where text becomes quantities; [`row`], the written row with
//! its reader and the simulated needle on which every instruction is tried; [`bounds`] and [`problem`].
//!
//! ```
//! use loopwright::spacing::{Ask, Question, answer};
//!
//! // I have 132 stitches and want to lose 12 evenly in this round.
//! let answer = answer(&Question { ask: Ask::Lose(12), ..Question::about(132) }).unwrap();
//! assert_eq!(answer.ways[0].row.to_string(), "K4, k2tog, (K9, k2tog) 11 times, K5");
//! assert_eq!(answer.after, 120);
//! ```

#[macro_use]
mod tools;

pub mod bounds;
mod check;
pub mod fabric;
pub mod flare;
pub mod gauge;
pub mod needles;
pub mod problem;
pub mod regauge;
pub mod row;
pub mod rows;
pub mod shaping;
pub mod tables;
pub mod units;

/// One module for each tool of the list.
macro_rules! modules {
    ($($tool:ident in $group:ident,)*) => {
        $(pub mod $tool;)*
    };
}
each_tool!(modules);

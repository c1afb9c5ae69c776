//! The parts every tool is made of: plain functions from data to what is drawn. None of them knows a tool or does a
//! sum. They are functions and not components because the whole tool is drawn anew at each keystroke anyway, and a
//! component costs every knitter about two kilobytes.

mod advice;
mod answered;
mod doings;
mod field;
mod measure;
pub mod plain;
mod select;
mod sheet;

pub use advice::{Advice, advice};
pub use answered::{answered, more, notes, row, tool_page, working};
pub use doings::said;
pub use field::{Label, field};
pub use measure::TAPE;
pub use select::{Choice, select};
pub use sheet::Sheet;

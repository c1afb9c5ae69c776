//! The parts every tool is made of: plain functions from data to what is drawn. None of them knows a tool or does a
//! sum. They are functions and not components because they have no state and no identity of their own; but for the answer,
//! which is drawn only when it is another one (`answer.rs`).

mod actions;
mod advice;
mod answer;
mod answered;
mod below;
mod choice;
mod clipboard;
mod control;
mod counted;
mod doubt;
mod fixed;
mod form;
mod label;
mod offer;
pub mod plain;
mod room;
mod row_by_row;
mod set;
mod sheet;
mod summary;
mod typing;
mod view;
mod windows;

pub use actions::announced;
pub use advice::wait;
pub use answer::{Answered, Memory};
pub use answered::{InFrame, answered, good_to_know, notes, row, spoken, tool_page, working};
pub use below::Below;
pub use choice::{answer_choice, choices, selected, settings_choice, unit_choice};
pub use clipboard::{ByHand, Copied, copied};
pub use counted::{MOST as MOST_COUNTED, counted, counts};
pub use form::{Form, Part};
pub use label::Label;
pub use offer::{keep_count, keep_offer, name_sentence};
pub use row_by_row::{one_by_one, row_by_row};
pub use sheet::{Frame, Sheet};
pub use summary::{Amount, Figure, Summary};
pub use typing::{Place, typed_text};
pub use view::View;

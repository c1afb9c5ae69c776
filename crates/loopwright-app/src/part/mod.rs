//! The parts every tool is made of: plain functions from data to what is drawn. None of them knows a tool or does a
//! sum. They are functions and not components because they have no state and no identity of their own.

mod advice;
mod answered;
mod asked;
mod belonging;
mod below;
mod choices;
mod control;
mod counted;
mod doings;
mod field;
mod fields;
mod form;
mod gauge;
mod known;
mod listed;
mod measure;
mod multiple;
mod offer;
pub mod plain;
mod plain_form;
mod reading;
mod row_by_row;
mod select;
mod sheet;
mod tool_page;
mod view;

pub use advice::{Advice, advice, waiting};
pub use answered::{answered, good_to_know, more, notes, row, tool_page, working};
pub use asked::{Page, asked};
pub use below::Below;
pub use choices::{ChoiceRow, choice, choices, chosen};
pub use doings::said;
pub use field::{Label, field, signed};
pub use fields::{Field, fields, folded_fields};
pub use gauge::{GaugeRow, gauge, gauge_typed, gauges, gauges_taken, read_gauge, read_gauge_if_any, read_gauges};

pub use control::{answer_choice, unit_choice};
pub use counted::counted;
pub use form::{Form, Part};
pub use known::{keep, known};
pub use listed::{counts_field, lengths_field, list_unit};
pub use measure::{NEEDLE, Scale, TAPE, WEIGHT, YARN};
pub use multiple::{multiple, multiple_fields};
pub use offer::keep as keep_offer;
pub use plain_form::plain_form;
pub use reading::{Reading, Row, Say, rows};
pub use row_by_row::row_by_row;
pub use select::{Choice, select};
pub use sheet::Sheet;
pub use tool_page::{page, wait};
pub use view::View;

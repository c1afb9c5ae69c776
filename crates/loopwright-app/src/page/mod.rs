//! The pages that are no tool: the first page, the one about storage and care, and the gallery; and what stands around a
//! tool inside another page.

mod about;
mod brought;
mod carry;
mod channel;
pub mod embed;
mod footer;
mod gallery;
pub mod home;
pub mod knit;
pub mod light;
mod links;
pub mod panel;
mod paper;
pub mod project;
mod scan;
mod search;
mod storage;
mod understood;
mod units;
mod whole;

pub use about::about;
pub use brought::brought;
pub use carry::carry;
pub use footer::footer;
pub use gallery::{gallery, gallery_state};
pub use home::home;
pub use links::links;
pub use paper::use_folds_open_on_paper;
pub use scan::scan;

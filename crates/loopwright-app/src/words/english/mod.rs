//! English, with the American words of the trade.

use super::{Title, Worded};

pub mod about;
pub mod brought;
pub mod carry;
pub mod demo;
pub mod doubt;
pub mod facts;
pub mod followed;
pub mod frame;
pub mod gallery;
pub mod home;
pub mod intl;
pub mod knit;
pub mod known;
pub mod links;
pub mod next;
pub mod page;
pub mod panel;
pub mod problem;
pub mod project;
pub mod row;
pub mod schedule;
pub mod search;
pub mod stitch;
pub mod taken;
pub mod tell;
mod terms;
pub mod tracks;
pub mod units;
pub mod whole;
pub mod windows;

/// One file of words for each tool of the list.
macro_rules! files {
    ($($tool:ident in $group:ident,)*) => {
        $(pub mod $tool;)*
    };
}
loopwright::each_tool!(files);

//! Every sentence of the app, made in this one place.
//!
//! The maths hands over data; these functions say it. Each match is exhaustive, so that a missing sentence does not
//! compile. One file a tool, and a few that all tools share. A second language is a second folder like this one.

pub mod about;
pub mod gallery;
pub mod home;
pub mod intl;
pub mod known;
pub mod page;
pub mod problem;
pub mod rounds;
pub mod row;
pub mod schedule;
pub mod stitch;
pub mod tell;
mod terms;
pub mod units;

/// One file of words for each tool of the list.
macro_rules! files {
    ($($tool:ident in $group:ident,)*) => {
        $(pub mod $tool;)*
    };
}
loopwright::each_tool!(files);

/// What a tool is called, and the question it answers.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Title {
    /// The trade's word for it.
    pub name: &'static str,
    /// The question it answers, in one line.
    pub asks: &'static str,
}

/// What a thing to choose is called where it is chosen.
pub trait Worded {
    /// Its words.
    fn words(self) -> &'static str;
}

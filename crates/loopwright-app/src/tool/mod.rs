//! The tools, each with its view, its words and its named states, in the order of the list.

use crate::desk::Desk;
use crate::words::{self, Title};
use yew::Html;

/// When a question comes up: the parts of the menu.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Group {
    /// Before casting on.
    Before,
    /// While it is begun.
    Starting,
    /// While the knitting is on the needles.
    Needles,
}

impl Group {
    /// The parts of the menu, in order.
    pub const ALL: [Self; 3] = [Self::Before, Self::Starting, Self::Needles];
}

/// One named state of a tool, for the gallery and the browser tests.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct State {
    /// Its name.
    pub name: &'static str,
    /// The fields that bring it about, as a link has them: `length=40&gauge=28`.
    pub link: &'static str,
}

impl State {
    /// The state of this name that the fields of a link bring about.
    pub const fn new(name: &'static str, link: &'static str) -> Self {
        Self { name, link }
    }
}

/// A tool as the app knows it.
#[derive(Clone, Copy)]
pub struct Tool {
    /// Its id: the name of its module, its sheet and its address.
    pub id: &'static str,
    /// Where it stands in the menu.
    pub group: Group,
    /// What it is called and asks.
    pub title: Title,
    /// Draws it.
    pub view: fn(&Desk) -> Html,
    /// Its small picture on the first page.
    pub sign: fn() -> Html,
    /// Its named states.
    pub states: &'static [State],
}

/// The list of tools, expanded.
macro_rules! entries {
    ($($tool:ident in $group:ident,)*) => {
        $(mod $tool;)*
        /// Every tool, in the order of the list.
        pub static TOOLS: &[Tool] = &[$(Tool {
            id: stringify!($tool),
            group: Group::$group,
            title: words::$tool::TITLE,
            view: $tool::view,
            sign: $tool::sign,
            states: $tool::STATES,
        }),*];
    };
}
loopwright::each_tool!(entries);

/// The tool with this id.
pub fn find(id: &str) -> Option<&'static Tool> {
    TOOLS.iter().find(|tool| tool.id == id)
}

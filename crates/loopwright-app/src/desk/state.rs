//! The state behind every view, and everything that can happen to it, in one match.

use super::{Keeping, Persistence};
use crate::store::{Entry, Sheets, StoreError};
use std::rc::Rc;
use yew::Reducible;

/// What may be said about the storage.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Status {
    /// Whether what was typed is kept.
    pub keeping: Keeping,
    /// Whether the browser has promised not to forget it.
    pub persistence: Persistence,
}

/// What there is to say about the last tap.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub enum Announcement {
    /// Nothing, or no longer.
    #[default]
    Nothing,
    /// A sentence.
    Words(String),
    /// A link that the browser would not copy, to be copied by hand.
    Link(String),
}

/// The whole state behind every view.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct State {
    /// What was typed.
    pub sheets: Rc<Sheets>,
    /// What may be said about the storage.
    pub status: Status,
    /// What there is to say about the last tap.
    pub announcement: Announcement,
    /// How many times something was laid over a sheet as a whole: a link, a fresh start, what was there before.
    pub laid: u32,
    /// Whether views may be shown: the figures are there, or will not come.
    pub open: bool,
}

/// Everything that can happen to the desk.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Action {
    /// The log was read, at the start or because another tab may have written.
    Loaded(Sheets),
    /// A keystroke or a tap.
    Wrote(Vec<Entry>),
    /// What is written next is laid over a sheet as a whole.
    Laid,
    /// Something else may be said about the storage.
    Keeping(Keeping),
    /// The browser has answered whether it will forget.
    Persistence(Persistence),
    /// A tap had an outcome that does not show by itself, or it is no longer of interest.
    Announced(Announcement),
}

impl Default for State {
    fn default() -> Self {
        Self {
            sheets: Rc::default(),
            status: Status {
                keeping: Keeping::Writing,
                persistence: Persistence::Unknown,
            },
            announcement: Announcement::Nothing,
            laid: 0,
            open: false,
        }
    }
}

impl Reducible for State {
    type Action = Action;

    fn reduce(self: Rc<Self>, action: Action) -> Rc<Self> {
        let mut state = (*self).clone();
        match action {
            Action::Loaded(sheets) => {
                state.sheets = Rc::new(sheets);
                state.open = true;
            }
            Action::Wrote(entries) => {
                Rc::make_mut(&mut state.sheets).apply_all(&entries);
                state.announcement = Announcement::Nothing;
            }
            Action::Laid => state.laid = state.laid.wrapping_add(1),
            Action::Keeping(keeping) => {
                // Without storage the page opens all the same.
                state.open |= matches!(keeping, Keeping::MemoryOnly(ref why) if *why != StoreError::Guest);
                state.status.keeping = keeping;
            }
            Action::Persistence(persistence) => state.status.persistence = persistence,
            Action::Announced(announcement) => state.announcement = announcement,
        }
        Rc::new(state)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::store::Typed;

    fn after(actions: impl IntoIterator<Item = Action>) -> Rc<State> {
        actions
            .into_iter()
            .fold(Rc::new(State::default()), |state, action| state.reduce(action))
    }

    #[test]
    fn the_page_opens_with_the_figures_or_without_storage_but_not_before() {
        let no_figures = |why| Action::Keeping(Keeping::MemoryOnly(why));
        assert!(!after([Action::Keeping(Keeping::Writing)]).open);
        assert!(!after([no_figures(StoreError::Guest)]).open);
        assert!(after([no_figures(StoreError::Slow)]).open);
        assert!(after([Action::Loaded(Sheets::default())]).open);
    }

    #[test]
    fn a_keystroke_is_seen_at_once() {
        let typed = Typed::plain("132");
        let entry = Entry::new("spacing", "stitches", Some(typed.clone()));
        let state = after([Action::Wrote(vec![entry])]);
        assert_eq!(state.sheets.text("spacing", "stitches"), Some(&typed));
    }
}

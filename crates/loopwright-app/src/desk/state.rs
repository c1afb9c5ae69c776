//! The state behind every view, and everything that can happen to it, in one match.

use super::held::{FieldName, Held, lay_over_seen};
use super::hers::carry_over;
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
    /// The field that another window wrote into while she was typing there.
    pub held: Option<Held>,
    /// Whether the log was read: what it says before that was not written by another window.
    pub is_read: bool,
    /// Whether views may be shown: the figures are there, or will not come.
    pub open: bool,
}

/// Everything that can happen to the desk.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Action {
    /// The log was read, at the start or because another tab may have written; and in which field she types then.
    Loaded(Sheets, Option<FieldName>),
    /// She left the field in which she was typing, or takes there what another window wrote.
    GaveWay {
        /// Whether what stood there is to be had back.
        is_left: bool,
    },
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
            held: None,
            is_read: false,
            open: false,
        }
    }
}

impl Reducible for State {
    type Action = Action;

    fn reduce(self: Rc<Self>, action: Action) -> Rc<Self> {
        if self.held.is_none() && matches!(action, Action::GaveWay { .. }) {
            return self;
        }
        let mut state = (*self).clone();
        match action {
            Action::Loaded(mut sheets, typed_in) => {
                carry_over(&state.sheets, &mut sheets);
                let typed_in = typed_in.filter(|_| state.is_read);
                state.held = lay_over_seen(&state.sheets, state.held, &mut sheets, typed_in);
                state.is_read = true;
                state.sheets = Rc::new(sheets);
                state.open = true;
            }
            Action::GaveWay { is_left } => {
                let held = state.held.take();
                if let Some(held) = held.as_ref().filter(|held| !held.is_left) {
                    Rc::make_mut(&mut state.sheets).apply(&held.giving_way());
                }
                state.held = held.filter(|_| is_left).and_then(Held::left);
            }
            Action::Wrote(entries) => {
                state.held = state.held.filter(|held| !held.is_among(&entries));
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
        assert!(after([Action::Loaded(Sheets::default(), None)]).open);
    }

    #[test]
    fn a_field_that_is_typed_in_gives_way_when_she_leaves_it() {
        let typed = |text: &str| Entry::new("spacing", "stitches", Some(Typed::plain(text)));
        let name = || FieldName {
            sheet: "spacing".into(),
            field: "stitches".into(),
        };
        let theirs = || {
            let mut sheets = Sheets::default();
            sheets.apply(&typed("90"));
            Action::Loaded(sheets, Some(name()))
        };
        let text = |state: &State| state.sheets.text("spacing", "stitches").map(|typed| typed.text.clone());
        let opened = Action::Loaded(Sheets::default(), None);
        let is_held = after([opened, Action::Wrote(vec![typed("132")]), theirs()]);
        assert_eq!(text(&is_held).as_deref(), Some("132"));
        let left = is_held.clone().reduce(Action::GaveWay { is_left: true });
        assert_eq!(text(&left).as_deref(), Some("90"));
        assert!(left.held.as_ref().is_some_and(|held| held.is_left));
        let taken = is_held.clone().reduce(Action::GaveWay { is_left: false });
        assert_eq!((text(&taken).as_deref(), taken.held.as_ref()), (Some("90"), None));
        // What she types on is the newest, and nothing is held any more.
        let typed_on = is_held.reduce(Action::Wrote(vec![typed("1325")]));
        assert_eq!(
            (text(&typed_on).as_deref(), typed_on.held.as_ref()),
            (Some("1325"), None)
        );
    }

    #[test]
    fn a_keystroke_is_seen_at_once() {
        let typed = Typed::plain("132");
        let entry = Entry::new("spacing", "stitches", Some(typed.clone()));
        let state = after([Action::Wrote(vec![entry])]);
        assert_eq!(state.sheets.text("spacing", "stitches"), Some(&typed));
    }
}

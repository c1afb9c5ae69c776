//! A store that lasts as long as the page: for a page shown inside another, for examples, and for tests.

use super::{Entry, Later, Line, Store, StoreError, compact};
use std::cell::RefCell;

/// A log in memory.
#[derive(Default)]
pub struct Memory(RefCell<Vec<Line>>);

impl Memory {
    /// A log that already says something.
    pub fn holding(entries: impl IntoIterator<Item = Entry>) -> Self {
        Self(RefCell::new(entries.into_iter().map(Line::Known).collect()))
    }

    /// Forgets everything, as a browser does that is told to.
    #[cfg(test)]
    pub fn clear(&self) {
        self.0.take();
    }

    /// A log found as it is, foreign lines and all.
    #[cfg(test)]
    pub fn found(log: Vec<Line>) -> Self {
        Self(RefCell::new(log))
    }
}

impl Store for Memory {
    fn load(&self) -> Later<'_, Vec<Line>> {
        Box::pin(async { Ok(self.0.borrow().clone()) })
    }

    fn append(&self, entries: Vec<Entry>) -> Later<'_, ()> {
        Box::pin(async {
            self.0.borrow_mut().extend(entries.into_iter().map(Line::Known));
            Ok(())
        })
    }

    fn compact(&self) -> Later<'_, usize> {
        Box::pin(async {
            let log = self.0.take();
            let short = compact(log);
            let length = short.len();
            *self.0.borrow_mut() = short;
            Ok(length)
        })
    }

    fn write_anew(&self, entries: Vec<Entry>) -> Later<'_, ()> {
        self.append(entries)
    }

    fn renew(&self) -> Later<'_, Vec<Line>> {
        self.load()
    }

    fn forgets(&self) -> Option<StoreError> {
        Some(StoreError::Guest)
    }
}

//! Where the log of what was typed is kept. One small trait with three rooms behind it: the browser's database
//! ([`Idb`]), memory alone ([`Memory`]), and one that fails when a test says so. A failure is a value with a name.

mod entry;
#[cfg(test)]
mod faulty;
mod idb;
pub mod json;
mod memory;
pub mod record;
mod sheet_id;

pub use entry::{Entry, Fields, Line, Sheets, Typed, compact, fold, foreign_lines, last_words, needed};
#[cfg(test)]
pub use faulty::Faulty;
pub use idb::Idb;
pub use memory::Memory;
pub use sheet_id::{PROJECTS, ProjectId, SheetId};

use std::future::Future;
use std::pin::Pin;

/// Why something could not be kept. The sentence for each is in `words`.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum StoreError {
    /// The browser gives this page no storage: private browsing, or blocked in its settings.
    Denied,
    /// There is no room left for this page.
    Full,
    /// The storage has not answered within the time a knitter should wait.
    Slow,
    /// A newer version of this page has the storage, in a shape that this one cannot read.
    Newer,
    /// What was kept is gone: the storage was cleared while this page was open.
    Cleared,
    /// The browser closed the way to the storage, as it does with pages that slept. Nothing was written.
    Dropped,
    /// A page shown inside another, or an example: it keeps nothing, and that is as it should be.
    Guest,
    /// Anything else, in the browser's own words.
    Broken(String),
}

/// A result that comes later. Boxed, so that the rest of the app need not know which store it has.
pub type Later<'a, T> = Pin<Box<dyn Future<Output = Result<T, StoreError>> + 'a>>;

/// A log that can be read whole, added to at its end, and shortened without changing what it says.
pub trait Store {
    /// The whole log, oldest first.
    fn load(&self) -> Later<'_, Vec<Line>>;

    /// Adds all entries or none. Resolves only when they are truly kept.
    fn append(&self, entries: Vec<Entry>) -> Later<'_, ()>;

    /// Shortens the log in one step and answers its new length.
    fn compact(&self) -> Later<'_, usize>;

    /// Adds these to a log that need not be the one that was read before: it was cleared, and this page begins it anew.
    fn write_anew(&self, entries: Vec<Entry>) -> Later<'_, ()>;

    /// Lets go of the storage for so long that the browser puts it away, opens it again, puts back what is missing then, and
    /// answers the log as it is read after that.
    fn renew(&self) -> Later<'_, Vec<Line>>;

    /// Lets go of the storage until the next step: another window wants to know what is left of it.
    fn let_go(&self) {}

    /// Has somebody hear when another window, or the browser, takes the storage away; what came of it is what the next step
    /// answers.
    fn when_lost(&self, _tell: Box<dyn Fn()>) {}

    /// The reason why this store forgets when the page is closed; `None` if it keeps.
    fn forgets(&self) -> Option<StoreError> {
        None
    }
}

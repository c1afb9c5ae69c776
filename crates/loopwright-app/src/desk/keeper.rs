//! Brings the queue to the store, job by job, and tells the page what may be said. Runs under any executor.

use super::others::Word;
use super::queue::{Done, Job, Keeping, Queue};
use crate::store::{Entry, Sheets, Store, StoreError};
use futures_channel::oneshot;
use std::cell::RefCell;

/// What the page is told.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum News {
    /// The sheets as the log has them, with what was typed since on top.
    Loaded(Sheets),
    /// What may be said about the storage.
    Keeping(Keeping),
    /// Something that other windows have to hear.
    Word(Word),
}

/// A store with its queue.
pub struct Keeper {
    store: Box<dyn Store>,
    queue: RefCell<Queue>,
    waiters: RefCell<Vec<oneshot::Sender<()>>>,
    tell: Box<dyn Fn(News)>,
}

impl Keeper {
    /// A keeper that reports by `tell`.
    pub fn new(store: Box<dyn Store>, tell: impl Fn(News) + 'static) -> Self {
        let queue = RefCell::new(Queue::new(store.forgets()));
        Self {
            store,
            queue,
            waiters: RefCell::default(),
            tell: Box::new(tell),
        }
    }

    /// Whether this store forgets anyway, so that no fuss should be made about it.
    pub fn is_guest(&self) -> bool {
        self.store.forgets().is_some()
    }

    /// How many records of the log as it was read last are none that this version knows.
    pub fn strange_records(&self) -> usize {
        self.queue.borrow().strange_records()
    }

    /// Takes changes in. They wait until [`Keeper::run`] is polled.
    pub fn push(&self, entries: Vec<Entry>) {
        self.queue.borrow_mut().push(entries);
        self.report();
    }

    /// Hears what another window says.
    pub fn hear(&self, word: Word) {
        match word {
            Word::News => self.reload(),
            Word::LetGo => self.store.let_go(),
            Word::InDoubt => self.queue.borrow_mut().doubt(true),
            Word::Whole => {
                self.queue.borrow_mut().doubt(false);
                self.reload();
            }
        }
        self.report();
    }

    /// Asks for the log to be read again.
    pub fn reload(&self) {
        self.queue.borrow_mut().reload();
    }

    /// Has what no longer counts taken out of the log, as soon as what counts is kept.
    pub fn shorten(&self) {
        self.queue.borrow_mut().shorten();
    }

    /// Has all that is on the page kept anew, after the storage was cleared.
    pub fn write_anew(&self) {
        self.queue.borrow_mut().write_anew();
    }

    /// Called when a copy of all that is on the page was saved.
    pub fn copy_was_saved(&self) {
        self.queue.borrow_mut().copy_was_saved();
    }

    /// Has somebody hear when the storage is taken away.
    pub fn when_lost(&self, tell: Box<dyn Fn()>) {
        self.store.when_lost(tell);
    }

    /// Called when the first load takes too long.
    pub fn is_slow(&self) {
        self.queue.borrow_mut().is_slow();
        self.report();
    }

    /// Works until nothing is left to do or the store has failed twice. A second run beside the first does nothing.
    pub async fn run(&self) {
        while let Some(job) = self.next() {
            if job == Job::Renew {
                (self.tell)(News::Word(Word::LetGo));
            }
            let outcome = self.work(job).await;
            if matches!(outcome, Ok(Done::Appended)) {
                (self.tell)(News::Word(Word::News));
            }
            let was_in_doubt = self.queue.borrow().is_in_doubt();
            let sheets = self.queue.borrow_mut().finish(outcome);
            match (was_in_doubt, self.queue.borrow().is_in_doubt()) {
                (false, true) => (self.tell)(News::Word(Word::InDoubt)),
                (true, false) => (self.tell)(News::Word(Word::Whole)),
                (false, false) | (true, true) => (),
            }
            if let Some(sheets) = sheets {
                (self.tell)(News::Loaded(sheets));
            }
            self.report();
        }
        if !self.queue.borrow().is_running() {
            for waiter in self.waiters.take() {
                let _ = waiter.send(());
            }
        }
    }

    /// Tries to keep everything now; `Ok` only when it is kept (or when this store keeps nothing by design).
    pub async fn flush(&self) -> Result<(), StoreError> {
        self.queue.borrow_mut().wake();
        self.run().await;
        if self.queue.borrow().is_running() {
            let (send, receive) = oneshot::channel();
            self.waiters.borrow_mut().push(send);
            let _ = receive.await;
        }
        match self.queue.borrow().keeping() {
            Keeping::Kept
            | Keeping::KeptInDoubt
            | Keeping::Superseded { is_all_kept: true }
            | Keeping::MemoryOnly(StoreError::Guest) => Ok(()),
            Keeping::Failed(error) | Keeping::MemoryOnly(error) => Err(error),
            Keeping::Superseded { is_all_kept: false } => Err(StoreError::Newer),
            Keeping::Cleared(why) => Err(why.unwrap_or(StoreError::Cleared)),
            Keeping::Writing => Err(StoreError::Slow),
        }
    }

    fn next(&self) -> Option<Job> {
        self.queue.borrow_mut().next()
    }

    async fn work(&self, job: Job) -> Result<Done, StoreError> {
        match job {
            Job::Load => self.store.load().await.map(Done::Loaded),
            Job::Append(batch) => self.store.append(batch).await.map(|()| Done::Appended),
            Job::WriteAnew(all) => self.store.write_anew(all).await.map(|()| Done::Appended),
            Job::Renew => self.store.renew().await.map(Done::Renewed),
            Job::Compact => self.store.compact().await.map(Done::Compacted),
        }
    }

    fn report(&self) {
        let keeping = self.queue.borrow().keeping();
        (self.tell)(News::Keeping(keeping));
    }
}

#[cfg(test)]
mod tests;

//! Brings the queue to the store, job by job, and tells the page what may be said. Runs under any executor.

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
    /// Something was added to the log, which other windows have to read.
    Appended,
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

    /// Takes changes in. They wait until [`Keeper::run`] is polled.
    pub fn push(&self, entries: Vec<Entry>) {
        self.queue.borrow_mut().push(entries);
        self.report();
    }

    /// Asks for the log to be read again.
    pub fn reload(&self) {
        self.queue.borrow_mut().reload();
    }

    /// Called when the first load takes too long.
    pub fn is_slow(&self) {
        self.queue.borrow_mut().is_slow();
        self.report();
    }

    /// Works until nothing is left to do or the store has failed twice. A second run beside the first does nothing.
    pub async fn run(&self) {
        while let Some(job) = self.next() {
            let outcome = self.work(job).await;
            if matches!(outcome, Ok(Done::Appended)) {
                (self.tell)(News::Appended);
            }
            let sheets = self.queue.borrow_mut().finish(outcome);
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
            Keeping::Kept | Keeping::MemoryOnly(StoreError::Guest) => Ok(()),
            Keeping::Failed(error) | Keeping::MemoryOnly(error) => Err(error),
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
            Job::Compact => self.store.compact().await.map(Done::Compacted),
        }
    }

    fn report(&self) {
        let keeping = self.queue.borrow().keeping();
        (self.tell)(News::Keeping(keeping));
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::store::{Faulty, Line, Memory, Typed, fold};
    use std::rc::Rc;

    type Heard = Rc<RefCell<Vec<News>>>;

    fn entry(text: &str) -> Entry {
        Entry::new("spacing", "stitches", Some(Typed::plain(text)))
    }

    fn sheets(texts: &[&str]) -> Sheets {
        let log: Vec<Line> = texts.iter().map(|text| Line::Known(entry(text))).collect();
        fold(&log)
    }

    fn keeper(store: &Rc<Faulty>) -> (Keeper, Heard) {
        let heard = Heard::default();
        let ear = heard.clone();
        let tell = move |news| ear.borrow_mut().push(news);
        (Keeper::new(Box::new(store.clone()), tell), heard)
    }

    fn said(heard: &Heard) -> Keeping {
        let keeping = |news: &News| match news {
            News::Keeping(keeping) => Some(keeping.clone()),
            News::Loaded(_) | News::Appended => None,
        };
        heard.borrow().iter().rev().find_map(keeping).unwrap()
    }

    fn stored(store: &Rc<Faulty>) -> Sheets {
        fold(&pollster::block_on(store.load()).unwrap())
    }

    #[test]
    fn what_was_typed_is_kept_in_one_batch_and_said_only_then() {
        let store = Rc::new(Faulty::new(vec![], []));
        let (keeper, heard) = keeper(&store);
        pollster::block_on(keeper.run());
        assert_eq!(said(&heard), Keeping::Kept);
        keeper.push(vec![entry("1")]);
        keeper.push(vec![entry("13")]);
        assert_eq!(said(&heard), Keeping::Writing);
        pollster::block_on(keeper.run());
        assert_eq!(said(&heard), Keeping::Kept);
        assert_eq!(*store.asked.borrow(), ["load", "append"]);
        assert_eq!(stored(&store), sheets(&["13"]));
    }

    #[test]
    fn one_failure_is_tried_again_and_not_spoken_of() {
        let store = Rc::new(Faulty::new(vec![], [None, Some(StoreError::Full)]));
        let (keeper, heard) = keeper(&store);
        keeper.push(vec![entry("1")]);
        assert_eq!(pollster::block_on(keeper.flush()), Ok(()));
        assert_eq!(*store.asked.borrow(), ["load", "append", "append"]);
        assert!(
            !heard
                .borrow()
                .contains(&News::Keeping(Keeping::Failed(StoreError::Full)))
        );
        assert_eq!(stored(&store), sheets(&["1"]));
    }

    #[test]
    fn two_failures_are_said_and_the_next_change_brings_everything() {
        let full = || Some(StoreError::Full);
        let store = Rc::new(Faulty::new(vec![], [None, full(), full()]));
        let (keeper, heard) = keeper(&store);
        keeper.push(vec![entry("1")]);
        assert_eq!(pollster::block_on(keeper.flush()), Err(StoreError::Full));
        assert_eq!(said(&heard), Keeping::Failed(StoreError::Full));
        let other = Entry::new("spacing", "change", Some(Typed::plain("k2tog")));
        keeper.push(vec![other.clone()]);
        assert_eq!(said(&heard), Keeping::Failed(StoreError::Full));
        pollster::block_on(keeper.run());
        assert_eq!(said(&heard), Keeping::Kept);
        let mut both = sheets(&["1"]);
        both.apply(&other);
        assert_eq!(stored(&store), both);
    }

    #[test]
    fn without_storage_the_page_goes_on_in_memory_and_says_so() {
        let denied = || Some(StoreError::Denied);
        let store = Rc::new(Faulty::new(vec![], [denied(), denied()]));
        let (keeper, heard) = keeper(&store);
        pollster::block_on(keeper.run());
        assert_eq!(said(&heard), Keeping::MemoryOnly(StoreError::Denied));
        // The storage comes back: what was typed meanwhile lies on top of what was found.
        keeper.push(vec![entry("1")]);
        pollster::block_on(keeper.run());
        assert_eq!(said(&heard), Keeping::Kept);
        assert!(heard.borrow().contains(&News::Loaded(sheets(&["1"]))));
        assert_eq!(stored(&store), sheets(&["1"]));
    }

    #[test]
    fn a_slow_load_is_said_and_still_welcome() {
        let found = vec![Line::Known(entry("132"))];
        let store = Rc::new(Faulty::new(found, []));
        let (keeper, heard) = keeper(&store);
        keeper.is_slow();
        assert_eq!(said(&heard), Keeping::MemoryOnly(StoreError::Slow));
        pollster::block_on(keeper.run());
        assert_eq!(said(&heard), Keeping::Kept);
        assert!(heard.borrow().contains(&News::Loaded(sheets(&["132"]))));
    }

    #[test]
    fn another_tabs_words_are_read_after_ours_are_kept() {
        let store = Rc::new(Faulty::new(vec![], []));
        let (keeper, heard) = keeper(&store);
        pollster::block_on(keeper.run());
        let theirs = Entry::new("spacing", "change", Some(Typed::plain("ssk")));
        pollster::block_on(store.append(vec![theirs.clone()])).unwrap();
        keeper.push(vec![entry("1")]);
        keeper.reload();
        pollster::block_on(keeper.run());
        let mut both = sheets(&["1"]);
        both.apply(&theirs);
        assert!(heard.borrow().contains(&News::Loaded(both)));
        assert_eq!(*store.asked.borrow(), ["load", "append", "append", "load"]);
    }

    #[test]
    fn a_failed_reload_takes_nothing_away() {
        let store = Rc::new(Faulty::new(vec![], [None, Some(StoreError::Denied)]));
        let (keeper, heard) = keeper(&store);
        pollster::block_on(keeper.run());
        keeper.reload();
        pollster::block_on(keeper.run());
        assert_eq!(said(&heard), Keeping::Kept);
    }

    #[test]
    fn a_long_log_is_shortened_and_says_the_same() {
        let long: Vec<Line> = (0..3_000).map(|n| Line::Known(entry(&n.to_string()))).collect();
        let store = Rc::new(Faulty::new(long, []));
        let (keeper, heard) = keeper(&store);
        pollster::block_on(keeper.run());
        assert_eq!(*store.asked.borrow(), ["load", "compact"]);
        assert_eq!(pollster::block_on(store.load()).unwrap().len(), 1);
        assert_eq!(stored(&store), sheets(&["2999"]));
        assert_eq!(said(&heard), Keeping::Kept);
    }

    #[test]
    fn a_log_that_cannot_be_shortened_is_not_a_knitters_trouble() {
        let long: Vec<Line> = (0..3_000).map(|n| Line::Known(entry(&n.to_string()))).collect();
        let store = Rc::new(Faulty::new(long, [None, Some(StoreError::Full)]));
        let (keeper, heard) = keeper(&store);
        pollster::block_on(keeper.run());
        keeper.push(vec![entry("1")]);
        pollster::block_on(keeper.run());
        assert_eq!(*store.asked.borrow(), ["load", "compact", "append"]);
        assert_eq!(said(&heard), Keeping::Kept);
    }

    #[test]
    fn a_guest_forgets_and_is_content() {
        let heard = Heard::default();
        let ear = heard.clone();
        let store = Memory::holding([entry("132")]);
        let keeper = Keeper::new(Box::new(store), move |news| ear.borrow_mut().push(news));
        assert_eq!(pollster::block_on(keeper.flush()), Ok(()));
        assert!(heard.borrow().contains(&News::Loaded(sheets(&["132"]))));
        assert_eq!(said(&heard), Keeping::MemoryOnly(StoreError::Guest));
    }
}

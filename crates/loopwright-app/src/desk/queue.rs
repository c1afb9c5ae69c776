//! What is to be done next against the store, and what may be said about it. A pure state machine: one job at a time,
//! everything typed meanwhile waits and goes in one batch, a failed job is tried once more, and nothing leaves the
//! queue before the store has said that it is kept.

use crate::store::{Entry, Line, Sheets, StoreError, fold, last_words};

/// A log shorter than this is not worth shortening.
const SHORT: usize = 2_000;

/// What the page may say about the storage.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Keeping {
    /// All that was typed is kept: the last transaction has completed.
    Kept,
    /// A change is on its way.
    Writing,
    /// The last changes are on this page but could not be kept. The next change tries them again.
    Failed(StoreError),
    /// There is no storage (yet): all works, and is forgotten when the page is closed.
    MemoryOnly(StoreError),
}

/// One step against the store.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Job {
    /// Read the whole log.
    Load,
    /// Add these.
    Append(Vec<Entry>),
    /// Shorten the log.
    Compact,
}

/// What a finished job brought.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Done {
    /// The log as it stands.
    Loaded(Vec<Line>),
    /// The batch is kept.
    Appended,
    /// The length of the shortened log.
    Compacted(usize),
}

/// The queue of one page. It begins with the wish to load.
pub struct Queue {
    waiting: Vec<Entry>,
    running: Option<Job>,
    load: bool,
    loaded: bool,
    compact: bool,
    second_try: bool,
    paused: bool,
    trouble: Option<StoreError>,
    forgets: Option<StoreError>,
    length: usize,
    long: usize,
}

impl Queue {
    /// A queue for a store that keeps, or forgets for the reason given.
    pub fn new(forgets: Option<StoreError>) -> Self {
        Self {
            waiting: Vec::new(),
            running: None,
            load: true,
            loaded: false,
            compact: false,
            second_try: false,
            paused: false,
            trouble: None,
            forgets,
            length: 0,
            long: SHORT,
        }
    }

    /// Takes changes in, and wakes a queue that had given up.
    pub fn push(&mut self, entries: Vec<Entry>) {
        self.waiting.extend(entries);
        self.wake();
    }

    /// Asks for the log to be read again, since another tab may have written.
    pub fn reload(&mut self) {
        self.load = true;
        self.wake();
    }

    /// Lets a queue that had given up try again.
    pub fn wake(&mut self) {
        self.paused = false;
    }

    /// The first load has taken longer than a knitter should wait. It may still arrive.
    pub fn is_slow(&mut self) {
        if !self.loaded && self.trouble.is_none() {
            self.trouble = Some(StoreError::Slow);
        }
    }

    /// The next job, or `None` while one runs, after giving up, or when all is done.
    ///
    /// Loading comes first once and later after appending, so that what is read holds what was typed here.
    pub fn next(&mut self) -> Option<Job> {
        if self.running.is_some() || self.paused {
            return None;
        }
        let job = if self.load && (!self.loaded || self.waiting.is_empty()) {
            self.load = false;
            Job::Load
        } else if !self.waiting.is_empty() {
            Job::Append(self.take_batch())
        } else if self.compact {
            Job::Compact
        } else {
            return None;
        };
        self.running = Some(job.clone());
        Some(job)
    }

    /// Takes the outcome of the running job; answers the sheets when it brought some.
    pub fn finish(&mut self, outcome: Result<Done, StoreError>) -> Option<Sheets> {
        let job = self.running.take();
        match outcome {
            Ok(done) => {
                self.second_try = false;
                self.succeed(job, done)
            }
            Err(error) => {
                self.fail(job, error);
                None
            }
        }
    }

    /// What may be said now.
    pub fn keeping(&self) -> Keeping {
        let idle = self.waiting.is_empty() && !matches!(self.running, Some(Job::Append(_)));
        match (&self.trouble, &self.forgets) {
            (Some(error), _) if self.loaded => Keeping::Failed(error.clone()),
            (Some(error), _) => Keeping::MemoryOnly(error.clone()),
            (None, Some(reason)) => Keeping::MemoryOnly(reason.clone()),
            (None, None) if self.loaded && idle => Keeping::Kept,
            (None, None) => Keeping::Writing,
        }
    }

    /// Whether a job is at work now.
    pub fn is_running(&self) -> bool {
        self.running.is_some()
    }

    fn take_batch(&mut self) -> Vec<Entry> {
        let batch = std::mem::take(&mut self.waiting);
        match self.trouble {
            Some(_) => last_words(batch),
            None => batch,
        }
    }

    fn succeed(&mut self, job: Option<Job>, done: Done) -> Option<Sheets> {
        match done {
            Done::Loaded(log) => {
                self.loaded = true;
                self.trouble = None;
                self.grow_to(log.len());
                let mut sheets = fold(&log);
                sheets.apply_all(&self.waiting);
                Some(sheets)
            }
            Done::Appended => {
                self.trouble = None;
                if let Some(Job::Append(batch)) = job {
                    self.grow_to(self.length + batch.len());
                }
                None
            }
            Done::Compacted(length) => {
                self.compact_no_more_until(length);
                None
            }
        }
    }

    fn fail(&mut self, job: Option<Job>, error: StoreError) {
        match job {
            Some(Job::Append(mut batch)) => {
                batch.append(&mut self.waiting);
                self.waiting = batch;
            }
            Some(Job::Load) if !self.loaded => self.load = true,
            // A reload that fails loses nothing, and a log that stays long is only long.
            Some(Job::Load) | None => return,
            Some(Job::Compact) => return self.compact_no_more_until(self.length),
        }
        if self.second_try {
            self.trouble = Some(error);
            self.paused = true;
        }
        self.second_try = !self.second_try;
    }

    fn grow_to(&mut self, length: usize) {
        self.length = length;
        self.compact = length > self.long;
    }

    fn compact_no_more_until(&mut self, length: usize) {
        self.length = length;
        self.long = SHORT.max(length.saturating_mul(2));
        self.compact = false;
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::store::Typed;

    fn entry(text: &str) -> Entry {
        Entry::new("spacing", "stitches", Some(Typed::plain(text)))
    }

    fn loaded() -> Queue {
        let mut queue = Queue::new(None);
        assert_eq!(queue.next(), Some(Job::Load));
        assert_eq!(queue.finish(Ok(Done::Loaded(vec![]))), Some(Sheets::default()));
        queue
    }

    #[test]
    fn what_is_typed_while_a_batch_is_on_its_way_goes_in_the_next() {
        let mut queue = loaded();
        queue.push(vec![entry("1")]);
        assert_eq!(queue.next(), Some(Job::Append(vec![entry("1")])));
        queue.push(vec![entry("13")]);
        queue.push(vec![entry("132")]);
        assert_eq!(queue.next(), None, "one job at a time");
        queue.finish(Ok(Done::Appended));
        assert_eq!(queue.keeping(), Keeping::Writing);
        assert_eq!(queue.next(), Some(Job::Append(vec![entry("13"), entry("132")])));
        assert_eq!(queue.keeping(), Keeping::Writing);
        queue.finish(Ok(Done::Appended));
        assert_eq!((queue.next(), queue.keeping()), (None, Keeping::Kept));
    }

    #[test]
    fn a_failed_batch_goes_again_before_what_came_later() {
        let mut queue = loaded();
        queue.push(vec![entry("1")]);
        queue.next();
        queue.push(vec![entry("13")]);
        queue.finish(Err(StoreError::Full));
        assert_eq!(queue.next(), Some(Job::Append(vec![entry("1"), entry("13")])));
        queue.finish(Err(StoreError::Full));
        assert_eq!(
            (queue.next(), queue.keeping()),
            (None, Keeping::Failed(StoreError::Full))
        );
    }

    #[test]
    fn after_a_failure_only_the_last_words_are_tried() {
        let mut queue = loaded();
        queue.push(vec![entry("much too long")]);
        for _ in 0..2 {
            queue.next();
            queue.finish(Err(StoreError::Full));
        }
        queue.push(vec![entry("short")]);
        assert_eq!(queue.next(), Some(Job::Append(vec![entry("short")])));
    }

    #[test]
    fn what_is_typed_during_a_load_lies_on_top_of_it() {
        let mut queue = Queue::new(None);
        queue.next();
        queue.push(vec![entry("2")]);
        let sheets = queue.finish(Ok(Done::Loaded(vec![Line::Known(entry("1"))])));
        let mut expected = Sheets::default();
        expected.apply(&entry("2"));
        assert_eq!(sheets, Some(expected));
        assert_eq!(queue.keeping(), Keeping::Writing);
    }

    #[test]
    fn a_guest_is_never_said_to_be_kept() {
        let mut queue = Queue::new(Some(StoreError::Guest));
        queue.next();
        queue.finish(Ok(Done::Loaded(vec![])));
        assert_eq!(queue.keeping(), Keeping::MemoryOnly(StoreError::Guest));
    }
}

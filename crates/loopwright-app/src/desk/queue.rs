//! What is to be done next against the store, and what may be said about it. A pure state machine: one job at a time,
//! everything typed meanwhile waits and goes in one batch, a failed job is tried once more, and nothing leaves the
//! queue before the store has said that it is kept.
//!
//! Where a newer version of the page has the storage nothing is tried any more. Where the storage was cleared nothing is
//! either, until she says that what is on the page is to be kept anew. After a write that failed it is in doubt whether the
//! later ones are kept, whatever the store says: until a copy was saved, and the log was seen on the disc to say what is on
//! the page.

use crate::store::{Entry, Line, Sheets, StoreError, fold, foreign_lines, last_words};

/// A log shorter than this is not worth shortening.
const SHORT: usize = 2_000;

/// What the page may say about the storage.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Keeping {
    /// All that was typed is kept: the last transaction has completed.
    Kept,
    /// A change is on its way.
    Writing,
    /// The store says that all is kept, but a write failed in this visit, and some browsers lose what came after.
    KeptInDoubt,
    /// A newer version of this page has the storage: nothing is written from here any more.
    Superseded {
        /// Whether all that was typed was kept before.
        is_all_kept: bool,
    },
    /// The storage was cleared. What was typed is on this page only, until she has it kept anew; and why that failed, if she
    /// has tried.
    Cleared(Option<StoreError>),
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
    /// Begin the log anew with these.
    WriteAnew(Vec<Entry>),
    /// See what is left of the log on the disc, and put back what is missing.
    Renew,
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
    /// The log as it stands on the disc.
    Renewed(Vec<Line>),
    /// The length of the shortened log.
    Compacted(usize),
}

/// The queue of one page. It begins with the wish to load.
pub struct Queue {
    /// What lies on the page: the log as it was read, with what was typed since on top.
    on_page: Sheets,
    waiting: Vec<Entry>,
    running: Option<Job>,
    load: bool,
    loaded: bool,
    compact: bool,
    /// Whether something in it is to be found there no longer.
    wants_shortening: bool,
    second_try: bool,
    paused: bool,
    trouble: Option<StoreError>,
    forgets: Option<StoreError>,
    is_superseded: bool,
    is_cleared: bool,
    /// Whether she wants what is on the page to be kept anew.
    wants_anew: bool,
    is_in_doubt: bool,
    /// Whether it is to be seen what is left on the disc.
    wants_renewal: bool,
    length: usize,
    long: usize,
    strange: usize,
}

impl Queue {
    /// A queue for a store that keeps, or forgets for the reason given.
    pub fn new(forgets: Option<StoreError>) -> Self {
        Self {
            on_page: Sheets::default(),
            waiting: Vec::new(),
            running: None,
            load: true,
            loaded: false,
            compact: false,
            wants_shortening: false,
            second_try: false,
            paused: false,
            trouble: None,
            forgets,
            is_superseded: false,
            is_cleared: false,
            wants_anew: false,
            is_in_doubt: false,
            wants_renewal: false,
            length: 0,
            long: SHORT,
            strange: 0,
        }
    }

    /// How many records of the log as it was read last are none that this version knows.
    pub const fn strange_records(&self) -> usize {
        self.strange
    }

    /// Takes changes in, and wakes a queue that had given up.
    pub fn push(&mut self, entries: Vec<Entry>) {
        self.on_page.apply_all(&entries);
        self.waiting.extend(entries);
        self.wake();
    }

    /// Asks for the log to be read again, since another tab may have written.
    pub fn reload(&mut self) {
        self.load = true;
        self.wake();
    }

    /// Has what no longer counts taken out of the log, however short that is.
    pub fn shorten(&mut self) {
        self.wants_shortening = true;
        self.wake();
    }

    /// Has all that is on the page kept anew, after the storage was cleared.
    pub fn write_anew(&mut self) {
        self.wants_anew = self.is_cleared;
        self.wake();
    }

    /// A copy of all that is on the page was saved: if the log on the disc says the same, nothing is in doubt any more. A copy
    /// that was saved while something could not be kept does not count: what is kept after it is in doubt again.
    pub fn copy_was_saved(&mut self) {
        if self.is_in_doubt && self.is_idle() {
            self.wants_renewal = true;
            self.wake();
        }
    }

    /// Whether it is in doubt what is kept.
    pub const fn is_in_doubt(&self) -> bool {
        self.is_in_doubt
    }

    /// Another window knows whether it is.
    pub const fn doubt(&mut self, is_in_doubt: bool) {
        self.is_in_doubt = is_in_doubt;
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
        if self.running.is_some() || self.paused || self.is_superseded {
            return None;
        }
        let job = if self.wants_anew {
            self.wants_anew = false;
            self.waiting.clear();
            Job::WriteAnew(self.on_page.entries())
        } else if self.is_cleared {
            return None;
        } else if self.wants_renewal {
            self.wants_renewal = false;
            Job::Renew
        } else if self.load && (!self.loaded || self.waiting.is_empty()) {
            self.load = false;
            Job::Load
        } else if !self.waiting.is_empty() {
            Job::Append(self.take_batch())
        } else if self.loaded && (self.compact || self.wants_shortening) {
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
        match (&self.trouble, &self.forgets) {
            _ if self.is_superseded && self.loaded => Keeping::Superseded {
                is_all_kept: self.is_idle(),
            },
            _ if self.is_superseded => Keeping::MemoryOnly(StoreError::Newer),
            (trouble, _) if self.is_cleared => Keeping::Cleared(trouble.clone()),
            (Some(error), _) if self.loaded => Keeping::Failed(error.clone()),
            (Some(error), _) => Keeping::MemoryOnly(error.clone()),
            (None, Some(reason)) => Keeping::MemoryOnly(reason.clone()),
            (None, None) if self.loaded && self.is_idle() && self.is_in_doubt => Keeping::KeptInDoubt,
            (None, None) if self.loaded && self.is_idle() => Keeping::Kept,
            (None, None) => Keeping::Writing,
        }
    }

    /// Whether nothing waits to be kept and nothing is on its way.
    fn is_idle(&self) -> bool {
        let is_writing = matches!(self.running, Some(Job::Append(_) | Job::WriteAnew(_)));
        self.waiting.is_empty() && !is_writing
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
                self.strange = foreign_lines(&log);
                let mut sheets = fold(&log);
                sheets.apply_all(&self.waiting);
                self.on_page = sheets.clone();
                Some(sheets)
            }
            Done::Renewed(log) => {
                self.grow_to(log.len());
                let mut sheets = fold(&log);
                sheets.apply_all(&self.waiting);
                // Nothing is taken from the page by a log that is in doubt.
                self.is_in_doubt = sheets != self.on_page;
                None
            }
            Done::Appended => {
                self.trouble = None;
                match job {
                    Some(Job::Append(batch)) => self.grow_to(self.length + batch.len()),
                    Some(Job::WriteAnew(batch)) => {
                        self.is_cleared = false;
                        self.grow_to(batch.len());
                    }
                    Some(Job::Load | Job::Renew | Job::Compact) | None => (),
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
        self.is_in_doubt |= puts_in_doubt(&job, &error);
        if let Some(Job::Append(mut batch)) = job.clone() {
            batch.append(&mut self.waiting);
            self.waiting = batch;
        }
        match (job, &error) {
            (_, StoreError::Newer) => return self.is_superseded = true,
            (_, StoreError::Cleared) => return self.note_cleared(),
            (Some(Job::Append(_)), _) => (),
            (Some(Job::Load), _) if !self.loaded => self.load = true,
            // A reload that fails loses nothing, and a log that stays long is only long.
            (Some(Job::Load | Job::Renew) | None, _) => return,
            (Some(Job::Compact), _) => return self.compact_no_more_until(self.length),
            // She may try again.
            (Some(Job::WriteAnew(_)), _) => return self.give_up(error),
        }
        if self.second_try {
            self.give_up(error);
        }
        self.second_try = !self.second_try;
    }

    fn give_up(&mut self, error: StoreError) {
        self.trouble = Some(error);
        self.paused = true;
    }

    /// What was kept is gone; what was tried before that is of no interest any more.
    fn note_cleared(&mut self) {
        self.is_cleared = true;
        self.trouble = None;
        self.second_try = false;
    }

    fn grow_to(&mut self, length: usize) {
        self.length = length;
        self.compact = length > self.long;
    }

    fn compact_no_more_until(&mut self, length: usize) {
        self.length = length;
        self.long = SHORT.max(length.saturating_mul(2));
        self.compact = false;
        self.wants_shortening = false;
    }
}

/// Whether after such a failure later writes may be lost, though the store says that they are kept.
const fn puts_in_doubt(job: &Option<Job>, error: &StoreError) -> bool {
    let is_write = matches!(job, Some(Job::Append(_) | Job::WriteAnew(_) | Job::Compact));
    is_write && matches!(error, StoreError::Full | StoreError::Broken(_))
}

#[cfg(test)]
mod tests;

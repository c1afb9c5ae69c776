//! The browser's own database: `loopwright`, version 1, one object store `log` with counted keys, values JSON text.
//!
//! The keys are counted up for as long as the database is there, also past a log that was shortened. So a log whose newest key
//! is lower than one that was seen is not the same: it was deleted under this page and begun anew. Shortening only deletes.
//!
//! Written over web-sys and not over a library of futures: the one that has a durability option loses the reason of
//! an aborted transaction, so that "no room left" could not be told from "broken", and it adds a fifth to the page.

mod connection;
mod records;
mod waiting;

use super::{Entry, Later, Line, Store, StoreError, json};
use connection::Connection;
use js_sys::{Date, Function, Object, Reflect};
use records::{Records, newest_key};
use std::cell::Cell;
use waiting::{completed, pause, unnamed, why};
use wasm_bindgen::JsCast;
use web_sys::{IdbDatabase, IdbObjectStore, IdbRequest, IdbTransaction};

const DATABASE: &str = "loopwright";
const LOG: &str = "log";
const VERSION: u32 = 1;
/// How long nobody may hold the storage until the browser has put it away: Chromium waits two seconds (as measured).
const UNTIL_PUT_AWAY_MS: u32 = 4_000;
/// The longest that another window waits for that: what was missing is put back, and put away once more.
const UNTIL_ALL_IS_THERE_MS: f64 = 9_000.0;

/// The log in the browser's database.
#[derive(Default)]
pub struct Idb {
    connection: Connection,
    /// The newest key of the log that was seen.
    newest: Cell<f64>,
    /// Until when another window needs that nobody holds the storage, in milliseconds since 1970.
    quiet_until: Cell<f64>,
}

impl Idb {
    fn settle<T>(&self, result: Result<T, StoreError>) -> Result<T, StoreError> {
        if result.is_err() {
            self.connection.give_up();
        }
        result
    }

    async fn begin(&self, mode: &str) -> Result<IdbTransaction, StoreError> {
        let quiet = self.quiet_until.get() - Date::now();
        if quiet > 0.0 {
            pause(quiet.min(UNTIL_ALL_IS_THERE_MS) as u32).await;
        }
        begin(&self.connection.database().await?, mode)
    }

    /// Whether the log is still the one that was seen; if so, its newest key is seen as well.
    async fn look_at(&self, log: &IdbObjectStore) -> Result<(), StoreError> {
        let newest = newest_key(log).await?;
        if newest < self.newest.get() {
            return Err(StoreError::Cleared);
        }
        self.newest.set(newest);
        Ok(())
    }

    async fn try_load(&self) -> Result<Vec<Line>, StoreError> {
        let log = log_of(&self.begin("readonly").await?)?;
        self.look_at(&log).await?;
        Ok(Records::read(&log).await?.lines)
    }

    async fn try_append(&self, entries: Vec<Entry>) -> Result<(), StoreError> {
        let transaction = self.begin("readwrite").await?;
        self.look_at(&log_of(&transaction)?).await?;
        let last = write_all(&transaction, &entries)?;
        self.complete(&transaction, last).await
    }

    /// Reads and deletes within one transaction: no other tab can write in between, and a fall leaves the long log as it
    /// was. What stays is not touched, so that strange records stay just as strange.
    async fn try_compact(&self) -> Result<usize, StoreError> {
        let transaction = self.begin("readwrite").await?;
        let log = log_of(&transaction)?;
        self.look_at(&log).await?;
        let superfluous = Records::read(&log).await?.superfluous()?;
        for range in superfluous.ranges {
            or_abort(&transaction, log.delete(&range).map_err(why))?;
        }
        completed(&transaction).await?;
        Ok(superfluous.left)
    }

    /// From here on it may be another log than the one that was seen.
    async fn try_anew(&self, entries: Vec<Entry>) -> Result<(), StoreError> {
        let seen = self.newest.replace(0.0);
        let written = self.try_append(entries).await;
        if written.is_err() {
            self.newest.set(seen);
        }
        written
    }

    /// Some browsers (Chromium, as seen) go on after a write that failed as if nothing had been, also where it is read again,
    /// and have lost everything at the next start. Only once nobody holds the storage do they put it away, and what is opened
    /// then is what there is on the disc.
    async fn try_renew(&self) -> Result<Vec<Line>, StoreError> {
        let log = log_of(&self.begin("readonly").await?)?;
        self.look_at(&log).await?;
        let before = Records::read(&log).await?;
        self.put_away().await;
        if self.put_back(&before).await? {
            self.put_away().await;
        }
        let log = log_of(&self.begin("readonly").await?)?;
        let found = Records::read(&log).await?;
        self.newest.set(newest_key(&log).await?);
        Ok(found.lines)
    }

    async fn put_away(&self) {
        self.connection.give_up();
        pause(UNTIL_PUT_AWAY_MS).await;
    }

    /// Puts back what is missing; whether anything was.
    async fn put_back(&self, before: &Records) -> Result<bool, StoreError> {
        let transaction = self.begin("readwrite").await?;
        let log = log_of(&transaction)?;
        let now = Records::read(&log).await?;
        let put = or_abort(&transaction, before.put_missing(&log, &now))?;
        completed(&transaction).await?;
        Ok(put)
    }

    /// Waits until it is kept; the key of what was written last is the newest.
    async fn complete(&self, transaction: &IdbTransaction, last: Option<IdbRequest>) -> Result<(), StoreError> {
        completed(transaction).await?;
        let key = last.and_then(|last| last.result().ok()?.as_f64());
        self.newest.set(key.unwrap_or(self.newest.get()));
        Ok(())
    }
}

impl Store for Idb {
    fn load(&self) -> Later<'_, Vec<Line>> {
        Box::pin(async { self.settle(self.try_load().await) })
    }

    fn append(&self, entries: Vec<Entry>) -> Later<'_, ()> {
        Box::pin(async { self.settle(self.try_append(entries).await) })
    }

    fn compact(&self) -> Later<'_, usize> {
        Box::pin(async { self.settle(self.try_compact().await) })
    }

    fn write_anew(&self, entries: Vec<Entry>) -> Later<'_, ()> {
        Box::pin(async { self.settle(self.try_anew(entries).await) })
    }

    fn renew(&self) -> Later<'_, Vec<Line>> {
        Box::pin(async { self.settle(self.try_renew().await) })
    }

    fn let_go(&self) {
        self.connection.give_up();
        self.quiet_until.set(Date::now() + UNTIL_ALL_IS_THERE_MS);
    }

    fn when_lost(&self, tell: Box<dyn Fn()>) {
        self.connection.when_lost(tell);
    }
}

/// Begins a transaction that counts as complete only when its bytes are on the disc.
fn begin(database: &IdbDatabase, mode: &str) -> Result<IdbTransaction, StoreError> {
    // web-sys has this option only behind an unstable switch; an older browser ignores it.
    let options = Object::new();
    Reflect::set(&options, &"durability".into(), &"strict".into()).map_err(why)?;
    let transaction: Function = Reflect::get(database, &"transaction".into())
        .and_then(|function| function.dyn_into())
        .map_err(why)?;
    transaction
        .call3(database, &LOG.into(), &mode.into(), &options)
        .and_then(|transaction| transaction.dyn_into())
        .map_err(why)
}

fn log_of(transaction: &IdbTransaction) -> Result<IdbObjectStore, StoreError> {
    transaction.object_store(LOG).map_err(why)
}

/// All entries or none: without the abort a browser would keep the ones before the failure. Answers the last request.
fn write_all(transaction: &IdbTransaction, entries: &[Entry]) -> Result<Option<IdbRequest>, StoreError> {
    let written = log_of(transaction).and_then(|log| {
        entries.iter().try_fold(None, |_, entry| {
            let record = json::record(entry).ok_or_else(unnamed)?;
            log.add(&record.into()).map(Some).map_err(why)
        })
    });
    or_abort(transaction, written)
}

fn or_abort<T>(transaction: &IdbTransaction, done: Result<T, StoreError>) -> Result<T, StoreError> {
    if done.is_err() {
        let _ = transaction.abort();
    }
    done
}

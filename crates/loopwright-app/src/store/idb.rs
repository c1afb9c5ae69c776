//! The browser's own database: `loopwright`, version 1, one object store `log` with counted keys, values JSON text.
//!
//! The keys are counted up for as long as the database is there, also past a log that was shortened. So a log whose newest key
//! is lower than one that was seen is not the same: it was deleted under this page and begun anew.
//!
//! Written over web-sys and not over a library of futures: the one that has a durability option loses the reason of
//! an aborted transaction, so that "no room left" could not be told from "broken", and it adds a fifth to the page.

mod connection;
mod waiting;

use super::{Entry, Later, Line, Store, StoreError, compact, json};
use connection::Connection;
use js_sys::{Array, Function, Object, Reflect};
use std::cell::Cell;
use waiting::{answer, completed, unnamed, why};
use wasm_bindgen::{JsCast, JsValue};
use web_sys::{IdbCursor, IdbCursorDirection, IdbDatabase, IdbObjectStore, IdbRequest, IdbTransaction};

const DATABASE: &str = "loopwright";
const LOG: &str = "log";
const VERSION: u32 = 1;

/// The log in the browser's database.
#[derive(Default)]
pub struct Idb {
    connection: Connection,
    /// The newest key of the log that was seen.
    newest: Cell<f64>,
}

impl Idb {
    fn settle<T>(&self, result: Result<T, StoreError>) -> Result<T, StoreError> {
        if result.is_err() {
            self.connection.give_up();
        }
        result
    }

    async fn begin(&self, mode: &str) -> Result<IdbTransaction, StoreError> {
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
        read_all(&log).await
    }

    async fn try_append(&self, entries: Vec<Entry>) -> Result<(), StoreError> {
        let transaction = self.begin("readwrite").await?;
        self.look_at(&log_of(&transaction)?).await?;
        let lines: Vec<Line> = entries.into_iter().map(Line::Known).collect();
        let last = write_all(&transaction, &lines)?;
        self.complete(&transaction, last).await
    }

    /// Reads, clears and writes within one transaction: no other tab can write in between, and a fall leaves the
    /// long log as it was.
    async fn try_compact(&self) -> Result<usize, StoreError> {
        let transaction = self.begin("readwrite").await?;
        let log = log_of(&transaction)?;
        self.look_at(&log).await?;
        let short = compact(read_all(&log).await?);
        log.clear().map_err(why)?;
        let last = write_all(&transaction, &short)?;
        self.complete(&transaction, last).await?;
        Ok(short.len())
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

async fn read_all(log: &IdbObjectStore) -> Result<Vec<Line>, StoreError> {
    let records = answer(&log.get_all().map_err(why)?).await?;
    Ok(Array::from(&records).iter().map(|record| json::line(&record)).collect())
}

/// The newest key; nought where the log is empty.
async fn newest_key(log: &IdbObjectStore) -> Result<f64, StoreError> {
    let last_first = log.open_key_cursor_with_range_and_direction(&JsValue::NULL, IdbCursorDirection::Prev);
    let cursor = answer(&last_first.map_err(why)?).await?.dyn_into::<IdbCursor>().ok();
    let key = cursor.and_then(|cursor| cursor.key().ok()?.as_f64());
    Ok(key.unwrap_or_default())
}

/// All lines or none: without the abort a browser would keep the ones before the failure. Answers the last request.
fn write_all(transaction: &IdbTransaction, lines: &[Line]) -> Result<Option<IdbRequest>, StoreError> {
    let written = log_of(transaction).and_then(|log| {
        lines.iter().try_fold(None, |_, line| {
            let record = json::record(line).ok_or_else(unnamed)?;
            log.add(&record.into()).map(Some).map_err(why)
        })
    });
    if written.is_err() {
        let _ = transaction.abort();
    }
    written
}

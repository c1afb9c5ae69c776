//! The browser's own database: `loopwright`, version 1, one object store `log` with counted keys, values JSON text.
//!
//! Written over web-sys and not over a library of futures: the one that has a durability option loses the reason of
//! an aborted transaction, so that "no room left" could not be told from "broken", and it adds a fifth to the page.

use super::{Entry, Later, Line, Store, StoreError, compact, json};
use futures_channel::oneshot;
use gloo_events::EventListener;
use js_sys::{Array, Error, Function, Object, Reflect};
use std::cell::RefCell;
use std::rc::Rc;
use wasm_bindgen::{JsCast, JsValue};
use web_sys::{
    DomException, EventTarget, IdbDatabase, IdbFactory, IdbObjectStore, IdbObjectStoreParameters, IdbOpenDbRequest,
    IdbRequest, IdbTransaction,
};

const DATABASE: &str = "loopwright";
const LOG: &str = "log";

/// The log in the browser's database. The connection is opened at first need and again after any failure, since
/// browsers drop connections of pages that slept.
#[derive(Default)]
pub struct Idb {
    connection: RefCell<Option<IdbDatabase>>,
}

impl Idb {
    async fn database(&self) -> Result<IdbDatabase, StoreError> {
        let open = self.connection.borrow().clone();
        match open {
            Some(database) => Ok(database),
            None => {
                let database = open_database().await?;
                self.connection.replace(Some(database.clone()));
                Ok(database)
            }
        }
    }

    /// After a failure the connection is not trusted any more: the next step opens a new one.
    fn settle<T>(&self, result: Result<T, StoreError>) -> Result<T, StoreError> {
        if result.is_err()
            && let Some(database) = self.connection.take()
        {
            database.close();
        }
        result
    }

    async fn try_load(&self) -> Result<Vec<Line>, StoreError> {
        let transaction = begin(&self.database().await?, "readonly")?;
        read_all(&log_of(&transaction)?).await
    }

    async fn try_append(&self, entries: Vec<Entry>) -> Result<(), StoreError> {
        let transaction = begin(&self.database().await?, "readwrite")?;
        let lines: Vec<Line> = entries.into_iter().map(Line::Known).collect();
        write_all(&transaction, &lines)?;
        completed(&transaction).await
    }

    /// Reads, clears and writes within one transaction: no other tab can write in between, and a fall leaves the
    /// long log as it was.
    async fn try_compact(&self) -> Result<usize, StoreError> {
        let transaction = begin(&self.database().await?, "readwrite")?;
        let log = log_of(&transaction)?;
        let short = compact(read_all(&log).await?);
        log.clear().map_err(why)?;
        write_all(&transaction, &short)?;
        completed(&transaction).await?;
        Ok(short.len())
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
}

async fn open_database() -> Result<IdbDatabase, StoreError> {
    let request = factory()?.open_with_u32(DATABASE, 1).map_err(why)?;
    let upgrade = make_the_log(&request);
    let result = answer(&request).await;
    drop(upgrade);
    let database: IdbDatabase = result?.dyn_into().map_err(why)?;
    give_way_to_newer(&database);
    Ok(database)
}

fn factory() -> Result<IdbFactory, StoreError> {
    match gloo_utils::window().indexed_db() {
        Ok(Some(factory)) => Ok(factory),
        Ok(None) | Err(_) => Err(StoreError::Denied),
    }
}

fn make_the_log(request: &IdbOpenDbRequest) -> EventListener {
    let opening = request.clone();
    EventListener::once(request, "upgradeneeded", move |_| {
        let counted = IdbObjectStoreParameters::new();
        counted.set_auto_increment(true);
        if let Ok(result) = opening.result()
            && let Some(database) = result.dyn_ref::<IdbDatabase>()
        {
            // A refusal shows as a missing store in the first transaction.
            let _ = database.create_object_store_with_optional_parameters(LOG, &counted);
        }
    })
}

/// A later version of the app in another tab must be able to rebuild the database while this tab is open.
fn give_way_to_newer(database: &IdbDatabase) {
    let ours = database.clone();
    EventListener::once(database, "versionchange", move |_| ours.close()).forget();
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

/// All lines or none: without the abort a browser would keep the ones before the failure.
fn write_all(transaction: &IdbTransaction, lines: &[Line]) -> Result<(), StoreError> {
    let written = log_of(transaction).and_then(|log| {
        lines.iter().try_for_each(|line| {
            let record = json::record(line).ok_or_else(unnamed)?;
            log.add(&record.into()).map(|_| ()).map_err(why)
        })
    });
    if written.is_err() {
        let _ = transaction.abort();
    }
    written
}

async fn answer(request: &IdbRequest) -> Result<JsValue, StoreError> {
    if first_event(request, "success", "error").await {
        request.result().map_err(why)
    } else {
        Err(request.error().ok().flatten().map_or_else(unnamed, named))
    }
}

async fn completed(transaction: &IdbTransaction) -> Result<(), StoreError> {
    if first_event(transaction, "complete", "abort").await {
        Ok(())
    } else {
        Err(transaction.error().map_or_else(unnamed, named))
    }
}

/// Waits for the good or the bad event, whichever comes first; true for the good one.
async fn first_event(target: &EventTarget, good: &'static str, bad: &'static str) -> bool {
    let (send, receive) = oneshot::channel();
    let send = Rc::new(RefCell::new(Some(send)));
    let listen = |name: &'static str, answer: bool| {
        let send = send.clone();
        EventListener::once(target, name, move |_| {
            if let Some(send) = send.take() {
                let _ = send.send(answer);
            }
        })
    };
    let _listeners = (listen(good, true), listen(bad, false));
    receive.await.unwrap_or(false)
}

fn why(thrown: JsValue) -> StoreError {
    match thrown.dyn_into::<DomException>() {
        Ok(exception) => named(exception),
        Err(other) => match other.dyn_into::<Error>() {
            Ok(error) => StoreError::Broken(error.message().into()),
            Err(_) => unnamed(),
        },
    }
}

fn named(exception: DomException) -> StoreError {
    match exception.name().as_str() {
        "QuotaExceededError" => StoreError::Full,
        "SecurityError" | "NotAllowedError" => StoreError::Denied,
        name => StoreError::Broken([name, ": ", &exception.message()].concat()),
    }
}

fn unnamed() -> StoreError {
    StoreError::Broken("the storage stopped without a reason".into())
}

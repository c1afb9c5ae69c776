//! The connection to the database: opened at first need and again after any failure, since browsers drop connections of
//! pages that slept; and given up when another window wants the database to itself. A newer version of the page rebuilds
//! it, and this page must not open it again; who clears the storage deletes it.

use super::waiting::{answer, why};
use super::{DATABASE, LOG, VERSION};
use crate::store::StoreError;
use gloo_events::EventListener;
use std::cell::{Cell, RefCell};
use std::rc::Rc;
use wasm_bindgen::JsCast;
use web_sys::{IdbDatabase, IdbFactory, IdbObjectStoreParameters, IdbOpenDbRequest, IdbVersionChangeEvent};

/// The connection, if there is one.
#[derive(Default)]
pub struct Connection(Rc<Held>);

#[derive(Default)]
struct Held {
    database: RefCell<Option<IdbDatabase>>,
    /// Whether a newer version of the page has the database.
    is_superseded: Cell<bool>,
    /// Who hears that the connection was lost.
    tell: RefCell<Option<Box<dyn Fn()>>>,
}

impl Connection {
    /// The database, opened where it is not.
    pub async fn database(&self) -> Result<IdbDatabase, StoreError> {
        if self.0.is_superseded.get() {
            return Err(StoreError::Newer);
        }
        let open = self.0.database.borrow().clone();
        match open {
            Some(database) => Ok(database),
            None => {
                let database = open_database().await?;
                self.0.database.replace(Some(database.clone()));
                listen(&database, &self.0);
                Ok(database)
            }
        }
    }

    /// After a failure the connection is not trusted any more: the next step opens a new one.
    pub fn give_up(&self) {
        self.0.close();
    }

    /// Has somebody hear when the connection is lost.
    pub fn when_lost(&self, tell: Box<dyn Fn()>) {
        self.0.tell.replace(Some(tell));
    }
}

impl Held {
    fn close(&self) {
        if let Some(database) = self.database.take() {
            database.close();
        }
    }

    fn lose(&self) {
        self.close();
        if let Some(tell) = &*self.tell.borrow() {
            tell();
        }
    }
}

async fn open_database() -> Result<IdbDatabase, StoreError> {
    let request = factory()?.open_with_u32(DATABASE, VERSION).map_err(why)?;
    let upgrade = make_the_log(&request);
    let result = answer(&request).await;
    drop(upgrade);
    result?.dyn_into().map_err(why)
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

/// Another window that wants to rebuild or delete the database waits until this one lets go of it. A browser that clears the
/// storage asks nobody, and closes the connection.
fn listen(database: &IdbDatabase, held: &Rc<Held>) {
    let (wanted, closed) = (held.clone(), held.clone());
    EventListener::once(database, "versionchange", move |event| {
        let event: &IdbVersionChangeEvent = event.unchecked_ref();
        // There is no new version where it is to be deleted.
        wanted.is_superseded.set(event.new_version().is_some());
        wanted.lose();
    })
    .forget();
    EventListener::once(database, "close", move |_| closed.lose()).forget();
}

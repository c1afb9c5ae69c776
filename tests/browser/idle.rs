//! Browsers that wait for another scenario. Firefox takes seconds of a processor to start, and to a scenario on an address of
//! its own one that has played others is as good as new; one in which a scenario failed is not used again.

use crate::folder::Folder;
use anyhow::Result;
use loopwright_tests::{company::Afterwards, firefox::Firefox};
use serde_json::json;
use std::sync::{Mutex, PoisonError};

static WAITING: Mutex<Vec<Firefox>> = Mutex::new(Vec::new());

/// One that waits, or another one.
pub async fn firefox() -> Result<Firefox> {
    let waiting = WAITING.lock().unwrap_or_else(PoisonError::into_inner).pop();
    match waiting {
        Some(firefox) => Ok(firefox),
        // It outlives the scenario, and its folder with it.
        None => Firefox::start(&Folder::lasting()?, &json!({}), Afterwards::Goes).await,
    }
}

/// Has one wait for another scenario; one that cannot be cleared is ended.
pub async fn rest(firefox: Firefox) {
    if firefox.begin_anew().await.is_ok() {
        WAITING.lock().unwrap_or_else(PoisonError::into_inner).push(firefox);
    }
}

//! The records of the log, read some thousands at a time, each with the key under which it stands.
//!
//! Ours stand under counted keys, texts all of them. Whatever else somebody put there, under whatever key, is a foreign line:
//! it is never written to and never deleted.

use super::waiting::{answer, why};
use crate::store::{Line, StoreError, json, needed};
use js_sys::{Array, Number};
use std::collections::BTreeSet;
use wasm_bindgen::{JsCast, JsValue};
use web_sys::{IdbCursor, IdbCursorDirection, IdbKeyRange, IdbObjectStore};

/// How many records are read at a time: one alone is slow, and all of them at once are too much where there are many.
const AT_A_TIME: u32 = 10_000;

/// A log with its keys.
#[derive(Default)]
pub struct Records {
    /// What it says, oldest first.
    pub lines: Vec<Line>,
    /// The keys as they were read, `AT_A_TIME` in each list but the last.
    keys: Vec<Array>,
    /// What stands under them.
    values: Vec<Array>,
}

/// What a log says as well without.
pub struct Superfluous {
    /// The ranges of keys under which nothing stands that is needed.
    pub ranges: Vec<IdbKeyRange>,
    /// How many records are left.
    pub left: usize,
}

impl Records {
    /// Reads all of it.
    pub async fn read(log: &IdbObjectStore) -> Result<Self, StoreError> {
        let mut records = Self::default();
        let mut range = JsValue::UNDEFINED;
        loop {
            let keys = log.get_all_keys_with_key_and_limit(&range, AT_A_TIME).map_err(why)?;
            let values = log.get_all_with_key_and_limit(&range, AT_A_TIME).map_err(why)?;
            let keys: Array = answer(&keys).await?.dyn_into().map_err(why)?;
            let values: Array = answer(&values).await?.dyn_into().map_err(why)?;
            let count = keys.length();
            let last = keys.get(count.saturating_sub(1));
            records.take(keys, values);
            if count < AT_A_TIME {
                return Ok(records);
            }
            range = IdbKeyRange::lower_bound_with_open(&last, true).map_err(why)?.into();
        }
    }

    fn take(&mut self, keys: Array, values: Array) {
        // Numbers come before all other keys: where the last is one of ours all of them are.
        let all_ours = is_ours(&keys.get(keys.length().saturating_sub(1)));
        let line = |(key, value): (JsValue, JsValue)| match all_ours || is_ours(&key) {
            true => json::line(&value),
            false => Line::Foreign(String::new()),
        };
        self.lines.extend(keys.iter().zip(values.iter()).map(line));
        self.keys.push(keys);
        self.values.push(values);
    }

    /// What is superfluous. The newest of our keys is needed, whatever stands there: by it a log is known as the one that was
    /// seen.
    pub fn superfluous(&self) -> Result<Superfluous, StoreError> {
        let mut needed = needed(&self.lines);
        let newest = (0..needed.len()).rev().find(|place| is_ours(&self.key(*place)));
        if let Some(newest) = newest {
            needed[newest] = true;
        }
        let mut ranges = Vec::new();
        let mut place = 0;
        for run in needed.chunk_by(|one, next| one == next) {
            if !run[0] {
                ranges.push(self.range(place, place + run.len() - 1)?);
            }
            place += run.len();
        }
        let left = needed.into_iter().filter(|is_needed| *is_needed).count();
        Ok(Superfluous { ranges, left })
    }

    /// Puts into a log what of this one is missing there, each record just as it was; answers whether anything was. Where it is
    /// another log, begun after this one was lost, what stands there follows.
    pub fn put_missing(&self, log: &IdbObjectStore, now: &Self) -> Result<bool, StoreError> {
        let is_another = now.newest() < self.newest();
        if is_another {
            log.clear().map_err(why)?;
        }
        let there: BTreeSet<u64> = now.ours().map(f64::to_bits).collect();
        let mut has_put = false;
        for (key, value) in self.all() {
            let is_there = key.as_f64().is_some_and(|key| there.contains(&key.to_bits()));
            if is_another || !is_there {
                log.put_with_key(&value, &key).map_err(why)?;
                has_put |= is_another || is_ours(&key);
            }
        }
        for (key, value) in now.all().filter(|_| is_another) {
            match is_ours(&key) {
                true => log.add(&value),
                false => log.put_with_key(&value, &key),
            }
            .map_err(why)?;
        }
        Ok(has_put)
    }

    fn all(&self) -> impl Iterator<Item = (JsValue, JsValue)> {
        let lists = self.keys.iter().zip(&self.values);
        lists.flat_map(|(keys, values)| keys.iter().zip(values.iter()))
    }

    fn ours(&self) -> impl Iterator<Item = f64> {
        let keys = self.keys.iter().flat_map(Array::iter);
        keys.filter(is_ours).filter_map(|key| key.as_f64())
    }

    fn newest(&self) -> f64 {
        self.ours().last().unwrap_or_default()
    }

    fn range(&self, first: usize, last: usize) -> Result<IdbKeyRange, StoreError> {
        IdbKeyRange::bound(&self.key(first), &self.key(last)).map_err(why)
    }

    fn key(&self, place: usize) -> JsValue {
        let at_a_time = AT_A_TIME as usize;
        let within = u32::try_from(place % at_a_time).unwrap_or_default();
        self.keys
            .get(place / at_a_time)
            .map_or(JsValue::UNDEFINED, |keys| keys.get(within))
    }
}

/// Whether a key is one that the database counts up to by itself.
fn is_ours(key: &JsValue) -> bool {
    key.as_f64().is_some_and(|key| key <= Number::MAX_SAFE_INTEGER)
}

/// The newest of our keys; nought where there is none.
pub async fn newest_key(log: &IdbObjectStore) -> Result<f64, StoreError> {
    let ours = IdbKeyRange::upper_bound(&Number::MAX_SAFE_INTEGER.into()).map_err(why)?;
    let last_first = log.open_key_cursor_with_range_and_direction(&ours, IdbCursorDirection::Prev);
    let cursor = answer(&last_first.map_err(why)?).await?.dyn_into::<IdbCursor>().ok();
    let key = cursor.and_then(|cursor| cursor.key().ok()?.as_f64());
    Ok(key.unwrap_or_default())
}

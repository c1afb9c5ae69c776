//! What may be said about the storage, in the footer of every page and on the page about it.

use crate::desk::{Keeping, Persistence};
use crate::one_file;
use crate::store::StoreError;
use crate::words::page as words;
use std::borrow::Cow;

/// Whether what was typed is kept, in few words.
pub fn keeping(keeping: &Keeping) -> String {
    match keeping {
        Keeping::Kept if one_file::is_opened() => words::KEPT_BESIDE_FILE.into(),
        Keeping::Kept => words::KEPT.into(),
        Keeping::Writing => words::KEEPING.into(),
        Keeping::KeptInDoubt => words::KEPT_IN_DOUBT.into(),
        Keeping::Superseded { is_all_kept: true } => words::SUPERSEDED.into(),
        Keeping::Superseded { is_all_kept: false } => words::SUPERSEDED_NOT_KEPT.into(),
        Keeping::Cleared(None) => words::CLEARED.into(),
        Keeping::Cleared(Some(why)) => words::cleared_and_not_kept(&reason(why)),
        Keeping::Failed(why) => words::not_kept_yet(&reason(why)),
        Keeping::MemoryOnly(StoreError::Guest) => words::NOTHING_KEPT_INSIDE.into(),
        Keeping::MemoryOnly(StoreError::Newer) => words::KEPT_BY_NEWER.into(),
        Keeping::MemoryOnly(why) => words::kept_in_memory_only(&reason(why)),
    }
}

fn reason(why: &StoreError) -> Cow<'static, str> {
    match why {
        StoreError::Denied => words::STORAGE_DENIED.into(),
        StoreError::Full => words::STORAGE_FULL.into(),
        StoreError::Slow => words::STORAGE_SLOW.into(),
        StoreError::Newer => words::STORAGE_NEWER.into(),
        StoreError::Cleared => words::STORAGE_CLEARED.into(),
        StoreError::Dropped => words::STORAGE_DROPPED.into(),
        StoreError::Guest => words::STORAGE_INSIDE.into(),
        StoreError::Broken(what) => words::storage_broken(what).into(),
    }
}

/// Whether the browser will forget.
pub const fn persistence(persistence: Persistence) -> &'static str {
    match persistence {
        Persistence::Granted => words::WILL_NOT_FORGET,
        Persistence::Refused => words::MAY_FORGET,
        Persistence::Unknown => words::SOME_FORGET,
    }
}

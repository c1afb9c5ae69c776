//! A folder of a test's own, gone when the test is over.

use anyhow::Result;
use std::{
    env, fs,
    path::{Path, PathBuf},
    process,
    sync::atomic::{AtomicU32, Ordering},
    thread,
    time::Duration,
};

/// A folder that is removed when this is dropped.
pub struct Folder(PathBuf);

impl Folder {
    /// A new, empty one.
    pub fn new() -> Result<Self> {
        Ok(Self(Self::lasting()?))
    }

    /// The same, to be cleared away by whoever lives in it.
    pub fn lasting() -> Result<PathBuf> {
        static NEXT: AtomicU32 = AtomicU32::new(0);
        let number = NEXT.fetch_add(1, Ordering::Relaxed);
        let place = env::temp_dir().join(format!("loopwright-browser-{}-{number}", process::id()));
        fs::create_dir_all(&place)?;
        Ok(place)
    }

    /// Where it is.
    pub fn path(&self) -> &Path {
        &self.0
    }
}

impl Drop for Folder {
    fn drop(&mut self) {
        // The helpers of a browser that was just ended may still write for a moment.
        for _ in 0..40 {
            if fs::remove_dir_all(&self.0).is_ok() || !self.0.exists() {
                return;
            }
            thread::sleep(Duration::from_millis(50));
        }
    }
}

//! A folder for the attempts of one test, gone when the test is over.

use std::fs;
use std::path::{Path, PathBuf};
use std::sync::atomic::{AtomicU32, Ordering};

/// How many folders this process has had.
static COUNT: AtomicU32 = AtomicU32::new(0);

/// An empty folder that is removed when it is dropped.
#[derive(Debug)]
pub struct Folder(PathBuf);

impl Folder {
    /// A fresh one.
    pub fn fresh() -> Self {
        let number = COUNT.fetch_add(1, Ordering::Relaxed);
        let name = format!("attempts-{}-{number}", std::process::id());
        let path = std::env::temp_dir().join(name);
        fs::create_dir_all(&path).expect("a folder can be made among passing files");
        Self(path)
    }

    /// Where it is.
    pub fn path(&self) -> &Path {
        &self.0
    }
}

impl Drop for Folder {
    fn drop(&mut self) {
        // A file that another process holds open may keep it; then the system clears it away.
        let _removed = fs::remove_dir_all(&self.0);
    }
}

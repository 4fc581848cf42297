//! Where attempts are kept: the first free number in a directory, never over an old one.

use std::fs::{self, File, OpenOptions, TryLockError};
use std::io;
use std::path::{Path, PathBuf};

/// The directory of attempts, beside where the program runs.
pub const DIRECTORY: &str = "attempts";

/// The ending of an attempt's file name.
pub const ENDING: &str = "attempt";

/// More attempts at one scenario than one directory should hold.
const MOST: u32 = 100_000;

/// Makes a new file; one that exists is never overwritten. Makes its directory if it is missing.
pub(super) fn new_file(path: &Path) -> io::Result<File> {
    if let Some(directory) = path.parent() {
        fs::create_dir_all(directory)?;
    }
    // Read as well: a recording that is taken up again is read from the same handle.
    OpenOptions::new()
        .read(true)
        .write(true)
        .create_new(true)
        .open(path)
}

/// The last part of a path, as a person reads it.
pub(super) fn file_name(path: &Path) -> String {
    let name = path.file_name().unwrap_or_default();
    name.to_string_lossy().into_owned()
}

/// Takes a journal for oneself, as long as the file is open; `false`: somebody else has it.
///
/// On Windows a file that is taken cannot even be read by others, so there it is not.
pub(super) fn take(file: &File) -> bool {
    !(cfg!(unix) && matches!(file.try_lock(), Err(TryLockError::WouldBlock)))
}

/// Makes the first free of `NAME-1.attempt`, `NAME-2.attempt` and so on. Several can do so at the
/// same time: each gets its own.
pub(super) fn first_free(directory: &Path, name: &str) -> io::Result<(PathBuf, File)> {
    for number in 1..=MOST {
        let path = directory.join(format!("{name}-{number}.{ENDING}"));
        match new_file(&path) {
            Ok(file) => return Ok((path, file)),
            Err(e) if e.kind() == io::ErrorKind::AlreadyExists => {}
            Err(e) => return Err(e),
        }
    }
    Err(io::Error::other("the directory is full of attempts"))
}

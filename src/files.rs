//! Reading files: regular files only, up to a limit, and text in the encodings of text editors.
//!
//! Every file that the program reads comes through here. A pipe, a device or a folder gives an
//! error and never blocks; a file without end stops at its limit.

use std::fs::{self, File, Metadata, OpenOptions};
use std::io::{self, Read};
use std::path::Path;
use thiserror::Error;

/// The most that is read of a scenario, a unit, a procedure or the settings, bytes.
pub const TEXT_MAX: u64 = 1 << 20;

/// The most that is read of an attempt, bytes: days of simulated time.
pub const ATTEMPT_MAX: u64 = 64 << 20;

/// Why a file cannot be read.
#[derive(Debug, Error)]
pub enum FileError {
    /// Nothing has this name.
    #[error("there is no such file")]
    Missing,
    /// The user may not read it.
    #[error("you have no permission to read it")]
    NoPermission,
    /// It is a folder.
    #[error("it is a folder, not a file")]
    Folder,
    /// It is a pipe, a device or a socket.
    #[error("it is a pipe, a device or a socket, not a regular file")]
    NotRegular,
    /// It is longer than its limit.
    #[error("it is longer than {} MB, the limit for such a file", .0 >> 20)]
    TooLong(u64),
    /// The system gives another reason.
    #[error(transparent)]
    System(io::Error),
}

impl From<io::Error> for FileError {
    fn from(error: io::Error) -> Self {
        match error.kind() {
            io::ErrorKind::NotFound => Self::Missing,
            io::ErrorKind::PermissionDenied => Self::NoPermission,
            io::ErrorKind::IsADirectory => Self::Folder,
            // The list of the standard library grows; every other kind has its own words.
            _ => Self::System(error),
        }
    }
}

impl From<FileError> for io::Error {
    fn from(error: FileError) -> Self {
        let kind = match &error {
            FileError::Missing => io::ErrorKind::NotFound,
            FileError::NoPermission => io::ErrorKind::PermissionDenied,
            FileError::Folder => io::ErrorKind::IsADirectory,
            FileError::NotRegular => io::ErrorKind::InvalidInput,
            FileError::TooLong(_) => io::ErrorKind::FileTooLarge,
            FileError::System(system) => system.kind(),
        };
        Self::new(kind, error)
    }
}

/// The bytes of a regular file of at most `limit` bytes.
pub fn read(path: &Path, limit: u64) -> Result<Vec<u8>, FileError> {
    read_open(&open(path)?, limit)
}

/// Opens a regular file for reading. A pipe without a writer does not block.
pub fn open(path: &Path) -> Result<File, FileError> {
    open_with(path, OpenOptions::new().read(true))
}

/// Opens a regular file with options of the caller, which must not create it.
pub fn open_with(path: &Path, options: &OpenOptions) -> Result<File, FileError> {
    // The check before the open keeps a pipe from blocking it. The check after it holds for the
    // file that was really opened.
    must_be_regular(&fs::metadata(path)?)?;
    let file = options.open(path)?;
    must_be_regular(&file.metadata()?)?;
    Ok(file)
}

fn must_be_regular(data: &Metadata) -> Result<(), FileError> {
    if data.is_dir() {
        Err(FileError::Folder)
    } else if data.is_file() {
        Ok(())
    } else {
        Err(FileError::NotRegular)
    }
}

/// The bytes of an open file from where it stands, at most `limit` of them.
pub fn read_open(file: &File, limit: u64) -> Result<Vec<u8>, FileError> {
    let mut bytes = Vec::new();
    file.take(limit + 1).read_to_end(&mut bytes)?;
    if bytes.len() as u64 > limit {
        return Err(FileError::TooLong(limit));
    }
    Ok(bytes)
}

/// Bytes are no text that the program can read.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct NotText {
    /// The text before the place.
    pub before: String,
    /// What stands there.
    pub message: &'static str,
    /// What helps.
    pub hint: &'static str,
}

const SAVE: &str = "save the file as UTF-8";

/// The text of a file: UTF-8 with or without a byte order mark, or UTF-16 with one. Lines may end
/// in LF, CR LF or, where the file has no LF at all, CR.
pub fn text(bytes: &[u8]) -> Result<String, NotText> {
    let text = match bytes {
        [0xff, 0xfe, rest @ ..] => utf16(rest, u16::from_le_bytes)?,
        [0xfe, 0xff, rest @ ..] => utf16(rest, u16::from_be_bytes)?,
        [0xef, 0xbb, 0xbf, rest @ ..] => utf8(rest)?,
        bytes => utf8(bytes)?,
    };
    if let Some(at) = text.find('\0') {
        return Err(NotText {
            before: text[..at].to_owned(),
            message: "a zero byte stands here: this is no text, or UTF-16 without its mark",
            hint: SAVE,
        });
    }
    if text.contains('\r') && !text.contains('\n') {
        return Ok(text.replace('\r', "\n"));
    }
    Ok(text)
}

fn utf8(bytes: &[u8]) -> Result<String, NotText> {
    str::from_utf8(bytes).map(str::to_owned).map_err(|error| {
        let (before, _) = bytes.split_at(error.valid_up_to());
        NotText {
            before: String::from_utf8_lossy(before).into_owned(),
            message: "this is not UTF-8 text",
            hint: SAVE,
        }
    })
}

fn utf16(bytes: &[u8], unit: fn([u8; 2]) -> u16) -> Result<String, NotText> {
    let (pairs, rest) = bytes.as_chunks::<2>();
    let mut text = String::with_capacity(bytes.len());
    let units = pairs.iter().map(|pair| unit(*pair));
    let mut is_whole = rest.is_empty();
    for letter in char::decode_utf16(units) {
        let Ok(letter) = letter else {
            is_whole = false;
            break;
        };
        text.push(letter);
    }
    if is_whole {
        return Ok(text);
    }
    Err(NotText {
        before: text,
        message: "this is not whole UTF-16 text",
        hint: SAVE,
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_text_is_the_same_in_every_encoding_of_a_text_editor() {
        let text_of = |bytes: &[u8]| text(bytes).expect("it is text");
        let words = "(title: \"Zoë 🔧\")\r\n";
        let mut marked = vec![0xef, 0xbb, 0xbf];
        marked.extend(words.as_bytes());
        let (mut little, mut big) = (vec![0xff, 0xfe], vec![0xfe, 0xff]);
        for unit in words.encode_utf16() {
            little.extend(unit.to_le_bytes());
            big.extend(unit.to_be_bytes());
        }
        for bytes in [words.as_bytes(), &marked, &little, &big] {
            assert_eq!(text_of(bytes), words);
        }
        assert_eq!(text_of(b"a\rb\r"), "a\nb\n");
        assert_eq!(text_of(b""), "");
    }

    #[test]
    fn what_is_no_text_is_told_with_the_text_before_it() {
        let wrong = |bytes: &[u8]| text(bytes).expect_err("it is no text");
        assert_eq!(wrong(b"ab\xff").before, "ab");
        assert_eq!(wrong(b"a\0b\0").before, "a");
        // Cut in the middle of a letter, and in the middle of a pair of units.
        assert_eq!(wrong(&[0xff, 0xfe, b'a', 0, b'b']).before, "a");
        assert_eq!(wrong(&[0xff, 0xfe, b'a', 0, 0x3d, 0xd8]).before, "a");
    }
}

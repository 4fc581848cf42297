//! Computes the digest of everything that decides what a job does, for the head of attempts.
//!
//! It covers sources and assets and not the built program, so that debug and release builds and
//! all systems have the same.

use sha2::{Digest, Sha256};
use std::fmt::Write;
use std::path::{Path, PathBuf};
use std::{fs, io};

/// Everything from the units up to the job, and the data that it reads. A replay asks for the words
/// in which an attempt was refused something.
const DECIDES: [&str; 10] = [
    "assets/refrigerants",
    "assets/text/en/refusal.ftl",
    "assets/units",
    "src/fluid",
    "src/job",
    "src/kit",
    "src/plant",
    "src/scenario",
    "src/units.rs",
    "src/words",
];

fn main() -> io::Result<()> {
    let mut files = Vec::new();
    for path in DECIDES.map(Path::new).into_iter().filter(|p| p.exists()) {
        println!("cargo::rerun-if-changed={}", path.display());
        gather(path, &mut files)?;
    }
    files.sort();
    let mut digest = Sha256::new();
    for file in files {
        // A checkout may end its lines in its own way.
        let bytes = fs::read(file)?.into_iter().filter(|&byte| byte != b'\r');
        digest.update(bytes.collect::<Vec<u8>>());
    }
    let mut hexadecimal = String::new();
    for byte in digest.finalize() {
        write!(hexadecimal, "{byte:02x}").map_err(io::Error::other)?;
    }
    println!("cargo::rustc-env=COLDBENCH_PROGRAM_DIGEST={hexadecimal}");
    Ok(())
}

fn gather(path: &Path, files: &mut Vec<PathBuf>) -> io::Result<()> {
    if path.is_dir() {
        for entry in fs::read_dir(path)? {
            gather(&entry?.path(), files)?;
        }
    } else {
        files.push(path.to_owned());
    }
    Ok(())
}

//! Reading files: what is no regular file, what is too long, what a text editor saves.

use coldbench::attempt::{Journal, unfinished};
use coldbench::job::procedure::Procedure;
use coldbench::scenario::{Diagnostic, Scenario};
use std::fs;
use std::path::{Path, PathBuf};
use std::process::{Command, Output, Stdio};
use std::thread::sleep;
use std::time::Duration;

/// An empty directory of a test's own.
fn empty(name: &str) -> PathBuf {
    let path = PathBuf::from(env!("CARGO_TARGET_TMPDIR")).join(name);
    if path.exists() {
        fs::remove_dir_all(&path).expect("it can be removed");
    }
    fs::create_dir_all(&path).expect("it can be made");
    path
}

/// Runs the program; it fails the test when it has not ended after 30 s.
fn coldbench(arguments: &[&str]) -> Output {
    let mut child = Command::new(env!("CARGO_BIN_EXE_coldbench"))
        .args(arguments)
        .current_dir(env!("CARGO_TARGET_TMPDIR"))
        .stdin(Stdio::null())
        .stdout(Stdio::piped())
        .stderr(Stdio::piped())
        .spawn()
        .expect("the program starts");
    for _ in 0..600 {
        if child.try_wait().expect("it can be asked").is_some() {
            return child.wait_with_output().expect("it has ended");
        }
        sleep(Duration::from_millis(50));
    }
    child.kill().expect("it runs");
    panic!("it hangs: coldbench {}", arguments.join(" "));
}

/// Every command that reads a file, with this one.
fn every_command(path: &str) -> [Vec<&str>; 6] {
    [
        vec!["check", path],
        vec!["settle", path],
        vec!["perform", path],
        vec!["perform", "clogged_drier", path],
        vec!["replay", path],
        vec!["mark", path],
    ]
}

/// What no command can read, with a part of the sentence that says so.
#[cfg(unix)]
fn odd_files(folder: &Path) -> Vec<(PathBuf, &'static str)> {
    use std::os::unix::fs::PermissionsExt as _;
    let pipe = folder.join("pipe.ron");
    let made = Command::new("mkfifo").arg(&pipe).status();
    assert!(made.expect("every system has mkfifo").success());
    let long = folder.join("long.ron");
    let file = fs::File::create(&long).expect("it can be made");
    file.set_len((64 << 20) + 1).expect("a file with a hole");
    let mut odd = vec![
        (pipe, "it is a pipe, a device or a socket"),
        (PathBuf::from("/dev/zero"), "it is a pipe, a device"),
        (folder.to_owned(), "it is a folder"),
        (long, "it is longer than"),
    ];
    let closed = folder.join("closed.ron");
    fs::write(&closed, "()").expect("it can be written");
    let nobody = fs::Permissions::from_mode(0o000);
    fs::set_permissions(&closed, nobody).expect("it is ours");
    // The root user reads everything.
    if fs::read(&closed).is_err() {
        odd.push((closed, "you have no permission to read it"));
    }
    odd
}

#[cfg(unix)]
#[test]
fn what_is_no_regular_file_gets_a_sentence_from_every_command_and_none_hangs() {
    let folder = empty("odd");
    for (path, sentence) in odd_files(&folder) {
        let path = path.to_str().expect("plain letters");
        for command in every_command(path) {
            let output = coldbench(&command);
            let said = String::from_utf8_lossy(&output.stderr).into_owned();
            assert_eq!(output.status.code(), Some(2), "{command:?}: {said}");
            assert!(said.contains(sentence), "{command:?}: {said}");
        }
    }
}

#[test]
fn a_missing_file_gets_a_sentence_from_every_command() {
    for command in every_command("no_such_file.ron") {
        let output = coldbench(&command);
        let said = String::from_utf8_lossy(&output.stderr).into_owned();
        assert_eq!(output.status.code(), Some(2), "{command:?}: {said}");
        let is_told = said.contains("no such file") || said.contains("is neither a file nor");
        assert!(is_told, "{command:?}: {said}");
    }
}

#[cfg(unix)]
#[test]
fn a_pipe_among_the_attempts_does_not_stop_the_window() {
    let folder = empty("attempts_with_a_pipe");
    let pipe = folder.join("clogged_drier-1.attempt");
    let made = Command::new("mkfifo").arg(&pipe).status();
    assert!(made.expect("every system has mkfifo").success());
    let found = unfinished(&folder, &|_| Err("none is read".to_owned()));
    assert_eq!(found.len(), 1);
    let obstacle = found[0].obstacle.as_ref().map(ToString::to_string);
    assert!(obstacle.is_some_and(|why| why.contains("a pipe")));
    assert!(Journal::read(&pipe).is_err());
}

/// A shipped scenario and a shipped procedure.
const TEXTS: [&str; 2] = [
    "scenarios/clogged_drier.ron",
    "scenarios/procedures/clogged_drier_right.ron",
];

fn errors_of(path: &str, bytes: &[u8]) -> Vec<Diagnostic> {
    if path.contains("procedures") {
        Procedure::from_bytes(path, bytes).err()
    } else {
        Scenario::from_bytes(path, "own", bytes).err()
    }
    .unwrap_or_default()
}

/// The same text as text editors save it.
fn encodings(text: &str) -> [(&'static str, Vec<u8>); 6] {
    let marked = [b"\xef\xbb\xbf", text.as_bytes()].concat();
    let utf16 = |mark: [u8; 2], bytes: fn(u16) -> [u8; 2]| {
        let units = text.encode_utf16().flat_map(bytes);
        mark.into_iter().chain(units).collect::<Vec<u8>>()
    };
    [
        ("UTF-8", text.as_bytes().to_vec()),
        ("UTF-8 with a mark", marked),
        ("CR LF", text.replace('\n', "\r\n").into_bytes()),
        ("CR", text.replace('\n', "\r").into_bytes()),
        ("UTF-16 LE", utf16([0xff, 0xfe], u16::to_le_bytes)),
        ("UTF-16 BE", utf16([0xfe, 0xff], u16::to_be_bytes)),
    ]
}

#[test]
fn a_file_is_read_in_every_encoding_of_a_text_editor() {
    for path in TEXTS {
        let text = fs::read_to_string(path).expect("it is shipped");
        for (encoding, bytes) in encodings(&text) {
            let errors = errors_of(path, &bytes);
            assert!(errors.is_empty(), "{path} in {encoding}: {errors:?}");
        }
    }
}

#[test]
fn an_error_has_the_same_place_in_every_encoding() {
    for path in TEXTS {
        let text = fs::read_to_string(path).expect("it is shipped");
        let wrong = text.replacen("version: 1", "version: 7", 1);
        let expected = errors_of(path, wrong.as_bytes());
        assert_eq!(expected.len(), 1, "{path}: {expected:?}");
        for (encoding, bytes) in encodings(&wrong) {
            assert_eq!(errors_of(path, &bytes), expected, "{path} in {encoding}");
        }
    }
}

#[test]
fn a_text_in_another_encoding_is_told_plainly_at_its_place() {
    let told = |bytes: &[u8]| {
        let errors = errors_of("scenarios/own.ron", bytes);
        assert_eq!(errors.len(), 1);
        let wrong = &errors[0];
        assert_eq!(wrong.hint.as_deref(), Some("save the file as UTF-8"));
        (wrong.line, wrong.column)
    };
    // ISO 8859-1: the e with its dots is one byte, which is no UTF-8.
    assert_eq!(told(b"(\n  title: \"Zo\xeb\")"), (2, 13));
    // UTF-16 without a mark.
    assert_eq!(told(b"(\0\n\0)\0"), (1, 2));
    assert_eq!(told(b"\0(\0)"), (1, 1));
    // UTF-16 cut in the middle.
    assert_eq!(told(b"\xff\xfe(\0\n\0)"), (2, 1));
}

#[test]
fn a_text_longer_than_its_limit_is_refused_and_one_just_as_long_is_read() {
    let text = fs::read_to_string(TEXTS[0]).expect("it is shipped");
    let filled = |length: usize| format!("{text}{}", " ".repeat(length - text.len()));
    let errors = errors_of(TEXTS[0], filled(1 << 20).as_bytes());
    assert!(errors.is_empty(), "{errors:?}");
    let errors = errors_of(TEXTS[0], filled((1 << 20) + 1).as_bytes());
    assert_eq!(errors.len(), 1);
    assert!(errors[0].message.contains("longer than 1 MB"));
}

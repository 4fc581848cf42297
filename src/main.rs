//! The program: arguments, then the command line or the window.

use clap::Parser;
use coldbench::cli::{Answer, Arguments, demonstrate};
use std::process::ExitCode;

fn main() -> ExitCode {
    let answer = match Arguments::parse().command {
        Some(command) => command.run(),
        None => match open_window() {
            Ok(()) => return ExitCode::SUCCESS,
            Err(no_window) => demonstrate(&no_window),
        },
    };
    Answer::print(answer)
}

/// Opens the window and stays in it until it is closed; else says why there is none.
#[cfg(feature = "window")]
fn open_window() -> Result<(), String> {
    coldbench::gui::run().map_err(|no_window| no_window.to_string())
}

/// Says that there is no window.
#[cfg(not(feature = "window"))]
fn open_window() -> Result<(), String> {
    Err("this program was built without its window".to_owned())
}

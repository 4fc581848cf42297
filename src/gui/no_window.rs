//! Why there is no window, in one sentence that names what is missing.

use std::any::Any;
use std::panic::{self, AssertUnwindSafe};
use std::sync::Arc;
use std::sync::atomic::{AtomicBool, Ordering};
use thiserror::Error;

/// No window can be opened here.
#[derive(Debug, Clone, PartialEq, Eq, Error)]
#[error("{why}")]
pub struct NoWindow {
    /// The reason, in one sentence.
    pub why: String,
}

/// The window is up: from here on a panic is a fault of the program.
static IS_UP: AtomicBool = AtomicBool::new(false);

/// Says that the window is up.
pub fn is_up() {
    IS_UP.store(true, Ordering::Relaxed);
}

/// Runs the window; an error or a panic of the toolkit before it is up becomes one sentence.
///
/// The toolkit panics where a library of the display is missing, so that must be caught: it is a
/// fact about the machine, and the program goes on without its window.
pub fn guard(run: impl FnOnce() -> eframe::Result) -> Result<(), NoWindow> {
    let told = Arc::new(panic::take_hook());
    let passed_on = Arc::clone(&told);
    panic::set_hook(Box::new(move |info| {
        if IS_UP.load(Ordering::Relaxed) {
            passed_on(info);
        }
    }));
    let outcome = panic::catch_unwind(AssertUnwindSafe(run));
    panic::set_hook(Box::new(move |info| told(info)));
    let cause = match outcome {
        Ok(Ok(())) => return Ok(()),
        Ok(Err(error)) => error.to_string(),
        Err(payload) if IS_UP.load(Ordering::Relaxed) => panic::resume_unwind(payload),
        Err(payload) => said(&*payload),
    };
    Err(NoWindow {
        why: sentence(&cause),
    })
}

/// What a panic said.
fn said(payload: &(dyn Any + Send)) -> String {
    let text = payload
        .downcast_ref::<&str>()
        .map(|text| (*text).to_owned());
    text.or_else(|| payload.downcast_ref::<String>().cloned())
        .unwrap_or_default()
}

/// The libraries that a display needs, by a word in the toolkit's message, with the package that
/// has each on Debian and its kin.
const LIBRARIES: [(&str, &str); 7] = [
    ("xkbcommon-x11", "libxkbcommon-x11-0"),
    ("xkbcommon", "libxkbcommon0"),
    ("Xcursor", "libxcursor1"),
    ("Xi.", "libxi6"),
    ("XInput", "libxi6"),
    ("X11", "libx11-6"),
    ("GL", "libgl1"),
];

fn sentence(cause: &str) -> String {
    let cause = cause.lines().next().unwrap_or_default().trim();
    if ["DISPLAY", "WAYLAND", "XOpenDisplay"]
        .iter()
        .any(|word| cause.contains(word))
    {
        return "none is here, neither DISPLAY nor WAYLAND_DISPLAY leads to one".into();
    }
    let missing = LIBRARIES.iter().find(|(word, _)| cause.contains(word));
    match missing {
        Some((_, package)) => {
            format!("a library of the display is missing (package {package}): {cause}")
        }
        None if cause.is_empty() => "the display could not be opened".into(),
        None => format!("the display could not be opened: {cause}"),
    }
}

#[cfg(test)]
mod tests {
    use super::{guard, sentence};

    #[test]
    fn a_panic_of_the_toolkit_names_the_package_and_does_not_end_the_program() {
        let outcome = guard(|| panic!("Library libxkbcommon-x11.so could not be loaded."));
        let why = outcome.expect_err("it panicked").why;
        assert!(why.contains("libxkbcommon-x11-0"), "{why}");
    }

    #[test]
    fn no_display_is_said_plainly() {
        let why = sentence("winit EventLoopError: neither WAYLAND_DISPLAY nor DISPLAY is set.");
        assert!(why.contains("DISPLAY"), "{why}");
    }
}

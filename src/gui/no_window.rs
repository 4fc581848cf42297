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
    let usual = Arc::new(panic::take_hook());
    let passed_on = Arc::clone(&usual);
    panic::set_hook(Box::new(move |info| {
        if IS_UP.load(Ordering::Relaxed) {
            passed_on(info);
        }
    }));
    let outcome = panic::catch_unwind(AssertUnwindSafe(run));
    panic::set_hook(Box::new(move |info| usual(info)));
    let cause = match outcome {
        Ok(Ok(())) => return Ok(()),
        Ok(Err(error)) => error.to_string(),
        Err(payload) if IS_UP.load(Ordering::Relaxed) => panic::resume_unwind(payload),
        Err(payload) => panic_text(&*payload),
    };
    Err(NoWindow {
        why: sentence(&cause),
    })
}

/// The message of a panic.
fn panic_text(payload: &(dyn Any + Send)) -> String {
    let text = payload
        .downcast_ref::<&str>()
        .map(|text| (*text).to_owned());
    text.or_else(|| payload.downcast_ref::<String>().cloned())
        .unwrap_or_default()
}

/// The libraries that a display needs, by a word in the toolkit's message, with the packages that
/// have them on Debian and its kin. The more particular words come first.
const LIBRARIES: [(&str, &str); 5] = [
    ("xkbcommon-x11", "libxkbcommon-x11-0"),
    ("xkbcommon", "libxkbcommon0"),
    ("xlib", "libx11-6, libxcursor1, libxi6"),
    ("wayland", "libwayland-client0"),
    ("GL", "libgl1, libegl1"),
];

/// One sentence, without its full stop, for what the toolkit said.
fn sentence(cause: &str) -> String {
    let cause = cause.lines().next().unwrap_or_default();
    if ["DISPLAY", "XOpenDisplay"]
        .iter()
        .any(|w| cause.contains(w))
    {
        return "none is here, neither DISPLAY nor WAYLAND_DISPLAY leads to one".into();
    }
    if let Some((_, packages)) = LIBRARIES.iter().find(|(word, _)| cause.contains(word)) {
        return format!("a library for it is missing, install {packages}");
    }
    // The toolkit puts places in its own source before what matters.
    let last = cause.rsplit(": ").next().unwrap_or_default();
    match last.trim().trim_end_matches('.') {
        "" => "it could not be opened".into(),
        what => format!("it could not be opened ({what})"),
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
    fn a_missing_library_of_the_display_is_named_by_its_package() {
        let cause = "winit EventLoopError: os error at some/place.rs:788: Failed to load one of \
                     xlib's shared libraries.";
        assert!(
            sentence(cause).contains("libxcursor1"),
            "{}",
            sentence(cause)
        );
    }

    #[test]
    fn what_is_not_known_is_told_without_its_place() {
        let why = sentence("os error at some/place.rs:1: The thing broke.");
        assert_eq!(why, "it could not be opened (The thing broke)");
    }

    #[test]
    fn no_display_is_said_plainly() {
        let why = sentence("winit EventLoopError: neither WAYLAND_DISPLAY nor DISPLAY is set.");
        assert!(why.contains("DISPLAY"), "{why}");
    }
}

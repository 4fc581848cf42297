//! The printed page.

//! The program: arguments, then the command line or the window.

fn main() {}

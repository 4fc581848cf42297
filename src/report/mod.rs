//! What leaves the program.

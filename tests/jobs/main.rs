//! Whole jobs: procedures, mistakes, random hands.

mod bench;
mod mistakes;
mod random_hands;

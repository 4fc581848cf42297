//! Whole jobs: procedures, mistakes, random hands.

mod bench;
mod budgets;
mod mistakes;
mod procedures;
mod random_hands;

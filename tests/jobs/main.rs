//! Whole jobs: procedures, mistakes, random hands.

mod bench;
mod budgets;
mod fire;
mod mistakes;
mod procedures;
mod random_hands;
mod recovery;
mod service_valves;
mod weather;

//! Measured times and the lines that show them.

#![expect(clippy::disallowed_methods, reason = "a bench reads the clock")]

use std::time::{Duration, Instant};

/// One line of the table.
pub struct Row {
    what: String,
    result: String,
    goal: &'static str,
}

impl Row {
    /// A speed in simulated seconds per second.
    pub fn speed(what: impl Into<String>, simulated: f64, took: Duration, goal: u32) -> Self {
        let times = simulated / took.as_secs_f64();
        let goal_text: &'static str = match goal {
            200_000 => "at least 200,000 x",
            100_000 => "at least 100,000 x",
            _ => "",
        };
        Self::new(what, format!("{times:.0} x real time"), goal_text)
    }

    /// A result and what is asked of it.
    pub fn new(what: impl Into<String>, result: String, goal: &'static str) -> Self {
        let what = what.into();
        Self { what, result, goal }
    }

    /// Prints it.
    pub fn print(&self) {
        print(&self.what, &self.result, self.goal);
    }
}

/// Prints a line of three columns.
pub fn print(what: &str, result: &str, goal: &str) {
    println!("{what:<44} {result:>26}   {goal}");
}

/// The median time of `rounds` calls, each on its own fresh input.
pub fn median<I>(rounds: usize, input: impl Fn() -> I, work: impl Fn(I)) -> Duration {
    let mut taken: Vec<_> = (0..rounds)
        .map(|_| {
            let input = input();
            time(|| work(input))
        })
        .collect();
    taken.sort();
    taken[rounds / 2]
}

/// The time of one call.
pub fn time(work: impl FnOnce()) -> Duration {
    let start = Instant::now();
    work();
    start.elapsed()
}

/// A time in ms.
pub fn milliseconds(took: Duration) -> String {
    format!("{:.2} ms", 1e3 * took.as_secs_f64())
}

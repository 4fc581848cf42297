//! How fast the program is, in one table: `cargo bench --no-default-features --bench speed`.
//!
//! | argument after `--` | does |
//! | --- | --- |
//! | `ticks`, `procedures`, `replay`, `settle`, `class` | only this part; several can be given |
//! | `--class N` | marks N attempts of 45 min instead of 100, and shows time and peak memory |

#![expect(clippy::print_stdout, reason = "a bench prints what it measures")]

mod class;
mod clock;
mod ticks;
mod work;

use clock::{Row, print};

/// A part of the table: its name, and what measures it for a number of attempts.
type Part = (&'static str, fn(usize) -> Vec<Row>);

/// The parts, in the order in which they are printed.
const PARTS: [Part; 5] = [
    ("ticks", |_| ticks::ticks()),
    ("procedures", |_| ticks::procedures()),
    ("replay", |_| ticks::replay_of_an_hour()),
    ("settle", |_| ticks::settling()),
    ("class", class::class),
];

fn main() {
    let mut arguments = std::env::args().skip(1);
    let mut asked = Vec::new();
    let mut attempts = 100;
    while let Some(argument) = arguments.next() {
        match argument.as_str() {
            // `cargo bench` passes this to every bench.
            "--bench" => {}
            "--class" => {
                let count = arguments.next().and_then(|count| count.parse().ok());
                attempts = count.expect("`--class` needs a number of attempts");
                asked.push("class".to_owned());
            }
            part => asked.push(part.to_owned()),
        }
    }
    for part in &asked {
        let known = PARTS.map(|(name, _)| name);
        assert!(known.contains(&part.as_str()), "{part}: one of {known:?}");
    }
    print("what", "result", "goal");
    for (name, rows) in PARTS {
        if asked.is_empty() || asked.iter().any(|part| part == name) {
            for row in rows(attempts) {
                row.print();
            }
        }
    }
}

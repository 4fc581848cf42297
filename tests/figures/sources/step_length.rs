//! What a tenth of the step's length would change.

use super::bare::Bare;
use super::rated::{Rated, of_both};
use super::{Asked, Class, Figure, Source};
use coldbench::plant::{Link, Section, TICK};

/// See the file's head.
pub(super) const SOURCE: Source = Source {
    name: "step_length",
    origin: "The same run in steps of 0.1 s, as the program takes them, and of 0.01 s: steady, and \
        the worst second of ten minutes from a start at rest and of a pump-down. Asked of a \
        transient: what a service gauge cannot show, 1 % of 120 and of 500 psi (class 1.0 of EN \
        837-1, from memory); of temperatures a degree, chosen.",
    class: Class::SelfCheck,
    why_not: "In the worst second of a start a step of 0.1 s lags behind. Steady \
        states and a pump-down do not hang on the step.",
    missed: &[
        ("R-22 orifice: start, suction", 1.29),
        ("R-22 orifice: start, liquid", 7.21),
        ("R-22 orifice: start, temperatures", 0.473),
        ("R-410A valve: start, suction", 1.36),
    ],
    rows: figures,
};

/// Pressures and temperatures, psig and °F: the suction line's, the liquid line's.
type Signs = [f64; 4];

/// One run, second by second.
struct Run {
    start: Vec<Signs>,
    steady: Signs,
    pump_down: Vec<Signs>,
}

fn figures() -> Vec<Figure> {
    of_both(of_unit)
}

fn of_unit(name: &str, unit: &Rated) -> Vec<Figure> {
    let [coarse, fine] = [TICK, 0.1 * TICK].map(|step| run(unit, step));
    let worst = |one: &[Signs], other: &[Signs], signs: [usize; 2]| {
        let pairs = one.iter().zip(other);
        let off = pairs.flat_map(|(a, b)| signs.map(|sign| (a[sign] - b[sign]).abs()));
        off.fold(0.0, f64::max)
    };
    let steady = |signs| worst(&[coarse.steady], &[fine.steady], signs);
    let start = |signs| worst(&coarse.start, &fine.start, signs);
    let pump_down = |signs| worst(&coarse.pump_down, &fine.pump_down, signs);
    let temperatures = [1, 3];
    [
        ("steady, pressures", "psi", 0.01, steady([0, 2])),
        ("steady, temperatures", "°F", 0.01, steady(temperatures)),
        ("start, suction", "psi", 1.2, start([0, 0])),
        ("start, liquid", "psi", 5.0, start([2, 2])),
        ("start, temperatures", "°F", 1.0, start(temperatures)),
        ("pump-down, suction", "psi", 1.2, pump_down([0, 0])),
        ("pump-down, liquid", "psi", 5.0, pump_down([2, 2])),
        (
            "pump-down, temperatures",
            "°F",
            1.0,
            pump_down(temperatures),
        ),
    ]
    .map(|(what, unit, most, ours)| {
        Figure::asked(format!("{name}: {what}"), unit, Asked::AtMost(most), ours)
    })
    .to_vec()
}

fn run(unit: &Rated, step: f64) -> Run {
    let mut bare = Bare::at_rest(unit.unit(), 95.0, (80.0, 67.0));
    bare.step = step;
    bare.cool(true);
    let start = seconds(&mut bare, 600);
    bare.run(1800.0);
    let steady = signs(&bare);
    bare.plant.set_opening(Link::LiquidValve, 0.0);
    let pump_down = seconds(&mut bare, 30);
    Run {
        start,
        steady,
        pump_down,
    }
}

fn seconds(bare: &mut Bare, count: usize) -> Vec<Signs> {
    let second = |_| {
        bare.run(1.0);
        signs(bare)
    };
    (0..count).map(second).collect()
}

fn signs(bare: &Bare) -> Signs {
    let [suction, liquid] = [Section::SuctionLine, Section::LiquidLine].map(|place| {
        (
            bare.psig(place),
            1.8 * bare.plant.temperature(place) - 459.67,
        )
    });
    [suction.0, suction.1, liquid.0, liquid.1]
}

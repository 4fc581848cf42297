//! Pumping the low side down, and what comes back.

use super::bare::Bare;
use super::rated::Rated;
use super::{Asked, Class, Figure, Source};
use coldbench::plant::{Link, Section};

/// See the file's head.
pub(super) const SOURCE: Source = Source {
    name: "pump_down",
    origin: "Liquid valve shut with the unit running: common practice, no source. The oil gives \
        back what it holds, less each time.",
    class: Class::CommonPractice,
    why_not: "",
    missed: &[],
    rows: figures,
};

/// Everything behind the liquid valve up to the compressor.
const LOW_SIDE: [Section; 5] = [
    Section::LiquidLine,
    Section::AfterDrier,
    Section::Evaporator,
    Section::SuctionLine,
    Section::Shell,
];

fn figures() -> Vec<Figure> {
    let orifice = Rated::orifice();
    let unit = orifice.unit();
    let mut bare = Bare::at_rest(unit, 95.0, (80.0, 67.0));
    bare.cool(true);
    bare.run(1800.0);
    bare.plant.set_opening(Link::LiquidValve, 0.0);
    let seconds = to_zero(&mut bare);
    let contents = |place| bare.plant.network().node(bare.plant.node(place)).contents();
    let left: f64 = LOW_SIDE
        .map(|place| contents(place).refrigerant)
        .iter()
        .sum();
    let share = 100.0 * left / unit.nameplate.charge.kilograms();
    let rebounds = [(); 3].map(|()| {
        bare.cool(false);
        bare.run(600.0);
        let rebound = bare.psig(Section::SuctionLine);
        bare.cool(true);
        to_zero(&mut bare);
        rebound
    });
    let less = |again: usize| rebounds[again - 1] - rebounds[again];
    vec![
        Figure::within("low side down to 0 psig", "s", (30.0, 180.0), seconds),
        Figure::within("charge left on the low side", "%", (3.0, 8.0), share),
        Figure::within("rebound in 10 min", "psig", (10.0, 35.0), rebounds[0]),
        Figure::asked(
            "second rebound less by",
            "psi",
            Asked::AtLeast(0.5),
            less(1),
        ),
        Figure::asked("third rebound less by", "psi", Asked::AtLeast(0.5), less(2)),
    ]
}

/// Runs until the suction gauge is at 0 psig, for 10 min at most; gives the time, s.
fn to_zero(bare: &mut Bare) -> f64 {
    let mut seconds = 0_u32;
    while bare.psig(Section::SuctionLine) > 0.0 && seconds < 600 {
        bare.run(1.0);
        seconds += 1;
    }
    f64::from(seconds)
}

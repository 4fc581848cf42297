//! What a whole job does to the balances: nothing appears and nothing is lost.

use coldbench::job::Job;
use coldbench::job::procedure::{Performance, Procedure};
use coldbench::scenario::Scenario;

/// Refrigerant, each gas and energy at the end of a right procedure against what was there at
/// the start and what came and went, as shares of both.
fn imbalance(name: &str) -> [(&'static str, f64, f64); 5] {
    let scenario = Scenario::shipped(name).expect("it is shipped");
    let procedure = Procedure::shipped(&format!("{name}_right")).expect("it is shipped");
    let mut job = Job::new(&scenario);
    let done = Performance::new(&mut job, &mut |_| {}).run(&procedure);
    done.unwrap_or_else(|stopped| panic!("{name} stopped: {stopped}"));
    assert!(job.is_handed_back(), "{name} was done to its end");
    let network = job.plant().network();
    let (now, then) = (network.contents(), network.initial());
    let (net, passed) = (&network.ledger().net, &network.ledger().scale);
    let share = |now: f64, then: f64, net: f64, passed: f64| {
        assert!(passed > 0.0, "nothing passed: the balance proves nothing");
        (now - then - net).abs() / (then.abs() + passed)
    };
    let gas = |k: usize| share(now.gas[k], then.gas[k], net.gas[k], passed.gas[k]);
    // The energy's own start is not a scale: it hangs on where zero was put.
    let energy = (now.energy - then.energy - net.energy).abs() / passed.energy;
    let refrigerant = share(
        now.refrigerant,
        then.refrigerant,
        net.refrigerant,
        passed.refrigerant,
    );
    [
        ("refrigerant", refrigerant, 1e-9),
        ("nitrogen", gas(0), 1e-9),
        ("air", gas(1), 1e-9),
        ("water", gas(2), 1e-9),
        ("energy", energy, 1e-6),
    ]
}

fn balances(name: &str) {
    for (what, off, most) in imbalance(name) {
        assert!(off <= most, "{name}: {what} off by {off:.1e}");
    }
}

#[test]
fn the_clogged_drier_balances() {
    balances("clogged_drier");
}

#[test]
fn the_leaking_flare_balances() {
    balances("leaking_flare");
}

#[test]
fn the_wet_circuit_balances() {
    balances("wet_circuit");
}

#[test]
fn the_flammable_leak_balances() {
    balances("flammable_leak");
}

#[test]
fn the_cold_room_balances() {
    balances("cold_room_drier");
}

#[test]
fn the_undercharge_balances() {
    balances("undercharge");
}

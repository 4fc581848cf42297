//! Service valves of three positions, on the cold-room unit with a receiver: what each position
//! joins with what, seen at the gauges. All of it is *common practice, no source*.

use crate::bench::{Bench, psig};
use coldbench::kit::refrigerant_cylinder;
use coldbench::kit::tools::Name;
use coldbench::plant::{Line, Section};
use coldbench::units::{Fraction, PSI};
use coldbench::words::{Action, FindingKind, Hose, HoseEnd, Reading};

/// The unit with both hoses on, stem caps off, both valves on their back seats.
fn hooked_up() -> Bench {
    Bench::unit("r134a_receiver_txv")
        .protected()
        .hook_up()
        .stem_caps_off()
}

fn stem(bench: Bench, line: Line, open: f64) -> Bench {
    let open = Fraction::clamped(open);
    bench.act(Action::Stem { line, open })
}

/// Both valves half a turn off the back seat, the unit running.
fn running() -> Bench {
    let bench = stem(hooked_up(), Line::Suction, 0.95);
    stem(bench, Line::Liquid, 0.95).cool_on().run(900.0)
}

/// The true gauge pressure at a place, psig.
fn true_psig(bench: &Bench, place: Section) -> f64 {
    bench.job.true_pressure(place).pascals() / PSI
}

#[test]
fn a_back_seated_valve_shows_the_gauge_nothing() {
    let bench = hooked_up().run(60.0);
    // The coil in the cold room draws the standing pressure down; there is pressure all the same.
    assert!(true_psig(&bench, Section::Shell) > 30.0);
    assert!(true_psig(&bench, Section::LiquidLine) > 30.0);
    for gauge in [Reading::LowGauge, Reading::HighGauge] {
        let shown = psig(&bench.job, gauge);
        assert!(shown.abs() < 2.0, "{gauge:?} {shown:.1} psig");
    }
    assert!(bench.found(FindingKind::Released) < 1e-4);
}

#[test]
fn cracking_it_off_the_back_seat_brings_the_pressure_to_the_port() {
    let bench = stem(hooked_up(), Line::Suction, 0.95);
    let bench = stem(bench, Line::Liquid, 0.95).run(30.0);
    for (gauge, place) in [
        (Reading::LowGauge, Section::Shell),
        (Reading::HighGauge, Section::LiquidLine),
    ] {
        let (shown, inside) = (psig(&bench.job, gauge), true_psig(&bench, place));
        assert!((shown - inside).abs() < 4.0, "{shown:.1}, {inside:.1} psig");
    }
}

#[test]
fn a_hose_taken_off_a_back_seated_valve_loses_its_own_content_alone() {
    let bench = running().power_off().run(60.0);
    let bench = bench.back_seat(Line::Liquid).back_seat(Line::Suction);
    let (charge, released) = (bench.truth().charge, bench.found(FindingKind::Released));
    let bench = bench
        .act(Action::TakeOff(Hose::Low))
        .act(Action::TakeOff(Hose::High))
        .run(300.0);
    let lost = bench.found(FindingKind::Released) - released;
    let change = charge - bench.truth().charge;
    assert!(change.abs() < 1e-9, "the unit lost {change} kg");
    // A 1.5 m hose full of liquid holds some 30 g.
    assert!(lost > 0.0 && lost < 0.06, "{lost} kg at the hoses");
}

#[test]
fn a_hose_taken_off_an_open_port_without_a_core_lets_the_charge_go() {
    let bench = running().power_off().run(60.0);
    let before = bench.truth().charge;
    let bench = bench.act(Action::TakeOff(Hose::High)).run(20.0);
    let lost = before - bench.truth().charge;
    assert!(lost > 0.2, "only {lost} kg");
    // The back seat stops it.
    let bench = bench.back_seat(Line::Liquid);
    // What still moves is the other hose's vapour.
    let before = bench.truth().charge;
    let bench = bench.run(60.0);
    let lost = before - bench.truth().charge;
    assert!(lost.abs() < 1e-3, "{lost} kg past the back seat");
}

#[test]
fn a_port_that_the_stem_shuts_has_no_core_to_pull() {
    let mut bench = hooked_up();
    for seated in [true, false] {
        let line = Line::Suction;
        assert!(bench.job.apply(Action::Core { line, seated }).is_err());
    }
}

/// Front-seated, the suction valve shuts the line off, and its port sees the compressor alone.
#[test]
fn a_front_seated_suction_valve_leaves_its_port_on_the_compressor() {
    let bench = running().front_seat(Line::Suction);
    let bench = bench.run_until("the compressor's side in a vacuum", 300.0, |job| {
        psig(job, Reading::LowGauge) < -2.0
    });
    let bench = bench.run(5.0);
    assert!(true_psig(&bench, Section::SuctionLine) > 5.0);
    assert!(true_psig(&bench, Section::Shell) < -2.0);
    assert!(bench.found(FindingKind::RanInVacuum) > 0.0);
}

/// Front-seated, the king valve keeps the liquid in the receiver, and its port sees the line
/// alone: the high gauge falls with the low side.
#[test]
fn a_front_seated_king_valve_pumps_the_charge_down_into_the_receiver() {
    let bench = running();
    let before = bench.job.plant().receiver_level().expect("a receiver");
    let bench = bench
        .front_seat(Line::Liquid)
        .act(Action::HoldContactor(true))
        .run_until("low side at 1 psig", 600.0, |job| {
            psig(job, Reading::LowGauge) < 1.0
        })
        .act(Action::HoldContactor(false))
        .power_off()
        .run(180.0);
    let after = bench.job.plant().receiver_level().expect("a receiver");
    assert!(
        after > before + 0.1 && after < 0.8,
        "{before:.2} {after:.2}"
    );
    assert!(psig(&bench.job, Reading::HighGauge) < 35.0);
    assert!(true_psig(&bench, Section::Receiver) > 80.0);
    let plant = bench.job.plant();
    let receiver = plant.network().node(plant.node(Section::Receiver));
    let held = receiver.refrigerant / bench.truth().charge;
    assert!(held > 0.8, "{held:.2} of the charge in the receiver");
}

/// So liquid is charged: king valve on its front seat, cylinder on its port, compressor running.
#[test]
fn liquid_is_charged_through_the_port_of_a_front_seated_king_valve() {
    let bench = running()
        .act(Action::Connect {
            hose: Hose::Centre,
            to: HoseEnd::Tool(Name::RefrigerantCylinder),
        })
        .act(Action::of(refrigerant_cylinder::Action::Inverted(true)))
        .act(Action::of(refrigerant_cylinder::Action::Tare))
        .act(Action::of(refrigerant_cylinder::Action::Valve(
            Fraction::ONE,
        )))
        .front_seat(Line::Liquid)
        .run(20.0);
    let (charge, level) = (bench.truth().charge, bench.job.plant().receiver_level());
    let bench = bench
        .act(Action::HandValve {
            hose: Hose::High,
            open: Fraction::ONE,
        })
        .run(60.0);
    let gained = bench.truth().charge - charge;
    let given = -bench.shows(Reading::of(refrigerant_cylinder::Reading::Scale));
    assert!(gained > 0.1, "gained {gained} kg");
    // The hoses fill with liquid.
    assert!((given - gained).abs() < 0.15, "{given}, {gained} kg");
    assert!(bench.job.plant().receiver_level() > level);
}

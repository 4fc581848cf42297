//! Each mistake has its physical consequence and its finding, and none is a special case: they
//! follow from the circuit. What is expected of each is *common practice, no source* unless a
//! source is named.

use crate::bench::{Bench, microns, psig, shows};
use coldbench::kit::tools::Name;
use coldbench::kit::{nitrogen, refrigerant_cylinder, vacuum_pump};
use coldbench::plant::{Arrow, Joint, Line, Section, Spot};
use coldbench::units::{GaugePressure, MICRON};
use coldbench::words::{
    Action, FindingKind, GaugePlace, Hose, HoseEnd, Reading, SheetField, ThermometerPlace,
};

const GRAM: f64 = 1e-3;

/// The line of the rubric that asks for a proved vacuum.
const VACUUM: &str = "Below 500 microns, pump shut off, 10 minutes";

/// A sound unit, hooked up, pumped down and locked out.
fn pumped_down() -> Bench {
    pumped_down_in("clogged_drier")
}

/// The same under the rubric of another scenario.
fn pumped_down_in(scenario: &str) -> Bench {
    Bench::sound(scenario).protected().hook_up().pump_down()
}

/// The same with a new drier.
fn with_new_drier() -> Bench {
    pumped_down().change_drier(Arrow::TowardMetering)
}

/// The same, evacuated for long enough to be dry, from the suction port's core tool.
fn evacuated(bench: Bench, minutes: f64) -> Bench {
    bench
        .start_pump(GaugePlace::Manifold)
        .run(60.0 * minutes)
        .end_evacuation()
}

#[test]
fn opening_at_pressure_releases_what_the_circuit_loses() {
    let bench = Bench::sound("clogged_drier")
        .protected()
        .hook_up()
        .lock_out();
    let (before, purged) = (bench.truth(), bench.found(FindingKind::Released));
    let bench = bench.act(Action::Loosen(Joint::DrierInlet)).run(60.0);
    let after = bench.truth();
    let released = bench.found(FindingKind::Released) - purged;
    assert!(
        released > 50.0 * GRAM,
        "a cracked flare at standing pressure lets {released} kg out"
    );
    let hoses = 30.0 * GRAM;
    let lost = before.charge - after.charge;
    assert!(
        (lost - released).abs() < hoses,
        "the unit lost {lost}, the finding says {released}"
    );
    assert!((after.refrigerant_released - before.refrigerant_released - released).abs() < GRAM);
    assert!(bench.found(FindingKind::OpenedUnderPressure) > 0.0);
    assert!(bench.loses("Opened at 0 psig"));
}

#[test]
fn a_suction_valve_left_open_after_the_pump_down_lets_the_charge_back() {
    let bench = Bench::sound("clogged_drier")
        .protected()
        .hook_up()
        .stem_caps_off()
        .cool_on()
        .run(600.0)
        .front_seat(Line::Liquid)
        .run_until("pumped down", 300.0, |job| {
            psig(job, Reading::LowGauge) < 1.5
        })
        .power_off()
        .lock_out()
        .run(600.0);
    // What the oil and the shell give off comes up into the line set, and the joint meets it.
    let pressure = psig(&bench.job, Reading::LowGauge);
    let bench = bench.act(Action::Loosen(Joint::DrierInlet)).run(60.0);
    assert!(
        pressure > 8.0,
        "the low side came up to {pressure} psig only"
    );
    assert!(bench.found(FindingKind::OpenedUnderPressure) > 0.0);
    assert!(bench.found(FindingKind::Released) > 1.0 * GRAM);
    assert!(bench.loses("Opened at 0 psig"));
}

#[test]
fn pumping_into_a_vacuum_and_opening_draws_air_in() {
    let bench = Bench::sound("clogged_drier")
        .protected()
        .hook_up()
        .stem_caps_off()
        .cool_on()
        .run(600.0)
        .front_seat(Line::Liquid)
        .run_until("vacuum", 900.0, |job| psig(job, Reading::LowGauge) < -8.0)
        .front_seat(Line::Suction)
        .power_off()
        .lock_out();
    assert!(bench.found(FindingKind::RanInVacuum) > 2.0);
    let before = bench.truth().air;
    let bench = bench.act(Action::Loosen(Joint::DrierInlet)).run(120.0);
    assert!(
        bench.truth().air > before + 1.0 * GRAM,
        "air {} kg",
        bench.truth().air
    );
    let drawn = bench.found(FindingKind::AirDrawnIn);
    assert!(
        drawn > 1.0 * GRAM,
        "drawn in {drawn} of {} kg",
        bench.truth().air
    );
    assert!(bench.loses("Compressor not run below 0 psig"));
}

/// A flare short of its torque, under nitrogen with or without a trace of refrigerant.
fn loose_flare_under_nitrogen(with_trace: bool) -> Bench {
    let bench = pumped_down_in("leaking_flare")
        .change_drier(Arrow::TowardMetering)
        .make_up(Joint::DrierOutlet, 15.0);
    // Nothing of the old refrigerant is left to be smelled: the line set is evacuated first.
    let mut bench = evacuated(bench, 20.0);
    if with_trace {
        bench = bench
            .act(Action::TakeOff(Hose::Centre))
            .act(Action::Connect {
                hose: Hose::Centre,
                to: HoseEnd::Tool(Name::RefrigerantCylinder),
            })
            .hand_valves(1.0)
            .act(Action::of(refrigerant_cylinder::Action::Valve(
                coldbench::units::Fraction::clamped(0.2),
            )))
            .run_until("a trace", 300.0, |job| psig(job, Reading::LowGauge) > 8.0)
            .act(Action::of(refrigerant_cylinder::Action::Valve(
                coldbench::units::Fraction::ZERO,
            )))
            .run(5.0);
    }
    bench.act(Action::TakeOff(Hose::Centre)).nitrogen(100.0)
}

#[test]
fn nitrogen_without_trace_gas_leaves_the_detector_silent_but_bubbles_show() {
    let spot = Spot::Joint(Joint::DrierOutlet);
    let bench = loose_flare_under_nitrogen(false)
        .sniff(spot)
        .act(Action::Wet(spot))
        .run(30.0);
    assert_eq!(bench.shows(Reading::Detector), 0.0);
    assert!(bench.shows(Reading::Bubbles(spot)) > 0.1);
    assert!(bench.loses("A trace of refrigerant before the nitrogen"));
}

#[test]
fn a_flare_left_short_of_its_torque_loses_its_points() {
    let bench = with_new_drier()
        .make_up(Joint::DrierOutlet, 15.0)
        .act(Action::HandBack);
    assert!(bench.found(FindingKind::JointLeftLoose) > 10.0);
    assert!(bench.loses("Flares made up to their torque"));
}

#[test]
fn a_flare_short_of_its_torque_weeps_is_found_and_is_tight_when_retorqued() {
    let spot = Spot::Joint(Joint::DrierOutlet);
    let bench = loose_flare_under_nitrogen(true).sniff(spot);
    assert!(
        bench.shows(Reading::Detector) > 0.1,
        "detector {}",
        bench.shows(Reading::Detector)
    );
    let sound = bench.sniff(Spot::Joint(Joint::DrierInlet)).run(20.0);
    assert_eq!(
        sound.shows(Reading::Detector),
        0.0,
        "a sound flare beside it is silent"
    );
    let bench = sound
        .release()
        .make_up(Joint::DrierOutlet, 37.0)
        .nitrogen(100.0);
    let start = psig(&bench.job, Reading::LowGauge);
    let bench = bench.act(Action::Wet(spot)).run(600.0);
    assert_eq!(bench.shows(Reading::Bubbles(spot)), 0.0);
    assert!((psig(&bench.job, Reading::LowGauge) - start).abs() <= 1.0);
}

#[test]
fn a_regulator_set_above_the_nameplate_strains_the_low_side() {
    let bench = with_new_drier().nitrogen(220.0);
    // Design test pressure of the low side: 150 psig (UFGS 15741N; common).
    let excess = bench.found(FindingKind::OverNameplate) / coldbench::units::PSI;
    assert!(excess > 50.0, "excess {excess} psi");
    assert!(bench.loses("Nameplate pressure kept"));
}

#[test]
fn without_a_regulator_the_cylinder_is_on_the_coil() {
    let bench = with_new_drier()
        .act(Action::of(nitrogen::Action::Regulator(false)))
        .act(Action::Connect {
            hose: Hose::Centre,
            to: HoseEnd::Tool(Name::Nitrogen),
        })
        .hand_valves(1.0)
        .act(Action::of(nitrogen::Action::Valve(true)))
        .run(60.0);
    assert!(bench.count(FindingKind::of(nitrogen::Finding::NoRegulator)) > 0);
    assert!(bench.job.true_pressure(Section::Evaporator) > GaugePressure::from_psig(300.0));
    assert!(bench.found(FindingKind::OverNameplate) > 0.0);
    assert!(bench.loses("Nitrogen only through the regulator"));
}

/// Head pressure of the running unit, and its gas, after the repair with so many minutes of pump.
fn run_after(minutes: f64) -> (f64, f64, Bench) {
    let bench = with_new_drier().nitrogen(100.0).release();
    let bench = if minutes > 0.0 {
        evacuated(bench, minutes)
    } else {
        bench
    };
    let bench = bench.let_back().power_back().cool_on().run(1500.0);
    let head = psig(&bench.job, Reading::HighGauge);
    (head, bench.truth().permanent_gas, bench)
}

#[test]
fn without_evacuation_the_air_stands_on_the_head_pressure() {
    let (head, gas, bench) = run_after(0.0);
    let (clean_head, clean_gas, _) = run_after(45.0);
    assert!(gas > 5.0 * GRAM, "air left inside: {gas} kg");
    assert!(clean_gas < 0.5 * GRAM, "after evacuation: {clean_gas} kg");
    // Dalton: the air's own pressure in the condenser's gas space is the least it can add.
    assert!(
        head > clean_head + 10.0,
        "head {head} against {clean_head} psig"
    );
    assert!(bench.loses(VACUUM));
}

#[test]
fn a_stop_at_2000_microns_leaves_the_moisture_of_a_drier_that_stood_open() {
    let open_for = |seconds: f64| {
        let bench = pumped_down()
            .act(Action::TakeApart(Joint::DrierInlet))
            .act(Action::TakeApart(Joint::DrierOutlet))
            .act(Action::TakeOutDrier)
            .act(Action::FitDrier(Arrow::TowardMetering))
            .act(Action::TakeApart(Joint::DrierInlet))
            .act(Action::TakeApart(Joint::DrierOutlet))
            .run(seconds)
            .make_up(Joint::DrierInlet, 37.0)
            .make_up(Joint::DrierOutlet, 37.0)
            .start_pump(GaugePlace::Manifold)
            .run_until("2,000 microns", 7200.0, |job| microns(job) < 2000.0)
            .act(Action::of(vacuum_pump::Action::Inlet(false)))
            .run(900.0);
        (microns(&bench.job), bench)
    };
    let (quick, _) = open_for(60.0);
    let (long, bench) = open_for(2.0 * 3600.0);
    assert!(
        long > quick + 500.0,
        "decay to {long} after hours open, {quick} after a minute"
    );
    assert!(bench.truth().drier_water > 1.0 * GRAM);
    assert!(bench.loses(VACUUM));
}

#[test]
fn the_gauge_at_the_pump_reads_the_pump_and_not_the_system() {
    let bench = with_new_drier().start_pump(GaugePlace::Pump).run_until(
        "500 microns at the pump",
        3600.0,
        |job| microns(job) < 500.0,
    );
    let inside = bench.truth().line_set_pressure / MICRON;
    assert!(
        inside > 1000.0,
        "inside {inside} microns, the gauge {}",
        microns(&bench.job)
    );
    let bench = bench.run(600.0).end_evacuation().run(600.0).let_back();
    assert!(bench.loses(VACUUM));
}

#[test]
fn a_liquid_valve_opened_before_the_line_set_is_tight_loses_the_charge() {
    let bench = pumped_down()
        .act(Action::TakeApart(Joint::DrierInlet))
        .act(Action::Stem {
            line: Line::Liquid,
            open: coldbench::units::Fraction::clamped(0.2),
        })
        .run(60.0);
    assert!(bench.found(FindingKind::Released) > 200.0 * GRAM);
    assert!(bench.truth().charge < 0.95 * bench.truth().nominal_charge);
    assert!(bench.loses("No refrigerant let go beyond what hoses and an opened line set hold"));
}

#[test]
fn a_drier_fitted_backwards_is_a_restriction() {
    let run = |arrow: Arrow| {
        let bench = evacuated(pumped_down().change_drier(arrow), 45.0)
            .let_back()
            .power_back()
            .act(Action::Clamp(ThermometerPlace::LiquidLine))
            .act(Action::Clamp(ThermometerPlace::AfterDrier))
            .cool_on()
            .run(1200.0);
        let drop = shows(
            &bench.job,
            Reading::Thermometer(ThermometerPlace::LiquidLine),
        ) - shows(
            &bench.job,
            Reading::Thermometer(ThermometerPlace::AfterDrier),
        );
        (psig(&bench.job, Reading::LowGauge), drop * 1.8, bench)
    };
    let (right, right_drop, _) = run(Arrow::TowardMetering);
    let (wrong, wrong_drop, bench) = run(Arrow::TowardOutdoor);
    assert!(
        wrong < right - 3.0,
        "suction {wrong} psig backwards, {right} the right way"
    );
    assert!(
        wrong_drop > right_drop + 2.0,
        "drop {wrong_drop} °F against {right_drop}"
    );
    let bench = bench.act(Action::HandBack);
    assert_eq!(bench.count(FindingKind::DrierBackwards), 1);
    assert!(bench.loses("Arrow of the new drier with the flow"));
}

#[test]
fn a_compressor_energised_in_deep_vacuum_is_ruined() {
    let bench = with_new_drier()
        .back_seat(Line::Suction)
        .start_pump(GaugePlace::Manifold)
        .run(2400.0)
        .power_back()
        .cool_on()
        .run(2.0);
    assert_eq!(bench.count(FindingKind::EnergisedInDeepVacuum), 1);
    assert!(bench.job.electrics().motor_ruined);
    let bench = bench.act(Action::ClampMeter(true)).run(5.0);
    assert!(
        bench.shows(Reading::CompressorAmps) > 50.0,
        "it draws locked-rotor amps"
    );
    assert!(bench.loses("Compressor kept dead in a vacuum"));
}

#[test]
fn a_micron_gauge_left_in_is_ruined_when_the_charge_comes_back() {
    let bench = with_new_drier()
        .start_pump(GaugePlace::Manifold)
        .run(1800.0);
    let bench = bench
        .act(Action::of(vacuum_pump::Action::Inlet(false)))
        .back_seat(Line::Liquid)
        .run(60.0);
    assert!(bench.found(FindingKind::MicronGaugeOverPressured) > 0.0);
    assert!(bench.job.reading(Reading::Microns).quantity().is_none());
    assert!(bench.loses("Micron gauge kept from pressure"));
}

#[test]
fn caps_hoses_and_valves_left_as_they_were_are_noted_at_the_hand_back() {
    let bench = pumped_down().act(Action::HandBack);
    assert_eq!(bench.count(FindingKind::CapLeftOff), 4);
    assert_eq!(bench.count(FindingKind::KitLeftOn), 2);
    assert_eq!(bench.count(FindingKind::ValveLeftShut), 2);
    assert!(bench.loses("Caps on"));
}

#[test]
fn a_split_flare_leaks_whatever_its_torque_until_it_is_renewed() {
    let bench = pumped_down()
        .act(Action::TakeApart(Joint::DrierInlet))
        .make_up(Joint::DrierInlet, 80.0);
    assert_eq!(bench.count(FindingKind::OverTightened), 1);
    let leaks = |bench: &Bench| bench.job.fittings().joint(Joint::DrierInlet).leak_area() > 0.0;
    assert!(leaks(&bench));
    let bench = bench.make_up(Joint::DrierInlet, 37.0);
    assert!(leaks(&bench), "a new pull does not mend a split flare");
    let bench = bench
        .act(Action::TakeApart(Joint::DrierInlet))
        .act(Action::RenewFlare(Joint::DrierInlet))
        .make_up(Joint::DrierInlet, 37.0);
    assert!(!leaks(&bench));
}

#[test]
fn the_sheet_keeps_what_the_instruments_gave_beside_what_was_written() {
    // suction line 50 °F with 61.5 psig is 15 °F superheat (common practice, no source).
    use coldbench::words::Level;
    let bench = Bench::sound("clogged_drier")
        .protected()
        .hook_up()
        .clamp(ThermometerPlace::SuctionLine)
        .cool_on()
        .run(900.0);
    let right = bench
        .job
        .instruments_for(SheetField::Superheat)
        .expect("both are read")
        .si
        * 1.8;
    let wrong = Level::FahrenheitDegrees(right + 9.0);
    let bench = bench.act(Action::Write {
        field: SheetField::Superheat,
        value: wrong,
    });
    let entry = bench
        .job
        .sheet()
        .entry(SheetField::Superheat)
        .expect("it was written");
    let instruments = entry.instruments.expect("the instruments gave it").si * 1.8;
    assert!((instruments - right).abs() < 1e-9);
    assert!((entry.value.quantity().si * 1.8 - right - 9.0).abs() < 1e-9);
    assert!(bench.loses("Superheat worked out right"));
}

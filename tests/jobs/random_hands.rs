//! Random hands on random states: nothing panics, no number is lost, mass is conserved, and a
//! refused action changes nothing.

use coldbench::fluid::gas::MOLAR_MASS;
use coldbench::job::{Job, TICKS_PER_SECOND};
use coldbench::kit::tools::Name;
use coldbench::kit::{nitrogen, recovery, refrigerant_cylinder, vacuum_pump};
use coldbench::plant::{Arrow, FaultKind, Joint, Line, Spot, ThermostatCall};
use coldbench::scenario::Scenario;
use coldbench::units::{Fraction, GaugePressure, Torque};
use coldbench::words::{
    Action, Diagnosis, DisconnectMove, GaugePlace, Hose, HoseEnd, Level, SheetField,
    ThermometerPlace,
};
use rand::RngExt;
use rand_chacha::ChaCha8Rng;
use rand_chacha::rand_core::SeedableRng;

/// One of a list.
fn one<T: Copy>(rng: &mut ChaCha8Rng, of: &[T]) -> T {
    of[rng.random_range(0..of.len())]
}

/// Shut, open, or anything between.
fn opening(rng: &mut ChaCha8Rng) -> Fraction {
    match rng.random_range(0..3) {
        0 => Fraction::ZERO,
        1 => Fraction::ONE,
        _ => Fraction::clamped(rng.random_range(0.0..1.0)),
    }
}

#[expect(
    clippy::too_many_lines,
    reason = "one line or two for each thing that a person can do"
)]
fn action(rng: &mut ChaCha8Rng) -> Action {
    let line = one(rng, &Line::ALL);
    let joint = one(rng, &Joint::ALL);
    let spot = one(rng, &Spot::ALL);
    let hose = one(rng, &Hose::ALL);
    let place = one(rng, &ThermometerPlace::ALL);
    let yes = rng.random_range(0..2) == 0;
    match rng.random_range(0..46) {
        0 => one(rng, &[Action::Protect(yes), Action::Ventilate(yes)]),
        1 | 2 => Action::Thermostat(one(
            rng,
            &[
                ThermostatCall::Off,
                ThermostatCall::Fan,
                ThermostatCall::Cool,
            ],
        )),
        3 => Action::Disconnect(one(
            rng,
            &[
                DisconnectMove::Pull,
                DisconnectMove::Insert,
                DisconnectMove::LockAndTag,
                DisconnectMove::Unlock,
            ],
        )),
        4 => Action::VerifyDead,
        5 => Action::HoldContactor(yes),
        6 => Action::StemCap { line, on: yes },
        7 | 8 => Action::Stem {
            line,
            open: opening(rng),
        },
        9 => Action::PortCap { line, on: yes },
        10 => Action::CoreTool { line, fitted: yes },
        11 => Action::Core { line, seated: yes },
        12 => Action::CoreToolValve { line, open: yes },
        13 | 14 => Action::Connect {
            hose,
            to: one(rng, &HoseEnd::all().collect::<Vec<_>>()),
        },
        15 => Action::TakeOff(hose),
        16 => Action::Purge(hose),
        17 | 18 => Action::HandValve {
            hose,
            open: opening(rng),
        },
        19 => Action::of(nitrogen::Action::Valve(yes)),
        20 => Action::of(nitrogen::Action::Regulator(rng.random_range(0..10) > 0)),
        21 => Action::of(nitrogen::Action::SetRegulator(GaugePressure::from_psig(
            rng.random_range(-50.0..900.0),
        ))),
        22 => Action::of(refrigerant_cylinder::Action::Valve(opening(rng))),
        23 => Action::of(refrigerant_cylinder::Action::Inverted(yes)),
        24 => Action::of(refrigerant_cylinder::Action::Tare),
        25 => Action::of(vacuum_pump::Action::Run(yes)),
        26 => Action::of(vacuum_pump::Action::Inlet(yes)),
        27 => Action::of(vacuum_pump::Action::Ballast(yes)),
        28 => Action::of(vacuum_pump::Action::ChangeOil),
        29 => Action::MicronGauge(one(rng, &GaugePlace::ALL)),
        30 => Action::MicronGaugeValve(yes),
        31 => Action::Loosen(joint),
        32 => Action::TakeApart(joint),
        33 => one(rng, &[Action::Plug(joint), Action::RenewFlare(joint)]),
        34 | 35 => Action::MakeUp {
            joint,
            torque: Torque::from_newton_metres(rng.random_range(-5.0..120.0)),
        },
        36 => one(rng, &[Action::Sniff(spot), Action::StopSniffing]),
        37 => one(rng, &[Action::Wet(spot), Action::Wipe(spot)]),
        38 => Action::TakeOutDrier,
        39 => Action::FitDrier(one(rng, &[Arrow::TowardMetering, Arrow::TowardOutdoor])),
        40 => one(rng, &[Action::CleanOutdoorCoil, Action::ChangeFilter]),
        41 => one(
            rng,
            &[
                Action::Clamp(place),
                Action::Unclamp(place),
                Action::ClampMeter(yes),
            ],
        ),
        43 | 44 => Action::of(one(
            rng,
            &[
                recovery::Action::Run(yes),
                recovery::Action::Liquid(yes),
                recovery::Action::Valve(yes),
                recovery::Action::Tare,
            ],
        )),
        42 => Action::Write {
            field: one(rng, &SheetField::ALL),
            value: one(
                rng,
                &[
                    Level::Psig(70.0),
                    Level::Fahrenheit(50.0),
                    Level::Plain(f64::NAN),
                ],
            ),
        },
        _ => Action::Diagnose(Diagnosis {
            fault: Some(one(rng, &FaultKind::ALL)),
            at: yes.then_some(spot),
        }),
    }
}

/// Does random actions with random waits between; returns how many were carried out.
fn play(name: &str, seed: u64, actions: usize) -> usize {
    let mut rng = ChaCha8Rng::seed_from_u64(seed);
    let scenario = Scenario::shipped(name).or_else(|| Scenario::of_shipped_unit(name));
    let mut scenario = scenario.expect("it is shipped");
    scenario.file.cart.tools = vec![Name::Recovery];
    let mut job = Job::new(&scenario);
    let mut done = 0;
    for count in 0..actions {
        let action = action(&mut rng);
        let before = job.digest();
        match job.apply(action) {
            Ok(()) => done += 1,
            Err(refusal) => {
                assert_eq!(
                    job.digest(),
                    before,
                    "a refused {action:?} changed something"
                );
                assert!(!refusal.why.to_string().is_empty());
            }
        }
        // Mostly short, now and then a minute.
        let most = if rng.random_range(0..40) == 0 {
            60 * TICKS_PER_SECOND
        } else {
            6
        };
        for _ in 0..rng.random_range(0..=most) {
            job.tick();
        }
        let mut finite = true;
        job.plant()
            .visit_state(&mut |number| finite &= number.is_finite());
        assert!(
            finite,
            "seed {seed}, action {count} {action:?}: a number was lost"
        );
    }
    let network = job.plant().network();
    let start = *network.initial();
    let (end, ledger) = (network.contents(), network.ledger());
    // Mass, moles and water to 1e-9 of the charge, and to round-off of what passed besides.
    let charge = start.refrigerant;
    let error = end.refrigerant - start.refrigerant - ledger.net.refrigerant;
    let round_off = 1e-12 * ledger.scale.refrigerant;
    assert!(
        error.abs() < 1e-9 * charge + round_off,
        "seed {seed}: refrigerant off by {error} kg"
    );
    for (k, molar_mass) in MOLAR_MASS.into_iter().enumerate() {
        let error = (end.gas[k] - start.gas[k] - ledger.net.gas[k]) * molar_mass;
        let round_off = 1e-12 * ledger.scale.gas[k] * molar_mass;
        assert!(
            error.abs() < 1e-9 * charge + round_off,
            "seed {seed}: gas {k} off by {error} kg"
        );
    }
    done
}

#[test]
fn a_hundred_thousand_random_actions_break_nothing() {
    let names = [
        "clogged_drier",
        "leaking_flare",
        "wet_circuit",
        "undercharge",
        // A receiver and valves of three positions; a refrigerant that burns.
        "r134a_receiver_txv",
        "r32_2ton_txv",
    ];
    let done: usize = (0..200)
        .map(|seed| play(names[seed as usize % names.len()], seed, 500))
        .sum();
    assert!(done > 20_000, "only {done} were carried out");
}

#[test]
fn equal_hands_leave_equal_bits() {
    let run = || {
        let scenario = Scenario::shipped("leaking_flare").expect("it is shipped");
        let mut rng = ChaCha8Rng::seed_from_u64(7);
        let mut job = Job::new(&scenario);
        for _ in 0..400 {
            let _refused = job.apply(action(&mut rng));
            for _ in 0..20 {
                job.tick();
            }
        }
        job.digest()
    };
    assert_eq!(run(), run());
}

#[test]
fn a_job_that_is_saved_and_goes_on_equals_one_that_went_on() {
    let scenario = Scenario::shipped("wet_circuit").expect("it is shipped");
    let mut rng = ChaCha8Rng::seed_from_u64(11);
    let mut job = Job::new(&scenario);
    let mut saved = None;
    for count in 0..300 {
        let next = action(&mut rng);
        if count == 150 {
            saved = Some(job.clone());
        }
        for one in std::iter::once(&mut job).chain(saved.as_mut()) {
            let _refused = one.apply(next);
            for _ in 0..15 {
                one.tick();
            }
        }
    }
    assert_eq!(saved.expect("it was saved").digest(), job.digest());
}

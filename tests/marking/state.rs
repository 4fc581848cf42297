//! The state at the hand-back, the job sheet, the diagnosis, the time.

use crate::story::{Story, front_seat};
use coldbench::kit::refrigerant_cylinder;
use coldbench::plant::{FaultKind, Joint, Line, Spot};
use coldbench::scenario::{EndState, Rule};
use coldbench::units::{Fraction, Time};
use coldbench::words::{Action, Bound, Level, SheetField};

fn end(state: EndState, must: Bound) -> Rule {
    Rule::End { state, must }
}

#[test]
fn the_charge_is_looked_at_as_a_share_of_what_belongs_in() {
    let rule = || {
        end(
            EndState::ChargeShare,
            Bound::Between(Level::Plain(0.95), Level::Plain(1.05)),
        )
    };
    let charged = |share: f64| {
        Story::new()
            .truth(|t| (t.nominal_charge, t.charge) = (4.0, 4.0 * share))
            .seconds(3)
            .does(Action::HandBack)
            .seconds(9)
    };
    let said = "charge as a share of what belongs in: 0.95, as asked between 0.95 and 1.05";
    charged(0.95).expect(rule(), 4, &[(30, said)]);
    let said = "charge as a share of what belongs in: 0.90, not between 0.95 and 1.05";
    charged(0.9).expect(rule(), 0, &[(30, said)]);
    let unknown = Story::new().seconds(2);
    let said = "charge as a share of what belongs in cannot be told: no value";
    unknown.expect(rule(), 0, &[(20, said)]);
}

#[test]
fn masses_and_leaks_are_looked_at_in_the_unit_of_the_bound() {
    let story = Story::new().truth(|t| {
        (t.water, t.permanent_gas, t.refrigerant_released) = (0.000_5, 0.002, 0.015);
        t.leak = 1e-3 / 31_557_600.0 * 5.0;
    });
    let grams = |g| Bound::Below(Level::Grams(g));
    let said = "water left inside: 0.5 g, as asked below 1.0 g";
    story.expect(end(EndState::Water, grams(1.0)), 4, &[(0, said)]);
    let said = "air and nitrogen left inside: 2.0 g, not below 1.0 g";
    story.expect(end(EndState::PermanentGas, grams(1.0)), 0, &[(0, said)]);
    let said = "refrigerant lost to the air: 15.0 g, as asked below 20.0 g";
    story.expect(end(EndState::RefrigerantLost, grams(20.0)), 4, &[(0, said)]);
    let rule = end(EndState::LeakRate, Bound::Below(Level::Plain(5.1)));
    let said = "leak in grams a year: 5.00, as asked below 5.10";
    story.expect(rule, 4, &[(0, said)]);
}

#[test]
fn superheat_is_judged_on_the_last_long_run_and_not_on_the_unit_at_rest() {
    let rule = || {
        let (low, high) = (
            Level::FahrenheitDegrees(-5.0),
            Level::FahrenheitDegrees(5.0),
        );
        end(EndState::SuperheatOffTarget, Bound::Between(low, high))
    };
    let degrees = 1.0 / 1.8;
    let ran = |superheat: f64| {
        Story::new()
            .runs(900, |t| {
                t.superheat = superheat * degrees;
                t.target_superheat = Some(15.0 * degrees);
            })
            .truth(|t| t.superheat = f64::NAN)
            .seconds(60)
            .does(Action::HandBack)
    };
    let said = "superheat off target: 3.0 °F, as asked between -5.0 °F and 5.0 °F";
    ran(18.0).expect(rule(), 4, &[(9000, said)]);
    let said = "superheat off target: 10.0 °F, not between -5.0 °F and 5.0 °F";
    ran(25.0).expect(rule(), 0, &[(9000, said)]);
    let never_ran = Story::new().seconds(9).does(Action::HandBack);
    let said = "superheat off target cannot be judged: \
                the finished unit was not run for 10 min";
    never_ran.expect(rule(), 0, &[(90, said)]);
}

#[test]
fn a_run_must_last_ten_minutes_and_be_of_the_circuit_that_is_handed_back() {
    let rule = || {
        let below = Bound::Below(Level::FahrenheitDegrees(3.0));
        end(EndState::DropAcrossDrier, below)
    };
    let ran = |seconds| Story::new().runs(seconds, |t| t.drop_across_drier = 0.5);
    assert_eq!(ran(600).marked(rule()).points, 4);
    assert_eq!(ran(599).marked(rule()).points, 0);
    // A short run afterwards takes nothing away, and adds nothing.
    let twice = ran(600).runs(60, |t| t.drop_across_drier = 20.0);
    assert_eq!(twice.marked(rule()).points, 4);
    let undone = [
        Action::Loosen(Joint::DrierInlet),
        Action::TakeApart(Joint::DrierInlet),
        Action::of(refrigerant_cylinder::Action::Valve(Fraction::ONE)),
        front_seat(Line::Liquid),
        front_seat(Line::Suction),
    ];
    for action in undone {
        let story = ran(700).does(action);
        assert_eq!(story.marked(rule()).points, 0, "{action:?}");
        let again = story.runs(600, |_| ());
        assert_eq!(again.marked(rule()).points, 4, "{action:?}");
    }
    // Closing a valve of the cylinder or taking a hose off leaves the run standing.
    let left = ran(700).does(Action::of(refrigerant_cylinder::Action::Valve(
        Fraction::ZERO,
    )));
    assert_eq!(left.marked(rule()).points, 4);
}

#[test]
fn a_state_that_has_no_number_is_missed() {
    let story = Story::new().runs(600, |t| {
        t.subcooling = f64::NAN;
        t.drop_across_drier = f64::INFINITY;
    });
    let below = Bound::Below(Level::FahrenheitDegrees(3.0));
    let said = "subcooling cannot be told: no liquid at the liquid valve";
    story.expect(end(EndState::Subcooling, below), 0, &[(6000, said)]);
    assert_eq!(
        story.marked(end(EndState::DropAcrossDrier, below)).points,
        0
    );
    let no_cell = end(EndState::SuperheatOffTarget, below);
    assert_eq!(story.marked(no_cell).points, 0);
}

// Job sheet.

fn sheet(field: SheetField, within: Level) -> Rule {
    Rule::Sheet { field, within }
}

#[test]
fn a_blank_is_held_against_the_instruments_up_to_the_boundary() {
    let rule = || sheet(SheetField::Superheat, Level::FahrenheitDegrees(2.0));
    let wrote = |value: f64| {
        let level = Level::FahrenheitDegrees(value);
        let given = Some(Level::FahrenheitDegrees(15.0));
        let story = Story::new().seconds(843);
        story.writes(SheetField::Superheat, level, given).seconds(5)
    };
    let said = "superheat: wrote 17.0 °F, the instruments gave 15.0 °F: \
                off by 2.0 °F, 2.0 °F allowed";
    wrote(17.0).expect(rule(), 4, &[(8430, said)]);
    assert_eq!(wrote(13.0).marked(rule()).points, 4);
    let said = "superheat: wrote 17.1 °F, the instruments gave 15.0 °F: \
                off by 2.1 °F, 2.0 °F allowed";
    wrote(17.1).expect(rule(), 0, &[(8430, said)]);
}

#[test]
fn pressures_and_temperatures_are_let_off_by_a_difference() {
    let story = Story::new()
        .writes(
            SheetField::SuctionPressure,
            Level::Psig(62.5),
            Some(Level::Psig(61.5)),
        )
        .writes(
            SheetField::SuctionLine,
            Level::Celsius(10.0),
            Some(Level::Fahrenheit(52.0)),
        );
    let rule = |psi| sheet(SheetField::SuctionPressure, Level::Psi(psi));
    assert_eq!(story.marked(rule(1.0)).points, 4);
    assert_eq!(story.marked(rule(0.9)).points, 0);
    let rule = |kelvins| sheet(SheetField::SuctionLine, Level::Kelvins(kelvins));
    let said = "suction line: wrote 10.0 °C, the instruments gave 11.1 °C: \
                off by 1.1 K, 1.2 K allowed";
    story.expect(rule(1.2), 4, &[(0, said)]);
    assert_eq!(story.marked(rule(1.1)).points, 0);
    // A temperature is no tolerance.
    let wrong = sheet(SheetField::SuctionLine, Level::Fahrenheit(60.0));
    assert_eq!(story.marked(wrong).points, 0);
}

#[test]
fn a_blank_left_blank_or_invented_is_missed() {
    let rule = || sheet(SheetField::Vacuum, Level::Microns(50.0));
    let said = "vacuum: left blank";
    Story::new().expect(rule(), 0, &[(0, said)]);
    let story = Story::new().writes(SheetField::Vacuum, Level::Microns(300.0), None);
    let said = "vacuum: wrote 300 microns, but the instruments gave nothing for it";
    story.expect(rule(), 0, &[(0, said)]);
    let given = Some(Level::Microns(2000.0));
    let story = Story::new().writes(SheetField::Vacuum, Level::Microns(300.0), given);
    let said = "vacuum: wrote 300 microns, the instruments gave 2,000 microns: \
                off by 1,700 microns, 50 microns allowed";
    story.expect(rule(), 0, &[(0, said)]);
    let story = Story::new().writes(SheetField::Vacuum, Level::Psig(0.0), given);
    assert_eq!(story.marked(rule()).points, 0);
}

// Diagnosis.

fn diagnosis(fault: Option<FaultKind>, at: Option<Spot>) -> Rule {
    Rule::Diagnosis { fault, at }
}

#[test]
fn the_diagnosis_is_the_fault_and_where_asked_the_place() {
    let flare = Spot::Joint(Joint::IndoorSuction);
    let leak = Some(FaultKind::Leak);
    let story = Story::new().seconds(1).diagnoses(leak, Some(flare));
    let said = "wrote: leak, suction flare at the indoor coil";
    story.expect(diagnosis(leak, Some(flare)), 4, &[(10, said)]);
    story.expect(diagnosis(leak, None), 4, &[(10, said)]);

    let elsewhere = Story::new().diagnoses(leak, Some(Spot::Stem(Line::Liquid)));
    let said = "wrote: leak, liquid valve stem; it was: leak, suction flare at the indoor coil";
    elsewhere.expect(diagnosis(leak, Some(flare)), 2, &[(0, said)]);

    let wrong = Story::new().diagnoses(Some(FaultKind::Undercharge), None);
    assert_eq!(wrong.marked(diagnosis(leak, None)).points, 0);
}

#[test]
fn nothing_wrong_is_a_diagnosis_and_no_diagnosis_is_none() {
    let healthy = || diagnosis(None, None);
    let story = Story::new().diagnoses(None, None);
    story.expect(healthy(), 4, &[(0, "wrote: nothing is wrong")]);
    Story::new().expect(healthy(), 0, &[(0, "no diagnosis was written")]);
    let mark = story.marked(diagnosis(Some(FaultKind::Moisture), None));
    assert_eq!(mark.points, 0);
}

// Time.

#[test]
fn in_time_is_met_on_the_last_tick_allowed() {
    let rule = || Rule::InTime(Time::from_minutes(2.0));
    let handed_back = |ticks| Story::new().ticks(ticks).does(Action::HandBack);
    let said = "handed back after 2 min; 2 min allowed";
    handed_back(1200).expect(rule(), 4, &[(1200, said)]);
    assert_eq!(handed_back(1201).marked(rule()).points, 0);
    let said = "not handed back; 2 min allowed";
    Story::new().seconds(5).expect(rule(), 0, &[(50, said)]);
}

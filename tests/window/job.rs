//! A whole job done through the window: each action of the written procedure is found by its part
//! and its control and pressed there, and what the job then did is what the procedure asked for.

use crate::folder::Folder;
use coldbench::gui::{App, Attempts, Part, fault_label};
use coldbench::job::procedure::{Performance, Procedure};
use coldbench::job::{Driver, Job, Refusal};
use coldbench::kit::tools::Action as Tool;
use coldbench::kit::tools::Name;
use coldbench::kit::{Hose, HoseEnd};
use coldbench::kit::{nitrogen, refrigerant_cylinder, vacuum_pump};
use coldbench::marking::Report;
use coldbench::plant::{Arrow, Line, Spot, ThermostatCall};
use coldbench::scenario::{Scenario, shipped_names};
use coldbench::text::Message;
use coldbench::words::{Action, DisconnectMove, GaugePlace};
use eframe::egui::Key;
use eframe::egui::accesskit::Role;
use egui_kittest::Harness;
use egui_kittest::kittest::Queryable as _;

/// What is done to a control.
enum Hand {
    /// A button is pressed.
    Press(String),
    /// Something is chosen from a list.
    Choose(&'static str, String),
    /// A slider or a number field is set.
    Set(Role, &'static str, f64),
    /// A number is written in a blank.
    Write(String, String),
}

fn press(text: &str) -> Vec<Hand> {
    vec![Hand::Press(text.to_owned())]
}

fn either(on: bool, yes: &str, no: &str) -> Vec<Hand> {
    press(if on { yes } else { no })
}

/// A setting with its ends as buttons and the rest as a slider.
fn setting(value: f64, most: f64, (none, all): (&str, &str), slider: &'static str) -> Vec<Hand> {
    if value == 0.0 {
        press(none)
    } else if value == most && !all.is_empty() {
        press(all)
    } else {
        vec![Hand::Set(Role::Slider, slider, value)]
    }
}

/// Where an action is done: at which part (the job sheet has none), and by which controls.
fn controls(action: &Action) -> (Option<Part>, Vec<Hand>) {
    match *action {
        Action::Protect(_)
        | Action::Ventilate(_)
        | Action::Thermostat(_)
        | Action::Disconnect(_)
        | Action::VerifyDead
        | Action::HoldContactor(_)
        | Action::ClampMeter(_) => electric(action),
        Action::StemCap { .. }
        | Action::Stem { .. }
        | Action::PortCap { .. }
        | Action::CoreTool { .. }
        | Action::Core { .. }
        | Action::CoreToolValve { .. } => valves(action),
        Action::Write { field, value } => {
            let text = value.to_string();
            let number = text.split(' ').next().unwrap_or_default().to_owned();
            (None, vec![Hand::Write(field.label().to_string(), number)])
        }
        Action::Diagnose(diagnosis) => {
            let mut hands = vec![Hand::Choose(
                "what is wrong",
                fault_label(diagnosis.fault).to_string(),
            )];
            hands.extend(
                diagnosis
                    .at
                    .map(|at| Hand::Choose("where", at.label().to_string())),
            );
            hands.extend(press("Write the diagnosis"));
            (None, hands)
        }
        Action::HandBack => {
            let mut hands = press("Hand back");
            hands.extend(press("Hold to hand back"));
            hands.extend(press("Hand back now"));
            (None, hands)
        }
        _ => circuit(action).unwrap_or_else(|| cart(action)),
    }
}

fn electric(action: &Action) -> (Option<Part>, Vec<Hand>) {
    let (part, hands) = match *action {
        Action::Protect(on) => (
            Part::Protection,
            either(
                on,
                "Put glasses and gloves on",
                "Take glasses and gloves off",
            ),
        ),
        Action::Ventilate(on) => {
            let (yes, no) = ("Open the doors, set a fan up", "Take the fan away");
            (Part::Protection, either(on, yes, no))
        }
        Action::Thermostat(call) => {
            let text = match call {
                ThermostatCall::Off => "Set to off",
                ThermostatCall::Fan => "Set to fan",
                ThermostatCall::Cool => "Set to cool",
            };
            (Part::Thermostat, press(text))
        }
        Action::Disconnect(step) => {
            let text = match step {
                DisconnectMove::Pull => "Pull the disconnect",
                DisconnectMove::Insert => "Put the disconnect in",
                DisconnectMove::LockAndTag => "Lock and tag it",
                DisconnectMove::Unlock => "Take lock and tag off",
            };
            (Part::Disconnect, press(text))
        }
        Action::VerifyDead => (
            Part::Disconnect,
            press("Discharge the capacitor, verify dead"),
        ),
        Action::HoldContactor(on) => (
            Part::Compressor,
            either(on, "Hold the contactor in", "Let the contactor go"),
        ),
        Action::ClampMeter(on) => {
            let (yes, no) = (
                "Put the clamp meter on its lead",
                "Take the clamp meter off",
            );
            (Part::Compressor, either(on, yes, no))
        }
        _ => panic!("not electric: {action:?}"),
    };
    (Some(part), hands)
}

fn valves(action: &Action) -> (Option<Part>, Vec<Hand>) {
    let (part, hands) = match *action {
        Action::StemCap { line, on } => (
            Part::Valve(line),
            either(on, "Put the stem cap on", "Take the stem cap off"),
        ),
        Action::Stem { line, open } => {
            let ends = ("Front-seat", "Back-seat");
            let quarters = open.get() * 20.0;
            let hands = setting(quarters, 20.0, ends, "stem, quarter turns");
            (Part::Valve(line), hands)
        }
        Action::PortCap { line, on } => (
            Part::Port(line),
            either(on, "Put the port cap on", "Take the port cap off"),
        ),
        Action::CoreTool { line, fitted } => (
            Part::Port(line),
            either(fitted, "Fit the core tool", "Take the core tool off"),
        ),
        Action::Core { line, seated } => (
            Part::Port(line),
            either(seated, "Seat the core", "Pull the core"),
        ),
        Action::CoreToolValve { line, open } => {
            let (yes, no) = ("Open the core tool's valve", "Shut the core tool's valve");
            (Part::Port(line), either(open, yes, no))
        }
        _ => panic!("not at a valve: {action:?}"),
    };
    (Some(part), hands)
}

fn circuit(action: &Action) -> Option<(Option<Part>, Vec<Hand>)> {
    let (part, hands) = match *action {
        Action::Loosen(joint) => (Part::Joint(joint), press("Loosen the nut a turn")),
        Action::TakeApart(joint) => (Part::Joint(joint), press("Take the joint apart")),
        Action::Plug(joint) => (Part::Joint(joint), press("Plug both ends")),
        Action::RenewFlare(joint) => (Part::Joint(joint), press("Cut and renew the flare")),
        Action::MakeUp { joint, torque } => {
            let foot_pounds = torque.foot_pounds();
            let mut hands = vec![Hand::Set(Role::SpinButton, "torque wrench", foot_pounds)];
            hands.extend(press("Make up to this torque"));
            (Part::Joint(joint), hands)
        }
        Action::Sniff(spot) => (place_of(spot), press("Hold the detector here")),
        Action::Wet(spot) => (place_of(spot), press("Wet with bubble solution")),
        Action::Wipe(spot) => (place_of(spot), press("Wipe dry")),
        Action::StopSniffing => (Part::Detector, press("Put the detector away")),
        Action::TakeOutDrier => (Part::Drier, press("Take the drier out")),
        Action::FitDrier(arrow) => {
            let right = arrow == Arrow::TowardMetering;
            let (yes, no) = (
                "Fit new, arrow toward the metering device",
                "Fit new, arrow toward the outdoor unit",
            );
            (Part::Drier, either(right, yes, no))
        }
        Action::CleanOutdoorCoil => (Part::OutdoorCoil, press("Clean the outdoor coil")),
        Action::ChangeFilter => (Part::Filter, press("Change the air filter")),
        Action::Clamp(place) => {
            let pipe = place.is_on_a_pipe();
            let (yes, no) = ("Clamp a thermometer here", "Hang a thermometer here");
            (Part::Place(place), either(pipe, yes, no))
        }
        Action::Unclamp(place) => {
            let pipe = place.is_on_a_pipe();
            let (yes, no) = ("Take the thermometer off", "Take the thermometer away");
            (Part::Place(place), either(pipe, yes, no))
        }
        _ => return None,
    };
    Some((Some(part), hands))
}

fn place_of(spot: Spot) -> Part {
    match spot {
        Spot::Joint(joint) => Part::Joint(joint),
        Spot::Port(line) => Part::Port(line),
        Spot::Stem(line) => Part::Valve(line),
        Spot::IndoorCoil => Part::IndoorCoil,
        Spot::OutdoorCoil => Part::OutdoorCoil,
    }
}

fn cart(action: &Action) -> (Option<Part>, Vec<Hand>) {
    let (part, hands) = match *action {
        Action::Connect { hose, to } => {
            let place = match to {
                HoseEnd::SuctionPort => "on the suction port",
                HoseEnd::LiquidPort => "on the liquid port",
                HoseEnd::Tool(Name::VacuumPump) => "on the vacuum pump",
                HoseEnd::Tool(Name::Nitrogen) => "on the nitrogen",
                HoseEnd::Tool(Name::RefrigerantCylinder) => "on the refrigerant cylinder",
                HoseEnd::Tool(Name::Recovery) => "on the recovery machine",
                HoseEnd::OpenAir => "held open to the air",
            };
            (
                Part::Hose(hose),
                vec![Hand::Choose("put its end", place.to_owned())],
            )
        }
        Action::TakeOff(hose) => (Part::Hose(hose), press("Take the hose off")),
        Action::Purge(hose) => (Part::Hose(hose), press("Purge the hose")),
        Action::HandValve { hose, open } => {
            let ends = ("Shut the valve", "Open the valve");
            let hands = setting(open.get() * 100.0, 100.0, ends, "hand valve open");
            (Part::HandValve(hose), hands)
        }
        Action::Tool(Tool::Nitrogen(nitrogen::Action::Valve(on))) => {
            let (yes, no) = ("Open the nitrogen cylinder", "Shut the nitrogen cylinder");
            (Part::Nitrogen, either(on, yes, no))
        }
        Action::Tool(Tool::Nitrogen(nitrogen::Action::Regulator(on))) => (
            Part::Nitrogen,
            either(on, "Fit the regulator", "Take the regulator off"),
        ),
        Action::Tool(Tool::Nitrogen(nitrogen::Action::SetRegulator(set))) => {
            let ends = ("Back the regulator off", "");
            let hands = setting(set.psig().round(), 600.0, ends, "regulator");
            (Part::Nitrogen, hands)
        }
        Action::Tool(Tool::RefrigerantCylinder(refrigerant_cylinder::Action::Valve(open))) => {
            let ends = ("Shut the cylinder", "Open the cylinder");
            let hands = setting(open.get() * 100.0, 100.0, ends, "cylinder valve open");
            (Part::Cylinder, hands)
        }
        Action::Tool(Tool::RefrigerantCylinder(refrigerant_cylinder::Action::Inverted(on))) => {
            let (yes, no) = ("Invert the cylinder (liquid)", "Stand it upright (vapour)");
            (Part::Cylinder, either(on, yes, no))
        }
        Action::Tool(Tool::RefrigerantCylinder(refrigerant_cylinder::Action::Tare)) => {
            (Part::Cylinder, press("Tare the scale"))
        }
        Action::Tool(Tool::VacuumPump(vacuum_pump::Action::Run(on))) => {
            (Part::Pump, either(on, "Start the pump", "Stop the pump"))
        }
        Action::Tool(Tool::VacuumPump(vacuum_pump::Action::Inlet(on))) => {
            let (yes, no) = ("Open the pump's inlet valve", "Shut the pump's inlet valve");
            (Part::Pump, either(on, yes, no))
        }
        Action::Tool(Tool::VacuumPump(vacuum_pump::Action::Ballast(on))) => {
            let (yes, no) = ("Open the gas ballast", "Shut the gas ballast");
            (Part::Pump, either(on, yes, no))
        }
        Action::Tool(Tool::VacuumPump(vacuum_pump::Action::ChangeOil)) => {
            (Part::Pump, press("Change the pump's oil"))
        }
        Action::MicronGauge(place) => {
            let place = match place {
                GaugePlace::Cart => "on the cart",
                GaugePlace::Pump => "at the pump",
                GaugePlace::Manifold => "at the manifold",
                GaugePlace::SuctionPort => "at the suction port",
                GaugePlace::LiquidPort => "at the liquid port",
            };
            (
                Part::MicronGauge,
                vec![Hand::Choose("screw it on", place.to_owned())],
            )
        }
        Action::MicronGaugeValve(on) => {
            let (yes, no) = (
                "Open the micron gauge's valve",
                "Shut the micron gauge's valve",
            );
            (Part::MicronGauge, either(on, yes, no))
        }
        _ => panic!("no control for {action:?}"),
    };
    (Some(part), hands)
}

/// Hands at the window: a door for a procedure that presses what a person would press.
struct Hands {
    window: Harness<'static, App>,
    /// The job as it stood when it was handed back.
    over: Option<Job>,
    /// Dropped after the window, and its attempts with it.
    #[expect(dead_code, reason = "it is there to be dropped")]
    folder: Folder,
}

impl Hands {
    fn at(scenario: &str) -> Self {
        let scenarios: Vec<_> = shipped_names().filter_map(Scenario::shipped).collect();
        let index = scenarios.iter().position(|s| s.name == scenario);
        let folder = Folder::fresh();
        let mut app = App::new(scenarios, Attempts::in_folder(folder.path()));
        app.open(index.expect("it is shipped"));
        // Tall, so that the whole job sheet is in sight.
        let window = Harness::builder()
            .with_size([1360.0, 1500.0])
            .with_context_setup(App::dress)
            .build_ui_state(|ui, app: &mut App| app.window_ui(ui), app);
        let mut hands = Self {
            window,
            over: None,
            folder,
        };
        // The complaint is read and shut.
        hands.click("Complaint");
        hands
    }

    fn hand(&mut self, hand: &Hand) {
        match hand {
            Hand::Press(text) => self.click(text),
            Hand::Choose(list, item) => {
                self.click(list);
                self.click(item);
            }
            Hand::Set(role, label, value) => {
                let control = self.window.get_by_role_and_label(*role, label);
                control.set_value_accesskit(*value);
                self.window.run();
            }
            Hand::Write(blank, number) => {
                let find = (Role::TextInput, blank.as_str());
                self.window.get_by_role_and_label(find.0, find.1).focus();
                self.window.run();
                self.window
                    .get_by_role_and_label(find.0, find.1)
                    .type_text(number);
                self.window.run();
                self.window.key_press(Key::Enter);
                self.window.run();
            }
        }
    }

    fn click(&mut self, label: &str) {
        // A person scrolls to what is out of sight.
        self.window.get_by_label(label).scroll_to_me();
        self.window.run();
        self.window.get_by_label(label).click();
        self.window.run();
    }
}

impl Driver for Hands {
    fn apply(&mut self, action: Action) -> Result<(), Refusal> {
        let before = self.window.state().job().expect("it is under way").clone();
        let (part, hands) = controls(&action);
        match part {
            Some(part) => {
                if self.window.query_by_label("Write the diagnosis").is_some()
                    || self.window.query_by_label("what is wrong").is_some()
                {
                    self.click("Job sheet");
                }
                let start = format!("{}, ", part.label());
                self.window
                    .get_all_by_role(Role::Button)
                    .find(|node| {
                        use egui_kittest::kittest::NodeT as _;
                        let label = node.accesskit_node().label().unwrap_or_default();
                        label.starts_with(&start)
                    })
                    .expect("the part is on the site")
                    .click();
                self.window.run();
            }
            None if action != Action::HandBack
                && self.window.query_by_label("what is wrong").is_none() =>
            {
                self.click("Job sheet");
            }
            None => {}
        }
        for hand in &hands {
            self.hand(hand);
        }
        let refused = self.window.query_by_label_contains("Not done: ").is_some();
        if self.window.state().job().is_none() {
            self.over = Some(before);
        }
        if refused {
            Err(Refusal::because(Message::verbatim(format!(
                "the window says so for {action:?}"
            ))))
        } else {
            Ok(())
        }
    }

    fn tick(&mut self) {
        self.window.state_mut().run(1);
    }

    fn job(&self) -> &Job {
        let job = self.window.state().job().or(self.over.as_ref());
        job.expect("a job is under way or over")
    }
}

/// The same window, worked past its controls: what the procedure gives without hands.
struct Past(Hands);

impl Driver for Past {
    fn apply(&mut self, action: Action) -> Result<(), Refusal> {
        let before = self.0.window.state().job().cloned();
        self.0.window.state_mut().act(action);
        self.0.window.run();
        if self.0.window.state().job().is_none() {
            self.0.over = before;
        }
        match self.0.window.query_by_label_contains("Not done: ") {
            Some(_) => Err(Refusal::because(Message::verbatim("the job refuses it"))),
            None => Ok(()),
        }
    }

    fn tick(&mut self) {
        self.0.tick();
    }

    fn job(&self) -> &Job {
        self.0.job()
    }
}

/// Does the right procedure of a scenario: the step at which it stopped, if it did.
fn perform(door: &mut dyn Driver, scenario: &str) -> Result<(), String> {
    let procedure = Procedure::shipped(&format!("{scenario}_right")).expect("it is shipped");
    let outcome = Performance::new(door, &mut |_| {}).run(&procedure);
    outcome.map_err(|stopped| stopped.step)
}

/// Does a scenario by hand and past the controls: both must give the same marks.
fn by_hand(scenario: &str) -> Option<Report> {
    let mut hands = Hands::at(scenario);
    let mut past = Past(Hands::at(scenario));
    let outcome = perform(&mut hands, scenario);
    assert_eq!(outcome, perform(&mut past, scenario));
    let report = hands.window.state().report().cloned();
    let expected = past.0.window.state().report().cloned();
    let points = |report: &Option<Report>| {
        let marks = report.iter().flat_map(|report| &report.marks);
        marks.map(|mark| mark.points).collect::<Vec<_>>()
    };
    assert_eq!(points(&report), points(&expected));
    report
}

#[test]
fn the_whole_drier_job_is_done_through_the_window_to_full_marks() {
    let report = by_hand("clogged_drier").expect("it was handed back and marked");
    let missed: Vec<_> = report
        .marks
        .iter()
        .filter(|mark| mark.is_missed())
        .collect();
    assert!(missed.is_empty(), "missed: {missed:#?}");
    assert!(report.passed);
}

#[test]
fn the_leak_job_goes_by_hand_as_it_goes_by_the_procedure() {
    by_hand("leaking_flare");
}

#[test]
fn the_moisture_job_goes_by_hand_as_it_goes_by_the_procedure() {
    by_hand("wet_circuit");
}

#[test]
fn the_undercharge_job_goes_by_hand_as_it_goes_by_the_procedure() {
    by_hand("undercharge");
}

#[test]
fn the_job_with_what_burns_goes_by_hand_as_it_goes_by_the_procedure() {
    by_hand("flammable_leak");
}

#[test]
fn the_cold_room_goes_by_hand_as_it_goes_by_the_procedure() {
    by_hand("cold_room_drier");
}

#[test]
fn a_pump_down_is_done_through_the_window() {
    let mut hands = Hands::at("clogged_drier");
    let steps = [
        Action::Protect(true),
        Action::PortCap {
            line: Line::Suction,
            on: false,
        },
        Action::Connect {
            hose: Hose::Low,
            to: HoseEnd::SuctionPort,
        },
        Action::Purge(Hose::Low),
        Action::Thermostat(ThermostatCall::Cool),
    ];
    for step in steps {
        hands.apply(step).expect("it can be done");
    }
    for _ in 0..1_200 {
        hands.tick();
    }
    for line in Line::ALL {
        let off = Action::StemCap { line, on: false };
        hands.apply(off).expect("the cap comes off");
    }
    let low = |hands: &Hands| {
        let reading = hands.job().reading(coldbench::words::Reading::LowGauge);
        reading.quantity().expect("it shows something").si / coldbench::units::PSI
    };
    let running = low(&hands);
    let shut = |line| Action::Stem {
        line,
        open: coldbench::units::Fraction::ZERO,
    };
    hands.apply(shut(Line::Liquid)).expect("the stem turns");
    let mut ticks = 0;
    while low(&hands) > 1.0 {
        hands.tick();
        ticks += 1;
        assert!(
            ticks < 6_000,
            "the low side never empties: {running} psig before"
        );
    }
    hands.apply(shut(Line::Suction)).expect("the stem turns");
    let stop = Action::Thermostat(ThermostatCall::Off);
    hands.apply(stop).expect("it stops");
    assert!(running > 20.0, "it ran at {running} psig");
}

//! A fluent bench: a test reads like the procedure that it checks. Every wait has a limit, an
//! unknown name panics, and a refused action fails the test with its reason.

use coldbench::attempt::Observer;
use coldbench::job::{Job, TICKS_PER_SECOND, Truth};
use coldbench::kit::tools::Name;
use coldbench::kit::{nitrogen, vacuum_pump};
use coldbench::marking::{CourseRecorder, Report};
use coldbench::plant::{Arrow, Joint, Line, Spot, ThermostatCall};
use coldbench::scenario::Scenario;
use coldbench::units::{Fraction, GaugePressure, PSI, Torque};
use coldbench::words::{
    Action, DisconnectMove, FindingKind, GaugePlace, Hose, HoseEnd, Reading, ThermometerPlace,
};

/// A job, the hands on it, and somebody who looks on to mark it.
pub struct Bench {
    pub job: Job,
    course: CourseRecorder,
    scenario: Scenario,
}

impl Bench {
    /// The job of a shipped scenario without its faults: a sound unit.
    pub fn sound(name: &str) -> Self {
        let mut scenario = Scenario::shipped(name).unwrap_or_else(|| panic!("no scenario {name}"));
        scenario.file.faults.clear();
        Self::of(scenario)
    }

    /// A shipped unit alone, sound, at its rating point.
    pub fn unit(name: &str) -> Self {
        Self::of(Scenario::of_shipped_unit(name).unwrap_or_else(|| panic!("no unit {name}")))
    }

    /// The job of a scenario as it is.
    pub fn of(scenario: Scenario) -> Self {
        Self {
            job: Job::new(&scenario),
            course: CourseRecorder::default(),
            scenario,
        }
    }

    /// Hands back, if that is not done yet, and tells whether this line of the scenario's rubric
    /// lost its points.
    #[track_caller]
    pub fn loses(self, criterion: &str) -> bool {
        let bench = if self.job.is_handed_back() {
            self
        } else {
            self.act(Action::HandBack)
        };
        let file = &bench.scenario.file;
        let report = Report::new(&bench.course.finish(&bench.job), &file.rubric, file.pass);
        let mark = report.marks.iter().find(|mark| mark.criterion == criterion);
        mark.unwrap_or_else(|| panic!("no criterion {criterion:?}"))
            .is_missed()
    }

    /// Does an action; a refusal fails the test.
    #[track_caller]
    pub fn act(mut self, action: Action) -> Self {
        if let Err(refusal) = self.job.apply(action) {
            panic!("{action:?} was refused: {refusal}");
        }
        self.course.action(&self.job, &action, false);
        self
    }

    /// Lets seconds pass.
    pub fn run(mut self, seconds: f64) -> Self {
        for _ in 0..(seconds * TICKS_PER_SECOND as f64).round() as u64 {
            self.job.tick();
            if self.job.now().is_multiple_of(TICKS_PER_SECOND) {
                self.course.second(&self.job);
            }
        }
        self
    }

    /// Lets time pass until something is so, looking once a second.
    #[track_caller]
    pub fn run_until(mut self, what: &str, limit: f64, so: impl Fn(&Job) -> bool) -> Self {
        for _ in 0..limit as u64 {
            if so(&self.job) {
                return self;
            }
            self = self.run(1.0);
        }
        let shown: Vec<String> = Reading::faces()
            .map(|face| format!("{face:?} {}", self.job.reading(face)))
            .collect();
        panic!("not within {limit} s: {what}; {}", shown.join(", "));
    }

    pub fn protected(self) -> Self {
        self.act(Action::Protect(true))
    }

    pub fn cool_on(self) -> Self {
        self.act(Action::Thermostat(ThermostatCall::Cool))
    }

    pub fn power_off(self) -> Self {
        self.act(Action::Thermostat(ThermostatCall::Off))
    }

    pub fn lock_out(self) -> Self {
        self.act(Action::Disconnect(DisconnectMove::Pull))
            .act(Action::Disconnect(DisconnectMove::LockAndTag))
            .act(Action::VerifyDead)
    }

    pub fn power_back(self) -> Self {
        self.act(Action::Disconnect(DisconnectMove::Unlock))
            .act(Action::Disconnect(DisconnectMove::Insert))
    }

    /// Caps off, hoses on both ports, both purged.
    pub fn hook_up(self) -> Self {
        self.act(Action::PortCap {
            line: Line::Suction,
            on: false,
        })
        .act(Action::PortCap {
            line: Line::Liquid,
            on: false,
        })
        .act(Action::Connect {
            hose: Hose::Low,
            to: HoseEnd::SuctionPort,
        })
        .act(Action::Connect {
            hose: Hose::High,
            to: HoseEnd::LiquidPort,
        })
        .act(Action::Purge(Hose::Low))
        .act(Action::Purge(Hose::High))
        .run(5.0)
    }

    pub fn stem_caps_off(self) -> Self {
        self.act(Action::StemCap {
            line: Line::Suction,
            on: false,
        })
        .act(Action::StemCap {
            line: Line::Liquid,
            on: false,
        })
    }

    pub fn front_seat(self, line: Line) -> Self {
        self.act(Action::Stem {
            line,
            open: Fraction::ZERO,
        })
    }

    pub fn back_seat(self, line: Line) -> Self {
        self.act(Action::Stem {
            line,
            open: Fraction::ONE,
        })
    }

    pub fn hand_valves(self, open: f64) -> Self {
        let open = Fraction::clamped(open);
        self.act(Action::HandValve {
            hose: Hose::Low,
            open,
        })
        .act(Action::HandValve {
            hose: Hose::High,
            open,
        })
    }

    pub fn clamp(self, place: ThermometerPlace) -> Self {
        self.act(Action::Clamp(place))
    }

    /// Pumps the low side down to about 1 psig, twice, and leaves it isolated and dead.
    #[track_caller]
    pub fn pump_down(self) -> Self {
        let mut bench = self
            .stem_caps_off()
            .cool_on()
            .run(600.0)
            .front_seat(Line::Liquid);
        for round in 0..3 {
            if round > 0 {
                bench = bench.back_seat(Line::Suction).cool_on();
            }
            bench = bench
                .run_until("low side at 1 psig", 600.0, |job| {
                    psig(job, Reading::LowGauge) < 1.5
                })
                .front_seat(Line::Suction)
                .power_off()
                .run(180.0);
        }
        bench.lock_out()
    }

    /// New drier in, both flares made up to 37 N m.
    pub fn change_drier(self, arrow: Arrow) -> Self {
        self.act(Action::Loosen(Joint::DrierInlet))
            .act(Action::Loosen(Joint::DrierOutlet))
            .run(30.0)
            .act(Action::TakeApart(Joint::DrierInlet))
            .act(Action::TakeApart(Joint::DrierOutlet))
            .act(Action::TakeOutDrier)
            .run(60.0)
            .act(Action::FitDrier(arrow))
            .run(60.0)
            .make_up(Joint::DrierInlet, 37.0)
            .make_up(Joint::DrierOutlet, 37.0)
    }

    pub fn make_up(self, joint: Joint, newton_metres: f64) -> Self {
        let torque = Torque::from_newton_metres(newton_metres);
        self.act(Action::MakeUp { joint, torque })
    }

    /// Nitrogen to this pressure through both sides, then the cylinder shut.
    #[track_caller]
    pub fn nitrogen(self, to_psig: f64) -> Self {
        self.act(Action::Connect {
            hose: Hose::Centre,
            to: HoseEnd::Tool(Name::Nitrogen),
        })
        .hand_valves(1.0)
        .act(Action::of(nitrogen::Action::Valve(true)))
        .act(Action::of(nitrogen::Action::SetRegulator(
            GaugePressure::from_psig(to_psig),
        )))
        .run_until("nitrogen in", 600.0, |job| {
            psig(job, Reading::LowGauge) > 0.97 * to_psig
        })
        .run(30.0)
        .act(Action::of(nitrogen::Action::Valve(false)))
        .act(Action::of(nitrogen::Action::SetRegulator(
            GaugePressure::from_psig(0.0),
        )))
    }

    /// Lets what is in the line set out through the centre hose.
    #[track_caller]
    pub fn release(self) -> Self {
        self.act(Action::TakeOff(Hose::Centre))
            .act(Action::Connect {
                hose: Hose::Centre,
                to: HoseEnd::OpenAir,
            })
            .hand_valves(1.0)
            .run_until("released", 900.0, |job| psig(job, Reading::LowGauge) < 1.5)
            .hand_valves(0.0)
            .act(Action::TakeOff(Hose::Centre))
    }

    /// The pump on the centre hose, running, the micron gauge somewhere.
    pub fn start_pump(self, gauge: GaugePlace) -> Self {
        self.act(Action::Connect {
            hose: Hose::Centre,
            to: HoseEnd::Tool(Name::VacuumPump),
        })
        .act(Action::MicronGauge(gauge))
        .hand_valves(1.0)
        .act(Action::of(vacuum_pump::Action::Inlet(true)))
        .act(Action::of(vacuum_pump::Action::Run(true)))
    }

    /// Pump and hoses shut off, the micron gauge put away.
    pub fn end_evacuation(self) -> Self {
        self.hand_valves(0.0)
            .act(Action::of(vacuum_pump::Action::Inlet(false)))
            .act(Action::of(vacuum_pump::Action::Run(false)))
            .act(Action::MicronGauge(GaugePlace::Cart))
    }

    /// The charge back into the line set, liquid first.
    pub fn let_back(self) -> Self {
        self.act(Action::Stem {
            line: Line::Liquid,
            open: Fraction::clamped(0.1),
        })
        .run(60.0)
        .back_seat(Line::Liquid)
        .back_seat(Line::Suction)
    }

    pub fn truth(&self) -> Truth {
        self.job.truth()
    }

    /// The sizes of the findings of a kind, together.
    pub fn found(&self, kind: FindingKind) -> f64 {
        self.job
            .findings()
            .iter()
            .filter(|f| f.kind == kind)
            .map(|f| f.size)
            .sum()
    }

    /// How many findings of a kind there are.
    pub fn count(&self, kind: FindingKind) -> usize {
        self.job
            .findings()
            .iter()
            .filter(|f| f.kind == kind)
            .count()
    }

    pub fn sniff(self, spot: Spot) -> Self {
        self.act(Action::Sniff(spot)).run(8.0)
    }

    pub fn shows(&self, reading: Reading) -> f64 {
        shows(&self.job, reading)
    }
}

/// What an instrument shows, SI; panics when it shows nothing.
#[track_caller]
pub fn shows(job: &Job, reading: Reading) -> f64 {
    job.reading(reading)
        .quantity()
        .unwrap_or_else(|| panic!("{reading:?} shows {}", job.reading(reading)))
        .si
}

/// What a gauge shows, psig; infinite beyond its scale.
pub fn psig(job: &Job, reading: Reading) -> f64 {
    job.reading(reading)
        .quantity()
        .map_or(f64::INFINITY, |q| q.si / PSI)
}

/// What the micron gauge shows; infinite when it is over range.
pub fn microns(job: &Job) -> f64 {
    job.reading(Reading::Microns)
        .quantity()
        .map_or(f64::INFINITY, |q| q.si / coldbench::units::MICRON)
}

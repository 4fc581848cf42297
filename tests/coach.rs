//! The coach along whole jobs: it has a thought at every moment, moves on as things are met, never
//! says where to put a hand, and tells what a mistake costs.

use coldbench::attempt::Observer;
use coldbench::coach::{
    Depth, Happening, Price, Slip, Teller, Want, happenings, lost, outlook, price, slips,
};
use coldbench::job::procedure::{Performance, Procedure};
use coldbench::job::{Driver, Job, Refusal, TICKS_PER_SECOND};
use coldbench::kit::vacuum_pump;
use coldbench::marking::{Course, CourseRecorder, evidence};
use coldbench::plant::{Joint, Line, Spot, ThermostatCall};
use coldbench::scenario::{Costs, Criterion, Rule, Scenario, shipped_names};
use coldbench::text::Language;
use coldbench::units::Time;
use coldbench::words::{
    Action, Finding, FindingKind, Hose, HoseEnd, Level, Milestone, SheetField, ThermometerPlace,
};
use std::sync::LazyLock;

/// Looks on while a job is done, and keeps each thought.
struct Coached {
    job: Job,
    scenario: Scenario,
    course: CourseRecorder,
    thoughts: Vec<(Want, [String; 3])>,
}

impl Coached {
    fn at(name: &str) -> Self {
        let scenario = Scenario::shipped(name).expect("it is shipped");
        let mut coached = Self {
            job: Job::new(&scenario),
            scenario,
            course: CourseRecorder::default(),
            thoughts: Vec::new(),
        };
        coached.think();
        coached
    }

    /// After a procedure of the scenario was done to its end.
    fn through(name: &str, how: &str) -> Self {
        let procedure = Procedure::shipped(&format!("{name}_{how}")).expect("it is shipped");
        let mut coached = Self::at(name);
        Performance::new(&mut coached, &mut |_| {})
            .run(&procedure)
            .expect("the procedure can be done");
        coached
    }

    fn think(&mut self) {
        let course = self.course.so_far(&self.job);
        let want = outlook(course, &self.scenario.file.rubric, &self.job).next;
        let teller = Teller {
            course,
            target: self.scenario.unit.nameplate.target,
            level: &evidence::level,
        };
        let told = [Depth::Aim, Depth::Way, Depth::Goal].map(|depth| {
            let told = teller.tell(&want, depth);
            let spanish = told.in_language(Language::Spanish);
            assert!(
                spanish.len() > 20 && spanish != told.to_string(),
                "{spanish}"
            );
            told.to_string()
        });
        self.thoughts.push((want, told));
    }

    fn act(&mut self, action: Action) {
        self.apply(action).expect("it can be done");
    }

    fn run(&mut self, seconds: u64) {
        for _ in 0..seconds * TICKS_PER_SECOND {
            self.tick();
        }
    }

    fn course(&mut self) -> &Course {
        self.course.so_far(&self.job)
    }

    fn happened(&mut self) -> Vec<Happening> {
        let refrigerant = self.scenario.unit.refrigerant.get();
        let costs = self.scenario.file.costs.clone();
        happenings(self.course(), &costs, refrigerant)
    }

    /// The thought of now, to the last depth.
    fn goal(&mut self) -> String {
        self.think();
        let (_, [_, _, goal]) = self.thoughts.last().expect("it was thought just now");
        goal.clone()
    }
}

impl Driver for Coached {
    fn apply(&mut self, action: Action) -> Result<(), Refusal> {
        let answer = self.job.apply(action);
        self.course.action(&self.job, &action, answer.is_err());
        self.think();
        answer
    }

    fn tick(&mut self) {
        self.job.tick();
        if self.job.now().is_multiple_of(TICKS_PER_SECOND) {
            self.course.second(&self.job);
        }
        if self.job.now().is_multiple_of(60 * TICKS_PER_SECOND) {
            self.think();
        }
    }

    fn job(&self) -> &Job {
        &self.job
    }
}

/// What came of the right way of each shipped scenario: it takes long, so it is done once.
struct RightWay {
    name: &'static str,
    scenario: Scenario,
    thoughts: Vec<(Want, [String; 3])>,
    slips: Vec<Slip>,
    happened: Vec<Happening>,
}

static RIGHT_WAYS: LazyLock<Vec<RightWay>> = LazyLock::new(|| {
    shipped_names()
        .map(|name| {
            let mut coached = Coached::through(name, "right");
            let refrigerant = coached.scenario.unit.refrigerant.get();
            RightWay {
                name,
                slips: slips(coached.job.sheet(), refrigerant),
                happened: coached.happened(),
                scenario: coached.scenario,
                thoughts: coached.thoughts,
            }
        })
        .collect()
});

/// What somebody says who points at the screen in place of the circuit.
const POINTS_AT_THE_SCREEN: [&str; 9] = [
    "click", "button", "select", "menu", " tab ", "drag", "slider", "window", "tick the",
];

#[test]
fn along_each_right_way_there_is_a_thought_at_every_moment_and_it_moves_on() {
    for RightWay { name, thoughts, .. } in RIGHT_WAYS.iter() {
        let mut different: Vec<&str> = Vec::new();
        for (want, told) in thoughts {
            for text in told {
                assert!(text.trim().len() > 20, "{name}: {want:?}: {text:?}");
                let low = text.to_lowercase();
                let points = POINTS_AT_THE_SCREEN
                    .iter()
                    .find(|word| low.contains(**word));
                assert_eq!(points, None, "{name}: {text}");
            }
            assert!(
                told[0].ends_with('?'),
                "{name}: the aim is asked: {}",
                told[0]
            );
            if !different.contains(&told[0].as_str()) {
                different.push(&told[0]);
            }
        }
        // A repair has some twenty things to think of; each of the shipped jobs asks for most.
        assert!(different.len() >= 14, "{name}: {different:#?}");
        let (last, _) = thoughts.last().expect("it thought");
        assert_eq!(*last, Want::HandBack, "{name}: at the end nothing is left");
    }
}

#[test]
fn a_thought_gives_way_when_what_it_wants_is_done() {
    let mut job = Coached::at("clogged_drier");
    assert!(matches!(
        job.thoughts.last(),
        Some((
            Want::Guard {
                kind: FindingKind::Unprotected,
                ..
            },
            _
        ))
    ));
    job.act(Action::Protect(true));
    let wanted = |job: &Coached| match job.thoughts.last() {
        Some((Want::Reach { what, before, .. }, _)) => Some((*what, *before)),
        _ => None,
    };
    let low = (Milestone::Purged(Hose::Low), Some(Milestone::CoolingCalled));
    assert_eq!(wanted(&job), Some(low));
    hook_up(&mut job);
    job.act(Action::Purge(Hose::Low));
    let high = (
        Milestone::Purged(Hose::High),
        Some(Milestone::CoolingCalled),
    );
    assert_eq!(wanted(&job), Some(high));
    // Called for cooling with air in the hose: that chance has passed, the coach goes on.
    job.act(Action::Thermostat(ThermostatCall::Cool));
    assert_ne!(wanted(&job), Some(high));
    let scenario = job.scenario.clone();
    let rubric = &scenario.file.rubric;
    let now = job.job.clone();
    let gone: Vec<&str> = outlook(job.course(), rubric, &now)
        .passed
        .into_iter()
        .map(|place| rubric[place].text.as_str())
        .collect();
    assert_eq!(gone, ["High hose purged"]);
}

#[test]
fn the_last_depth_names_the_value_of_the_rubric_and_how_long_it_has_been_so() {
    let mut job = Coached::at("clogged_drier");
    job.act(Action::Protect(true));
    hook_up(&mut job);
    job.act(Action::Purge(Hose::Low));
    job.act(Action::Purge(Hose::High));
    job.act(Action::Clamp(ThermometerPlace::OutdoorAir));
    job.run(120);
    assert!(job.goal().contains("within 4.0 psi"), "{}", job.goal());
    let standing = job.job.instruments_for(SheetField::StandingPressure);
    let value = standing.expect("the gauge is on").inch_pound();
    job.act(Action::Write {
        field: SheetField::StandingPressure,
        value,
    });
    assert!(
        job.goal()
            .contains("for 10 min; now: compressor not running"),
        "{}",
        job.goal()
    );
    job.act(Action::Thermostat(ThermostatCall::Cool));
    job.run(240);
    assert!(job.goal().contains("so for 4 min now"), "{}", job.goal());
}

#[test]
fn no_thought_before_the_diagnosis_gives_it_away() {
    for way in RIGHT_WAYS.iter() {
        let (name, scenario) = (way.name, &way.scenario);
        let fault = scenario.file.faults.first().expect("something is planted");
        let place = fault.spot().map(|spot| spot.label().to_string());
        let label = fault.kind().label().to_string();
        let is_diagnosed = |want: &Want| {
            matches!(
                want,
                Want::Reach {
                    what: Milestone::FrontSeated(_),
                    ..
                }
            )
        };
        let before = way
            .thoughts
            .iter()
            .take_while(|(want, _)| !is_diagnosed(want));
        for (_, told) in before {
            for text in told {
                assert!(!text.contains(&label), "{name}: {text}");
                assert!(
                    place.as_ref().is_none_or(|place| !text.contains(place)),
                    "{name}: {text}"
                );
            }
        }
    }
}

#[test]
fn refrigerant_that_is_let_go_is_priced_by_the_gram() {
    let mut job = Coached::at("clogged_drier");
    job.act(Action::Protect(true));
    hook_up(&mut job);
    // The centre hose is open to the air, and both hand valves let the unit's charge out by it.
    job.act(Action::Connect {
        hose: Hose::Centre,
        to: HoseEnd::OpenAir,
    });
    job.act(Action::HandValve {
        hose: Hose::High,
        open: coldbench::units::Fraction::ONE,
    });
    job.run(20);
    let released: f64 = job
        .course()
        .findings
        .iter()
        .filter(|finding| finding.kind == FindingKind::Released)
        .map(|finding| finding.size)
        .sum();
    assert!(released > 0.005, "some grams went: {released} kg");
    let happened = job.happened();
    let costs = &job.scenario.file.costs;
    let total = lost(&happened, &job.scenario.file.rubric, Time::default(), costs);
    let by_hand = released * 58.0;
    assert!(
        (total - by_hand).abs() < 1e-9,
        "{total} for {released} kg at 58 a kg"
    );
    // R-22 warms as much as 1,810 times its mass of carbon dioxide (IPCC AR4, from memory).
    let carbon_dioxide: f64 = happened
        .iter()
        .filter_map(|happening| happening.carbon_dioxide)
        .map(coldbench::units::Mass::kilograms)
        .sum();
    assert!((carbon_dioxide / released - 1810.0).abs() < 1.0);
}

#[test]
fn what_leaks_as_found_is_not_told_before_somebody_has_a_wrench_on_it() {
    let mut job = Coached::at("leaking_flare");
    job.run(600);
    let noted = |job: &mut Coached| job.course().findings.len();
    assert!(noted(&mut job) > 0, "the watch sees the planted leak");
    assert_eq!(job.happened(), [], "the coach keeps it to itself");
    job.act(Action::Protect(true));
    job.act(Action::Loosen(Joint::IndoorSuction));
    job.run(5);
    let told = job.happened();
    assert!(
        told.iter().any(|h| h.kind == FindingKind::Released),
        "{told:?}"
    );
}

#[test]
fn a_price_is_a_plain_sum() {
    let costs = Costs {
        money: "$".to_owned(),
        refrigerant: 50.0,
        compressor: 1000.0,
        micron_gauge: 200.0,
        drier: 30.0,
        pump_oil: 10.0,
        hour: 80.0,
    };
    let of = |kind, size| price(kind, size, &costs);
    assert_eq!(of(FindingKind::Released, 0.012), Price::Lost(0.6));
    assert_eq!(
        of(FindingKind::EnergisedInDeepVacuum, 1.0),
        Price::Lost(1000.0)
    );
    assert_eq!(
        of(FindingKind::MicronGaugeOverPressured, 4e5),
        Price::Lost(200.0)
    );
    assert_eq!(
        of(FindingKind::of(vacuum_pump::Finding::UnderPressure), 4e5),
        Price::Lost(10.0)
    );
    assert_eq!(
        of(FindingKind::DrierBackwards, 1.0),
        Price::Lost(30.0 + 3.0 * 80.0)
    );
    assert_eq!(
        of(FindingKind::LiquidToCompressor, 0.1),
        Price::Risked(1000.0)
    );
    assert_eq!(of(FindingKind::WorkedLive, 1.0), Price::Priceless);

    // Three caps forgotten are one way back; and an hour over the time is an hour of work.
    let refrigerant = coldbench::fluid::refrigerant::Refrigerant::named("R-22").expect("known");
    let cap = |spot: Spot| Finding {
        tick: 100,
        kind: FindingKind::CapLeftOff,
        size: 1.0,
        at: spot.into(),
    };
    let course = Course {
        findings: vec![
            cap(Spot::Stem(Line::Liquid)),
            cap(Spot::Port(Line::Liquid)),
            cap(Spot::Port(Line::Suction)),
        ],
        ..Course::default()
    };
    let happened = happenings(&course, &costs, refrigerant);
    let rubric = [Criterion {
        text: "In time".to_owned(),
        points: 1,
        critical: false,
        skill: None,
        rule: Rule::InTime(Time::from_minutes(120.0)),
    }];
    let after = |minutes| lost(&happened, &rubric, Time::from_minutes(minutes), &costs);
    assert!((after(90.0) - 80.0).abs() < 1e-9);
    assert!((after(180.0) - 160.0).abs() < 1e-9);
}

#[test]
fn a_sum_that_does_not_follow_from_its_figures_is_worked_out() {
    let mut job = Coached::at("clogged_drier");
    let mut write = |field, value| job.act(Action::Write { field, value });
    // R-22 boils at 42 °F under 71.4 psig (pressure-temperature cards of the trade, from memory),
    // so 58 °F on the suction line are 16 °F of superheat.
    write(SheetField::SuctionPressure, Level::Psig(71.4));
    write(SheetField::SuctionLine, Level::Fahrenheit(58.0));
    write(SheetField::Superheat, Level::FahrenheitDegrees(12.0));
    // 105 °F under 210.8 psig; 95 °F on the liquid line are 10 °F of subcooling.
    write(SheetField::LiquidPressure, Level::Psig(210.8));
    write(SheetField::LiquidLine, Level::Fahrenheit(95.0));
    write(SheetField::Subcooling, Level::FahrenheitDegrees(10.0));
    // The charging chart gives 15 °F at 85 °F outdoors and 66 °F wet bulb.
    write(SheetField::OutdoorAir, Level::Fahrenheit(85.0));
    write(SheetField::ReturnWetBulb, Level::Fahrenheit(66.0));
    write(SheetField::TargetSuperheat, Level::FahrenheitDegrees(25.0));
    let refrigerant = job.scenario.unit.refrigerant.get();
    let found = slips(job.job.sheet(), refrigerant);
    let fields: Vec<SheetField> = found.iter().map(|slip| slip.field).collect();
    assert_eq!(fields, [SheetField::Superheat, SheetField::TargetSuperheat]);
    let superheat = found[0].gives * 1.8;
    assert!((superheat - 16.0).abs() < 0.5, "{superheat} °F");
    let text = found[0].text.to_string();
    assert!(
        text.starts_with("Superheat: suction line 58.0 °F less saturation 4"),
        "{text}"
    );
    assert!(
        text.contains("at 71.4 psig gives 1") && text.ends_with("you wrote 12.0 °F"),
        "{text}"
    );
    // A new pressure: the sum was made from another one, so nothing is said of it any more.
    job.run(1);
    let pressure = Level::Psig(60.0);
    job.act(Action::Write {
        field: SheetField::SuctionPressure,
        value: pressure,
    });
    let found = slips(job.job.sheet(), refrigerant);
    assert!(found.iter().all(|slip| slip.field != SheetField::Superheat));
}

#[test]
fn the_right_ways_make_no_slip_and_lose_little() {
    for way in RIGHT_WAYS.iter() {
        let name = way.name;
        assert_eq!(way.slips, [], "{name}");
        let costs = &way.scenario.file.costs;
        let total = lost(&way.happened, &[], Time::default(), costs);
        let happened = &way.happened;
        assert!(
            (0.05..15.0).contains(&total),
            "{name}: {total}: {happened:#?}"
        );
    }
}

fn hook_up(job: &mut Coached) {
    for (line, hose, to) in [
        (Line::Suction, Hose::Low, HoseEnd::SuctionPort),
        (Line::Liquid, Hose::High, HoseEnd::LiquidPort),
    ] {
        job.act(Action::PortCap { line, on: false });
        job.act(Action::Connect { hose, to });
    }
}

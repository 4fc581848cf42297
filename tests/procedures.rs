//! How a procedure is carried out: through the door, with a limit on every wait.

use coldbench::job::procedure::{CourseLine, Performance, Procedure, Stopped};
use coldbench::job::{Driver, Job, Refusal};
use coldbench::kit::refrigerant_cylinder;
use coldbench::kit::tools;
use coldbench::scenario::Scenario;
use coldbench::text::Message;
use coldbench::words::Action;

/// A door that writes down what passes, and refuses what it is told to.
struct Watched {
    job: Job,
    passed: Vec<Action>,
    refuses: fn(&Action) -> bool,
}

impl Watched {
    fn refusing(refuses: fn(&Action) -> bool) -> Self {
        let scenario = Scenario::shipped("clogged_drier").expect("shipped");
        Self {
            job: Job::new(&scenario),
            passed: Vec::new(),
            refuses,
        }
    }
}

impl Driver for Watched {
    fn apply(&mut self, action: Action) -> Result<(), Refusal> {
        if (self.refuses)(&action) {
            return Err(Refusal::because(Message::verbatim("The hose is in use.")));
        }
        self.passed.push(action);
        self.job.apply(action)
    }

    fn tick(&mut self) {
        self.job.tick();
    }

    fn job(&self) -> &Job {
        &self.job
    }
}

fn perform(door: &mut Watched, steps: &str) -> (Vec<CourseLine>, Result<(), Stopped>) {
    let text =
        format!("(version: 1, title: \"A drill\", scenario: \"clogged_drier\", steps: [{steps}])");
    let procedure = Procedure::from_bytes("drill.ron", text.as_bytes()).expect("well written");
    let mut course = Vec::new();
    let mut tell = |line| course.push(line);
    let end = Performance::new(door, &mut tell).run(&procedure);
    (course, end)
}

#[test]
fn each_step_gives_a_line_with_its_time() {
    let mut door = Watched::refusing(|_| false);
    let (course, end) = perform(
        &mut door,
        "Say(\"Glasses on.\"), Do(Protect(true)), Wait(Seconds(90)), Do(Protect(false))",
    );
    assert_eq!(end, Ok(()));
    let ticks: Vec<u64> = course.iter().map(|line| line.tick).collect();
    assert_eq!(ticks, [0, 0, 900, 900]);
    assert_eq!(door.passed, [Action::Protect(true), Action::Protect(false)]);
    assert!(course[0].to_string().contains("Glasses on."));
    assert!(
        course[3]
            .to_string()
            .starts_with("0:01:30      4  glasses and gloves off")
    );
}

#[test]
fn a_wait_that_does_not_come_true_says_what_the_instrument_shows() {
    let mut door = Watched::refusing(|_| false);
    let (course, end) = perform(
        &mut door,
        "Do(Protect(true)),
         Until(reading: NitrogenOutlet, is: Above(Psig(50)), within: Seconds(30)),
         Do(Protect(false))",
    );
    let stopped = end.expect_err("nobody opens the cylinder").to_string();
    assert!(
        stopped.contains("step 2: until the nitrogen outlet is above 50.0 psig"),
        "{stopped}"
    );
    assert!(
        stopped.contains("not so within 0.5 min: it shows"),
        "{stopped}"
    );
    assert_eq!(course.len(), 1);
    assert_eq!(door.passed, [Action::Protect(true)]);
}

#[test]
fn a_refusal_stops_with_its_reason() {
    let mut door = Watched::refusing(|action| matches!(action, Action::Connect { .. }));
    let steps = "Do(Protect(true)), Do(Connect(hose: Low, to: SuctionPort))";
    let (_, end) = perform(&mut door, steps);
    let stopped = end.expect_err("refused").to_string();
    assert_eq!(
        stopped.lines().next(),
        Some("0:00:00 step 2: low hose to the suction port: refused: The hose is in use.")
    );
}

#[test]
fn a_repetition_gives_up_after_its_rounds() {
    let mut door = Watched::refusing(|_| false);
    let (course, end) = perform(
        &mut door,
        "Repeat(until: Shows(NitrogenOutlet, Above(Psig(50))), at_most: 3, steps: [
            Do(Protect(true)), Wait(Seconds(10)),
        ])",
    );
    let stopped = end.expect_err("never so");
    assert_eq!(stopped.tick, 300);
    assert!(stopped.to_string().contains("still not so after 3 rounds"));
    assert_eq!(course.len(), 6);
    assert_eq!(course[1].step, "1.2");
}

#[test]
fn the_cylinder_is_shut_even_when_the_weight_is_not_reached() {
    let mut door = Watched::refusing(|_| false);
    // The cylinder's hose is on nothing, so the scale never moves.
    let (_, end) = perform(
        &mut door,
        "WeighIn(mass: Ounces(4), opening: 0.5, within: Minutes(1))",
    );
    end.expect_err("nothing flows");
    let Some(Action::Tool(tools::Action::RefrigerantCylinder(
        refrigerant_cylinder::Action::Valve(last),
    ))) = door.passed.last()
    else {
        panic!("the last action shuts the cylinder: {:?}", door.passed);
    };
    assert_eq!(last.get(), 0.0);
}

//! The coach along whole jobs: it has a thought at every moment, moves on as things are met, tells
//! what a mistake costs, and never says where to put a hand.

use coldbench::attempt::Observer;
use coldbench::coach::{Depth, Teller, Want, next};
use coldbench::job::procedure::{Performance, Procedure};
use coldbench::job::{Door, Job, Refusal, TICKS_PER_SECOND};
use coldbench::marking::{CourseRecorder, phrases};
use coldbench::scenario::{Scenario, shipped_names};
use coldbench::words::Action;

/// Looks on while a procedure is done, and keeps each new thought.
struct Coached<'a> {
    job: Job,
    scenario: &'a Scenario,
    course: CourseRecorder,
    thoughts: Vec<(u64, Want, [String; 3])>,
}

impl<'a> Coached<'a> {
    fn new(scenario: &'a Scenario) -> Self {
        Self {
            job: Job::new(scenario),
            scenario,
            course: CourseRecorder::default(),
            thoughts: Vec::new(),
        }
    }

    fn think(&mut self) {
        let course = self.course.so_far(&self.job);
        let want = next(course, &self.scenario.file.rubric, &self.job);
        let teller = Teller {
            course,
            target: self.scenario.unit.nameplate.target,
            quantity: &phrases::quantity,
        };
        let told = [Depth::Aim, Depth::Way, Depth::Goal].map(|depth| teller.tell(&want, depth));
        self.thoughts.push((self.job.now(), want, told));
    }
}

impl Door for Coached<'_> {
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

#[test]
fn dump() {
    for name in shipped_names() {
        let scenario = Scenario::shipped(name).expect("it is shipped");
        let procedure = Procedure::shipped(&format!("{name}_right")).expect("it is shipped");
        let mut coached = Coached::new(&scenario);
        coached.think();
        let begun = std::time::Instant::now();
        Performance::new(&mut coached, &mut |_| {})
            .run(&procedure)
            .expect("it is the right way");
        println!("== {name} {:?} {}", begun.elapsed(), coached.thoughts.len());
        let mut last = String::new();
        for (tick, _, told) in &coached.thoughts {
            let goal = told[2].split(';').next().unwrap_or_default().to_owned();
            if told[0] != last {
                println!("{} | {} | {goal}", phrases::clock(*tick), told[0]);
                last = told[0].clone();
            }
        }
    }
}

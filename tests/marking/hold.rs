//! What must hold together for a time without a break.

use crate::story::{Story, low_below, microns_below, open};
use coldbench::kit::vacuum_pump;
use coldbench::plant::{Joint, Line};
use coldbench::scenario::Rule;
use coldbench::units::{Time, Torque};
use coldbench::words::{Action, Condition, Level, Milestone, Reading, Status};

/// The decay test: shut off from the pump, below 500 microns for 10 min.
fn decay(within: Option<Level>, after: Option<Milestone>, before: Option<Milestone>) -> Rule {
    Rule::Hold {
        all: vec![
            Condition::Is(Status::of(vacuum_pump::Status::ShutOff)),
            microns_below(500.0),
        ],
        lasting: Time::from_minutes(10.0),
        within,
        after,
        before,
    }
}

fn shut_off_at(microns: f64) -> Story {
    Story::new()
        .shows(Reading::Microns, Level::Microns(microns))
        .seconds(3720)
        .is(Status::of(vacuum_pump::Status::ShutOff))
        .does(Action::of(vacuum_pump::Action::Inlet(false)))
}

#[test]
fn a_hold_of_exactly_its_time_is_met() {
    let story = shut_off_at(310.0).seconds(600);
    let said = [
        (
            37200,
            "10 min from 1:02:00: pump shut off, micron gauge 310 microns",
        ),
        (43200, "at its end pump shut off, micron gauge 310 microns"),
    ];
    story.expect(decay(None, None, None), 4, &said);
}

#[test]
fn a_second_less_is_missed_and_the_evidence_says_how_long_it_was() {
    let story = shut_off_at(310.0).seconds(599);
    let said = "longest 9 min 59 s, from 1:02:00, then the job ended";
    story.expect(decay(None, None, None), 0, &[(37200, said)]);
}

#[test]
fn a_rise_ends_it_and_the_evidence_says_what_rose() {
    let story = shut_off_at(310.0)
        .seconds(370)
        .shows(Reading::Microns, Level::Microns(1240.0))
        .seconds(400);
    let said = "longest 6 min 10 s, from 1:02:00, then micron gauge 1,240 microns, \
                not below 500 microns";
    story.expect(decay(None, None, None), 0, &[(37200, said)]);
}

#[test]
fn an_interruption_starts_it_anew() {
    let halves = shut_off_at(310.0)
        .seconds(400)
        .no_longer(Status::of(vacuum_pump::Status::ShutOff))
        .does(Action::of(vacuum_pump::Action::Inlet(true)))
        .is(Status::of(vacuum_pump::Status::ShutOff))
        .does(Action::of(vacuum_pump::Action::Inlet(false)))
        .seconds(400);
    // Shorter than a second, between two samples, and still seen.
    let said = "longest 6 min 40 s, from 1:02:00, then pump not shut off";
    halves.expect(decay(None, None, None), 0, &[(37200, said)]);
    let whole = halves.seconds(200);
    assert_eq!(whole.marked(decay(None, None, None)).points, 4);
}

#[test]
fn a_hold_between_two_actions_lasts_to_the_second_though_no_sample_falls_on_it() {
    let story = Story::new()
        .shows(Reading::Microns, Level::Microns(310.0))
        .ticks(15)
        .is(Status::of(vacuum_pump::Status::ShutOff))
        .does(Action::of(vacuum_pump::Action::Inlet(false)))
        .ticks(6000)
        .does(open(Line::Liquid));
    let before = Some(Milestone::Opened(Line::Liquid));
    assert_eq!(story.marked(decay(None, None, before)).points, 4);
    let short = Story::new()
        .shows(Reading::Microns, Level::Microns(310.0))
        .ticks(15)
        .is(Status::of(vacuum_pump::Status::ShutOff))
        .does(Action::of(vacuum_pump::Action::Inlet(false)))
        .ticks(5999)
        .does(open(Line::Liquid));
    let said = "longest 9 min 59 s, from 0:00:01, then the next step was begun";
    short.expect(decay(None, None, before), 0, &[(15, said)]);
}

#[test]
fn what_never_held_is_told_by_its_nearest_moment() {
    let story = Story::new()
        .is(Status::of(vacuum_pump::Status::ShutOff))
        .shows(Reading::Microns, Level::Microns(2300.0))
        .seconds(10)
        .shows(Reading::Microns, Level::Microns(900.0))
        .seconds(10)
        .shows(Reading::Microns, Level::Microns(4000.0))
        .seconds(10);
    let said = "never so; nearest: micron gauge 900 microns, not below 500 microns";
    story.expect(decay(None, None, None), 0, &[(110, said)]);
    let said = "never so";
    Story::new().expect(decay(None, None, None), 0, &[(0, said)]);
}

#[test]
fn a_reading_may_move_no_further_than_it_is_let() {
    let steady = |microns: f64| {
        let story = (0..60).fold(shut_off_at(200.0), |story, minute| {
            let level = Level::Microns(200.0 + f64::from(minute) * microns);
            story.shows(Reading::Microns, level).seconds(10)
        });
        story.seconds(1)
    };
    let rule = || decay(Some(Level::Microns(59.0)), None, None);
    // Fifty-nine steps of one micron: exactly what is let.
    assert_eq!(steady(1.0).marked(rule()).points, 4);
    let drifting = steady(1.1).marked(rule());
    assert_eq!(drifting.points, 0);
    let said = drifting.evidence[0].text.to_string();
    assert!(
        said.contains("then it had moved too far: pump shut off, micron gauge 25"),
        "{said}"
    );
}

#[test]
fn a_fall_back_into_the_spread_counts_from_where_it_fits() {
    let story = shut_off_at(480.0)
        .seconds(60)
        .shows(Reading::Microns, Level::Microns(300.0))
        .seconds(600);
    let rule = |minutes: f64| Rule::Hold {
        all: vec![microns_below(500.0)],
        lasting: Time::from_minutes(minutes),
        within: Some(Level::Microns(50.0)),
        after: Some(Milestone::of(vacuum_pump::Milestone::Started)),
        before: None,
    };
    let story_with_start = |s: Story| s.does(Action::of(vacuum_pump::Action::Run(true)));
    let never = story.marked(rule(9.0));
    assert_eq!(
        never.evidence[0].text.to_string(),
        "never: started the vacuum pump"
    );
    let story = story_with_start(Story::new().shows(Reading::Microns, Level::Microns(480.0)))
        .seconds(60)
        .shows(Reading::Microns, Level::Microns(300.0))
        .seconds(600);
    // The step comes with the sample at 61 s; from there to 660 s it lasts.
    assert_eq!(story.marked(rule(599.0 / 60.0)).points, 4);
    assert_eq!(story.marked(rule(10.0)).points, 0);
}

#[test]
fn a_spread_that_measures_none_of_the_readings_is_never_kept() {
    let story = shut_off_at(310.0).seconds(700);
    let rule = decay(Some(Level::FahrenheitDegrees(2.0)), None, None);
    let mark = story.marked(rule);
    assert_eq!(mark.points, 0);
    let said = "never so; nearest: no reading that is asked for is measured so";
    assert_eq!(mark.evidence[0].text.to_string(), said);
}

#[test]
fn a_hold_counts_only_after_the_last_time_and_before_the_next() {
    let torque = Torque::from_newton_metres(36.0);
    let joint = Joint::DrierOutlet;
    let make_up = Action::MakeUp { joint, torque };
    let rule = || Rule::Hold {
        all: vec![low_below(151.0)],
        lasting: Time::from_minutes(10.0),
        within: Some(Level::Psi(1.0)),
        after: Some(Milestone::MadeUp(joint)),
        before: Some(Milestone::Opened(Line::Liquid)),
    };
    let tested = Story::new()
        .shows(Reading::LowGauge, Level::Psig(150.0))
        .does(make_up)
        .seconds(600)
        .does(open(Line::Liquid));
    assert_eq!(tested.marked(rule()).points, 4);
    // Made up again at the end: what was tested is not what is handed back.
    let retorqued = Story::new()
        .shows(Reading::LowGauge, Level::Psig(150.0))
        .does(make_up)
        .seconds(600)
        .does(make_up)
        .seconds(30)
        .does(open(Line::Liquid))
        .seconds(900);
    let said = "longest 30 s, from 0:10:00, then the next step was begun";
    retorqued.expect(rule(), 0, &[(6000, said)]);
}

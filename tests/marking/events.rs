//! What must never happen, what must come first, what must be done.

use crate::story::{Story, front_seat, low_below, open};
use coldbench::kit::{nitrogen, vacuum_pump};
use coldbench::plant::{Arrow, Joint, Line};
use coldbench::scenario::Rule;
use coldbench::words::{
    Action, Bound, Condition, FindingKind, GaugePlace, Level, Milestone, Reading, Status,
};

// Never.

fn never(finding: FindingKind, up_to: Option<Level>) -> Rule {
    Rule::Never { finding, up_to }
}

#[test]
fn never_is_met_where_nothing_was_noted() {
    let story = Story::new().finds(FindingKind::WorkedLive, 1.0).seconds(5);
    let said = "nothing of the kind was noted";
    story.expect(
        never(FindingKind::of(nitrogen::Finding::NoRegulator), None),
        4,
        &[(50, said)],
    );
}

#[test]
fn one_finding_fails_never_without_a_limit() {
    let story = Story::new()
        .seconds(9)
        .finds(FindingKind::WorkedLive, 1.0)
        .seconds(5);
    let rule = never(FindingKind::WorkedLive, None);
    story.expect(
        rule,
        0,
        &[(
            90,
            "work at the compressor without lock and tag on the disconnect",
        )],
    );
}

#[test]
fn never_adds_sizes_up_and_lets_pass_exactly_its_limit() {
    let rule = || never(FindingKind::Released, Some(Level::Grams(20.0)));
    let story = Story::new()
        .seconds(1)
        .finds(FindingKind::Released, 0.012)
        .seconds(1)
        .finds(FindingKind::Released, 0.008);
    let met = [
        (10, "12.0 g of refrigerant released at the compressor"),
        (20, "8.0 g of refrigerant released at the compressor"),
        (20, "20.0 g in all, 20.0 g let pass"),
    ];
    story.expect(rule(), 4, &met);
    let story = story.finds(FindingKind::Released, 0.0001);
    let missed = story.marked(rule());
    assert_eq!(missed.points, 0);
    let last = missed
        .evidence
        .last()
        .expect("it has evidence")
        .text
        .to_string();
    assert_eq!(last, "20.1 g in all, 20.0 g is the limit");
}

#[test]
fn never_counts_events_that_have_no_size() {
    let rule = || never(FindingKind::HighPressureTrip, Some(Level::Plain(1.0)));
    let once = Story::new().finds(FindingKind::HighPressureTrip, 1.0);
    assert_eq!(once.marked(rule()).points, 4);
    let twice = once.finds(FindingKind::HighPressureTrip, 1.0);
    assert_eq!(twice.marked(rule()).points, 0);
}

#[test]
fn of_pressures_the_highest_counts() {
    let rule = || never(FindingKind::OpenedUnderPressure, Some(Level::Psig(8.0)));
    let psi = 6_894.757_293_168;
    let story = Story::new()
        .finds(FindingKind::OpenedUnderPressure, 5.0 * psi)
        .finds(FindingKind::OpenedUnderPressure, 7.0 * psi);
    let said = [
        (0, "the compressor opened under 5 psig"),
        (0, "the compressor opened under 7 psig"),
        (0, "7.0 psig at the most, 8.0 psig let pass"),
    ];
    story.expect(rule(), 4, &said);
    let story = story.finds(FindingKind::OpenedUnderPressure, 9.0 * psi);
    assert_eq!(story.marked(rule()).points, 0);
}

#[test]
fn many_findings_are_counted_and_not_all_quoted() {
    let story = (0..9).fold(Story::new(), |story, _| {
        story.finds(FindingKind::WorkedLive, 1.0).seconds(1)
    });
    let mark = story.marked(never(FindingKind::WorkedLive, None));
    assert_eq!(mark.evidence.len(), 7);
    assert_eq!(mark.evidence[6].text.to_string(), "and 3 more");
    assert_eq!(mark.evidence[6].at, 60);
}

#[test]
fn a_limit_of_another_dimension_lets_nothing_pass() {
    let story = Story::new().finds(FindingKind::Released, 0.001);
    let rule = never(FindingKind::Released, Some(Level::Psig(20.0)));
    assert_eq!(story.marked(rule).points, 0);
}

// Order.

fn liquid_before_suction() -> Rule {
    Rule::Order {
        first: Milestone::FrontSeated(Line::Liquid),
        then: Milestone::FrontSeated(Line::Suction),
    }
}

#[test]
fn order_is_met_when_the_first_comes_before_the_first_then() {
    let story = Story::new()
        .seconds(1)
        .does(front_seat(Line::Liquid))
        .seconds(1)
        .does(front_seat(Line::Suction))
        .does(front_seat(Line::Liquid));
    let said = [
        (10, "front-seated the liquid valve"),
        (20, "front-seated the suction valve"),
    ];
    story.expect(liquid_before_suction(), 4, &said);
}

#[test]
fn two_actions_in_one_tick_stand_in_the_order_in_which_they_came() {
    let right = Story::new()
        .does(front_seat(Line::Liquid))
        .does(front_seat(Line::Suction));
    assert_eq!(right.marked(liquid_before_suction()).points, 4);
    let wrong = Story::new()
        .does(front_seat(Line::Suction))
        .does(front_seat(Line::Liquid));
    assert_eq!(wrong.marked(liquid_before_suction()).points, 0);
}

#[test]
fn order_is_missed_when_the_second_came_first_even_if_done_again() {
    let story = Story::new()
        .does(front_seat(Line::Suction))
        .seconds(2)
        .does(front_seat(Line::Liquid))
        .seconds(2)
        .does(front_seat(Line::Suction));
    let said = [
        (0, "front-seated the suction valve"),
        (20, "only then: front-seated the liquid valve"),
    ];
    story.expect(liquid_before_suction(), 0, &said);
}

#[test]
fn order_asks_for_both() {
    let story = Story::new().does(front_seat(Line::Liquid)).seconds(3);
    let said = [
        (0, "front-seated the liquid valve"),
        (30, "never: front-seated the suction valve"),
    ];
    story.expect(liquid_before_suction(), 0, &said);
    let story = Story::new().does(front_seat(Line::Suction)).seconds(3);
    let said = [
        (0, "front-seated the suction valve"),
        (30, "never: front-seated the liquid valve"),
    ];
    story.expect(liquid_before_suction(), 0, &said);
    let said = "never: front-seated the liquid valve, nor front-seated the suction valve";
    Story::new().expect(liquid_before_suction(), 0, &[(0, said)]);
}

// Done.

fn broke_at_zero(after: Option<Milestone>, before: Option<Milestone>) -> Rule {
    Rule::Done {
        what: Milestone::Broke(Joint::DrierInlet),
        when: vec![low_below(2.0), Condition::Is(Status::LockedOut)],
        after,
        before,
    }
}

#[test]
fn done_is_met_by_one_time_with_every_condition() {
    let story = Story::new()
        .shows(Reading::LowGauge, Level::Psig(45.0))
        .does(Action::Loosen(Joint::DrierInlet))
        .seconds(60)
        .shows(Reading::LowGauge, Level::Psig(1.9))
        .is(Status::LockedOut)
        .does(Action::TakeApart(Joint::DrierInlet));
    let said = "opened the flare at the drier inlet with low gauge 1.9 psig, disconnect locked out";
    story.expect(broke_at_zero(None, None), 4, &[(600, said)]);
}

#[test]
fn done_at_the_bound_itself_is_not_below_it() {
    let story = Story::new()
        .shows(Reading::LowGauge, Level::Psig(2.0))
        .is(Status::LockedOut)
        .does(Action::Loosen(Joint::DrierInlet));
    let said = "opened the flare at the drier inlet, but low gauge 2.0 psig, not below 2.0 psig";
    story.expect(broke_at_zero(None, None), 0, &[(0, said)]);
}

#[test]
fn done_quotes_the_nearest_try() {
    let story = Story::new()
        .shows(Reading::LowGauge, Level::Psig(45.0))
        .does(Action::Loosen(Joint::DrierInlet))
        .seconds(60)
        .shows(Reading::LowGauge, Level::Psig(1.0))
        .does(Action::Loosen(Joint::DrierInlet));
    let said = "opened the flare at the drier inlet, but disconnect not locked out";
    story.expect(broke_at_zero(None, None), 0, &[(600, said)]);
}

#[test]
fn done_says_when_it_never_was() {
    let story = Story::new().seconds(7);
    let said = "never: opened the flare at the drier inlet";
    story.expect(broke_at_zero(None, None), 0, &[(70, said)]);
}

fn nitrogen(after: Option<Milestone>, before: Option<Milestone>) -> Rule {
    Rule::Done {
        what: Milestone::of(nitrogen::Milestone::Opened),
        when: Vec::new(),
        after,
        before,
    }
}

#[test]
fn done_counts_only_after_and_only_before() {
    let after = Some(Milestone::DrierIn);
    let before = Some(Milestone::Opened(Line::Liquid));
    let fit = Action::FitDrier(Arrow::TowardMetering);
    let bottle = Action::of(nitrogen::Action::Valve(true));
    let told = "opened the nitrogen cylinder";

    let right = Story::new()
        .does(open(Line::Liquid))
        .does(fit)
        .seconds(1)
        .does(bottle)
        .seconds(1)
        .does(open(Line::Liquid));
    right.expect(nitrogen(after, before), 4, &[(10, told)]);

    let early = Story::new().does(bottle).seconds(1).does(fit);
    let said = "opened the nitrogen cylinder, but not since: fitted the new drier";
    early.expect(nitrogen(after, before), 0, &[(0, said)]);

    let late = Story::new()
        .does(fit)
        .does(open(Line::Liquid))
        .seconds(1)
        .does(bottle);
    let said = "opened the nitrogen cylinder only when this was past: opened the liquid valve";
    late.expect(nitrogen(after, before), 0, &[(10, said)]);

    let never = Story::new().does(bottle).seconds(1);
    let said = "opened the nitrogen cylinder, but never: fitted the new drier";
    never.expect(nitrogen(after, before), 0, &[(0, said)]);

    let open_ended = Story::new().does(fit).does(bottle);
    open_ended.expect(nitrogen(after, before), 4, &[(0, told)]);
}

#[test]
fn done_looks_at_the_place_of_the_micron_gauge() {
    let rule = || Rule::Done {
        what: Milestone::of(vacuum_pump::Milestone::Started),
        when: vec![Condition::GaugeAt(GaugePlace::SuctionPort)],
        after: None,
        before: None,
    };
    let start = Action::of(vacuum_pump::Action::Run(true));
    let story = Story::new().gauge_at(GaugePlace::Pump).does(start);
    let said = "started the vacuum pump, but micron gauge at the pump, not at the suction port";
    story.expect(rule(), 0, &[(0, said)]);
    let story = story.gauge_at(GaugePlace::SuctionPort).does(start);
    let said = "started the vacuum pump with micron gauge at the suction port";
    story.expect(rule(), 4, &[(0, said)]);
}

#[test]
fn an_instrument_that_shows_nothing_is_in_no_bound_and_over_range_is_above() {
    let rule = |bound| Rule::Done {
        what: Milestone::of(vacuum_pump::Milestone::Started),
        when: vec![Condition::Shows(Reading::Microns, bound)],
        after: None,
        before: None,
    };
    let below = Bound::Below(Level::Microns(500.0));
    let above = Bound::Above(Level::Microns(500.0));
    let start = Action::of(vacuum_pump::Action::Run(true));
    let blank = Story::new().blank(Reading::Microns).does(start);
    let said = "started the vacuum pump, but micron gauge no reading, not below 500 microns";
    blank.expect(rule(below), 0, &[(0, said)]);
    assert_eq!(blank.marked(rule(above)).points, 0);
    let over = Story::new().over_range(Reading::Microns).does(start);
    assert_eq!(over.marked(rule(below)).points, 0);
    let said = "started the vacuum pump with micron gauge over range";
    over.expect(rule(above), 4, &[(0, said)]);
}

//! What must be so in a rubric: every criterion can be met, and measures what it says.

use super::super::document::ERRORS_MAX;
use super::super::{Criterion, Diagnostic, EndState, Located, Rule};
use super::dimension::{check_level, difference_of, name_and_units};
use super::{check_bound, check_text};
use crate::plant::{Fault, FaultKind, Spot};
use crate::units::Time;
use crate::words::{Condition, Dimension, FindingKind, Level, Milestone, Reading, SheetField};

/// What the rules of a rubric are checked against.
struct Against {
    /// The planted faults, where they can be read.
    faults: Option<Vec<Fault>>,
    /// The shortest time in which the rubric wants the job handed back.
    time_limit: Option<Time>,
}

/// Checks the rubric of a scenario.
pub(super) fn check_rubric(file: Located<'_>, wrong: &mut Vec<Diagnostic>) {
    let rubric = file.field("rubric");
    let criteria = rubric.items();
    if criteria.is_empty() && rubric.read::<Vec<Criterion>>().is_some() {
        wrong.push(rubric.error("a rubric must have at least one criterion"));
    }
    let against = Against {
        faults: file.field("faults").read(),
        time_limit: time_limit(&criteria),
    };
    let mut points = 0;
    let mut all_read = true;
    for place in &criteria {
        if wrong.len() >= ERRORS_MAX {
            return;
        }
        let points_here = place.field("points");
        match points_here.read::<u32>() {
            Some(here) if here > 1000 => {
                let message = format!("points must lie in 0..=1000, found {here}");
                wrong.push(points_here.error(message));
                all_read = false;
            }
            Some(here) => points += here,
            None => all_read = false,
        }
        check_text(place.field("text"), "text", wrong);
        check_text(place.field("skill"), "skill", wrong);
        check_rule(place.field("rule"), &against, wrong);
    }
    if !criteria.is_empty() && all_read && points == 0 {
        wrong.push(rubric.error("the criteria of a rubric must give points"));
    }
}

/// Checks one rule. Each field is read by itself, so that one wrong field hides no other.
fn check_rule(rule: Located<'_>, against: &Against, wrong: &mut Vec<Diagnostic>) {
    if let Some(finding) = rule.field("finding").read::<FindingKind>() {
        let limit = rule.field("up_to");
        check_level(
            limit,
            &format!("the size of {finding:?}"),
            finding.dimension(),
            wrong,
        );
        check_not_negative(limit, "up_to", wrong);
    }
    if let Some(state) = rule.field("state").read::<EndState>() {
        check_bound(
            rule.field("must"),
            &format!("{state:?}"),
            state.dimension(),
            wrong,
        );
    }
    if let Some(field) = rule.field("field").read::<SheetField>() {
        let within = rule.field("within");
        let dimension = difference_of(field.dimension());
        check_level(within, &format!("an error of {field:?}"), dimension, wrong);
        check_not_negative(within, "within", wrong);
    }
    for name in ["when", "all"] {
        for condition in rule.field(name).items() {
            if wrong.len() >= ERRORS_MAX {
                break;
            }
            check_condition(condition, wrong);
        }
    }
    check_text(rule.field("question"), "question", wrong);
    match rule.read::<Rule>() {
        Some(Rule::Order { first, then }) => {
            check_comes_later(rule.field("first"), Some(first), wrong);
            if first == then {
                wrong.push(rule.error("a thing cannot come before itself"));
            }
        }
        Some(Rule::Done { after, .. }) => {
            check_comes_later(rule.field("after"), after, wrong);
        }
        Some(Rule::Hold { all, after, .. }) => {
            check_comes_later(rule.field("after"), after, wrong);
            check_hold(rule, &all, against, wrong);
        }
        Some(Rule::Diagnosis { fault, at }) => check_diagnosis(rule, fault, at, against, wrong),
        Some(Rule::InTime(limit)) => check_is_some_time(rule.item(0), limit, wrong),
        _ => {}
    }
}

/// Checks a condition.
fn check_condition(condition: Located<'_>, wrong: &mut Vec<Diagnostic>) {
    // `Shows` alone has two values.
    if let [reading, bound] = condition.items()[..]
        && let Some(reading) = reading.read::<Reading>()
    {
        check_bound(bound, &format!("{reading:?}"), reading.dimension(), wrong);
    }
}

/// Checks that something can still come after a milestone.
fn check_comes_later(place: Located<'_>, first: Option<Milestone>, wrong: &mut Vec<Diagnostic>) {
    if first == Some(Milestone::HandedBack) {
        let message = "nothing comes after the hand-back: this can never be met";
        wrong.push(place.error(message));
    }
}

fn check_hold(
    rule: Located<'_>,
    all: &[Condition],
    against: &Against,
    wrong: &mut Vec<Diagnostic>,
) {
    if all.is_empty() {
        let message = "at least one condition must hold";
        wrong.push(rule.field("all").error(message));
    }
    let Some(lasting) = rule.field("lasting").read::<Time>() else {
        return;
    };
    check_is_some_time(rule.field("lasting"), lasting, wrong);
    if against.time_limit.is_some_and(|limit| limit < lasting) {
        let message = "this lasts longer than the whole job may take";
        wrong.push(
            rule.field("lasting")
                .error_with_hint(message, "see the rule InTime"),
        );
    }
    let within = rule.field("within");
    let Some(level) = within.read::<Level>() else {
        return;
    };
    check_not_negative(within, "within", wrong);
    let mut moving = all.iter().filter_map(|condition| match condition {
        Condition::Shows(reading, _) => Some(difference_of(reading.dimension())),
        _ => None,
    });
    let dimension = level.quantity().dimension;
    if !moving.any(|moved| moved == dimension) {
        let (written, _) = name_and_units(dimension);
        let message = format!("no reading named in `all` moves by {written}");
        let hint = "a change of a gauge is in Psi, of a thermometer in FahrenheitDegrees";
        wrong.push(within.error_with_hint(message, hint));
    }
}

fn time_limit(criteria: &[Located<'_>]) -> Option<Time> {
    let limits = criteria
        .iter()
        .filter_map(|criterion| match criterion.field("rule").read() {
            Some(Rule::InTime(limit)) => Some(limit),
            _ => None,
        });
    limits.reduce(|least, limit| if limit < least { limit } else { least })
}

fn check_diagnosis(
    rule: Located<'_>,
    fault: Option<FaultKind>,
    at: Option<Spot>,
    against: &Against,
    wrong: &mut Vec<Diagnostic>,
) {
    let Some(faults) = &against.faults else {
        return;
    };
    let message = match (fault, at) {
        (None, Some(_)) => "what is not wrong is nowhere: leave out `at`".to_owned(),
        (None, None) if !faults.is_empty() => "something is wrong with this unit".to_owned(),
        (Some(kind), at) => {
            let label = kind.label();
            let mut planted = faults.iter().filter(|f| f.kind() == kind);
            match (planted.clone().count(), at) {
                (0, _) => format!("{label} is asked for, but not planted"),
                (_, Some(at)) if !planted.any(|f| f.spot() == Some(at)) => {
                    format!(
                        "{label} is asked for at the {}, but not planted there",
                        at.label()
                    )
                }
                _ => return,
            }
        }
        _ => return,
    };
    wrong.push(rule.error_with_hint(message, "the diagnosis must name a fault of `faults`"));
}

fn check_is_some_time(place: Located<'_>, time: Time, wrong: &mut Vec<Diagnostic>) {
    if time.seconds() <= 0.0 {
        wrong.push(place.error("a time must be above 0"));
    }
}

fn check_not_negative(place: Located<'_>, name: &str, wrong: &mut Vec<Diagnostic>) {
    let level = place.read::<Level>().map(Level::quantity);
    // A gauge pressure below 0 is a vacuum, and none of ours is bounded by one.
    if level.is_some_and(|level| level.dimension != Dimension::Temperature && level.si < 0.0) {
        wrong.push(place.error(format!("{name} must not be negative")));
    }
}

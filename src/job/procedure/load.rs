//! Loading and checking procedures.

use super::Procedure;
use crate::scenario::{
    Diagnostic, Document, ERRORS_MAX, Located, check_bound, check_text, check_values,
    check_version, in_order, read_file,
};
use crate::units::{Mass, TemperatureDifference, Time};
use crate::words::{Dimension, Level, Reading, SheetField};
use std::path::Path;

/// No step waits longer, h.
const HOURS_MAX: f64 = 24.0;

/// No steps are repeated more often.
const ROUNDS_MAX: u32 = 50;

/// The procedures that come with the program: the scenario, right or wrong, and the text.
const SHIPPED: [(&str, &str); 12] = [
    (
        "clogged_drier_right",
        include_str!("../../../scenarios/procedures/clogged_drier_right.ron"),
    ),
    (
        "clogged_drier_wrong",
        include_str!("../../../scenarios/procedures/clogged_drier_wrong.ron"),
    ),
    (
        "leaking_flare_right",
        include_str!("../../../scenarios/procedures/leaking_flare_right.ron"),
    ),
    (
        "leaking_flare_wrong",
        include_str!("../../../scenarios/procedures/leaking_flare_wrong.ron"),
    ),
    (
        "wet_circuit_right",
        include_str!("../../../scenarios/procedures/wet_circuit_right.ron"),
    ),
    (
        "wet_circuit_wrong",
        include_str!("../../../scenarios/procedures/wet_circuit_wrong.ron"),
    ),
    (
        "undercharge_right",
        include_str!("../../../scenarios/procedures/undercharge_right.ron"),
    ),
    (
        "undercharge_wrong",
        include_str!("../../../scenarios/procedures/undercharge_wrong.ron"),
    ),
    (
        "flammable_leak_right",
        include_str!("../../../scenarios/procedures/flammable_leak_right.ron"),
    ),
    (
        "flammable_leak_wrong",
        include_str!("../../../scenarios/procedures/flammable_leak_wrong.ron"),
    ),
    (
        "cold_room_drier_right",
        include_str!("../../../scenarios/procedures/cold_room_drier_right.ron"),
    ),
    (
        "cold_room_drier_wrong",
        include_str!("../../../scenarios/procedures/cold_room_drier_wrong.ron"),
    ),
];

impl Procedure {
    /// Loads a procedure, or gives everything that is wrong with its file.
    pub fn load(path: &Path) -> Result<Self, Vec<Diagnostic>> {
        Self::from_bytes(&path.display().to_string(), &read_file(path)?)
    }

    /// A procedure that comes with the program: the name of its scenario with `_right` or
    /// `_wrong`.
    pub fn shipped(name: &str) -> Option<Self> {
        let (name, text) = SHIPPED.iter().find(|(shipped, _)| *shipped == name)?;
        let path = format!("scenarios/procedures/{name}.ron");
        Self::from_bytes(&path, text.as_bytes()).ok()
    }

    /// The names of the procedures that come with the program.
    pub fn shipped_names() -> impl Iterator<Item = &'static str> {
        SHIPPED.iter().map(|(name, _)| *name)
    }

    /// A procedure from the bytes of its file; `path` is what the person calls the file.
    pub fn from_bytes(path: &str, bytes: &[u8]) -> Result<Self, Vec<Diagnostic>> {
        let document = Document::split(path, bytes).map_err(|wrong| vec![wrong])?;
        let read = document.read::<Self>();
        let mut wrong = Vec::new();
        let root = document.root();
        check_version(root, &mut wrong);
        check_text(root.field("title"), "title", &mut wrong);
        check_text(root.field("scenario"), "scenario", &mut wrong);
        check_steps(root.field("steps"), &mut wrong);
        check_values(root.field("steps"), &mut wrong);
        match read {
            Ok(procedure) if wrong.is_empty() => Ok(procedure),
            Ok(_) => Err(in_order(wrong)),
            Err(unread) => {
                wrong.extend(unread);
                Err(in_order(wrong))
            }
        }
    }
}

fn check_steps(steps: Located<'_>, wrong: &mut Vec<Diagnostic>) {
    for step in steps.items() {
        if wrong.len() >= ERRORS_MAX {
            return;
        }
        check_step(step, wrong);
    }
}

/// Checks one step by the fields that it has, so that one wrong field hides no other.
fn check_step(step: Located<'_>, wrong: &mut Vec<Diagnostic>) {
    if let Some(reading) = step.field("reading").read::<Reading>() {
        let what = format!("{reading:?}");
        check_bound(step.field("is"), &what, reading.dimension(), wrong);
    }
    for time in [step.item(0), step.field("within"), step.field("hold")] {
        check_time(time, wrong);
    }
    if let (Some(within), Some(hold)) = (
        step.field("within").read::<Time>(),
        step.field("hold").read::<Time>(),
    ) && hold > within
    {
        let message = "it cannot hold for longer than is waited for it";
        wrong.push(step.field("hold").error(message));
    }
    let mass = step.field("mass");
    if mass.read::<Mass>().is_some_and(|mass| mass.grams() < 5.0) {
        let message = "less than 5 g cannot be seen on the scale";
        wrong.push(mass.error(message));
    }
    check_written(step.item(0), wrong);
    check_goal(step.field("until"), wrong);
    let rounds = step.field("at_most");
    if let Some(found) = rounds.read::<u32>()
        && !(1..=ROUNDS_MAX).contains(&found)
    {
        let message = format!("at_most must lie in 1..={ROUNDS_MAX}, found {found}");
        wrong.push(rounds.error(message));
    }
    check_steps(step.field("steps"), wrong);
}

fn check_time(time: Located<'_>, wrong: &mut Vec<Diagnostic>) {
    if let Some(found) = time.read::<Time>()
        && !(found.seconds() > 0.0 && found.hours() <= HOURS_MAX)
    {
        let message = format!("a wait must be above 0 and at most {HOURS_MAX} h");
        wrong.push(time.error(message));
    }
}

/// Checks a value that the procedure writes on the job sheet by itself.
fn check_written(action: Located<'_>, wrong: &mut Vec<Diagnostic>) {
    let value = action.field("value");
    if let (Some(field), Some(level)) = (
        action.field("field").read::<SheetField>(),
        value.read::<Level>(),
    ) && level.quantity().dimension != field.dimension()
    {
        let message = format!("{field:?} is not measured in this unit");
        wrong.push(value.error(message));
    }
}

fn check_goal(goal: Located<'_>, wrong: &mut Vec<Diagnostic>) {
    let (first, second) = (goal.item(0), goal.item(1));
    if let Some(reading) = first.read::<Reading>() {
        check_bound(second, &format!("{reading:?}"), reading.dimension(), wrong);
    } else if let Some(field) = first.read::<SheetField>() {
        check_bound(second, &format!("{field:?}"), field.dimension(), wrong);
    }
    let by = goal.item(2);
    if let Some(found) = by.read::<TemperatureDifference>() {
        if found.kelvins() <= 0.0 {
            wrong.push(by.error("a difference that is allowed must be above 0"));
        }
        for blank in [first, second] {
            if let Some(field) = blank.read::<SheetField>()
                && field.dimension() != Dimension::TemperatureDifference
            {
                let message = format!("{field:?} is not a difference of temperature");
                wrong.push(blank.error(message));
            }
        }
    }
}

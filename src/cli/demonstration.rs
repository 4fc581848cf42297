//! What the program does where no window can be opened: the default scenario, start to finish.

use super::Answer;
use super::find;
use super::perform::{perform, right_procedure};
use crate::attempt::{Opening, Recorder};
use crate::scenario::shipped_names;
use anyhow::Context;

/// What works without a window.
const COMMANDS: &str = "\
Without one these work; each has --help:
  coldbench perform SCENARIO [SCRIPT]   do a written procedure, record and mark it
  coldbench replay ATTEMPT              prove that an attempt is genuine, print its course
  coldbench mark ATTEMPT...             mark one attempt or a class of attempts
  coldbench settle SCENARIO             what the instruments will read
  coldbench chart REFRIGERANT           the pressure-temperature chart
  coldbench check FILE...               check scenarios, procedures, attempts";

/// Performs the right procedure of the default scenario, and says why there is no window.
pub fn demonstrate(no_window: &str) -> anyhow::Result<Answer> {
    let name = shipped_names()
        .next()
        .context("no scenario comes with it")?;
    let found = find::scenario(name)?;
    let procedure = right_procedure(name)?;
    let performed = perform(recorder(&found)?, &procedure, name)?;
    let file = &found.scenario.file;
    let text = format!(
        "{}. {}: \"{}\"\n\n{}\n\n\
         There is no window: {no_window}.\nA window needs a display. {COMMANDS}",
        file.title,
        file.customer.name,
        file.customer.complaint,
        performed.text(),
    );
    Ok(Answer::new(performed.is_well(), text))
}

/// A recorder in the directory of attempts, or where the system keeps passing files when the
/// program runs in a place that cannot be written.
fn recorder(found: &find::Found) -> anyhow::Result<Recorder> {
    let find::Found {
        scenario, source, ..
    } = found;
    let opening = Opening::practice(source, "");
    let recorder = Recorder::create_beside(scenario, opening.clone())
        .or_else(|_| Recorder::create_in(&std::env::temp_dir(), scenario, opening));
    Ok(recorder?)
}

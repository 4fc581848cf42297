//! Coldbench: a training simulator of a split air-conditioning system under repair.
//!
//! A **scenario** is one exercise; a **job** is a scenario under way. The job owns the **plant**
//! (the refrigerant circuit) and the **kit** (what the technician brought). It takes **actions**
//! and ticks, gives **readings** and keeps the **truth**; its watch notes **findings**. An
//! **attempt** is the recording of one person's actions; a **rubric** turns it into **marks**.

pub mod attempt;
pub mod cli;
pub mod coach;
mod files;
pub mod fluid;
#[cfg(feature = "window")]
pub mod gui;
pub mod job;
pub mod kit;
pub mod marking;
pub mod plant;
pub mod report;
pub mod scenario;
pub mod text;
pub mod units;
pub mod words;

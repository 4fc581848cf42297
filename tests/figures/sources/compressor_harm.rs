//! What the watch notes of a compressor: oil that does not come back, liquid that does.

use super::rated::Rated;
use super::{Asked, Class, Figure, Source};
use coldbench::job::{Job, TICKS_PER_SECOND};
use coldbench::plant::{Fault, Line, ThermostatCall};
use coldbench::units::Fraction;
use coldbench::words::{Action, FindingKind};

/// See the file's head.
pub(super) const SOURCE: Source = Source {
    name: "compressor_harm",
    origin: "Oil comes back with the gas: not with a starved or pumped-down circuit. Liquid comes \
        back to an overfed coil without air, and slugs; neither happens to a sound unit that runs \
        (common practice, no source).",
    class: Class::CommonPractice,
    why_not: "",
    missed: &[],
    rows: figures,
};

/// The R-22 unit, started and run for some minutes; `then` is done, and it runs for as many more.
fn noted(faults: &[Fault], minutes: u64, then: &[Action]) -> Job {
    let unit = Rated::orifice();
    let mut job = unit.job(faults);
    let mut go = |actions: &[Action]| {
        for action in actions {
            // None of these is refused: both are where anybody can reach them.
            job.apply(*action).expect("it can be done");
        }
        for _ in 0..60 * minutes * TICKS_PER_SECOND {
            job.tick();
        }
    };
    go(&[Action::Thermostat(ThermostatCall::Cool)]);
    go(then);
    job
}

/// The sum of what was noted of a kind.
fn sum(job: &Job, kind: FindingKind) -> f64 {
    let of_kind = job.findings().iter().filter(|finding| finding.kind == kind);
    of_kind.map(|finding| finding.size).sum()
}

fn figures() -> Vec<Figure> {
    let oil = |job: &Job| sum(job, FindingKind::RanWithoutOilReturn) / 60.0;
    let liquid = |job: &Job| sum(job, FindingKind::LiquidToCompressor) * 1e3;
    let share = Fraction::clamped;
    let sound = noted(&[], 30, &[]);
    let off = |on| Action::StemCap {
        line: Line::Liquid,
        on,
    };
    let shut = Action::Stem {
        line: Line::Liquid,
        open: share(0.0),
    };
    let pumped_down = noted(&[], 15, &[off(false), shut]);
    let starved = noted(&[Fault::BlockedMetering(share(0.98))], 15, &[]);
    let flooded = noted(
        &[
            Fault::Overcharge(share(0.6)),
            Fault::DirtyFilter(share(0.9)),
        ],
        30,
        &[],
    );
    let least = |what, unit, ours, asked| Figure::asked(what, unit, Asked::AtLeast(asked), ours);
    vec![
        Figure::asked(
            "sound, an hour: without oil return",
            "min",
            Asked::AtMost(0.0),
            oil(&sound),
        ),
        Figure::asked(
            "sound, an hour: liquid to the compressor",
            "g",
            Asked::AtMost(0.0),
            liquid(&sound),
        ),
        least(
            "pumped down and left to run: without oil return",
            "min",
            oil(&pumped_down),
            5.0,
        ),
        least(
            "metering device blocked: without oil return",
            "min",
            oil(&starved),
            5.0,
        ),
        least(
            "60 % too much and a tenth of the air: liquid",
            "g",
            liquid(&flooded),
            20.0,
        ),
    ]
}

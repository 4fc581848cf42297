//! Milestones, conditions, readings and times in the technician's words.

use super::course::Seen;
use crate::job::TICKS_PER_SECOND;
use crate::plant::Line;
use crate::units::{GaugePressure, Mass, Temperature};
use crate::words::{Bound, Condition, GaugePlace, Hose, Level, Milestone, Quantity, Shown, Status};

/// The clock of the job at a tick: `0:14:03`.
pub fn clock(tick: u64) -> String {
    let seconds = tick / TICKS_PER_SECOND;
    let (hours, minutes) = (seconds / 3600, seconds / 60 % 60);
    format!("{hours}:{minutes:02}:{:02}", seconds % 60)
}

/// A span of ticks: `6 min 10 s`.
pub fn span(ticks: u64) -> String {
    let seconds = ticks / TICKS_PER_SECOND;
    match (seconds / 3600, seconds / 60 % 60, seconds % 60) {
        (0, 0, s) => format!("{s} s"),
        (0, m, 0) => format!("{m} min"),
        (0, m, s) => format!("{m} min {s} s"),
        (h, 0, 0) => format!("{h} h"),
        (h, m, 0) => format!("{h} h {m} min"),
        (h, m, s) => format!("{h} h {m} min {s} s"),
    }
}

/// A level; microns with their thousands marked off.
pub fn level(level: Level) -> String {
    match level {
        Level::Microns(microns) => format!("{} microns", thousands(microns)),
        other => other.to_string(),
    }
}

/// A quantity in the trade's inch-pound unit.
pub fn quantity(quantity: Quantity) -> String {
    level(quantity.inch_pound())
}

/// A quantity in the unit in which `like` is written, where that measures the same.
pub fn as_written(quantity: Quantity, like: Level) -> String {
    let unit = like.quantity();
    let si = quantity.si;
    let same = unit.dimension == quantity.dimension;
    level(match like {
        _ if !same => quantity.inch_pound(),
        Level::KilopascalsGauge(_) => {
            Level::KilopascalsGauge(GaugePressure::from_pascals(si).kilopascals())
        }
        Level::Celsius(_) => Level::Celsius(Temperature::from_kelvin(si).celsius()),
        Level::Kelvins(_) => Level::Kelvins(si),
        Level::Grams(_) => Level::Grams(Mass::from_kilograms(si).grams()),
        Level::Kilograms(_) => Level::Kilograms(si),
        Level::Pounds(_) => Level::Pounds(Mass::from_kilograms(si).pounds()),
        Level::Seconds(_) => Level::Seconds(si),
        _ => quantity.inch_pound(),
    })
}

/// What a face shows.
pub fn shown(shown: Shown) -> String {
    shown.level().map_or_else(|| shown.to_string(), level)
}

/// A bound.
pub fn bound(bound: Bound) -> String {
    match bound {
        Bound::Below(l) => format!("below {}", level(l)),
        Bound::Above(l) => format!("above {}", level(l)),
        Bound::Between(low, high) => format!("between {} and {}", level(low), level(high)),
    }
}

/// A whole number with a comma at each thousand: `1,240`.
pub fn thousands(value: f64) -> String {
    let digits = format!("{:.0}", value.abs());
    let mut text = String::new();
    for (i, digit) in digits.chars().enumerate() {
        if i > 0 && (digits.len() - i).is_multiple_of(3) {
            text.push(',');
        }
        text.push(digit);
    }
    let is_negative = value < 0.0 && digits != "0";
    if is_negative {
        text.insert(0, '-');
    }
    text
}

const fn line(line: Line) -> &'static str {
    match line {
        Line::Liquid => "liquid",
        Line::Suction => "suction",
    }
}

/// A milestone as a thing done: `front-seated the liquid valve`.
pub fn milestone(milestone: Milestone) -> String {
    let words = match milestone {
        Milestone::FrontSeated(l) => return format!("front-seated the {} valve", line(l)),
        Milestone::Opened(l) => return format!("opened the {} valve", line(l)),
        Milestone::Broke(joint) => return format!("opened the {}", joint.label()),
        Milestone::MadeUp(joint) => return format!("made up the {}", joint.label()),
        Milestone::RenewedFlare(joint) => return format!("renewed the {}", joint.label()),
        Milestone::Sniffed(spot) => return format!("held the detector at the {}", spot.label()),
        Milestone::Wetted(spot) => return format!("put bubbles on the {}", spot.label()),
        Milestone::Purged(Hose::Low) => "purged the low hose",
        Milestone::Purged(Hose::High) => "purged the high hose",
        Milestone::Purged(Hose::Centre) => "purged the centre hose",
        Milestone::BrokeAnyJoint => "opened a joint",
        Milestone::DrierOut => "took the old drier out",
        Milestone::DrierIn => "fitted the new drier",
        Milestone::ChangedFilter => "changed the air filter",
        Milestone::NitrogenOpened => "opened the nitrogen cylinder",
        Milestone::PumpStarted => "started the vacuum pump",
        Milestone::CoolingCalled => "called for cooling",
        Milestone::LockedOut => "locked the disconnect out",
        Milestone::VerifiedDead => "proved that nothing is live",
        Milestone::CylinderOpened => "opened the refrigerant cylinder",
        Milestone::Diagnosed => "wrote a diagnosis down",
        Milestone::HandedBack => "handed the job back",
    };
    words.to_owned()
}

/// A status as it is when it is so, or when it is not.
pub const fn status(status: Status, is_so: bool) -> &'static str {
    let (so, not_so) = match status {
        Status::CompressorRuns => ("compressor running", "compressor not running"),
        Status::Evacuating => ("pump evacuating", "pump not evacuating"),
        Status::PumpShutOff => ("pump shut off", "pump not shut off"),
        Status::GaugeAwayFromPump => (
            "micron gauge away from the pump",
            "micron gauge not away from the pump",
        ),
        Status::GaugeAtUnit => (
            "micron gauge at the unit",
            "micron gauge not at a port of the unit",
        ),
        Status::NitrogenShutOff => ("nitrogen shut off", "nitrogen not shut off"),
        Status::RegulatorFitted => ("regulator fitted", "no regulator fitted"),
        Status::BothHandValvesOpen => ("both hand valves open", "not both hand valves open"),
        Status::ChargeIsolated => (
            "both service valves front-seated",
            "not both service valves front-seated",
        ),
        Status::LockedOut => ("disconnect locked out", "disconnect not locked out"),
    };
    if is_so { so } else { not_so }
}

/// Where the micron gauge is.
pub const fn gauge_place(place: GaugePlace) -> &'static str {
    match place {
        GaugePlace::Cart => "micron gauge on the cart",
        GaugePlace::Pump => "micron gauge at the pump",
        GaugePlace::Manifold => "micron gauge at the manifold",
        GaugePlace::SuctionPort => "micron gauge at the suction port",
        GaugePlace::LiquidPort => "micron gauge at the liquid port",
    }
}

/// What was seen of a condition.
pub fn seen(condition: &Condition, seen: &Seen) -> String {
    match *condition {
        Condition::Shows(r, _) => format!("{r} {}", shown(seen.shown(r))),
        Condition::Is(s) | Condition::IsNot(s) => status(s, seen.is(s)).to_owned(),
        Condition::GaugeAt(_) => gauge_place(seen.gauge()).to_owned(),
    }
}

/// What was seen of a condition that did not hold, and what was asked.
pub fn failed(condition: &Condition, at: &Seen) -> String {
    let found = seen(condition, at);
    match *condition {
        Condition::Shows(_, b) => format!("{found}, not {}", bound(b)),
        Condition::Is(_) | Condition::IsNot(_) => found,
        Condition::GaugeAt(place) => {
            let asked = gauge_place(place).trim_start_matches("micron gauge ");
            format!("{found}, not {asked}")
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn times_and_numbers_read_as_a_technician_writes_them() {
        assert_eq!(clock(8430), "0:14:03");
        assert_eq!(clock(37200), "1:02:00");
        assert_eq!(span(3700), "6 min 10 s");
        assert_eq!(span(6000), "10 min");
        assert_eq!(span(37200), "1 h 2 min");
        assert_eq!(span(405), "40 s");
        assert_eq!(level(Level::Microns(1240.0)), "1,240 microns");
        assert_eq!(level(Level::Microns(500.0)), "500 microns");
        assert_eq!(level(Level::Microns(1_234_567.0)), "1,234,567 microns");
    }
}

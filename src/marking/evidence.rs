//! Milestones, conditions, readings and times in the technician's words.

use super::course::Seen;
use crate::job::TICKS_PER_SECOND;
use crate::text::Message;
use crate::units::{GaugePressure, Mass, Temperature};
use crate::words::{Bound, Condition, GaugePlace, Level, Milestone, Quantity, Shown, Status};

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
pub fn level(level: Level) -> Message {
    match level {
        Level::Microns(microns) => {
            Message::new("reading-microns").with("value", thousands(microns))
        }
        other => other.words(),
    }
}

/// A quantity in the trade's inch-pound unit.
pub fn quantity(quantity: Quantity) -> Message {
    level(quantity.inch_pound())
}

/// A quantity in the unit in which `like` is written, where that measures the same.
pub fn as_written(quantity: Quantity, like: Level) -> Message {
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
pub fn shown(shown: Shown) -> Message {
    shown.words(quantity)
}

/// A bound.
pub fn bound(bound: Bound) -> Message {
    bound.words(level)
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

/// A milestone as a thing done: `front-seated the liquid valve`.
pub fn milestone(milestone: Milestone) -> Message {
    Message::new(match milestone {
        Milestone::FrontSeated(line) => {
            return Message::new("mark-front-seated").with("valve", line.valve_label().the());
        }
        Milestone::Opened(line) => {
            return Message::new("mark-opened-valve").with("valve", line.valve_label().the());
        }
        Milestone::Broke(joint) => {
            return Message::new("mark-broke").with("joint", joint.label().the());
        }
        Milestone::MadeUp(joint) => {
            return Message::new("mark-made-up").with("joint", joint.label().the());
        }
        Milestone::RenewedFlare(joint) => {
            return Message::new("mark-renewed-flare").with("joint", joint.label().the());
        }
        Milestone::Sniffed(spot) => {
            return Message::new("mark-sniffed").with("spot", spot.label().the());
        }
        Milestone::Wetted(spot) => {
            return Message::new("mark-wetted").with("spot", spot.label().the());
        }
        Milestone::Purged(hose) => {
            return Message::new("mark-purged").with("hose", hose.label().the());
        }
        Milestone::BrokeAnyJoint => "mark-broke-any",
        Milestone::DrierOut => "mark-drier-out",
        Milestone::DrierIn => "mark-drier-in",
        Milestone::ChangedFilter => "mark-changed-filter",
        Milestone::CoolingCalled => "mark-cooling-called",
        Milestone::LockedOut => "mark-locked-out",
        Milestone::VerifiedDead => "mark-verified-dead",
        Milestone::Tool(milestone) => milestone.key(),
        Milestone::Ventilated => "mark-ventilated",
        Milestone::Diagnosed => "mark-diagnosed",
        Milestone::HandedBack => "mark-handed-back",
    })
}

/// A status as it is when it is so, or when it is not.
pub fn status(status: Status, is_so: bool) -> Message {
    let (so, not_so) = match status {
        Status::CompressorRuns => ("mark-compressor-runs", "mark-compressor-stands"),
        Status::GaugeAwayFromPump => ("mark-gauge-away", "mark-gauge-not-away"),
        Status::GaugeAtUnit => ("mark-gauge-at-unit", "mark-gauge-not-at-unit"),
        Status::BothHandValvesOpen => ("mark-hand-valves-open", "mark-hand-valves-not-open"),
        Status::ChargeIsolated => ("mark-charge-isolated", "mark-charge-not-isolated"),
        Status::LockedOut => ("mark-is-locked-out", "mark-is-not-locked-out"),
        Status::Ventilated => ("mark-is-ventilated", "mark-is-not-ventilated"),
        Status::Tool(status) if is_so => return Message::new(status.key()),
        Status::Tool(status) => return Message::form_of(status.key(), "not"),
    };
    Message::new(if is_so { so } else { not_so })
}

/// Where the micron gauge is.
pub const fn gauge_place(place: GaugePlace) -> Message {
    Message::new(match place {
        GaugePlace::Cart => "mark-gauge-on-cart",
        GaugePlace::Pump => "mark-gauge-at-pump",
        GaugePlace::Manifold => "mark-gauge-at-manifold",
        GaugePlace::SuctionPort => "mark-gauge-at-suction-port",
        GaugePlace::LiquidPort => "mark-gauge-at-liquid-port",
    })
}

/// What was seen of a condition.
pub fn seen(condition: &Condition, seen: &Seen) -> Message {
    match *condition {
        Condition::Shows(r, _) => Message::new("mark-seen")
            .with("reading", r.label())
            .with("shown", shown(seen.shown(r))),
        Condition::Is(s) | Condition::IsNot(s) => status(s, seen.is(s)),
        Condition::GaugeAt(_) => gauge_place(seen.gauge()),
    }
}

/// What was seen of a condition that did not hold, and what was asked.
pub fn failed(condition: &Condition, at: &Seen) -> Message {
    let found = seen(condition, at);
    let asked = match *condition {
        Condition::Shows(_, b) => bound(b),
        Condition::Is(_) | Condition::IsNot(_) => return found,
        Condition::GaugeAt(place) => place.label(),
    };
    Message::new("mark-seen-not")
        .with("seen", found)
        .with("asked", asked)
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
        assert_eq!(level(Level::Microns(1240.0)).to_string(), "1,240 microns");
        assert_eq!(level(Level::Microns(500.0)).to_string(), "500 microns");
        assert_eq!(
            level(Level::Microns(1_234_567.0)).to_string(),
            "1,234,567 microns"
        );
    }
}

//! The micron gauge.

use super::require;
use crate::job::{Job, Refusal};
use crate::plant::Line;
use crate::words::GaugePlace;

impl Job {
    pub(super) fn put_micron_gauge(&mut self, place: GaugePlace) -> Result<(), Refusal> {
        require(self.kit.micron_gauge.place != place, "refusal-gauge-there")?;
        if let Some(line) = gauge_port(place) {
            require(
                self.fittings.valve(line).port.tool_on,
                "refusal-gauge-needs-tool",
            )?;
        }
        self.kit.micron_gauge.place = place;
        Ok(())
    }

    pub(super) fn set_micron_gauge_valve(&mut self, open: bool) -> Result<(), Refusal> {
        self.kit.micron_gauge.valve_open = open;
        Ok(())
    }

    /// Whether the micron gauge is on the core tool of this port.
    pub(super) fn gauge_is_at_port(&self, line: Line) -> bool {
        gauge_port(self.kit.micron_gauge.place) == Some(line)
    }
}

/// The port at which a place of the micron gauge is.
const fn gauge_port(place: GaugePlace) -> Option<Line> {
    match place {
        GaugePlace::SuctionPort => Some(Line::Suction),
        GaugePlace::LiquidPort => Some(Line::Liquid),
        GaugePlace::Cart | GaugePlace::Pump | GaugePlace::Manifold => None,
    }
}

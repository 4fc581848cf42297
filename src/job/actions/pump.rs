//! Vacuum pump and micron gauge.

use super::require;
use crate::job::{Job, Refusal};
use crate::plant::Line;
use crate::text::Message;
use crate::words::GaugePlace;

impl Job {
    pub(super) fn run_pump(&mut self, run: bool) -> Result<(), Refusal> {
        require(self.kit.pump.running != run, "refusal-pump-so")?;
        if run {
            self.note_tool(self.rated.pump, Message::new("name-vacuum-pump"));
        }
        self.kit.pump.running = run;
        Ok(())
    }

    pub(super) fn set_pump_valve(&mut self, open: bool) -> Result<(), Refusal> {
        self.kit.pump.inlet_open = open;
        Ok(())
    }

    pub(super) fn set_ballast(&mut self, open: bool) -> Result<(), Refusal> {
        self.kit.pump.ballast_open = open;
        Ok(())
    }

    pub(super) fn change_pump_oil(&mut self) -> Result<(), Refusal> {
        require(!self.kit.pump.running, "refusal-stop-pump-for-oil")?;
        self.kit.pump.change_oil();
        Ok(())
    }

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

//! Service valves, their caps, ports and cores.

use super::require;
use crate::job::{Job, Refusal};
use crate::plant::Line;
use crate::units::Fraction;
use crate::words::HoseEnd;

impl Job {
    pub(super) fn put_stem_cap(&mut self, line: Line, on: bool) -> Result<(), Refusal> {
        let valve = self.fittings.valve_mut(line);
        require(valve.cap_on != on, "The stem cap is so already.")?;
        valve.cap_on = on;
        Ok(())
    }

    pub(super) fn turn_stem(&mut self, line: Line, open: Fraction) -> Result<(), Refusal> {
        let valve = self.fittings.valve_mut(line);
        require(!valve.cap_on, "Take the stem cap off first.")?;
        valve.open = open;
        Ok(())
    }

    pub(super) fn put_port_cap(&mut self, line: Line, on: bool) -> Result<(), Refusal> {
        let is_free = self.port_is_free(line);
        let port = &mut self.fittings.valve_mut(line).port;
        require(port.cap_on != on, "The port cap is so already.")?;
        if on {
            require(is_free, "A hose is on the port: take it off first.")?;
            require(
                !port.tool_on,
                "The core tool is on the port: take it off first.",
            )?;
        }
        port.cap_on = on;
        self.hands_on_circuit(port_label(line));
        Ok(())
    }

    pub(super) fn put_core_tool(&mut self, line: Line, fitted: bool) -> Result<(), Refusal> {
        let is_free = self.port_is_free(line);
        let gauge_is_here = self.gauge_is_at_port(line);
        let port = &mut self.fittings.valve_mut(line).port;
        require(port.tool_on != fitted, "The core tool is so already.")?;
        require(!port.cap_on, "Take the port cap off first.")?;
        require(is_free, "Take the hose off the port first.")?;
        require(
            fitted || !gauge_is_here,
            "The micron gauge is on the tool: take it off first.",
        )?;
        port.tool_on = fitted;
        port.tool_open = true;
        self.hands_on_circuit(port_label(line));
        Ok(())
    }

    pub(super) fn work_core(&mut self, line: Line, seated: bool) -> Result<(), Refusal> {
        let is_free = self.port_is_free(line);
        let valve = self.fittings.valve_mut(line);
        require(
            valve.has_core(),
            "This port has no core: its valve shuts it on the back seat.",
        )?;
        let port = &mut valve.port;
        require(port.core_in != seated, "The core is so already.")?;
        require(!port.cap_on, "Take the port cap off first.")?;
        require(
            port.tool_on || is_free,
            "The hose is in the way: take it off, or put the core tool between.",
        )?;
        port.core_in = seated;
        if seated {
            // What is seated is a new core.
            port.core_leak = 0.0;
        }
        self.hands_on_circuit(port_label(line));
        Ok(())
    }

    pub(super) fn set_core_tool_valve(&mut self, line: Line, open: bool) -> Result<(), Refusal> {
        let port = &mut self.fittings.valve_mut(line).port;
        require(port.tool_on, "There is no core tool on this port.")?;
        port.tool_open = open;
        Ok(())
    }

    /// Whether no hose is on the port.
    fn port_is_free(&self, line: Line) -> bool {
        self.kit.manifold.hose_on(HoseEnd::of_port(line)).is_none()
    }
}

/// What a technician calls the port.
pub(super) const fn port_label(line: Line) -> &'static str {
    crate::plant::Spot::Port(line).label()
}

//! Service valves, their caps, ports and cores.

use super::require;
use crate::job::{Job, Refusal};
use crate::plant::{Line, Spot};
use crate::units::Fraction;
use crate::words::HoseEnd;

impl Job {
    pub(super) fn put_stem_cap(&mut self, line: Line, on: bool) -> Result<(), Refusal> {
        let valve = self.fittings.valve_mut(line);
        require(valve.cap_on != on, "refusal-stem-cap-so")?;
        valve.cap_on = on;
        Ok(())
    }

    pub(super) fn turn_stem(&mut self, line: Line, open: Fraction) -> Result<(), Refusal> {
        let valve = self.fittings.valve_mut(line);
        require(!valve.cap_on, "refusal-stem-cap-first")?;
        valve.open = open;
        Ok(())
    }

    pub(super) fn put_port_cap(&mut self, line: Line, on: bool) -> Result<(), Refusal> {
        let is_free = self.port_is_free(line);
        let port = &mut self.fittings.valve_mut(line).port;
        require(port.cap_on != on, "refusal-port-cap-so")?;
        if on {
            require(is_free, "refusal-hose-on-port")?;
            require(!port.tool_on, "refusal-tool-on-port")?;
        }
        port.cap_on = on;
        self.hands_on_circuit(Spot::Port(line));
        Ok(())
    }

    pub(super) fn put_core_tool(&mut self, line: Line, fitted: bool) -> Result<(), Refusal> {
        let is_free = self.port_is_free(line);
        let gauge_is_here = self.gauge_is_at_port(line);
        let port = &mut self.fittings.valve_mut(line).port;
        require(port.tool_on != fitted, "refusal-tool-so")?;
        require(!port.cap_on, "refusal-port-cap-first")?;
        require(is_free, "refusal-hose-off-first")?;
        require(fitted || !gauge_is_here, "refusal-gauge-on-tool")?;
        port.tool_on = fitted;
        port.tool_open = true;
        self.hands_on_circuit(Spot::Port(line));
        Ok(())
    }

    pub(super) fn work_core(&mut self, line: Line, seated: bool) -> Result<(), Refusal> {
        let is_free = self.port_is_free(line);
        let valve = self.fittings.valve_mut(line);
        require(valve.has_core(), "refusal-no-core")?;
        let port = &mut valve.port;
        require(port.core_in != seated, "refusal-core-so")?;
        require(!port.cap_on, "refusal-port-cap-first")?;
        require(port.tool_on || is_free, "refusal-hose-in-the-way")?;
        port.core_in = seated;
        if seated {
            // What is seated is a new core.
            port.core_leak = 0.0;
        }
        self.hands_on_circuit(Spot::Port(line));
        Ok(())
    }

    pub(super) fn set_core_tool_valve(&mut self, line: Line, open: bool) -> Result<(), Refusal> {
        let port = &mut self.fittings.valve_mut(line).port;
        require(port.tool_on, "refusal-no-tool")?;
        port.tool_open = open;
        Ok(())
    }

    /// Whether no hose is on the port.
    fn port_is_free(&self, line: Line) -> bool {
        self.kit.manifold.hose_on(HoseEnd::of_port(line)).is_none()
    }
}

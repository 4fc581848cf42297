//! Service valves with their stems, caps and access ports.

use crate::units::Fraction;
use serde::{Deserialize, Serialize};

/// One of the two lines between outdoor and indoor unit; each has its service valve and port.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
pub enum Line {
    /// The small line: liquid.
    Liquid,
    /// The large line: suction.
    Suction,
}

impl Line {
    /// Both, as their valves stand side by side.
    pub const ALL: [Self; 2] = [Self::Liquid, Self::Suction];
}

/// How a service valve closes its port.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
pub enum ValveKind {
    /// The port has a core and is open to the line set whatever the stem does.
    TwoPosition,
    /// The port has no core: the stem closes it (common practice, no source).
    ///
    /// - back-seated: the line is open, port and packing are shut off;
    /// - between: line and port are open to one another;
    /// - front-seated: the line is shut. The port of a suction valve is then open to the
    ///   compressor alone, that of a liquid valve (the king valve of a receiver) to the liquid
    ///   line alone, through which liquid is charged so.
    ThreePosition,
}

/// A stem this far out sits on its back seat. Chosen: within a tenth of a turn of five.
const BACK_SEAT: f64 = 0.98;

/// One service valve as it stands.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct ServiceValve {
    /// How it closes its port.
    pub kind: ValveKind,
    /// The stem: 0 front-seated, 1 back-seated.
    pub open: Fraction,
    /// The stem's cap is on.
    pub cap_on: bool,
    /// The area that leaks past its front seat, m²: 0 for a valve that seats.
    pub seat_leak: f64,
    /// The area that leaks at the stem's packing with the cap off, m².
    pub packing_leak: f64,
    /// Its access port.
    pub port: PortState,
}

/// An access port.
#[expect(
    clippy::struct_excessive_bools,
    reason = "each is a thing that is so or is not"
)]
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct PortState {
    /// The cap is on. It is the seal: a core alone may weep.
    pub cap_on: bool,
    /// The core is in its seat.
    pub core_in: bool,
    /// A core tool is on the port.
    pub tool_on: bool,
    /// The core tool's own valve is open.
    pub tool_open: bool,
    /// The area that leaks past a seated core, m².
    pub core_leak: f64,
}

impl ServiceValve {
    /// Back-seated, capped, tight: as a good technician leaves it. A port that the stem closes has
    /// no core.
    pub const fn in_service(kind: ValveKind) -> Self {
        Self {
            kind,
            open: Fraction::ONE,
            cap_on: true,
            seat_leak: 0.0,
            packing_leak: 0.0,
            port: PortState {
                cap_on: true,
                core_in: matches!(kind, ValveKind::TwoPosition),
                tool_on: false,
                tool_open: true,
                core_leak: 0.0,
            },
        }
    }

    /// The share of the valve's full area that is open along the line. Chosen: the first fifth of
    /// the travel opens a tenth of the area, as a cracked stem does (common practice, no source).
    pub fn opening(&self) -> f64 {
        let s = self.open.get();
        if s <= 0.2 {
            0.5 * s
        } else {
            0.1 + 0.9 * ((s - 0.2) / 0.6).min(1.0)
        }
    }

    /// Whether the stem leaves the port, and the packing, open to the circuit.
    pub fn port_is_open(&self) -> bool {
        match self.kind {
            ValveKind::TwoPosition => true,
            ValveKind::ThreePosition => self.open.get() < BACK_SEAT,
        }
    }

    /// Whether the port takes a core.
    pub const fn has_core(&self) -> bool {
        matches!(self.kind, ValveKind::TwoPosition)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Common practice, no source: the positions of a service valve without a core.
    #[test]
    fn the_stem_of_a_three_position_valve_opens_line_port_or_both() {
        let mut valve = ServiceValve::in_service(ValveKind::ThreePosition);
        assert!(!valve.has_core() && !valve.port.core_in);
        for (stem, line, port) in [(1.0, true, false), (0.5, true, true), (0.0, false, true)] {
            valve.open = Fraction::clamped(stem);
            assert_eq!(valve.opening() > 0.0, line, "line at {stem}");
            assert_eq!(valve.port_is_open(), port, "port at {stem}");
        }
        // Half a turn off the back seat: the gauge reads, the line is as open as ever.
        valve.open = Fraction::clamped(0.95);
        assert!(valve.port_is_open());
        assert!((valve.opening() - 1.0).abs() < 1e-12);
    }
}

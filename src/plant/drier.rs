//! The filter drier as a part: its arrow, its dirt, and whether it is in place. The desiccant's
//! water is part of the circuit.

use serde::{Deserialize, Serialize};

/// Which way the arrow of a drier points.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
pub enum Arrow {
    /// With the flow, toward the metering device: right.
    TowardMetering,
    /// Against the flow, toward the outdoor unit: backwards.
    TowardOutdoor,
}

/// The filter drier as it stands.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Drier {
    /// The arrow of the one in place; `None`: there is a gap in the line.
    pub fitted: Option<Arrow>,
    /// The share of its flow area that dirt has taken.
    pub clogging: f64,
}

impl Drier {
    /// Fitted the right way, clean.
    pub const fn sound() -> Self {
        Self {
            fitted: Some(Arrow::TowardMetering),
            clogging: 0.0,
        }
    }

    /// A new one, its arrow this way.
    pub const fn fit_new(&mut self, arrow: Arrow) {
        *self = Self {
            fitted: Some(arrow),
            clogging: 0.0,
        };
    }

    /// The share of the full flow area that is open.
    ///
    /// Chosen: fitted backwards the flow packs the desiccant's fines against the inlet screen and
    /// leaves a twenty-fifth of the area (common practice calls it a restriction; no source).
    pub fn opening(&self) -> f64 {
        match self.fitted {
            Some(Arrow::TowardMetering) => 1.0 - self.clogging,
            Some(Arrow::TowardOutdoor) => (1.0 - self.clogging) / 25.0,
            None => 0.0,
        }
    }
}

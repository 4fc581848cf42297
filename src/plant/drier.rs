//! The filter drier as a part: its arrow and whether it is in place.

use serde::{Deserialize, Serialize};

/// Which way the arrow of a drier points.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
pub enum Arrow {
    /// With the flow, toward the metering device: right.
    TowardMetering,
    /// Against the flow, toward the outdoor unit: backwards.
    TowardOutdoor,
}

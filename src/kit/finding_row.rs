//! What is fixed of a kind of finding: one row for each kind.

use super::Stage;
use crate::units::quantity::Dimension;

/// The row of a kind of finding.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct FindingRow {
    /// What its size measures; a kind that is only counted has a plain size of 1.
    pub dimension: Dimension,
    /// The size from which it is noted, in the SI unit of the dimension.
    pub least: f64,
    /// How several findings of the kind are taken together.
    pub counts: Counts,
    /// What it costs.
    pub price: RowPrice,
    /// Where in the work it is to be thought of; `None` for what nothing to be seen announces.
    pub stage: Option<Stage>,
}

impl FindingRow {
    /// The row of a kind that is noted at any size, is added up, and nothing announces.
    pub const fn new(dimension: Dimension, price: RowPrice) -> Self {
        Self {
            dimension,
            least: 0.0,
            counts: Counts::Sum,
            price,
            stage: None,
        }
    }

    /// The same, noted from this size on, in the SI unit of the dimension.
    #[must_use]
    pub const fn from_size(mut self, least: f64) -> Self {
        self.least = least;
        self
    }

    /// The same, of several the highest counts.
    #[must_use]
    pub const fn highest(mut self) -> Self {
        self.counts = Counts::Highest;
        self
    }

    /// The same, to be thought of at a stage of the work.
    #[must_use]
    pub const fn at(mut self, stage: Stage) -> Self {
        self.stage = Some(stage);
        self
    }
}

/// How several findings of a kind are taken together.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Counts {
    /// Their sizes are added.
    Sum,
    /// The highest counts.
    Highest,
}

/// Whether something is lost or put at risk.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum RowPrice {
    /// It is not a matter of money.
    Priceless,
    /// It is lost.
    Lost(Item),
    /// It may be lost.
    Risked(Item),
}

/// What has a price at the site.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Item {
    /// Refrigerant: the size of the finding.
    Refrigerant,
    /// The compressor, fitted.
    Compressor,
    /// The micron gauge.
    MicronGauge,
    /// The oil of the vacuum pump.
    PumpOil,
    /// A filter drier, and hours to fit it.
    Drier(f64),
    /// Hours of work.
    Hours(f64),
}

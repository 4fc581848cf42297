//! Outdoor coil, indoor filter and what dirt takes of their air.

/// What hinders the air, as it stands.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct AirSide {
    /// The share of the outdoor coil's air that dirt takes.
    pub outdoor_dirt: f64,
    /// The share of the indoor air that a dirty filter takes.
    pub filter_dirt: f64,
}

impl AirSide {
    /// The outdoor coil is clean again.
    pub const fn clean_outdoor_coil(&mut self) {
        self.outdoor_dirt = 0.0;
    }

    /// A new filter is in.
    pub const fn change_filter(&mut self) {
        self.filter_dirt = 0.0;
    }
}

//! Flare joints: torque decides whether one seals, weeps or is cracked.

use crate::units::Torque;
use serde::{Deserialize, Serialize};

/// A flare joint of the unit, in the order of the flow.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
pub enum Joint {
    /// Liquid line at the liquid service valve.
    LiquidValve,
    /// Inlet of the filter drier.
    DrierInlet,
    /// Outlet of the filter drier.
    DrierOutlet,
    /// Liquid line at the indoor coil.
    IndoorLiquid,
    /// Suction line at the indoor coil.
    IndoorSuction,
    /// Suction line at the suction service valve.
    SuctionValve,
}

impl Joint {
    /// Every joint.
    pub const ALL: [Self; 6] = [
        Self::LiquidValve,
        Self::DrierInlet,
        Self::DrierOutlet,
        Self::IndoorLiquid,
        Self::IndoorSuction,
        Self::SuctionValve,
    ];

    /// Whether the joint is one of the drier's two.
    pub const fn is_at_drier(self) -> bool {
        matches!(self, Self::DrierInlet | Self::DrierOutlet)
    }
}

/// The outer diameter of a flared tube.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, strum::VariantArray)]
pub enum FlareSize {
    /// 1/4 in.
    Quarter,
    /// 3/8 in.
    ThreeEighths,
    /// 1/2 in.
    Half,
    /// 5/8 in.
    FiveEighths,
    /// 3/4 in.
    ThreeQuarters,
}

impl FlareSize {
    /// The tightening torque of the nut, least and most, N m.
    ///
    /// Source: the band common to the published tables EN 378-2 / ISO 5149-2 and JIS B 8607
    /// (the columns of the standards from memory).
    pub const fn torque_band(self) -> (Torque, Torque) {
        let (least, most) = match self {
            Self::Quarter => (14.2, 17.2),
            Self::ThreeEighths => (34.0, 39.9),
            Self::Half => (50.0, 60.3),
            Self::FiveEighths => (68.0, 75.4),
            Self::ThreeQuarters => (97.2, 110.0),
        };
        (
            Torque::from_newton_metres(least),
            Torque::from_newton_metres(most),
        )
    }

    /// The inner diameter of the tube, m: outer diameter less two walls of 0.8 mm.
    /// Chosen: 0.032 in is a usual wall of refrigeration tube (ASTM B280, from memory).
    pub const fn bore(self) -> f64 {
        let outer = match self {
            Self::Quarter => 6.35e-3,
            Self::ThreeEighths => 9.52e-3,
            Self::Half => 12.7e-3,
            Self::FiveEighths => 15.88e-3,
            Self::ThreeQuarters => 19.05e-3,
        };
        outer - 1.6e-3
    }
}

/// How far a joint is made.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Made {
    /// Made up to a torque.
    Up(Torque),
    /// The nut is backed off by a turn: it hisses.
    Cracked,
    /// Apart: both ends open to the air.
    Apart,
    /// Apart, with both ends plugged.
    Plugged,
}

/// One joint as it is.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct JointState {
    /// The tube's size.
    pub size: FlareSize,
    /// How far it is made.
    pub made: Made,
    /// A scored or split flare face: the area that leaks whatever the torque, m² at full torque.
    pub scored: f64,
    /// The nut was over-tightened and the flare split.
    pub split: bool,
}

impl JointState {
    /// A joint made up to the middle of its band.
    pub fn sound(size: FlareSize) -> Self {
        let (least, most) = size.torque_band();
        let middle = 0.5 * (least.newton_metres() + most.newton_metres());
        Self {
            size,
            made: Made::Up(Torque::from_newton_metres(middle)),
            scored: 0.0,
            split: false,
        }
    }

    /// Makes it up. More than 1.4 times the most splits the flare.
    /// Chosen: a flare bears a hard pull before it splits (common practice, no source).
    pub fn make_up(&mut self, torque: Torque) {
        let (_, most) = self.size.torque_band();
        if torque.newton_metres() > 1.4 * most.newton_metres() {
            self.split = true;
        }
        self.made = Made::Up(torque);
    }

    /// A new flare: neither scored nor split.
    pub fn renew(&mut self) {
        self.scored = 0.0;
        self.split = false;
    }

    /// How far the torque falls short of the band, N m; 0 when it does not or it is not made up.
    pub fn shortfall(&self) -> f64 {
        let (least, _) = self.size.torque_band();
        match self.made {
            Made::Up(torque) => (least.newton_metres() - torque.newton_metres()).max(0.0),
            Made::Cracked | Made::Apart | Made::Plugged => least.newton_metres(),
        }
    }

    /// The area through which it leaks, m²; 0 when tight.
    ///
    /// Chosen: the gap of a loose flare grows with the square of the missing torque, to the area
    /// of a 0.15 mm hole hand-tight; a split one is a 0.2 mm hole; a cracked nut is a 1.5 mm hole;
    /// apart it is the bore. A scored face leaks more the less it is pressed.
    pub fn leak_area(&self) -> f64 {
        const HAND_TIGHT: f64 = 1.8e-8;
        const SPLIT: f64 = 3.1e-8;
        const CRACKED: f64 = 1.8e-6;
        match self.made {
            Made::Up(_) => {
                let (least, _) = self.size.torque_band();
                let missing = self.shortfall() / least.newton_metres();
                let split = if self.split { SPLIT } else { 0.0 };
                HAND_TIGHT * missing * missing + split + self.scored * (1.0 + 4.0 * missing)
            }
            Made::Cracked => CRACKED,
            Made::Apart => std::f64::consts::FRAC_PI_4 * self.size.bore() * self.size.bore(),
            Made::Plugged => 0.0,
        }
    }

    /// Whether the circuit is open here: anything moves freely in and out.
    pub const fn is_open(&self) -> bool {
        matches!(self.made, Made::Apart)
    }

    /// Whether it parts the line: no flow passes along it.
    pub const fn is_parted(&self) -> bool {
        matches!(self.made, Made::Apart | Made::Plugged)
    }
}

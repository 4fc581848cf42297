//! What joins two nodes: openings, tubes and cores in series, check valves, pumps, machines.

use super::draw::Draw;
use std::f64::consts::PI;

/// A node of the network.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub struct NodeId(pub(super) u8);

/// An element of the network.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub struct ElementId(pub(super) u8);

impl ElementId {
    /// Its place in the rows of a [`super::Drive`].
    pub(in crate::plant) const fn index(self) -> usize {
        self.0 as usize
    }
}

/// Something outside with a pressure of its own: the air, a regulator.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub struct BoundaryId(pub(super) u8);

/// Where an element ends.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum End {
    /// In a node.
    Node(NodeId),
    /// Outside.
    Boundary(BoundaryId),
}

/// A mixture of gases outside, with a pressure that nothing changes.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Boundary {
    /// Pressure, Pa absolute.
    pub pressure: f64,
    /// Temperature, K.
    pub temperature: f64,
    /// Shares of nitrogen, air and water vapour by mole; they sum to one.
    pub moles: [f64; 3],
}

/// A way along an element.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Direction {
    /// From the first end to the second.
    Forward,
    /// From the second end to the first.
    Backward,
}

/// One narrow place. In series their inertial terms add, and so do the resistances of their
/// viscous and molecular conductance.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Restriction {
    /// Area of flow, m².
    pub area: f64,
    /// Diameter of the bore, m.
    pub diameter: f64,
    /// Length of the bore, m.
    pub length: f64,
    /// Loss in velocity heads.
    pub loss: f64,
}

impl Restriction {
    /// A valve, a port or a hole of `area`, m². Chosen: its wall is 5 mm thick.
    pub fn opening(area: f64) -> Self {
        let diameter = 2.0 * (area.max(0.0) / PI).sqrt();
        Self {
            area,
            diameter,
            length: 5e-3,
            loss: 1.0,
        }
    }

    /// A tube or hose of `diameter` and `length`, m, with one velocity head lost at its ends and
    /// a friction factor of 0.02 (common practice for smooth bores).
    pub const fn tube(diameter: f64, length: f64) -> Self {
        let area = 0.25 * PI * diameter * diameter;
        Self {
            area,
            diameter,
            length,
            loss: 1.0 + 0.02 * length / diameter,
        }
    }

    /// A core in its seat, depressed. Chosen: 3.1 mm² around the pin, 8 mm long.
    pub const fn core() -> Self {
        Self {
            area: 3.1e-6,
            diameter: 2e-3,
            length: 8e-3,
            loss: 1.5,
        }
    }
}

/// Up to four restrictions in series.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Path {
    /// The restrictions; those with no area at the end are not there.
    restrictions: [Option<Restriction>; 4],
    /// The only way that it lets pass, if it is a check valve.
    pub one_way: Option<Direction>,
}

impl Path {
    /// Through these in series, at most four: a fifth and later ones are left out.
    pub fn through(series: &[Restriction]) -> Self {
        let mut restrictions = [None; 4];
        for (place, restriction) in restrictions.iter_mut().zip(series) {
            *place = Some(*restriction);
        }
        Self {
            restrictions,
            one_way: None,
        }
    }

    /// The same with a check valve in it.
    #[must_use]
    pub const fn only(mut self, direction: Direction) -> Self {
        self.one_way = Some(direction);
        self
    }

    /// The restrictions.
    pub fn restrictions(&self) -> impl Iterator<Item = &Restriction> {
        self.restrictions.iter().flatten()
    }
}

/// How an element lets pass.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Law {
    /// Nothing.
    Shut,
    /// What the pressures drive through restrictions.
    Path(Path),
    /// A pump of constant displacement, m³/s, that reaches its ultimate pressure, Pa. It only
    /// moves forward, whatever the pressure behind it.
    Pump {
        /// Displacement, m³/s.
        displacement: f64,
        /// Ultimate pressure, Pa.
        ultimate: f64,
    },
    /// The unit's compressor.
    Compression,
    /// The unit's metering device.
    Metering,
}

/// What is worked out once of a path: the sums of its series.
#[derive(Debug, Clone, Copy, Default)]
pub(super) struct Conductor {
    /// Σ loss / (2 A²), 1/m⁴.
    inertia: f64,
    /// π d⁴ / (128 L) of each, m³.
    viscous: [f64; 4],
    /// The lesser of d³ sqrt(2π) / (6 L) and A / sqrt(2π) of each, m².
    molecular: [f64; 4],
    /// How many there are.
    count: usize,
    /// 0.055 sqrt(g d⁵) of the narrowest, m³/s.
    pub exchange: f64,
    /// 1 / Σ (L / A), m.
    pub diffusive: f64,
}

impl Conductor {
    pub fn of(path: &Path) -> Self {
        let mut conductor = Self::default();
        let mut resistance = 0.0;
        let mut narrowest = f64::INFINITY;
        for restriction in path.restrictions() {
            let &Restriction {
                area,
                diameter: d,
                length,
                loss,
            } = restriction;
            if !(area > 0.0 && d > 0.0 && length > 0.0) {
                return Self::default();
            }
            let place = conductor.count;
            conductor.inertia += loss / (2.0 * area * area);
            conductor.viscous[place] = PI * d * d * d * d / (128.0 * length);
            let tube = 2.506_628_3 * d * d * d / (6.0 * length);
            conductor.molecular[place] = tube.min(0.398_942_3 * area);
            conductor.count += 1;
            resistance += length / area;
            narrowest = narrowest.min(d);
        }
        if conductor.count > 0 {
            let d = narrowest;
            // Two gases change places through a hole by their difference of density.
            // Source: Epstein, J. Heat Transfer 110 (1988), Q = 0.055 sqrt(g D⁵ Δρ/ρ);
            // from memory.
            conductor.exchange = 0.055 * (9.81 * d * d * d * d * d).sqrt();
            conductor.diffusive = 1.0 / resistance;
        }
        conductor
    }

    /// Whether nothing can pass.
    pub const fn is_shut(&self) -> bool {
        self.count == 0
    }

    /// The conductance G of `m = G (p_high - p_low)`, kg/(s Pa), for what `donor` delivers.
    ///
    /// ```text
    /// dp = a m² + b m      a inertial, 1/b viscous + molecular
    /// G = 2 / (b + sqrt(b² + 4 a f sqrt(dp² + dpl²)))
    /// f = max(1, dp / (0.5 p_high)) chokes a gas; dpl = min(300 Pa, 0.01 p_high) is linear flow
    /// ```
    #[inline]
    pub fn conductance(&self, donor: &Draw, high: f64, low: f64) -> f64 {
        let dp = high - low;
        let a = self.inertia * donor.per_density;
        let rho = if donor.gas {
            donor.rho * 0.5 * (1.0 + low / high)
        } else {
            donor.rho
        };
        let per_viscosity = rho * donor.per_viscosity;
        let per_speed = if donor.gas { donor.per_speed } else { 0.0 };
        let mut b = 0.0;
        for (viscous, molecular) in self.viscous[..self.count]
            .iter()
            .zip(&self.molecular[..self.count])
        {
            b += 1.0 / (viscous * per_viscosity + molecular * per_speed).max(1e-40);
        }
        let choke = if donor.gas || donor.x > 0.0 {
            (dp / (0.5 * high)).max(1.0)
        } else {
            1.0
        };
        let linear = (0.01 * high).min(300.0);
        let root = (dp * dp + linear * linear).sqrt();
        2.0 / (b + (b * b + 4.0 * a * choke * root).sqrt())
    }
}

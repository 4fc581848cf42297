//! The recovery machine with its cylinder on a scale: it draws what is in the centre hose and
//! pushes it through its coil and hose into the cylinder.

use super::tool::{After, Before, Bench, Blank, Face, Follow, Refused, Size, Tool, keyed, require};
use super::{FindingRow, Instrument, Item, PressureGauge, RowPrice, Stage};
use crate::fluid::refrigerant::Refrigerant;
use crate::plant::network::{
    Direction, Draws, ElementId, End, Fill, Law, Node, NodeId, NodeSpec, Path, Restriction,
};
use crate::units::quantity::{Dimension, Quantity, Shown};
use crate::units::{ATMOSPHERE, PSI};
use serde::{Deserialize, Serialize};
use strum::{EnumIter, IntoStaticStr};

/// The inner volume of the cylinder, m³: 26.2 lb of water at 77 °F, which is what a nominal 30 lb
/// recovery cylinder holds (trade press). Density of water 997.05 kg/m³: IAPWS-95.
const VOLUME: f64 = 26.2 * 0.453_592_37 / 997.05;

/// The share of the water capacity that may be filled, by weight, times the specific gravity of the
/// liquid at 77 °F. Source: AHRI Guideline K; 40 CFR 82 subpart F, appendix B: 80 %.
const FILL: f64 = 0.8;

/// The temperature at which the fill is reckoned, K: 77 °F. Source: AHRI Guideline K.
const FILL_TEMPERATURE: f64 = 298.15;

/// What the machine displaces of vapour, m³/s, less what it loses against its outlet pressure.
/// Chosen so that 0.25 kg of R-410A a minute pass at 40 °C: the AHRI 740 rating of a
/// twin-cylinder set, 0.55 lb a minute (trade press).
const DISPLACEMENT: f64 = 4.7e-5;

/// The area of the inlet that is set to liquid, m², by `m = A sqrt(ρ (p - p_low))`. Chosen so that
/// 1.72 kg of R-22 a minute pass as liquid of 40 °C: the AHRI 740 listing of an oil-less set under
/// 30 lb, 3.80 lb a minute (trade press).
const LIQUID_INLET: f64 = 7.45e-7;

/// The pressure behind the inlet that is set to liquid, Pa absolute. Chosen: the atmosphere; so a
/// machine that is set to liquid draws no vacuum (common practice).
const BEHIND_INLET: f64 = ATMOSPHERE;

/// The share of its outlet pressure down to which the machine can draw. Chosen: 15 inches of
/// vacuum against 200 psig (common practice).
const CLEARANCE: f64 = 0.035;

/// The switch stops the machine here, Pa gauge. Chosen: 550 psig (common practice, no source).
const CUT_OUT: f64 = 550.0 * PSI;

/// Coil, hose or cylinder as full of liquid as this has no room: its pressure rises at once.
const FULL: f64 = 0.985;

/// Liquid that the compressor bears before its valves are bent, kg, and the share of its
/// displacement that is left then. Chosen (no source).
const VALVES_BEND: (f64, f64) = (0.5, 0.4);

/// What can be done with it.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize, IntoStaticStr, EnumIter)]
#[strum(serialize_all = "kebab-case", prefix = "recovery-do-")]
pub enum Action {
    /// Run or stop the machine; to run it again after its switch has stopped it resets the switch.
    Run(bool),
    /// Set its inlet to liquid, throttled, or to vapour, wide open.
    Liquid(bool),
    /// Open or shut the valve of its cylinder.
    Valve(bool),
    /// Set the recovery scale to zero as it stands.
    Tare,
}

impl Action {
    /// What fills the blank of its text.
    pub const fn blank(self) -> Option<Blank> {
        match self {
            Self::Run(on) | Self::Liquid(on) | Self::Valve(on) => Some(Blank::Flag(on)),
            Self::Tare => None,
        }
    }
}

keyed! { Recovery "recovery-shows-":
    /// What can be read on it.
    pub enum Reading {
        /// The scale under the recovery cylinder, less its tare.
        Scale,
        /// The gauge at the machine's outlet.
        Outlet,
    }
}

keyed! { Recovery "recovery-done-":
    /// What done with it a rubric can ask for.
    pub enum Milestone {
        /// The machine was started.
        Started,
    }
}

keyed! { Recovery "recovery-is-":
    /// What anybody can see of it.
    pub enum Status {
        /// It runs, its cylinder is open and the centre hose is on it.
        Recovering,
        /// Its switch has stopped it.
        Stopped,
    }
}

keyed! { Recovery "recovery-found-":
    /// What the watch can note of it.
    pub enum Finding {
        /// The cylinder was filled past its limit; size is the mass above it.
        Overfilled,
        /// Its high-pressure switch had to stop it.
        Stopped,
        /// Liquid came to its compressor through an inlet set to vapour; size in kilograms.
        LiquidSlug,
    }
}

/// Machine and cylinder as they stand. What is inside them is in nodes of the network.
#[derive(Debug, Clone, Copy, PartialEq)]
#[expect(
    clippy::struct_excessive_bools,
    reason = "each is a switch or valve that stands by itself"
)]
pub struct RecoveryMachine {
    /// It runs.
    pub running: bool,
    /// Its inlet is set to liquid.
    pub liquid: bool,
    /// The valve of its cylinder is open.
    pub valve_open: bool,
    /// Its switch has stopped it.
    pub stopped: bool,
    /// The switch stopped it in the last step.
    just_stopped: bool,
    /// Liquid that its compressor took in the last step, kg, and in all.
    slug: f64,
    slugs: f64,
    scale: Instrument,
    tare: Option<f64>,
    outlet_gauge: PressureGauge,
    /// What the cylinder may hold, kg.
    limit: f64,
    rated: bool,
    inlet: NodeId,
    coil: NodeId,
    cylinder: NodeId,
    compression: ElementId,
    outlet: ElementId,
}

impl RecoveryMachine {
    /// The refrigerant that its cylinder may hold, kg.
    pub fn allowed(refrigerant: &Refrigerant) -> f64 {
        FILL * VOLUME * refrigerant.at(FILL_TEMPERATURE).rho_l
    }

    /// What the scale has gained since its tare, kg; `None` before it was set to zero.
    pub fn weighed_in(&self) -> Option<f64> {
        self.tare.map(|tare| self.scale.shown() - tare)
    }

    /// The nodes of its coil with the hose behind it, and of its cylinder.
    pub const fn nodes(&self) -> [NodeId; 2] {
        [self.coil, self.cylinder]
    }

    /// Whether it is rated for refrigerants that burn, as its case says.
    pub const fn is_rated(&self) -> bool {
        self.rated
    }

    /// The share of its displacement that its valves still give.
    fn health(&self) -> f64 {
        let (bears, left) = VALVES_BEND;
        1.0 - (1.0 - left) * (self.slugs / bears).min(1.0)
    }

    /// How the compressor draws on what stands at its inlet.
    fn law(&self, inlet: &Node, outlet: f64) -> Law {
        let (mut displacement, mut ultimate) = (DISPLACEMENT * self.health(), CLEARANCE * outlet);
        if self.liquid {
            let density = drawn_density(inlet);
            let drop = (inlet.pressure - BEHIND_INLET).max(0.0);
            displacement = displacement.min(LIQUID_INLET * (drop / density).sqrt());
            ultimate = ultimate.max(BEHIND_INLET);
        }
        Law::Pump {
            displacement,
            ultimate,
        }
    }
}

/// The density of what the machine draws of a node, kg/m³.
fn drawn_density(inlet: &Node) -> f64 {
    let liquid_alone = matches!(inlet.draws, Draws::Liquid | Draws::Reservoir);
    if liquid_alone && inlet.liquid > 0.0 {
        inlet.liquid_density
    } else {
        (inlet.mass / inlet.volume).max(1e-3)
    }
}

/// The share of a node that liquid fills.
fn filled(node: &Node) -> f64 {
    1.0 - node.vapour_volume / node.volume
}

impl Tool for RecoveryMachine {
    type Action = Action;
    type Reading = Reading;
    type Milestone = Milestone;
    type Status = Status;
    type Finding = Finding;

    const IS_EXTRA: bool = true;

    /// Standing, its inlet set to vapour; coil and cylinder evacuated, the cylinder shut.
    ///
    /// Chosen: a coil of 0.4 L with a fan takes off 25 W/K; a cylinder of 12 kg of steel stands in
    /// still air, 5 W/K (common practice, no source).
    fn set_up(bench: &mut Bench<'_>) -> Self {
        let limit = Self::allowed(bench.network.refrigerant());
        let mut empty = |volume, wall, to_ambient| {
            bench.network.add_node(NodeSpec {
                volume,
                wall,
                to_ambient,
                fill: Fill::Evacuated,
            })
        };
        let coil = empty(4e-4, 800.0, 25.0);
        let cylinder = empty(VOLUME, 5500.0, 5.0);
        let mut between = |from, to| {
            let ends = (End::Node(from), End::Node(to));
            bench.network.add_element(ends.0, ends.1, Law::Shut)
        };
        Self {
            running: false,
            liquid: false,
            valve_open: false,
            stopped: false,
            just_stopped: false,
            slug: 0.0,
            slugs: 0.0,
            // Chosen: as the charging scale.
            scale: Instrument::at(0.0, 0.5, 5e-3),
            tare: None,
            outlet_gauge: PressureGauge::regulator_outlet(),
            limit,
            rated: bench.load.recovery_rated,
            inlet: bench.hose,
            coil,
            cylinder,
            compression: between(bench.hose, coil),
            outlet: between(coil, cylinder),
        }
    }

    fn before(&self, at: &mut Before<'_>) {
        let (inlet, coil) = (at.network.node(self.inlet), at.network.node(self.coil));
        let compression = if at.is_on && self.running {
            self.law(inlet, coil.pressure)
        } else {
            Law::Shut
        };
        at.network.set_law(self.compression, compression);
        let outlet = if self.valve_open {
            let hose = Path::through(&[Restriction::tube(6.0e-3, 1.0)]);
            Law::Path(hose.only(Direction::Forward))
        } else {
            Law::Shut
        };
        at.network.set_law(self.outlet, outlet);
    }

    fn after(&mut self, at: &After<'_>) {
        let flow = at.network.flux(self.compression).refrigerant;
        let inlet = at.network.node(self.inlet);
        let wet = if self.liquid || inlet.refrigerant <= 0.0 {
            0.0
        } else {
            inlet.liquid / inlet.refrigerant
        };
        self.slug = flow.max(0.0) * wet * at.dt;
        self.slugs += self.slug;
        let (coil, cylinder) = (at.network.node(self.coil), at.network.node(self.cylinder));
        let has_no_room = filled(coil) > FULL || (self.valve_open && filled(cylinder) > FULL);
        let is_too_high = coil.pressure - ATMOSPHERE > CUT_OUT;
        self.just_stopped = self.running && (has_no_room || is_too_high);
        if self.just_stopped {
            self.running = false;
            self.stopped = true;
        }
    }

    fn follow(&mut self, at: &Follow<'_>) {
        self.scale.follow(at.refrigerant(self.cylinder), at.dt);
        self.outlet_gauge.follow(at.pressure(self.coil), at.dt);
    }

    fn watch(&self, at: &After<'_>, note: &mut dyn FnMut(Finding, Size)) {
        let over = at.network.node(self.cylinder).refrigerant - self.limit;
        if over > 0.0 {
            note(Finding::Overfilled, Size::Peak(over));
        }
        if self.just_stopped {
            note(Finding::Stopped, Size::Once(1.0));
        }
        if self.slug > 0.0 {
            note(Finding::LiquidSlug, Size::More(self.slug));
        }
    }

    fn could_ignite(&self) -> bool {
        self.running && !self.rated
    }

    fn act(&mut self, action: Action) -> Result<(), Refused> {
        match action {
            Action::Run(run) => {
                require(self.running != run, "recovery-refuses-so")?;
                self.running = run;
                self.stopped = false;
            }
            Action::Liquid(liquid) => {
                require(self.liquid != liquid, "recovery-refuses-so")?;
                self.liquid = liquid;
            }
            Action::Valve(open) => {
                require(self.valve_open != open, "refusal-cylinder-so")?;
                self.valve_open = open;
            }
            Action::Tare => self.tare = Some(self.scale.shown()),
        }
        Ok(())
    }

    fn reaches(action: Action) -> Option<Milestone> {
        match action {
            Action::Run(true) => Some(Milestone::Started),
            Action::Run(false) | Action::Liquid(_) | Action::Valve(_) | Action::Tare => None,
        }
    }

    fn stage(milestone: Milestone) -> Stage {
        match milestone {
            Milestone::Started => Stage::PumpDown,
        }
    }

    fn face(reading: Reading) -> Face {
        match reading {
            Reading::Scale => Face {
                dimension: Dimension::Mass,
                // A quarter of an ounce.
                steady_within: 0.007,
                is_key: true,
            },
            Reading::Outlet => Face {
                dimension: Dimension::GaugePressure,
                steady_within: 5.5 * PSI,
                is_key: true,
            },
        }
    }

    fn shown(&self, reading: Reading) -> Shown {
        let dimension = Self::face(reading).dimension;
        let si = match reading {
            Reading::Scale => Some(self.scale.shown() - self.tare.unwrap_or(0.0)),
            Reading::Outlet => self.outlet_gauge.shown(),
        };
        si.map_or(Shown::OverRange, |si| {
            Shown::Value(Quantity { si, dimension })
        })
    }

    fn needle(&self, reading: Reading) -> Option<(f64, f64, f64)> {
        let gauge = &self.outlet_gauge;
        match reading {
            Reading::Scale => None,
            Reading::Outlet => Some((gauge.needle(), gauge.least, gauge.most)),
        }
    }

    fn is(&self, status: Status, is_on: bool) -> bool {
        match status {
            Status::Recovering => is_on && self.running && self.valve_open,
            Status::Stopped => self.stopped,
        }
    }

    /// Chosen: half an hour is lost with a machine that stopped, four hours with bent valves.
    fn row(finding: Finding) -> FindingRow {
        match finding {
            Finding::Overfilled => FindingRow::new(Dimension::Mass, RowPrice::Priceless)
                .highest()
                .at(Stage::PumpDown),
            Finding::Stopped => {
                FindingRow::new(Dimension::Plain, RowPrice::Risked(Item::Hours(0.5)))
            }
            Finding::LiquidSlug => {
                FindingRow::new(Dimension::Mass, RowPrice::Risked(Item::Hours(4.0)))
                    .from_size(0.05)
                    .at(Stage::PumpDown)
            }
        }
    }

    fn looms(&self, finding: Finding) -> bool {
        match finding {
            Finding::Overfilled => self.scale.shown() > 0.8 * self.limit,
            Finding::Stopped => self.running && !self.valve_open,
            Finding::LiquidSlug => self.running && !self.liquid && self.slugs > 0.0,
        }
    }

    fn visit_state(&self, visit: &mut dyn FnMut(f64)) {
        for flag in [self.running, self.liquid, self.valve_open, self.stopped] {
            visit(f64::from(u8::from(flag)));
        }
        visit(self.slugs);
        visit(self.scale.position());
        visit(self.tare.unwrap_or(-1.0));
        self.outlet_gauge.visit_state(visit);
    }
}

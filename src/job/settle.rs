//! Settling: a unit run to its steady state, and what is read and true there.

use crate::plant::{Fault, FaultKind};
use crate::scenario::Scenario;
use crate::units::{Fraction, Temperature};
use serde::Serialize;

/// What is to be other than the scenario says.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Overrides {
    /// Outdoor air.
    pub outdoor: Option<Temperature>,
    /// Return air, dry bulb.
    pub indoor: Option<Temperature>,
    /// Return air, wet bulb.
    pub indoor_wet_bulb: Option<Temperature>,
    /// Refrigerant as a share of what belongs in the unit, 0 to 2; in place of what the
    /// scenario's own faults make of it.
    pub charge: Option<f64>,
    /// The scenario's own faults are left out.
    pub no_faults: bool,
    /// Faults planted after those that stay.
    pub faults: Vec<Fault>,
}

impl Overrides {
    /// The scenario with these put into it.
    #[must_use]
    pub fn put_into(&self, scenario: &Scenario) -> Scenario {
        let mut scenario = scenario.clone();
        let file = &mut scenario.file;
        file.site.outdoor = self.outdoor.unwrap_or(file.site.outdoor);
        file.site.indoor = self.indoor.unwrap_or(file.site.indoor);
        file.site.indoor_wet_bulb = self.indoor_wet_bulb.unwrap_or(file.site.indoor_wet_bulb);
        if self.no_faults {
            file.faults.clear();
        }
        file.faults.extend(&self.faults);
        if let Some(share) = self.charge {
            let is_of_charge =
                |kind| matches!(kind, FaultKind::Undercharge | FaultKind::Overcharge);
            file.faults.retain(|fault| !is_of_charge(fault.kind()));
            if share < 1.0 {
                let missing = Fraction::clamped(1.0 - share);
                file.faults.push(Fault::Undercharge(missing));
            } else if share > 1.0 {
                let too_much = Fraction::clamped(share - 1.0);
                file.faults.push(Fault::Overcharge(too_much));
            }
        }
        scenario
    }
}

/// A unit at its steady state, in the units of the trade that the names say.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
pub struct Settled {
    /// Pressure at the suction valve's port, psig.
    pub suction_psig: f64,
    /// Pressure at the liquid valve's port, psig.
    pub liquid_psig: f64,
    /// Pressure at the compressor's discharge, psig.
    pub discharge_psig: f64,
    /// Saturation temperature in the indoor coil, °F.
    pub evaporating_f: f64,
    /// Saturation temperature in the outdoor coil, °F.
    pub condensing_f: f64,
    /// Superheat at the suction valve, °F.
    pub superheat_f: f64,
    /// Superheat at the outlet of the indoor coil, °F.
    pub coil_superheat_f: f64,
    /// Subcooling at the liquid valve, °F.
    pub subcooling_f: f64,
    /// Temperature of the discharge line, °F.
    pub discharge_f: f64,
    /// What the outdoor air gains over its coil, °F.
    pub condenser_air_rise_f: f64,
    /// What the indoor air loses over its coil, °F.
    pub evaporator_air_drop_f: f64,
    /// Cooling of the indoor air, sensible and latent, Btu/h.
    pub capacity_btu_h: f64,
    /// Electric power of compressor and fans, W.
    pub power_w: f64,
    /// Electric power of the compressor, W.
    pub compressor_w: f64,
    /// Current of the compressor, A.
    pub compressor_amps: f64,
    /// Refrigerant flow, kg/h.
    pub flow_kg_h: f64,
    /// Refrigerant in the unit, kg.
    pub charge_kg: f64,
    /// Simulated time that it took, s.
    pub simulated_s: f64,
    /// Whether it came to rest; else this is where it was when the time was up.
    pub settled: bool,
}

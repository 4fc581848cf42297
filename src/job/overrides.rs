//! What a settling is to have other than its scenario says.

use crate::plant::{Fault, FaultKind};
use crate::scenario::Scenario;
use crate::units::{Fraction, Temperature};
use thiserror::Error;

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

/// Two things that cannot both be so.
#[derive(Debug, Clone, PartialEq, Eq, Error)]
pub enum Contradiction {
    /// The charge is given twice.
    #[error("the charge is given as a percentage and by a fault: leave one of them out")]
    ChargeTwice,
    /// Too little and too much.
    #[error("the charge cannot be both too small and too large")]
    BothCharges,
    /// A fault is planted twice at the same place.
    #[error("{} is planted twice", .0.label())]
    Twice(FaultKind),
    /// The scenario has the fault that is to be planted.
    #[error("{} is in the scenario already: leave the scenario's own faults out", .0.label())]
    InScenario(FaultKind),
    /// More water in the air than it can hold.
    #[error("the wet bulb cannot be above the dry bulb indoors")]
    WetBulb,
}

impl Overrides {
    /// Whether all that is overridden can be so at the same time.
    pub fn check(&self, scenario: &Scenario) -> Result<(), Contradiction> {
        let own: &[Fault] = if self.no_faults {
            &[]
        } else {
            &scenario.file.faults
        };
        for (number, fault) in self.faults.iter().enumerate() {
            let is_same = |other: &Fault| other.is_at_the_place_of(*fault);
            if self.charge.is_some() && is_of_charge(fault.kind()) {
                return Err(Contradiction::ChargeTwice);
            }
            if self.faults[..number].iter().any(is_same) {
                return Err(Contradiction::Twice(fault.kind()));
            }
            if own.iter().any(is_same) {
                return Err(Contradiction::InScenario(fault.kind()));
            }
        }
        let file = self.put_into(scenario).file;
        let has = |kind| file.faults.iter().any(|fault| fault.kind() == kind);
        if has(FaultKind::Undercharge) && has(FaultKind::Overcharge) {
            return Err(Contradiction::BothCharges);
        }
        if file.site.indoor_wet_bulb > file.site.indoor {
            return Err(Contradiction::WetBulb);
        }
        Ok(())
    }

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

const fn is_of_charge(kind: FaultKind) -> bool {
    matches!(kind, FaultKind::Undercharge | FaultKind::Overcharge)
}

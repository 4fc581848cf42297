//! What shows in the sight glass after the drier, as anybody at the unit can see it.

use super::Job;
use crate::plant::network::Phase;
use crate::plant::{Link, Section};

/// What shows in the glass.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Glass {
    /// Nothing: it is full of liquid, or it holds none. The eye cannot tell which.
    Clear,
    /// It flashes: bubbles run past, this share of the volume.
    Flashes(f64),
    /// Liquid stands still in it, filling this share of the height.
    Level(f64),
}

/// A flow that carries bubbles along, kg/s. Chosen: a hundredth of what a small unit runs at.
const MOVES: f64 = 2e-4;

/// A share of vapour too small to be seen. Chosen: one small bubble in a glass.
const SEEN: f64 = 2e-3;

impl Job {
    /// What shows in the sight glass between drier and metering device.
    pub fn sight_glass(&self) -> Glass {
        let node = self
            .plant
            .network()
            .node(self.plant.node(Section::AfterDrier));
        let vapour = node.vapour_volume / node.volume;
        if node.phase != Phase::TwoPhase || !(SEEN..=1.0 - SEEN).contains(&vapour) {
            return Glass::Clear;
        }
        let flows = |link: Link| {
            let flux = self.plant.network().flux(self.plant.link(link));
            flux.mass.abs() > MOVES
        };
        if flows(Link::Drier) || flows(Link::Metering) {
            Glass::Flashes(vapour)
        } else {
            Glass::Level(1.0 - vapour)
        }
    }
}

#[cfg(test)]
mod tests {
    use super::Glass;
    use crate::job::{Job, TICKS_PER_SECOND};
    use crate::plant::ThermostatCall;
    use crate::scenario::Scenario;
    use crate::words::Action;

    /// The glass after a unit has run for 15 min.
    fn running(scenario: Option<Scenario>) -> Glass {
        let mut job = Job::new(&scenario.expect("it is shipped"));
        let cool = Action::Thermostat(ThermostatCall::Cool);
        job.apply(cool).expect("the thermostat can be set");
        for _ in 0..15 * 60 * TICKS_PER_SECOND {
            job.tick();
        }
        job.sight_glass()
    }

    /// Bubbles tell an undercharge and a restriction before the glass; subcooled liquid is clear.
    /// Common practice, no source.
    #[test]
    fn it_flashes_when_the_charge_is_low_or_the_drier_clogged_and_not_on_a_sound_unit() {
        for ill in ["undercharge", "clogged_drier"] {
            let glass = running(Scenario::shipped(ill));
            assert!(matches!(glass, Glass::Flashes(_)), "{ill}: {glass:?}");
        }
        let sound = Scenario::of_shipped_unit("r22_3ton_orifice");
        assert_eq!(running(sound), Glass::Clear);
    }
}

//! Flare joints, the drier between two of them, and what finds a leak.

use super::require;
use crate::job::{Job, Refusal};
use crate::plant::{Arrow, Joint, Made, Spot};
use crate::units::{ATMOSPHERE, PSI, Torque};
use crate::words::{FindingKind, Part, Where};

/// Pressure behind a joint that counts as pressure, Pa gauge. Chosen: what a gauge can show.
const PRESSURE: f64 = 2.0 * PSI;

/// How tight a nut is after it was turned on by hand. Chosen.
const BY_HAND: Torque = Torque::from_newton_metres(3.0);

impl Job {
    pub(super) fn loosen(&mut self, joint: Joint) -> Result<(), Refusal> {
        let made = self.fittings.joint(joint).made;
        require(matches!(made, Made::Up(_)), "refusal-not-made-up")?;
        self.note_opening(joint);
        self.note_breaking(Spot::Joint(joint));
        self.fittings.joint_mut(joint).made = Made::Cracked;
        Ok(())
    }

    pub(super) fn take_apart(&mut self, joint: Joint) -> Result<(), Refusal> {
        let made = self.fittings.joint(joint).made;
        require(made != Made::Apart, "refusal-apart-already")?;
        if made != Made::Plugged {
            self.note_opening(joint);
        }
        if matches!(made, Made::Up(_)) {
            self.note_breaking(Spot::Joint(joint));
        }
        self.fittings.joint_mut(joint).made = Made::Apart;
        Ok(())
    }

    pub(super) fn plug(&mut self, joint: Joint) -> Result<(), Refusal> {
        let state = self.fittings.joint_mut(joint);
        require(state.made == Made::Apart, "refusal-plug-only-apart")?;
        state.made = Made::Plugged;
        Ok(())
    }

    pub(super) fn renew_flare(&mut self, joint: Joint) -> Result<(), Refusal> {
        let state = self.fittings.joint_mut(joint);
        require(state.is_parted(), "refusal-apart-before-flare")?;
        state.renew();
        Ok(())
    }

    pub(super) fn make_up(&mut self, joint: Joint, torque: Torque) -> Result<(), Refusal> {
        let newton_metres = torque.newton_metres();
        require(
            newton_metres > 0.0 && newton_metres <= 300.0,
            "refusal-wrench-range",
        )?;
        require(
            !joint.is_at_drier() || self.fittings.drier.fitted.is_some(),
            "refusal-no-drier-to-make-up",
        )?;
        let state = self.fittings.joint_mut(joint);
        let was_split = state.split;
        state.make_up(torque);
        if state.split && !was_split {
            self.watch
                .note(self.tick, FindingKind::OverTightened, joint, 1.0);
        }
        self.hands_on_circuit(joint);
        Ok(())
    }

    pub(super) fn sniff(&mut self, at: Option<Spot>) -> Result<(), Refusal> {
        let is_taken_up = at.is_some() && self.kit.detector.at.is_none();
        if is_taken_up && !self.rated.detector {
            self.note_not_rated(Where::Detector);
        }
        self.kit.detector.at = at;
        Ok(())
    }

    pub(super) fn wet(&mut self, spot: Spot) -> Result<(), Refusal> {
        self.kit.bubbles.wet(spot);
        Ok(())
    }

    pub(super) fn wipe(&mut self, spot: Spot) -> Result<(), Refusal> {
        require(self.kit.bubbles.is_wet(spot), "refusal-no-solution")?;
        self.kit.bubbles.wipe(spot);
        Ok(())
    }

    pub(super) fn take_out_drier(&mut self) -> Result<(), Refusal> {
        require(self.fittings.drier.fitted.is_some(), "refusal-no-drier")?;
        self.require_drier_free()?;
        self.hands_in_unit(Part::Drier);
        self.fittings.drier.fitted = None;
        self.plant.take_out_desiccant();
        Ok(())
    }

    pub(super) fn fit_drier(&mut self, arrow: Arrow) -> Result<(), Refusal> {
        require(
            self.fittings.drier.fitted.is_none(),
            "refusal-old-drier-first",
        )?;
        self.require_drier_free()?;
        self.hands_in_unit(Part::Drier);
        self.fittings.drier.fit_new(arrow);
        self.plant.fit_fresh_desiccant();
        for joint in [Joint::DrierInlet, Joint::DrierOutlet] {
            self.fittings.joint_mut(joint).make_up(BY_HAND);
        }
        Ok(())
    }

    pub(super) fn clean_outdoor_coil(&mut self) -> Result<(), Refusal> {
        self.hands_in_unit(Spot::OutdoorCoil);
        self.air.clean_outdoor_coil();
        Ok(())
    }

    pub(super) fn change_filter(&mut self) -> Result<(), Refusal> {
        self.air.change_filter();
        Ok(())
    }

    fn require_drier_free(&self) -> Result<(), Refusal> {
        let parted = [Joint::DrierInlet, Joint::DrierOutlet]
            .into_iter()
            .all(|joint| self.fittings.joint(joint).is_parted());
        require(parted, "refusal-drier-flares-first")
    }

    /// Notes what it means to open this joint now.
    fn note_opening(&mut self, joint: Joint) {
        self.hands_in_unit(joint);
        let gauge = self.pressure_behind(Spot::Joint(joint)) - ATMOSPHERE;
        if gauge > PRESSURE {
            let kind = FindingKind::OpenedUnderPressure;
            self.watch.note(self.tick, kind, joint, gauge);
        }
    }
}

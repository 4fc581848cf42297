//! What the watch looks for where the refrigerant burns: what could light it, where it gathers,
//! what was opened without purging, tools that are not made for it.
//!
//! Common practice for class A2L; ISO 817 and ASHRAE 34 give class and limit, IEC 60335-2-40 asks
//! for ventilation, rated tools, no source of ignition, and nitrogen before a circuit is opened
//! (from memory). Local codes and licensed practice decide.

use super::surroundings::Side;
use super::{Job, TICK};
use crate::plant::Spot;
use crate::words::{FindingKind, Part, Where};

/// A release as small as this dilutes within a hand's breadth, kg/s. Chosen: a gram in two
/// minutes; a leak that only a detector finds is a thousandth of it.
const BURNS_FROM: f64 = 1e-5;

/// The share of the limit from which it counts. Source: 25 % of the lower flammability limit is
/// where fixed detectors alarm (EN 378-3, from memory).
const ALARM: f64 = 0.25;

impl Job {
    /// What gets out on each side now, kg/s.
    fn releases(&self) -> [f64; 2] {
        let network = self.plant.network();
        let out = |element| network.flux(element).refrigerant.max(0.0);
        let mut released = [0.0; 2];
        for spot in Spot::ALL {
            released[Side::of(spot) as usize] += out(self.outlets.element(spot));
        }
        for outlet in self.piping.outlets() {
            released[Side::Outdoor as usize] += out(outlet.element);
        }
        for element in self.kit.tools.outlets() {
            released[Side::Outdoor as usize] += out(element);
        }
        released
    }

    /// What could light refrigerant on a side.
    fn ignites(&self, side: Side) -> Option<Where> {
        let sniffs = self.kit.detector.at.map(Side::of) == Some(side);
        if side == Side::Outdoor && self.electrics.contactor_in() {
            Some(Part::LiveContactor.into())
        } else if side == Side::Outdoor
            && let Some(tool) = self.kit.tools.that_could_ignite().next()
        {
            Some(Where::Switch(tool))
        } else if sniffs && !self.rated.detector {
            Some(Where::Detector)
        } else {
            None
        }
    }

    /// Lets the air around take up what gets out, and notes what could burn.
    pub(super) fn look_at_fire(&mut self) {
        let Some(limit) = self.plant.refrigerant().flammable_from() else {
            return;
        };
        let released = self.releases();
        self.surroundings.change_air(TICK);
        for side in Side::ALL {
            let flow = released[side as usize];
            self.surroundings.take_up(side, flow * TICK);
            let share = self.surroundings.density(side) / limit;
            if share >= ALARM {
                let kind = FindingKind::FlammableAir;
                self.watch.peak(self.tick, kind, side.part(), share);
            }
            let Some(source) = self.ignites(side) else {
                continue;
            };
            let kind = FindingKind::IgnitionRisk;
            if share >= 1.0 {
                // All that has gathered can go up, whatever comes out now.
                let gathered = self.surroundings.gathered(side);
                self.watch.peak(self.tick, kind, source, gathered);
            } else if flow > BURNS_FROM {
                self.watch.grow(self.tick, kind, source, flow * TICK);
            }
        }
    }

    /// Notes what it means to break a spot of a circuit whose refrigerant burns.
    pub(super) fn note_breaking(&mut self, spot: Spot) {
        let Some(limit) = self.plant.refrigerant().flammable_from() else {
            return;
        };
        let node = self.plant.node(self.fittings.place_of(spot));
        let node = self.plant.network().node(node);
        let density = node.vapour_density;
        let tick = self.tick;
        if node.liquid > 0.0 || density > limit {
            let share = density / limit;
            self.watch
                .note(tick, FindingKind::OpenedUnpurged, spot, share);
        }
        if !self.surroundings.is_ventilated(Side::of(spot)) {
            self.watch.note(tick, FindingKind::Unventilated, spot, 1.0);
        }
    }

    /// Notes the use of a tool that is not rated for a refrigerant that burns.
    pub(super) fn note_not_rated(&mut self, tool: Where) {
        if self.plant.refrigerant().is_flammable() {
            self.watch
                .note(self.tick, FindingKind::ToolNotRated, tool, 1.0);
        }
    }
}

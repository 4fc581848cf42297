//! The job sheet and the hand-back.

use super::require;
use crate::job::{Entry, Job, Refusal};
use crate::plant::{Arrow, Joint, Line, Spot};
use crate::words::{
    Diagnosis, FindingKind, GaugePlace, Hose, HoseEnd, Level, Part, SheetField, Where,
};

impl Job {
    pub(super) fn write(&mut self, field: SheetField, value: Level) -> Result<(), Refusal> {
        let quantity = value.quantity();
        require(
            quantity.dimension == field.dimension(),
            "refusal-blank-of-another-kind",
        )?;
        require(quantity.si.is_finite(), "refusal-number")?;
        let instruments = self.instruments_for(field);
        let entry = Entry {
            tick: self.tick,
            value,
            instruments,
        };
        self.sheet.entries.insert(field, entry);
        Ok(())
    }

    pub(super) fn diagnose(&mut self, diagnosis: Diagnosis) -> Result<(), Refusal> {
        self.sheet.diagnosis = Some((self.tick, diagnosis));
        Ok(())
    }

    pub(super) fn hand_back(&mut self) -> Result<(), Refusal> {
        self.note_joints_and_caps();
        self.note_kit_left_on();
        self.handed_back = true;
        Ok(())
    }

    fn note_joints_and_caps(&mut self) {
        let tick = self.tick;
        for joint in Joint::ALL {
            let shortfall = self.fittings.joint(joint).shortfall();
            if shortfall > 0.0 {
                self.watch
                    .note(tick, FindingKind::JointLeftLoose, joint, shortfall);
            }
        }
        if self.fittings.drier.fitted == Some(Arrow::TowardOutdoor) {
            self.watch
                .note(tick, FindingKind::DrierBackwards, Part::Drier, 1.0);
        }
        for line in Line::ALL {
            let valve = self.fittings.valve(line);
            let (stem, port) = (Spot::Stem(line), Spot::Port(line));
            if !valve.cap_on {
                self.watch.note(tick, FindingKind::CapLeftOff, stem, 1.0);
            }
            if !valve.port.cap_on {
                self.watch.note(tick, FindingKind::CapLeftOff, port, 1.0);
            }
            if valve.open.get() < 1.0 {
                let valve = Where::Valve(line);
                self.watch
                    .note(tick, FindingKind::ValveLeftShut, valve, 1.0);
            }
        }
    }

    fn note_kit_left_on(&mut self) {
        let tick = self.tick;
        let manifold = &self.kit.manifold;
        let hoses = [Hose::Low, Hose::High]
            .into_iter()
            .filter(|&hose| manifold.hose(hose).end.and_then(HoseEnd::port).is_some());
        let tools = [Line::Liquid, Line::Suction]
            .into_iter()
            .filter(|line| self.fittings.valve(*line).port.tool_on);
        let gauge = matches!(
            self.kit.micron_gauge.place,
            GaugePlace::LiquidPort | GaugePlace::SuctionPort
        );
        let places: Vec<Where> = hoses
            .map(Where::Hose)
            .chain(tools.map(Where::CoreTool))
            .chain(gauge.then_some(Where::MicronGauge))
            .collect();
        for place in places {
            self.watch.note(tick, FindingKind::KitLeftOn, place, 1.0);
        }
    }
}

//! The job sheet and the hand-back.

use super::require;
use crate::job::{Entry, Job, Refusal};
use crate::plant::{Arrow, Joint, Line, Spot};
use crate::text::Message;
use crate::words::{Diagnosis, FindingKind, GaugePlace, Hose, HoseEnd, Level, SheetField};

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
                    .note(tick, FindingKind::JointLeftLoose, joint.label(), shortfall);
            }
        }
        if self.fittings.drier.fitted == Some(Arrow::TowardOutdoor) {
            self.watch.note(
                tick,
                FindingKind::DrierBackwards,
                Message::new("name-drier"),
                1.0,
            );
        }
        for line in Line::ALL {
            let valve = self.fittings.valve(line);
            let (stem, port) = (Spot::Stem(line).label(), Spot::Port(line).label());
            if !valve.cap_on {
                self.watch.note(tick, FindingKind::CapLeftOff, stem, 1.0);
            }
            if !valve.port.cap_on {
                self.watch.note(tick, FindingKind::CapLeftOff, port, 1.0);
            }
            if valve.open.get() < 1.0 {
                let label = match line {
                    Line::Liquid => Message::new("name-valve-liquid"),
                    Line::Suction => Message::new("name-valve-suction"),
                };
                self.watch
                    .note(tick, FindingKind::ValveLeftShut, label, 1.0);
            }
        }
    }

    fn note_kit_left_on(&mut self) {
        let tick = self.tick;
        let manifold = &self.kit.manifold;
        let hoses = [Hose::Low, Hose::High]
            .into_iter()
            .filter(|&hose| manifold.hose(hose).end.and_then(HoseEnd::port).is_some());
        let tools = [
            (Line::Liquid, Message::new("name-core-tool-liquid")),
            (Line::Suction, Message::new("name-core-tool-suction")),
        ];
        let tools = tools
            .into_iter()
            .filter(|(line, _)| self.fittings.valve(*line).port.tool_on);
        let gauge = matches!(
            self.kit.micron_gauge.place,
            GaugePlace::LiquidPort | GaugePlace::SuctionPort
        );
        let places: Vec<Message> = hoses
            .map(Hose::label)
            .chain(tools.map(|(_, label)| label))
            .chain(gauge.then(|| Message::new("name-micron-gauge")))
            .collect();
        for place in places {
            self.watch.note(tick, FindingKind::KitLeftOn, place, 1.0);
        }
    }
}

//! What the instruments show, what can be worked out from them, and the truth behind.

use super::{Job, TICK, Truth, charging_chart::target_superheat};
use crate::kit::{GaugePlace, RecoveryMachine, ThermometerPlace};
use crate::plant::{Line, Section, Spot, Target};
use crate::units::{ATMOSPHERE, GaugePressure, Temperature, TemperatureDifference};
use crate::words::{Dimension, Quantity, Reading, SheetField, Shown, Status};

/// A number that is shown, or nothing.
fn shown(si: Option<f64>, dimension: Dimension, otherwise: Shown) -> Shown {
    si.map_or(otherwise, |si| Shown::Value(Quantity { si, dimension }))
}

impl Job {
    /// What an instrument shows.
    pub fn reading(&self, reading: Reading) -> Shown {
        let kit = &self.kit;
        let nothing = Shown::Nothing;
        let (si, otherwise) = match reading {
            Reading::LowGauge => (kit.manifold.low_gauge.shown(), Shown::OverRange),
            Reading::HighGauge => (kit.manifold.high_gauge.shown(), Shown::OverRange),
            Reading::Microns => match kit.micron_gauge.shown() {
                Ok(shown) => (shown, Shown::OverRange),
                Err(_ruined) => (None, nothing),
            },
            Reading::CompressorAmps => (kit.clamp_meter.shown(), nothing),
            Reading::Thermometer(place) => (kit.thermometers.shown(place), nothing),
            Reading::Detector => (kit.detector.shown(), nothing),
            Reading::Bubbles(spot) => (kit.bubbles.shown(spot), nothing),
            Reading::Tool(reading) => return kit.tools.shown(reading),
        };
        shown(si, reading.dimension(), otherwise)
    }

    /// Whether something can be seen to be so.
    pub fn status(&self, status: Status) -> bool {
        let kit = &self.kit;
        match status {
            Status::CompressorRuns => self.electrics.compressor_runs(),
            Status::GaugeAwayFromPump => {
                !matches!(kit.micron_gauge.place, GaugePlace::Cart | GaugePlace::Pump)
            }
            Status::GaugeAtUnit => {
                matches!(
                    kit.micron_gauge.place,
                    GaugePlace::SuctionPort | GaugePlace::LiquidPort
                )
            }
            Status::BothHandValvesOpen => {
                kit.manifold.low_valve.get() > 0.0 && kit.manifold.high_valve.get() > 0.0
            }
            Status::ChargeIsolated => {
                let shut = |line: Line| self.fittings.valve(line).open.get() == 0.0;
                // The valves of a standing compressor hold what is in the coil and the receiver.
                let holds = self.plant.has_receiver() && !self.electrics.compressor_runs();
                shut(Line::Liquid) && (shut(Line::Suction) || holds)
            }
            Status::LockedOut => self.electrics.locked,
            Status::Ventilated => self.is_ventilated(),
            Status::Tool(status) => kit.tools.is(status, kit.tool_in_use()),
        }
    }

    /// What the instruments give for a blank of the job sheet now: a reading, or what is worked
    /// out from readings by the charts (superheat, subcooling, target). `None` where an instrument
    /// that it takes shows nothing.
    pub fn instruments_for(&self, field: SheetField) -> Option<Quantity> {
        let read = |reading: Reading| self.reading(reading).quantity().map(|q| q.si);
        let pipe = |place: ThermometerPlace| read(Reading::Thermometer(place));
        let low = || read(Reading::LowGauge).map(GaugePressure::from_pascals);
        let high = || read(Reading::HighGauge).map(GaugePressure::from_pascals);
        let refrigerant = self.plant.refrigerant();
        // A scale tells what came or went only once it was set to zero.
        let charged = self.kit.tools.refrigerant_cylinder.weighed_in();
        let recovery = self.kit.tools.recovery.as_ref();
        let recovered = recovery.and_then(RecoveryMachine::weighed_in);
        let si = match field {
            SheetField::StandingPressure | SheetField::SuctionPressure => read(Reading::LowGauge),
            SheetField::LiquidPressure => read(Reading::HighGauge),
            SheetField::SuctionLine => pipe(ThermometerPlace::SuctionLine),
            SheetField::LiquidLine => pipe(ThermometerPlace::LiquidLine),
            SheetField::AfterDrier => pipe(ThermometerPlace::AfterDrier),
            SheetField::OutdoorAir => pipe(ThermometerPlace::OutdoorAir),
            SheetField::ReturnAir => pipe(ThermometerPlace::ReturnAir),
            SheetField::ReturnWetBulb => pipe(ThermometerPlace::ReturnWetBulb),
            SheetField::SupplyAir => pipe(ThermometerPlace::SupplyAir),
            SheetField::Amps => read(Reading::CompressorAmps),
            SheetField::Superheat => low().and_then(|pressure| {
                let (_, dew) = refrigerant.saturation(pressure);
                Some(pipe(ThermometerPlace::SuctionLine)? - dew.kelvin())
            }),
            SheetField::Subcooling => high().and_then(|pressure| {
                let (bubble, _) = refrigerant.saturation(pressure);
                Some(bubble.kelvin() - pipe(ThermometerPlace::LiquidLine)?)
            }),
            SheetField::TargetSuperheat => {
                let outdoor = pipe(ThermometerPlace::OutdoorAir).map(Temperature::from_kelvin);
                let wet_bulb = pipe(ThermometerPlace::ReturnWetBulb).map(Temperature::from_kelvin);
                outdoor
                    .zip(wet_bulb)
                    .and_then(|(outdoor, wet_bulb)| self.target_at(outdoor, wet_bulb))
            }
            SheetField::Vacuum => read(Reading::Microns),
            SheetField::RefrigerantIn => charged.map(|change| (-change).max(0.0)),
            SheetField::RefrigerantOut => match (charged, recovered) {
                (None, None) => None,
                (charged, recovered) => {
                    Some(charged.unwrap_or(0.0).max(0.0) + recovered.unwrap_or(0.0).max(0.0))
                }
            },
        };
        si.map(|si| Quantity {
            si,
            dimension: field.dimension(),
        })
    }

    /// Target superheat, K: the nameplate's own, or by the charging chart for this weather.
    fn target_at(&self, outdoor: Temperature, wet_bulb: Temperature) -> Option<f64> {
        let target = match self.target {
            Target::Superheat(target) => Some(target),
            Target::SuperheatByChart | Target::Subcooling(_) => target_superheat(outdoor, wet_bulb),
        };
        target.map(TemperatureDifference::kelvins)
    }

    /// What is true inside.
    pub fn truth(&self) -> Truth {
        let plant = &self.plant;
        let refrigerant = plant.refrigerant();
        let inside = plant.inside();
        let released: f64 = Spot::ALL
            .map(|spot| self.outlets.element(spot))
            .into_iter()
            .chain(self.piping.outlets().map(|outlet| outlet.element))
            .chain(self.kit.tools.outlets())
            .map(|element| plant.network().crossed(element).out.refrigerant)
            .sum();
        let leak = Spot::ALL
            .map(|spot| {
                plant
                    .network()
                    .flux(self.outlets.element(spot))
                    .refrigerant
                    .max(0.0)
            })
            .into_iter()
            .sum();
        let suction = plant.pressure(Section::SuctionLine);
        let liquid = plant.pressure(Section::LiquidLine);
        let line_set = [
            Section::LiquidLine,
            Section::AfterDrier,
            Section::Evaporator,
            Section::SuctionLine,
        ];
        Truth {
            refrigerant_released: released,
            charge: inside.refrigerant,
            nominal_charge: self.nominal_charge,
            permanent_gas: inside.nitrogen + inside.air,
            air: inside.air,
            water: inside.water,
            drier_water: plant.desiccant_water(),
            line_set_pressure: line_set
                .map(|p| plant.pressure(p))
                .into_iter()
                .fold(0.0, f64::max),
            superheat: plant.temperature(Section::SuctionLine)
                - refrigerant.dew_temperature(suction),
            target_superheat: self.target_at(
                Temperature::from_kelvin(self.climate.outdoor.t),
                Temperature::from_kelvin(self.climate.indoor_wet_bulb),
            ),
            subcooling: refrigerant.bubble_temperature(liquid)
                - plant.temperature(Section::LiquidLine),
            drop_across_drier: plant.temperature(Section::LiquidLine)
                - plant.temperature(Section::AfterDrier),
            leak,
            running_for: self.running_ticks as f64 * TICK,
        }
    }

    /// A digest of the whole state: equal digests mean equal bits.
    pub fn digest(&self) -> u64 {
        // FNV-1a over the bits of every number.
        let mut hash: u64 = 0xcbf2_9ce4_8422_2325;
        let mut visit = |number: f64| {
            for byte in number.to_bits().to_le_bytes() {
                hash = (hash ^ u64::from(byte)).wrapping_mul(0x0100_0000_01b3);
            }
        };
        visit(self.tick as f64);
        visit(f64::from(u8::from(self.handed_back)));
        visit(self.running_ticks as f64);
        self.plant.visit_state(&mut visit);
        self.fittings.visit_state(&mut visit);
        self.electrics.visit_state(&mut visit);
        self.kit.visit_state(&mut visit);
        self.watch.visit_state(&mut visit);
        self.surroundings.visit_state(&mut visit);
        self.climate.visit_state(&mut visit);
        hash
    }

    /// The gauge pressure at a place of the circuit, for those who may see inside.
    pub fn true_pressure(&self, place: Section) -> GaugePressure {
        GaugePressure::from_pascals(self.plant.pressure(place) - ATMOSPHERE)
    }
}

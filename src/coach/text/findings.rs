//! Of what happened: why it matters.

use crate::words::FindingKind;

/// What follows from a finding.
pub(in crate::coach) const fn consequence(kind: FindingKind) -> &'static str {
    match kind {
        FindingKind::Released => "It is gone into the air and must be bought again.",
        FindingKind::AirDrawnIn => {
            "Air brings water and does not condense: it takes another evacuation."
        }
        FindingKind::OpenedUnderPressure => "Liquid sprays and burns cold; what is behind is lost.",
        FindingKind::StoodOpen => "Oil and drier drink from the air all the while.",
        FindingKind::RanInVacuum => "Air comes in through the least leak, and the motor runs hot.",
        FindingKind::RanWithoutOilReturn => "Oil that does not come back is missing at a bearing.",
        FindingKind::EnergisedInDeepVacuum => "Current jumps where no gas insulates.",
        FindingKind::LiquidToCompressor => "Liquid does not compress: it breaks valves and rods.",
        FindingKind::OverNameplate => "A coil that was stretched may burst, today or in a year.",
        FindingKind::NoRegulator => "A full cylinder bursts what it is connected to.",
        FindingKind::HighPressureTrip => {
            "The switch has saved the compressor. It was not meant to."
        }
        FindingKind::MicronGaugeOverPressured => "A sensor made for a vacuum bears no pressure.",
        FindingKind::PumpUnderPressure => "Its oil is blown out and must be changed.",
        FindingKind::PumpedAway => "What the pump takes goes into the air, through its oil.",
        FindingKind::WorkedLive => "Somebody else can switch it on. A life has no price.",
        FindingKind::Unprotected => "A splash of liquid costs an eye. That has no price.",
        FindingKind::OverTightened => "A split flare is cut off and made again.",
        FindingKind::JointLeftLoose => "It will weep, and you will be called back.",
        FindingKind::CapLeftOff => "The cap is the seal: without it you will be called back.",
        FindingKind::KitLeftOn => "You will have to come back for it.",
        FindingKind::ValveLeftShut => "It throttles the circuit: you will be called back.",
        FindingKind::DrierBackwards => "Against the flow it sheds its filling: it comes out again.",
    }
}

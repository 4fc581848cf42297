//! Of the job sheet.

use super::Said;
use crate::words::SheetField;

/// The diagnosis.
pub(in crate::coach) const DIAGNOSIS: Said = Said {
    aim: "What explains every reading you have, and not only one of them?",
    way: "Suction pressure says what the indoor coil gets. Superheat and subcooling together say \
          whether refrigerant is missing, held back or too much.",
};

/// A blank of the job sheet.
pub(in crate::coach) const fn blank(field: SheetField) -> Said {
    match field {
        SheetField::StandingPressure => Said {
            aim: "What does a unit tell that has not been started yet?",
            way: "At rest the pressure is that of saturation at the air's temperature, as long \
                  as there is liquid. Low gauge and outdoor air tell.",
        },
        SheetField::Superheat => Said {
            aim: "Is it vapour that reaches the compressor, and how far from liquid?",
            way: "Suction line temperature less saturation at the suction pressure. A clamp at \
                  the suction line and the low gauge tell, both at the same moment.",
        },
        SheetField::Subcooling => Said {
            aim: "Is it liquid that reaches the metering device, and how safely?",
            way: "Saturation at the liquid pressure less liquid line temperature. The high gauge \
                  and a clamp at the liquid line tell, both at the same moment.",
        },
        SheetField::TargetSuperheat => Said {
            aim: "What superheat would be right, in this weather and this room?",
            way: "The charging chart: outdoor dry bulb and indoor wet bulb. Two thermometers and \
                  the chart tell.",
        },
        SheetField::Vacuum => Said {
            aim: "How deep was it when it counted?",
            way: "What counts is the end of the decay, with the pump shut off. The micron gauge \
                  tells.",
        },
        SheetField::RefrigerantIn | SheetField::RefrigerantOut => Said {
            aim: "Who will want to know how much refrigerant went where?",
            way: "The law asks for a record and the next technician for a reason. The scale tells.",
        },
        SheetField::SuctionPressure | SheetField::LiquidPressure | SheetField::Amps => Said {
            aim: "What will you compare with when something has changed?",
            way: "Readings of the steady unit, all of the same few minutes. Gauges and clamp \
                  meter tell.",
        },
        _ => Said {
            aim: "Which temperatures would show where the circuit works and where it does not?",
            way: "One thermometer before and one after each part that should or should not \
                  change it, read when they have settled.",
        },
    }
}

//! Of the job sheet.

use super::Said;
use crate::words::SheetField;

/// The diagnosis.
pub(in crate::coach) const DIAGNOSIS: Said =
    Said::new("thought-diagnosis-aim", "thought-diagnosis-way");

/// A blank of the job sheet.
pub(in crate::coach) const fn blank(field: SheetField) -> Said {
    match field {
        SheetField::StandingPressure => Said::new("thought-standing-aim", "thought-standing-way"),
        SheetField::Superheat => Said::new("thought-superheat-aim", "thought-superheat-way"),
        SheetField::Subcooling => Said::new("thought-subcooling-aim", "thought-subcooling-way"),
        SheetField::TargetSuperheat => Said::new(
            "thought-target-superheat-aim",
            "thought-target-superheat-way",
        ),
        SheetField::Vacuum => Said::new("thought-vacuum-aim", "thought-vacuum-way"),
        SheetField::RefrigerantIn | SheetField::RefrigerantOut => {
            Said::new("thought-record-aim", "thought-record-way")
        }
        SheetField::SuctionPressure | SheetField::LiquidPressure | SheetField::Amps => {
            Said::new("thought-readings-aim", "thought-readings-way")
        }
        _ => Said::new("thought-temperatures-aim", "thought-temperatures-way"),
    }
}

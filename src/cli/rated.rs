//! Units at their rating points: one line each.

use super::Answer;
use super::table::Table;
use crate::job::{Overrides, settle};
use crate::plant::Unit;
use crate::scenario::{RatingPoint, Scenario, unit_names};
use anyhow::Context;
use serde_json::{Value, json};

/// The air of a rating point for a unit; without a point nothing is overridden.
pub(super) fn air(unit: &Unit, point: Option<RatingPoint>) -> Overrides {
    let room = unit.nameplate.room;
    point.map_or_else(Overrides::default, |point| Overrides {
        outdoor: Some(point.outdoor()),
        indoor: Some(room.dry_bulb),
        indoor_wet_bulb: Some(room.wet_bulb),
        ..Overrides::default()
    })
}

/// Settles every shipped unit, healthy, at each rating point. The answer is yes when all came to
/// rest.
pub(super) fn every_unit(is_json: bool) -> anyhow::Result<Answer> {
    let mut table = Table::with_head(&[
        "unit",
        "at",
        "suction",
        "liquid",
        "boils",
        "condenses",
        "SH",
        "SC",
        "Btu/h",
        "W",
    ]);
    let (mut values, mut all_settled) = (Vec::new(), true);
    for name in unit_names() {
        let scenario = Scenario::of_shipped_unit(name).context("a listed unit is shipped")?;
        for point in RatingPoint::ALL {
            let s = settle(&scenario, &air(&scenario.unit, Some(point)));
            all_settled &= s.settled;
            let whole = |value: f64| format!("{value:.0}");
            let tenths = |value: f64| format!("{value:.1}");
            table.row([
                name.to_owned(),
                point.letter().to_owned(),
                tenths(s.suction_psig),
                tenths(s.liquid_psig),
                tenths(s.evaporating_f),
                tenths(s.condensing_f),
                tenths(s.superheat_f),
                tenths(s.subcooling_f),
                whole(s.capacity_btu_h),
                whole(s.power_w),
            ]);
            let mut value = serde_json::to_value(s)?;
            value["unit"] = json!(name);
            value["point"] = json!(point.letter());
            values.push(value);
        }
    }
    if is_json {
        return Answer::json(all_settled, &Value::from(values));
    }
    let units = "pressures in psig, temperatures in °F; SH superheat at the suction valve, \
                 SC subcooling at the liquid valve\n";
    Ok(Answer::new(all_settled, format!("{}{units}", table.text())))
}

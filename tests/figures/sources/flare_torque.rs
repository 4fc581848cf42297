//! How tight a flare nut is made up.

use super::data::rows;
use super::{Class, Figure, Source};
use coldbench::plant::FlareSize;

/// See the file's head.
pub(super) const SOURCE: Source = Source {
    name: "flare_torque",
    origin: "Band common to the published tables EN 378-2 / ISO 5149-2 and JIS B 8607 (the \
        columns of the standards from memory).",
    class: Class::SelfCheck,
    why_not: "",
    missed: &[],
    rows: figures,
};

/// The sizes as the table writes them.
const SIZES: [(&str, FlareSize); 5] = [
    ("1/4", FlareSize::Quarter),
    ("3/8", FlareSize::ThreeEighths),
    ("1/2", FlareSize::Half),
    ("5/8", FlareSize::FiveEighths),
    ("3/4", FlareSize::ThreeQuarters),
];

fn figures() -> Vec<Figure> {
    let table = include_str!("../data/flare_torque.csv");
    let mut figures = Vec::new();
    for row in rows(table) {
        let tube = row.text("tube_in");
        let size = SIZES.iter().find(|(name, _)| *name == tube);
        let band = size.map(|(_, size)| size.torque_band());
        let (least, most) = band.map_or((f64::NAN, f64::NAN), |(least, most)| {
            (least.newton_metres(), most.newton_metres())
        });
        for (end, column, ours) in [("least", "min_nm", least), ("most", "max_nm", most)] {
            let what = format!("{tube} in tube, {end}");
            figures.push(Figure::near(what, "N m", row.number(column), 0.05, ours));
        }
    }
    figures
}

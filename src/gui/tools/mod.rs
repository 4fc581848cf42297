//! What a technician brings: one file for each tool, with its drawing and what can be done with it.
//! A tool's file knows the canvas, the view and the widgets, and nothing of parts and site.

pub mod cylinder;
pub mod detector;
pub mod hoses;
pub mod micron_gauge;
pub mod nitrogen;
mod own_place;
pub mod protection;
pub mod pump;
mod rating;
pub mod recovery;
pub mod thermometers;

pub use own_place::OwnPlace;

use crate::gui::view::View;
use crate::kit::tools::Name;
use strum::VariantArray;

/// Where a hose goes on a tool.
pub const fn socket(tool: Name) -> (f32, f32) {
    match tool {
        Name::Nitrogen => nitrogen::SOCKET,
        Name::RefrigerantCylinder => cylinder::SOCKET,
        Name::VacuumPump => pump::SOCKET,
        Name::Recovery => recovery::SOCKET,
    }
}

/// Where a tool stands; `None` for those that every cart has, which are parts by themselves.
pub const fn own_place(tool: Name) -> Option<&'static OwnPlace> {
    match tool {
        Name::Nitrogen | Name::RefrigerantCylinder | Name::VacuumPump => None,
        Name::Recovery => Some(&recovery::PLACE),
    }
}

/// The tools at places of their own that were brought.
pub fn brought(view: &View) -> impl Iterator<Item = (Name, &'static OwnPlace)> {
    let places = <Name as VariantArray>::VARIANTS.iter();
    places
        .filter(|&&name| view.tools().has(name))
        .filter_map(|&name| Some((name, own_place(name)?)))
}

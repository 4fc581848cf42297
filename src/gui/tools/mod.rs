//! What a technician brings: one file for each tool, with its drawing and what can be done with it.
//! A tool's file knows the canvas, the view and the widgets, and nothing of parts and site.

pub mod cylinder;
pub mod detector;
pub mod hoses;
pub mod micron_gauge;
pub mod nitrogen;
pub mod protection;
pub mod pump;
mod rating;
pub mod thermometers;

use crate::kit::tools::Name;

/// Where a hose goes on a tool.
pub const fn socket(tool: Name) -> (f32, f32) {
    match tool {
        Name::Nitrogen => nitrogen::SOCKET,
        Name::RefrigerantCylinder => cylinder::SOCKET,
        Name::VacuumPump => pump::SOCKET,
        Name::Recovery => (1046.0, 500.0),
    }
}

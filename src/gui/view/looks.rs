//! How things look, in words.

use crate::job::{Glass, PipeSurface};
use crate::kit::HoseEnd;
use crate::plant::{FlareSize, Made, ThermostatCall};
use crate::text::Message;

/// What a hose's end is on, in words.
pub const fn end_label(end: Option<HoseEnd>) -> Message {
    Message::new(match end {
        None => "part-end-hung-up",
        Some(HoseEnd::SuctionPort) => "part-end-suction-port",
        Some(HoseEnd::LiquidPort) => "part-end-liquid-port",
        Some(HoseEnd::Tool(tool)) => return Message::form_of(tool.key(), "on"),
        Some(HoseEnd::OpenAir) => "part-end-open-air",
    })
}

/// A thermostat's call, in words.
pub const fn call_label(call: ThermostatCall) -> Message {
    Message::new(match call {
        ThermostatCall::Off => "part-call-off",
        ThermostatCall::Fan => "part-call-fan",
        ThermostatCall::Cool => "part-call-cool",
    })
}

/// A stem's position, in words.
pub fn stem_label(open: f64) -> Message {
    Message::new(if open <= 0.0 {
        "part-stem-front"
    } else if open >= 1.0 {
        "part-stem-back"
    } else if open <= 0.2 {
        "part-stem-cracked"
    } else {
        "part-stem-mid"
    })
}

/// A cap, in words.
pub const fn cap_label(on: bool) -> Message {
    Message::new(if on { "part-cap-on" } else { "part-cap-off" })
}

/// How far a joint is made, in words.
pub const fn made_label(made: Made) -> Message {
    Message::new(match made {
        Made::Up(_) => "part-made-up",
        Made::Cracked => "part-made-loose",
        Made::Apart => "part-made-apart",
        Made::Plugged => "part-made-plugged",
    })
}

/// How far a valve is open, in words.
pub fn opening_label(open: f64) -> Message {
    if open <= 0.0 {
        Message::new("part-shut")
    } else if open >= 1.0 {
        Message::new("part-open")
    } else {
        Message::new("part-partly-open").with("percent", format!("{:.0}", open * 100.0))
    }
}

/// What shows in the sight glass, in words.
pub fn glass_label(glass: Glass) -> Message {
    match glass {
        Glass::Clear => Message::new("part-glass-clear"),
        Glass::Flashes(vapour) if vapour < 0.2 => Message::new("part-glass-bubbles"),
        Glass::Flashes(_) => Message::new("part-glass-foam"),
        Glass::Level(filled) => {
            Message::new("part-glass-level").with("percent", format!("{:.0}", filled * 100.0))
        }
    }
}

/// What covers a surface, in words.
pub const fn coat_label(coat: PipeSurface) -> Option<Message> {
    match coat {
        PipeSurface::Dry => None,
        PipeSurface::Sweat => Some(Message::new("part-sweats")),
        PipeSurface::Frost => Some(Message::new("part-frosted")),
    }
}

/// How it bubbles at a wet spot, in words.
pub fn bubbles_label(size: f64) -> Message {
    Message::new(if size < 0.05 {
        "part-wet-still"
    } else if size < 0.4 {
        "part-wet-grows"
    } else {
        "part-wet-foams"
    })
}

/// The tube of a flare, in inches.
pub const fn size_label(size: FlareSize) -> &'static str {
    match size {
        FlareSize::Quarter => "1/4 in",
        FlareSize::ThreeEighths => "3/8 in",
        FlareSize::Half => "1/2 in",
        FlareSize::FiveEighths => "5/8 in",
        FlareSize::ThreeQuarters => "3/4 in",
    }
}

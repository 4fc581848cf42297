//! The colours, as data: paper, night, and wall for a projector that washes out.

#![expect(
    clippy::unreadable_literal,
    reason = "a colour is written as six hexadecimal digits, as every table of colours has it"
)]

use crate::kit::Hose;
use eframe::egui::{Color32, Context, Id, Theme, Ui};
use serde::{Deserialize, Serialize};
use strum::VariantArray;

/// Which colours are shown.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default, Serialize, Deserialize, VariantArray)]
pub enum Colours {
    /// Dark on light.
    #[default]
    #[serde(alias = "Light")]
    Paper,
    /// Light on dark.
    #[serde(alias = "Dark")]
    Night,
    /// Black on white, strong hues, thick lines, larger text: for a projector in a bright room.
    #[serde(alias = "Projector")]
    Wall,
}

impl Colours {
    /// What is shown in a context.
    pub fn shown(ctx: &Context) -> Self {
        let is_for_wall = ctx.data(|data| data.get_temp(for_wall()));
        match (is_for_wall, ctx.theme()) {
            (Some(true), _) => Self::Wall,
            (_, Theme::Light) => Self::Paper,
            (_, Theme::Dark) => Self::Night,
        }
    }

    /// The palette of these colours.
    pub const fn palette(self) -> &'static Palette {
        match self {
            Self::Paper => &PAPER,
            Self::Night => &NIGHT,
            Self::Wall => &WALL,
        }
    }

    /// How much larger text is than usual.
    pub const fn text(self) -> f32 {
        match self {
            Self::Paper | Self::Night => 1.0,
            Self::Wall => 1.15,
        }
    }
}

/// Where a context keeps that its light theme is the wall's.
pub fn for_wall() -> Id {
    Id::unique("the light colours are those for a wall")
}

/// The colours of one theme. A colour never stands alone: each hose has its letter, each state its
/// shape or its word.
#[derive(Debug)]
pub struct Palette {
    /// The ground of the drawing.
    pub paper: Color32,
    /// The ground of panels.
    pub panel: Color32,
    /// The ground of a raised thing: a cabinet, a dial, a control.
    pub raised: Color32,
    /// Outlines and text.
    pub ink: Color32,
    /// Lesser lines and captions.
    pub faint: Color32,
    /// What is chosen, and what is met.
    pub accent: Color32,
    /// A refusal, a caution.
    pub warn: Color32,
    /// What is missed, and critical.
    pub miss: Color32,
    /// The low hose and gauge.
    pub low: Color32,
    /// The high hose and gauge.
    pub high: Color32,
    /// The centre hose: a fill inside a line of ink.
    pub centre: Color32,
    /// Copper tube.
    pub copper: Color32,
    /// The edge of a control.
    pub edge: Color32,
    /// Cast and sheet metal: a fill inside a line of ink.
    pub metal: Color32,
    /// The insulation of the suction line.
    pub insulation: Color32,
    /// Frost: strokes beside a pipe that is drawn.
    pub frost: Color32,
    /// Water: sweat, bubbles.
    pub water: Color32,
    /// A wet spot.
    pub wet: Color32,
    /// Liquid refrigerant.
    pub liquid: Color32,
    /// Oil.
    pub oil: Color32,
    /// Air and nitrogen.
    pub air: Color32,
    /// The ground of what is chosen.
    pub tint: Color32,
    /// The ground of a caution.
    pub caution_tint: Color32,
    /// The ground of what is missed.
    pub miss_tint: Color32,
    /// How much thicker lines are than usual.
    pub line: f32,
}

const fn rgb(hex: u32) -> Color32 {
    Color32::from_rgb((hex >> 16) as u8, (hex >> 8) as u8, hex as u8)
}

static PAPER: Palette = Palette {
    paper: rgb(0xf4f2ec),
    panel: rgb(0xe8e5dc),
    raised: rgb(0xfcfbf8),
    ink: rgb(0x222c33),
    faint: rgb(0x4f5a60),
    accent: rgb(0x0d6b66),
    warn: rgb(0x964400),
    miss: rgb(0x8c1d4f),
    low: rgb(0x1d5ba3),
    high: rgb(0xb0352b),
    centre: rgb(0xc4930a),
    copper: rgb(0xa4623a),
    edge: rgb(0x7d7f7b),
    metal: rgb(0xc9c7bf),
    insulation: rgb(0x454e53),
    frost: rgb(0x8fb4cc),
    water: rgb(0x2d7fa8),
    wet: rgb(0x1b8499),
    liquid: rgb(0x2b5f8c),
    oil: rgb(0x8a6a00),
    air: rgb(0x6a58a0),
    tint: rgb(0xcfe0db),
    caution_tint: rgb(0xf8ead9),
    miss_tint: rgb(0xf6e3ea),
    line: 1.0,
};

static NIGHT: Palette = Palette {
    paper: rgb(0x161b1f),
    panel: rgb(0x1e2429),
    raised: rgb(0x2a3238),
    ink: rgb(0xe2e6e5),
    faint: rgb(0xa3aeb3),
    accent: rgb(0x5ac4b6),
    warn: rgb(0xf0a85c),
    miss: rgb(0xf08bb4),
    low: rgb(0x6daef0),
    high: rgb(0xf07f72),
    centre: rgb(0xe6bf48),
    copper: rgb(0xd08c5c),
    edge: rgb(0x7b878d),
    metal: rgb(0x4a545b),
    insulation: rgb(0x0a0d0f),
    frost: rgb(0xc8e2f2),
    water: rgb(0x7cc6e8),
    wet: rgb(0x5ccad8),
    liquid: rgb(0x6daef0),
    oil: rgb(0xd9b23a),
    air: rgb(0xb3a3e6),
    tint: rgb(0x1e403d),
    caution_tint: rgb(0x3a2c1c),
    miss_tint: rgb(0x3d2330),
    line: 1.0,
};

// Text at a contrast of 7 to 1 or more on white (WCAG 2.2, 1.4.6), so that it stands when half of
// it is washed out.
static WALL: Palette = Palette {
    paper: rgb(0xffffff),
    panel: rgb(0xffffff),
    raised: rgb(0xffffff),
    ink: rgb(0x000000),
    faint: rgb(0x333333),
    accent: rgb(0x00524d),
    warn: rgb(0x8a2400),
    miss: rgb(0x7a0038),
    low: rgb(0x002fa0),
    high: rgb(0x9c0000),
    centre: rgb(0xe0a000),
    copper: rgb(0x7a3a00),
    edge: rgb(0x444444),
    metal: rgb(0xb4b4b4),
    insulation: rgb(0x333333),
    frost: rgb(0x5aa8e0),
    water: rgb(0x005c94),
    wet: rgb(0x006a80),
    liquid: rgb(0x003f7a),
    oil: rgb(0x6a5000),
    air: rgb(0x4a3590),
    tint: rgb(0xd5ebe8),
    caution_tint: rgb(0xfff1e0),
    miss_tint: rgb(0xfde8f0),
    line: 1.8,
};

impl Palette {
    /// The palette of the theme that is shown.
    pub fn of(ui: &Ui) -> &'static Self {
        Colours::shown(ui.ctx()).palette()
    }
}

/// The colour of a hose, by the trade's custom.
pub const fn hose_colour(palette: &Palette, hose: Hose) -> Color32 {
    match hose {
        Hose::Low => palette.low,
        Hose::High => palette.high,
        Hose::Centre => palette.centre,
    }
}

/// The letter of a hose, so that its colour is not its only sign.
pub const fn hose_letter(hose: Hose) -> &'static str {
    match hose {
        Hose::Low => "L",
        Hose::High => "H",
        Hose::Centre => "C",
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Contrast ratio of two colours.
    ///
    /// Source: WCAG 2.2, the definitions of contrast ratio and relative luminance.
    fn contrast(a: Color32, b: Color32) -> f64 {
        let part = |c: u8| {
            let c = f64::from(c) / 255.0;
            if c <= 0.04045 {
                c / 12.92
            } else {
                libm::pow((c + 0.055) / 1.055, 2.4)
            }
        };
        let luminance =
            |c: Color32| 0.2126 * part(c.r()) + 0.7152 * part(c.g()) + 0.0722 * part(c.b());
        let (a, b) = (luminance(a), luminance(b));
        (a.max(b) + 0.05) / (a.min(b) + 0.05)
    }

    /// What falls short of a contrast on any of some grounds.
    fn short(least: f64, grounds: &[Color32], hues: &[(&str, Color32)]) -> Vec<String> {
        let mut short = Vec::new();
        for ground in grounds {
            for (name, hue) in hues {
                let ratio = contrast(*hue, *ground);
                if ratio < least {
                    short.push(format!("{name} on {ground:?}: {ratio:.2} of {least}"));
                }
            }
        }
        short
    }

    /// WCAG 2.2, definition of contrast ratio: black on white is 21 to 1, the most there is; equal
    /// colours are 1 to 1.
    #[test]
    fn the_contrast_of_the_standard_runs_from_1_to_21() {
        assert!((contrast(Color32::BLACK, Color32::WHITE) - 21.0).abs() < 1e-9);
        assert!((contrast(Color32::GRAY, Color32::GRAY) - 1.0).abs() < 1e-9);
    }

    /// Text, WCAG 2.2: 1.4.3 asks for 4.5 to 1, 1.4.6 (enhanced) for 7 to 1.
    #[test]
    fn text_stands_against_every_ground_and_on_the_wall_more_so() {
        let mut wrong = Vec::new();
        for (colours, least) in [
            (Colours::Paper, 4.5),
            (Colours::Night, 4.5),
            (Colours::Wall, 7.0),
        ] {
            let p = colours.palette();
            let texts = [
                ("ink", p.ink),
                ("faint", p.faint),
                ("accent", p.accent),
                ("warn", p.warn),
                ("miss", p.miss),
                ("low", p.low),
                ("high", p.high),
            ];
            wrong.extend(short(least, &[p.paper, p.panel, p.raised], &texts));
            // What is chosen, cautioned or missed is written on its tint.
            wrong.extend(short(
                least,
                &[p.tint],
                &[("ink", p.ink), ("accent", p.accent)],
            ));
            let cautions = [("ink", p.ink), ("warn", p.warn)];
            wrong.extend(short(least, &[p.caution_tint], &cautions));
            let missed = [("ink", p.ink), ("miss", p.miss)];
            wrong.extend(short(least, &[p.miss_tint], &missed));
            // The filled button: its ground is the accent, its text the raised ground.
            wrong.extend(short(least, &[p.accent], &[("filled", p.raised)]));
        }
        assert!(wrong.is_empty(), "{}", wrong.join("\n"));
    }

    /// Graphics and the edges of controls, WCAG 2.2: 1.4.11 asks for 3 to 1. Centre hose and metal
    /// are fills inside a line of ink, which is held above.
    #[test]
    fn lines_and_shapes_stand_against_every_ground() {
        let mut wrong = Vec::new();
        for colours in Colours::VARIANTS {
            let p = colours.palette();
            let shapes = [
                ("copper", p.copper),
                ("edge", p.edge),
                ("water", p.water),
                ("wet", p.wet),
                ("liquid", p.liquid),
                ("oil", p.oil),
                ("air", p.air),
            ];
            wrong.extend(short(3.0, &[p.paper, p.panel, p.raised], &shapes));
        }
        assert!(wrong.is_empty(), "{}", wrong.join("\n"));
    }
}

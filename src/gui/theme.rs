//! Colours, type sizes and spacing, as data: light, dark, and for a projector that washes out.

use crate::kit::Hose;
use eframe::egui::{
    Color32, Context, CornerRadius, FontDefinitions, FontFamily, FontId, Id, Stroke, TextStyle,
    Theme, Ui, Visuals, vec2,
};
use serde::{Deserialize, Serialize};

/// Which colours are shown.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default, Serialize, Deserialize)]
pub enum Colours {
    /// Dark on light.
    #[default]
    Light,
    /// Light on dark.
    Dark,
    /// Black on white, strong hues, thick lines, larger text: for a projector in a bright room.
    Projector,
}

impl Colours {
    /// The colours to choose from.
    pub const ALL: [Self; 3] = [Self::Light, Self::Dark, Self::Projector];

    /// What is shown in a context.
    pub fn shown(ctx: &Context) -> Self {
        let is_for_projector = ctx.data(|data| data.get_temp(for_projector()));
        match (is_for_projector, ctx.theme()) {
            (Some(true), _) => Self::Projector,
            (_, Theme::Light) => Self::Light,
            (_, Theme::Dark) => Self::Dark,
        }
    }

    /// How much larger text is than usual.
    const fn text(self) -> f32 {
        match self {
            Self::Light | Self::Dark => 1.0,
            Self::Projector => 1.15,
        }
    }
}

/// Where a context keeps that its light theme is the projector's.
fn for_projector() -> Id {
    Id::unique("the light colours are those for a projector")
}

/// The colours of one theme. A colour never stands alone: each hose has its letter, each state
/// its shape or its word.
#[derive(Debug)]
pub struct Palette {
    /// The ground of the drawing.
    pub paper: Color32,
    /// The ground of panels.
    pub panel: Color32,
    /// The ground of a raised thing: a cabinet, a dial.
    pub raised: Color32,
    /// Outlines and text.
    pub ink: Color32,
    /// Lesser lines and captions.
    pub faint: Color32,
    /// Copper tube.
    pub copper: Color32,
    /// Cast and sheet metal.
    pub metal: Color32,
    /// The low hose and gauge.
    pub low: Color32,
    /// The high hose and gauge.
    pub high: Color32,
    /// The centre hose.
    pub centre: Color32,
    /// What is chosen, and what invites.
    pub accent: Color32,
    /// A refusal, a caution.
    pub warn: Color32,
    /// Frost.
    pub frost: Color32,
    /// Water: sweat, bubbles.
    pub water: Color32,
    /// How much thicker lines are than usual.
    pub line: f32,
}

static LIGHT: Palette = Palette {
    paper: Color32::from_rgb(0xf4, 0xf2, 0xec),
    panel: Color32::from_rgb(0xe8, 0xe5, 0xdc),
    raised: Color32::from_rgb(0xfc, 0xfb, 0xf8),
    ink: Color32::from_rgb(0x22, 0x2c, 0x33),
    faint: Color32::from_rgb(0x5a, 0x64, 0x69),
    copper: Color32::from_rgb(0xa4, 0x62, 0x3a),
    metal: Color32::from_rgb(0xc9, 0xc7, 0xbf),
    low: Color32::from_rgb(0x1d, 0x5b, 0xa3),
    high: Color32::from_rgb(0xb0, 0x35, 0x2b),
    centre: Color32::from_rgb(0xc4, 0x93, 0x0a),
    accent: Color32::from_rgb(0x0d, 0x6b, 0x66),
    warn: Color32::from_rgb(0x96, 0x44, 0x00),
    frost: Color32::from_rgb(0x8f, 0xb4, 0xcc),
    water: Color32::from_rgb(0x2d, 0x7f, 0xa8),
    line: 1.0,
};

static DARK: Palette = Palette {
    paper: Color32::from_rgb(0x16, 0x1b, 0x1f),
    panel: Color32::from_rgb(0x1e, 0x24, 0x29),
    raised: Color32::from_rgb(0x2a, 0x32, 0x38),
    ink: Color32::from_rgb(0xe2, 0xe6, 0xe5),
    faint: Color32::from_rgb(0x9a, 0xa5, 0xaa),
    copper: Color32::from_rgb(0xd0, 0x8c, 0x5c),
    metal: Color32::from_rgb(0x4a, 0x54, 0x5b),
    low: Color32::from_rgb(0x6d, 0xae, 0xf0),
    high: Color32::from_rgb(0xf0, 0x7f, 0x72),
    centre: Color32::from_rgb(0xe6, 0xbf, 0x48),
    accent: Color32::from_rgb(0x5a, 0xc4, 0xb6),
    warn: Color32::from_rgb(0xf0, 0xa8, 0x5c),
    frost: Color32::from_rgb(0xc8, 0xe2, 0xf2),
    water: Color32::from_rgb(0x7c, 0xc6, 0xe8),
    line: 1.0,
};

// Each hue at a contrast of 7 to 1 or more on white (WCAG 2.2, 1.4.6), so that it stands when half
// of it is washed out; except where it is a fill inside a black line.
static PROJECTOR: Palette = Palette {
    paper: Color32::WHITE,
    panel: Color32::WHITE,
    raised: Color32::WHITE,
    ink: Color32::BLACK,
    faint: Color32::from_rgb(0x33, 0x33, 0x33),
    copper: Color32::from_rgb(0x7a, 0x3a, 0x00),
    metal: Color32::from_rgb(0x90, 0x90, 0x90),
    low: Color32::from_rgb(0x00, 0x2f, 0xa0),
    high: Color32::from_rgb(0x9c, 0x00, 0x00),
    centre: Color32::from_rgb(0xe0, 0xa0, 0x00),
    accent: Color32::from_rgb(0x00, 0x52, 0x4d),
    warn: Color32::from_rgb(0x8a, 0x24, 0x00),
    frost: Color32::from_rgb(0x5a, 0xa8, 0xe0),
    water: Color32::from_rgb(0x00, 0x5c, 0x94),
    line: 1.8,
};

impl Palette {
    /// The palette of the theme that is shown.
    pub fn of(ui: &Ui) -> &'static Self {
        Colours::shown(ui.ctx()).palette()
    }
}

impl Colours {
    const fn palette(self) -> &'static Palette {
        match self {
            Self::Light => &LIGHT,
            Self::Dark => &DARK,
            Self::Projector => &PROJECTOR,
        }
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

/// Puts colours, fonts and sizes into a fresh context.
pub fn install(ctx: &Context) {
    let mut fonts = FontDefinitions::default();
    // The proportional font lacks arrows; the monospace one has them.
    fonts
        .families
        .entry(FontFamily::Proportional)
        .or_default()
        .push("Hack".into());
    ctx.set_fonts(fonts);
    ctx.set_visuals_of(Theme::Dark, visuals(Visuals::dark(), Colours::Dark));
    ctx.all_styles_mut(|style| {
        style.spacing.item_spacing = vec2(8.0, 6.0);
        style.spacing.button_padding = vec2(8.0, 4.0);
        style.spacing.interact_size.y = 24.0;
        style.spacing.slider_width = 150.0;
    });
    light(ctx, Colours::Light);
}

/// Shows some colours, and everything at a size: 1 is the usual. Once they are shown, nothing is
/// done again.
pub fn wear(ctx: &Context, colours: Colours, size: f32) {
    let worn = Id::unique("the colours and the size that are worn");
    let wanted = (colours, size);
    if ctx.data(|data| data.get_temp(worn)) == Some(wanted) {
        return;
    }
    ctx.data_mut(|data| data.insert_temp(worn, wanted));
    match colours {
        Colours::Light | Colours::Projector => {
            light(ctx, colours);
            ctx.set_theme(Theme::Light);
        }
        Colours::Dark => {
            light(ctx, Colours::Light);
            ctx.set_theme(Theme::Dark);
        }
    }
    // Text and drawing grow together: what is painted keeps its place and nothing overlaps, and a
    // large size is to the panels the same as a small window.
    ctx.set_zoom_factor(size);
}

/// Makes the light theme the usual one or the projector's.
fn light(ctx: &Context, colours: Colours) {
    ctx.data_mut(|data| data.insert_temp(for_projector(), colours == Colours::Projector));
    ctx.set_visuals_of(Theme::Light, visuals(Visuals::light(), colours));
    ctx.all_styles_mut(|style| {
        for (text, size) in [
            (TextStyle::Small, 12.0),
            (TextStyle::Body, 14.0),
            (TextStyle::Button, 14.0),
            (TextStyle::Monospace, 13.0),
            (TextStyle::Heading, 18.0),
        ] {
            let size = size * colours.text();
            let font = match text {
                TextStyle::Monospace => FontId::monospace(size),
                TextStyle::Small
                | TextStyle::Body
                | TextStyle::Button
                | TextStyle::Heading
                | TextStyle::Name(_) => FontId::proportional(size),
            };
            style.text_styles.insert(text, font);
        }
    });
}

fn visuals(base: Visuals, colours: Colours) -> Visuals {
    let palette = colours.palette();
    let line = |width: f32, colour| Stroke::new(width * palette.line, colour);
    let mut v = base;
    v.panel_fill = palette.panel;
    v.window_fill = palette.raised;
    v.extreme_bg_color = palette.raised;
    v.faint_bg_color = palette.paper;
    v.weak_text_color = Some(palette.faint);
    v.warn_fg_color = palette.warn;
    v.hyperlink_color = palette.accent;
    v.selection.bg_fill = palette.accent.gamma_multiply(0.35);
    v.selection.stroke = line(1.5, palette.accent);
    v.slider_trailing_fill = true;
    let radius = CornerRadius::same(3);
    for widget in [
        &mut v.widgets.noninteractive,
        &mut v.widgets.inactive,
        &mut v.widgets.hovered,
        &mut v.widgets.active,
        &mut v.widgets.open,
    ] {
        widget.corner_radius = radius;
        widget.fg_stroke = line(widget.fg_stroke.width, palette.ink);
    }
    v.widgets.noninteractive.bg_stroke.color = palette.metal;
    v.widgets.inactive.bg_fill = palette.metal;
    v.widgets.inactive.weak_bg_fill = palette.raised;
    v.widgets.inactive.bg_stroke = line(1.0, palette.metal);
    v.widgets.hovered.weak_bg_fill = palette.raised;
    v.widgets.hovered.bg_stroke = line(1.5, palette.accent);
    v.widgets.active.weak_bg_fill = palette.raised;
    // Keyboard focus is drawn with the active stroke: it must be plain to see.
    v.widgets.active.bg_stroke = line(2.0, palette.accent);
    v
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

    /// Text, WCAG 2.2: 1.4.3 asks for 4.5 to 1, 1.4.6 (enhanced) for 7 to 1.
    #[test]
    fn text_stands_against_its_ground_and_for_a_projector_more_so() {
        // WCAG 2.2: black on white is 21 to 1, the most there is.
        assert!((contrast(Color32::BLACK, Color32::WHITE) - 21.0).abs() < 1e-9);
        for (palette, least) in [(&LIGHT, 4.5), (&DARK, 4.5), (&PROJECTOR, 7.0)] {
            for ground in [palette.paper, palette.panel, palette.raised] {
                for text in [palette.ink, palette.faint, palette.accent, palette.warn] {
                    let ratio = contrast(text, ground);
                    assert!(ratio >= least, "{text:?} on {ground:?}: {ratio:.2}");
                }
            }
        }
        // Hoses and pipes are graphics: 1.4.11 asks for 3 to 1; here as much as text.
        for hue in [
            PROJECTOR.low,
            PROJECTOR.high,
            PROJECTOR.copper,
            PROJECTOR.water,
        ] {
            let ratio = contrast(hue, PROJECTOR.paper);
            assert!(ratio >= 7.0, "{hue:?}: {ratio:.2}");
        }
    }
}

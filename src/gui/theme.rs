//! Colours, type sizes and spacing, light and dark, as data.

use eframe::egui::{
    Color32, Context, CornerRadius, FontDefinitions, FontFamily, FontId, Stroke, TextStyle, Theme,
    Ui, Visuals, vec2,
};

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
}

static LIGHT: Palette = Palette {
    paper: Color32::from_rgb(0xf4, 0xf2, 0xec),
    panel: Color32::from_rgb(0xe8, 0xe5, 0xdc),
    raised: Color32::from_rgb(0xfc, 0xfb, 0xf8),
    ink: Color32::from_rgb(0x22, 0x2c, 0x33),
    faint: Color32::from_rgb(0x5f, 0x69, 0x6e),
    copper: Color32::from_rgb(0xa4, 0x62, 0x3a),
    metal: Color32::from_rgb(0xc9, 0xc7, 0xbf),
    low: Color32::from_rgb(0x1d, 0x5b, 0xa3),
    high: Color32::from_rgb(0xb0, 0x35, 0x2b),
    centre: Color32::from_rgb(0xc4, 0x93, 0x0a),
    accent: Color32::from_rgb(0x0d, 0x6b, 0x66),
    warn: Color32::from_rgb(0x96, 0x44, 0x00),
    frost: Color32::from_rgb(0x8f, 0xb4, 0xcc),
    water: Color32::from_rgb(0x2d, 0x7f, 0xa8),
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
};

impl Palette {
    /// The palette of the theme that is shown.
    pub fn of(ui: &Ui) -> &'static Self {
        if ui.visuals().dark_mode {
            &DARK
        } else {
            &LIGHT
        }
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
    ctx.set_visuals_of(Theme::Light, visuals(Visuals::light(), &LIGHT));
    ctx.set_visuals_of(Theme::Dark, visuals(Visuals::dark(), &DARK));
    ctx.all_styles_mut(|style| {
        style.spacing.item_spacing = vec2(8.0, 6.0);
        style.spacing.button_padding = vec2(8.0, 4.0);
        style.spacing.interact_size.y = 24.0;
        style.spacing.slider_width = 150.0;
        for (text, size) in [
            (TextStyle::Small, 12.0),
            (TextStyle::Body, 14.0),
            (TextStyle::Button, 14.0),
            (TextStyle::Heading, 18.0),
        ] {
            style.text_styles.insert(text, FontId::proportional(size));
        }
    });
}

fn visuals(base: Visuals, palette: &Palette) -> Visuals {
    let mut v = base;
    v.panel_fill = palette.panel;
    v.window_fill = palette.raised;
    v.extreme_bg_color = palette.raised;
    v.faint_bg_color = palette.paper;
    v.warn_fg_color = palette.warn;
    v.hyperlink_color = palette.accent;
    v.selection.bg_fill = palette.accent.gamma_multiply(0.35);
    v.selection.stroke = Stroke::new(1.5, palette.accent);
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
        widget.fg_stroke.color = palette.ink;
    }
    v.widgets.noninteractive.bg_stroke.color = palette.metal;
    v.widgets.inactive.bg_fill = palette.metal;
    v.widgets.inactive.weak_bg_fill = palette.raised;
    v.widgets.inactive.bg_stroke = Stroke::new(1.0, palette.metal);
    v.widgets.hovered.weak_bg_fill = palette.raised;
    v.widgets.hovered.bg_stroke = Stroke::new(1.5, palette.accent);
    v.widgets.active.weak_bg_fill = palette.raised;
    // Keyboard focus is drawn with the active stroke: it must be plain to see.
    v.widgets.active.bg_stroke = Stroke::new(2.0, palette.accent);
    v
}

//! Colours, type sizes and spacing, as data.

mod palette;

pub use palette::{Colours, Palette, hose_colour, hose_letter};

use eframe::egui::{
    Context, CornerRadius, FontData, FontDefinitions, FontFamily, FontId, Id, Stroke, TextStyle,
    Theme, Visuals, style::ScrollAnimation, vec2,
};
use palette::for_wall;
use std::sync::Arc;

/// The sizes of type, points at 100 %. Nothing is smaller than a caption.
pub mod size {
    /// A caption, a key, a stamp.
    pub const CAPTION: f32 = 13.0;
    /// Text, a button, the figure of a gauge's scale.
    pub const TEXT: f32 = 15.0;
    /// The title of an area.
    pub const TITLE: f32 = 20.0;
    /// A result.
    pub const RESULT: f32 = 28.0;
}

/// The heavier weight, for titles and figures.
pub fn semibold(size: f32) -> FontId {
    FontId::new(size, FontFamily::Name("semibold".into()))
}

/// Puts colours, fonts and sizes into a fresh context.
pub fn install(ctx: &Context) {
    let mut fonts = FontDefinitions::default();
    // Glyphs that Open Sans lacks come from the fonts of the toolkit; arrows from the last of them.
    let mut rest = fonts
        .families
        .get(&FontFamily::Proportional)
        .cloned()
        .unwrap_or_default();
    rest.push("Hack".into());
    for (name, family, bytes) in [
        (
            "Open Sans",
            FontFamily::Proportional,
            include_bytes!("../../../assets/fonts/OpenSans-Regular.ttf").as_slice(),
        ),
        (
            "Open Sans SemiBold",
            FontFamily::Name("semibold".into()),
            include_bytes!("../../../assets/fonts/OpenSans-SemiBold.ttf").as_slice(),
        ),
    ] {
        let data = Arc::new(FontData::from_static(bytes));
        fonts.font_data.insert(name.to_owned(), data);
        let chain = std::iter::once(name.to_owned()).chain(rest.clone());
        fonts.families.insert(family, chain.collect());
    }
    ctx.set_fonts(fonts);
    ctx.set_visuals_of(Theme::Dark, visuals(Visuals::dark(), Colours::Night));
    ctx.all_styles_mut(|style| {
        // A list that moves by itself is at its place at once.
        style.scroll_animation = ScrollAnimation::none();
        style.spacing.item_spacing = vec2(8.0, 6.0);
        style.spacing.button_padding = vec2(8.0, 4.0);
        style.spacing.interact_size.y = 24.0;
        style.spacing.slider_width = 150.0;
    });
    light(ctx, Colours::Paper);
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
        Colours::Paper | Colours::Wall => {
            light(ctx, colours);
            ctx.set_theme(Theme::Light);
        }
        Colours::Night => {
            light(ctx, Colours::Paper);
            ctx.set_theme(Theme::Dark);
        }
    }
    // Text and drawing grow together: what is painted keeps its place and nothing overlaps, and a
    // large size is to the panels the same as a small window.
    ctx.set_zoom_factor(size);
}

/// Makes the light theme the usual one or the wall's.
fn light(ctx: &Context, colours: Colours) {
    ctx.data_mut(|data| data.insert_temp(for_wall(), colours == Colours::Wall));
    ctx.set_visuals_of(Theme::Light, visuals(Visuals::light(), colours));
    ctx.all_styles_mut(|style| {
        for (text, size) in [
            (TextStyle::Small, size::CAPTION),
            (TextStyle::Body, size::TEXT),
            (TextStyle::Button, size::TEXT),
            (TextStyle::Monospace, size::CAPTION),
            (TextStyle::Heading, size::TITLE),
        ] {
            let size = size * colours.text();
            let font = match text {
                TextStyle::Monospace => FontId::monospace(size),
                TextStyle::Heading => semibold(size),
                TextStyle::Small | TextStyle::Body | TextStyle::Button | TextStyle::Name(_) => {
                    FontId::proportional(size)
                }
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
    v.selection.bg_fill = palette.tint;
    v.selection.stroke = line(1.5, palette.accent);
    v.slider_trailing_fill = true;
    let radius = CornerRadius::same(5);
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
    v.widgets.noninteractive.bg_stroke.color = palette.edge;
    v.widgets.inactive.bg_fill = palette.metal;
    v.widgets.inactive.weak_bg_fill = palette.raised;
    v.widgets.inactive.bg_stroke = line(1.0, palette.edge);
    v.widgets.hovered.weak_bg_fill = palette.raised;
    v.widgets.hovered.bg_stroke = line(1.5, palette.accent);
    v.widgets.active.weak_bg_fill = palette.raised;
    // Keyboard focus is drawn with the active stroke: it must be plain to see.
    v.widgets.active.bg_stroke = line(2.0, palette.accent);
    v
}

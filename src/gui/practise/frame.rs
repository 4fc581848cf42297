//! The frame of the room: the bar, the site with its drawers, what is at hand, the instruments, the
//! line at the foot. What is at hand and the instruments are never covered: only the site gives
//! way.

use crate::attempt::Mode;
use crate::gui::moment::moment_text;
use crate::gui::notes::Notes;
use crate::gui::pace::Rate;
use crate::gui::parts::hands_ui;
use crate::gui::practise::clock::clock_ui;
use crate::gui::practise::coach::coach_below;
use crate::gui::practise::drawers::Drawer;
use crate::gui::practise::go_to::{GoTo, Went, go_to_ui};
use crate::gui::practise::hand_back::{HandBack, Leads, hand_back_ui};
use crate::gui::practise::key_list::key_list_ui;
use crate::gui::practise::moments::moments_ui;
use crate::gui::practise::reference::reference_ui;
use crate::gui::practise::sheet_panel::{complaint_ui, sheet_ui};
use crate::gui::practise::waiting::waiting_ui;
use crate::gui::practise::{Exit, Practise, Side};
use crate::gui::site::site_ui;
use crate::gui::theme::{Palette, semibold, size};
use crate::gui::view::{Reads, View};
use crate::gui::widgets::{Look, ask_for_focus, key_button, keys};
use crate::job::Driver as _;
use crate::job::procedure::Look as Glance;
use crate::text::Message;
use crate::words::Action;
use eframe::egui::{
    Align2, CentralPanel, FontId, Frame, Id, Key, Label, Margin, Modal, Panel, Rect, RichText,
    ScrollArea, Shape, Stroke, StrokeKind, Ui, UiBuilder, accesskit, pos2, vec2,
};
use strum::VariantArray as _;

/// The width of a drawer, points.
const DRAWER: f32 = 400.0;

/// From this width on there is room for two drawers.
const TWO_DRAWERS: f32 = 1440.0;

/// The height of the band over a site whose clock stands.
const BAND: f32 = 26.0;

/// The height of the line at the foot.
const FOOT: f32 = 28.0;

/// The least width beside the instruments that is given to the strip chart.
const ROOM_FOR_CHART: f32 = 240.0;

impl Practise {
    /// The bar: the clock, the drawers, the hand-back, the menu.
    pub(super) fn bar_ui(&mut self, ui: &mut Ui, reads: Reads, menu: &mut bool, is_wide: bool) {
        let frame = Frame::NONE
            .fill(Palette::of(ui).panel)
            .inner_margin(Margin::symmetric(8, 6));
        Panel::top("clock").frame(frame).show(ui, |ui| {
            ui.horizontal_wrapped(|ui| {
                ui.spacing_mut().item_spacing.x = 5.0;
                let view = View::new(self.recorder.job(), &self.scene, self.mode(), reads);
                clock_ui(ui, &view, &mut self.pace);
                if is_wide {
                    for &drawer in Drawer::VARIANTS {
                        let look = if self.drawers.has(drawer) {
                            Look::Chosen
                        } else {
                            Look::Plain
                        };
                        let key = drawer.key();
                        let button = key_button(ui, &drawer.name(&view), Some(key), look);
                        if button.clicked() || keys::pressed(ui.ctx(), key.1) {
                            self.drawers.toggle(drawer);
                        }
                    }
                }
                let key = ("H", Key::H);
                let button = key_button(ui, &view.say("back-hand-back"), Some(key), Look::Plain);
                let by_key = self.hand_back.is_none() && keys::pressed(ui.ctx(), Key::H);
                if button.clicked() || by_key {
                    self.hand_back = Some(HandBack::default());
                    self.pace.rate = Rate::Paused;
                }
                let look = if *menu { Look::Chosen } else { Look::Plain };
                if key_button(ui, &view.say("room-menu"), None, look).clicked() {
                    *menu = !*menu;
                }
                self.other_keys(ui);
            });
        });
        self.waiting_bar_ui(ui, reads);
    }

    /// A wait under way, with what stops it.
    fn waiting_bar_ui(&mut self, ui: &mut Ui, reads: Reads) {
        let Some(waiting) = &self.waiting else {
            return;
        };
        let frame = Frame::NONE
            .fill(Palette::of(ui).tint)
            .inner_margin(Margin::symmetric(8, 4));
        let view = View::new(self.recorder.job(), &self.scene, self.mode(), reads);
        let shown = Panel::top("waiting").frame(frame).show(ui, |ui| {
            ui.horizontal_wrapped(|ui| waiting_ui(ui, &view, waiting))
                .inner
        });
        if shown.inner {
            self.end_wait(Glance::NotYet, reads);
        }
    }

    /// Keys that have no button in the bar.
    fn other_keys(&mut self, ui: &Ui) {
        if keys::pressed(ui.ctx(), Key::G) {
            self.go_to = Some(GoTo::default());
        }
        if keys::pressed(ui.ctx(), Key::Questionmark) {
            self.lists_keys = !self.lists_keys;
        }
        if keys::pressed(ui.ctx(), Key::Q)
            && let Some(coach) = &mut self.coach
        {
            coach.ask(self.recorder.job().now());
        }
        if keys::pressed(ui.ctx(), Key::F6) {
            ask_for_focus(ui.ctx());
        }
    }

    /// Everything beside each other.
    pub(super) fn wide_ui(
        &mut self,
        ui: &mut Ui,
        reads: Reads,
        (actions, exit): (&mut Vec<Action>, &mut Option<Exit>),
    ) {
        let frame = Frame::NONE
            .fill(Palette::of(ui).panel)
            .inner_margin(Margin::symmetric(8, 6));
        let window = ui.available_size();
        let foot = Frame::NONE
            .fill(Palette::of(ui).panel)
            .inner_margin(Margin::symmetric(8, 2));
        Panel::bottom("foot")
            .frame(foot)
            .exact_size(FOOT)
            .show(ui, |ui| self.foot_ui(ui, reads));
        Panel::bottom("instruments")
            .frame(frame)
            .exact_size((0.32 * window.y).clamp(170.0, 0.42 * window.x))
            .show(ui, |ui| self.instruments_ui(ui, reads));
        Panel::right("side")
            .frame(frame)
            .exact_size((0.23 * window.x).clamp(330.0, 400.0))
            .show(ui, |ui| self.at_hand_ui(ui, reads, actions));
        CentralPanel::default().frame(Frame::NONE).show(ui, |ui| {
            self.site_and_drawers_ui(ui, reads, window.x, (actions, exit));
        });
    }

    /// What can be done to the part that is chosen, over the coach.
    fn at_hand_ui(&mut self, ui: &mut Ui, reads: Reads, actions: &mut Vec<Action>) {
        let view = View::new(self.recorder.job(), &self.scene, self.mode(), reads);
        if let Some(coach) = &mut self.coach {
            coach_below(ui, &view, coach);
        }
        hands_ui(ui, &view, self.chosen, &mut self.drafts, actions);
    }

    /// The instruments, and the strip chart where there is room beside them.
    fn instruments_ui(&mut self, ui: &mut Ui, reads: Reads) {
        ui.horizontal_top(|ui| {
            crate::gui::instruments::instruments_ui(ui, &self.view(reads));
            let has_room = ui.available_width() > ROOM_FOR_CHART;
            if has_room && !self.drawers.has(Drawer::Chart) {
                ui.vertical(|ui| self.chart_ui(ui, reads));
            }
        });
    }

    /// The line at the foot: what happened last, and the keys that work here.
    fn foot_ui(&self, ui: &mut Ui, reads: Reads) {
        ui.horizontal(|ui| {
            let title = self.scene.title.in_language(reads.language);
            ui.label(RichText::new(title).font(semibold(size::CAPTION)));
            if self.mode() == Mode::Assessed {
                let assessed = reads.language.say("attempt-assessment");
                let colour = Palette::of(ui).warn;
                ui.label(RichText::new(assessed).small().color(colour));
            }
            let last = self.notes.moments.last();
            let text = last.map(|moment| moment_text(reads.language, moment));
            let font = FontId::proportional(size::CAPTION);
            let keys = reads.language.say("keys-foot");
            let room = ui.available_width();
            let rect = ui.max_rect();
            let corner = pos2(ui.cursor().left() + 8.0, rect.top());
            let left = Rect::from_min_size(corner, vec2(0.6 * room, rect.height()));
            if let Some(news) = &self.news {
                let text = RichText::new(news.in_language(reads.language));
                let mut line = ui.new_child(UiBuilder::new().max_rect(left).id_salt("news"));
                line.add(Label::new(text.font(font.clone())).truncate());
            } else if let Some(text) = text {
                // The log has the same to be read out.
                ui.painter_at(left).text(
                    left.left_center(),
                    Align2::LEFT_CENTER,
                    text,
                    font.clone(),
                    Palette::of(ui).ink,
                );
            }
            ui.painter().text(
                pos2(rect.right(), rect.center().y),
                Align2::RIGHT_CENTER,
                keys,
                font,
                Palette::of(ui).faint,
            );
        });
    }

    /// The site, and over its right the drawers that are open.
    fn site_and_drawers_ui(
        &mut self,
        ui: &mut Ui,
        reads: Reads,
        window: f32,
        (actions, exit): (&mut Vec<Action>, &mut Option<Exit>),
    ) {
        let room = ui.available_rect_before_wrap();
        let drawers = self.drawers.shown(if window < TWO_DRAWERS { 1 } else { 2 });
        let covered = DRAWER.min(0.6 * room.width()) * drawers.len() as f32;
        let band = if self.is_standing() { BAND } else { 0.0 };
        let site = Rect::from_min_max(pos2(room.left(), room.top() + band), room.max);
        let (mut chosen, torque) = (self.chosen, self.drafts.torque);
        let mut at = None;
        let mut inner = ui.new_child(UiBuilder::new().max_rect(site).id_salt("site"));
        inner.scope(|ui| {
            at = site_ui(ui, &self.view(reads), torque, &mut chosen, actions, covered);
        });
        self.chosen = chosen;
        let seen = Rect::from_min_max(site.min, pos2(site.right() - covered, site.bottom()));
        if band > 0.0 {
            Self::band_ui(ui, reads, room, site);
        }
        if let Some(why) = &self.refusal {
            refusal_ui(ui, reads, why, seen, at);
        }
        let width = covered / drawers.len().max(1) as f32;
        for (place, drawer) in drawers.into_iter().enumerate() {
            let left = room.right() - covered + width * place as f32;
            let rect = Rect::from_min_size(pos2(left, room.top()), vec2(width, room.height()));
            self.drawer_frame_ui(ui, reads, (drawer, rect), (actions, exit));
        }
        ui.allocate_rect(room, eframe::egui::Sense::hover());
    }

    /// A clock that stands is seen from afar: a band of ink and a dashed frame.
    fn band_ui(ui: &mut Ui, reads: Reads, room: Rect, site: Rect) {
        let palette = Palette::of(ui);
        let band = Rect::from_min_max(room.min, pos2(room.right(), room.top() + BAND));
        ui.painter().rect_filled(band, 0.0, palette.ink);
        let text = RichText::new(reads.language.say("room-clock-stopped"))
            .color(palette.paper)
            .font(semibold(size::CAPTION));
        let inside = band.shrink2(vec2(12.0, 3.0));
        let mut line = ui.new_child(UiBuilder::new().max_rect(inside).id_salt("band"));
        line.add(Label::new(text).truncate());
        let frame = site.shrink(2.0);
        let corners = [
            frame.left_top(),
            frame.right_top(),
            frame.right_bottom(),
            frame.left_bottom(),
            frame.left_top(),
        ];
        let stroke = Stroke::new(2.0, palette.ink);
        ui.painter()
            .extend(Shape::dashed_line(&corners, stroke, 8.0, 6.0));
    }

    fn drawer_frame_ui(
        &mut self,
        ui: &mut Ui,
        reads: Reads,
        (drawer, rect): (Drawer, Rect),
        (actions, exit): (&mut Vec<Action>, &mut Option<Exit>),
    ) {
        let palette = Palette::of(ui);
        let line = Stroke::new(1.6 * palette.line, palette.ink);
        ui.painter().rect_filled(rect, 0.0, palette.raised);
        ui.painter()
            .line_segment([rect.left_top(), rect.left_bottom()], line);
        // What is under a drawer is not to be pressed through it.
        let id = ui.scope_id().with(("drawer", drawer.key().0));
        ui.interact(rect, id, eframe::egui::Sense::CLICK);
        let inside = rect.shrink2(vec2(12.0, 8.0));
        let builder = UiBuilder::new().max_rect(inside).id_salt(drawer.key().0);
        let mut inner = ui.new_child(builder);
        inner.set_clip_rect(rect);
        self.drawer_ui(&mut inner, reads, drawer, (actions, exit));
    }

    fn drawer_ui(
        &mut self,
        ui: &mut Ui,
        reads: Reads,
        drawer: Drawer,
        (actions, exit): (&mut Vec<Action>, &mut Option<Exit>),
    ) {
        let view = View::new(self.recorder.job(), &self.scene, self.mode(), reads);
        match drawer {
            Drawer::Wait => *exit = self.time_ui(ui, reads).or(exit.take()),
            Drawer::Complaint => complaint_ui(ui, &view),
            Drawer::Sheet => sheet_ui(ui, &view, &mut self.sheet, actions),
            Drawer::Reference => reference_ui(ui, &view, &mut self.reference),
            Drawer::Chart => self.chart_ui(ui, reads),
            Drawer::Log => *exit = self.log_ui(ui, reads).or(exit.take()),
        }
    }

    /// What was done and what was not, and the way back to a moment.
    pub(super) fn log_ui(&mut self, ui: &mut Ui, reads: Reads) -> Option<Exit> {
        let view = View::new(self.recorder.job(), &self.scene, self.mode(), reads);
        let mut back = None;
        ScrollArea::vertical().id_salt("log").show(ui, |ui| {
            let chosen = (&mut self.moment, &mut self.only_refused);
            let Notes { moments, .. } = &self.notes;
            back = moments_ui(ui, &view, moments, &self.refusals, chosen);
        });
        back.map(Exit::GoBack)
    }

    /// What lies over everything while it is open: the hand-back, the way to a part, the keys.
    pub(super) fn over_all_ui(&mut self, ui: &Ui, reads: Reads, actions: &mut Vec<Action>) {
        let window = ui.ctx().content_rect().size();
        let wide = (window.x - 48.0).min(820.0);
        if let Some(mut sheet) = self.hand_back.take() {
            let view = View::new(self.recorder.job(), &self.scene, self.mode(), reads);
            let mut leads = Leads::Nowhere;
            let modal = Modal::new(Id::unique("hand back")).show(ui.ctx(), |ui| {
                ui.set_width(wide);
                ui.set_max_height(window.y - 80.0);
                leads = hand_back_ui(ui, &view, &mut sheet);
            });
            match leads {
                Leads::Nowhere if !modal.should_close() => self.hand_back = Some(sheet),
                Leads::Nowhere | Leads::WorkOn => {}
                Leads::To(part) => self.choose(part),
                Leads::HandBack => actions.push(Action::HandBack),
            }
        }
        if let Some(mut go_to) = self.go_to.take() {
            let view = View::new(self.recorder.job(), &self.scene, self.mode(), reads);
            let mut went = Went::Nowhere;
            let modal = Modal::new(Id::unique("go to")).show(ui.ctx(), |ui| {
                ui.set_width(wide.min(420.0));
                went = go_to_ui(ui, &view, &mut go_to);
            });
            match went {
                Went::Nowhere if !modal.should_close() => self.go_to = Some(go_to),
                Went::Nowhere | Went::Away => {}
                Went::To(part) => {
                    self.choose(part);
                    ask_for_focus(ui.ctx());
                }
            }
        }
        if self.lists_keys {
            let view = self.view(reads);
            let modal = Modal::new(Id::unique("keys")).show(ui.ctx(), |ui| {
                ui.set_width(wide.min(560.0));
                key_list_ui(ui, &view);
            });
            self.lists_keys = !modal.should_close();
        }
    }

    /// Whether the clock stands and nothing is waited for.
    fn is_standing(&self) -> bool {
        self.pace.rate == Rate::Paused && self.waiting.is_none()
    }

    /// In a small window a drawer is a thing to choose; in a wide one it is opened.
    pub(super) fn open(&mut self, drawer: Drawer) {
        self.drawers.open(drawer);
        self.side = match drawer {
            Drawer::Wait => Side::Time,
            Drawer::Complaint => Side::Complaint,
            Drawer::Sheet => Side::Sheet,
            Drawer::Reference => Side::Reference,
            Drawer::Chart => Side::Chart,
            Drawer::Log => Side::Log,
        };
    }
}

/// Why something was not done, beside the part that it was to be done to, with a line to it.
fn refusal_ui(ui: &mut Ui, reads: Reads, why: &Message, seen: Rect, at: Option<Rect>) {
    let palette = Palette::of(ui);
    let why = Message::new("room-not-done").with("why", why.clone());
    let text = why.in_language(reads.language);
    let width = 400.0_f32.min(seen.width() - 24.0);
    let part = at.filter(|part| seen.intersects(*part)).unwrap_or(seen);
    let font = FontId::proportional(size::TEXT);
    let galley = ui
        .painter()
        .layout(text.clone(), font.clone(), palette.ink, width - 56.0);
    let height = galley.size().y + 20.0;
    let below = part.bottom() + 24.0;
    let top = if below + height < seen.bottom() {
        below
    } else {
        part.top() - 24.0 - height
    };
    let left = (part.center().x - 0.5 * width)
        .min(seen.right() - width - 8.0)
        .max(seen.left() + 8.0);
    let top = top.min(seen.bottom() - height - 8.0).max(seen.top() + 8.0);
    let area = Rect::from_min_size(pos2(left, top), vec2(width, height));
    let line = Stroke::new(1.6 * palette.line, palette.warn);
    if at.is_some() {
        let from = if area.top() > part.center().y {
            area.center_top()
        } else {
            area.center_bottom()
        };
        ui.painter().line_segment([from, part.center()], line);
    }
    ui.painter()
        .rect(area, 5.0, palette.caution_tint, line, StrokeKind::Inside);
    // The struck circle: not done.
    let middle = pos2(area.left() + 24.0, area.center().y);
    ui.painter().circle_stroke(middle, 9.0, line);
    let along = vec2(6.4, -6.4);
    ui.painter()
        .line_segment([middle - along, middle + along], line);
    let inside = Rect::from_min_max(
        pos2(area.left() + 46.0, area.top() + 10.0),
        area.max - vec2(8.0, 6.0),
    );
    let mut words = ui.new_child(UiBuilder::new().max_rect(inside).id_salt("refusal"));
    let label = words.label(RichText::new(text).font(font).color(palette.ink));
    words.ctx().accesskit_node_builder(label.id, |node| {
        node.set_live(accesskit::Live::Assertive);
    });
}

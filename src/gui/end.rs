//! The room at the end: the marks with their evidence, what was noted, where the attempt is kept.

use crate::attempt::Mode;
use crate::gui::practise::Ended;
use crate::gui::session::Kept;
use crate::gui::theme::{Palette, semibold, size};
use crate::gui::time::time_text;
use crate::job::TICKS_PER_SECOND;
use crate::marking::Mark;
use crate::text::{Language, Message};
use eframe::egui::{
    Align, CentralPanel, Frame, Label, RichText, ScrollArea, Sense, StrokeKind, Ui, WidgetText,
};

/// Shows the room; gives whether to go back to the list.
pub fn end_ui(ui: &mut Ui, ended: &Ended, language: Language) -> bool {
    let mut leave = false;
    let frame = Frame::central_panel(ui.style()).inner_margin(24);
    CentralPanel::default().frame(frame).show(ui, |ui| {
        let report = &ended.report;
        ui.horizontal(|ui| {
            ui.heading(ended.title.in_language(language));
            leave = ui.button(language.say("room-back-to-list")).clicked();
        });
        let (points, of) = report.points();
        let percent = format!("{:.0}", report.score_percent);
        let score = if report.passed {
            Message::new("room-passed")
                .with("points", points)
                .with("of", of)
                .with("percent", percent)
        } else {
            Message::new("room-not-passed")
                .with("points", points)
                .with("of", of)
                .with("percent", percent)
        };
        let score = score.in_language(language);
        ui.label(RichText::new(score).font(semibold(size::RESULT)));
        ui.label(ended.trains.in_language(language));
        ui.label(language.say(match ended.mode {
            Mode::Practice => "attempt-was-practice",
            Mode::Assessed => "attempt-was-assessment",
        }));
        if let Some(branch) = &ended.branch {
            let text = Message::new("attempt-went-on-from")
                .with("attempt", branch.attempt.clone())
                .with("line", branch.line);
            ui.label(text.in_language(language));
        }
        kept_ui(ui, &ended.kept, language);
        ui.separator();
        ScrollArea::vertical().auto_shrink(false).show(ui, |ui| {
            next_ui(ui, &report.marks, language);
            for mark in &report.marks {
                mark_ui(ui, mark, language);
            }
            findings_ui(ui, ended, language);
        });
    });
    leave
}

/// Where the attempt is kept, or why it is not.
fn kept_ui(ui: &mut Ui, kept: &Result<Kept, String>, language: Language) {
    match kept {
        Ok(kept) => {
            let place = Message::new("room-kept-in").with("place", kept.place.clone());
            ui.weak(place.in_language(language));
            let print =
                Message::new("room-fingerprint").with("fingerprint", kept.fingerprint.clone());
            ui.weak(print.in_language(language));
        }
        Err(trouble) => {
            let trouble = Message::new("room-not-kept").with("trouble", trouble.clone());
            ui.label(trouble.in_language(language));
        }
    }
}

/// How many things to work on next are named: more than that nobody keeps in mind.
const NEXT: usize = 3;

/// What to work on next: the marks that were missed, the critical ones first, then by the points
/// that they cost.
fn next_ui(ui: &mut Ui, marks: &[Mark], language: Language) {
    let lost = |mark: &&Mark| mark.of.saturating_sub(mark.counted().unwrap_or(mark.of));
    let mut missed: Vec<&Mark> = marks.iter().filter(|mark| mark.is_missed()).collect();
    missed.sort_by_key(|mark| (!mark.critical, std::cmp::Reverse(lost(mark))));
    if missed.is_empty() {
        return;
    }
    ui.heading(language.say("room-work-on-next"));
    for (place, mark) in missed.iter().take(NEXT).enumerate() {
        let criterion = Message::of_scenario(mark.criterion.clone());
        ui.label(format!(
            "{}. {}",
            place + 1,
            criterion.in_language(language)
        ));
    }
    ui.separator();
}

fn mark_ui(ui: &mut Ui, mark: &Mark, language: Language) {
    let palette = Palette::of(ui);
    let points = match mark.counted() {
        Some(points) => Message::new("room-points-of")
            .with("points", points)
            .with("of", mark.of),
        None => Message::new("room-points-open").with("of", mark.of),
    };
    let points = points.in_language(language);
    let criterion = Message::of_scenario(mark.criterion.clone());
    let criterion = match (mark.is_missed(), mark.critical) {
        (false, _) => criterion,
        (true, false) => Message::new("room-missed").with("criterion", criterion),
        (true, true) => Message::new("room-missed-critical").with("criterion", criterion),
    };
    let colour = if mark.is_missed() {
        palette.warn
    } else {
        palette.ink
    };
    ui.horizontal_wrapped(|ui| {
        ui.monospace(format!("{points:>9}"));
        line_ui(
            ui,
            RichText::new(criterion.in_language(language)).color(colour),
        );
    });
    ui.indent("evidence", |ui| {
        if let Some(question) = &mark.question {
            let question = Message::of_scenario(question.clone());
            let asked = Message::new("room-for-the-assessor").with("question", question);
            ui.weak(asked.in_language(language));
        }
        for evidence in &mark.evidence {
            let text = evidence.text.in_language(language);
            ui.weak(format!("{}  {text}", at(evidence.at)));
        }
    });
    ui.add_space(4.0);
}

/// A line of a list in which nothing is to be pressed: the Tab key leads from line to line, and the
/// list follows.
fn line_ui(ui: &mut Ui, text: impl Into<WidgetText>) {
    let line = ui.add(Label::new(text).sense(Sense::focusable_noninteractive()));
    if line.gained_focus() {
        line.scroll_to_me(Some(Align::Center));
    }
    if line.has_focus() {
        let stroke = ui.visuals().selection.stroke;
        let around = line.rect.expand(2.0);
        ui.painter()
            .rect_stroke(around, 2.0, stroke, StrokeKind::Outside);
    }
}

fn findings_ui(ui: &mut Ui, ended: &Ended, language: Language) {
    let findings = &ended.report.findings;
    if findings.is_empty() {
        return;
    }
    ui.separator();
    ui.heading(language.say("room-noted"));
    for finding in findings {
        let text = finding.text().in_language(language);
        line_ui(ui, format!("{}  {text}", at(finding.tick)));
    }
}

fn at(tick: u64) -> String {
    time_text(tick as f64 / TICKS_PER_SECOND as f64)
}

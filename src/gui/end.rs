//! The room at the end: the marks with their evidence, what was noted, where the attempt is kept.

use super::clock::time_text;
use super::practise::Ended;
use super::theme::Palette;
use crate::attempt::Mode;
use crate::job::TICKS_PER_SECOND;
use crate::marking::Mark;
use crate::text::{Language, Message};
use eframe::egui::{CentralPanel, Frame, RichText, ScrollArea, Ui};

/// Shows the room; gives whether to go back to the list.
pub fn end_ui(ui: &mut Ui, ended: &Ended, language: Language) -> bool {
    let mut leave = false;
    let frame = Frame::central_panel(ui.style()).inner_margin(24);
    CentralPanel::default().frame(frame).show(ui, |ui| {
        let report = &ended.report;
        ui.horizontal(|ui| {
            ui.heading(&ended.title);
            leave = ui.button("Back to the list").clicked();
        });
        let verdict = if report.passed {
            "Passed"
        } else {
            "Not passed"
        };
        let (points, of) = report.points();
        let score = format!(
            "{verdict}: {points} of {of} points, {:.0} %",
            report.score_percent
        );
        ui.label(RichText::new(score).size(24.0).strong());
        ui.label(&ended.trains);
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
        match &ended.kept {
            Ok(kept) => {
                ui.weak(format!("Kept in {}", kept.place));
                ui.weak(format!("Fingerprint {}", kept.fingerprint));
            }
            Err(trouble) => {
                ui.label(format!("The attempt could not be kept: {trouble}"));
            }
        }
        ui.separator();
        ScrollArea::vertical().auto_shrink(false).show(ui, |ui| {
            next_ui(ui, &report.marks);
            for mark in &report.marks {
                mark_ui(ui, mark);
            }
            findings_ui(ui, ended);
        });
    });
    leave
}

/// How many things to work on next are named: more than that nobody keeps in mind.
const NEXT: usize = 3;

/// What to work on next: the marks that were missed, the critical ones first, then by the points
/// that they cost.
fn next_ui(ui: &mut Ui, marks: &[Mark]) {
    let lost = |mark: &&Mark| mark.of.saturating_sub(mark.counted().unwrap_or(mark.of));
    let mut missed: Vec<&Mark> = marks.iter().filter(|mark| mark.is_missed()).collect();
    missed.sort_by_key(|mark| (!mark.critical, std::cmp::Reverse(lost(mark))));
    if missed.is_empty() {
        return;
    }
    ui.heading("To work on next");
    for (place, mark) in missed.iter().take(NEXT).enumerate() {
        ui.label(format!("{}. {}", place + 1, mark.criterion));
    }
    ui.separator();
}

fn mark_ui(ui: &mut Ui, mark: &Mark) {
    let palette = Palette::of(ui);
    let points = match mark.counted() {
        Some(points) => format!("{points} of {}", mark.of),
        None => format!("open, {}", mark.of),
    };
    let word = match (mark.is_missed(), mark.critical) {
        (false, _) => "",
        (true, false) => "missed: ",
        (true, true) => "missed, critical: ",
    };
    let colour = if mark.is_missed() {
        palette.warn
    } else {
        palette.ink
    };
    ui.horizontal_wrapped(|ui| {
        ui.monospace(format!("{points:>9}"));
        ui.label(RichText::new(format!("{word}{}", mark.criterion)).color(colour));
    });
    ui.indent("evidence", |ui| {
        if let Some(question) = &mark.question {
            ui.weak(format!("For the assessor: {question}"));
        }
        for evidence in &mark.evidence {
            ui.weak(format!("{}  {}", at(evidence.at), evidence.text));
        }
    });
    ui.add_space(4.0);
}

fn findings_ui(ui: &mut Ui, ended: &Ended) {
    let findings = &ended.report.findings;
    if findings.is_empty() {
        return;
    }
    ui.separator();
    ui.heading("What was noted");
    for finding in findings {
        ui.label(format!("{}  {}", at(finding.tick), finding.text));
    }
}

fn at(tick: u64) -> String {
    time_text(tick as f64 / TICKS_PER_SECOND as f64)
}

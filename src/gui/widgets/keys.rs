//! Keys that work without a control: letters and figures rest while a blank has the cursor.

use eframe::egui::text_edit::TextEditState;
use eframe::egui::{Context, Id, Key, Modifiers};

/// Whether a blank has the cursor.
pub fn is_typing(ctx: &Context) -> bool {
    let focused = ctx.memory(eframe::egui::Memory::focused);
    focused.is_some_and(|id| TextEditState::load(ctx, id).is_some())
}

/// Whether a key was pressed that is free for the room; nothing else then sees it.
pub fn pressed(ctx: &Context, key: Key) -> bool {
    !is_typing(ctx) && ctx.input_mut(|input| input.consume_key(Modifiers::NONE, key))
}

fn on_the_site() -> Id {
    Id::unique("a part of the site has the focus")
}

/// Notes whether a part of the site has the keyboard's focus.
pub fn note_site_focus(ctx: &Context, has: bool) {
    ctx.data_mut(|data| data.insert_temp(on_the_site(), has));
}

/// Whether no control has the keyboard's focus, or only a part of the site.
pub fn is_free(ctx: &Context) -> bool {
    let focused = ctx.memory(eframe::egui::Memory::focused);
    focused.is_none() || ctx.data(|data| data.get_temp(on_the_site())) == Some(true)
}

fn slots() -> Id {
    Id::unique("the slots at hand")
}

/// Begins to count the actions at hand, each of which has a figure for its key.
pub fn begin_slots(ctx: &Context) {
    ctx.data_mut(|data| data.insert_temp(slots(), 0_usize));
}

/// Ends the count.
pub fn end_slots(ctx: &Context) {
    ctx.data_mut(|data| data.remove_temp::<usize>(slots()));
}

/// The figure of the next action at hand, and its key.
pub fn next_slot(ctx: &Context) -> Option<(&'static str, Key)> {
    const KEYS: [(&str, Key); 9] = [
        ("1", Key::Num1),
        ("2", Key::Num2),
        ("3", Key::Num3),
        ("4", Key::Num4),
        ("5", Key::Num5),
        ("6", Key::Num6),
        ("7", Key::Num7),
        ("8", Key::Num8),
        ("9", Key::Num9),
    ];
    let slot = ctx.data_mut(|data| {
        let count = data.get_temp_mut_or(slots(), usize::MAX);
        let slot = *count;
        *count = slot.saturating_add(1);
        slot
    });
    KEYS.get(slot).copied()
}

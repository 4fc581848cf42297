//! The keyboard's way from a thing to what can be done to it: Enter on the thing asks for it, the
//! first control that is shown then takes the focus.

use eframe::egui::{Context, Id, Response};

fn flag() -> Id {
    Id::unique("the first control takes the focus")
}

/// Asks that the first control shown from now on takes the keyboard's focus.
pub fn ask_for_focus(ctx: &Context) {
    ctx.data_mut(|data| data.insert_temp(flag(), true));
}

/// Gives the focus to this control if it was asked for.
pub fn take_focus(response: &Response) {
    let asked = response
        .ctx
        .data_mut(|data| data.remove_temp::<bool>(flag()))
        .unwrap_or(false);
    if asked {
        response.request_focus();
    }
}

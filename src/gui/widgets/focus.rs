//! The keyboard's way from a thing to what can be done to it: Enter on the thing asks for it, the
//! first control of the panel that shows it then takes the focus.

use eframe::egui::{Context, Id, Response, Ui};

fn asked() -> Id {
    Id::unique("a control at hand shall take the focus")
}

fn armed() -> Id {
    Id::unique("the next control takes the focus")
}

/// Asks that the first control at hand takes the keyboard's focus.
pub fn ask_for_focus(ctx: &Context) {
    ctx.data_mut(|data| data.insert_temp(asked(), true));
}

/// Shows controls of which the first takes the focus, if that was asked for.
pub fn first_takes_focus(ui: &mut Ui, contents: impl FnOnce(&mut Ui)) {
    ui.data_mut(|data| {
        if data.remove_temp::<bool>(asked()).is_some() {
            data.insert_temp(armed(), true);
        }
    });
    contents(ui);
    ui.data_mut(|data| data.remove_temp::<bool>(armed()));
}

/// Gives the focus to this control if it is the first that is shown after it was asked for.
pub fn take_focus(response: &Response) {
    let taken = response
        .ctx
        .data_mut(|data| data.remove_temp::<bool>(armed()));
    if taken.is_some() {
        response.request_focus();
    }
}

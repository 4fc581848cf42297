//! The recovery machine in the window: where a cart has one it stands beside the cart, and each of
//! its controls does one action.

use crate::support::{Window, at_work, job, recorded};
use coldbench::gui::Part;
use coldbench::kit::RecoveryMachine;
use coldbench::kit::tools::Name;
use coldbench::text::Language;
use egui_kittest::kittest::Queryable as _;

fn machine(window: &Window) -> &RecoveryMachine {
    let tools = &job(window).kit().tools;
    tools.recovery.as_ref().expect("it is on the cart")
}

fn press(window: &mut Window, label: &str) {
    window.get_by_label(label).click();
    window.run();
}

#[test]
fn the_recovery_machine_is_worked_by_its_controls() {
    let mut window = at_work("leaking_flare");
    window.get_by_label_contains("recovery machine, standing, inlet at vapour, cylinder shut");
    window.state_mut().choose(Part::Tool(Name::Recovery));
    window.run();
    press(&mut window, "Open its cylinder");
    assert!(machine(&window).valve_open);
    press(&mut window, "Set the inlet to liquid");
    assert!(machine(&window).liquid);
    press(&mut window, "Zero the recovery scale");
    assert_eq!(machine(&window).weighed_in(), Some(0.0));
    press(&mut window, "Start the machine");
    assert!(machine(&window).running);
    window.get_by_label_contains("recovery machine, running, inlet at liquid, cylinder open");
    press(&mut window, "Stop the machine");
    press(&mut window, "Set the inlet to vapour");
    press(&mut window, "Shut its cylinder");
    assert!(!machine(&window).running && !machine(&window).valve_open);
    // Each press stands in the journal in its plain form.
    assert_eq!(recorded(&window, "Recovery"), 7);
    assert_eq!(recorded(&window, "Tool"), 0);
}

#[test]
fn a_hose_can_be_put_on_it_and_a_caution_stands_beside_it() {
    let mut window = at_work("leaking_flare");
    window.state_mut().choose(Part::Tool(Name::Recovery));
    window.run();
    window.get_by_label_contains("80 % of its water capacity by weight");
    window.state_mut().act(coldbench::words::Action::Connect {
        hose: coldbench::kit::Hose::Centre,
        to: coldbench::kit::HoseEnd::Tool(Name::Recovery),
    });
    window.run();
    window.get_by_label_contains("on the recovery machine");
}

#[test]
fn it_speaks_spanish_and_is_not_where_no_cart_has_it() {
    let mut window = at_work("leaking_flare");
    press(&mut window, "Menu");
    press(&mut window, Language::Spanish.own_name());
    window.get_by_label_contains("recuperadora, parada, entrada en vapor, cilindro cerrado");
    let window = at_work("undercharge");
    assert!(window.query_by_label_contains("recovery machine").is_none());
}

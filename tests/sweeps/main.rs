//! Every unit at every size of every fault in three weathers: no reading that is no number, and no
//! jump that a technician could not name.

mod sweep;

use coldbench::scenario::unit_names;
use sweep::{Axis, Sweep, WEATHERS};

fn all(steps: usize, is_asked: impl Fn(&str, Axis, f64) -> bool) {
    let mut wrong = Vec::new();
    for unit in unit_names() {
        for axis in Axis::ALL {
            for outdoor in WEATHERS {
                if is_asked(unit, axis, outdoor) {
                    wrong.extend(Sweep::of(unit, axis, outdoor, steps).wrong());
                }
            }
        }
    }
    assert!(wrong.is_empty(), "{} jumps:\n{}", wrong.len(), wrong.join("\n"));
}

#[test]
#[ignore = "some 15,000 settlings"]
fn nothing_jumps_along_any_fault_of_any_unit() {
    all(100, |_, _, _| true);
}

//! `coldbench settle`: how a run came out, in words, and overrides that contradict one another.

use serde_json::Value;
use std::process::{Command, Output};

const UNIT: &str = "r22_3ton_orifice";

fn settle(arguments: &[&str]) -> Output {
    Command::new(env!("CARGO_BIN_EXE_coldbench"))
        .arg("settle")
        .args(arguments)
        .output()
        .expect("the program starts")
}

/// Settles with options; gives the JSON, the last line of the text and the exit code.
fn settled(arguments: &[&str]) -> (Value, String, Option<i32>) {
    let json = settle(&[arguments, &["--json"]].concat());
    let text = settle(arguments);
    assert_eq!(json.status.code(), text.status.code());
    let last = String::from_utf8_lossy(&text.stdout);
    let last = last.lines().last().unwrap_or_default().to_owned();
    let json = serde_json::from_slice(&json.stdout).expect("JSON");
    (json, last, text.status.code())
}

#[test]
fn a_sound_unit_comes_to_rest() {
    let (json, last, code) = settled(&[UNIT]);
    assert_eq!(
        (&json["outcome"], &json["settled"]),
        (&"at_rest".into(), &true.into())
    );
    assert!(last.starts_with("at rest after "), "{last}");
    assert_eq!(code, Some(0));
}

/// A starved unit with a low-pressure switch cycles on it; a fouled outdoor coil on the
/// high-pressure switch (common practice, no source).
#[test]
fn a_safety_that_opens_again_and_again_is_named() {
    for (arguments, by, words) in [
        (
            vec!["r134a_receiver_txv", "--charge-percent", "10"],
            "low_pressure_switch",
            "the low-pressure switch",
        ),
        (
            vec![
                UNIT,
                "--fault",
                "fouled-condenser=0.9",
                "--outdoor-f",
                "115",
            ],
            "high_pressure_switch",
            "the high-pressure switch",
        ),
    ] {
        let (json, last, code) = settled(&arguments);
        assert_eq!(json["outcome"], "cycling", "{last}");
        assert_eq!(json["by"], by, "{last}");
        assert!(json["stops"].as_u64().is_some_and(|stops| stops >= 3));
        assert_eq!(json["settled"], false);
        assert!(
            last.starts_with("cycling: ") && last.contains(words),
            "{last}"
        );
        assert_eq!(code, Some(1));
    }
}

#[test]
fn a_compressor_that_cannot_start_has_tripped() {
    let empty = ["r134a_receiver_txv", "--charge-percent", "0"];
    let (json, last, code) = settled(&empty);
    assert_eq!(json["outcome"], "tripped", "{last}");
    assert_eq!(json["by"], "low_pressure_switch");
    assert!(
        last.contains("the low-pressure switch keeps the compressor"),
        "{last}"
    );
    assert_eq!(code, Some(1));
}

/// Water freezes in the throat of a metering device below 32 °F, and the flow stops (common
/// practice, no source).
#[test]
fn a_wet_circuit_freezes() {
    let (json, last, code) = settled(&["wet_circuit"]);
    assert_eq!(json["outcome"], "frozen", "{last}");
    assert_eq!(json["at"], "metering");
    assert!(last.starts_with("frozen: "), "{last}");
    assert_eq!(code, Some(1));
}

#[test]
fn overrides_that_contradict_one_another_are_refused_with_a_reason() {
    for (arguments, reason) in [
        (
            vec![UNIT, "--fault", "undercharge=0.2", "--charge-percent", "90"],
            "given as a percentage and by a fault",
        ),
        (
            vec![UNIT, "--fault", "overcharge=0.2", "--charge-percent", "110"],
            "given as a percentage and by a fault",
        ),
        (
            vec![
                UNIT,
                "--fault",
                "undercharge=0.2",
                "--fault",
                "overcharge=0.2",
            ],
            "both too small and too large",
        ),
        (
            vec![
                UNIT,
                "--fault",
                "clogged-drier=0.2",
                "--fault",
                "clogged-drier=0.3",
            ],
            "is planted twice",
        ),
        (
            vec!["clogged_drier", "--fault", "clogged-drier=0.2"],
            "is in the scenario already",
        ),
        (
            vec!["undercharge", "--fault", "overcharge=0.2"],
            "both too small and too large",
        ),
        (
            vec![UNIT, "--indoor-f", "70", "--indoor-wb-f", "75"],
            "the wet bulb cannot be above",
        ),
        (
            vec![UNIT, "--point", "A", "--outdoor-f", "90"],
            "cannot be used with",
        ),
    ] {
        let output = settle(&arguments);
        let said = String::from_utf8_lossy(&output.stderr);
        assert_eq!(output.status.code(), Some(2), "{arguments:?}");
        assert!(said.contains(reason), "{arguments:?}: {said}");
    }
    // What can be so at once is done.
    for arguments in [
        vec![
            "clogged_drier",
            "--no-faults",
            "--fault",
            "clogged-drier=0.2",
        ],
        vec![
            UNIT,
            "--charge-percent",
            "90",
            "--fault",
            "dirty-filter=0.1",
        ],
        vec!["undercharge", "--charge-percent", "100"],
    ] {
        assert_ne!(settle(&arguments).status.code(), Some(2), "{arguments:?}");
    }
}

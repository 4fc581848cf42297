//! How files write the words of tools: plainly, `Nitrogen(Valve(true))`; and how they wrote them
//! before tools were of one kind, `NitrogenValve(true)`, which is still read.

use coldbench::kit::tools;
use coldbench::kit::{nitrogen, recovery, refrigerant_cylinder, vacuum_pump};
use coldbench::units::{Fraction, GaugePressure};
use coldbench::words::{Action, FindingKind, HoseEnd, Milestone, Reading, Status};
use serde::Serialize;
use serde::de::DeserializeOwned;
use std::fmt::Debug;

/// A word is written plainly, and is read in its plain and its earlier form, from RON and JSON.
fn holds<T: Serialize + DeserializeOwned + PartialEq + Debug>(word: &T, plain: &str, before: &str) {
    assert_eq!(ron::to_string(word).expect("plain data"), plain);
    for form in [plain, before] {
        let read: T = ron::from_str(form).unwrap_or_else(|error| panic!("{form}: {error}"));
        assert_eq!(&read, word, "{form}");
    }
    let json = serde_json::to_string(word).expect("plain data");
    assert!(!json.contains("Tool"), "{json}");
    let again: T = serde_json::from_str(&json).expect("it was just written");
    assert_eq!(&again, word);
}

#[test]
fn actions_are_written_plainly_and_read_as_before() {
    use nitrogen::Action as N;
    use refrigerant_cylinder::Action as C;
    use vacuum_pump::Action as P;
    let half = Fraction::clamped(0.5);
    let set = N::SetRegulator(GaugePressure::from_psig(150.0));
    for (action, plain, before) in [
        (
            Action::of(N::Valve(true)),
            "Nitrogen(Valve(true))",
            "NitrogenValve(true)",
        ),
        (
            Action::of(N::Regulator(false)),
            "Nitrogen(Regulator(false))",
            "Regulator(false)",
        ),
        (
            Action::of(set),
            "Nitrogen(SetRegulator(Psig(150.0)))",
            "SetRegulator(Psig(150))",
        ),
        (
            Action::of(C::Valve(half)),
            "RefrigerantCylinder(Valve(0.5))",
            "CylinderValve(0.5)",
        ),
        (
            Action::of(C::Inverted(true)),
            "RefrigerantCylinder(Inverted(true))",
            "CylinderInverted(true)",
        ),
        (
            Action::of(C::Tare),
            "RefrigerantCylinder(Tare)",
            "TareScale",
        ),
        (
            Action::of(P::Run(true)),
            "VacuumPump(Run(true))",
            "Pump(true)",
        ),
        (
            Action::of(P::Inlet(true)),
            "VacuumPump(Inlet(true))",
            "PumpIsolation(true)",
        ),
        (
            Action::of(P::Ballast(true)),
            "VacuumPump(Ballast(true))",
            "GasBallast(true)",
        ),
        (
            Action::of(P::ChangeOil),
            "VacuumPump(ChangeOil)",
            "ChangePumpOil",
        ),
    ] {
        holds(&action, plain, before);
    }
    let run = Action::of(recovery::Action::Run(true));
    holds(&run, "Recovery(Run(true))", "Recovery(Run(true))");
    // The enum's other words are read as ever.
    holds(&Action::VerifyDead, "VerifyDead", "VerifyDead");
    holds(&Action::Protect(true), "Protect(true)", "Protect(true)");
}

#[test]
fn readings_milestones_statuses_findings_and_ends_likewise() {
    let outlet = Reading::of(nitrogen::Reading::Outlet);
    holds(&outlet, "Nitrogen(Outlet)", "NitrogenOutlet");
    let cylinder = Reading::of(nitrogen::Reading::Cylinder);
    holds(&cylinder, "Nitrogen(Cylinder)", "NitrogenCylinder");
    let scale = Reading::of(refrigerant_cylinder::Reading::Scale);
    holds(&scale, "RefrigerantCylinder(Scale)", "Scale");
    let opened = Milestone::of(nitrogen::Milestone::Opened);
    holds(&opened, "Nitrogen(Opened)", "NitrogenOpened");
    let opened = Milestone::of(refrigerant_cylinder::Milestone::Opened);
    holds(&opened, "RefrigerantCylinder(Opened)", "CylinderOpened");
    let started = Milestone::of(vacuum_pump::Milestone::Started);
    holds(&started, "VacuumPump(Started)", "PumpStarted");
    let shut = Status::of(vacuum_pump::Status::ShutOff);
    holds(&shut, "VacuumPump(ShutOff)", "PumpShutOff");
    let evacuating = Status::of(vacuum_pump::Status::Evacuating);
    holds(&evacuating, "VacuumPump(Evacuating)", "Evacuating");
    let shut = Status::of(nitrogen::Status::ShutOff);
    holds(&shut, "Nitrogen(ShutOff)", "NitrogenShutOff");
    let fitted = Status::of(nitrogen::Status::RegulatorFitted);
    holds(&fitted, "Nitrogen(RegulatorFitted)", "RegulatorFitted");
    let bare = FindingKind::of(nitrogen::Finding::NoRegulator);
    holds(&bare, "Nitrogen(NoRegulator)", "NoRegulator");
    let pressure = FindingKind::of(vacuum_pump::Finding::UnderPressure);
    holds(&pressure, "VacuumPump(UnderPressure)", "PumpUnderPressure");
    let away = FindingKind::of(vacuum_pump::Finding::PumpedAway);
    holds(&away, "VacuumPump(PumpedAway)", "PumpedAway");
    let end = HoseEnd::Tool(tools::Name::Nitrogen);
    holds(&end, "Nitrogen", "Nitrogen");
    holds(&HoseEnd::OpenAir, "OpenAir", "OpenAir");
}

/// A word that is not known is an error that lists the words that are; so is a tool's word where
/// the tool has none of that kind, `Tool`, which no file writes, and a value that is left out.
#[test]
fn unknown_words_are_told_with_those_that_are_known() {
    fn error<T: DeserializeOwned + Debug>(text: &str) -> String {
        let error = ron::from_str::<T>(text).expect_err(text);
        assert_eq!(error.span.start.line, 1, "it has a place");
        error.to_string()
    }
    let told = error::<Action>("NitrogenValv(true)");
    for word in ["NitrogenValv", "VerifyDead", "Nitrogen", "VacuumPump"] {
        assert!(told.contains(word), "{told}");
    }
    assert!(!told.contains("`Tool`"), "{told}");
    let told = error::<Action>("Nitrogen(Valv(true))");
    assert!(
        told.contains("Valv") && told.contains("SetRegulator"),
        "{told}"
    );
    let told = error::<Action>("Tool(Nitrogen(Valve(true)))");
    assert!(told.contains("Tool"), "{told}");
    let told = error::<Reading>("VacuumPump(Gauge)");
    assert!(
        told.contains("VacuumPump") && told.contains("RefrigerantCylinder"),
        "{told}"
    );
    for text in [
        "Nitrogen",
        "NitrogenValve",
        "Nitrogen()",
        "Nitrogen(Valve)",
        "Nitrogen(7)",
    ] {
        error::<Action>(text);
    }
    error::<HoseEnd>("Nitrogen(Valve(true))");
}

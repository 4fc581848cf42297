//! What comes with the program must be in order.

use coldbench::job::procedure::Procedure;
use coldbench::scenario::{Diagnostic, Scenario, ScenarioFile, shipped_names};
use rand_chacha::ChaCha8Rng;
use rand_chacha::rand_core::{Rng, SeedableRng};
use std::path::Path;

fn told(wrong: &[Diagnostic]) -> String {
    let lines: Vec<String> = wrong.iter().map(ToString::to_string).collect();
    lines.join("\n")
}

fn scenario(name: &str) -> Scenario {
    let path = Path::new("scenarios").join(name).with_extension("ron");
    Scenario::load(&path).unwrap_or_else(|wrong| panic!("{}", told(&wrong)))
}

#[test]
fn every_shipped_scenario_loads_from_its_file_and_from_the_program_alike() {
    for name in shipped_names() {
        let (file, shipped) = (scenario(name), Scenario::shipped(name).expect(name));
        assert_eq!(file.file, shipped.file, "{name}");
        assert_eq!(file.digest, shipped.digest, "{name}");
        assert_eq!(file.digest.len(), 64);
        assert_eq!(file.name, name);
    }
}

#[test]
fn every_shipped_file_is_in_the_list() {
    let names = |folder: &str| {
        let entries = std::fs::read_dir(folder).expect("the folder is there");
        let mut names: Vec<String> = entries
            .map(|entry| entry.expect("readable").path())
            .filter(|path| path.extension().is_some_and(|ending| ending == "ron"))
            .map(|path| {
                path.file_stem()
                    .expect("named")
                    .to_string_lossy()
                    .into_owned()
            })
            .collect();
        names.sort();
        names
    };
    let sorted = |mut list: Vec<&'static str>| {
        list.sort_unstable();
        list
    };
    assert_eq!(names("scenarios"), sorted(shipped_names().collect()));
    let procedures = sorted(Procedure::shipped_names().collect());
    assert_eq!(names("scenarios/procedures"), procedures);
}

#[test]
fn a_shipped_rubric_gives_100_points_and_names_skills() {
    for name in shipped_names() {
        let rubric = scenario(name).file.rubric;
        let points: u32 = rubric.iter().map(|criterion| criterion.points).sum();
        assert_eq!(points, 100, "{name}");
        assert!(rubric.iter().any(|criterion| criterion.critical), "{name}");
        let skills: Vec<&String> = rubric.iter().filter_map(|c| c.skill.as_ref()).collect();
        assert!(
            2 * skills.len() > rubric.len(),
            "{name}: most criteria name a skill"
        );
        for skill in skills {
            let is_published =
                skill.starts_with("EU 2015/2067 Annex I ") || skill.starts_with("40 CFR 82");
            assert!(is_published, "{name}: {skill}");
        }
    }
}

#[test]
fn each_scenario_has_a_right_and_a_wrong_procedure() {
    for name in shipped_names() {
        for ending in ["right", "wrong"] {
            let file = format!("scenarios/procedures/{name}_{ending}.ron");
            let procedure = Procedure::load(Path::new(&file))
                .unwrap_or_else(|wrong| panic!("{}", told(&wrong)));
            assert_eq!(procedure.scenario, name, "{file}");
            let shipped = Procedure::shipped(&format!("{name}_{ending}"));
            assert_eq!(Some(procedure), shipped);
        }
    }
}

#[test]
fn our_reading_of_a_file_is_that_of_ron() {
    use ron::extensions::Extensions;
    let ron = ron::Options::default()
        .with_default_extension(Extensions::IMPLICIT_SOME | Extensions::UNWRAP_VARIANT_NEWTYPES);
    for name in shipped_names() {
        let path = Path::new("scenarios").join(name).with_extension("ron");
        let text = std::fs::read_to_string(path).expect("shipped");
        let by_ron: ScenarioFile = ron.from_str(&text).expect("plain RON");
        let mut ours = scenario(name).file;
        // A text that runs over lines is one line for us.
        ours.customer
            .complaint
            .clone_from(&by_ron.customer.complaint);
        assert_eq!(ours, by_ron, "{name}");
    }
    for name in Procedure::shipped_names() {
        let path = Path::new("scenarios/procedures")
            .join(name)
            .with_extension("ron");
        let text = std::fs::read_to_string(path).expect("shipped");
        let by_ron: Procedure = ron.from_str(&text).expect("plain RON");
        assert_eq!(Procedure::shipped(name), Some(by_ron), "{name}");
    }
}

#[test]
fn a_file_with_more_errors_than_anybody_reads_is_soon_done_with() {
    let many = [
        ("faults", "Leak(at: 1, hole: 2), "),
        ("faults", "Moisture(Grams(500)), "),
        (
            "rubric",
            "(rule: Hold(all: [], lasting: Hours(9))), (rule: InTime(Hours(2))), ",
        ),
        ("rubric", "(rule: Diagnosis(fault: Leak)), "),
    ];
    for (field, item) in many {
        let items = item.repeat(200_000 / item.len());
        let text = format!("(version: 1, {field}: [{items}])");
        let wrong = Scenario::from_bytes("x.ron", "x", text.as_bytes()).expect_err("refused");
        assert_eq!(wrong.len(), 100, "{item}");
    }
}

#[test]
fn no_edit_of_a_file_makes_the_loader_panic() {
    let mut noise = ChaCha8Rng::seed_from_u64(20);
    let scenario = std::fs::read("scenarios/clogged_drier.ron").expect("shipped");
    let procedure = std::fs::read("scenarios/procedures/clogged_drier_right.ron").expect("shipped");
    let mut refused = 0;
    for _ in 0..1500 {
        let mut bytes = scenario.clone();
        edit(&mut bytes, &mut noise);
        if let Err(wrong) = Scenario::from_bytes("x.ron", "x", &bytes) {
            assert!(!wrong.is_empty(), "a refusal says why");
            assert!(wrong.iter().all(|d| d.line > 0 && d.column > 0));
            refused += 1;
        }
        let mut bytes = procedure.clone();
        edit(&mut bytes, &mut noise);
        let _ = Procedure::from_bytes("x.ron", &bytes);
    }
    assert!(refused > 300, "most edits break the file: {refused}");
}

/// A few bytes changed, taken out, put in twice or swapped for what has a meaning.
fn edit(bytes: &mut Vec<u8>, noise: &mut ChaCha8Rng) {
    for _ in 0..=noise.next_u32() % 4 {
        let at = noise.next_u32() as usize % bytes.len();
        match noise.next_u32() % 4 {
            0 => bytes[at] = noise.next_u32() as u8,
            1 => bytes[at] = b"()[]{}:,\"\\/*-0e'#"[noise.next_u32() as usize % 17],
            2 => {
                let length = (noise.next_u32() as usize % 40).min(bytes.len() - at - 1);
                bytes.drain(at..at + length);
            }
            _ => {
                let length = (noise.next_u32() as usize % 40).min(bytes.len() - at);
                let piece = bytes[at..at + length].to_vec();
                bytes.splice(at..at, piece);
            }
        }
    }
}

#[test]
fn monstrous_files_are_refused_and_do_not_hurt() {
    let monsters: [Vec<u8>; 6] = [
        vec![],
        vec![b'('; 200_000],
        b"[".repeat(100_000),
        vec![b'x'; 10_000_000],
        b"(a: ".repeat(50_000),
        vec![0xff, 0xfe, 0x00],
    ];
    for bytes in monsters {
        let wrong = Scenario::from_bytes("x.ron", "x", &bytes).expect_err("refused");
        assert_eq!(wrong.len(), 1, "{}", told(&wrong));
    }
}

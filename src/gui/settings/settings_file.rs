//! The file of the settings. A bad one is reported, passed over, and left as it is until the person
//! changes something.

use crate::files::{self, FileError};
use crate::gui::settings::Settings;
use crate::scenario::{Diagnostic, Document};
use crate::text::Message;
use etcetera::app_strategy::{AppStrategy as _, AppStrategyArgs, choose_native_strategy};
use std::fs;
use std::io;
use std::path::{Path, PathBuf};

/// The name of the file in its folder.
const NAME: &str = "settings.ron";

/// The file of the settings in a folder, or none.
#[derive(Debug, Default)]
pub struct SettingsFile {
    file: Option<PathBuf>,
    kept: Settings,
    /// What is wrong with the file, to be shown.
    pub trouble: Option<Message>,
}

impl SettingsFile {
    /// Keeps nothing beyond the window.
    pub fn nowhere() -> Self {
        Self::default()
    }

    /// Keeps them where the platform keeps such files; nowhere where it names no such place.
    pub fn of_this_person() -> Self {
        // The folders in which versions with the crate `directories` kept the file.
        let program = AppStrategyArgs {
            app_name: "coldbench".to_owned(),
            ..AppStrategyArgs::default()
        };
        choose_native_strategy(program).map_or_else(
            |_| Self::nowhere(),
            |folders| {
                Self::in_folder(&if cfg!(target_os = "macos") {
                    folders.data_dir()
                } else {
                    folders.config_dir()
                })
            },
        )
    }

    /// Keeps them in a folder, and reads what is there.
    pub fn in_folder(folder: &Path) -> Self {
        let file = folder.join(NAME);
        let (kept, trouble) = match read(&file) {
            Ok(Some(settings)) => (settings, None),
            Ok(None) => (Settings::default(), None),
            Err(trouble) => (Settings::default(), Some(trouble)),
        };
        let file = Some(file);
        Self {
            file,
            kept,
            trouble,
        }
    }

    /// The settings as they are kept.
    pub const fn kept(&self) -> Settings {
        self.kept
    }

    /// Keeps these from now on, if they are others.
    pub fn keep(&mut self, settings: Settings) {
        if settings == self.kept {
            return;
        }
        self.kept = settings;
        let Some(file) = &self.file else {
            return;
        };
        self.trouble = write(file, &settings).err().map(|error| {
            Message::new("settings-not-kept")
                .with("file", file.display().to_string())
                .with("error", error.to_string())
        });
    }
}

/// The settings in a file; `None` where there is no file.
fn read(file: &Path) -> Result<Option<Settings>, Message> {
    let shown = file.display().to_string();
    let bytes = match files::read(file, files::TEXT_MAX) {
        Ok(bytes) => bytes,
        Err(FileError::Missing) => return Ok(None),
        Err(error) => {
            return Err(Message::new("settings-not-read")
                .with("file", shown)
                .with("error", error.to_string()));
        }
    };
    parse(&shown, &bytes).map(Some).map_err(|wrong| {
        let wrong: Vec<String> = wrong.iter().map(ToString::to_string).collect();
        Message::new("settings-wrong").with("wrong", wrong.join("\n"))
    })
}

fn parse(shown: &str, bytes: &[u8]) -> Result<Settings, Vec<Diagnostic>> {
    let document = Document::split(shown, bytes).map_err(|wrong| vec![wrong])?;
    let mut wrong = Vec::new();
    crate::scenario::check_version(document.root(), &mut wrong);
    match document.read::<Settings>() {
        Ok(settings) if wrong.is_empty() => Ok(settings),
        Ok(_) => Err(wrong),
        Err(unread) => {
            wrong.extend(unread);
            Err(wrong)
        }
    }
}

/// Writes beside the file first, so that a full disk leaves the old one.
fn write(file: &Path, settings: &Settings) -> io::Result<()> {
    let pretty = ron::ser::PrettyConfig::new();
    let text = ron::ser::to_string_pretty(settings, pretty).map_err(io::Error::other)?;
    if let Some(folder) = file.parent() {
        fs::create_dir_all(folder)?;
    }
    let beside = file.with_extension("new");
    fs::write(&beside, format!("{text}\n"))?;
    fs::rename(&beside, file)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::gui::settings::TextSize;
    use crate::gui::theme::Colours;
    use crate::gui::view::System;

    /// A folder of this test alone, empty.
    fn folder(name: &str) -> PathBuf {
        let process = std::process::id();
        let folder = std::env::temp_dir().join(format!("coldbench-settings-{name}-{process}"));
        // It may be there from a process of the same number.
        let _absent = fs::remove_dir_all(&folder);
        folder
    }

    fn chosen() -> Settings {
        Settings {
            units: System::Metric,
            gauge_scale: None,
            colours: Colours::Wall,
            text: TextSize::try_from(150).expect("a size to choose"),
            ..Settings::default()
        }
    }

    #[test]
    fn what_was_chosen_is_found_again() {
        let folder = folder("again");
        let mut settings_file = SettingsFile::in_folder(&folder);
        assert_eq!(
            (settings_file.kept(), settings_file.trouble.as_ref()),
            (Settings::default(), None)
        );
        assert!(
            !folder.exists(),
            "nothing is written before something is chosen"
        );
        settings_file.keep(chosen());
        assert_eq!(settings_file.trouble, None);
        let again = SettingsFile::in_folder(&folder);
        assert_eq!((again.kept(), again.trouble), (chosen(), None));
        fs::remove_dir_all(&folder).expect("it was made here");
    }

    #[test]
    fn a_bad_file_is_told_of_with_its_place_and_left_until_something_is_changed() {
        let folder = folder("bad");
        fs::create_dir_all(&folder).expect("a passing folder");
        let file = folder.join(NAME);
        let bad = "(version: 1, language: English, units: Metrik,\n \
                   gauge_scale: Some(\"R-22\"), colours: Light, text: 110)";
        fs::write(&file, bad).expect("a passing file");
        let mut settings_file = SettingsFile::in_folder(&folder);
        assert_eq!(settings_file.kept(), Settings::default());
        let told = settings_file
            .trouble
            .clone()
            .expect("it is told")
            .to_string();
        assert!(
            told.contains(":1:40: error:") && told.contains("Metrik"),
            "{told}"
        );
        assert!(
            told.contains("found 110"),
            "all that is wrong at once: {told}"
        );
        settings_file.keep(Settings::default());
        assert_eq!(fs::read_to_string(&file).expect("it is there"), bad);
        settings_file.keep(chosen());
        assert_eq!(settings_file.trouble, None);
        assert_eq!(SettingsFile::in_folder(&folder).kept(), chosen());
        fs::remove_dir_all(&folder).expect("it was made here");
    }

    #[test]
    fn another_version_an_unknown_field_and_an_unknown_refrigerant_are_refused() {
        let told = |text: &str| {
            let wrong = parse("settings.ron", text.as_bytes()).expect_err("it is wrong");
            let told: Vec<String> = wrong.iter().map(ToString::to_string).collect();
            told.join("\n")
        };
        let rest = "language: Spanish, units: Metric, colours: Dark, text: 100";
        let later = told(&format!("(version: 2, gauge_scale: None, {rest})"));
        assert!(
            later.contains("version 2 of this format is not known"),
            "{later}"
        );
        let more = told(&format!(
            "(version: 1, gauge_scale: None, {rest}, sound: true)"
        ));
        assert!(more.contains("sound"), "{more}");
        let unknown = told(&format!(
            "(version: 1, gauge_scale: Some(\"R-23\"), {rest})"
        ));
        assert!(
            unknown.contains("there is no refrigerant \"R-23\""),
            "{unknown}"
        );
    }

    #[test]
    fn a_place_that_cannot_be_written_is_told_of_and_stops_nobody() {
        let folder = folder("blocked");
        fs::write(&folder, "a file where the folder should be").expect("a passing file");
        let mut settings_file = SettingsFile::in_folder(&folder);
        settings_file.keep(chosen());
        let told = settings_file
            .trouble
            .clone()
            .expect("it is told")
            .to_string();
        assert!(told.contains("cannot be"), "{told}");
        assert_eq!(settings_file.kept(), chosen());
        fs::remove_file(&folder).expect("it was made here");
    }
}

//! One line of a journal after its head: when, how the physics stood, what.

use crate::words::Action;
use serde::Serialize;
use std::fmt;

/// What a line of the journal says.
#[derive(Debug, Clone, PartialEq)]
pub enum JournalEntry {
    /// An action, written before it takes effect.
    Do(Action),
    /// The action on the line before was refused, and why.
    Refused(String),
    /// A simulated minute is over.
    Mark,
    /// The job was put aside, to be gone on with.
    Aside,
    /// The journal was taken up again after it had been cut.
    Resumed,
    /// The end: nothing follows.
    Closed,
    /// The end of a job that was left as it stood: nothing follows.
    Left,
}

/// A line of the journal after its head, without its chain.
#[derive(Debug, Clone, PartialEq)]
pub struct JournalLine {
    /// The tick at which it was written.
    pub tick: u64,
    /// The digest of the job at that moment; of an action: before it took effect.
    pub digest: u64,
    /// What it says.
    pub entry: JournalEntry,
}

impl fmt::Display for JournalLine {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{:>8}  {:016x}  {}", self.tick, self.digest, self.entry)
    }
}

impl fmt::Display for JournalEntry {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Do(action) => write!(f, "do {}", in_ron(action)),
            Self::Refused(why) => write!(f, "refused {}", in_ron(why)),
            Self::Mark => f.write_str("mark"),
            Self::Aside => f.write_str("aside"),
            Self::Resumed => f.write_str("resumed"),
            Self::Closed => f.write_str("closed"),
            Self::Left => f.write_str("left"),
        }
    }
}

/// One line of RON: its strings escape line ends.
pub(super) fn in_ron<T: Serialize + ?Sized>(value: &T) -> String {
    ron::to_string(value).expect("plain data can always be written in RON")
}

impl JournalLine {
    /// From its text; else what is wrong with it.
    pub(super) fn parse(text: &str) -> Result<Self, String> {
        let mut fields = text.trim_start().splitn(3, "  ");
        let mut field = || {
            fields
                .next()
                .ok_or("here must stand tick, digest and entry")
        };
        let tick = field()?;
        let digest = field()?;
        Ok(Self {
            tick: tick
                .parse()
                .map_err(|e| format!("`{tick}` is no tick: {e}"))?,
            digest: u64::from_str_radix(digest, 16)
                .map_err(|e| format!("`{digest}` is no digest: {e}"))?,
            entry: JournalEntry::parse(field()?)?,
        })
    }
}

impl JournalEntry {
    /// Whether nothing follows it.
    pub const fn is_last(&self) -> bool {
        matches!(self, Self::Closed | Self::Left)
    }

    /// From its text; else what is wrong with it.
    pub(super) fn parse(text: &str) -> Result<Self, String> {
        let (verb, rest) = text.split_once(' ').unwrap_or((text, ""));
        match (verb, rest) {
            ("do", action) => ron::from_str(action)
                .map(Self::Do)
                .map_err(|e| format!("`{action}` is no action: {}", e.code)),
            ("refused", why) => ron::from_str(why)
                .map(Self::Refused)
                .map_err(|e| format!("`{why}` is no reason: {}", e.code)),
            ("mark", "") => Ok(Self::Mark),
            ("aside", "") => Ok(Self::Aside),
            ("resumed", "") => Ok(Self::Resumed),
            ("closed", "") => Ok(Self::Closed),
            ("left", "") => Ok(Self::Left),
            _ => Err(format!("`{text}` is no entry of a journal")),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::kit::nitrogen;
    use crate::units::{Fraction, GaugePressure, Torque};
    use crate::words::{
        Arrow, Diagnosis, DisconnectMove, Hose, HoseEnd, Joint, Level, Line as Pipe, SheetField,
        Spot, ThermostatCall,
    };

    #[test]
    fn an_action_comes_back_from_its_text_to_the_last_bit() {
        let third = 1.0 / 3.0;
        let joint = Joint::DrierInlet;
        let actions = [
            Action::Protect(true),
            Action::Thermostat(ThermostatCall::Cool),
            Action::Disconnect(DisconnectMove::LockAndTag),
            Action::VerifyDead,
            Action::Stem {
                line: Pipe::Suction,
                open: Fraction::clamped(0.1 + 0.2),
            },
            Action::Connect {
                hose: Hose::Centre,
                to: HoseEnd::OpenAir,
            },
            Action::of(nitrogen::Action::SetRegulator(GaugePressure::from_psig(
                150.0,
            ))),
            Action::MakeUp {
                joint,
                torque: Torque::from_foot_pounds(third),
            },
            Action::Sniff(Spot::Joint(joint)),
            Action::FitDrier(Arrow::TowardOutdoor),
            Action::Write {
                field: SheetField::Vacuum,
                value: Level::Microns(1e-310 * third),
            },
            Action::Write {
                field: SheetField::Vacuum,
                value: Level::Microns(f64::NEG_INFINITY),
            },
            Action::Write {
                field: SheetField::Vacuum,
                value: Level::Plain(-0.0),
            },
            Action::Diagnose(Diagnosis {
                fault: None,
                at: Some(Spot::IndoorCoil),
            }),
            Action::HandBack,
        ];
        for action in actions {
            let entry = JournalEntry::Do(action);
            assert_eq!(JournalEntry::parse(&entry.to_string()), Ok(entry));
        }
    }

    #[test]
    fn not_a_number_comes_back_as_such() {
        let action = Action::Write {
            field: SheetField::Vacuum,
            value: Level::Plain(f64::NAN),
        };
        let text = JournalEntry::Do(action).to_string();
        let again = JournalEntry::parse(&text).unwrap();
        assert_eq!(again.to_string(), text);
    }

    #[test]
    fn a_line_comes_back_from_its_text() {
        let line = JournalLine {
            tick: 731,
            digest: 0xfe,
            entry: JournalEntry::Refused("two  blanks, a \"quote\",\na new line".to_owned()),
        };
        assert!(!line.to_string().contains('\n'));
        assert_eq!(JournalLine::parse(&line.to_string()), Ok(line));
        for wrong in [
            "",
            "7",
            "7  0",
            "x  0  mark",
            "7  0  sing",
            "7  0  mark 2",
            "7  0  do Sing",
        ] {
            assert!(JournalLine::parse(wrong).is_err(), "{wrong}");
        }
    }
}

//! One value from outside with ours beside it.

/// Where the value comes from that is asked of a figure.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Class {
    /// It stands in a source outside the project.
    Published,
    /// It lies on a published curve, fit or map, computed from the published coefficients.
    Curve,
    /// It is computed from a published law or by a reference library.
    Derived,
    /// The trade's usual figure, without a source; or a value from memory.
    CommonPractice,
    /// The program against itself: a copy of a table, a finer step, another weather.
    SelfCheck,
}

impl Class {
    /// Every class, in the order of their weight.
    pub const ALL: [Self; 5] = [
        Self::Published,
        Self::Curve,
        Self::Derived,
        Self::CommonPractice,
        Self::SelfCheck,
    ];

    /// Its name.
    pub const fn name(self) -> &'static str {
        match self {
            Self::Published => "published",
            Self::Curve => "published curve",
            Self::Derived => "derived",
            Self::CommonPractice => "common practice",
            Self::SelfCheck => "self-check",
        }
    }

    /// What it says of a value.
    pub const fn meaning(self) -> &'static str {
        match self {
            Self::Published => "the value stands in a source outside the project",
            Self::Curve => {
                "the value lies on a published curve, fit or map, computed from its coefficients"
            }
            Self::Derived => "computed from a published law or by a reference library",
            Self::CommonPractice => {
                "the trade's usual figure without a source, or a value from memory"
            }
            Self::SelfCheck => {
                "the program against itself: a copy of a table, a finer step, another weather"
            }
        }
    }
}

/// What is asked of a figure.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Asked {
    /// A published value, met within a tolerance either way.
    Near {
        /// What is published.
        published: f64,
        /// How far off it may be.
        tolerance: f64,
    },
    /// A range, both ends in it.
    Within {
        /// The least.
        least: f64,
        /// The most.
        most: f64,
    },
    /// No less than this.
    AtLeast(f64),
    /// No more than this.
    AtMost(f64),
}

/// One published value with ours beside it.
#[derive(Debug, Clone, PartialEq)]
pub struct Figure {
    /// What is compared, and where.
    pub what: String,
    /// Its class, where it is not that of its source.
    pub class: Option<Class>,
    /// The unit of its values.
    pub unit: &'static str,
    /// What is asked.
    pub asked: Asked,
    /// What the model gives.
    pub ours: f64,
}

impl Figure {
    /// A value that must come within `tolerance` of what is published.
    pub fn near(
        what: impl Into<String>,
        unit: &'static str,
        published: f64,
        tolerance: f64,
        ours: f64,
    ) -> Self {
        let asked = Asked::Near {
            published,
            tolerance,
        };
        Self::asked(what, unit, asked, ours)
    }

    /// A value that must lie between two ends.
    pub fn within(
        what: impl Into<String>,
        unit: &'static str,
        (least, most): (f64, f64),
        ours: f64,
    ) -> Self {
        Self::asked(what, unit, Asked::Within { least, most }, ours)
    }

    /// A value and what is asked of it.
    pub fn asked(what: impl Into<String>, unit: &'static str, asked: Asked, ours: f64) -> Self {
        let what = what.into();
        Self {
            what,
            class: None,
            unit,
            asked,
            ours,
        }
    }

    /// The same of another class than its source.
    pub fn of_class(mut self, class: Class) -> Self {
        self.class = Some(class);
        self
    }

    /// How far it lies outside what is asked; 0 when it is met, infinite when it is no number.
    pub fn miss(&self) -> f64 {
        if self.ours.is_nan() {
            return f64::INFINITY;
        }
        let miss = match self.asked {
            Asked::Near {
                published,
                tolerance,
            } => (self.ours - published).abs() - tolerance,
            Asked::Within { least, most } => (least - self.ours).max(self.ours - most),
            Asked::AtLeast(least) => least - self.ours,
            Asked::AtMost(most) => self.ours - most,
        };
        miss.max(0.0)
    }

    /// Whether it is met.
    pub fn is_met(&self) -> bool {
        self.miss() <= 0.0
    }

    /// What is asked, in words: `95 ± 5`, `68 to 76`, `at least 0.2`.
    pub fn asked_text(&self) -> String {
        let text = |value| number(value);
        match self.asked {
            Asked::Near {
                published,
                tolerance,
            } => format!("{} ± {}", text(published), text(tolerance)),
            Asked::Within { least, most } => format!("{} to {}", text(least), text(most)),
            Asked::AtLeast(least) => format!("at least {}", text(least)),
            Asked::AtMost(most) => format!("at most {}", text(most)),
        }
    }

    /// What the model gives, with as many digits as tell something.
    pub fn ours_text(&self) -> String {
        number(self.ours)
    }

    /// `met`, or by how much it is missed.
    pub fn verdict(&self) -> String {
        if self.is_met() {
            "met".to_owned()
        } else {
            format!("missed by {}", number(self.miss()))
        }
    }
}

/// A number in four digits that count, without a tail of noughts.
fn number(value: f64) -> String {
    let size = value.abs();
    if size != 0.0 && size < 1e-3 {
        return format!("{value:.2e}");
    }
    let digits = match size {
        s if s >= 1000.0 => 0,
        s if s >= 100.0 => 1,
        s if s >= 10.0 => 2,
        s if s >= 1.0 => 3,
        _ => 4,
    };
    let text = format!("{value:.digits$}");
    if !text.contains('.') {
        return text;
    }
    let text = text.trim_end_matches('0').trim_end_matches('.');
    if text == "-0" {
        "0".to_owned()
    } else {
        text.to_owned()
    }
}

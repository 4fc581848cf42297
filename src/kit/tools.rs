//! Every tool that the centre hose can be put on: one line each in [`tools!`].

use super::plain::read_rest;
use super::tool::{After, Before, Bench, Blank, Face, Follow, Refused, Size, Tool, Word};
use super::{FindingRow, NitrogenSet, RecoveryMachine, RefrigerantCylinder, Stage, VacuumPump};
use super::{nitrogen, recovery, refrigerant_cylinder, vacuum_pump};
use crate::plant::network::ElementId;
use crate::units::quantity::Shown;
use serde::de::VariantAccess;
use serde::{Deserialize, Serialize};
use strum::{EnumString, IntoEnumIterator, VariantArray, VariantNames};

/// Ties the tools together: `module: Name = State`. The order is that of the network and of
/// digests, so a new tool goes to the end.
macro_rules! tools {
    ($($module:ident: $Name:ident = $State:ty;)+) => {
        /// The tools as they stand.
        #[derive(Debug, Clone)]
        pub struct Tools {
            $(#[doc = concat!("See [`", stringify!($module), "`].")] pub $module: $State,)+
        }

        /// A tool by name.
        #[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
        #[derive(VariantArray, VariantNames, EnumString)]
        pub enum Name {
            $(#[doc = concat!("See [`", stringify!($module), "`].")] $Name,)+
        }

        impl Name {
            /// The key of its text.
            pub const fn key(self) -> &'static str {
                match self { $(Self::$Name => concat!(stringify!($module), "-name"),)+ }
            }

            /// Only some carts have it: a scenario must name it among its tools.
            pub const fn is_extra(self) -> bool {
                match self { $(Self::$Name => <$State as Tool>::IS_EXTRA,)+ }
            }

            /// The key of the text of its switch, for tools that have one.
            pub const fn switch_key(self) -> &'static str {
                match self { $(Self::$Name => concat!(stringify!($module), "-switch"),)+ }
            }
        }

        tools!(@each "What can be done with a tool." Action, PartialEq;
            $($module $Name)+);
        tools!(@each "What can be read on a tool." Reading, PartialEq, Eq, PartialOrd, Ord;
            $($module $Name)+);
        tools!(@each "What done with a tool a rubric can ask for." Milestone, PartialEq, Eq;
            $($module $Name)+);
        tools!(@each "What can be seen of a tool." Status, PartialEq, Eq, PartialOrd, Ord;
            $($module $Name)+);
        tools!(@each "What the watch can note of a tool." Finding, PartialEq, Eq, PartialOrd, Ord;
            $($module $Name)+);
        tools!(@all Reading; $($module $Name)+);
        tools!(@all Milestone; $($module $Name)+);
        tools!(@all Status; $($module $Name)+);
        tools!(@all Finding; $($module $Name)+);

        $(
            impl From<$module::Action> for Action {
                fn from(action: $module::Action) -> Self {
                    Self::$Name(action)
                }
            }
        )+

        impl Action {
            /// One of each variant, to hold the texts against.
            pub fn samples() -> impl Iterator<Item = Self> {
                std::iter::empty() $(.chain($module::Action::iter().map(Self::$Name)))+
            }

            /// What fills the blank of its text.
            pub const fn blank(self) -> Option<Blank> {
                match self { $(Self::$Name(action) => action.blank(),)+ }
            }

            /// The tool that it is done with.
            pub const fn tool(self) -> Name {
                match self { $(Self::$Name(_) => Name::$Name,)+ }
            }

            /// The milestone that it reaches.
            pub fn reaches(self) -> Option<Milestone> {
                match self {
                    $(Self::$Name(action) => <$State>::reaches(action).map(Milestone::$Name),)+
                }
            }

            /// The names of the tools with which something can be done.
            pub(crate) fn words() -> impl Iterator<Item = &'static str> {
                [$(stringify!($Name)),+].into_iter()
            }
        }

        impl Reading {
            /// The tool that it is of.
            pub const fn tool(self) -> Name {
                match self { $(Self::$Name(_) => Name::$Name,)+ }
            }

            /// What it measures.
            pub fn face(self) -> Face {
                match self { $(Self::$Name(reading) => <$State>::face(reading),)+ }
            }
        }

        impl Milestone {
            /// Where in the work it belongs.
            pub fn stage(self) -> Stage {
                match self { $(Self::$Name(milestone) => <$State>::stage(milestone),)+ }
            }
        }

        impl Finding {
            /// What is fixed of it.
            pub fn row(self) -> FindingRow {
                match self { $(Self::$Name(finding) => <$State>::row(finding),)+ }
            }

            /// The tool that it is of.
            pub const fn tool(self) -> Name {
                match self { $(Self::$Name(_) => Name::$Name,)+ }
            }
        }

        impl Tools {
            /// Sets them all up.
            pub fn set_up(bench: &mut Bench<'_>) -> Self {
                let extra = bench.load.extra;
                Self {
                    $($module: {
                        bench.is_extra = extra.contains(&Name::$Name);
                        <$State>::set_up(bench)
                    },)+
                }
            }

            /// Whether a tool was brought.
            pub fn has(&self, name: Name) -> bool {
                match name { $(Name::$Name => self.$module.is_there(),)+ }
            }

            /// Sets what is open for the next step; `on`: what the centre hose is on.
            pub fn before(&self, on: Option<Name>, at: &mut Before<'_>) {
                $(
                    at.is_on = on == Some(Name::$Name);
                    self.$module.before(at);
                )+
            }

            /// Takes in what flowed in a step.
            pub fn after(&mut self, at: &After<'_>) {
                $(self.$module.after(at);)+
            }

            /// Lets gauges and scales follow for a tick.
            pub fn follow(&mut self, at: &Follow<'_>) {
                $(self.$module.follow(at);)+
            }

            /// Says what of a step is worth noting.
            pub fn watch(&self, at: &After<'_>, note: &mut dyn FnMut(Finding, Size)) {
                $(self.$module.watch(at, &mut |one, size| note(Finding::$Name(one), size));)+
            }

            /// Where refrigerant leaves a tool to the air.
            pub fn outlets(&self) -> impl Iterator<Item = ElementId> {
                [$(self.$module.outlet()),+].into_iter().flatten()
            }

            /// The tools that are switched on and could light what burns.
            pub fn that_could_ignite(&self) -> impl Iterator<Item = Name> {
                [$(self.$module.could_ignite().then_some(Name::$Name)),+].into_iter().flatten()
            }

            /// Does an action, or refuses it and changes nothing.
            pub fn act(&mut self, action: Action) -> Result<(), Refused> {
                match action { $(Action::$Name(action) => self.$module.act(action),)+ }
            }

            /// What is shown now.
            pub fn shown(&self, reading: Reading) -> Shown {
                match reading { $(Reading::$Name(reading) => self.$module.shown(reading),)+ }
            }

            /// Where the needle of a reading stands as a share of its scale, and the ends of that
            /// scale, Pa gauge; `None` for a reading without a needle.
            pub fn needle(&self, reading: Reading) -> Option<(f64, f64, f64)> {
                match reading { $(Reading::$Name(reading) => self.$module.needle(reading),)+ }
            }

            /// Whether something can be seen to be so; `on`: what the centre hose is on.
            pub fn is(&self, status: Status, on: Option<Name>) -> bool {
                match status {
                    $(Status::$Name(status) => self.$module.is(status, on == Some(Name::$Name)),)+
                }
            }

            /// Whether a finding could come, as its tool stands.
            pub fn looms(&self, finding: Finding) -> bool {
                match finding { $(Finding::$Name(finding) => self.$module.looms(finding),)+ }
            }

            /// Every number of the state, for digests.
            pub fn visit_state(&self, visit: &mut dyn FnMut(f64)) {
                $(self.$module.visit_state(visit);)+
            }
        }
    };

    // An enum with a variant for each tool, the key of its text, and how it is read from a file.
    (@each $doc:literal $Kind:ident, $($Derived:ident),+; $($module:ident $Name:ident)+) => {
        #[doc = $doc]
        #[derive(Debug, Clone, Copy, Serialize, Deserialize, $($Derived),+)]
        pub enum $Kind {
            $(#[doc = concat!("See [`", stringify!($module), "`].")] $Name($module::$Kind),)+
        }

        impl $Kind {
            /// The key of its text.
            pub fn key(self) -> &'static str {
                match self { $(Self::$Name(one) => one.into(),)+ }
            }

            /// Reads what follows the name of a tool; `word` is its first word, if known already.
            pub(crate) fn read<'de, A: VariantAccess<'de>>(
                tool: Name,
                word: Option<&'static str>,
                rest: A,
            ) -> Result<Self, A::Error> {
                match tool { $(Name::$Name => read_rest(word, rest).map(Self::$Name),)+ }
            }
        }
    };

    // Every value of such an enum, tool by tool.
    (@all $Kind:ident; $($module:ident $Name:ident)+) => {
        impl $Kind {
            /// How many there are.
            pub const COUNT: usize = 0 $(+ $module::$Kind::VARIANTS.len())+;

            /// Every one, tool by tool.
            pub fn all() -> impl Iterator<Item = Self> {
                let none = std::iter::empty();
                none $(.chain($module::$Kind::VARIANTS.iter().map(|&one| Self::$Name(one))))+
            }

            /// Its place among all.
            pub fn index(self) -> usize {
                let before = 0;
                $(
                    if let Self::$Name(one) = self {
                        return before + Word::index(one);
                    }
                    let before = before + $module::$Kind::VARIANTS.len();
                )+
                before
            }

            /// The names of the tools that have any.
            pub(crate) fn words() -> impl Iterator<Item = &'static str> {
                let all = [$((stringify!($Name), $module::$Kind::VARIANTS.len())),+];
                all.into_iter().filter(|(_, count)| *count > 0).map(|(name, _)| name)
            }
        }
    };
}

tools! {
    vacuum_pump: VacuumPump = VacuumPump;
    nitrogen: Nitrogen = NitrogenSet;
    refrigerant_cylinder: RefrigerantCylinder = RefrigerantCylinder;
    recovery: Recovery = Option<RecoveryMachine>;
}

impl Name {
    /// The names of all tools, as files write them.
    pub(crate) fn words() -> impl Iterator<Item = &'static str> {
        <Self as VariantNames>::VARIANTS.iter().copied()
    }

    /// A tool that a file names alone.
    pub(crate) fn read<'de, A: VariantAccess<'de>>(
        tool: Self,
        _: Option<&'static str>,
        rest: A,
    ) -> Result<Self, A::Error> {
        rest.unit_variant().map(|()| tool)
    }

    /// The tool that a file names so.
    pub(crate) fn of_word(word: &str) -> Option<Self> {
        word.parse().ok()
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_word_of_a_tool_has_a_place_of_its_own() {
        assert!(Reading::all().map(Reading::index).eq(0..Reading::COUNT));
        assert!(
            Milestone::all()
                .map(Milestone::index)
                .eq(0..Milestone::COUNT)
        );
        assert!(Status::all().map(Status::index).eq(0..Status::COUNT));
        assert!(Finding::all().map(Finding::index).eq(0..Finding::COUNT));
    }
}

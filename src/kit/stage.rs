//! The order of the work.

/// A stretch of the work, in the order in which the trade does it. A part that a job does not ask
/// for is passed over. Common practice, no source.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Stage {
    /// Glasses, gloves, a look.
    Arrive,
    /// Hoses on and purged.
    HookUp,
    /// Pressures at rest.
    Standing,
    /// Running, until it is steady.
    Run,
    /// Readings and what is worked out from them.
    Measure,
    /// Where it gets out.
    Search,
    /// What is wrong.
    Diagnose,
    /// The charge behind the valves, or in the recovery cylinder.
    PumpDown,
    /// Dead and locked.
    LockOut,
    /// The circuit opened.
    Open,
    /// The part replaced, the flare renewed.
    Part,
    /// All joints made up.
    Close,
    /// Nitrogen, detector, bubbles.
    Test,
    /// The vacuum and its decay.
    Evacuate,
    /// The charge let back.
    LetBack,
    /// Run again, proved and trimmed.
    Prove,
    /// Written down.
    Record,
    /// Hoses off, caps on, handed back.
    Leave,
}

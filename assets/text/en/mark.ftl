# The evidence of marks.

# Milestones: things done.
mark-front-seated = front-seated { $valve }
mark-opened-valve = opened { $valve }
mark-broke = opened { $joint }
mark-broke-any = opened a joint
mark-made-up = made up { $joint }
mark-renewed-flare = renewed { $joint }
mark-sniffed = held the detector at { $spot }
mark-wetted = put bubbles on { $spot }
mark-purged = purged { $hose }
mark-drier-out = took the old drier out
mark-drier-in = fitted the new drier
mark-changed-filter = changed the air filter
mark-cooling-called = called for cooling
mark-locked-out = locked the disconnect out
mark-verified-dead = proved that nothing is live
mark-ventilated = ventilated the work
mark-diagnosed = wrote a diagnosis down
mark-handed-back = handed the job back

# States that can be seen, so and not so.
mark-compressor-runs = compressor running
mark-compressor-stands = compressor not running
mark-gauge-away = micron gauge away from the pump
mark-gauge-not-away = micron gauge not away from the pump
mark-gauge-at-unit = micron gauge at the unit
mark-gauge-not-at-unit = micron gauge not at a port of the unit
mark-hand-valves-open = both hand valves open
mark-hand-valves-not-open = not both hand valves open
mark-charge-isolated = charge shut in by the service valves
mark-charge-not-isolated = charge not shut in by the service valves
mark-is-locked-out = disconnect locked out
mark-is-not-locked-out = disconnect not locked out
mark-is-ventilated = work ventilated
mark-is-not-ventilated = work not ventilated
mark-gauge-on-cart = micron gauge on the cart
mark-gauge-at-pump = micron gauge at the pump
mark-gauge-at-manifold = micron gauge at the manifold
mark-gauge-at-suction-port = micron gauge at the suction port
mark-gauge-at-liquid-port = micron gauge at the liquid port

# What was seen of a condition.
mark-seen = { $reading } { $shown }
mark-seen-not = { $seen }, not { $asked }

# Never.
mark-nothing-noted = nothing of the kind was noted
mark-and-more = and { $count } more
mark-let-pass-highest = { $amount } at the most, { $limit } let pass
mark-limit-highest = { $amount } at the most, { $limit } is the limit
mark-let-pass-sum = { $amount } in all, { $limit } let pass
mark-limit-sum = { $amount } in all, { $limit } is the limit

# Order and done.
mark-only-then = only then: { $what }
mark-never = never: { $what }
mark-never-nor = never: { $what }, nor { $other }
mark-done-with = { $what } with { $seen }
mark-done-but = { $what }, but { $failed }
mark-done-but-never = { $what }, but never: { $after }
mark-done-too-late = { $what } only when this was past: { $before }
mark-done-not-since = { $what }, but not since: { $after }

# Hold.
mark-lasted = { $lasted } from { $from }: { $seen }
mark-at-its-end = at its end { $seen }
mark-longest-then-moved = longest { $lasted }, from { $from }, then it had moved too far: { $seen }
mark-longest-then = longest { $lasted }, from { $from }, then { $failed }
mark-longest-then-next = longest { $lasted }, from { $from }, then the next step was begun
mark-longest-then-end = longest { $lasted }, from { $from }, then the job ended
mark-never-so = never so
mark-nearest = never so; nearest: { $failed }
mark-nearest-unmeasured = never so; nearest: no reading that is asked for is measured so

# The state at the hand-back.
mark-end-charge-share = charge as a share of what belongs in
mark-end-superheat = superheat off target
mark-end-subcooling = subcooling
mark-end-permanent-gas = air and nitrogen left inside
mark-end-water = water left inside
mark-end-drier-water = water in the filter drier
mark-end-lost = refrigerant lost to the air
mark-end-leak = leak in grams a year
mark-end-drier-drop = temperature drop across the drier
mark-end-not-run = { $state } cannot be judged: the finished unit was not run for 10 min
mark-end-unknown = { $state } cannot be told: { $why }
mark-end-no-superheat = no vapour at the suction valve, or no target in the chart
mark-end-no-subcooling = no liquid at the liquid valve
mark-end-no-value = no value
mark-end-as-asked = { $state }: { $amount }, as asked { $bound }
mark-end-not = { $state }: { $amount }, not { $bound }

# The job sheet.
mark-sheet-blank = { $field }: left blank
mark-sheet-no-reading = { $field }: wrote { $wrote }, but the instruments gave nothing for it
mark-sheet-off-by = { $field }: wrote { $wrote }, the instruments gave { $given }: off by { $off }, { $within } allowed
mark-sheet-other-kind = { $field }: wrote { $wrote }, the instruments gave { $given }
mark-no-diagnosis = no diagnosis was written
mark-diagnosis = wrote: { $diagnosis }
mark-diagnosis-wrong = wrote: { $diagnosis }; it was: { $right }

# In time; judgement.
mark-not-handed-back = not handed back; { $allowed } allowed
mark-handed-back-after = handed back after { $after }; { $allowed } allowed
mark-for-the-assessor = for the assessor: { $question }

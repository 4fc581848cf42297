# What the coach says beside its thoughts: what is asked for, what happened, what it costs.

# What is asked for.
coach-asked = Asked for here: { $goal }.
coach-goal-broke = { $place } open
coach-goal-made-up = { $place } made up to its torque
coach-goal-renewed = a new face at { $place }
coach-goal-sniffed = the detector held at { $place }
coach-goal-wetted = bubble solution on { $place }
coach-goal-liquid-shut = the liquid valve on its front seat
coach-goal-suction-shut = the suction valve on its front seat
coach-goal-liquid-open = the liquid valve off its seat
coach-goal-suction-open = the suction valve off its seat
coach-goal-open = the circuit open
coach-goal-drier-out = the old drier out
coach-goal-drier-in = a new drier in the line, arrow with the flow
coach-goal-filter = a clean air filter
coach-goal-purged-low = the low hose purged
coach-goal-purged-high = the high hose purged
coach-goal-purged-centre = the centre hose purged
coach-goal-cooling = cooling called for
coach-goal-locked = lock and tag on the disconnect
coach-goal-dead = no voltage, and the proof of it
coach-goal-ventilated = the work ventilated
coach-goal-diagnosed = a diagnosis on the sheet
coach-goal-handed-back = the job handed back
coach-goal-protected = glasses and gloves worn for all work on the circuit
coach-goal-not-live = lock and tag on the disconnect, and no voltage, before hands go in
coach-goal-no-pressure = no pressure behind a joint that is opened
coach-goal-arrow = the arrow of the drier with the flow
coach-goal-none-open = no end of a pipe open to the air
coach-goal-torque = each flare that was worked on at the torque of its size
coach-goal-gauge-isolated = the micron gauge isolated from the circuit
coach-goal-caps = caps on both stems and both ports
coach-goal-back-seated = both service valves back-seated
coach-goal-nothing-left = no hose, tool or gauge on the unit
coach-goal-hand-back = nothing more before the hand-back
coach-a-joint = a joint
coach-twice = { $goal }, a second time
coach-then = { $first }, then { $goal }
coach-only-then = { $goal }, and only then { $after }
coach-with = { $goal }; with { $conditions }
coach-let-pass = { $goal }; let pass: { $limit }
coach-hold = { $conditions }, for { $lasting }; { $stands }
coach-hold-steady = { $conditions }, moving by no more than { $within }, for { $lasting }; { $stands }
coach-so-for = so for { $span } now
coach-not-so = now: { $found }
coach-bubbles = bubbles at { $place }
coach-below = below { $level }
coach-above = above { $level }
coach-between = between { $low } and { $high }
coach-run-then = ten minutes of running without a stop, then { $goal }
coach-on-sheet = { $field } on the sheet, within { $within } of what the instruments give at that moment
coach-on-sheet-off = { $field } on the sheet, within { $within } of what the instruments give at that moment; what stands there is further off

# States at the hand-back.
coach-state-charge = charge, as a share of what belongs in,
coach-state-superheat = superheat less its target
coach-state-subcooling = subcooling
coach-state-gas = air and nitrogen inside
coach-state-water = water inside
coach-state-drier-water = water in the drier
coach-state-lost = refrigerant lost
coach-state-leak = leak, grams a year,
coach-state-drop = temperature drop across the drier

# The diagnosis and its signs.
coach-one-fault = the one fault that explains all signs; { $signs }
coach-one-fault-placed = the one fault that explains all signs, and where it sits; { $signs }
coach-other-fault = another fault than the one on the sheet, which does not explain all signs; { $signs }
coach-other-fault-placed = another fault or place than on the sheet, which does not explain all signs; { $signs }
coach-signs-missing = superheat, its target and subcooling belong to them
coach-signs-starved-held = much superheat with much subcooling: the coil starves, the liquid is held back
coach-signs-starved = much superheat with usual subcooling: the coil starves although liquid is there
coach-signs-starved-missing = much superheat with little subcooling: the coil starves, liquid is missing
coach-signs-overfull = little superheat with much subcooling: more is in than belongs in
coach-signs-flooded = little superheat without more subcooling: too much comes through, or too little air takes it up
coach-signs-condenser = usual superheat with unusual subcooling: look at the condenser's side
coach-signs-usual = superheat and subcooling are usual: look at what comes and goes, or at the air

# Why it matters.
coach-why-released = It is gone into the air and must be bought again.
coach-why-air-drawn-in = Air brings water and does not condense: it takes another evacuation.
coach-why-opened-under-pressure = Liquid sprays and burns cold; what is behind is lost.
coach-why-stood-open = Oil and drier drink from the air all the while.
coach-why-ran-in-vacuum = Air comes in through the least leak, and the motor runs hot.
coach-why-ran-without-oil-return = Oil that does not come back is missing at a bearing.
coach-why-energised-in-deep-vacuum = Current jumps where no gas insulates.
coach-why-liquid-to-compressor = Liquid does not compress: it breaks valves and rods.
coach-why-over-nameplate = A coil that was stretched may burst, today or in a year.
coach-why-high-pressure-trip = The switch has saved the compressor. It was not meant to.
coach-why-micron-gauge-over-pressured = A sensor made for a vacuum bears no pressure.
coach-why-worked-live = Somebody else can switch it on. A life has no price.
coach-why-unprotected = A splash of liquid costs an eye. That has no price.
coach-why-over-tightened = A split flare is cut off and made again.
coach-why-joint-left-loose = It will weep, and you will be called back.
coach-why-cap-left-off = The cap is the seal: without it you will be called back.
coach-why-kit-left-on = You will have to come back for it.
coach-why-valve-left-shut = It throttles the circuit: you will be called back.
coach-why-drier-backwards = Against the flow it sheds its filling: it comes out again.
coach-why-ignition-risk = A spark or a flame lights what burns. A life has no price.
coach-why-flammable-air = From its lower limit on, a spark is enough.
coach-why-opened-unpurged = What is left inside burns where it comes out.
coach-why-unventilated = What gets out stays low in the room and gathers.
coach-why-tool-not-rated = A switch or a motor makes the spark.

# Sums on the job sheet.
coach-slip-superheat = Superheat: suction line { $pipe } less saturation { $saturation } at { $pressure } gives { $gives }; you wrote { $wrote }
coach-slip-subcooling = Subcooling: saturation { $saturation } at { $pressure } less liquid line { $pipe } gives { $gives }; you wrote { $wrote }
coach-slip-target = Target superheat: outdoor air { $outdoor } and wet bulb { $bulb } in the chart give { $gives }; you wrote { $wrote }

# The panel.
coach-coach = Coach
coach-ask = Ask for a thought
coach-ask-hint = one question
coach-tell = What would tell?
coach-tell-hint = the principle, and the instrument
coach-reach = What is asked?
coach-reach-hint = the value that is to be reached
coach-clue = Is there a hint?
coach-clue-hint = what the author of this job would say
coach-try-first = try something first
coach-at-risk = At risk: { $amount }.
coach-warms = It warms like { $kilograms } kg of CO₂.
coach-lost-so-far = Lost so far: { $amount }
coach-before-that = Before that ({ $count })
coach-too-late = Too late for ({ $count })

# What a job gives practice in, as the list of jobs tells it.
coach-exercise-measure = measuring
coach-exercise-diagnose = diagnosis
coach-exercise-pump-down = pump-down
coach-exercise-test = pressure test
coach-exercise-evacuate = evacuation
coach-exercise-prove = proving the charge

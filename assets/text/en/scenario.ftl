# The texts of the scenarios that come with the program, word for word as their files have them:
# by these they are found, and tests/text holds each to its file. A changed text needs its change
# here and its new translation. People and places keep their names.

# The bakery counter that sweats.
scenario-clogged_drier-title = The bakery counter that sweats
scenario-clogged_drier-trains = Diagnose a liquid restriction, pump down, replace the filter drier, prove the charge.
scenario-clogged_drier-place = Crumb & Kettle, a bakery shop in Fennick Lane, Harrowby
scenario-clogged_drier-complaint = It runs all day and the counter still sweats. A year ago somebody brazed in a new suction line. The thin pipe by the can-shaped thing feels cold.
scenario-clogged_drier-hint-1 = Suction is low. Is subcooling low too, as when refrigerant is missing?
scenario-clogged_drier-hint-2 = Subcooling is high: the liquid is there, but something holds it back.
scenario-clogged_drier-hint-3 = Clamp a thermometer before and one after the drier.
scenario-clogged_drier-told = Told the customer what was wrong and what to watch
scenario-clogged_drier-question = Could Marta say afterwards what had been done, and why?

# The waiting room that needs topping up.
scenario-leaking_flare-title = The waiting room that needs topping up
scenario-leaking_flare-trains = Find a leak with nitrogen, a trace of refrigerant and bubbles; remake the flare.
scenario-leaking_flare-place = The waiting room of a dental practice in Alder Point
scenario-leaking_flare-complaint = Every other week it cools less. Somebody topped it up twice and gave the nuts at the indoor unit a pull. There is oil on the insulation of the thick pipe.
scenario-leaking_flare-hint-1 = Low suction, high superheat, low subcooling: refrigerant is missing. Where did it go?
scenario-leaking_flare-hint-2 = Oil marks the spot. Hold the detector below the suction flare at the indoor coil.
scenario-leaking_flare-hint-3 = A flare that was pulled tight and still leaks has a bad face: take it apart and look.
scenario-leaking_flare-told = Told the customer why topping up did not help
scenario-leaking_flare-question = Does Tobias know why it was lost, and that it is mended?

# The kitchen that cools by fits and starts.
scenario-wet_circuit-title = The kitchen that cools by fits and starts
scenario-wet_circuit-trains = Know moisture by its coming and going; read a decay; dry a circuit.
scenario-wet_circuit-place = A row house in Millrace Court, Dunmere, half rebuilt
scenario-wet_circuit-complaint = Since the builders moved the pipes it cools for a while, then blows warm, and after a rest it is well again. The pipes hung open in the rain for a week.
scenario-wet_circuit-hint-1 = Watch the low gauge for a quarter of an hour before you judge: does it stay?
scenario-wet_circuit-hint-2 = It falls in steps and comes back after a rest: something freezes and thaws.
scenario-wet_circuit-hint-3 = A decay that rises and levels off is water. Break the vacuum with dry nitrogen, go again.
scenario-wet_circuit-told = Told the customer what open pipes do
scenario-wet_circuit-question = Does Priya know that open pipes must be capped?

# The reading room that was only low.
scenario-undercharge-title = The reading room that was only low
scenario-undercharge-trains = Tell an undercharge by superheat and subcooling, ask why, cure it, charge by weight.
scenario-undercharge-place = The reading room of the parish library in Ostrander
scenario-undercharge-complaint = It used to be chilly in here, now the old gentlemen take their coats off. The young man who came in May said it was only a bit low. He was here in March, too.
scenario-undercharge-hint-1 = A closed circuit uses nothing up. If some is missing, ask where it went.
scenario-undercharge-hint-2 = High superheat with low subcooling: missing. With high subcooling: held back.
scenario-undercharge-hint-3 = The young man always worked at the outdoor unit. Sniff there first, below each flare.
scenario-undercharge-told = Told the customer that it was leaking, not using it up
scenario-undercharge-question = Does Joan know why it was low, and that it will not be?

# The nursery that will not cool.
scenario-flammable_leak-title = The nursery that will not cool
scenario-flammable_leak-trains = Mend a leak of a refrigerant that burns: ventilate, nothing live, purge, rated tools.
scenario-flammable_leak-place = A nursery under the roof in Tarn Hollow
scenario-flammable_leak-complaint = It was put in last year and now it blows lukewarm. There is a greasy spot under the thick pipe where it comes out of the wall, just over the cot. Is it safe?
scenario-flammable_leak-hint-1 = The nameplate names the refrigerant. Look up its class before you open your case.
scenario-flammable_leak-hint-2 = Purge your hoses while nothing is live, and stop the unit before you take them off.
scenario-flammable_leak-hint-3 = At 0 psig the line set is still full of vapour: pull it, break with nitrogen, then open.
scenario-flammable_leak-told = Answered whether it is safe
scenario-flammable_leak-question = Does Ingrid know what leaked, and what it could have done?

# The cheese that sweats.
scenario-cold_room_drier-title = The cheese that sweats
scenario-cold_room_drier-trains = Valves of three positions, pump-down into a receiver, a drier, a charge by weight.
scenario-cold_room_drier-place = The ripening room of a cheese dairy at Nether Wold
scenario-cold_room_drier-complaint = It has not held its temperature since the compressor was changed in the autumn. The thin pipe sweats behind the black can, and only there.
scenario-cold_room_drier-hint-1 = A back-seated valve shows your gauge nothing: crack it off the back seat.
scenario-cold_room_drier-hint-2 = Behind a receiver neither superheat nor subcooling tells the charge: weigh it.
scenario-cold_room_drier-hint-3 = Front-seat the king valve alone: receiver and compressor valves hold the charge.
scenario-cold_room_drier-question = Could Petra say afterwards what had been done, and why?

# Criteria: safety.
scenario-protected = Glasses and gloves for all work on the circuit
scenario-locked = Disconnect locked and tagged, dead proved, before hands go in
scenario-locked-before-broken = Lockout before the circuit is broken

# Criteria: a refrigerant that burns.
scenario-tools-rated = Tools rated for a refrigerant that burns
scenario-ventilated-first = Ventilated before a joint is opened
scenario-ventilated-room = No joint opened in a room that is not ventilated
scenario-nothing-lights-it = Nothing let go beside what could light it
scenario-purged-first = Purged with nitrogen before it is opened
scenario-air-kept = The air of the room kept below a quarter of what burns

# Criteria: hooking up, measuring, diagnosis.
scenario-low-purged = Low hose purged
scenario-high-purged = High hose purged
scenario-standing-noted = Standing pressure noted
scenario-ran-first = Ran 10 minutes before judging
scenario-superheat-right = Superheat worked out right
scenario-subcooling-right = Subcooling worked out right
scenario-target-read = Target superheat read from the chart
scenario-after-drier-noted = Temperature after the drier noted
scenario-suction-noted = Suction pressure noted
scenario-saw-suction-fall = Saw the suction fall while it ran
scenario-rested-it = Rested it and ran it again before judging
scenario-detector-sounded = The detector has sounded
scenario-bubbles-point = Bubbles point at the flare
scenario-leak-looked-for = The leak looked for before refrigerant is put in
scenario-diagnosis-drier = Diagnosis: the drier
scenario-diagnosis-suction-flare = Diagnosis: a leak at the suction flare of the indoor coil
scenario-diagnosis-moisture = Diagnosis: moisture inside
scenario-diagnosis-liquid-flare = Diagnosis: a leak at the flare of the liquid valve
scenario-diagnosis-first = Diagnosis before the circuit is broken

# Criteria: pump-down and opening.
scenario-liquid-first = Liquid valve front-seated before the suction valve
scenario-pumped-down-first = Pumped down by the liquid valve before a joint is opened
scenario-compressor-dead-in-vacuum = Compressor kept dead in a vacuum
scenario-compressor-not-in-vacuum = Compressor not run below 0 psig
scenario-opened-at-zero = Opened at 0 psig
scenario-arrow-with-flow = Arrow of the new drier with the flow
scenario-open-not-long = Circuit open no longer than 15 minutes
scenario-drier-not-spent = The new drier not spent on the air of the place
scenario-new-drier = A new drier, for the old one is full
scenario-clean-filter = A clean filter, so that the coil does not boil below freezing
scenario-new-flare = A new flare was made
scenario-flares-made-up = Flares made up to their torque
scenario-flares-at-torque = Every flare at its torque
scenario-no-flare-cracked = No flare cracked by force

# Criteria: nitrogen and vacuum.
scenario-regulator-used = Nitrogen only through the regulator
scenario-nameplate-kept = Nameplate pressure kept
scenario-nitrogen-held-between = Nitrogen held 10 minutes at 90 to 150 psig
scenario-nitrogen-held = Nitrogen held 10 minutes
scenario-trace-first = A trace of refrigerant before the nitrogen
scenario-flare-still = The new flare still under bubbles at 90 psig or more
scenario-vacuum-decay = Below 500 microns, pump shut off, 10 minutes
scenario-vacuum-decay-dry = A decay that stays below 500 microns for 10 minutes
scenario-vacuum-broken = Vacuum broken with dry nitrogen and pulled again
scenario-vacuum-noted = Vacuum noted
scenario-pump-kept = Vacuum pump kept from pressure
scenario-micron-gauge-kept = Micron gauge kept from pressure

# Criteria: what is handed back.
scenario-superheat-within = Superheat within 5 °F of the chart
scenario-superheat-by-plate = Superheat within 5 °F of the nameplate
scenario-subcooling-by-plate = Subcooling within 3 °F of the nameplate
scenario-charge-right = Charge right to a twentieth
scenario-no-drier-drop = No temperature drop left across the drier
scenario-circuit-tight = Circuit tight
scenario-tight = Tight
scenario-dry = Dry
scenario-no-gas-left = No air or nitrogen left inside
scenario-no-liquid-thrown = No liquid thrown at the compressor
scenario-little-lost = No refrigerant let go beyond what hoses and an opened line set hold
scenario-back-seated = Both valves back on their back seats
scenario-caps-on = Caps on
scenario-nothing-left = Nothing left on the unit
scenario-put-in-recorded = Refrigerant put in is recorded

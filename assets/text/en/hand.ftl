# What can be done to the part that is chosen.

hand-point = Point at a thing on the site, or step to it with the Tab key.
hand-appears-here = What you can do to it appears here.

# Protection and electrics.
hand-protect-on = Put glasses and gloves on
hand-protect-off = Take glasses and gloves off
hand-ventilate = Open the doors, set a fan up
hand-ventilate-off = Take the fan away
hand-thermostat = Set to { $call }
hand-pull-disconnect = Pull the disconnect
hand-lock = Lock and tag it
hand-unlock = Take lock and tag off
hand-insert-disconnect = Put the disconnect in
hand-verify-dead = Discharge the capacitor, verify dead
hand-safety-open = The meter finds { $safety } open.
hand-contactor-hold = Hold the contactor in
hand-contactor-release = Let the contactor go
hand-clamp-meter-on = Put the clamp meter on its lead
hand-clamp-meter-off = Take the clamp meter off
hand-draws = It draws { $amps }.

# Valves and ports.
hand-stem-cap-on = Put the stem cap on
hand-stem-cap-off = Take the stem cap off
hand-front-seat = Front-seat
hand-crack-stem = Crack
hand-back-seat = Back-seat
hand-crack-off-back = Crack off the back seat
hand-stem-turns = stem, quarter turns
hand-turns-open = { $now } of { $most } quarter turns open
hand-turns-hint = On the site: drag round it, turn the wheel over it, or arrow keys.
hand-turn-in = Quarter turn in
hand-turn-out = Quarter turn out
hand-port-cap-on = Put the port cap on
hand-port-cap-off = Take the port cap off
hand-hose-low = low hose (L)
hand-hose-high = high hose (H)
hand-hose-centre = centre hose (C)
hand-put-hose-on = Put the { $hose } on
hand-take-hose-off = Take the { $hose } off
hand-purge-that-hose = Purge the { $hose }
hand-hose-is = The { $hose } is { $end }.
hand-tool-on = Fit the core tool
hand-tool-off = Take the core tool off
hand-tool-open = Open the core tool's valve
hand-tool-shut = Shut the core tool's valve
hand-core-seat = Seat the core
hand-core-pull = Pull the core
hand-no-core = No core: the stem shuts this port on its back seat.

# Finding leaks.
hand-detector-here = Hold the detector here
hand-detector-away = Put the detector away
hand-detector-at = hold its tip at
hand-detector-hint = It smells refrigerant and nothing else. Go slowly, below the joint.
hand-wet = Wet with bubble solution
hand-wipe = Wipe dry

# Joints and drier.
hand-last-pulled = Last pulled to { $torque }.
hand-loosen = Loosen the nut a turn
hand-take-apart = Take the joint apart
hand-plug = Plug both ends
hand-renew-flare = Cut and renew the flare
hand-flare-of = Flare of { $size } tube.
hand-wrench = torque wrench
hand-make-up = Make up to this torque
hand-drier-take-out = Take the drier out
hand-drier-new = A new drier is on the cart, its caps still on.
hand-drier-toward-metering = Fit new, arrow toward the metering device
hand-drier-toward-outdoor = Fit new, arrow toward the outdoor unit
hand-glass-still = Nothing moves: full of liquid, or empty. The eye cannot tell which.
hand-glass-vapour = Vapour comes with the liquid.
hand-glass-no-flow = Nothing flows.
hand-clean-coil = Clean the outdoor coil
hand-change-filter = Change the air filter

# Thermometers.
hand-clamp-here = Clamp a thermometer here
hand-unclamp = Take the thermometer off
hand-hang-here = Hang a thermometer here
hand-unhang = Take the thermometer away
hand-it-shows = It shows { $shown }.
hand-left-in-case = { $count } left in the case.
hand-put-one-at = put one at
hand-take-back = Take back: { $place }

# Pump and micron gauge.
hand-pump-start = Start the pump
hand-pump-stop = Stop the pump
hand-inlet-open = Open the pump's inlet valve
hand-inlet-shut = Shut the pump's inlet valve
hand-ballast-open = Open the gas ballast
hand-ballast-shut = Shut the gas ballast
hand-oil-milky = The oil in the sight glass looks milky.
hand-oil-clear = The oil in the sight glass is clear.
hand-tool-rated = Its case says: rated for refrigerants that burn.
hand-tool-not-rated = Nothing on its case rates it for refrigerants that burn.
hand-change-oil = Change the pump's oil
hand-gauge-ruined = Its sensor met pressure: it shows nothing any more.
hand-gauge-at = screw it on
hand-gauge-open = Open the micron gauge's valve
hand-gauge-shut = Shut the micron gauge's valve

# Nitrogen and refrigerant.
hand-nitrogen-open = Open the nitrogen cylinder
hand-nitrogen-shut = Shut the nitrogen cylinder
hand-regulator-fit = Fit the regulator
hand-regulator-off = Take the regulator off
hand-regulator-back-off = Back the regulator off
hand-regulator = regulator
hand-outlet-shows = Outlet { $shown }
hand-cylinder-shows = Cylinder { $shown }
hand-cylinder-shut = Shut the cylinder
hand-cylinder-crack = Crack the cylinder
hand-cylinder-open = Open the cylinder
hand-cylinder-valve = cylinder valve open
hand-cylinder-invert = Invert the cylinder (liquid)
hand-cylinder-upright = Stand it upright (vapour)
hand-scale-shows = Scale { $shown }
hand-tare = Tare the scale

# Hoses and hand valves.
hand-hose-to = put its end
hand-purge = Purge the hose
hand-purged = Purged since it was put on.
hand-not-purged = Not purged yet.
hand-hose-off = Take the hose off
hand-valve-shut = Shut the valve
hand-valve-crack = Crack the valve
hand-valve-open = Open the valve
hand-hand-valve = hand valve open

# Switches: the thing, and the word for each state.
hand-protection = Glasses and gloves
hand-ventilation = Doors, with a fan
hand-disconnect = Disconnect
hand-lock-and-tag = Lock and tag
hand-contactor = Contactor
hand-clamp-meter = Clamp meter
hand-stem-cap = Stem cap
hand-port-cap = Port cap
hand-core-tool = Core tool
hand-core-tool-valve = Valve of the core tool
hand-core = Core
hand-detector = Detector
hand-bubbles = Bubble solution
hand-thermometer = Thermometer
hand-pump = Pump
hand-inlet = Inlet valve
hand-ballast = Gas ballast
hand-gauge-valve = Valve of the micron gauge
hand-nitrogen = Cylinder valve
hand-regulator-there = Regulator
hand-cylinder-stands = Cylinder
hand-on = on
hand-off = off
hand-in = in
hand-out = out
hand-open = open
hand-shut = shut
hand-held = held in
hand-free = free
hand-runs = running
hand-stands = stopped
hand-upright = upright
hand-upside-down = inverted
hand-here = here
hand-away = away
hand-is-wet = wet
hand-is-dry = dry

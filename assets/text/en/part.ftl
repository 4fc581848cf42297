# The parts of the site: names beyond those of name.ftl, and how each looks.

part-hose-low = low hose (blue, L)
part-hose-high = high hose (red, H)
part-hose-centre = centre hose (yellow, C)
part-sight-glass = sight glass
part-regulator = nitrogen regulator
part-thermometers = thermometer case

# The unit and what protects.
part-protection-on = on
part-protection-off = off
part-call-off = off
part-call-fan = fan
part-call-cool = cool
part-disconnect-locked = pulled, locked and tagged
part-disconnect-in = in
part-disconnect-out = pulled
part-plate = refrigerant { $name }
part-compressor-runs = running
part-compressor-stands = stopped
part-fan-runs = fan running
part-fan-stands = fan stopped
part-blower-runs = blower running
part-blower-stands = blower stopped
part-filter-in = in its slot

# Valves, ports, joints.
part-stem-front = front-seated
part-stem-back = back-seated
part-stem-cracked = cracked
part-stem-mid = mid-position
part-cap-on = cap on
part-cap-off = cap off
part-core-out = core out
part-tool-open = core tool on, its valve open
part-tool-shut = core tool on, its valve shut
part-hose-on-it = { $hose } on it
part-made-up = made up
part-made-loose = nut loose
part-made-apart = apart, open
part-made-plugged = apart, plugged
part-wet-still = wet, no bubbles
part-wet-grows = wet, small bubbles grow
part-wet-foams = wet, it foams

# Drier, sight glass, pipes.
part-drier-toward-metering = arrow toward the metering device
part-drier-toward-outdoor = arrow toward the outdoor unit
part-drier-out = taken out
part-glass-clear = clear
part-glass-bubbles = bubbles run past
part-glass-foam = it flashes, foam runs past
part-glass-level = liquid stands in it, { $percent } % full
part-no-thermometer = no thermometer
part-sweats = sweating
part-frosted = frosted

# The kit.
part-end-hung-up = hung up
part-end-suction-port = on the suction port
part-end-liquid-port = on the liquid port
part-end-open-air = held open to the air
part-shut = shut
part-open = open
part-partly-open = { $percent } % open
part-pump-runs = running
part-pump-stands = stopped
part-inlet-open = inlet valve open
part-inlet-shut = inlet valve shut
part-valve-open = valve open
part-valve-shut = valve shut
part-regulator-on = regulator on
part-no-regulator = no regulator
part-regulator-off = taken off
part-regulator-backed-off = backed off
part-regulator-set = set to { $pressure }
part-cylinder-inverted = inverted
part-cylinder-upright = upright
part-valve-at = valve { $opening }
part-thermometers-left = { $count } left
part-detector-away = put away
part-detector-at = at { $spot }

# What can be wrong, and the diagnosis that says so.

fault-none = nothing is wrong
fault-at = { $fault }, { $spot }
fault-air-inside = air inside
fault-blocked-metering = blocked metering device
fault-clogged-drier = clogged filter drier
fault-dirty-filter = dirty air filter
fault-fouled-condenser = dirty outdoor coil
fault-leak = leak
fault-leaking-seat = service valve that does not seat
fault-moisture = moisture inside
fault-overcharge = overcharge
fault-undercharge = undercharge
fault-weak-compressor-valves = weak compressor valves

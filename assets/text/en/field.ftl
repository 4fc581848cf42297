# The blanks of the job sheet that have no name elsewhere.

field-standing-pressure = standing pressure
field-suction-pressure = suction pressure
field-liquid-pressure = liquid pressure
field-amps = compressor amps
field-superheat = superheat
field-subcooling = subcooling
field-target-superheat = target superheat
field-vacuum = vacuum
field-refrigerant-in = refrigerant put in
field-refrigerant-out = refrigerant taken out

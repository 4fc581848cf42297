# The faces of the instruments, where there is little room, and the captions of the site.

face-vacuum-below = psig, in Hg below 0
face-gauge-kilopascals = kPa gauge
face-saturation = { $degrees } sat. { $refrigerant }
face-over = over
face-inches = { $value } in Hg
face-microns = microns
face-compressor = compressor
face-scale = scale
face-nitrogen-outlet = N₂ outlet
face-nitrogen-cylinder = N₂ cylinder
face-detector = leak detector
face-detector-away = put away
face-off = off
face-none = none
face-turned = quarter turns
face-set = set
face-turns-of = { $now } of { $most }

# The room in a small window: what is shown at a time, and the row of faces.

narrow-site = Site
narrow-instruments = Instruments
narrow-low-gauge = low gauge
narrow-high-gauge = high gauge
narrow-microns = microns
narrow-suction-line = suction line
narrow-liquid-line = liquid line
narrow-none = none

# The room in a small window: what is shown at a time, and the row of faces.

narrow-site = Site
narrow-at-hand = At hand
narrow-job-sheet = Job sheet
narrow-instruments = Instruments
narrow-strip-chart = Strip chart
narrow-low-gauge = low gauge
narrow-high-gauge = high gauge
narrow-microns = microns
narrow-suction-line = suction line
narrow-liquid-line = liquid line
narrow-none = none

# The room in a small window: what is shown at a time, and the row of faces.

room-site = Site
room-at-hand = At hand
room-job-sheet = Job sheet
room-instruments = Instruments
room-strip-chart = Strip chart
room-low-gauge = low gauge
room-high-gauge = high gauge
room-microns = microns
room-suction-line = suction line
room-liquid-line = liquid line
room-none = none

# La sala en una ventana pequeña: qué se muestra a la vez, y la fila de lecturas.

room-site = Sitio
room-at-hand = A mano
room-job-sheet = Hoja de trabajo
room-instruments = Instrumentos
room-strip-chart = Registro
room-low-gauge = manómetro de baja
room-high-gauge = manómetro de alta
room-microns = micrones
room-suction-line = línea de succión
room-liquid-line = línea de líquido
room-none = ninguno

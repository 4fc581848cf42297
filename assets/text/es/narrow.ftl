# La sala en una ventana pequeña: qué se muestra a la vez, y la fila de lecturas.

narrow-site = Sitio
narrow-instruments = Instrumentos
narrow-low-gauge = manómetro de baja
narrow-high-gauge = manómetro de alta
narrow-microns = micrones
narrow-suction-line = línea de succión
narrow-liquid-line = línea de líquido
narrow-none = ninguno

# Las carátulas de los instrumentos, donde hay poco sitio, y los letreros del sitio.

face-vacuum-below = psig, inHg bajo 0
face-gauge-kilopascals = kPa man.
face-saturation = { $degrees } sat. { $refrigerant }
face-over = fuera
face-inches = { $value } inHg
face-microns = micrones
face-compressor = compresor
face-scale = báscula
face-nitrogen-outlet = N₂ salida
face-nitrogen-cylinder = N₂ cilindro
face-detector = detector de fugas
face-detector-away = guardado
face-off = apagado
face-none = no hay
face-turned = cuartos de vuelta
face-set = ajuste
face-turns-of = { $now } de { $most }

# Las partes del sitio: nombres que no están en name.ftl y cómo se ve cada una.

part-hose-low = manguera de baja (azul, L)
part-hose-high = manguera de alta (roja, H)
part-hose-centre = manguera central (amarilla, C)
part-sight-glass = mirilla
part-regulator = regulador de nitrógeno
part-thermometers = estuche de termómetros

# El equipo y la protección.
part-protection-on = puestas
part-protection-off = quitadas
part-call-off = apagado
part-call-fan = ventilador
part-call-cool = frío
part-disconnect-locked = fuera, con candado y etiqueta
part-disconnect-in = puesto
part-disconnect-out = fuera
part-plate = refrigerante { $name }
part-compressor-runs = en marcha
part-compressor-stands = parado
part-fan-runs = ventilador en marcha
part-fan-stands = ventilador parado
part-blower-runs = soplador en marcha
part-blower-stands = soplador parado
part-filter-in = en su ranura

# Válvulas, puertos, uniones.
part-stem-front = en el asiento delantero
part-stem-back = en el asiento trasero
part-stem-cracked = entreabierta
part-stem-mid = en posición intermedia
part-cap-on = tapa puesta
part-cap-off = tapa quitada
part-core-out = sin núcleo
part-tool-open = extractor de núcleos puesto, su válvula abierta
part-tool-shut = extractor de núcleos puesto, su válvula cerrada
part-hose-on-it = { $hose } conectada
part-made-up = apretado
part-made-loose = tuerca floja
part-made-apart = desarmado, abierto
part-made-plugged = desarmado, taponado
part-wet-still = mojado, sin burbujas
part-wet-grows = mojado, crecen burbujas pequeñas
part-wet-foams = mojado, hace espuma

# Filtro, mirilla, tubos.
part-drier-toward-metering = flecha hacia el dispositivo de expansión
part-drier-toward-outdoor = flecha hacia la unidad exterior
part-drier-out = sacado
part-glass-clear = limpia
part-glass-bubbles = pasan burbujas
part-glass-foam = hay vapor, pasa espuma
part-glass-level = hay líquido quieto, { $percent } % llena
part-no-thermometer = sin termómetro
part-sweats = con sudor
part-frosted = con escarcha

# Las herramientas.
part-end-hung-up = colgada
part-end-suction-port = en el puerto de succión
part-end-liquid-port = en el puerto de líquido
part-end-open-air = abierta al aire
part-shut = cerrada
part-open = abierta
part-partly-open = { $percent } % abierta
part-pump-runs = en marcha
part-pump-stands = parada
part-inlet-open = válvula de entrada abierta
part-inlet-shut = válvula de entrada cerrada
part-valve-open = válvula abierta
part-valve-shut = válvula cerrada
part-regulator-on = regulador puesto
part-no-regulator = sin regulador
part-regulator-off = quitado
part-regulator-backed-off = aflojado del todo
part-regulator-set = ajustado a { $pressure }
part-cylinder-inverted = invertido
part-cylinder-upright = de pie
part-valve-at = válvula { $opening }
part-thermometers-left = { $count ->
        [one] queda 1
       *[other] quedan { $count }
    }
part-detector-away = guardado
part-detector-at = en { $spot }

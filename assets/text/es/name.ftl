# Los nombres de las cosas. `.the` es el nombre con su artículo, para las frases; `de el` y `a el`
# los contrae el programa. Una palabra para cada cosa, en todos los archivos de esta carpeta:
#
#   back-seated         asiento trasero          manifold            múltiple
#   blower              soplador                 metering device     dispositivo de expansión
#   cap                 tapa                     micron gauge        vacuómetro
#   charge              carga                    micron              micrón, micrones
#   clamp meter         pinza amperimétrica      nameplate           placa de datos
#   coil                serpentín                orifice             orificio fijo
#   contactor           contactor                port                puerto
#   core                núcleo                   prove dead          comprobar que no hay tensión
#   core tool           extractor de núcleos     pump-down           recogida del refrigerante
#   crack (a valve)     entreabrir               purge               purgar
#   cylinder            cilindro                 refrigerant         refrigerante
#   detector            detector de fugas        regulator           regulador
#   disconnect          desconectador            saturation          saturación
#   drier               filtro deshidratador     scale               báscula
#   evacuate            hacer vacío              service valve       válvula de servicio
#   flare               abocardado               stem                vástago
#   front-seated        asiento delantero        subcooling          subenfriamiento
#   gas ballast         lastre de gas            superheat           sobrecalentamiento
#   gauge               manómetro                thermometer         termómetro
#   hand valve          llave del múltiple       torque              torque
#   hose                manguera                 vacuum pump         bomba de vacío
#   leak                fuga                     weigh in            cargar por peso
#   lock and tag        candado y etiqueta       wet bulb            bulbo húmedo

# Uniones abocardadas.
name-flare-liquid-valve = abocardado de la válvula de líquido
    .the = el abocardado de la válvula de líquido
name-flare-drier-inlet = abocardado de la entrada del filtro
    .the = el abocardado de la entrada del filtro
name-flare-drier-outlet = abocardado de la salida del filtro
    .the = el abocardado de la salida del filtro
name-flare-indoor-liquid = abocardado de líquido del serpentín interior
    .the = el abocardado de líquido del serpentín interior
name-flare-indoor-suction = abocardado de succión del serpentín interior
    .the = el abocardado de succión del serpentín interior
name-flare-suction-valve = abocardado de la válvula de succión
    .the = el abocardado de la válvula de succión

# Válvulas de servicio.
name-valve-liquid = válvula de servicio de líquido
    .the = la válvula de servicio de líquido
name-valve-suction = válvula de servicio de succión
    .the = la válvula de servicio de succión
name-port-liquid = puerto de líquido
    .the = el puerto de líquido
name-port-suction = puerto de succión
    .the = el puerto de succión
name-stem-liquid = vástago de la válvula de líquido
    .the = el vástago de la válvula de líquido
name-stem-suction = vástago de la válvula de succión
    .the = el vástago de la válvula de succión
name-core-tool-liquid = extractor de núcleos del puerto de líquido
    .the = el extractor de núcleos del puerto de líquido
name-core-tool-suction = extractor de núcleos del puerto de succión
    .the = el extractor de núcleos del puerto de succión

name-valve-liquid-short = válvula de líquido
    .the = la válvula de líquido
name-valve-suction-short = válvula de succión
    .the = la válvula de succión
name-port-liquid-short = puerto de líquido
    .the = el puerto de líquido
name-port-suction-short = puerto de succión
    .the = el puerto de succión

# El equipo.
name-compressor = compresor
    .the = el compresor
name-receiver = recibidor
    .the = el recibidor
name-outdoor-unit = unidad exterior
    .the = la unidad exterior
name-indoor-unit = unidad interior
    .the = la unidad interior
name-live-contactor = contactor con tensión
    .the = el contactor con tensión
name-drier = filtro deshidratador
    .the = el filtro deshidratador
name-indoor-coil = serpentín interior
    .the = el serpentín interior
name-outdoor-coil = serpentín exterior
    .the = el serpentín exterior
name-low-side = lado de baja
    .the = el lado de baja
name-suction-line = línea de succión
    .the = la línea de succión
name-liquid-line = línea de líquido
    .the = la línea de líquido
name-after-drier = después del filtro
    .the = el tubo después del filtro
name-discharge-line = línea de descarga
    .the = la línea de descarga
name-outdoor-air = aire exterior
    .the = el aire exterior
name-return-air = aire de retorno
    .the = el aire de retorno
name-return-wet-bulb = bulbo húmedo de retorno
    .the = el bulbo húmedo de retorno
name-supply-air = aire de suministro
    .the = el aire de suministro
name-air-filter = filtro de aire
    .the = el filtro de aire
name-thermostat = termostato
    .the = el termostato
name-disconnect = desconectador
    .the = el desconectador
name-nameplate = placa de datos
    .the = la placa de datos
name-high-pressure-switch = presostato de alta
    .the = el presostato de alta
name-low-pressure-switch = presostato de baja
    .the = el presostato de baja
name-overload = protector térmico
    .the = el protector térmico

# Las herramientas.
name-protection = gafas y guantes
    .the = las gafas y los guantes
name-hose-low = manguera de baja
    .the = la manguera de baja
name-hose-high = manguera de alta
    .the = la manguera de alta
name-hose-centre = manguera central
    .the = la manguera central
name-hand-valve-low = llave de baja
    .the = la llave de baja
name-hand-valve-high = llave de alta
    .the = la llave de alta
name-manifold-centre = centro del múltiple
    .the = el centro del múltiple
name-gauge-low = manómetro de baja
    .the = el manómetro de baja
name-gauge-high = manómetro de alta
    .the = el manómetro de alta
name-micron-gauge = vacuómetro
    .the = el vacuómetro
name-detector = detector de fugas
    .the = el detector de fugas
name-open-air = aire libre
    .the = el aire libre

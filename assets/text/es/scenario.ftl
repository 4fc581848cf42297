# Los textos de los ejercicios que vienen con el programa. Las personas y los lugares conservan
# sus nombres.

# El mostrador de la panadería que suda.
scenario-clogged_drier-title = El mostrador de la panadería que suda
scenario-clogged_drier-trains = Diagnosticar una restricción de líquido, recoger el refrigerante, cambiar el filtro deshidratador, comprobar la carga.
scenario-clogged_drier-place = Crumb & Kettle, una panadería de Fennick Lane, Harrowby
scenario-clogged_drier-complaint = Trabaja todo el día y el mostrador sigue sudando. Hace un año alguien soldó una línea de succión nueva. El tubo delgado junto a esa cosa con forma de lata se siente frío.
scenario-clogged_drier-hint-1 = La succión está baja. ¿También está bajo el subenfriamiento, como cuando falta refrigerante?
scenario-clogged_drier-hint-2 = El subenfriamiento está alto: el líquido está ahí, pero algo lo retiene.
scenario-clogged_drier-hint-3 = Ponga un termómetro antes del filtro y otro después.
scenario-clogged_drier-told = Se explicó al cliente qué fallaba y qué debe vigilar
scenario-clogged_drier-question = ¿Podría Marta decir después qué se hizo y por qué?

# La sala de espera que hay que rellenar.
scenario-leaking_flare-title = La sala de espera que hay que rellenar
scenario-leaking_flare-trains = Encontrar una fuga con nitrógeno, una traza de refrigerante y solución jabonosa; rehacer el abocardado.
scenario-leaking_flare-place = La sala de espera de un consultorio dental en Alder Point
scenario-leaking_flare-complaint = Cada dos semanas enfría menos. Alguien lo rellenó dos veces y les dio un apretón a las tuercas de la unidad interior. Hay aceite en el aislante del tubo grueso.
scenario-leaking_flare-hint-1 = Succión baja, sobrecalentamiento alto, subenfriamiento bajo: falta refrigerante. ¿Adónde se fue?
scenario-leaking_flare-hint-2 = El aceite señala el lugar. Acerque el detector por debajo del abocardado de succión del serpentín interior.
scenario-leaking_flare-hint-3 = Un abocardado bien apretado que sigue fugando tiene mala cara: desármelo y mírelo.
scenario-leaking_flare-told = Se explicó al cliente por qué rellenar no sirvió
scenario-leaking_flare-question = ¿Sabe Tobias por qué se perdía y que ya está reparado?

# La cocina que enfría a ratos.
scenario-wet_circuit-title = La cocina que enfría a ratos
scenario-wet_circuit-trains = Reconocer la humedad porque va y viene; leer una prueba de decaimiento; secar un circuito.
scenario-wet_circuit-place = Una casa adosada de Millrace Court, Dunmere, a medio reconstruir
scenario-wet_circuit-complaint = Desde que los albañiles movieron los tubos enfría un rato, luego sopla tibio y, tras un descanso, vuelve a estar bien. Los tubos estuvieron una semana abiertos bajo la lluvia.
scenario-wet_circuit-hint-1 = Observe el manómetro de baja un cuarto de hora antes de juzgar: ¿se queda quieto?
scenario-wet_circuit-hint-2 = Baja por escalones y se recupera tras un descanso: algo se congela y se descongela.
scenario-wet_circuit-hint-3 = Un decaimiento que sube y se estabiliza es agua. Rompa el vacío con nitrógeno seco y repita.
scenario-wet_circuit-told = Se explicó al cliente qué causan los tubos abiertos
scenario-wet_circuit-question = ¿Sabe Priya que los tubos abiertos deben taparse?

# La sala de lectura que solo estaba baja.
scenario-undercharge-title = La sala de lectura que solo estaba baja
scenario-undercharge-trains = Reconocer una falta de carga por el sobrecalentamiento y el subenfriamiento, preguntar por qué, remediarla, cargar por peso.
scenario-undercharge-place = La sala de lectura de la biblioteca parroquial de Ostrander
scenario-undercharge-complaint = Antes hacía fresco aquí, ahora los señores mayores se quitan el abrigo. El joven que vino en mayo dijo que solo estaba un poco bajo. También estuvo en marzo.
scenario-undercharge-hint-1 = Un circuito cerrado no gasta nada. Si falta, pregunte adónde se fue.
scenario-undercharge-hint-2 = Sobrecalentamiento alto con subenfriamiento bajo: falta. Con subenfriamiento alto: está retenido.
scenario-undercharge-hint-3 = El joven siempre trabajó en la unidad exterior. Busque ahí primero con el detector, debajo de cada abocardado.
scenario-undercharge-told = Se explicó al cliente que había una fuga, que no se gastaba
scenario-undercharge-question = ¿Sabe Joan por qué estaba bajo y que ya no lo estará?

# El cuarto del bebé que no enfría.
scenario-flammable_leak-title = El cuarto del bebé que no enfría
scenario-flammable_leak-trains = Reparar una fuga de un refrigerante que arde: ventilar, nada con tensión, barrer con nitrógeno, herramientas aptas.
scenario-flammable_leak-place = Un cuarto de bebé bajo el tejado en Tarn Hollow
scenario-flammable_leak-complaint = Lo instalaron el año pasado y ahora sopla tibio. Hay una mancha de grasa bajo el tubo grueso donde sale de la pared, justo encima de la cuna. ¿Es seguro?
scenario-flammable_leak-hint-1 = La placa dice el refrigerante. Busque su clase antes de abrir la caja.
scenario-flammable_leak-hint-2 = Purgue las mangueras cuando nada tenga tensión, y pare el equipo antes de quitarlas.
scenario-flammable_leak-hint-3 = A 0 psig los tubos siguen llenos de vapor: haga vacío, rómpalo con nitrógeno y abra después.
scenario-flammable_leak-told = Se respondió si es seguro
scenario-flammable_leak-question = ¿Sabe Ingrid qué se fugaba y qué habría podido pasar?

# El queso que suda.
scenario-cold_room_drier-title = El queso que suda
scenario-cold_room_drier-trains = Válvulas de tres posiciones, recogida en un recipiente de líquido, un filtro deshidratador, una carga por peso.
scenario-cold_room_drier-place = La sala de maduración de una quesería en Nether Wold
scenario-cold_room_drier-complaint = No mantiene la temperatura desde que en otoño cambiaron el compresor. El tubo delgado suda detrás de la lata negra, y solo allí.
scenario-cold_room_drier-hint-1 = Una válvula en su asiento trasero no le muestra nada al manómetro: sáquela un poco de ese asiento.
scenario-cold_room_drier-hint-2 = Detrás de un recipiente ni el sobrecalentamiento ni el subenfriamiento dicen la carga: pésela.
scenario-cold_room_drier-hint-3 = Ponga en su asiento delantero solo la válvula del recipiente: él y las válvulas del compresor retienen la carga.
scenario-cold_room_drier-question = ¿Podría Petra decir después qué se hizo y por qué?

# Criterios: seguridad.
scenario-protected = Gafas y guantes en todo trabajo en el circuito
scenario-locked = Desconectador con candado y etiqueta, y comprobado que no hay tensión, antes de meter las manos
scenario-locked-before-broken = Bloqueo antes de abrir el circuito

# Criterios: un refrigerante que arde.
scenario-tools-rated = Herramientas aptas para un refrigerante que arde
scenario-ventilated-first = Ventilado antes de abrir una unión
scenario-ventilated-room = Ninguna unión abierta en una habitación sin ventilar
scenario-nothing-lights-it = Nada soltado junto a lo que podría encenderlo
scenario-purged-first = Barrido con nitrógeno antes de abrirlo
scenario-air-kept = El aire de la habitación por debajo de un cuarto de lo que arde

# Criterios: conexión, mediciones, diagnóstico.
scenario-low-purged = Manguera de baja purgada
scenario-high-purged = Manguera de alta purgada
scenario-standing-noted = Presión estática anotada
scenario-ran-first = Funcionó 10 minutos antes de juzgar
scenario-superheat-right = Sobrecalentamiento bien calculado
scenario-subcooling-right = Subenfriamiento bien calculado
scenario-target-read = Sobrecalentamiento objetivo leído en la tabla
scenario-after-drier-noted = Temperatura después del filtro anotada
scenario-suction-noted = Presión de succión anotada
scenario-saw-suction-fall = Se vio caer la succión en marcha
scenario-rested-it = Se dejó descansar y se puso en marcha otra vez antes de juzgar
scenario-detector-sounded = El detector ha sonado
scenario-bubbles-point = Las burbujas señalan el abocardado
scenario-leak-looked-for = La fuga se buscó antes de añadir refrigerante
scenario-diagnosis-drier = Diagnóstico: el filtro deshidratador
scenario-diagnosis-suction-flare = Diagnóstico: una fuga en el abocardado de succión del serpentín interior
scenario-diagnosis-moisture = Diagnóstico: humedad dentro del circuito
scenario-diagnosis-liquid-flare = Diagnóstico: una fuga en el abocardado de la válvula de líquido
scenario-diagnosis-first = Diagnóstico antes de abrir el circuito

# Criterios: recogida del refrigerante y apertura.
scenario-liquid-first = Válvula de líquido en su asiento delantero antes que la de succión
scenario-pumped-down-first = Recogido con la válvula de líquido antes de abrir una unión
scenario-compressor-dead-in-vacuum = Compresor sin corriente en vacío
scenario-compressor-not-in-vacuum = Compresor sin trabajar bajo 0 psig
scenario-opened-at-zero = Abierto a 0 psig
scenario-arrow-with-flow = Flecha del filtro nuevo a favor del flujo
scenario-open-not-long = Circuito abierto no más de 15 minutos
scenario-drier-not-spent = El filtro nuevo no se gastó con el aire del lugar
scenario-new-drier = Un filtro nuevo, porque el viejo está lleno
scenario-clean-filter = Un filtro de aire limpio, para que el serpentín no evapore bajo cero
scenario-new-flare = Se hizo un abocardado nuevo
scenario-flares-made-up = Abocardados apretados a su torque
scenario-flares-at-torque = Cada abocardado a su torque
scenario-no-flare-cracked = Ningún abocardado rajado por fuerza

# Criterios: nitrógeno y vacío.
scenario-regulator-used = Nitrógeno solo por el regulador
scenario-nameplate-kept = Presión de la placa respetada
scenario-nitrogen-held-between = Nitrógeno mantenido 10 minutos entre 90 y 150 psig
scenario-nitrogen-held = Nitrógeno mantenido 10 minutos
scenario-trace-first = Una traza de refrigerante antes del nitrógeno
scenario-flare-still = El abocardado nuevo sin burbujas a 90 psig o más
scenario-vacuum-decay = Menos de 500 micrones, bomba aislada, 10 minutos
scenario-vacuum-decay-dry = Un decaimiento que se queda por debajo de 500 micrones 10 minutos
scenario-vacuum-broken = Vacío roto con nitrógeno seco y hecho de nuevo
scenario-vacuum-noted = Vacío anotado
scenario-pump-kept = Bomba de vacío protegida de la presión
scenario-micron-gauge-kept = Vacuómetro protegido de la presión

# Criterios: lo que se entrega.
scenario-superheat-within = Sobrecalentamiento a menos de 5 °F de la tabla
scenario-superheat-by-plate = Sobrecalentamiento a menos de 5 °F de la placa
scenario-subcooling-by-plate = Subenfriamiento a menos de 3 °F de la placa
scenario-charge-right = Carga correcta a un veinteavo
scenario-no-drier-drop = Sin caída de temperatura en el filtro
scenario-circuit-tight = Circuito hermético
scenario-tight = Hermético
scenario-dry = Seco
scenario-no-gas-left = Sin aire ni nitrógeno dentro
scenario-no-liquid-thrown = Ningún golpe de líquido al compresor
scenario-little-lost = No se soltó más refrigerante que el de las mangueras y los tubos abiertos
scenario-back-seated = Ambas válvulas de nuevo en su asiento trasero
scenario-caps-on = Tapas puestas
scenario-nothing-left = Nada dejado en el equipo
scenario-put-in-recorded = Refrigerante añadido, anotado

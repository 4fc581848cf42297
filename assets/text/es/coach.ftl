# Lo que dice el instructor además de sus pensamientos: qué se pide, qué pasó, cuánto cuesta.

# Lo que se pide.
coach-asked = Aquí se pide: { $goal }.
coach-goal-broke = { $place }, abierto
coach-goal-made-up = { $place }, apretado a su torque
coach-goal-renewed = una cara nueva en { $place }
coach-goal-sniffed = el detector acercado a { $place }
coach-goal-wetted = solución jabonosa en { $place }
coach-goal-liquid-shut = la válvula de líquido en su asiento delantero
coach-goal-suction-shut = la válvula de succión en su asiento delantero
coach-goal-liquid-open = la válvula de líquido fuera de su asiento
coach-goal-suction-open = la válvula de succión fuera de su asiento
coach-goal-open = el circuito abierto
coach-goal-drier-out = el filtro viejo fuera
coach-goal-drier-in = un filtro nuevo en la línea, flecha con el flujo
coach-goal-filter = un filtro de aire limpio
coach-goal-purged-low = la manguera de baja purgada
coach-goal-purged-high = la manguera de alta purgada
coach-goal-purged-centre = la manguera central purgada
coach-goal-cooling = demanda de frío
coach-goal-locked = candado y etiqueta en el desconectador
coach-goal-dead = ninguna tensión, y la prueba de ello
coach-goal-ventilated = el trabajo ventilado
coach-goal-diagnosed = un diagnóstico en la hoja
coach-goal-handed-back = el trabajo entregado
coach-goal-protected = gafas y guantes en todo trabajo en el circuito
coach-goal-not-live = candado y etiqueta en el desconectador, y ninguna tensión, antes de meter las manos
coach-goal-no-pressure = ninguna presión detrás de una unión que se abre
coach-goal-arrow = la flecha del filtro con el flujo
coach-goal-none-open = ninguna punta de tubo abierta al aire
coach-goal-torque = cada abocardado que se trabajó, al torque de su tamaño
coach-goal-gauge-isolated = el vacuómetro aislado del circuito
coach-goal-caps = tapas en los dos vástagos y los dos puertos
coach-goal-back-seated = las dos válvulas de servicio en su asiento trasero
coach-goal-nothing-left = ninguna manguera, herramienta ni manómetro en el equipo
coach-goal-hand-back = nada más antes de entregar
coach-a-joint = una unión
coach-twice = { $goal }, por segunda vez
coach-then = { $first }, luego { $goal }
coach-only-then = { $goal }, y solo entonces { $after }
coach-with = { $goal }; con { $conditions }
coach-let-pass = { $goal }; se admite: { $limit }
coach-hold = { $conditions }, durante { $lasting }; { $stands }
coach-hold-steady = { $conditions }, sin moverse más de { $within }, durante { $lasting }; { $stands }
coach-so-for = así desde hace { $span }
coach-not-so = ahora: { $found }
coach-bubbles = burbujas en { $place }
coach-below = menos de { $level }
coach-above = más de { $level }
coach-between = entre { $low } y { $high }
coach-run-then = diez minutos de marcha sin parar, luego { $goal }
coach-on-sheet = { $field } en la hoja, a menos de { $within } de lo que dan los instrumentos en ese momento
coach-on-sheet-off = { $field } en la hoja, a menos de { $within } de lo que dan los instrumentos en ese momento; lo anotado difiere más

# Estados al entregar.
coach-state-charge = carga, como parte de la que corresponde,
coach-state-superheat = sobrecalentamiento menos su objetivo
coach-state-subcooling = subenfriamiento
coach-state-gas = aire y nitrógeno dentro
coach-state-water = agua dentro
coach-state-drier-water = agua en el filtro
coach-state-lost = refrigerante perdido
coach-state-leak = fuga, gramos al año,
coach-state-drop = caída de temperatura en el filtro

# El diagnóstico y sus señales.
coach-one-fault = la única falla que explica todas las señales; { $signs }
coach-one-fault-placed = la única falla que explica todas las señales, y dónde está; { $signs }
coach-other-fault = otra falla que la anotada, que no explica todas las señales; { $signs }
coach-other-fault-placed = otra falla u otro lugar que lo anotado, que no explica todas las señales; { $signs }
coach-signs-missing = el sobrecalentamiento, su objetivo y el subenfriamiento son parte de ellas
coach-signs-starved-held = mucho sobrecalentamiento con mucho subenfriamiento: al serpentín le falta, el líquido está frenado
coach-signs-starved = mucho sobrecalentamiento con subenfriamiento normal: al serpentín le falta aunque hay líquido
coach-signs-starved-missing = mucho sobrecalentamiento con poco subenfriamiento: al serpentín le falta, no hay bastante líquido
coach-signs-overfull = poco sobrecalentamiento con mucho subenfriamiento: hay más de lo que corresponde
coach-signs-flooded = poco sobrecalentamiento sin más subenfriamiento: pasa demasiado, o muy poco aire lo recibe
coach-signs-condenser = sobrecalentamiento normal con subenfriamiento anormal: mire el lado del condensador
coach-signs-usual = el sobrecalentamiento y el subenfriamiento son normales: mire lo que va y viene, o el aire

# Por qué importa.
coach-why-released = Se fue al aire y hay que comprarlo otra vez.
coach-why-air-drawn-in = El aire trae agua y no se condensa: cuesta otro vacío.
coach-why-opened-under-pressure = El líquido salpica y quema de frío; lo que hay detrás se pierde.
coach-why-stood-open = Mientras tanto el aceite y el filtro beben del aire.
coach-why-ran-in-vacuum = Por la menor fuga entra aire, y el motor se calienta.
coach-why-ran-without-oil-return = El aceite que no vuelve le falta a un cojinete.
coach-why-energised-in-deep-vacuum = La corriente salta donde ningún gas aísla.
coach-why-liquid-to-compressor = El líquido no se comprime: rompe válvulas y bielas.
coach-why-over-nameplate = Un serpentín estirado puede reventar, hoy o dentro de un año.
coach-why-high-pressure-trip = El presostato salvó el compresor. No está para eso.
coach-why-micron-gauge-over-pressured = Un sensor hecho para el vacío no soporta presión.
coach-why-worked-live = Otra persona puede encenderlo. Una vida no tiene precio.
coach-why-unprotected = Una salpicadura de líquido cuesta un ojo. Eso no tiene precio.
coach-why-over-tightened = Un abocardado rajado se corta y se hace de nuevo.
coach-why-joint-left-loose = Rezumará, y lo volverán a llamar.
coach-why-cap-left-off = La tapa es el sello: sin ella lo volverán a llamar.
coach-why-kit-left-on = Tendrá que volver a buscarlo.
coach-why-valve-left-shut = Estrangula el circuito: lo volverán a llamar.
coach-why-drier-backwards = Contra el flujo suelta su relleno: hay que volver a sacarlo.
coach-why-ignition-risk = Una chispa o una llama enciende lo que arde. Una vida no tiene precio.
coach-why-flammable-air = Desde su límite inferior basta una chispa.
coach-why-opened-unpurged = Lo que queda dentro arde al salir.
coach-why-unventilated = Lo que sale se queda abajo en el cuarto y se junta.
coach-why-tool-not-rated = Un interruptor o un motor hace la chispa.

# Cuentas en la hoja de trabajo.
coach-slip-superheat = Sobrecalentamiento: línea de succión { $pipe } menos saturación { $saturation } a { $pressure } da { $gives }; usted anotó { $wrote }
coach-slip-subcooling = Subenfriamiento: saturación { $saturation } a { $pressure } menos línea de líquido { $pipe } da { $gives }; usted anotó { $wrote }
coach-slip-target = Sobrecalentamiento objetivo: aire exterior { $outdoor } y bulbo húmedo { $bulb } dan { $gives } en la tabla; usted anotó { $wrote }

# El panel.
coach-coach = Instructor
coach-ask = Pedir una orientación
coach-ask-hint = una pregunta
coach-tell = ¿Qué lo diría?
coach-tell-hint = el principio y el instrumento
coach-reach = ¿Qué se pide?
coach-reach-hint = el valor que hay que alcanzar
coach-clue = ¿Hay una pista?
coach-clue-hint = lo que diría quien escribió este ejercicio
coach-try-first = primero intente algo
coach-at-risk = En riesgo: { $amount }.
coach-warms = Calienta como { $kilograms } kg de CO₂.
coach-lost-so-far = Perdido hasta ahora: { $amount }
coach-before-that = Antes de eso ({ $count })
coach-too-late = Demasiado tarde para ({ $count })

# Lo que se practica en un trabajo, como lo dice la lista.
coach-exercise-measure = medición
coach-exercise-diagnose = diagnóstico
coach-exercise-pump-down = recogida del refrigerante
coach-exercise-test = prueba de presión
coach-exercise-evacuate = vacío
coach-exercise-prove = comprobación de la carga

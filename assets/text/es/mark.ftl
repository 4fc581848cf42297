# Las pruebas de cada calificación.

# Pasos cumplidos.
mark-front-seated = se llevó { $valve } al asiento delantero
mark-opened-valve = se abrió { $valve }
mark-broke = se abrió { $joint }
mark-broke-any = se abrió una unión
mark-made-up = se apretó { $joint }
mark-renewed-flare = se rehízo { $joint }
mark-sniffed = se acercó el detector a { $spot }
mark-wetted = se puso solución jabonosa en { $spot }
mark-purged = se purgó { $hose }
mark-drier-out = se sacó el filtro viejo
mark-drier-in = se montó el filtro nuevo
mark-changed-filter = se cambió el filtro de aire
mark-cooling-called = se pidió frío
mark-locked-out = se bloqueó el desconectador
mark-verified-dead = se comprobó que no hay tensión
mark-ventilated = se ventiló el trabajo
mark-diagnosed = se anotó un diagnóstico
mark-handed-back = se entregó el trabajo

# Estados a la vista, cuando son así y cuando no.
mark-compressor-runs = compresor en marcha
mark-compressor-stands = compresor parado
mark-gauge-away = vacuómetro lejos de la bomba
mark-gauge-not-away = vacuómetro no lejos de la bomba
mark-gauge-at-unit = vacuómetro en el equipo
mark-gauge-not-at-unit = vacuómetro en ningún puerto del equipo
mark-hand-valves-open = las dos llaves del múltiple abiertas
mark-hand-valves-not-open = no las dos llaves del múltiple abiertas
mark-charge-isolated = carga encerrada por las válvulas de servicio
mark-charge-not-isolated = carga no encerrada por las válvulas de servicio
mark-is-locked-out = desconectador bloqueado
mark-is-not-locked-out = desconectador sin bloquear
mark-is-ventilated = trabajo ventilado
mark-is-not-ventilated = trabajo sin ventilar
mark-gauge-on-cart = vacuómetro en el carro
mark-gauge-at-pump = vacuómetro en la bomba
mark-gauge-at-manifold = vacuómetro en el múltiple
mark-gauge-at-suction-port = vacuómetro en el puerto de succión
mark-gauge-at-liquid-port = vacuómetro en el puerto de líquido

# Lo que se vio de una condición.
mark-seen = { $reading } { $shown }
mark-seen-not = { $seen }, no { $asked }

# Lo que no debe pasar.
mark-nothing-noted = no se registró nada de eso
mark-and-more = y { $count } más
mark-let-pass-highest = { $amount } como máximo, se admiten { $limit }
mark-limit-highest = { $amount } como máximo, el límite es { $limit }
mark-let-pass-sum = { $amount } en total, se admiten { $limit }
mark-limit-sum = { $amount } en total, el límite es { $limit }

# Orden y pasos.
mark-only-then = solo entonces: { $what }
mark-never = nunca: { $what }
mark-never-nor = nunca: { $what }, ni { $other }
mark-done-with = { $what } con { $seen }
mark-done-but = { $what }, pero { $failed }
mark-done-but-never = { $what }, pero nunca: { $after }
mark-done-too-late = { $what } solo después de esto: { $before }
mark-done-not-since = { $what }, pero no después de esto: { $after }

# Lo que debe mantenerse.
mark-lasted = { $lasted } desde { $from }: { $seen }
mark-at-its-end = al final { $seen }
mark-longest-then-moved = lo más largo { $lasted }, desde { $from }, luego se había movido demasiado: { $seen }
mark-longest-then = lo más largo { $lasted }, desde { $from }, luego { $failed }
mark-longest-then-next = lo más largo { $lasted }, desde { $from }, luego empezó el paso siguiente
mark-longest-then-end = lo más largo { $lasted }, desde { $from }, luego terminó el trabajo
mark-never-so = nunca fue así
mark-nearest = nunca fue así; lo más cerca: { $failed }
mark-nearest-unmeasured = nunca fue así; lo más cerca: ninguna lectura pedida se mide de ese modo

# El estado al entregar.
mark-end-charge-share = carga como parte de la que corresponde
mark-end-superheat = desvío del sobrecalentamiento objetivo
mark-end-subcooling = subenfriamiento
mark-end-permanent-gas = aire y nitrógeno dejados dentro
mark-end-water = agua dejada dentro
mark-end-drier-water = agua en el filtro deshidratador
mark-end-lost = refrigerante perdido al aire
mark-end-leak = fuga en gramos al año
mark-end-drier-drop = caída de temperatura en el filtro
mark-end-not-run = { $state }: no se puede juzgar, el equipo terminado no funcionó 10 min
mark-end-unknown = { $state }: no se puede saber, { $why }
mark-end-no-superheat = no hay vapor en la válvula de succión o la tabla no da objetivo
mark-end-no-subcooling = no hay líquido en la válvula de líquido
mark-end-no-value = no hay valor
mark-end-as-asked = { $state }: { $amount }, como se pide { $bound }
mark-end-not = { $state }: { $amount }, no { $bound }

# La hoja de trabajo.
mark-sheet-blank = { $field }: en blanco
mark-sheet-no-reading = { $field }: se anotó { $wrote }, pero los instrumentos no dieron nada
mark-sheet-off-by = { $field }: se anotó { $wrote }, los instrumentos dieron { $given }: difiere en { $off }, se admiten { $within }
mark-sheet-other-kind = { $field }: se anotó { $wrote }, los instrumentos dieron { $given }
mark-no-diagnosis = no se anotó ningún diagnóstico
mark-diagnosis = se anotó: { $diagnosis }
mark-diagnosis-wrong = se anotó: { $diagnosis }; era: { $right }

# A tiempo; el juicio del evaluador.
mark-not-handed-back = sin entregar; se admiten { $allowed }
mark-handed-back-after = entregado a los { $after }; se admiten { $allowed }
mark-for-the-assessor = para el evaluador: { $question }

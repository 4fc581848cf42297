# Por qué algo no se puede hacer tal como están las cosas, y qué hacer antes.
#
# Se habla de usted, como entre compañeros de trabajo.

refusal-handed-back = El trabajo ya se entregó.
refusal-lost = El programa ha cometido un error: el estado de este equipo ya no es un número y el trabajo no
    puede seguir. Déjelo, e informe del error con el intento.
refusal-unwritable = No se puede anotar.
refusal-unrecordable = No se puede registrar: { $why }

refusal-not-on-cart = Eso no está en el carro.
refusal-cylinder-so = El cilindro ya está así.
refusal-regulator-so = El regulador ya está así.
refusal-shut-nitrogen-first = Cierre primero el cilindro de nitrógeno.
refusal-no-regulator = El cilindro no tiene regulador.
refusal-regulator-range = El tornillo del regulador va de 0 a 800 psig.
refusal-cylinder-stands-so = El cilindro ya está en esa posición.

refusal-disconnect-out = El desconectador ya está fuera.
refusal-disconnect-in = El desconectador ya está puesto.
refusal-locked = Tiene candado y etiqueta: quítelos primero.
refusal-pull-before-lock = Saque el desconectador antes de ponerle el candado.
refusal-locked-already = Ya tiene candado y etiqueta.
refusal-not-locked = No tiene candado.
refusal-still-live = El medidor marca toda la tensión: saque primero el desconectador.
refusal-so-already = Ya está así.

refusal-hose-in-use = Esta manguera está en otra parte: quítela primero.
refusal-place-taken = Ahí ya hay otra manguera.
refusal-centre-is-for-service = La manguera central es de servicio: bomba, nitrógeno o cilindro.
refusal-only-centre-reaches = Solo la manguera central llega ahí.
refusal-port-cap-first = Quite primero la tapa del puerto.
refusal-hose-not-on = Esta manguera no está conectada.
refusal-purge-needs-source = Conecte primero la manguera a algo que la pueda purgar.
refusal-centre-has-no-valve = El centro del múltiple no tiene llave.

refusal-thermometer-here = Aquí ya hay un termómetro.
refusal-thermometers-in-use = Todos los termómetros están en uso: quite uno primero.
refusal-no-thermometer = Aquí no hay termómetro.

refusal-not-made-up = Esta unión no está apretada.
refusal-apart-already = Esta unión ya está desarmada.
refusal-plug-only-apart = Solo se puede taponar una unión desarmada.
refusal-apart-before-flare = Desarme la unión antes de hacer un abocardado nuevo.
refusal-wrench-range = La llave de torque va de 0 a 300 N m.
refusal-no-drier-to-make-up = No hay filtro al que apretarla.
refusal-no-solution = Aquí no hay solución jabonosa.
refusal-no-drier = No hay filtro deshidratador puesto.
refusal-old-drier-first = Saque primero el filtro viejo.
refusal-drier-flares-first = Desarme primero los dos abocardados del filtro.

refusal-blank-of-another-kind = Esta casilla lleva un valor de otro tipo.
refusal-number = Escriba un número.

refusal-pump-so = La bomba ya está así.
refusal-stop-pump-for-oil = Pare la bomba antes de cambiarle el aceite.
refusal-gauge-there = El vacuómetro ya está ahí.
refusal-gauge-needs-tool = En un puerto, el vacuómetro va en la toma lateral del extractor de núcleos: póngalo primero.

refusal-stem-cap-so = La tapa del vástago ya está así.
refusal-stem-cap-first = Quite primero la tapa del vástago.
refusal-port-cap-so = La tapa del puerto ya está así.
refusal-hose-on-port = Hay una manguera en el puerto: quítela primero.
refusal-tool-on-port = El extractor de núcleos está en el puerto: quítelo primero.
refusal-tool-so = El extractor de núcleos ya está así.
refusal-hose-off-first = Quite primero la manguera del puerto.
refusal-gauge-on-tool = El vacuómetro está en el extractor: quítelo primero.
refusal-core-so = El núcleo ya está así.
refusal-no-core = Este puerto no tiene núcleo: lo cierra su válvula en el asiento trasero.
refusal-hose-in-the-way = La manguera estorba: quítela o ponga el extractor de núcleos en medio.
refusal-no-tool = Este puerto no tiene extractor de núcleos.

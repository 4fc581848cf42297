# Lo que se puede hacer con la parte elegida.

hand-point = Señale una cosa del sitio o llegue a ella con la tecla Tab.
hand-appears-here = Aquí aparece lo que puede hacer con ella.

# Protección y electricidad.
hand-protect-on = Ponerse gafas y guantes
hand-protect-off = Quitarse gafas y guantes
hand-ventilate = Abrir las puertas y poner un ventilador
hand-ventilate-off = Quitar el ventilador
hand-thermostat = Poner en { $call }
hand-pull-disconnect = Sacar el desconectador
hand-lock = Ponerle candado y etiqueta
hand-unlock = Quitar candado y etiqueta
hand-insert-disconnect = Meter el desconectador
hand-verify-dead = Descargar el capacitor y comprobar que no hay tensión
hand-safety-open = El medidor encuentra abierto { $safety }.
hand-contactor-hold = Mantener pulsado el contactor
hand-contactor-release = Soltar el contactor
hand-clamp-meter-on = Poner la pinza amperimétrica en su cable
hand-clamp-meter-off = Quitar la pinza amperimétrica
hand-draws = Consume { $amps }.

# Válvulas y puertos.
hand-stem-cap-on = Poner la tapa del vástago
hand-stem-cap-off = Quitar la tapa del vástago
hand-front-seat = Asiento delantero
hand-crack-stem = Entreabrir
hand-back-seat = Asiento trasero
hand-crack-off-back = Separar un poco del asiento trasero
hand-stem-turns = vástago, cuartos de vuelta
hand-turns-open = { $now } de { $most } cuartos de vuelta abierta
hand-turns-hint = En el sitio: arrastre en círculo, gire la rueda encima o use las flechas.
hand-turn-in = Cuarto de vuelta adentro
hand-turn-out = Cuarto de vuelta afuera
hand-port-cap-on = Poner la tapa del puerto
hand-port-cap-off = Quitar la tapa del puerto
hand-hose-low = manguera de baja (L)
hand-hose-high = manguera de alta (H)
hand-hose-centre = manguera central (C)
hand-put-hose-on = Poner la { $hose }
hand-take-hose-off = Quitar la { $hose }
hand-purge-that-hose = Purgar la { $hose }
hand-hose-is = La { $hose } está { $end }.
hand-tool-on = Poner el extractor de núcleos
hand-tool-off = Quitar el extractor de núcleos
hand-tool-open = Abrir la válvula del extractor
hand-tool-shut = Cerrar la válvula del extractor
hand-core-seat = Asentar el núcleo
hand-core-pull = Sacar el núcleo
hand-no-core = Sin núcleo: el vástago cierra este puerto en su asiento trasero.

# Buscar fugas.
hand-detector-here = Acercar aquí el detector
hand-detector-away = Guardar el detector
hand-detector-at = acercar la punta a
hand-detector-hint = Solo huele refrigerante. Vaya despacio, por debajo de la unión.
hand-wet = Mojar con solución jabonosa
hand-wipe = Secar

# Uniones y filtro.
hand-last-pulled = Último apriete: { $torque }.
hand-loosen = Aflojar la tuerca una vuelta
hand-take-apart = Desarmar la unión
hand-plug = Taponar los dos extremos
hand-renew-flare = Cortar y rehacer el abocardado
hand-flare-of = Abocardado de tubo de { $size }.
hand-wrench = llave de torque
hand-make-up = Apretar a este torque
hand-drier-take-out = Sacar el filtro
hand-drier-new = En el carro hay un filtro nuevo, aún con sus tapas.
hand-drier-toward-metering = Montar el nuevo, flecha hacia el dispositivo de expansión
hand-drier-toward-outdoor = Montar el nuevo, flecha hacia la unidad exterior
hand-glass-still = Nada se mueve: llena de líquido o vacía. El ojo no lo distingue.
hand-glass-vapour = Viene vapor con el líquido.
hand-glass-no-flow = No fluye nada.
hand-clean-coil = Limpiar el serpentín exterior
hand-change-filter = Cambiar el filtro de aire

# Termómetros.
hand-clamp-here = Sujetar aquí un termómetro
hand-unclamp = Quitar el termómetro
hand-hang-here = Colgar aquí un termómetro
hand-unhang = Retirar el termómetro
hand-it-shows = Marca { $shown }.
hand-left-in-case = { $count ->
        [one] Queda 1 en el estuche.
       *[other] Quedan { $count } en el estuche.
    }
hand-put-one-at = poner uno en
hand-take-back = Recoger: { $place }

# Bomba y vacuómetro.
hand-pump-start = Encender la bomba
hand-pump-stop = Parar la bomba
hand-inlet-open = Abrir la válvula de entrada de la bomba
hand-inlet-shut = Cerrar la válvula de entrada de la bomba
hand-ballast-open = Abrir el lastre de gas
hand-ballast-shut = Cerrar el lastre de gas
hand-oil-milky = El aceite en la mirilla se ve lechoso.
hand-oil-clear = El aceite en la mirilla está limpio.
hand-tool-rated = Su caja dice: apto para refrigerantes que arden.
hand-tool-not-rated = Nada en su caja dice que sea apto para refrigerantes que arden.
hand-change-oil = Cambiar el aceite de la bomba
hand-gauge-ruined = Su sensor recibió presión: ya no muestra nada.
hand-gauge-at = enroscarlo
hand-gauge-open = Abrir la válvula del vacuómetro
hand-gauge-shut = Cerrar la válvula del vacuómetro

# Nitrógeno y refrigerante.
hand-nitrogen-open = Abrir el cilindro de nitrógeno
hand-nitrogen-shut = Cerrar el cilindro de nitrógeno
hand-regulator-fit = Poner el regulador
hand-regulator-off = Quitar el regulador
hand-regulator-back-off = Aflojar del todo el regulador
hand-regulator = regulador
hand-outlet-shows = Salida { $shown }
hand-cylinder-shows = Cilindro { $shown }
hand-cylinder-shut = Cerrar el cilindro
hand-cylinder-crack = Entreabrir el cilindro
hand-cylinder-open = Abrir el cilindro
hand-cylinder-valve = válvula del cilindro abierta
hand-cylinder-invert = Invertir el cilindro (líquido)
hand-cylinder-upright = Ponerlo de pie (vapor)
hand-scale-shows = Báscula { $shown }
hand-tare = Tarar la báscula

# Mangueras y llaves.
hand-hose-to = poner su extremo
hand-purge = Purgar la manguera
hand-purged = Purgada desde que se conectó.
hand-not-purged = Todavía sin purgar.
hand-hose-off = Quitar la manguera
hand-valve-shut = Cerrar la llave
hand-valve-crack = Entreabrir la llave
hand-valve-open = Abrir la llave
hand-hand-valve = llave abierta

# Interruptores: la cosa, y la palabra de cada estado.
hand-protection = Gafas y guantes
hand-ventilation = Puertas, con ventilador
hand-disconnect = Desconectador
hand-lock-and-tag = Candado y etiqueta
hand-contactor = Barra del contactor
hand-clamp-meter = Pinza amperimétrica
hand-stem-cap = Tapa del vástago
hand-port-cap = Tapa del puerto
hand-core-tool = Extractor de núcleos
hand-core-tool-valve = Válvula del extractor
hand-core = Núcleo
hand-detector = Detector de fugas
hand-bubbles = Solución jabonosa
hand-thermometer = Termómetro
hand-pump = Bomba
hand-inlet = Válvula de entrada
hand-ballast = Lastre de gas
hand-gauge-valve = Válvula del vacuómetro
hand-nitrogen = Válvula del cilindro
hand-regulator-there = Regulador
hand-cylinder-stands = Cilindro
hand-on = puesto
hand-off = quitado
hand-in = dentro
hand-out = fuera
hand-open = abierto
hand-shut = cerrado
hand-held = sujeto
hand-free = libre
hand-runs = en marcha
hand-stands = parado
hand-upright = de pie
hand-upside-down = invertido
hand-here = aquí
hand-away = guardado
hand-is-wet = mojado
hand-is-dry = seco

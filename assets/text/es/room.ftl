# Las salas: el comienzo, el trabajo, el final.

room-tagline = Un aire acondicionado dividido en reparación, para practicar.
room-before-you-begin = Antes de empezar
room-have-read = Lo he leído
room-your-name = Su nombre
room-practice-in = Práctica de { $exercises }.
room-level = nivel { $level } de 5
room-go-to-work = Empezar: { $title }

room-time-on-job = tiempo de trabajo
room-times-as-fast = ir { $times } veces más rápido
room-not-done = No se hizo: { $why }
room-at-hand = A mano
room-job-sheet = Hoja de trabajo
room-strip-chart = Gráfico

room-back-to-list = Volver a la lista
room-passed = Aprobado: { $points } de { $of } puntos, { $percent } %
room-not-passed = No aprobado: { $points } de { $of } puntos, { $percent } %
room-kept-in = Guardado en { $place }
room-fingerprint = Huella { $fingerprint }
room-not-kept = No se pudo guardar el intento: { $trouble }
room-work-on-next = Para practicar ahora
room-points-of = { $points } de { $of }
room-points-open = abierto, { $of }
room-missed = no cumplido: { $criterion }
room-missed-critical = no cumplido, crítico: { $criterion }
room-for-the-assessor = Para el evaluador: { $question }
room-noted = Lo que se registró

room-start = Iniciar
room-stop = Parar
room-complaint = Queja
room-reference = Consulta
room-log = Registro
room-menu = Menú
room-clock-stopped = Reloj parado: las manos trabajan, nada fluye hasta que se inicie

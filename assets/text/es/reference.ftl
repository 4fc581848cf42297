# Consulta: la tabla, los pares de apriete, la placa.

reference-card = Tabla
reference-torque = Par de apriete
reference-plate = Placa
reference-card-of = { $refrigerant }: { $pressure } arriba, { $degrees } de saturación abajo
reference-hair = línea guía
reference-at = satura a { $pressure }
reference-at-blend = burbuja { $bubble }, rocío { $dew }
reference-reads-nothing = Las líneas guía se mueven a mano. No leen nada por sí solas.
reference-torque-title = Tuercas abocinadas: par de apriete según el diámetro exterior del tubo
reference-torque-note = Primero vale el dato del fabricante.

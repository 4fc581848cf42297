# Lo que puede fallar y el diagnóstico que lo dice.

fault-none = no falla nada
fault-at = { $fault }, { $spot }
fault-air-inside = aire dentro del circuito
fault-blocked-metering = dispositivo de expansión obstruido
fault-clogged-drier = filtro deshidratador obstruido
fault-dirty-filter = filtro de aire sucio
fault-fouled-condenser = serpentín exterior sucio
fault-leak = fuga
fault-leaking-seat = válvula de servicio que no cierra
fault-moisture = humedad dentro del circuito
fault-overcharge = exceso de carga
fault-undercharge = falta de carga
fault-weak-compressor-valves = válvulas del compresor débiles

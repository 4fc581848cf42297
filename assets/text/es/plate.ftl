# La placa de datos.

plate-line = { $what }: { $says }
plate-refrigerant = Refrigerante
plate-factory-charge = Carga de fábrica
plate-right-charge = Carga correcta
plate-of-class = { $name }, clase { $class }
plate-superheat-by-chart = sobrecalentamiento según la tabla de carga
plate-subcooling = subenfriamiento { $degrees }
plate-by-weight = por peso; sobrecalentamiento { $degrees }
plate-charge = { $mass } con { $length } de tubería
plate-test-low = Presión de prueba, lado de baja
plate-test-high = Presión de prueba, lado de alta
plate-rated-load = Corriente nominal

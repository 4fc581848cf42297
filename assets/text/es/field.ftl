# Las casillas de la hoja de trabajo que no tienen nombre en otra parte.

field-standing-pressure = presión estática
field-suction-pressure = presión de succión
field-liquid-pressure = presión de líquido
field-amps = amperios del compresor
field-superheat = sobrecalentamiento
field-subcooling = subenfriamiento
field-target-superheat = sobrecalentamiento objetivo
field-vacuum = vacío
field-refrigerant-in = refrigerante añadido
field-refrigerant-out = refrigerante extraído

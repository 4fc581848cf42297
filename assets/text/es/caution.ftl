# Avisos donde el trabajo puede herir: al empezar y en la cosa misma.

caution-caution = Cuidado. { $text }
caution-practice-only = Esto es solo práctica. No convierte a nadie en técnico con licencia: deciden los códigos locales, la placa de datos y el técnico con licencia.
caution-pressure = Presión: un circuito o un cilindro que se suelta puede herir. Primero los ojos y las manos.
caution-electricity = Electricidad: bloquear, descargar el capacitor, comprobar que no hay tensión.
caution-cold = Frío: el refrigerante líquido quema la piel y los ojos.
caution-oxygen = Nunca oxígeno, nunca aire de compresor: con aceite y presión explotan. Solo nitrógeno seco.
caution-regulator = Nunca nitrógeno sin su regulador: un cilindro lleno revienta un serpentín.
caution-heat = Calor: la línea de descarga y un compresor en marcha queman.
caution-fire = Fuego: algunos refrigerantes arden. Ventile, aleje chispas y llamas, use herramientas aptas.
caution-at-disconnect = Bloquee y compruebe que no hay tensión antes de meter las manos.
caution-at-compressor = Bornes con tensión, un capacitor cargado, una línea de descarga caliente.
caution-at-joint = Compruebe primero 0 psig. Afloje despacio, lejos de la cara.
caution-at-hose = El líquido en el extremo de una manguera quema: gafas y guantes.
caution-at-nitrogen = Primero el regulador, puesto y aflojado. Nunca oxígeno en su lugar.
caution-at-cylinder = Presión, y quemaduras de frío por el líquido.
caution-burns = Este refrigerante arde: ventile, sin llama ni chispa cerca, herramientas aptas. Purgue con nitrógeno antes de abrir o soldar.

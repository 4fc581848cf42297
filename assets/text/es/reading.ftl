# Lo que muestran los instrumentos y cómo se escribe un valor.

reading-bubbles = burbujas en { $spot }
reading-detector = detector de fugas
reading-over-range = fuera de escala
reading-nothing = sin lectura
reading-microns = { $value } micrones
reading-gauge-kilopascals = { $value } kPa man.
reading-below = menos de { $level }
reading-above = más de { $level }
reading-between = entre { $low } y { $high }

# Dónde está el vacuómetro.
reading-gauge-on-cart = en el carro
reading-gauge-at-pump = en la bomba
reading-gauge-at-manifold = en el múltiple
reading-gauge-at-suction-port = en el puerto de succión
reading-gauge-at-liquid-port = en el puerto de líquido

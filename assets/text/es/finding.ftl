# Lo que queda registrado durante el trabajo.

finding-released = { $amount } de refrigerante liberados en { $place }
finding-air-drawn-in = { $amount } de aire aspirados en { $place }
finding-opened-under-pressure = se abrió { $place } con { $amount } dentro
finding-stood-open = el circuito estuvo abierto { $amount } en { $place }
finding-ran-in-vacuum = el compresor trabajó bajo 0 psig durante { $amount }
finding-ran-without-oil-return = el compresor trabajó { $amount } con un flujo que no alcanza para devolverle el aceite
finding-energised-in-deep-vacuum = el compresor recibió corriente en vacío profundo: su motor está arruinado
finding-liquid-to-compressor = { $amount } de líquido volvieron al compresor en marcha
finding-over-nameplate = { $place } estuvo { $amount } por encima de la presión de prueba de su placa
finding-high-pressure-trip = el presostato de alta paró el compresor
finding-micron-gauge-over-pressured = el vacuómetro recibió { $amount }: su sensor está arruinado
finding-worked-live = trabajo en { $place } sin candado ni etiqueta en el desconectador
finding-unprotected = trabajo en { $place } sin gafas ni guantes
finding-over-tightened = se apretó de más { $place }: se rajó
finding-joint-left-loose = { $place } quedó { $metric } ({ $inch }) por debajo de su torque
finding-cap-left-off = quedó sin poner la tapa de { $place }
finding-kit-left-on = quedó en el equipo { $place }
finding-valve-left-shut = { $place } no quedó en su asiento trasero
finding-drier-backwards = la flecha del filtro apunta contra el flujo
finding-ignition-risk = { $amount } de refrigerante que arde salieron junto a { $place }
finding-flammable-air = el aire en { $place } llegó al { $percent } % de lo que puede arder
finding-opened-unpurged = se abrió { $place } con refrigerante que arde detrás, sin purgar
finding-unventilated = se abrió { $place } en un lugar sin ventilar
finding-tool-not-rated = { $place } no es apto para un refrigerante que arde

# Las partes del sitio que se pueden señalar: nombres que no están en name.ftl.

part-hose-low = manguera de baja (azul, L)
part-hose-high = manguera de alta (roja, H)
part-hose-centre = manguera central (amarilla, C)

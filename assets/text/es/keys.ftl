# Las teclas.

keys-space = Espacio
keys-escape = Esc
keys-tab = Tab
keys-enter = Intro, Esc
keys-arrows = flechas
keys-all = Todas las teclas
keys-go-to = Ir a una parte: algunas letras de sus palabras
keys-foot = 1–9 acción   G ir a   F6 a mano   ? teclas
keys-does-space = iniciar o parar el reloj
keys-does-drawers = queja, hoja de trabajo, consulta, gráfica, registro
keys-does-wait = esperar lo que muestre un instrumento
keys-does-slots = la acción en ese lugar, a mano
keys-does-go-to = ir a una parte
keys-does-thought = pedir una pista
keys-does-hand-back = abrir la entrega; mantenerla ahí un segundo para entregar
keys-does-areas = a lo que está a mano
keys-does-tab = al siguiente control
keys-does-enter = a lo que se puede hacer con una parte, y de vuelta a ella
keys-does-arrows = girar un cuarto de vuelta; con Mayús, una décima de eso
keys-does-list = esta lista

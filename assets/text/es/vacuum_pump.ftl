### Bomba de vacío.

# Formas: .the con su artículo; .on donde está una manguera; .not cuando no es así; .why lo que sigue de ello; .aim, .way y .goal
# son las tres profundidades de una idea.

vacuum_pump-name = bomba de vacío
    .the = la bomba de vacío
    .on = en la bomba de vacío
vacuum_pump-switch = interruptor de la bomba de vacío
    .the = el interruptor de la bomba de vacío

vacuum_pump-do-run = { $value ->
    [yes] encender la bomba de vacío
   *[no] parar la bomba de vacío
}
vacuum_pump-do-inlet = { $value ->
    [yes] abrir la entrada de la bomba
   *[no] cerrar la entrada de la bomba
}
vacuum_pump-do-ballast = { $value ->
    [yes] abrir el lastre de gas
   *[no] cerrar el lastre de gas
}
vacuum_pump-do-change-oil = cambiar el aceite de la bomba

vacuum_pump-done-started = se encendió la bomba de vacío
    .aim = ¿Qué hay dentro ahora que debe irse antes de que vuelva el refrigerante?
    .way = Aire y agua, y solo se van con un vacío profundo: paso ancho, aceite fresco y el vacuómetro lejos de la bomba.
    .goal = la bomba de vacío en marcha

vacuum_pump-is-evacuating = bomba haciendo vacío
    .not = bomba sin hacer vacío
vacuum_pump-is-shut-off = bomba aislada
    .not = bomba sin aislar

vacuum_pump-found-under-pressure = la bomba de vacío en marcha recibió { $amount }
    .why = Expulsa su aceite y hay que cambiarlo.
    .aim = ¿Qué no soporta la bomba de vacío en su entrada?
    .way = La presión. El nitrógeno sale antes al aire libre, despacio. El manómetro de baja dice cuándo se fue.
    .goal = 0 psig en el circuito antes de darle paso a la bomba
vacuum_pump-found-pumped-away = { $amount } de refrigerante salieron por la bomba
    .why = Lo que toma la bomba se va al aire, a través de su aceite.

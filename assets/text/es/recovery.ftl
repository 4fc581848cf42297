### Recuperadora con su cilindro en la báscula de recuperación.

# Formas: .the con su artículo; .on donde está una manguera; .not cuando no es así; .why lo que sigue
# de ello; .aim, .way y .goal son las tres profundidades de una idea.

recovery-name = recuperadora
    .the = la recuperadora
    .on = en la recuperadora
recovery-switch = interruptor de la recuperadora
    .the = el interruptor de la recuperadora

recovery-do-run = { $value ->
    [yes] encender la recuperadora
   *[no] parar la recuperadora
}
recovery-do-liquid = { $value ->
    [yes] poner la entrada de la recuperadora en líquido
   *[no] poner la entrada de la recuperadora en vapor
}
recovery-do-valve = { $value ->
    [yes] abrir el cilindro de recuperación
   *[no] cerrar el cilindro de recuperación
}
recovery-do-tare = poner a cero la báscula de recuperación

recovery-shows-scale = báscula de recuperación
    .the = la báscula de recuperación
recovery-shows-outlet = salida de la recuperadora
    .the = la salida de la recuperadora

recovery-done-started = se encendió la recuperadora
    .aim = ¿Adónde va la carga antes de abrir el circuito?
    .way = A un cilindro de recuperación, con la recuperadora: primero el líquido, después el vapor. La báscula dice cuánto entró; el manómetro de baja, cuándo no queda nada.
    .goal = la recuperadora en marcha

recovery-is-recovering = refrigerante en recuperación
    .not = sin recuperar refrigerante
recovery-is-stopped = recuperadora parada por su presostato
    .not = presostato de la recuperadora sin disparar

recovery-found-overfilled = el cilindro de recuperación se llenó { $amount } por encima de su límite
    .why = El líquido que se calienta en un cilindro lleno lo revienta.
    .aim = ¿Cuánto puede contener este cilindro?
    .way = El 80 % de su capacidad de agua por peso, por la densidad relativa del refrigerante. Lo dice la báscula de recuperación.
    .goal = el cilindro de recuperación dentro de su límite
recovery-found-stopped = el presostato de alta paró la recuperadora
    .why = Lo que comprime la recuperadora no tiene lugar: la válvula está cerrada, o el cilindro está caliente o lleno.
recovery-found-liquid-slug = { $amount } de líquido llegaron a la recuperadora con la entrada en vapor
    .why = El líquido no se comprime: dobla las válvulas de la recuperadora.
    .aim = ¿Qué entra ahora en la recuperadora, líquido o vapor?
    .way = El líquido pasa con la entrada en líquido, que lo estrangula. El vapor pasa con la entrada abierta.
    .goal = la entrada de la recuperadora en líquido mientras llega líquido

recovery-refuses-so = La recuperadora ya está así.

recovery-machine = máquina
recovery-inlet = entrada
recovery-liquid = en líquido
recovery-vapour = en vapor
recovery-cylinder = cilindro de recuperación
recovery-start = Encender la recuperadora
recovery-stop = Parar la recuperadora
recovery-to-liquid = Poner la entrada en líquido
recovery-to-vapour = Poner la entrada en vapor
recovery-open = Abrir su cilindro
recovery-shut = Cerrar su cilindro
recovery-tare = Poner a cero la báscula de recuperación
recovery-reads = { $what }: { $shown }
recovery-runs = en marcha
recovery-stands = parada
recovery-tripped = parada por su presostato
recovery-at-liquid = entrada en líquido
recovery-at-vapour = entrada en vapor
recovery-cylinder-open = cilindro abierto
recovery-cylinder-shut = cilindro cerrado
recovery-caption = recuperación
recovery-caution = Llene un cilindro de recuperación al 80 % de su capacidad de agua por peso como máximo, y con un solo refrigerante. Use gafas y guantes.

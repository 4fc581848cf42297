### Cilindro de nitrógeno y regulador.

# Formas: .the con su artículo; .on donde está una manguera; .not cuando no es así; .why lo que sigue de ello; .aim, .way y .goal
# son las tres profundidades de una idea.

nitrogen-name = cilindro de nitrógeno
    .the = el cilindro de nitrógeno
    .on = en el nitrógeno

nitrogen-do-valve = { $value ->
    [yes] abrir el cilindro de nitrógeno
   *[no] cerrar el cilindro de nitrógeno
}
nitrogen-do-regulator = { $value ->
    [yes] poner el regulador al cilindro de nitrógeno
   *[no] quitar el regulador del cilindro de nitrógeno
}
nitrogen-do-set-regulator = { $value ->
    [none] aflojar del todo el regulador
   *[other] ajustar el regulador a { $value }
}

nitrogen-shows-outlet = salida de nitrógeno
    .the = la salida de nitrógeno
nitrogen-shows-cylinder = cilindro de nitrógeno
    .the = el cilindro de nitrógeno

nitrogen-done-opened = se abrió el cilindro de nitrógeno
    .aim = ¿Cómo se prueba que es hermético antes de que cueste refrigerante?
    .way = Con nitrógeno seco, por su regulador, por pasos. El manómetro de salida dice lo que entra; la placa de datos, cuánto se puede.
    .goal = entrada de nitrógeno

nitrogen-is-shut-off = nitrógeno cerrado
    .not = nitrógeno sin cerrar
nitrogen-is-regulator-fitted = regulador puesto
    .not = sin regulador

nitrogen-found-no-regulator = entró nitrógeno sin regulador
    .why = Un cilindro lleno revienta aquello a lo que está conectado.
    .aim = ¿Qué hay entre un cilindro lleno de nitrógeno y un serpentín delgado?
    .way = Solo un regulador, con el tornillo aflojado antes de abrir el cilindro. Lo dicen sus dos manómetros.
    .goal = el regulador en el cilindro de nitrógeno, aflojado

### Cilindro de refrigerante en su báscula.

# Formas: .the con su artículo; .on donde está una manguera; .not cuando no es así; .why lo que sigue de ello; .aim, .way y .goal
# son las tres profundidades de una idea.

refrigerant_cylinder-name = cilindro de refrigerante
    .the = el cilindro de refrigerante
    .on = en el cilindro de refrigerante

refrigerant_cylinder-do-valve = { $value ->
    [open] abrir el cilindro de refrigerante
    [shut] cerrar el cilindro de refrigerante
   *[partly] abrir el cilindro de refrigerante al { $percent } %
}
refrigerant_cylinder-do-inverted = { $value ->
    [yes] invertir el cilindro
   *[no] poner el cilindro de pie
}
refrigerant_cylinder-do-tare = poner la báscula a cero

refrigerant_cylinder-shows-scale = báscula
    .the = la báscula

refrigerant_cylinder-done-opened = se abrió el cilindro de refrigerante
    .aim = ¿Cuánto falta, y cómo sabrá cuándo es bastante?
    .way = Por peso, en pasos pequeños y con una espera después de cada uno. La báscula dice lo que entró; el sobrecalentamiento o el subenfriamiento, cuándo parar.
    .goal = entrada de refrigerante del cilindro

# Antes de entregar un trabajo.

back-hand-back = Entregar
back-before = Antes de entregar
back-what-eyes-see = Lo que se ve al dar una vuelta al equipo. Una tuerca floja o una fuga no se ven.
back-still-on = Aún puesto
back-still-off = Aún quitado
back-open-or-not-set = Abierto o sin ajustar
back-nothing = nada
back-line = { $part }: { $state }
back-blanks = Hoja de trabajo: { $empty } de { $all } casillas están vacías.
back-diagnosis-is-there = Hay un diagnóstico escrito.
back-no-diagnosis = No hay ningún diagnóstico escrito.
back-hold = Mantener para entregar
back-hold-key = mantener H

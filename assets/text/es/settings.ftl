# Los ajustes.

settings-settings = Ajustes
settings-units = Unidades
settings-gauges = Manómetros
settings-no-scale = sin escala de saturación
settings-colours = Colores
settings-paper = papel
settings-night = noche
settings-wall = pared
settings-text = Texto
settings-not-read = No se pueden leer los ajustes de { $file }: { $error }
settings-not-kept = No se pueden guardar los ajustes en { $file }: { $error }
settings-wrong = { $wrong }
    Rigen los ajustes de siempre. El archivo queda como está hasta que usted cambie uno.

# La barra de arriba: lo que vale en toda la ventana.

window-practice-only = Solo práctica: deciden los códigos locales y el técnico con licencia.
window-gauge-scale = escala del manómetro

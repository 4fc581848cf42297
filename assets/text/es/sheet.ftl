# La hoja de trabajo: casillas, diagnóstico, entrega.

sheet-number-please = un número, por favor
sheet-diagnosis = Diagnóstico
sheet-what-is-wrong = qué falla
sheet-where = dónde
sheet-write-diagnosis = Anotar el diagnóstico
sheet-on-the-sheet = En la hoja: { $diagnosis }
sheet-hand-back-warning = El trabajo se da por terminado y se califica como está.
sheet-hand-back-now = Entregar ahora
sheet-work-on = Seguir trabajando

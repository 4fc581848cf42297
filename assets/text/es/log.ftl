# El registro.

log-all = todo
log-not-done = no hecho

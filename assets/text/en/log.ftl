# The log.

log-all = all
log-not-done = not done

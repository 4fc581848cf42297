# The bar at the top of the window: what holds in every room.

window-practice-only = Practice only: local codes and licensed practice decide.
window-gauge-scale = gauge scale

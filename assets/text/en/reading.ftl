# What instruments show, and how a value is written.

reading-bubbles = bubbles at { $spot }
reading-detector = detector
reading-over-range = over range
reading-nothing = no reading
reading-microns = { $value } microns
reading-gauge-kilopascals = { $value } kPa gauge
reading-below = below { $level }
reading-above = above { $level }
reading-between = between { $low } and { $high }

# Where the micron gauge is.
reading-gauge-on-cart = on the cart
reading-gauge-at-pump = at the pump
reading-gauge-at-manifold = at the manifold
reading-gauge-at-suction-port = at the suction port
reading-gauge-at-liquid-port = at the liquid port

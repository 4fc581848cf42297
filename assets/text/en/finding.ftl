# What the watch notes.

finding-released = { $amount } of refrigerant released at { $place }
finding-air-drawn-in = { $amount } of air drawn in at { $place }
finding-opened-under-pressure = { $place } opened under { $amount }
finding-stood-open = the circuit stood open for { $amount } at { $place }
finding-ran-in-vacuum = the compressor ran below 0 psig for { $amount }
finding-ran-without-oil-return = the compressor ran for { $amount } with too little flow to bring its oil back
finding-energised-in-deep-vacuum = the compressor was energised in a deep vacuum: its motor is ruined
finding-liquid-to-compressor = { $amount } of liquid came back to the running compressor
finding-over-nameplate = { $place } stood { $amount } above its nameplate test pressure
finding-high-pressure-trip = the high-pressure switch stopped the compressor
finding-micron-gauge-over-pressured = the micron gauge met { $amount }: its sensor is ruined
finding-worked-live = work at { $place } without lock and tag on the disconnect
finding-unprotected = work at { $place } without glasses and gloves
finding-over-tightened = { $place } was over-tightened: it split
finding-joint-left-loose = { $place } was left { $metric } ({ $inch }) short of its torque
finding-cap-left-off = the cap of { $place } was left off
finding-kit-left-on = { $place } was left on the unit
finding-valve-left-shut = { $place } was not back-seated
finding-drier-backwards = the drier's arrow points against the flow
finding-ignition-risk = { $amount } of refrigerant that burns went out beside { $place }
finding-flammable-air = the air at { $place } came to { $percent } % of what can burn
finding-opened-unpurged = { $place } opened with refrigerant that burns behind it, not purged
finding-unventilated = { $place } opened in a room that was not ventilated
finding-tool-not-rated = { $place } is not rated for a refrigerant that burns

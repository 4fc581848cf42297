# Reference: the card, the torques, the nameplate.

reference-card = Card
reference-torque = Torque
reference-plate = Nameplate
reference-card-of = { $refrigerant }: { $pressure } above, { $degrees } saturated below
reference-hair = hair line
reference-at = saturates at { $pressure }
reference-at-blend = bubble { $bubble }, dew { $dew }
reference-reads-nothing = You move the hair lines by hand. They read nothing by themselves.
reference-torque-title = Flare nuts: torque by the outer diameter of the tube
reference-torque-note = The manufacturer's own figure goes first.

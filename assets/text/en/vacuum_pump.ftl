### Vacuum pump.

# Forms: .the with its article; .on where a hose is; .not when it is not so; .why what follows from it; .aim, .way and .goal
# are the three depths of a thought.

vacuum_pump-name = vacuum pump
    .the = the vacuum pump
    .on = on the vacuum pump
vacuum_pump-switch = vacuum pump's switch
    .the = the vacuum pump's switch

vacuum_pump-do-run = { $value ->
    [yes] start the vacuum pump
   *[no] stop the vacuum pump
}
vacuum_pump-do-inlet = { $value ->
    [yes] open the pump's inlet
   *[no] shut the pump's inlet
}
vacuum_pump-do-ballast = { $value ->
    [yes] open the gas ballast
   *[no] shut the gas ballast
}
vacuum_pump-do-change-oil = change the pump's oil

vacuum_pump-done-started = started the vacuum pump
    .aim = What is inside now that must be gone before refrigerant comes back?
    .way = Air and water, and they leave only by a deep vacuum: wide ways, fresh oil, and the micron gauge far from the pump.
    .goal = the vacuum pump running

vacuum_pump-is-evacuating = pump evacuating
    .not = pump not evacuating
vacuum_pump-is-shut-off = pump shut off
    .not = pump not shut off

vacuum_pump-found-under-pressure = the running vacuum pump met { $amount }
    .why = Its oil is blown out and must be changed.
    .aim = What can the vacuum pump not bear at its inlet?
    .way = Pressure. The nitrogen goes to the open air first, slowly. The low gauge tells when it is gone.
    .goal = 0 psig in the circuit before the pump is let to it
vacuum_pump-found-pumped-away = { $amount } of refrigerant went out through the pump
    .why = What the pump takes goes into the air, through its oil.

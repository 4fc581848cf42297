### Nitrogen cylinder and regulator.

# Forms: .the with its article; .on where a hose is; .not when it is not so; .why what follows from it; .aim, .way and .goal
# are the three depths of a thought.

nitrogen-name = nitrogen cylinder
    .the = the nitrogen cylinder
    .on = on the nitrogen

nitrogen-do-valve = { $value ->
    [yes] open the nitrogen cylinder
   *[no] shut the nitrogen cylinder
}
nitrogen-do-regulator = { $value ->
    [yes] put the regulator on the nitrogen cylinder
   *[no] take the regulator off the nitrogen cylinder
}
nitrogen-do-set-regulator = { $value ->
    [none] back the regulator off
   *[other] set the regulator to { $value }
}

nitrogen-shows-outlet = nitrogen outlet
    .the = the nitrogen outlet
nitrogen-shows-cylinder = nitrogen cylinder
    .the = the nitrogen cylinder

nitrogen-done-opened = opened the nitrogen cylinder
    .aim = How is it proved tight before it costs refrigerant?
    .way = With dry nitrogen, through its regulator, in steps. The outlet gauge tells what goes in, the nameplate how much may.
    .goal = nitrogen let in

nitrogen-is-shut-off = nitrogen shut off
    .not = nitrogen not shut off
nitrogen-is-regulator-fitted = regulator fitted
    .not = no regulator fitted

nitrogen-found-no-regulator = nitrogen was let in without a regulator
    .why = A full cylinder bursts what it is connected to.
    .aim = What stands between a full nitrogen cylinder and a thin coil?
    .way = Only a regulator, with its screw backed off before the cylinder opens. Its two gauges tell.
    .goal = the regulator on the nitrogen cylinder, backed off

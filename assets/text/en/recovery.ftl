### Recovery machine with its cylinder on the recovery scale.

# Forms: .the with its article; .on where a hose is; .not when it is not so; .why what follows from it;
# .aim, .way and .goal are the three depths of a thought.

recovery-name = recovery machine
    .the = the recovery machine
    .on = on the recovery machine
recovery-switch = recovery machine's switch
    .the = the recovery machine's switch

recovery-do-run = { $value ->
    [yes] start the recovery machine
   *[no] stop the recovery machine
}
recovery-do-liquid = { $value ->
    [yes] set the recovery machine's inlet to liquid
   *[no] set the recovery machine's inlet to vapour
}
recovery-do-valve = { $value ->
    [yes] open the recovery cylinder
   *[no] shut the recovery cylinder
}
recovery-do-tare = zero the recovery scale

recovery-shows-scale = recovery scale
    .the = the recovery scale
recovery-shows-outlet = recovery outlet
    .the = the recovery outlet

recovery-done-started = started the recovery machine
    .aim = Where does the charge go before the circuit is opened?
    .way = Into a recovery cylinder, by the machine: liquid first, then vapour. The scale tells how much came, the low gauge when nothing is left.
    .goal = the recovery machine running

recovery-is-recovering = refrigerant being recovered
    .not = no refrigerant being recovered
recovery-is-stopped = recovery machine stopped by its switch
    .not = recovery machine's switch not tripped

recovery-found-overfilled = the recovery cylinder was filled { $amount } past its limit
    .why = Liquid that warms in a full cylinder bursts it.
    .aim = How much may this cylinder hold?
    .way = 80 % of its water capacity by weight, times the specific gravity of the refrigerant. The recovery scale tells.
    .goal = the recovery cylinder within its limit
recovery-found-stopped = the high-pressure switch stopped the recovery machine
    .why = What the machine compresses has no room: the valve is shut, or the cylinder is hot or full.
recovery-found-liquid-slug = { $amount } of liquid came to the recovery machine with its inlet set to vapour
    .why = Liquid does not compress: it bends the valves of the machine.
    .aim = What comes into the recovery machine now, liquid or vapour?
    .way = Liquid goes through the inlet set to liquid, which throttles it. Vapour goes through the open inlet.
    .goal = the inlet of the recovery machine set to liquid while liquid comes

recovery-refuses-so = The recovery machine is so already.

recovery-machine = machine
recovery-inlet = inlet
recovery-liquid = liquid
recovery-vapour = vapour
recovery-cylinder = recovery cylinder
recovery-start = Start the machine
recovery-stop = Stop the machine
recovery-to-liquid = Set the inlet to liquid
recovery-to-vapour = Set the inlet to vapour
recovery-open = Open its cylinder
recovery-shut = Shut its cylinder
recovery-tare = Zero the recovery scale
recovery-reads = { $what }: { $shown }
recovery-runs = running
recovery-stands = standing
recovery-tripped = stopped by its switch
recovery-at-liquid = inlet at liquid
recovery-at-vapour = inlet at vapour
recovery-cylinder-open = cylinder open
recovery-cylinder-shut = cylinder shut
recovery-caption = recovery
recovery-caution = Fill a recovery cylinder to 80 % of its water capacity by weight at the most, with one refrigerant only. Wear glasses and gloves.

# The coach's thoughts: the aim as a question, then the way: the principle and the instrument that
# tells. None of them says where to put a hand.

# Of milestones.
thought-again-aim = Once is one look. What would a second time show that the first could not?
thought-again-way = Some faults thaw, drain or settle while the unit rests, and come back. Compare the gauges of both runs on the strip chart.
thought-trace-aim = What will the detector hear in a circuit full of pure nitrogen?
thought-trace-way = Nothing. A trace of refrigerant goes in first, a few psi on the low gauge, and the nitrogen on top of it.
thought-vacuum-broken-aim = What is still inside when a vacuum comes to rest and goes no deeper?
thought-vacuum-broken-way = Water boils off slowly and leaves slowly. Dry gas takes it along at the next pull; the decay on the micron gauge tells whether it helped.
thought-hand-back-aim = Would you get into the van now, or is there something you would come back for?
thought-hand-back-way = Walk round once: what runs, what is capped, what is written down, what the customer was told.
thought-front-seat-liquid-aim = Where should the charge be while the lines are open, and how does it get there?
thought-front-seat-liquid-way = The compressor fills whatever has its way out shut, so the liquid side comes first. The low gauge tells what is left in the lines.
thought-front-seat-suction-aim = When is the low side empty enough, and what if the compressor goes on?
thought-front-seat-suction-way = Below the atmosphere air comes in and the motor loses its cooling. Watch the low gauge down, stop at once, then see whether it climbs again.
thought-open-liquid-aim = How does the charge come back without a jolt, and what has to be out of its way?
thought-open-liquid-way = What bears no pressure is isolated first. Then liquid, slowly, until the low gauge stands well above the atmosphere.
thought-open-suction-aim = What must the low side show before the vapour side is given free?
thought-open-suction-way = Nothing may rush: both sides of the valve near each other. The low gauge tells.
thought-open-joint-aim = What has to be true of the circuit before a flare may be opened?
thought-open-joint-way = Nothing may be behind it: the charge shut away, the supply dead and locked, no pressure. The low gauge tells what is left, the first crack of the nut the rest.
thought-make-up-aim = What makes a flare tight: force, or the right force?
thought-make-up-way = A clean face, a drop of oil, two wrenches, and the torque that belongs to the size of the tube. The torque wrench tells.
thought-renew-flare-aim = Why does a joint leak that was pulled tight more than once?
thought-renew-flare-way = A scored face does not seal, however hard it is pressed. Look at it when the joint is apart.
thought-drier-out-aim = Which part of this circuit has done its time?
thought-drier-out-way = A drier that is full or that holds back is not cleaned. What it has taken up, and the temperatures before and after it, tell.
thought-drier-in-aim = What goes in last of all, and stands open shortest?
thought-drier-in-way = Its filling drinks the air of the place within minutes. The arrow goes with the liquid, toward the metering device.
thought-change-filter-aim = Does the indoor coil get the air that it needs?
thought-change-filter-way = With little air a coil goes below freezing before anything else is wrong. Compare return and supply air.
thought-sniff-aim = A closed circuit uses nothing up. If some is missing, where did it go?
thought-sniff-way = Refrigerant is heavier than air: the detector is held below each joint, slowly, out of the wind. Oil marks a place worth a look.
thought-wet-aim = The detector says near. What says exactly where?
thought-wet-way = Bubble solution grows at the very spot, if there is pressure behind it.
thought-purge-aim = What is inside a hose that comes from the cart, and where would it go?
thought-purge-way = Air. A breath of refrigerant from the unit pushes it out at the manifold, before anything runs.
thought-purge-centre-aim = What stands in the hose between the cylinder and the manifold?
thought-purge-centre-way = Air, until what comes next has pushed it out.
thought-cooling-aim = What can a unit at rest not tell?
thought-cooling-way = At rest all gauges say the same. Only a running circuit shows what each part does, so everything that reads is in place before.
thought-lock-out-aim = Who could start this machine while your hands are in it?
thought-lock-out-way = Off is not dead. Your own lock and tag hold the supply away; then the meter proves it.
thought-verify-dead-aim = How do you know that it is dead?
thought-verify-dead-way = A capacitor keeps its charge after the switch is off. The meter tells, when it was tried on something live.
thought-ventilate-aim = Where does the refrigerant go that gets out here, and what could light it?
thought-ventilate-way = It is heavier than air and gathers low. Moving air thins it out; the detector tells, if it is made for this refrigerant.

# Of conditions that must hold together.
thought-steady-run-aim = From when on may you believe what the gauges show?
thought-steady-run-way = After a start pressures and temperatures wander for a good ten minutes. They are steady when the strip chart lies flat.
thought-watched-run-aim = What does the unit do if nobody touches it and somebody watches?
thought-watched-run-way = Some faults come and go. A quarter of an hour of the low gauge says more than one look.
thought-bubbles-still-aim = How do you prove that this very joint is cured?
thought-bubbles-still-way = Wetted and under test pressure nothing may grow. The low gauge tells that there is pressure, the bubbles that none gets out.
thought-pressure-test-aim = How would you know that nothing leaves, when a gauge is so coarse?
thought-pressure-test-way = With the source shut off: note pressure and time, and wait. What falls in steady weather is a leak. The low gauge tells.
thought-decay-aim = What does a deep vacuum prove while the pump still pulls?
thought-decay-way = Nothing. With the pump shut off, flat is dry and tight, a rise that levels off is water, a steady rise is a leak. The micron gauge tells, away from the pump.
thought-stay-aim = What has to stay as it is, and for how long?
thought-stay-way = One look is no proof, time is. The instruments named in the task tell.

# Of what can be kept off.
thought-protect-aim = What could reach your eyes and hands before you know it?
thought-protect-way = Liquid refrigerant burns cold, and a fitting lets go without a warning. What you wear tells.
thought-drier-arrow-aim = Which way does the liquid flow here, and which way does the drier want it?
thought-drier-arrow-way = The arrow on the shell points with the flow, toward the metering device.
thought-stand-open-aim = What goes into a pipe that stands open?
thought-stand-open-way = The air of the place, with its water: into the oil and into the drier. The clock tells; what is not worked on is plugged.
thought-gauge-pressure-aim = Which of your instruments dies when the charge comes back?
thought-gauge-pressure-way = One made for a vacuum bears no pressure: it is isolated before anything opens.
thought-caps-aim = What is the seal of a valve, when all is said and done?
thought-caps-way = The cap. A core and a packing seep, a cap with its gasket does not. A walk round the unit tells.
thought-back-seat-aim = Where does a stem belong on a unit that is in service?
thought-back-seat-way = On its back seat, out of the way of the flow. Turn by turn, until it stops.
thought-kit-aim = What on this unit is yours?
thought-kit-way = Hoses, tools and gauges go back to the cart, and each takes a breath along: the liquid of a hose is drawn into the low side first.

# Of the state at the hand-back.
thought-not-run-aim = The repair is done. How does anybody know that the unit is right?
thought-not-run-way = Only a run tells, long enough to be steady, on the circuit as it is handed back. Then superheat and subcooling, worked out once more.
thought-charge-share-aim = How much belongs in this unit, and how much is in it?
thought-charge-share-way = The nameplate says what belongs in, the scale what goes in, superheat or subcooling whether it fits. Small steps, and a wait after each.
thought-superheat-target-aim = Is the superheat what this weather asks for?
thought-superheat-target-way = The charging chart has the target for outdoor air and indoor wet bulb. More charge lowers the superheat of a fixed orifice; a wait shows by how much.
thought-subcooling-end-aim = How much liquid stands before the metering device?
thought-subcooling-end-way = With an expansion valve subcooling tells the charge: liquid pressure and liquid line, against the nameplate.
thought-permanent-gas-aim = What else is in the circuit beside refrigerant and oil?
thought-permanent-gas-way = Air and nitrogen do not condense: they stay in the condenser and raise the head pressure. Only a vacuum takes them out.
thought-water-aim = Is it dry, or did it only look so for a moment?
thought-water-way = Water hides in oil and drier and comes out slowly. A decay that levels off above the pump's own vacuum tells, on the micron gauge.
thought-drier-water-aim = How much of its life did the drier spend on the air of the place?
thought-drier-water-way = Its filling takes up water as long as it stands open. The clock tells.
thought-lost-aim = Where did the charge go?
thought-lost-way = The scale and the job sheet tell what went in and out.
thought-tight-aim = How do you know that it is tight under the pressure it works at?
thought-tight-way = The detector below each joint that was touched, then bubbles, with the unit running.
thought-drier-drop-aim = Does the liquid arrive as it left?
thought-drier-drop-way = Where liquid is throttled it cools. A thermometer before and one after the drier tell.

# Of the job sheet.
thought-diagnosis-aim = What explains every reading you have, and not only one of them?
thought-diagnosis-way = Suction pressure says what the indoor coil gets. Superheat and subcooling together say whether refrigerant is missing, held back or too much.
thought-standing-aim = What does a unit tell that has not been started yet?
thought-standing-way = At rest the pressure is that of saturation at the air's temperature, as long as there is liquid. Low gauge and outdoor air tell.
thought-superheat-aim = Is it vapour that reaches the compressor, and how far from liquid?
thought-superheat-way = Suction line temperature less saturation at the suction pressure. A clamp at the suction line and the low gauge tell, both at the same moment.
thought-subcooling-aim = Is it liquid that reaches the metering device, and how safely?
thought-subcooling-way = Saturation at the liquid pressure less liquid line temperature. The high gauge and a clamp at the liquid line tell, both at the same moment.
thought-target-superheat-aim = What superheat would be right, in this weather and this room?
thought-target-superheat-way = The charging chart: outdoor dry bulb and indoor wet bulb. Two thermometers and the chart tell.
thought-vacuum-aim = How deep was it when it counted?
thought-vacuum-way = What counts is the end of the decay, with the pump shut off. The micron gauge tells.
thought-record-aim = Who will want to know how much refrigerant went where?
thought-record-way = The law asks for a record and the next technician for a reason. The scale tells.
thought-readings-aim = What will you compare with when something has changed?
thought-readings-way = Readings of the steady unit, all of the same few minutes. Gauges and clamp meter tell.
thought-temperatures-aim = Which temperatures would show where the circuit works and where it does not?
thought-temperatures-way = One thermometer before and one after each part that should or should not change it, read when they have settled.

# Why a thing cannot be done as things stand, and what to do first.
#
# The journal of an attempt has these in English, and its replay asks for the same words.

refusal-handed-back = The job has been handed back.
refusal-lost = The program has made an error: the state of this unit is no longer a number, and the job
    cannot go on. Leave it, and report the error with the attempt.
refusal-unwritable = It cannot be written down.
refusal-unrecordable = It cannot be recorded: { $why }

refusal-not-on-cart = That is not on the cart.
refusal-cylinder-so = The cylinder is so already.
refusal-regulator-so = The regulator is so already.
refusal-shut-nitrogen-first = Shut the nitrogen cylinder first.
refusal-no-regulator = There is no regulator on the cylinder.
refusal-regulator-range = The regulator's screw goes from 0 to 800 psig.
refusal-cylinder-stands-so = The cylinder stands so already.

refusal-disconnect-out = The disconnect is out already.
refusal-disconnect-in = The disconnect is in already.
refusal-locked = Lock and tag are on it: take them off first.
refusal-pull-before-lock = Pull the disconnect before you lock it.
refusal-locked-already = Lock and tag are on it already.
refusal-not-locked = There is no lock on it.
refusal-still-live = The meter shows the full supply: pull the disconnect first.
refusal-so-already = It is so already.

refusal-hose-in-use = This hose is on something else: take it off first.
refusal-place-taken = Another hose is there already.
refusal-centre-is-for-service = The centre hose is for service: pump, nitrogen or cylinder.
refusal-only-centre-reaches = Only the centre hose reaches there.
refusal-port-cap-first = Take the port cap off first.
refusal-hose-not-on = This hose is not on anything.
refusal-purge-needs-source = Put the hose on something that can purge it first.
refusal-centre-has-no-valve = The centre of the manifold has no hand valve.

refusal-thermometer-here = There is a thermometer here already.
refusal-thermometers-in-use = All thermometers are in use: take one away first.
refusal-no-thermometer = There is no thermometer here.

refusal-not-made-up = This joint is not made up.
refusal-apart-already = This joint is apart already.
refusal-plug-only-apart = Only a joint that is apart can be plugged.
refusal-apart-before-flare = Take the joint apart before you make a new flare.
refusal-wrench-range = The wrench goes from 0 to 300 N m.
refusal-no-drier-to-make-up = There is no drier to make it up to.
refusal-no-solution = There is no solution here.
refusal-no-drier = There is no drier in place.
refusal-old-drier-first = Take the old drier out first.
refusal-drier-flares-first = Take both flares of the drier apart first.

refusal-blank-of-another-kind = This blank takes a value of another kind.
refusal-number = Write a number.

refusal-pump-so = The pump is so already.
refusal-stop-pump-for-oil = Stop the pump before you change its oil.
refusal-gauge-there = The micron gauge is there already.
refusal-gauge-needs-tool = At a port the gauge goes on the core tool's side port: fit the tool first.

refusal-stem-cap-so = The stem cap is so already.
refusal-stem-cap-first = Take the stem cap off first.
refusal-port-cap-so = The port cap is so already.
refusal-hose-on-port = A hose is on the port: take it off first.
refusal-tool-on-port = The core tool is on the port: take it off first.
refusal-tool-so = The core tool is so already.
refusal-hose-off-first = Take the hose off the port first.
refusal-gauge-on-tool = The micron gauge is on the tool: take it off first.
refusal-core-so = The core is so already.
refusal-no-core = This port has no core: its valve shuts it on the back seat.
refusal-hose-in-the-way = The hose is in the way: take it off, or put the core tool between.
refusal-no-tool = There is no core tool on this port.

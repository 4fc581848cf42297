### Refrigerant cylinder on its charging scale.

# Forms: .the with its article; .on where a hose is; .not when it is not so; .why what follows from it; .aim, .way and .goal
# are the three depths of a thought.

refrigerant_cylinder-name = refrigerant cylinder
    .the = the refrigerant cylinder
    .on = on the refrigerant cylinder

refrigerant_cylinder-do-valve = { $value ->
    [open] open the refrigerant cylinder
    [shut] shut the refrigerant cylinder
   *[partly] open the refrigerant cylinder to { $percent } %
}
refrigerant_cylinder-do-inverted = { $value ->
    [yes] turn the cylinder over
   *[no] stand the cylinder upright
}
refrigerant_cylinder-do-tare = zero the scale

refrigerant_cylinder-shows-scale = scale
    .the = the scale

refrigerant_cylinder-done-opened = opened the refrigerant cylinder
    .aim = How much is missing, and how will you know when it is enough?
    .way = By weight, in small steps, with a wait after each. The scale tells what went in, superheat or subcooling when to stop.
    .goal = refrigerant let in from the cylinder

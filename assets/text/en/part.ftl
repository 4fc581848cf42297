# The parts of the site that one can point at: names beyond those of name.ftl.

part-hose-low = low hose (blue, L)
part-hose-high = high hose (red, H)
part-hose-centre = centre hose (yellow, C)

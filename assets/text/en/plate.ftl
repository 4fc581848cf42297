# The nameplate.

plate-line = { $what }: { $says }
plate-refrigerant = Refrigerant
plate-factory-charge = Factory charge
plate-charge = { $mass } with { $length } of line set
plate-test-low = Test pressure, low side
plate-test-high = Test pressure, high side
plate-rated-load = Rated load

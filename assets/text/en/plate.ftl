# The nameplate.

plate-line = { $what }: { $says }
plate-refrigerant = Refrigerant
plate-factory-charge = Factory charge
plate-right-charge = Right charge
plate-of-class = { $name }, class { $class }
plate-superheat-by-chart = superheat by the charging chart
plate-subcooling = subcooling { $degrees }
plate-by-weight = by weight; superheat { $degrees }
plate-charge = { $mass } with { $length } of line set
plate-test-low = Test pressure, low side
plate-test-high = Test pressure, high side
plate-rated-load = Rated load

"""A steady four-component R-22 cycle of the 3-ton unit, solved again and again while warm.

Needs Python with `tespy==0.11.0` from the package index. Prints the median time of a solve, ms.
The operating point moves a little each time, so that every solve has something to do.
"""

import statistics
import sys
import time

from tespy.components import Compressor, CycleCloser, SimpleHeatExchanger, Valve
from tespy.connections import Connection
from tespy.networks import Network


def cycle():
    """Compressor, condenser, valve and evaporator at the unit's rating point."""
    network = Network(iterinfo=False)
    network.units.set_defaults(temperature="degC", pressure="bar")
    closer, compressor = CycleCloser("closer"), Compressor("compressor")
    condenser, evaporator = SimpleHeatExchanger("condenser"), SimpleHeatExchanger("evaporator")
    valve = Valve("metering")
    suction = Connection(closer, "out1", compressor, "in1")
    discharge = Connection(compressor, "out1", condenser, "in1")
    liquid = Connection(condenser, "out1", valve, "in1")
    mixture = Connection(valve, "out1", evaporator, "in1")
    back = Connection(evaporator, "out1", closer, "in1")
    network.add_conns(suction, discharge, liquid, mixture, back)
    suction.set_attr(fluid={"R22": 1}, m=247 / 3600, p=6.115, T=14.0)
    liquid.set_attr(p=18.7, T=43.0)
    condenser.set_attr(pr=1)
    evaporator.set_attr(pr=1)
    compressor.set_attr(eta_s=0.7)
    return network, suction


def main():
    """Times the solves after a first one."""
    rounds = int(sys.argv[1]) if len(sys.argv) > 1 else 50
    network, suction = cycle()
    network.solve("design")
    taken = []
    for k in range(rounds):
        suction.set_attr(m=(247 + 0.1 * (k % 7)) / 3600, T=14.0 + 0.05 * (k % 5))
        start = time.perf_counter()
        network.solve("design")
        taken.append(1e3 * (time.perf_counter() - start))
    print(f"{statistics.median(taken):.3f}")


if __name__ == "__main__":
    main()

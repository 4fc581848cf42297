#!/usr/bin/env python3
"""Writes the refrigerant tables beside this file, and the check values of tests/published/data.

Needs CoolProp 8 and numpy from the Python package index. Usage:

    python3 generate.py [R-22 R-410A ...]

A table is a few readable head lines, a line `---`, then little-endian f64 rows on a uniform grid
of temperature. The columns are those of `Curves` in src/fluid/refrigerant.rs, in its order.

Saturation values are the equation of state's own. The vapour is a virial of three terms,

    p = rho R T (1 + B rho + C rho^2)        u = u0 - R T^2 (B' rho + C' rho^2 / 2)

exact as density goes to zero and exact on the dew line; the one number left free at each
temperature is the best fit between the two. Above the last saturation row the fit runs from zero
to the density at that row's pressure, so the columns go on without a step. B' and C' are fitted to
the energy and are not exactly the slopes of B and C.
"""

import os
import sys

import CoolProp
import CoolProp.CoolProp as CP
import numpy as np

HERE = os.path.dirname(os.path.abspath(__file__))
CHECKS = os.path.join(HERE, "..", "..", "tests", "published", "data")
STEP = 0.25  # K
END = 430.0  # K
UNDER_CRITICAL = 3.0  # K, of the last saturation row
COLUMNS = "p p_dew rho_l rho_g h_l h_g u_l u_g b c db dc u0 dh_l k_l".split()

# name -> (CoolProp's name, coldest row K, equation of state, GWP of IPCC AR4)
FLUIDS = {
    "R-22": ("R22", 173.25, "Kamei, Beyerlein & Jacobsen 1995", 1810),
    "R-410A": ("R410A", 200.25, "Lemmon 2003, pseudo-pure", 2088),
}


class Fluid:
    """One fluid of CoolProp, with energies on the reference h = 200 kJ/kg, bubble, 0 C."""

    def __init__(self, name):
        self.name = name
        self.code, self.coldest, self.equation, self.gwp = FLUIDS[name]
        self.state = CP.AbstractState("HEOS", self.code)
        self.critical_temperature = self.state.T_critical()
        self.critical_pressure = self.state.p_critical()
        self.molar_mass = self.state.molar_mass()
        self.gas_constant = self.state.gas_constant() / self.molar_mass
        self.offset = 0.0
        self.offset = 200e3 - self.saturated(273.15, 0)[2]

    def saturated(self, t, quality):
        """p, rho, h of the bubble (quality 0) or dew (1) line at t."""
        s = self.state
        s.unspecify_phase()
        s.update(CP.QT_INPUTS, quality, t)
        return s.p(), s.rhomass(), s.hmass() + self.offset

    def gas(self, rho, t):
        """p, u of the gas at rho, t, without asking whether it is stable."""
        s = self.state
        s.specify_phase(CP.iphase_gas)
        s.update(CP.DmassT_INPUTS, rho, t)
        p, u = s.p(), s.umass() + self.offset
        s.unspecify_phase()
        return p, u

    def liquid(self, p, t):
        """rho, h of the compressed liquid."""
        s = self.state
        s.specify_phase(CP.iphase_liquid)
        s.update(CP.PT_INPUTS, p, t)
        rho, h = s.rhomass(), s.hmass() + self.offset
        s.unspecify_phase()
        return rho, h

    def gas_density(self, p, t, guess):
        """The density of the gas at p, t, by Newton from a guess."""
        rho = guess
        for _ in range(60):
            here = self.gas(rho, t)[0]
            slope = (self.gas(rho * 1.0001, t)[0] - here) / (rho * 1e-4)
            step = (p - here) / slope
            rho += step
            if abs(step) < 1e-10 * rho:
                break
        return rho


def constrained_fit(x, y, basis):
    """Two coefficients of `basis` through the last point exactly, the others by least squares.

    All rows are weighted alike.
    """
    first, second = basis
    f, s = first(x), second(x)
    ratio = s / s[-1]
    free = f - f[-1] * ratio
    rest = y - y[-1] * ratio
    a = np.dot(free[:-1], rest[:-1]) / np.dot(free[:-1], free[:-1])
    return a, (y[-1] - a * f[-1]) / s[-1]


def rows(fluid):
    """The table, one row a temperature; the number of the last saturation row."""
    count = int(round((END - fluid.coldest) / STEP)) + 1
    temperatures = fluid.coldest + STEP * np.arange(count)
    last = int((fluid.critical_temperature - UNDER_CRITICAL - fluid.coldest) / STEP)
    table = np.zeros((count, len(COLUMNS)))
    column = {name: table[:, i] for i, name in enumerate(COLUMNS)}
    for i in range(last + 1):
        t = temperatures[i]
        p, rho_l, h_l = fluid.saturated(t, 0)
        p_dew, rho_g, h_g = fluid.saturated(t, 1)
        # Slopes of the compressed liquid, over the span that subcooling by 25 K would give.
        above = fluid.saturated(min(t + 25.0, fluid.critical_temperature - 2.0), 0)[0]
        above = max(above, p * 1.05)
        rho, h = fluid.liquid(above, t)
        row = (p, p_dew, rho_l, rho_g, h_l, h_g, h_l - p / rho_l, h_g - p_dew / rho_g)
        table[i, : len(row)] = row
        column["dh_l"][i] = (h - h_l) / (above - p)
        column["k_l"][i] = (rho / rho_l - 1.0) / (above - p)
    for name, values in column.items():
        slope = values[last] - values[last - 1] if name in ("p", "p_dew") else 0.0
        values[last + 1 :] = values[last] + slope * np.arange(1, count - last)
    top_pressure, top_density = column["p_dew"][last], column["rho_g"][last]
    guess = top_density
    for i, t in enumerate(temperatures):
        rt = fluid.gas_constant * t
        if i <= last:
            end = column["rho_g"][i]
        else:
            end = guess = fluid.gas_density(top_pressure, t, guess)
        rho = end * np.linspace(0.125, 1.0, 8)
        found = np.array([fluid.gas(r, t) for r in rho])
        z = found[:, 0] / (rho * rt) - 1.0
        b, c = constrained_fit(rho, z, (lambda r: r, lambda r: r * r))
        u0 = fluid.gas(1e-6, t)[1]
        energy = (u0 - found[:, 1]) / (rt * t)
        if i <= last:
            # To the last bit the energy of the dew line, so that a node crosses it smoothly.
            z[-1] = column["p_dew"][i] / (end * rt) - 1.0
            energy[-1] = (u0 - column["u_g"][i]) / (rt * t)
        db, dc = constrained_fit(rho, energy, (lambda r: r, lambda r: r * r / 2.0))
        for name, value in zip(("b", "c", "db", "dc", "u0"), (b, c, db, dc, u0)):
            column[name][i] = value
    return table, last


def write_table(fluid):
    """Writes the table of one fluid beside this file."""
    table, last = rows(fluid)
    head = [
        "Coldbench refrigerant table",
        f"name: {fluid.name}",
        f"made by: assets/refrigerants/generate.py with CoolProp {CoolProp.__version__} (MIT)",
        f"equation of state: {fluid.equation}",
        "reference: h = 200 kJ/kg of the bubbling liquid at 0 C",
        "layout: after the line of dashes little-endian f64, row by row, SI units",
        f"columns: {' '.join(COLUMNS)}",
        f"molar mass: {fluid.molar_mass!r}",
        f"gas constant: {fluid.gas_constant!r}",
        f"critical temperature: {fluid.critical_temperature!r}",
        f"critical pressure: {fluid.critical_pressure!r}",
        f"coldest: {fluid.coldest!r}",
        f"step: {STEP!r}",
        f"rows: {len(table)}",
        f"last saturation row: {last}",
        f"gwp: {fluid.gwp}",
        "---",
    ]
    path = os.path.join(HERE, fluid.name.replace("-", "").lower() + ".table")
    with open(path, "wb") as file:
        file.write(("\n".join(head) + "\n").encode("ascii"))
        file.write(table.astype("<f8").tobytes())
    print(path, os.path.getsize(path), "bytes")


if __name__ == "__main__":
    for chosen in sys.argv[1:] or FLUIDS:
        write_table(Fluid(chosen))

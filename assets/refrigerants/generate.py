#!/usr/bin/env python3
"""Writes the refrigerant tables beside this file, and the check values of tests/figures/data.

Needs CoolProp 8 and numpy from the Python package index. Usage:

    python3 generate.py [R-22 R-410A ...]

A table is a few readable head lines, a line `---`, then little-endian f64 rows on a uniform grid
of temperature. The columns are those of `Curves` in src/fluid/refrigerant.rs, in its order.

Saturation values are the equation of state's own. The vapour is a virial of three terms,

    p = rho R T (1 + B rho + C rho^2)        u = u0 - R T^2 (B' rho + C' rho^2 / 2)

exact as density goes to zero and exact on the dew line; the one number left free at each
temperature makes the largest error of density between the two smallest. Above the last saturation
row the fit runs from zero to the density at that row's pressure, so the columns go on without a
step. B' and C' are fitted to the energy and are not exactly the slopes of B and C.
"""

import os
import sys

import CoolProp
import CoolProp.CoolProp as CP
import numpy as np

HERE = os.path.dirname(os.path.abspath(__file__))
CHECKS = os.path.join(HERE, "..", "..", "tests", "figures", "data")
STEP = 0.25  # K
END = 450.0  # K
SHARES = np.linspace(0.05, 1.0, 20)  # of the dew density, where the vapour is fitted
UNDER_CRITICAL = 4.75  # K, of the last saturation row
COLUMNS = "p p_dew rho_l rho_g h_l h_g u_l u_g b c db dc u0 dh_l k_l".split()

# name -> (CoolProp's name, coldest row K, equation of state)
FLUIDS = {
    "R-22": ("R22", 173.25, "Kamei, Beyerlein & Jacobsen 1995"),
    "R-410A": ("R410A", 200.25, "Lemmon 2003, pseudo-pure"),
    "R-32": ("R32", 173.25, "Tillner-Roth & Yokozeki 1997"),
    "R-134a": ("R134a", 173.25, "Tillner-Roth & Baehr 1994"),
    "R-407C": ("R407C", 200.25, "Lemmon 2003, pseudo-pure"),
    "R-404A": ("R404A", 200.25, "Lemmon 2003, pseudo-pure"),
    "R-290": ("R290", 173.25, "Lemmon, McLinden & Wagner 2009"),
    "R-454B": ("R454B.mix", 200.25, "R-32 and R-1234yf with the pair of Akasaka 2013"),
}


AKASAKA = {
    "betaT": 1.00052,
    "gammaT": 0.948538,
    "betaV": 0.993346,
    "gammaV": 1.02211,
    "Fij": -0.277708,
}


class Fluid:
    """One fluid of CoolProp, with energies on the reference h = 200 kJ/kg, bubble, 0 C."""

    def __init__(self, name):
        self.name = name
        self.code, self.coldest, self.equation = FLUIDS[name]
        self.state = CP.AbstractState("HEOS", self.code)
        if self.code.endswith(".mix"):
            self.use_akasaka_pair()
        else:
            self.critical_temperature = self.state.T_critical()
            self.critical_pressure = self.state.p_critical()
        self.molar_mass = self.state.molar_mass()
        self.gas_constant = self.state.gas_constant() / self.molar_mass
        self.offset = 0.0
        self.offset = 200e3 - self.saturated(273.15, 0)[2]

    def use_akasaka_pair(self):
        """The stock pair reads 0.4 to 1 % above published charts, this one within 0.1 %."""
        self.state.set_binary_interaction_string(0, 1, "function", "Methane-CarbonDioxide")
        for key, value in AKASAKA.items():
            self.state.set_binary_interaction_double(0, 1, key, value)
        # CoolProp finds no single critical point of the pair: makers' sheets, from memory.
        self.critical_temperature, self.critical_pressure = 351.3, 5.27e6

    def saturated(self, t, quality):
        """p, rho, h of the bubble (quality 0) or dew (1) line at t."""
        s = self.state
        s.unspecify_phase()
        for nudge in (0.0, 1e-4, -1e-4, 2e-4):  # mixtures fail at isolated points
            try:
                s.update(CP.QT_INPUTS, quality, t + nudge)
                return s.p(), s.rhomass(), s.hmass() + self.offset
            except ValueError as error:
                failure = error
        raise failure

    def last_row(self):
        """The last row of saturation: 4.75 K under the critical point, or where a mixture fails."""
        last = int((self.critical_temperature - UNDER_CRITICAL - self.coldest) / STEP)
        if not self.code.endswith(".mix"):
            return last
        before = 0.0
        for i in range(last + 1):
            try:
                here = self.saturated(self.coldest + STEP * i, 0)[0]
                dew = self.saturated(self.coldest + STEP * i, 1)[0]
            except ValueError:
                return i - 1
            if not dew < here or not here > before:
                return i - 1
            before = here
        return last

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


def constrained_fit(first, second, y, weight):
    """Coefficients of `first` and `second` that meet the last y exactly.

    The one freedom left makes the largest weighted error as small as it can be.
    """
    ratio = second / second[-1]
    free = (first - first[-1] * ratio)[:-1] * weight[:-1]
    rest = (y - y[-1] * ratio)[:-1] * weight[:-1]
    a = np.dot(free, rest) / np.dot(free, free)
    width = np.max(np.abs(rest - a * free)) / np.max(np.abs(free))
    low, high = a - 2.0 * width, a + 2.0 * width
    for _ in range(60):  # the largest error is convex in the coefficient
        one, two = low + (high - low) / 3.0, high - (high - low) / 3.0
        if np.max(np.abs(rest - one * free)) < np.max(np.abs(rest - two * free)):
            high = two
        else:
            low = one
    a = (low + high) / 2.0
    return a, (y[-1] - a * first[-1]) / second[-1]


def rows(fluid):
    """The table, one row a temperature; the number of the last saturation row."""
    count = int(round((END - fluid.coldest) / STEP)) + 1
    temperatures = fluid.coldest + STEP * np.arange(count)
    last = fluid.last_row()
    table = np.zeros((count, len(COLUMNS)))
    column = {name: table[:, i] for i, name in enumerate(COLUMNS)}
    reach = temperatures[last] + (0.0 if fluid.code.endswith(".mix") else 1.0)
    for i in range(last + 1):
        t = temperatures[i]
        p, rho_l, h_l = fluid.saturated(t, 0)
        p_dew, rho_g, h_g = fluid.saturated(t, 1)
        # Slopes of the compressed liquid, over the span that subcooling by 25 K would give.
        above = max(fluid.saturated(min(t + 25.0, reach), 0)[0], p * 1.05)
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
        rho = end * SHARES
        found = np.array([fluid.gas(r, t) for r in rho])
        z = found[:, 0] / (rho * rt) - 1.0
        u0 = fluid.gas(1e-6, t)[1]
        energy = (u0 - found[:, 1]) / (rt * t)
        if i <= last:
            # To the last bit the dew line's own, so that a node crosses it smoothly.
            z[-1] = column["p_dew"][i] / (end * rt) - 1.0
            energy[-1] = (u0 - column["u_g"][i]) / (rt * t)
        # An error of pressure shows the more in the density the flatter the isotherm is; the
        # full weight would spoil thin gas for the sake of the last kelvins under the critical.
        rise = np.array([fluid.gas(r * 1.001, t)[0] for r in rho]) / found[:, 0] - 1.0
        weight = (1e-3 / np.maximum(rise, 1e-5)) ** 0.8 / (1.0 + z)
        b, c = constrained_fit(rho, rho * rho, z, weight)
        db, dc = constrained_fit(rho, rho * rho / 2.0, energy, np.ones(len(rho)))
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
        "---",
    ]
    path = os.path.join(HERE, fluid.name.replace("-", "").lower() + ".table")
    with open(path, "wb") as file:
        file.write(("\n".join(head) + "\n").encode("ascii"))
        file.write(table.astype("<f8").tobytes())
    print(path, os.path.getsize(path), "bytes")


def check_lines(fluid):
    """Lines of check values straight from the equation of state: phase, p, t, rho, h, quality."""

    def line(phase, p, t, rho, h, quality=""):
        return f"{phase},{p:.8g},{t:.6f},{rho:.8g},{h:.8g},{quality}"

    top = min(fluid.critical_temperature - 5.0, fluid.coldest + STEP * fluid.last_row())
    # Places between the rows of the table, where a straight line is farthest from the curve.
    for t in list(np.arange(233.15, top, 6.13)) + [top]:
        bubble, rho_l, h_l = fluid.saturated(t, 0)
        dew, rho_g, h_g = fluid.saturated(t, 1)
        yield line("bubble", bubble, t, rho_l, h_l)
        yield line("dew", dew, t, rho_g, h_g)
        for quality in (0.1, 0.5, 0.9):
            volume = (1.0 - quality) / rho_l + quality / rho_g
            p = bubble + quality * (dew - bubble)
            h = h_l + quality * (h_g - h_l)
            yield line("two-phase", p, t, 1.0 / volume, h, quality)
        for superheat in (0.5, 2.0, 5.0, 10.0, 20.0, 40.0, 60.0, 80.0):
            rho = fluid.gas_density(dew, t + superheat, rho_g)
            h = fluid.gas(rho, t + superheat)[1] + dew / rho
            yield line("vapour", dew, t + superheat, rho, h)
        for subcooling in (1.0, 5.0, 10.0, 20.0, 30.0):
            if t - subcooling > fluid.coldest:
                rho, h = fluid.liquid(bubble, t - subcooling)
                yield line("liquid", bubble, t - subcooling, rho, h)
    for t in np.arange(240.0, 420.0, 31.3):
        for p in (1.0, 100.0, 1e4):
            rho = fluid.gas_density(p, t, p / fluid.gas_constant / t)
            yield line("vacuum", p, t, rho, fluid.gas(rho, t)[1] + p / rho)


def write_checks(fluid):
    """Writes the check values of one fluid for the tests."""
    plain = fluid.name.replace("-", "").lower()
    path = os.path.join(CHECKS, f"coolprop_{plain}.csv")
    with open(path, "w", encoding="ascii", newline="\n") as file:
        file.write(f"# {fluid.name} by CoolProp {CoolProp.__version__}, {fluid.equation};")
        file.write(" written by assets/refrigerants/generate.py. Pa, K, kg/m3, J/kg with h = 200")
        file.write(" kJ/kg of the bubbling liquid at 0 C.\n")
        file.write("phase,p,t,rho,h,quality\n")
        file.writelines(line + "\n" for line in check_lines(fluid))
    print(path)


if __name__ == "__main__":
    for chosen in sys.argv[1:] or FLUIDS:
        chosen_fluid = Fluid(chosen)
        write_table(chosen_fluid)
        write_checks(chosen_fluid)

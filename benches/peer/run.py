"""Times `coldbench settle` against TESPy's steady cycle in one run, by turns.

    cargo build --release --no-default-features
    python benches/peer/run.py target/release/coldbench

The two do not do the same: TESPy solves a cycle whose pressures are given, `settle` runs the
whole unit from a standstill, tick by tick, until nothing moves.
"""

import json
import pathlib
import statistics
import subprocess
import sys


def main():
    """Prints both medians, ms, and their ratio."""
    program = sys.argv[1]
    script = pathlib.Path(__file__).with_name("tespy_cycle.py")
    ours, theirs = [], []
    for _ in range(5):
        settle = [program, "settle", "r22_3ton_orifice", "--json"]
        for _ in range(5):
            ours.append(json.loads(subprocess.check_output(settle))["wall_ms"])
        theirs.append(float(subprocess.check_output([sys.executable, script], text=True)))
    a, b = statistics.median(ours), statistics.median(theirs)
    print(f"settle {a:.1f} ms, TESPy warm {b:.1f} ms, settle/TESPy {a / b:.2f}")


if __name__ == "__main__":
    main()
